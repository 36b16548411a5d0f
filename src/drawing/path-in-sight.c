#include "drawing/path-in-sight.h"
#include <math.h>

enum { DEEPEST = 6 };      /* halvings: a piece is then no larger than what is seen, at any zoom of the sheet */

Box
sight_of (cairo_t *cr)
{
  Box box;
  double margin;

  cairo_clip_extents (cr, &box.min.x, &box.min.y, &box.max.x, &box.max.y);
  margin = 0.1 * fmax (box.max.x - box.min.x, box.max.y - box.min.y);
  return (Box) { { box.min.x - margin, box.min.y - margin }, { box.max.x + margin, box.max.y + margin } };
}

typedef enum { SEEN_NOT, SEEN_IN_PART, SEEN_WORTH_NO_HALVING } Seen;

static Seen
how_seen (Box piece, const Box *sight)
{
  const double wide = sight->max.x - sight->min.x, high = sight->max.y - sight->min.y;

  if (piece.max.x < sight->min.x || piece.min.x > sight->max.x || piece.max.y < sight->min.y || piece.min.y > sight->max.y)
    return SEEN_NOT;
  return piece.max.x - piece.min.x > wide || piece.max.y - piece.min.y > high ? SEEN_IN_PART : SEEN_WORTH_NO_HALVING;
}

static void
add_curve (cairo_t *cr, const Point p[4], const Box *sight, int depth)
{
  const Box hull = box_with (box_with (box_with (box_with (box_empty (), p[0]), p[1]), p[2]), p[3]);
  const Seen seen = how_seen (hull, sight);
  const Point a = point_mix (p[0], p[1], 0.5), b = point_mix (p[1], p[2], 0.5), c = point_mix (p[2], p[3], 0.5);
  const Point d = point_mix (a, b, 0.5), e = point_mix (b, c, 0.5), middle = point_mix (d, e, 0.5);

  if (seen == SEEN_NOT)
    cairo_line_to (cr, p[3].x, p[3].y);
  else if (seen == SEEN_WORTH_NO_HALVING || depth == DEEPEST)
    cairo_curve_to (cr, p[1].x, p[1].y, p[2].x, p[2].y, p[3].x, p[3].y);
  else
    {
      add_curve (cr, (Point[]) { p[0], a, d, middle }, sight, depth + 1);
      add_curve (cr, (Point[]) { middle, e, c, p[3] }, sight, depth + 1);
    }
}

void
curve_in_sight (cairo_t *cr, const Point p[4], const Box *sight)
{
  add_curve (cr, p, sight, 0);
}

static Point
arc_place (const PathArc *arc, double angle)
{
  return (Point) { arc->centre.x + arc->rx * cos (angle), arc->centre.y + arc->ry * sin (angle) };
}

/* No further from its chord than the rise over it, stretched as the arc is. */
static Box
arc_box (const PathArc *arc)
{
  const double rise = 1 - cos (fmin (fabs (arc->end - arc->begin) / 2, M_PI));
  const Box ends = box_with (box_with (box_empty (), arc_place (arc, arc->begin)), arc_place (arc, arc->end));

  return (Box) { { ends.min.x - rise * arc->rx, ends.min.y - rise * arc->ry }, { ends.max.x + rise * arc->rx, ends.max.y + rise * arc->ry } };
}

static void
add_whole_arc (cairo_t *cr, const PathArc *arc)
{
  cairo_save (cr);
  cairo_translate (cr, arc->centre.x, arc->centre.y);
  cairo_scale (cr, arc->rx, arc->ry);
  (arc->end > arc->begin ? cairo_arc : cairo_arc_negative) (cr, 0, 0, 1, arc->begin, arc->end);
  cairo_restore (cr);
}

static void
add_arc (cairo_t *cr, const PathArc *arc, const Box *sight, int depth)
{
  const Seen seen = how_seen (arc_box (arc), sight);
  PathArc half = *arc;

  if (seen == SEEN_NOT)
    {
      const Point end = arc_place (arc, arc->end);

      cairo_line_to (cr, end.x, end.y);
    }
  else if (seen == SEEN_WORTH_NO_HALVING || depth == DEEPEST)
    add_whole_arc (cr, arc);
  else
    {
      half.end = (arc->begin + arc->end) / 2;
      add_arc (cr, &half, sight, depth + 1);
      half.begin = half.end;
      half.end = arc->end;
      add_arc (cr, &half, sight, depth + 1);
    }
}

void
arc_in_sight (cairo_t *cr, const PathArc *arc, const Box *sight)
{
  add_arc (cr, arc, sight, 0);
}
