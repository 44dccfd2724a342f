// SPDX-License-Identifier: MIT
// Pictures of pixels, for comparing what different programs draw.
#pragma once

#include <cstdint>
#include <string>
#include <vector>

namespace platewright::test {

/// Red, green, blue of each pixel, row by row.
struct Picture {
    int width = 0;
    int height = 0;
    std::vector<std::uint8_t> pixels;

    [[nodiscard]] std::uint8_t at(int x, int y, int channel) const {
        return pixels[static_cast<std::size_t>((y * width + x) * 3 + channel)];
    }
};

/// Decodes a PNG, on white where it is transparent; fails the test if it cannot.
Picture decode_png(const std::string& bytes);

/// How far two pictures differ, each averaged over squares of `side` pixels first so that the
/// smoothing of edges, which every program does its own way, does not count. 0 to 255.
struct Difference {
    double mean = 0;
    double greatest = 0;
};

Difference difference(const Picture& first, const Picture& second, int side);

/// The part of a picture from (left, top) to (right, bottom).
Picture cut(const Picture& from, int left, int top, int right, int bottom);

}  // namespace platewright::test
