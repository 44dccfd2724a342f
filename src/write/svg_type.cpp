// SPDX-License-Identifier: MIT
// Text elements and embedded fonts of an SVG.
#include "write/svg_type.h"

#include "text/fonts.h"
#include "text/subset.h"
#include "write/colour_name.h"
#include "write/numbers.h"
#include "write/utf8.h"
#include "write/woff.h"

namespace platewright {

namespace {

/// Spaces that XML viewers would drop or join.
bool has_loose_spaces(const std::string& words) {
    return words.front() == ' ' || words.back() == ' ' || words.find("  ") != std::string::npos;
}

const char* anchor(Align align, bool right_to_left) {
    if (align == Align::middle) {
        return "middle";
    }
    // In a line that runs leftward the start is the right-hand end; ours is always the left-hand
    // end.
    return (align == Align::end) != right_to_left ? "end" : nullptr;
}

void append_attribute(std::string& to, const char* name, double value, int places) {
    to += ' ';
    to += name;
    to += "=\"";
    append_short(to, value, places);
    to += '"';
}

/// Family, slant, weight, kind of figures, colour and size in units of the drawing as declarations.
std::string font_rule(const FaceName& face, bool lining, Colour colour, double size, int places) {
    // Names with digits must be quoted.
    std::string made = "font-family:'" + std::string(face.family) + "','" +
                       std::string(face.general_family) + "',serif";
    made += face.italic ? ";font-style:italic" : "";
    made += face.bold ? ";font-weight:bold" : "";
    made += lining ? ";font-feature-settings:'lnum'" : "";
    made += ";fill:" + colour_name(colour) + ";font-size:";
    append_short(made, size, places);
    return made + "px";
}

}  // namespace

std::string SvgType::element(const Text& text, const Grid& grid) {
    const double scale = grid.scale();
    const int places = grid.places + 1;
    const std::string words = printable(text.words);
    const Line line = shape(type_, words, {text.face, text.size, text.tracking, text.lining});
    if (line.runs.empty()) {
        return {};
    }
    for (const char32_t character : characters(words)) {
        used_[line.face].insert(character);
    }
    if (text.lining) {
        lining_.insert(line.face);
    }
    // Viewers count the space after the last letter, we do not.
    const double overhang =
        text.align == Align::start ? 0 : text.tracking * (text.align == Align::middle ? 0.5 : 1);
    std::string made = "<text";
    append_attribute(made, "x", (text.at.x + overhang) * scale, places);
    append_attribute(made, "y", text.at.y * scale, places);
    if (text.degrees != 0) {
        made += " transform=\"rotate(";
        append_short(made, text.degrees, 4);
        for (const double value : {text.at.x, text.at.y}) {
            made += ' ';
            append_short(made, value * scale, places);
        }
        made += ")\"";
    }
    const auto [name, is_new] = classes_.try_emplace(
        font_rule(face_name(line.face), text.lining, text.colour, text.size * scale, places));
    if (is_new) {
        name->second = "t" + std::to_string(classes_.size());
        rules_ += "." + name->second + "{" + name->first + "}\n";
    }
    made += " class=\"" + name->second + '"';
    if (text.tracking != 0) {
        append_attribute(made, "letter-spacing", text.tracking * scale, places + 1);
    }
    if (const char* at = anchor(text.align, line.right_to_left)) {
        made += std::string(" text-anchor=\"") + at + '"';
    }
    if (line.right_to_left) {
        made += " direction=\"rtl\"";
    }
    made += has_loose_spaces(words) ? " xml:space=\"preserve\">" : ">";
    return made + xml_escaped(words) + "</text>\n";
}

std::string SvgType::style() const {
    std::string made;
    for (const auto& [face, used] : used_) {
        const std::string woff =
            to_woff(subset_for_web(font_file(type_, face), used, lining_.contains(face)));
        if (woff.empty()) {
            continue;
        }
        const FaceName& name = face_name(face);
        made += "@font-face{font-family:'" + std::string(name.family) + "';font-style:";
        made += name.italic ? "italic" : "normal";
        made += name.bold ? ";font-weight:bold" : ";font-weight:normal";
        made += ";src:url(data:font/woff;base64," + base64(woff) + ") format('woff')}\n";
    }
    made += rules_;
    return made.empty() ? made : "<style>\n" + made + "</style>\n";
}

std::string xml_escaped(std::string_view text) {
    std::string made;
    for (const char c : text) {
        switch (c) {
            case '&':
                made += "&amp;";
                break;
            case '<':
                made += "&lt;";
                break;
            case '>':
                made += "&gt;";
                break;
            case '"':
                made += "&quot;";
                break;
            default:
                made += c;
        }
    }
    return made;
}

}  // namespace platewright
