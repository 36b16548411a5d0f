#pragma once
#include "plan/follow.h"

/** How well a stretch of a printed line was seen. */
typedef struct {
  double lost;        /* the share of its length along which no line is to be seen, 0 to 1 */
  double sigma;       /* px: one standard deviation of its places across the line; NAN where hardly any was seen */
} Sureness;

/** Of the places `from` to `to` (the last one included) of a line as it was followed.
 *  px_per_mm  about
 *  method     each place against the middle of those a millimetre before and behind; a bend of 20 mm radius counts for 0.02 mm
 *  source     common practice, no source */
Sureness sureness_of (const FollowedLine *line, size_t from, size_t to, double px_per_mm);

/** The first place of the line nearest to that one, px. */
size_t followed_line_nearest (const FollowedLine *line, Point place);

/** How far the line, where it is to be seen among the places `from` to `to`, passes `place`, px: across its way there, so that a gap which
 *  it crosses is no miss. NAN where it is nowhere seen. In pixels, >= 0; px_per_mm is pixels a mm. */
double followed_line_missed (const FollowedLine *line, size_t from, size_t to, Point place, double px_per_mm);
