#include "app/grip-kind.h"
#include "trammel-config.h"
#include <glib/gi18n-lib.h>
#include "document/changes.h"
#include "document/hinge.h"

/* index 0 is the inner end, 1 the outer one, 2 the whole line, held by its inner end. */

static const Control *
grip_hinge_control (const Grip *self, const Aeroplane *now)
{
  return aeroplane_control_by_id (now, self->id, self->control);
}

static Point
grip_hinge_place (const Grip *self, const Aeroplane *now)
{
  const Control *control = grip_hinge_control (self, now);

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

/* Beyond the surface's edges the end stays at the edge. */
static Aeroplane *
grip_hinge_set (const Grip *self, const Aeroplane *now, Point to)
{
  const Control *old = grip_hinge_control (self, now);
  Control next;

  if (old == NULL)
    return NULL;
  next = *old;
  grip_hinge_put (&next, self->index, self->index == 2 ? to : hinge_onto (aeroplane_surface_by_id (now, self->id), to));
  return change_control (now, self->id, self->control, &next);
}

static Aeroplane *
grip_hinge_moved (const Grip *self, Point place, bool loose)
{
  return grip_hinge_set (self, self->start, place);
}

static double
grip_hinge_share (const Grip *self, const Figures *figures)
{
  const ControlFigures *control = figures_of_control (figures, self->id, self->control);

  return control != NULL ? control->area_share_percent : NAN;
}

static size_t
grip_hinge_rows (const Grip *self, const Figures *figures, GripRow rows[GRIP_ROWS])
{
  const Point place = grip_hinge_place (self, figures->aeroplane);
  const Control *control = grip_hinge_control (self, figures->aeroplane);
  const Surface *surface = aeroplane_surface_by_id (figures->aeroplane, self->id);
  size_t count = grip_add_row (rows, 0, grip_across_name (self), place.y, true);

  count = grip_add_row (rows, count, _("Aft of datum"), place.x, true);
  count = grip_add_row (rows, count, _("Chord"), control != NULL ? hinge_chord (surface, control, self->index == 1) : NAN, true);
  rows[count - 1].least = 0;
  rows[count] = (GripRow) { .name = _("Share of area"), .value = grip_hinge_share (self, figures), .percent = true };
  return count + 1;
}

/* A typed value is taken as it is, or refused. */
static Aeroplane *
grip_hinge_with_row (const Grip *self, const Aeroplane *now, size_t row, double value)
{
  const Control *old = grip_hinge_control (self, now);
  const Surface *surface = aeroplane_surface_by_id (now, self->id);
  Point place = grip_hinge_place (self, now);
  Control next;

  if (old == NULL)
    return NULL;
  if (row == 0)
    place.y = value;
  else
    place.x = row == 1 ? value : place.x + hinge_chord (surface, old, self->index == 1) - value;
  next = *old;
  if ((self->index == 1 && place.y < next.inner) || (self->index == 0 && place.y > next.outer))
    return NULL;
  grip_hinge_put (&next, self->index, place);
  return change_control (now, self->id, self->control, &next);
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
