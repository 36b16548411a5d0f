#pragma once
#include "app/hinge-seat.h"

/** What is printed under a hinge line being drawn. */

enum { HINGE_SPOTS = 2 };
/** Where an end may cling: the crossing or corner near it, and the middle of the nearest line. */
typedef struct { Point px; bool corner; } HingeSpot;
typedef struct { HingeSpot spots[HINGE_SPOTS]; size_t count; } HingeSpots;

/** What is printed within `reach`, px of the file, of a place on the sheet, mm. */
HingeSpots hinge_print_spots (const TraceGround *ground, Point place, double reach);

/** A printed straight line, in the surface's own places: x = at_root + slope × station. */
typedef struct {
  double at_root, slope;
  const HingeSpot *first, *second;     /* the spots that it runs by; lent */
} PrintedHinge;

/** The straight line printed from one of the first spots to one of the second; corners are tried before places on a line. False where
 *  there is none, or it runs fore and aft. */
bool hinge_print_line (const TraceGround *ground, const HingeSeat *seat, const HingeSpots *first, const HingeSpots *second,
                       PrintedHinge *line);
