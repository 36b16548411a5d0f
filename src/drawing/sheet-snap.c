#include <math.h>
#include "drawing/hit.h"

static const double catch_px = 5;      /* how near a thing draws a place to itself */
static const double least_px = 0.6;    /* steps that are finer cannot be aimed at */

double
sheet_snap_step (const SheetScene *scene)
{
  static const double metric[] = { 1, 2, 5, 10, 20, 50 };
  const double scale = scene->view->scale;
  double step = 25.4 / 32;

  if (scene->units.length == LENGTH_MM)
    {
      for (size_t i = 0; i < G_N_ELEMENTS (metric); i++)
        if (metric[i] * scale >= least_px)
          return metric[i];
      return 100;
    }
  while (step * scale < least_px && step < 4 * 25.4)
    step *= 2;
  return step;
}

/* What draws near along one axis: the nearest so far, and how far it may be. */
typedef struct { double place, best, reach; } Attraction;

static void
attract (Attraction *self, double to)
{
  const double far = fabs (to - self->place);

  if (far < self->reach)
    {
      self->reach = far;
      self->best = to;
    }
}

typedef struct { const SheetScene *scene; const char *self_id; size_t self_node; Attraction x, y; } SnapQuery;

/* To port the mirrored nodes stand, and ribs. */
static void
attract_station (SnapQuery *q, double station)
{
  attract (&q->y, q->y.place < 0 && station != 0 ? -station : station);      /* no minus zero */
}

static void
attract_to_nodes (SnapQuery *q, const Piece *piece, const Outline *outline)
{
  const bool own = piece->id && g_strcmp0 (piece->id, q->self_id) == 0;

  for (size_t i = 0; outline && i < outline_node_count (outline); i++)
    {
      const Point node = outline_node (outline, i);

      if (own && (i == q->self_node || q->self_node == SNAP_WHOLE))
        continue;
      attract (&q->x, node.x);
      attract_station (q, node.y);
    }
}

static void
attract_to_surface (SnapQuery *q, const Surface *surface)
{
  if (!surface_is_horizontal (surface))
    return;
  attract_to_nodes (q, &surface->piece, surface->outline);
  for (size_t i = 0; i < surface->rib_count; i++)
    attract_station (q, surface->ribs[i].place);
  for (size_t i = 0; (!q->self_id || g_strcmp0 (surface->piece.id, q->self_id) != 0) && i < surface->control_count; i++)
    {
      attract_station (q, surface->controls[i].inner);
      attract_station (q, surface->controls[i].outer);
    }
}

static void
attract_to_body (SnapQuery *q, const Body *body)
{
  attract_to_nodes (q, &body->piece, body->outline);
  for (size_t i = 0; i < body->former_count; i++)
    attract (&q->x, body->formers[i].place);
}

static double
in_whole_steps (double place, double step)
{
  return round (place / step) * step + 0.0;      /* no minus zero */
}

Snap
sheet_snap (const SheetScene *scene, Point place, const char *self_id, size_t self_node)
{
  const Aeroplane *aeroplane = scene->figures->aeroplane;
  const double reach = catch_px / scene->view->scale, step = sheet_snap_step (scene);
  SnapQuery q = {
    .scene = scene, .self_id = self_id, .self_node = self_node,
    .x = { place.x, NAN, reach }, .y = { place.y, NAN, reach } };

  for (size_t i = 0; i < aeroplane_count (aeroplane, PIECE_SURFACE); i++)
    attract_to_surface (&q, aeroplane_surface (aeroplane, i));
  for (size_t i = 0; i < aeroplane_count (aeroplane, PIECE_BODY); i++)
    attract_to_body (&q, aeroplane_body (aeroplane, i));
  attract (&q.y, 0);
  return (Snap) {
    .place = { isnan (q.x.best) ? in_whole_steps (place.x, step) : q.x.best, isnan (q.y.best) ? in_whole_steps (place.y, step) : q.y.best },
    .guide_x = q.x.best, .guide_y = q.y.best };
}
