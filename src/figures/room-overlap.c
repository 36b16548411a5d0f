#include "figures/room-overlap.h"

#include <math.h>
#include "document/part-box.h"

/* A box with its reach along x, so that they can be passed in order. */
typedef struct { const Part *part; guint number; Point extent; double from, to; } Stretch;

static int
foremost_first (gconstpointer a, gconstpointer b)
{
  const Stretch *first = a, *second = b;

  if (first->from != second->from)
    return first->from < second->from ? -1 : 1;
  return (int) first->number - (int) second->number;
}

/* How deep two boxes are within each other along a direction seen from above; negative: apart. */
static double
depth_along (const Point a[4], const Point b[4], Point way)
{
  double a_from = INFINITY, a_to = -INFINITY, b_from = INFINITY, b_to = -INFINITY;

  for (int i = 0; i < 4; i++)
    {
      const double at_a = a[i].x * way.x + a[i].y * way.y, at_b = b[i].x * way.x + b[i].y * way.y;
      a_from = fmin (a_from, at_a);
      a_to = fmax (a_to, at_a);
      b_from = fmin (b_from, at_b);
      b_to = fmax (b_to, at_b);
    }
  return fmin (a_to, b_to) - fmax (a_from, b_from);
}

/* Two rectangles are apart exactly when they are along a side of one of them. */
static double
depth_from_above (const Part *a, const Part *b)
{
  Point a_corners[4], b_corners[4];
  double least = INFINITY;

  part_corners (a, a_corners);
  part_corners (b, b_corners);
  for (int i = 0; i < 4; i++)
    {
      const double turn = (i < 2 ? a : b)->turn * G_PI / 180 + (i % 2 ? G_PI / 2 : 0);
      least = fmin (least, depth_along (a_corners, b_corners, (Point) { cos (turn), sin (turn) }));
    }
  return least;
}

/* The edge of the first that looks to the second along the axis on which they would be soonest apart, in each of the two views. */
static unsigned
edges_towards (const Stretch *a, const Stretch *b, double high)
{
  const double along = (a->extent.x + b->extent.x) / 2 - fabs (a->part->x - b->part->x);
  const double across = (a->extent.y + b->extent.y) / 2 - fabs (a->part->y - b->part->y);
  const unsigned in_x = a->part->x <= b->part->x ? EDGE_AFT : EDGE_FORE, in_z = a->part->z <= b->part->z ? EDGE_TOP : EDGE_BOTTOM;
  const unsigned in_y = a->part->y <= b->part->y ? EDGE_STARBOARD : EDGE_PORT;

  return (along <= across ? in_x : in_y) | (along <= high ? in_x : in_z);
}

static unsigned
opposite (unsigned edges)
{
  const unsigned first = EDGE_FORE | EDGE_PORT | EDGE_TOP;

  return (edges & first) << 1 | (edges & ~first) >> 1;
}

static void
judge (GArray *faults, const Stretch *a, const Stretch *b, double tolerance)
{
  const double high = (a->part->height + b->part->height) / 2 - fabs (a->part->z - b->part->z);
  const double across = (a->extent.y + b->extent.y) / 2 - fabs (a->part->y - b->part->y);

  if (high <= tolerance || across <= tolerance)
    return;
  const double deep = fmin (depth_from_above (a->part, b->part), high);
  const Stretch *first = a->number < b->number ? a : b, *second = first == a ? b : a;
  const unsigned edges = edges_towards (first, second, high);
  const RoomFault fault = { .kind = ROOM_OVERLAP, .part = first->part, .other = second->part, .edges = edges,
                            .other_edges = opposite (edges), .lacking_mm = deep, .clear_mm = NAN };
  if (deep > tolerance)
    g_array_append_val (faults, fault);
}

void
room_overlaps_find (GArray *faults, GPtrArray *parts, double tolerance)
{
  g_autofree Stretch *order = g_new (Stretch, parts->len);
  const guint most = faults->len + ROOM_OVERLAPS_MOST;

  if (parts->len < 2)
    return;
  for (guint i = 0; i < parts->len; i++)
    {
      const Part *part = g_ptr_array_index (parts, i);
      const Point extent = part_extent (part);
      order[i] = (Stretch) { part, i, extent, part->x - extent.x / 2, part->x + extent.x / 2 };
    }
  if (parts->len > 0)         /* there is no array then */
    qsort (order, parts->len, sizeof *order, foremost_first);
  for (guint i = 0; i < parts->len; i++)
    for (guint j = i + 1; j < parts->len && order[j].from < order[i].to && faults->len < most; j++)
      judge (faults, &order[i], &order[j], tolerance);
}
