#include "document/changes-private.h"
#include <math.h>
#include "document/kept-follow.h"

/* An arc stays one where its ellipse, moved, is an ellipse with axes along ours within this part of its larger semi-axis. */
static const double STAYS_AN_ELLIPSE = 1e-6;

enum { SAMPLES = 8 };

/* An outline on its way: its new segments, the kinds of all its nodes, and where it came to. */
typedef struct { const TracedMove *move; GArray *segments, *kinds; } Carry;

static Point
moved (const Carry *carry, double x, double y)
{
  return carry->move->move ((Point) { x, y }, carry->move->data);
}

static bool
is_within (double value, double most)
{
  return fabs (value) <= most;      /* false for what is not a number */
}

/* The arc moved, where that is an arc still. */
static bool
arc_moved (const Carry *carry, Point from, const Segment *arc, Segment *made)
{
  const Point c = arc->centre;
  const Point left = moved (carry, c.x - arc->rx, c.y), right = moved (carry, c.x + arc->rx, c.y);
  const Point low = moved (carry, c.x, c.y - arc->ry), high = moved (carry, c.x, c.y + arc->ry);
  const Point along = point_scale (point_sub (right, left), 0.5), up = point_scale (point_sub (high, low), 0.5);
  const Point centre = point_mix (point_mix (left, right, 0.5), point_mix (low, high, 0.5), 0.5);
  const double allowed = STAYS_AN_ELLIPSE * fmax (fabs (along.x), fabs (up.y));

  if (!(along.x > 0 && up.y > 0) || !is_within (along.y, allowed) || !is_within (up.x, allowed))
    return false;
  for (int i = 0; i <= SAMPLES; i++)
    {
      const Point at = segment_at (from, arc, (double) i / SAMPLES), is = moved (carry, at.x, at.y);
      const Point wanted = { centre.x + along.x * (at.x - c.x) / arc->rx, centre.y + up.y * (at.y - c.y) / arc->ry };

      if (!is_within (point_distance (is, wanted), allowed))
        return false;
    }
  *made = segment_arc (centre, along.x, up.y, moved (carry, arc->to.x, arc->to.y));
  return true;
}

static void
add (Carry *carry, Segment segment, NodeKind kind)
{
  g_array_append_val (carry->segments, segment);
  g_array_append_val (carry->kinds, kind);
}

static void
add_curve (Carry *carry, const Segment *curve, NodeKind kind)
{
  add (carry, segment_curve (moved (carry, curve->control1.x, curve->control1.y), moved (carry, curve->control2.x, curve->control2.y),
                             moved (carry, curve->to.x, curve->to.y)), kind);
}

/* Curves of an eighth of a turn at most, each within 5e-6 of the larger semi-axis. */
static void
add_arc_as_curves (Carry *carry, Point from, const Segment *arc, NodeKind kind)
{
  Segment left = *arc, curves[4];
  const size_t pieces = 2 * segment_as_curves (from, arc, curves);

  for (size_t i = 0; i < pieces; i++)
    {
      Segment first = left, rest = left;

      if (i + 1 < pieces)
        segment_split (from, &left, 1.0 / (double) (pieces - i), &first, &rest);
      segment_as_curves (from, &first, curves);
      add_curve (carry, &curves[0], i + 1 < pieces ? NODE_SMOOTH : kind);
      from = first.to;
      left = rest;
    }
}

static void
add_moved (Carry *carry, Point from, const Segment *segment, NodeKind kind)
{
  Segment arc;

  switch (segment->kind)
    {
    case SEGMENT_LINE:
      add (carry, segment_line (moved (carry, segment->to.x, segment->to.y)), kind);
      break;
    case SEGMENT_CURVE:
      add_curve (carry, segment, kind);
      break;
    case SEGMENT_ARC:
      if (arc_moved (carry, from, segment, &arc))
        add (carry, arc, kind);
      else
        add_arc_as_curves (carry, from, segment, kind);
      break;
    }
}

/* The outline moved, a new reference; NULL where geometry refuses. */
static Outline *
outline_carried (const Outline *outline, const TracedMove *move)
{
  Carry carry = { move, g_array_new (FALSE, FALSE, sizeof (Segment)), g_array_new (FALSE, FALSE, sizeof (NodeKind)) };
  const Point first = outline_node (outline, 0), start = moved (&carry, first.x, first.y);
  const NodeKind kind = outline_node_kind (outline, 0);
  Outline *made = NULL;

  g_array_append_val (carry.kinds, kind);
  for (size_t i = 0; i < outline_segment_count (outline); i++)
    add_moved (&carry, outline_node (outline, i), outline_segment (outline, i), outline_node_kind (outline, i + 1));
  if (outline_new (start, (const Segment *) carry.segments->data, carry.segments->len, (const NodeKind *) carry.kinds->data, &made)
      != CORE_OK)
    made = NULL;
  g_array_unref (carry.segments);
  g_array_unref (carry.kinds);
  return made;
}

/* How far off it is passed grows as the plan does there. */
static bool
carry_passed (PassedClick *passed, const TracedMove *move)
{
  const Point at = passed->at, beside = { at.x + passed->by, at.y };

  if (!(passed->by > 0))
    return true;
  passed->at = move->move (at, move->data);
  passed->by = point_distance (passed->at, move->move (beside, move->data));
  return isfinite (passed->by);
}

/* One of a piece's outlines, replaced by where it goes; what is kept of its nodes, and the click that it passes, follow. */
static bool
carry_outline (Piece *piece, Outline **outline, PassedClick *passed, InnerKind node, const TracedMove *move)
{
  Outline *made = *outline ? outline_carried (*outline, move) : NULL;

  if (!*outline)
    return true;
  if (!made)
    return false;
  if (!carry_passed (passed, move))
    {
      outline_unref (made);
      return false;
    }
  kept_follow_outline (piece, node, *outline, made);
  outline_unref (*outline);
  *outline = made;
  return true;
}

/* A hinge's end goes where its place goes. */
static bool
carry_hinge (double *x, double *station, const TracedMove *move)
{
  const Point at = move->move ((Point) { *x, *station }, move->data);

  *x = at.x;
  *station = at.y;
  return point_is_finite (at);
}

/* Ribs and breaks have no x of their own: they go where the middle of the outline's box goes at their station. */
static bool
carry_station (double *station, double middle, const TracedMove *move)
{
  *station = move->move ((Point) { middle, *station }, move->data).y;
  return isfinite (*station);
}

static bool
carry_surface (Surface *surface, const TracedMove *move)
{
  const Box box = outline_bounds (surface->outline);
  const double middle = (box.min.x + box.max.x) / 2;
  bool sound = carry_outline (&surface->piece, &surface->outline, &surface->passed, INNER_NODE, move);

  for (size_t i = 0; sound && i < surface->control_count; i++)
    {
      Control *control = &surface->controls[i];

      sound = carry_hinge (&control->hinge_inner_x, &control->inner, move) && carry_hinge (&control->hinge_outer_x, &control->outer, move)
              && control->inner <= control->outer;
    }
  for (size_t i = 0; sound && i < surface->rib_count; i++)
    sound = carry_station (&surface->ribs[i].place, middle, move);
  for (size_t i = 0; sound && i < surface->break_count; i++)
    sound = carry_station (&surface->breaks[i].from, middle, move)
            && (i == 0 || surface->breaks[i].from > surface->breaks[i - 1].from);
  return sound;
}

/* Formers stand on the axis. From above, where the body was traced so; else from the side. */
static bool
carry_formers (Body *body, const TracedMove *move)
{
  for (size_t i = 0; i < body->former_count; i++)
    {
      body->formers[i].place = move->move ((Point) { body->formers[i].place, 0 }, move->data).x;
      if (!isfinite (body->formers[i].place))
        return false;
    }
  return true;
}

static bool
carry_body (Body *body, const TracedMove *move)
{
  const bool top = g_strcmp0 (body->traced, move->view) == 0, side = g_strcmp0 (body->side_traced, move->view) == 0;

  return (!top || carry_outline (&body->piece, &body->outline, &body->passed, INNER_NODE, move))
         && (!side || carry_outline (&body->piece, &body->side_outline, &body->side_passed, INNER_SIDE_NODE, move))
         && (!(top || (side && !body->traced)) || carry_formers (body, move));
}

Piece *
piece_carried (const Piece *piece, const TracedMove *move)
{
  Piece *copy = piece_dup (piece);
  bool sound = true;

  if (piece->kind == PIECE_BODY)
    sound = carry_body ((Body *) copy, move);
  else if (piece->kind == PIECE_SURFACE && g_strcmp0 (((const Surface *) piece)->traced, move->view) == 0)
    sound = carry_surface ((Surface *) copy, move);
  if (sound)
    return copy;
  piece_unref (copy);
  return NULL;
}
