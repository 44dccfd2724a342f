// SPDX-License-Identifier: MIT
// A page with everything a writer can meet, drawn with an offset so that a lost transform shows.
#pragma once

#include "layout/page.h"

namespace platewright::test {

/// A 120 x 90 mm page: opaque and transparent shapes, holes, lines and dashes, clips of several
/// outlines, repeated and shifted outlines, every face, ligatures, Cyrillic and Hebrew, tracking,
/// turned type, all three alignments.
Document sample();

}  // namespace platewright::test
