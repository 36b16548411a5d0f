#pragma once
#include "app/plan-loading.h"

/** What is wrong with a plan's picture, a whole sentence for people, translated, a new string; NULL: nothing is. */
char *plan_fault         (const Plan *plan, const PlanPicture *picture);
/** The same of one whose decoding was ended by hand. */
char *plan_fault_stopped (const Plan *plan);
/** What a plan is called: its name, else its file's, else a word for any; a new string. */
char *plan_title         (const Plan *plan);
