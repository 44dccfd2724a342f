// SPDX-License-Identifier: MIT
// PNG: the painter on an image, stored with libpng for its density and title.
#include <png.h>

#include <algorithm>
#include <cmath>
#include <csetjmp>
#include <cstring>
#include <vector>

#include "base/limits.h"
#include "base/text.h"
#include "text/shaping.h"
#include "write/cairo_raii.h"
#include "write/paint.h"
#include "write/write.h"

namespace platewright {

namespace {

/// Pixels of one side of the picture.
int pixels(double mm, double dpi) {
    return static_cast<int>(std::lround(mm / kInch * dpi));
}

void check_size(const Page& page, double dpi) {
    const double across = page.width / kInch * dpi;
    const double down = page.height / kInch * dpi;
    // cairo's own limit for one side.
    constexpr double longest = 32767;
    const bool fits = across >= 1 && down >= 1 && across <= longest && down <= longest &&
                      across * down <= limits::kPngPixels;
    if (!fits) {
        throw CannotWrite("a page of " + format_number(page.width, 1) + " x " +
                          format_number(page.height, 1) + " mm at " + format_number(dpi, 2) +
                          " dpi would be " + format_number(across, 0) + " x " +
                          format_number(down, 0) +
                          " pixels; choose another --dpi, or PDF or SVG for large prints");
    }
}

CairoSurface painted(const Page& page, const Typesetter& type, double dpi) {
    CairoSurface surface(cairo_image_surface_create(
        CAIRO_FORMAT_RGB24, pixels(page.width, dpi), pixels(page.height, dpi)));
    check(cairo_surface_status(surface.get()));
    const CairoContext context(cairo_create(surface.get()));
    cairo_scale(context.get(), dpi / kInch, dpi / kInch);
    paint(context.get(), page, type);
    cairo_surface_flush(surface.get());
    check(cairo_surface_status(surface.get()));
    return surface;
}

/// What libpng's callbacks work on. Nothing here is made or destroyed between setjmp and longjmp.
struct Sink {
    std::string bytes;
    std::string problem;
    png_structp png = nullptr;
    png_infop info = nullptr;

    Sink() = default;

    ~Sink() { png_destroy_write_struct(&png, &info); }

    Sink(const Sink&) = delete;
    Sink& operator=(const Sink&) = delete;
};

void fail(png_structp png, png_const_charp message) {
    static_cast<Sink*>(png_get_error_ptr(png))->problem = message;
    std::longjmp(*png_set_longjmp_fn(png, std::longjmp, sizeof(std::jmp_buf)), 1);
}

void ignore(png_structp /*png*/, png_const_charp /*message*/) {}

void collect(png_structp png, png_bytep data, std::size_t count) {
    static_cast<Sink*>(png_get_io_ptr(png))
        ->bytes.append(reinterpret_cast<const char*>(data), count);
}

void flush(png_structp /*png*/) {}

/// One row of cairo's pixels (in one 32-bit number each) as red, green, blue.
void convert_row(const unsigned char* from, std::vector<png_byte>& to) {
    for (std::size_t i = 0; i < to.size(); i += 3) {
        std::uint32_t pixel = 0;
        std::memcpy(&pixel, from + i / 3 * 4, sizeof pixel);
        to[i] = static_cast<png_byte>(pixel >> 16U);
        to[i + 1] = static_cast<png_byte>(pixel >> 8U);
        to[i + 2] = static_cast<png_byte>(pixel);
    }
}

void write_header(Sink& sink, cairo_surface_t* surface, double dpi, std::string& title) {
    png_set_IHDR(sink.png,
                 sink.info,
                 static_cast<png_uint_32>(cairo_image_surface_get_width(surface)),
                 static_cast<png_uint_32>(cairo_image_surface_get_height(surface)),
                 8,
                 PNG_COLOR_TYPE_RGB,
                 PNG_INTERLACE_NONE,
                 PNG_COMPRESSION_TYPE_DEFAULT,
                 PNG_FILTER_TYPE_DEFAULT);
    const auto per_metre = static_cast<png_uint_32>(std::lround(dpi / kInch * 1000));
    png_set_pHYs(sink.png, sink.info, per_metre, per_metre, PNG_RESOLUTION_METER);
    png_set_sRGB(sink.png, sink.info, PNG_sRGB_INTENT_PERCEPTUAL);
    std::string key = "Title";
    png_text text{};
    // tEXt is Latin-1; iTXt holds any title.
    text.compression = PNG_ITXT_COMPRESSION_NONE;
    text.key = key.data();
    text.text = title.data();
    text.itxt_length = title.size();
    png_set_text(sink.png, sink.info, &text, 1);
    // On flat colours the filters gain 2 % and cost half of the time.
    png_set_filter(sink.png, PNG_FILTER_TYPE_BASE, PNG_FILTER_NONE);
    png_write_info(sink.png, sink.info);
}

/// False if libpng gave up; the sink knows why.
bool encode(Sink& sink,
            cairo_surface_t* surface,
            double dpi,
            std::string& title,
            std::vector<png_byte>& row) {
    if (setjmp(*png_set_longjmp_fn(sink.png, std::longjmp, sizeof(std::jmp_buf))) != 0) {
        return false;
    }
    png_set_write_fn(sink.png, &sink, collect, flush);
    write_header(sink, surface, dpi, title);
    const unsigned char* pixels_of = cairo_image_surface_get_data(surface);
    const int stride = cairo_image_surface_get_stride(surface);
    for (int y = 0; y < cairo_image_surface_get_height(surface); ++y) {
        convert_row(pixels_of + static_cast<std::ptrdiff_t>(y) * stride, row);
        png_write_row(sink.png, row.data());
    }
    png_write_end(sink.png, sink.info);
    return true;
}

}  // namespace

std::string write_png(const Document& document,
                      std::size_t page,
                      const Typesetter& type,
                      double dpi) {
    const Page& chosen = document.pages.at(page);
    check_size(chosen, dpi);
    const CairoSurface surface = painted(chosen, type, dpi);
    Sink sink;
    sink.png = png_create_write_struct(PNG_LIBPNG_VER_STRING, &sink, fail, ignore);
    sink.info = sink.png == nullptr ? nullptr : png_create_info_struct(sink.png);
    std::string title = printable(document.title);
    std::vector<png_byte> row(
        static_cast<std::size_t>(cairo_image_surface_get_width(surface.get())) * 3);
    if (sink.info == nullptr || !encode(sink, surface.get(), dpi, title, row)) {
        throw CannotWrite("cannot make the PNG: " +
                          (sink.problem.empty() ? "out of memory" : sink.problem));
    }
    return std::move(sink.bytes);
}

}  // namespace platewright
