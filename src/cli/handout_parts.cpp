// SPDX-License-Identifier: MIT
// What has a number on a recruit's figures.
#include "cli/handout_parts.h"

#include <algorithm>

#include "cli/kit.h"
#include "compose/material_words.h"
#include "words/handout_messages.h"
#include "words/terms.h"
#include "words/tincture_messages.h"

namespace platewright::cli {
namespace {

/// Trimmings are left to the kit list: a number is for what a man puts on, and for what tells his
/// regiment.
bool is_numbered(const Property& row) {
    const bool head = row.name() == "cloth" || row.name() == "leather" || row.name() == "metal" ||
                      row.name() == "felt" || row.name() == "plume" || row.name() == "cockade" ||
                      row.name() == "plate" || row.name() == "tuft" || row.name() == "hilt" ||
                      row.name() == "buckles" || row.name() == "sling";
    return head && row.work != Work::none;
}

/// The musket as a whole, which is no property of a material.
void add_musket(const Uniform& man,
                const Figure& figure,
                const Captions& captions,
                std::vector<HandoutPart>& parts) {
    const std::string key = "musket.carried";
    const auto seen = figure.seen.find(key);
    const auto wood = std::ranges::find_if(captions.key, [&](const KeyEntry& entry) {
        return !entry.metal && std::ranges::find(entry.properties, key) != entry.properties.end();
    });
    if (seen == figure.seen.end() || seen->second.sites.empty() || wood == captions.key.end()) {
        return;
    }
    parts.push_back({term(man.language, "musket"), wood->name, wood->colour, {}, false, {}});
    parts.back().sites = all_sites(seen->second);
}

/// Buttons are sought on the coat, not where one holds the cockade: what lies as high as the hat is
/// left off, if there are others.
void leave_the_hat(const Figure& figure, std::vector<Site>& sites) {
    const auto hat = figure.seen.find("hat.felt");
    if (hat == figure.seen.end()) {
        return;
    }
    double brim = figure.frame.top;
    for (const Site& site : all_sites(hat->second)) {
        brim = std::max(brim, site.at.y);
    }
    const auto high = [brim](const Site& site) { return site.at.y <= brim; };
    if (!std::ranges::all_of(sites, high)) {
        std::erase_if(sites, high);
    }
}

/// The mark of what is said of a property at the foot of the sheets.
std::string mark_of(const Captions& captions, std::string_view key) {
    const auto at = std::ranges::find(captions.callouts, key, &CalloutWords::key);
    return at == captions.callouts.end() ? std::string() : at->mark;
}

}  // namespace

std::vector<HandoutPart> parts_of(const Uniform& man,
                                  const Figure& figure,
                                  const Captions& captions) {
    std::vector<HandoutPart> parts;
    for (PropertyId id = 0; id < properties().size(); ++id) {
        const Property& row = properties()[id];
        const Material* material = man.material(id);
        const auto seen = figure.seen.find(std::string(row.key));
        if (material == nullptr || !man.speaks(id) || !is_numbered(row) ||
            seen == figure.seen.end() || seen->second.sites.empty()) {
            continue;
        }
        HandoutPart part{term(man.language, called_on(man, id)) + mark_of(captions, row.key),
                         material_in_words(man.language, *material),
                         material->colour,
                         material->tincture(),
                         material->metal,
                         {}};
        part.sites = all_sites(seen->second);
        if (row.key == "buttons.metal") {
            leave_the_hat(figure, part.sites);
        }
        parts.push_back(std::move(part));
    }
    add_musket(man, figure, captions, parts);
    return parts;
}

std::vector<HandoutPart> parts_behind(const Uniform& man,
                                      const Figure& back,
                                      const Captions& captions,
                                      const std::vector<HandoutPart>& before) {
    std::vector<HandoutPart> parts = parts_of(man, back, captions);
    std::erase_if(parts, [&](const HandoutPart& part) {
        return std::ranges::find(before, part.name, &HandoutPart::name) != before.end();
    });
    return parts;
}

void forget_marks_not_printed(Handout& in) {
    for (Footnote& note : in.footnotes) {
        const auto in_name = [&](const HandoutPart& part) {
            return part.name.find(note.mark) != std::string::npos;
        };
        const bool printed = std::ranges::any_of(in.parts, in_name) ||
                             std::ranges::any_of(in.parts_behind, in_name) ||
                             std::ranges::any_of(in.marks, [&](const HandoutMark& mark) {
                                 return mark.words.find(note.mark) != std::string::npos;
                             });
        note.mark = printed ? note.mark : std::string();
    }
}

void name_hatching(Handout& in) {
    const auto name = [&](const std::optional<TinctureId>& hatch, std::string& material) {
        const std::string tincture =
            hatch ? say(in.language, messages::kTinctureWords.at(*hatch).name) : std::string();
        if (!tincture.empty() && tincture != material) {
            material = say(in.language, messages::kStageTotal, {material, tincture});
        }
    };
    for (auto* parts : {&in.parts, &in.parts_behind}) {
        for (HandoutPart& part : *parts) {
            name(part.hatch, part.material);
            // What nobody chose the colour of is left white, and needs no sample.
            part.colour = part.hatch ? part.colour : std::nullopt;
        }
    }
    for (HandoutStage& stage : in.stages) {
        for (HandoutItem& item : stage.items) {
            name(item.colour ? item.hatch : std::nullopt, item.material);
        }
    }
}

void forget_hatching(Handout& in) {
    for (auto* parts : {&in.parts, &in.parts_behind}) {
        for (HandoutPart& part : *parts) {
            part.hatch.reset();
        }
    }
    for (HandoutStage& stage : in.stages) {
        for (HandoutItem& item : stage.items) {
            item.hatch.reset();
        }
    }
}

}  // namespace platewright::cli
