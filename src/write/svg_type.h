// SPDX-License-Identifier: MIT
// Type in an SVG: live text, and the fonts embedded for it.
#pragma once

#include <map>
#include <set>
#include <string>

#include "text/shaping.h"
#include "write/grid.h"

namespace platewright {

/// Collects the characters a page uses of each face while its text is written.
class SvgType {
  public:
    explicit SvgType(const Typesetter& type) : type_(type) {}

    /// A `<text>` element, its lengths in the grid's units.
    std::string element(const Text& text, const Grid& grid);

    /// A `<style>` element with a font face for each face used and the classes of the lines; empty
    /// if there was no text.
    [[nodiscard]] std::string style() const;

  private:
    const Typesetter& type_;
    std::map<Face, std::set<char32_t>> used_;
    /// Those of which lining figures are used.
    std::set<Face> lining_;
    /// A class for each face, colour and size: a plate has a hundred lines of a few.
    std::map<std::string, std::string> classes_;
    std::string rules_;
};

/// Text between tags or in an attribute, with what XML reserves written as entities.
std::string xml_escaped(std::string_view text);

}  // namespace platewright
