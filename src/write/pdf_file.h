// SPDX-License-Identifier: MIT
// The body of a PDF file: numbered objects, compressed streams, the table that finds them.
#pragma once

#include <cstddef>
#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

#include "base/geometry.h"

namespace platewright {

/// Points of PDF to the millimetre.
inline constexpr double kPointsPerMm = 72 / kInch;

/// Number of an object in a `PdfFile`.
using PdfObject = std::size_t;

/// Collects objects in any order and writes them in the order of their numbers.
class PdfFile {
  public:
    /// A number to refer to before the object is known.
    PdfObject reserve();

    /// The object's text: a dictionary, an array.
    void set(PdfObject object, std::string body);
    PdfObject add(std::string body);

    /// A stream; `entries` are further lines of its dictionary: `/Subtype /Form`. Throws
    /// CannotWrite out of memory.
    void set_stream(PdfObject object, std::string_view entries, std::string_view data);
    PdfObject add_stream(std::string_view entries, std::string_view data);

    /// A stream that programs may read without unpacking it.
    PdfObject add_plain_stream(std::string_view entries, std::string_view data);

    /// The whole file.
    [[nodiscard]] std::string finish(PdfObject catalog, PdfObject info) const;

  private:
    std::vector<std::string> bodies_;
};

/// `12 0 R`.
std::string reference(PdfObject object);

/// Four hexadecimal digits: `0414`.
void append_hex(std::string& to, std::uint32_t number);

/// A string of text, in ASCII or UTF-16: `(Coat)`, `<FEFF0414>`.
std::string pdf_text(std::string_view utf8);

/// UTF-16, big end first, as hexadecimal digits: `0414`.
std::string utf16_hex(std::string_view utf8);

}  // namespace platewright
