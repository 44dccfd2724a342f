// SPDX-License-Identifier: MIT
// Slabs on pages: where columns and pages end, and where links lead.
#pragma once

#include <cstddef>
#include <map>
#include <optional>
#include <string>
#include <vector>

#include "layout/slab.h"

namespace platewright::sheet {

/// Slabs in the same number of columns.
struct FlowSection {
    std::size_t columns = 1;
    bool starts_page = false;
    std::vector<Slab> slabs;
    /// Above the columns and across all of them: a heading that stays with them.
    std::vector<Slab> lead;
};

/// Width of one of so many columns.
double column_width(const TextStyle& style, std::size_t columns);

/// A place on a page.
struct PagePlace {
    std::size_t page = 0;
    Point at;
};

/// Puts sections on pages, one under the other.
class Paging {
  public:
    /// `first_page`: how many pages the document has already.
    Paging(const Paper& paper, const TextStyle& style, std::size_t first_page);

    /// Columns that end before the page does are made even in height.
    void place(const FlowSection& section);

    /// Where the slab of that anchor stands.
    [[nodiscard]] std::optional<PagePlace> find(const std::string& anchor) const;

    [[nodiscard]] const std::vector<OutlineEntry>& outline() const { return outline_; }

    /// The layer above everything on a page, for what is known only when all is placed; `page`
    /// counts from the first of the document.
    Layer& layer(std::size_t page) { return on_pages_.at(page - first_page_).text; }

    void add_link(std::size_t page, Link link) {
        on_pages_.at(page - first_page_).page.links.push_back(std::move(link));
    }

    /// How many pages there are so far, with those before.
    [[nodiscard]] std::size_t end() const { return first_page_ + on_pages_.size(); }

    /// The pages, with the links that lead within the document resolved.
    std::vector<Page> take_pages();

  private:
    /// A page in the making.
    struct Folio {
        Page page;
        Layer ground{"ground"};
        Layer text{"text"};
    };

    /// A link whose place is not known yet.
    struct Promise {
        std::size_t page = 0;
        Rect area;
        std::string anchor;
    };

    /// Slabs that stay together: up to but not including `end`.
    struct Run {
        std::size_t begin = 0;
        std::size_t end = 0;
    };

    void begin_page();

    [[nodiscard]] bool at_top() const { return y_ <= style_.area.top; }

    /// A heading above columns stays with the first run in them.
    void put_lead(const FlowSection& section, const std::vector<Run>& runs);

    /// The runs from `first` on in columns on this page: where each ends.
    [[nodiscard]] std::vector<std::size_t> columns_from(const FlowSection& section,
                                                        const std::vector<Run>& runs,
                                                        std::size_t first) const;

    /// Where a row of a shelf does not fit into what is left of this page, the next row of it that
    /// does comes before it.
    void fill_with_rows(const FlowSection& section,
                        std::vector<Run>& runs,
                        std::size_t first) const;

    /// The room that goes before each row of a shelf, so that they fill a page.
    [[nodiscard]] double air_between(const FlowSection& section,
                                     const std::vector<Run>& runs,
                                     std::size_t first,
                                     std::size_t end) const;

    /// The same in columns no higher than that.
    [[nodiscard]] std::vector<std::size_t> fill(const FlowSection& section,
                                                const std::vector<Run>& runs,
                                                std::size_t first,
                                                double height) const;
    [[nodiscard]] std::vector<Run> runs_of(const FlowSection& section) const;
    void put(const Slab& slab, Point corner);
    double put_run(const FlowSection& section, const Run& run, Point corner, bool at_top);

    const Paper& paper_;
    const TextStyle& style_;
    std::size_t first_page_ = 0;
    double y_ = 0;
    std::vector<Folio> on_pages_;
    std::vector<OutlineEntry> outline_;
    std::map<std::string, PagePlace> anchors_;
    std::vector<Promise> promises_;
};

}  // namespace platewright::sheet
