#pragma once
#include <gio/gio.h>
#include "figures/arranging.h"

/** An arrangement looked for away from the main thread. */
typedef struct ArrangeWork ArrangeWork;

enum { ARRANGE_OFFERS = 3 };
/** What came of it: the offers' figures, as many as were found, best first. Lent. */
typedef struct {
  const Arranging *arranging;
  const ArrangingAnswer *answer;
  Figures *offers[ARRANGE_OFFERS];
} ArrangeResult;
/** In the main thread, once; not when it was stopped. */
typedef void (*ArrangeDone) (const ArrangeResult *result, gpointer data);
/** In the main thread now and then, the share done, 0 to 1. */
typedef void (*ArrangeProgress) (double done, gpointer data);

/** Begins; takes the question. The answer is to be given up with arrange_work_free before what `data` points to goes. */
ArrangeWork *arrange_work_new  (Arranging *takes, ArrangeDone done, ArrangeProgress progress, gpointer data);
/** Stops it where it is under way, frees what it found. NULL is fine. */
void         arrange_work_free (ArrangeWork *self);
