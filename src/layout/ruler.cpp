// SPDX-License-Identifier: MIT
// Measuring words.
#include "layout/ruler.h"

#include <algorithm>

#include "base/text.h"

namespace platewright::sheet {
namespace {

/// Sizes are measured at this em and scaled, large enough that rounding in the shaping library does
/// not matter.
constexpr double kMeasuredAt = 10;
/// A line is full this much before its room ends, so that rounding never pushes a word out.
constexpr double kSlack = 0.02;

}  // namespace

double Ruler::width(const std::string& words, const Type& type) {
    const auto [at, is_new] = widths_.try_emplace({type.face, words}, 0.0);
    if (is_new) {
        at->second = type_.width(words, {type.face, kMeasuredAt, 0}) / kMeasuredAt;
    }
    const double spread = type.tracking * static_cast<double>(count_characters(words));
    return at->second * type.size + spread;
}

std::vector<std::string> Ruler::lines(const std::string& words, const Type& type, double room) {
    if (words.empty()) {
        return {};
    }
    if (width(words, type) <= room - kSlack) {
        return {words};
    }
    const auto [at, is_new] =
        wrapped_.try_emplace({type.face, type.size, room, words}, std::vector<std::string>{});
    if (is_new) {
        at->second = type_.wrap(words, type, room - kSlack);
    }
    return at->second;
}

std::vector<std::string> Ruler::lines(const std::string& words,
                                      const Type& type,
                                      double room,
                                      const std::string& language) {
    const bool one_line = words.find('\n') == std::string::npos;
    if (words.empty()) {
        return {};
    }
    if (one_line && width(words, type) <= room - kSlack) {
        return {words};
    }
    return type_.wrap(words, type, room - kSlack, language);
}

double Ruler::least_width(const std::string& words, const Type& type, const std::string& language) {
    const double tracking = type.size > 0 ? type.tracking / type.size : 0;
    const auto [at, is_new] = narrowest_.try_emplace({type.face, tracking, language, words}, 0.0);
    if (is_new) {
        const Type measured{type.face, kMeasuredAt, tracking * kMeasuredAt};
        // The library counts the tracking behind the last letter too.
        at->second = type_.least_width(words, measured, language) / kMeasuredAt + tracking;
    }
    return at->second * type.size + kSlack;
}

bool Ruler::runs_leftward(const std::string& words) {
    // Plain ASCII never does, and needs no shaping to find out.
    const bool plain = std::ranges::all_of(words, [](char c) { return c >= 0; });
    return !plain && type_.runs_leftward(words);
}

std::vector<std::string> Ruler::even_lines(const std::string& words,
                                           const Type& type,
                                           double room) {
    std::vector<std::string> best = lines(words, type, room);
    if (best.size() < 2) {
        return best;
    }
    const std::size_t count = best.size();
    double narrow = width(words, type) / static_cast<double>(count) / 2;
    // No word that fits is broken to make lines even.
    const double least = least_width(words, type, "");
    if (least <= room && least > narrow) {
        narrow = least;
        if (std::vector<std::string> tried = lines(words, type, narrow); tried.size() <= count) {
            return tried;
        }
    }
    double wide = room;
    for (int step = 0; step < 7; ++step) {
        const double middle = (narrow + wide) / 2;
        std::vector<std::string> tried = lines(words, type, middle);
        if (tried.size() <= count) {
            best = std::move(tried);
            wide = middle;
        } else {
            narrow = middle;
        }
    }
    return best;
}

LineMeasures Ruler::measures(const Type& type) {
    const auto [at, is_new] = measures_.try_emplace(type.face);
    if (is_new) {
        at->second = type_.measures({type.face, kMeasuredAt, 0});
    }
    const double scale = type.size / kMeasuredAt;
    const LineMeasures& m = at->second;
    return {m.ascent * scale, m.descent * scale, m.x_height * scale};
}

std::string on_one_line(std::string_view words) {
    std::string plain(words);
    for (char& c : plain) {
        const auto code = static_cast<unsigned char>(c);
        if (code < 0x20 || code == 0x7f) {
            c = ' ';
        }
    }
    return std::string(trim(plain));
}

}  // namespace platewright::sheet
