#pragma once
#include "figures/hatch-figures.h"

/** The form of the hatch's hole, which narrows with the body where that leaves less than its width: what it is at its ends, between which places
 *  it is as wide as it gets, and whether the packs go through. */

/** How wide it is at a place, mm; between two of them its edges are straight. x: mm aft of the datum. */
typedef struct { double x, width; } HatchStation;

enum { HATCH_HOLE_STATIONS = 4, HATCH_FRAME_STATIONS = 6 };

/** Narrows the hole to what the body leaves it: its clear width (body_profile_clear) less HATCH_LAND on each side, straight from where that is
 *  less than the hole's width to the end. Looked at in 64 steps. Sets the widths and the places between which it is full.
 *  profile  of the body that the battery stands in; NULL, or without an outline from above: nothing is narrowed */
void hatch_narrow (HatchFigures *hatch, const BodyProfile *profile);
/** How wide the hole is at x, mm aft of the datum, between its edges. */
double hatch_width_at (const HatchFigures *hatch, double x);
/** How long the stretch is over which the hole is so wide or wider, mm; 0 where it nowhere is. */
double hatch_stretch (const HatchFigures *hatch, double width);

/** The hole from ahead aft, 2 to HATCH_HOLE_STATIONS of them; how many. `less` mm smaller all round: its lid, with the play. */
size_t hatch_hole  (const HatchFigures *hatch, double less, HatchStation stations[HATCH_HOLE_STATIONS]);
/** Their corners, mm: x aft of the datum and y to starboard, `middle` between both edges; first the port edge from ahead aft, then the starboard
 *  one back. Twice `count` of them. */
void hatch_corners (const HatchStation stations[], size_t count, double middle, Point corners[]);
/** The frame behind the hole: `rim` mm wider all round, but nowhere wider than the body is inside. */
size_t hatch_frame (const HatchFigures *hatch, double rim, HatchStation stations[HATCH_FRAME_STATIONS]);
