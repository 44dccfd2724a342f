// SPDX-License-Identifier: MIT
// What lies on a body's piece: where lapels end on it, and the buttons, hooks and tapes that are
// sewn to it. All are given where the flats show them, before the piece is finished.
#pragma once

#include <string>

#include "compose/flat.h"
#include "pattern/pieces.h"

namespace platewright {

/// The cuts of the pockets and the buttons of their flaps.
void place_pockets(PatternPiece& forepart, const Flat& front);

/// The hind edge of the lapel that is buttoned back on a forepart, and its buttons.
void place_lapel(PatternPiece& forepart, const Flat& front);

/// The edge that a lapel of that name has in common with its forepart, and where it ends below; of
/// either piece.
void name_lapel_seam(PatternPiece& piece, const Flat& front, const std::string& lapel);

/// On the facing of a corner: the hook, where its button is on the other.
void place_hook(PatternPiece& facing, const Flat& flat, const FlatPart& corner);

/// The button of the shoulder strap.
void place_strap(PatternPiece& forepart, const Flat& front);

/// The fold of the turnback, and where its corner is held.
void place_turnback(PatternPiece& skirt, const Flat& flat);

/// The hip button of the left half of a back.
void place_hip_button(PatternPiece& back, const FlatPart& body);

/// Where the tapes are sewn to the left half of a waistcoat's back.
void place_tapes(PatternPiece& back, const Flat& flat);

/// The button of the foot strap, on that part of a gaiter which it lies on.
void place_strap_button(PatternPiece& side, const Flat& outer);

/// On an upper sleeve with marks: which sleeve it is, where only one has them.
void say_which_sleeve(PatternPiece& upper, const Uniform& man);

/// Where the cuff's upper edge lies over a half of a sleeve; 0: nowhere.
void place_cuff_edge(PatternPiece& half, double height);

/// The seams of one half of a sleeve and its hem, and which seam is which. On the left sleeve the
/// hind arm is at the right of the page; `hind`, `fore`: where its seams end at the head.
void name_arm_seams(PatternPiece& half, Point hind, Point fore);

}  // namespace platewright
