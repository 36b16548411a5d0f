#pragma once
#include "plan/line-onward.h"
#include "plan/line-steps.h"

/* Private to the plan room. */

/** A line as it was followed by some clicks; everything lent. */
typedef struct {
  const Ink *ink;
  const Point *clicks;
  size_t click_count;
  const FollowOptions *options;
  const FollowedLine *line;
} LedWay;

/** Follows it again, led along the line that goes on at a step; elsewhere it is held where it was.
 *  made      set on success, and without places where the clicks do not lie along the line in their order
 *  returns   what follow_cornered returns */
CoreStatus follow_led (const LedWay *way, const LineStep *step, const LineOnward *onward, FollowedLine *made);
