#include "drawing/side-view.h"
#include <math.h>
#include "drawing/handles.h"
#include "drawing/outline-path.h"
#include "drawing/part-symbols.h"
#include "drawing/room-edges.h"
#include "drawing/section-path.h"
#include "drawing/sheet-places.h"
#include "drawing/side-hatch.h"
#include "drawing/side-leads.h"
#include "drawing/side-places.h"
#include "drawing/symbols.h"

typedef struct {
  cairo_t *cr;
  const SideScene *side;
  const SheetScene *scene;
  const Look *look;
  SheetView view;
  const Aeroplane *aeroplane;
} SideDraft;

static bool
is_selected (const SideDraft *d, const Piece *piece)
{
  return selection_has (d->scene->selection, piece->id);
}

static void
shape_line (const SideDraft *d, bool selected)
{
  line_kind_set (d->cr, d->look, selected ? LINE_SELECTED : LINE_OUTLINE);
  look_set_source (d->cr, selected ? d->look->selection : d->look->graphite);
}

/* The sheet's levels run on into the strip. */
static void
draw_levels (const SideDraft *d)
{
  SheetScene levels = *d->scene;

  levels.view = &d->view;
  sheet_draw_levels (d->cr, &levels);
}

static void
draw_datum (const SideDraft *d)
{
  look_set_source (d->cr, d->look->construction);
  line_kind_set (d->cr, d->look, LINE_DATUM);
  line_stroke (d->cr, (Point) { 0, d->view.origin_y }, (Point) { d->view.width, d->view.origin_y });
}

/* z = 0, the line that heights are measured from. */
static void
draw_centre_line (const SideDraft *d)
{
  const Box box = side_shapes_box (d->aeroplane);
  const double beyond = fmax (14 * d->view.scale, look_size (d->look, 28, 4));
  double from = 0, to = d->view.height;

  if (!box_is_empty (box))
    {
      from = d->view.origin_y + fmin (box.min.x, 0) * d->view.scale - beyond;
      to = d->view.origin_y + box.max.x * d->view.scale + beyond;
    }
  look_set_source (d->cr, d->look->centre_line);
  line_kind_set (d->cr, d->look, LINE_CENTRE);
  line_stroke (d->cr, (Point) { d->view.origin_x, from }, (Point) { d->view.origin_x, to });
}

/* Where the motor pulls, when that is not along the centre line: a short stretch either way of its place. */
static void
draw_thrust_line (const SideDraft *d)
{
  const bool given = aeroplane_count (d->aeroplane, PIECE_THRUST) > 0;
  const Thrust *thrust = given ? (const Thrust *) aeroplane_nth (d->aeroplane, PIECE_THRUST, 0) : NULL;
  double slope;

  if (!thrust || (thrust->z == 0 && thrust->down == 0))
    return;
  slope = tan (thrust->down * G_PI / 180);
  look_set_source (d->cr, d->look->construction);
  line_kind_set (d->cr, d->look, LINE_CENTRE);
  line_stroke (d->cr, sheet_px (&d->view, thrust->x - 35, thrust->z - 35 * slope), sheet_px (&d->view, thrust->x + 90, thrust->z + 90 * slope));
}

static void
draw_formers (const SideDraft *d, const Body *body)
{
  line_kind_set (d->cr, d->look, LINE_CONSTRUCTION);
  look_set_source (d->cr, d->look->construction);
  for (size_t i = 0; i < body->former_count; i++)
    {
      const double x = body->formers[i].place;
      double low, high;

      if (outline_span_at (body->side_outline, x, &low, &high))
        line_stroke (d->cr, sheet_px (&d->view, x, low), sheet_px (&d->view, x, high));
    }
}

static void
draw_bodies (const SideDraft *d)
{
  for (size_t i = 0; i < aeroplane_count (d->aeroplane, PIECE_BODY); i++)
    {
      const Body *body = aeroplane_body (d->aeroplane, i);

      if (!body->side_outline)
        continue;
      outline_path_closed (d->cr, &d->view, body->side_outline);
      look_set_source (d->cr, d->look->sheet);
      cairo_fill (d->cr);
      draw_formers (d, body);
      outline_path_closed (d->cr, &d->view, body->side_outline);
      shape_line (d, is_selected (d, &body->piece));
      cairo_stroke (d->cr);
    }
}

static void
draw_fin (const SideDraft *d, const Surface *fin)
{
  Outline *outline = side_fin_outline (fin);

  if (!outline)
    return;
  outline_path_closed (d->cr, &d->view, outline);
  shape_line (d, is_selected (d, &fin->piece) && !d->scene->selection->control);
  cairo_stroke (d->cr);
  for (size_t i = 0; i < fin->control_count; i++)
    {
      const bool selected = is_selected (d, &fin->piece) && d->scene->selection->control
                            && g_strcmp0 (d->scene->selection->control, fin->controls[i].id) == 0;

      line_kind_set (d->cr, d->look, selected ? LINE_SELECTED : LINE_INNER);
      look_set_source (d->cr, selected ? d->look->selection : d->look->graphite);
      hinge_stroke (d->cr, &d->view, fin, &fin->controls[i], fin->z, 1);
    }
  outline_unref (outline);
}

/* The root's section, thin, with its chord line; a sheet surface is one firm line. */
static void
draw_section (const SideDraft *d, const Surface *surface)
{
  const bool selected = is_selected (d, &surface->piece) && !d->scene->selection->control;
  SideSection section;
  Point leading, trailing;

  if (!side_section (surface, &section))
    return;
  leading = view_to_screen (&d->view, section.leading);
  trailing = view_to_screen (&d->view, section.trailing);
  look_set_source (d->cr, selected ? d->look->selection : d->look->graphite);
  if (section.thickness == 0)
    {
      line_kind_set (d->cr, d->look, LINE_OUTLINE);
      cairo_set_line_width (d->cr, look_size (d->look, 2.4, 0.7));
      line_stroke (d->cr, leading, trailing);
      return;
    }
  section_path (d->cr, &(SectionPath) { leading, trailing, section.thickness, 1 });
  line_kind_set (d->cr, d->look, selected ? LINE_SELECTED : LINE_PART);
  cairo_stroke (d->cr);
  look_set_source (d->cr, d->look->construction);
  line_kind_set (d->cr, d->look, LINE_CENTRE);
  line_stroke (d->cr, leading, trailing);
}

static void
draw_surfaces (const SideDraft *d)
{
  for (size_t i = 0; i < aeroplane_count (d->aeroplane, PIECE_SURFACE); i++)
    {
      const Surface *surface = aeroplane_surface (d->aeroplane, i);

      if (surface_is_horizontal (surface))
        draw_section (d, surface);
      else
        draw_fin (d, surface);
    }
}

static PartState
part_state (const SideDraft *d, const Part *part)
{
  const bool selected = is_selected (d, &part->piece);

  return part_state_of (part, selected);
}

static void
draw_part (const SideDraft *d, const Part *part, PartState state, double shift)
{
  Box box = side_part_box (part);

  box.min.x += shift;
  box.max.x += shift;
  draw_part_symbol (d->cr, d->look, &(PartSymbol) {
    .class_word = part->class_name, .box = box_to_screen (&d->view, box), .side = true, .state = state });
}

static void
draw_parts (const SideDraft *d)
{
  const bool one = selection_single (d->scene->selection) != NULL;

  for (int selected = 0; selected < 2; selected++)
    for (size_t i = 0; i < aeroplane_count (d->aeroplane, PIECE_PART); i++)
      {
        const Part *part = aeroplane_part (d->aeroplane, i);
        double x;

        if (is_selected (d, &part->piece) != selected)
          continue;
        if (selected && one && !d->look->paper && sheet_proposed_x (d->scene->figures, part, &x))
          draw_part (d, part, PART_PROPOSED, x - part->x);
        draw_part (d, part, part_state (d, part), 0);
      }
  if (!d->look->paper)
    draw_room_edges (d->cr, d->look, &d->view, d->scene->figures, true);
}

/* Parts arranged otherwise, where they would stand. */
static void
draw_offer (const SideDraft *d)
{
  const Figures *offered = d->scene->offered;

  for (size_t i = 0; offered && i < aeroplane_count (offered->aeroplane, PIECE_PART); i++)
    {
      const Part *part = aeroplane_part (offered->aeroplane, i), *now = aeroplane_part_by_id (d->aeroplane, part->piece.id);

      if (now && now != part && (now->x != part->x || now->z != part->z))
        draw_part (d, part, PART_PROPOSED, 0);
    }
}

static void
draw_balance (const SideDraft *d)
{
  const MassFigures *mass = &d->scene->figures->mass;

  if (isfinite (mass->x_mm) && isfinite (mass->z_mm))
    draw_balance_disc (d->cr, d->look, sheet_px (&d->view, mass->x_mm, mass->z_mm), DISC_ON_SHEET);
}

static void
draw_outline_nodes (const SideDraft *d, const char *id, const Outline *outline, bool side)
{
  const Selection *selection = d->scene->selection;
  Point place;

  for (size_t i = 0; i < outline_node_count (outline); i++)
    for (int handle = HANDLE_BEFORE; handle <= HANDLE_AFTER; handle++)
      if (selection_has_node (selection, id, side, i) && outline_handle (outline, i, handle, &place))
        draw_handle (d->cr, d->look, view_to_screen (&d->view, outline_node (outline, i)), view_to_screen (&d->view, place));
  for (size_t i = 0; i < outline_node_count (outline); i++)
    draw_node (d->cr, d->look, view_to_screen (&d->view, outline_node (outline, i)), outline_node_kind (outline, i),
               selection_has_node (selection, id, side, i));
}

static void
draw_hinge_grips (const SideDraft *d, const Surface *fin, const Control *control)
{
  if (!control)
    return;
  draw_grip (d->cr, d->look, hinge_px (&d->view, control->hinge_inner_x, control->inner, fin->z, 1));
  draw_grip (d->cr, d->look, hinge_px (&d->view, control->hinge_outer_x, control->outer, fin->z, 1));
}

static void
draw_hinge_proposal (const SideDraft *d)
{
  const SheetHinge *hinge = d->scene->overlay ? d->scene->overlay->hinge : NULL;

  if (hinge && !surface_is_horizontal (hinge->surface) && !hinge->laid_down)
    hinge_draw_proposal (d->cr, d->look, &d->view, hinge, hinge->surface->z, 1);
}

/* A body's side nodes belong to the selection's `side`, a fin's own nodes do not. */
static void
draw_nodes (const SideDraft *d)
{
  const char *id = selection_single (d->scene->selection);
  const Body *body = aeroplane_body_by_id (d->aeroplane, id);
  const Surface *surface = aeroplane_surface_by_id (d->aeroplane, id);

  if (d->look->paper)
    return;
  if (body && body->side_outline)
    draw_outline_nodes (d, id, body->side_outline, true);
  if (surface && !surface_is_horizontal (surface) && d->scene->selection->control)
    draw_hinge_grips (d, surface, aeroplane_control_by_id (d->aeroplane, id, d->scene->selection->control));
  else if (surface && !surface_is_horizontal (surface))
    {
      Outline *outline = side_fin_outline (surface);

      if (outline)
        draw_outline_nodes (d, id, outline, false);
      outline_unref (outline);
    }
}

/* Paper is its own ground, and has no strip to keep within. */
static void
draw_ground (const SideDraft *d)
{
  cairo_rectangle (d->cr, 0, 0, d->side->width, d->side->height);
  cairo_clip (d->cr);
  look_set_source (d->cr, d->look->sheet);
  cairo_paint (d->cr);
  draw_levels (d);
  draw_datum (d);
}

void
draw_side_view (cairo_t *cr, const SideScene *side)
{
  const SideDraft draft = {
    .cr = cr, .side = side, .scene = side->scene, .look = side->scene->look, .view = side_view_of (side),
    .aeroplane = side->scene->figures->aeroplane };

  cairo_save (cr);
  cairo_new_path (cr);
  if (!draft.look->paper)
    draw_ground (&draft);
  draw_bodies (&draft);
  draw_surfaces (&draft);
  draw_centre_line (&draft);
  draw_thrust_line (&draft);
  draw_side_hatch (cr, side, &draft.view);
  draw_parts (&draft);
  if (!draft.look->paper)
    draw_side_leads (cr, side, &draft.view);
  draw_offer (&draft);
  draw_balance (&draft);
  draw_nodes (&draft);
  draw_hinge_proposal (&draft);
  cairo_restore (cr);
}
