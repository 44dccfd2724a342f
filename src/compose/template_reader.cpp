// SPDX-License-Identifier: MIT
// Reads and checks a template: the convention of templates/README.md.
#include <algorithm>
#include <cmath>
#include <pugixml.hpp>
#include <set>
#include <string_view>

#include "base/limits.h"
#include "base/text.h"
#include "compose/compose.h"
#include "compose/detail_reader.h"
#include "compose/svg_shapes.h"
#include "compose/template.h"

namespace platewright {

namespace {

const std::vector<std::string> kSurfaces{
    "wool", "linen", "leather", "felt", "metal", "skin", "hair", "braid"};
const std::vector<std::string> kLayers{"zones", "guides", "anchors", "parts"};
constexpr int kGroupDepth = 32;

/// Elements that draw nothing we need; editors add them.
bool skipped(std::string_view name) {
    return name == "title" || name == "desc" || name == "metadata" || name == "defs" ||
           name == "style" || name.find(':') != std::string_view::npos;
}

/// One run of the reader over one file.
class Reader {
  public:
    Reader(const SourceMap& sources, FileId file, Diagnostics& to)
        : sources_(sources), file_(file), to_(to) {}

    std::shared_ptr<const Template> read() {
        const std::size_t before = to_.error_count();
        pugi::xml_document document;
        const std::string& text = sources_.text(file_);
        const pugi::xml_parse_result parsed = document.load_buffer(
            text.data(), text.size(), pugi::parse_default, pugi::encoding_utf8);
        if (!parsed) {
            const auto at = std::min(
                static_cast<std::size_t>(std::max<std::ptrdiff_t>(0, parsed.offset)), text.size());
            to_.error("template.xml",
                      {file_, at, at},
                      std::string("this is not well-formed XML: ") + lower(parsed.description()));
            return nullptr;
        }
        read_root(document.document_element());
        if (to_.error_count() != before) {
            return nullptr;
        }
        return std::make_shared<const Template>(std::move(template_));
    }

  private:
    const SourceMap& sources_;
    FileId file_;
    Diagnostics& to_;
    Template template_;
    std::set<std::string> ids_;
    std::size_t elements_ = 0;

    Attributes attributes(const pugi::xml_node& element) { return {element, sources_, file_, to_}; }

    void read_root(const pugi::xml_node& root) {
        Attributes root_words = attributes(root);
        if (std::string_view(root.name()) != "svg") {
            to_.error("template.not-svg",
                      root_words.here(),
                      "a template is an SVG file: its first element should be 'svg'");
            return;
        }
        template_.title = root.child("title").text().get();
        const std::vector<std::string> views{"front", "back", "side", "detail"};
        const auto view = root_words.choice("view", views);
        template_.view = view ? views[*view] : "";
        if (root.attribute("data-view").empty()) {
            to_.error("template.missing",
                      root_words.here(),
                      "the svg element needs data-view: front, back, side or detail");
        }
        root_words.report_unread();
        read_frame(root, root_words);
        report_unknown_layers(root);
        read_layer(
            root, "guides", [this](const pugi::xml_node& e, const Affine& m) { read_guide(e, m); });
        read_layer(
            root, "zones", [this](const pugi::xml_node& e, const Affine& m) { read_zone(e, m); });
        read_layer(root, "anchors", [this](const pugi::xml_node& e, const Affine& m) {
            read_anchor(e, m);
        });
        read_parts(root);
        check_references(root);
    }

    void read_frame(const pugi::xml_node& root, const Attributes& words) {
        const auto box = parse_numbers(root.attribute("viewBox").value());
        if (!box || box->size() != 4 || (*box)[2] <= 0 || (*box)[3] <= 0 ||
            (*box)[2] > limits::kCoordinate || (*box)[3] > limits::kCoordinate) {
            to_.error(
                "template.frame",
                words.here(),
                "the svg element needs a viewBox of four numbers: left, top, width, height in mm");
            return;
        }
        template_.frame = {(*box)[0], (*box)[1], (*box)[0] + (*box)[2], (*box)[1] + (*box)[3]};
    }

    void report_unknown_layers(const pugi::xml_node& root) {
        for (const pugi::xml_node& child : root.children()) {
            const std::string id = child.attribute("id").value();
            const bool known = std::ranges::find(kLayers, id) != kLayers.end();
            if (child.type() != pugi::node_element || skipped(child.name()) || known) {
                continue;
            }
            Diagnostic& warning =
                to_.warning("template.unknown-layer",
                            attributes(child).here(),
                            id.empty() ? "this is in none of the layers and is not drawn"
                                       : "there is no layer '" + id + "', so this is not drawn");
            warning.hints.push_back("the layers are " + or_list(kLayers));
        }
        if (layer(root, "parts").empty()) {
            to_.error("template.missing",
                      attributes(root).here(),
                      "there is no layer 'parts', so there is nothing to draw");
        }
    }

    static pugi::xml_node layer(const pugi::xml_node& root, const char* id) {
        return root.find_child_by_attribute("g", "id", id);
    }

    Affine own_transform(const pugi::xml_node& element) {
        const pugi::xml_attribute attribute = element.attribute("transform");
        if (attribute.empty()) {
            return {};
        }
        const auto transform = parse_transform(attribute.value());
        if (!transform) {
            to_.error("template.transform",
                      attributes(element).place("transform"),
                      "this transform cannot be read");
            return {};
        }
        return *transform;
    }

    bool within_limit(const pugi::xml_node& element) {
        if (++elements_ <= limits::kTemplateElements) {
            return true;
        }
        if (elements_ == limits::kTemplateElements + 1) {
            to_.error("template.too-large",
                      attributes(element).here(),
                      "a template may have at most " + std::to_string(limits::kTemplateElements) +
                          " elements");
        }
        return false;
    }

    template <typename Take>
    void read_layer(const pugi::xml_node& root, const char* id, Take take) {
        if (const pugi::xml_node group = layer(root, id)) {
            each_shape(group, own_transform(root) * own_transform(group), take, 0);
        }
    }

    /// Every shape below `group`, whatever groups the editor has put around it.
    template <typename Take>
    void each_shape(const pugi::xml_node& group, const Affine& to_page, Take take, int depth) {
        for (const pugi::xml_node& child : group.children()) {
            const std::string_view name = child.name();
            if (child.type() != pugi::node_element || skipped(name) || !within_limit(child)) {
                continue;
            }
            const Affine matrix = to_page * own_transform(child);
            if (name == "g" && depth < kGroupDepth) {
                each_shape(child, matrix, take, depth + 1);
            } else if (is_shape(name)) {
                take(child, matrix);
            } else {
                report_undrawable(child);
            }
        }
    }

    void report_undrawable(const pugi::xml_node& element) {
        to_.error("template.undrawable",
                  attributes(element).here(),
                  "'" + std::string(element.name()) + "' cannot be used in a template")
            .hints.emplace_back(
                "draw it as a path; clones are unlinked and text is turned into paths in the "
                "editor");
    }

    std::string id_of(const pugi::xml_node& element, const char* what) {
        std::string id = element.attribute("id").value();
        if (id.empty()) {
            to_.error("template.missing",
                      attributes(element).here(),
                      std::string("this ") + what + " needs an id: its name");
        } else if (!ids_.insert(id).second) {
            to_.error("template.duplicate-id",
                      attributes(element).place("id"),
                      "the name '" + id + "' is used twice");
        }
        return id;
    }

    std::optional<Path> path_of(const pugi::xml_node& element, const Affine& to_page) {
        std::string problem;
        const auto path = shape_of(element, problem);
        if (!path) {
            const Attributes words = attributes(element);
            to_.error("template.path", words.place("d"), problem);
            return std::nullopt;
        }
        return path->transformed(to_page);
    }

    void read_guide(const pugi::xml_node& element, const Affine& to_page) {
        const std::string id = id_of(element, "guide");
        Attributes words = attributes(element);
        words.report_unread();
        if (const auto path = path_of(element, to_page)) {
            Curve curve(*path);
            if (curve.empty()) {
                to_.error("template.path", words.here(), "the guide '" + id + "' has no length");
                return;
            }
            template_.guides.emplace(id, std::move(curve));
        }
    }

    void read_zone(const pugi::xml_node& element, const Affine& to_page) {
        const std::string id = id_of(element, "zone");
        Attributes words = attributes(element);
        Zone zone;
        words.number("bulge", zone.bulge, -400, 400);
        if (const auto axis = words.words("axis")) {
            const auto guide = template_.guides.find(*axis);
            if (guide == template_.guides.end()) {
                report_missing("guide", *axis, words.place("data-axis"), keys(template_.guides));
            } else {
                zone.axis = guide->second;
            }
        }
        words.report_unread();
        if (const auto path = path_of(element, to_page)) {
            zone.path = clockwise(*path);
            const std::string name = id.starts_with("zone-") ? id.substr(5) : id;
            template_.zones.emplace(name, std::move(zone));
        }
    }

    void read_anchor(const pugi::xml_node& element, const Affine& to_page) {
        const std::string id = id_of(element, "anchor");
        attributes(element).report_unread();
        if (const auto path = path_of(element, to_page)) {
            const Point at = path->points.front();
            template_.anchors[id.starts_with("anchor-") ? id.substr(7) : id] = {
                at, unit(path->points.back() - at)};
        }
    }

    void read_parts(const pugi::xml_node& root) {
        if (const pugi::xml_node group = layer(root, "parts")) {
            read_part_group(group, own_transform(root) * own_transform(group), 0);
        }
    }

    /// A group with `data-cloth` is a part; one without may hold parts.
    void read_part_group(const pugi::xml_node& group, const Affine& to_page, int depth) {
        for (const pugi::xml_node& child : group.children()) {
            const std::string_view name = child.name();
            if (child.type() != pugi::node_element || skipped(name) || !within_limit(child)) {
                continue;
            }
            const Affine matrix = to_page * own_transform(child);
            const bool holds_parts =
                name == "g" && child.attribute("data-cloth").empty() && !child.child("g").empty();
            if (holds_parts && depth < kGroupDepth) {
                read_part_group(child, matrix, depth + 1);
            } else if (name == "g") {
                read_part(child, matrix);
            } else {
                to_.error("template.stray",
                          attributes(child).here(),
                          "a part is a group 'g' with data-cloth; this stands outside of one");
            }
        }
    }

    void read_part(const pugi::xml_node& group, const Affine& to_page) {
        Part part;
        part.name = id_of(group, "part");
        Attributes words = attributes(group);
        words.condition(part.when);
        if (!words.cloth(part.cloth)) {
            to_.error("template.missing",
                      words.here(),
                      "the part '" + part.name + "' needs data-cloth: what it is made of");
        }
        if (const auto surface = words.choice("surface", kSurfaces)) {
            part.surface = static_cast<Surface>(*surface);
        }
        part.zones = words.names("zone");
        part.flat = part.zones == std::vector<std::string>{"none"};
        if (part.flat) {
            part.zones.clear();
        }
        words.number("depth", part.depth, 0, 3);
        read_line_weight(words, part.line);
        words.number("shadow", part.shadow, 0, 60);
        part.on = words.names("on");
        part.clip = words.names("clip");
        const auto silhouette = words.choice("silhouette", {"no", "yes"});
        part.silhouette = part.clip.empty() && silhouette.value_or(1) == 1;
        words.report_unread();
        each_shape(
            group,
            to_page,
            [&](const pugi::xml_node& e, const Affine& m) { read_piece(part, e, m); },
            0);
        if (part.shape.empty()) {
            to_.error("template.missing",
                      words.here(),
                      "the part '" + part.name + "' has no path with class=\"shape\"");
        }
        template_.parts.push_back(std::move(part));
    }

    void read_piece(Part& part, const pugi::xml_node& element, const Affine& to_page) {
        const std::string_view kind = element.attribute("class").value();
        Attributes words = attributes(element);
        if (kind != "shape") {
            if (auto detail = read_detail(words, to_page, template_.guides)) {
                part.details.push_back(std::move(*detail));
            }
            return;
        }
        words.report_unread();
        if (!part.shape.empty()) {
            to_.error("template.two-shapes",
                      words.here(),
                      "the part '" + part.name + "' has a second shape");
            return;
        }
        if (const auto path = path_of(element, to_page)) {
            part.shape = clockwise(*path);
        }
    }

    template <typename Map>
    static std::vector<std::string> keys(const Map& map) {
        std::vector<std::string> names;
        names.reserve(map.size());
        for (const auto& entry : map) {
            names.push_back(entry.first);
        }
        return names;
    }

    void report_missing(const char* what,
                        const std::string& name,
                        Span at,
                        const std::vector<std::string>& known) {
        Diagnostic& error = to_.error(
            "template.unknown-name", at, std::string("there is no ") + what + " '" + name + "'");
        if (const auto near = nearest_word(name, known)) {
            error.hints.push_back("did you mean '" + *near + "'?");
        }
    }

    /// Zones and parts named by parts; possible only when all are read.
    void check_references(const pugi::xml_node& root) {
        std::vector<std::string> part_names;
        part_names.reserve(template_.parts.size());
        for (const Part& part : template_.parts) {
            part_names.push_back(part.name);
        }
        const std::vector<std::string> zone_names = keys(template_.zones);
        for (const Part& part : template_.parts) {
            const Attributes words = attributes(root.find_node(
                [&](const pugi::xml_node& n) { return part.name == n.attribute("id").value(); }));
            check_names("zone", part.zones, words.place("data-zone"), zone_names);
            check_names("part", part.on, words.place("data-on"), part_names);
            check_names("part", part.clip, words.place("data-clip"), part_names);
        }
    }

    void check_names(const char* what,
                     const std::vector<std::string>& names,
                     Span at,
                     const std::vector<std::string>& known) {
        for (const std::string& name : names) {
            if (std::ranges::find(known, name) == known.end()) {
                report_missing(what, name, at, known);
            }
        }
    }
};

}  // namespace

std::shared_ptr<const Template> read_template(const SourceMap& sources,
                                              FileId file,
                                              Diagnostics& to) {
    if (const auto bad = invalid_utf8(sources.text(file))) {
        to.error("template.not-utf8", {file, *bad, *bad + 1}, "this file is not UTF-8 text")
            .hints.emplace_back("save it again from the vector editor as plain SVG");
        return nullptr;
    }
    return Reader(sources, file, to).read();
}

Rect frame_of(const Template& from) {
    return from.frame;
}

}  // namespace platewright
