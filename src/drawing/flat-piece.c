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
  const Point corners[] = { box.min, { box.max.x, box.min.y }, box.max, { box.min.x, box.max.y } };

  flat_piece_add_polygon (self, purpose, corners, G_N_ELEMENTS (corners));
}

void
flat_piece_add_polygon (FlatPiece *self, FlatPurpose purpose, const Point corners[], size_t count)
{
  g_autofree Segment *sides = g_new (Segment, count - 1);

  for (size_t i = 1; i < count; i++)
    sides[i - 1] = segment_line (corners[i]);
  flat_piece_add_line (self, purpose, true, corners[0], sides, count - 1);
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

double
flat_word_caps (const FlatWord *word, double length)
{
  return word->most > 0 && length > word->most ? word->caps * word->most / length : word->caps;
}

/* Where a thing goes: its x turned about 0 or not, then moved. */
typedef struct { bool mirrored; Point by; } Carry;

static Point
point_carried (Point place, const Carry *carry)
{
  return point_add ((Point) { carry->mirrored ? -place.x : place.x, place.y }, carry->by);
}

static Segment
segment_carried (Segment segment, const Carry *carry)
{
  segment.to = point_carried (segment.to, carry);
  if (segment.kind == SEGMENT_CURVE)
    {
      segment.control1 = point_carried (segment.control1, carry);
      segment.control2 = point_carried (segment.control2, carry);
    }
  if (segment.kind == SEGMENT_ARC)
    segment.centre = point_carried (segment.centre, carry);
  return segment;
}

/* Half a turn of an arc has its side by a rule that knows nothing of mirrors: it is carried in two pieces, which have none to choose. */
static void
add_line_carried (FlatPiece *self, FlatLine line, const Carry *carry)
{
  g_autofree Segment *segments = g_new (Segment, 2 * line.count);
  Point from = line.start;
  size_t count = 0;

  for (size_t k = 0; k < line.count; k++)
    {
      Segment pieces[2] = { line.segments[k] };
      const size_t parts = carry->mirrored && pieces[0].kind == SEGMENT_ARC ? 2 : 1;
      if (parts == 2)
        segment_split (from, &line.segments[k], 0.5, &pieces[0], &pieces[1]);
      for (size_t i = 0; i < parts; i++)
        segments[count++] = segment_carried (pieces[i], carry);
      from = line.segments[k].to;
    }
  flat_piece_add_line (self, line.purpose, line.closed, point_carried (line.start, carry), segments, count);
}

static void
add_word_carried (FlatPiece *self, FlatWord word, const Carry *carry)
{
  word.at = point_carried (word.at, carry);
  word.across = carry->mirrored ? 1 - word.across : word.across;
  word.turn = carry->mirrored ? -word.turn : word.turn;
  flat_piece_add_word (self, &word);
}

static FlatPiece *
carried (const FlatPiece *self, const char *name, const Carry *carry)
{
  FlatPiece *made = flat_piece_new (name, self->remark);

  for (guint i = 0; i < self->lines->len; i++)
    add_line_carried (made, g_array_index (self->lines, FlatLine, i), carry);
  for (guint i = 0; i < self->words->len; i++)
    add_word_carried (made, g_array_index (self->words, FlatWord, i), carry);
  return made;
}

FlatPiece *
flat_piece_mirrored (const FlatPiece *self, const char *name)
{
  return carried (self, name, &(Carry) { .mirrored = true });
}

FlatPiece *
flat_piece_moved (const FlatPiece *self, Point by)
{
  return carried (self, self->name, &(Carry) { .by = by });
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
