#pragma once
#include "app/plan-store.h"

/* What is said of a plan, for people, each a new string. */

/** How large its sheet is, where that is known: "594 × 420 mm"; else how large its picture: "3508 × 2480 px". */
char *plan_words_size   (TrammelPlanStore *store, Units units);
/** How many mm a pixel is, to four digits: "0.08467", "0.08467 × 0.08472" where across and along differ; "not known". */
char *plan_words_scale  (TrammelPlanStore *store);
/** A known length of the plan in hand: "320 mm". */
char *plan_words_length (TrammelPlanStore *store, size_t index, Units units);
/** What it makes of a pixel, and where it disagrees by how much: "0.08467 mm a pixel", "0.08467 mm a pixel, 0.8 % off". */
char *plan_words_length_scale (TrammelPlanStore *store, size_t index);
/** The views that can be shown, the whole sheet first; as many as the plan has, and one. NULL ends them. */
char **plan_words_views (const Plan *plan);
