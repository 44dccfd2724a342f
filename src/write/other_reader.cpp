// SPDX-License-Identifier: MIT
// What another program makes of an SVG file: librsvg opens it and draws it small.
#include "write/other_reader.h"

#include <librsvg/rsvg.h>

#include <algorithm>
#include <memory>
#include <regex>

#include "write/cairo_raii.h"

namespace platewright {

namespace {

struct HandleRelease {
    void operator()(RsvgHandle* handle) const { g_object_unref(handle); }
};

/// Takes the place out of librsvg's words, which are either
/// `... on line 16 column 61 of data: why` or `... (null):16:53: why`; frees the error.
Refusal refusal_of(GError* error) {
    Refusal refusal;
    if (error == nullptr) {
        refusal.why = "it gives no reason";
        return refusal;
    }
    std::string words = error->message;
    g_error_free(error);
    std::ranges::replace_if(
        words, [](unsigned char c) { return c < ' '; }, ' ');
    static const std::regex kPlace(
        R"((?: on line |:)(\d{1,9})(?: column |:)(\d{1,9})(?: of data)?: (.*))");
    std::smatch found;
    if (std::regex_search(words, found, kPlace)) {
        refusal.line = std::stoul(found[1]);
        refusal.column = std::stoul(found[2]);
        words = found[3];
    }
    words.erase(words.find_last_not_of(' ') + 1);
    refusal.why = words;
    return refusal;
}

}  // namespace

std::optional<Refusal> other_reader_refusal(const std::string& svg) {
    constexpr int pixels = 64;
    GError* error = nullptr;
    const auto* bytes = reinterpret_cast<const guint8*>(svg.data());
    const std::unique_ptr<RsvgHandle, HandleRelease> handle(
        rsvg_handle_new_from_data(bytes, svg.size(), &error));
    if (!handle) {
        return refusal_of(error);
    }
    const CairoSurface surface(cairo_image_surface_create(CAIRO_FORMAT_A8, pixels, pixels));
    const CairoContext context(cairo_create(surface.get()));
    const RsvgRectangle whole{0, 0, pixels, pixels};
    if (rsvg_handle_render_document(handle.get(), context.get(), &whole, &error) == 0) {
        return refusal_of(error);
    }
    return std::nullopt;
}

}  // namespace platewright
