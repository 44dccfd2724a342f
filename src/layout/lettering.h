// SPDX-License-Identifier: MIT
// Letters of seams and words beside lines on a pattern piece, each where it is clear of what is
// drawn there.
#pragma once

#include <string>
#include <vector>

#include "base/language.h"
#include "layout/pen.h"
#include "pattern/pieces.h"

namespace platewright {

/// A word where it stands: its middle, how it is turned, its type and half its size, mm on the
/// cloth.
struct PlacedWord {
    const PieceWord* word = nullptr;
    Point at;
    double degrees = 0;
    double type = 0;
    Point half;

    [[nodiscard]] Point along() const;
    [[nodiscard]] Point up() const;
};

/// A letter beside its seam, mm on the cloth.
struct PlacedLetter {
    std::string letter;
    Point at;
};

/// What is written on a piece drawn at one factor, in one language, each word and letter in its
/// place. The piece must outlive it.
class Lettering {
  public:
    Lettering(const PatternPiece& piece, double factor, Language language);

    [[nodiscard]] const PatternPiece& piece() const { return piece_; }

    /// The letters of seams, and what lines are; the piece with its origin at `at`.
    void draw_letters(Point at, sheet::Pen& pen) const;
    void draw_words(Point at, sheet::Pen& pen) const;

    /// Folds and lines to sew on, broken where a word has no place but upon them.
    [[nodiscard]] std::vector<Chain> lines_round_words() const;

    /// What they take, mm on the cloth.
    [[nodiscard]] std::vector<Rect> room_of_letters() const;
    [[nodiscard]] std::vector<Rect> room_of_words() const;

  private:
    const PatternPiece& piece_;
    double factor_;
    Language language_;
    std::vector<PlacedWord> words_;
    std::vector<PlacedLetter> letters_;
};

/// A line with so much round it, as boxes.
void add_line(Point from, Point to, double clear, std::vector<Rect>& marks);

/// Folds and slits with so much round them, mm on the cloth.
void add_lines(const PatternPiece& piece, double clear, std::vector<Rect>& marks);

}  // namespace platewright
