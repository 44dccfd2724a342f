// SPDX-License-Identifier: MIT
// Pattern pieces at true size, made from the graded flats.
#pragma once

#include <map>
#include <string>
#include <utility>
#include <vector>

#include "compose/flat.h"
#include "pattern/grading.h"
#include "vocabulary/body.h"

namespace platewright {

/// A mark at which an edge meets its neighbour, from the seam to where it is cut, so that it is
/// still there when the piece lies cut out; on finished outlines a little into the piece instead.
struct Notch {
    Point at;
    Point out;
    /// Told by two ticks, so that a hind edge is not taken for a fore one.
    bool hind = false;
};

/// What the edge is sewn to: the same seam of one other piece; the edges of several, which it is
/// set into or onto; or that of the same piece cut mirrored.
enum class Join { neighbour, set_in, mirrored };

/// An edge that is sewn to another one of the same name.
struct Seam {
    /// `armhole`: a word of the catalogue.
    std::string name;
    Join join = Join::neighbour;
    /// Along the outline.
    Chain line;
    /// Stands at all edges of the seam; empty before the pieces are numbered, and where nothing
    /// else has a seam of that name.
    std::string letter = {};
};

/// What a place or a line of a piece is: `fold`, `open below`; a word of the catalogue.
struct PieceWord {
    std::string word;
    Point at;
    /// In which way they run.
    double degrees = 0;
};

/// One piece to be cut, in mm at true size, the grain running down the page.
struct PatternPiece {
    /// `coat`, `waistcoat`, `breeches`, `gaiters`.
    std::string garment;
    /// `lapel`, `forepart`: a word of the catalogue.
    std::string name;
    /// Its number in the cutting list, from 1; 0: in none.
    int number_in_list = 0;
    /// What it is cut of: `cloth`, `lining`, `interlining`, `leather`.
    std::string stuff = "cloth";
    /// The cloth, and its property: `lapels.cloth`.
    Material cloth;
    std::string cloth_key;
    /// Finished outline, its box beginning at (0, 0).
    Chain outline = {};
    /// Where to cut, seam allowance and inlay included; the outline itself where no allowance was
    /// asked for. May lie at negative places.
    Chain cut = {};
    /// What of it is lined, where a facing covers the rest; empty: all.
    Chain lined_part = {};
    /// How many to cut of the cloth, half of them mirrored if `paired`.
    int number = 1;
    bool paired = false;
    /// The same is cut once more in lining.
    bool lined = false;
    /// The lining of the piece that is called like it.
    bool is_lining = false;
    /// Lace and ornaments: cut at the finished line where other pieces have a seam allowance.
    bool at_line = false;
    /// The left edge lies on the fold of the cloth.
    bool on_fold = false;
    /// A facing part or mark has its ordered shape; the others are drafts to be fitted with a toile
    /// first.
    bool draft = false;
    /// Holes are worked in the one of the pair, buttons sewn to the other.
    bool closes_in_front = false;
    /// Cut by the pattern of its cloth: it is not printed once more at full size.
    bool repeats = false;
    /// Number in the cutting list of the lining that is cut by this pattern; 0: none is.
    int lining_alike = 0;
    /// How much longer a sleeve's head is than the hole it is sewn into, or a leg's top than the
    /// waistband, mm.
    double ease = 0;
    /// What is left beyond the seam allowance at one seam, to let out later, mm; and that seam
    /// on the outline.
    double inlay = 0;
    Chain inlay_seam = {};
    /// It grows narrower to nothing at the end of that seam.
    bool inlay_runs_out = false;
    /// Where the inlay begins, at the usual cut; of finished outlines, where it is to end.
    Chain inlay_line = {};
    /// Folds and lines to sew on, not to cut.
    std::vector<Chain> lines = {};
    /// Cuts within the piece: mouths of pockets, the opening of a fall.
    std::vector<Chain> slits = {};
    /// Places of buttons, and of their holes from end to end.
    std::vector<Point> buttons = {};
    std::vector<std::pair<Point, Point>> holes = {};
    /// Holes for lacing.
    std::vector<Point> eyelets = {};
    std::vector<Notch> notches = {};
    std::vector<Seam> seams = {};
    std::vector<PieceWord> words = {};
    /// What else is said on it, in the sheet's language.
    std::vector<std::string> remarks = {};
};

/// The buttonhole of a strap, mm long. Common practice, no source.
inline constexpr double kStrapHole = 16;

/// Finished area of one piece, mm²; doubled where it lies on the fold.
double area_of(const PatternPiece& piece);

/// How many of it are cut again in stiff linen: lapels, cuffs, flaps and straps, and of the collar
/// the half that lies beneath.
int times_stiffened(const PatternPiece& piece);

/// What pieces are made from.
struct PatternSource {
    const Uniform& uniform;
    const Body& body;
    /// Graded, by name of the view.
    const std::map<std::string, Flat>& flats;
    /// The ornament of the turnbacks laid out, its frame's height, and how many are worn; null if
    /// there is none.
    const Flat* ornament = nullptr;
    double ornament_frame = 60;
    /// Seam allowance in mm, round everything that is not cut at its line.
    double allowance = 0;

    /// The flat of that view, or null.
    [[nodiscard]] const Flat* flat(const std::string& view) const {
        const auto found = flats.find(view);
        return found == flats.end() ? nullptr : &found->second;
    }
};

/// Collar, lapels, cuffs, flaps, turnbacks and their ornament, straps, wings, epaulette fields,
/// marks, which are as long as the upper sleeve among the garments is broad.
std::vector<PatternPiece> facing_pieces(const PatternSource& source,
                                        const std::vector<PatternPiece>& garments);

/// Whole garments, as far as their flats are there: back, forepart, sleeves; legs; gaiters.
std::vector<PatternPiece> garment_pieces(const PatternSource& source);

/// Those of a waistcoat; among the whole garments.
std::vector<PatternPiece> waistcoat_pieces(const PatternSource& source);

/// Those of breeches or overalls; among the whole garments.
std::vector<PatternPiece> breeches_pieces(const PatternSource& source);

/// Those of gaiters; among the whole garments.
std::vector<PatternPiece> gaiter_pieces(const PatternSource& source);

/// What is cut besides those: linings of coat, waistcoat and breeches, facings of openings, pocket
/// bags, straps.
std::vector<PatternPiece> lesser_pieces(const PatternSource& source,
                                        const std::vector<PatternPiece>& pieces);

/// Puts the finishing touches to a piece: moved to the origin with its lines, buttons and notches;
/// seam allowance and inlay.
void finish(PatternPiece& piece, double allowance);

}  // namespace platewright
