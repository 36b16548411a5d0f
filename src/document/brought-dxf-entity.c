#include "document/brought-dxf.h"

#include <math.h>
#include <string.h>
#include "document/spline.h"

static const double DEGREE = M_PI / 180;

/* DXF's x runs to the right and its y up the page; on a plane that faces away from us x runs to the left. */
static Point
place (const DxfEntity *self, double x, double y)
{
  return (Point) { -y, self->from_behind ? -x : x };
}

static int
flags_of (const DxfEntity *self, int code)
{
  const double value = self->number[code];

  return value >= 0 && value < 65536 ? (int) value : 0;
}

void
dxf_entity_init (DxfEntity *self)
{
  self->layer[0] = self->name[0] = '\0';
  self->from_behind = false;
  for (size_t i = 0; i < G_N_ELEMENTS (self->number); i++)
    self->number[i] = NAN;
  self->x = g_array_new (FALSE, FALSE, sizeof (double));
  self->y = g_array_new (FALSE, FALSE, sizeof (double));
  self->bulge = g_array_new (FALSE, FALSE, sizeof (double));
  self->knots = g_array_new (FALSE, FALSE, sizeof (double));
  self->weights = g_array_new (FALSE, FALSE, sizeof (double));
}

void
dxf_entity_clear (DxfEntity *self)
{
  g_array_unref (self->x);
  g_array_unref (self->y);
  g_array_unref (self->bulge);
  g_array_unref (self->knots);
  g_array_unref (self->weights);
}

static void
take_group (DxfEntity *self, const DxfGroup *group, bool spline)
{
  const double value = dxf_number (group), none = 0;

  if (group->code == 8)
    g_strlcpy (self->layer, group->text, sizeof self->layer);
  if (group->code == 2)
    g_strlcpy (self->name, group->text, sizeof self->name);
  if (group->code < 0 || group->code > 255 || isnan (value))
    return;
  self->number[group->code] = value;
  if (group->code == 10)
    {
      g_array_append_val (self->x, value);
      g_array_append_val (self->y, none);
      g_array_append_val (self->bulge, none);
    }
  else if (group->code == 20 && self->y->len > 0)
    g_array_index (self->y, double, self->y->len - 1) = value;
  else if (group->code == 42 && self->bulge->len > 0)
    g_array_index (self->bulge, double, self->bulge->len - 1) = value;
  else if (group->code == 40 && spline)
    g_array_append_val (self->knots, value);
  else if (group->code == 41 && spline)
    g_array_append_val (self->weights, value);
}

static void
keep_vertices (DxfEntity *self, guint count)
{
  g_array_set_size (self->x, count);
  g_array_set_size (self->y, count);
  g_array_set_size (self->bulge, count);
}

/* A POLYLINE's vertices are entities of their own, up to SEQEND. Its own group 10 is no vertex, and a vertex of group 70 with 16 only
 * pulls at the curve that the others have been put on. */
static void
read_vertices (DxfEntity *self, DxfWalk *walk)
{
  keep_vertices (self, 0);
  while (dxf_next (walk))
    {
      if (walk->group.code == 0 && strcmp (walk->group.text, "VERTEX") != 0)
        {
          if (strcmp (walk->group.text, "SEQEND") != 0)
            dxf_push_back (walk);
          return;
        }
      const bool of_its_own = walk->group.code == 10 || walk->group.code == 20 || walk->group.code == 42;
      if (of_its_own)
        take_group (self, &walk->group, false);
      else if (walk->group.code == 70 && self->x->len > 0 && ((int) g_ascii_strtoll (walk->group.text, NULL, 10) & 16))
        keep_vertices (self, self->x->len - 1);
    }
}

/* Only these are drawn on a plane of their own; lines, ellipses and splines stand in space. */
static bool
has_a_plane (const char *kind)
{
  return strcmp (kind, "ARC") == 0 || strcmp (kind, "CIRCLE") == 0 || strcmp (kind, "LWPOLYLINE") == 0 || strcmp (kind, "POLYLINE") == 0;
}

void
dxf_entity_read (DxfEntity *self, DxfWalk *walk, const char *kind)
{
  const bool spline = strcmp (kind, "SPLINE") == 0;

  while (dxf_next (walk))
    {
      if (walk->group.code == 0)
        {
          dxf_push_back (walk);
          break;
        }
      take_group (self, &walk->group, spline);
    }
  self->from_behind = self->number[230] < 0 && has_a_plane (kind);
  if (strcmp (kind, "POLYLINE") == 0)
    read_vertices (self, walk);
}

static double
nth (const GArray *array, guint i)
{
  return g_array_index (array, double, i);
}

static Point
vertex (const DxfEntity *self, guint i)
{
  return place (self, nth (self->x, i), nth (self->y, i));
}

/* From one vertex to the next: straight, or a piece of a circle whose bulge is the tangent of a quarter of its angle. */
static void
draw_side (BroughtLines *lines, Point from, Point to, double bulge)
{
  const double sweep = 4 * atan (bulge), chord = point_distance (from, to);

  if (bulge == 0 || !(chord > 0))
    {
      brought_lines_line (lines, to);
      return;
    }
  /* Our axes are theirs turned by a quarter, so that their left turn runs from x towards y. */
  const double height = chord / 2 / tan (sweep / 2);
  const Point middle = point_mix (from, to, 0.5), way = point_scale (point_sub (to, from), 1 / chord);
  const Point centre = point_add (middle, point_scale ((Point) { -way.y, way.x }, height));
  const Point major = point_sub (from, centre);
  brought_lines_arc (lines, centre, major, (Point) { -major.y, major.x }, 0, sweep);
}

static bool
draw_polyline (const DxfEntity *self, BroughtLines *lines)
{
  enum { CLOSED = 1, SURFACE = 16 | 64 };      /* group 70; a surface made of corners is no line */
  const bool closed = flags_of (self, 70) & CLOSED;
  const guint count = self->x->len;

  if (count < 2 || (flags_of (self, 70) & SURFACE))
    return false;
  brought_lines_begin (lines, vertex (self, 0), self->layer);
  for (guint i = 1; i < count + (closed ? 1 : 0); i++)
    draw_side (lines, vertex (self, i - 1), vertex (self, i % count), nth (self->bulge, i - 1) * (self->from_behind ? -1 : 1));
  brought_lines_end (lines);
  return true;
}

/* Angles run from x towards y, to the left, as on their page. */
static bool
draw_round (const DxfEntity *self, const char *kind, BroughtLines *lines)
{
  const bool ellipse = strcmp (kind, "ELLIPSE") == 0, whole = strcmp (kind, "CIRCLE") == 0;
  const double *n = self->number;
  const Point centre = place (self, n[10], n[20]);
  const Point major = ellipse ? place (self, n[11], n[21]) : place (self, n[40], 0);
  const double ratio = ellipse ? n[40] : 1, unit = ellipse ? 1 : DEGREE;
  const double from = whole ? 0 : (ellipse ? n[41] : n[50]) * unit, to = whole ? 2 * M_PI : (ellipse ? n[42] : n[51]) * unit;
  /* An ellipse's own axis says which way round it runs. */
  const double left = self->from_behind || (ellipse && n[230] < 0) ? -ratio : ratio;
  const Point minor = { -major.y * left, major.x * left };
  double sweep = fmod (to - from, 2 * M_PI);

  if (!point_is_finite (centre) || !point_is_finite (major) || !isfinite (ratio + from + to))
    return false;
  sweep = sweep <= 1e-9 ? sweep + 2 * M_PI : sweep;
  brought_lines_begin (lines, point_add (centre, point_add (point_scale (major, cos (from)), point_scale (minor, sin (from)))),
                       self->layer);
  brought_lines_arc (lines, centre, major, minor, from, sweep);
  brought_lines_end (lines);
  return true;
}

static bool
draw_line (const DxfEntity *self, BroughtLines *lines)
{
  const double *n = self->number;
  const Point from = place (self, n[10], n[20]), to = place (self, n[11], n[21]);

  if (!point_is_finite (from) || !point_is_finite (to))
    return false;
  brought_lines_begin (lines, from, self->layer);
  brought_lines_line (lines, to);
  brought_lines_end (lines);
  return true;
}

static bool
draw_spline (const DxfEntity *self, BroughtLines *lines)
{
  const guint count = self->x->len;
  g_autofree Point *poles = g_new (Point, count + 1);
  const int degree = flags_of (self, 71);
  const Spline spline = { .degree = degree, .poles = poles, .pole_count = count, .knots = (const double *) (gpointer) self->knots->data,
                          .knot_count = self->knots->len,
                          .weights = self->weights->len == count ? (const double *) (gpointer) self->weights->data : NULL };

  for (guint i = 0; i < count; i++)
    poles[i] = vertex (self, i);
  return spline_draw (&spline, self->layer, lines);
}

bool
dxf_entity_draw (const DxfEntity *self, const char *kind, BroughtLines *lines)
{
  if (strcmp (kind, "LINE") == 0)
    return draw_line (self, lines);
  if (strcmp (kind, "LWPOLYLINE") == 0 || strcmp (kind, "POLYLINE") == 0)
    return draw_polyline (self, lines);
  if (strcmp (kind, "ARC") == 0 || strcmp (kind, "CIRCLE") == 0 || strcmp (kind, "ELLIPSE") == 0)
    return draw_round (self, kind, lines);
  if (strcmp (kind, "SPLINE") == 0)
    return draw_spline (self, lines);
  return false;
}
