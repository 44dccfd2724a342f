// SPDX-License-Identifier: MIT
// The tables of the tailor's sheets.
#include "cli/tailor_tables.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <set>

#include "cli/turnback_rows.h"
#include "pattern/fit.h"
#include "pattern/marks.h"
#include "pattern/materials.h"
#include "vocabulary/body.h"
#include "words/terms.h"
#include "words/workshop_messages.h"

namespace platewright::cli {
namespace {

/// Farther from an edge a row is not measured from it, mm.
constexpr double kFarFromEdge = 80;

/// How far a place lies from the nearest edge of a part.
double from_edge(Point p, const std::vector<Chain>& outline) {
    double least = kFarFromEdge;
    for (const Chain& chain : outline) {
        for (std::size_t i = 0; i < chain.size(); ++i) {
            const Point way = chain[(i + 1) % chain.size()] - chain[i];
            const double share =
                std::clamp(dot(p - chain[i], way) / std::max(1e-9, dot(way, way)), 0.0, 1.0);
            least = std::min(least, length(chain[i] + way * share - p));
        }
    }
    return least;
}

/// How far it is in that direction to the edge of a part.
double to_edge(Point from, Point way, const std::vector<Chain>& outline) {
    constexpr double step = 0.25;
    double gone = 0;
    while (gone < kFarFromEdge && inside(outline, from + way * gone)) {
        gone += step;
    }
    return gone;
}

/// From middle to middle of its buttons or holes.
double step_of(const FlatRow& row) {
    double along = 0;
    for (std::size_t i = 1; i < row.at.size(); ++i) {
        along += length(row.at[i] - row.at[i - 1]);
    }
    return along / static_cast<double>(row.at.size() - 1);
}

/// The same; buttons are as far apart as the holes that they are pushed through, whichever way
/// the two lines were drawn out for this man.
double step_in(const FlatRow& row, const FlatPart& part) {
    constexpr double alike = 1;
    const double own = step_of(row);
    for (const FlatRow& other : part.rows) {
        if (other.at.size() == row.at.size() && std::abs(step_of(other) - own) < alike) {
            return step_of(other);
        }
    }
    return own;
}

/// Says things of one sheet.
class Teller {
  public:
    explicit Teller(const TableSource& source) : source_(source) {}

    [[nodiscard]] std::string mm(double mm, int decimals = 0) const {
        return number_words(source_.language, mm, decimals);
    }

    [[nodiscard]] std::string own(double mm) const { return in_eighths(mm, source_.unit); }

    [[nodiscard]] std::string called(std::string_view name) const {
        return term(source_.language, name);
    }

    [[nodiscard]] std::string titled(std::string_view name) const {
        return title_term(source_.language, name);
    }

    /// A part of a drawing by the first word of its name.
    [[nodiscard]] std::string part(std::string_view part_name) const {
        return titled(name_of_part(part_name));
    }

    [[nodiscard]] std::string say(const Message& message,
                                  std::initializer_list<std::string_view> parts = {}) const {
        return platewright::say(source_.language, message, parts);
    }

    [[nodiscard]] std::string holes(int number, double size) const {
        return platewright::say(source_.language, messages::kHolesLong, number, {mm(size)});
    }

    /// How many, how large, how far from the end of the line and from one another.
    [[nodiscard]] std::string row(const FlatRow& row, const FlatPart& part) const {
        const Counted& what = row.kind == FlatRow::Kind::buttons ? messages::kButtonsAcross
                              : row.kind == FlatRow::Kind::loops ? messages::kLoopsLong
                                                                 : messages::kHolesLong;
        std::string words = platewright::say(
            source_.language, what, static_cast<int>(row.at.size()), {mm(row.size)});
        if (row.at.size() < 2) {
            return within_edge(words, row, part);
        }
        const double apart = step_in(row, part);
        words = say(messages::kFromMiddleToMiddle, {words, mm(apart, 1), own(apart)});
        const double first =
            to_edge(row.at.front(), unit(row.at.front() - row.at[1]), part.outline);
        // A row far out on a body is told by the drawings.
        words = first < kFarFromEdge ? say(messages::kTheFirstFrom, {words, mm(first)}) : words;
        return within_edge(words, row, part);
    }

    /// How far the row keeps from the nearest edge of its part: buttons by their middle, holes by
    /// the end that is nearer to it.
    [[nodiscard]] std::string within_edge(const std::string& words,
                                          const FlatRow& row,
                                          const FlatPart& part) const {
        double least = kFarFromEdge;
        for (const Point p : row.at) {
            least = row.holes.empty() ? std::min(least, from_edge(p, part.outline)) : least;
        }
        for (const auto& [from, to] : row.holes) {
            least = std::min({least, from_edge(from, part.outline), from_edge(to, part.outline)});
        }
        return least < kFarFromEdge ? say(messages::kWithinTheEdge, {words, mm(least)}) : words;
    }

    [[nodiscard]] std::string marks(const Flat& flat, const FlatMarks& marks) const {
        const FlatMarks::Band& first = marks.bands.front();
        const std::size_t middle = first.lower.size() / 2;
        const double above = length(first.lower[middle] - foot_below(flat, marks));
        std::string words = say(messages::kMarksAre,
                                {std::to_string(marks.bands.size()),
                                 mm(first.width, 1),
                                 own(first.width),
                                 mm(above),
                                 slant(angle_of(first, marks.edge))});
        if (marks.bands.size() > 1) {
            const double apart = length(marks.bands[1].lower[middle] - first.upper[middle]);
            words = say(messages::kClothBetween, {words, mm(apart)});
        }
        return words;
    }

    [[nodiscard]] std::string slant(double degrees) const {
        constexpr double level = 3;
        return degrees < level ? say(messages::kLevelWithIt)
                               : say(messages::kAtAngleToIt, {mm(degrees)});
    }

    [[nodiscard]] std::string sleeve(const FlatMarks& marks) const {
        const std::string what = titled(marks.group == "service" ? "service marks"
                                        : marks.group == "rings" ? "cuff rings"
                                                                 : "rank marks");
        return say(marks.left_sleeve ? messages::kOnLeftSleeve : messages::kOnRightSleeve, {what});
    }

  private:
    const TableSource& source_;
};

/// In the order in which each first comes.
std::vector<std::string> garments_of(const std::vector<PatternPiece>& pieces) {
    std::vector<std::string> garments;
    for (const PatternPiece& piece : pieces) {
        if (std::ranges::find(garments, piece.garment) == garments.end()) {
            garments.push_back(piece.garment);
        }
    }
    return garments;
}

}  // namespace

WorkshopTable man_table(const TableSource& source) {
    const Teller teller(source);
    WorkshopTable man;
    man.title = teller.say(messages::kTheMan);
    man.headings = {teller.say(messages::kMeasureIso),
                    teller.say(messages::kHowTaken),
                    "mm",
                    source.unit.name,
                    teller.say(messages::kAsDrawn)};
    man.wide = 1;
    man.numbers = 2;
    for (const BodyRow& row : body_rows()) {
        const double mm = source.body.of(row.measure);
        const std::string name(row.name);
        man.rows.push_back({teller.called("man: " + name),
                            teller.called("taken: " + name),
                            teller.mm(mm),
                            teller.own(mm),
                            teller.mm(reference_body().of(row.measure))});
    }
    man.remarks = {teller.say(messages::kSizesRest)};
    return man;
}

WorkshopTable girth_table(const TableSource& source) {
    const Teller teller(source);
    WorkshopTable made;
    made.title = teller.say(messages::kGirthsOfGarments);
    made.headings = {teller.say(messages::kGirth),
                     teller.say(messages::kOfTheMan),
                     teller.say(messages::kEase),
                     teller.say(messages::kFinished),
                     source.unit.name};
    made.numbers = 1;
    std::string garment;
    for (const std::string& view : source.views) {
        const auto girths = finished_girths(source.flats.at(view), source.body);
        // Front and back are as wide; the back tells all.
        if (girths.empty() || girths.front().garment == garment) {
            continue;
        }
        garment = girths.front().garment;
        made.rows.push_back({teller.titled(garment)});
        for (const FinishedGirth& each : girths) {
            const std::string name(body_rows()[static_cast<std::size_t>(each.measure)].name);
            made.rows.push_back({teller.called("man: " + name),
                                 teller.mm(each.body),
                                 teller.mm(std::round(each.finished) - std::round(each.body)),
                                 teller.mm(each.finished),
                                 teller.own(each.finished)});
        }
    }
    made.remarks = {teller.say(messages::kEaseRemark)};
    return made;
}

namespace {

/// By how much the arm is longer than a sleeve of the coat; 0 where none is measured.
double wrist_left_free(const TableSource& source) {
    for (const auto& [view, dimensions] : source.dimensions) {
        const auto sleeve = std::ranges::find(dimensions, "sleeve", &Dimension::what);
        if (sleeve != dimensions.end()) {
            return source.body.of(BodyMeasure::arm) - std::round(sleeve->mm());
        }
    }
    return 0;
}

}  // namespace

WorkshopTable garment_table(const TableSource& source) {
    const Teller teller(source);
    WorkshopTable made;
    made.title = teller.say(messages::kGarmentsMeasured);
    made.headings = {
        teller.say(messages::kDimension), "mm", source.unit.name, teller.say(messages::kOrdered)};
    made.numbers = 1;
    for (const std::string& view : source.views) {
        const std::vector<Dimension>& dimensions = source.dimensions.at(view);
        if (!dimensions.empty()) {
            made.rows.push_back({teller.titled(source.flats.at(view).title)});
        }
        std::set<std::string> told;
        for (const Dimension& each : dimensions) {
            const WorkshopRow row{teller.called(each.what),
                                  teller.mm(each.mm(), each.stated ? 1 : 0),
                                  teller.own(each.mm()),
                                  each.stated ? each.stated->printed : ""};
            // What is alike on both sleeves is told once.
            if (told.insert(row[0] + row[1]).second) {
                made.rows.push_back(row);
            }
        }
    }
    const bool any_ordered = std::ranges::any_of(
        made.rows, [](const WorkshopRow& row) { return row.size() > 3 && !row[3].empty(); });
    if (!any_ordered) {
        made.headings.pop_back();
        for (WorkshopRow& row : made.rows) {
            row.resize(std::min<std::size_t>(row.size(), 3));
        }
    }
    made.remarks = {teller.say(messages::kGirthsAreHalf)};
    if (const double free = wrist_left_free(source); free >= 1) {
        made.remarks.push_back(teller.say(messages::kSleeveAndArm, {teller.mm(free)}));
    }
    return made;
}

namespace {

/// Where rows of buttons and holes of a part sit; what was `told` before is not told again.
void add_rows(const FlatPart& part,
              const std::string& view,
              const TableSource& source,
              std::set<std::string>& told,
              std::vector<WorkshopRow>& to) {
    const Teller teller(source);
    const std::string name = teller.part(part.name);
    const std::string key = source.flats.at(view).title + name;
    for (const FlatRow& row : part.rows) {
        std::string words = row.at.empty() ? "" : teller.row(row, part);
        if (row.kind == FlatRow::Kind::buttons && !words.empty()) {
            words = with_corner_held(source, view, part, words);
        }
        if (!words.empty() && told.insert(key + words).second) {
            to.push_back({name, words});
        }
    }
    if (const int holes = holes_under_buttons(part); holes > 0) {
        const std::string words = teller.holes(holes, kStrapHole);
        if (told.insert(key + words).second) {
            to.push_back({name, words});
        }
    }
}

/// The same of a flat: marks, the hook of a collar, buttons and holes.
std::vector<WorkshopRow> placement_rows(const std::string& view,
                                        const TableSource& source,
                                        const Teller& teller,
                                        std::set<std::string>& told) {
    const Flat& flat = source.flats.at(view);
    std::vector<WorkshopRow> rows;
    for (const FlatMarks& marks : flat.marks) {
        const std::string sleeve = teller.sleeve(marks);
        if (told.insert(sleeve).second) {
            rows.push_back({sleeve, teller.marks(flat, marks)});
        }
    }
    if (view == "flat-coat-front" && flat.part("collar-") != nullptr) {
        rows.push_back({teller.titled("collar"), teller.say(messages::kCollarHookAt)});
    }
    for (const FlatPart& part : flat.parts) {
        // What is alike on both sides is told of the left.
        if (part.name.find("right") == std::string::npos && !seen_before(view, part)) {
            add_rows(part, view, source, told, rows);
        }
    }
    const std::vector<WorkshopRow> hooks = hook_rows(source, view);
    rows.insert(rows.end(), hooks.begin(), hooks.end());
    return rows;
}

}  // namespace

std::vector<WorkshopTable> placement_tables(const TableSource& source) {
    const Teller teller(source);
    WorkshopTable made;
    made.title = teller.say(messages::kButtonsHolesMarks);
    made.headings = {teller.say(messages::kOnWhat), teller.say(messages::kWhere)};
    made.wide = 1;
    std::set<std::string> told;
    for (const std::string& view : source.views) {
        const Flat& flat = source.flats.at(view);
        const std::vector<WorkshopRow> rows = placement_rows(view, source, teller, told);
        if (!rows.empty()) {
            made.rows.push_back({teller.titled(flat.title)});
            made.rows.insert(made.rows.end(), rows.begin(), rows.end());
        }
    }
    return {std::move(made)};
}

std::vector<WorkshopTable> material_tables(Language language,
                                           const std::vector<MaterialLine>& lines) {
    std::vector<WorkshopTable> tables;
    std::string garment;
    for (const MaterialLine& line : lines) {
        if (line.garment != garment) {
            garment = line.garment;
            WorkshopTable& made = tables.emplace_back();
            made.title = garment == "man" ? say(language, messages::kForOneMan)
                                          : title_term(language, garment);
            made.headings = {say(language, messages::kStuff),
                             say(language, messages::kColourOrKind),
                             say(language, messages::kAmount),
                             say(language, messages::kHowItComes)};
            made.wide = 3;
        }
        tables.back().rows.push_back(
            {term(language, line.kind), line.what, amount_words(line, language), line.sum});
    }
    if (!tables.empty()) {
        tables.back().remarks = {say(language, messages::kLayRemark)};
    }
    return tables;
}

std::vector<ClothPlan> cloth_plans(Language language,
                                   const std::vector<MaterialLine>& lines,
                                   const MaterialRules& rules) {
    std::vector<ClothPlan> plans;
    for (const MaterialLine& line : lines) {
        if (line.garment == "man" && !line.lay.pieces.empty()) {
            plans.push_back({title_term(language, line.kind) + ", " + line.what,
                             say(language,
                                 messages::kLaidSize,
                                 {rules.cloth_width_printed,
                                  number_words(language, line.lay.length / 1000, 2)}),
                             line.lay,
                             line.laid});
        }
    }
    return plans;
}

namespace {

std::string piece_words(Language language, const PatternPiece& piece) {
    const std::string name = title_term(language, piece.name);
    return piece.is_lining ? say(language, messages::kLiningOf, {name}) : name;
}

}  // namespace

WorkshopTable piece_table(Language language, const std::vector<PatternPiece>& pieces) {
    WorkshopTable made;
    made.title = say(language, messages::kPiecesAdded);
    made.headings = {say(language, messages::kPiece),
                     say(language, messages::kNumberCut),
                     say(language, messages::kAreaEach),
                     say(language, messages::kAreaAll),
                     say(language, messages::kEdgesEach)};
    made.numbers = 1;
    int number = 0;
    double area = 0;
    int more = 0;
    double more_area = 0;
    for (const std::string& garment : garments_of(pieces)) {
        made.rows.push_back({title_term(language, garment)});
        for (const PatternPiece& piece : pieces) {
            if (piece.garment != garment) {
                continue;
            }
            Chain closed = piece.outline;
            closed.push_back(closed.front());
            const double all = area_of(piece) * piece.number;
            made.rows.push_back(
                {say(language,
                     messages::kNumbered,
                     {std::to_string(piece.number_in_list), piece_words(language, piece)}),
                 std::to_string(piece.number),
                 number_words(language, area_of(piece) / 1e6, 4),
                 number_words(language, all / 1e6, 4),
                 number_words(language, length_of(closed) / 1000, 2)});
            number += piece.number;
            area += all;
            const int again = (piece.lined ? piece.number : 0) + times_stiffened(piece);
            more += again;
            more_area += again * area_of(piece);
        }
    }
    made.rows.push_back({say(language, messages::kAllPieces),
                         std::to_string(number),
                         "",
                         number_words(language, area / 1e6, 3),
                         ""});
    made.rows.push_back({say(language, messages::kWithSamePatterns),
                         std::to_string(number + more),
                         "",
                         number_words(language, (area + more_area) / 1e6, 3),
                         ""});
    made.remarks = {say(language, messages::kPiecesRemark)};
    return made;
}

}  // namespace platewright::cli
