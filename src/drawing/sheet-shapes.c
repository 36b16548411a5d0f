#include "drawing/sheet-draft.h"
#include <math.h>
#include "drawing/outline-path.h"
#include "drawing/sheet-hinge.h"
#include "drawing/spar-runs.h"
#include "geometry/planform.h"

static void
outline_line (const SheetDraft *draft, bool selected)
{
  line_kind_set (draft->cr, draft->look, selected ? LINE_SELECTED : LINE_OUTLINE);
  look_set_source (draft->cr, selected ? draft->look->selection : draft->look->graphite);
}

static bool
is_selected (const SheetDraft *draft, const Piece *piece)
{
  return selection_has (draft->selection, piece->id);
}

static void
draw_controls (const SheetDraft *draft, const Surface *surface)
{
  for (size_t i = 0; i < surface->control_count; i++)
    {
      const Control *control = &surface->controls[i];
      const bool selected = draft->selection->control && is_selected (draft, &surface->piece)
                            && g_strcmp0 (draft->selection->control, control->id) == 0;

      line_kind_set (draft->cr, draft->look, selected ? LINE_SELECTED : LINE_INNER);
      look_set_source (draft->cr, selected ? draft->look->selection : draft->look->graphite);
      hinge_stroke (draft->cr, draft->view, surface, control, 0, 1);
      hinge_stroke (draft->cr, draft->view, surface, control, 0, -1);
    }
}

static bool
surface_closes (const SheetDraft *draft, size_t surface)
{
  return surface >= draft->figures->surface_count || draft->figures->surfaces[surface].status != CORE_OPEN;
}

static void
add_surface (const SheetDraft *draft, size_t i)
{
  outline_path_surface (draft->cr, draft->view, aeroplane_surface (draft->aeroplane, i), surface_closes (draft, i));
}

/* A fin seen from above is its edge on the centre line. */
static void
draw_fin (const SheetDraft *draft, const Surface *surface)
{
  const Box box = sheet_surface_box (surface);

  outline_line (draft, is_selected (draft, &surface->piece));
  line_stroke (draft->cr, view_to_screen (draft->view, box.min), view_to_screen (draft->view, box.max));
}

/* On paper alone: on a screen they would only be in the way. */
static void
draw_ribs (const SheetDraft *draft, const Surface *surface)
{
  const PlanformSides sides = surface->root_open ? PLANFORM_OPEN : PLANFORM_CARRIED;
  StationCut cut;

  line_kind_set (draft->cr, draft->look, LINE_CONSTRUCTION);
  cairo_set_line_width (draft->cr, draft->look->thin_width / 2);
  look_set_source (draft->cr, draft->look->construction);
  for (size_t i = 0; i < surface->rib_count; i++)
    if (planform_cut (surface->outline, sides, surface->ribs[i].place, &cut) == CORE_OK)
      for (int side = -1; side <= 1; side += 2)
        line_stroke (draft->cr, sheet_px (draft->view, cut.leading_x, side * surface->ribs[i].place),
                     sheet_px (draft->view, cut.trailing_x, side * surface->ribs[i].place));
}

typedef struct { const SheetDraft *draft; const Surface *surface; } SparDraft;

/* Beneath the skin, its middle: broken, on both sides. */
static void
draw_spar (const StructureItem *spar, void *data)
{
  const SparDraft *self = data;
  double from, to;

  if (!spar_run (self->surface, spar->x, &from, &to))
    return;
  for (int side = -1; side <= 1; side += 2)
    line_stroke (self->draft->cr, sheet_px (self->draft->view, spar->x, side * from), sheet_px (self->draft->view, spar->x, side * to));
}

static void
draw_spars (const SheetDraft *draft, const Surface *surface)
{
  SparDraft spars = { draft, surface };

  line_kind_set (draft->cr, draft->look, LINE_HIDDEN);
  cairo_set_line_width (draft->cr, draft->look->inner_width);
  look_set_source (draft->cr, draft->look->construction);
  spars_visit (draft->aeroplane, surface, draw_spar, &spars);
}

static void
draw_surface (const SheetDraft *draft, size_t i, bool covers)
{
  const Surface *surface = aeroplane_surface (draft->aeroplane, i);

  if (covers && surface_closes (draft, i) && !draft->scene->plan)
    {
      add_surface (draft, i);
      look_set_source (draft->cr, draft->look->sheet);
      cairo_fill (draft->cr);
    }
  if (draft->look->paper && surface_closes (draft, i))
    draw_ribs (draft, surface);
  if (surface_closes (draft, i))
    draw_spars (draft, surface);
  add_surface (draft, i);
  outline_line (draft, is_selected (draft, &surface->piece) && !draft->selection->control);
  cairo_stroke (draft->cr);
  draw_controls (draft, surface);
}

static void
draw_formers (const SheetDraft *draft, const Body *body)
{
  line_kind_set (draft->cr, draft->look, LINE_CONSTRUCTION);
  look_set_source (draft->cr, draft->look->construction);
  for (size_t i = 0; i < body->former_count; i++)
    {
      const double x = body->formers[i].place, reach = outline_reach_at (body->outline, x);

      if (reach > 0)
        line_stroke (draft->cr, sheet_px (draft->view, x, -reach), sheet_px (draft->view, x, reach));
    }
}

/* What passes under the body, broken inside it. */
static void
draw_hidden_surfaces (const SheetDraft *draft, const Body *body)
{
  cairo_t *cr = draft->cr;

  cairo_save (cr);
  outline_path_whole (cr, draft->view, body->outline);
  cairo_clip (cr);
  line_kind_set (cr, draft->look, LINE_HIDDEN);
  look_set_source (cr, draft->look->construction);
  for (size_t i = 0; i < aeroplane_count (draft->aeroplane, PIECE_SURFACE); i++)
    {
      const Surface *surface = aeroplane_surface (draft->aeroplane, i);

      if (surface_is_horizontal (surface) && !sheet_surface_covers_body (draft->aeroplane, surface))
        {
          add_surface (draft, i);
          cairo_stroke (cr);
        }
    }
  cairo_restore (cr);
}

/* Filled with the sheet, so that it hides what passes under it. A plan beneath must stay in sight: then nothing is hidden. */
static void
draw_body (const SheetDraft *draft, const Body *body)
{
  cairo_t *cr = draft->cr;

  if (!draft->scene->plan)
    {
      outline_path_whole (cr, draft->view, body->outline);
      look_set_source (cr, draft->look->sheet);
      cairo_fill (cr);
    }
  draw_formers (draft, body);
  if (!draft->scene->plan)
    draw_hidden_surfaces (draft, body);
  outline_path_whole (cr, draft->view, body->outline);
  outline_line (draft, is_selected (draft, &body->piece));
  cairo_stroke (cr);
}

/* The body under a wing that lies on it. */
static void
draw_hidden_bodies (const SheetDraft *draft, size_t surface)
{
  cairo_t *cr = draft->cr;

  cairo_save (cr);
  add_surface (draft, surface);
  cairo_clip (cr);
  line_kind_set (cr, draft->look, LINE_HIDDEN);
  look_set_source (cr, draft->look->construction);
  for (size_t i = 0; i < aeroplane_count (draft->aeroplane, PIECE_BODY); i++)
    {
      const Body *body = aeroplane_body (draft->aeroplane, i);

      if (body->outline)
        {
          outline_path_whole (cr, draft->view, body->outline);
          cairo_stroke (cr);
        }
    }
  cairo_restore (cr);
}

typedef enum { LAYER_UNDER_BODY, LAYER_OVER_BODY, LAYER_FINS } SurfaceLayer;

static SurfaceLayer
surface_layer (const SheetDraft *draft, const Surface *surface)
{
  if (!surface_is_horizontal (surface))
    return LAYER_FINS;
  return sheet_surface_covers_body (draft->aeroplane, surface) ? LAYER_OVER_BODY : LAYER_UNDER_BODY;
}

/* It is a hairline over its own print, which the sheet shows where it stands. */
static bool
is_over_its_print (const SheetDraft *draft, const char *traced)
{
  const SheetPrint *print = draft->scene->plan ? draft->scene->print : NULL;

  return print && traced && g_strcmp0 (traced, print->view) == 0;
}

static void
draw_layer (const SheetDraft *draft, SurfaceLayer layer)
{
  for (size_t i = 0; i < aeroplane_count (draft->aeroplane, PIECE_SURFACE); i++)
    {
      const Surface *surface = aeroplane_surface (draft->aeroplane, i);

      if (surface_layer (draft, surface) != layer || (layer != LAYER_FINS && is_over_its_print (draft, surface->traced)))
        continue;
      if (layer == LAYER_FINS)
        draw_fin (draft, surface);
      else
        draw_surface (draft, i, layer == LAYER_OVER_BODY);
      if (layer == LAYER_OVER_BODY && surface_closes (draft, i))
        draw_hidden_bodies (draft, i);
    }
}

void
sheet_draw_shapes (const SheetDraft *draft)
{
  draw_layer (draft, LAYER_UNDER_BODY);
  for (size_t i = 0; i < aeroplane_count (draft->aeroplane, PIECE_BODY); i++)
    {
      const Body *body = aeroplane_body (draft->aeroplane, i);

      if (body->outline && !is_over_its_print (draft, body->traced))
        draw_body (draft, body);
    }
  draw_layer (draft, LAYER_OVER_BODY);
  draw_layer (draft, LAYER_FINS);
}
