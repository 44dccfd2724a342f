// SPDX-License-Identifier: MIT
// The index of the wardrobe shows everything the table of properties knows, and everything it shows
// is really drawn.
#include "cli/wardrobe.h"

#include <gtest/gtest.h>

#include <map>
#include <set>
#include <string>
#include <vector>

#include "base/text.h"
#include "support.h"

namespace platewright::cli {
namespace {

/// The shipped index and what is needed to draw it.
class Wardrobe {
  public:
    Wardrobe() {
        FileResult text =
            bench_.files.read(PLATEWRIGHT_SOURCE_DIR "/plates/wardrobe.yaml", 1 << 20);
        const FileId file = bench_.sources.add("plates/wardrobe.yaml", std::move(text.text));
        job_ = bench_.workshop.prepare(file, true, bench_.problems, bench_.timings);
    }

    [[nodiscard]] bool ready() const { return job_.has_value(); }

    WardrobeIndex index() {
        return wardrobe_index(bench_.workshop, *job_, Printing{}, bench_.problems);
    }

    const Job& job() { return *job_; }

    /// The drawing of the man with these settings, on every view.
    std::string drawn(const std::vector<Setting>& settings) {
        const auto uniform = bench_.workshop.uniform_of(wearing(*job_, settings), bench_.problems);
        std::string all;
        for (const auto& view : job_->views) {
            all += uniform ? dump(compose(*uniform, *view.second, job_->ornaments, 10)) : "";
        }
        return all;
    }

  private:
    Bench bench_;
    std::optional<Job> job_;
};

/// What stands in the index, by what is to be written; of options that look alike each by itself:
/// `wings: {cloth: red, shape: wing}` shows both `wings: {cloth: red}` and `wings: {shape: wing}`.
std::set<std::string> shown_in(const WardrobeIndex& index) {
    std::set<std::string> shown;
    for (const WardrobeSection& section : index.sections) {
        for (const WardrobeSample& sample : section.samples) {
            EXPECT_TRUE(shown.insert(sample.words).second) << sample.words << " stands twice";
            const std::size_t brace = sample.words.find('{');
            if (brace == std::string::npos) {
                continue;
            }
            const std::string inside =
                sample.words.substr(brace + 1, sample.words.size() - brace - 2);
            for (const std::string_view option : split(inside, ',')) {
                shown.insert(sample.words.substr(0, brace + 1) + std::string(trim(option)) + "}");
            }
        }
    }
    return shown;
}

TEST(WardrobeIndex, ShowsEveryWordOfEveryChoice) {
    Wardrobe wardrobe;
    ASSERT_TRUE(wardrobe.ready());
    const std::set<std::string> shown = shown_in(wardrobe.index());
    for (PropertyId id = 0; id < properties().size(); ++id) {
        for (const Choice& choice : choices_of(id)) {
            const std::string group(properties()[id].group());
            const std::string name(properties()[id].name());
            const std::string word(choice.word);
            const bool found = shown.contains(group + ": " + word) ||
                               shown.contains(group + ": {" + name + ": " + word + "}");
            EXPECT_TRUE(found) << properties()[id].key << " = " << word;
        }
    }
    for (const auto& ornament : wardrobe.job().ornaments) {
        EXPECT_TRUE(shown.contains("turnbacks: {ornament: " + ornament.first + "}"));
    }
    // What would not be seen without another word of its group is shown with that word.
    EXPECT_TRUE(shown.contains("wings: {cloth: red, shape: roll}"));
    EXPECT_TRUE(shown.contains("hat: {shape: fur-cap, plate: none}"));
}

TEST(WardrobeIndex, ShowsNoPictureTwiceInAGroup) {
    Wardrobe wardrobe;
    ASSERT_TRUE(wardrobe.ready());
    for (const WardrobeSection& section : wardrobe.index().sections) {
        std::set<std::string> pictures;
        for (const WardrobeSample& sample : section.samples) {
            const std::string group = sample.words.substr(0, sample.words.find(':'));
            EXPECT_TRUE(pictures.insert(group + dump(sample.picture)).second) << sample.words;
        }
    }
}

TEST(WardrobeIndex, ShowsWholeFlapsOnACoatLaidFlat) {
    Wardrobe wardrobe;
    ASSERT_TRUE(wardrobe.ready());
    const Rect frame = frame_of(*wardrobe.job().views.at("flat-coat-front"), "flap-flat").value();
    std::size_t seen = 0;
    for (const WardrobeSection& section : wardrobe.index().sections) {
        for (const WardrobeSample& sample : section.samples) {
            if (sample.words.starts_with("pockets")) {
                // Each in its middle, all at one scale.
                EXPECT_NEAR(sample.frame.height(), frame.height(), 1e-9) << sample.words;
                EXPECT_TRUE(sample.centred) << sample.words;
                ++seen;
            }
        }
    }
    EXPECT_GT(seen, 5U);
}

TEST(WardrobeIndex, ShowsAllHeadsAtOneSizeAndTheMusketWhole) {
    Wardrobe wardrobe;
    ASSERT_TRUE(wardrobe.ready());
    std::map<std::string, Rect> frames;
    for (const WardrobeSection& section : wardrobe.index().sections) {
        for (const WardrobeSample& sample : section.samples) {
            frames[sample.words] = sample.frame;
            if (sample.words.starts_with("musket")) {
                EXPECT_GT(sample.frame.width(), 1000);
                EXPECT_TRUE(sample.centred);
            }
        }
    }
    const Rect& low = frames.at("hat: three-cornered");
    const Rect& high = frames.at("hat: fur-cap");
    for (const char* words : {"hat: round", "hat: none", "hat: {tape: none}"}) {
        EXPECT_EQ(frames.at(words).height(), low.height()) << words;
    }
    EXPECT_EQ(frames.at("hat: mitre").height(), high.height());
    // Neither the hat under a plume nor the face is cut.
    EXPECT_EQ(frames.at("hat: {plume: white}").top, high.top);
    EXPECT_NEAR(frames.at("hat: {plume: white}").width(), low.width(), 1);
    EXPECT_GT(frames.at("hat: {plume: white}").bottom, 230);
    // Six high ones fill the row that five low ones fill.
    EXPECT_NEAR(low.width() * 5, high.width() * 6, 160);
    // They hold the chin.
    EXPECT_GT(low.bottom, 230);
    EXPECT_GT(high.bottom, 230);
}

/// At the edge of a picture they would be taken for a part of what it shows.
TEST(WardrobeIndex, ShowsNoStripOfTheSkirtsBesideACuff) {
    Wardrobe wardrobe;
    ASSERT_TRUE(wardrobe.ready());
    for (const WardrobeSection& section : wardrobe.index().sections) {
        for (const WardrobeSample& sample : section.samples) {
            if (sample.words.starts_with("cuffs: ")) {
                EXPECT_EQ(dump(sample.picture).find("skirt"), std::string::npos) << sample.words;
                EXPECT_NE(dump(sample.picture).find("cuff-left"), std::string::npos);
            }
        }
    }
}

TEST(WardrobeIndex, SaysWhatTheTradeCallsIt) {
    Wardrobe wardrobe;
    ASSERT_TRUE(wardrobe.ready());
    std::map<std::string, std::string> called;
    for (const WardrobeSection& section : wardrobe.index().sections) {
        for (const WardrobeSample& sample : section.samples) {
            called[sample.words] = sample.called;
        }
    }
    EXPECT_EQ(called.at("cuffs: {piping: white}"), "cuff piping: white");
    EXPECT_EQ(called.at("turnbacks: {ornament: oak-leaf}"), "oak leaf");
    EXPECT_EQ(called.at("hat: {shape: fur-cap, plate: none}"), "cap plate: none");
    EXPECT_EQ(called.at("buttons: {rim: beaded}"), "buttons, rim: beaded");
    // What is written says it.
    EXPECT_EQ(called.at("cuffs: slashed"), "");
}

TEST(WardrobeIndex, LeavesOutWhatIsNotThere) {
    Wardrobe wardrobe;
    ASSERT_TRUE(wardrobe.ready());
    const std::set<std::string> shown = shown_in(wardrobe.index());
    EXPECT_FALSE(shown.contains("belts: none"));
    EXPECT_FALSE(shown.contains("box: none"));
    // What is beneath shows only without these.
    EXPECT_TRUE(shown.contains("lapels: none"));
    EXPECT_TRUE(shown.contains("collar: none"));
}

TEST(WardrobeIndex, ShowsOrnamentsAlone) {
    Wardrobe wardrobe;
    ASSERT_TRUE(wardrobe.ready());
    const Rect alone =
        frame_of(*wardrobe.job().views.at("flat-coat-front"), "ornament-flat").value();
    for (const WardrobeSection& section : wardrobe.index().sections) {
        for (const WardrobeSample& sample : section.samples) {
            if (sample.words.starts_with("turnbacks: {ornament: ")) {
                EXPECT_NEAR(sample.frame.width(), alone.width() * 0.84, 1e-9) << sample.words;
            }
        }
    }
}

TEST(WardrobeIndex, DrawsEveryOptionUnlikeTheOthers) {
    Wardrobe wardrobe;
    ASSERT_TRUE(wardrobe.ready());
    for (PropertyId id = 0; id < properties().size(); ++id) {
        std::set<std::string> pictures;
        for (const Example& example : examples_of(id)) {
            const bool is_new = pictures.insert(wardrobe.drawn(example.settings)).second;
            EXPECT_TRUE(is_new) << example.written << " looks like another of its kind";
        }
        if (pictures.size() == 1) {
            std::vector<Setting> without = examples_of(id).front().settings;
            without.back().value =
                without.back().value == "none" ? std::string(properties()[id].initial) : "none";
            EXPECT_FALSE(pictures.contains(wardrobe.drawn(without)))
                << examples_of(id).front().written << " is not drawn";
        }
    }
}

}  // namespace
}  // namespace platewright::cli
