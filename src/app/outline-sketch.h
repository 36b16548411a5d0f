#pragma once
#include "document/aeroplane.h"

/** Growing a half-outline point by point. Pure functions of outlines; the tool keeps the hand's side of it. */

/** The outline with one more node at `to` (NULL: begins one from `start`). `leave` is the handle pulled out of the last node and `arrive`
 *  that of the new one; NULL for none. Without either the segment is a line. NULL when geometry refuses. */
Outline *outline_sketch_with   (const Outline *outline, Point start, const Point *leave, const Point *arrive, Point to);
/** The outline without its last node; NULL when only one would be left. */
Outline *outline_sketch_without_last (const Outline *outline);
/** The place of the last node. */
Point    outline_sketch_end    (const Outline *outline);
/** Whether a node there would close it: at the station of its first node, with at least two nodes before. */
bool     outline_sketch_closes (const Outline *outline, Point to);
/** Whether the surface's outline still waits for its last node. */
bool     outline_sketch_is_open (const Surface *surface);
/** The role that a new surface takes: wing, and with a wing there, tailplane; with both, a wing again. */
SurfaceRole outline_sketch_role (const Aeroplane *aeroplane);
/** The surface `id` with that outline; a new one of the next role when there is no such surface. Takes the outline. */
Aeroplane  *outline_sketch_put  (const Aeroplane *aeroplane, const char *id, Outline *takes);
