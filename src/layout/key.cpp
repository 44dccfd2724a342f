// SPDX-License-Identifier: MIT
// The words beneath the title: colour key, particulars, notes.
#include "layout/key.h"

#include <algorithm>
#include <cmath>
#include <utility>

#include "words/sheet_messages.h"
#include "words/tincture_messages.h"

namespace platewright::sheet {
namespace {

/// Narrowest column that holds a key, and one for running text, in ems; no more columns than are
/// easily found again.
constexpr double kKeyColumn = 14;
constexpr double kNoteColumn = 28;
constexpr double kMostColumns = 3;
constexpr double kGutter = 2.2;
/// Colours beside the particulars are preferred to colours above them up to this much more height.
constexpr double kBesideCost = 1.06;

/// Columns of equal width that fill `width`.
struct Columns {
    std::size_t count = 1;
    double width = 0;
    double pitch = 0;
};

Columns columns_of(double width, double narrowest, const Style& style) {
    const double gutter = kGutter * style.body;
    const double fit = std::floor((width + gutter) / (narrowest * style.body + gutter));
    const double count = std::clamp(fit, 1.0, kMostColumns);
    const double column = (width - gutter * (count - 1)) / count;
    return {static_cast<std::size_t>(count), column, column + gutter};
}

/// How a run of lines is set.
struct Setting {
    double x = 0;
    double room = 0;
    Type type;
    double leading = 0;
    Colour colour = kInk;
};

Row text_row(std::string words, const Setting& set) {
    Row row;
    row.height = set.leading;
    row.baseline = set.type.size * kBaseline;
    row.pieces.push_back({std::move(words), set.x, set.type, set.colour});
    return row;
}

void add_lines(Entry& to, const std::string& words, const Setting& set, Ruler& ruler) {
    for (std::string& line : ruler.lines_in_company(on_one_line(words), set.type, set.room)) {
        to.push_back(text_row(std::move(line), set));
    }
}

/// Says how far the words of each row reach, and gives the entry its name. Rows that bear a mark
/// lead to its footnote, the others where the entry leads.
void link_rows(Entry& entry,
               const std::string& anchor,
               const std::string& to,
               const std::vector<Footnote>& footnotes,
               Ruler& ruler) {
    for (Row& row : entry) {
        row.leads_to = to;
        row.width = row.swatch ? row.swatch->width : 0;
        for (const Piece& piece : row.pieces) {
            row.width = std::max(row.width, piece.x + ruler.width(piece.words, piece.type));
            if (const auto number = footnote_in(piece.words, footnotes)) {
                row.leads_to = note_anchor(*number);
            }
        }
    }
    if (!entry.empty()) {
        entry.front().anchor = anchor;
    }
}

/// Which entry of a list first bears the mark of that footnote; empty if none does.
template <typename Words>
std::optional<std::size_t> bearer_of(std::size_t footnote,
                                     const std::vector<Footnote>& footnotes,
                                     std::size_t entries,
                                     const Words& words_of) {
    for (std::size_t i = 0; i < entries; ++i) {
        if (footnote_in(words_of(i), footnotes) == footnote) {
            return i;
        }
    }
    return std::nullopt;
}

/// Where the matter of a footnote is named first.
std::string place_of_footnote(std::size_t footnote, const Captions& captions) {
    const auto colour = bearer_of(footnote, captions.footnotes, captions.key.size(), [&](auto i) {
        return captions.key[i].worn;
    });
    if (colour) {
        return key_anchor(*colour);
    }
    const auto particular =
        bearer_of(footnote, captions.footnotes, captions.particulars.size(), [&](auto i) {
            return captions.particulars[i].second;
        });
    return particular ? particular_anchor(*particular) : std::string();
}

/// "azure: level lines"; what the convention does not have says so.
std::string hatching_words(TinctureId id, Language language) {
    const messages::TinctureWords& words = messages::kTinctureWords.at(id);
    return say(language,
               tinctures()[id].of_convention ? messages::kHatchedAs : messages::kHatchedByUs,
               {words.name.text(language), words.hatching.text(language)});
}

/// Wood and metal of arms are alike on every man and drawn without hatching.
std::string hatching_of(const KeyEntry& colour, Language language) {
    return colour.fixed ? say(language, messages::kNotHatched, {})
                        : hatching_words(colour.tincture, language);
}

std::optional<TinctureId> hatching_drawn(const KeyEntry& colour) {
    return colour.fixed ? find_tincture("argent") : std::optional(colour.tincture);
}

/// "dark green  woad over weld" with "coat, cuffs" beneath, beside a sample.
Entry colour_entry(const KeyEntry& colour,
                   const Captions& captions,
                   const Style& style,
                   double width,
                   Ruler& ruler) {
    const double x = style.body * 3.3;
    const double room = width - x;
    const Setting name{x, room, roman(style.body), style.leading()};
    const Setting dye{x, room, italic(style.small()), style.small_leading(), kSoftInk};
    const Setting worn{x, room, roman(style.small()), style.small_leading(), kSoftInk};
    Entry entry;
    add_lines(entry, colour.name, name, ruler);
    const std::string made_of = on_one_line(colour.made_of);
    if (!entry.empty() && !made_of.empty()) {
        Row& last = entry.back();
        const double after = ruler.width(last.pieces.front().words, name.type) + style.body * 0.55;
        if (after + ruler.width(made_of, dye.type) <= room) {
            last.pieces.push_back({made_of, x + after, dye.type, dye.colour});
        } else {
            add_lines(entry, made_of, dye, ruler);
        }
    }
    if (captions.ink == Ink::hatched) {
        add_lines(entry, hatching_of(colour, captions.language), dye, ruler);
    }
    add_lines(entry, colour.worn, worn, ruler);
    if (entry.empty()) {
        entry.emplace_back();
    }
    const double sample = style.body * 1.75;
    entry.front().swatch =
        Swatch{colour.colour,
               captions.ink == Ink::hatched ? hatching_drawn(colour) : std::nullopt,
               colour.metal,
               style.body * 2.6,
               sample};
    if (entry.size() == 1) {
        entry.front().height = std::max(entry.front().height, sample);
    }
    return entry;
}

/// Width of the column of labels: as wide as the widest, but leaving most of the room to what is
/// said.
double label_width(const Captions& captions, const Style& style, double width, Ruler& ruler) {
    double widest = 0;
    for (const auto& [label, words] : captions.particulars) {
        widest = std::max(widest, ruler.width(on_one_line(label), italic(style.body)));
    }
    return std::min(widest + style.body * 0.2, width * 0.36);
}

Entry particular_entry(const std::pair<std::string, std::string>& particular,
                       const Style& style,
                       double labels,
                       double width,
                       Ruler& ruler) {
    const double x = labels + style.body * 0.8;
    Entry label;
    add_lines(
        label, particular.first, {0, labels, italic(style.body), style.leading(), kSoftInk}, ruler);
    Entry entry;
    const Type said = with_figures(particular.second, roman(style.body));
    add_lines(entry, particular.second, {x, width - x, said, style.leading()}, ruler);
    for (std::size_t i = 0; i < label.size(); ++i) {
        if (i < entry.size()) {
            entry[i].pieces.insert(entry[i].pieces.begin(), label[i].pieces.front());
        } else {
            entry.push_back(std::move(label[i]));
        }
    }
    return entry;
}

std::vector<Entry> colour_entries(const Captions& captions,
                                  const Style& style,
                                  double width,
                                  Ruler& ruler) {
    std::vector<Entry> entries;
    for (std::size_t i = 0; i < captions.key.size(); ++i) {
        const KeyEntry& colour = captions.key[i];
        entries.push_back(colour_entry(colour, captions, style, width, ruler));
        const bool named_beside = !captions.callouts.empty();
        if (named_beside || footnote_in(colour.worn, captions.footnotes)) {
            link_rows(entries.back(),
                      key_anchor(i),
                      named_beside ? callout_anchor(i) : std::string(),
                      captions.footnotes,
                      ruler);
        }
    }
    return entries;
}

std::vector<Entry> particular_entries(const Captions& captions,
                                      const Style& style,
                                      double width,
                                      Ruler& ruler) {
    const double labels = label_width(captions, style, width, ruler);
    std::vector<Entry> entries;
    for (std::size_t i = 0; i < captions.particulars.size(); ++i) {
        const auto& particular = captions.particulars[i];
        entries.push_back(particular_entry(particular, style, labels, width, ruler));
        if (footnote_in(particular.second, captions.footnotes)) {
            link_rows(entries.back(), particular_anchor(i), "", captions.footnotes, ruler);
        }
    }
    return entries;
}

std::vector<Entry> note_entries(const Notes& notes,
                                const Style& style,
                                double width,
                                Ruler& ruler) {
    std::vector<Entry> entries;
    const auto add = [&](const std::string& words, const Type& type) {
        Entry entry;
        add_lines(entry, words, {0, width, type, style.small_leading(), kSoftInk}, ruler);
        if (!entry.empty()) {
            entries.push_back(std::move(entry));
        }
    };
    for (const Remark& remark : notes.remarks) {
        add(remark.words, roman(style.small()));
        if (!remark.anchor.empty() && !entries.empty()) {
            link_rows(entries.back(), remark.anchor, remark.leads_to, {}, ruler);
        }
    }
    if (!notes.source.empty()) {
        add(say(notes.language, messages::kSource, {notes.source}), italic(style.small()));
    }
    return entries;
}

/// The lists of a key, set for columns of one width.
class Lists {
  public:
    Lists(const Captions& captions,
          const Notes& notes,
          bool headings,
          const Style& style,
          const Columns& columns,
          Ruler& ruler)
        : language_(captions.language),
          style_(style),
          with_headings_(headings),
          pitch_(columns.pitch),
          colours_(colour_entries(captions, style, columns.width, ruler)),
          particulars_(particular_entries(captions, style, columns.width, ruler)),
          notes_(note_entries(notes, style, columns.width, ruler)) {}

    [[nodiscard]] bool one_kind() const {
        return colours_.empty() || (particulars_.empty() && notes_.empty());
    }

    [[nodiscard]] Block colours(std::size_t count) const {
        const Grid grid{count, pitch_, style_.body * kLoose, style_.body * kStretch};
        return headed(messages::kColours, pour(colours_, grid));
    }

    /// Particulars, and the notes under them.
    [[nodiscard]] Block rest(std::size_t count) const {
        const Grid grid{count, pitch_, style_.body * kTight};
        Block block = headed(messages::kParticulars, pour(particulars_, grid));
        add_below(block, headed(messages::kNotes, pour(notes_, grid)));
        return block;
    }

    /// The same in one column whose foot stands level with that of the colours beside it, where
    /// that takes no more than air: the notes at the foot, the particulars wider apart.
    [[nodiscard]] Block rest_beside(double height) const {
        const double missing = std::max(0.0, height - rest(1).height);
        const double gaps = static_cast<double>(std::max<std::size_t>(particulars_.size(), 1) - 1);
        Grid grid{1, pitch_, style_.body * kTight};
        grid.stretch = style_.body * kStretch;
        grid.height =
            pour(particulars_, grid).height + std::min(missing, gaps * grid.stretch * 0.999);
        Block block = headed(messages::kParticulars, pour(particulars_, grid));
        Block notes = headed(messages::kNotes, pour(notes_, {1, pitch_, style_.body * kTight}));
        if (block.empty() || notes.empty()) {
            add_below(block, std::move(notes));
            return block;
        }
        const double least = style_.body * kAbove;
        const double space = height - block.height - notes.height;
        const bool flush = space > least && space < least + style_.body * kBetween;
        block.join(std::move(notes), {0, block.height + (flush ? space : least)});
        return block;
    }

    void add_below(Block& block, Block next) const {
        const double space = block.empty() || next.empty() ? 0 : style_.body * kAbove;
        block.join(std::move(next), {0, block.height + space});
    }

  private:
    /// In ems: between entries of a list, how much wider that may become for the sake of level
    /// feet, above a second list, and how much that may become.
    static constexpr double kTight = 0.3;
    static constexpr double kLoose = 0.45;
    static constexpr double kStretch = 0.5;
    static constexpr double kAbove = 1.2;
    static constexpr double kBetween = 2.4;

    /// A list under its heading.
    [[nodiscard]] Block headed(const Message& heading, Block list) const {
        if (!with_headings_ || list.empty()) {
            return list;
        }
        Block block;
        const Type type = small_capitals(style_.body * 1.04, 0.1);
        block.rows.push_back({{}, text_row(say(language_, heading), {0, 0, type, style_.body})});
        block.join(std::move(list), {0, style_.body * 1.75});
        return block;
    }

    Language language_;
    const Style& style_;
    bool with_headings_;
    double pitch_;
    std::vector<Entry> colours_;
    std::vector<Entry> particulars_;
    std::vector<Entry> notes_;
};

}  // namespace

std::string tincture_name(TinctureId id, Language language) {
    return say(language, messages::kTinctureWords.at(id).name);
}

std::string key_anchor(std::size_t row) {
    return "key-" + std::to_string(row + 1);
}

std::string callout_anchor(std::size_t row) {
    return "callout-" + std::to_string(row + 1);
}

std::string particular_anchor(std::size_t row) {
    return "particular-" + std::to_string(row + 1);
}

std::string note_anchor(std::size_t footnote) {
    return "note-" + std::to_string(footnote + 1);
}

std::optional<std::size_t> footnote_in(const std::string& words,
                                       const std::vector<Footnote>& footnotes) {
    std::optional<std::size_t> found;
    std::size_t longest = 0;
    for (std::size_t i = 0; i < footnotes.size(); ++i) {
        const std::string& mark = footnotes[i].mark;
        if (mark.size() > longest && words.find(mark) != std::string::npos) {
            found = i;
            longest = mark.size();
        }
    }
    return found;
}

std::vector<Remark> remarks_of(const Captions& captions) {
    std::vector<Remark> remarks;
    for (const std::string& note : captions.notes) {
        remarks.push_back({note});
    }
    for (std::size_t i = 0; i < captions.footnotes.size(); ++i) {
        const Footnote& note = captions.footnotes[i];
        if (note.mark.empty()) {
            remarks.push_back({note.words});
            continue;
        }
        remarks.push_back(
            {note.mark + " " + note.words, note_anchor(i), place_of_footnote(i, captions)});
    }
    return remarks;
}

Block key_block(const Captions& captions,
                const Notes& notes,
                bool headings,
                const Style& style,
                double width,
                Ruler& ruler) {
    const Columns columns = columns_of(width, kKeyColumn, style);
    const Lists lists(captions, notes, headings, style, columns, ruler);
    Block above = lists.colours(columns.count);
    lists.add_below(above, lists.rest(columns.count));
    if (columns.count < 2 || lists.one_kind()) {
        return above;
    }
    Block beside = lists.colours(columns.count - 1);
    beside.join(lists.rest_beside(beside.height),
                {static_cast<double>(columns.count - 1) * columns.pitch, 0});
    return beside.height <= above.height * kBesideCost ? beside : above;
}

Block note_block(const Notes& notes, const Style& style, double width, Ruler& ruler) {
    const Columns columns = columns_of(width, kNoteColumn, style);
    return pour(note_entries(notes, style, columns.width, ruler),
                {columns.count, columns.pitch, style.body * 0.35});
}

}  // namespace platewright::sheet
