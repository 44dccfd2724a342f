// SPDX-License-Identifier: MIT
// What every painting function of this stage works with: the drawing under way, the uniform and the
// scale.
#pragma once

#include <functional>
#include <map>
#include <optional>
#include <string>
#include <utility>
#include <vector>

#include "base/drawing.h"
#include "base/ink.h"
#include "compose/brush.h"
#include "compose/edge_hatch.h"
#include "compose/inks.h"
#include "compose/template.h"
#include "resolve/uniform.h"

namespace platewright {

/// Shadows that pieces throw on what lies beneath them.
inline constexpr Colour kCastShadow{0x15, 0x10, 0x1a};

/// What outlines and tailors' lines are drawn with.
inline constexpr Colour kPenInk{0x1d, 0x16, 0x13};

/// A zone made ready: shared by all pieces that lie on it.
struct Volume {
    /// Everything but the zone, filled even-odd: moved towards the light it leaves a crescent of
    /// shade.
    PathId cover = 0;
    PathId outline = 0;
    /// The outline with straight sides.
    std::vector<std::vector<Point>> rim;
    std::vector<HatchStroke> rings;
    std::vector<HatchStroke> crossed;
    /// On black cloth, where only light can be drawn.
    std::vector<HatchStroke> chalked;
    /// Where the light falls fullest, one patch within the other.
    std::vector<PathId> glow;
};

/// A piece of material to be modelled: a part, a patch, a rank bar, a length of tape.
struct Piece {
    PathId shape = 0;
    Inks inks;
    LineWeight line = LineWeight::medium;
    /// Where the contour is drawn, if not all round the shape.
    std::optional<PathId> edge = std::nullopt;
    /// Folds and creases: strokes of the hatching end there.
    std::vector<const Curve*> folds = {};

    [[nodiscard]] PathId contour() const { return edge.value_or(shape); }
};

/// Washes of growing width along one side of a volume; a negative `reach`, in mm, lays them on the
/// lit side.
struct Crescents {
    int steps = 0;
    double reach = 0;
    Colour colour;
    double alpha = 0;
};

/// Where one figure is painted: the drawing in work, the uniform, and what all painters share.
class Easel {
  public:
    Easel(const Uniform& uniform, double scale, bool line_drawing, Ink ink)
        : uniform_(uniform), scale_(scale), line_drawing_(line_drawing), ink_(ink) {}

    /// A tailor's drawing: outlines on a tint of the cloth, with a calm wash along the edges and
    /// the shadow of one thickness of cloth on another.
    [[nodiscard]] bool line_drawing() const { return line_drawing_; }

    /// Nothing casts a shadow in it: nothing may compete with the hatching.
    [[nodiscard]] bool hatched() const { return ink_ == Ink::hatched; }

    /// Tells of points on what is being painted whether something painted later hides them all.
    using Hidden = std::function<bool(const std::vector<Point>&)>;

    void hide(Hidden hidden) { hidden_ = std::move(hidden); }

    [[nodiscard]] bool hidden(const std::vector<Point>& points) const {
        return hidden_ && hidden_(points);
    }

    /// What pieces given to an ornament are made of while it is painted; nothing again afterwards.
    void give(std::optional<Paint> paint) { given_ = paint; }

    /// The material as it is painted: in a line drawing only a tint of it.
    [[nodiscard]] Paint paint_of(const Material& material, double shade = 1) const;

    /// The colours that shade and outline a piece of that paint.
    [[nodiscard]] Inks inks_of(const Paint& paint, Surface surface) const;

    /// Hatches the outline of a piece, in a hatched drawing; `into` is clipped to it.
    void hatch_piece(Group& into, PathId shape, const Paint& paint);

    /// Draw nothing that is not within this window.
    void look_through(const std::optional<Rect>& window) { window_ = window; }

    [[nodiscard]] const Uniform& uniform() const { return uniform_; }

    Drawing& drawing() { return drawing_; }

    /// A length given in mm on the body for print at 1 : 7.2, at this figure's scale: it prints the
    /// same at every scale.
    [[nodiscard]] double printed(double at_reference) const { return at_reference * scale_ / 7.2; }

    /// The width of a line, likewise; but small figures are drawn with a finer pen.
    [[nodiscard]] double weight(double at_reference) const;

    [[nodiscard]] double contour_width(LineWeight line) const;

    /// A tapered line whose straight pieces nobody sees at this scale; `peak` in mm on the body.
    [[nodiscard]] Path tapered(const Curve& along, double peak) const;

    [[nodiscard]] bool holds(const Condition& when) const;

    /// How many of a trimming there are.
    [[nodiscard]] int count_of(const Detail& detail) const;

    /// The paint of a cloth source, or nothing where the uniform says `none`.
    [[nodiscard]] std::optional<Paint> paint_of(const ClothSource& cloth) const;

    /// An ellipse about the origin, made once for each size.
    PathId disc(double half_width, double half_height);

    /// Adds `path` filled.
    void fill(Group& into, Path path, Colour colour, double alpha = 1);
    void fill(Group& into, PathId path, Point shift, Colour colour, double alpha = 1);
    void stroke(Group& into, PathId path, Colour colour, double width, double alpha = 1);

    /// Washes of shade away from the light, washes of light towards it, and hatching where the form
    /// is deep enough. On several volumes each is modelled within its own outline.
    void model(Group& into,
               const Piece& piece,
               const std::vector<const Volume*>& volumes,
               double depth);

    /// Folds and creases that part the light of a form; shorter ones are puckers.
    [[nodiscard]] std::vector<const Curve*> folds_of(const Part& part) const;

    /// The strokes of a volume that lie on the piece; on black those of chalk; none on what is laid
    /// flat.
    void hatch(Group& into, const Piece& piece, const Volume& volume);

    /// Those of the strokes that `lies` says yes to and that are not hidden, as one shape.
    void lay(Group& into,
             const std::vector<HatchStroke>& strokes,
             Colour ink,
             double alpha,
             const std::function<bool(const HatchStroke&)>& lies = {});

    /// Strokes in the shade that a piece of that thickness throws on what it is laid on.
    void hatch_cast(Group& into, PathId shape, double thickness);

    /// Strokes of a shade are not drawn over a button already painted there.
    void keep_clear(Point centre, double radius) { clear_.push_back({centre, radius}); }

    /// Contour, swelling on its shaded side unless it is a thin one. `inner` is clipped to the
    /// piece.
    void contour(Group& outer, Group& inner, const Piece& piece);

  private:
    [[nodiscard]] double flat_contour_width(LineWeight line) const;
    [[nodiscard]] Colour tinted(Colour colour) const;
    [[nodiscard]] Paint fixed_paint(Colour colour) const;
    void wash_edges(Group& into, const Piece& piece);
    void hatch_edges(Group& into, PathId shape, double reach, FromEdge way);
    void crescents(Group& into,
                   const std::vector<std::vector<Point>>& shape,
                   const Volume& volume,
                   const Crescents& wash);
    void model_one(Group& into, const Piece& piece, const Volume& volume, double depth);
    void glow(Group& into, const Piece& piece, const Volume& volume, double strength);
    void thickness(Group& inner, const Piece& piece);

    const Uniform& uniform_;
    double scale_;
    bool line_drawing_;
    Ink ink_;
    std::optional<Rect> window_;
    std::optional<Paint> given_;
    Hidden hidden_;
    std::vector<std::pair<Point, double>> clear_;
    Drawing drawing_;
    std::map<std::pair<double, double>, PathId> discs_;
};

/// Makes a zone ready; on what is laid flat only its outline is wanted.
Volume volume_of(Easel& easel, const Zone& zone);

/// The property whose material a trimming is made of, or an ornament's own; nothing for lines.
std::optional<PropertyId> property_of(const Detail& detail);

/// Paints a trimming of a part. `clipped` lies within the part's outline, `free` on top of it.
struct Trimming {
    Group& clipped;
    Group& free;
    const Piece& on;
    const std::vector<const Volume*>& volumes;
    double depth;
};

/// One rank mark on its sleeve: its edges and its middle, from the inner seam to the outer, and how
/// broad it is across, in mm.
struct MarkBand {
    std::vector<Point> lower;
    std::vector<Point> middle;
    std::vector<Point> upper;
    double width = 12;
};

/// The marks that this detail puts on its sleeve, the lowest first; none on the other sleeve.
std::vector<MarkBand> marks_on(const Uniform& uniform, const Detail& detail);

/// Where holes are worked, from end to end; those too short to be worked are left out.
std::vector<std::pair<Point, Point>> buttonholes_of(const Easel& easel, const Detail& detail);

/// One kind of detail each, as templates/README.md describes it.
void paint_line(Easel& easel, const Detail& detail, const Trimming& where);
void paint_buttons(Easel& easel, const Detail& detail, const Trimming& where);
void paint_buttonholes(Easel& easel, const Detail& detail, const Trimming& where);
void paint_piping(Easel& easel, const Detail& detail, const Trimming& where);
void paint_lace(Easel& easel, const Detail& detail, const Trimming& where);
void paint_patch(Easel& easel, const Detail& detail, const Trimming& where);
void paint_marks(Easel& easel, const Detail& detail, const Trimming& where);
void paint_number(Easel& easel, const Detail& detail, const Trimming& where);
void paint_fringe(Easel& easel, const Detail& detail, const Trimming& where);

/// A flat piece laid on a part: filled, modelled with the part's volume, outlined.
void paint_applied(Easel& easel,
                   const Path& shape,
                   const Paint& paint,
                   const Trimming& where,
                   LineWeight line,
                   Surface surface);

}  // namespace platewright
