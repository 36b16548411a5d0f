#include "app/grip-kind.h"
#include "trammel-config.h"
#include <glib/gi18n-lib.h>
#include "document/changes.h"

/* index 0 is the forward end, 1 the aft one. */

static Point
grip_rail_place (const Grip *self, const Aeroplane *now)
{
  const Part *part = aeroplane_part_by_id (now, self->id);

  if (part == NULL)
    return (Point) { NAN, NAN };
  return (Point) { self->index == 0 ? part->rail_from : part->rail_to, self->side ? part->z : part->y };
}

/* An end stops at the other one: past it, the hand would hold the wrong end. */
static Aeroplane *
grip_rail_set (const Grip *self, const Aeroplane *now, double x)
{
  const Part *part = aeroplane_part_by_id (now, self->id);

  if (part == NULL)
    return NULL;
  return self->index == 0 ? change_part_rail (now, self->id, fmin (x, part->rail_to), part->rail_to)
                          : change_part_rail (now, self->id, part->rail_from, fmax (x, part->rail_from));
}

/* An end keeps the part on its rail, unless it was off it already. */
static Aeroplane *
grip_rail_moved (const Grip *self, Point place, bool loose)
{
  const Part *part = aeroplane_part_by_id (self->start, self->id);
  double x = place.x;

  if (part != NULL && !loose && part->x >= part->rail_from && part->x <= part->rail_to)
    x = self->index == 0 ? fmin (x, part->x) : fmax (x, part->x);
  return grip_rail_set (self, self->start, x);
}

static size_t
grip_rail_rows (const Grip *self, const Figures *figures, GripRow rows[GRIP_ROWS])
{
  const Solution *solution = figures_solution (figures, self->id);
  const char *name = self->index == 0 ? _("Rail from") : _("Rail to");
  size_t count = grip_add_row (rows, 0, name, grip_rail_place (self, figures->aeroplane).x, true);

  count = grip_add_row (rows, count, _("Aim"), solution != NULL ? solution->x_mm : NAN, false);
  return grip_add_margin (rows, count, figures);
}

static Aeroplane *
grip_rail_with_row (const Grip *self, const Aeroplane *now, size_t row, double value)
{
  return grip_rail_set (self, now, value);
}

static char *
grip_rail_label (const Grip *self)
{
  return g_strdup (_("Move Rail End"));
}

const GripKind grip_rail_kind = {
  .hint = N_("Drag the end of the rail. Ctrl snaps to nothing, Esc puts it back."),
  .place = grip_rail_place, .moved = grip_rail_moved, .rows = grip_rail_rows, .with_row = grip_rail_with_row, .label = grip_rail_label,
};
