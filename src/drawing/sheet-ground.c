#include "drawing/sheet-draft.h"
#include <math.h>

typedef struct { double fine, coarse; } GridSteps;
static const double inch = 25.4;

/* The finest of a few pairs whose fine lines stand at least 6 px apart. */
static GridSteps
grid_steps (Units units, double scale)
{
  static const GridSteps metric[] = { { 1, 10 }, { 10, 50 }, { 50, 250 }, { 100, 500 }, { 500, 2500 } };
  static const GridSteps imperial[] = { { 1 / 16.0, 0.5 }, { 0.25, 1 }, { 1, 6 }, { 6, 24 }, { 24, 120 } };
  const bool mm = units.length == LENGTH_MM;

  for (int i = 0; i < 4; i++)
    {
      const GridSteps steps = mm ? metric[i] : (GridSteps) { imperial[i].fine * inch, imperial[i].coarse * inch };

      if (steps.fine * scale >= 6)
        return steps;
    }
  return mm ? metric[4] : (GridSteps) { imperial[4].fine * inch, imperial[4].coarse * inch };
}

/* Lines every `step` mm; those that the coarse grid has as well are left to it. */
static void
add_grid (SheetDraft *draft, double step, double without)
{
  cairo_t *cr = draft->cr;
  const SheetView *view = draft->view;
  const double pitch = step * view->scale;
  const long first_x = lround (ceil (-view->origin_x / pitch)), first_y = lround (ceil (-view->origin_y / pitch));
  const long skip = without > 0 ? lround (without / step) : 0;

  for (long i = first_x; view->origin_x + i * pitch < view->width; i++)
    if (skip == 0 || i % skip != 0)
      {
        const double x = line_crisp_x (cr, view->origin_x + i * pitch, 1);

        cairo_move_to (cr, x, 0);
        cairo_line_to (cr, x, view->height);
      }
  for (long i = first_y; view->origin_y + i * pitch < view->height; i++)
    if (skip == 0 || i % skip != 0)
      {
        const double y = line_crisp_y (cr, view->origin_y + i * pitch, 1);

        cairo_move_to (cr, 0, y);
        cairo_line_to (cr, view->width, y);
      }
}

void
sheet_draw_grid (SheetDraft *draft)
{
  const GridSteps steps = grid_steps (draft->scene->units, draft->view->scale);

  if (!draft->scene->show_grid || draft->look->grid_coarse.alpha <= 0)
    return;
  cairo_set_dash (draft->cr, NULL, 0, 0);
  cairo_set_line_width (draft->cr, 1);
  look_set_source (draft->cr, draft->look->grid_fine);
  add_grid (draft, steps.fine, steps.coarse);
  cairo_stroke (draft->cr);
  look_set_source (draft->cr, draft->look->grid_coarse);
  add_grid (draft, steps.coarse, 0);
  cairo_stroke (draft->cr);
}

void
sheet_draw_datum (SheetDraft *draft)
{
  const double y = draft->view->origin_y, margin = 12 * draft->look->u;

  look_set_source (draft->cr, draft->look->construction);
  line_kind_set (draft->cr, draft->look, LINE_DATUM);
  line_stroke (draft->cr, (Point) { margin, y }, (Point) { draft->view->width - margin / 4, y });
}

/* Runs 14 mm, and at least 28 px (on paper 8.4 mm), beyond what it is the middle of; along the whole window when the sheet is empty. */
void
sheet_draw_centre_line (SheetDraft *draft)
{
  const Box box = sheet_shapes_box (draft->aeroplane);
  const double x = draft->view->origin_x, beyond = fmax (14 * draft->view->scale, 28 * draft->look->u);
  double from = 0, to = draft->view->height;

  if (!box_is_empty (box))
    {
      from = draft->view->origin_y + fmin (box.min.x, 0) * draft->view->scale - beyond;
      to = draft->view->origin_y + box.max.x * draft->view->scale + beyond;
    }
  look_set_source (draft->cr, draft->look->centre_line);
  line_kind_set (draft->cr, draft->look, LINE_CENTRE);
  line_stroke (draft->cr, (Point) { x, from }, (Point) { x, to });
}
