// SPDX-License-Identifier: MIT
// Finding the files of the type family.
#include "text/fonts.h"

#include <array>
#include <cstdlib>
#include <filesystem>
#include <memory>
#include <mutex>
#include <system_error>
#include <vector>

#include "text/typesetter.h"

namespace platewright {

namespace {

constexpr std::array<FaceName, 6> kFaces = {{
    {Face::roman, "EBGaramond12-Regular.otf", "EB Garamond 12", "EB Garamond", false, false},
    {Face::italic, "EBGaramond12-Italic.otf", "EB Garamond 12", "EB Garamond", true, false},
    {Face::small_caps,
     "EBGaramondSC12-Regular.otf",
     "EB Garamond SC 12",
     "EB Garamond SC",
     false,
     false},
    {Face::bold, "EBGaramond12-Bold.otf", "EB Garamond 12", "EB Garamond", false, true},
    {Face::roman_small, "EBGaramond08-Regular.otf", "EB Garamond 08", "EB Garamond", false, false},
    {Face::italic_small, "EBGaramond08-Italic.otf", "EB Garamond 08", "EB Garamond", true, false},
}};

struct FontconfigRelease {
    void operator()(FcConfig* config) const { FcConfigDestroy(config); }

    void operator()(FcPattern* pattern) const { FcPatternDestroy(pattern); }
};

using Config = std::unique_ptr<FcConfig, FontconfigRelease>;
using Pattern = std::unique_ptr<FcPattern, FontconfigRelease>;

const FcChar8* bytes(const std::string& text) {
    // fontconfig calls its UTF-8 bytes unsigned.
    return reinterpret_cast<const FcChar8*>(text.c_str());
}

/// Folders where distributions and users put the family.
std::vector<std::filesystem::path> folders() {
    std::vector<std::filesystem::path> found = {"/usr/share/fonts/opentype/ebgaramond",
                                                "/usr/local/share/fonts/ebgaramond",
                                                "/usr/local/share/fonts",
                                                "/usr/share/fonts/ebgaramond"};
    const char* home = std::getenv("HOME");
    if (home != nullptr) {
        found.emplace_back(std::filesystem::path(home) / ".local/share/fonts");
        found.emplace_back(std::filesystem::path(home) / ".fonts");
    }
    return found;
}

std::string file_in_folders(const FaceName& face) {
    for (const std::filesystem::path& folder : folders()) {
        std::error_code ignored;
        const std::filesystem::path file = folder / face.file;
        if (std::filesystem::is_regular_file(file, ignored)) {
            return file.string();
        }
    }
    return {};
}

std::string text_of(FcPattern* pattern, const char* object) {
    FcChar8* value = nullptr;
    if (FcPatternGetString(pattern, object, 0, &value) != FcResultMatch) {
        return {};
    }
    return reinterpret_cast<const char*>(value);
}

/// The file fontconfig knows, if it has the very name; what it would put in its place is no use.
std::string file_in_system(const FaceName& face) {
    const Config system(FcInitLoadConfigAndFonts());
    const Pattern asked(FcPatternCreate());
    const std::string family(face.family);
    FcPatternAddString(asked.get(), FC_FAMILY, bytes(family));
    FcPatternAddInteger(asked.get(), FC_SLANT, face.italic ? FC_SLANT_ITALIC : FC_SLANT_ROMAN);
    FcPatternAddInteger(asked.get(), FC_WEIGHT, face.bold ? FC_WEIGHT_BOLD : FC_WEIGHT_REGULAR);
    FcConfigSubstitute(system.get(), asked.get(), FcMatchPattern);
    FcDefaultSubstitute(asked.get());
    FcResult result = FcResultNoMatch;
    const Pattern match(FcFontMatch(system.get(), asked.get(), &result));
    if (match == nullptr) {
        return {};
    }
    const std::string file = text_of(match.get(), FC_FILE);
    return std::filesystem::path(file).filename() == face.file ? file : std::string();
}

void add_face(FcConfig* config, const FaceName& face) {
    const std::string file = find_font_file(face);
    if (FcConfigAppFontAddFile(config, bytes(file)) == FcFalse) {
        throw FontsMissing("cannot read the font file " + file);
    }
}

/// The configuration of one face, or nothing yet.
struct Slot {
    std::once_flag made;
    Config config;
};

}  // namespace

std::span<const FaceName> face_names() {
    return kFaces;
}

const FaceName& face_name(Face face) {
    return kFaces.at(static_cast<std::size_t>(face));
}

std::string find_font_file(const FaceName& face) {
    std::string file = file_in_folders(face);
    if (file.empty()) {
        file = file_in_system(face);
    }
    if (file.empty()) {
        throw FontsMissing(fonts_missing_message(face.file));
    }
    return file;
}

FcConfig* face_fonts(Face face) {
    static std::once_flag current;
    // Pango loads the system's fonts in a second thread unless there is a current configuration
    // already.
    std::call_once(current, [] { FcConfigSetCurrent(FcConfigCreate()); });
    // Never freed, because Pango keeps patterns of them.
    static auto* const kSlots = new std::array<Slot, kFaces.size()>();
    Slot& slot = kSlots->at(static_cast<std::size_t>(face));
    std::call_once(slot.made, [&] {
        Config config(FcConfigCreate());
        add_face(config.get(), face_name(face));
        slot.config = std::move(config);
    });
    return slot.config.get();
}

FcConfig* system_fonts() {
    static FcConfig* const kConfig = [] {
        Config made(FcInitLoadConfigAndFonts());
        for (const FaceName& face : kFaces) {
            add_face(made.get(), face);
        }
        return made.release();
    }();
    return kConfig;
}

std::string fonts_missing_message(std::string_view file) {
    return "the type family EB Garamond is not installed (no file " + std::string(file) +
           "); install the packages fonts-ebgaramond and fonts-ebgaramond-extra";
}

}  // namespace platewright
