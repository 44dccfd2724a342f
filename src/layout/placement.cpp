// SPDX-License-Identifier: MIT
// How large a window is, so that its dimensions lie within it, and at which scale it is drawn.
#include "layout/placement.h"

#include <algorithm>
#include <array>
#include <utility>

#include "layout/cells.h"
#include "layout/slab.h"
#include "layout/style.h"
#include "words/terms.h"
#include "words/workshop_messages.h"

namespace platewright {
namespace {

/// Between two drawings, and round what one shows, mm on paper.
constexpr double kApart = 4;
constexpr double kAir = 1.6;
/// Dimensions may stand so far from the parts.
constexpr double kRoundParts = 20;

/// A rectangle about the middle of another, no larger than that.
Rect held_in(const Rect& wanted, Point middle, double width, double height) {
    return {std::max(wanted.left, middle.x - width / 2),
            std::max(wanted.top, middle.y - height / 2),
            std::min(wanted.right, middle.x + width / 2),
            std::min(wanted.bottom, middle.y + height / 2)};
}

Rect scaled(const Rect& rect, double factor) {
    return {rect.left * factor, rect.top * factor, rect.right * factor, rect.bottom * factor};
}

}  // namespace

PlacementWindow placement_window(const Rect& parts,
                                 const std::vector<Dimension>& shown,
                                 const sheet::MeasuredFlat& flat,
                                 const Paper& paper) {
    const Rect area = sheet::TextStyle(paper).area;
    const double width = (area.width() - kApart) / 2 - 2 * kAir;
    const double height = area.height() * 0.45 - 2 * kAir;
    PlacementWindow window;
    for (const int scale : {1, 2, 5, 10, 20}) {
        const Rect on_paper = scaled(parts, 1.0 / scale);
        if (on_paper.width() > width || on_paper.height() > height) {
            continue;
        }
        const Rect room = held_in(on_paper.grown(kRoundParts), on_paper.centre(), width, height);
        window.scale = scale;
        window.lines = sheet::lay_dimensions(shown, {flat, static_cast<double>(scale), room});
        Rect frame = on_paper;
        for (const sheet::DimensionLine& line : window.lines) {
            frame.include(box_of(line));
        }
        window.frame = scaled(frame.grown(kAir), scale);
        const bool good = std::ranges::all_of(window.lines, [](const sheet::DimensionLine& line) {
            return line.cost < sheet::kBadPlace;
        });
        if (good) {
            break;
        }
    }
    return window;
}

std::string placement_caption(const std::string& title, double scale, Language language) {
    return say(language,
               messages::kViewAtScale,
               {title_term(language, title), number_words(language, scale, 0)});
}

void level_windows(std::vector<PlacementWindow>& windows,
                   const std::vector<std::string>& titles,
                   Language language,
                   const Paper& paper,
                   sheet::Ruler& ruler) {
    std::vector<sheet::RowItem> cells;
    for (std::size_t i = 0; i < windows.size(); ++i) {
        PlacementWindow& window = windows[i];
        const std::string words = placement_caption(titles[i], window.scale, language);
        const double height = window.frame.height() / window.scale + kPlacementLabel;
        cells.push_back({std::max(window.frame.width() / window.scale,
                                  ruler.width(words, sheet::italic(kCaptionType))),
                         height,
                         {},
                         [&window, height](sheet::Items&, Point, double row) {
                             const double more = (row - height) * window.scale / 2;
                             window.frame.top -= more;
                             window.frame.bottom += more;
                         }});
    }
    sheet::level_rows(sheet::stacked(std::move(cells)), sheet::TextStyle(paper).area.width());
}

std::vector<sheet::DimensionLine> flat_dimensions(const MeasuredView& view,
                                                  const Paper& paper,
                                                  const sheet::MeasuredFlat& flat) {
    const Rect area = sheet::TextStyle(paper).area;
    const Rect on_paper = scaled(view.picture.frame, 1 / view.picture.scale);
    const Rect room =
        held_in(on_paper.grown(kRoundParts), on_paper.centre(), area.width(), area.height());
    return sheet::lay_dimensions(view.dimensions, {flat, view.picture.scale, room});
}

}  // namespace platewright
