// SPDX-License-Identifier: MIT
// Every limit on what is read, each with the trouble it prevents.
#pragma once

#include <cstddef>

namespace platewright::limits {

/// A description is a page or two, a large palette 50 KB. The parser takes up to 3 microseconds a
/// byte on the worst input we know (many opening brackets), so this keeps any answer under a
/// second.
inline constexpr std::size_t kYamlBytes = 250'000;
/// The parser recurses on nesting; nothing we read is nested deeper than six.
inline constexpr std::size_t kYamlDepth = 24;
/// Bounds the memory of the tree.
inline constexpr std::size_t kYamlNodes = 50'000;
/// A title or another single line; a longer one cannot be set on a sheet.
inline constexpr std::size_t kLineCharacters = 200;
/// One remark; longer ones belong in a book.
inline constexpr std::size_t kNoteCharacters = 2'000;
/// Ranks, rules, companies and the like of one regulation, and regiments of its series. Everything
/// is compared with everything, and no army had so many.
inline constexpr std::size_t kRecords = 400;
/// Regulations that one regiment names, and amendments of one regulation; each is a file to open.
inline constexpr std::size_t kRegulations = 24;
/// After this many problems in one run the rest is noise.
inline constexpr std::size_t kProblemsShown = 50;
/// A hand-drawn figure is under 200 KB.
inline constexpr std::size_t kTemplateBytes = 4'000'000;
inline constexpr std::size_t kTemplateElements = 20'000;
/// One path of a template; longer ones come from traced bitmaps.
inline constexpr std::size_t kPathSegments = 5'000;
/// Coordinates beyond this are a slip of the editor and would make shading loops endless.
inline constexpr double kCoordinate = 100'000;
/// Stations along one line: buttons, holes, stitches.
inline constexpr int kStations = 500;
/// Pixels of a PNG: 20 000 x 20 000 needs 1.6 GB.
inline constexpr double kPngPixels = 200e6;

}  // namespace platewright::limits
