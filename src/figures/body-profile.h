#pragma once
#include "document/piece.h"

/** How wide and how high a body is inside, along its length: what can stand in it. Millimetres. */
typedef struct BodyProfile BodyProfile;

/** Outlines as they are; of one not given, or open, nothing is known. Closed straight from last to first. */
BodyProfile *body_profile_new  (const Body *body);
void         body_profile_free (BodyProfile *self);           /* NULL is fine */

/** What is clear over a whole stretch of the body. */
typedef struct {
  double half_width;      /* from the centre line to the side; NAN where no outline from above is known, 0 beyond its ends */
  double bottom, top;     /* z; NAN where no outline from the side is known; top is below bottom beyond its ends */
} BodyClear;

/** The least width and height between the outlines over [from, to], from <= to, mm aft of the datum, less the body's skin on each side
 *  (body-walls.h). Taken at places half a millimetre apart (of a body over two metres 1/4096 of its length), the stretch rounded outward to them. */
BodyClear body_profile_clear (const BodyProfile *self, double from, double to);
/** Its half_width alone, mm, for who looks along a body at many places. */
double body_profile_clear_half_width (const BodyProfile *self, double from, double to);
/** The same at `count` places (2 or more) from one end of a stretch to the other, each by itself; half_widths in mm, NAN without an outline. */
void   body_profile_clear_half_widths (const BodyProfile *self, double from, double to, size_t count, double half_widths[]);

/** How wide and high the outlines themselves are at x, mm aft of the datum, at the nearest of their places: half the width, and z of bottom
 *  and top. NAN where such an outline is not known, or does not reach. */
void body_profile_at (const BodyProfile *self, double x, double *half_width, double *bottom, double *top);

/** The foremost and aftmost x of the outlines known; false where there is none. In mm aft of the datum. */
bool body_profile_ends (const BodyProfile *self, double *from, double *to);
