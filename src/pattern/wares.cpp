// SPDX-License-Identifier: MIT
// Straps, hooks, buckles and tapes, counted from the pieces and from what the flats show.
#include "pattern/wares.h"

#include <algorithm>
#include <cmath>

#include "base/text.h"
#include "compose/material_words.h"
#include "pattern/shapes.h"
#include "words/terms.h"
#include "words/workshop_messages.h"

namespace platewright {
namespace {

/// One tape behind a waistcoat, from the seam it is sewn into to its end beyond the bow; and the
/// lacing of breeches. Common practice, no source.
constexpr double kTape = 350;
constexpr double kLacing = 1000;

class Wares {
  public:
    Wares(const PatternSource& source,
          const std::vector<PatternPiece>& pieces,
          const std::string& garment,
          Language language)
        : source_(source), pieces_(pieces), garment_(garment), language_(language) {}

    std::vector<MaterialLine> all() {
        hooks();
        buckles("flat-breeches-front", "knee-buckle", "knee buckles", 1);
        // One gaiter is drawn.
        buckles("flat-gaiter-outer", "garter-buckle", "garter buckles", 2);
        tapes();
        leather();
        return std::move(lines_);
    }

  private:
    const PatternSource& source_;
    const std::vector<PatternPiece>& pieces_;
    const std::string& garment_;
    Language language_;
    std::vector<MaterialLine> lines_;

    [[nodiscard]] bool counts(const std::string& garment) const {
        return garment_ == "man" || garment_ == garment;
    }

    void add(const char* kind, std::string what, double amount, const char* unit, std::string sum) {
        lines_.push_back(
            {garment_, kind, std::move(what), amount, unit, 0, std::move(sum), {}, {}});
    }

    void add_pairs(const char* kind, std::string what, double pairs, std::string sum) {
        add(kind, std::move(what), pairs, pairs == 1 ? "pair" : "pairs", std::move(sum));
    }

    /// The view, if it is counted here; else null.
    [[nodiscard]] const Flat* counted(const std::string& view) const {
        return counts(garment_of_view(view)) ? source_.flat(view) : nullptr;
    }

    static std::vector<const FlatPart*> parts(const Flat& flat, std::string_view begins) {
        std::vector<const FlatPart*> found;
        for (const FlatPart& part : flat.parts) {
            if (part.name.starts_with(begins)) {
                found.push_back(&part);
            }
        }
        return found;
    }

    void hooks() {
        const Uniform& man = source_.uniform;
        if (counted("flat-coat-front") == nullptr || !man.speaks(property_id("coat.cloth"))) {
            return;
        }
        const bool hooked = has_hooked_turnbacks(man);
        add_pairs("hooks",
                  term(language_, "hooks and eyes"),
                  1 + (hooked ? 2 : 0),
                  say(language_, messages::kCollarHooks, {"1"}) +
                      (hooked ? " + " + say(language_, messages::kTurnbackHooks, {"2"}) : ""));
    }

    void buckles(const char* view, std::string_view part, const char* name, int of_each) {
        const Flat* flat = counted(view);
        const auto found = flat != nullptr ? parts(*flat, part) : std::vector<const FlatPart*>{};
        if (!found.empty()) {
            const int number = static_cast<int>(found.size()) * of_each;
            add_pairs("buckles",
                      material_in_words(language_, found.front()->cloth),
                      number / 2.0,
                      say(language_,
                          messages::kNumberOn,
                          {term(language_, name), std::to_string(number)}));
        }
    }

    void tapes() {
        double all = 0;
        std::string sum;
        std::string what;
        const auto take = [&](const FlatPart& of, const Counted& message, int number, double mm) {
            what = material_in_words(language_, of.cloth);
            all += number * mm;
            sum += sum.empty() ? "" : " + ";
            sum += say(language_, message, number, {number_words(language_, mm / 1000, 2)});
        };
        if (const Flat* flat = counted("flat-waistcoat-back")) {
            if (const auto tapes = parts(*flat, "tape-"); !tapes.empty()) {
                take(*tapes.front(), messages::kTapesSum, static_cast<int>(tapes.size()), kTape);
            }
        }
        if (const Flat* flat = counted("flat-breeches-back")) {
            if (const auto lacing = parts(*flat, "lacing-"); !lacing.empty()) {
                take(*lacing.front(), messages::kLacingSum, 1, kLacing);
            }
        }
        if (all > 0) {
            add("tape", what, std::ceil(all / 100) / 10, "m", sum);
        }
    }

    /// By the piece: leather is bought by the hide and cut round its faults.
    void leather() {
        for (const PatternPiece& piece : pieces_) {
            if (counts(piece.garment) && piece.stuff == "leather") {
                const Rect box = shapes::box(piece.cut);
                add_pairs("leather",
                          material_in_words(language_, piece.cloth),
                          piece.number / 2.0,
                          say(language_,
                              messages::kLeatherSum,
                              piece.number,
                              {term(language_, piece.name),
                               number_words(language_, box.width(), 0),
                               number_words(language_, box.height(), 0)}));
            }
        }
    }
};

}  // namespace

bool has_hooked_turnbacks(const Uniform& man) {
    const PropertyId held = property_id("turnbacks.held");
    return man.speaks(held) && man.word(held) == "hooked";
}

std::vector<MaterialLine> wares_of(const PatternSource& source,
                                   const std::vector<PatternPiece>& pieces,
                                   const std::string& garment,
                                   Language language) {
    return Wares(source, pieces, garment, language).all();
}

}  // namespace platewright
