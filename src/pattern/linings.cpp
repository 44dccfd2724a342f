// SPDX-License-Identifier: MIT
// What is cut besides the garments and their facings: linings, pocket bags, foot straps.
#include <algorithm>
#include <cmath>
#include <numbers>
#include <string_view>

#include "pattern/pieces.h"
#include "pattern/pockets.h"
#include "pattern/shapes.h"
#include "words/terms.h"

namespace platewright {
namespace {

/// The lining of a sleeve ends above its hem, so that it does not show. Common practice, no source.
constexpr double kSleeveLiningShort = 12;
/// A pocket bag is as wide as its mouth under the flap and so deep, its lower corners rounded.
/// Common practice, no source.
constexpr double kBagDepth = 220;
constexpr double kBagCorner = 40;
/// A foot strap is so much longer than what is seen of it on both sides. Common practice, no
/// source.
constexpr double kUnderTheSole = 90;

class Lesser {
  public:
    Lesser(const PatternSource& source, const std::vector<PatternPiece>& pieces)
        : source_(source), pieces_(pieces) {}

    std::vector<PatternPiece> all() {
        for (const PatternPiece& piece : pieces_) {
            // A facing lies beside the lining, not over it.
            if (piece.draft && piece.name != "front facing" &&
                (piece.garment == "coat" || piece.garment == "waistcoat")) {
                add_lining(piece);
            }
        }
        for (const PatternPiece& piece : pieces_) {
            if (piece.name == "pocket flap") {
                add_bag(piece);
            }
        }
        add_foot_strap();
        return std::move(made_);
    }

  private:
    const PatternSource& source_;
    const std::vector<PatternPiece>& pieces_;
    std::vector<PatternPiece> made_;

    [[nodiscard]] Material linen() const {
        Material linen;
        linen.name = term(source_.uniform.language, "unbleached linen");
        return linen;
    }

    void keep(PatternPiece piece) {
        finish(piece, source_.allowance);
        made_.push_back(std::move(piece));
    }

    /// As its cloth is cut; only the sleeve's has a pattern of its own.
    void add_lining(const PatternPiece& of) {
        PatternPiece piece = of;
        const Material* own = source_.uniform.material(property_id("coat.lining"));
        piece.stuff = "lining";
        piece.cloth = of.garment == "coat" && own != nullptr ? *own : linen();
        piece.cloth_key = "coat.lining";
        piece.ease = 0;
        piece.repeats = of.name.find("sleeve") == std::string::npos;
        if (!piece.repeats) {
            const double end = shapes::box(of.outline).bottom - kSleeveLiningShort;
            constexpr double far = shapes::kBeyondAll;
            piece.outline = shapes::within({of.outline}, {-far, -far, far, end});
        }
        keep(std::move(piece));
    }

    void add_bag(const PatternPiece& flap) {
        const Rect box = shapes::box(flap.outline);
        const double mouth = std::max(box.width(), box.height()) - 2 * kMouthWithinFlap;
        PatternPiece piece{.garment = flap.garment,
                           .name = "pocket bag",
                           .cloth = linen(),
                           .cloth_key = "coat.lining"};
        piece.stuff = "lining";
        piece.outline = {{0, 0}, {mouth, 0}};
        // A small bag is round below.
        const double round = std::min(kBagCorner, mouth / 2);
        constexpr double quarter = std::numbers::pi / 2;
        for (const double side : {mouth - round, round}) {
            const double from = side == round ? quarter : 0;
            const Chain corner =
                shapes::arc({side, kBagDepth - round}, round, round, from, from + quarter);
            piece.outline.insert(piece.outline.end(), corner.begin(), corner.end());
        }
        // Two to a pocket.
        piece.number = 2 * flap.number;
        keep(std::move(piece));
    }

    void add_foot_strap() {
        const auto view = source_.flats.find("flat-gaiter-outer");
        const FlatPart* part =
            view == source_.flats.end() ? nullptr : view->second.part("foot-strap");
        if (part == nullptr || part->outline.empty()) {
            return;
        }
        const Rect seen = shapes::box(part->outline.front());
        PatternPiece piece{.garment = "gaiters",
                           .name = "foot strap",
                           .cloth = part->cloth,
                           .cloth_key = part->cloth_key};
        piece.stuff = "leather";
        const double along = 2 * seen.height() + kUnderTheSole;
        piece.outline = {{0, 0}, {seen.width(), 0}, {seen.width(), along}, {0, along}};
        piece.number = 2;
        piece.at_line = true;
        finish(piece, 0);
        made_.push_back(std::move(piece));
    }
};

}  // namespace

std::vector<PatternPiece> lesser_pieces(const PatternSource& source,
                                        const std::vector<PatternPiece>& pieces) {
    return Lesser(source, pieces).all();
}

}  // namespace platewright
