// SPDX-License-Identifier: MIT
// Pages of running text.
#include "layout/flow.h"

#include <algorithm>
#include <iterator>
#include <utility>

#include "layout/furniture.h"

namespace platewright::sheet {
namespace {

/// The name by which the list of contents is found when all is placed.
const std::string kContents = "contents";

/// As much of the words as fits on one line.
std::string shortened(const std::string& words, const Type& type, double room, Ruler& ruler) {
    std::string line = on_one_line(words);
    if (ruler.width(line, type) <= room) {
        return line;
    }
    const std::vector<std::string> lines =
        ruler.lines(line, type, room - ruler.width("…", type) * 1.5);
    return lines.empty() ? std::string() : lines.front() + " …";
}

/// Everything outside the text on one page.
void put_furniture(
    const FlowForm& form, std::size_t page, std::size_t count, Press& press, Layer& on) {
    const TextStyle& style = press.style;
    const Rect& area = style.area;
    const double unit = style.unit;
    const Speech small = speech_of(Voice::small_italic, style);
    const Type capitals = small_capitals(style.small, 0.06);
    const double room = area.width() / 2 - style.gutter;
    if (page > 0) {
        const double baseline = area.top - 7.2 * unit;
        const Rect line{area.left, 0, area.right, 0};
        const Speech left{capitals, small.leading, kSoftInk};
        press.put_line(shortened(form.head_left, left.type, room, press.ruler),
                       line,
                       baseline,
                       left,
                       Align::start,
                       on);
        press.put_line(shortened(form.head_right, small.type, room, press.ruler),
                       line,
                       baseline,
                       small,
                       Align::end,
                       on);
        on.line({area.left, baseline + 1.7 * unit},
                {area.right, baseline + 1.7 * unit},
                kSoftInk,
                0.12 * unit);
    }
    const double baseline = area.bottom + 10.5 * unit;
    const Rect line{area.left, 0, area.right, 0};
    press.put_line(std::to_string(page + 1) + " / " + std::to_string(count),
                   line,
                   baseline,
                   {lining(small.type), small.leading, small.colour},
                   Align::middle,
                   on);
    press.put_line(shortened(form.foot, small.type, room, press.ruler),
                   line,
                   baseline,
                   small,
                   Align::start,
                   on);
    press.put_line(kColophon, line, baseline, {capitals, small.leading, kSoftInk}, Align::end, on);
}

/// The headings of level 1 of all sections.
std::vector<const Slab*> chapters_of(const std::vector<FlowSection>& sections) {
    std::vector<const Slab*> found;
    for (const FlowSection& section : sections) {
        for (const Slab& slab : section.lead) {
            if (!slab.outline.empty() && slab.outline_level == 1) {
                found.push_back(&slab);
            }
        }
        for (const Slab& slab : section.slabs) {
            if (!slab.outline.empty() && slab.outline_level == 1) {
                found.push_back(&slab);
            }
        }
    }
    return found;
}

/// A line of the list of contents.
struct ContentsLine {
    std::string title;
    std::size_t page = 0;
    double y = 0;
};

/// Title, dots and number of the page, each line a link.
void put_contents(const std::vector<ContentsLine>& chapters,
                  double width,
                  Press& press,
                  Paging& on) {
    const auto start = on.find(kContents);
    if (!start) {
        return;
    }
    Speech speech = speech_of(Voice::body, press.style);
    speech.type = lining(speech.type);
    const double dot = press.ruler.width(". ", speech.type);
    double y = start->at.y;
    for (const ContentsLine& chapter : chapters) {
        const Rect line{start->at.x, y, start->at.x + width, y + speech.leading};
        const double baseline = speech.type.size * kBaseline;
        const std::string number = std::to_string(chapter.page + 1);
        const double number_width = press.ruler.width(number, speech.type);
        const std::string words =
            shortened(chapter.title, speech.type, width - number_width - 4 * dot, press.ruler);
        Layer& layer = on.layer(start->page);
        press.put_line(words, line, baseline, speech, Align::start, layer);
        press.put_line(number, line, baseline, speech, Align::end, layer);
        // Dots stand in line under each other: on multiples of their pitch from the right.
        const double from = line.left + press.ruler.width(words, speech.type) + dot;
        const double room = line.right - number_width - 2 * dot - from;
        std::string dots;
        for (int left = room < 0 ? 0 : static_cast<int>(room / dot) + 1; left > 0; --left) {
            dots += dots.empty() ? "." : " .";
        }
        Speech soft = speech;
        soft.colour = kSoftInk;
        press.put_line(dots,
                       {line.left, line.top, line.right - number_width - dot, line.bottom},
                       baseline,
                       soft,
                       Align::end,
                       layer);
        on.add_link(start->page, {line, {}, chapter.page, chapter.y});
        y += speech.leading;
    }
}

}  // namespace

Flow::Flow(FlowForm form, Ruler& ruler, Diagnostics& problems)
    : form_(std::move(form)),
      press_{TextStyle(form_.paper, form_.closeness), form_.language, ruler, problems},
      sections_(1) {}

double Flow::width() const {
    return column_width(press_.style, sections_.back().columns);
}

void Flow::add(std::vector<Slab> slabs) {
    for (Slab& each : slabs) {
        slab(std::move(each));
    }
}

void Flow::slab(Slab slab) {
    slab.space_before += std::exchange(pending_space_, 0);
    sections_.back().slabs.push_back(std::move(slab));
}

void Flow::hold_together(std::size_t from) {
    std::vector<Slab>& slabs = sections_.back().slabs;
    for (std::size_t i = from; i + 1 < slabs.size(); ++i) {
        slabs[i].keep_with_next = true;
    }
}

void Flow::title(const std::string& words, const std::string& subtitle, const std::string& over) {
    const TextStyle& style = press_.style;
    Slab slab;
    double y = 0;
    const auto put = [&](const std::string& part, const Speech& speech) {
        for (const std::string& line :
             press_.ruler.even_lines(on_one_line(part), speech.type, width())) {
            press_.put_line(line,
                            {0, y, width(), y + speech.leading},
                            speech.type.size * kBaseline,
                            speech,
                            Align::middle,
                            slab.content);
            y += speech.leading;
        }
    };
    put(over, {small_capitals(style.body, 0.12), style.leading * 1.2, kSoftInk});
    put(words, {small_capitals(style.title, 0.05), style.title * 1.15, kInk});
    put(subtitle, {italic(style.body * 1.15), style.leading * 1.12, kSoftInk});
    y += style.body * 1.15;
    draw_swelled_rule({width() / 2, y}, width() * 0.42, slab.content);
    slab.height = y + style.body * 1.6;
    this->slab(std::move(slab));
}

void Flow::heading(const std::string& words, int level, const std::string& anchor) {
    const TextStyle& style = press_.style;
    Speech speech = speech_of(Voice::italic, style);
    speech.colour = kInk;
    if (level == 1) {
        speech = {small_capitals(style.heading), style.heading * 1.2, kInk};
    } else {
        speech.type = italic(style.body * 1.12);
        speech.leading = style.leading * 1.1;
    }
    const std::string line = on_one_line(words);
    speech.type = with_figures(line, speech.type);
    std::vector<Slab> slabs = paragraph_slabs(line, speech, width(), press_);
    if (slabs.empty()) {
        return;
    }
    for (Slab& slab : slabs) {
        slab.keep_with_next = true;
    }
    slabs.front().space_before = level == 1 ? style.leading * 1.5 : style.leading * 0.7;
    slabs.front().anchor = anchor.empty() ? line : anchor;
    slabs.front().outline = line;
    slabs.front().outline_level = level;
    Slab& last = slabs.back();
    if (level == 1) {
        const double y = last.height + style.body * 0.16;
        last.content.line({0, y}, {width(), y}, kInk, 0.2 * style.unit);
        last.height += style.body * 0.75;
    } else {
        last.height += style.body * 0.25;
    }
    add(std::move(slabs));
}

void Flow::subheading(const std::string& words) {
    std::vector<Slab> slabs =
        paragraph_slabs(words, speech_of(Voice::strong, press_.style), width(), press_);
    for (Slab& slab : slabs) {
        slab.keep_with_next = true;
    }
    if (!slabs.empty()) {
        slabs.front().space_before = press_.style.leading * 0.3;
    }
    add(std::move(slabs));
}

void Flow::paragraph(const std::string& words, Voice voice) {
    std::vector<Slab> lines =
        paragraph_slabs(words, speech_of(voice, press_.style), width(), press_);
    // Between columns side by side a short paragraph is not divided.
    constexpr std::size_t short_lines = 12;
    if (sections_.back().columns > 1 && lines.size() <= short_lines) {
        for (std::size_t i = 0; i + 1 < lines.size(); ++i) {
            lines[i].keep_with_next = true;
        }
    }
    add(std::move(lines));
    space(press_.style.leading * 0.35);
}

void Flow::items(const std::vector<std::string>& each, const std::string& sign) {
    const Speech speech = speech_of(Voice::body, press_.style);
    for (std::size_t i = 0; i < each.size(); ++i) {
        const std::string before = sign.empty() ? std::to_string(i + 1) + "." : sign;
        add(item_slabs(before, each[i], speech, width(), press_));
        space(press_.style.leading * 0.2);
    }
}

void Flow::table(const Table& table) {
    add(table_slabs(table, width(), press_));
    space(press_.style.leading * 0.5);
}

void Flow::pictures(std::vector<Picture> pictures) {
    add(picture_slabs(std::move(pictures), width(), press_));
    space(press_.style.leading * 0.5);
}

void Flow::new_page() {
    pending_space_ = 0;
    FlowSection section;
    section.columns = sections_.back().columns;
    section.starts_page = true;
    sections_.push_back(std::move(section));
}

void Flow::columns(std::size_t count) {
    FlowSection section;
    section.columns = std::max<std::size_t>(count, 1);
    std::vector<Slab>& before = sections_.back().slabs;
    auto first = before.end();
    while (sections_.back().columns == 1 && first != before.begin() &&
           std::prev(first)->keep_with_next) {
        --first;
    }
    section.lead.assign(first, before.end());
    before.erase(first, before.end());
    sections_.push_back(std::move(section));
}

void Flow::contents() {
    Slab slab;
    slab.anchor = kContents;
    this->slab(std::move(slab));
}

void Flow::finish(Document& to) {
    const std::vector<const Slab*> chapters = chapters_of(sections_);
    double contents_width = 0;
    for (FlowSection& section : sections_) {
        for (Slab& slab : section.slabs) {
            if (slab.anchor == kContents) {
                slab.height = static_cast<double>(chapters.size() + appendices_.size()) *
                              press_.style.leading;
                contents_width = column_width(press_.style, section.columns);
            }
        }
    }
    Paging paging(form_.paper, press_.style, to.pages.size());
    for (const FlowSection& section : sections_) {
        paging.place(section);
    }
    std::vector<ContentsLine> lines;
    for (const Slab* chapter : chapters) {
        if (const auto place = paging.find(chapter->anchor)) {
            lines.push_back({chapter->outline, place->page, place->at.y});
        }
    }
    for (const std::string& title : appendices_) {
        lines.push_back({title, paging.end(), 0});
    }
    put_contents(lines, contents_width, press_, paging);
    const std::size_t first = to.pages.size();
    for (std::size_t page = first; page < paging.end(); ++page) {
        put_furniture(form_, page, paging.end() + pages_behind_, press_, paging.layer(page));
    }
    for (const OutlineEntry& entry : paging.outline()) {
        to.outline.push_back(entry);
    }
    for (const std::string& title : appendices_) {
        to.outline.push_back({title, 1, paging.end(), 0});
    }
    for (Page& page : paging.take_pages()) {
        to.pages.push_back(std::move(page));
    }
}

}  // namespace platewright::sheet
