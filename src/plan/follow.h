#pragma once
#include <stdbool.h>
#include <stddef.h>
#include "plan/ink.h"

/** A printed line as it was followed: a place for each pixel of its length, on the middle of the line. */
typedef struct {
  Point *places;       /* px */
  double *weights;     /* 0 where there is no line (a gap, lettering) to 1 for a line as usual */
  size_t count;
  double half_width;   /* px: half the line's width */
} FollowedLine;

typedef struct {
  double px_per_mm;    /* about; the corridor's width and the length of letters follow it */
  double click_sigma;  /* px: how far off the line a click usually is, one standard deviation */
  bool holds_on;       /* keeps to the present line: the last place clicked says only about how far, and turns cost three times as much */
  bool stands_alone;   /* no line as long runs beside it: where few clicks leave it far aside, what is seen there is it */
  InkGoesOn goes_on;   /* may be NULL */
  void *data;
} FollowOptions;

enum { FOLLOW_MOST_CLICKS = 2000 };

/** Follows the printed line that runs by the places clicked, in their order, from the first to the last. The clicks need not be on the
 *  line, nor at its corners; between two of them the line may bend, be broken, carry lettering, be crossed by others and run beside one
 *  as dark.
 *  clicks    px, two at least and FOLLOW_MOST_CLICKS at most
 *  made      set on success; followed_line_clear gives it back
 *  returns   CORE_OK; CORE_TOO_FEW_NODES; CORE_TOO_MANY; CORE_NOT_FINITE; CORE_OUT_OF_RANGE for a click further beyond the picture than
 *            it is large, or a scale at which no line is to be seen (0.2 to 250 px a mm is understood); CORE_NO_MEMORY; CORE_CANCELLED
 *  method    a smooth run through the clicks; the least-cost path in a corridor along it; again in a narrower corridor along that path;
 *            the line's middle across it by a parabola
 *  cost      about 40 µs a millimetre of line at 8 px a mm */
CoreStatus follow_line (const Ink *ink, const Point clicks[], size_t count, const FollowOptions *options, FollowedLine *made);
void       followed_line_clear (FollowedLine *self);      /* frees its places and weights; again is fine */
