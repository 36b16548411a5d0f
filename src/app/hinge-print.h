#pragma once
#include <math.h>
#include "app/hinge-seat.h"

/** What is printed under a hinge line being drawn. */

/** Where an end may cling, px of the file: the middle of the nearest line, the crossing or corner near it; NAN none. */
typedef struct { Point line, corner; } HingeSpots;
#define HINGE_NO_SPOTS ((HingeSpots) { { NAN, NAN }, { NAN, NAN } })

/** What is printed within `reach`, px of the file, of a place on the sheet, mm. */
HingeSpots hinge_print_spots (const TraceGround *ground, Point place, double reach);
/** Where an end alone clings there: at the corner where it is as near as half the reach, else on the line; NAN where nothing is printed. */
Point      hinge_print_near  (const TraceGround *ground, const HingeSpots *spots, Point place, double reach);

/** A printed straight line, in the surface's own places: x = at_root + slope × station. */
typedef struct {
  double at_root, slope;
  double first, second;        /* stations of the corners on it near either end; NAN none */
} PrintedHinge;

/** The straight line printed from the first spots to the second: from line to line, else by their corners. False where there is none, or
 *  it runs fore and aft. */
bool hinge_print_line (const TraceGround *ground, const HingeSeat *seat, const HingeSpots *first, const HingeSpots *second,
                       PrintedHinge *line);
