#include "document/piece.h"
#include <math.h>
#include "document/elements.h"

static const size_t sizes[PIECE_KIND_COUNT] = {
  [PIECE_SURFACE] = sizeof (Surface), [PIECE_BODY] = sizeof (Body), [PIECE_STRUCTURE] = sizeof (Structure),
  [PIECE_PART] = sizeof (Part), [PIECE_LEAD] = sizeof (Lead), [PIECE_MARK] = sizeof (Mark), [PIECE_BAY] = sizeof (Bay),
  [PIECE_THRUST] = sizeof (Thrust), [PIECE_PLAN] = sizeof (Plan), [PIECE_FOREIGN] = sizeof (Foreign),
};

static void *
piece_alloc (PieceKind kind)
{
  Piece *piece = g_malloc0 (sizes[kind]);

  piece->kind = kind;
  g_atomic_ref_count_init (&piece->references);
  if (kind != PIECE_FOREIGN)
    record_set_defaults (element_of_piece (kind), piece);
  return piece;
}

Surface *
surface_new (const char *id, SurfaceRole role, Outline *takes)
{
  Surface *surface = piece_alloc (PIECE_SURFACE);

  surface->piece.id = g_strdup (id);
  surface->role = role;
  surface->outline = takes;
  return surface;
}

void
passed_click_move (PassedClick *self, double dx, double dy)
{
  if (self->by > 0)
    self->at = point_add (self->at, (Point) { dx, dy });
}

Body *
body_new (const char *id)
{
  Body *body = piece_alloc (PIECE_BODY);

  body->piece.id = g_strdup (id);
  return body;
}

Structure *
structure_new (const char *id, const char *of, double mass)
{
  Structure *structure = piece_alloc (PIECE_STRUCTURE);

  structure->piece.id = g_strdup (id);
  structure->of = g_strdup (of);
  structure->mass = mass;
  return structure;
}

StructureItem
structure_item (const char *name)
{
  StructureItem item = { .name = g_strdup (name) };

  record_set_defaults (ELEMENT_ITEM, &item);
  return item;
}

void
structure_item_clear (StructureItem *item)
{
  record_clear (ELEMENT_ITEM, item);
}

bool
structure_is_given (const Structure *structure)
{
  return structure->mass > 0 || (isnan (structure->mass) && structure->item_count > 0);
}

Part *
part_new (const char *id, const char *class_name)
{
  Part *part = piece_alloc (PIECE_PART);

  part->piece.id = g_strdup (id);
  part->class_name = g_strdup (class_name);
  return part;
}

Lead *
lead_new (const char *from, const char *to)
{
  Lead *lead = piece_alloc (PIECE_LEAD);

  lead->from = g_strdup (from);
  lead->to = g_strdup (to);
  return lead;
}

Mark *
mark_new (double station)
{
  Mark *mark = piece_alloc (PIECE_MARK);

  mark->station = station;
  return mark;
}

Bay *
bay_new (const char *id, const char *from_former, const char *to_former)
{
  Bay *bay = piece_alloc (PIECE_BAY);

  bay->piece.id = g_strdup (id);
  bay->from_former = g_strdup (from_former);
  bay->to_former = g_strdup (to_former);
  return bay;
}

Thrust *
thrust_new (void)
{
  return piece_alloc (PIECE_THRUST);
}

Plan *
plan_new (const char *id)
{
  Plan *plan = piece_alloc (PIECE_PLAN);

  plan->piece.id = g_strdup (id);
  return plan;
}

Foreign *
foreign_new (const char *text)
{
  Foreign *foreign = piece_alloc (PIECE_FOREIGN);

  foreign->text = g_strdup (text);
  return foreign;
}

Piece *
piece_ref (const Piece *piece)
{
  Piece *self = (Piece *) piece;      /* only the count changes, and that safely */

  g_atomic_ref_count_inc (&self->references);
  return self;
}

static void
piece_free_kept (Piece *piece)
{
  for (size_t i = 0; i < piece->kept_count; i++)
    {
      g_free (piece->kept[i].before);
      g_free (piece->kept[i].attributes);
      g_free (piece->kept[i].inside);
    }
  g_free (piece->kept);
}

static void
piece_free_lists (Piece *piece)
{
  for (const ListField *list = element_lists; list->element != ELEMENT_NONE; list++)
    if (list->piece == piece->kind)
      {
        const size_t size = element_of (list->element)->size;
        char *records = *piece_list (list, piece);

        for (size_t i = 0; i < piece_list_count (list, piece); i++)
          record_clear (list->element, records + i * size);
        g_free (records);
      }
}

static void
piece_free_image (Piece *piece)
{
  if (piece->kind != PIECE_PLAN)
    return;
  g_clear_pointer (&((Plan *) piece)->image, g_bytes_unref);
  record_clear (ELEMENT_IMAGE, piece);
}

void
piece_unref (Piece *piece)
{
  if (!piece || !g_atomic_ref_count_dec (&piece->references))
    return;
  for (const OutlineField *field = element_outlines; field->element != ELEMENT_NONE; field++)
    if (field->piece == piece->kind)
      outline_unref (*piece_outline (field, piece));
  piece_free_lists (piece);
  piece_free_image (piece);
  piece_free_kept (piece);
  if (piece->kind == PIECE_FOREIGN)
    g_free (((Foreign *) piece)->text);
  else
    record_clear (element_of_piece (piece->kind), piece);
  g_free (piece->foreign_attributes);
  g_free (piece->foreign_children);
  g_free (piece);
}

static void
piece_dup_lists (Piece *piece)
{
  for (const ListField *list = element_lists; list->element != ELEMENT_NONE; list++)
    if (list->piece == piece->kind)
      {
        const size_t size = element_of (list->element)->size;
        char *records = g_memdup2 (*piece_list (list, piece), piece_list_count (list, piece) * size);

        for (size_t i = 0; i < piece_list_count (list, piece); i++)
          record_dup_texts (list->element, records + i * size);
        *piece_list (list, piece) = records;
      }
}

static void
piece_dup_kept (Piece *piece)
{
  piece->kept = g_memdup2 (piece->kept, piece->kept_count * sizeof *piece->kept);
  for (size_t i = 0; i < piece->kept_count; i++)
    {
      piece->kept[i].before = g_strdup (piece->kept[i].before);
      piece->kept[i].attributes = g_strdup (piece->kept[i].attributes);
      piece->kept[i].inside = g_strdup (piece->kept[i].inside);
    }
}

/* The picture's bytes are shared: nobody changes them. */
static void
piece_dup_image (Piece *piece)
{
  if (piece->kind != PIECE_PLAN)
    return;
  if (((Plan *) piece)->image)
    g_bytes_ref (((Plan *) piece)->image);
  record_dup_texts (ELEMENT_IMAGE, piece);
}

Piece *
piece_dup (const Piece *piece)
{
  Piece *copy = g_memdup2 (piece, sizes[piece->kind]);

  g_atomic_ref_count_init (&copy->references);
  copy->foreign_attributes = g_strdup (piece->foreign_attributes);
  copy->foreign_children = g_strdup (piece->foreign_children);
  for (const OutlineField *field = element_outlines; field->element != ELEMENT_NONE; field++)
    if (field->piece == copy->kind && *piece_outline (field, copy))
      outline_ref (*piece_outline (field, copy));
  piece_dup_lists (copy);
  piece_dup_image (copy);
  piece_dup_kept (copy);
  if (copy->kind == PIECE_FOREIGN)
    ((Foreign *) copy)->text = g_strdup (((Foreign *) copy)->text);
  else
    record_dup_texts (element_of_piece (copy->kind), copy);
  return copy;
}
