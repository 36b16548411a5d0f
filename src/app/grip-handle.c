#include "app/grip-kind.h"
#include "trammel-config.h"
#include <glib/gi18n-lib.h>
#include "app/outline-owner.h"


static Point
grip_handle_place (const Grip *self, const Aeroplane *now)
{
  const Outline *outline = grip_outline (self, now);
  Point place = { NAN, NAN };

  if (outline != NULL && self->index < outline_node_count (outline))
    outline_handle (outline, self->index, self->handle, &place);
  return place;
}

static Aeroplane *
grip_handle_set (const Grip *self, const Aeroplane *now, Point place)
{
  Outline *made = NULL;

  if (outline_with_handle_at (grip_outline (self, now), self->index, self->handle, place, &made) != CORE_OK)
    return NULL;
  /* The handle across a smooth node turns with this one, and must not cross either. */
  made = grip_lifted (self, made, self->index);
  if (!grip_stays_on_its_half (self, made)) {
    outline_unref (made);
    return NULL;
  }
  return outline_owner_with (now, self->id, self->side, made);
}

static Aeroplane *
grip_handle_moved (const Grip *self, Point place, bool loose)
{
  return grip_handle_set (self, self->start, (Point) { place.x, fmax (place.y, grip_floor (self)) });
}

static size_t
grip_handle_rows (const Grip *self, const Figures *figures, GripRow rows[GRIP_ROWS])
{
  const Point place = grip_handle_place (self, figures->aeroplane);
  size_t count = grip_add_across (rows, self, place.y);

  count = grip_add_row (rows, count, _("Aft of datum"), place.x, true);
  return grip_add_margin (rows, count, figures);
}

static Aeroplane *
grip_handle_with_row (const Grip *self, const Aeroplane *now, size_t row, double value)
{
  Point to;

  if (grip_outline (self, now) == NULL)
    return NULL;
  to = grip_handle_place (self, now);
  if (row == 0)
    to.y = value;
  else
    to.x = value;
  if (to.y < grip_floor (self))
    return NULL;
  return grip_handle_set (self, now, to);
}

static char *
grip_handle_label (const Grip *self)
{
  return g_strdup (_("Move Handle"));
}

const GripKind grip_handle_kind = {
  .hint = N_("Drag the handle. Shift holds the direction, Ctrl snaps to nothing, Esc puts it back."),
  .place = grip_handle_place, .moved = grip_handle_moved, .rows = grip_handle_rows, .with_row = grip_handle_with_row, .label = grip_handle_label,
};
