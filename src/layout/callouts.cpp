// SPDX-License-Identifier: MIT
// Words beside a picture, each with a line to what it speaks of.
#include "layout/callouts.h"

#include <algorithm>
#include <cmath>
#include <utility>

#include "layout/callout_choice.h"
#include "layout/style.h"

namespace platewright::sheet {
namespace {

/// Shares of the size of type.
constexpr double kLeading = 1.16;
constexpr double kCalloutGap = 0.55;
constexpr double kTick = 0.9;
constexpr double kAir = 0.35;

/// One callout that has a side, while its height is sought.
struct Label {
    std::size_t number = 0;
    std::vector<std::string> lines;
    double height = 0;
    Point site;
    /// Middle of its words.
    double y = 0;
};

/// One column with what stands in it.
struct Column {
    Rect box;
    bool on_left = false;
    std::vector<Label> labels;

    /// The edge that faces the picture.
    [[nodiscard]] double edge() const { return on_left ? box.right : box.left; }

    [[nodiscard]] double height_of_labels(double gap) const {
        double height = 0;
        for (const Label& label : labels) {
            height += label.height + gap;
        }
        return labels.empty() ? 0 : height - gap;
    }
};

const std::vector<Point>& sites_for(const Callout& callout, const Column& column) {
    return column.on_left ? callout.from_left : callout.from_right;
}

bool fits(const Callout& callout, const Column& column) {
    return !column.box.empty() && !sites_for(callout, column).empty();
}

/// The site nearest the column that it may be pointed at from.
Point nearest_site(const Callout& callout, const Column& column) {
    return *std::ranges::min_element(sites_for(callout, column), {}, [&column](Point site) {
        return std::abs(site.x - column.edge());
    });
}

/// Puts every label into one of two columns, then evens them out.
class Sides {
  public:
    Sides(const std::vector<Callout>& callouts, const Type& type, Ruler& ruler)
        : callouts_(callouts), type_(type), ruler_(ruler) {}

    void share(Column& left, Column& right, std::vector<std::size_t>& left_out) {
        for (std::size_t i = 0; i < callouts_.size(); ++i) {
            const bool may_left = fits(callouts_[i], left);
            const bool may_right = fits(callouts_[i], right);
            if (!may_left && !may_right) {
                left_out.push_back(i);
                continue;
            }
            const bool goes_left = may_left && (!may_right || way(i, left) <= way(i, right));
            Column& column = goes_left ? left : right;
            column.labels.push_back(label(i, column));
        }
        while (even_out(left, right) || even_out(right, left)) {
        }
    }

  private:
    const std::vector<Callout>& callouts_;
    const Type& type_;
    Ruler& ruler_;

    /// How far a line from the column has to go sideways.
    [[nodiscard]] double way(std::size_t number, const Column& column) const {
        return std::abs(nearest_site(callouts_[number], column).x - column.edge());
    }

    /// How much longer a label's line becomes.
    [[nodiscard]] double loss(const Label& label, const Column& from, const Column& to) const {
        return way(label.number, to) - way(label.number, from);
    }

    Label label(std::size_t number, const Column& column) {
        Label made;
        made.number = number;
        made.lines = ruler_.label_lines(callouts_[number].words, type_, column.box.width());
        made.height = static_cast<double>(made.lines.size()) * kLeading * type_.size;
        made.site = nearest_site(callouts_[number], column);
        return made;
    }

    /// Moves the label that loses least by it, if the first column has two more, or is too full
    /// while the other is not.
    bool even_out(Column& from, Column& to) {
        const double gap = kCalloutGap * type_.size;
        const bool too_full =
            from.height_of_labels(gap) > from.box.height() && from.labels.size() > to.labels.size();
        if (from.labels.empty() || (from.labels.size() < to.labels.size() + 2 && !too_full)) {
            return false;
        }
        auto moved = from.labels.end();
        for (auto each = from.labels.begin(); each != from.labels.end(); ++each) {
            if (fits(callouts_[each->number], to) &&
                (moved == from.labels.end() || loss(*each, from, to) < loss(*moved, from, to))) {
                moved = each;
            }
        }
        if (moved == from.labels.end()) {
            return false;
        }
        Label again = label(moved->number, to);
        if (to.height_of_labels(gap) + gap + again.height > to.box.height()) {
            return false;
        }
        from.labels.erase(moved);
        to.labels.push_back(std::move(again));
        return true;
    }
};

/// Heights of labels in their order: each as near its site as the others and the column allow.
/// Least squares under an order is isotonic regression, solved by pooling adjacent violators
/// (M. Ayer et al., Annals of Mathematical Statistics 26, 1955).
void set_heights(Column& column, double gap) {
    /// Neighbours that touch and share one middle.
    struct Pool {
        double sum = 0;
        std::size_t size = 0;

        [[nodiscard]] double mean() const { return sum / static_cast<double>(size); }
    };

    std::vector<double> offsets;
    std::vector<Pool> pools;
    double offset = 0;
    for (std::size_t i = 0; i < column.labels.size(); ++i) {
        const Label& label = column.labels[i];
        offset += i == 0 ? 0 : (column.labels[i - 1].height + label.height) / 2 + gap;
        offsets.push_back(offset);
        pools.push_back({label.site.y - offset, 1});
        while (pools.size() > 1 && pools[pools.size() - 2].mean() > pools.back().mean()) {
            const Pool last = pools.back();
            pools.pop_back();
            pools.back().sum += last.sum;
            pools.back().size += last.size;
        }
    }
    std::size_t i = 0;
    for (const Pool& pool : pools) {
        const double least = column.box.top + column.labels.front().height / 2;
        const double most = column.box.bottom - column.labels.back().height / 2 - offset;
        const double start = std::clamp(pool.mean(), least, std::max(least, most));
        for (std::size_t k = 0; k < pool.size; ++k, ++i) {
            column.labels[i].y = start + offsets[i];
        }
    }
}

Point bend_of(const Column& column, const Label& label, double size) {
    const double out = (kAir + kTick) * size;
    return {column.edge() + (column.on_left ? out : -out), label.y};
}

/// Exchanges the labels of one pair of crossing lines, if there is any.
bool undo_a_crossing(Column& column, double size) {
    std::vector<Label>& labels = column.labels;
    for (std::size_t i = 0; i < labels.size(); ++i) {
        for (std::size_t k = i + 1; k < labels.size(); ++k) {
            if (lines_cross(bend_of(column, labels[i], size),
                            labels[i].site,
                            bend_of(column, labels[k], size),
                            labels[k].site)) {
                std::swap(labels[i], labels[k]);
                return true;
            }
        }
    }
    return false;
}

/// By their sites, then uncrossed: in what order labels stand, and how high.
void set_in_order(Column& column, double size) {
    std::ranges::sort(column.labels, [](const Label& a, const Label& b) {
        return std::pair(a.site.y, a.number) < std::pair(b.site.y, b.number);
    });
    const double gap = kCalloutGap * size;
    // Every exchange shortens the lines where labels are of one height; the bound is for others.
    const std::size_t most = column.labels.size() * column.labels.size();
    set_heights(column, gap);
    for (std::size_t i = 0; i < most && undo_a_crossing(column, size); ++i) {
        set_heights(column, gap);
    }
}

/// What is wrong with the lines of a column: their length, and in mm of length what it is worth to
/// keep them from crossing and from running through another's dot.
double faults(const Column& column, double size) {
    constexpr double crossing = 400;
    constexpr double touching = 60;
    const double clear = size * kDot * 2.6;
    double sum = 0;
    for (const Label& one : column.labels) {
        const Point bend = bend_of(column, one, size);
        sum += length(one.site - bend);
        for (const Label& other : column.labels) {
            if (&one == &other) {
                continue;
            }
            const Point across = bend_of(column, other, size);
            sum += lines_cross(bend, one.site, across, other.site) ? crossing / 2 : 0;
            sum += distance_from_line(other.site, bend, one.site) < clear ? touching : 0;
        }
    }
    return sum;
}

/// Leads single labels elsewhere as long as the lines get better by it.
void choose_sites(Column& column, const std::vector<Callout>& callouts, double size) {
    constexpr int most_rounds = 4;
    double least = faults(column, size);
    bool better = true;
    for (int round = 0; round < most_rounds && better; ++round) {
        better = false;
        for (std::size_t number = 0; number < callouts.size(); ++number) {
            for (const Point site : sites_for(callouts[number], column)) {
                Column tried = column;
                const auto label = std::ranges::find(tried.labels, number, &Label::number);
                if (label == tried.labels.end() || label->site == site) {
                    continue;
                }
                label->site = site;
                set_in_order(tried, size);
                const double found = faults(tried, size);
                if (found < least - 1e-6) {
                    least = found;
                    column = std::move(tried);
                    better = true;
                }
            }
        }
    }
}

void settle(Column& column,
            const std::vector<Callout>& callouts,
            double size,
            std::vector<std::size_t>& left_out) {
    const double gap = kCalloutGap * size;
    while (!column.labels.empty() && column.height_of_labels(gap) > column.box.height()) {
        const auto last = std::ranges::max_element(column.labels, {}, &Label::number);
        left_out.push_back(last->number);
        column.labels.erase(last);
    }
    if (!column.labels.empty()) {
        set_in_order(column, size);
        choose_sites(column, callouts, size);
    }
}

PlacedCallout placed(const Column& column, const Label& label, double size) {
    PlacedCallout made;
    made.number = label.number;
    made.on_left = column.on_left;
    made.lines = label.lines;
    made.box = {
        column.box.left, label.y - label.height / 2, column.box.right, label.y + label.height / 2};
    made.bend = bend_of(column, label, size);
    made.start = {made.bend.x + (column.on_left ? -kTick : kTick) * size, label.y};
    made.turn = made.bend;
    made.site = label.site;
    return made;
}

}  // namespace

bool lines_cross(Point a, Point b, Point c, Point d) {
    const auto side = [](Point p, Point q, Point r) { return cross(q - p, r - p); };
    const bool apart_1 = (side(a, b, c) > 0) == (side(a, b, d) > 0);
    const bool apart_2 = (side(c, d, a) > 0) == (side(c, d, b) > 0);
    return !apart_1 && !apart_2;
}

bool stroke_meets(Point from, Point to, const Rect& box) {
    const auto holds = [&box](Point p) {
        return box.left <= p.x && p.x <= box.right && box.top <= p.y && p.y <= box.bottom;
    };
    const Point corner{box.right, box.top};
    const Point other{box.left, box.bottom};
    return holds(from) || holds(to) ||
           (!(from == to) && (lines_cross(from, to, {box.left, box.top}, {box.right, box.bottom}) ||
                              lines_cross(from, to, corner, other)));
}

void add_site(const Site& site, double middle, const Placed& picture, Callout& to) {
    const bool on_left = site.at.x < middle;
    (on_left ? to.from_left : to.from_right).push_back(picture.at + site.at * picture.factor);
    (on_left ? to.crossed_from_left : to.crossed_from_right)
        .push_back(on_left ? site.crossed_from_left : site.crossed_from_right);
}

Rect words_area(const PlacedCallout& callout, const Type& type, Ruler& ruler) {
    double width = 0;
    for (const std::string& line : callout.lines) {
        width = std::max(width, ruler.width(line, type));
    }
    Rect area = callout.box;
    (callout.on_left ? area.left : area.right) =
        callout.on_left ? area.right - width : area.left + width;
    return area;
}

CalloutPlan place_callouts(const std::vector<Callout>& callouts,
                           const CalloutColumns& columns,
                           const Type& type,
                           Ruler& ruler) {
    if (auto level = place_level(callouts, columns, type, ruler)) {
        return *std::move(level);
    }
    CalloutPlan plan;
    Column left{columns.left, true, {}};
    Column right{columns.right, false, {}};
    Sides(callouts, type, ruler).share(left, right, plan.left_out);
    for (Column* column : {&left, &right}) {
        settle(*column, callouts, type.size, plan.left_out);
        for (const Label& label : column->labels) {
            plan.placed.push_back(placed(*column, label, type.size));
        }
    }
    std::ranges::sort(plan.left_out, std::greater());
    return plan;
}

void draw_callouts(const CalloutPlan& plan, const Type& type, Layer& on) {
    constexpr double line_share = 0.036;
    for (const PlacedCallout& callout : plan.placed) {
        on.begin_link(callout.link);
        Path line;
        line.move_to(callout.start);
        line.line_to(callout.bend);
        line.line_to(callout.turn);
        line.line_to(callout.site);
        // A hair of paper on both sides keeps the line legible on dark cloth.
        on.stroke(line, kPaper, type.size * line_share * 2.2, 0.8);
        on.stroke(line, kInk, type.size * line_share);
        const double dot = type.size * callout.dot;
        on.outlined(ellipse(callout.site, dot, dot), kInk, kPaper, type.size * line_share * 1.5);
        double y = callout.box.top + type.size * kBaseline;
        for (const std::string& words : callout.lines) {
            on.words(words,
                     {callout.on_left ? callout.box.right : callout.box.left, y},
                     type,
                     kInk,
                     callout.on_left ? Align::end : Align::start);
            y += type.size * kLeading;
        }
        on.end_link();
    }
}

}  // namespace platewright::sheet
