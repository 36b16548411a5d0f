#include "drawing/sheet-dimensions.h"
#include <math.h>
#include "drawing/outline-path.h"
#include "drawing/part-symbols.h"
#include "drawing/sheet-draft.h"
#include "geometry/planform.h"

typedef struct {
  const SheetScene *scene;
  SheetDimension *list;
  size_t count;
} DimensionList;

static void
list_add (DimensionList *self, Hit hit, Dimension dimension, double mm)
{
  g_autofree char *text = units_length_figure (self->scene->units, mm);
  SheetDimension *made;

  if (self->count == SHEET_DIMENSION_ROOM)
    return;
  made = &self->list[self->count++];
  hit.kind = HIT_DIMENSION;
  *made = (SheetDimension) { .hit = hit, .dimension = dimension };
  g_strlcpy (made->text, text, sizeof made->text);
  made->dimension.figure = made->text;
}

/* The span, below everything. */
static void
add_span (DimensionList *self)
{
  const SheetScene *scene = self->scene;
  const Aeroplane *aeroplane = scene->figures->aeroplane;
  const Surface *wing = aeroplane_reference_wing (aeroplane);
  Point tip, foot, end;
  double level;

  if (!wing)
    return;
  tip = outline_tip (wing->outline);
  level = sheet_shapes_box (aeroplane).max.x + sheet_dimension_gap (aeroplane);
  foot = view_to_screen (scene->view, tip);
  end = sheet_px (scene->view, level, tip.y);
  list_add (self, (Hit) { .id = wing->piece.id, .dimension = DIMENSION_SPAN }, (Dimension) {
    .from = { 2 * scene->view->origin_x - end.x, end.y }, .to = end,
    .foot_from = { 2 * scene->view->origin_x - foot.x, foot.y }, .foot_to = foot }, 2 * tip.y);
}

/* Whether a strip of the sheet is clear of parts, px. */
static bool
is_clear_of_parts (const SheetScene *scene, Box strip)
{
  const Aeroplane *aeroplane = scene->figures->aeroplane;

  for (size_t i = 0; i < aeroplane_count (aeroplane, PIECE_PART); i++)
    if (boxes_meet (box_to_screen (scene->view, sheet_part_box (aeroplane_part (aeroplane, i))), strip))
      return false;
  return true;
}

/* What an upright dimension line takes with its figure, px: figures stand to the left of their lines, and one longer than its line beyond it. */
static Box
upright_strip (double x, double from, double to)
{
  const double least = 30, middle = (from + to) / 2, half = fmax (least, to - from) / 2;

  return (Box) { { x - 18, middle - half }, { x + 4, middle + half } };
}

/* Whether a strip is clear of the upright lines that are there already. */
static bool
is_clear_of_lines (const DimensionList *self, Box strip)
{
  for (size_t i = 0; i < self->count; i++)
    {
      const Dimension *line = &self->list[i].dimension;

      if (fabs (line->from.x - line->to.x) < 1
          && boxes_meet (upright_strip (line->to.x, fmin (line->from.y, line->to.y), fmax (line->from.y, line->to.y)), strip))
        return false;
    }
  return true;
}

/* An upright line's place from x on, in steps of `step` px, where no other line's figure stands; at x where all are taken. */
static double
clear_line_px (const DimensionList *self, double x, double step, double from, double to)
{
  for (int i = 0; i < 5; i++)
    if (is_clear_of_lines (self, upright_strip (x + i * step, from, to)))
      return x + i * step;
  return x;
}

/* The mean chord's bar with its ticks, px. */
static bool
is_clear_of_chord (const SheetScene *scene, Box strip)
{
  const SurfaceFigures *reference = scene->figures->reference;
  const double ticks = 8;
  Point from, to;

  if (!reference || !isfinite (reference->planform.mac))
    return true;
  from = sheet_px (scene->view, reference->planform.mac_leading_edge_x, reference->planform.mac_station);
  to = sheet_px (scene->view, reference->planform.mac_leading_edge_x + reference->planform.mac, reference->planform.mac_station);
  return !boxes_meet (box_grown ((Box) { from, to }, ticks), strip);
}

/* Where a mark's dimension line stands: clear of the band and the fingers, further out when a part, the mean chord or another line is in the
 * way. */
static double
mark_line_px (const DimensionList *self, double beyond, double from, double to)
{
  double x = beyond + 18;

  for (int i = 0; i < 5; i++, x += 16)
    {
      const Box strip = { { x - 18, from }, { x + 4, to } };

      if (is_clear_of_parts (self->scene, strip) && is_clear_of_chord (self->scene, strip)
          && is_clear_of_lines (self, upright_strip (x, from, to)))
        return x;
    }
  return clear_line_px (self, beyond + 18, 16, from, to);
}

/* The extension line begins at the mark's own station where the leading edge runs away from its level, else beside the dimension. */
static Point
leading_foot (const SheetScene *scene, const MarkFigures *mark, Point leading, double beyond)
{
  const SurfaceFigures *reference = scene->figures->reference;
  const double station = (beyond - scene->view->origin_x) / scene->view->scale;
  StationCut cut;

  if (reference && planform_cut (reference->surface->outline, PLANFORM_CARRIED, station, &cut) == CORE_OK
      && fabs (cut.leading_x - mark->leading_edge_x_mm) * scene->view->scale < 4)
    return (Point) { beyond + 2, leading.y };
  return leading;
}

/* From the leading edge at the mark's station to the mark. */
static void
add_mark (DimensionList *self, size_t i)
{
  const SheetScene *scene = self->scene;
  const MarkFigures *mark = &scene->figures->balance.marks[i];
  Point place, leading, at;
  SheetBand band;
  double beside;

  if (!sheet_mark_place (scene->figures, i, &place))
    return;
  leading = sheet_px (scene->view, mark->leading_edge_x_mm, mark->station_mm);
  at = view_to_screen (scene->view, place);
  if (i == 0 && sheet_band (scene->figures, &band))
    at.x = fmax (at.x, sheet_px (scene->view, 0, band.outer).x);
  beside = mark_line_px (self, at.x, fmin (leading.y, at.y), fmax (leading.y, at.y));
  list_add (self, (Hit) { .index = i, .dimension = DIMENSION_MARK }, (Dimension) {
    .from = { beside, leading.y }, .to = { beside, at.y },
    .foot_from = leading_foot (scene, mark, leading, at.x), .foot_to = { at.x + 2, at.y } }, mark->target_mm);
}

/* The selected part's middle, from the datum: beside the body to port, or outboard of a part that stands in a wing. */
static void
add_part (DimensionList *self, const Part *part)
{
  const SheetScene *scene = self->scene;
  const Box box = part_symbol_box (scene->look, box_to_screen (scene->view, sheet_part_box (part)));
  const double greatest = sheet_greatest_half_width (scene->figures->aeroplane), half = greatest * scene->view->scale;
  const bool starboard = part->y > greatest;
  const double beside = starboard ? box.max.x + 22 : part->y < -greatest ? box.min.x - 22 : fmin (scene->view->origin_x - half, box.min.x) - 22;
  const double y = sheet_px (scene->view, part->x, 0).y, datum_y = scene->view->origin_y;
  const double x = clear_line_px (self, beside, starboard ? 16 : -16, fmin (y, datum_y), fmax (y, datum_y));
  const Point datum = { x, datum_y }, end = { x, y };

  if (fabs (part->x) < 0.5)
    return;
  list_add (self, (Hit) { .id = part->piece.id, .dimension = DIMENSION_PART_X }, (Dimension) {
    .from = datum, .to = end, .foot_from = datum, .foot_to = { starboard ? box.max.x : box.min.x, end.y },
    .line = scene->look->selection }, part->x);
}

typedef struct { const char *id; size_t node; Point place; Box bounds; } SelectedNode;

/* The one node of the plan that is selected. */
static bool
selected_node (const SheetScene *scene, SelectedNode *selected)
{
  const Selection *selection = scene->selection;
  const char *id = selection_single (selection);
  const Surface *surface = aeroplane_surface_by_id (scene->figures->aeroplane, id);
  const Body *body = aeroplane_body_by_id (scene->figures->aeroplane, id);
  const Outline *outline = surface && surface_is_horizontal (surface) ? surface->outline : body ? body->outline : NULL;

  if (!outline || selection->side || selection->node_count != 1 || selection->nodes[0] >= outline_node_count (outline))
    return false;
  *selected = (SelectedNode) {
    .id = surface ? surface->piece.id : body->piece.id, .node = selection->nodes[0],
    .place = outline_node (outline, selection->nodes[0]), .bounds = outline_bounds (outline) };
  return true;
}

/* Its station, aft of its outline. */
static void
add_node_station (DimensionList *self, const SelectedNode *node)
{
  const SheetView *view = self->scene->view;
  const double below = fmax (0.16 * 2 * node->bounds.max.y, 30 / view->scale), level = node->bounds.max.x + below;
  const Point middle = sheet_px (view, level, 0), end = sheet_px (view, level, node->place.y);

  if (fabs (node->place.y) < 0.5)
    return;
  list_add (self, (Hit) { .id = node->id, .index = node->node, .dimension = DIMENSION_NODE_STATION }, (Dimension) {
    .from = middle, .to = end, .foot_from = middle, .foot_to = view_to_screen (view, node->place),
    .line = self->scene->look->selection, .feet = LINE_PROPOSAL }, node->place.y);
}

/* And how far aft of the datum it stands: outboard of it, or inboard where the window ends. */
static void
add_node_x (DimensionList *self, const SelectedNode *node)
{
  const SheetScene *scene = self->scene;
  const SheetView *view = scene->view;
  const Point at = view_to_screen (view, node->place);
  const double body = view->origin_x + sheet_greatest_half_width (scene->figures->aeroplane) * view->scale + 22;
  const double outboard = fmax (at.x + 26, fabs (node->place.y) < 0.5 ? body : 0), beside = outboard > view->width - 12 ? at.x - 30 : outboard;
  const Point datum = { beside, view->origin_y }, end = { beside, at.y };

  if (fabs (node->place.x) < 0.5)
    return;
  list_add (self, (Hit) { .id = node->id, .index = node->node, .dimension = DIMENSION_NODE_X }, (Dimension) {
    .from = datum, .to = end, .foot_from = datum, .foot_to = at, .line = scene->look->selection, .feet = LINE_PROPOSAL }, node->place.x);
}

size_t
sheet_dimensions (const SheetScene *scene, SheetDimension list[SHEET_DIMENSION_ROOM])
{
  DimensionList made = { .scene = scene, .list = list };
  const Part *part = aeroplane_part_by_id (scene->figures->aeroplane, selection_single (scene->selection));
  SelectedNode node;

  if (scene->show_figures)
    add_span (&made);
  for (size_t i = 0; i < scene->figures->balance.mark_count; i++)
    if (scene->show_figures || scene->selection->mark == (int) i)
      add_mark (&made, i);
  if (part)
    add_part (&made, part);
  if (selected_node (scene, &node))
    {
      add_node_station (&made, &node);
      add_node_x (&made, &node);
    }
  return made.count;
}

void
sheet_draw_dimensions (SheetDraft *draft)
{
  SheetDimension list[SHEET_DIMENSION_ROOM];
  const size_t count = sheet_dimensions (draft->scene, list);

  for (size_t i = 0; i < count; i++)
    {
      dimension_draw (&draft->lettering, &list[i].dimension);
      sheet_take (draft, dimension_figure_box (&draft->lettering, &list[i].dimension));
      sheet_take (draft, box_grown (box_with (box_with (box_empty (), list[i].dimension.from), list[i].dimension.to), 2));
    }
}
