#include "drawing/wall-sheet-side.h"
#include <math.h>
#include "drawing/outline-path.h"
#include "drawing/side-places.h"

static const double line_off = 7;      /* of the dimension line from what it measures, mm on paper */

bool
wall_side_exists (const WallSheet *sheet)
{
  const Aeroplane *aeroplane = sheet->figures->aeroplane;

  for (size_t i = 0; i < aeroplane_count (aeroplane, PIECE_BODY); i++)
    if (aeroplane_body (aeroplane, i)->side_outline != NULL)
      return true;
  for (size_t i = 0; i < aeroplane_count (aeroplane, PIECE_SURFACE); i++)
    if (aeroplane_surface (aeroplane, i)->role == ROLE_FIN)
      return true;
  return false;
}

/* The body's length, to the right of everything. */
static void
draw_length (const SheetPen *pen, const SheetView *view)
{
  const Aeroplane *aeroplane = pen->sheet->figures->aeroplane;
  const double x = view->origin_x + fmax (0, side_shapes_box (aeroplane).max.y) * view->scale + line_off;
  Box body = box_empty ();
  g_autofree char *figure = NULL;
  Point nose, tail;

  for (size_t i = 0; i < aeroplane_count (aeroplane, PIECE_BODY); i++)
    if (aeroplane_body (aeroplane, i)->side_outline != NULL)
      body = box_joined (body, outline_bounds (aeroplane_body (aeroplane, i)->side_outline));
  if (box_is_empty (body))
    return;
  nose = view_to_screen (view, (Point) { body.min.x, 0 });
  tail = view_to_screen (view, (Point) { body.max.x, 0 });
  figure = paper_length_figure (pen->sheet->units, box_width (body));
  pen_dimension (pen, (Dimension) { .from = { x, nose.y }, .to = { x, tail.y }, .foot_from = nose, .foot_to = tail, .figure = figure });
}

void
wall_side_draw (const SheetPen *pen, const SheetView *view)
{
  Selection nothing = selection_none ();
  const SheetScene scene = {
    .look = pen->look, .units = pen->sheet->units, .view = view, .figures = pen->sheet->figures, .selection = &nothing };
  const SideScene side = { .scene = &scene };

  cairo_save (pen->cr);
  cairo_translate (pen->cr, view->origin_x - side_view_px_of_z (&side, 0), 0);
  draw_side_view (pen->cr, &side);
  cairo_restore (pen->cr);
  draw_length (pen, view);
}

static void
add_fin (cairo_t *cr, const SheetView *view, const Surface *surface)
{
  Outline *fin = surface->role == ROLE_FIN ? side_fin_outline (surface) : NULL;

  if (fin != NULL)
    outline_path_closed (cr, view, fin);
  outline_unref (fin);
}

void
wall_side_fill (cairo_t *cr, const SheetView *view, const WallSheet *sheet)
{
  const Aeroplane *aeroplane = sheet->figures->aeroplane;

  cairo_new_path (cr);
  for (size_t i = 0; i < aeroplane_count (aeroplane, PIECE_BODY); i++)
    if (aeroplane_body (aeroplane, i)->side_outline != NULL)
      outline_path_closed (cr, view, aeroplane_body (aeroplane, i)->side_outline);
  for (size_t i = 0; i < aeroplane_count (aeroplane, PIECE_SURFACE); i++)
    add_fin (cr, view, aeroplane_surface (aeroplane, i));
  cairo_set_source_rgb (cr, 1, 1, 1);
  cairo_fill (cr);
}
