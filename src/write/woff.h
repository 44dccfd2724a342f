// SPDX-License-Identifier: MIT
// Fonts for the web.
#pragma once

#include <string>
#include <string_view>

namespace platewright {

/// An OpenType file packed as WOFF 1.0; empty if it is no such file. Source: W3C, WOFF File
/// Format 1.0, 2012.
std::string to_woff(std::string_view opentype);

/// Bytes as text. Source: RFC 4648, section 4.
std::string base64(std::string_view bytes);

}  // namespace platewright
