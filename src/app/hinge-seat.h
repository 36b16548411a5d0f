#pragma once
#include "app/trace-ground.h"

/** Which surface a hinge line is drawn on, and how places under the hand become places of its own: x aft of the datum and station, or
 *  height above a fin's foot. A value; holds across edits, as long as the surface of that id is there. */
typedef struct {
  char *id;                  /* of the surface; NULL: none is there */
  bool port;                 /* the hand is on the port half */
  bool laid_down;            /* a fin on its side, over the plan's view of it */
  bool upright;              /* a fin in the side view, where places are x and z */
  double lift;               /* mm: what heights begin with, where they are seen */
  double shortening;         /* of the surface's stations against the plan's, where a panel drawn flat was shortened; 0 none */
} HingeSeat;

/** The surface at a place of the sheet, mm: within it, else no further than `reach` from its outline. Over a view that shows a fin, or the
 *  body from the side, the fin there; else what is selected, what was traced in the view in hand, what lies uppermost.
 *  ground   of the plan beneath; NULL: none is seen */
HingeSeat hinge_seat_at      (const Aeroplane *aeroplane, const Selection *selection, const TraceGround *ground, Point place, double reach);
/** The fin at a place of the side view, x and z, mm. */
HingeSeat hinge_seat_upright (const Aeroplane *aeroplane, Point place, double reach);
void      hinge_seat_clear   (HingeSeat *self);      /* frees the id; again is fine */

const Surface *hinge_seat_surface (const HingeSeat *self, const Aeroplane *aeroplane);     /* NULL when it is gone; lent */
Point     hinge_seat_own     (const HingeSeat *self, Point place);
/** The same of what is printed there: of a panel that was drawn flat. */
Point     hinge_seat_printed (const HingeSeat *self, Point place);
Point     hinge_seat_place   (const HingeSeat *self, Point own);      /* from the surface's own back to the sheet's, mm */
