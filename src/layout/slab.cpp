// SPDX-License-Identifier: MIT
// Words and pictures as strips across a column.
#include "layout/slab.h"

#include <algorithm>
#include <cmath>
#include <utility>

#include "base/text.h"
#include "layout/ground.h"
#include "layout/silhouette.h"

namespace platewright::sheet {
namespace {

/// A word that is broken in a room of that width, or nothing.
std::string broken_word(const std::string& words,
                        const Type& type,
                        double room,
                        const std::string& language,
                        Ruler& ruler) {
    for (const std::string_view line : split(words, '\n')) {
        for (const std::string_view word : split(line, ' ')) {
            if (ruler.least_width(std::string(word), type, language) > room) {
                return std::string(word);
            }
        }
    }
    return {};
}

/// Lines as slabs of one height, kept together so that none stands alone at an edge.
std::vector<Slab> stacked(const std::vector<std::string>& lines,
                          const Rect& room,
                          const Speech& speech,
                          Press& press) {
    std::vector<Slab> slabs;
    for (std::size_t i = 0; i < lines.size(); ++i) {
        Slab slab;
        slab.height = speech.leading;
        slab.keep_with_next =
            i + 1 < lines.size() && (i == 0 || i + 2 == lines.size() || lines.size() < 4);
        press.put_line(
            lines[i], room, speech.type.size * kBaseline, speech, Align::start, slab.content);
        slabs.push_back(std::move(slab));
    }
    return slabs;
}

}  // namespace

TextStyle::TextStyle(const Paper& paper, double closeness) {
    unit = std::sqrt(paper.width * paper.height / (210.0 * 297.0));
    // Type grows less than the sheet: a larger sheet is not read from further away.
    body = std::max(kSevenPoint * 1.08, 3.5 * closeness * std::pow(unit, 0.6));
    leading = body * 1.3;
    small = std::max(kSevenPoint, body * 0.86);
    small_leading = small * 1.22;
    title = body * 2.1;
    heading = body * 1.3;
    gutter = body * 2.2;
    const double side = std::clamp(paper.width * 0.1, 8.0, 34.0);
    area = {side, 20 * unit, paper.width - side, paper.height - 21 * unit};
}

Speech speech_of(Voice voice, const TextStyle& style) {
    switch (voice) {
        case Voice::body:
            return {roman(style.body), style.leading, kInk};
        case Voice::strong:
            return {small_capitals(style.body, 0.05), style.leading, kInk};
        case Voice::italic:
            return {italic(style.body), style.leading, kSoftInk};
        case Voice::small:
            return {roman(style.small), style.small_leading, kInk};
        case Voice::small_italic:
            return {italic(style.small), style.small_leading, kSoftInk};
    }
    return {};
}

std::vector<std::string> Press::lines(const std::string& words, const Type& type, double room) {
    std::vector<std::string> made = ruler.lines(words, type, room, language);
    if (made.size() > 1) {
        const std::string word = broken_word(words, type, room, language, ruler);
        if (!word.empty()) {
            Diagnostic warning;
            warning.severity = Severity::warning;
            warning.code = "layout.too-wide";
            warning.message = quoted(word) + " is wider than its column and is broken inside";
            warning.hints.emplace_back("choose a larger paper, or write it in shorter words");
            problems.add(std::move(warning));
        }
    }
    return made;
}

std::vector<std::string> Press::running_lines(const std::string& words,
                                              const Type& type,
                                              double room) {
    constexpr double short_share = 0.3;
    std::vector<std::string> made = lines(words, type, room);
    for (const double share : {0.96, 0.92, 0.88, 0.84}) {
        if (!ruler.ends_alone(made, type, short_share * room)) {
            break;
        }
        std::vector<std::string> tried = ruler.lines(words, type, share * room, language);
        if (tried.size() == made.size()) {
            made = std::move(tried);
        }
    }
    return made;
}

std::vector<std::string> Press::whole_lines(const std::string& words,
                                            const Type& type,
                                            double room) {
    return ruler.least_width(words, type, "") <= room ? ruler.lines(words, type, room)
                                                      : lines(words, type, room);
}

std::vector<std::string> Press::label_lines(const std::string& words,
                                            const Type& type,
                                            double room) {
    std::vector<std::string> made = whole_lines(words, type, room);
    return made.size() == 2 ? ruler.label_lines(words, type, room) : made;
}

void Press::put_line(const std::string& line,
                     const Rect& room,
                     double baseline,
                     const Speech& speech,
                     Align align,
                     Layer& on) {
    if (line.empty()) {
        return;
    }
    if (align == Align::start && ruler.runs_leftward(line)) {
        align = Align::end;
    }
    const double x = align == Align::start    ? room.left
                     : align == Align::middle ? room.centre().x
                                              : room.right;
    on.words(line, {x, room.top + baseline}, speech.type, speech.colour, align);
}

Placed placed_at(const Picture& picture, Point corner) {
    Placed placed{corner - Point{picture.frame.left, picture.frame.top} * picture.factor,
                  picture.factor,
                  picture.drawing};
    placed.drawing.root.name = "picture";
    return placed;
}

void put_shadow(const Placed& man, const Rect& frame, Layer& on) {
    const auto feet = footing_of(Silhouette(man.drawing, frame), man.at, man.factor);
    if (feet) {
        draw_footing(*feet, man.factor, "small", on);
    }
}

Picture fitted(Picture picture, double width, double height, Diagnostics& to) {
    const double across = picture.frame.width() * picture.factor;
    const double up = picture.frame.height() * picture.factor;
    const double less =
        std::min({1.0, width / std::max(across, 1e-9), height / std::max(up, 1e-9)});
    // Rounding is no reason to complain.
    if (less < 1 - 1e-6) {
        Diagnostic warning;
        warning.severity = Severity::warning;
        warning.code = "layout.too-large";
        warning.message = "the picture " + quoted(picture.words) +
                          " is larger than the page and is drawn smaller";
        warning.hints.emplace_back("choose a larger paper");
        to.add(std::move(warning));
        picture.factor *= less;
    }
    return picture;
}

std::vector<Slab> paragraph_slabs(const std::string& words,
                                  const Speech& speech,
                                  double width,
                                  Press& press) {
    return stacked(press.running_lines(words, speech.type, width),
                   {0, 0, width, speech.leading},
                   speech,
                   press);
}

std::vector<Slab> item_slabs(const std::string& sign,
                             const std::string& words,
                             const Speech& speech,
                             double width,
                             Press& press) {
    const double indent = std::max(speech.type.size * 1.5,
                                   press.ruler.width(sign, speech.type) + speech.type.size * 0.5);
    const Rect room{indent, 0, width, speech.leading};
    std::vector<Slab> slabs =
        stacked(press.running_lines(words, speech.type, room.width()), room, speech, press);
    if (!slabs.empty()) {
        slabs.front().content.words(sign,
                                    {0, speech.type.size * kBaseline},
                                    with_figures(sign, speech.type),
                                    kSoftInk,
                                    Align::start);
    }
    return slabs;
}

namespace {

/// Lines under a picture, one under the other.
struct Legend {
    struct Line {
        std::string words;
        Speech speech;
        Align align = Align::middle;
        double y = 0;
    };

    std::vector<Line> lines;
    double height = 0;
};

Legend legend_of(const Picture& picture, double room, Press& press) {
    Legend legend;
    const auto add = [&](const std::string& words, Voice voice, Align align) {
        const Speech speech = speech_of(voice, press.style);
        for (std::string& line : align == Align::middle
                                     ? press.label_lines(words, speech.type, room)
                                     : press.whole_lines(words, speech.type, room)) {
            legend.lines.push_back({std::move(line), speech, align, legend.height});
            legend.height += speech.leading;
        }
    };
    add(picture.words, Voice::strong, Align::middle);
    add(picture.note, Voice::small_italic, Align::middle);
    for (const std::string& line : picture.lines) {
        legend.height += press.style.small * 0.35;
        add(line, Voice::small, Align::start);
    }
    return legend;
}

/// One row of pictures, each in the middle of its place.
Slab picture_row(const std::vector<Picture>& row, double place, Press& press) {
    const double room = place - press.style.body * 1.2;
    std::vector<Legend> legends;
    double highest = 0;
    double legend_height = 0;
    for (const Picture& picture : row) {
        legends.push_back(legend_of(picture, room, press));
        highest = std::max(highest, picture.frame.height() * picture.factor);
        legend_height = std::max(legend_height, legends.back().height);
    }
    Slab slab;
    const double top = highest + press.style.body * 0.6;
    slab.height = top + legend_height;
    for (std::size_t i = 0; i < row.size(); ++i) {
        const double left = static_cast<double>(i) * place + (place - room) / 2;
        const Point size{row[i].frame.width() * row[i].factor,
                         row[i].frame.height() * row[i].factor};
        slab.pictures.push_back(placed_at(row[i], {left + (room - size.x) / 2, highest - size.y}));
        if (row[i].stands) {
            put_shadow(slab.pictures.back(), row[i].frame, slab.ground);
        }
        for (const Legend::Line& line : legends[i].lines) {
            const double y = top + line.y;
            press.put_line(line.words,
                           {left, y, left + room, y + line.speech.leading},
                           line.speech.type.size * kBaseline,
                           line.speech,
                           line.align,
                           slab.content);
        }
    }
    return slab;
}

}  // namespace

std::vector<Slab> picture_slabs(std::vector<Picture> pictures,
                                double width,
                                Press& press,
                                std::size_t columns) {
    // Captions take some of the height.
    const double most = press.style.area.height() - 8 * press.style.leading;
    double widest = 1;
    for (Picture& picture : pictures) {
        picture = fitted(std::move(picture), width, most, press.problems);
        widest = std::max(widest, picture.frame.width() * picture.factor + press.style.body);
    }
    const auto fit = static_cast<std::size_t>(std::max(1.0, std::floor(width / widest + 1e-6)));
    const std::size_t most_in_row = columns > 0 ? columns : fit;
    const std::size_t rows = (pictures.size() + most_in_row - 1) / most_in_row;
    const std::size_t places =
        columns > 0 || rows == 0 ? most_in_row : (pictures.size() + rows - 1) / rows;
    std::vector<Slab> slabs;
    for (std::size_t row = 0; row < rows; ++row) {
        // Rows as even as can be.
        const std::size_t first = columns > 0 ? row * columns : row * pictures.size() / rows;
        const std::size_t end = columns > 0 ? std::min(first + columns, pictures.size())
                                            : (row + 1) * pictures.size() / rows;
        const std::vector<Picture> part(pictures.begin() + static_cast<std::ptrdiff_t>(first),
                                        pictures.begin() + static_cast<std::ptrdiff_t>(end));
        slabs.push_back(picture_row(part, width / static_cast<double>(places), press));
        slabs.back().space_before = press.style.body;
    }
    return slabs;
}

}  // namespace platewright::sheet
