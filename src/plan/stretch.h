#pragma once
#include "plan/follow.h"
#include "plan/mapping.h"

enum { STRETCH_BEHIND = 2 };

/** One stretch of a trace: from a place on the line to the pointer, as it is shown before the click; or between two clicks. */
typedef struct {
  const Mapping *mapping;    /* lent */
  Point behind[STRETCH_BEHIND];        /* the file's px: clicks before `from`, the furthest first, or places on its line: it goes on as it comes */
  size_t behind_count;
  Point from, to;            /* the file's px */
  Point ahead;               /* the file's px: where it goes on behind `to`, as clicked */
  bool has_ahead;
  double click_sigma;        /* the file's px, one standard deviation */
  bool holds_on;             /* keeps to the present line: `to` says only how far */
  InkGoesOn goes_on;         /* may be NULL */
  void *data;
} StretchRequest;

typedef struct {
  Point *places;             /* the file's px, from the line beside `from` to the line beside `to` */
  size_t count;
  double lost;               /* the share of its length along which no line is to be seen, 0 to 1 */
  double sigma;              /* mm: one standard deviation of its places across the line; NAN where hardly any was seen */
  double missed;             /* mm: how far the line that was seen passes `to`, across it; NAN where none was seen */
} Stretch;

/** Follows the printed line along one stretch. A long one, or one with a long one before or behind it, is looked at more coarsely.
 *  made     set on success; stretch_clear gives it back
 *  returns  what follow_line returns; CORE_OUT_OF_RANGE where it lies beyond the picture or nowhere on the paper
 *  cost     at 10 px a mm about 10 ms to 30 mm, 15 ms to 280 mm, 20 ms where it goes over; as much again for each place behind */
CoreStatus stretch_follow (const Ink *ink, const StretchRequest *request, Stretch *made);
void       stretch_clear  (Stretch *self);      /* frees its places; again is fine */
