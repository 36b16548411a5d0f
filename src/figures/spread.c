#include "figures/spread.h"

#include <math.h>
#include "balance/materials.h"
#include "figures/body-measure.h"
#include "figures/surface-figures.h"

static const Spread none = { .x = NAN, .y = NAN, .z = NAN, .from_x = NAN, .length_x = NAN, .roll = NAN, .pitch = NAN, .yaw = NAN,
                             .traced = { NAN, NAN, NAN, NAN, NAN, NAN, NAN } };

/* Mean height over the area that dihedral with breaks gives: cells narrow towards the tip, where chords change fastest. */
static double
mean_lift (const Surface *surface, double semispan)
{
  enum { CELLS = 64 };
  double lifted = 0, area = 0;

  for (int i = 0; i < CELLS; i++)
    {
      const double inner = semispan * sin (i * (G_PI / 2 / CELLS)), outer = semispan * sin ((i + 1) * (G_PI / 2 / CELLS));
      const double station = (inner + outer) / 2;
      StationCut cut;

      if (planform_cut (surface->outline, surface_sides (surface), station, &cut) != CORE_OK)
        continue;
      area += cut.chord * (outer - inner);
      lifted += cut.chord * (outer - inner) * surface_lift (surface, station);
    }
  return area > 0 ? lifted / area : NAN;
}

/* A fin stands on its root: y of its outline is height. */
static void
stand_upright (Spread *spread, const Surface *surface, const AreaMoments *moments)
{
  const double upright = moments->yy / moments->area - moments->y * moments->y;

  spread->z = surface->z + moments->y;
  spread->roll = upright;
  spread->pitch = moments->xx / moments->area + upright;
  spread->yaw = moments->xx / moments->area;
}

static void
lie_flat (Spread *spread, const Surface *surface, const AreaMoments *moments, double semispan)
{
  const double root_x = outline_node (surface->outline, 0).x;

  spread->slope = tan (surface->incidence * (G_PI / 180));
  spread->z = surface->z - (moments->x - root_x) * spread->slope
            + (surface->break_count ? mean_lift (surface, semispan) : surface_lift (surface, moments->y));
  spread->roll = moments->yy / moments->area;
  spread->pitch = moments->xx / moments->area;
  spread->yaw = spread->roll + spread->pitch;
}

/* One side each of all named ribs, those off the centre line on both halves. Thick as the surface is; where that is not said, 10 %:
 * common practice, no source. */
static double
ribs_of (const Surface *surface)
{
  const double thickness = isnan (surface->thickness) ? 0.10 : surface->thickness / 100;
  double area = 0;

  for (size_t i = 0; i < surface->rib_count; i++)
    {
      const int halves = surface_is_horizontal (surface) && surface->ribs[i].place > 0 ? 2 : 1;
      StationCut cut;

      if (planform_cut (surface->outline, surface_sides (surface), surface->ribs[i].place, &cut) == CORE_OK)
        area += halves * rib_side_area (cut.chord, thickness);
    }
  return area > 0 ? area : NAN;
}

static void
measure_surface (Spread *spread, const SurfaceFigures *surface)
{
  const double bulge = 1.03;       /* a curved side against its planform; common practice, no source */

  spread->traced[TRACED_PLAN] = surface->area_mm2;
  spread->traced[TRACED_SKIN] = 2 * bulge * surface->area_mm2;
  spread->traced[TRACED_RIBS] = ribs_of (surface->surface);
  spread->traced[TRACED_SPAN] = surface->planform.span;
}

Spread
spread_of_surface (const SurfaceFigures *surface)
{
  const bool horizontal = surface_is_horizontal (surface->surface);
  Spread made = none;
  AreaMoments moments;

  made.piece = &surface->surface->piece;
  made.status = isfinite (surface->area_mm2) ? CORE_OK : surface->status;
  if (made.status == CORE_OK)
    made.status = planform_moments (surface->surface->outline, surface_sides (surface->surface), &moments);
  if (made.status != CORE_OK)
    return made;

  made.x = moments.x;
  made.y = 0;
  made.from_x = surface->planform.mac_leading_edge_x;
  made.length_x = surface->planform.mac;
  measure_surface (&made, surface);
  if (horizontal)
    lie_flat (&made, surface->surface, &moments, surface->planform.span / 2);
  else
    stand_upright (&made, surface->surface, &moments);
  return made;
}

/* A body's half from above begins and ends at the centre line, also where nose or tail are blunt. */
static CoreStatus
closed_to_the_axis (const Outline *half, Outline **made)
{
  const size_t count = outline_segment_count (half);
  const Point first = outline_node (half, 0), last = outline_node (half, count);
  g_autofree Segment *segments = g_new (Segment, count + 2);
  size_t all = 0;

  if (first.y != 0)
    segments[all++] = segment_line (first);
  for (size_t i = 0; i < count; i++)
    segments[all++] = *outline_segment (half, i);
  if (last.y != 0)
    segments[all++] = segment_line ((Point) { last.x, 0 });
  return outline_new ((Point) { first.x, 0 }, segments, all, NULL, made);
}

/* An outline closes straight from its last node to its first; drawn out, it is no longer open to the planform. */
static CoreStatus
closed_to_its_beginning (const Outline *side, Outline **made)
{
  const Point first = outline_node (side, 0), last = outline_node (side, outline_segment_count (side));
  const Segment back = segment_line (first);

  if (first.x != last.x || first.y != last.y)
    return outline_with_segment_added (side, &back, made);
  *made = outline_ref (side);
  return CORE_OK;
}

/* Seen from the side the sheet stands upright; its lowest place becomes the station 0. */
static CoreStatus
side_on_its_lowest (const Outline *side, Outline **made)
{
  Outline *closed = NULL;
  CoreStatus status = closed_to_its_beginning (side, &closed);

  if (status == CORE_OK)
    status = outline_mapped (closed, (Point) { 1, 1 }, (Point) { 0, -outline_bounds (side).min.y }, made);
  outline_unref (closed);
  return status;
}

static void
measure_body (Spread *spread, const Body *body)
{
  const BodyMeasure measure = body_measure (body);

  spread->traced[TRACED_PLAN] = measure.plan;
  spread->traced[TRACED_SKIN] = measure.skin;
  spread->traced[TRACED_FORMERS] = measure.formers;
  spread->traced[TRACED_LENGTH] = measure.length;
}

static void
lay_body (Spread *spread, const Body *body, const AreaMoments *moments)
{
  const double along = moments->xx / moments->area;
  const double across = body->outline ? moments->yy / moments->area : 0;   /* both halves of the top view */
  const Box box = outline_bounds (body->outline ? body->outline : body->side_outline);

  spread->x = moments->x;
  spread->y = 0;
  spread->z = 0;
  if (body->side_outline)
    spread->z = (outline_bounds (body->side_outline).min.y + outline_bounds (body->side_outline).max.y) / 2;
  spread->from_x = box.min.x;
  spread->length_x = box.max.x - box.min.x;
  spread->roll = across;
  spread->pitch = along;
  spread->yaw = along + across;
}

Spread
spread_of_body (const Body *body)
{
  Spread made = none;
  Outline *closed = NULL;
  AreaMoments moments;

  made.piece = &body->piece;
  made.status = CORE_TOO_FEW_NODES;
  if (body->outline)
    made.status = closed_to_the_axis (body->outline, &closed);
  else if (body->side_outline)
    made.status = side_on_its_lowest (body->side_outline, &closed);
  if (made.status == CORE_OK)
    made.status = planform_moments (closed, PLANFORM_SINGLE, &moments);
  if (made.status == CORE_OK)
    {
      lay_body (&made, body, &moments);
      measure_body (&made, body);
    }
  outline_unref (closed);
  return made;
}

Spread
spread_of_id (const Figures *figures, const char *id)
{
  const SurfaceFigures *surface = id ? figures_of_surface (figures, id) : NULL;
  const Body *body = aeroplane_body_by_id (figures->aeroplane, id);

  return surface ? spread_of_surface (surface) : body ? spread_of_body (body) : none;
}
