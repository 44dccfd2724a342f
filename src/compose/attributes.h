// SPDX-License-Identifier: MIT
// Reading the words on one element of a template, with a place for every complaint.
#pragma once

#include <optional>
#include <pugixml.hpp>
#include <set>
#include <string>
#include <string_view>
#include <vector>

#include "base/diagnostic.h"
#include "compose/template.h"

namespace platewright {

/// The `data-` attributes of one element. Each reader reports what it cannot read; `report_unread`
/// names the misspelt ones.
class Attributes {
  public:
    Attributes(pugi::xml_node element, const SourceMap& sources, FileId file, Diagnostics& to);

    /// The attribute's value, or nothing if it is absent; `name` without `data-`.
    std::optional<std::string> words(const std::string& name);

    void number(const std::string& name, double& into, double least, double most);
    /// Numbers separated by blanks.
    void numbers(const std::string& name, std::vector<double>& into, double least, double most);

    void property(const std::string& name, std::optional<PropertyId>& into);
    void condition(Condition& into);

    /// A property or `#rrggbb`, with `data-shade`.
    bool cloth(ClothSource& into);

    /// `data-of`: the property that says which ornament.
    void device(std::optional<PropertyId>& into);

    /// A whole number, or the property that says how many.
    void count(Detail& into);

    /// One of `allowed` as its index; reports anything else.
    std::optional<std::size_t> choice(const std::string& name,
                                      const std::vector<std::string>& allowed);

    /// Names separated by blanks.
    std::vector<std::string> names(const std::string& name);

    void report_unread();

    /// The element's tag in the source.
    [[nodiscard]] Span here() const;

    /// The attribute in the source.
    [[nodiscard]] Span place(const std::string& attribute) const;

    Diagnostics& to() { return to_; }

    [[nodiscard]] const pugi::xml_node& element() const { return element_; }

  private:
    pugi::xml_node element_;
    const SourceMap& sources_;
    FileId file_;
    Diagnostics& to_;
    std::set<std::string> read_;
};

}  // namespace platewright
