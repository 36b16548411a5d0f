#include <string.h>
#include "app/fragment.h"

/* How far a copy goes aside, mm: enough to be seen and caught at the usual zoom. */
static const double aside = 10;
enum { MOST_STEPS_ASIDE = 1000 };

static bool
outlines_coincide (const Outline *a, const Outline *b, double dx)
{
  Outline *moved = NULL;
  bool same;

  if (a == NULL || b == NULL || outline_mapped (a, (Point) { 1, 1 }, (Point) { .x = dx, .y = 0 }, &moved) != CORE_OK)
    return false;
  same = outline_equal (moved, b);
  outline_unref (moved);
  return same;
}

/* Whether `piece`, moved by dx (and a part dy), would hide `there`. */
static bool
piece_hides (const Piece *piece, const Piece *there, double dx, double dy)
{
  if (piece->kind != there->kind)
    return false;
  if (piece->kind == PIECE_PART) {
    const Part *a = (const Part *) piece, *b = (const Part *) there;
    return a->x + dx == b->x && a->y + dy == b->y && a->z == b->z;
  }
  if (piece->kind == PIECE_SURFACE)
    return outlines_coincide (((const Surface *) piece)->outline, ((const Surface *) there)->outline, dx);
  if (piece->kind == PIECE_BODY)
    return outlines_coincide (((const Body *) piece)->outline, ((const Body *) there)->outline, dx);
  return false;
}

static bool
fragment_hides_something (const Aeroplane *fragment, const Aeroplane *into, double shift)
{
  for (size_t i = 0; i < aeroplane_piece_count (fragment); i++)
    for (size_t j = 0; j < aeroplane_piece_count (into); j++)
      if (piece_hides (aeroplane_piece (fragment, i), aeroplane_piece (into, j), shift, shift))
        return true;
  return false;
}

static double
fragment_free_shift (const Aeroplane *fragment, const Aeroplane *into)
{
  int steps = 0;

  while (steps < MOST_STEPS_ASIDE && fragment_hides_something (fragment, into, steps * aside))
    steps++;
  return steps * aside;
}

static void
outline_shift (Outline **outline, double dx)
{
  Outline *moved = NULL;

  if (*outline == NULL || dx == 0 || outline_mapped (*outline, (Point) { 1, 1 }, (Point) { .x = dx, .y = 0 }, &moved) != CORE_OK)
    return;
  outline_unref (*outline);
  *outline = moved;
}

static void
surface_shift (Surface *surface, double dx)
{
  outline_shift (&surface->outline, dx);
  passed_click_move (&surface->passed, dx, 0);
  for (size_t i = 0; i < surface->control_count; i++) {
    surface->controls[i].hinge_inner_x += dx;
    surface->controls[i].hinge_outer_x += dx;
  }
}

static void
body_shift (Body *body, double dx)
{
  outline_shift (&body->outline, dx);
  outline_shift (&body->side_outline, dx);
  passed_click_move (&body->passed, dx, 0);
  passed_click_move (&body->side_passed, dx, 0);
  for (size_t i = 0; i < body->former_count; i++)
    body->formers[i].place += dx;
}

static void
part_shift (Part *part, double shift)
{
  part->x += shift;
  part->y += shift;
  part->rail_from += shift;
  part->rail_to += shift;
}

static void
lead_shift (Lead *lead, double shift)
{
  lead->joint_x += shift;
  lead->joint_y += shift;
  for (size_t i = 0; i < lead->via_count; i++) {
    lead->via[i].place.x += shift;
    lead->via[i].place.y += shift;
  }
}

/* NAN, spread over its area, stays NAN. */
static void
structure_shift (Structure *structure, double shift)
{
  structure->x += shift;
  for (size_t i = 0; i < structure->item_count; i++)
    structure->items[i].x += shift;
}

static void
piece_shift (Piece *piece, double shift)
{
  switch (piece->kind) {
    case PIECE_SURFACE:   surface_shift ((Surface *) piece, shift); break;
    case PIECE_BODY:      body_shift ((Body *) piece, shift); break;
    case PIECE_PART:      part_shift ((Part *) piece, shift); break;
    case PIECE_LEAD:      lead_shift ((Lead *) piece, shift); break;
    case PIECE_STRUCTURE: structure_shift ((Structure *) piece, shift); break;
    default: break;
  }
}

static void
reference_rename (char **reference, GHashTable *fresh_ids)
{
  const char *fresh = *reference == NULL ? NULL : g_hash_table_lookup (fresh_ids, *reference);

  if (fresh == NULL)
    return;
  g_free (*reference);
  *reference = g_strdup (fresh);
}

static void
piece_rename_references (Piece *piece, GHashTable *fresh_ids)
{
  if (piece->kind == PIECE_STRUCTURE)
    reference_rename (&((Structure *) piece)->of, fresh_ids);
  if (piece->kind == PIECE_LEAD) {
    reference_rename (&((Lead *) piece)->from, fresh_ids);
    reference_rename (&((Lead *) piece)->also, fresh_ids);
    reference_rename (&((Lead *) piece)->to, fresh_ids);
  }
}

/* "battery-2" copied becomes "battery-3", not "battery-2-2". */
static char *
id_stem (const char *id)
{
  const char *dash = strrchr (id, '-');

  if (dash != NULL && dash != id && dash[1] != '\0' && strspn (dash + 1, "0123456789") == strlen (dash + 1))
    return g_strndup (id, (gsize) (dash - id));
  return g_strdup (id);
}

/* One piece more, under an id that is free. */
static Aeroplane *
fragment_add_piece (const Aeroplane *into, const Piece *piece, double shift, GHashTable *fresh_ids)
{
  Piece *copy = piece_dup (piece);

  copy->line = 0;
  piece_shift (copy, shift);
  if (copy->id != NULL) {
    g_autofree char *stem = id_stem (copy->id);
    char *fresh = aeroplane_free_id (into, stem);
    g_hash_table_insert (fresh_ids, g_strdup (copy->id), fresh);
    g_free (copy->id);
    copy->id = g_strdup (fresh);
  }
  piece_rename_references (copy, fresh_ids);
  return aeroplane_with_added (into, copy);
}

static bool
kind_is_pasted (PieceKind kind)
{
  return kind == PIECE_SURFACE || kind == PIECE_BODY || kind == PIECE_PART || kind == PIECE_STRUCTURE || kind == PIECE_LEAD;
}

static Aeroplane *
fragment_add_all (const Aeroplane *into, const Aeroplane *fragment, GHashTable *fresh_ids)
{
  const double shift = fragment_free_shift (fragment, into);
  /* Owners first, so that structures and leads find their new names. */
  const PieceKind order[] = { PIECE_SURFACE, PIECE_BODY, PIECE_PART, PIECE_STRUCTURE, PIECE_LEAD };
  Aeroplane *next = aeroplane_ref (into);

  for (size_t k = 0; k < G_N_ELEMENTS (order); k++)
    for (size_t i = 0; i < aeroplane_count (fragment, order[k]); i++) {
      Aeroplane *more = fragment_add_piece (next, aeroplane_nth (fragment, order[k], i), shift, fresh_ids);
      aeroplane_unref (next);
      next = more;
    }
  return next;
}

Aeroplane *
fragment_pasted (const Aeroplane *into, const Aeroplane *fragment, Selection *pasted)
{
  g_autoptr (GHashTable) fresh_ids = g_hash_table_new_full (g_str_hash, g_str_equal, g_free, g_free);
  Selection selection = selection_none ();
  Aeroplane *next;
  size_t usable = 0;

  for (size_t i = 0; i < aeroplane_piece_count (fragment); i++)
    usable += kind_is_pasted (aeroplane_piece (fragment, i)->kind) ? 1 : 0;
  if (usable == 0)
    return NULL;
  next = fragment_add_all (into, fragment, fresh_ids);
  for (size_t i = 0; i < aeroplane_piece_count (fragment); i++) {
    const Piece *piece = aeroplane_piece (fragment, i);
    const char *fresh = piece->id == NULL ? NULL : g_hash_table_lookup (fresh_ids, piece->id);
    if (fresh != NULL && piece->kind != PIECE_STRUCTURE && piece->kind != PIECE_LEAD)
      selection_toggle (&selection, fresh);
  }
  *pasted = selection;
  return next;
}
