#include "drawing/flat-piece.h"
#include <math.h>
#include <string.h>

static void
clear_line (gpointer data)
{
  g_free (((FlatLine *) data)->segments);
}

static void
clear_word (gpointer data)
{
  g_free (((FlatWord *) data)->text);
}

FlatPiece *
flat_piece_new (const char *name, const char *remark)
{
  FlatPiece *self = g_new (FlatPiece, 1);

  *self = (FlatPiece) { .name = g_strdup (name), .remark = g_strdup (remark), .lines = g_array_new (FALSE, FALSE, sizeof (FlatLine)),
                        .words = g_array_new (FALSE, FALSE, sizeof (FlatWord)) };
  g_array_set_clear_func (self->lines, clear_line);
  g_array_set_clear_func (self->words, clear_word);
  return self;
}

void
flat_piece_free (FlatPiece *self)
{
  if (self == NULL)
    return;
  g_free (self->name);
  g_free (self->remark);
  g_array_unref (self->lines);
  g_array_unref (self->words);
  g_free (self);
}

void
flat_piece_add_line (FlatPiece *self, FlatPurpose purpose, bool closed, Point start, const Segment segments[], size_t count)
{
  const FlatLine line = { .purpose = purpose, .closed = closed, .start = start, .segments = g_memdup2 (segments, count * sizeof *segments), .count = count };

  g_array_append_val (self->lines, line);
}

void
flat_piece_add_straight (FlatPiece *self, FlatPurpose purpose, Point from, Point to)
{
  const Segment segment = segment_line (to);

  flat_piece_add_line (self, purpose, false, from, &segment, 1);
}

void
flat_piece_add_box (FlatPiece *self, FlatPurpose purpose, Box box)
{
  const Segment sides[] = { segment_line ((Point) { box.max.x, box.min.y }), segment_line (box.max), segment_line ((Point) { box.min.x, box.max.y }) };

  flat_piece_add_line (self, purpose, true, box.min, sides, G_N_ELEMENTS (sides));
}

void
flat_piece_add_words (FlatPiece *self, FlatPurpose purpose, double caps, Point at, const char *text)
{
  flat_piece_add_word (self, &(FlatWord) { .purpose = purpose, .text = (char *) text, .at = at, .caps = caps });
}

void
flat_piece_add_word (FlatPiece *self, const FlatWord *word)
{
  FlatWord copy = *word;

  copy.text = g_strdup (word->text);
  g_array_append_val (self->words, copy);
}

static Point
point_mirrored (Point place)
{
  return (Point) { -place.x, place.y };
}

static Segment
segment_mirrored (Segment segment)
{
  segment.to = point_mirrored (segment.to);
  segment.control1 = point_mirrored (segment.control1);
  segment.control2 = point_mirrored (segment.control2);
  segment.centre = point_mirrored (segment.centre);
  return segment;
}

FlatPiece *
flat_piece_mirrored (const FlatPiece *self, const char *name)
{
  FlatPiece *made = flat_piece_new (name, self->remark);

  for (guint i = 0; i < self->lines->len; i++)
    {
      FlatLine line = g_array_index (self->lines, FlatLine, i);
      g_autofree Segment *segments = g_memdup2 (line.segments, line.count * sizeof *segments);
      for (size_t k = 0; k < line.count; k++)
        segments[k] = segment_mirrored (segments[k]);
      flat_piece_add_line (made, line.purpose, line.closed, point_mirrored (line.start), segments, line.count);
    }
  for (guint i = 0; i < self->words->len; i++)
    {
      FlatWord word = g_array_index (self->words, FlatWord, i);
      word.at = point_mirrored (word.at);
      word.across = 1 - word.across;
      word.turn = -word.turn;
      flat_piece_add_word (made, &word);
    }
  return made;
}

Box
flat_piece_bounds (const FlatPiece *self)
{
  Box all = { { INFINITY, INFINITY }, { -INFINITY, -INFINITY } };

  for (guint i = 0; i < self->lines->len; i++)
    {
      const FlatLine *line = &g_array_index (self->lines, FlatLine, i);
      Point from = line->start;
      for (size_t k = 0; k < line->count; k++)
        {
          const Box box = segment_bounds (from, &line->segments[k]);
          all.min = (Point) { fmin (all.min.x, box.min.x), fmin (all.min.y, box.min.y) };
          all.max = (Point) { fmax (all.max.x, box.max.x), fmax (all.max.y, box.max.y) };
          from = line->segments[k].to;
        }
    }
  return all;
}
