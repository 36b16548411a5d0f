#pragma once
#include <stdbool.h>
#include "document/piece.h"
#include "drawing/look.h"

/** A plan that is worked on, so that what is traced must be compared with its print: each outline is a hairline over the print it was
 *  traced from, through which that print is seen, and all else that is drawn fades. Places on the sheet are by the scene's plan. */
typedef struct {
  const Plan *plan;          /* the one that is shown; lent */
  const char *view;          /* the id of its view in hand, lent; NULL: none */
  bool bare;                 /* for now nothing but the plan is to be seen */
} SheetPrint;

/** The look of what is in the way of the print: every colour all but gone, every line a hairline. */
Look sheet_print_faded_look (const Look *look);
