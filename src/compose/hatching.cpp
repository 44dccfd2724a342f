// SPDX-License-Identifier: MIT
// Hatching of a piece: strokes of the graver round a form, beside edges and in shadows.
#include <algorithm>
#include <optional>
#include <utility>
#include <vector>

#include "compose/easel.h"

namespace platewright {

namespace {

/// The strokes beside the edges of what is laid flat, and how much farther than the cloth is thick
/// they reach in the shadow it throws, in mm at 1 : 7.2; what is thinner than this throws none.
constexpr double kShadowStroke = 3.6;
constexpr double kShadowFrom = 4;
constexpr double kEdgePitch = 2.2;
constexpr double kEdgeHatchAlpha = 0.55;
/// Chalk on black cloth, on which no dark stroke could be seen, and on other dark cloth.
constexpr double kChalkAlpha = 0.45;
constexpr double kFaintChalkAlpha = 0.3;

/// The strokes that lie on a shape, each as far as the first fold it runs into.
class Strokes {
  public:
    Strokes(const Path& shape, const std::vector<const Curve*>& folds)
        : box_(shape.bounds()), chains_(outlines(shape)), folds_(folds) {}

    [[nodiscard]] std::vector<HatchStroke> of(const std::vector<HatchStroke>& volume) const {
        std::vector<HatchStroke> laid;
        for (const HatchStroke& stroke : volume) {
            if (!touches(stroke)) {
                continue;
            }
            std::optional<HatchStroke> left = stroke;
            for (const Curve* fold : folds_) {
                left = left ? left->up_to(*fold) : left;
            }
            if (left) {
                laid.push_back(*std::move(left));
            }
        }
        return laid;
    }

  private:
    [[nodiscard]] bool touches(const HatchStroke& stroke) const {
        return on(stroke.begin) || on(stroke.middle) || on(stroke.end);
    }

    [[nodiscard]] bool on(Point p) const {
        return p.x >= box_.left && p.x <= box_.right && p.y >= box_.top && p.y <= box_.bottom &&
               inside(chains_, p);
    }

    Rect box_;
    std::vector<Chain> chains_;
    const std::vector<const Curve*>& folds_;
};

std::vector<HatchStroke> every_second(const std::vector<HatchStroke>& strokes) {
    std::vector<HatchStroke> some;
    for (std::size_t i = 0; i < strokes.size(); i += 2) {
        some.push_back(strokes[i]);
    }
    return some;
}

}  // namespace

void Easel::hatch_edges(Group& into, PathId shape, double reach, FromEdge way) {
    const HatchPen pen{printed(kEdgePitch), weight(0.55), 0, reach};
    const auto on_button = [&](Point p) {
        return std::ranges::any_of(
            clear_, [&](const auto& button) { return length(p - button.first) < button.second; });
    };
    const auto clear_of_buttons = [&](const HatchStroke& stroke) {
        return way == FromEdge::inwards ||
               !(on_button(stroke.begin) || on_button(stroke.middle) || on_button(stroke.end));
    };
    lay(into,
        edge_hatch(drawing_.paths[shape], pen, way),
        kPenInk,
        kEdgeHatchAlpha,
        clear_of_buttons);
}

void Easel::lay(Group& into,
                const std::vector<HatchStroke>& strokes,
                Colour ink,
                double alpha,
                const std::function<bool(const HatchStroke&)>& lies) {
    Path together;
    for (const HatchStroke& stroke : strokes) {
        // Of the tip alone nobody would know what it shades.
        if ((!lies || lies(stroke)) && !hidden({stroke.begin, stroke.middle})) {
            together.append(stroke.shape);
        }
    }
    if (!together.empty()) {
        fill(into, std::move(together), ink, alpha);
    }
}

void Easel::hatch_cast(Group& into, PathId shape, double thickness) {
    if (thickness >= kShadowFrom) {
        hatch_edges(into, shape, thickness * 0.8 + printed(kShadowStroke), FromEdge::outwards);
    }
}

std::vector<const Curve*> Easel::folds_of(const Part& part) const {
    constexpr double least = 30;
    std::vector<const Curve*> folds;
    for (const Detail& detail : part.details) {
        const bool fold = detail.kind == DetailKind::fold || detail.kind == DetailKind::crease;
        if (fold && detail.curve.length() > least && holds(detail.when)) {
            folds.push_back(&detail.curve);
        }
    }
    return folds;
}

void Easel::hatch(Group& into, const Piece& piece, const Volume& volume) {
    if (piece.inks.shade_factor <= 0 || line_drawing_) {
        return;
    }
    const Inks& inks = piece.inks;
    const Strokes strokes(drawing_.paths[piece.shape], piece.folds);
    if (inks.black) {
        lay(into, strokes.of(volume.chalked), inks.seam, kChalkAlpha);
        return;
    }
    lay(into, strokes.of(volume.rings), inks.contour, inks.hatch_alpha);
    if (inks.dark) {
        // Beside the dark strokes, which hardly tell on dark cloth, a few faint ones of chalk.
        lay(into, every_second(strokes.of(volume.chalked)), inks.seam, kFaintChalkAlpha);
    }
    // Crossed hatching on light cloth would read as a net.
    if (inks.lightness < 0.8) {
        lay(into, strokes.of(volume.crossed), inks.contour, inks.hatch_alpha);
    }
}

}  // namespace platewright
