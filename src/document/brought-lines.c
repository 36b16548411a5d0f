#include "document/brought-lines.h"

#include "trammel-config.h"
#include <glib/gi18n-lib.h>
#include <math.h>
#include <string.h>

/* A place further off than ten metres is none of a model. */
static const double FARTHEST = 10000;

void
brought_line_clear (gpointer data)
{
  BroughtLine *line = data;

  g_free (line->name);
  g_free (line->segments);
}

void
brought_lines_init (BroughtLines *self)
{
  *self = (BroughtLines) { .lines = g_array_new (FALSE, FALSE, sizeof (BroughtLine)),
                           .segments = g_array_new (FALSE, FALSE, sizeof (Segment)) };
  g_array_set_clear_func (self->lines, brought_line_clear);
}

void
brought_lines_clear (BroughtLines *self)
{
  g_clear_pointer (&self->lines, g_array_unref);
  g_clear_pointer (&self->segments, g_array_unref);
  g_clear_pointer (&self->name, g_free);
}

void
brought_lines_begin (BroughtLines *self, Point at, const char *name)
{
  brought_lines_end (self);
  self->start = self->at = at;
  self->name = name && *name ? g_utf8_make_valid (name, -1) : NULL;
  self->under_way = true;
}

static void
add (BroughtLines *self, Segment segment)
{
  if (!self->under_way || self->total > BROUGHT_SEGMENTS_MOST)
    return;
  g_array_append_val (self->segments, segment);
  self->at = segment.to;
  self->total++;
}

void
brought_lines_line (BroughtLines *self, Point to)
{
  if (to.x != self->at.x || to.y != self->at.y)
    add (self, segment_line (to));
}

void
brought_lines_curve (BroughtLines *self, Point control1, Point control2, Point to)
{
  add (self, segment_curve (control1, control2, to));
}

static Point
on_ellipse (Point centre, Point major, Point minor, double u)
{
  return point_add (centre, point_add (point_scale (major, cos (u)), point_scale (minor, sin (u))));
}

static Point
ellipse_slope (Point major, Point minor, double u)
{
  return point_add (point_scale (major, -sin (u)), point_scale (minor, cos (u)));
}

void
brought_lines_arc (BroughtLines *self, Point centre, Point major, Point minor, double from, double sweep)
{
  const int pieces = (int) ceil (fabs (sweep) / (M_PI / 2) - 1e-9);
  const double step = pieces > 0 ? sweep / pieces : 0, handle = 4.0 / 3 * tan (step / 4);

  for (int i = 0; i < pieces; i++)
    {
      const double u = from + i * step, v = u + step;
      const Point a = on_ellipse (centre, major, minor, u), b = on_ellipse (centre, major, minor, v);
      brought_lines_curve (self, point_add (a, point_scale (ellipse_slope (major, minor, u), handle)),
                           point_sub (b, point_scale (ellipse_slope (major, minor, v), handle)), b);
    }
}

void
brought_lines_settle (BroughtLines *self, Point there)
{
  if (!self->under_way || self->segments->len == 0)
    return;
  g_array_index (self->segments, Segment, self->segments->len - 1).to = there;
  self->at = there;
}

/* Whether the line under way is back where it began but for how numbers are rounded. */
static bool
is_back (const BroughtLines *self)
{
  return point_distance (self->at, self->start) <= 1e-9 * (1 + hypot (self->start.x, self->start.y));
}

void
brought_lines_close (BroughtLines *self)
{
  if (self->under_way && !is_back (self))
    brought_lines_line (self, self->start);
  brought_lines_end (self);
}

void
brought_lines_end (BroughtLines *self)
{
  if (self->under_way && self->segments->len > 0)
    {
      const bool closed = is_back (self);
      if (closed)
        g_array_index (self->segments, Segment, self->segments->len - 1).to = self->start;
      const BroughtLine line = {
        .name = g_steal_pointer (&self->name), .start = self->start, .count = self->segments->len,
        .segments = g_memdup2 (self->segments->data, self->segments->len * sizeof (Segment)),
        .closed = closed };
      g_array_append_val (self->lines, line);
    }
  g_array_set_size (self->segments, 0);
  g_clear_pointer (&self->name, g_free);
  self->under_way = false;
}

double
brought_line_length (const BroughtLine *line)
{
  double length = 0;

  for (size_t i = 0; i < line->count; i++)
    length += segment_length (i ? line->segments[i - 1].to : line->start, &line->segments[i]);
  return length;
}

static bool
line_scale (BroughtLine *line, double scale)
{
  bool sound;

  line->start = point_scale (line->start, scale);
  sound = fabs (line->start.x) < FARTHEST && fabs (line->start.y) < FARTHEST;
  for (size_t i = 0; i < line->count; i++)
    {
      Segment *segment = &line->segments[i];
      segment->to = point_scale (segment->to, scale);
      segment->control1 = point_scale (segment->control1, scale);
      segment->control2 = point_scale (segment->control2, scale);
      sound = sound && fabs (segment->to.x) < FARTHEST && fabs (segment->to.y) < FARTHEST && point_is_finite (segment->control1)
              && point_is_finite (segment->control2);
    }
  return sound;
}

static int
compare_lengths (gconstpointer a, gconstpointer b)
{
  const double left = brought_line_length (a), right = brought_line_length (b);

  return (left < right) - (left > right);
}

Brought *
brought_lines_finish (BroughtLines *self, double scale, bool unit_known, const char *name, GError **error)
{
  Brought *made = NULL;
  bool sound = true;

  brought_lines_end (self);
  for (guint i = 0; i < self->lines->len; i++)
    sound = line_scale (&g_array_index (self->lines, BroughtLine, i), scale) && sound;
  if (self->lines->len == 0)
    g_set_error (error, BROUGHT_ERROR, BROUGHT_ERROR_EMPTY, _("%s: there is no line in this file."), name);
  else if (self->total > BROUGHT_SEGMENTS_MOST)
    g_set_error (error, BROUGHT_ERROR, BROUGHT_ERROR_VALUE, _("%s: more than 200,000 pieces of lines; take out what is not the outline."),
                 name);
  else if (!sound)
    g_set_error (error, BROUGHT_ERROR, BROUGHT_ERROR_VALUE, _("%s: a line reaches further than 10 m; check the drawing's unit."), name);
  else
    {
      g_array_sort (self->lines, compare_lengths);
      made = g_new0 (Brought, 1);
      *made = (Brought) { .count = self->lines->len, .unit_known = unit_known, .unit_mm = scale, .left_out = self->left_out };
      made->lines = (BroughtLine *) (gpointer) g_array_free (g_steal_pointer (&self->lines), FALSE);
    }
  brought_lines_clear (self);
  return made;
}
