#include "app/grip-kind.h"
#include "trammel-config.h"
#include <glib/gi18n-lib.h>
#include "app/length-limit.h"
#include "app/outline-owner.h"

static const GripKind *
grip_kind_of (HitKind kind)
{
  switch (kind) {
    case HIT_NODE:      return &grip_node_kind;
    case HIT_HANDLE:    return &grip_handle_kind;
    case HIT_SEGMENT:
    case HIT_SURFACE:
    case HIT_BODY:
    case HIT_PART:      return &grip_piece_kind;
    case HIT_MARK:      return &grip_mark_kind;
    case HIT_RAIL_END:  return &grip_rail_kind;
    case HIT_HINGE_END: return &grip_hinge_kind;
    case HIT_LEAD:
    case HIT_LEAD_POINT: return &grip_lead_kind;
    default:            return NULL;
  }
}

/* A thing that is not selected is pulled alone. */
static Selection
grip_selection (const Hit *hit, const Selection *selection, bool side)
{
  if (hit->kind == HIT_NODE || hit->kind == HIT_LEAD_POINT)
    return selection_has_node (selection, hit->id, side, hit->index) ? selection_copy (selection)
                                                                     : selection_of_node (hit->id, side, hit->index);
  if (hit->id != NULL && !selection_has (selection, hit->id))
    return selection_of (hit->id);
  return selection_copy (selection);
}

Grip *
grip_new (const Aeroplane *aeroplane, const Hit *hit, const Selection *selection, bool side)
{
  const GripKind *kind = grip_kind_of (hit->kind);
  Grip *self;

  /* A lead's bends are places in the plan: from the side it is only chosen. */
  if (kind == NULL || (side && kind == &grip_lead_kind))
    return NULL;
  self = g_new0 (Grip, 1);
  self->kind = kind;
  self->start = aeroplane_ref (aeroplane);
  self->selection = grip_selection (hit, selection, side);
  self->id = g_strdup (hit->id);
  self->control = g_strdup (hit->control);
  self->index = hit->kind == HIT_LEAD ? SNAP_WHOLE : hit->index;
  self->spot = hit->place;
  self->handle = hit->side;
  self->side = side;
  self->port = hit->port && hit->kind != HIT_PART && hit->kind != HIT_RAIL_END;
  if (kind == &grip_node_kind || kind == &grip_handle_kind || kind == &grip_hinge_kind)
    self->lift = outline_owner_lift (aeroplane, hit->id);
  return self;
}

Grip *
grip_new_for_selection (const Aeroplane *aeroplane, const Selection *selection)
{
  Hit hit = { .kind = HIT_NOTHING };

  if (selection->mark >= 0)
    hit = (Hit) { .kind = HIT_MARK, .index = (size_t) selection->mark };
  else if (selection->ids == NULL || selection->ids[0] == NULL)
    return NULL;
  else if (aeroplane_lead_by_id (aeroplane, selection->ids[0]) != NULL && selection->node_count == 0)
    return NULL;
  else if (selection->node_count > 0 && aeroplane_lead_by_id (aeroplane, selection->ids[0]) != NULL)
    hit = (Hit) { .kind = HIT_LEAD_POINT, .id = selection->ids[0], .index = selection->nodes[0] };
  else if (selection->node_count > 0)
    hit = (Hit) { .kind = HIT_NODE, .id = selection->ids[0], .index = selection->nodes[0] };
  else if (selection->control != NULL)
    hit = (Hit) { .kind = HIT_HINGE_END, .id = selection->ids[0], .control = selection->control, .index = 2 };
  else
    hit = (Hit) { .kind = aeroplane_part_by_id (aeroplane, selection->ids[0]) != NULL ? HIT_PART : HIT_SURFACE, .id = selection->ids[0] };
  return grip_new (aeroplane, &hit, selection, selection->side);
}

void
grip_free (Grip *self)
{
  if (self == NULL)
    return;
  aeroplane_unref (self->start);
  selection_clear (&self->selection);
  g_free (self->id);
  g_free (self->control);
  g_free (self);
}

const Aeroplane *
grip_start (const Grip *self)
{
  return self->start;
}

static Point
grip_to_sheet (const Grip *self, Point own)
{
  return (Point) { own.x, self->port ? -own.y : own.y + self->lift };
}

static Point
grip_to_own (const Grip *self, Point sheet)
{
  return (Point) { sheet.x, self->port ? -sheet.y : sheet.y - self->lift };
}

Point
grip_place (const Grip *self)
{
  return grip_place_in (self, self->start);
}

Point
grip_place_in (const Grip *self, const Aeroplane *now)
{
  return grip_to_sheet (self, self->kind->place (self, now));
}

Aeroplane *
grip_moved (const Grip *self, Point place, bool loose)
{
  return self->kind->moved (self, grip_to_own (self, place), loose);
}

size_t
grip_rows (const Grip *self, const Figures *figures, GripRow rows[GRIP_ROWS])
{
  return self->kind->rows (self, figures, rows);
}

Aeroplane *
grip_with_row (const Grip *self, const Aeroplane *now, size_t row, double value)
{
  return self->kind->with_row (self, now, row, value);
}

char *
grip_label (const Grip *self)
{
  return self->kind->label (self);
}

const char *
grip_hint (const Grip *self)
{
  const Part *part = self->kind == &grip_piece_kind ? aeroplane_part_by_id (self->start, self->id) : NULL;

  if (part != NULL && part->has_rail)
    return _("Drag the part along its rail. Ctrl takes it off, Esc puts it back.");
  return _(self->kind->hint);
}

Box
grip_box (const Grip *self, const Aeroplane *now)
{
  const Point place = grip_place_in (self, now);

  return self->kind->box != NULL ? self->kind->box (self, now) : (Box) { place, place };
}

const char *
grip_id (const Grip *self)
{
  return self->id;
}

size_t
grip_index (const Grip *self)
{
  return self->kind == &grip_node_kind ? self->index : SNAP_WHOLE;
}

bool
grip_is_of_side (const Grip *self)
{
  return self->side;
}

size_t
grip_add_row (GripRow rows[GRIP_ROWS], size_t count, const char *name, double mm, bool typed)
{
  rows[count] = (GripRow) { .name = name, .value = mm, .typed = typed, .least = -LENGTH_LIMIT_MM };
  return count + 1;
}

size_t
grip_add_off_centre (GripRow rows[GRIP_ROWS], size_t count, double mm)
{
  rows[count] = (GripRow) { .name = _("Off centre"), .value = mm, .across = true, .typed = true, .least = -LENGTH_LIMIT_MM };
  return count + 1;
}

size_t
grip_add_across (GripRow rows[GRIP_ROWS], const Grip *self, double mm)
{
  rows[0] = (GripRow) { .name = grip_across_name (self), .value = mm, .typed = true, .least = fmax (grip_floor (self), -LENGTH_LIMIT_MM) };
  return 1;
}

size_t
grip_add_margin (GripRow rows[GRIP_ROWS], size_t count, const Figures *figures)
{
  rows[count] = (GripRow) { .name = _("Static margin"), .value = figures->balance.static_margin_percent, .percent = true };
  return count + 1;
}
