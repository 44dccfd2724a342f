// SPDX-License-Identifier: MIT
// Objects of a PDF file (ISO 32000-1, chapter 7).
#include "write/pdf_file.h"

#include <zlib.h>

#include <array>
#include <cstdio>

#include "write/utf8.h"
#include "write/write.h"

namespace platewright {

namespace {

std::string deflated(std::string_view data) {
    uLongf size = compressBound(data.size());
    std::string made(size, '\0');
    const int status = compress2(reinterpret_cast<Bytef*>(made.data()),
                                 &size,
                                 reinterpret_cast<const Bytef*>(data.data()),
                                 data.size(),
                                 Z_BEST_COMPRESSION);
    if (status != Z_OK) {
        throw CannotWrite("cannot compress the PDF: out of memory");
    }
    made.resize(size);
    return made;
}

}  // namespace

PdfObject PdfFile::reserve() {
    bodies_.emplace_back();
    return bodies_.size();
}

void PdfFile::set(PdfObject object, std::string body) {
    bodies_.at(object - 1) = std::move(body);
}

PdfObject PdfFile::add(std::string body) {
    const PdfObject object = reserve();
    set(object, std::move(body));
    return object;
}

void PdfFile::set_stream(PdfObject object, std::string_view entries, std::string_view data) {
    const std::string packed = deflated(data);
    std::string body = "<< ";
    body += entries;
    body += " /Filter /FlateDecode /Length " + std::to_string(packed.size()) + " >>\nstream\n";
    body += packed;
    body += "\nendstream";
    set(object, std::move(body));
}

PdfObject PdfFile::add_stream(std::string_view entries, std::string_view data) {
    const PdfObject object = reserve();
    set_stream(object, entries, data);
    return object;
}

PdfObject PdfFile::add_plain_stream(std::string_view entries, std::string_view data) {
    std::string body = "<< " + std::string(entries);
    body += " /Length " + std::to_string(data.size()) + " >>\nstream\n";
    body += data;
    return add(body + "\nendstream");
}

std::string PdfFile::finish(PdfObject catalog, PdfObject info) const {
    // Four bytes above 127 tell programs that move files about that this is no plain text.
    std::string made = "%PDF-1.7\n%\xE2\xE3\xCF\xD3\n";
    std::string table = "xref\n0 " + std::to_string(bodies_.size() + 1) + "\n0000000000 65535 f \n";
    for (std::size_t i = 0; i < bodies_.size(); ++i) {
        std::array<char, 32> line{};
        std::snprintf(line.data(), line.size(), "%010zu 00000 n \n", made.size());
        table += line.data();
        made += std::to_string(i + 1) + " 0 obj\n" + bodies_[i] + "\nendobj\n";
    }
    const std::size_t start = made.size();
    made += table;
    made += "trailer\n<< /Size " + std::to_string(bodies_.size() + 1) + " /Root " +
            reference(catalog) + " /Info " + reference(info) + " >>\nstartxref\n" +
            std::to_string(start) + "\n%%EOF\n";
    return made;
}

std::string reference(PdfObject object) {
    return std::to_string(object) + " 0 R";
}

std::string utf16_hex(std::string_view utf8) {
    std::string made;
    for (const char32_t character : characters(utf8)) {
        if (character < 0x10000) {
            append_hex(made, character);
        } else {
            append_hex(made, 0xD800U + ((character - 0x10000U) >> 10U));
            append_hex(made, 0xDC00U + ((character - 0x10000U) & 0x3FFU));
        }
    }
    return made;
}

void append_hex(std::string& to, std::uint32_t number) {
    constexpr std::string_view digits = "0123456789ABCDEF";
    for (const unsigned int shift : {12U, 8U, 4U, 0U}) {
        to += digits[number >> shift & 15U];
    }
}

std::string pdf_text(std::string_view utf8) {
    std::string plain = "(";
    for (const char c : utf8) {
        if (c < ' ' || c > '~') {
            return "<FEFF" + utf16_hex(utf8) + ">";
        }
        if (c == '(' || c == ')' || c == '\\') {
            plain += '\\';
        }
        plain += c;
    }
    return plain + ")";
}

}  // namespace platewright
