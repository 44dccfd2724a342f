// SPDX-License-Identifier: MIT
// Pages of running text: headings, paragraphs, tables, pictures and whatever else a sheet makes of
// slabs, put on as many pages as they need.
#pragma once

#include <string>
#include <utility>
#include <vector>

#include "layout/paging.h"
#include "layout/slab.h"
#include "layout/table.h"

namespace platewright::sheet {

/// What stands on every page.
struct FlowForm {
    Paper paper;
    /// `en`, `fr`, `de`: where words may be parted.
    std::string language = "en";
    /// Above the text, from the second page on.
    std::string head_left;
    std::string head_right;
    /// Below the text, beside the number of the page.
    std::string foot;
    /// See `TextStyle`.
    double closeness = 1;
};

/// Collects what a document says, in order, then puts it on pages. What cannot fit is never cut
/// off: a word too long for its column is broken and layout.too-wide added, a picture larger than
/// the page is made smaller and layout.too-large added; both are warnings without a place.
class Flow {
  public:
    Flow(FlowForm form, Ruler& ruler, Diagnostics& problems);

    [[nodiscard]] Press& press() { return press_; }

    [[nodiscard]] const TextStyle& style() const { return press_.style; }

    /// Width of a column of what follows.
    [[nodiscard]] double width() const;

    /// The name of the sheet with a line beneath it, and a swelled rule; `over`, in smaller type
    /// above it, may be empty.
    void title(const std::string& words, const std::string& subtitle, const std::string& over = {});

    /// Stays with what follows, and stands in the outline; level 1 or 2. `anchor`: what links call
    /// it; empty: its words.
    void heading(const std::string& words, int level = 1, const std::string& anchor = {});

    /// Words in small capitals that stay with what follows and stand in no outline.
    void subheading(const std::string& words);

    void paragraph(const std::string& words, Voice voice = Voice::body);

    /// Each with a sign before it: `•`, or `1.`, `2.` … where `sign` is empty.
    void items(const std::vector<std::string>& each, const std::string& sign);

    void table(const Table& table);
    void pictures(std::vector<Picture> pictures);
    void slab(Slab slab);

    /// What is put next, counted within these columns.
    [[nodiscard]] std::size_t next() const { return sections_.back().slabs.size(); }

    /// Everything from there on stays on one page, as far as a page holds it.
    void hold_together(std::size_t from);

    /// Room before whatever comes next; falls away at the top of a page.
    void space(double mm) { pending_space_ += mm; }

    void new_page();

    /// A shelf of its own, for `Slab::shelf`.
    std::size_t new_shelf() { return ++shelves_; }

    /// What follows stands in that many columns of even height.
    void columns(std::size_t count);

    /// The headings of level 1 with their pages, as links.
    void contents();

    /// A chapter on so many pages that are put behind these by someone else; it stands in the
    /// contents too, and its pages are counted.
    void appendix(std::string title, std::size_t pages) {
        appendices_.push_back(std::move(title));
        pages_behind_ += pages;
    }

    /// Puts everything on pages behind those the document has. Call once.
    void finish(Document& to);

  private:
    void add(std::vector<Slab> slabs);

    FlowForm form_;
    Press press_;
    std::vector<FlowSection> sections_;
    std::vector<std::string> appendices_;
    std::size_t pages_behind_ = 0;
    double pending_space_ = 0;
    std::size_t shelves_ = 0;
};

}  // namespace platewright::sheet
