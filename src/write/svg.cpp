// SPDX-License-Identifier: MIT
// SVG: the drawing tree as elements. Written here and not by cairo, whose SVG has no names and no
// live text.
#include <map>
#include <set>
#include <vector>

#include "base/outline.h"
#include "write/colour_name.h"
#include "write/numbers.h"
#include "write/svg_ids.h"
#include "write/svg_path.h"
#include "write/svg_style.h"
#include "write/svg_type.h"
#include "write/write.h"

namespace platewright {

namespace {

/// Outlines of the page: equal ones are one, and what is used more than once is written once, in
/// `<defs>`.
class Outlines {
  public:
    /// Counts a use beforehand.
    void count(const std::string& data) { ++uses_[data]; }

    /// The id of an outline that is used more than once, else empty.
    std::string shared(const std::string& data) {
        if (uses_.at(data) < 2) {
            return {};
        }
        const auto [at, is_new] = ids_.emplace(data, short_id('P', ids_.size()));
        if (is_new) {
            defs_ += "<path id=\"" + at->second + "\" d=\"" + data + "\"/>\n";
        }
        return at->second;
    }

    /// The definitions, in the order of their first use.
    [[nodiscard]] const std::string& defs() const { return defs_; }

  private:
    std::map<std::string, int> uses_;
    std::map<std::string, std::string> ids_;
    std::string defs_;
};

/// One placed drawing: its path data is made once.
struct Drawn {
    const Placed* placed = nullptr;
    Grid grid;
    std::vector<std::string> data;

    explicit Drawn(const Placed& from) : placed(&from), grid(grid_for(from.factor)) {
        data.reserve(from.drawing.paths.size());
        for (const Path& path : from.drawing.paths) {
            data.push_back(svg_path_data(path, grid));
        }
    }
};

/// The outlines of a clip, all run the same way round if there are several: viewers take the union
/// by adding up how often a place is gone round, and opposite ways cancel out.
std::vector<std::string> clip_data(const std::vector<PathId>& clip, const Drawn& drawn) {
    std::vector<std::string> made;
    made.reserve(clip.size());
    for (const PathId id : clip) {
        const Path& path = drawn.placed->drawing.paths.at(id);
        const bool turn = clip.size() > 1 && signed_area(path) < 0;
        made.push_back(turn ? svg_path_data(reversed(path), drawn.grid) : drawn.data.at(id));
    }
    return made;
}

void count_uses(const Group& group, const Drawn& drawn, Outlines& outlines, SvgClasses& classes) {
    for (const std::string& data : clip_data(group.clip, drawn)) {
        outlines.count(data);
    }
    for (const Node& node : group.children) {
        if (const auto* shape = std::get_if<Shape>(&node)) {
            outlines.count(drawn.data.at(shape->path));
            classes.count(svg_style(*shape, drawn.grid));
        } else if (const auto* inner = std::get_if<Group>(&node)) {
            count_uses(*inner, drawn, outlines, classes);
        }
    }
}

class Writer {
  public:
    explicit Writer(const Typesetter& type) : type_(type) {}

    std::string body(const Page& page) {
        std::vector<Drawn> all;
        all.reserve(page.items.size());
        for (const Placed& placed : page.items) {
            all.emplace_back(placed);
            count_uses(placed.drawing.root, all.back(), outlines_, classes_);
        }
        std::set<std::string> wanted;
        for (const Drawn& drawn : all) {
            find_wanted(drawn.placed->drawing.root, wanted);
        }
        for (const Drawn& drawn : all) {
            name_places(drawn.placed->drawing.root, wanted);
        }
        for (const Drawn& drawn : all) {
            place(drawn);
        }
        return std::move(out_);
    }

    [[nodiscard]] std::string defs() const {
        const std::string all = outlines_.defs() + clips_ + rows_;
        return all.empty() ? all : "<defs>\n" + all + "</defs>\n";
    }

    [[nodiscard]] std::string style() const {
        const std::string& rules = classes_.rules();
        return type_.style() + (rules.empty() ? rules : "<style>\n" + rules + "</style>\n");
    }

    void operator()(const Shape& shape) { element(shape, svg_style(shape, drawn_->grid)); }

    void operator()(const Text& text) { out_ += type_.element(text, drawn_->grid); }

    void operator()(const Group& group) {
        if (!group.anchor.empty() || !group.leads_to.empty()) {
            linked(group);
            return;
        }
        const bool nameless = group.name.empty() || group.step;
        const bool bare = nameless && group.clip.empty();
        const std::string style = common_style(group);
        const std::string id = nameless ? std::string() : ids_.make(group.name, within_);
        if (group.children.empty()) {
            return;
        }
        if (bare && style.empty()) {
            children(group);
            return;
        }
        out_ += "<g" + (id.empty() ? id : " id=\"" + id + '"');
        if (!group.clip.empty()) {
            out_ += " clip-path=\"url(#" + clip(group.clip) + ")\"";
        }
        out_ += classes_.attributes(style) + ">\n";
        group_body(group, style, id.empty() ? within_ : id);
        out_ += "</g>\n";
    }

  private:
    static void find_wanted(const Group& group, std::set<std::string>& wanted) {
        wanted.insert(group.leads_to);
        for (const Node& node : group.children) {
            if (const auto* inner = std::get_if<Group>(&node)) {
                find_wanted(*inner, wanted);
            }
        }
    }

    /// Gives every place that is led to its id before anything else has one: links may stand above
    /// their places.
    void name_places(const Group& group, const std::set<std::string>& wanted) {
        if (!group.anchor.empty() && wanted.contains(group.anchor)) {
            place_ids_.try_emplace(group.anchor, ids_.make(group.anchor, {}));
        }
        for (const Node& node : group.children) {
            if (const auto* inner = std::get_if<Group>(&node)) {
                name_places(*inner, wanted);
            }
        }
    }

    /// A place, a link, both, or neither if nothing on this page leads here and what this leads to
    /// is on another: that is another file.
    void linked(const Group& group) {
        const auto here = place_ids_.find(group.anchor);
        const auto there = place_ids_.find(group.leads_to);
        const bool leads = there != place_ids_.end();
        if (group.children.empty() || (!leads && here == place_ids_.end())) {
            children(group);
            return;
        }
        const std::string tag = leads ? "a" : "g";
        out_ += "<" + tag;
        if (here != place_ids_.end()) {
            out_ += " id=\"" + here->second + '"';
        }
        if (leads) {
            out_ += " href=\"#" + there->second + '"';
        }
        out_ += ">\n";
        children(group);
        out_ += "</" + tag + ">\n";
    }

    void place(const Drawn& drawn) {
        const Placed& placed = *drawn.placed;
        drawn_ = &drawn;
        out_ += "<g";
        const Group& root = placed.drawing.root;
        const std::string id = root.name.empty() ? std::string() : ids_.make(root.name, {});
        if (!id.empty()) {
            out_ += " id=\"" + id + '"';
        }
        out_ += " transform=\"translate(";
        append_short(out_, placed.at.x, 4);
        out_ += ' ';
        append_short(out_, placed.at.y, 4);
        out_ += ')';
        if (drawn.grid.unit != 1) {
            out_ += "scale(";
            append_short(out_, drawn.grid.unit, 6);
            out_ += ')';
        }
        out_ += '"';
        if (!root.clip.empty()) {
            out_ += " clip-path=\"url(#" + clip(root.clip) + ")\"";
        }
        out_ += ">\n";
        if (!root.name.empty()) {
            out_ += "<title>" + xml_escaped(printable(root.name)) + "</title>\n";
        }
        group_body(root, {}, id);
        out_ += "</g>\n";
    }

    void group_body(const Group& group, const std::string& style, const std::string& id) {
        const std::string outer = within_;
        within_ = id;
        if (style.empty()) {
            children(group);
        } else {
            for (const Node& node : group.children) {
                element(std::get<Shape>(node), {});
            }
        }
        within_ = outer;
    }

    /// Paints the children; several shapes in a row that are painted alike say so once.
    void children(const Group& group) {
        for (std::size_t at = 0; at < group.children.size();) {
            const std::size_t end = end_of_row(group, at);
            constexpr std::size_t worthwhile = 3;
            if (end - at < worthwhile) {
                std::visit(*this, group.children[at]);
                ++at;
                continue;
            }
            const std::string style = style_of(group.children[at]);
            const std::size_t begin = out_.size();
            for (; at < end; ++at) {
                element(std::get<Shape>(group.children[at]), {});
            }
            const std::string row = out_.substr(begin);
            out_.resize(begin);
            out_ += "<use href=\"#" + row_id(row) + '"' + classes_.attributes(style) + "/>\n";
        }
    }

    /// The shading of a form is the same row of shapes for every piece that lies on it, only in
    /// other colours, so a row is written once and its colour given where it is used.
    std::string row_id(const std::string& row) {
        const auto [at, is_new] = row_ids_.try_emplace(row);
        if (is_new) {
            at->second = short_id('R', row_ids_.size() - 1);
            rows_ += "<g id=\"" + at->second + "\">\n" + row + "</g>\n";
        }
        return at->second;
    }

    [[nodiscard]] std::string style_of(const Node& node) const {
        const auto* shape = std::get_if<Shape>(&node);
        return shape == nullptr ? std::string() : svg_style(*shape, drawn_->grid);
    }

    /// The first child after `at` that is painted otherwise.
    [[nodiscard]] std::size_t end_of_row(const Group& group, std::size_t at) const {
        const std::string style = style_of(group.children[at]);
        std::size_t end = at + 1;
        while (!style.empty() && end < group.children.size() &&
               style_of(group.children[end]) == style) {
            ++end;
        }
        return end;
    }

    /// The style of all children, if they are two or more shapes painted alike.
    [[nodiscard]] std::string common_style(const Group& group) const {
        if (group.children.size() < 2 || end_of_row(group, 0) < group.children.size()) {
            return {};
        }
        return style_of(group.children[0]);
    }

    void element(const Shape& shape, const std::string& style) {
        const std::string& data = drawn_->data.at(shape.path);
        if (!is_painted(shape) || data.empty()) {
            return;
        }
        const std::string id = outlines_.shared(data);
        out_ += id.empty() ? "<path d=\"" + data + '"' : "<use href=\"#" + id + '"';
        const Point shift = shape.shift * drawn_->grid.scale();
        if (!id.empty() && shape.size == 1) {
            append_attribute("x", shift.x);
            append_attribute("y", shift.y);
        } else {
            append_transform(shift, shape.size);
        }
        out_ += classes_.attributes(style) + "/>\n";
    }

    /// Nothing where the shape stays as it is.
    void append_transform(Point shift, double size) {
        const int places = drawn_->grid.places;
        if (to_steps(shift.x, places) == 0 && to_steps(shift.y, places) == 0 && size == 1) {
            return;
        }
        out_ += " transform=\"translate(";
        append_short(out_, shift.x, places);
        out_ += ' ';
        append_short(out_, shift.y, places);
        out_ += ')';
        if (size != 1) {
            constexpr int fine = 3;
            out_ += "scale(";
            append_short(out_, size, fine);
            out_ += ')';
        }
        out_ += '"';
    }

    /// A length on the grid, unless it is 0.
    void append_attribute(const char* name, double units) {
        const std::int64_t steps = to_steps(units, drawn_->grid.places);
        if (steps != 0) {
            out_ += ' ';
            out_ += name;
            out_ += "=\"";
            append_steps(out_, steps, drawn_->grid.places);
            out_ += '"';
        }
    }

    /// The id of a clip path; equal ones are one.
    std::string clip(const std::vector<PathId>& paths) {
        std::string members;
        for (const std::string& data : clip_data(paths, *drawn_)) {
            const std::string id = outlines_.shared(data);
            members += id.empty() ? "<path d=\"" + data + "\"/>" : "<use href=\"#" + id + "\"/>";
        }
        const auto [at, is_new] = clip_ids_.emplace(members, short_id('C', clip_ids_.size()));
        if (is_new) {
            clips_ += "<clipPath id=\"" + at->second + "\">" + members + "</clipPath>\n";
        }
        return at->second;
    }

    SvgType type_;
    SvgIds ids_;
    Outlines outlines_;
    SvgClasses classes_;
    std::map<std::string, std::string> clip_ids_;
    std::string clips_;
    std::string rows_;
    std::map<std::string, std::string> row_ids_;
    std::string out_;
    std::string within_;
    std::map<std::string, std::string> place_ids_;
    const Drawn* drawn_ = nullptr;
};

void append_root(std::string& to, const Document& document, const Page& page) {
    std::string width;
    std::string height;
    append_short(width, page.width, 3);
    append_short(height, page.height, 3);
    const std::string language = xml_escaped(printable(document.language));
    to += "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n";
    to += "<svg xmlns=\"http://www.w3.org/2000/svg\"";
    to += " width=\"" + width + "mm\" height=\"" + height + "mm\" viewBox=\"0 0 " + width + " " +
          height + '"';
    to += " lang=\"" + language + "\" xml:lang=\"" + language + '"';
    to +=
        " fill=\"none\" stroke-linecap=\"round\" stroke-linejoin=\"round\" "
        "text-rendering=\"geometricPrecision\">\n";
    to += "<title>" + xml_escaped(printable(document.title)) + "</title>\n";
    if (!document.description.empty()) {
        to += "<desc>" + xml_escaped(printable(document.description)) + "</desc>\n";
    }
}

}  // namespace

std::string write_svg(const Document& document, std::size_t page, const Typesetter& type) {
    const Page& chosen = document.pages.at(page);
    std::string made;
    append_root(made, document, chosen);
    Writer writer(type);
    const std::string body = writer.body(chosen);
    made += writer.style();
    made += writer.defs();
    made += "<path id=\"paper\" fill=\"" + colour_name(chosen.paper) + "\" d=\"";
    made += svg_path_data(rectangle({0, 0, chosen.width, chosen.height}), {1000, 3, 1}) + "\"/>\n";
    made += body;
    return made + "</svg>\n";
}

}  // namespace platewright
