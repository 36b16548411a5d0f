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

/* The lines of one direction every `step` mm; those that the coarse grid has as well are left to it. */
typedef struct { const SheetView *view; double step, without; } GridLines;

static void
add_uprights (cairo_t *cr, const GridLines *lines)
{
  const double pitch = lines->step * lines->view->scale, origin = lines->view->origin_x;
  const long skip = lines->without > 0 ? lround (lines->without / lines->step) : 0;

  for (long i = lround (ceil (-origin / pitch)); origin + i * pitch < lines->view->width; i++)
    if (skip == 0 || i % skip != 0)
      {
        const double x = line_crisp_x (cr, origin + i * pitch, 1);

        cairo_move_to (cr, x, 0);
        cairo_line_to (cr, x, lines->view->height);
      }
}

static void
add_levels (cairo_t *cr, const GridLines *lines)
{
  const double pitch = lines->step * lines->view->scale, origin = lines->view->origin_y;
  const long skip = lines->without > 0 ? lround (lines->without / lines->step) : 0;

  for (long i = lround (ceil (-origin / pitch)); origin + i * pitch < lines->view->height; i++)
    if (skip == 0 || i % skip != 0)
      {
        const double y = line_crisp_y (cr, origin + i * pitch, 1);

        cairo_move_to (cr, 0, y);
        cairo_line_to (cr, lines->view->width, y);
      }
}

typedef enum { GRID_LEVELS, GRID_WHOLE } GridExtent;

static void
draw_grid (cairo_t *cr, const SheetScene *scene, GridExtent extent)
{
  const GridSteps steps = grid_steps (scene->units, scene->view->scale);
  const GridLines both[] = { { scene->view, steps.fine, steps.coarse }, { scene->view, steps.coarse, 0 } };

  if (!scene->show_grid || scene->look->grid_coarse.alpha <= 0)
    return;
  cairo_set_dash (cr, NULL, 0, 0);
  cairo_set_line_width (cr, 1);
  for (int i = 0; i < 2; i++)
    {
      look_set_source (cr, i == 0 ? scene->look->grid_fine : scene->look->grid_coarse);
      add_levels (cr, &both[i]);
      cairo_stroke (cr);
      /* By themselves: where lines cross in one path each crossing is worked out, which takes longer than all the rest. */
      if (extent == GRID_WHOLE)
        add_uprights (cr, &both[i]);
      cairo_stroke (cr);
    }
}

void
sheet_draw_grid (const SheetDraft *draft)
{
  draw_grid (draft->cr, draft->scene, GRID_WHOLE);
}

void
sheet_draw_levels (cairo_t *cr, const SheetScene *scene)
{
  draw_grid (cr, scene, GRID_LEVELS);
}

void
sheet_draw_datum (const SheetDraft *draft)
{
  const double y = draft->view->origin_y, margin = 12 * draft->look->u;

  look_set_source (draft->cr, draft->look->construction);
  line_kind_set (draft->cr, draft->look, LINE_DATUM);
  line_stroke (draft->cr, (Point) { margin, y }, (Point) { draft->view->width - margin / 4, y });
}

/* Runs 14 mm, and at least 28 px (on paper 4 mm), beyond what it is the middle of; along the whole window when the sheet is empty. */
void
sheet_draw_centre_line (const SheetDraft *draft)
{
  const Box box = sheet_shapes_box (draft->aeroplane);
  const double x = draft->view->origin_x, beyond = fmax (14 * draft->view->scale, look_size (draft->look, 28, 4));
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
