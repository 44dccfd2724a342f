// SPDX-License-Identifier: MIT
// Slabs on pages: where columns and pages end, and where links lead.
#include "layout/paging.h"

#include <algorithm>
#include <cstddef>
#include <utility>

namespace platewright::sheet {
namespace {

/// The first slab of a run at the top of a column loses the space before it, and a table there has
/// its head again.
double height_of(const FlowSection& section, std::size_t begin, std::size_t end, bool at_top) {
    double height = 0;
    for (std::size_t i = begin; i < end; ++i) {
        const Slab& slab = section.slabs[i];
        height += slab.height;
        if (!at_top || i > begin) {
            height += slab.space_before;
        } else if (slab.head != nullptr) {
            height += slab.head->height + slab.space_before;
        }
    }
    return height;
}

/// Whether room that a page has left goes before it.
bool is_spread(const Slab& row) {
    return row.shelf != 0 || row.spread;
}

}  // namespace

double column_width(const TextStyle& style, std::size_t columns) {
    const auto count = static_cast<double>(std::max<std::size_t>(columns, 1));
    return (style.area.width() - (count - 1) * style.gutter) / count;
}

Paging::Paging(const Paper& paper, const TextStyle& style, std::size_t first_page)
    : paper_(paper), style_(style), first_page_(first_page) {}

void Paging::begin_page() {
    Folio folio;
    folio.page.width = paper_.width;
    folio.page.height = paper_.height;
    folio.page.paper = kPaper;
    on_pages_.push_back(std::move(folio));
    y_ = style_.area.top;
}

std::vector<Paging::Run> Paging::runs_of(const FlowSection& section) const {
    std::vector<Run> runs;
    for (std::size_t i = 0; i < section.slabs.size(); ++i) {
        if (i == 0 || !section.slabs[i - 1].keep_with_next) {
            runs.push_back({i, i});
        }
        Run& run = runs.back();
        run.end = i + 1;
        // What is higher than a page cannot stay together.
        if (height_of(section, run.begin, run.end, true) > style_.area.height() &&
            run.end > run.begin + 1) {
            run.end = i;
            runs.push_back({i, i + 1});
        }
    }
    return runs;
}

void Paging::put(const Slab& slab, Point corner) {
    Folio& folio = on_pages_.back();
    const std::size_t page = end() - 1;
    folio.ground.append(slab.ground, corner);
    for (const Placed& picture : slab.pictures) {
        folio.page.items.push_back(picture);
        folio.page.items.back().at = picture.at + corner;
    }
    folio.text.append(slab.content, corner);
    for (const SlabLink& link : slab.links) {
        const Rect area{link.area.left + corner.x,
                        link.area.top + corner.y,
                        link.area.right + corner.x,
                        link.area.bottom + corner.y};
        if (link.uri.empty()) {
            promises_.push_back({page, area, link.anchor});
        } else {
            folio.page.links.push_back({area, link.uri, 0, 0});
        }
    }
    if (!slab.anchor.empty()) {
        anchors_.try_emplace(slab.anchor, PagePlace{page, corner});
    }
    if (!slab.outline.empty()) {
        outline_.push_back({slab.outline, slab.outline_level, page, corner.y});
    }
}

double Paging::put_run(const FlowSection& section, const Run& run, Point corner, bool at_top) {
    double y = corner.y;
    for (std::size_t i = run.begin; i < run.end; ++i) {
        const Slab& slab = section.slabs[i];
        if (!at_top || i > run.begin) {
            y += slab.space_before;
        } else if (slab.head != nullptr) {
            put(*slab.head, {corner.x, y});
            y += slab.head->height + slab.space_before;
        }
        put(slab, {corner.x, y});
        y += slab.height;
    }
    return y;
}

void Paging::place(const FlowSection& section) {
    if (on_pages_.empty() || (section.starts_page && !at_top())) {
        begin_page();
    }
    std::vector<Run> runs = runs_of(section);
    put_lead(section, runs);
    std::size_t next = 0;
    while (next < runs.size()) {
        fill_with_rows(section, runs, next);
        const std::vector<std::size_t> ends = columns_from(section, runs, next);
        const double pitch = column_width(style_, section.columns) + style_.gutter;
        const bool loses_space = at_top() || section.columns > 1;
        const double top = y_;
        const double air = air_between(section, runs, next, ends.back());
        for (std::size_t column = 0; column < ends.size(); ++column) {
            Point corner{style_.area.left + static_cast<double>(column) * pitch, top};
            const std::size_t begin = next;
            for (; next < ends[column]; ++next) {
                const bool row = is_spread(section.slabs[runs[next].end - 1]) && next > begin;
                corner.y += row ? air : 0;
                corner.y = put_run(section, runs[next], corner, next == begin && loses_space);
            }
            y_ = std::max(y_, corner.y);
        }
        if (next < runs.size()) {
            begin_page();
        }
    }
}

void Paging::fill_with_rows(const FlowSection& section,
                            std::vector<Run>& runs,
                            std::size_t first) const {
    const double room = style_.area.bottom - y_;
    double used = 0;
    for (std::size_t i = first; i < runs.size() && section.columns == 1; ++i) {
        const auto fits = [&](const Run& run) {
            return used + height_of(section, run.begin, run.end, i == first && at_top()) <= room;
        };
        const std::size_t shelf = section.slabs[runs[i].begin].shelf;
        std::size_t j = i;
        while (j < runs.size() && section.slabs[runs[j].begin].shelf == shelf && !fits(runs[j])) {
            j = shelf == 0 ? runs.size() : j + 1;
        }
        if (j == runs.size() || section.slabs[runs[j].begin].shelf != shelf) {
            return;
        }
        const auto from = runs.begin() + static_cast<std::ptrdiff_t>(i);
        const auto found = runs.begin() + static_cast<std::ptrdiff_t>(j);
        std::rotate(from, found, found + 1);
        used += height_of(section, runs[i].begin, runs[i].end, i == first && at_top());
    }
}

double Paging::air_between(const FlowSection& section,
                           const std::vector<Run>& runs,
                           std::size_t first,
                           std::size_t end) const {
    if (section.columns > 1 || end == runs.size()) {
        return 0;
    }
    double left = style_.area.bottom - y_;
    std::size_t rows = 0;
    for (std::size_t i = first; i < end; ++i) {
        left -= height_of(section, runs[i].begin, runs[i].end, i == first && at_top());
        if (i > first && is_spread(section.slabs[runs[i].end - 1])) {
            ++rows;
        }
    }
    // More would part what belongs together.
    const double most = style_.leading * 8;
    // Less is left at the foot than between two rows: the page ends there anyway.
    constexpr double at_foot = 0.6;
    return std::clamp(left / (static_cast<double>(rows) + at_foot), 0.0, most);
}

void Paging::put_lead(const FlowSection& section, const std::vector<Run>& runs) {
    const FlowSection lead{1, false, section.lead, {}};
    const double height = height_of(lead, 0, lead.slabs.size(), at_top());
    const double first =
        runs.empty() ? 0 : height_of(section, runs.front().begin, runs.front().end, true);
    const double space =
        section.columns > 1 && !section.slabs.empty() ? section.slabs.front().space_before : 0;
    if (!section.lead.empty() && !at_top() &&
        y_ + height + space + first > style_.area.bottom + 1e-6) {
        begin_page();
    }
    y_ = put_run(lead, {0, lead.slabs.size()}, {style_.area.left, y_}, at_top());
    // The space before the columns; inside them the first slabs have none.
    y_ += at_top() ? 0 : space;
}

std::vector<std::size_t> Paging::columns_from(const FlowSection& section,
                                              const std::vector<Run>& runs,
                                              std::size_t first) const {
    double high = style_.area.bottom - y_;
    std::vector<std::size_t> ends = fill(section, runs, first, high);
    if (ends.back() < runs.size() || section.columns == 1) {
        return ends;
    }
    // The lowest height that still holds everything.
    double low = 0;
    while (high - low > 0.05) {
        const double middle = (low + high) / 2;
        std::vector<std::size_t> tried = fill(section, runs, first, middle);
        if (tried.back() == runs.size()) {
            high = middle;
            ends = std::move(tried);
        } else {
            low = middle;
        }
    }
    return ends;
}

std::vector<std::size_t> Paging::fill(const FlowSection& section,
                                      const std::vector<Run>& runs,
                                      std::size_t first,
                                      double height) const {
    const bool whole_page = at_top() && height >= style_.area.height() - 1e-6;
    std::vector<std::size_t> ends;
    std::size_t next = first;
    while (ends.size() < section.columns && next < runs.size()) {
        const std::size_t begin = next;
        double used = 0;
        for (; next < runs.size(); ++next) {
            const bool loses_space = next == begin && (at_top() || section.columns > 1);
            used += height_of(section, runs[next].begin, runs[next].end, loses_space);
            // On a page of its own one run always fits, lest it be put off for ever.
            if (used > height + 1e-6 && !(next == begin && whole_page)) {
                break;
            }
        }
        ends.push_back(next);
    }
    return ends;
}

std::optional<PagePlace> Paging::find(const std::string& anchor) const {
    const auto at = anchors_.find(anchor);
    return at == anchors_.end() ? std::nullopt : std::optional(at->second);
}

std::vector<Page> Paging::take_pages() {
    for (const Promise& promise : promises_) {
        if (const auto place = find(promise.anchor)) {
            add_link(promise.page, {promise.area, {}, place->page, place->at.y});
        }
    }
    std::vector<Page> pages;
    for (Folio& folio : on_pages_) {
        Page finished = std::move(folio.page);
        std::vector<Placed> pictures = std::move(finished.items);
        finished.items.clear();
        std::move(folio.ground).put_on(finished);
        for (Placed& picture : pictures) {
            finished.items.push_back(std::move(picture));
        }
        std::move(folio.text).put_on(finished);
        pages.push_back(std::move(finished));
    }
    on_pages_.clear();
    return pages;
}

}  // namespace platewright::sheet
