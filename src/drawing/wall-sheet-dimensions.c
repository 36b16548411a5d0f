#include "trammel-config.h"
#include "drawing/wall-sheet-dimensions.h"
#include <glib/gi18n-lib.h>
#include <math.h>
#include "drawing/outline-path.h"

static const double line_off = 7;          /* of a dimension line from what it measures, mm on paper */
static const double least_length = 1;      /* mm of the aeroplane: shorter is not worth a dimension */

/* One plan's dimensions under way. */
typedef struct {
  const SheetPen *pen;
  const SheetView *view;
  const Aeroplane *aeroplane;
  const Surface *wing;       /* the reference; NULL without */
  Box shapes;                /* all that is drawn, mm of the aeroplane */
} DimensionDraft;

static Point
on_paper (const DimensionDraft *draft, double x, double y)
{
  return sheet_px (draft->view, x, y);
}

static void
draw_length (const DimensionDraft *draft, Dimension dimension, double mm)
{
  g_autofree char *figure = paper_length_figure (draft->pen->sheet->units, mm);

  dimension.figure = figure;
  pen_dimension (draft->pen, dimension);
}

/* How far up its figure reaches: beyond the line's end where there is no room on it. */
static double
figure_top (const DimensionDraft *draft, Dimension dimension, double mm)
{
  g_autofree char *figure = paper_length_figure (draft->pen->sheet->units, mm);

  dimension.figure = figure;
  dimension.size = look_em_of_caps (draft->pen->look, draft->pen->figure_caps);
  return dimension_figure_box (&draft->pen->lettering, &dimension).min.y;
}

static double
centre_line_end (const DimensionDraft *draft)
{
  return on_paper (draft, fmin (draft->shapes.min.x, 0), 0).y - fmax (14 * draft->view->scale, 4);
}

static void
draw_span (const DimensionDraft *draft, const Surface *surface, double level)
{
  const Point tip = outline_tip (surface->outline);
  const Point right = on_paper (draft, tip.x, tip.y), left = on_paper (draft, tip.x, -tip.y);

  draw_length (draft, (Dimension) { .from = { left.x, level }, .to = { right.x, level }, .foot_from = left, .foot_to = right }, 2 * tip.y);
}

static const Surface *
first_of_role (const Aeroplane *aeroplane, SurfaceRole role)
{
  for (size_t i = 0; i < aeroplane_count (aeroplane, PIECE_SURFACE); i++)
    if (aeroplane_surface (aeroplane, i)->role == role)
      return aeroplane_surface (aeroplane, i);
  return NULL;
}

/* Whether a surface reaches out to station y anywhere between the datum and the root's leading edge. */
static bool
is_in_the_way (const DimensionDraft *draft, double root_x, double station)
{
  const double touch = 2;

  for (size_t i = 0; i < aeroplane_count (draft->aeroplane, PIECE_SURFACE); i++)
    {
      const Surface *surface = aeroplane_surface (draft->aeroplane, i);
      const PlanformSides sides = surface->root_open ? PLANFORM_OPEN : PLANFORM_CARRIED;
      StationCut cut;

      if (surface_is_horizontal (surface) && planform_cut (surface->outline, sides, station, &cut) == CORE_OK
          && cut.leading_x < root_x - touch && cut.trailing_x > touch)
        return true;
    }
  return false;
}

static double
widest_part_ahead (const DimensionDraft *draft, double x)
{
  double reach = 0;

  for (size_t i = 0; i < aeroplane_count (draft->aeroplane, PIECE_PART); i++)
    {
      const Box box = sheet_part_box (aeroplane_part (draft->aeroplane, i));

      if (box.min.x < x)
        reach = fmax (reach, fmax (-box.min.y, box.max.y));
    }
  return reach;
}

static bool
datum_is_nose (const DimensionDraft *draft)
{
  const double same = 0.5;
  double nose = INFINITY;

  for (size_t i = 0; i < aeroplane_count (draft->aeroplane, PIECE_BODY); i++)
    nose = fmin (nose, sheet_body_box (aeroplane_body (draft->aeroplane, i)).min.x);
  return fabs (nose) < same;
}

/* Where the line stands, mm to port of the centre line, and what is written on the datum's extension line: as much as there is room
 * for between propeller or body and the span's extension line; where even one word is too long, beside the tip. */
typedef struct { double out; const char *words; double across; } DatumPlace;

static DatumPlace
datum_place (const DimensionDraft *draft, double root_x)
{
  const char *const words[] = { datum_is_nose (draft) ? _("datum, foremost point of the body") : _("datum"), _("datum") };
  const double scale = draft->view->scale, tip = -draft->shapes.min.y * scale, before_tip = 3;
  const double inner = fmax (widest_part_ahead (draft, root_x), sheet_greatest_half_width (draft->aeroplane)) * scale + 4;

  for (size_t i = 0; i < G_N_ELEMENTS (words); i++)
    {
      const double out = inner + pen_width (draft->pen, caps_text, words[i]) + 2;

      if (out < tip - before_tip && !is_in_the_way (draft, root_x, out / scale))
        return (DatumPlace) { out, words[i], 0 };
    }
  return (DatumPlace) { tip + line_off, words[1], 1 };
}

/* To port, between the datum and the root's leading edge. False when they are one. */
static bool
root_place (const DimensionDraft *draft, DatumPlace *place, Dimension *dimension, double *root_x)
{
  const double x = outline_node (draft->wing->outline, 0).x, body = sheet_half_width (draft->aeroplane, x);
  Point datum;

  if (fabs (x) < least_length)
    return false;
  *root_x = x;
  *place = datum_place (draft, x);
  datum = (Point) { draft->view->origin_x - place->out, draft->view->origin_y };
  *dimension = (Dimension) {
    .from = datum, .to = { datum.x, on_paper (draft, x, 0).y }, .foot_from = { draft->view->origin_x, datum.y },
    .foot_to = on_paper (draft, x, -body) };
  return true;
}

static void
draw_root_place (const DimensionDraft *draft)
{
  const double beside = 2, above = 1.2;
  Dimension dimension;
  DatumPlace place;
  double root_x;

  if (!root_place (draft, &place, &dimension, &root_x))
    return;
  draw_length (draft, dimension, root_x);
  pen_write (draft->pen, (Script) {
    { dimension.from.x + (place.across > 0 ? line_off - beside : beside), dimension.from.y - above }, caps_text, place.across }, place.words);
}

/* The widest line of two quarter ellipses that share it; NAN for any other shape. */
static double
widest_line (const Outline *outline)
{
  const Segment *first = outline_segment (outline, 0);
  const Segment *second = outline_segment_count (outline) == 2 ? outline_segment (outline, 1) : NULL;

  if (second == NULL || first->kind != SEGMENT_ARC || second->kind != SEGMENT_ARC || fabs (first->centre.x - second->centre.x) > 1e-6)
    return NAN;
  return first->centre.x;
}

/* Beside the starboard tip, from x to x; the extension lines begin at those stations. */
typedef struct { double from_x, to_x, from_station, to_station; } ChordStretch;

static void
draw_chord_stretch (const DimensionDraft *draft, ChordStretch stretch)
{
  const double x = on_paper (draft, 0, draft->shapes.max.y).x + line_off;
  const Point from = on_paper (draft, stretch.from_x, stretch.from_station), to = on_paper (draft, stretch.to_x, stretch.to_station);

  if (fabs (stretch.to_x - stretch.from_x) >= least_length)
    draw_length (draft, (Dimension) { .from = { x, from.y }, .to = { x, to.y }, .foot_from = from, .foot_to = to }, stretch.to_x - stretch.from_x);
}

/* Short lengths one above the other would put their figures beside the line, and onto one another. */
static void
draw_root_chord (const DimensionDraft *draft)
{
  const Outline *outline = draft->wing->outline;
  const double leading = outline_node (outline, 0).x, trailing = outline_node (outline, outline_node_count (outline) - 1).x;
  const double widest = widest_line (outline), tip = outline_tip (outline).y, room = 3.5 * 3 + 0.5;
  const double fore = sheet_half_width (draft->aeroplane, leading), aft = sheet_half_width (draft->aeroplane, trailing);

  if (isnan (widest) || fmin (widest - leading, trailing - widest) * draft->view->scale < room)
    {
      draw_chord_stretch (draft, (ChordStretch) { leading, trailing, fore, aft });
      return;
    }
  draw_chord_stretch (draft, (ChordStretch) { leading, widest, fore, tip });
  draw_chord_stretch (draft, (ChordStretch) { widest, trailing, tip, aft });
  line_kind_set (draft->pen->cr, draft->pen->look, LINE_CENTRE);
  line_stroke (draft->pen->cr, on_paper (draft, widest, -tip), on_paper (draft, widest, tip));
}

static const Control *
first_ailerons (const Surface *wing)
{
  for (size_t i = 0; i < wing->control_count; i++)
    if (wing->controls[i].kind == CONTROL_AILERON && wing->controls[i].inner < wing->controls[i].outer)
      return &wing->controls[i];
  return NULL;
}

static char *
throw_words (const Control *control)
{
  g_autofree char *up = units_angle (control->up), *down = units_angle (control->down);

  if (isnan (control->up) || isnan (control->down))
    return g_strdup (_("aileron"));
  return g_strdup_printf (_("aileron, up %s, down %s"), up, down);
}

/* The foremost place of what lies behind the wing to starboard beyond the body: a tailplane. */
static double
next_behind (const DimensionDraft *draft, double x)
{
  double next = INFINITY;

  for (size_t i = 0; i < aeroplane_count (draft->aeroplane, PIECE_SURFACE); i++)
    {
      const Box box = sheet_surface_box (aeroplane_surface (draft->aeroplane, i));

      if (box.min.x > x - least_length && surface_is_horizontal (aeroplane_surface (draft->aeroplane, i)))
        next = fmin (next, box.min.x);
    }
  return next;
}

static void
draw_ailerons (const DimensionDraft *draft)
{
  const Control *control = first_ailerons (draft->wing);
  const double aft = outline_bounds (draft->wing->outline).max.x, level = on_paper (draft, aft, 0).y + line_off;
  g_autofree char *words = control != NULL ? throw_words (control) : NULL;
  double inner_cut, outer_cut;
  Point middle, inner, outer;

  if (control == NULL || level + caps_text + 4 > on_paper (draft, next_behind (draft, aft), 0).y)
    return;
  inner_cut = sheet_control_cut (draft->wing, control->inner, control->hinge_inner_x);
  outer_cut = sheet_control_cut (draft->wing, control->outer, control->hinge_outer_x);
  middle = (Point) { draft->view->origin_x, level };
  inner = on_paper (draft, isnan (inner_cut) ? control->hinge_inner_x : inner_cut, control->inner);
  outer = on_paper (draft, isnan (outer_cut) ? control->hinge_outer_x : outer_cut, control->outer);
  if (control->inner >= least_length)
    draw_length (draft, (Dimension) { .from = middle, .to = { inner.x, level }, .foot_from = middle, .foot_to = inner }, control->inner);
  draw_length (draft, (Dimension) { .from = { inner.x, level }, .to = { outer.x, level }, .foot_from = inner, .foot_to = outer },
               control->outer - control->inner);
  pen_write (draft->pen, (Script) { { (inner.x + outer.x) / 2, level + caps_text + 2 }, caps_text, 0.5 }, words);
}

/* From the leading edge at the first mark's station to the mark, outboard of the band. False when there is none. */
static bool
mark_place (const DimensionDraft *draft, Dimension *dimension, double *target)
{
  const Figures *figures = draft->pen->sheet->figures;
  SheetBand band;
  Point place, leading, mark;
  double x;

  if (figures->balance.mark_count == 0 || !sheet_mark_place (figures, 0, &place) || !sheet_band (figures, &band))
    return false;
  x = on_paper (draft, 0, fmax (band.outer, place.y)).x + 5;
  leading = on_paper (draft, figures->balance.marks[0].leading_edge_x_mm, place.y);
  mark = on_paper (draft, place.x, place.y);
  *dimension = (Dimension) {
    .from = { x, leading.y }, .to = { x, mark.y }, .foot_from = leading, .foot_to = { on_paper (draft, 0, band.outer).x, mark.y } };
  *target = figures->balance.marks[0].target_mm;
  return true;
}

static void
draw_mark (const DimensionDraft *draft)
{
  Dimension dimension;
  double target;

  if (mark_place (draft, &dimension, &target))
    draw_length (draft, dimension, target);
}

/* Ahead of the nose and of all figures that stand up there. */
static double
first_level (const DimensionDraft *draft, bool mark_on_plan)
{
  const double air = 2;
  double level = centre_line_end (draft) - 3, length;
  Dimension dimension;
  DatumPlace place;

  if (draft->wing != NULL && root_place (draft, &place, &dimension, &length))
    level = fmin (level, figure_top (draft, dimension, length) - air);
  if (draft->wing != NULL && mark_on_plan && mark_place (draft, &dimension, &length))
    level = fmin (level, figure_top (draft, dimension, length) - air);
  return level;
}

/* Ahead of the nose, the wing's outermost; the tail's behind everything. */
static void
draw_spans (const DimensionDraft *draft, bool mark_on_plan)
{
  const Surface *tail = first_of_role (draft->aeroplane, ROLE_TAILPLANE), *foreplane = first_of_role (draft->aeroplane, ROLE_FOREPLANE);
  double level = first_level (draft, mark_on_plan);

  if (foreplane != NULL)
    {
      draw_span (draft, foreplane, level);
      level -= line_off + 1;
    }
  if (draft->wing != NULL)
    draw_span (draft, draft->wing, level);
  if (tail != NULL)
    draw_span (draft, tail, on_paper (draft, draft->shapes.max.x, 0).y + line_off);
}

void
wall_dimensions_draw (const SheetPen *pen, const SheetView *view, bool mark_on_plan)
{
  const Aeroplane *aeroplane = pen->sheet->figures->aeroplane;
  const DimensionDraft draft = {
    .pen = pen, .view = view, .aeroplane = aeroplane, .wing = aeroplane_reference_wing (aeroplane), .shapes = sheet_shapes_box (aeroplane) };

  draw_spans (&draft, mark_on_plan);
  if (draft.wing == NULL)
    return;
  draw_root_place (&draft);
  draw_root_chord (&draft);
  draw_ailerons (&draft);
  if (mark_on_plan)
    draw_mark (&draft);
}
