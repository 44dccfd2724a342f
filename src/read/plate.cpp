// SPDX-License-Identifier: MIT
// A plate description.
#include <string>
#include <utility>

#include "base/limits.h"
#include "read/groups.h"
#include "read/keys.h"
#include "read/names.h"
#include "read/read.h"
#include "read/record.h"
#include "read/texts.h"
#include "read/tree.h"

namespace platewright {
namespace {

constexpr std::string_view kFigure = "figure";
constexpr std::string_view kTemplate = "template";

class PlateReader {
  public:
    explicit PlateReader(const ReadContext& context) : context_(context) {}

    void read(const Item& root) {
        const auto figure = [this](const TreeEntry& entry) { read_figure(entry); };
        const auto wardrobe = [this](const TreeEntry& entry) { read_wardrobe(entry); };
        const auto worn = [this](const TreeEntry& entry) { read_worn(entry); };
        const auto departures = [this](const TreeEntry& entry) {
            plate_.departures = read_departures(entry, context_);
        };
        read_outermost(root,
                       Record::plate,
                       {{"plate", &plate_.title},
                        {"wardrobe", wardrobe},
                        {"subtitle", &plate_.subtitle},
                        {"year", &plate_.year},
                        {"drawn by", &plate_.drawn_by},
                        {"source", &plate_.source},
                        {"notes", &plate_.notes},
                        {"language", &plate_.language},
                        {kFigure, figure},
                        {"views", &plate_.views},
                        {"details", &plate_.details},
                        {"callouts", &plate_.callouts},
                        {"regiment", &plate_.regiment},
                        {"regulation", &plate_.regulation},
                        {"class", &plate_.corps_class},
                        {"company", &plate_.company},
                        {"rank", &plate_.rank},
                        {"years of service", &plate_.years_of_service},
                        {"order of dress", &plate_.order_of_dress},
                        {"as of", &plate_.as_of},
                        {"worn", worn},
                        {"departures", departures}},
                       {&block_, nullptr},
                       context_);
        plate_.values = std::move(block_.values);
        plate_.group_grounds = std::move(block_.group_grounds);
    }

    SpecifiedPlate take() { return std::move(plate_); }

  private:
    void read_wardrobe(const TreeEntry& entry) {
        plate_.wardrobe = true;
        if (auto title = read_text(entry, limits::kLineCharacters, context_)) {
            plate_.title = std::move(*title);
        }
    }

    void read_worn(const TreeEntry& entry) {
        const Key* key = find_key(Record::plate, entry.key);
        plate_.as_ordered = read_choice(entry, *key, context_).value_or(0) == 1;
    }

    /// One word is the template set; a group may also say how the man looks.
    void read_figure(const TreeEntry& entry) {
        if (entry.value.form != Item::Form::group) {
            read_template(entry);
            return;
        }
        TreeEntry looks = entry;
        std::erase_if(looks.value.entries,
                      [](const TreeEntry& part) { return part.key == kTemplate; });
        if (const TreeEntry* set = find_entry(entry.value, kTemplate)) {
            read_template(*set);
            if (looks.value.entries.empty()) {
                return;
            }
        }
        read_group(looks, block_, context_);
    }

    void read_template(const TreeEntry& entry) {
        auto name = read_text(entry, limits::kLineCharacters, context_);
        if (name && check_set_name(*name, context_.to)) {
            plate_.figure = std::move(name);
        }
    }

    const ReadContext& context_;
    SpecifiedPlate plate_;
    Block block_;
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
    const ReadContext context{sources, file, to, to.error_count() == errors};
    PlateReader reader(context);
    if (root) {
        reader.read(*root);
    }
    rest = reader.take();
    return to.error_count() == errors ? std::optional(rest) : std::nullopt;
}

}  // namespace platewright
