// SPDX-License-Identifier: MIT
// What pages of running text are made of: strips across a column, and the words in them.
#pragma once

#include <cstddef>
#include <memory>
#include <optional>
#include <string>
#include <vector>

#include "base/diagnostic.h"
#include "layout/layer.h"
#include "layout/layout.h"
#include "layout/page.h"
#include "layout/ruler.h"
#include "layout/style.h"

namespace platewright::sheet {

/// A place that leads elsewhere: to an address, or to the slab that has that anchor.
struct SlabLink {
    Rect area;
    std::string uri;
    std::string anchor;
};

/// A strip across a column that is never divided. All in mm from its upper left corner.
struct Slab {
    double height = 0;
    /// Falls away at the top of a column.
    double space_before = 0;
    bool keep_with_next = false;
    /// Under the pictures, the pictures, and above them.
    Layer ground{"ground"};
    std::vector<Placed> pictures;
    Layer content{"text"};
    std::vector<SlabLink> links;
    /// What links call it.
    std::string anchor;
    /// Entry of the outline, and its level; none where empty.
    std::string outline;
    int outline_level = 1;
    /// Repeated where a column begins with this slab: the head of a table.
    std::shared_ptr<const Slab> head;
    /// Rows of drawings of one shelf, which is not 0, may change places where that fills a page,
    /// and what room the page has left goes between them.
    std::size_t shelf = 0;
    /// Room that the page has left goes between such rows too; their order stays.
    bool spread = false;
};

/// Sizes of pages of running text, mm; they follow from the paper.
struct TextStyle {
    /// `closeness`: what type may be of its usual size, where a page is to be saved.
    explicit TextStyle(const Paper& paper, double closeness = 1);

    /// 1 on A4.
    double unit = 1;
    /// Type of running text, never below 7 pt, and from line to line.
    double body = 0;
    double leading = 0;
    double small = 0;
    double small_leading = 0;
    double title = 0;
    double heading = 0;
    /// What running text may fill.
    Rect area;
    /// Between columns.
    double gutter = 0;
};

/// How words speak.
enum class Voice { body, strong, italic, small, small_italic };

/// Type, line height and ink of a voice.
struct Speech {
    Type type;
    double leading = 0;
    Colour colour = kInk;
};

/// Running text, the same made to stand out, remarks, small print.
Speech speech_of(Voice voice, const TextStyle& style);

/// What setting words takes: all of one document.
struct Press {
    TextStyle style;
    /// `en`, `fr`, `de`: where words may be parted.
    std::string language;
    Ruler& ruler;
    Diagnostics& problems;

    /// Lines no wider than `room`. Where a word had to be broken inside, adds layout.too-wide: a
    /// warning without a place.
    std::vector<std::string> lines(const std::string& words, const Type& type, double room);

    /// The same, and no short word alone on the last of them where that takes no more lines.
    std::vector<std::string> running_lines(const std::string& words, const Type& type, double room);

    /// The same, on two lines parted as a label is (`Ruler::label_lines`).
    std::vector<std::string> label_lines(const std::string& words, const Type& type, double room);

    /// The same, with words parted only where one is wider than `room`: for what is read at a
    /// glance.
    std::vector<std::string> whole_lines(const std::string& words, const Type& type, double room);

    /// Puts one line into the room from `left` to `right`; words that run leftward change sides.
    void put_line(const std::string& line,
                  const Rect& room,
                  double baseline,
                  const Speech& speech,
                  Align align,
                  Layer& on);
};

/// A drawing to be shown within a column.
struct Picture {
    Drawing drawing;
    /// What of it is shown, in its own mm.
    Rect frame;
    /// mm on paper for 1 mm of it.
    double factor = 1;
    /// Beneath it, in the middle: its name and a remark; then lines that begin at the left.
    std::string words = {};
    std::string note = {};
    std::vector<std::string> lines = {};
    /// On a toned ground with a line round it: a part cut out of a figure.
    bool framed = false;
    /// A man on his feet, who casts a shadow.
    bool stands = false;
};

/// The picture with its corner at `corner`.
Placed placed_at(const Picture& picture, Point corner);

/// The shadow under the feet of a man so placed.
void put_shadow(const Placed& man, const Rect& frame, Layer& on);

/// A picture no larger than that; adds layout.too-large, a warning without a place, where it had to
/// be made smaller.
Picture fitted(Picture picture, double width, double height, Diagnostics& to);

/// Lines of a paragraph as slabs; the first two stay together, and so do the last two.
std::vector<Slab> paragraph_slabs(const std::string& words,
                                  const Speech& speech,
                                  double width,
                                  Press& press);

/// The same with a sign or number before it, on which all lines are indented.
std::vector<Slab> item_slabs(const std::string& sign,
                             const std::string& words,
                             const Speech& speech,
                             double width,
                             Press& press);

/// Pictures side by side in as many rows as they need, their feet in line; with `columns`, that
/// many in each row.
std::vector<Slab> picture_slabs(std::vector<Picture> pictures,
                                double width,
                                Press& press,
                                std::size_t columns = 0);

}  // namespace platewright::sheet
