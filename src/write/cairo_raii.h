// SPDX-License-Identifier: MIT
// Owners of cairo's objects, and its errors as exceptions.
#pragma once

#include <cairo.h>

#include <memory>
#include <string>

#include "write/write.h"

namespace platewright {

/// Frees cairo's objects, for std::unique_ptr.
struct CairoRelease {
    void operator()(cairo_t* context) const { cairo_destroy(context); }

    void operator()(cairo_surface_t* surface) const { cairo_surface_destroy(surface); }
};

/// Owners of a context and of a surface.
using CairoContext = std::unique_ptr<cairo_t, CairoRelease>;
using CairoSurface = std::unique_ptr<cairo_surface_t, CairoRelease>;

/// Throws CannotWrite unless all went well.
inline void check(cairo_status_t status) {
    if (status != CAIRO_STATUS_SUCCESS) {
        throw CannotWrite("cannot paint the page: " + std::string(cairo_status_to_string(status)));
    }
}

/// Saves the state of a context, and restores it at the end of the block.
class CairoState {
  public:
    explicit CairoState(cairo_t* context) : context_(context) { cairo_save(context_); }

    ~CairoState() { cairo_restore(context_); }

    CairoState(const CairoState&) = delete;
    CairoState& operator=(const CairoState&) = delete;

  private:
    cairo_t* context_;
};

}  // namespace platewright
