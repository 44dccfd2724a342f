// SPDX-License-Identifier: MIT
// Packing fonts for the web.
#include "write/woff.h"

#include <zlib.h>

#include <array>
#include <cstdint>
#include <vector>

namespace platewright {

namespace {

constexpr std::size_t kFileHeader = 12;
constexpr std::size_t kFileEntry = 16;
constexpr std::size_t kWoffHeader = 44;
constexpr std::size_t kWoffEntry = 20;

std::uint32_t read_number(std::string_view bytes, std::size_t at, int count) {
    std::uint32_t value = 0;
    for (int i = 0; i < count; ++i, ++at) {
        value = value << 8U | static_cast<unsigned char>(bytes[at]);
    }
    return value;
}

void append_big_endian(std::string& to, std::size_t value, int count) {
    for (int i = count - 1; i >= 0; --i) {
        to += static_cast<char>(value >> static_cast<unsigned int>(8 * i) & 0xFFU);
    }
}

void pad(std::string& bytes) {
    bytes.resize((bytes.size() + 3) / 4 * 4, '\0');
}

/// Packed if that makes it smaller, as the format demands.
std::string packed(std::string_view table) {
    uLongf size = compressBound(table.size());
    std::string made(size, '\0');
    const int status = compress2(reinterpret_cast<Bytef*>(made.data()),
                                 &size,
                                 reinterpret_cast<const Bytef*>(table.data()),
                                 table.size(),
                                 Z_BEST_COMPRESSION);
    if (status != Z_OK || size >= table.size()) {
        return std::string(table);
    }
    made.resize(size);
    return made;
}

struct Table {
    std::uint32_t tag = 0;
    std::uint32_t sum = 0;
    std::string_view bytes;
};

/// The tables of the file, in the order of its directory; empty if it is damaged.
std::vector<Table> tables(std::string_view file) {
    std::vector<Table> made;
    if (file.size() < kFileHeader) {
        return made;
    }
    const std::size_t count = read_number(file, 4, 2);
    if (file.size() < kFileHeader + count * kFileEntry) {
        return made;
    }
    for (std::size_t i = 0; i < count; ++i) {
        const std::size_t entry = kFileHeader + i * kFileEntry;
        const std::size_t start = read_number(file, entry + 8, 4);
        const std::size_t size = read_number(file, entry + 12, 4);
        if (start > file.size() || size > file.size() - start) {
            return {};
        }
        made.push_back({read_number(file, entry, 4),
                        read_number(file, entry + 4, 4),
                        file.substr(start, size)});
    }
    return made;
}

}  // namespace

std::string to_woff(std::string_view opentype) {
    const std::vector<Table> found = tables(opentype);
    if (found.empty()) {
        return {};
    }
    std::string directory;
    std::string data;
    std::size_t unpacked = kFileHeader + found.size() * kFileEntry;
    for (const Table& table : found) {
        const std::string body = packed(table.bytes);
        append_big_endian(directory, table.tag, 4);
        append_big_endian(directory, kWoffHeader + found.size() * kWoffEntry + data.size(), 4);
        append_big_endian(directory, body.size(), 4);
        append_big_endian(directory, table.bytes.size(), 4);
        append_big_endian(directory, table.sum, 4);
        data += body;
        pad(data);
        unpacked += (table.bytes.size() + 3) / 4 * 4;
    }
    std::string made = "wOFF";
    append_big_endian(made, read_number(opentype, 0, 4), 4);
    append_big_endian(made, kWoffHeader + directory.size() + data.size(), 4);
    append_big_endian(made, found.size(), 2);
    append_big_endian(made, 0, 2);
    append_big_endian(made, unpacked, 4);
    append_big_endian(made, 1, 2);
    append_big_endian(made, 0, 2);
    // No metadata, no private block.
    made.append(std::size_t{5} * 4, '\0');
    return made + directory + data;
}

std::string base64(std::string_view bytes) {
    constexpr std::string_view digits =
        "ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789+/";
    std::string made;
    made.reserve((bytes.size() + 2) / 3 * 4);
    for (std::size_t at = 0; at < bytes.size(); at += 3) {
        const std::size_t count = std::min<std::size_t>(3, bytes.size() - at);
        std::uint32_t value = read_number(bytes, at, static_cast<int>(count)) << (8 * (3 - count));
        for (std::size_t digit = 0; digit < 4; ++digit, value <<= 6U) {
            made += digit <= count ? digits[value >> 18U & 63U] : '=';
        }
    }
    return made;
}

}  // namespace platewright
