// SPDX-License-Identifier: MIT
// The tinctures of heraldry and their hatching.
#include "base/tincture.h"

#include <algorithm>
#include <cmath>
#include <iterator>
#include <limits>
#include <utility>

namespace platewright {

namespace {

constexpr Point kNone{0, 0};
constexpr Point kUpright{0, 1};
constexpr Point kLevel{1, 0};
/// From the top left to the bottom right as one looks at the page, and the other way.
constexpr Point kFalling{1, 1};
constexpr Point kRising{1, -1};

using enum HatchManner;

constexpr auto kTinctures = std::to_array<Tincture>({
    {"or", "yellow", dots, kNone, kNone, true},
    {"argent", "white", plain, kNone, kNone, true},
    {"gules", "red", lines, kUpright, kNone, true},
    {"azure", "blue", lines, kLevel, kNone, true},
    {"sable", "black", lines, kUpright, kLevel, true},
    {"vert", "green", lines, kFalling, kNone, true},
    {"purpure", "purple", lines, kRising, kNone, true},
    {"tenne", "orange", lines, kRising, kLevel, true},
    {"sanguine", "crimson", lines, kFalling, kRising, true},
    {"marron", "brown", lines, kFalling, kUpright, true},
    {"fer", "grey", lines, kRising, kUpright, true},
    // Our own: the pale shade of a tincture has its lines broken, the deep shade has them in pairs.
    {"buff", "buff", sparse_dots, kNone, kNone, false},
    {"rose", "rose", broken_lines, kUpright, kNone, false},
    {"sky blue", "sky blue", broken_lines, kLevel, kNone, false},
    {"pale green", "pale green", broken_lines, kFalling, kNone, false},
    {"lilac", "lilac", broken_lines, kRising, kNone, false},
    {"fawn", "fawn", broken_lines, kFalling, kUpright, false},
    {"light grey", "light grey", broken_lines, kRising, kUpright, false},
    {"deep red", "deep red", paired_lines, kUpright, kNone, false},
    {"deep blue", "deep blue", paired_lines, kLevel, kNone, false},
    {"deep green", "deep green", paired_lines, kFalling, kNone, false},
});

/// A colour that is certainly of that tincture.
struct Likeness {
    std::string_view tincture;
    Colour colour;
};

// Chosen by eye among the names of Werner's and the trade's; a colour takes the nearest.
constexpr auto kLikenesses = std::to_array<Likeness>({
    {"or", {0xdb, 0xab, 0x38}},         {"or", {0xe2, 0xca, 0x52}},
    {"or", {0xf0, 0xd0, 0x10}},         {"argent", {0xff, 0xff, 0xff}},
    {"argent", {0xef, 0xea, 0xdd}},     {"argent", {0xdd, 0xdd, 0xdd}},
    {"gules", {0xa5, 0x38, 0x2f}},      {"gules", {0xc8, 0x28, 0x2c}},
    {"gules", {0xe0, 0x10, 0x10}},      {"gules", {0xa4, 0x55, 0x3a}},
    {"azure", {0x31, 0x56, 0x8e}},      {"azure", {0x4c, 0x86, 0xb3}},
    {"azure", {0x5f, 0x78, 0xb0}},      {"azure", {0x10, 0x40, 0xe0}},
    {"sable", {0x2b, 0x2a, 0x2d}},      {"sable", {0x00, 0x00, 0x00}},
    {"vert", {0x2f, 0x65, 0x47}},       {"vert", {0x4c, 0x7a, 0x3c}},
    {"vert", {0x4a, 0x8a, 0x82}},       {"vert", {0x10, 0xa0, 0x30}},
    {"vert", {0x6a, 0x70, 0x3c}},       {"purpure", {0x60, 0x32, 0x64}},
    {"purpure", {0x59, 0x40, 0x75}},    {"purpure", {0x90, 0x20, 0xb0}},
    {"tenne", {0xd1, 0x66, 0x2f}},      {"tenne", {0xe0, 0x90, 0x5a}},
    {"tenne", {0xb2, 0x6d, 0x45}},      {"tenne", {0xf0, 0x80, 0x10}},
    {"sanguine", {0x8f, 0x1f, 0x3f}},   {"sanguine", {0xb0, 0x20, 0x60}},
    {"marron", {0x66, 0x48, 0x36}},     {"marron", {0x7f, 0x4a, 0x33}},
    {"marron", {0x4a, 0x30, 0x24}},     {"fer", {0x8b, 0x8a, 0x86}},
    {"fer", {0x5e, 0x60, 0x64}},        {"fer", {0x93, 0xa3, 0xa9}},
    {"buff", {0xde, 0xc4, 0x94}},       {"buff", {0xd9, 0xb8, 0x86}},
    {"buff", {0xe8, 0xd6, 0x9a}},       {"rose", {0xd9, 0x8d, 0x97}},
    {"rose", {0xf0, 0xc0, 0xc8}},       {"rose", {0xc9, 0x62, 0x5b}},
    {"sky blue", {0x87, 0xaf, 0xcf}},   {"sky blue", {0xb8, 0xd4, 0xe8}},
    {"pale green", {0x8a, 0xa5, 0x7c}}, {"pale green", {0x8f, 0xae, 0x4c}},
    {"pale green", {0xc0, 0xdc, 0xb0}}, {"lilac", {0xa7, 0x95, 0xb5}},
    {"lilac", {0xd4, 0xc4, 0xe0}},      {"fawn", {0x95, 0x85, 0x67}},
    {"fawn", {0xa9, 0x76, 0x4a}},       {"fawn", {0xb5, 0x84, 0x32}},
    {"light grey", {0xb2, 0xb0, 0xa8}}, {"light grey", {0xc4, 0xc2, 0xba}},
    {"deep red", {0x73, 0x26, 0x2f}},   {"deep red", {0x50, 0x14, 0x1c}},
    {"deep blue", {0x28, 0x38, 0x5f}},  {"deep blue", {0x14, 0x20, 0x44}},
    {"deep green", {0x2a, 0x50, 0x39}}, {"deep green", {0x16, 0x34, 0x24}},
});

constexpr auto kMetals = std::to_array<Likeness>({
    {"argent", {0xd9, 0xdb, 0xda}},
    {"argent", {0xc6, 0xc7, 0xc4}},
    {"or", {0xcd, 0xa2, 0x4a}},
    {"or", {0xde, 0xb5, 0x55}},
    {"fer", {0x9a, 0x9e, 0xa2}},
    {"tenne", {0xb2, 0x6d, 0x45}},
    {"sable", {0x34, 0x33, 0x35}},
});

TinctureId nearest_of(std::span<const Likeness> likenesses, Colour colour) {
    const Lab wanted = to_lab_d65(colour);
    const auto nearest = std::ranges::min_element(likenesses, {}, [&](const Likeness& each) {
        return delta_e_2000(wanted, to_lab_d65(each.colour));
    });
    return *find_tincture(nearest->tincture);
}

double project(Point on, Point p) {
    return on.x * p.x + on.y * p.y;
}

/// How far the corners of the area reach along a direction.
std::pair<double, double> reach(const Rect& area, Point along) {
    const std::array<double, 4> corners{project(along, {area.left, area.top}),
                                        project(along, {area.right, area.top}),
                                        project(along, {area.left, area.bottom}),
                                        project(along, {area.right, area.bottom})};
    const auto [least, most] = std::ranges::minmax(corners);
    return {least, most};
}

/// The stretch of the line `offset` from the origin that lies over the area, as distances along it;
/// empty where the first is not less than the second.
std::pair<double, double> stretch_over(const Rect& area, Point along, Point across, double offset) {
    double from = -std::numeric_limits<double>::max();
    double to = std::numeric_limits<double>::max();
    const auto limit = [&](double at, double step, double least, double most) {
        if (std::abs(step) < 1e-9) {
            to = at < least || at > most ? from : to;
            return;
        }
        const double one = (least - at) / step;
        const double other = (most - at) / step;
        from = std::max(from, std::min(one, other));
        to = std::min(to, std::max(one, other));
    };
    limit(across.x * offset, along.x, area.left, area.right);
    limit(across.y * offset, along.y, area.top, area.bottom);
    return {from, to};
}

/// Lengths of one hatching, in the picture's mm.
struct Measures {
    double pitch = 0;
    /// Between the lines of a pair; 0 for single lines.
    double pair = 0;
    /// A stroke and the gap after it; 0 for whole lines.
    double period = 0;
};

/// Parallel lines at even steps. Broken lines begin at whole periods, so that the strokes of all
/// pieces fall together, and every second one is half a period on.
void add_lines(Path& to, const Rect& area, Point way, const Measures& measures) {
    const Point along = unit(way);
    const Point across = right_of(along);
    const auto [least, most] = reach(area, across);
    const auto first = static_cast<long>(std::floor((least - measures.pair) / measures.pitch));
    const auto last = static_cast<long>(std::ceil((most + measures.pair) / measures.pitch));
    const auto add = [&](double offset, double shift) {
        auto [from, end] = stretch_over(area, along, across, offset);
        if (from >= end) {
            return;
        }
        if (measures.period > 0) {
            from = std::floor((from - shift) / measures.period) * measures.period + shift;
        }
        to.move_to(across * offset + along * from);
        to.line_to(across * offset + along * end);
    };
    for (long i = first; i <= last; ++i) {
        const double offset = static_cast<double>(i) * measures.pitch;
        const double shift = i % 2 == 0 ? 0 : measures.period / 2;
        add(offset - measures.pair / 2, shift);
        if (measures.pair > 0) {
            add(offset + measures.pair / 2, shift);
        }
    }
}

/// Dots in staggered rows: lines so short that their round ends meet.
void add_dots(Path& to, const Rect& area, double pitch) {
    const double drop = pitch * 0.87;
    const double speck = pitch * 0.02;
    const auto first_row = static_cast<long>(std::floor(area.top / drop));
    const auto last_row = static_cast<long>(std::ceil(area.bottom / drop));
    const auto first = static_cast<long>(std::floor(area.left / pitch)) - 1;
    const auto last = static_cast<long>(std::ceil(area.right / pitch));
    for (long row = first_row; row <= last_row; ++row) {
        const double shift = row % 2 == 0 ? 0 : pitch / 2;
        for (long i = first; i <= last; ++i) {
            const Point at{static_cast<double>(i) * pitch + shift, static_cast<double>(row) * drop};
            to.move_to(at);
            to.line_to(at + Point{speck, 0});
        }
    }
}

}  // namespace

std::span<const Tincture> tinctures() {
    return kTinctures;
}

std::optional<TinctureId> find_tincture(std::string_view word) {
    const auto* found = std::ranges::find_if(kTinctures, [word](const Tincture& each) {
        return each.name == word || each.colour == word;
    });
    return found != kTinctures.end()
               ? std::optional(static_cast<TinctureId>(found - kTinctures.begin()))
               : std::nullopt;
}

TinctureId nearest_tincture(Colour colour) {
    return nearest_of(kLikenesses, colour);
}

TinctureId nearest_tincture_of_metal(Colour colour) {
    return nearest_of(kMetals, colour);
}

Hatching hatching_over(const Rect& area, TinctureId tincture, double scale) {
    const Tincture& is = kTinctures.at(tincture);
    Hatching hatching;
    const double pitch = kHatchPitch * scale;
    hatching.width = kHatchLine * scale;
    Measures measures{pitch, 0, 0};
    switch (is.manner) {
        case plain:
            return hatching;
        case dots:
        case sparse_dots:
            hatching.width = kHatchDot * scale;
            add_dots(hatching.path, area, pitch * (is.manner == dots ? 1.3 : 2.1));
            return hatching;
        case lines:
            break;
        case broken_lines:
            measures.period = pitch * 3;
            hatching.dash = {pitch * 1.9, pitch * 1.1};
            break;
        case paired_lines:
            measures.pitch = pitch * 1.5;
            measures.pair = pitch * 0.45;
            break;
    }
    for (const Point way : {is.first, is.second}) {
        if (way != kNone) {
            add_lines(hatching.path, area, way, measures);
        }
    }
    return hatching;
}

}  // namespace platewright
