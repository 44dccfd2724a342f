// SPDX-License-Identifier: MIT
// Fonts and text of a PDF (ISO 32000-1, chapter 9).
#include "write/pdf_type.h"

#include <algorithm>
#include <cmath>
#include <cstdio>

#include "write/numbers.h"
#include "write/pdf_path.h"

namespace platewright {

namespace {

/// A cluster with its words and the first of its glyphs, in the order the glyphs are painted.
struct Piece {
    std::string words;
    std::size_t first = 0;
    std::size_t count = 0;
};

std::vector<Piece> pieces(const Run& run) {
    std::vector<Piece> made;
    std::size_t at = 0;
    for (const Cluster& cluster : run.clusters) {
        const auto bytes = static_cast<std::size_t>(cluster.byte_count);
        made.push_back(
            {run.words.substr(at, bytes), 0, static_cast<std::size_t>(cluster.glyph_count)});
        at += bytes;
    }
    if (run.backward) {
        std::reverse(made.begin(), made.end());
    }
    std::size_t glyph = 0;
    for (Piece& piece : made) {
        piece.first = glyph;
        glyph += piece.count;
    }
    return made;
}

/// The operators of one run, with the pen where the viewer will have it.
class Shower {
  public:
    Shower(std::string& to, const EmbeddedFont& font, double size)
        : to_(to), font_(font), per_thousand_(size / 1000) {}

    void begin(const std::string& name, double size, double x) {
        to_ += "BT /" + name + " ";
        append_short(to_, size, 5);
        to_ += " Tf 1 0 0 -1 ";
        append_short(to_, x, 5);
        to_ += " 0 Tm\n";
        start_ = x;
    }

    void glyph(const Glyph& glyph) {
        rise(glyph.at.y);
        if (!open_) {
            to_ += '[';
            open_ = true;
        }
        const double wanted = (glyph.at.x - start_) / per_thousand_;
        const auto shift = std::lround(wanted - pen_);
        if (shift != 0) {
            end_string();
            append_steps(to_, -shift, 0);
            pen_ += static_cast<double>(shift);
        }
        if (!in_string_) {
            to_ += '<';
            in_string_ = true;
        }
        const std::uint32_t number = font_.number.at(glyph.id);
        append_hex(to_, number);
        pen_ += font_.widths.at(number);
    }

    void begin_words(const std::string& words) {
        end_array();
        to_ += "/Span << /ActualText <FEFF" + utf16_hex(words) + "> >> BDC\n";
    }

    void end_words() {
        end_array();
        to_ += "EMC\n";
    }

    void end() {
        rise(0);
        end_array();
        to_ += "ET\n";
    }

  private:
    void rise(double y) {
        if (y == rise_) {
            return;
        }
        end_array();
        append_short(to_, -y, 5);
        to_ += " Ts\n";
        rise_ = y;
    }

    void end_string() {
        if (in_string_) {
            to_ += '>';
            in_string_ = false;
        }
    }

    void end_array() {
        end_string();
        if (open_) {
            to_ += "] TJ\n";
            open_ = false;
        }
    }

    std::string& to_;
    const EmbeddedFont& font_;
    double per_thousand_;
    double start_ = 0;
    double pen_ = 0;
    double rise_ = 0;
    bool open_ = false;
    bool in_string_ = false;
};

void show_outlines(std::string& to, const Run& run, double size) {
    for (const Glyph& glyph : run.glyphs) {
        const Path outline =
            glyph_outline(font_file(run), glyph.id)
                .transformed(Affine::translation(glyph.at.x, glyph.at.y) * Affine::scaling(size));
        if (!outline.empty()) {
            append_pdf_path(to, outline, {10'000, 4, 1});
            to += "f\n";
        }
    }
}

/// Tells viewers which characters the glyphs stand for, so that text can be searched and copied.
std::string unicode_map(const EmbeddedFont& font,
                        const std::map<std::uint32_t, std::string>& words) {
    std::map<std::uint32_t, std::string> ordered;
    for (const auto& [glyph, text] : words) {
        ordered[font.number.at(glyph)] = text;
    }
    std::string made =
        "/CIDInit /ProcSet findresource begin\n12 dict begin\nbegincmap\n"
        "/CIDSystemInfo << /Registry (Adobe) /Ordering (UCS) /Supplement 0 >> def\n"
        "/CMapName /Adobe-Identity-UCS def\n/CMapType 2 def\n"
        "1 begincodespacerange\n<0000> <FFFF>\nendcodespacerange\n";
    constexpr std::size_t block = 100;
    std::size_t done = 0;
    for (const auto& [number, text] : ordered) {
        if (done % block == 0) {
            made += std::to_string(std::min(block, ordered.size() - done)) + " beginbfchar\n";
        }
        made += '<';
        append_hex(made, number);
        made += "> <" + utf16_hex(text) + ">\n";
        ++done;
        if (done % block == 0 || done == ordered.size()) {
            made += "endbfchar\n";
        }
    }
    return made + "endcmap\nCMapName currentdict /CMap defineresource pop\nend\nend\n";
}

/// `AAAAAB+Name`: a subset's name starts with six letters of its own.
std::string subset_name(const EmbeddedFont& font, std::size_t index) {
    std::string tag = "AAAAAA";
    for (std::size_t at = tag.size(); at-- > 0; index /= 26) {
        tag[at] = static_cast<char>('A' + index % 26);
    }
    return tag + "+" + font.name;
}

std::string descriptor(const EmbeddedFont& font, const std::string& name, PdfObject program) {
    const auto number = [](int value) { return std::to_string(value); };
    constexpr int symbolic = 4;
    constexpr int italic = 64;
    // No viewer needs the width of stems of an embedded font, but the entry must be there.
    constexpr int stem = 80;
    return "<< /Type /FontDescriptor /FontName /" + name + " /Flags " +
           number(symbolic | (font.italic_angle != 0 ? italic : 0)) + " /FontBBox [" +
           number(font.left) + " " + number(font.bottom) + " " + number(font.right) + " " +
           number(font.top) + "] /ItalicAngle " + number(font.italic_angle) + " /Ascent " +
           number(font.ascent) + " /Descent " + number(font.descent) + " /CapHeight " +
           number(font.cap_height) + " /StemV " + number(stem) +
           (font.is_cff ? " /FontFile3 " : " /FontFile2 ") + reference(program) + " >>";
}

PdfObject write_font(PdfFile& file,
                     const EmbeddedFont& font,
                     const std::map<std::uint32_t, std::string>& words,
                     std::size_t index) {
    const std::string name = subset_name(font, index);
    const PdfObject program = file.add_stream(
        font.is_cff ? "/Subtype /CIDFontType0C" : "/Length1 " + std::to_string(font.program.size()),
        font.program);
    const PdfObject described = file.add(descriptor(font, name, program));
    std::string widths;
    for (const int width : font.widths) {
        widths += (widths.empty() ? "" : " ") + std::to_string(width);
    }
    const PdfObject descendant = file.add(
        "<< /Type /Font /Subtype /" + std::string(font.is_cff ? "CIDFontType0" : "CIDFontType2") +
        " /BaseFont /" + name +
        " /CIDSystemInfo << /Registry (Adobe) /Ordering (Identity) /Supplement 0 >>" +
        (font.is_cff ? "" : " /CIDToGIDMap /Identity") + " /FontDescriptor " +
        reference(described) + " /DW 0 /W [0 [" + widths + "]] >>");
    const PdfObject map = file.add_stream("", unicode_map(font, words));
    return file.add("<< /Type /Font /Subtype /Type0 /BaseFont /" + name +
                    " /Encoding /Identity-H /DescendantFonts [" + reference(descendant) +
                    "] /ToUnicode " + reference(map) + " >>");
}

}  // namespace

PdfType::PdfType(const Document& document, const Typesetter& type) {
    for (const Page& page : document.pages) {
        for (const Placed& placed : page.items) {
            collect(placed.drawing.root, type);
        }
    }
    for (Font& font : fonts_) {
        font.embedded = embed(font.face, font.glyphs);
    }
}

void PdfType::collect(const Group& group, const Typesetter& type) {
    for (const Node& node : group.children) {
        if (const auto* inner = std::get_if<Group>(&node)) {
            collect(*inner, type);
        } else if (const auto* text = std::get_if<Text>(&node)) {
            lines_.push_back(
                shape(type, text->words, {text->face, text->size, text->tracking, text->lining}));
            for (const Run& run : lines_.back().runs) {
                collect(run);
            }
        }
    }
}

void PdfType::collect(const Run& run) {
    hb_face_t* face = font_file(run);
    if (find(face) == fonts_.size()) {
        fonts_.push_back({face, {}, {}, {}});
    }
    Font& font = fonts_[find(face)];
    for (const Piece& piece : pieces(run)) {
        for (std::size_t i = piece.first; i < piece.first + piece.count; ++i) {
            font.glyphs.insert(run.glyphs[i].id);
        }
        if (piece.count == 1) {
            font.words.emplace(run.glyphs[piece.first].id, piece.words);
        }
    }
}

std::size_t PdfType::find(const hb_face_t* face) const {
    std::size_t at = 0;
    while (at < fonts_.size() && fonts_[at].face != face) {
        ++at;
    }
    return at;
}

const Line& PdfType::next_line() {
    return lines_.at(next_++);
}

void PdfType::show(std::string& to, const Line& line, double size, bool spaced) const {
    for (const Run& run : line.runs) {
        show_run(to, run, size, spaced);
    }
}

void PdfType::show_run(std::string& to, const Run& run, double size, bool spaced) const {
    const std::size_t index = find(font_file(run));
    const Font& font = fonts_.at(index);
    if (run.glyphs.empty()) {
        return;
    }
    if (!font.embedded) {
        show_outlines(to, run, size);
        return;
    }
    Shower shower(to, *font.embedded, size);
    std::string name(1, 'F');
    shower.begin(name.append(std::to_string(index)), size, run.glyphs.front().at.x);
    const std::vector<Piece> all =
        spaced ? std::vector<Piece>{{run.words, 0, run.glyphs.size()}} : pieces(run);
    for (const Piece& piece : all) {
        const bool plain =
            piece.count == 1 && font.words.at(run.glyphs[piece.first].id) == piece.words;
        if (!plain && piece.count > 0) {
            shower.begin_words(piece.words);
        }
        for (std::size_t i = piece.first; i < piece.first + piece.count; ++i) {
            shower.glyph(run.glyphs[i]);
        }
        if (!plain && piece.count > 0) {
            shower.end_words();
        }
    }
    shower.end();
}

std::string PdfType::write(PdfFile& file) const {
    std::string entries;
    for (std::size_t i = 0; i < fonts_.size(); ++i) {
        const Font& font = fonts_[i];
        if (font.embedded) {
            const PdfObject object = write_font(file, *font.embedded, font.words, i);
            entries += " /F" + std::to_string(i) + " " + reference(object);
        }
    }
    return entries;
}

}  // namespace platewright
