// SPDX-License-Identifier: MIT
// Modelling of a piece: washes, hatching, contour.
#include "compose/easel.h"

#include <algorithm>
#include <cmath>

#include "compose/swell.h"

namespace platewright {

namespace {

// Twenty faint steps are smooth on a whole figure; fewer were seen as terraces. What is drawn
// larger than at 1 : 10 takes more of them.
constexpr int kShadeSteps = 20;
constexpr int kLightSteps = 8;
constexpr double kMoreStepsFromScale = 10;
constexpr double kMostSteps = 2.5;
/// Nor are there so many that one is fainter than this: programs that draw a file round each to
/// eight bits, and what they lose of fainter ones is another hue.
constexpr double kFaintest = 0.016;
/// Forms narrower than this, in mm, have no room for all the steps.
constexpr double kFullStepsFrom = 90;
/// How far shade reaches round a form, in mm and as a share of its width.
constexpr double kShadeReach = 105;
constexpr double kShadeShare = 0.75;
constexpr double kLightReach = 26;
constexpr double kShadeAlpha = 0.0220;
constexpr double kLightAlpha = 0.011;
/// From this scale on the pen grows finer with the figure, by this power of its size.
constexpr double kFinerFromScale = 13;
constexpr double kFiner = 0.5;

/// Modelling weaker than this has no room for hatching.
constexpr double kHatchFromDepth = 0.5;
/// White cloth is modelled by shade alone: light on it cannot be seen.
constexpr double kLightFromBelow = 0.88;
/// The wash along the edges of what is laid flat, in mm: no broader than the turn of the cloth, or
/// it would be taken for the modelling of a body and dull the lines.
constexpr double kEdgeReach = 16;
constexpr int kEdgeSteps = 5;
constexpr double kEdgeAlpha = 0.022;
/// The strokes beside those edges, at 1 : 7.2: short, for dimension lines run over the middle; and
/// none on tabs and tapes, which they would blacken.
constexpr double kEdgeStroke = 8;
constexpr double kEdgeHatchFrom = 23;
/// The lighter lip within the contour of black cloth, and of other dark cloth.
constexpr double kLipAlpha = 0.55;
constexpr double kFaintLipAlpha = 0.38;

/// How far the cloth goes towards its colour in full light; and, for there is little above white,
/// how far pale cloth is toned beside that light.
constexpr double kGlow = 0.17;
constexpr double kWhiteGlow = 0.15;
constexpr double kTone = 0.045;
constexpr double kToneFrom = 0.74;
constexpr double kToneWithin = 0.12;
/// What is round the man throws a little light back into the shade's very edge.
constexpr double kThrownReach = 8;
constexpr int kThrownSteps = 2;
/// Colour gathers where a wash dries along an edge.
constexpr double kTideWidth = 4.4;
constexpr double kTideAlpha = 0.12;

constexpr Colour kWhite{0xff, 0xff, 0xff};
/// Face, hands and hair are not hatched; they keep their light and shade, on nearly white.
constexpr Colour kPaleBody{0xf6, 0xf3, 0xf1};

/// Whether any corner of the shape lies outside the rim moved by that much.
bool reaches_out(const std::vector<std::vector<Point>>& shape,
                 const std::vector<std::vector<Point>>& rim,
                 Point shift) {
    return std::ranges::any_of(shape, [&](const std::vector<Point>& chain) {
        return std::ranges::any_of(chain, [&](Point p) { return !inside(rim, p - shift); });
    });
}

}  // namespace

double Easel::weight(double at_reference) const {
    // On a figure the size of a finger, lines of full weight would stand as thick as its straps.
    if (line_drawing_) {
        return printed(at_reference);
    }
    const double finer = std::pow(std::min(1.0, kFinerFromScale / scale_), kFiner);
    return printed(at_reference) * finer;
}

double Easel::contour_width(LineWeight line) const {
    if (line_drawing_) {
        return flat_contour_width(line);
    }
    switch (line) {
        case LineWeight::none:
            return 0;
        case LineWeight::fine:
            // A mark must be told from the hatching round it.
            return weight(hatched() ? 1.5 : 1.1);
        case LineWeight::light:
            return weight(hatched() ? 1.7 : 1.45);
        case LineWeight::medium:
            return weight(1.65);
        case LineWeight::heavy:
            return weight(2.0);
    }
    return 0;
}

double Easel::flat_contour_width(LineWeight line) const {
    // Each step is seen beside the next: garment, facing, flap, tape. Seams and stitches are
    // thinner than all of them.
    switch (line) {
        case LineWeight::none:
            return 0;
        case LineWeight::fine:
            return weight(0.95);
        case LineWeight::light:
            return weight(1.25);
        case LineWeight::medium:
            return weight(1.6);
        case LineWeight::heavy:
            return weight(2.1);
    }
    return 0;
}

Path Easel::tapered(const Curve& along, double peak) const {
    constexpr double unseen = 0.22;
    return platewright::tapered(along, peak, weight(unseen));
}

bool Easel::holds(const Condition& when) const {
    return when.empty() ||
           platewright::holds(when, [this](PropertyId id) { return uniform_.word(id); });
}

int Easel::count_of(const Detail& detail) const {
    return detail.count_from ? uniform_.count(*detail.count_from) : detail.count;
}

std::optional<Paint> Easel::paint_of(const ClothSource& cloth) const {
    if (cloth.given) {
        if (!given_) {
            return std::nullopt;
        }
        return Paint{shaded(given_->colour, hatched() ? 1 : cloth.shade), given_->hatch};
    }
    if (!cloth.property) {
        return fixed_paint(shaded(cloth.fixed, cloth.shade));
    }
    const Material* material = uniform_.material(*cloth.property);
    if (material == nullptr) {
        return std::nullopt;
    }
    const SubstanceKind substance = properties()[*cloth.property].substance;
    const bool body = substance == SubstanceKind::skin || substance == SubstanceKind::hair;
    return body && hatched() ? Paint{kPaleBody, std::nullopt} : paint_of(*material, cloth.shade);
}

Paint Easel::fixed_paint(Colour colour) const {
    // Pupils and muzzles stay black; anything else that nobody chose is left white.
    constexpr double black_below = 0.36;
    if (hatched()) {
        return {to_oklab(colour).l < black_below ? Colour{0, 0, 0} : kWhite, std::nullopt};
    }
    return {tinted(colour), std::nullopt};
}

Paint Easel::paint_of(const Material& material, double shade) const {
    return hatched() ? Paint{kWhite, material.tincture()}
                     : Paint{tinted(shaded(material.colour, shade)), std::nullopt};
}

Colour Easel::tinted(Colour colour) const {
    if (!line_drawing_) {
        return colour;
    }
    // The cloth of the swatch in the key, lifted as little as lets dimension lines be read on it.
    const OkLab cloth = to_oklab(colour);
    return from_oklab({0.04 + 0.95 * cloth.l, cloth.a, cloth.b});
}

Inks Easel::inks_of(const Paint& paint, Surface surface) const {
    const bool lines_only = hatched() && paint.colour != kPaleBody;
    if (lines_only) {
        return line_inks(paint.colour);
    }
    Inks inks = inks_for(paint.colour, surface);
    if (line_drawing_) {
        // One pen draws everything; only on dark cloth its finer lines would vanish, and are drawn
        // in chalk.
        constexpr double chalk_below = 0.5;
        const OkLab cloth = to_oklab(paint.colour);
        inks.contour = kPenInk;
        inks.dark = cloth.l < chalk_below;
        inks.seam = inks.dark ? from_oklab({cloth.l + 0.21, cloth.a * 0.7, cloth.b * 0.7})
                              : mix(kPenInk, paint.colour, 0.12);
    }
    return inks;
}

void Easel::hatch_piece(Group& into, PathId shape, const Paint& paint) {
    if (!paint.hatch) {
        return;
    }
    Rect area = drawing_.paths[shape].bounds();
    if (window_) {
        area = {std::max(area.left, window_->left),
                std::max(area.top, window_->top),
                std::min(area.right, window_->right),
                std::min(area.bottom, window_->bottom)};
    }
    if (area.empty()) {
        return;
    }
    Hatching hatching = hatching_over(area, *paint.hatch, scale_);
    if (!hatching.empty()) {
        into.children.emplace_back(
            Shape{drawing_.add(std::move(hatching.path)),
                  {},
                  std::nullopt,
                  Stroke{Colour{0, 0, 0}, hatching.width, 1, std::move(hatching.dash)}});
    }
}

PathId Easel::disc(double half_width, double half_height) {
    const auto [entry, is_new] = discs_.try_emplace({half_width, half_height}, 0);
    if (is_new) {
        entry->second = drawing_.add(ellipse({0, 0}, half_width, half_height));
    }
    return entry->second;
}

void Easel::fill(Group& into, Path path, Colour colour, double alpha) {
    fill(into, drawing_.add(std::move(path)), {}, colour, alpha);
}

void Easel::fill(Group& into, PathId path, Point shift, Colour colour, double alpha) {
    into.children.emplace_back(Shape{path, shift, Fill{colour, alpha, false}, std::nullopt});
}

void Easel::stroke(Group& into, PathId path, Colour colour, double width, double alpha) {
    into.children.emplace_back(Shape{path, {}, std::nullopt, Stroke{colour, width, alpha, {}}});
}

void Easel::model(Group& into,
                  const Piece& piece,
                  const std::vector<const Volume*>& volumes,
                  double depth) {
    if (piece.inks.shade_factor <= 0 || depth <= 0) {
        return;
    }
    if (line_drawing_) {
        wash_edges(into, piece);
        return;
    }
    for (const Volume* volume : volumes) {
        if (volumes.size() == 1) {
            model_one(into, piece, *volume, depth);
            continue;
        }
        Group own;
        own.name = "volume";
        own.step = true;
        own.clip.push_back(volume->outline);
        model_one(own, piece, *volume, depth);
        into.children.emplace_back(std::move(own));
    }
}

void Easel::wash_edges(Group& into, const Piece& piece) {
    // Cloth laid on a table is even in the middle and turns away only at its edges, most on the
    // side away from the light.
    const Rect box = drawing_.paths[piece.shape].bounds();
    const double reach = std::min(kEdgeReach, 0.22 * std::min(box.width(), box.height()));
    for (int i = kEdgeSteps; i > 0; --i) {
        const double wide = reach * i / kEdgeSteps;
        into.children.emplace_back(
            Shape{piece.shape,
                  kToLight * (wide * 0.4),
                  std::nullopt,
                  Stroke{piece.inks.shade, wide, kEdgeAlpha * piece.inks.shade_factor, {}}});
    }
    if (breadth_of(drawing_.paths[piece.shape]) >= kEdgeHatchFrom) {
        hatch_edges(into, piece.shape, std::min(printed(kEdgeStroke), reach), FromEdge::inwards);
    }
}

void Easel::crescents(Group& into,
                      const std::vector<std::vector<Point>>& shape,
                      const Volume& volume,
                      const Crescents& wash) {
    // Closer together at the edge, where a form turns away fastest.
    constexpr double crowding = 1.23;
    const auto shift = [&wash](int step) {
        return kToLight * (wash.reach * std::pow(static_cast<double>(step) / wash.steps, crowding));
    };
    // A piece in the middle of a form is reached by none but the broadest, or by none at all.
    int first = 1;
    for (int beyond = wash.steps + 1; first < beyond;) {
        const int middle = (first + beyond) / 2;
        if (reaches_out(shape, volume.rim, shift(middle))) {
            beyond = middle;
        } else {
            first = middle + 1;
        }
    }
    for (int step = first; step <= wash.steps; ++step) {
        const Fill faint{settled(wash.colour, wash.alpha, step), wash.alpha, true};
        into.children.emplace_back(Shape{volume.cover, shift(step), faint, std::nullopt});
    }
}

void Easel::model_one(Group& into, const Piece& piece, const Volume& volume, double depth) {
    // A small form needs fewer steps for the same smoothness. All pieces on one volume have the
    // same crescents, stronger or fainter, so that shade runs on from one to the next.
    const Rect box = drawing_.paths[volume.outline].bounds();
    const double room =
        std::min({1.0, box.width() / kFullStepsFrom, box.height() / kFullStepsFrom});
    const double finer = std::clamp(kMoreStepsFromScale / scale_, 1.0, kMostSteps);
    const auto steps = [room, finer](int least, int most, double all) {
        const double wanted = std::min(most * room * finer, all / kFaintest);
        return std::max(least, static_cast<int>(std::ceil(wanted)));
    };
    const double strength = std::min(1.1, 0.35 + depth * 0.65);
    const double all_shade = kShadeAlpha * piece.inks.shade_factor * kShadeSteps;
    const double all_light = kLightAlpha * piece.inks.light_factor * kLightSteps;
    const int shade_steps = steps(3, kShadeSteps, all_shade * strength);
    const int light_steps = steps(2, kLightSteps, all_light * strength);
    const double shade = all_shade / shade_steps;
    const double light = all_light / light_steps;
    glow(into, piece, volume, strength);
    const auto shape = outlines(drawing_.paths[piece.shape]);
    const double reach = std::min(kShadeReach, kShadeShare * std::min(box.width(), box.height()));
    crescents(into, shape, volume, {shade_steps, reach, piece.inks.shade, shade * strength});
    const double lit = light * strength;
    if (piece.inks.lightness < kLightFromBelow) {
        crescents(into, shape, volume, {light_steps, -room * kLightReach, piece.inks.light, lit});
    }
    if (depth >= kHatchFromDepth) {
        crescents(into, shape, volume, {kThrownSteps, room * kThrownReach, piece.inks.light, lit});
        hatch(into, piece, volume);
    }
}

void Easel::glow(Group& into, const Piece& piece, const Volume& volume, double strength) {
    if (volume.glow.empty()) {
        return;
    }
    // Opaque, each in its own mixture: faint washes of light would add up to another hue.
    const Inks& inks = piece.inks;
    const double pale = std::clamp((inks.lightness - kToneFrom) / kToneWithin, 0.0, 1.0);
    const Colour ground = mix(inks.base, inks.shade, kTone * pale * strength);
    const double white = std::clamp((inks.lightness - kLightFromBelow) / 0.04, 0.0, 1.0);
    const Rect room = drawing_.paths[piece.shape].bounds();
    if (pale > 0) {
        fill(into, piece.shape, {}, ground);
    }
    double step = 0;
    for (const PathId patch : volume.glow) {
        ++step;
        if (drawing_.paths[patch].bounds().meets(room)) {
            const double share = (kGlow + kWhiteGlow * white) * strength * step /
                                 static_cast<double>(volume.glow.size());
            fill(into, patch, {}, mix(ground, inks.glow, share));
        }
    }
}

void Easel::contour(Group& outer, Group& inner, const Piece& piece) {
    const double width = contour_width(piece.line);
    if (width <= 0) {
        return;
    }
    if (line_drawing_) {
        if (piece.inks.dark) {
            stroke(inner, piece.contour(), piece.inks.seam, width + weight(1.9), 0.6);
        }
        stroke(outer, piece.contour(), piece.inks.contour, width);
        return;
    }
    const bool thin = piece.line == LineWeight::fine || piece.line == LineWeight::light;
    if (!hatched() && !thin && piece.inks.shade_factor > 0) {
        stroke(inner, piece.contour(), piece.inks.shade, weight(kTideWidth), kTideAlpha);
    }
    if (piece.inks.dark && piece.line != LineWeight::fine) {
        // Two pieces of the same black would melt together without a lighter lip inside the
        // contour.
        const double lip = piece.inks.black ? kLipAlpha : kFaintLipAlpha;
        stroke(inner, piece.contour(), piece.inks.seam, width + weight(2.2), lip);
    }
    if (piece.line == LineWeight::medium && !hatched()) {
        thickness(inner, piece);
    }
    if (thin) {
        stroke(outer, piece.contour(), piece.inks.contour, width * 0.85);
        return;
    }
    // On white a line as heavy as on cloth would stand like a band of its own.
    const double full = piece.inks.lightness > kLightFromBelow ? 1.15 : 1.45;
    const Path& shape = drawing_.paths[piece.shape];
    fill(outer,
         swelling(drawing_.paths[piece.contour()], outlines(shape), width * full),
         piece.inks.contour);
}

void Easel::thickness(Group& inner, const Piece& piece) {
    // The turned edge of a facing catches the light; on white cloth only the hollow behind it
    // shows.
    const bool white = piece.inks.lightness >= kLightFromBelow;
    const Colour edge = white ? piece.inks.seam : piece.inks.light;
    inner.children.emplace_back(
        Shape{piece.contour(),
              kToLight * -weight(white ? 2.2 : 1.5),
              std::nullopt,
              Stroke{edge, weight(white ? 0.6 : 0.9), white ? 0.3 : 0.28, {}}});
}

}  // namespace platewright
