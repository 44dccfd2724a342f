// SPDX-License-Identifier: MIT
// What every layer of a template file is read with.
#include "compose/sheet_reader.h"

#include "base/limits.h"
#include "base/text.h"
#include "compose/svg_shapes.h"

namespace platewright {

bool skipped_element(std::string_view name) {
    return name == "title" || name == "desc" || name == "metadata" || name == "defs" ||
           name == "style" || name.find(':') != std::string_view::npos;
}

bool has_outline(std::string_view name) {
    return is_shape(name);
}

Affine SheetReader::own_transform(const pugi::xml_node& element) {
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

bool SheetReader::within_limit(const pugi::xml_node& element) {
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

std::string SheetReader::id_of(const pugi::xml_node& element, const char* what) {
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

std::optional<Path> SheetReader::path_of(const pugi::xml_node& element, const Affine& to_page) {
    std::string problem;
    const auto path = shape_of(element, problem);
    if (!path) {
        const Attributes words = attributes(element);
        to_.error("template.path", words.place("d"), problem);
        return std::nullopt;
    }
    return path->transformed(to_page);
}

void SheetReader::report_undrawable(const pugi::xml_node& element) {
    to_.error("template.undrawable",
              attributes(element).here(),
              "'" + std::string(element.name()) + "' cannot be used in a template")
        .hints.emplace_back(
            "draw it as a path; clones are unlinked and text is turned into paths in the "
            "editor");
}

void SheetReader::report_missing(const char* what,
                                 const std::string& name,
                                 Span at,
                                 const std::vector<std::string>& known) {
    Diagnostic& error = to_.error(
        "template.unknown-name", at, std::string("there is no ") + what + " '" + name + "'");
    if (const auto near = nearest_word(name, known)) {
        error.hints.push_back("did you mean '" + *near + "'?");
    }
}

}  // namespace platewright
