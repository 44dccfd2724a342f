// SPDX-License-Identifier: MIT
// Where the type family comes from: its files, the names it goes by, and what is asked when it
// lacks a character.
#pragma once

#include <fontconfig/fontconfig.h>

#include <span>
#include <string>
#include <string_view>

#include "base/drawing.h"

namespace platewright {

/// One face of the family.
struct FaceName {
    Face face = Face::roman;
    /// Name of the font file, without folder.
    std::string_view file;
    /// Family by which the system's font list and SVG know it.
    std::string_view family;
    /// Family that programs know which read only the newer name entry, shared with other sizes.
    std::string_view general_family;
    bool italic = false;
    bool bold = false;
};

/// All faces, in the order of `Face`.
std::span<const FaceName> face_names();

/// The row of one face.
const FaceName& face_name(Face face);

/// Path of the face's file. Throws FontsMissing.
std::string find_font_file(const FaceName& face);

/// A configuration that knows this one face and nothing else: no folder of the system is scanned,
/// which saves its start-up time, and the result is the same on every machine. (Among several faces
/// fontconfig would choose by language before weight, and never choose the bold one, which has few
/// letters.) Made once, then shared and never changed. Throws FontsMissing.
FcConfig* face_fonts(Face face);

/// The system's own configuration and the family. Slow (it may scan every font), so only for what
/// the family lacks. Throws FontsMissing.
FcConfig* system_fonts();

/// The message of FontsMissing when `file` is not to be found.
std::string fonts_missing_message(std::string_view file);

}  // namespace platewright
