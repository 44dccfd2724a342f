// SPDX-License-Identifier: MIT
// Decoding and comparing pictures.
#include "picture.h"

#include <gtest/gtest.h>
#include <png.h>

#include <algorithm>
#include <cmath>

namespace platewright::test {

namespace {

double average(const Picture& of, int left, int top, int side, int channel) {
    double sum = 0;
    for (int y = top; y < top + side; ++y) {
        for (int x = left; x < left + side; ++x) {
            sum += of.at(x, y, channel);
        }
    }
    return sum / (side * side);
}

}  // namespace

Picture decode_png(const std::string& bytes) {
    Picture made;
    png_image image{};
    image.version = PNG_IMAGE_VERSION;
    if (png_image_begin_read_from_memory(&image, bytes.data(), bytes.size()) == 0) {
        ADD_FAILURE() << "not a PNG: " << image.message;
        return made;
    }
    image.format = PNG_FORMAT_RGB;
    made.width = static_cast<int>(image.width);
    made.height = static_cast<int>(image.height);
    made.pixels.resize(PNG_IMAGE_SIZE(image));
    const png_color white = {255, 255, 255};
    if (png_image_finish_read(&image, &white, made.pixels.data(), 0, nullptr) == 0) {
        ADD_FAILURE() << "damaged PNG: " << image.message;
    }
    return made;
}

Difference difference(const Picture& first, const Picture& second, int side) {
    Difference made;
    if (first.width != second.width || first.height != second.height) {
        ADD_FAILURE() << first.width << " x " << first.height << " against " << second.width
                      << " x " << second.height;
        return {255, 255};
    }
    double sum = 0;
    int count = 0;
    for (int y = 0; y + side <= first.height; y += side) {
        for (int x = 0; x + side <= first.width; x += side) {
            for (int channel = 0; channel < 3; ++channel) {
                const double by = std::abs(average(first, x, y, side, channel) -
                                           average(second, x, y, side, channel));
                made.greatest = std::max(made.greatest, by);
                sum += by;
                ++count;
            }
        }
    }
    made.mean = sum / count;
    return made;
}

Picture cut(const Picture& from, int left, int top, int right, int bottom) {
    Picture made;
    made.width = right - left;
    made.height = bottom - top;
    for (int y = top; y < bottom; ++y) {
        const auto row =
            from.pixels.begin() + (static_cast<std::ptrdiff_t>(y) * from.width + left) * 3;
        made.pixels.insert(
            made.pixels.end(), row, row + static_cast<std::ptrdiff_t>(made.width) * 3);
    }
    return made;
}

}  // namespace platewright::test
