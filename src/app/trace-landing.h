#pragma once
#include "app/trace-ground.h"

/** Where a traced outline goes on the aeroplane. Pure functions. */

/** What was traced in that view; else a surface of its role that only stood for an area, or for a body the body that is there; NULL: a new
 *  piece comes. */
const Piece *trace_landing_piece (const Aeroplane *aeroplane, const TraceGround *ground);
/** The outline of the surface or body of that id which a view that shows so much tells, and the click that it passes; NULL: there is no
 *  such piece, or no outline yet. */
const Outline     *trace_landing_outline (const Aeroplane *aeroplane, const char *id, ViewShows shows);
const PassedClick *trace_landing_passed  (const Aeroplane *aeroplane, const char *id, ViewShows shows);      /* lent */
/** Whether an outline stands there already that would be lost by another one: one that was traced in that view, or any of the body. */
bool         trace_landing_is_taken (const Aeroplane *aeroplane, const TraceGround *ground);
/** What lands, in the view's own axes, mm: an outline, lent, and the click that it passes by far. */
typedef struct { const Outline *outline; PassedClick passed; } LandingOutline;
/** The aeroplane with that outline: in the place of what was traced in that view, or as a new piece of what
 *  the view shows. NULL when geometry refuses.
 *  root_open  what stands off the centre line is left open there; NULL: as it is
 *  id         set to the piece's, a new string */
Aeroplane  *trace_landed (const Aeroplane *aeroplane, const TraceGround *ground, const LandingOutline *own, const bool *root_open, char **id);
/** The step's name, translated: "Trace Wing". */
const char *trace_landing_label (ViewShows shows);
