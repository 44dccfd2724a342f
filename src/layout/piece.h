// SPDX-License-Identifier: MIT
// A pattern piece as it is drawn: on tables small, on tiles and for cutters at full size.
#pragma once

#include <string>
#include <vector>

#include "base/language.h"
#include "layout/lettering.h"
#include "layout/pen.h"
#include "pattern/laying.h"
#include "pattern/pieces.h"

namespace platewright {

/// A pen for each kind of line, so that a knife can take the one without the others.
struct PiecePens {
    /// All with the same pen; lines are told what they are in that language.
    PiecePens(sheet::Pen& all, Language spoken);

    sheet::Pen* cut;
    sheet::Pen* sew;
    sheet::Pen* fold;
    sheet::Pen* pocket;
    sheet::Pen* hole;
    sheet::Pen* eyelet;
    sheet::Pen* button;
    sheet::Pen* notch;
    sheet::Pen* grain;
    sheet::Pen* inlay;
    /// Letters of seams.
    sheet::Pen* letters;
    /// What lines are; null where there is no room for that.
    sheet::Pen* words;
    Language language;
};

/// The piece drawn with its origin at `at`, times `factor`.
void draw_piece(const PatternPiece& piece, Point at, double factor, const PiecePens& pens);

/// Pieces on their cloth, its corner at `at`, each with its number in the cutting list.
void draw_laying(const Laying& laying,
                 const std::vector<PatternPiece>& pieces,
                 Point at,
                 double factor,
                 sheet::Pen& pen);

/// The middle of an outline's area, mm.
Point middle_of(const Chain& outline);

/// What the grain arrow takes of the piece, mm on the cloth; empty where there is no room for one.
/// On small drawings words take more of the piece.
Rect grain_of(const Lettering& on);

/// Buttons, folds, notches and words of a piece with so much kept clear round them, mm on the
/// cloth.
std::vector<Rect> marks_within(const Lettering& on, double clear);

}  // namespace platewright
