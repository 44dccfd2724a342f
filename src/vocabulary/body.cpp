// SPDX-License-Identifier: MIT
// A man's measures: the tables, and the rules by which they are believed.
#include "vocabulary/body.h"

#include <algorithm>
#include <cmath>

#include "base/geometry.h"
#include "base/text.h"

namespace platewright {
namespace {

/// How they are taken: ISO 8559-1:2017, clause 5, in short. The limits are common practice, no
/// source: beyond them a slip of the tape or of the unit is likelier than such a man.
constexpr std::array<BodyRow, kBodyMeasures> kRows = {{
    {BodyMeasure::height,
     "height",
     "stature",
     "from the floor to the crown, without shoes",
     1300,
     2200},
    {BodyMeasure::chest,
     "chest girth",
     "bust girth|chest",
     "over shoulder blades and chest, under the arms, breathing quietly",
     700,
     1500},
    {BodyMeasure::waist,
     "waist girth",
     "waist",
     "at the natural waist, between the lowest ribs and the hip bones",
     550,
     1500},
    {BodyMeasure::hip, "hip girth", "hip|seat girth", "at the fullest part of the seat", 650, 1500},
    {BodyMeasure::neck,
     "neck girth",
     "neck",
     "20 mm below the Adam's apple, over the nape behind",
     280,
     560},
    {BodyMeasure::nape_to_waist,
     "back neck point to waist",
     "nape to waist|cervical to waist|back neck to waist",
     "from the nape down the spine to the natural waist",
     320,
     560},
    {BodyMeasure::arm,
     "arm length",
     "sleeve|sleeve length",
     "from the point of the shoulder over the bent elbow to the wrist bone",
     450,
     780},
    {BodyMeasure::inside_leg,
     "inside leg length",
     "inside leg|inseam",
     "from the fork to the floor",
     560,
     1050},
    {BodyMeasure::upper_arm,
     "upper arm girth",
     "upper arm",
     "at the thickest part of the upper arm, the arm hanging",
     200,
     550},
    {BodyMeasure::knee,
     "knee girth",
     "knee",
     "level round the knee, over the middle of its cap, the leg straight",
     280,
     600},
    {BodyMeasure::lower_knee,
     "lower knee girth",
     "below the knee|small of the knee",
     "level below the cap of the knee, where breeches are buckled",
     240,
     560},
    {BodyMeasure::calf, "calf girth", "calf", "at the fullest part of the calf", 260, 600},
    {BodyMeasure::least_leg,
     "minimum leg girth",
     "small of the leg",
     "at the thinnest part of the leg, above the ankle",
     160,
     400},
}};

/// Height and chest are those of templates/README.md; the others are read off the flats. They agree
/// with the rules below.
constexpr Body kReference{{1730, 960, 853, 970, 385, 416, 610, 790, 310, 375, 345, 370, 232}};

std::string in_mm(double mm) {
    return format_number(mm, 0) + " mm";
}

std::string_view name_of(BodyMeasure measure) {
    return kRows[static_cast<std::size_t>(measure)].name;
}

/// One relation between two measures.
struct Relation {
    BodyMeasure about;
    BodyMeasure with;
    /// About as much as `share` times the other plus `more` mm, give or take `give` mm.
    double share = 1;
    double more = 0;
    double give = 0;
    std::string_view rule;
};

constexpr std::array kRelations = std::to_array<Relation>({
    {BodyMeasure::nape_to_waist,
     BodyMeasure::height,
     0.25,
     -kInch,
     50,
     "nape to waist is a quarter of the height less 1 in (Rosenfeld, The Practical Designer, "
     "1918)"},
    {BodyMeasure::waist,
     BodyMeasure::chest,
     8.0 / 9,
     0,
     160,
     "the waist is a ninth less than the chest, 32 in for 36 in (Hertzer, Garment Cutting in the "
     "Twentieth Century)"},
    {BodyMeasure::inside_leg,
     BodyMeasure::height,
     0.455,
     0,
     75,
     "the inside leg is about 0.455 of the height (common practice, no source)"},
    {BodyMeasure::arm,
     BodyMeasure::height,
     0.3525,
     0,
     55,
     "the arm is about 0.35 of the height (common practice, no source)"},
    {BodyMeasure::neck,
     BodyMeasure::chest,
     0.4,
     0,
     55,
     "the neck is about 0.4 of the chest (common practice, no source)"},
    {BodyMeasure::hip,
     BodyMeasure::chest,
     1.01,
     0,
     160,
     "the seat measures about as much as the chest (common practice, no source)"},
    {BodyMeasure::upper_arm,
     BodyMeasure::chest,
     0.32,
     0,
     60,
     "the upper arm is about a third of the chest (common practice, no source)"},
    {BodyMeasure::calf,
     BodyMeasure::neck,
     0.97,
     0,
     60,
     "the calf measures about as much as the neck (common practice, no source)"},
    {BodyMeasure::knee,
     BodyMeasure::calf,
     1,
     5,
     45,
     "the knee measures about as much as the calf (common practice, no source)"},
    {BodyMeasure::lower_knee,
     BodyMeasure::knee,
     0.92,
     0,
     35,
     "below the knee the leg is about a twelfth less than over it (common practice, no source)"},
    {BodyMeasure::least_leg,
     BodyMeasure::calf,
     0.63,
     0,
     40,
     "the leg's thinnest part is five eighths of the calf (common practice, no source)"},
});

bool is_girth(BodyMeasure measure) {
    return measure == BodyMeasure::chest || measure == BodyMeasure::waist ||
           measure == BodyMeasure::hip || measure == BodyMeasure::neck ||
           measure == BodyMeasure::upper_arm || measure == BodyMeasure::knee ||
           measure == BodyMeasure::lower_knee || measure == BodyMeasure::calf ||
           measure == BodyMeasure::least_leg;
}

}  // namespace

std::span<const BodyRow> body_rows() {
    return kRows;
}

std::optional<BodyMeasure> find_body_measure(std::string_view name) {
    const std::string wanted = lower(name);
    for (const BodyRow& row : kRows) {
        const auto others = split(row.other_names, '|');
        if (row.name == wanted || std::ranges::find(others, wanted) != others.end()) {
            return row.measure;
        }
    }
    return std::nullopt;
}

const Body& reference_body() {
    return kReference;
}

std::vector<BodyDoubt> doubts_about(const Body& body) {
    std::vector<BodyDoubt> doubts;
    for (const Relation& relation : kRelations) {
        const double mm = body.of(relation.about);
        const double other = body.of(relation.with);
        if (std::abs(mm - (relation.share * other + relation.more)) > relation.give) {
            doubts.push_back({relation.about,
                              std::string(name_of(relation.about)) + " is " + in_mm(mm) +
                                  " with a " + std::string(name_of(relation.with)) + " of " +
                                  in_mm(other),
                              std::string(relation.rule)});
        }
    }
    return doubts;
}

Body completed(const Body& size, const std::array<std::optional<double>, kBodyMeasures>& known) {
    const auto ratio = [&](BodyMeasure measure) {
        const auto& mm = known[static_cast<std::size_t>(measure)];
        return mm ? *mm / size.of(measure) : 1.0;
    };
    const double tall = ratio(BodyMeasure::height);
    const double stout = ratio(BodyMeasure::chest);
    Body body;
    for (const BodyRow& row : kRows) {
        const auto& mm = known[static_cast<std::size_t>(row.measure)];
        const double grown = size.of(row.measure) * (is_girth(row.measure) ? stout : tall);
        body.of(row.measure) = mm.value_or(grown);
    }
    return body;
}

}  // namespace platewright
