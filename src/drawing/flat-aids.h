#pragma once
#include "drawing/export.h"
#include "drawing/flat-piece.h"

/** What helps to build and to balance, as flat pieces; each NULL where the aeroplane has nothing of the kind yet. */

/** The lid of the hatch to cut: the figures' hatch less its play on each side. y is mm aft of the datum, x from the centre line to starboard, with
 *  the formers beneath it. */
FlatPiece *flat_lid_of (const Figures *figures, Units units);
/** The frame that goes behind the edges of that hatch's hole in the body: the hole itself, as FLAT_OPENING, in a rim of 6 mm; beside the hole less
 *  where the body has no room for it. Places as the lid's. */
FlatPiece *flat_hatch_frame_of (const Figures *figures, Units units);
/** The floor along which the battery can go: its rails, and half its length beyond both ends, as wide as it is. Places as the hatch's. */
FlatPiece *flat_floor_of (const Figures *figures, Units units);
/** A strip of paper that is folded over the leading edge at the first mark that lies on the wing, and carries mark and limits along both
 *  faces: upward along the upper, downward along the lower, the fold at y = 0. Where a thickness is given it follows the section's face
 *  (section_face_length), else the chord. */
FlatPiece *flat_strip_of (const Figures *figures, Units units);
/** The base of a stand with two pins of one height, as far apart as that mark is on both sides; its middle at x = 0. */
FlatPiece *flat_stand_of (const Figures *figures, Units units);
