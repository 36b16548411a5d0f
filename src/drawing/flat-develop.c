#include "drawing/flat-develop.h"
#include <math.h>

/* A panel between two breaks: along = at + (station - from) * stretch. */
typedef struct { double from, at, stretch; } Panel;

static double
stretch_of (double degrees)
{
  return 1 / cos (degrees * (G_PI / 180));
}

/* The panel of that station; at a break the inner one, which says the same. */
static Panel
panel_at (const Surface *surface, double station)
{
  Panel panel = { 0, 0, stretch_of (surface->dihedral) };

  if (!surface_is_horizontal (surface))
    return (Panel) { 0, 0, 1 };
  for (size_t i = 0; i < surface->break_count && surface->breaks[i].from < station; i++)
    {
      const double from = surface->breaks[i].from;

      panel = (Panel) { from, panel.at + (from - panel.from) * panel.stretch, stretch_of (surface->breaks[i].angle) };
    }
  return panel;
}

static double
along (Panel panel, double station)
{
  return panel.at + (station - panel.from) * panel.stretch;
}

double
flat_station (const Surface *surface, double station)
{
  return along (panel_at (surface, station), station);
}

/* A wing's span runs to the right; a fin stands. */
static Point
laid (const Surface *surface, Panel panel, Point own)
{
  return surface_is_horizontal (surface) ? (Point) { along (panel, own.y), own.x } : (Point) { own.x, -own.y };
}

Point
flat_place (const Surface *surface, Point own)
{
  return laid (surface, panel_at (surface, own.y), own);
}

static Segment
segment_laid (const Surface *surface, Panel panel, const Segment *own)
{
  const Point to = laid (surface, panel, own->to);

  switch (own->kind)
    {
    case SEGMENT_CURVE:
      return segment_curve (laid (surface, panel, own->control1), laid (surface, panel, own->control2), to);
    case SEGMENT_ARC:
      return surface_is_horizontal (surface) ? segment_arc (laid (surface, panel, own->centre), own->ry * panel.stretch, own->rx, to)
                                             : segment_arc (laid (surface, panel, own->centre), own->rx, own->ry, to);
    default:
      return segment_line (to);
    }
}

static int
compare_numbers (const void *a, const void *b)
{
  const double x = *(const double *) a, y = *(const double *) b;

  return (x > y) - (x < y);
}

/* An arc half-way round would go the other way on the piece, where its axes have changed places. */
static bool
is_half_way_round (Point from, const Segment *segment)
{
  return segment->kind == SEGMENT_ARC
         && point_distance (point_mix (from, segment->to, 0.5), segment->centre) < 1e-3 * fmax (segment->rx, segment->ry);
}

/* Where a segment is cut: rising parameters, a new array of double. */
static GArray *
cuts_of (const Surface *surface, Point from, const Segment *segment)
{
  GArray *cuts = g_array_new (FALSE, FALSE, sizeof (double));
  const double half = 0.5;

  if (is_half_way_round (from, segment))
    g_array_append_val (cuts, half);
  for (size_t i = 0; surface_is_horizontal (surface) && i < surface->break_count; i++)
    {
      double t[3];
      const size_t count = segment_at_station (from, segment, surface->breaks[i].from, t);

      g_array_append_vals (cuts, t, count);
    }
  g_array_sort (cuts, compare_numbers);
  return cuts;
}

static void
add_laid (GArray *laid_flat, const Surface *surface, Point from, const Segment *segment)
{
  const Segment made = segment_laid (surface, panel_at (surface, segment_at (from, segment, 0.5).y), segment);

  g_array_append_val (laid_flat, made);
}

static void
add_cut (GArray *laid_flat, const Surface *surface, Point from, Segment segment)
{
  static const double least = 1e-9;      /* of a segment's run */
  g_autoptr (GArray) cuts = cuts_of (surface, from, &segment);
  double done = 0;

  for (guint i = 0; i < cuts->len; i++)
    {
      const double t = g_array_index (cuts, double, i);
      Segment first, rest;

      if (t - done < least || 1 - t < least)
        continue;
      segment_split (from, &segment, (t - done) / (1 - done), &first, &rest);
      add_laid (laid_flat, surface, from, &first);
      from = first.to;
      segment = rest;
      done = t;
    }
  add_laid (laid_flat, surface, from, &segment);
}

void
flat_add_run (FlatPiece *piece, const Surface *surface, FlatPurpose purpose, bool closed, Point start, const Segment own[], size_t count)
{
  g_autoptr (GArray) laid_flat = g_array_new (FALSE, FALSE, sizeof (Segment));
  Point from = start;

  for (size_t i = 0; i < count; i++)
    {
      add_cut (laid_flat, surface, from, own[i]);
      from = own[i].to;
    }
  flat_piece_add_line (piece, purpose, closed, flat_place (surface, start), (const Segment *) (void *) laid_flat->data, laid_flat->len);
}

void
flat_add_way (FlatPiece *piece, const Surface *surface, FlatPurpose purpose, Point from, Point to)
{
  const Segment way = segment_line (to);

  flat_add_run (piece, surface, purpose, false, from, &way, 1);
}
