// SPDX-License-Identifier: MIT
// The shaping library set up for us: unhinted, unrounded, no locale. For `text/` only.
#pragma once

#include <hb.h>
#include <pango/pangocairo.h>

#include <array>
#include <memory>
#include <string>

#include "text/fonts.h"
#include "text/hyphenation.h"
#include "text/typesetter.h"

namespace platewright {

/// Size at which everything is shaped, in the library's pixels; results are multiplied up or down
/// from it. A line of 16 KB of the widest letters still fits the library's 32-bit lengths.
inline constexpr double kEm = 64;

/// The library's lengths for one em.
inline constexpr double kUnitsPerEm = kEm * PANGO_SCALE;

/// Frees the libraries' objects, for std::unique_ptr.
struct Unref {
    void operator()(gpointer object) const { g_object_unref(object); }

    void operator()(PangoFontDescription* description) const {
        pango_font_description_free(description);
    }

    void operator()(PangoAttrList* list) const { pango_attr_list_unref(list); }
};

/// One set of fonts ready to shape with.
class Engine {
  public:
    explicit Engine(FcConfig* fonts);

    /// A layout of `words` in that face, unbroken; valid until the next call.
    PangoLayout* lay_out(const std::string& words, const Type& how);

    /// The face itself.
    std::unique_ptr<PangoFont, Unref> load(Face face);

  private:
    std::unique_ptr<PangoFontMap, Unref> map_;
    std::unique_ptr<PangoContext, Unref> context_;
    std::unique_ptr<PangoLayout, Unref> layout_;
};

/// What a typesetter has loaded so far.
struct Typesetter::Impl {
    /// The engine of one face; made when first asked for.
    Engine& engine(Face face);

    /// A face of the family.
    PangoFont* font(Face face);

    /// The face those words are set in: the bold one has little more than ASCII, and words it lacks
    /// letters for are set in roman.
    Face face_for(const std::string& words, Face face);

    /// The engine that has every character of `words` in that face, if any has.
    Engine& engine_for(const std::string& words, Face face);

    std::array<std::unique_ptr<Engine>, 6> engines;
    std::array<std::unique_ptr<PangoFont, Unref>, 6> fonts;
    /// Made when first needed: it scans the system's fonts.
    std::unique_ptr<Engine> system;
    Hyphenation hyphenation;
};

}  // namespace platewright
