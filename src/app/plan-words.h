#pragma once
#include "app/plan-store.h"

/* What is said of a plan, for people, each a new string. */

/** How large its sheet is, where that is known: "594 × 420 mm"; else how large its picture: "3508 × 2480 px". */
char *plan_words_size   (TrammelPlanStore *store, Units units);
/** How many mm a pixel is, to four digits: "0.08467", "0.08467 × 0.08472" where across and along differ; "not known". */
char *plan_words_scale  (TrammelPlanStore *store);
/** A known length of the plan in hand: "320 mm". */
char *plan_words_length (TrammelPlanStore *store, size_t index, Units units);
/** The same, and where it disagrees with the others by how much: "320 mm, 0.8 % off". */
char *plan_words_length_off (TrammelPlanStore *store, size_t index, Units units);
/** The views that can be shown, the whole sheet first; as many as the plan has, and one. NULL ends them. */
char **plan_words_views (const Plan *plan);
