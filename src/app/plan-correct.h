#pragma once
#include "document/changes.h"

/** Corrects a plan and carries along, in one step, all that was traced in its views: the same places in the picture, where they lie now.
 *  Every edit of what is known of a plan, and of its views, goes through this.
 *  plan_id   of the plan that `takes`, taken, stands for
 *  returns   a new reference; NULL when there is no such plan, when nothing printed looks like what is known of it, or when
 *            something traced cannot go where it would have to */
Aeroplane *plan_corrected (const Aeroplane *self, const char *plan_id, Plan *takes);
