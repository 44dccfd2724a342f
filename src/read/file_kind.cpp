// SPDX-License-Identifier: MIT
// What a YAML file is for, told by its outermost keys.
#include <algorithm>
#include <array>

#include "base/text.h"
#include "read/read.h"

namespace platewright {
namespace {

struct TellingKey {
    std::string_view key;
    FileKind kind;
};

/// A plate or a chart may name a regiment and a regulation, a regiment a regulation; so the order
/// matters.
constexpr std::array kTellingKeys = std::to_array<TellingKey>({
    {"plate", FileKind::plate},
    {"wardrobe", FileKind::plate},
    {"comparison", FileKind::comparison},
    {"handout", FileKind::handout},
    {"chart", FileKind::chart},
    {"workshop", FileKind::workshop},
    {"regiment", FileKind::regiment},
    {"regulation", FileKind::regulation},
    {"palette", FileKind::palette},
    {"ranks", FileKind::customs},
    {"sizes", FileKind::sizes},
});

/// The line is `key:` at its very beginning, or after the brace that opens the file.
bool begins_with_key(std::string_view line, std::string_view key) {
    constexpr std::string_view byte_order_mark = "\xEF\xBB\xBF";
    if (line.starts_with(byte_order_mark)) {
        line.remove_prefix(byte_order_mark.size());
    }
    if (line.starts_with('{')) {
        line = trim(line.substr(1));
    }
    return line.starts_with(key) && trim(line.substr(key.size())).starts_with(':');
}

}  // namespace

FileKind kind_of_file(std::string_view text) {
    const auto lines = split(text, '\n');
    for (const TellingKey& telling : kTellingKeys) {
        const auto has_key = [&telling](std::string_view line) {
            return begins_with_key(line, telling.key);
        };
        if (std::ranges::any_of(lines, has_key)) {
            return telling.kind;
        }
    }
    return FileKind::plate;
}

}  // namespace platewright
