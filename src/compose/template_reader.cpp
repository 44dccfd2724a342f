// SPDX-License-Identifier: MIT
// Reads and checks a template: the convention of templates/README.md.
#include <algorithm>
#include <cmath>
#include <list>
#include <pugixml.hpp>
#include <string_view>

#include "base/limits.h"
#include "base/text.h"
#include "compose/compose.h"
#include "compose/part_reader.h"
#include "compose/sheet_reader.h"
#include "compose/svg_shapes.h"
#include "compose/template.h"

namespace platewright {

namespace {

const std::vector<std::string> kViews{"front", "back", "side", "detail", "flat", "ornament"};
const std::vector<std::string> kLayers{"zones", "guides", "anchors", "frames", "parts"};

/// `parts`, and further layers of parts: `parts-2`, `parts-hats`.
bool is_parts(std::string_view id) {
    return id == "parts" || id.starts_with("parts-");
}

/// An id without the word for its kind: `torso` of `zone-torso`.
std::string bare(const std::string& id, std::string_view kind) {
    return id.starts_with(kind) ? id.substr(kind.size()) : id;
}

/// One run of the reader over the files of one view.
class Reader {
  public:
    Reader(const SourceMap& sources, Diagnostics& to)
        : sources_(sources), to_(to), sheet_(sources, to), parts_(sheet_, template_.guides) {}

    std::shared_ptr<const Template> read(std::span<const FileId> files) {
        const std::size_t before = to_.error_count();
        for (const FileId file : files) {
            open(file);
        }
        each_file([this](const pugi::xml_node& root) { read_root(root); });
        each_file([this](const pugi::xml_node& root) {
            read_layer(
                root, "guides", [this](const auto& e, const Affine& m) { read_guide(e, m); });
        });
        each_file([this](const pugi::xml_node& root) { read_layers(root); });
        template_.parts = parts_.in_order(names_in(template_.zones));
        if (to_.error_count() != before) {
            return nullptr;
        }
        return std::make_shared<const Template>(std::move(template_));
    }

  private:
    struct Open {
        FileId file{};
        pugi::xml_document document;
    };

    const SourceMap& sources_;
    Diagnostics& to_;
    Template template_;
    SheetReader sheet_;
    PartReader parts_;
    std::list<Open> open_;

    void open(FileId file) {
        const std::string& text = sources_.text(file);
        if (const auto bad = invalid_utf8(text)) {
            to_.error("template.not-utf8", {file, *bad, *bad + 1}, "this file is not UTF-8 text")
                .hints.emplace_back("save it again from the vector editor as plain SVG");
            return;
        }
        Open& opened = open_.emplace_back();
        opened.file = file;
        const pugi::xml_parse_result parsed = opened.document.load_buffer(
            text.data(), text.size(), pugi::parse_default, pugi::encoding_utf8);
        if (!parsed) {
            const auto at = std::min(
                static_cast<std::size_t>(std::max<std::ptrdiff_t>(0, parsed.offset)), text.size());
            to_.error("template.xml",
                      {file, at, at},
                      std::string("this is not well-formed XML: ") + lower(parsed.description()));
            open_.pop_back();
            return;
        }
        sheet_.turn_to(file);
        if (std::string_view(opened.document.document_element().name()) != "svg") {
            to_.error("template.not-svg",
                      sheet_.attributes(opened.document.document_element()).here(),
                      "a template is an SVG file: its first element should be 'svg'");
            open_.pop_back();
        }
    }

    template <typename Visit>
    void each_file(Visit visit) {
        for (const Open& opened : open_) {
            sheet_.turn_to(opened.file);
            visit(opened.document.document_element());
        }
    }

    [[nodiscard]] bool is_first(const pugi::xml_node& root) const {
        return root == open_.front().document.document_element();
    }

    /// Title and frame are those of the first file; the view must be the same in all.
    void read_root(const pugi::xml_node& root) {
        Attributes words = sheet_.attributes(root);
        const auto view = words.choice("view", kViews);
        if (root.attribute("data-view").empty()) {
            to_.error("template.missing",
                      words.here(),
                      "the svg element needs data-view: " + or_list(kViews));
        }
        words.report_unread();
        report_unknown_layers(root);
        if (is_first(root)) {
            template_.title = root.child("title").text().get();
            template_.view = view ? kViews[*view] : "";
            read_frame(root, words);
            if (std::ranges::none_of(root.children("g"), [](const pugi::xml_node& group) {
                    return is_parts(group.attribute("id").value());
                })) {
                to_.error("template.missing",
                          words.here(),
                          "there is no layer 'parts', so there is nothing to draw");
            }
        } else if (view && kViews[*view] != template_.view) {
            to_.error("template.wrong-view",
                      words.place("data-view"),
                      "this file belongs to the view '" + template_.view + "'");
        }
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
            const bool known = is_parts(id) || std::ranges::find(kLayers, id) != kLayers.end();
            if (child.type() != pugi::node_element || skipped_element(child.name()) || known) {
                continue;
            }
            Diagnostic& warning =
                to_.warning("template.unknown-layer",
                            sheet_.attributes(child).here(),
                            id.empty() ? "this is in none of the layers and is not drawn"
                                       : "there is no layer '" + id + "', so this is not drawn");
            warning.hints.push_back("the layers are " + or_list(kLayers));
        }
    }

    /// Everything that may name guides.
    void read_layers(const pugi::xml_node& root) {
        read_layer(root, "zones", [this](const auto& e, const Affine& m) { read_zone(e, m); });
        read_layer(root, "anchors", [this](const auto& e, const Affine& m) { read_anchor(e, m); });
        read_layer(root, "frames", [this](const auto& e, const Affine& m) { read_window(e, m); });
        for (const pugi::xml_node& group : root.children("g")) {
            if (is_parts(group.attribute("id").value())) {
                parts_.read_layer(group, sheet_.own_transform(root) * sheet_.own_transform(group));
            }
        }
    }

    template <typename Take>
    void read_layer(const pugi::xml_node& root, const char* id, Take take) {
        if (const pugi::xml_node group = root.find_child_by_attribute("g", "id", id)) {
            sheet_.each_shape(
                group, sheet_.own_transform(root) * sheet_.own_transform(group), take);
        }
    }

    void read_guide(const pugi::xml_node& element, const Affine& to_page) {
        const std::string id = sheet_.id_of(element, "guide");
        Attributes words = sheet_.attributes(element);
        words.report_unread();
        if (const auto path = sheet_.path_of(element, to_page)) {
            Curve curve(*path);
            if (curve.empty()) {
                to_.error("template.path", words.here(), "the guide '" + id + "' has no length");
                return;
            }
            template_.guides.emplace(id, std::move(curve));
        }
    }

    void read_zone(const pugi::xml_node& element, const Affine& to_page) {
        const std::string id = sheet_.id_of(element, "zone");
        Attributes words = sheet_.attributes(element);
        Zone zone;
        words.number("bulge", zone.bulge, -400, 400);
        zone.falls = words.choice("hatch", {"across", "along"}).value_or(0) == 1;
        if (const auto axis = words.words("axis")) {
            const auto guide = template_.guides.find(*axis);
            if (guide == template_.guides.end()) {
                sheet_.report_missing(
                    "guide", *axis, words.place("data-axis"), names_in(template_.guides));
            } else {
                zone.axis = guide->second;
            }
        }
        words.report_unread();
        if (const auto path = sheet_.path_of(element, to_page)) {
            zone.path = clockwise(*path);
            template_.zones.emplace(bare(id, "zone-"), std::move(zone));
        }
    }

    void read_anchor(const pugi::xml_node& element, const Affine& to_page) {
        const std::string id = sheet_.id_of(element, "anchor");
        sheet_.attributes(element).report_unread();
        if (const auto path = sheet_.path_of(element, to_page)) {
            const Point at = path->points.front();
            template_.anchors[bare(id, "anchor-")] = {at, unit(path->points.back() - at)};
        }
    }

    void read_window(const pugi::xml_node& element, const Affine& to_page) {
        const std::string id = sheet_.id_of(element, "frame");
        sheet_.attributes(element).report_unread();
        if (const auto path = sheet_.path_of(element, to_page)) {
            template_.frames[bare(id, "frame-")] = path->bounds();
        }
    }
};

}  // namespace

std::shared_ptr<const Template> read_template(const SourceMap& sources,
                                              std::span<const FileId> files,
                                              Diagnostics& to) {
    return Reader(sources, to).read(files);
}

Rect frame_of(const Template& from) {
    return from.frame;
}

}  // namespace platewright
