// SPDX-License-Identifier: MIT
// Decoding UTF-8.
#include "write/utf8.h"

namespace platewright {

std::vector<char32_t> characters(std::string_view utf8) {
    std::vector<char32_t> made;
    for (const char c : utf8) {
        const auto byte = static_cast<unsigned char>(c);
        if ((byte & 0xC0U) == 0x80 && !made.empty()) {
            made.back() = made.back() << 6U | (byte & 0x3FU);
        } else if (byte < 0x80) {
            made.push_back(byte);
        } else if (byte < 0xE0) {
            made.push_back(byte & 0x1FU);
        } else {
            made.push_back(byte & (byte < 0xF0 ? 0x0FU : 0x07U));
        }
    }
    return made;
}

}  // namespace platewright
