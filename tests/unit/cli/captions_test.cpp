// SPDX-License-Identifier: MIT
// What the sheets of every shipped plate say of their men: every mark has its note and every note
// its mark, and whatever is drawn in a colour is in the key.
#include <gtest/gtest.h>

#include <algorithm>
#include <filesystem>
#include <map>
#include <set>
#include <string>
#include <vector>

#include "compose/compose.h"
#include "compose/template.h"
#include "read/read.h"
#include "support.h"
#include "vocabulary/property.h"

namespace platewright::cli {
namespace {

namespace fs = std::filesystem;

/// The plates of single men, by name.
std::vector<std::string> shipped_plates() {
    std::vector<std::string> names;
    for (const auto& entry : fs::directory_iterator(PLATEWRIGHT_SOURCE_DIR "/plates")) {
        const std::string name = entry.path().filename().string();
        const bool other_sheet = name.find("comparison") != std::string::npos ||
                                 name.find("chart") != std::string::npos ||
                                 name.find("handout") != std::string::npos ||
                                 name.find("workshop") != std::string::npos ||
                                 name.find("wardrobe") != std::string::npos;
        if (entry.path().extension() == ".yaml" && !other_sheet) {
            names.push_back(name);
        }
    }
    std::ranges::sort(names);
    return names;
}

/// A shipped plate with its man.
class ShippedMan {
  public:
    explicit ShippedMan(const std::string& name) {
        FileResult text = bench_.files.read(PLATEWRIGHT_SOURCE_DIR "/plates/" + name, 1 << 20);
        const FileId file =
            bench_.sources.add(PLATEWRIGHT_SOURCE_DIR "/plates/" + name, std::move(text.text));
        job_ = bench_.workshop.prepare(file, true, bench_.problems, bench_.timings);
        if (job_) {
            uniform_ = bench_.workshop.uniform_of(*job_, bench_.problems);
        }
    }

    [[nodiscard]] bool ready() const { return uniform_.has_value(); }

    [[nodiscard]] const Uniform& uniform() const { return *uniform_; }

    [[nodiscard]] const Job& job() const { return *job_; }

  private:
    Bench bench_;
    std::optional<Job> job_;
    std::optional<Uniform> uniform_;
};

bool is_mark(const std::string& words, std::size_t at) {
    const std::string rest = words.substr(at);
    return rest.starts_with("*") || rest.starts_with("†") || rest.starts_with("‡") ||
           rest.starts_with("§") || rest.starts_with("¶");
}

/// All that the sheet says besides its notes.
std::vector<std::string> named(const Captions& captions) {
    std::vector<std::string> all;
    for (const KeyEntry& entry : captions.key) {
        all.push_back(entry.worn);
    }
    for (const auto& [what, words] : captions.particulars) {
        all.push_back(what + " " + words);
    }
    for (const CalloutWords& callout : captions.callouts) {
        all.push_back(callout.words);
    }
    return all;
}

void expect_marks_and_notes_agree(const Captions& captions, const std::string& where) {
    std::set<std::string> borne;
    for (const std::string& words : named(captions)) {
        for (std::size_t at = 0; at < words.size(); ++at) {
            if (is_mark(words, at)) {
                borne.insert(words.substr(at, words[at] == '*' ? 1 : words[at] == '\xe2' ? 3 : 2));
            }
        }
    }
    std::set<std::string> noted;
    for (const Footnote& note : captions.footnotes) {
        noted.insert(note.mark);
        // Every thing that the note names bears its mark: "coat, lapels: not as ordered".
        const std::string names = note.words.substr(0, note.words.find(':'));
        for (std::size_t from = 0; from < names.size();) {
            const std::size_t to = std::min(names.find(", ", from), names.size());
            const std::string thing = names.substr(from, to - from);
            from = to + 2;
            EXPECT_TRUE(std::ranges::any_of(named(captions),
                                            [&](const std::string& words) {
                                                const std::size_t at = words.find(thing);
                                                return at != std::string::npos &&
                                                       words.find(note.mark, at) !=
                                                           std::string::npos;
                                            }))
                << where << ": " << thing << " bears no " << note.mark;
        }
    }
    EXPECT_EQ(borne, noted) << where;
}

TEST(CaptionsOfEveryPlate, EveryMarkHasItsNoteAndEveryNoteItsMark) {
    for (const std::string& name : shipped_plates()) {
        ShippedMan man(name);
        ASSERT_TRUE(man.ready()) << name;
        expect_marks_and_notes_agree(captions_of(man.uniform()), name);
    }
}

// Also where anything at all departs from the orders, whatever the sheet says of it otherwise.
TEST(CaptionsOfEveryPlate, WhateverDepartsBearsAMark) {
    ShippedMan man("seeholm-sergeant.yaml");
    ASSERT_TRUE(man.ready());
    for (PropertyId id = 0; id < properties().size(); ++id) {
        if (properties()[id].work == Work::none || !man.uniform().speaks(id)) {
            continue;
        }
        Uniform noted = man.uniform();
        noted.decided[id].chain.back().departure = true;
        noted.decided[id].chain.back().instead_of = "an order of its own";
        noted.decided[id].chain.back().follows.reset();
        expect_marks_and_notes_agree(captions_of(noted), std::string(properties()[id].key));
    }
}

/// By key of the property, what is seen of it on any view, mm² on the body.
std::map<std::string, double> seen_on(const ShippedMan& man) {
    std::map<std::string, double> seen;
    for (const Figure& figure : figures_of(man.uniform(), man.job(), 10)) {
        for (const auto& [key, one] : figure.seen) {
            seen[key] = std::max(seen[key], one.area);
        }
    }
    return seen;
}

bool in_key(const Captions& captions, const std::string& property) {
    return std::ranges::any_of(captions.key, [&](const KeyEntry& entry) {
        return std::ranges::find(entry.properties, property) != entry.properties.end();
    });
}

// A captain's scabbard hung from a belt that his orders do not know, and stood in no key.
TEST(CaptionsOfEveryPlate, WhateverIsSeenOfAColourIsInTheKey) {
    for (const std::string& name : shipped_plates()) {
        ShippedMan man(name);
        ASSERT_TRUE(man.ready()) << name;
        const Captions captions = captions_of(man.uniform());
        for (const auto& [key, area] : seen_on(man)) {
            const PropertyId id = property_id(key);
            const bool material = man.uniform().material(id) != nullptr;
            // The tip of a plume of one colour is plume, and holes worked in thread are the coat's.
            const bool part_of_another = key == "hat.plume-tip" || key == "lapels.lace";
            if (material && properties()[id].work != Work::none && !part_of_another &&
                area >= kLeastFound) {
                EXPECT_TRUE(in_key(captions, key)) << name << ": " << key;
            }
        }
    }
}

/// The colours that the parts of a view are drawn in whatever a man wears, as far as they are drawn
/// of this one.
std::set<std::string> own_colours(const Template& view, const Uniform& man) {
    std::set<std::string> colours;
    for (const Part& part : view.parts) {
        const bool there = holds(part.when, [&man](PropertyId id) { return man.word(id); });
        if (there && !part.cloth.property && part.surface != Surface::skin) {
            colours.insert(to_hex(part.cloth.fixed));
        }
    }
    return colours;
}

// Wood, brass and leather of the templates' own: a sword's grip, the buckles of a knapsack.
TEST(CaptionsOfEveryPlate, WhatTemplatesColourThemselvesIsInTheKey) {
    // Too small to be asked about, or black on black: the flint, the iron of pan and hooks, peaks
    // and sockets of caps beside their band.
    const std::set<std::string> aside{"#6d6358", "#8d939b", "#9aa0a8", "#242124"};
    for (const std::string& name : shipped_plates()) {
        ShippedMan man(name);
        ASSERT_TRUE(man.ready()) << name;
        std::set<std::string> keyed;
        std::set<std::string> shown;
        for (const Property& row : properties()) {
            shown.emplace(row.key);
        }
        for (const Template* view : views_of(man.job())) {
            shown.merge(shown_on(*view, man.uniform()));
        }
        for (const KeyEntry& entry : captions_of(man.uniform(), &shown).key) {
            keyed.insert(to_hex(entry.colour));
        }
        for (const Template* view : views_of(man.job())) {
            for (const std::string& colour : own_colours(*view, man.uniform())) {
                EXPECT_TRUE(keyed.contains(colour) || aside.contains(colour))
                    << name << ": " << colour << " on the " << view->view;
            }
        }
    }
}

}  // namespace
}  // namespace platewright::cli
