// SPDX-License-Identifier: MIT
// Letters of seams and words beside lines on a pattern piece, each where it is clear of what is
// drawn there.
#pragma once

#include <vector>

#include "base/language.h"
#include "layout/pen.h"
#include "pattern/pieces.h"

namespace platewright {

/// Of seams, beside the middle of each.
void draw_letters(
    const PatternPiece& piece, Point at, double factor, Language language, sheet::Pen& pen);

/// What lines are, in that language.
void draw_words(
    const PatternPiece& piece, Point at, double factor, Language language, sheet::Pen& pen);

/// Folds and lines to sew on, broken where a word has no place but upon them.
std::vector<Chain> lines_round_words(const PatternPiece& piece, double factor, Language language);

/// What they take when the piece is drawn at that factor, mm on the cloth.
std::vector<Rect> room_of_letters(const PatternPiece& piece, double factor, Language language);
std::vector<Rect> room_of_words(const PatternPiece& piece, double factor, Language language);

/// A line with so much round it, as boxes.
void add_line(Point from, Point to, double clear, std::vector<Rect>& marks);

/// Folds and slits with so much round them, mm on the cloth.
void add_lines(const PatternPiece& piece, double clear, std::vector<Rect>& marks);

}  // namespace platewright
