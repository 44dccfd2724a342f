// SPDX-License-Identifier: MIT
// Sheets of paper by name or by size.
#include <array>
#include <charconv>
#include <cmath>
#include <system_error>
#include <utility>

#include "base/text.h"
#include "layout/layout.h"

namespace platewright {
namespace {

struct NamedPaper {
    std::string_view name;
    Paper paper;
};

/// As the name alone means it: a ledger sheet is a tabloid sheet on its side.
constexpr std::array<NamedPaper, 10> kPapers{{{"a3", {297, 420}},
                                              {"a4", {210, 297}},
                                              {"a5", {148, 210}},
                                              {"a6", {105, 148}},
                                              {"b4", {250, 353}},
                                              {"b5", {176, 250}},
                                              {"letter", {215.9, 279.4}},
                                              {"legal", {215.9, 355.6}},
                                              {"tabloid", {279.4, 431.8}},
                                              {"ledger", {431.8, 279.4}}}};

constexpr double kLeastSide = 80;
constexpr double kMostSide = 2000;

bool take_ending(std::string_view& text, std::string_view ending) {
    if (!text.ends_with(ending)) {
        return false;
    }
    text.remove_suffix(ending.size());
    return true;
}

/// A side in mm from the start of `text`, which is moved on; empty if there is none or it is not
/// allowed.
std::optional<double> take_side(std::string_view& text) {
    double side = 0;
    const auto [end, fault] =
        std::from_chars(text.data(), text.data() + text.size(), side, std::chars_format::fixed);
    if (fault != std::errc{} || !(side >= kLeastSide && side <= kMostSide)) {
        return std::nullopt;
    }
    text.remove_prefix(static_cast<std::size_t>(end - text.data()));
    return side;
}

std::optional<Paper> parse_sides(std::string_view text) {
    const std::optional<double> width = take_side(text);
    if (!width || !text.starts_with('x')) {
        return std::nullopt;
    }
    text.remove_prefix(1);
    const std::optional<double> height = take_side(text);
    if (!height || text != "mm") {
        return std::nullopt;
    }
    return Paper{*width, *height};
}

}  // namespace

std::optional<Paper> parse_paper(std::string_view text) {
    const std::string lowered = lower(text);
    std::string_view name = lowered;
    const bool landscape = take_ending(name, "-landscape");
    const bool portrait = !landscape && take_ending(name, "-portrait");
    for (const NamedPaper& known : kPapers) {
        if (known.name == name) {
            Paper paper = known.paper;
            const bool lies = paper.width > paper.height;
            if ((landscape && !lies) || (portrait && lies)) {
                std::swap(paper.width, paper.height);
            }
            return paper;
        }
    }
    return landscape || portrait ? std::nullopt : parse_sides(name);
}

}  // namespace platewright
