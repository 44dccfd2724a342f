// SPDX-License-Identifier: MIT
// Tables: columns as wide as their words ask, heads repeated on every page.
#include "layout/table.h"

#include <algorithm>
#include <cmath>
#include <utility>

#include "base/text.h"
#include "layout/discs.h"

namespace platewright::sheet {
namespace {

constexpr double kHairline = 0.1;
constexpr double kHeadRule = 0.28;
/// What one of several columns may take before its words are wrapped.
constexpr double kMostOfRoom = 0.36;

/// One line of a field.
struct Line {
    std::string words;
    Speech speech;
};

/// What stands before the words of a field takes this much, in ems of the body.
double room_before(const Cell& cell, const TextStyle& style) {
    double room = 0;
    room += cell.tick_box ? style.body * 1.35 : 0;
    room += cell.sign.empty() ? 0 : style.body * 1.7;
    room += cell.swatch ? style.body * 2 : 0;
    if (cell.picture) {
        room += cell.picture->frame.width() * cell.picture->factor;
        room += cell.words.empty() ? 0 : style.body * 0.7;
    }
    return room;
}

/// A column's narrowest width without a broken word, the same without a parted one, and the width
/// at which nothing is wrapped.
struct Demand {
    double least = 0;
    double whole = 0;
    double natural = 0;
};

class Setter {
  public:
    Setter(const Table& table, double width, Press& press)
        : table_(table), press_(press), style_(press.style), width_(width) {
        padding_ = style_.body * (!table.row_rules ? 0.1 : table.close ? 0.24 : 0.34);
        find_widths();
    }

    std::vector<Slab> slabs() {
        std::vector<Slab> made;
        const auto head = head_slab();
        if (head != nullptr) {
            made.push_back(*head);
            made.back().space_before = style_.body * 0.4;
        }
        for (std::size_t i = 0; i < table_.rows.size(); ++i) {
            const TableRow& row = table_.rows[i];
            const bool kept = !row.heading && is_near_end(i);
            for (Slab& slab : row.heading ? heading_slabs(row) : row_slabs(row)) {
                slab.head = head;
                slab.keep_with_next |= kept;
                made.push_back(std::move(slab));
            }
        }
        return made;
    }

  private:
    /// So many rows of what stands under one heading go over to the next page together.
    static constexpr std::ptrdiff_t kFewest = 3;

    const Table& table_;
    Press& press_;
    const TextStyle& style_;
    double width_ = 0;
    double padding_ = 0;
    std::vector<double> widths_;
    std::vector<double> lefts_;

    /// Whether those under one heading end soon after that row; in a table of several such.
    [[nodiscard]] bool is_near_end(std::size_t row) const {
        const auto from = table_.rows.begin() + static_cast<std::ptrdiff_t>(row);
        const auto left = std::ranges::find_if(from, table_.rows.end(), &TableRow::heading) - from;
        const bool stages = std::ranges::any_of(table_.rows, &TableRow::heading);
        return stages && left > 1 && left <= kFewest;
    }

    /// Letters hang low in their lines: more room above them looks the same as below.
    [[nodiscard]] double top() const { return padding_ * (table_.row_rules ? 1.3 : 1); }

    [[nodiscard]] Speech head_speech() const {
        Speech speech = speech_of(Voice::small, style_);
        speech.type = small_capitals(style_.small, 0.05);
        speech.colour = kSoftInk;
        return speech;
    }

    /// Measures and numbers in lining figures.
    [[nodiscard]] Speech speech_for(const Cell& cell) const {
        Speech speech = speech_of(cell.voice, style_);
        speech.type = with_figures(cell.words, speech.type);
        return speech;
    }

    void demand_words(const std::string& words, const Speech& speech, double before, Demand& to) {
        const auto narrowest = [&](const std::string& language) {
            return before + press_.ruler.least_width(words, speech.type, language);
        };
        to.least = std::max(to.least, narrowest(press_.language));
        to.whole = std::max(to.whole, narrowest(""));
        for (const std::string_view line : split(words, '\n')) {
            to.natural = std::max(
                to.natural, before + press_.ruler.width(std::string(line), speech.type) + 0.05);
        }
    }

    Demand demand_of(std::size_t column) {
        Demand demand;
        demand_words(table_.columns[column].head, head_speech(), 0, demand);
        for (const TableRow& row : table_.rows) {
            if (row.heading || column >= row.cells.size()) {
                continue;
            }
            const Cell& cell = row.cells[column];
            const double before = room_before(cell, style_);
            demand_words(cell.words, speech_for(cell), before, demand);
            demand_words(cell.note, speech_of(Voice::small_italic, style_), before, demand);
            demand.least = std::max(demand.least, before);
        }
        demand.whole = std::max(demand.whole, demand.least);
        demand.natural = std::max(demand.natural, demand.whole);
        return demand;
    }

    /// Everything unwrapped if that fits; else each column its least, without parted words as far
    /// as there is room, the first columns first, and a share of the rest by what it lacks, so that
    /// one long note does not starve its neighbours.
    void find_widths() {
        const std::size_t count = table_.columns.size();
        std::vector<Demand> demands;
        Demand all;
        for (std::size_t i = 0; i < count; ++i) {
            demands.push_back(demand_of(i));
            all.least += demands.back().least;
            all.natural += demands.back().natural;
        }
        const double gaps = count == 0 ? 0 : static_cast<double>(count - 1) * style_.body * 1.3;
        const double room = width_ - gaps;
        double natural = 0;
        double least = all.least;
        for (Demand& demand : demands) {
            if (least - demand.least + demand.whole <= room) {
                least += demand.whole - demand.least;
                demand.least = demand.whole;
            }
            // In a table of many columns no long note takes more than its part.
            if (all.natural > room && count > 2) {
                demand.natural =
                    std::max(demand.whole, std::min(demand.natural, room * kMostOfRoom));
            }
            natural += demand.natural;
        }
        share_out(demands, natural, room);
        if (table_.close && count == 2 && natural > room) {
            part_in_two(demands, room);
        }
        double left = 0;
        for (const double width : widths_) {
            lefts_.push_back(left);
            left += width + (count > 1 ? gaps / static_cast<double>(count - 1) : 0);
        }
    }

    void share_out(const std::vector<Demand>& demands, double natural, double room) {
        double least = 0;
        double lack = 0;
        for (const Demand& demand : demands) {
            least += demand.least;
            lack += std::sqrt(demand.natural - demand.least);
        }
        double given = 0;
        for (const Demand& demand : demands) {
            if (natural <= room) {
                widths_.push_back(demand.natural);
            } else if (least < room) {
                const double share = lack > 0 ? std::sqrt(demand.natural - demand.least) / lack : 0;
                // Nobody gets more than he can use.
                widths_.push_back(std::min(demand.natural, demand.least + (room - least) * share));
            } else {
                widths_.push_back(demand.least * room / least);
            }
            given += widths_.back();
        }
        if (given < room) {
            give_away(room - given);
        }
    }

    /// Where fewest lines are wrapped, and of such places the one that leaves the first column
    /// most.
    void part_in_two(const std::vector<Demand>& demands, double room) {
        constexpr int steps = 24;
        const double least = demands.front().least;
        const double most = std::min(demands.front().natural, room - demands.back().least);
        double fewest = height_with(widths_);
        for (int i = steps; i >= 0; --i) {
            const double first = least + (most - least) * i / steps;
            const std::vector<double> tried{first, room - first};
            const double height = height_with(tried);
            if (height < fewest) {
                fewest = height;
                widths_ = tried;
            }
        }
    }

    /// Of the words of all rows.
    double height_with(const std::vector<double>& widths) {
        double sum = 0;
        for (const TableRow& row : table_.rows) {
            double height = 0;
            for (std::size_t i = 0; i < row.cells.size() && !row.heading; ++i) {
                height = std::max(height, height_of(lines_of(row.cells[i], widths[i])));
            }
            sum += height;
        }
        return sum;
    }

    void give_away(double rest) {
        const auto takers =
            static_cast<double>(std::ranges::count_if(table_.columns, &TableColumn::stretches));
        for (std::size_t i = 0; i < widths_.size() && takers > 0; ++i) {
            widths_[i] += table_.columns[i].stretches ? rest / takers : 0;
        }
    }

    std::shared_ptr<const Slab> head_slab() {
        const bool any = std::ranges::any_of(
            table_.columns, [](const TableColumn& column) { return !column.head.empty(); });
        if (!any) {
            return nullptr;
        }
        const Speech speech = head_speech();
        std::vector<std::vector<std::string>> heads;
        std::size_t most = 1;
        for (std::size_t i = 0; i < table_.columns.size(); ++i) {
            heads.push_back(press_.whole_lines(table_.columns[i].head, speech.type, widths_[i]));
            most = std::max(most, heads.back().size());
        }
        auto slab = std::make_shared<Slab>();
        slab->height = static_cast<double>(most) * speech.leading + padding_ * 0.9;
        slab->keep_with_next = true;
        for (std::size_t i = 0; i < heads.size(); ++i) {
            // Heads of one line stand on the last line of the others.
            double y = static_cast<double>(most - heads[i].size()) * speech.leading;
            for (const std::string& line : heads[i]) {
                put(line,
                    speech,
                    {lefts_[i], y, lefts_[i] + widths_[i], y + speech.leading},
                    i,
                    *slab);
                y += speech.leading;
            }
        }
        const double rule = slab->height - padding_ * 0.3;
        slab->content.line({0, rule}, {width_, rule}, kInk, kHeadRule * style_.unit);
        return slab;
    }

    void put(const std::string& line,
             const Speech& speech,
             const Rect& room,
             std::size_t column,
             Slab& slab) {
        press_.put_line(line,
                        room,
                        speech.type.size * kBaseline,
                        speech,
                        table_.columns[column].align,
                        slab.content);
    }

    std::vector<Slab> heading_slabs(const TableRow& row) {
        const Cell none;
        const Cell& cell = row.cells.empty() ? none : row.cells.front();
        Speech speech = speech_of(Voice::italic, style_);
        speech.colour = kInk;
        std::vector<Slab> slabs = paragraph_slabs(cell.words, speech, width_, press_);
        const Speech note = speech_of(Voice::small_italic, style_);
        for (Slab& slab : paragraph_slabs(cell.note, note, width_, press_)) {
            slabs.push_back(std::move(slab));
        }
        for (Slab& slab : slabs) {
            slab.keep_with_next = true;
        }
        if (!slabs.empty()) {
            slabs.front().space_before = style_.body * 0.75;
            slabs.back().height += padding_ * 0.6;
            const double y = slabs.back().height;
            slabs.back().content.line({0, y}, {width_, y}, kSoftInk, kHairline * style_.unit);
        }
        return slabs;
    }

    std::vector<Line> lines_of(const Cell& cell, double width) {
        const double room = std::max(width - room_before(cell, style_), style_.body);
        std::vector<Line> lines;
        const auto add = [&](const std::string& words, const Speech& speech) {
            for (std::string& line : press_.whole_lines(words, speech.type, room)) {
                lines.push_back({std::move(line), speech});
            }
        };
        add(cell.words, speech_for(cell));
        add(cell.note, speech_of(Voice::small_italic, style_));
        return lines;
    }

    static double height_of(const std::vector<Line>& lines) {
        double height = 0;
        for (const Line& line : lines) {
            height += line.speech.leading;
        }
        return height;
    }

    static double baseline_of(const std::vector<Line>& lines) {
        return lines.front().speech.type.size * kBaseline;
    }

    /// One slab, or several where the row is higher than a page.
    std::vector<Slab> row_slabs(const TableRow& row) {
        std::vector<std::vector<Line>> fields;
        std::vector<Cell> cells = row.cells;
        cells.resize(table_.columns.size());
        for (std::size_t i = 0; i < cells.size(); ++i) {
            fields.push_back(lines_of(cells[i], widths_[i]));
        }
        const double most = style_.area.height() - 6 * style_.leading;
        std::vector<Slab> slabs;
        bool more = true;
        while (more) {
            more = false;
            std::vector<std::vector<Line>> part;
            for (std::vector<Line>& field : fields) {
                part.push_back(take(field, most));
                more = more || !field.empty();
            }
            slabs.push_back(row_slab(cells, part, !more));
            for (Cell& cell : cells) {
                cell.tick_box = false;
                cell.sign.clear();
                cell.swatch.reset();
                cell.picture.reset();
            }
        }
        return slabs;
    }

    /// Takes lines from the front that fit into that height.
    static std::vector<Line> take(std::vector<Line>& from, double most) {
        std::size_t count = 0;
        double height = 0;
        while (count < from.size() && height + from[count].speech.leading <= most) {
            height += from[count].speech.leading;
            ++count;
        }
        const auto end = from.begin() + static_cast<std::ptrdiff_t>(count);
        std::vector<Line> taken(from.begin(), end);
        from.erase(from.begin(), end);
        return taken;
    }

    Slab row_slab(const std::vector<Cell>& cells,
                  const std::vector<std::vector<Line>>& fields,
                  bool last) {
        Slab slab;
        // Words of any size stand on the first line of the largest.
        double baseline = style_.body * kBaseline;
        for (const std::vector<Line>& field : fields) {
            baseline = field.empty() ? baseline : std::max(baseline, baseline_of(field));
        }
        double height = style_.leading;
        for (std::size_t i = 0; i < cells.size(); ++i) {
            const double drop = fields[i].empty() ? 0 : baseline - baseline_of(fields[i]);
            height = std::max(height, drop + height_of(fields[i]));
            if (cells[i].picture) {
                const Picture& picture = *cells[i].picture;
                height = std::max(height, picture.frame.height() * picture.factor);
            }
        }
        slab.height = height + 2 * padding_;
        for (std::size_t i = 0; i < cells.size(); ++i) {
            double left = lefts_[i];
            put_before(cells[i], left, slab);
            // Words beside a picture stand in the middle of its height.
            const double spare = height - height_of(fields[i]);
            double y = top() + (cells[i].picture ? spare / 2 : 0);
            if (!cells[i].picture && !fields[i].empty()) {
                y += baseline - baseline_of(fields[i]);
            }
            for (const Line& line : fields[i]) {
                put(line.words,
                    line.speech,
                    {left, y, lefts_[i] + widths_[i], y + line.speech.leading},
                    i,
                    slab);
                y += line.speech.leading;
            }
        }
        put_rules(slab, last);
        return slab;
    }

    void put_rules(Slab& slab, bool last) const {
        if (last && table_.row_rules) {
            slab.content.line({0, slab.height},
                              {width_, slab.height},
                              mix(kSoftInk, kPaper, 0.45),
                              kHairline * style_.unit);
        }
        for (std::size_t i = 1; table_.column_rules && i < lefts_.size(); ++i) {
            const double x = (lefts_[i - 1] + widths_[i - 1] + lefts_[i]) / 2;
            slab.content.line(
                {x, 0}, {x, slab.height}, mix(kSoftInk, kPaper, 0.45), kHairline * style_.unit);
        }
    }

    /// Tick box, sign, sample and picture; moves `left` behind them.
    void put_before(const Cell& cell, double& left, Slab& slab) {
        const double body = style_.body;
        if (cell.tick_box) {
            const double side = body * 0.78;
            const double box_top = top() + body * kBaseline - side;
            slab.content.stroke(
                rectangle({left, box_top, left + side, box_top + side}), kInk, 0.2 * style_.unit);
            left += body * 1.35;
        }
        if (!cell.sign.empty()) {
            const Type type = roman(style_.small);
            const double radius = type.size * kDisc;
            draw_disc({left + radius, top() + body * kBaseline - type.size * 0.25},
                      cell.sign,
                      type,
                      0.14 * style_.unit,
                      slab.content);
            left += body * 1.7;
        }
        if (cell.swatch) {
            Swatch swatch = *cell.swatch;
            swatch.height = body * 0.92;
            swatch.width = swatch.metal ? swatch.height : body * 1.45;
            const double inset = swatch.metal ? (body * 1.45 - swatch.width) / 2 : 0;
            draw_swatch(swatch,
                        {left + inset, top() + body * kBaseline - swatch.height * 0.86},
                        slab.content);
            left += body * 2;
        }
        if (cell.picture) {
            const double width = cell.picture->frame.width() * cell.picture->factor;
            const double height = cell.picture->frame.height() * cell.picture->factor;
            const double spare = slab.height - 2 * padding_ - height;
            const double picture_top = padding_ + spare / 2;
            slab.pictures.push_back(placed_at(*cell.picture, {left, picture_top}));
            if (cell.picture->framed) {
                const Rect box{left, picture_top, left + width, picture_top + height};
                slab.ground.fill(rectangle(box), kPlateTone);
                slab.content.stroke(rectangle(box), kInk, 0.14 * style_.unit);
            }
            left += width + body * 0.7;
        }
    }
};

}  // namespace

std::vector<Slab> table_slabs(const Table& table, double width, Press& press) {
    Table fitting = table;
    for (TableRow& row : fitting.rows) {
        for (Cell& cell : row.cells) {
            if (cell.picture) {
                const double most = press.style.area.height() - 8 * press.style.leading;
                cell.picture = fitted(std::move(*cell.picture), width, most, press.problems);
            }
        }
    }
    return Setter(fitting, width, press).slabs();
}

}  // namespace platewright::sheet
