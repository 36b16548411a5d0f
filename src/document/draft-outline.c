#include "document/draft-private.h"
#include <math.h>
#include "document/number-text.h"
#include "trammel-config.h"
#include <glib/gi18n-lib.h>

/* An arc's end may lie this far off its ellipse, mm: a part of the format. */
static const double OFF_THE_ELLIPSE = 0.001;

static const NodeRecord *
node_at (const Draft *self, guint index)
{
  return &g_array_index (self->nodes, NodeRecord, index);
}

static int
line_at (const Draft *self, guint index)
{
  return g_array_index (self->node_lines, int, index);
}

static Point
place_of (const NodeRecord *node)
{
  return (Point) { node->x, node->y };
}

static Segment
segment_of (const NodeRecord *node)
{
  switch (node->segment)
    {
    case ELEMENT_CURVE: return segment_curve ((Point) { node->x1, node->y1 }, (Point) { node->x2, node->y2 }, place_of (node));
    case ELEMENT_ARC:   return segment_arc ((Point) { node->cx, node->cy }, node->rx, node->ry, place_of (node));
    default:            return segment_line (place_of (node));
    }
}

/* Distance from the ellipse, to first order: the value of its equation over its slope. Exact enough for what lies near it. */
static double
distance_off (const NodeRecord *arc, Point place)
{
  const double u = (place.x - arc->cx) / arc->rx, v = (place.y - arc->cy) / arc->ry;
  const double slope = 2 * hypot (u / arc->rx, v / arc->ry);

  return slope > 0 ? fabs (u * u + v * v - 1) / slope : fmin (arc->rx, arc->ry);
}

static bool
check_arc (const Draft *self, guint index)
{
  const NodeRecord *arc = node_at (self, index);
  const Point ends[] = { place_of (node_at (self, index - 1)), place_of (arc) };

  if (!(arc->rx > 0 && arc->ry > 0))
    {
      problems_add (self->problems, READER_ERROR_VALUE, line_at (self, index),
                    _("<arc>: its ellipse has no size; write an rx and an ry greater than 0"));
      return false;
    }
  for (int i = 0; i < 2; i++)
    if (!(distance_off (arc, ends[i]) <= OFF_THE_ELLIPSE))
      {
        char x[NUMBER_ROOM], y[NUMBER_ROOM];
        g_autofree char *off = g_strdup_printf ("%.3g", distance_off (arc, ends[i]));

        number_write (ends[i].x, x);
        number_write (ends[i].y, y);
        problems_add (self->problems, READER_ERROR_VALUE, line_at (self, index),
                      _("<arc>: its end at (%s, %s) lies %s mm off its ellipse; correct that place, the middle (cx, cy) or the "
                        "semi-axes (rx, ry)"), x, y, off);
        return false;
      }
  return true;
}

/* One start, in front, and then something. */
static bool
check_run (const Draft *self, const char *subject, int line)
{
  const guint count = self->nodes->len;

  if (count < 2)
    {
      problems_add (self->problems, READER_ERROR_VALUE, line,
                    _("%s: an outline needs at least two nodes; give it a <start> and a <line>, <curve> or <arc>"), subject);
      return false;
    }
  if (node_at (self, 0)->segment != ELEMENT_START)
    {
      problems_add (self->problems, READER_ERROR_VALUE, line_at (self, 0), _("an outline begins with <start>; put one before this <%s>"),
                    element_of (node_at (self, 0)->segment)->name);
      return false;
    }
  for (guint i = 1; i < count; i++)
    if (node_at (self, i)->segment == ELEMENT_START)
      {
        problems_add (self->problems, READER_ERROR_VALUE, line_at (self, i), _("this is the outline’s second <start>; make it a <line>"));
        return false;
      }
  return true;
}

/* The outline again, its kinds of nodes as the file says where it does. */
static Outline *
outline_with_kinds (const Draft *self, Outline *takes, const Segment segments[])
{
  const guint count = self->nodes->len;
  NodeKind *kinds = g_new (NodeKind, count);
  Outline *made = NULL;

  for (guint i = 0; i < count; i++)
    kinds[i] = node_at (self, i)->node > 0 ? (NodeKind) (node_at (self, i)->node - 1) : outline_node_kind (takes, i);
  if (outline_new (place_of (node_at (self, 0)), segments, count - 1, kinds, &made) != CORE_OK)
    made = outline_ref (takes);
  outline_unref (takes);
  g_free (kinds);
  return made;
}

static bool
any_kind_given (const Draft *self)
{
  for (guint i = 0; i < self->nodes->len; i++)
    if (node_at (self, i)->node > 0)
      return true;
  return false;
}

/* The line of the arc that the geometry refuses by itself; `line` when it refuses none. */
static int
line_of_refused_arc (const Draft *self, const Segment segments[], int line)
{
  for (guint i = 1; i < self->nodes->len; i++)
    {
      Outline *alone = NULL;

      if (outline_new (place_of (node_at (self, i - 1)), &segments[i - 1], 1, NULL, &alone) == CORE_OFF_ITS_ARC)
        return line_at (self, i);
      outline_unref (alone);
    }
  return line;
}

/* What the checks of single nodes let pass and the geometry still cannot take: an arc of less than a millimetre it wants closer to its ellipse. */
static void
add_refusal (const Draft *self, CoreStatus status, const Segment segments[], const char *subject, int line)
{
  switch (status)
    {
    case CORE_OFF_ITS_ARC:
      problems_add (self->problems, READER_ERROR_VALUE, line_of_refused_arc (self, segments, line),
                    _("<arc>: for so small an arc an end lies too far off its ellipse; correct that place, the middle (cx, cy) or the "
                      "semi-axes (rx, ry)"));
      return;
    case CORE_NO_MEMORY:
      problems_add (self->problems, READER_ERROR_VALUE, line,
                    _("%s: there is no memory left for its outline; close another program and open the file again"), subject);
      return;
    default:
      problems_add (self->problems, READER_ERROR_VALUE, line,
                    _("%s: a node or handle of its outline lies too far away; correct its place"), subject);
    }
}

Outline *
draft_outline (const Draft *self, const char *subject, int line)
{
  const guint count = self->nodes->len;
  Outline *outline = NULL;
  Segment *segments;
  bool sound = check_run (self, subject, line);
  CoreStatus status;

  for (guint i = 1; sound && i < count; i++)
    sound = node_at (self, i)->segment != ELEMENT_ARC || check_arc (self, i);
  if (!sound)
    return NULL;
  segments = g_new (Segment, count - 1);
  for (guint i = 1; i < count; i++)
    segments[i - 1] = segment_of (node_at (self, i));
  status = outline_new (place_of (node_at (self, 0)), segments, count - 1, NULL, &outline);
  if (status != CORE_OK)
    add_refusal (self, status, segments, subject, line);
  else if (any_kind_given (self))
    outline = outline_with_kinds (self, outline, segments);
  g_free (segments);
  return outline;
}
