// SPDX-License-Identifier: MIT
// A finished page: placed drawings, in mm on paper.
#pragma once

#include <cstddef>
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

/// A place on the page that leads elsewhere, mm.
struct Link {
    Rect area;
    /// An address of the web or of mail; empty: a place in the document.
    std::string uri;
    /// Number of the page from 0, and how far down it.
    std::size_t page = 0;
    double y = 0;
    /// The name of a place instead of page and height; empty: those. A name without a place is of
    /// something there was no room for: it leads nowhere and is not written.
    std::string to = {};
};

/// A place on the page that has a name, unique in the document: `key-2`.
struct NamedPlace {
    std::string name;
    Point at;
};

/// Contract: everything lies within the sheet; items are painted in order; the writers need nothing
/// else.
struct Page {
    double width = 210;
    double height = 297;
    Colour paper;
    std::vector<Placed> items;
    std::vector<Link> links;
    /// What links lead to by name; the groups of the drawings that lie there are called the same.
    std::vector<NamedPlace> places = {};
};

/// An entry of the list of contents that readers show beside the pages.
struct OutlineEntry {
    std::string title;
    /// 1 for the outermost; each at most one deeper than the entry before it.
    int level = 1;
    /// Number of the page from 0, and how far down it, mm.
    std::size_t page = 0;
    double y = 0;
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
    /// In the order of the pages; empty: one entry a page.
    std::vector<OutlineEntry> outline;
};

}  // namespace platewright
