#pragma once
#include "drawing/plan-placing.h"

/** Where a plan lies, reckoned once for each of its values and not once for each frame; begins as all zeros. */
typedef struct {
  Plan *of;                   /* with its picture's size; NULL: nothing yet */
  const Plan *asked;          /* whose value that is */
  bool sound, is_true;        /* there is a mapping; by something that is known */
  Mapping mapping;
  MappingMisfit misfit;
} PlanReckoned;

/** Holds for that plan from now on. A plan that was never opened gets its size from its picture: width and height, pixels, or NAN. */
void plan_reckon         (PlanReckoned *self, const Plan *plan, double width, double height);
/** Where it lies by that view, NULL: upright; false when that cannot be said. */
bool plan_reckoned_place (const PlanReckoned *self, const PlanView *view, Placing *placing);
void plan_reckoned_clear (PlanReckoned *self);      /* gives back what it holds; again is fine */
