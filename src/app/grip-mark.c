#include "app/grip-kind.h"
#include "trammel-config.h"
#include <glib/gi18n-lib.h>
#include "document/changes.h"

static const MarkFigures *
grip_mark_figures (const Grip *self, const Figures *figures)
{
  return self->index < figures->balance.mark_count ? &figures->balance.marks[self->index] : NULL;
}

static Point
grip_mark_place (const Grip *self, const Aeroplane *now)
{
  const Mark *mark = self->index < aeroplane_count (now, PIECE_MARK) ? aeroplane_mark (now, self->index) : NULL;

  return (Point) { 0, mark != NULL ? mark->station : NAN };
}

static Aeroplane *
grip_mark_moved (const Grip *self, Point place, bool loose)
{
  return change_mark_station (self->start, self->index, fmax (place.y, 0));
}

static size_t
grip_mark_rows (const Grip *self, const Figures *figures, GripRow rows[GRIP_ROWS])
{
  const MarkFigures *mark = grip_mark_figures (self, figures);
  size_t count = grip_add_row (rows, 0, _("Station"), mark != NULL ? mark->station_mm : NAN, true);

  count = grip_add_row (rows, count, _("Aft of leading edge"), mark != NULL ? mark->target_mm : NAN, false);
  return grip_add_margin (rows, count, figures);
}

static Aeroplane *
grip_mark_with_row (const Grip *self, const Aeroplane *now, size_t row, double value)
{
  return value >= 0 ? change_mark_station (now, self->index, value) : NULL;
}

static char *
grip_mark_label (const Grip *self)
{
  return g_strdup (_("Move Balance Mark"));
}

const GripKind grip_mark_kind = {
  .hint = N_("Drag the mark to the station where the fingers reach the wing. Esc puts it back."),
  .place = grip_mark_place, .moved = grip_mark_moved, .rows = grip_mark_rows, .with_row = grip_mark_with_row, .label = grip_mark_label,
};
