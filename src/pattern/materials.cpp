// SPDX-License-Identifier: MIT
// What a man's clothing takes, added up piece by piece and line by line.
#include "pattern/materials.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <map>
#include <set>

#include "base/text.h"
#include "compose/material_words.h"
#include "pattern/draft.h"
#include "pattern/shapes.h"
#include "pattern/wares.h"
#include "words/terms.h"
#include "words/workshop_messages.h"

namespace platewright {
namespace {

constexpr std::array kGarments = {"coat", "waistcoat", "breeches", "gaiters"};
/// Turn-ins of a loop of lace: twice its width; a loop of the drawings is 10 mm wide.
constexpr double kLoopWidth = 10;
/// Piping is turned in at each end.
constexpr double kPipingEnd = 10;
/// Thread for a length of seam sewn by hand. Common practice, no source.
constexpr double kThreadPerSeam = 3.5;
/// Thread for one buttonhole, worked and barred. Common practice, no source.
constexpr double kThreadPerHole = 1000;

struct PartName {
    std::string_view word;
    std::string_view name;
};

/// First words of parts that are called otherwise when nothing follows.
constexpr std::array kPartNames = std::to_array<PartName>({
    {"strap", "shoulder strap"},
    {"gaiter", "gaiters"},
    {"foot", "foot strap"},
    {"coatee", "coat"},
    {"breeches", "knee"},
    {"knee", "knee band"},
    {"fob", "fob pocket"},
});

/// Pieces that were laid out already, by their list.
using Layings = std::map<std::vector<std::pair<const PatternPiece*, int>>, Laying>;

/// Everything that is counted of some garments together.
class Count {
  public:
    Count(const PatternSource& source,
          const std::vector<PatternPiece>& pieces,
          const MaterialRules& rules,
          std::string garment,
          Layings& layings)
        : source_(source),
          pieces_(pieces),
          rules_(rules),
          garment_(std::move(garment)),
          layings_(layings) {}

    std::vector<MaterialLine> lines() {
        cloth();
        lining();
        interlining();
        trimmings(FlatRow::Kind::loops, FlatRow::Kind::lace);
        trimmings(FlatRow::Kind::piping, FlatRow::Kind::piping);
        buttons();
        thread();
        for (MaterialLine& line : wares_of(source_, pieces_, garment_, rules_.language)) {
            lines_.push_back(std::move(line));
        }
        return std::move(lines_);
    }

  private:
    const PatternSource& source_;
    const std::vector<PatternPiece>& pieces_;
    const MaterialRules& rules_;
    std::string garment_;
    Layings& layings_;
    std::vector<MaterialLine> lines_;

    [[nodiscard]] std::string number(double value, int decimals) const {
        return number_words(rules_.language, value, decimals);
    }

    [[nodiscard]] std::string metres(double mm) const { return number(mm / 1000, 2); }

    [[nodiscard]] std::string called(std::string_view name) const {
        return term(rules_.language, name);
    }

    [[nodiscard]] std::string printed(const Material& material) const {
        return material_in_words(rules_.language, material);
    }

    [[nodiscard]] std::string counted(const Counted& message, int much, double mm) const {
        return say(rules_.language, message, much, {metres(mm)});
    }

    [[nodiscard]] bool counts(const std::string& garment) const {
        return garment_ == "man" || garment_ == garment;
    }

    void add(const char* kind,
             std::string what,
             double amount,
             const char* unit,
             double area,
             std::string sum) {
        lines_.push_back(
            {garment_, kind, std::move(what), amount, unit, area, std::move(sum), {}, {}});
    }

    /// Pieces to lay out, and their finished area.
    struct Lay {
        /// And how many of each.
        std::vector<std::pair<const PatternPiece*, int>> pieces;
        double area = 0;
        int number = 0;

        void take(const PatternPiece& piece) { take(piece, piece.number); }

        void take(const PatternPiece& piece, int many) {
            pieces.emplace_back(&piece, many);
            area += area_of(piece) * many;
            number += many;
        }
    };

    void add_lay(const char* kind, const std::string& what, const Lay& lay) {
        std::vector<PatternPiece> pieces;
        for (const auto& [piece, many] : lay.pieces) {
            pieces.push_back(*piece);
            pieces.back().number = many;
        }
        // What only one garment takes is laid out for it and for the man alike.
        const auto [known, is_new] = layings_.try_emplace(lay.pieces);
        if (is_new) {
            LayingRules rules;
            rules.width = rules_.cloth_width;
            // Woollen cloth has a nap, linen has none.
            rules.one_way = std::string_view(kind) == "cloth";
            known->second = laid_out(pieces, rules);
        }
        const Laying& laid = known->second;
        const double share = laid.covered / (laid.length * rules_.cloth_width);
        add(kind,
            what,
            std::ceil(laid.length / 50) * 50 / 1000,
            "m",
            lay.area / 1e6,
            say(rules_.language,
                messages::kLaySum,
                lay.number,
                {number(lay.area / 1e6, 3),
                 metres(laid.length),
                 rules_.cloth_width_printed,
                 number(share * 100, 0)}));
        lines_.back().lay = laid;
        lines_.back().laid = std::move(pieces);
    }

    void cloth() {
        std::map<std::string, Lay> by_cloth;
        for (const PatternPiece& piece : pieces_) {
            // Marks and metal are lace, not cloth.
            if (counts(piece.garment) && piece.stuff == "cloth" && !piece.cloth.metal &&
                !is_mark(piece)) {
                by_cloth[printed(piece.cloth)].take(piece);
            }
        }
        for (const auto& [name, lay] : by_cloth) {
            add_lay("cloth", name, lay);
        }
    }

    static double around(const PatternPiece& piece) {
        Chain closed = piece.outline;
        closed.push_back(closed.front());
        return length_of(closed);
    }

    static bool is_mark(const PatternPiece& piece) {
        return piece.name == "rank mark" || piece.name == "service mark";
    }

    void lining() {
        std::map<std::string, Lay> by_cloth;
        const Material* coat = source_.uniform.material(property_id("coat.lining"));
        for (const PatternPiece& piece : pieces_) {
            const bool is_lining = piece.stuff == "lining";
            if (!counts(piece.garment) || (!piece.lined && !is_lining)) {
                continue;
            }
            if (is_lining) {
                by_cloth[printed(piece.cloth)].take(piece);
                continue;
            }
            const bool own = piece.garment == "coat" && coat != nullptr;
            by_cloth[own ? printed(*coat) : called("unbleached linen")].take(piece);
        }
        for (const auto& [name, lay] : by_cloth) {
            add_lay("lining", name, lay);
        }
    }

    /// Stiff linen in the facings, and canvases of their own.
    void interlining() {
        Lay lay;
        for (const PatternPiece& piece : pieces_) {
            const int many = piece.stuff == "interlining" ? piece.number : times_stiffened(piece);
            if (counts(piece.garment) && many > 0) {
                lay.take(piece, many);
            }
        }
        if (lay.number > 0) {
            add_lay("interlining", called("stiff linen"), lay);
        }
    }

    /// Lengths of one lace or piping.
    struct Run {
        int loops = 0;
        double loop_length = 0;
        int edges = 0;
        double edge_length = 0;
        int marks = 0;
        double mark_length = 0;
    };

    void trimmings(FlatRow::Kind loops, FlatRow::Kind edge) {
        std::map<std::string, Run> runs;
        for (const auto& [view, flat] : source_.flats) {
            if (!counts(garment_of_view(view))) {
                continue;
            }
            for (const FlatPart& part : flat.parts) {
                if (seen_before(view, part)) {
                    continue;
                }
                for (const FlatRow& row : part.rows) {
                    if (row.kind == edge) {
                        Run& run = runs[printed(row.material)];
                        run.edges += 1;
                        run.edge_length += length_of(row.line);
                    } else if (row.kind == loops) {
                        Run& run = runs[printed(row.material)];
                        run.loops += static_cast<int>(row.at.size());
                        run.loop_length +=
                            static_cast<double>(row.at.size()) * (2 * row.size + 2 * kLoopWidth);
                    }
                }
            }
        }
        if (loops != edge) {
            add_mark_laces(runs);
        }
        for (const auto& [name, run] : runs) {
            loops == edge ? add_piping(name, run) : add_lace(name, run);
        }
    }

    void add_mark_laces(std::map<std::string, Run>& runs) const {
        for (const PatternPiece& piece : pieces_) {
            if (counts(piece.garment) && is_mark(piece)) {
                Run& run = runs[printed(piece.cloth)];
                run.marks += piece.number;
                // Along both its edges, and with that once across.
                run.mark_length += piece.number * around(piece) / 2;
            }
        }
    }

    void add_lace(const std::string& name, const Run& run) {
        std::string pattern = source_.uniform.word(property_id("lace.pattern"));
        std::string sum;
        if (run.loops > 0) {
            sum += counted(messages::kLoopsSum, run.loops, run.loop_length) + " + ";
        }
        if (run.edges > 0) {
            sum += counted(messages::kEdgesSum, run.edges, run.edge_length) + " + ";
        }
        if (run.marks > 0) {
            sum += counted(messages::kMarksSum, run.marks, run.mark_length) + " + ";
        }
        const double net = run.loop_length + run.edge_length + run.mark_length;
        const double all = net * (1 + rules_.lace_waste);
        sum += waste(rules_.lace_waste);
        add("lace",
            pattern == "none" || pattern.empty()
                ? name
                : name + ", " + choice_term(rules_.language, "lace.pattern", pattern),
            std::ceil(all / 100) / 10,
            "m",
            0,
            sum);
    }

    void add_piping(const std::string& name, const Run& run) {
        const double ends = run.edges * 2 * kPipingEnd;
        const double all = (run.edge_length + ends) * (1 + rules_.piping_waste);
        add("piping",
            name,
            std::ceil(all / 100) / 10,
            "m",
            0,
            counted(messages::kEdgesSum, run.edges, run.edge_length) + " + " +
                say(rules_.language, messages::kEndsSum, {metres(ends)}) + " + " +
                waste(rules_.piping_waste));
    }

    [[nodiscard]] std::string waste(double share) const {
        return say(rules_.language, messages::kWasteSum, {number(share * 100, 0)});
    }

    /// Buttons of one metal and size.
    struct Buttons {
        int number = 0;
        /// How many on which part, in the order in which they are met.
        std::vector<std::pair<std::string, int>> on;

        void take(const std::string& part, int many) {
            number += many;
            const auto found = std::ranges::find(on, part, &std::pair<std::string, int>::first);
            if (found == on.end()) {
                on.emplace_back(part, many);
            } else {
                found->second += many;
            }
        }
    };

    /// Coat, waistcoat and gaiter buttons, as the trade sells them.
    static const char* class_of(double size) {
        return size > 18 ? "large" : size > 11 ? "small" : "gaiter";
    }

    /// `white metal, small, 16 mm`.
    using ButtonsBySize = std::map<std::string, Buttons>;

    [[nodiscard]] std::string kind_of_button(const FlatRow& row) const {
        return say(rules_.language,
                   messages::kMetalAndSize,
                   {printed(row.material), called(class_of(row.size)), number(row.size, 0)});
    }

    /// A pair of gaiters is worn; one is drawn.
    static int pairs_in(const std::string& view) {
        return garment_of_view(view) == "gaiters" ? 2 : 1;
    }

    void count_buttons(const std::string& view, const FlatPart& part, ButtonsBySize& by_size) {
        for (const FlatRow& row : part.rows) {
            if (row.kind == FlatRow::Kind::buttons && !seen_before(view, part)) {
                by_size[kind_of_button(row)].take(name_of_part(part.name),
                                                  pairs_in(view) * static_cast<int>(row.at.size()));
            }
        }
    }

    [[nodiscard]] std::string where_worn(const Buttons& of) const {
        std::string words;
        for (const auto& [part, many] : of.on) {
            words += words.empty() ? "" : ", ";
            words +=
                say(rules_.language, messages::kNumberOn, {called(part), std::to_string(many)});
        }
        return words;
    }

    void buttons() {
        ButtonsBySize by_size;
        for (const auto& [view, flat] : source_.flats) {
            if (!counts(garment_of_view(view))) {
                continue;
            }
            for (const FlatPart& part : flat.parts) {
                count_buttons(view, part, by_size);
            }
        }
        for (const auto& [name, of] : by_size) {
            const int spares = std::max(1, of.number / rules_.buttons_for_a_spare);
            const int dozens = (of.number + spares + 11) / 12;
            add("buttons",
                name,
                dozens,
                "dozen",
                0,
                say(rules_.language,
                    messages::kButtonsSum,
                    of.number,
                    {std::to_string(spares), std::to_string(dozens * 12), where_worn(of)}));
        }
    }

    [[nodiscard]] int buttonholes() const {
        int number = 0;
        for (const auto& [view, flat] : source_.flats) {
            for (const FlatPart& part : flat.parts) {
                if (counts(garment_of_view(view)) && !seen_before(view, part)) {
                    const int drawn = static_cast<int>(holes_of(part).size());
                    number += pairs_in(view) * (drawn + holes_under_buttons(part));
                }
            }
        }
        return number;
    }

    void thread() {
        double edges = 0;
        for (const PatternPiece& piece : pieces_) {
            if (counts(piece.garment)) {
                edges += around(piece) * piece.number;
            }
        }
        if (edges > 0) {
            const double seams = edges / 2;
            const int holes = buttonholes();
            add("thread",
                called("waxed linen"),
                std::ceil((seams * kThreadPerSeam + holes * kThreadPerHole) / 10000) * 10,
                "m",
                0,
                say(rules_.language,
                    messages::kThreadSum,
                    {metres(edges),
                     metres(seams),
                     number(kThreadPerSeam, 1),
                     std::to_string(holes),
                     number(kThreadPerHole / 1000, 0)}));
        }
    }
};

}  // namespace

std::string amount_words(const MaterialLine& line, Language language) {
    const bool dozens = line.unit == "dozen" && line.amount > 1;
    return number_words(language, line.amount, 2) + " " +
           term(language, dozens ? "dozens" : line.unit);
}

std::string garment_of_view(const std::string& view) {
    for (const char* name : {"waistcoat", "breeches"}) {
        if (view.find(name) != std::string::npos) {
            return name;
        }
    }
    return view.find("gaiter") != std::string::npos ? "gaiters" : "coat";
}

bool seen_before(const std::string& view, const FlatPart& part) {
    const bool behind = view.ends_with("back") || view.ends_with("inner");
    return behind && (part.name.starts_with("strap-") || part.name.starts_with("epaulette-") ||
                      part.name.starts_with("turnback-") || part.name.starts_with("wing-"));
}

int holes_under_buttons(const FlatPart& part) {
    const bool strap = part.name.starts_with("strap-") || part.name == "foot-strap";
    return strap && holes_of(part).empty() ? static_cast<int>(buttons_of(part).size()) : 0;
}

std::string name_of_part(std::string_view part_name) {
    if (is_coat_body(part_name, "-back")) {
        return "hip";
    }
    const std::string_view first = part_name.substr(0, part_name.find('-'));
    const auto* const found = std::ranges::find(kPartNames, first, &PartName::word);
    return std::string(found == kPartNames.end() ? first : found->name);
}

std::vector<MaterialLine> materials_of(const PatternSource& source,
                                       const std::vector<PatternPiece>& pieces,
                                       const MaterialRules& rules) {
    std::vector<MaterialLine> all;
    Layings layings;
    for (const char* garment : kGarments) {
        for (MaterialLine& line : Count(source, pieces, rules, garment, layings).lines()) {
            all.push_back(std::move(line));
        }
    }
    for (MaterialLine& line : Count(source, pieces, rules, "man", layings).lines()) {
        all.push_back(std::move(line));
    }
    return all;
}

}  // namespace platewright
