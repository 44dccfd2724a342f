// SPDX-License-Identifier: MIT
// How a row of the table is written: the kind of value first, then what else is true of it.
#pragma once

#include <string_view>

#include "vocabulary/property.h"

namespace platewright::rows {

/// A property under construction; every function returns it with one thing more said.
struct Row : Property {
    /// May be `none`.
    [[nodiscard]] constexpr Row or_none() const {
        Row row = *this;
        row.may_be_none = true;
        return row;
    }

    /// The group's one-word form speaks of this property.
    [[nodiscard]] constexpr Row by_one_word() const {
        Row row = *this;
        row.main = true;
        return row;
    }

    /// Palette section in which names are looked up first.
    [[nodiscard]] constexpr Row of(SubstanceKind section) const {
        Row row = *this;
        row.substance = section;
        return row;
    }

    /// What keys and lists call it; without, the group's name.
    [[nodiscard]] constexpr Row called(std::string_view name) const {
        Row row = *this;
        row.place = name;
        return row;
    }

    /// Says something only where this condition holds.
    [[nodiscard]] constexpr Row when(std::string_view condition) const {
        Row row = *this;
        row.speaks_when = condition;
        return row;
    }

    /// Or where this one does.
    [[nodiscard]] constexpr Row or_else_when(std::string_view condition) const {
        Row row = *this;
        row.or_when = condition;
        return row;
    }

    /// The frame of the templates in which it is best seen.
    [[nodiscard]] constexpr Row seen_in(std::string_view name) const {
        Row row = *this;
        row.frame = name;
        return row;
    }

    /// What the index of the wardrobe shows.
    [[nodiscard]] constexpr Row shown_as(std::string_view value) const {
        Row row = *this;
        row.example = value;
        return row;
    }

    /// Another value means another garment.
    [[nodiscard]] constexpr Row makes_garment() const { return doing(Work::garment); }

    /// Another value means taking a thing or laying it aside.
    [[nodiscard]] constexpr Row is_kit() const { return doing(Work::kit); }

    /// Belongs to the man, or is only a way of speaking.
    [[nodiscard]] constexpr Row is_no_work() const { return doing(Work::none); }

  private:
    [[nodiscard]] constexpr Row doing(Work work_done) const {
        Row row = *this;
        row.work = work_done;
        return row;
    }
};

/// The beginning of every row.
constexpr Row row(std::string_view key,
                  Kind kind,
                  std::string_view initial,
                  std::string_view meaning) {
    Row made;
    made.key = key;
    made.kind = kind;
    made.initial = initial;
    made.meaning = meaning;
    return made;
}

/// A colour of the palettes.
constexpr Row cloth(std::string_view key, std::string_view initial, std::string_view meaning) {
    return row(key, Kind::cloth, initial, meaning);
}

/// A thing of leather.
constexpr Row leather(std::string_view key, std::string_view initial, std::string_view meaning) {
    return cloth(key, initial, meaning).of(SubstanceKind::leather);
}

/// A thing of metal.
constexpr Row metal(std::string_view key, std::string_view initial, std::string_view meaning) {
    return row(key, Kind::metal, initial, meaning).of(SubstanceKind::metal);
}

/// An ornament; it may be left off.
constexpr Row ornament(std::string_view key, std::string_view initial, std::string_view meaning) {
    return row(key, Kind::ornament, initial, meaning).or_none();
}

/// `choices` as in Property.
constexpr Row choice(std::string_view key,
                     std::string_view initial,
                     std::string_view choices,
                     std::string_view meaning) {
    Row made = row(key, Kind::choice, initial, meaning);
    made.choices = choices;
    return made;
}

/// A whole number up to `most`; `none` is 0.
constexpr Row count(std::string_view key,
                    std::string_view initial,
                    int most,
                    std::string_view meaning) {
    Row made = row(key, Kind::count, initial, meaning).or_none();
    made.most = most;
    return made;
}

/// A length from `least` to `most` mm.
constexpr Row measure(
    std::string_view key, std::string_view initial, int least, int most, std::string_view meaning) {
    Row made = row(key, Kind::measure, initial, meaning);
    made.least = least;
    made.most = most;
    return made;
}

/// Free text of at most `most` characters.
constexpr Row words(std::string_view key,
                    std::string_view initial,
                    int most,
                    std::string_view meaning) {
    Row made = row(key, Kind::words, initial, meaning).or_none();
    made.most = most;
    return made;
}

/// Cord of cloth along an edge.
constexpr Row piping(std::string_view key, std::string_view name, std::string_view meaning) {
    return cloth(key, "none", meaning).or_none().called(name);
}

/// Lace or tape; a metal of the palettes gives metal lace.
constexpr Row lace(std::string_view key, std::string_view name, std::string_view meaning) {
    return cloth(key, "none", meaning).or_none().called(name);
}

}  // namespace platewright::rows
