// SPDX-License-Identifier: MIT
// The index of the wardrobe: small pictures in rows, each with what to write for it.
#include <algorithm>
#include <cmath>
#include <utility>

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
    /// Side of a picture.
    double side = 0;
    std::size_t columns = 1;
    double label = 0;
    double leading = 0;

    explicit IndexMeasures(const Paper& paper) {
        unit = std::sqrt(paper.width * paper.height / (210.0 * 297.0));
        margin = 13 * unit;
        gap = 3.2 * unit;
        label = std::max(sheet::kSevenPoint, 2.55 * unit);
        leading = label * 1.12;
        const double room = paper.width - 2 * margin + gap;
        columns = static_cast<std::size_t>(std::max(1.0, std::floor(room / (28.2 * unit))));
        side = room / static_cast<double>(columns) - gap;
    }

    [[nodiscard]] double row_height() const { return side + 2.7 * leading + gap * 0.55; }
};

/// Puts sections on pages, one row of pictures after another.
class IndexSheet {
  public:
    IndexSheet(const WardrobeIndex& index, const Paper& paper, const Typesetter& type)
        : index_(index), paper_(paper), measures_(paper), ruler_(type) {}

    std::vector<Page> lay_out() {
        for (const WardrobeSection& section : index_.sections) {
            put_section(section);
        }
        if (pages_.empty()) {
            begin_page();
        }
        for (std::size_t i = 0; i < pages_.size(); ++i) {
            put_foot(i);
        }
        return std::move(pages_);
    }

  private:
    const WardrobeIndex& index_;
    const Paper& paper_;
    const IndexMeasures measures_;
    sheet::Ruler ruler_;
    std::vector<Page> pages_;
    double y_ = 0;

    void begin_page() {
        Page page;
        page.width = paper_.width;
        page.height = paper_.height;
        page.paper = sheet::kPaper;
        pages_.push_back(std::move(page));
        y_ = measures_.margin;
        if (pages_.size() == 1) {
            put_title();
        }
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

    [[nodiscard]] double bottom() const { return paper_.height - measures_.margin * 1.05; }

    /// A heading stays with the first row of its pictures.
    void put_section(const WardrobeSection& section) {
        const double heading = 8.2 * measures_.unit;
        for (std::size_t first = 0; first < section.samples.size(); first += measures_.columns) {
            const double needed = measures_.row_height() + (first == 0 ? heading : 0);
            if (pages_.empty() || y_ + needed > bottom()) {
                begin_page();
            }
            if (first == 0) {
                put_heading(section.title);
                y_ += heading;
            }
            const std::size_t end = std::min(first + measures_.columns, section.samples.size());
            for (std::size_t i = first; i < end; ++i) {
                const double x = measures_.margin +
                                 static_cast<double>(i - first) * (measures_.side + measures_.gap);
                put_sample(section.samples[i], {x, y_});
            }
            y_ += measures_.row_height();
        }
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

    void put_sample(const WardrobeSample& sample, Point corner) {
        const double side = measures_.side;
        const Rect& frame = sample.picture.frame;
        const double factor = 1 / sample.picture.scale;
        const Point size{frame.width() * factor, frame.height() * factor};
        const Point at{corner.x + (side - size.x) / 2, corner.y + (side - size.y) / 2};
        Placed placed{at - Point{frame.left, frame.top} * factor, factor, sample.picture.drawing};
        placed.drawing.root.name = "picture";
        Layer ground("ground");
        ground.fill(rectangle({corner.x, corner.y, corner.x + side, corner.y + side}),
                    sheet::kPlateTone);
        std::move(ground).put_on(pages_.back());
        pages_.back().items.push_back(std::move(placed));
        Layer label("label");
        label.stroke(rectangle({corner.x, corner.y, corner.x + side, corner.y + side}),
                     sheet::kInk,
                     0.16 * measures_.unit);
        const Type type = sheet::roman(measures_.label);
        double baseline = corner.y + side + measures_.leading * 1.05;
        for (const std::string& line :
             ruler_.lines(sample.words, type, side + measures_.gap * 0.2)) {
            label.words(line, {corner.x, baseline}, type, sheet::kInk);
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
    const double side = IndexMeasures(paper).side;
    return std::max({frame.width(), frame.height(), 1.0}) / side;
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
