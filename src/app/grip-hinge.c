#include "app/grip-kind.h"
#include "trammel-config.h"
#include <glib/gi18n-lib.h>

/* index 0 is the inner end, 1 the outer one, 2 the whole line, held by its inner end. */

static Control *
grip_hinge_find (const Surface *surface, const char *control)
{
  for (size_t i = 0; surface != NULL && i < surface->control_count; i++)
    if (g_strcmp0 (surface->controls[i].id, control) == 0)
      return &surface->controls[i];
  return NULL;
}

static Point
grip_hinge_place (const Grip *self, const Aeroplane *now)
{
  const Control *control = grip_hinge_find (aeroplane_surface_by_id (now, self->id), self->control);

  if (control == NULL)
    return (Point) { NAN, NAN };
  return self->index == 1 ? (Point) { control->hinge_outer_x, control->outer } : (Point) { control->hinge_inner_x, control->inner };
}

/* The inner end stays inboard of the outer one. */
static void
grip_hinge_put (Control *control, size_t end, Point to)
{
  if (end == 2) {
    control->outer += to.y - control->inner;
    control->hinge_outer_x += to.x - control->hinge_inner_x;
  }
  if (end == 1) {
    control->outer = fmax (to.y, control->inner);
    control->hinge_outer_x = to.x;
  } else {
    control->inner = fmin (to.y, control->outer);
    control->hinge_inner_x = to.x;
  }
}

static Aeroplane *
grip_hinge_set (const Grip *self, const Aeroplane *now, Point to)
{
  const Surface *old = aeroplane_surface_by_id (now, self->id);
  Surface *surface;

  if (grip_hinge_find (old, self->control) == NULL)
    return NULL;
  surface = (Surface *) piece_dup (&old->piece);
  grip_hinge_put (grip_hinge_find (surface, self->control), self->index, (Point) { to.x, fmax (to.y, 0) });
  return aeroplane_with_replaced (now, &old->piece, &surface->piece);
}

static Aeroplane *
grip_hinge_moved (const Grip *self, Point place, bool loose)
{
  return grip_hinge_set (self, self->start, place);
}

static size_t
grip_hinge_rows (const Grip *self, const Figures *figures, GripRow rows[GRIP_ROWS])
{
  const Point place = grip_hinge_place (self, figures->aeroplane);
  size_t count = grip_add_row (rows, 0, _("Station"), place.y, true);

  count = grip_add_row (rows, count, _("Aft of datum"), place.x, true);
  return grip_add_margin (rows, count, figures);
}

static Aeroplane *
grip_hinge_with_row (const Grip *self, const Aeroplane *now, size_t row, double value)
{
  const Point place = grip_hinge_place (self, now);

  return grip_hinge_set (self, now, row == 0 ? (Point) { place.x, value } : (Point) { value, place.y });
}

static char *
grip_hinge_label (const Grip *self)
{
  return g_strdup (_("Move Hinge Line"));
}

const GripKind grip_hinge_kind = {
  .hint = N_("Drag the end of the hinge line. Ctrl snaps to nothing, Esc puts it back."),
  .place = grip_hinge_place, .moved = grip_hinge_moved, .rows = grip_hinge_rows, .with_row = grip_hinge_with_row, .label = grip_hinge_label,
};
