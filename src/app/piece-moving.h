#pragma once
#include "document/aeroplane.h"

/** Moves one surface, body or part by (dx, dy, dz) mm. A surface and a body keep to the centre line (dy does nothing). A part with a rail
 *  keeps to it: dx stops at its ends and dy does nothing, unless `loose`. NULL when the piece is not there. */
Aeroplane *piece_moving_moved (const Aeroplane *aeroplane, const char *id, const double by[3], bool loose);
/** A body with its outlines and formers, `dx` further aft and `dz` higher; NULL when it is not there. Both in mm. */
Aeroplane *piece_moving_body  (const Aeroplane *aeroplane, const char *id, double dx, double dz);
/** Whether pieces of that id can be moved at all. */
bool       piece_moving_can   (const Aeroplane *aeroplane, const char *id);
