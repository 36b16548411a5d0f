#pragma once
#include <stdbool.h>
#include <stddef.h>
#include "plan/ink.h"

/* Private to the plan room. */

/** The ink along a bent strip of the picture, laid out straight: columns along its spine, rows across it. Row 0 lies `half` rows to the
 *  left of the spine (seen along it, y down: towards smaller y when it runs in x), row `half` on it. */
typedef struct {
  size_t columns;
  int half;                   /* rows on each side */
  double pitch;               /* px from row to row; columns are 1 px apart */
  Point *spine, *across;      /* each column's middle, px, and its unit vector towards greater rows */
  float *ink;                 /* columns × rows, 0 to 255 */
} Corridor;

/** Rows of a corridor. */
static inline int corridor_rows (const Corridor *self) { return 2 * self->half + 1; }

/** The place in the picture, px, of a column and a (broken) row, which have no unit. */
static inline Point
corridor_place (const Corridor *self, size_t column, double row)
{
  return point_add (self->spine[column], point_scale (self->across[column], (row - self->half) * self->pitch));
}

/** Lays a corridor along a run of places, px, two at least and not all the same, `half_width` px to each side.
 *  reach    columns that its directions are averaged over, each way
 *  returns  CORE_OK; CORE_TOO_FEW_NODES for a run without length; CORE_NO_MEMORY
 *  pitch    pixels from row to row, > 0 */
CoreStatus corridor_along (const Ink *ink, const Point run[], size_t count, double half_width, double pitch, int reach, Corridor *made);
void       corridor_clear (Corridor *self);      /* frees what it holds; again is fine */

/** The first column whose middle is nearest to that place, px. */
size_t corridor_nearest (const Corridor *self, Point place);
