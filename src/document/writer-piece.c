#include "document/writer-private.h"
#include "document/number-text.h"
#include "document/xml-text.h"

static void
write_indent (GString *to, int depth)
{
  static const char blanks[] = "        ";

  g_string_append_len (to, blanks, MIN (2 * depth, (int) sizeof blanks - 1));
}

void
write_foreign (GString *to, int depth, const char *text)
{
  if (!text)
    return;
  write_indent (to, depth);
  g_string_append (to, text);
  g_string_append_c (to, '\n');
}

static void
write_number (GString *to, const char *name, double value)
{
  char text[NUMBER_ROOM];
  const size_t length = number_write (value, text);

  g_string_append_c (to, ' ');
  g_string_append (to, name);
  g_string_append_len (to, "=\"", 2);
  g_string_append_len (to, text, (gssize) length);
  g_string_append_c (to, '"');
}

/* Numbers not given are not written; others are where they differ from the fallback or are always shown. */
static void
write_attribute (GString *to, const Attribute *at, void *record)
{
  const bool always = at->presence != PRESENCE_OPTIONAL;

  switch (at->kind)
    {
    case VALUE_NUMBER:
      if (isfinite (*record_number (at, record)) && (always || *record_number (at, record) != at->fallback))
        write_number (to, at->name, *record_number (at, record));
      break;
    case VALUE_FLAG:
      if (always || *record_flag (at, record) != (at->fallback != 0))
        xml_append_attribute (to, at->name, at->words[*record_flag (at, record)], -1);
      break;
    case VALUE_WORD:
      if (always || *record_word (at, record) != (int) at->fallback)
        xml_append_attribute (to, at->name, at->words[*record_word (at, record)], -1);
      break;
    case VALUE_TEXT:
    case VALUE_DATE:
    case VALUE_ID:
      if (*record_text (at, record))
        xml_append_attribute (to, at->name, *record_text (at, record), -1);
      break;
    }
}

void
write_attributes (GString *to, ElementId id, const void *record)
{
  for (const Attribute *at = element_of (id)->attributes; at->name; at++)
    write_attribute (to, at, (void *) record);      /* only read there */
}

void
write_tag (GString *to, int depth, ElementId id, const void *record, const char *foreign)
{
  write_indent (to, depth);
  g_string_append_c (to, '<');
  g_string_append (to, element_of (id)->name);
  write_attributes (to, id, record);
  if (foreign)
    g_string_append (to, foreign);
}

void
write_end (GString *to, int depth, ElementId id)
{
  write_indent (to, depth);
  g_string_append_printf (to, "</%s>\n", element_of (id)->name);
}

void
write_tag_end (GString *to, int depth, ElementId id, const char *inside)
{
  if (!inside)
    {
      g_string_append (to, "/>\n");
      return;
    }
  g_string_append (to, ">\n");
  write_foreign (to, depth + 1, inside);
  write_end (to, depth, id);
}

Kept
write_kept_before (GString *to, int depth, const Piece *piece, InnerKind inner, size_t index)
{
  const Kept *kept = piece_kept (piece, inner, index), *end = kept ? piece->kept + piece->kept_count : NULL;
  Kept found = { 0 };

  for (; kept < end && kept->inner == inner && kept->index == index; kept++)
    {
      write_foreign (to, depth, kept->before);
      found.attributes = kept->attributes ? kept->attributes : found.attributes;
      found.inside = kept->inside ? kept->inside : found.inside;
    }
  return found;
}

void
write_kept_behind (GString *to, int depth, const Piece *piece, InnerKind inner, size_t count)
{
  for (size_t i = 0; i < piece->kept_count; i++)
    if (piece->kept[i].inner == inner && piece->kept[i].index >= count)
      write_foreign (to, depth, piece->kept[i].before);
}

static void
write_list (GString *to, const Piece *piece, const ListField *list)
{
  const size_t size = element_of (list->element)->size, count = piece_list_count (list, piece);
  const char *records = *piece_list (list, (Piece *) piece);

  for (size_t i = 0; i < count; i++)
    {
      const Kept kept = write_kept_before (to, 2, piece, list->inner, i);

      write_tag (to, 2, list->element, records + i * size, kept.attributes);
      write_tag_end (to, 2, list->element, kept.inside);
    }
  write_kept_behind (to, 2, piece, list->inner, count);
}

static void
write_single (GString *to, const Piece *piece, const SingleField *field)
{
  Kept kept;

  if (*piece_single (field, (Piece *) piece))
    {
      kept = write_kept_before (to, 2, piece, field->inner, 0);
      write_tag (to, 2, field->element, piece, kept.attributes);
      write_tag_end (to, 2, field->element, kept.inside);
    }
  else
    write_kept_behind (to, 2, piece, field->inner, 0);
}

static void
write_one_list (GString *to, const Piece *piece, const ListField *list)
{
  if (list->element == ELEMENT_STRAIGHT)
    write_straight (to, (const Plan *) piece);
  else if (list->element != ELEMENT_AT)      /* a straight line's own */
    write_list (to, piece, list);
}

static void
write_children (GString *to, const Piece *piece)
{
  for (const OutlineField *field = element_outlines; field->element != ELEMENT_NONE; field++)
    if (field->piece == piece->kind)
      write_outline (to, piece, field, *piece_outline (field, (Piece *) piece));
  if (piece->kind == PIECE_PLAN)
    write_image (to, (const Plan *) piece);
  for (const SingleField *field = element_singles; field->element != ELEMENT_NONE; field++)
    if (field->piece == piece->kind)
      write_single (to, piece, field);
  for (const ListField *list = element_lists; list->element != ELEMENT_NONE; list++)
    if (list->piece == piece->kind)
      write_one_list (to, piece, list);
  write_foreign (to, 2, piece->foreign_children);
}

void
write_piece (GString *to, const Piece *piece)
{
  const ElementId id = element_of_piece (piece->kind);
  gsize begun;

  if (piece->kind == PIECE_FOREIGN)
    {
      write_foreign (to, 1, ((const Foreign *) piece)->text);
      return;
    }
  write_tag (to, 1, id, piece, piece->foreign_attributes);
  begun = to->len;
  g_string_append (to, ">\n");
  write_children (to, piece);
  if (to->len > begun + 2)
    write_end (to, 1, id);
  else
    {
      g_string_truncate (to, begun);
      g_string_append (to, "/>\n");
    }
}
