#pragma once
#include "geometry/outline.h"
#include "plan/axis-frame.h"
#include "plan/follow.h"

typedef struct {
  const Mapping *mapping;    /* lent */
  AxisFrame frame;           /* of the view that the outline was traced in */
  const Outline *outline;    /* in the view's own axes, mm; lent */
  bool half;                 /* it ends on the axis, whose own line is not to be taken for it */
  InkGoesOn goes_on;         /* may be NULL */
  void *data;
} CompareRequest;

/** A place of the outline, and of the printed line beside it; mm in the view's own axes. */
typedef struct { Point drawn, printed; double off; } CompareSpot;

/** How an outline lies over the line that it was drawn from. */
typedef struct {
  CompareSpot *spots;        /* about a millimetre apart along the outline, where a line is to be seen */
  size_t count;
  double within;             /* mm: nineteen places of twenty lie so near; NAN without any */
  double most;               /* mm; NAN likewise */
  Point most_at;             /* on the outline */
  double seen;               /* the share of its length along which a line is to be seen, 0 to 1 */
} Comparison;

/** Follows the printed line along the outline, within 2 mm of it, and measures how far they are apart.
 *  made     set on success; comparison_clear gives it back
 *  returns  what follow_line returns; CORE_OUT_OF_RANGE where the outline lies nowhere in the picture */
CoreStatus compare_outline   (const Ink *ink, const CompareRequest *request, Comparison *made);
void       comparison_clear  (Comparison *self);      /* frees its spots; again is fine */
