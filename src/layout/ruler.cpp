// SPDX-License-Identifier: MIT
// Measuring words.
#include "layout/ruler.h"

#include <algorithm>

#include "base/text.h"
#include "layout/style.h"

namespace platewright::sheet {
namespace {

/// Sizes are measured at this em and scaled, large enough that rounding in the shaping library does
/// not matter.
constexpr double kMeasuredAt = 10;
/// A line is full this much before its room ends, so that rounding never pushes a word out.
constexpr double kSlack = 0.02;

}  // namespace

double Ruler::width(const std::string& words, const Type& type) {
    const auto [at, is_new] = widths_.try_emplace({type.face, type.lining, words}, 0.0);
    if (is_new) {
        at->second = type_.width(words, {type.face, kMeasuredAt, 0, type.lining}) / kMeasuredAt;
    }
    const double spread = type.tracking * static_cast<double>(count_characters(words));
    return at->second * type.size + spread;
}

std::vector<std::string> Ruler::lines(const std::string& words, const Type& type, double room) {
    if (words.empty()) {
        return {};
    }
    if (width(words, type) <= room - kSlack) {
        return {words};
    }
    const auto [at, is_new] = wrapped_.try_emplace({type.face, type.lining, type.size, room, words},
                                                   std::vector<std::string>{});
    if (is_new) {
        at->second = type_.wrap(words, type, room - kSlack);
    }
    return at->second;
}

std::vector<std::string> Ruler::lines(const std::string& words,
                                      const Type& type,
                                      double room,
                                      const std::string& language) {
    const bool one_line = words.find('\n') == std::string::npos;
    if (words.empty()) {
        return {};
    }
    if (one_line && width(words, type) <= room - kSlack) {
        return {words};
    }
    return type_.wrap(words, type, room - kSlack, language);
}

std::vector<std::string> Ruler::lines_in_company(const std::string& words,
                                                 const Type& type,
                                                 double room) {
    constexpr double short_share = 0.36;
    std::vector<std::string> found = lines(words, type, room);
    const auto lonely = [&](const std::vector<std::string>& set) {
        return ends_alone(set, type, short_share * room);
    };
    if (!lonely(found)) {
        return found;
    }
    // A word alone is the lesser evil where it is a whole item of a list and company would part
    // one.
    const auto parts_items = [](const std::vector<std::string>& set) {
        return set[set.size() - 2].back() != ',';
    };
    for (const double share : {0.95, 0.9, 0.85, 0.8, 0.75}) {
        std::vector<std::string> tried = lines(words, type, share * room);
        if (tried.size() > found.size()) {
            break;
        }
        if (!lonely(tried) && (parts_items(found) || !parts_items(tried))) {
            return tried;
        }
    }
    return found;
}

bool Ruler::ends_alone(const std::vector<std::string>& set, const Type& type, double narrow) {
    return set.size() > 1 && set.back().find(' ') == std::string::npos &&
           width(set.back(), type) < narrow;
}

double Ruler::least_width(const std::string& words, const Type& type, const std::string& language) {
    const double tracking = type.size > 0 ? type.tracking / type.size : 0;
    const auto [at, is_new] =
        narrowest_.try_emplace({type.face, type.lining, tracking, language, words}, 0.0);
    if (is_new) {
        const Type measured{type.face, kMeasuredAt, tracking * kMeasuredAt, type.lining};
        // The library counts the tracking behind the last letter too.
        at->second = type_.least_width(words, measured, language) / kMeasuredAt + tracking;
    }
    return at->second * type.size + kSlack;
}

bool Ruler::runs_leftward(const std::string& words) {
    // Plain ASCII never does, and needs no shaping to find out.
    const bool plain = std::ranges::all_of(words, [](char c) { return c >= 0; });
    return !plain && type_.runs_leftward(words);
}

std::vector<std::string> Ruler::even_lines(const std::string& words,
                                           const Type& type,
                                           double room) {
    std::vector<std::string> best = lines(words, type, room);
    if (best.size() < 2) {
        return best;
    }
    const std::size_t count = best.size();
    double narrow = width(words, type) / static_cast<double>(count) / 2;
    // No word that fits is broken to make lines even.
    const double least = least_width(words, type, "");
    if (least <= room && least > narrow) {
        narrow = least;
        if (std::vector<std::string> tried = lines(words, type, narrow); tried.size() <= count) {
            return tried;
        }
    }
    double wide = room;
    for (int step = 0; step < 7; ++step) {
        const double middle = (narrow + wide) / 2;
        std::vector<std::string> tried = lines(words, type, middle);
        if (tried.size() <= count) {
            best = std::move(tried);
            wide = middle;
        } else {
            narrow = middle;
        }
    }
    return best;
}

std::vector<std::string> Ruler::label_lines(const std::string& words,
                                            const Type& type,
                                            double room) {
    std::vector<std::string> best = lines(words, type, room);
    if (best.size() != 2) {
        return best;
    }
    constexpr double after_colon = 0.6;
    constexpr double within = 2.2;
    double least = room + within * type.size;
    for (std::size_t at = words.find(' '); at != std::string::npos; at = words.find(' ', at + 1)) {
        const std::string first = words.substr(0, at);
        const std::string second = words.substr(at + 1);
        const double wide = std::max(width(first, type), width(second, type));
        const char last = first.empty() ? ' ' : first.back();
        const double ems = last == ',' ? 0 : last == ':' ? after_colon : within;
        if (wide <= room - kSlack && wide + ems * type.size < least) {
            least = wide + ems * type.size;
            best = {first, second};
        }
    }
    return best;
}

LineMeasures Ruler::measures(const Type& type) {
    const auto [at, is_new] = measures_.try_emplace(type.face);
    if (is_new) {
        at->second = type_.measures({type.face, kMeasuredAt, 0});
    }
    const double scale = type.size / kMeasuredAt;
    const LineMeasures& m = at->second;
    return {m.ascent * scale, m.descent * scale, m.x_height * scale};
}

Type with_figures(const std::string& words, const Type& type) {
    const auto is_digit = [&words](std::size_t at) {
        return at < words.size() && words[at] >= '0' && words[at] <= '9';
    };
    const std::size_t colon = words.rfind(" : ");
    const bool scale =
        colon != std::string::npos && colon > 0 && is_digit(colon - 1) && is_digit(colon + 3);
    return is_digit(0) || scale ? lining(type) : type;
}

std::string on_one_line(std::string_view words) {
    std::string plain(words);
    for (char& c : plain) {
        const auto code = static_cast<unsigned char>(c);
        if (code < 0x20 || code == 0x7f) {
            c = ' ';
        }
    }
    return std::string(trim(plain));
}

}  // namespace platewright::sheet
