// SPDX-License-Identifier: MIT
// What every layer of a template file is read with.
#pragma once

#include <map>
#include <optional>
#include <pugixml.hpp>
#include <set>
#include <string>
#include <string_view>
#include <vector>

#include "base/diagnostic.h"
#include "base/geometry.h"
#include "compose/attributes.h"

namespace platewright {

/// Groups may be nested so deep; editors nest by layers and by grouping.
inline constexpr int kGroupDepth = 32;

/// Elements that draw nothing we need; editors add them.
bool skipped_element(std::string_view name);

/// Element names of SVG that have an outline.
bool has_outline(std::string_view name);

/// Reads elements of one file after another and remembers what must be known of all of them: the
/// names that are taken and how many elements there were.
class SheetReader {
  public:
    SheetReader(const SourceMap& sources, Diagnostics& to) : sources_(sources), to_(to) {}

    /// What is read from now on stands in this file.
    void turn_to(FileId file) { file_ = file; }

    Diagnostics& to() { return to_; }

    Attributes attributes(const pugi::xml_node& element) { return {element, sources_, file_, to_}; }

    /// The `transform` of the element; reports one that cannot be read.
    Affine own_transform(const pugi::xml_node& element);

    /// False, with an error the first time, where a template has too many elements.
    bool within_limit(const pugi::xml_node& element);

    /// The element's name; reports a missing one and one that is taken. `what`: "guide", "part" …
    std::string id_of(const pugi::xml_node& element, const char* what);

    /// The element's outline; reports one that cannot be read.
    std::optional<Path> path_of(const pugi::xml_node& element, const Affine& to_page);

    void report_undrawable(const pugi::xml_node& element);

    void report_missing(const char* what,
                        const std::string& name,
                        Span at,
                        const std::vector<std::string>& known);

    /// Every shape below `group`, whatever groups the editor has put around it.
    template <typename Take>
    void each_shape(const pugi::xml_node& group, const Affine& to_page, Take take, int depth = 0) {
        for (const pugi::xml_node& child : group.children()) {
            const std::string_view name = child.name();
            if (child.type() != pugi::node_element || skipped_element(name) ||
                !within_limit(child)) {
                continue;
            }
            const Affine matrix = to_page * own_transform(child);
            if (name == "g" && depth < kGroupDepth) {
                each_shape(child, matrix, take, depth + 1);
            } else if (has_outline(name)) {
                take(child, matrix);
            } else {
                report_undrawable(child);
            }
        }
    }

  private:
    const SourceMap& sources_;
    Diagnostics& to_;
    FileId file_{};
    std::set<std::string> ids_;
    std::size_t elements_ = 0;
};

/// The names in a map of named things, for suggestions.
std::vector<std::string> names_in(const auto& map) {
    std::vector<std::string> names;
    names.reserve(map.size());
    for (const auto& entry : map) {
        names.push_back(entry.first);
    }
    return names;
}

}  // namespace platewright
