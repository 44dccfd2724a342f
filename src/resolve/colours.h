// SPDX-License-Identifier: MIT
// Finding colours by name in the palettes; a service of the second stage.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "read/specified.h"
#include "resolve/uniform.h"

namespace platewright {

/// All names of all palettes. Keeps pointers into the palettes it was made from.
class ColourBook {
  public:
    /// Materials get the names they have in `language` on sheets.
    explicit ColourBook(const std::vector<SpecifiedPalette>& palettes,
                        Language language = Language::english);

    /// The material a name (capitals do not matter) or `#rrggbb` stands for in that property. A
    /// name is looked up in the property's own section first; cloth may also be leather or metal
    /// lace, and leather cloth. The first palette counts.
    [[nodiscard]] std::optional<Material> find(PropertyId id, std::string_view written) const;

    /// The known name nearest to a misspelt one, for that property.
    [[nodiscard]] std::optional<std::string> nearest(PropertyId id, std::string_view written) const;

  private:
    struct Name {
        std::string lower_case;
        bool main = false;
        const PaletteEntry* entry = nullptr;
    };

    [[nodiscard]] const PaletteEntry* find_in(SubstanceKind section, std::string_view name) const;

    Language language_;
    std::vector<Name> names_;
};

}  // namespace platewright
