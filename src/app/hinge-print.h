#pragma once
#include <math.h>
#include "app/hinge-seat.h"

/** What is printed under a hinge line being drawn. */

/** Where an end may cling, px of the file: the middle of the nearest line, the crossing or corner near it; NAN none. */
typedef struct { Point line, corner; } HingeSpots;
#define HINGE_NO_SPOTS ((HingeSpots) { { NAN, NAN }, { NAN, NAN } })

/** What is printed within `reach`, px of the file, of a place on the sheet, mm; a corner within seven tenths of it. */
HingeSpots hinge_print_spots (const TraceGround *ground, Point place, double reach);
/** Where an end alone clings there; NAN where nothing is printed. */
Point      hinge_print_spot  (const HingeSpots *spots);

/** A printed straight line, in the surface's own places: x = at_root + slope × station. */
typedef struct {
  double at_root, slope;
  double first, second;        /* stations of the corners on it near either end; NAN none */
} PrintedHinge;

/** The straight line printed from the first spots to the second; where those meant do not lie on one, the others are tried. False where
 *  there is none, or it runs fore and aft.
 *  exactly  the line is followed and fitted, to a fraction of a pixel; else it runs from spot to spot, which is soon enough for every
 *           place that a hand comes by
 *  cost     at 10 px a mm: a tenth of a second for a line of 200 mm exactly, else a millisecond */
bool hinge_print_line (const TraceGround *ground, const HingeSeat *seat, const HingeSpots *first, const HingeSpots *second, bool exactly,
                       PrintedHinge *line);
