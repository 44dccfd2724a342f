// SPDX-License-Identifier: MIT
// From the drawing tree to cairo calls.
#include "write/paint.h"

#include <pango/pangocairo.h>

#include <algorithm>
#include <numbers>

#include "base/outline.h"
#include "text/shaping.h"
#include "write/cairo_raii.h"
#include "write/stroke.h"

namespace platewright {

namespace {

void set_source(cairo_t* context, Colour colour, double alpha) {
    cairo_set_source_rgba(
        context, colour.red / 255.0, colour.green / 255.0, colour.blue / 255.0, alpha);
}

void append(cairo_t* context, const Path& path, const Affine& placing) {
    auto point = path.points.begin();
    const auto next = [&] { return placing.apply(*point++); };
    for (const Path::Verb verb : path.verbs) {
        switch (verb) {
            case Path::Verb::move: {
                const Point p = next();
                cairo_move_to(context, p.x, p.y);
                break;
            }
            case Path::Verb::line: {
                const Point p = next();
                cairo_line_to(context, p.x, p.y);
                break;
            }
            case Path::Verb::cubic: {
                const Point b = next();
                const Point c = next();
                const Point d = next();
                cairo_curve_to(context, b.x, b.y, c.x, c.y, d.x, d.y);
                break;
            }
            case Path::Verb::close:
                cairo_close_path(context);
                break;
        }
    }
}

class Painter {
  public:
    Painter(cairo_t* context, const Typesetter& type) : context_(context), type_(type) {}

    void operator()(const Placed& placed) {
        const CairoState state(context_);
        cairo_translate(context_, placed.at.x, placed.at.y);
        cairo_scale(context_, placed.factor, placed.factor);
        paths_ = &placed.drawing.paths;
        (*this)(placed.drawing.root);
    }

    void operator()(const Group& group) {
        const CairoState state(context_);
        if (!group.clip.empty()) {
            clip(group.clip);
        }
        for (const Node& node : group.children) {
            std::visit(*this, node);
        }
    }

    void operator()(const Shape& shape) {
        cairo_new_path(context_);
        append(context_, paths_->at(shape.path), shape.placing());
        if (shape.fill && shape.fill->alpha > 0) {
            set_source(context_, shape.fill->colour, shape.fill->alpha);
            cairo_set_fill_rule(
                context_,
                shape.fill->even_odd ? CAIRO_FILL_RULE_EVEN_ODD : CAIRO_FILL_RULE_WINDING);
            cairo_fill_preserve(context_);
        }
        if (shape.stroke && shape.stroke->alpha > 0 && shape.stroke->width > 0) {
            stroke(*shape.stroke);
        }
        cairo_new_path(context_);
    }

    void operator()(const Text& text) {
        const Line line = platewright::shape(
            type_, text.words, {text.face, text.size, text.tracking, text.lining});
        const CairoState state(context_);
        cairo_translate(context_, text.at.x, text.at.y);
        cairo_rotate(context_, text.degrees * std::numbers::pi / 180);
        const double back = text.align == Align::start ? 0 : text.align == Align::middle ? 0.5 : 1;
        cairo_translate(context_, -line.width * back, 0);
        set_source(context_, text.colour, 1);
        for (const Run& run : line.runs) {
            show(run, text.size);
        }
    }

  private:
    /// Cuts to the union of the paths: all are made to run the same way round, so that overlaps do
    /// not cancel out.
    void clip(const std::vector<PathId>& ids) {
        cairo_new_path(context_);
        for (const PathId id : ids) {
            const Path& path = paths_->at(id);
            append(context_, signed_area(path) < 0 ? reversed(path) : path, Affine());
        }
        cairo_set_fill_rule(context_, CAIRO_FILL_RULE_WINDING);
        cairo_clip(context_);
    }

    void stroke(const Stroke& stroke) {
        set_source(context_, stroke.colour, stroke.alpha);
        cairo_set_line_width(context_, stroke.width);
        const std::vector<double> dash = usable_dash(stroke);
        cairo_set_dash(context_, dash.data(), static_cast<int>(dash.size()), 0);
        cairo_stroke_preserve(context_);
    }

    /// Letters are filled as outlines: as glyphs, cairo moves each to the nearest whole pixel, and
    /// words fall apart.
    void show(const Run& run, double size) {
        cairo_scaled_font_t* scaled =
            pango_cairo_font_get_scaled_font(PANGO_CAIRO_FONT(run.font.get()));
        if (scaled == nullptr) {
            return;
        }
        cairo_set_font_face(context_, cairo_scaled_font_get_font_face(scaled));
        cairo_set_font_size(context_, size);
        std::vector<cairo_glyph_t> glyphs;
        glyphs.reserve(run.glyphs.size());
        for (const Glyph& glyph : run.glyphs) {
            glyphs.push_back({glyph.id, glyph.at.x, glyph.at.y});
        }
        cairo_new_path(context_);
        cairo_set_fill_rule(context_, CAIRO_FILL_RULE_WINDING);
        cairo_glyph_path(context_, glyphs.data(), static_cast<int>(glyphs.size()));
        if (cairo_has_current_point(context_) != 0) {
            cairo_fill(context_);
        } else {
            // Fonts made of pixels have no outlines.
            cairo_show_glyphs(context_, glyphs.data(), static_cast<int>(glyphs.size()));
        }
    }

    cairo_t* context_;
    const Typesetter& type_;
    const std::vector<Path>* paths_ = nullptr;
};

/// Letters keep their drawn shape and width whatever the pixels are.
void set_type_options(cairo_t* context) {
    cairo_font_options_t* options = cairo_font_options_create();
    cairo_font_options_set_hint_style(options, CAIRO_HINT_STYLE_NONE);
    cairo_font_options_set_hint_metrics(options, CAIRO_HINT_METRICS_OFF);
    cairo_font_options_set_antialias(options, CAIRO_ANTIALIAS_GRAY);
    cairo_set_font_options(context, options);
    cairo_font_options_destroy(options);
}

}  // namespace

void paint(cairo_t* context, const Page& page, const Typesetter& type) {
    const CairoState state(context);
    set_type_options(context);
    cairo_set_line_cap(context, CAIRO_LINE_CAP_ROUND);
    cairo_set_line_join(context, CAIRO_LINE_JOIN_ROUND);
    cairo_set_antialias(context, CAIRO_ANTIALIAS_BEST);
    set_source(context, page.paper, 1);
    cairo_rectangle(context, 0, 0, page.width, page.height);
    cairo_fill(context);
    Painter painter(context, type);
    for (const Placed& placed : page.items) {
        painter(placed);
    }
    check(cairo_status(context));
}

}  // namespace platewright
