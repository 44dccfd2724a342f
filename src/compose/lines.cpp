// SPDX-License-Identifier: MIT
// Lines and tones inside a part: seams, creases, folds, washes, stitches, patches.
#include <algorithm>
#include <cmath>
#include <vector>

#include "compose/easel.h"
#include "compose/edge_hatch.h"

namespace platewright {

namespace {

/// The middle of a curve, without the ends where a fold runs out.
Path middle_of(const Curve& curve) {
    std::vector<Point> points;
    for (const double share : {0.2, 0.4, 0.6, 0.8}) {
        points.push_back(curve.at(curve.length() * share).at);
    }
    return smooth(points);
}

/// A fold is a soft hollow: a broad faint stroke, a narrow core within it, and light on the side
/// towards the light, a little less than its own width away.
void paint_fold(Easel& easel, const Detail& detail, const Trimming& where) {
    const Inks& inks = where.on.inks;
    const double wide = detail.width;
    const double dark = detail.strength * inks.shade_factor;
    const PathId broad = easel.drawing().add(easel.tapered(detail.curve, wide));
    // On white cloth light cannot be seen.
    if (inks.lightness < 0.86) {
        easel.fill(where.clipped,
                   broad,
                   kToLight * (wide * 0.75),
                   inks.light,
                   detail.strength * 0.45 * inks.light_factor);
    }
    easel.fill(where.clipped, broad, {}, inks.shade, dark * 0.6);
    easel.fill(where.clipped,
               easel.tapered(Curve(middle_of(detail.curve)), wide * 0.5),
               inks.shade,
               dark * 0.5);
}

/// A fold of what is laid flat: its shaded side has a faint wash and the strokes that stand beside
/// the edges. What is shorter is only a pucker, what is finer one of the many lines of a pleat.
void paint_laid_fold(Easel& easel, const Detail& detail, const Trimming& where) {
    constexpr double least = 34;
    constexpr double deepest = 9;
    constexpr double finest = 0.75;
    if (detail.curve.length() < least || detail.width < finest || easel.hatched()) {
        return;
    }
    const double reach = std::min(0.11 * detail.curve.length(), easel.printed(deepest));
    easel.fill(where.clipped,
               easel.drawing().add(easel.tapered(detail.curve, 2 * reach)),
               kToLight * (-0.5 * reach),
               where.on.inks.shade,
               0.07 * where.on.inks.shade_factor);
    const HatchPen pen{easel.printed(2.2), easel.weight(0.5), 0, reach};
    easel.lay(where.clipped, fold_hatch(detail.curve, pen), kPenInk, 0.42);
}

/// On the large forms of a body the shade of a fold is engraved with lines that lie beside it, as
/// the cloth runs: many where it hangs long, few and fine beside a wrinkle. Strokes across would
/// look like lashes. Shorter ones are puckers. On black, shade would not be seen: there the backs
/// of the long folds are drawn, in chalk.
void engrave_fold(Easel& easel, const Detail& detail, const Trimming& where) {
    constexpr double least = 26;
    constexpr double hangs_from = 140;
    constexpr double large_form = 0.9;
    const Inks& inks = where.on.inks;
    const double length = detail.curve.length();
    if (length < least || easel.line_drawing()) {
        return;
    }
    const bool hangs = length > hangs_from;
    if (inks.black) {
        constexpr double chalk = 0.6;
        if (hangs) {
            const HatchPen pen{easel.printed(2.4), easel.weight(0.75)};
            easel.lay(
                where.clipped, fall_hatch(detail.curve, pen, FoldSide::lit), inks.seam, chalk);
        }
        return;
    }
    const bool small = where.depth < large_form || inks.lightness > 0.8;
    if (inks.hatch_alpha < 0.4 || (!hangs && small)) {
        return;
    }
    // Beside a short one they keep close.
    const HatchPen pen{std::min(easel.printed(2.1), 0.045 * length),
                       easel.weight(hangs ? 0.85 : 0.7)};
    easel.lay(where.clipped,
              fall_hatch(detail.curve, pen),
              inks.contour,
              inks.hatch_alpha * (hangs ? 1 : 0.8));
}

/// On a body a seam is seen where the light catches it; a tailor's line says that it runs from edge
/// to edge.
void paint_seam(Easel& easel, const Detail& detail, const Trimming& where) {
    const double width = easel.weight(detail.width);
    if (easel.line_drawing()) {
        easel.stroke(where.clipped, easel.drawing().add(detail.path), where.on.inks.seam, width);
        return;
    }
    easel.fill(where.clipped, easel.tapered(detail.curve, width), where.on.inks.seam);
}

void paint_stitches(Easel& easel, const Detail& detail, const Trimming& where) {
    const bool flat = easel.line_drawing();
    const double step = easel.weight(1);
    // Round ends lengthen every stitch by the line's own width.
    const std::vector<double> dash =
        flat ? std::vector{2.4 * step, 2.9 * step} : std::vector{1.7 * step, 1.7 * step};
    const double width = easel.weight(flat ? std::max(detail.width, 0.65) : detail.width * 0.7);
    where.clipped.children.emplace_back(
        Shape{easel.drawing().add(detail.path),
              {},
              std::nullopt,
              Stroke{where.on.inks.seam, width, flat ? 1 : 0.7, dash}});
}

/// A wash of shade or light, or of a colour of its own, such as the blush of a cheek; on a sheet
/// without colour that is shade. A soft one is nested copies, each as much fainter: more of them
/// the larger and the stronger it is, or their edges would be seen.
void paint_wash(Easel& easel, const Detail& detail, Group& into, Colour colour, double alpha) {
    if (detail.tinted && !easel.hatched()) {
        if (const auto paint = easel.paint_of(detail.cloth)) {
            colour = paint->colour;
        }
    }
    if (!detail.soft) {
        easel.fill(into, detail.path, colour, alpha);
        return;
    }
    const Rect box = detail.path.bounds();
    const double across = std::sqrt(box.width() * box.height());
    // Fainter copies than that would lose their hue to eight bits, and their edges are not seen.
    constexpr double faintest = 4.0 / 255;
    const int room = std::clamp(static_cast<int>(across / 4), 4, 14);
    const int copies = std::clamp(static_cast<int>(alpha / faintest), 2, room);
    const PathId shape = easel.drawing().add(detail.path);
    for (int i = 0; i < copies; ++i) {
        const double size = 1 - 0.5 * i / (copies - 1);
        const double faint = alpha / copies;
        const Fill wash{settled(colour, faint, i + 1), faint, false};
        into.children.emplace_back(
            Shape{shape, box.centre() * (1 - size), wash, std::nullopt, size});
    }
}

}  // namespace

void paint_applied(Easel& easel,
                   const Path& shape,
                   const Paint& paint,
                   const Trimming& where,
                   LineWeight line,
                   Surface surface) {
    Piece piece{easel.drawing().add(clockwise(shape)), easel.inks_of(paint, surface), line};
    Group group;
    group.name = "applied";
    group.step = true;
    group.clip.push_back(piece.shape);
    easel.fill(where.clipped, piece.shape, {}, paint.colour);
    easel.hatch_piece(group, piece.shape, paint);
    easel.model(group, piece, where.volumes, where.depth);
    where.clipped.children.emplace_back(std::move(group));
    easel.stroke(where.clipped, piece.shape, piece.inks.contour, easel.contour_width(line));
}

void paint_line(Easel& easel, const Detail& detail, const Trimming& where) {
    const bool wash = detail.kind == DetailKind::fold || detail.kind == DetailKind::tone ||
                      detail.kind == DetailKind::light;
    if (wash && where.on.inks.shade_factor <= 0) {
        return;
    }
    const Inks& inks = where.on.inks;
    switch (detail.kind) {
        case DetailKind::seam:
            paint_seam(easel, detail, where);
            break;
        case DetailKind::crease:
            if (easel.line_drawing()) {
                paint_laid_fold(easel, detail, where);
            }
            engrave_fold(easel, detail, where);
            // A crease is a turn of the light, not an edge: fainter than any seam.
            easel.fill(where.clipped,
                       easel.tapered(detail.curve, easel.weight(detail.width * 0.85)),
                       inks.seam,
                       0.75);
            break;
        case DetailKind::line:
            easel.stroke(where.clipped,
                         easel.drawing().add(detail.path),
                         inks.contour,
                         easel.weight(detail.width));
            break;
        case DetailKind::stitch:
            paint_stitches(easel, detail, where);
            break;
        case DetailKind::fold:
            paint_fold(easel, detail, where);
            engrave_fold(easel, detail, where);
            break;
        case DetailKind::tone:
            paint_wash(
                easel, detail, where.clipped, inks.shade, detail.strength * inks.shade_factor);
            break;
        case DetailKind::light:
            paint_wash(
                easel, detail, where.clipped, inks.light, detail.strength * inks.light_factor);
            break;
        case DetailKind::patch:
        case DetailKind::buttons:
        case DetailKind::buttonholes:
        case DetailKind::piping:
        case DetailKind::lace:
        case DetailKind::marks:
        case DetailKind::number:
        case DetailKind::fringe:
        case DetailKind::ornament:
            break;
    }
}

void paint_patch(Easel& easel, const Detail& detail, const Trimming& where) {
    if (const auto paint = easel.paint_of(detail.cloth)) {
        const bool outlined = detail.line != LineWeight::none;
        if (outlined) {
            paint_applied(easel, detail.path, *paint, where, detail.line, Surface::wool);
        } else {
            const PathId shape = easel.drawing().add(clockwise(detail.path));
            easel.fill(where.clipped, shape, {}, paint->colour);
            Group hatched;
            hatched.name = "applied";
            hatched.step = true;
            hatched.clip.push_back(shape);
            easel.hatch_piece(hatched, shape, *paint);
            if (!hatched.children.empty()) {
                where.clipped.children.emplace_back(std::move(hatched));
            }
        }
    }
}

}  // namespace platewright
