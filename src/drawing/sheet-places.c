#include "drawing/sheet-places.h"
#include <math.h>
#include "document/part-box.h"
#include "drawing/outline-path.h"
#include "drawing/part-symbols.h"
#include "geometry/planform.h"

static Box
box_about (const Part *part, Point size)
{
  return (Box) { { part->x - size.x / 2, part->y - size.y / 2 }, { part->x + size.x / 2, part->y + size.y / 2 } };
}

Box
sheet_part_own_box (const Part *part)
{
  return box_about (part, (Point) { part->length, part->width });
}

Box
sheet_part_box (const Part *part)
{
  return box_about (part, part_extent (part));
}

static Box
mirrored_box (Box half)
{
  const double reach = fmax (fabs (half.min.y), fabs (half.max.y));

  return (Box) { { half.min.x, -reach }, { half.max.x, reach } };
}

Box
sheet_surface_box (const Surface *surface)
{
  const Box half = outline_bounds (surface->outline);

  return surface_is_horizontal (surface) ? mirrored_box (half) : (Box) { { half.min.x, 0 }, { half.max.x, 0 } };
}

Box
sheet_body_box (const Body *body)
{
  if (body->outline)
    return mirrored_box (outline_bounds (body->outline));
  if (body->side_outline)
    {
      const Box side = outline_bounds (body->side_outline);

      return (Box) { { side.min.x, 0 }, { side.max.x, 0 } };
    }
  return box_empty ();
}

Box
sheet_shapes_box (const Aeroplane *aeroplane)
{
  Box box = box_empty ();

  for (size_t i = 0; i < aeroplane_count (aeroplane, PIECE_SURFACE); i++)
    box = box_joined (box, sheet_surface_box (aeroplane_surface (aeroplane, i)));
  for (size_t i = 0; i < aeroplane_count (aeroplane, PIECE_BODY); i++)
    box = box_joined (box, sheet_body_box (aeroplane_body (aeroplane, i)));
  for (size_t i = 0; i < aeroplane_count (aeroplane, PIECE_PART); i++)
    box = box_joined (box, sheet_part_box (aeroplane_part (aeroplane, i)));
  return box;
}

double
sheet_dimension_gap (const Aeroplane *aeroplane)
{
  const Box box = sheet_shapes_box (aeroplane);

  return box_is_empty (box) ? 0 : 0.055 * fmax (box.max.x - box.min.x, box.max.y - box.min.y);
}

double
sheet_half_width (const Aeroplane *aeroplane, double x)
{
  double width = 0;

  for (size_t i = 0; i < aeroplane_count (aeroplane, PIECE_BODY); i++)
    {
      const Body *body = aeroplane_body (aeroplane, i);
      const double reach = body->outline ? outline_reach_at (body->outline, x) : NAN;

      width = fmax (width, reach);
    }
  return width;
}

double
sheet_greatest_half_width (const Aeroplane *aeroplane)
{
  double width = 0;

  for (size_t i = 0; i < aeroplane_count (aeroplane, PIECE_BODY); i++)
    {
      const Body *body = aeroplane_body (aeroplane, i);

      if (body->outline)
        width = fmax (width, outline_bounds (body->outline).max.y);
    }
  return width;
}

/* It covers the body when its root leading edge stands in the upper quarter of the body's side there, or above it. Without a side
 * outline the body is taken to be as high as wide about the thrust line. */
bool
sheet_surface_covers_body (const Aeroplane *aeroplane, const Surface *surface)
{
  const double x = outline_node (surface->outline, 0).x;

  for (size_t i = 0; i < aeroplane_count (aeroplane, PIECE_BODY); i++)
    {
      const Body *body = aeroplane_body (aeroplane, i);
      double low, high;

      if (body->side_outline && outline_span_at (body->side_outline, x, &low, &high))
        return surface->z >= low + 0.75 * (high - low);
      if (body->outline && outline_span_at (body->outline, x, &low, &high))
        return surface->z >= 0.5 * high;
    }
  return false;
}

/* Outside the body, where fingers go: 29 to 69 mm on a small model, further out on a wide body or for a mark further out. */
bool
sheet_band (const Figures *figures, SheetBand *band)
{
  const BalanceFigures *balance = &figures->balance;
  const double beside = sheet_half_width (figures->aeroplane, balance->target_x_mm) + 3;
  double semispan;

  if (!isfinite (balance->forward_limit_x_mm) || !isfinite (balance->aft_limit_x_mm) || !figures->reference)
    return false;
  semispan = outline_tip (figures->reference->surface->outline).y;
  band->inner = fmin (fmax (29, beside), semispan);
  band->outer = band->inner + 40;
  for (size_t i = 0; i < balance->mark_count; i++)
    band->outer = fmax (band->outer, fmin (balance->marks[i].station_mm + 20, band->inner + 120));
  band->outer = fmin (band->outer, semispan);
  band->forward_x = balance->forward_limit_x_mm;
  band->aft_x = balance->aft_limit_x_mm;
  return band->outer > band->inner;
}

/* Beside the body; outboard of the band and the mark, as far as its sign is wide where the whole aeroplane is in view. */
bool
sheet_neutral_point (const Figures *figures, Point *place)
{
  const double x = figures->neutral_point.x_mm;
  double beside;
  SheetBand band;

  if (!isfinite (x))
    return false;
  beside = sheet_half_width (figures->aeroplane, x) + 57;
  if (sheet_band (figures, &band))
    beside = fmax (beside, band.outer + 0.6 * sheet_dimension_gap (figures->aeroplane));
  *place = (Point) { x, -beside };
  return true;
}

bool
sheet_has_point (const Figures *figures, SheetPoint point)
{
  Point neutral;

  if (point == SHEET_POINT_BALANCE)
    return isfinite (figures->mass.x_mm) && isfinite (figures->mass.y_mm);
  return point == SHEET_POINT_NEUTRAL && sheet_neutral_point (figures, &neutral);
}

bool
sheet_mark_place (const Figures *figures, size_t mark, Point *place)
{
  const MarkFigures *m;

  if (mark >= figures->balance.mark_count)
    return false;
  m = &figures->balance.marks[mark];
  if (!isfinite (m->target_mm) || !isfinite (m->leading_edge_x_mm))
    return false;
  *place = (Point) { m->leading_edge_x_mm + m->target_mm, m->station_mm };
  return true;
}

double
sheet_control_cut (const Surface *surface, double station, double hinge_x)
{
  const PlanformSides sides = surface->root_open ? PLANFORM_OPEN : PLANFORM_CARRIED;
  StationCut cut;

  if (station < 0.5 || planform_cut (surface->outline, sides, station, &cut) != CORE_OK || cut.trailing_x <= hinge_x)
    return NAN;
  return cut.trailing_x;
}

PartState
part_state_of (const Part *part, bool selected)
{
  if (!part->aboard)
    return selected ? PART_PROPOSED : PART_LEFT_OUT;
  return selected ? PART_SELECTED : part->to_come ? PART_TO_COME : PART_SETTLED;
}

bool
sheet_proposed_x (const Figures *figures, const Part *part, double *x)
{
  const Solution *solution = part->piece.id ? figures_solution (figures, part->piece.id) : NULL;

  if (!solution || !solution->reachable || !part->aboard || !(fabs (solution->x_mm - part->x) >= 1))
    return false;
  *x = solution->x_mm;
  return true;
}

double
sheet_rail_px (const Look *look, const SheetView *view, const Part *part)
{
  return part_symbol_box (look, box_to_screen (view, sheet_part_box (part))).min.x - 4 * look->u;
}
