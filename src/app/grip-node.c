#include "app/grip-kind.h"
#include "trammel-config.h"
#include <glib/gi18n-lib.h>
#include "app/outline-owner.h"

GripAcross
grip_across (const Grip *self)
{
  const Surface *surface = aeroplane_surface_by_id (self->start, self->id);

  if (surface != NULL)
    return surface->role == ROLE_FIN ? ACROSS_HEIGHT : ACROSS_STATION;
  return self->side ? ACROSS_HEIGHT : ACROSS_HALF_WIDTH;
}

const char *
grip_across_name (const Grip *self)
{
  switch (grip_across (self)) {
    case ACROSS_HALF_WIDTH: return _("Half width");
    case ACROSS_HEIGHT:     return _("Height");
    default:                return _("Station");
  }
}

const Outline *
grip_outline (const Grip *self, const Aeroplane *now)
{
  return outline_owner_outline (now, self->id, self->side);
}

static Point
grip_node_place (const Grip *self, const Aeroplane *now)
{
  const Outline *outline = grip_outline (self, now);

  return outline != NULL && self->index < outline_node_count (outline) ? outline_node (outline, self->index) : (Point) { NAN, NAN };
}

/* A node on the centre line stays there; a height goes freely as far as the root. */
static Point
grip_node_kept (const Grip *self, Point from, Point by, bool loose)
{
  Point to = point_add (from, by);

  if (grip_across (self) != ACROSS_HEIGHT && from.y == 0 && !loose)
    to.y = 0;
  to.y = fmax (to.y, grip_floor (self));
  return to;
}

static Aeroplane *
grip_node_moved (const Grip *self, Point place, bool loose)
{
  const Outline *start = grip_outline (self, self->start);
  const Point by = point_sub (place, outline_node (start, self->index));
  Outline *outline = outline_ref (start);

  for (size_t i = 0; i < self->selection.node_count; i++) {
    const size_t node = self->selection.nodes[i];
    Outline *next = NULL;

    if (outline_with_node_at (outline, node, grip_node_kept (self, outline_node (start, node), by, loose), &next) != CORE_OK)
      continue;
    outline_unref (outline);
    outline = grip_lifted (self, next, node);
  }
  if (!grip_stays_on_its_half (self, outline)) {
    outline_unref (outline);
    return NULL;
  }
  return outline_owner_with (self->start, self->id, self->side, outline);
}

static double
grip_chord_there (const Grip *self, const Figures *figures, double station)
{
  const Surface *surface = aeroplane_surface_by_id (figures->aeroplane, self->id);
  StationCut cut;

  if (surface == NULL)
    return NAN;
  if (planform_cut (surface->outline, surface->root_open ? PLANFORM_OPEN : PLANFORM_CARRIED, station, &cut) != CORE_OK)
    return NAN;
  return cut.chord;
}

static size_t
grip_node_rows (const Grip *self, const Figures *figures, GripRow rows[GRIP_ROWS])
{
  const Point node = grip_node_place (self, figures->aeroplane);
  size_t count = grip_add_across (rows, self, node.y);

  count = grip_add_row (rows, count, _("Aft of datum"), node.x, true);
  if (grip_across (self) == ACROSS_STATION)
    count = grip_add_row (rows, count, _("Chord there"), grip_chord_there (self, figures, node.y), false);
  return grip_add_margin (rows, count, figures);
}

static Aeroplane *
grip_node_with_row (const Grip *self, const Aeroplane *now, size_t row, double value)
{
  const Outline *outline = grip_outline (self, now);
  Point to;
  Outline *made = NULL;

  if (outline == NULL)
    return NULL;
  to = grip_node_place (self, now);
  if (row == 0)
    to.y = value;
  else
    to.x = value;
  if (to.y < grip_floor (self) || outline_with_node_at (outline, self->index, to, &made) != CORE_OK)
    return NULL;
  made = grip_lifted (self, made, self->index);
  if (grip_stays_on_its_half (self, made))
    return outline_owner_with (now, self->id, self->side, made);
  outline_unref (made);
  return NULL;
}

static char *
grip_node_label (const Grip *self)
{
  return g_strdup (self->selection.node_count == 1 ? _("Move Node") : _("Move Nodes"));
}

const GripKind grip_node_kind = {
  .hint = N_("Drag the node. Shift holds the direction, Ctrl snaps to nothing, Esc puts it back."),
  .place = grip_node_place, .moved = grip_node_moved, .rows = grip_node_rows, .with_row = grip_node_with_row, .label = grip_node_label,
};
