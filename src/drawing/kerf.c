#include "drawing/kerf.h"
#include <math.h>
#include "drawing/flat-corners.h"
#include "geometry/stretch.h"

static const double within = 0.002;           /* mm, of a curve made a polygon */
static const double reach_most = 4;           /* of a corner, in half kerfs; as a mitre of a drawn line ends (SVG 1.1, section 11.4) */
static const double straight_on = 1e-9;

/* A side of the polygon, moved. */
typedef struct {
  Point from;            /* where it began before it was moved */
  Point at;              /* a place on it now */
  Point along, out;      /* unit vectors: along it, and the way it was moved */
} Side;

/* Where a side ends and the next begins: one place, or two where the corner is cut off. */
typedef struct { Point end, start; } Join;

static double
twice_area (const Point corners[], size_t count)
{
  double sum = 0;

  for (size_t i = 0; i < count; i++)
    sum += point_cross (point_sub (corners[i], corners[0]), point_sub (corners[(i + 1) % count], corners[0]));
  return sum;
}

/* The corner is cut off square where it reaches too far. */
static Join
cut_off (const Side *before, const Side *after, double by)
{
  const Point way = point_sub (before->along, after->along), towards = point_scale (way, 1 / point_length (way));
  const double left_before = (reach_most - point_dot (before->out, towards)) * by / point_dot (before->along, towards);
  const double left_after = (reach_most - point_dot (after->out, towards)) * by / point_dot (after->along, towards);

  return (Join) { point_add (point_add (after->from, point_scale (before->out, by)), point_scale (before->along, left_before)),
                  point_add (point_add (after->from, point_scale (after->out, by)), point_scale (after->along, left_after)) };
}

static Join
join_of (const Side *before, const Side *after, double by)
{
  const double cross = point_cross (before->along, after->along), dot = point_dot (before->along, after->along);
  const bool reaches_out = point_dot (before->out, after->along) < 0;

  if (fabs (cross) < straight_on && dot > 0)
    return (Join) { after->at, after->at };
  if (fabs (cross) < straight_on || (reaches_out && 2 / (1 + dot) > reach_most * reach_most))
    return cut_off (before, after, by);
  const double way = point_cross (point_sub (after->at, before->at), after->along) / cross;
  const Point corner = point_add (before->at, point_scale (before->along, way));
  return (Join) { corner, corner };
}

static const Side *
side_of (const GArray *sides, guint i)
{
  return &g_array_index (sides, Side, i % sides->len);
}

static GArray *
moved_sides (const Point corners[], size_t count, double by)
{
  GArray *sides = g_array_sized_new (FALSE, FALSE, sizeof (Side), (guint) count);
  const double turn = copysign (1, twice_area (corners, count)) * copysign (1, by);

  for (size_t i = 0; i < count; i++)
    {
      const Point way = point_sub (corners[(i + 1) % count], corners[i]);
      const Point along = point_scale (way, 1 / point_length (way)), out = { along.y * turn, -along.x * turn };
      const Side side = { corners[i], point_add (corners[i], point_scale (out, fabs (by))), along, out };
      if (point_length (way) > 0)
        g_array_append_val (sides, side);
    }
  return sides;
}

/* How long side i is between its neighbours; below 0 where it has been turned round. */
static double
length_left (const GArray *sides, guint i, double by)
{
  const Side *side = side_of (sides, i);
  const Join before = join_of (side_of (sides, i + sides->len - 1), side, by), after = join_of (side, side_of (sides, i + 1), by);

  return point_dot (point_sub (after.end, before.start), side->along);
}

/* The worst goes first, since its neighbours are longer for it. */
static void
drop_turned (GArray *sides, double by)
{
  while (sides->len > 2)
    {
      guint worst = 0;
      double least = INFINITY;

      for (guint i = 0; i < sides->len; i++)
        {
          const double length = length_left (sides, i, by);
          worst = length < least ? i : worst;
          least = fmin (least, length);
        }
      if (least >= 0)
        return;
      g_array_remove_index (sides, worst);
    }
}

GArray *
kerf_polygon (const Point corners[], size_t count, double by)
{
  g_autoptr (GArray) sides = moved_sides (corners, count, by), made = g_array_new (FALSE, FALSE, sizeof (Point));
  const double area = twice_area (corners, count);

  if (by != 0)
    drop_turned (sides, fabs (by));
  for (guint i = 0; i < sides->len; i++)
    {
      const Join join = join_of (side_of (sides, i + sides->len - 1), side_of (sides, i), fabs (by));
      g_array_append_val (made, join.end);
      if (!point_same (join.end, join.start))
        g_array_append_val (made, join.start);
    }
  const bool lives = sides->len > 2 && twice_area ((const Point *) (gpointer) made->data, made->len) * area > 0;
  return lives ? g_steal_pointer (&made) : NULL;
}

static void
add_polygon (FlatPiece *piece, FlatPurpose purpose, const GArray *corners)
{
  g_autofree Segment *sides = g_new (Segment, corners->len);

  for (guint i = 1; i < corners->len; i++)
    sides[i - 1] = segment_line (g_array_index (corners, Point, i));
  flat_piece_add_line (piece, purpose, true, g_array_index (corners, Point, 0), sides, corners->len - 1);
}

/* NULL where the line stays as it is. */
static GArray *
line_moved (const FlatLine *line, double kerf)
{
  const double by = line->purpose == FLAT_CUT ? kerf / 2 : line->purpose == FLAT_OPENING ? -kerf / 2 : 0;
  g_autoptr (GArray) corners = g_array_new (FALSE, FALSE, sizeof (Point));

  if (by == 0 || !flat_line_is_closed (line))
    return NULL;
  flat_line_corners (line, within, corners);
  return corners->len > 2 ? kerf_polygon ((const Point *) (gpointer) corners->data, corners->len, by) : NULL;
}

FlatPiece *
kerf_piece (const FlatPiece *piece, double kerf)
{
  FlatPiece *made = flat_piece_new (piece->name, piece->remark);

  for (guint i = 0; i < piece->lines->len; i++)
    {
      const FlatLine *line = &g_array_index (piece->lines, FlatLine, i);
      g_autoptr (GArray) moved = line_moved (line, kerf);
      if (moved != NULL)
        add_polygon (made, line->purpose, moved);
      else
        flat_piece_add_line (made, line->purpose, line->closed, line->start, line->segments, line->count);
    }
  for (guint i = 0; i < piece->words->len; i++)
    flat_piece_add_word (made, &g_array_index (piece->words, FlatWord, i));
  return made;
}
