// SPDX-License-Identifier: MIT
// What the sheets of every shipped plate say of their men: every mark has its note and every note
// its mark, and whatever is drawn in a colour is in the key.
#include <gtest/gtest.h>

#include <algorithm>
#include <filesystem>
#include <set>
#include <string>
#include <vector>

#include "compose/compose.h"
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

    [[nodiscard]] Uniform& uniform() { return *uniform_; }

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

}  // namespace
}  // namespace platewright::cli
