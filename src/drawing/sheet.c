#include "drawing/sheet-draft.h"
#include <math.h>
#include "figures/lead-route.h"

static void
draw_lines (SheetDraft *draft)
{
  sheet_draw_shapes (draft);
  sheet_draw_centre_line (draft);
  sheet_draw_construction (draft);
  if (!draft->look->halo)      /* dots as wide as themselves make no room */
    sheet_draw_leads (draft);
  sheet_draw_parts (draft);
  sheet_draw_signs (draft);
}

/* Everything in the plan's way, once in the sheet's colour and wider: then it stands clear of what is printed. */
static void
draw_halos (const SheetDraft *draft)
{
  const Look look = sheet_plan_halo_look (draft->look);
  SheetDraft halo = *draft;

  halo.look = halo.lettering.look = &look;
  draw_lines (&halo);
}

static void
begin_draft (SheetDraft *draft, cairo_t *cr, const SheetScene *scene)
{
  draft->cr = cr;
  draft->scene = scene;
  draft->look = scene->look;
  draft->view = scene->view;
  draft->figures = scene->figures;
  draft->aeroplane = scene->figures->aeroplane;
  draft->selection = scene->selection;
  draft->taken_count = 0;
  cairo_save (cr);
  cairo_new_path (cr);
  cairo_rectangle (cr, 0, 0, scene->view->width, scene->view->height);
  cairo_clip (cr);
}

static void
draw_all (SheetDraft *draft)
{
  if (draft->scene->plan)
    draw_halos (draft);
  sheet_draw_datum (draft);
  draw_lines (draft);
  sheet_draw_dimensions (draft);
  if (!draft->look->paper)
    {
      sheet_draw_hatch (draft);
      sheet_draw_bays (draft);
    }
  sheet_draw_words (draft);
  if (draft->scene->overlay && draft->scene->overlay->named_places)
    sheet_draw_named_places (draft);
  sheet_draw_nodes (draft);
  sheet_draw_faults (draft);
}

/* Neither halos nor words nor signs: what is printed is looked at. */
static void
draw_over_print (SheetDraft *draft)
{
  const Look look = sheet_print_faded_look (draft->look);
  SheetDraft faded = *draft;

  if (draft->scene->print->bare)
    return;
  faded.look = faded.lettering.look = &look;
  sheet_draw_shapes (&faded);
  sheet_draw_centre_line (&faded);
  sheet_draw_parts (&faded);
  sheet_draw_print (draft);
  sheet_draw_faults (draft);
}

void
draw_sheet_at_rest (cairo_t *cr, const SheetScene *scene)
{
  SheetDraft draft;

  begin_draft (&draft, cr, scene);
  look_set_source (cr, scene->look->sheet);
  cairo_paint (cr);
  if (scene->plan)
    sheet_plan_draw (cr, scene->look, scene->view, scene->plan);
  draft.lettering = lettering_begin (cr, scene->look);
  sheet_take_all (&draft);
  sheet_draw_grid (&draft);
  if (scene->plan && scene->print)
    draw_over_print (&draft);
  else
    draw_all (&draft);
  cairo_restore (cr);
}

/* What stands on the sheet at rest, words and figures too: they are put once more where nobody sees it. */
static void
take_at_rest (SheetDraft *draft)
{
  cairo_surface_t *nowhere = cairo_recording_surface_create (CAIRO_CONTENT_COLOR_ALPHA, NULL);
  cairo_t *seen = draft->cr;

  draft->cr = cairo_create (nowhere);
  draft->lettering = lettering_begin (draft->cr, draft->look);
  sheet_take_all (draft);
  sheet_draw_dimensions (draft);
  sheet_draw_hatch (draft);
  sheet_draw_bays (draft);
  sheet_draw_words (draft);
  cairo_destroy (draft->cr);
  cairo_surface_destroy (nowhere);
  draft->cr = seen;
}

void
draw_sheet_overlay (cairo_t *cr, const SheetScene *scene)
{
  SheetDraft draft;

  begin_draft (&draft, cr, scene);
  if (scene->offered)      /* says how far parts go, beside what has its name already */
    take_at_rest (&draft);
  draft.lettering = lettering_begin (cr, scene->look);
  sheet_draw_overlay (&draft);
  cairo_restore (cr);
}

void
draw_sheet (cairo_t *cr, const SheetScene *scene)
{
  draw_sheet_at_rest (cr, scene);
  draw_sheet_overlay (cr, scene);
}

/* The span's figure stands above its line; below it there is room for the scale bar. */
Box
sheet_extent (const Figures *figures)
{
  static const Box usual = { { -60, -340 }, { 520, 340 } };      /* mm: a sheet for a model of 600 mm */
  Box box = sheet_shapes_box (figures->aeroplane);

  if (box_is_empty (box))
    return usual;
  box = box_with (box, (Point) { fmin (box.min.x, 0) - 14, 0 });        /* the centre line's end, the datum */
  box.max.x += 14;
  if (aeroplane_reference_wing (figures->aeroplane))
    box.max.x = fmax (box.max.x, sheet_shapes_box (figures->aeroplane).max.x + 1.9 * sheet_dimension_gap (figures->aeroplane));
  return box;
}

static Box
piece_box (const Piece *piece)
{
  switch (piece->kind)
    {
    case PIECE_SURFACE: return sheet_surface_box ((const Surface *) piece);
    case PIECE_BODY:    return sheet_body_box ((const Body *) piece);
    case PIECE_PART:    return sheet_part_box ((const Part *) piece);
    default:            return box_empty ();
    }
}

/* A piece's outline as seen in the plan. */
static const Outline *
plan_outline (const Aeroplane *aeroplane, const char *id)
{
  const Surface *surface = aeroplane_surface_by_id (aeroplane, id);
  const Body *body = aeroplane_body_by_id (aeroplane, id);

  return surface && surface_is_horizontal (surface) ? surface->outline : body ? body->outline : NULL;
}

/* Of a fin, which is seen from above, the whole. */
static Box
control_box (const Aeroplane *aeroplane, const char *id, const char *control)
{
  const Surface *surface = aeroplane_surface_by_id (aeroplane, id);
  const Control *c = aeroplane_control_by_id (aeroplane, id, control);

  if (c && !surface_is_horizontal (surface))
    return sheet_surface_box (surface);
  return c ? box_with (box_with (box_empty (), (Point) { c->hinge_inner_x, c->inner }), (Point) { c->hinge_outer_x, c->outer })
           : box_empty ();
}

static Box
lead_box (const Aeroplane *aeroplane, const Lead *lead)
{
  Box box = box_empty ();

  for (int leg = 0; leg < lead_leg_count (lead); leg++)
    {
      g_autoptr (GArray) route = lead_route (aeroplane, lead, leg);

      for (guint i = 0; route && i < route->len; i++)
        box = box_with (box, g_array_index (route, Point, i));
    }
  return box;
}

/* The selected places on a lead's way; empty when none are. */
static Box
lead_points_box (const Aeroplane *aeroplane, const Selection *selection)
{
  const Lead *lead = aeroplane_lead_by_id (aeroplane, selection_single (selection));
  g_autoptr (GArray) points = lead ? lead_points (aeroplane, lead) : NULL;
  Box box = box_empty ();

  for (size_t i = 0; points && i < selection->node_count; i++)
    if (selection->nodes[i] < points->len)
      box = box_with (box, g_array_index (points, LeadPoint, selection->nodes[i]).place);
  return box;
}

Box
sheet_selection_extent (const Figures *figures, const Selection *selection)
{
  const Outline *outline = plan_outline (figures->aeroplane, selection_single (selection));
  Box box = box_empty ();
  Point place;

  if (selection->mark >= 0 && sheet_mark_place (figures, selection->mark, &place))
    return box_with (box, place);
  if (selection->control)
    return control_box (figures->aeroplane, selection_single (selection), selection->control);
  for (size_t i = 0; outline && !selection->side && i < selection->node_count; i++)
    if (selection->nodes[i] < outline_node_count (outline))
      box = box_with (box, outline_node (outline, selection->nodes[i]));
  box = box_joined (box, lead_points_box (figures->aeroplane, selection));
  if (!box_is_empty (box))
    return box;
  for (size_t i = 0; selection->ids && selection->ids[i]; i++)
    {
      const Piece *piece = aeroplane_find (figures->aeroplane, selection->ids[i]);

      if (piece)
        box = box_joined (box, piece->kind == PIECE_LEAD ? lead_box (figures->aeroplane, (const Lead *) piece) : piece_box (piece));
    }
  return box;
}
