#include "app/grip-kind.h"
#include "trammel-config.h"
#include <glib/gi18n-lib.h>
#include "app/lead-edit.h"
#include "figures/lead-need.h"

/* Places on a lead's way. One that is only just pulled out of its line has no number at the start: it begins at the spot. */

static bool
is_fresh (const Grip *self)
{
  return self->index == SNAP_WHOLE;
}

/* The number of the place that is held, in the aeroplane of which it moves, `*start`, the caller's reference; false when it is gone. */
static bool
grip_lead_start (const Grip *self, Aeroplane **start, size_t *index)
{
  *index = self->index;
  *start = is_fresh (self) ? lead_edit_added (self->start, self->id, self->spot, index) : aeroplane_ref (self->start);
  return *start != NULL;
}

static bool
grip_lead_point (const Grip *self, const Aeroplane *now, LeadPoint *point)
{
  g_autoptr (Aeroplane) start = NULL;
  size_t index;

  return grip_lead_start (self, &start, &index) && lead_edit_point (now == self->start ? start : now, self->id, index, point);
}

static Point
grip_lead_place (const Grip *self, const Aeroplane *now)
{
  LeadPoint point;

  return grip_lead_point (self, now, &point) ? point.place : (Point) { NAN, NAN };
}

/* All that are selected go along; each is where it was, and as much further. */
static Aeroplane *
grip_lead_moved (const Grip *self, Point place, bool loose)
{
  const Point by = point_sub (place, grip_lead_place (self, self->start));
  Aeroplane *now, *next;
  size_t index;
  LeadPoint point;

  if (!grip_lead_start (self, &now, &index))
    return NULL;
  for (size_t i = 0; i < (is_fresh (self) ? 1 : self->selection.node_count); i++) {
    const size_t at = is_fresh (self) ? index : self->selection.nodes[i];

    next = lead_edit_point (now, self->id, at, &point) ? lead_edit_moved (now, self->id, at, point_add (point.place, by)) : NULL;
    if (next == NULL)
      continue;
    aeroplane_unref (now);
    now = next;
  }
  return now;
}

static size_t
grip_lead_rows (const Grip *self, const Figures *figures, GripRow rows[GRIP_ROWS])
{
  const Lead *lead = aeroplane_lead_by_id (figures->aeroplane, self->id);
  LeadPoint point = { .place = { NAN, NAN } };
  size_t count;

  grip_lead_point (self, figures->aeroplane, &point);
  count = grip_add_row (rows, 0, _("Aft of datum"), point.place.x, true);
  count = grip_add_off_centre (rows, count, point.place.y);
  if (lead != NULL)
    count = grip_add_row (rows, count, _("Lead needs"), lead_need_of (figures->aeroplane, lead, point.leg).needed, false);
  return grip_add_margin (rows, count, figures);
}

static Aeroplane *
grip_lead_with_row (const Grip *self, const Aeroplane *now, size_t row, double value)
{
  g_autoptr (Aeroplane) start = NULL;
  LeadPoint point;
  size_t index;

  if (!grip_lead_start (self, &start, &index) || !grip_lead_point (self, now, &point))
    return NULL;
  *(row == 0 ? &point.place.x : &point.place.y) = value;
  return lead_edit_moved (now == self->start ? start : now, self->id, index, point.place);
}

static char *
grip_lead_label (const Grip *self)
{
  LeadPoint point;

  if (is_fresh (self))
    return g_strdup (_("Bend Lead"));
  return g_strdup (grip_lead_point (self, self->start, &point) && point.joint ? _("Move Joint") : _("Move Bend"));
}

const GripKind grip_lead_kind = {
  .hint = N_("Drag where the lead bends or its legs meet. Shift holds the direction, Ctrl snaps to nothing, Esc puts it back."),
  .place = grip_lead_place, .moved = grip_lead_moved, .rows = grip_lead_rows, .with_row = grip_lead_with_row, .label = grip_lead_label,
};
