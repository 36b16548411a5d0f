#include "drawing/wall-sheet-plan.h"
#include <math.h>
#include "drawing/outline-path.h"
#include "drawing/sheet-draft.h"
#include "drawing/wall-sheet-dimensions.h"

bool
wall_plan_exists (const WallSheet *sheet)
{
  return !box_is_empty (sheet_shapes_box (sheet->figures->aeroplane));
}

void
wall_plan_draw (const SheetPen *pen, const SheetView *view, bool mark_on_plan)
{
  Selection nothing = selection_none ();
  const SheetScene scene = {
    .look = pen->look, .units = pen->sheet->units, .view = view, .figures = pen->sheet->figures, .selection = &nothing };
  SheetDraft draft = {
    .cr = pen->cr, .scene = &scene, .look = pen->look, .view = view, .figures = scene.figures,
    .aeroplane = scene.figures->aeroplane, .selection = &nothing, .lettering = pen->lettering };

  cairo_save (pen->cr);
  cairo_new_path (pen->cr);
  sheet_take_all (&draft);
  sheet_draw_shapes (&draft);
  sheet_draw_centre_line (&draft);
  sheet_draw_leads (&draft);
  sheet_draw_parts (&draft);
  sheet_draw_signs (&draft);
  sheet_draw_faults (&draft);
  cairo_restore (pen->cr);
  wall_dimensions_draw (pen, view, mark_on_plan);
}

void
wall_plan_fill (cairo_t *cr, const SheetView *view, const WallSheet *sheet)
{
  const Aeroplane *aeroplane = sheet->figures->aeroplane;

  cairo_new_path (cr);
  for (size_t i = 0; i < aeroplane_count (aeroplane, PIECE_SURFACE); i++)
    if (surface_is_horizontal (aeroplane_surface (aeroplane, i)))
      outline_path_surface (cr, view, aeroplane_surface (aeroplane, i), true);
  for (size_t i = 0; i < aeroplane_count (aeroplane, PIECE_BODY); i++)
    if (aeroplane_body (aeroplane, i)->outline)
      outline_path_whole (cr, view, aeroplane_body (aeroplane, i)->outline);
  cairo_set_source_rgb (cr, 1, 1, 1);
  cairo_fill (cr);
}
