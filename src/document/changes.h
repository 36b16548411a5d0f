#pragma once
#include "document/aeroplane.h"

/** What a hand does to an aeroplane, each a plain function from the old value to the next: a new reference, the same aeroplane where
 *  nothing differs by value. NULL when the id is not there, a number is not finite or geometry refuses (then nothing changed). mm. */

Aeroplane *change_surface_outline (const Aeroplane *self, const char *id, Outline *takes);    /* half-outline, mm; also of a fin */
Aeroplane *change_body_outline    (const Aeroplane *self, const char *id, Outline *takes);    /* top view, mm */
Aeroplane *change_body_side       (const Aeroplane *self, const char *id, Outline *takes);    /* side view, mm */
/** Moves the whole surface by dx aft and dz up, mm: its outline, its height and its controls' hinge lines. Stations stay (ribs,
 *  controls, breaks), and no part follows. */
Aeroplane *change_surface_moved   (const Aeroplane *self, const char *id, double dx, double dz);
/** Stretches a surface's half-outline to this span > 0, mm (tip to tip; a fin: height), stations with it (ribs, controls, breaks). */
Aeroplane *change_surface_span    (const Aeroplane *self, const char *id, double span);
/** Puts a part's centre there, mm; its rail does not hold it. */
Aeroplane *change_part_place      (const Aeroplane *self, const char *id, double x, double y, double z);
/** Gives a part a rail from and to these x, mm aft of the datum; the ends are put in order. */
Aeroplane *change_part_rail       (const Aeroplane *self, const char *id, double from, double to);
/** Whether a part is aboard and counts. */
Aeroplane *change_part_aboard     (const Aeroplane *self, const char *id, bool aboard);
/** Puts the mark of that number at x, mm aft of the datum; adds the first when there is none. NULL when there is no such mark. */
Aeroplane *change_mark_station    (const Aeroplane *self, size_t mark, double station);
