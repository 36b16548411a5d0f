#include "document/writer-private.h"

static NodeRecord
record_of (const Outline *outline, size_t node)
{
  const Segment *segment = node > 0 ? outline_segment (outline, node - 1) : NULL;
  const Point place = outline_node (outline, node);
  NodeRecord record = { .x = place.x, .y = place.y, .segment = ELEMENT_START };

  if (!segment)
    return record;
  record.x1 = segment->control1.x, record.y1 = segment->control1.y;
  record.x2 = segment->control2.x, record.y2 = segment->control2.y;
  record.cx = segment->centre.x, record.cy = segment->centre.y;
  record.rx = segment->rx, record.ry = segment->ry;
  switch (segment->kind)
    {
    case SEGMENT_LINE:  record.segment = ELEMENT_LINE; break;
    case SEGMENT_CURVE: record.segment = ELEMENT_CURVE; break;
    case SEGMENT_ARC:   record.segment = ELEMENT_ARC; break;
    }
  return record;
}

static void
write_nodes (GString *to, const Piece *piece, const OutlineField *field, const Outline *outline)
{
  const size_t count = outline_node_count (outline);

  for (size_t i = 0; i < count; i++)
    {
      const Kept kept = write_kept_before (to, 3, piece, field->node, i);
      const NodeKind kind = outline_node_kind (outline, i);
      NodeRecord record = record_of (outline, i);

      if (kind != outline_node_shape (outline, i))      /* what the reader tells by itself is not written */
        record.node = (int) kind + 1;
      write_tag (to, 3, record.segment, &record, kept.attributes);
      write_tag_end (to, 3, record.segment, kept.inside);
    }
  write_kept_behind (to, 3, piece, field->node, count);
}

void
write_outline (GString *to, const Piece *piece, const OutlineField *field, const Outline *outline)
{
  Kept kept;

  if (!outline)
    {
      write_kept_behind (to, 2, piece, field->inner, 0);
      return;
    }
  kept = write_kept_before (to, 2, piece, field->inner, 0);
  write_tag (to, 2, field->element, NULL, kept.attributes);
  g_string_append (to, ">\n");
  write_nodes (to, piece, field, outline);
  write_foreign (to, 3, kept.inside);
  g_string_append_printf (to, "    </%s>\n", element_of (field->element)->name);
}
