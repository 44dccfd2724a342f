// SPDX-License-Identifier: MIT
// The index of the wardrobe: pictures in even rows, each with what to write for it.
#include <algorithm>
#include <cmath>
#include <optional>
#include <utility>

#include "layout/even_rows.h"
#include "layout/layer.h"
#include "layout/layout.h"
#include "layout/ruler.h"
#include "layout/style.h"

namespace platewright {
namespace {

using sheet::Layer;

/// Sizes of the sheet, mm; all grow with the paper.
struct IndexMeasures {
    double unit = 1;
    double margin = 0;
    double gap = 0;
    double label = 0;
    /// What to write, under what the trade calls it.
    double small = 0;
    double leading = 0;
    double heading = 0;
    /// Between the margins.
    double room = 0;
    double bottom = 0;

    explicit IndexMeasures(const Paper& paper) {
        unit = std::sqrt(paper.width * paper.height / (210.0 * 297.0));
        margin = 13 * unit;
        gap = 3.2 * unit;
        label = std::max(sheet::kSevenPoint, 2.75 * unit);
        small = std::max(sheet::kSevenPoint, 2.3 * unit);
        leading = label * 1.12;
        heading = 8.2 * unit;
        room = paper.width - 2 * margin;
        bottom = paper.height - margin * 1.05;
    }

    /// Usual tiles side by side, and the width of one.
    [[nodiscard]] std::size_t columns() const {
        const double least = std::max(33 * unit, 9.2 * label);
        return static_cast<std::size_t>(std::max(1.0, std::floor((room + gap) / (least + gap))));
    }

    [[nodiscard]] double tile() const {
        const auto number = static_cast<double>(columns());
        return (room - gap * (number - 1)) / number;
    }

    [[nodiscard]] RowRoom row() const { return {room, gap, tile(), 8.2 * label}; }

    /// Height of the pictures if nothing speaks against it.
    [[nodiscard]] double usual_height() const { return tile() * 1.06; }
};

/// What is asked about: `cuffs` of `cuffs: slashed`.
std::string_view group_of(const WardrobeSample& sample) {
    return std::string_view(sample.words).substr(0, sample.words.find(':'));
}

double aspect_of(const WardrobeSample& sample) {
    return sample.frame.width() / std::max(sample.frame.height(), 1e-6);
}

/// What stands under a picture: on the first `names` lines what it is called, then what to write.
struct IndexLabel {
    std::vector<std::string> lines;
    std::size_t names = 0;
};

/// Pictures side by side.
struct IndexRow {
    const WardrobeSection* section = nullptr;
    EvenRow tiles;
    std::vector<IndexLabel> labels;

    [[nodiscard]] std::size_t label_lines() const {
        std::size_t most = 0;
        for (const IndexLabel& label : labels) {
            most = std::max(most, label.lines.size());
        }
        return most;
    }
};

/// All rows page by page, their pictures so much higher than they would be by themselves.
struct IndexPlan {
    double factor = 1;
    std::vector<std::vector<IndexRow>> pages;
    /// How far it is from full pages.
    double badness = 0;
};

/// Breaks sections into rows and rows into pages.
class IndexPlanner {
  public:
    IndexPlanner(const WardrobeIndex& index, const IndexMeasures& measures, sheet::Ruler& ruler)
        : index_(index), measures_(measures), ruler_(ruler) {}

    /// The height at which pages come out fullest. Pictures are enlarged or reduced for that, all
    /// alike.
    IndexPlan best(double top_of_first_page) {
        std::optional<IndexPlan> best;
        for (int step = 0; kSmallest + step * kStep <= kLargest; ++step) {
            const double factor = kSmallest + step * kStep;
            IndexPlan plan = at_factor(factor, top_of_first_page);
            if (!best || plan.badness < best->badness) {
                best = std::move(plan);
            }
        }
        return std::move(*best);
    }

    [[nodiscard]] double row_height(const IndexRow& row, double factor) const {
        const auto lines = static_cast<double>(row.label_lines());
        return row.tiles.height * factor + (lines + 0.5) * measures_.leading + measures_.gap * 0.6;
    }

    /// With its heading, if a section begins with it.
    [[nodiscard]] double needed(const IndexRow& row, double factor) const {
        return row_height(row, factor) + (row.tiles.first == 0 ? measures_.heading : 0);
    }

  private:
    static constexpr double kSmallest = 0.9;
    static constexpr double kLargest = 1.2;
    static constexpr double kStep = 0.01;
    /// A page more is worse than any empty strip.
    static constexpr double kPage = 10;

    const WardrobeIndex& index_;
    const IndexMeasures& measures_;
    sheet::Ruler& ruler_;

    IndexPlan at_factor(double factor, double top_of_first_page) {
        IndexPlan plan;
        plan.factor = factor;
        plan.pages.emplace_back();
        double y = top_of_first_page;
        for (const WardrobeSection& section : index_.sections) {
            for (IndexRow& row : rows_of(section)) {
                if (!plan.pages.back().empty() && y + needed(row, factor) > measures_.bottom) {
                    // The last page may end where it ends.
                    const double empty = std::max(0.0, measures_.bottom - y) / measures_.bottom;
                    plan.badness += empty * empty;
                    plan.pages.emplace_back();
                    y = measures_.margin;
                }
                y += needed(row, factor);
                plan.pages.back().push_back(std::move(row));
            }
        }
        plan.badness += kPage * static_cast<double>(plan.pages.size());
        return plan;
    }

    std::vector<IndexRow> rows_of(const WardrobeSection& section) {
        std::vector<RowPicture> pictures;
        pictures.reserve(section.samples.size());
        for (const WardrobeSample& sample : section.samples) {
            pictures.push_back({aspect_of(sample), group_of(sample)});
        }
        std::vector<IndexRow> rows;
        for (const EvenRow& tiles : even_rows(pictures, measures_.row())) {
            IndexRow row{&section, tiles, {}};
            for (std::size_t i = 0; i < row.tiles.count; ++i) {
                row.labels.push_back(
                    label_of(section.samples[row.tiles.first + i], row.tiles.width));
            }
            rows.push_back(std::move(row));
        }
        return rows;
    }

    IndexLabel label_of(const WardrobeSample& sample, double width) {
        IndexLabel label;
        const std::string& name = sample.called.empty() ? sample.words : sample.called;
        label.lines = ruler_.lines(name, sheet::roman(measures_.label), width);
        label.names = label.lines.size();
        if (!sample.called.empty()) {
            for (std::string& line :
                 ruler_.lines(sample.words, sheet::italic(measures_.small), width)) {
                label.lines.push_back(std::move(line));
            }
        }
        return label;
    }
};

/// A picture with nothing of it seen outside `window`.
Drawing cropped(Drawing picture, const Rect& window) {
    const PathId edge = picture.add(rectangle(window));
    Group root{"picture", false, {edge}, {}};
    root.children.emplace_back(std::move(picture.root));
    picture.root = std::move(root);
    return picture;
}

/// Puts the planned rows on pages.
class IndexSheet {
  public:
    IndexSheet(const WardrobeIndex& index, const Paper& paper, const Typesetter& type)
        : index_(index),
          paper_(paper),
          measures_(paper),
          ruler_(type),
          planner_(index, measures_, ruler_) {}

    std::vector<Page> lay_out() {
        begin_page();
        put_title();
        const IndexPlan plan = planner_.best(y_);
        for (std::size_t i = 0; i < plan.pages.size(); ++i) {
            if (i > 0) {
                begin_page();
            }
            put_rows(plan.pages[i], plan.factor, i + 1 == plan.pages.size());
        }
        for (std::size_t i = 0; i < pages_.size(); ++i) {
            put_foot(i);
        }
        return std::move(pages_);
    }

  private:
    static constexpr double kMostEnlarged = 1.2;

    const WardrobeIndex& index_;
    const Paper& paper_;
    const IndexMeasures measures_;
    sheet::Ruler ruler_;
    IndexPlanner planner_;
    std::vector<Page> pages_;
    double y_ = 0;
    /// How much higher than planned the pictures of the page begun last are.
    double enlarged_ = 1;

    void begin_page() {
        Page page;
        page.width = paper_.width;
        page.height = paper_.height;
        page.paper = sheet::kPaper;
        pages_.push_back(std::move(page));
        y_ = measures_.margin;
    }

    void put_title() {
        Layer title("title");
        const double size = 6.4 * measures_.unit;
        const double middle = paper_.width / 2;
        title.words(sheet::on_one_line(index_.title),
                    {middle, y_ + size},
                    sheet::small_capitals(size),
                    sheet::kInk,
                    Align::middle);
        y_ += size * 1.55;
        const double small = 3.1 * measures_.unit;
        for (const std::string& line : ruler_.lines(
                 index_.subtitle, sheet::italic(small), paper_.width - 6 * measures_.margin)) {
            title.words(
                line, {middle, y_ + small}, sheet::italic(small), sheet::kSoftInk, Align::middle);
            y_ += small * 1.25;
        }
        y_ += small * 0.7;
        std::move(title).put_on(pages_.back());
    }

    /// All pages have their rows equally far apart and end at one height: what is left of a page
    /// goes into its pictures. The last keeps to those of the page before.
    void put_rows(const std::vector<IndexRow>& rows, double factor, bool last) {
        double left = measures_.bottom - y_;
        double pictures = 0;
        for (const IndexRow& row : rows) {
            left -= planner_.needed(row, factor);
            pictures += row.tiles.height * factor;
        }
        const auto gaps = static_cast<double>(rows.size() - 1);
        const double most = last && pages_.size() > 1 ? enlarged_ : kMostEnlarged;
        const double spare = left - gaps * measures_.leading;
        enlarged_ = std::clamp(1 + spare / std::max(pictures, 1.0), 1.0, most);
        left -= pictures * (enlarged_ - 1);
        const double between =
            std::clamp(left / std::max(gaps, 1.0), 0.0, measures_.leading * (last ? 1 : 2));
        for (const IndexRow& row : rows) {
            put_row(row, factor * enlarged_);
            y_ += between;
        }
    }

    void put_row(const IndexRow& row, double factor) {
        if (row.tiles.first == 0) {
            put_heading(row.section->title);
            y_ += measures_.heading;
        }
        double x = measures_.margin;
        for (std::size_t i = 0; i < row.labels.size(); ++i) {
            const Rect box{x, y_, x + row.tiles.width, y_ + row.tiles.height * factor};
            put_picture(row.section->samples[row.tiles.first + i], box);
            put_label(row.labels[i], box);
            x = box.right + measures_.gap;
        }
        y_ += planner_.row_height(row, factor);
    }

    void put_heading(const std::string& words) {
        Layer heading("heading");
        const double size = 4 * measures_.unit;
        const double baseline = y_ + size * 1.2;
        const Type type = sheet::small_capitals(size);
        heading.words(words, {measures_.margin, baseline}, type, sheet::kInk);
        const double from = measures_.margin + ruler_.width(words, type) + size;
        Path rule;
        sheet::add_swelled_line(rule,
                                {from, baseline - size * 0.22},
                                {paper_.width - measures_.margin, baseline - size * 0.22},
                                0.34 * measures_.unit);
        heading.fill(std::move(rule), sheet::kInk);
        std::move(heading).put_on(pages_.back());
    }

    /// The frame fills the height of the box; what stands beside it fills the width.
    void put_picture(const WardrobeSample& sample, const Rect& box) {
        const double factor =
            std::min(box.height() / sample.frame.height(), box.width() / sample.frame.width());
        const Point middle = sample.frame.centre();
        const Point half{box.width() / factor / 2, box.height() / factor / 2};
        // What there is room for besides is shown below: above a coat it would be half a face.
        // Below the feet there is nothing to be shown.
        const double top =
            sample.centred ? middle.y - half.y
                           : std::min(sample.frame.top, sample.picture.frame.bottom - 2 * half.y);
        const Rect window{middle.x - half.x, top, middle.x + half.x, top + 2 * half.y};
        Layer ground("ground");
        ground.fill(rectangle(box), sheet::kPlateTone);
        std::move(ground).put_on(pages_.back());
        pages_.back().items.push_back(
            {Point{box.left, box.top} - Point{window.left, window.top} * factor,
             factor,
             cropped(sample.picture.drawing, window)});
    }

    void put_label(const IndexLabel& words, const Rect& box) {
        Layer label("label");
        label.stroke(rectangle(box), sheet::kInk, 0.16 * measures_.unit);
        double baseline = box.bottom + measures_.leading * 1.05;
        for (std::size_t i = 0; i < words.lines.size(); ++i) {
            const bool name = i < words.names;
            label.words(words.lines[i],
                        {box.left, baseline},
                        name ? sheet::roman(measures_.label) : sheet::italic(measures_.small),
                        name ? sheet::kInk : sheet::kSoftInk);
            baseline += measures_.leading;
        }
        std::move(label).put_on(pages_.back());
    }

    void put_foot(std::size_t number) {
        Layer foot("foot");
        const Type type = sheet::italic(measures_.label);
        const double baseline = paper_.height - measures_.margin * 0.6;
        foot.words(std::to_string(number + 1) + " / " + std::to_string(pages_.size()),
                   {paper_.width / 2, baseline},
                   type,
                   sheet::kSoftInk,
                   Align::middle);
        foot.words(sheet::kColophon,
                   {paper_.width - measures_.margin, baseline},
                   sheet::small_capitals(measures_.label, 0.06),
                   sheet::kSoftInk,
                   Align::end);
        std::move(foot).put_on(pages_[number]);
    }
};

}  // namespace

double sample_scale(const Rect& frame, const Paper& paper) {
    const IndexMeasures measures(paper);
    return std::max(
        {frame.height() / measures.usual_height(), frame.width() / measures.tile(), 0.1});
}

Rect room_round(const Rect& frame, bool centred, double lowest) {
    // The shape of a tile, width to height: where pages are filled with the lowest of rows, and in
    // a row of tall things at its highest.
    constexpr double broadest = 2;
    constexpr double tallest = 0.53;
    Rect room =
        frame.widened(std::max(1.0, broadest * frame.height() / std::max(frame.width(), 1e-6)));
    const double more = std::max(0.0, frame.width() / tallest - room.height());
    const double below = std::clamp(lowest - frame.bottom, 0.0, more);
    room.top -= centred ? more / 2 : more - below;
    room.bottom += centred ? more / 2 : below;
    return room;
}

Document lay_out_wardrobe(const WardrobeIndex& index, const Paper& paper, const Typesetter& type) {
    Document document;
    document.title = sheet::on_one_line(index.title);
    document.subject = sheet::on_one_line(index.subtitle);
    document.description = document.title;
    document.pages = IndexSheet(index, paper, type).lay_out();
    return document;
}

}  // namespace platewright
