#include "app/grip-kind.h"
#include "trammel-config.h"
#include <glib/gi18n-lib.h>
#include <math.h>
#include "app/piece-moving.h"
#include "document/changes.h"
#include "document/part-class.h"

/* Where a piece stands: x, y, z. A surface by its root's leading edge, a body by its foremost point. */
static void
grip_piece_stand (const Aeroplane *now, const char *id, double stand[3])
{
  const Part *part = aeroplane_part_by_id (now, id);
  const Surface *surface = aeroplane_surface_by_id (now, id);
  const Body *body = aeroplane_body_by_id (now, id);

  stand[0] = stand[1] = stand[2] = 0;
  if (part != NULL) {
    stand[0] = part->x;
    stand[1] = part->y;
    stand[2] = part->z;
  } else if (surface != NULL) {
    stand[0] = outline_node (surface->outline, 0).x;
    stand[2] = surface->z;
  } else if (body != NULL && (body->outline != NULL || body->side_outline != NULL)) {
    stand[0] = outline_bounds (body->outline != NULL ? body->outline : body->side_outline).min.x;
    stand[2] = body->side_outline != NULL ? outline_node (body->side_outline, 0).y : 0;
  }
}

static Point
grip_piece_place (const Grip *self, const Aeroplane *now)
{
  double stand[3];

  grip_piece_stand (now, self->id, stand);
  return (Point) { stand[0], self->side ? stand[2] : stand[1] };
}

/* What is fixed to something else that moves goes along with that already. */
static bool
grip_piece_follows (const Grip *self, const char *id)
{
  const Part *part = aeroplane_part_by_id (self->start, id);

  return part != NULL && part->of != NULL && selection_has (&self->selection, part->of);
}

/* A group goes no farther than the rails of those of it that are held. */
static void
grip_piece_keep_to_rails (const Grip *self, const char *id, bool loose, double by[3])
{
  const Part *part = aeroplane_part_by_id (self->start, id);

  for (char **mate = self->selection.ids; part != NULL && part->group != NULL && !loose && *mate != NULL; mate++) {
    const Part *other = aeroplane_part_by_id (self->start, *mate);

    if (other == NULL || !other->has_rail || g_strcmp0 (other->group, part->group) != 0)
      continue;
    by[0] = fmin (fmax (other->x + by[0], other->rail_from), other->rail_to) - other->x;
    by[1] = 0;
  }
}

static Aeroplane *
grip_piece_moved (const Grip *self, Point place, bool loose)
{
  const Point by = point_sub (place, grip_piece_place (self, self->start));
  Aeroplane *moved = aeroplane_ref (self->start);

  for (char **id = self->selection.ids; id != NULL && *id != NULL; id++) {
    double shift[3] = { by.x, self->side ? 0 : by.y, self->side ? by.y : 0 };

    grip_piece_keep_to_rails (self, *id, loose, shift);
    Aeroplane *next = piece_moving_can (moved, *id) && !grip_piece_follows (self, *id) ? piece_moving_moved (moved, *id, shift, loose) : NULL;

    if (next == NULL)
      continue;
    aeroplane_unref (moved);
    moved = next;
  }
  return change_views_following (self->start, moved, NULL);
}

static bool
fault_is_of_wing_through (const RoomFault *fault)
{
  return fault->kind == ROOM_ON_WING || fault->kind == ROOM_UNDER_WING || fault->kind == ROOM_IN_WING;
}

static bool
fault_is_of_height (const RoomFault *fault)
{
  return fault->kind == ROOM_TOO_HIGH || fault->kind == ROOM_THROUGH_TOP || fault->kind == ROOM_THROUGH_FLOOR || fault->kind == ROOM_WING_SHALLOW
         || fault_is_of_wing_through (fault);
}

/* What keeps it from fitting where it is held, of those two that this view shows first; NULL where it fits. */
static const RoomFault *
grip_piece_fault (const Grip *self, const Figures *figures)
{
  const RoomFault *found = NULL;

  for (guint i = 0; i < figures->room->len; i++) {
    const RoomFault *fault = &g_array_index (figures->room, RoomFault, i);

    if (isnan (fault->clear_mm) || g_strcmp0 (fault->part->piece.id, self->id) != 0)
      continue;
    if (found == NULL || fault_is_of_height (fault) == self->side)
      found = fault;
  }
  return found;
}

/* Where it does not fit, what is clear there matters more than where all balances: the margin still says that. */
static size_t
grip_piece_add_room (const Grip *self, const Figures *figures, GripRow rows[GRIP_ROWS], size_t count)
{
  const RoomFault *fault = grip_piece_fault (self, figures);

  if (fault == NULL)
    return grip_add_row (rows, count, _("Balance"), figures->mass.x_mm, false);
  /* Translators: beside the pointer, before a length: how wide, high or deep it is clear inside where a part is held that does not fit */
  if (fault_is_of_wing_through (fault))
    return grip_add_row (rows, count, _("Into the wing"), fault->lacking_mm, false);
  return grip_add_row (rows, count, fault->kind == ROOM_WING_SHALLOW ? _("Deep here") : fault_is_of_height (fault) ? _("High here")
                       : _("Wide here"), fault->clear_mm, false);
}

static size_t
grip_piece_rows (const Grip *self, const Figures *figures, GripRow rows[GRIP_ROWS])
{
  const bool part = aeroplane_part_by_id (figures->aeroplane, self->id) != NULL;
  double stand[3];
  size_t count;

  grip_piece_stand (figures->aeroplane, self->id, stand);
  count = grip_add_row (rows, 0, _("Aft of datum"), stand[0], true);
  if (self->side)
    count = grip_add_row (rows, count, _("Height"), stand[2], true);
  else if (part)
    count = grip_add_off_centre (rows, count, stand[1]);
  count = grip_piece_add_room (self, figures, rows, count);
  return grip_add_margin (rows, count, figures);
}

static Aeroplane *
grip_piece_with_row (const Grip *self, const Aeroplane *now, size_t row, double value)
{
  const size_t axis = row == 0 ? 0 : self->side ? 2 : 1;
  double stand[3], by[3] = { 0, 0, 0 };
  const Part *part = aeroplane_part_by_id (now, self->id);

  grip_piece_stand (now, self->id, stand);
  by[axis] = value - stand[axis];
  stand[axis] = value;
  /* A part is put where it was typed to the last digit; a sum of differences might lose one. */
  if (part != NULL)
    return change_part_place (now, self->id, stand[0], stand[1], stand[2]);
  return change_views_following (now, piece_moving_moved (now, self->id, by, true), row == 0 ? self->id : NULL);
}

static char *
grip_piece_label (const Grip *self)
{
  const Part *part = aeroplane_part_by_id (self->start, self->id);
  const Surface *surface = aeroplane_surface_by_id (self->start, self->id);
  const PartClass *class = part != NULL ? part_class_find (part->class_name) : NULL;

  if (self->selection.ids != NULL && self->selection.ids[0] != NULL && self->selection.ids[1] != NULL)
    return g_strdup (_("Move Several"));
  if (part != NULL && (part->name != NULL || class != NULL))
    /* Translators: %s is the name of a part: "Move Battery". */
    return g_strdup_printf (_("Move %s"), part->name != NULL ? part->name : g_dgettext (GETTEXT_PACKAGE, class->name));
  if (part != NULL)
    return g_strdup (_("Move Part"));
  if (surface != NULL)
    /* Translators: %s is the role of a surface: "Move Wing". */
    return g_strdup_printf (_("Move %s"), surface_role_name (surface->role));
  return g_strdup (_("Move Body"));
}

static Box
grip_piece_box (const Grip *self, const Aeroplane *now)
{
  const Part *part = aeroplane_part_by_id (now, self->id);
  const Point place = grip_piece_place (self, now);
  const double across = part == NULL ? 0 : (self->side ? part->height : part->width) / 2, along = part == NULL ? 0 : part->length / 2;

  return (Box) { { place.x - along, place.y - across }, { place.x + along, place.y + across } };
}

const GripKind grip_piece_kind = {
  .hint = N_("Drag it. Shift holds the direction, Ctrl snaps to nothing, Esc puts it back."),
  .place = grip_piece_place, .moved = grip_piece_moved, .rows = grip_piece_rows, .with_row = grip_piece_with_row, .label = grip_piece_label,
  .box = grip_piece_box,
};
