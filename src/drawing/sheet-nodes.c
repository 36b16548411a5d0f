#include "drawing/sheet-draft.h"
#include <math.h>
#include "trammel-config.h"
#include <glib/gi18n-lib.h>
#include "drawing/handles.h"
#include "drawing/symbols.h"

static void
draw_handles_of (const SheetDraft *draft, const Outline *outline, size_t node)
{
  const Point at = view_to_screen (draft->view, outline_node (outline, node));
  Point place;

  for (int side = HANDLE_BEFORE; side <= HANDLE_AFTER; side++)
    if (outline_handle (outline, node, side, &place))
      draw_handle (draft->cr, draft->look, at, view_to_screen (draft->view, place));
}

/* Every node on both sides; handles of the selected ones, to starboard. */
static void
draw_outline_nodes (const SheetDraft *draft, const char *id, const Outline *outline)
{
  const size_t count = outline_node_count (outline);

  for (size_t i = 0; i < count; i++)
    if (selection_has_node (draft->selection, id, false, i))
      draw_handles_of (draft, outline, i);
  for (size_t i = 0; i < count; i++)
    {
      const Point place = outline_node (outline, i);
      const bool selected = selection_has_node (draft->selection, id, false, i);

      if (fabs (place.y) * draft->view->scale > 1)
        draw_node (draft->cr, draft->look, sheet_px (draft->view, place.x, -place.y), outline_node_kind (outline, i), false);
      draw_node (draft->cr, draft->look, view_to_screen (draft->view, place), outline_node_kind (outline, i), selected);
    }
}

static void
draw_hinge_grips (const SheetDraft *draft, const Surface *surface)
{
  for (size_t i = 0; i < surface->control_count; i++)
    {
      const Control *control = &surface->controls[i];

      if (g_strcmp0 (control->id, draft->selection->control) != 0)
        continue;
      draw_grip (draft->cr, draft->look, sheet_px (draft->view, control->hinge_inner_x, control->inner));
      draw_grip (draft->cr, draft->look, sheet_px (draft->view, control->hinge_outer_x, control->outer));
    }
}

static void
draw_rail_grips (const SheetDraft *draft, const Part *part)
{
  const double x = sheet_rail_px (draft->look, draft->view, part);

  draw_grip (draft->cr, draft->look, (Point) { x, sheet_px (draft->view, part->rail_from, 0).y });
  draw_grip (draft->cr, draft->look, (Point) { x, sheet_px (draft->view, part->rail_to, 0).y });
}

void
sheet_draw_nodes (const SheetDraft *draft)
{
  const char *id = selection_single (draft->selection);
  const Surface *surface = aeroplane_surface_by_id (draft->aeroplane, id);
  const Body *body = aeroplane_body_by_id (draft->aeroplane, id);
  const Part *part = aeroplane_part_by_id (draft->aeroplane, id);

  if (draft->look->paper || !id)
    return;
  if (surface && surface_is_horizontal (surface) && draft->selection->control)
    draw_hinge_grips (draft, surface);
  else if (surface && surface_is_horizontal (surface))
    draw_outline_nodes (draft, id, surface->outline);
  if (body && body->outline)
    draw_outline_nodes (draft, id, body->outline);
  if (part && part->has_rail)
    draw_rail_grips (draft, part);
  if (aeroplane_lead_by_id (draft->aeroplane, id))
    sheet_draw_lead_points (draft, aeroplane_lead_by_id (draft->aeroplane, id));
}

static void
put_fault_word (SheetDraft *draft, const char *text, Point at, Colour colour)
{
  const double away = 16 * draft->look->u;

  sheet_put_word_anyway (draft, (Letters[]) {
    { .text = text, .place = { at.x + away, at.y }, .rise = LETTERS_AT_MIDDLE, .colour = colour, .bold = true },
    { .text = text, .place = { at.x - away, at.y }, .across = 1, .rise = LETTERS_AT_MIDDLE, .colour = colour, .bold = true },
    { .text = text, .place = { at.x, at.y + away }, .across = 0.5, .rise = LETTERS_BELOW, .colour = colour, .bold = true },
    { .text = text, .place = { at.x, at.y - away }, .across = 0.5, .colour = colour, .bold = true },
    { .text = text, .place = { at.x, at.y + away }, .across = 1, .rise = LETTERS_BELOW, .colour = colour, .bold = true },
    { .text = text, .place = { at.x, at.y - away }, .across = 1, .colour = colour, .bold = true } }, 6);
}

static void
draw_crossing (SheetDraft *draft, Point place)
{
  const Point at = view_to_screen (draft->view, place);

  draw_warning (draft->cr, draft->look, at);
  put_fault_word (draft, _("the outline crosses itself here"), at, draft->look->warning);
}

/* A broken ring round the end that hangs free. */
static void
draw_loose_end (SheetDraft *draft, Point place)
{
  const Point at = view_to_screen (draft->view, place);

  line_kind_set (draft->cr, draft->look, LINE_PROPOSAL);
  look_set_source (draft->cr, draft->look->selection);
  cairo_new_path (draft->cr);
  cairo_arc (draft->cr, at.x, at.y, 9 * draft->look->u, 0, 2 * G_PI);
  cairo_stroke (draft->cr);
  put_fault_word (draft, _("the outline is open here"), at, draft->look->selection);
}

/* A body has no figures of its own, so its outline is asked here. */
static void
draw_body_fault (SheetDraft *draft, const Body *body)
{
  OutlineFault fault;

  if (body->outline && outline_check (body->outline, &fault) == CORE_CROSSES_ITSELF)
    draw_crossing (draft, fault.place);
}

void
sheet_draw_faults (SheetDraft *draft)
{
  for (size_t i = 0; i < draft->figures->surface_count; i++)
    {
      const SurfaceFigures *figures = &draft->figures->surfaces[i];

      if (!surface_is_horizontal (figures->surface))
        continue;
      if (figures->status == CORE_CROSSES_ITSELF)
        draw_crossing (draft, figures->fault.place);
      else if (figures->status == CORE_OPEN)
        draw_loose_end (draft, figures->fault.place);
    }
  for (size_t i = 0; i < aeroplane_count (draft->aeroplane, PIECE_BODY); i++)
    draw_body_fault (draft, aeroplane_body (draft->aeroplane, i));
}
