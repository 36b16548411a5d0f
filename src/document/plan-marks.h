#pragma once
#include "document/piece.h"

/** The marks on a plan that a hand takes hold of: the ends of its known lengths and of its level line, the corners of its rectangle, the
 *  places of its straight lines, both ends of each view's axis, and where a view stands on the aeroplane. */
typedef enum {
  PLAN_MARK_NONE, PLAN_MARK_LENGTH, PLAN_MARK_LEVEL, PLAN_MARK_CORNER, PLAN_MARK_STRAIGHT, PLAN_MARK_AXIS,
  PLAN_MARK_STANDS      /* no place in the picture: the view's x */
} PlanMarkKind;

typedef struct {
  PlanMarkKind kind;
  size_t index;         /* of the length, the straight line, the view */
  size_t end;           /* 0 and 1; of a rectangle 0 to 3; the place on a straight line */
} PlanMark;

/** How many marks of that kind there are. */
size_t   plan_mark_count (const Plan *plan, PlanMarkKind kind);
/** The one of that number, from 0, in order; number < their count. */
PlanMark plan_mark_nth   (const Plan *plan, PlanMarkKind kind, size_t number);
/** Where it is in the picture, px; false when there is no such mark, or it has no place. */
bool     plan_mark_place (const Plan *plan, PlanMark mark, Point *px);
bool     plan_mark_equal (PlanMark a, PlanMark b);      /* of the same kind, number and end */

/* Fresh copies, the caller's, to be changed before anybody else sees them; NULL when there is no such mark. */

/** With that mark at another place, px; of a length that end is as sure then as it was put (click_sigma, px).
 *  Both in pixels of the file. A new plan; NULL when there is no such mark. */
Plan *plan_with_mark_at  (const Plan *plan, PlanMark mark, Point px, double click_sigma);
/** Without what the mark is of: the whole length, level line, rectangle, straight line or view. */
Plan *plan_without_mark  (const Plan *plan, PlanMark mark);
/** With one more known length. */
Plan *plan_with_length   (const Plan *plan, PlanLength length);
/** With one more line known to be straight through `count` places, px. */
Plan *plan_with_straight (const Plan *plan, const Point places[], size_t count);
/** With one more view; its id, where it has one, is copied. */
Plan *plan_with_view     (const Plan *plan, PlanView view);

/** Whether marks fit another picture of the same sheet. */
typedef enum {
  PLAN_RESCALED_FITS,          /* they are where they belong in it, or there are none */
  PLAN_RESCALED_OTHER_SHAPE,   /* it has another shape: they are where they were, px */
  PLAN_RESCALED_UNKNOWN        /* the size of one of both is not known: likewise */
} PlanRescaled;

/** Readies a plan that nobody else sees yet for another picture of its sheet, of that size, px (NAN: not known): where width and height
 *  are to the old ones as one number, within 1 %, all places in px are scaled by the ratio of the widths. The size that the plan notes stays. */
PlanRescaled plan_rescale (Plan *plan, double width, double height);
