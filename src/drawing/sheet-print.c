#include "drawing/sheet-print.h"
#include <math.h>
#include "drawing/outline-path.h"
#include "drawing/plan-placing.h"
#include "drawing/sheet-draft.h"

/* How much is left of what stands in the way; of a hairline over its own print in a view that is not in hand. px: the dot at a node. */
static const double FADED = 0.2, OTHER_VIEW = 0.55, NODE_DOT = 2.6;

/* How a view's own axes lie on the sheet while another view, or the same, is in hand. */
typedef struct {
  const SheetDraft *draft;
  const PlanView *view;
  AxisFrame frame;
  double lift;               /* mm: what the outline's y is measured from, over the view's axis */
} Print;

static Colour
veiled (Colour colour, double share)
{
  colour.alpha *= share;
  return colour;
}

Look
sheet_print_faded_look (const Look *look)
{
  Look faded = *look;
  Colour *const colours[] = { &faded.graphite, &faded.construction, &faded.centre_line, &faded.band, &faded.balance, &faded.neutral,
                              &faded.warning, &faded.selection, &faded.part_fill, &faded.dim_text };

  /* What is selected fades with the rest: its colour is that of the hairlines. */
  faded.selection = look->graphite;
  for (size_t i = 0; i < G_N_ELEMENTS (colours); i++)
    *colours[i] = veiled (*colours[i], FADED);
  faded.outline_width = faded.selected_width = faded.part_width = look->inner_width;
  return faded;
}

/* px: of a place of an outline as it stands in the document, through the paper to the sheet. */
static Point
print_px (const Print *print, double x, double y, double side)
{
  const Placing *now = &print->draft->scene->plan->placing;
  const Point own = { x - print->view->x, side * (y - print->lift) };
  Point sheet = axis_frame_own (&now->frame, axis_frame_paper (&print->frame, own));

  sheet.x += now->x;
  return view_to_screen (print->draft->view, sheet);
}

/* The same for all of an outline's path: straight and true to size, for both views are on one paper. */
static void
print_path (const Print *print, const Outline *outline, double side, bool round)
{
  static const SheetView flat = { .scale = 1 };
  const Point origin = print_px (print, 0, 0, side);
  const Point aft = point_sub (print_px (print, 1, 0, side), origin), out = point_sub (print_px (print, 0, 1, side), origin);
  cairo_t *cr = print->draft->cr;
  cairo_matrix_t matrix;

  cairo_matrix_init (&matrix, out.x, out.y, aft.x, aft.y, origin.x, origin.y);
  cairo_save (cr);
  cairo_transform (cr, &matrix);
  if (round)
    outline_path_closed (cr, &flat, outline);
  else
    outline_path_half (cr, &flat, outline, HALF_STARBOARD);
  cairo_restore (cr);
}

/* Open, so that the print is seen within; without a ground of its own. */
static void
draw_nodes (const Print *print, const Outline *outline, double side)
{
  for (size_t i = 0; i < outline_node_count (outline); i++)
    {
      const Point place = outline_node (outline, i), at = print_px (print, place.x, place.y, side);

      cairo_new_sub_path (print->draft->cr);
      cairo_arc (print->draft->cr, at.x, at.y, NODE_DOT, 0, 2 * M_PI);
    }
  cairo_stroke (print->draft->cr);
}

static void
draw_hinges (const Print *print, const Surface *surface, double side)
{
  for (size_t i = 0; i < surface->control_count; i++)
    {
      const Control *control = &surface->controls[i];

      line_stroke (print->draft->cr, print_px (print, control->hinge_inner_x, control->inner, side),
                   print_px (print, control->hinge_outer_x, control->outer, side));
    }
}

static bool
is_in_hand (const Print *print)
{
  return g_strcmp0 (print->view->id, print->draft->scene->print->view) == 0;
}

/* How firmly: 0 where the view has no such side, or only what is no print of its own and is drawn elsewhere. */
static double
strength (const Print *print, double side)
{
  const bool upright = print->view->shows == VIEW_FIN || print->view->shows == VIEW_BODY_SIDE;

  if (side > 0 || (!upright && print->view->side == VIEW_BOTH))
    return is_in_hand (print) ? 1 : OTHER_VIEW;
  return is_in_hand (print) && !upright ? FADED : 0;
}

/* What is traced stands on one side of the axis, and on both where both halves are printed. */
static void
draw_outline (const Print *print, const Piece *piece, const Outline *outline)
{
  const SheetDraft *draft = print->draft;

  line_kind_set (draft->cr, draft->look, LINE_INNER);
  for (int side = 1; side >= -1 && strength (print, side) > 0; side -= 2)
    {
      look_set_source (draft->cr, veiled (draft->look->selection, strength (print, side)));
      cairo_new_path (draft->cr);
      print_path (print, outline, side, print->view->shows == VIEW_BODY_SIDE);
      cairo_stroke (draft->cr);
      if (piece->kind == PIECE_SURFACE)
        draw_hinges (print, (const Surface *) piece, side);
      if (is_in_hand (print) && selection_has (draft->selection, piece->id))
        draw_nodes (print, outline, side);
    }
}

static void
draw_view (const SheetDraft *draft, const PlanView *view)
{
  const Placing *now = &draft->scene->plan->placing;
  Print print = { .draft = draft, .view = view };
  Placing placing;

  if (!view->id || plan_placing (draft->scene->print->plan, &now->mapping, view, &placing))
    return;
  print.frame = placing.frame;
  for (size_t i = 0; i < aeroplane_count (draft->aeroplane, PIECE_SURFACE); i++)
    {
      const Surface *surface = aeroplane_surface (draft->aeroplane, i);

      if (g_strcmp0 (surface->traced, view->id) == 0)
        draw_outline (&print, &surface->piece, surface->outline);
    }
  for (size_t i = 0; i < aeroplane_count (draft->aeroplane, PIECE_BODY); i++)
    {
      const Body *body = aeroplane_body (draft->aeroplane, i);

      print.lift = 0;
      if (body->outline && g_strcmp0 (body->traced, view->id) == 0)
        draw_outline (&print, &body->piece, body->outline);
      print.lift = view->z;
      if (body->side_outline && g_strcmp0 (body->side_traced, view->id) == 0)
        draw_outline (&print, &body->piece, body->side_outline);
    }
}

void
sheet_draw_print (const SheetDraft *draft)
{
  const SheetPrint *print = draft->scene->print;

  for (size_t i = 0; i < print->plan->view_count; i++)
    draw_view (draft, &print->plan->views[i]);
}
