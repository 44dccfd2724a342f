// SPDX-License-Identifier: MIT
// Reads the layers `parts` of a template's files and puts the parts in their order.
#pragma once

#include <string>
#include <vector>

#include "compose/sheet_reader.h"
#include "compose/template.h"

namespace platewright {

/// Parts of one layer stand together, on top of the part they name with `data-after`.
class PartReader {
  public:
    PartReader(SheetReader& sheet, const std::map<std::string, Curve>& guides)
        : sheet_(sheet), guides_(guides) {}

    /// One layer `parts` of the file the sheet reader has turned to.
    void read_layer(const pugi::xml_node& layer, const Affine& to_page);

    /// All parts from the bottom up. Errors: template.unknown-name where a part or zone that is
    /// named is not there.
    std::vector<Part> in_order(const std::vector<std::string>& zones);

  private:
    /// A part as read, with the places of the names that are checked at the end.
    struct Read {
        Part part;
        Span zone_at;
        Span strokes_at;
        Span on_at;
        Span clip_at;
    };

    struct Layer {
        std::string after;
        Span after_at;
        std::vector<Read> parts;
        bool placed = false;
    };

    void read_group(const pugi::xml_node& group, const Affine& to_page, Layer& into, int depth);
    void read_part(const pugi::xml_node& group, const Affine& to_page, Layer& into);
    void read_piece(Part& part, const pugi::xml_node& element, const Affine& to_page);
    /// Puts down the layers that follow the part `below`, and what follows their parts.
    void place_on(std::vector<Part>& ordered, const std::string& below);
    void check_names(const char* what,
                     const std::vector<std::string>& names,
                     Span at,
                     const std::vector<std::string>& known);

    SheetReader& sheet_;
    const std::map<std::string, Curve>& guides_;
    std::vector<Layer> layers_;
};

}  // namespace platewright
