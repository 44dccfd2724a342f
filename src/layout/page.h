// SPDX-License-Identifier: MIT
// A finished page: placed drawings, in mm on paper.
#pragma once

#include <string>
#include <vector>

#include "base/colour.h"
#include "base/drawing.h"

namespace platewright {

/// A drawing put on the page: its origin goes to `at`, its mm are multiplied by `factor`.
struct Placed {
    Point at;
    double factor = 1;
    Drawing drawing;
};

/// Contract: everything lies within the sheet; items are painted in order; the writers need nothing
/// else.
struct Page {
    double width = 210;
    double height = 297;
    Colour paper;
    std::vector<Placed> items;
};

/// Pages of one document with its metadata.
struct Document {
    std::string title;
    std::string author;
    std::string subject;
    /// Longer description of the picture for those who cannot see it.
    std::string description;
    std::string language = "en";
    std::vector<Page> pages;
};

}  // namespace platewright
