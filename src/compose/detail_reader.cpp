// SPDX-License-Identifier: MIT
// Reads one line, tone or trimming of a template's part.
#include "compose/detail_reader.h"

#include <algorithm>

#include "base/text.h"
#include "compose/sheet_reader.h"
#include "compose/svg_shapes.h"

namespace platewright {

namespace {

// In the order of DetailKind.
const std::vector<std::string> kKinds{"seam",
                                      "crease",
                                      "line",
                                      "stitch",
                                      "fold",
                                      "tone",
                                      "light",
                                      "patch",
                                      "buttons",
                                      "buttonholes",
                                      "piping",
                                      "lace",
                                      "marks",
                                      "number",
                                      "fringe",
                                      "ornament"};
const std::vector<std::string> kMarkGroups{"marks", "service", "rings"};
const std::vector<std::string> kLineWeights{"none", "fine", "light", "medium", "heavy"};
const std::vector<std::string> kSides{"left", "right", "both"};

/// What holds when the template says nothing, as the table in templates/README.md.
Detail initial(DetailKind kind) {
    Detail detail;
    detail.kind = kind;
    switch (kind) {
        case DetailKind::seam:
            detail.width = 1.4;
            break;
        case DetailKind::line:
            detail.width = 1.2;
            break;
        case DetailKind::stitch:
            detail.width = 0.7;
            break;
        case DetailKind::fold:
            detail.width = 9;
            detail.strength = 0.16;
            break;
        case DetailKind::light:
            detail.strength = 0.12;
            break;
        case DetailKind::piping:
            detail.width = 3;
            break;
        case DetailKind::lace:
            detail.width = 20;
            break;
        case DetailKind::number:
            detail.size = 8;
            break;
        case DetailKind::ornament:
            detail.size = 34;
            detail.count = 1;
            break;
        case DetailKind::fringe:
        case DetailKind::crease:
        case DetailKind::tone:
        case DetailKind::patch:
        case DetailKind::buttons:
        case DetailKind::buttonholes:
        case DetailKind::marks:
            break;
    }
    return detail;
}

const Curve* guide(Attributes& words,
                   const std::string& attribute,
                   const std::string& name,
                   const std::map<std::string, Curve>& guides) {
    const auto found = guides.find(name);
    if (found != guides.end()) {
        return &found->second;
    }
    Diagnostic& error = words.to().error("template.unknown-name",
                                         words.place("data-" + attribute),
                                         "there is no guide '" + name + "'");
    if (const auto near = nearest_word(name, names_in(guides))) {
        error.hints.push_back("did you mean '" + *near + "'?");
    }
    return nullptr;
}

/// The element's own path, or the guide it goes along.
bool read_line(Attributes& words,
               const Affine& to_page,
               const std::map<std::string, Curve>& guides,
               Detail& detail) {
    if (const auto along = words.words("along")) {
        const Curve* curve = guide(words, "along", *along, guides);
        if (curve != nullptr) {
            detail.curve = *curve;
        }
        return curve != nullptr;
    }
    std::string problem;
    const auto path = shape_of(words.element(), problem);
    if (!path) {
        words.to().error("template.path", words.place("d"), problem);
        return false;
    }
    detail.path = path->transformed(to_page);
    detail.curve = Curve(detail.path);
    if (detail.curve.empty()) {
        words.to().error("template.path", words.here(), "this line has no length");
        return false;
    }
    return true;
}

void read_stations(Attributes& words, Detail& detail) {
    words.count(detail);
    words.number("start", detail.start, 0, 2000);
    words.number("end", detail.end, 0, 2000);
}

void read_side(Attributes& words, Detail& detail) {
    if (const auto side = words.choice("side", kSides)) {
        detail.side = static_cast<Side>(*side);
    }
}

/// The two edges `data-between` names.
bool read_band(Attributes& words, const std::map<std::string, Curve>& guides, Detail& detail) {
    const std::vector<std::string> edges = words.names("between");
    if (edges.size() != 2) {
        words.to().error(
            "template.missing", words.here(), "this needs data-between: the two edges of its band");
        return false;
    }
    const Curve* lower = guide(words, "between", edges[0], guides);
    const Curve* upper = guide(words, "between", edges[1], guides);
    if (lower == nullptr || upper == nullptr) {
        return false;
    }
    detail.lower = *lower;
    detail.upper = *upper;
    return true;
}

void read_marks(Attributes& words, Detail& detail) {
    const auto sleeve = words.choice("sleeve", {"left", "right"});
    if (!sleeve) {
        words.to().error("template.missing",
                         words.here(),
                         "rank marks need data-sleeve: left or right, the wearer's");
    }
    detail.side = sleeve.value_or(0) == 0 ? Side::left : Side::right;
    if (const auto group = words.choice("of", kMarkGroups)) {
        detail.group = kMarkGroups[*group];
    }
}

void read_fringe(Attributes& words, Detail& detail) {
    if (!words.cloth(detail.cloth)) {
        words.to().error(
            "template.missing", words.here(), "this trimming needs data-cloth: what it is made of");
    }
    words.property("kind", detail.style);
}

void read_ornament(Attributes& words, Detail& detail) {
    words.device(detail.device);
    if (!words.cloth(detail.cloth)) {
        words.to().error(
            "template.missing", words.here(), "an ornament needs data-cloth: what it is made of");
    }
    words.number("size", detail.size, 2, 400);
    if (!words.element().attribute("data-number").empty()) {
        read_stations(words, detail);
    }
}

void read_buttonholes(Attributes& words,
                      const std::map<std::string, Curve>& guides,
                      Detail& detail) {
    read_stations(words, detail);
    words.number("length", detail.length, 1, 500);
    words.number("gap", detail.gap, -100, 500);
    words.number("clear", detail.clear, -100, 500);
    read_side(words, detail);
    words.property("style", detail.style);
    std::optional<PropertyId> lace;
    words.property("lace", lace);
    detail.cloth.property = lace;
    if (const auto limit = words.words("limit")) {
        if (const Curve* curve = guide(words, "limit", *limit, guides)) {
            detail.limit = *curve;
        }
    }
}

void read_words(Attributes& words, const std::map<std::string, Curve>& guides, Detail& detail) {
    switch (detail.kind) {
        case DetailKind::seam:
        case DetailKind::crease:
        case DetailKind::line:
        case DetailKind::stitch:
            words.number("width", detail.width, 0.1, 50);
            break;
        case DetailKind::fold:
            words.number("width", detail.width, 0.1, 200);
            words.number("strength", detail.strength, 0, 1);
            break;
        case DetailKind::tone:
        case DetailKind::light:
            words.number("strength", detail.strength, 0, 1);
            detail.soft = words.choice("edge", {"hard", "soft"}).value_or(0) == 1;
            detail.tinted = words.cloth(detail.cloth);
            break;
        case DetailKind::patch:
            if (!words.cloth(detail.cloth)) {
                words.to().error("template.missing",
                                 words.here(),
                                 "a patch needs data-cloth: what it is made of");
            }
            read_line_weight(words, detail.line);
            break;
        case DetailKind::buttons:
            read_stations(words, detail);
            words.number("size", detail.size, 2, 100);
            words.number("squash", detail.squash, 0.1, 1);
            detail.style = property_id("buttons.metal");
            words.property("metal", detail.style);
            break;
        case DetailKind::buttonholes:
            read_buttonholes(words, guides, detail);
            break;
        case DetailKind::piping:
        case DetailKind::lace:
            if (!words.cloth(detail.cloth)) {
                words.to().error("template.missing",
                                 words.here(),
                                 "this trimming needs data-cloth: what it is made of");
            }
            words.number("width", detail.width, 0.5, 200);
            read_side(words, detail);
            break;
        case DetailKind::marks:
            read_marks(words, detail);
            break;
        case DetailKind::number:
            words.number("size", detail.size, 1, 100);
            break;
        case DetailKind::fringe:
            read_fringe(words, detail);
            break;
        case DetailKind::ornament:
            read_ornament(words, detail);
            break;
    }
}

}  // namespace

void read_line_weight(Attributes& words, LineWeight& into) {
    if (const auto weight = words.choice("line", kLineWeights)) {
        into = static_cast<LineWeight>(*weight);
    }
}

std::optional<Detail> read_detail(Attributes& words,
                                  const Affine& to_page,
                                  const std::map<std::string, Curve>& guides) {
    const std::string kind = words.element().attribute("class").value();
    const auto found = std::ranges::find(kKinds, kind);
    if (found == kKinds.end()) {
        std::vector<std::string> known = kKinds;
        known.emplace_back("shape");
        Diagnostic& error =
            words.to().error("template.unknown-class",
                             words.place("class"),
                             kind.empty() ? "this shape needs a class that says what it is"
                                          : "there is no class '" + kind + "'");
        const auto near = nearest_word(kind, known);
        error.hints.push_back(near ? "did you mean '" + *near + "'?" : "write " + or_list(known));
        return std::nullopt;
    }
    const std::size_t before = words.to().error_count();
    Detail detail = initial(static_cast<DetailKind>(found - kKinds.begin()));
    words.condition(detail.when);
    const bool placed = detail.kind == DetailKind::marks || detail.kind == DetailKind::fringe
                            ? read_band(words, guides, detail)
                            : read_line(words, to_page, guides, detail);
    read_words(words, guides, detail);
    words.report_unread();
    if (!placed || words.to().error_count() != before) {
        return std::nullopt;
    }
    return detail;
}

}  // namespace platewright
