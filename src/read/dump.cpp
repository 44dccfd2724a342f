// SPDX-License-Identifier: MIT
// The stage as text, for people and golden tests.
#include <string>
#include <variant>

#include "base/text.h"
#include "read/read.h"

namespace platewright {
namespace {

struct Show {
    std::string operator()(None /*none*/) const { return "none"; }

    std::string operator()(const std::string& text) const { return text; }

    std::string operator()(int number) const { return std::to_string(number); }

    std::string operator()(const Measure& measure) const {
        return measure.printed + " (" + format_number(measure.mm, 4) + " mm)";
    }
};

class Dump {
  public:
    explicit Dump(const SourceMap& sources) : sources_(sources) {}

    void line(std::string_view key, std::string_view value, const Span& span) {
        const SourceMap::Place place = sources_.place(span.file, span.begin);
        text_ += std::string(key) + " = " + std::string(value) + "   @" +
                 std::to_string(place.line) + ":" + std::to_string(place.column) + "\n";
    }

    void line(std::string_view key, const std::optional<WrittenText>& text) {
        if (text) {
            line(key, text->text, text->span);
        }
    }

    std::string take() { return std::move(text_); }

  private:
    const SourceMap& sources_;
    std::string text_;
};

}  // namespace

std::string dump(const SpecifiedPlate& plate, const SourceMap& sources) {
    Dump to(sources);
    to.line("plate", plate.title);
    to.line("subtitle", plate.subtitle);
    to.line("year", plate.year);
    to.line("drawn by", plate.drawn_by);
    to.line("source", plate.source);
    for (const WrittenText& note : plate.notes) {
        to.line("notes", note);
    }
    to.line("figure", plate.figure);
    to.line("rank", plate.rank);
    for (const auto& [id, written] : plate.values) {
        to.line(properties()[id].key, std::visit(Show{}, written.value), written.span);
    }
    return to.take();
}

}  // namespace platewright
