// SPDX-License-Identifier: MIT
// Content streams (ISO 32000-1, chapter 8). A path that is painted several times, moved, is written
// each time in the same words after a `cm`: the compression then makes almost nothing of the
// repetition.
#include "write/pdf_content.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>

#include "base/outline.h"
#include "write/numbers.h"
#include "write/pdf_file.h"
#include "write/pdf_path.h"
#include "write/stroke.h"

namespace platewright {

namespace {

void append_matrix(std::string& to, const Affine& m) {
    for (const double value : {m.a, m.b, m.c, m.d}) {
        append_short(to, value, 6);
        to += ' ';
    }
    for (const double value : {m.e, m.f}) {
        append_short(to, value, 4);
        to += ' ';
    }
    to += "cm\n";
}

class Content {
  public:
    Content(PdfType& type, PdfOpacities& opacities) : type_(type), opacities_(opacities) {}

    std::string page(const Page& page) {
        append_matrix(out_, {kPointsPerMm, 0, 0, -kPointsPerMm, 0, page.height * kPointsPerMm});
        out_ += "1 J 1 j\n";
        set_colour(page.paper, false);
        append_pdf_path(out_, rectangle({0, 0, page.width, page.height}), {1000, 3, 1});
        out_ += "f\n";
        for (const Placed& placed : page.items) {
            place(placed);
        }
        return std::move(out_);
    }

    void operator()(const Group& group) {
        if (group.clip.empty()) {
            paint_children(group);
            return;
        }
        save();
        for (const PathId id : group.clip) {
            const Path& path = drawing_->paths.at(id);
            // Run the same way round, so that overlaps do not cancel out.
            if (signed_area(path) < 0) {
                append_pdf_path(out_, reversed(path), grid_);
            } else {
                out_ += words(id);
            }
        }
        out_ += "W n\n";
        paint_children(group);
        restore();
    }

    void operator()(const Shape& shape) {
        const bool fills = shape.fill && shape.fill->alpha > 0;
        const bool strokes = shape.stroke && shape.stroke->alpha > 0 && shape.stroke->width > 0;
        if (fills) {
            set_colour(shape.fill->colour, false);
            set_opacity(shape.fill->alpha, false);
        }
        if (strokes) {
            set_stroke(*shape.stroke);
        }
        const bool moved = shape.shift != Point{} || shape.size != 1;
        if (moved) {
            out_ += "q ";
            append_placing(shape);
        }
        if (fills) {
            out_ += words(shape.path) + (shape.fill->even_odd ? "f*\n" : "f\n");
        }
        if (strokes) {
            out_ += words(shape.path) + "S\n";
        }
        if (moved) {
            out_ += "Q\n";
        }
    }

    void operator()(const Text& text) {
        const Line& line = type_.next_line();
        if (line.runs.empty()) {
            return;
        }
        set_colour(text.colour, false);
        set_opacity(1, false);
        const double turn = text.degrees * std::numbers::pi / 180;
        const double back = line.width * (text.align == Align::start    ? 0
                                          : text.align == Align::middle ? 0.5
                                                                        : 1);
        const double unit = grid_.scale();
        const Affine turned{unit * std::cos(turn),
                            unit * std::sin(turn),
                            -unit * std::sin(turn),
                            unit * std::cos(turn),
                            text.at.x * unit,
                            text.at.y * unit};
        out_ += "q ";
        append_matrix(out_, turned * Affine::translation(-back, 0));
        type_.show(out_, line, text.size, text.tracking != 0);
        out_ += "Q\n";
    }

  private:
    /// What the viewer has been told last.
    struct State {
        std::array<std::string, 2> colour;
        std::array<std::string, 2> opacity;
        std::string line;
    };

    void place(const Placed& placed) {
        drawing_ = &placed.drawing;
        grid_ = grid_for(placed.factor);
        words_.assign(drawing_->paths.size(), {});
        save();
        append_matrix(out_, {grid_.unit, 0, 0, grid_.unit, placed.at.x, placed.at.y});
        (*this)(drawing_->root);
        restore();
    }

    void paint_children(const Group& group) {
        for (const Node& node : group.children) {
            std::visit(*this, node);
        }
    }

    const std::string& words(PathId id) {
        std::string& made = words_.at(id);
        if (made.empty()) {
            append_pdf_path(made, drawing_->paths.at(id), grid_);
        }
        return made;
    }

    void append_placing(const Shape& shape) {
        constexpr int places = 4;
        const Point by = shape.shift * grid_.scale();
        append_short(out_, shape.size, places);
        out_ += " 0 0 ";
        append_short(out_, shape.size, places);
        out_ += ' ';
        append_short(out_, by.x, grid_.places);
        out_ += ' ';
        append_short(out_, by.y, grid_.places);
        out_ += " cm\n";
    }

    void save() {
        states_.push_back(state_);
        out_ += "q\n";
    }

    void restore() {
        state_ = states_.back();
        states_.pop_back();
        out_ += "Q\n";
    }

    void change(std::string& known, std::string wanted) {
        if (known != wanted) {
            out_ += wanted;
            known = std::move(wanted);
        }
    }

    void set_colour(Colour colour, bool of_lines) {
        std::string wanted;
        for (const std::uint8_t part : {colour.red, colour.green, colour.blue}) {
            append_short(wanted, part / 255.0, 4);
            wanted += ' ';
        }
        change(state_.colour.at(of_lines ? 1 : 0), wanted + (of_lines ? "RG\n" : "rg\n"));
    }

    void set_opacity(double alpha, bool of_lines) {
        std::string& known = state_.opacity.at(of_lines ? 1 : 0);
        if (alpha >= 1 && known.empty()) {
            return;  // as a page begins
        }
        std::string wanted = "/";
        wanted += opacities_.name(alpha, of_lines);
        wanted += " gs\n";
        change(known, std::move(wanted));
    }

    void set_stroke(const Stroke& stroke) {
        set_colour(stroke.colour, true);
        set_opacity(stroke.alpha, true);
        std::string wanted;
        append_short(wanted, stroke.width * grid_.scale(), grid_.places + 1);
        wanted += " w [";
        for (const double part : usable_dash(stroke)) {
            append_short(wanted, part * grid_.scale(), grid_.places + 1);
            wanted += ' ';
        }
        change(state_.line, wanted + "] 0 d\n");
    }

    PdfType& type_;
    PdfOpacities& opacities_;
    const Drawing* drawing_ = nullptr;
    Grid grid_;
    std::vector<std::string> words_;
    State state_;
    std::vector<State> states_;
    std::string out_;
};

}  // namespace

std::string PdfOpacities::name(double alpha, bool of_lines) {
    const auto thousandths = std::lround(std::clamp(alpha, 0.0, 1.0) * 1000);
    std::string made(1, of_lines ? 's' : 'f');
    made += std::to_string(thousandths);
    std::string entry = of_lines ? "/CA " : "/ca ";
    append_steps(entry, thousandths, 3);
    states_.emplace(made, std::move(entry));
    return made;
}

std::string PdfOpacities::entries() const {
    std::string made;
    for (const auto& [name, entry] : states_) {
        made.append(" /").append(name).append(" << ").append(entry).append(" >>");
    }
    return made;
}

std::string pdf_content(const Page& page, PdfType& type, PdfOpacities& opacities) {
    return Content(type, opacities).page(page);
}

}  // namespace platewright
