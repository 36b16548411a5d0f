#include "document/elements.h"

static bool
kept_equal (const Kept *a, const Kept *b)
{
  return a->inner == b->inner && a->index == b->index && g_strcmp0 (a->before, b->before) == 0
         && g_strcmp0 (a->attributes, b->attributes) == 0 && g_strcmp0 (a->inside, b->inside) == 0;
}

static bool
piece_foreign_equal (const Piece *a, const Piece *b)
{
  if (a->kept_count != b->kept_count
      || g_strcmp0 (a->foreign_attributes, b->foreign_attributes) != 0 || g_strcmp0 (a->foreign_children, b->foreign_children) != 0)
    return false;
  for (size_t i = 0; i < a->kept_count; i++)
    if (!kept_equal (&a->kept[i], &b->kept[i]))
      return false;
  return true;
}

static bool
piece_list_equal (const ListField *list, Piece *a, Piece *b)
{
  const size_t size = element_of (list->element)->size;
  const char *ones = *piece_list (list, a), *others = *piece_list (list, b);

  if (piece_list_count (list, a) != piece_list_count (list, b))
    return false;
  for (size_t i = 0; i < piece_list_count (list, a); i++)
    if (!record_equal (list->element, ones + i * size, others + i * size))
      return false;
  return true;
}

static bool
piece_inner_equal (Piece *a, Piece *b)
{
  for (const ListField *list = element_lists; list->element != ELEMENT_NONE; list++)
    if (list->piece == a->kind && !piece_list_equal (list, a, b))
      return false;
  for (const OutlineField *field = element_outlines; field->element != ELEMENT_NONE; field++)
    if (field->piece == a->kind && !outline_equal (*piece_outline (field, a), *piece_outline (field, b)))
      return false;
  return true;
}

static bool
piece_singles_equal (Piece *a, Piece *b)
{
  for (const SingleField *field = element_singles; field->element != ELEMENT_NONE; field++)
    if (field->piece == a->kind
        && (*piece_single (field, a) != *piece_single (field, b)
            || (*piece_single (field, a) && !record_equal (field->element, a, b))))
      return false;
  return true;
}

static bool
bytes_equal (GBytes *a, GBytes *b)
{
  return a == b || (a && b && g_bytes_equal (a, b));
}

/* What no table tells: the picture, and how the places are shared out among the straight lines. */
static bool
plan_equal (const Plan *a, const Plan *b)
{
  if (!bytes_equal (a->image, b->image) || (a->image && !record_equal (ELEMENT_IMAGE, a, b)))
    return false;
  for (size_t i = 0; i < a->straight_count; i++)      /* as many as b's: compared before */
    if (a->straight[i].count != b->straight[i].count)
      return false;
  return true;
}

bool
piece_equal (const Piece *a, const Piece *b)
{
  if (a == b)
    return true;
  if (!a || !b || a->kind != b->kind)
    return false;
  if (a->kind == PIECE_FOREIGN)
    return g_strcmp0 (((const Foreign *) a)->text, ((const Foreign *) b)->text) == 0;
  return record_equal (element_of_piece (a->kind), a, b) && piece_foreign_equal (a, b)
         && piece_singles_equal ((Piece *) a, (Piece *) b) && piece_inner_equal ((Piece *) a, (Piece *) b)      /* only read there */
         && (a->kind != PIECE_PLAN || plan_equal ((const Plan *) a, (const Plan *) b));
}
