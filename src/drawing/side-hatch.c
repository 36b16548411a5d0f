#include "drawing/side-hatch.h"
#include "document/part-class.h"
#include "drawing/line-kind.h"
#include "drawing/outline-path.h"
#include "drawing/sheet-places.h"

enum { STEPS = 24 };

bool
hatch_is_asked_for (const Figures *figures, const Selection *selection)
{
  const char *id = selection_single (selection);
  const Part *part = id ? aeroplane_part_by_id (figures->aeroplane, id) : NULL;

  return figures->hatch.part && part && (part == figures->hatch.part || (part->has_rail && part_is_a (part, "battery")));
}

/* On the body's top or bottom, that much further out; false where no body is. */
static bool
place_at (const SideScene *side, const SheetView *view, double x, double outward, Point *place)
{
  const Aeroplane *aeroplane = side->scene->figures->aeroplane;
  const bool top = aeroplane_traits (aeroplane).hatch == HATCH_ON_TOP;

  for (size_t i = 0; i < aeroplane_count (aeroplane, PIECE_BODY); i++)
    {
      const Outline *outline = aeroplane_body (aeroplane, i)->side_outline;
      double low, high;

      if (!outline || !outline_span_at (outline, x, &low, &high))
        continue;
      *place = sheet_px (view, x, top ? high : low);
      place->x += top ? outward : -outward;
      return true;
    }
  return false;
}

void
draw_side_hatch (cairo_t *cr, const SideScene *side, const SheetView *view)
{
  const SheetScene *scene = side->scene;
  const HatchFigures *hatch = &scene->figures->hatch;
  const double off = look_size (scene->look, 4, 0.9), edge = look_size (scene->look, 8, 2);
  const bool chosen = hatch->part && aeroplane_traits (scene->figures->aeroplane).hatch != HATCH_NOT_CHOSEN;
  Point place;

  if (!chosen || !(scene->look->paper || hatch_is_asked_for (scene->figures, scene->selection)))
    return;
  cairo_new_path (cr);
  if (place_at (side, view, hatch->from_mm, -edge, &place))
    cairo_move_to (cr, place.x, place.y);
  for (int i = 0; i <= STEPS; i++)
    if (place_at (side, view, hatch->from_mm + (hatch->to_mm - hatch->from_mm) * i / STEPS, off, &place))
      cairo_line_to (cr, place.x, place.y);
  if (place_at (side, view, hatch->to_mm, -edge, &place))
    cairo_line_to (cr, place.x, place.y);
  line_kind_set (cr, scene->look, LINE_OTHER_POSITION);
  look_set_source (cr, scene->look->graphite);
  cairo_stroke (cr);
}
