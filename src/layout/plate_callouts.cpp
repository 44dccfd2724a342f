// SPDX-License-Identifier: MIT
// Words beside the figures of a plate and between them.
#include "layout/plate_callouts.h"

#include <algorithm>
#include <cmath>
#include <optional>
#include <utility>

#include "layout/callout_choice.h"
#include "layout/crossed.h"
#include "layout/key.h"
#include "layout/style.h"

namespace platewright::sheet {
namespace {

/// In ems: between words and their line, and how far it goes on level.
constexpr double kAirOfWords = 0.35;
constexpr double kTickOfWords = 0.7;
/// What it costs to cross a thing that is not spoken of, in ems.
constexpr double kCrossed = 6;
/// From the line the men stand on up to where the ground drawn under them ends, mm on the body.
constexpr double kGround = 62;

/// Every callout leads to the row of the key that lists its thing; the first of a row is where that
/// leads back to.
void link_callouts(const Captions& captions, const Type& type, Ruler& ruler, CalloutPlan& plan) {
    std::vector<bool> led_to(captions.key.size(), false);
    for (PlacedCallout& placed : plan.placed) {
        const std::string& property = captions.callouts[placed.number].key;
        const auto row = std::ranges::find_if(captions.key, [&](const KeyEntry& entry) {
            return std::ranges::find(entry.properties, property) != entry.properties.end();
        });
        if (row == captions.key.end()) {
            continue;
        }
        const auto number = static_cast<std::size_t>(row - captions.key.begin());
        placed.link = {led_to[number] ? std::string() : callout_anchor(number),
                       key_anchor(number),
                       words_area(placed, type, ruler)};
        led_to[number] = true;
    }
}

/// Where words for a thing of a figure may stand: left or right of it, in the gap of that number.
struct Beside {
    std::size_t figure = 0;
    bool on_left = false;
    std::size_t gap = 0;
};

/// The same, and whether words between two figures stand at the far edge of their column, so that
/// a line has room to come down to the feet.
struct Stood {
    Beside beside;
    bool far = false;
};

/// A place that may be pointed at, on paper, where a level line to it enters the figure, what it
/// costs to cross that much of it, how far it is above or below the middle of its thing.
struct Target {
    Point at;
    double room = 0;
    double edge = 0;
    double over = 0;
    double off_middle = 0;
    /// How much is seen of the thing, mm².
    double area = 0;
    /// How many other things a line to it crosses that is level all the way.
    int crossed = 0;
};

/// The same two of a site's thing, on the body.
struct Thing {
    double off_middle = 0;
    double area = 0;
};

/// All places for the words of one plate.
class Places {
  public:
    Places(const NamedFigures& named, const Type& type, Ruler& ruler)
        : named_(named), type_(type), ruler_(ruler) {
        for (std::size_t gap = 1; gap < named.stands.size(); ++gap) {
            const double line = (kAirOfWords + kTickOfWords + 0.1) * type.size;
            columns_.push_back(
                column_at(named.plan, named.stands, gap, {lowest_words(), type.size, line}));
        }
    }

    /// Cheapest first.
    [[nodiscard]] std::vector<CalloutOption> of(std::size_t number) {
        found_.clear();
        targets_.clear();
        const CalloutWords& words = named_.task.captions.callouts[number];
        outer_ = set_in(words.words, {outer_width(words.words)});
        inner_ = set_in(words.words, {1e3, 7.5 * type_.size, 5.5 * type_.size});
        for (std::size_t i = 0; i < named_.figures.size(); ++i) {
            const auto seen = named_.figures[i].seen.find(words.key);
            if (seen == named_.figures[i].seen.end() || seen->second.area < kLeastFound) {
                continue;
            }
            for (const std::vector<Site>* sites : {&seen->second.levels, &seen->second.sites}) {
                for (const Site& site : *sites) {
                    const double off = std::abs(site.at.y - middle_of(seen->second));
                    add({i, true, i}, site, {off, seen->second.area});
                    add({i, false, i + 1}, site, {off, seen->second.area});
                }
            }
        }
        place_targets(number);
        return cheapest_of_regions();
    }

  private:
    /// Words on lines of some width.
    struct Setting {
        std::vector<std::string> lines;
        double width = 0;
    };

    /// An option still without its words, how they are set, the figure it speaks of, and what of
    /// its cost is for crossing.
    struct Found {
        CalloutOption option;
        const Setting* words = nullptr;
        std::size_t figure = 0;
        double as_level = 0;
    };

    /// A place to be pointed at from one side.
    struct Pointed {
        Beside beside;
        Target target;
    };

    /// Costs of what was found, and where it stands there.
    using Ranking = std::vector<std::pair<double, std::size_t>>;

    /// In order of their cost, of each region so many. What lines truly cross is counted only of
    /// those that are good if they ran level all the way.
    std::vector<CalloutOption> cheapest_of_regions() {
        constexpr std::size_t counted = 240;
        constexpr std::size_t most = 90;
        Ranking ranking;
        for (std::size_t i = 0; i < found_.size(); ++i) {
            ranking.emplace_back(found_[i].option.cost, i);
        }
        keep_cheapest(ranking, counted);
        for (auto& [cost, i] : ranking) {
            found_[i].option.cost += crossing(found_[i]) - found_[i].as_level;
            cost = found_[i].option.cost;
        }
        keep_cheapest(ranking, most);
        std::vector<CalloutOption> options;
        options.reserve(ranking.size());
        for (const auto& [cost, i] : ranking) {
            options.push_back(found_[i].option);
            options.back().placed.lines = found_[i].words->lines;
        }
        return options;
    }

    void keep_cheapest(Ranking& ranking, std::size_t most) const {
        std::ranges::sort(ranking);
        std::vector<std::size_t> counts(named_.stands.size() + 1, 0);
        std::erase_if(ranking, [&](const auto& each) {
            return ++counts[found_[each.second].option.region] > most;
        });
    }

    const NamedFigures& named_;
    const Type& type_;
    Ruler& ruler_;
    std::vector<Found> found_;
    std::vector<Pointed> targets_;
    /// Between the first two figures, the next two, and so on.
    std::vector<Gap> columns_;
    /// The words that are being placed, beside all figures and between two.
    std::vector<Setting> outer_;
    std::vector<Setting> inner_;

    std::vector<Setting> set_in(const std::string& words, const std::vector<double>& rooms) {
        std::vector<Setting> all;
        for (const double room : rooms) {
            // Between two figures no word is broken to stand in less room.
            if (rooms.size() > 1 && ruler_.least_width(words, type_, "") > room) {
                continue;
            }
            Setting set{ruler_.label_lines(words, type_, room)};
            for (const std::string& line : set.lines) {
                set.width = std::max(set.width, ruler_.width(line, type_));
            }
            if (all.empty() || all.back().lines != set.lines) {
                all.push_back(std::move(set));
            }
        }
        return all;
    }

    /// Halfway between the highest and the lowest place.
    static double middle_of(const Seen& seen) {
        Rect all;
        for (const Site& site : all_sites(seen)) {
            all.include(site.at);
        }
        return all.centre().y;
    }

    [[nodiscard]] bool is_outer(const Beside& beside) const {
        return beside.gap == 0 || beside.gap == named_.stands.size();
    }

    /// A line that would cross more than this share of the figure, or of what there is of it at
    /// that height, is not drawn; what it costs from a third on.
    void add(const Beside& beside, const Site& site, const Thing& thing) {
        constexpr double most_over = 0.48;
        const Stand& stand = named_.stands[beside.figure];
        const double factor = named_.plan.factor;
        // A line that only just passes under a butt or over a shoulder crosses it too.
        const double clear = 0.5 * type_.size / factor;
        const auto reach = stand.silhouette.reach(site.at.y - clear, site.at.y + clear);
        if (!reach) {
            return;
        }
        const double over = beside.on_left ? site.at.x - reach->first : reach->second - site.at.x;
        const double width = stand.silhouette.box().width();
        constexpr double most_at_height = 0.62;
        const double most =
            std::min(most_over * width, most_at_height * (reach->second - reach->first));
        if (over > most) {
            return;
        }
        const double beyond = std::max(0.0, over - width / 3) * 3 + std::max(0.0, over);
        const double edge = beside.on_left ? reach->first : reach->second;
        const Target target{stand.at + site.at * factor,
                            site.room * factor,
                            stand.at.x + edge * factor,
                            beyond * factor,
                            thing.off_middle * factor,
                            thing.area * factor * factor,
                            beside.on_left ? site.crossed_from_left : site.crossed_from_right};
        targets_.push_back({beside, target});
    }

    /// Words for the best places of each region only: what is far within the figure or behind other
    /// things is not even tried.
    void place_targets(std::size_t number) {
        constexpr std::size_t most = 20;
        std::ranges::stable_sort(targets_, {}, [this](const Pointed& each) {
            return 1.5 * each.target.over + kCrossed * type_.size * each.target.crossed;
        });
        std::vector<std::size_t> counts(named_.stands.size() + 1, 0);
        for (const auto& [beside, target] : targets_) {
            if (++counts[beside.gap] > most) {
                continue;
            }
            PlacedCallout made;
            made.number = number;
            made.on_left = beside.on_left;
            for (const Setting& words : is_outer(beside) ? outer_ : inner_) {
                add_heights(made, words, beside, target);
            }
        }
    }

    /// How wide lines of words may be beside all figures. A long word rather takes some of the air
    /// at the edge than it is broken, or parted from its colon.
    [[nodiscard]] double outer_width(const std::string& words) {
        const double column = named_.task.column_width();
        const double whole = ruler_.least_width(words, type_, "") + 0.02 * type_.size;
        return std::clamp(whole, column - 2 * air(), column - 0.8 * air());
    }

    [[nodiscard]] double air() const { return 1.2 * named_.plan.style.unit; }

    /// Words for what is lower cannot stand level with it.
    [[nodiscard]] double lowest_flush() const {
        const Rect& row = named_.plan.figures;
        return row.bottom - 0.06 * row.height();
    }

    /// Small things are not hidden by the dot: it is finer, and the line ends at their edge.
    void spare_small(PlacedCallout& made, Target& target) const {
        constexpr double small_room = 0.9;
        constexpr double smallest_room = 0.27;
        constexpr double small_area = 4;
        if (target.room < small_room * type_.size) {
            made.dot = kSmallDot;
            if (target.room < smallest_room * type_.size ||
                target.area < small_area * type_.size * type_.size) {
                target.at.x += (made.on_left ? -0.8 : 0.8) * target.room;
            }
        }
    }

    void add_heights(PlacedCallout callout,
                     const Setting& words,
                     const Beside& beside,
                     Target target) {
        constexpr int most_steps = 12;
        constexpr double step = 0.4;
        spare_small(callout, target);
        for (int i = -most_steps; i <= most_steps; ++i) {
            for (const bool far : {false, true}) {
                PlacedCallout made = callout;
                if (set_words(made, words, {beside, far}, target.at.y + i * step * type_.size) &&
                    set_line(made, beside, target.at) && !meets_roundel(made)) {
                    const double as_level = kCrossed * type_.size * target.crossed;
                    const double cost =
                        as_level + cost_of(made, words.lines.size(), beside, target);
                    found_.push_back({{made, cost, beside.gap}, &words, beside.figure, as_level});
                }
                if (is_outer(beside) || target.at.y < lowest_flush()) {
                    break;
                }
            }
        }
    }

    /// Long lines cost, across the figure most; so does what stands apart from its height.
    [[nodiscard]] double cost_of(const PlacedCallout& made,
                                 std::size_t rows,
                                 const Beside& beside,
                                 const Target& target) const {
        const double apart = std::abs(made.site.y - made.bend.y);
        const double small = std::max(0.0, 0.8 * type_.size - target.room);
        // Between the figures there is less room than beside them.
        const double between = is_outer(beside) ? 0 : 2.5;
        const double lines = static_cast<double>(rows - 1) * 0.8 + between;
        // A bend on the cloth is taken for one of its own lines.
        const double bent = (made.turn.x - target.edge) * (made.on_left ? 1 : -1);
        const double knee = apart > 1e-6 ? 0.5 * type_.size : 0;
        return 1.5 * target.over + 5 * std::clamp(bent, 0.0, apart) + knee +
               0.3 * std::abs(made.site.x - made.start.x) + 1.1 * apart + 1.5 * small +
               0.8 * lines + 0.04 * target.off_middle + 5 * off_column(made, beside);
    }

    /// How far words between two figures stand from the edge they ought to keep, lest long ones
    /// jut out where they could as well stand on two lines.
    [[nodiscard]] double off_column(const PlacedCallout& made, const Beside& beside) const {
        if (is_outer(beside)) {
            return 0;
        }
        const Gap& column = columns_[beside.gap - 1];
        return std::min(std::abs(made.box.left - column.left),
                        std::abs(made.box.right - column.right));
    }

    /// What it costs that the line crosses other things on its way from the thing outwards.
    [[nodiscard]] double crossing(const Found& found) const {
        const PlacedCallout& made = found.option.placed;
        const auto on_body = [&](Point p) {
            return (p - named_.stands[found.figure].at) * (1 / named_.plan.factor);
        };
        const std::vector<Point> line{
            on_body(made.site), on_body(made.turn), on_body(made.bend), on_body(made.start)};
        return kCrossed * type_.size * crossed(named_.figures[found.figure].tops, line);
    }

    /// Where words stand whose middle is at that height; false if there is no room.
    bool set_words(PlacedCallout& made, const Setting& words, const Stood& stood, double middle) {
        const auto& [beside, far] = stood;
        constexpr double leading = 1.16;
        const double width = words.width;
        const double height = leading * type_.size * static_cast<double>(words.lines.size());
        const Rect& row = named_.plan.figures;
        made.box = {0, middle - height / 2, width, middle + height / 2};
        if (made.box.top < row.top || made.box.bottom > lowest_words()) {
            return false;
        }
        const auto left = is_outer(beside) ? left_in_column(made) : left_in_gap(made, stood);
        if (!left) {
            return false;
        }
        made.box.left += *left;
        made.box.right += *left;
        const double edge = made.on_left ? made.box.right : made.box.left;
        const double way = made.on_left ? 1 : -1;
        made.start = {edge + way * kAirOfWords * type_.size, middle};
        made.bend = {made.start.x + way * kTickOfWords * type_.size, middle};
        return true;
    }

    /// Words keep off the ground under the feet.
    [[nodiscard]] double lowest_words() const {
        const Rect& row = named_.plan.figures;
        double lowest = row.bottom - 0.03 * row.height();
        for (std::size_t i = 0; i < named_.stands.size(); ++i) {
            const Stand& stand = named_.stands[i];
            if (named_.figures[i].view != "flat" && !stand.silhouette.box().empty()) {
                const double ground = stand.silhouette.box().bottom - kGround;
                lowest = std::min(lowest, stand.at.y + ground * named_.plan.factor);
            }
        }
        return lowest;
    }

    [[nodiscard]] std::optional<double> left_in_column(const PlacedCallout& made) const {
        const Rect& row = named_.plan.figures;
        return made.on_left ? row.left - air() - made.box.width() : row.right + air();
    }

    /// Flush with the others that lead the same way, as far as the words, the beginning of their
    /// line and some air fit there.
    [[nodiscard]] std::optional<double> left_in_gap(const PlacedCallout& made,
                                                    const Stood& stood) const {
        const std::size_t gap = stood.beside.gap;
        const double clear = 0.5 * type_.size;
        const auto room = gap_at(
            named_.plan, named_.stands, gap, made.box.top - clear / 2, made.box.bottom + clear / 2);
        const double line = (kAirOfWords + kTickOfWords) * type_.size;
        const double before = made.on_left ? clear : line;
        const double after = made.on_left ? line : clear;
        if (!room || room->right - room->left < made.box.width() + before + after) {
            return std::nullopt;
        }
        const Gap& column = columns_[gap - 1];
        const bool at_right = made.on_left != stood.far;
        const double wanted = at_right ? column.right - made.box.width() : column.left;
        return std::clamp(wanted, room->left + before, room->right - after - made.box.width());
    }

    /// Level, at half a right angle, and level again; false where that would overshoot or run into
    /// the next figure.
    bool set_line(PlacedCallout& made, const Beside& beside, Point site) const {
        const double way = made.on_left ? 1 : -1;
        made.site = site;
        made.turn = {made.bend.x + way * std::abs(site.y - made.bend.y), site.y};
        if ((site.x - made.turn.x) * way < 0) {
            return false;
        }
        if (is_outer(beside)) {
            return true;
        }
        const double clear = 0.35 * type_.size;
        const auto room =
            gap_at(named_.plan, named_.stands, beside.gap, site.y - clear, site.y + clear);
        return room && (made.on_left ? made.turn.x > room->left + clear
                                     : made.turn.x < room->right - clear);
    }

    [[nodiscard]] bool meets_roundel(const PlacedCallout& made) const {
        const double clear = 0.6 * type_.size;
        return std::ranges::any_of(named_.roundels, [&](const Roundel& roundel) {
            const Point r{roundel.radius + clear, roundel.radius + clear};
            const Point low = roundel.centre + Point{0, 1.9 * type_.size};
            Rect area;
            area.include(roundel.centre - r);
            area.include(low + r);
            return area.meets(made.box) || stroke_meets(made.start, made.bend, area) ||
                   stroke_meets(made.bend, made.turn, area) ||
                   stroke_meets(made.turn, made.site, area);
        });
    }
};

}  // namespace

void put_callouts(const NamedFigures& named, Ruler& ruler, Page& page) {
    const Captions& captions = named.task.captions;
    if (named.task.callout_width() <= 0) {
        return;
    }
    const Type type = italic(named.plan.style.small());
    Places places(named, type, ruler);
    std::vector<std::vector<CalloutOption>> options;
    for (std::size_t i = 0; i < captions.callouts.size(); ++i) {
        options.push_back(places.of(i));
    }
    CalloutPlan plan;
    for (std::optional<PlacedCallout>& placed :
         share_out_callouts(options, named.stands.size() + 1, type.size)) {
        if (placed) {
            plan.placed.push_back(*std::move(placed));
        }
    }
    link_callouts(captions, type, ruler, plan);
    Layer layer("callouts");
    draw_callouts(plan, type, layer);
    std::move(layer).put_on(page);
}

}  // namespace platewright::sheet
