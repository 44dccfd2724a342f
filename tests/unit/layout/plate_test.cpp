// SPDX-License-Identifier: MIT
// The reference plate: nothing lost, nothing outside, nothing on top of something else.
#include <gtest/gtest.h>

#include <algorithm>
#include <cctype>

#include "base/text.h"
#include "sample.h"

namespace platewright {
namespace {

constexpr double kSevenPoint = 7 * 25.4 / 72;

const std::vector<std::string> kPapers{
    "A3", "A4", "A5", "A6", "letter", "A4-landscape", "A6-landscape", "80x80mm"};

Captions without_key() {
    Captions c = sample::captions();
    c.key.clear();
    c.particulars.clear();
    return c;
}

Captions title_alone() {
    Captions c;
    c.title = "Private";
    return c;
}

const std::vector<Captions>& all_captions() {
    static const std::vector<Captions> kAll{
        sample::captions(), sample::crowded_captions(), without_key(), title_alone()};
    return kAll;
}

struct Laid {
    Document document;
    Diagnostics problems;
};

Laid lay(const Captions& captions, const std::string& paper) {
    const Typesetter type;
    Laid laid;
    laid.document = sample::plate(captions, *parse_paper(paper), type, laid.problems);
    return laid;
}

/// One plate of every caption on every paper.
struct Sample {
    std::string name;
    Captions captions;
    Laid laid;
};

/// Laid out once for all tests.
const std::vector<Sample>& samples() {
    static const std::vector<Sample> kAll = [] {
        std::vector<Sample> made;
        for (const std::string& paper : kPapers) {
            for (std::size_t i = 0; i < all_captions().size(); ++i) {
                made.push_back({paper + ", captions " + std::to_string(i),
                                all_captions()[i],
                                lay(all_captions()[i], paper)});
            }
        }
        return made;
    }();
    return kAll;
}

template <typename Check>
void everywhere(const Check& check) {
    for (const Sample& sample : samples()) {
        SCOPED_TRACE(sample.name);
        check(sample.captions, sample.laid);
    }
}

/// Without spaces and capitals: a line may begin with one that was not written.
std::string bare(const std::string& words) {
    std::string bare;
    for (const char c : words) {
        if (c != ' ') {
            bare += static_cast<char>(std::tolower(static_cast<unsigned char>(c)));
        }
    }
    return bare;
}

std::vector<std::string> single_words(const std::string& words) {
    std::vector<std::string> all;
    for (const std::string_view word : split(words, ' ')) {
        all.emplace_back(word);
    }
    return all;
}

struct Written {
    std::string words;
    Rect box;
};

std::vector<Written> written(const Document& document) {
    const Typesetter type;
    std::vector<Written> all;
    sample::walk(
        document,
        [](const Placed&, const Shape&, const Rect&) {},
        [&](const Placed& item, const Text& text) {
            all.push_back({text.words, sample::box_of(text, item, type)});
        });
    return all;
}

/// Boxes of all that is seen in the layers whose names begin so.
std::vector<Rect> boxes_of(const Document& document, const std::string& layers) {
    std::vector<Rect> boxes;
    sample::walk(
        document,
        [&](const Placed& item, const Shape&, const Rect& seen) {
            if (item.drawing.root.name.starts_with(layers)) {
                boxes.push_back(seen);
            }
        },
        [](const Placed&, const Text&) {});
    return boxes;
}

/// How far a box lies over any of the others, in width; 0 if it lies clear of all.
double deepest(const Rect& box, const std::vector<Rect>& others) {
    double width = 0;
    for (const Rect& other : others) {
        width = std::max(width, sample::common(box, other).width());
    }
    return width;
}

TEST(Plate, LiesWithinTheSheet) {
    everywhere([](const Captions&, const Laid& laid) {
        const Page& page = laid.document.pages.front();
        const auto inside = [&](const Rect& box) {
            return box.empty() || (box.left >= 0 && box.top >= 0 && box.right <= page.width &&
                                   box.bottom <= page.height);
        };
        sample::walk(
            laid.document,
            [&](const Placed& item, const Shape&, const Rect& seen) {
                EXPECT_TRUE(inside(seen)) << item.drawing.root.name;
            },
            [](const Placed&, const Text&) {});
        for (const Written& line : written(laid.document)) {
            EXPECT_TRUE(inside(line.box)) << line.words;
        }
    });
}

TEST(Plate, HasNoWordsOnOneAnother) {
    everywhere([](const Captions&, const Laid& laid) {
        const std::vector<Written> lines = written(laid.document);
        for (std::size_t i = 0; i < lines.size(); ++i) {
            for (std::size_t j = i + 1; j < lines.size(); ++j) {
                const Rect both = sample::common(lines[i].box, lines[j].box);
                EXPECT_TRUE(both.width() < 0.05 || both.height() < 0.05)
                    << lines[i].words << " | " << lines[j].words;
            }
        }
    });
}

TEST(Plate, LabelsOfNarrowFiguresKeepApart) {
    std::vector<Figure> gaiters;
    for (const char* title : {"Gaiter, outer side", "Gaiter, inner side", "Another, inner side"}) {
        Figure gaiter = sample::button(20);
        gaiter.view = "flat";
        gaiter.title = title;
        gaiter.frame = {-150, 0, 150, 700};
        gaiters.push_back(std::move(gaiter));
    }
    const Typesetter type;
    Diagnostics problems;
    const Document document =
        lay_out_plate({gaiters, {}, {}}, title_alone(), *parse_paper("A4"), type, problems);
    std::vector<Rect> labels;
    for (const Written& line : written(document)) {
        if (line.words == "outer side" || line.words == "inner side" || line.words == "inner" ||
            line.words == "outer") {
            labels.push_back(line.box);
        }
    }
    ASSERT_EQ(labels.size(), 3U);
    EXPECT_LT(labels[0].right, labels[1].left);
    EXPECT_LT(labels[1].right, labels[2].left);
}

TEST(Plate, HasNoWordsOnAFigure) {
    everywhere([](const Captions&, const Laid& laid) {
        const std::vector<Rect> figures = boxes_of(laid.document, "figure");
        ASSERT_FALSE(figures.empty());
        for (const Written& line : written(laid.document)) {
            // Boxes of slanting parts have empty corners, in which the words of a roundel may
            // stand.
            const double corner = line.words.starts_with("button") ? 1 : 0;
            EXPECT_LE(deepest(line.box, figures), corner) << line.words;
        }
    });
}

TEST(Plate, LosesNoWord) {
    everywhere([](const Captions& captions, const Laid& laid) {
        const std::string said = bare(sample::all_words(laid.document));
        std::vector<std::string> wanted{
            captions.title, captions.subtitle, captions.drawn_by, captions.source, captions.year};
        wanted.insert(wanted.end(), captions.notes.begin(), captions.notes.end());
        for (const KeyEntry& entry : captions.key) {
            wanted.insert(wanted.end(), {entry.name, entry.made_of, entry.worn});
        }
        for (const auto& [label, words] : captions.particulars) {
            // Label and words stand side by side, so that their lines take turns.
            for (const std::string& part : {label, words}) {
                const std::vector<std::string> parts = single_words(part);
                wanted.insert(wanted.end(), parts.begin(), parts.end());
            }
        }
        for (const std::string& words : wanted) {
            EXPECT_NE(said.find(bare(words)), std::string::npos) << words;
        }
    });
}

TEST(Plate, ReadsWithContrast) {
    everywhere([](const Captions&, const Laid& laid) {
        sample::walk(
            laid.document,
            [](const Placed&, const Shape&, const Rect&) {},
            [&](const Placed&, const Text& text) {
                EXPECT_GE(contrast_ratio(text.colour, laid.document.pages.front().paper), 4.5)
                    << text.words;
                // The film of ink inside the plate's edge is the darkest ground that words stand
                // on.
                EXPECT_GE(contrast_ratio(text.colour, {0xf4, 0xee, 0xdf}), 4.5) << text.words;
            });
    });
}

TEST(Plate, SetsNothingBelowSevenPointUnlessItSaysSo) {
    everywhere([](const Captions&, const Laid& laid) {
        bool small = false;
        sample::walk(
            laid.document,
            [](const Placed&, const Shape&, const Rect&) {},
            [&](const Placed&, const Text& text) {
                small = small || text.size < kSevenPoint - 1e-6;
            });
        EXPECT_EQ(small, !laid.problems.all().empty());
        EXPECT_EQ(laid.problems.error_count(), 0U);
    });
}

TEST(Plate, NeedsNoSmallTypeForAnOrdinaryManOnLetterAndLarger) {
    for (const char* paper :
         {"A3", "A4", "B4", "letter", "legal", "tabloid", "A4-landscape", "A3-landscape"}) {
        EXPECT_TRUE(lay(sample::captions(), paper).problems.all().empty()) << paper;
    }
}

TEST(Plate, WarnsWhenWordsAreTooMany) {
    const Laid laid = lay(sample::crowded_captions(), "A6");
    ASSERT_EQ(laid.problems.all().size(), 1U);
    const Diagnostic& warning = laid.problems.all().front();
    EXPECT_EQ(warning.code, "layout.too-long");
    EXPECT_EQ(warning.severity, Severity::warning);
    EXPECT_FALSE(warning.span);
    EXPECT_TRUE(warning.message.starts_with("the words of this plate fit only in type of "))
        << warning.message;
    EXPECT_EQ(warning.hints.size(), 2U);
}

/// The drawings on the page whose names begin so.
std::vector<Placed> drawings(const Document& document, const std::string& names) {
    std::vector<Placed> found;
    for (const Placed& item : document.pages.front().items) {
        if (item.drawing.root.name.starts_with(names)) {
            found.push_back(item);
        }
    }
    return found;
}

TEST(Plate, StandsFiguresOnOneGroundLine) {
    const std::vector<Placed> men = drawings(lay(sample::captions(), "A4").document, "figure");
    ASSERT_EQ(men.size(), 2U);
    EXPECT_EQ(men[0].at.y, men[1].at.y);
    EXPECT_EQ(men[0].factor, men[1].factor);
    EXPECT_LT(men[0].at.x, men[1].at.x);
    EXPECT_EQ(men[0].drawing.root.name, "figure-1-front");
    EXPECT_EQ(men[1].drawing.root.name, "figure-2-back");
}

TEST(Plate, PutsWordsBesideTheFiguresOnALyingSheet) {
    const Laid laid = lay(sample::captions(), "A4-landscape");
    Rect figures;
    for (const Rect& part : boxes_of(laid.document, "figure")) {
        figures.include(part);
    }
    const std::vector<Written> lines = written(laid.document);
    const auto title = std::ranges::find_if(
        lines, [](const Written& line) { return line.words.starts_with("Private"); });
    ASSERT_NE(title, lines.end());
    EXPECT_GT(title->box.left, figures.right);
}

TEST(Plate, StatesTheScaleItIsDrawnAt) {
    const Typesetter type;
    Diagnostics to;
    // Drawn for 1 : 5, but two men are wider than the sheet at that scale.
    const Document document =
        lay_out_plate({{sample::man("front", 5), sample::man("back", 5)}, {}, {}},
                      sample::captions(),
                      Paper{},
                      type,
                      to);
    const std::vector<Placed> men = drawings(document, "figure-1-front");
    ASSERT_EQ(men.size(), 1U);
    EXPECT_LT(men.front().factor, 1.0 / 9);
    EXPECT_EQ(sample::all_words(document).find("1:5"), std::string::npos);
}

TEST(Plate, MeasuresThirtyCentimetresOnTheScaleBar) {
    const Laid laid = lay(title_alone(), "A4");
    Rect bar;
    sample::walk(
        laid.document,
        [&](const Placed& item, const Shape& shape, const Rect&) {
            if (item.drawing.root.name == "scale") {
                bar.include(item.drawing.paths[shape.path].bounds());
            }
        },
        [](const Placed&, const Text&) {});
    EXPECT_NEAR(bar.width(), 30, 1e-9);
    EXPECT_NE(sample::all_words(laid.document).find("1:10"), std::string::npos);
}

TEST(Plate, KeepsTheRoundelClearOfTheFigures) {
    for (const std::string& paper : kPapers) {
        SCOPED_TRACE(paper);
        const Laid laid = lay(sample::captions(), paper);
        Rect roundel;
        for (const Rect& ring : boxes_of(laid.document, "roundel")) {
            roundel.include(ring);
        }
        const bool small_paper = paper.starts_with("A6") || paper == "80x80mm";
        EXPECT_TRUE(small_paper || !roundel.empty());
        // Boxes of round parts have empty corners; two that meet by a third of the roundel would
        // still be clear.
        EXPECT_LE(deepest(roundel, boxes_of(laid.document, "figure")), roundel.width() / 3);
    }
}

TEST(Plate, DrawsWithoutFiguresButtonOrWords) {
    const Typesetter type;
    Diagnostics to;
    const Document document = lay_out_plate({}, Captions{}, Paper{}, type, to);
    ASSERT_EQ(document.pages.size(), 1U);
    EXPECT_EQ(document.pages.front().items.front().drawing.root.name, "frame");
}

TEST(Plate, TakesOneFigureAndSix) {
    const Typesetter type;
    for (const std::size_t count : {std::size_t{1}, std::size_t{6}}) {
        Diagnostics to;
        const std::vector<Figure> men(count, sample::man("front", 8));
        const Document document =
            lay_out_plate({men, sample::button(1), {}}, sample::captions(), Paper{}, type, to);
        EXPECT_EQ(drawings(document, "figure").size(), count);
    }
}

TEST(Plate, TakesAWholeBookOfNotesInBoundedTime) {
    Captions endless = sample::captions();
    endless.notes.assign(
        2000, "A note of some length that nobody will read, and that is said again and again.");
    const Laid laid = lay(endless, "A4");
    EXPECT_EQ(laid.problems.all().size(), 1U);
    const std::string said = sample::all_words(laid.document);
    std::size_t found = 0;
    for (std::size_t at = said.find("nobodywillread"); at != std::string::npos;
         at = said.find("nobodywillread", at + 1)) {
        ++found;
    }
    EXPECT_EQ(found, 2000U);
}

TEST(Plate, IsTheSameEveryTime) {
    EXPECT_EQ(dump(lay(sample::captions(), "A4").document),
              dump(lay(sample::captions(), "A4").document));
}

TEST(Plate, SaysWhatItShowsForThoseWhoCannotSeeIt) {
    const Document document = lay(sample::captions(), "A4").document;
    EXPECT_EQ(document.title, "Private, Tannbruck Regiment");
    EXPECT_EQ(document.author, "J. Halvern");
    EXPECT_NE(document.description.find("Views: front, back."), std::string::npos);
    EXPECT_NE(document.description.find("dark green: coat, cuffs."), std::string::npos);
}

TEST(Plate, KeepsWordsOnOneLineWhateverCharactersTheyHold) {
    Captions odd = sample::captions();
    odd.title = "Private\n\tTannbruck\x01 Regiment";
    odd.notes = {"\n\n", "a\r\nb"};
    const Laid laid = lay(odd, "A4");
    for (const Written& line : written(laid.document)) {
        for (const char c : line.words) {
            EXPECT_FALSE(std::iscntrl(static_cast<unsigned char>(c))) << line.words;
        }
    }
}

TEST(Plate, NamesThingsBesideItsFiguresWithinTheFrame) {
    const Typesetter type;
    Captions captions = sample::captions();
    captions.callouts = {{"coat.cloth", "coat: blue"}, {"hat.felt", "hat: black"}};
    const Paper paper;
    const std::vector<Rect> frames{sample::man("front", 8).frame, sample::man("back", 8).frame};
    const double scale = plate_scale(frames, captions, paper, type);
    std::vector<Figure> figures{sample::man("front", scale), sample::man("back", scale)};
    figures[0].seen["coat.cloth"] = {90'000, {{{-200, 700}, 50}}};
    figures[1].seen["hat.felt"] = {90'000, {{{100, -20}, 50}}};
    Diagnostics problems;
    const Document plate =
        lay_out_plate({figures, std::nullopt, {}}, captions, paper, type, problems);
    const Captions without = sample::captions();
    EXPECT_GE(scale, plate_scale(frames, without, paper, type));
    std::size_t found = 0;
    for (const Written& line : written(plate)) {
        const bool left = line.words == "coat: blue";
        if (left || line.words == "hat: black") {
            ++found;
            EXPECT_TRUE(left ? line.box.right < 60 : line.box.left > 150) << line.words;
        }
    }
    EXPECT_EQ(found, 2U);
}

TEST(Plate, ShowsDetailsInRingsOfOneSizeAbreastAndHalfAsLargeAgain) {
    const Typesetter type;
    PlatePictures pictures{
        {sample::man("front", 12), sample::man("back", 12)}, sample::button(1), {}};
    Figure part = sample::man("front", 6);
    part.frame = {-100, 600, 100, 800};
    pictures.details = {{"collar", part}, {"cuff", part}};
    Diagnostics problems;
    const Document plate = lay_out_plate(pictures, sample::captions(), Paper{}, type, problems);
    const std::vector<Placed> rings = drawings(plate, "detail-ground");
    ASSERT_EQ(rings.size(), 2U);
    const auto box_of = [](const Placed& ring) {
        return sample::placed(ring.drawing.paths.front().bounds(), ring);
    };
    const Rect button = box_of(drawings(plate, "roundel").front());
    const double factor = drawings(plate, "figure-1-front").front().factor;
    for (const Placed& ring : rings) {
        EXPECT_NEAR(box_of(ring).width(), button.width(), 1e-9);
        EXPECT_NEAR(box_of(ring).centre().y, button.centre().y, 2);
    }
    EXPECT_LT(box_of(rings[0]).right, button.left);
    EXPECT_GT(box_of(rings[1]).left, button.right);
    for (const Placed& detail : drawings(plate, "detail")) {
        if (detail.drawing.root.name == "detail") {
            EXPECT_GE(detail.factor, 1.5 * factor - 1e-9);
        }
    }
}

TEST(Plate, KeepsTheButtonOffTheNamesBesideTheFigure) {
    const Typesetter type;
    Captions captions = sample::captions();
    Figure man = sample::man("front", 12);
    for (int i = 0; i < 12; ++i) {
        const std::string key = "thing-" + std::to_string(i);
        captions.callouts.push_back({key, "name of thing " + std::to_string(i)});
        man.seen[key] = {90'000, {{{i % 2 == 0 ? -150.0 : 150.0, 100.0 * i}, 50}}};
    }
    Diagnostics problems;
    const Figure button = sample::button(1);
    const Document plate = lay_out_plate({{man}, button, {}}, captions, Paper{}, type, problems);
    for (const Placed& by : drawings(plate, "button")) {
        const Rect box = sample::placed(button.frame, by);
        for (const Written& line : written(plate)) {
            EXPECT_TRUE(sample::common(box, line.box).empty()) << line.words;
        }
    }
}

}  // namespace
}  // namespace platewright
