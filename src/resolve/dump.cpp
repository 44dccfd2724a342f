// SPDX-License-Identifier: MIT
// The second stage as text, the golden form of its tests.
#include <string>
#include <string_view>

#include "base/text.h"
#include "resolve/resolve.h"

namespace platewright {

namespace {

/// Text on one line, whatever it holds.
std::string on_one_line(std::string_view text) {
    std::string line;
    for (const char c : text) {
        if (c == '\n') {
            line += "\\n";
        } else {
            line += c;
        }
    }
    return line;
}

void add_caption(std::string& to, std::string_view key, std::string_view text) {
    if (!text.empty()) {
        to += key;
        to += " = ";
        to += on_one_line(text);
        to += '\n';
    }
}

std::string colour_of(const Value& value) {
    const auto* material = std::get_if<Material>(&value);
    if (material == nullptr) {
        return {};
    }
    std::string text = " ";
    text += to_hex(material->colour);
    text += material->metal ? " metal" : "";
    return text;
}

/// What a printed length is in mm, unless it was printed in mm.
std::string exact_length(const Value& value) {
    const auto* length = std::get_if<Measure>(&value);
    if (length == nullptr) {
        return {};
    }
    constexpr int decimals = 6;
    const std::string exact = format_number(length->mm, decimals) + " mm";
    return exact == length->printed ? std::string() : " = " + exact;
}

std::string decision_line(const Decision& decision, const SourceMap& sources) {
    std::string line = decision.reason + ": " + on_one_line(decision.as_written);
    if (decision.span) {
        const SourceMap::Place place = sources.place(decision.span->file, decision.span->begin);
        line += " @" + sources.name(decision.span->file) + ":" + std::to_string(place.line) + ":" +
                std::to_string(place.column);
    }
    return line;
}

}  // namespace

std::string dump(const Uniform& uniform, const SourceMap& sources) {
    std::string text;
    add_caption(text, "plate", uniform.title);
    add_caption(text, "subtitle", uniform.subtitle);
    add_caption(text, "year", uniform.year);
    add_caption(text, "drawn by", uniform.drawn_by);
    add_caption(text, "source", uniform.source);
    for (const std::string& note : uniform.notes) {
        add_caption(text, "note", note);
    }
    add_caption(text, "figure", uniform.figure);
    add_caption(text, "rank", uniform.rank);
    for (PropertyId id = 0; id < uniform.decided.size(); ++id) {
        const Decided& decided = uniform.decided[id];
        text += properties()[id].key;
        text += " = " + on_one_line(uniform.word(id));
        text += colour_of(decided.value);
        text += exact_length(decided.value);
        text += "   (";
        for (const Decision& decision : decided.chain) {
            text += &decision == decided.chain.data() ? "" : "; ";
            text += decision_line(decision, sources);
        }
        text += ")\n";
    }
    return text;
}

}  // namespace platewright
