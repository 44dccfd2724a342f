// SPDX-License-Identifier: MIT
// A plate description.
#include <string>
#include <utility>
#include <vector>

#include "base/limits.h"
#include "base/text.h"
#include "read/groups.h"
#include "read/keys.h"
#include "read/names.h"
#include "read/read.h"
#include "read/texts.h"
#include "read/tree.h"

namespace platewright {
namespace {

constexpr std::string_view kFigure = "figure";
constexpr std::string_view kTemplate = "template";

/// Every key that may stand outermost.
std::vector<std::string> outermost_keys() {
    std::vector<std::string> keys;
    for (const PlateKey& row : plate_keys()) {
        keys.emplace_back(row.key);
    }
    for (const std::string_view group : groups()) {
        if (group != kFigure) {
            keys.emplace_back(group);
        }
    }
    return keys;
}

class PlateReader {
  public:
    explicit PlateReader(const ReadContext& context) : context_(context) {}

    void read(const Item& root) {
        for (const Entry& entry : root.entries) {
            if (entry.key == kFigure) {
                read_figure(entry);
            } else if (is_group(entry.key)) {
                read_group(entry, plate_.values, context_);
            } else if (!read_own(entry)) {
                report_unknown_key(entry, "a plate", "", outermost_keys(), context_);
            }
        }
    }

    SpecifiedPlate take() { return std::move(plate_); }

  private:
    /// False if it is no key of a plate's own.
    bool read_own(const Entry& entry) {
        if (entry.key == "notes") {
            plate_.notes = read_texts(entry, limits::kNoteCharacters, context_);
            return true;
        }
        if (entry.key == "views") {
            plate_.views = read_texts(entry, limits::kLineCharacters, context_);
            return true;
        }
        if (entry.key == "plate" || entry.key == "wardrobe") {
            plate_.wardrobe = entry.key == "wardrobe";
            if (auto title = read_text(entry, limits::kLineCharacters, context_)) {
                plate_.title = std::move(*title);
            }
            return true;
        }
        const std::pair<std::string_view, std::optional<WrittenText>*> texts[] = {
            {"subtitle", &plate_.subtitle},
            {"year", &plate_.year},
            {"drawn by", &plate_.drawn_by},
            {"source", &plate_.source},
            {"rank", &plate_.rank},
        };
        for (const auto& [key, to] : texts) {
            if (entry.key == key) {
                *to = read_text(entry, limits::kLineCharacters, context_);
                return true;
            }
        }
        return false;
    }

    /// One word is the template set; a group may also say how the man looks.
    void read_figure(const Entry& entry) {
        if (entry.value.form != Item::Form::group) {
            read_template(entry);
            return;
        }
        Entry looks = entry;
        std::erase_if(looks.value.entries, [](const Entry& part) { return part.key == kTemplate; });
        if (const Entry* set = find_entry(entry.value, kTemplate)) {
            read_template(*set);
            if (looks.value.entries.empty()) {
                return;
            }
        }
        read_group(looks, plate_.values, context_);
    }

    void read_template(const Entry& entry) {
        auto name = read_text(entry, limits::kLineCharacters, context_);
        if (name && check_set_name(*name, context_.to)) {
            plate_.figure = std::move(name);
        }
    }

    const ReadContext& context_;
    SpecifiedPlate plate_;
};

}  // namespace

std::optional<SpecifiedPlate> read_plate(const SourceMap& sources, FileId file, Diagnostics& to) {
    SpecifiedPlate rest;
    return read_plate(sources, file, to, rest);
}

std::optional<SpecifiedPlate> read_plate(const SourceMap& sources,
                                         FileId file,
                                         Diagnostics& to,
                                         SpecifiedPlate& rest) {
    const std::size_t errors = to.error_count();
    const auto root = read_tree(sources, file, to);
    const ReadContext context{sources, file, to};
    // After a fault the key may stand in what could not be read.
    const bool complete = to.error_count() == errors;
    PlateReader reader(context);
    if (root) {
        reader.read(*root);
    }
    if (root && complete && find_entry(*root, "plate") == nullptr &&
        find_entry(*root, "wardrobe") == nullptr) {
        to.error("read.missing-key", {file, 0, 0}, "the plate has no title")
            .hints.emplace_back("begin with a line such as 'plate: Private, Tannbruck Regiment'");
    }
    rest = reader.take();
    return to.error_count() == errors ? std::optional(rest) : std::nullopt;
}

}  // namespace platewright
