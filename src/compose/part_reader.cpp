// SPDX-License-Identifier: MIT
// Reads the layers `parts` of a template's files and puts the parts in their order.
#include "compose/part_reader.h"

#include <algorithm>

#include "compose/detail_reader.h"

namespace platewright {

namespace {

const std::vector<std::string> kSurfaces{
    "wool", "linen", "leather", "felt", "metal", "skin", "hair", "braid", "fur"};

/// No figure needs more; the way from one layer to the next is walked by recursion.
constexpr std::size_t kMostLayers = 400;

/// The tapered lines of a path are painted one by one.
void add_detail(Part& part, Detail detail) {
    const bool tapers = detail.kind == DetailKind::seam || detail.kind == DetailKind::crease ||
                        detail.kind == DetailKind::fold;
    const std::vector<Path> lines = tapers ? subpaths(detail.path) : std::vector<Path>();
    if (lines.size() < 2) {
        part.details.push_back(std::move(detail));
        return;
    }
    for (const Path& line : lines) {
        Detail one = detail;
        one.path = line;
        one.curve = Curve(line);
        if (!one.curve.empty()) {
            part.details.push_back(std::move(one));
        }
    }
}

}  // namespace

void PartReader::read_layer(const pugi::xml_node& layer, const Affine& to_page) {
    Attributes words = sheet_.attributes(layer);
    if (layers_.size() == kMostLayers) {
        sheet_.to().error(
            "template.too-large",
            words.here(),
            "a template may have at most " + std::to_string(kMostLayers) + " layers of parts");
        return;
    }
    Layer read;
    read.after = words.words("after").value_or("");
    read.after_at = words.place("data-after");
    words.report_unread();
    read_group(layer, to_page, read, 0);
    layers_.push_back(std::move(read));
}

/// A group with `data-cloth` is a part; one without may hold parts.
void PartReader::read_group(const pugi::xml_node& group,
                            const Affine& to_page,
                            Layer& into,
                            int depth) {
    for (const pugi::xml_node& child : group.children()) {
        const std::string_view name = child.name();
        if (child.type() != pugi::node_element || skipped_element(name) ||
            !sheet_.within_limit(child)) {
            continue;
        }
        const Affine matrix = to_page * sheet_.own_transform(child);
        const bool holds_parts =
            name == "g" && child.attribute("data-cloth").empty() && !child.child("g").empty();
        if (holds_parts && depth < kGroupDepth) {
            read_group(child, matrix, into, depth + 1);
        } else if (name == "g") {
            read_part(child, matrix, into);
        } else {
            sheet_.to().error("template.stray",
                              sheet_.attributes(child).here(),
                              "a part is a group 'g' with data-cloth; this stands outside of one");
        }
    }
}

void PartReader::read_part(const pugi::xml_node& group, const Affine& to_page, Layer& into) {
    Part part;
    part.name = sheet_.id_of(group, "part");
    Attributes words = sheet_.attributes(group);
    words.condition(part.when);
    if (!words.cloth(part.cloth)) {
        sheet_.to().error("template.missing",
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
    part.strokes = words.names("strokes");
    words.number("depth", part.depth, 0, 3);
    read_line_weight(words, part.line);
    words.number("shadow", part.shadow, 0, 60);
    part.on = words.names("on");
    part.clip = words.names("clip");
    words.numbers("true", part.truth, 1, 500);
    double apex = 0.5;
    words.number("apex", apex, 0.5, 1);
    const auto silhouette = words.choice("silhouette", {"no", "yes"});
    part.silhouette = part.clip.empty() && silhouette.value_or(1) == 1;
    words.report_unread();
    sheet_.each_shape(
        group, to_page, [&](const pugi::xml_node& e, const Affine& m) { read_piece(part, e, m); });
    for (Detail& detail : part.details) {
        detail.apex = apex;
    }
    if (part.shape.empty()) {
        sheet_.to().error("template.missing",
                          words.here(),
                          "the part '" + part.name + "' has no path with class=\"shape\"");
    }
    into.parts.push_back({std::move(part),
                          words.place("data-zone"),
                          words.place("data-strokes"),
                          words.place("data-on"),
                          words.place("data-clip")});
}

void PartReader::read_piece(Part& part, const pugi::xml_node& element, const Affine& to_page) {
    const std::string_view kind = element.attribute("class").value();
    Attributes words = sheet_.attributes(element);
    if (kind == "edge") {
        words.report_unread();
        if (const auto path = sheet_.path_of(element, to_page)) {
            part.edge.append(*path);
        }
        return;
    }
    if (kind != "shape") {
        if (auto detail = read_detail(words, to_page, guides_)) {
            add_detail(part, std::move(*detail));
        }
        return;
    }
    words.report_unread();
    if (!part.shape.empty()) {
        sheet_.to().error(
            "template.two-shapes", words.here(), "the part '" + part.name + "' has a second shape");
        return;
    }
    if (const auto path = sheet_.path_of(element, to_page)) {
        part.shape = clockwise(*path);
    }
}

std::vector<Part> PartReader::in_order(const std::vector<std::string>& zones) {
    const std::size_t errors = sheet_.to().error_count();
    std::vector<std::string> names;
    for (const Layer& layer : layers_) {
        for (const Read& read : layer.parts) {
            names.push_back(read.part.name);
        }
    }
    for (const Layer& layer : layers_) {
        for (const Read& read : layer.parts) {
            check_names("zone", read.part.zones, read.zone_at, zones);
            check_names("zone", read.part.strokes, read.strokes_at, zones);
            check_names("part", read.part.on, read.on_at, names);
            check_names("part", read.part.clip, read.clip_at, names);
        }
        if (!layer.after.empty()) {
            check_names("part", {layer.after}, layer.after_at, names);
        }
    }
    std::vector<Part> ordered;
    place_on(ordered, "");
    for (const Layer& layer : layers_) {
        if (!layer.placed && sheet_.to().error_count() == errors) {
            sheet_.to()
                .error("template.circle",
                       layer.after_at,
                       "these parts lie on top of each other in a circle")
                .hints.emplace_back("one of the layers must follow a part of the first file");
            break;
        }
    }
    return ordered;
}

void PartReader::place_on(std::vector<Part>& ordered, const std::string& below) {
    for (Layer& layer : layers_) {
        if (layer.placed || layer.after != below) {
            continue;
        }
        layer.placed = true;
        for (Read& read : layer.parts) {
            const std::string name = read.part.name;
            ordered.push_back(std::move(read.part));
            place_on(ordered, name);
        }
    }
}

void PartReader::check_names(const char* what,
                             const std::vector<std::string>& names,
                             Span at,
                             const std::vector<std::string>& known) {
    for (const std::string& name : names) {
        if (std::ranges::find(known, name) == known.end()) {
            sheet_.report_missing(what, name, at, known);
        }
    }
}

}  // namespace platewright
