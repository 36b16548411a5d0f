#include "app/sheet-paper.h"
#include <math.h>
#include <string.h>
#include "drawing/rulers.h"

void
sheet_paper_clear (SheetPaper *self)
{
  g_clear_pointer (&self->sheet, gsk_render_node_unref);
  g_clear_pointer (&self->scale_bar, gsk_render_node_unref);
  g_clear_pointer (&self->figures, figures_unref);
  selection_clear (&self->selection);
  for (int i = 0; i < 4; i++)
    g_clear_pointer (&self->shown[i], ink_levels_unref);
  if (self->printed != NULL)
    piece_unref (&self->printed->piece);
  self->printed = NULL;
  g_clear_pointer (&self->printed_view, g_free);
}

static const InkLevels *
paper_shown (const SheetPlan *plan, int i)
{
  return plan == NULL ? NULL : i == 0 ? plan->ink : plan->scanned[i - 1];
}

static bool
paper_holds_plan (const SheetPaper *self, const SheetPlan *plan)
{
  for (int i = 0; i < 4; i++)
    if (self->shown[i] != paper_shown (plan, i))
      return false;
  return self->has_plan == (plan != NULL)
         && (plan == NULL || (memcmp (&self->placing, &plan->placing, sizeof self->placing) == 0 && self->strength == plan->strength
                              && self->device_scale == plan->device_scale));
}

static bool
paper_holds_print (const SheetPaper *self, const SheetPrint *print)
{
  return self->printed == (print != NULL ? print->plan : NULL)
         && (print == NULL || (self->bare == print->bare && g_strcmp0 (self->printed_view, print->view) == 0));
}

static bool
paper_holds (const SheetPaper *self, const SheetScene *scene)
{
  return self->sheet != NULL && self->figures == scene->figures && paper_holds_plan (self, scene->plan)
         && paper_holds_print (self, scene->print) && memcmp (&self->view, scene->view, sizeof self->view) == 0
         && memcmp (&self->look, scene->look, sizeof self->look) == 0
         && self->units.length == scene->units.length && self->units.mass == scene->units.mass
         && selection_equal (&self->selection, scene->selection) && self->named_places == scene->overlay->named_places
         && self->show_grid == scene->show_grid && self->show_names == scene->show_names && self->show_figures == scene->show_figures
         && self->arranging == scene->arranging;
}

static void
paper_take_plan (SheetPaper *self, const SheetPlan *plan)
{
  self->has_plan = plan != NULL;
  for (int i = 0; i < 4; i++)
    self->shown[i] = paper_shown (plan, i) != NULL ? ink_levels_ref (paper_shown (plan, i)) : NULL;
  if (plan == NULL)
    return;
  memcpy (&self->placing, &plan->placing, sizeof self->placing);
  self->strength = plan->strength;
  self->device_scale = plan->device_scale;
}

static void
paper_take (SheetPaper *self, const SheetScene *scene)
{
  /* With what lies between the members: they are compared as bytes. */
  memcpy (&self->look, scene->look, sizeof self->look);
  memcpy (&self->view, scene->view, sizeof self->view);
  self->units = scene->units;
  self->figures = figures_ref (scene->figures);
  self->selection = selection_copy (scene->selection);
  self->named_places = scene->overlay->named_places;
  self->show_grid = scene->show_grid;
  self->show_names = scene->show_names;
  self->show_figures = scene->show_figures;
  self->arranging = scene->arranging;
  paper_take_plan (self, scene->plan);
  if (scene->print == NULL)
    return;
  self->printed = (Plan *) piece_ref (&scene->print->plan->piece);
  self->printed_view = g_strdup (scene->print->view);
  self->bare = scene->print->bare;
}

/* A node takes time for all of its rectangle, be it empty or not. */
static graphene_rect_t
box_in_whole_px (Box box)
{
  const double left = floor (box.min.x) - 1, top = floor (box.min.y) - 1;

  return GRAPHENE_RECT_INIT ((float) left, (float) top, (float) (ceil (box.max.x) + 1 - left), (float) (ceil (box.max.y) + 1 - top));
}

static void
paper_record (SheetPaper *self, const SheetScene *scene)
{
  const graphene_rect_t whole = GRAPHENE_RECT_INIT (0, 0, (float) scene->view->width, (float) scene->view->height);
  const Ruler ruler = { .look = scene->look, .units = scene->units, .view = scene->view,
                        .pointer = NAN, .extent_from = NAN, .extent_to = NAN };
  const graphene_rect_t bar = box_in_whole_px (scale_bar_box (&ruler));
  cairo_t *cr;

  sheet_paper_clear (self);
  paper_take (self, scene);
  self->sheet = gsk_cairo_node_new (&whole);
  cr = gsk_cairo_node_get_draw_context (self->sheet);
  draw_sheet_at_rest (cr, scene);
  cairo_destroy (cr);
  self->scale_bar = gsk_cairo_node_new (&bar);
  cr = gsk_cairo_node_get_draw_context (self->scale_bar);
  draw_scale_bar (cr, &ruler);
  cairo_destroy (cr);
}

/* No larger than what is drawn: all of a node that is another than before is painted again, and what lies beneath it. */
static void
paper_snapshot_overlay (GtkSnapshot *snapshot, const SheetScene *scene)
{
  const cairo_rectangle_t whole = { 0, 0, scene->view->width, scene->view->height };
  cairo_surface_t *rehearsal = cairo_recording_surface_create (CAIRO_CONTENT_COLOR_ALPHA, &whole);
  cairo_t *cr = cairo_create (rehearsal);
  double x, y, width, height;
  graphene_rect_t bounds;

  draw_sheet_overlay (cr, scene);
  cairo_destroy (cr);
  cairo_recording_surface_ink_extents (rehearsal, &x, &y, &width, &height);
  cairo_surface_destroy (rehearsal);
  if (!(width > 0) || !(height > 0))
    return;
  bounds = box_in_whole_px ((Box) { { x, y }, { x + width, y + height } });
  cr = gtk_snapshot_append_cairo (snapshot, &bounds);
  draw_sheet_overlay (cr, scene);
  cairo_destroy (cr);
}

void
sheet_paper_snapshot (SheetPaper *self, GtkSnapshot *snapshot, const SheetScene *scene)
{
  if (!paper_holds (self, scene))
    paper_record (self, scene);
  gtk_snapshot_append_node (snapshot, self->sheet);
  paper_snapshot_overlay (snapshot, scene);
  gtk_snapshot_append_node (snapshot, self->scale_bar);
}
