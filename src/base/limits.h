// SPDX-License-Identifier: MIT
// Every limit on what is read, each with the trouble it prevents.
#pragma once

#include <cstddef>

namespace platewright::limits {

/// A description is a page or two; a megabyte of YAML is a mistake or an attack, and the parser is slow on it.
inline constexpr std::size_t kYamlBytes = 1'000'000;
/// The parser recurses on nesting; nothing we read is nested deeper than six.
inline constexpr std::size_t kYamlDepth = 24;
/// Bounds the memory of the tree.
inline constexpr std::size_t kYamlNodes = 50'000;
/// After this many problems in one run the rest is noise.
inline constexpr std::size_t kProblemsShown = 50;
/// A hand-drawn figure is under 200 KB.
inline constexpr std::size_t kTemplateBytes = 4'000'000;
inline constexpr std::size_t kTemplateElements = 5'000;
/// One path of a template; longer ones come from traced bitmaps.
inline constexpr std::size_t kPathSegments = 5'000;
/// Coordinates beyond this are a slip of the editor and would make shading loops endless.
inline constexpr double kCoordinate = 100'000;
/// Stations along one line: buttons, holes, stitches.
inline constexpr int kStations = 500;
/// Pixels of a PNG: 20 000 x 20 000 needs 1.6 GB.
inline constexpr double kPngPixels = 200e6;

}  // namespace platewright::limits
