#include "document/brought-lines.h"

#include <math.h>
#include <string.h>

/* Loose ends, found by where they lie: in squares as wide as what counts as near, so that whoever is near lies in one of nine. End 2i
 * is where line i starts, end 2i + 1 where it stops. */
enum { NOBODY = G_MAXUINT };
/* More loose ends than this that lie within a hair of each other and yet apart are in no drawing; a file made of them is not waited for. */
enum { MOST_PASSED = 256 };
typedef struct {
  BroughtLine *lines;
  guint count;
  double near;
  guint64 *keys;             /* of each end's square */
  guint *next;               /* the next end in the same square */
  bool *used;                /* each line */
  guint *first;              /* the first end in each square, counted from 1; 0 none left */
  guint square_count;
  GHashTable *squares;       /* a square's key -> its place in `first` */
} Ends;

static Point
line_end (const BroughtLine *line)
{
  return line->segments[line->count - 1].to;
}

static Point
end_place (const Ends *self, guint end)
{
  return end % 2 ? line_end (&self->lines[end / 2]) : self->lines[end / 2].start;
}

/* Joining looks no further than this, in squares; with a hundredth of a millimetre to each it is a metre beyond what is refused later. */
static const double FARTHEST = 1.1e6;

static gint64
square_along (const Ends *self, double along)
{
  return (gint64) floor (along / self->near);
}

static bool
lies_within (const Ends *self, Point place)
{
  return fabs (place.x) <= FARTHEST * self->near && fabs (place.y) <= FARTHEST * self->near;
}

/* Squares too far away have no number of their own, and all the places in them would be compared with each other. */
static bool
all_lie_within (const Ends *self)
{
  for (guint end = 0; end < 2 * self->count; end++)
    if (!lies_within (self, end_place (self, end)))
      return false;
  return true;
}

static guint64
square_key (gint64 x, gint64 y)
{
  return (guint64) x * G_GUINT64_CONSTANT (0x9E3779B97F4A7C15) ^ (guint64) y * G_GUINT64_CONSTANT (0xC2B2AE3D27D4EB4F);
}

static void
ends_begin (Ends *self)
{
  self->keys = g_new (guint64, 2 * self->count);
  self->next = g_new (guint, 2 * self->count);
  self->first = g_new0 (guint, 2 * self->count);
  self->used = g_new0 (bool, self->count);
  self->squares = g_hash_table_new (g_int64_hash, g_int64_equal);
  for (guint end = 2 * self->count; end-- > 0;)
    {
      const Point place = end_place (self, end);
      self->used[end / 2] = self->lines[end / 2].closed;
      self->keys[end] = square_key (square_along (self, place.x), square_along (self, place.y));
      guint *first = g_hash_table_lookup (self->squares, &self->keys[end]);
      if (!first)
        g_hash_table_insert (self->squares, &self->keys[end], first = &self->first[self->square_count++]);
      self->next[end] = *first;
      *first = end + 1;
    }
}

static void
ends_clear (Ends *self)
{
  g_free (self->keys);
  g_free (self->next);
  g_free (self->first);
  g_free (self->used);
  g_hash_table_unref (self->squares);
}

/* An end of an unused line in that square; what is used is passed over once and never again. */
static guint
find_in_square (Ends *self, guint64 key, Point near_what)
{
  guint *entry = g_hash_table_lookup (self->squares, &key);

  for (guint passed = 0; entry && *entry != 0 && passed < MOST_PASSED;)
    {
      const guint end = *entry - 1;

      if (self->used[end / 2])
        *entry = self->next[end];
      else if (point_distance (end_place (self, end), near_what) <= self->near)
        return end;
      else
        {
          entry = &self->next[end];
          passed++;
        }
    }
  return NOBODY;
}

static guint
find_end (Ends *self, Point at)
{
  const gint64 x = square_along (self, at.x), y = square_along (self, at.y);

  for (int i = 0; i < 9; i++)
    {
      const guint end = find_in_square (self, square_key (x + i % 3 - 1, y + i / 3 - 1), at);
      if (end != NOBODY)
        return end;
    }
  return NOBODY;
}

static void
append (GArray *segments, const BroughtLine *line, bool turned)
{
  if (!turned)
    g_array_append_vals (segments, line->segments, (guint) line->count);
  for (size_t i = line->count; turned && i-- > 0;)
    {
      const Segment back = segment_reversed (i ? line->segments[i - 1].to : line->start, &line->segments[i]);
      g_array_append_val (segments, back);
    }
}

/* Goes on from `at` with line after line until none is near, or the run is back at `home`. Where it ends. */
static Point
go_on (Ends *self, GArray *segments, Point at, Point home)
{
  while (segments->len == 0 || point_distance (at, home) > self->near)
    {
      const guint end = find_end (self, at);
      if (end == NOBODY)
        break;
      self->used[end / 2] = true;
      append (segments, &self->lines[end / 2], end % 2);
      at = end_place (self, end ^ 1);
    }
  return at;
}

/* The run that line i is part of: on from its end, then back from its start. */
static BroughtLine
run_through (Ends *self, guint i)
{
  BroughtLine *line = &self->lines[i];
  g_autoptr (GArray) on = g_array_new (FALSE, FALSE, sizeof (Segment)), back = g_array_new (FALSE, FALSE, sizeof (Segment));
  const Point begun = line->start;

  self->used[i] = true;
  append (on, line, false);
  const Point end = go_on (self, on, line_end (line), begun);
  const bool closed = point_distance (end, begun) <= self->near;
  const Point start = closed ? begun : go_on (self, back, begun, end);
  BroughtLine made = { .name = g_steal_pointer (&line->name), .start = start, .closed = closed || point_distance (start,
                                                            end) <= self->near };
  const BroughtLine behind = { .start = begun, .segments = (Segment *) (gpointer) back->data, .count = back->len };
  g_autoptr (GArray) whole = g_array_new (FALSE, FALSE, sizeof (Segment));
  append (whole, &behind, true);
  g_array_append_vals (whole, on->data, on->len);
  if (made.closed)
    g_array_index (whole, Segment, whole->len - 1).to = start;
  made.count = whole->len;
  made.segments = (Segment *) (gpointer) g_array_free (g_steal_pointer (&whole), FALSE);
  return made;
}

void
brought_lines_join (BroughtLines *self, double near)
{
  brought_lines_end (self);
  Ends ends = { .lines = (BroughtLine *) (gpointer) self->lines->data, .count = self->lines->len, .near = near };

  if (!all_lie_within (&ends))
    return;
  GArray *joined = g_array_new (FALSE, FALSE, sizeof (BroughtLine));
  if (ends.count > 0)
    {
      ends_begin (&ends);
      for (guint i = 0; i < ends.count; i++)
        if (!ends.used[i] || ends.lines[i].closed)
          {
            const BroughtLine run = ends.lines[i].closed ? ends.lines[i] : run_through (&ends, i);
            if (ends.lines[i].closed)
              ends.lines[i] = (BroughtLine) { 0 };
            g_array_append_val (joined, run);
          }
      ends_clear (&ends);
    }
  g_array_set_clear_func (joined, brought_line_clear);
  g_array_unref (self->lines);
  self->lines = joined;
}
