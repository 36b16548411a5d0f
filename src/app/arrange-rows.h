#pragma once
#include "app/group.h"
#include "figures/arranging.h"

/** What the Arrange page says, as rows. */

/** A tick for a part that may move: its name, and where it may be. */
GtkWidget *arrange_rows_mover (const Aeroplane *aeroplane, const Part *part);
/** Adds, where there are several, the row that tells offer `shown` (from 0) from the first; of the first, from the second. */
void       arrange_rows_add_difference (TrammelGroup *group, const Arranging *arranging, const Arrangements *found, size_t shown, Units units);
/** Adds the rows of one arrangement: ballast, margin now and then, each part's way, each lead. */
void       arrange_rows_add   (TrammelGroup *group, const Arranging *arranging, const Arrangement *found, ArrangeStatus status,
                               const Figures *now, const Figures *then, Units units);
/** Adds a row for each part that can do something for the balance by itself, the most useful first, and one for what two do, or is missing.
 *  Returns how many rows. */
size_t     arrange_rows_add_movers (TrammelGroup *group, const Figures *figures, Units units);
