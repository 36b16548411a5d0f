#pragma once
#include "document/aeroplane.h"

/** What a hand does to an aeroplane, each a plain function from the old value to the next. NULL when the id is not there
 *  or geometry refuses (then nothing changed). mm, g, degrees. */

Aeroplane *change_surface_outline (const Aeroplane *self, const char *id, Outline *takes);
Aeroplane *change_body_outline    (const Aeroplane *self, const char *id, Outline *takes);
Aeroplane *change_body_side       (const Aeroplane *self, const char *id, Outline *takes);
/** Moves the whole surface: its outline, ribs' stations stay; controls' hinge lines, and parts do not follow. */
Aeroplane *change_surface_moved   (const Aeroplane *self, const char *id, double dx, double dz);
/** Stretches a surface's half-outline to this span (tip to tip; a fin: height), stations with it (ribs, controls, breaks). */
Aeroplane *change_surface_span    (const Aeroplane *self, const char *id, double span);
Aeroplane *change_part_place      (const Aeroplane *self, const char *id, double x, double y, double z);
/** The rail's ends are put in order. */
Aeroplane *change_part_rail       (const Aeroplane *self, const char *id, double from, double to);
Aeroplane *change_part_aboard     (const Aeroplane *self, const char *id, bool aboard);
Aeroplane *change_mark_station    (const Aeroplane *self, size_t mark, double station);   /* adds the first when there is none */
