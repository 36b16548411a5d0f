#include "support/plan-sheet.h"

#include <cairo.h>
#include <check.h>
#include <math.h>
#include <stdlib.h>
#include "geometry/planform.h"
#include "support/plan-camera.h"

/* mm: the frame's margin, where the root's leading edge stands, and how finely curves are drawn. */
static const double MARGIN = 6, ROOT_X = 18, ROOT_Y = 17, STEP = 0.25;
/* mm: from click to click; the double line; each lettering's gap. */
static const double BETWEEN_CLICKS = 35, INSIDE = 3, LETTERS = 9;
static const double CLICK_OFF = 3;           /* px */
static const double TURN_BETWEEN_CLICKS = 0.7;
enum { MOST_PLACES = 4000 };

typedef struct {
  const SheetRecipe *recipe;
  PlanCamera camera;
  cairo_t *cr;
  Random random;
  Point run[MOST_PLACES];                    /* the outline, own axes */
  double along[MOST_PLACES];
  size_t count;
} Drawing;

static Point
sheet_of (const Drawing *drawing, Point own)
{
  const double across = ROOT_X + own.y;

  return (Point) { drawing->recipe->other_side ? SHEET_WIDTH - across : across, ROOT_Y + own.x };
}

static void
pen (const Drawing *drawing, double width_mm, double strength)
{
  const unsigned char *ink = drawing->recipe->ink;

  cairo_set_source_rgba (drawing->cr, ink[0] / 255.0, ink[1] / 255.0, ink[2] / 255.0, strength);
  cairo_set_line_width (drawing->cr, width_mm * plan_camera_scale (&drawing->camera));
}

static void
path_to (const Drawing *drawing, Point mm, bool moves)
{
  const Point px = plan_camera_px (&drawing->camera, mm);

  if (moves)
    cairo_move_to (drawing->cr, px.x, px.y);
  else
    cairo_line_to (drawing->cr, px.x, px.y);
}

/* Straight on the sheet, bent by the lens. */
static void
straight (const Drawing *drawing, Point from, Point to)
{
  const int steps = (int) ceil (point_distance (from, to));

  for (int i = 0; i <= steps; i++)
    path_to (drawing, point_mix (from, to, (double) i / steps), i == 0);
  cairo_stroke (drawing->cr);
}

static void
measure_run (Drawing *drawing, const Outline *outline)
{
  drawing->run[drawing->count++] = outline_node (outline, 0);
  for (size_t i = 0; i < outline_segment_count (outline); i++)
    {
      const Point from = outline_node (outline, i);
      const Segment *segment = outline_segment (outline, i);
      const int steps = (int) ceil (segment_length (from, segment) / STEP);
      for (int step = 1; step <= steps; step++)
        {
          drawing->run[drawing->count] = segment_at (from, segment, (double) step / steps);
          drawing->along[drawing->count] = drawing->along[drawing->count - 1]
                                           + point_distance (drawing->run[drawing->count], drawing->run[drawing->count - 1]);
          drawing->count++;
        }
    }
}

/* A stretch of the outline. */
static void
stroke_run (const Drawing *drawing, double from, double to)
{
  bool moves = true;

  for (size_t i = 0; i < drawing->count; i++)
    if (drawing->along[i] >= from && drawing->along[i] <= to)
      {
        path_to (drawing, sheet_of (drawing, drawing->run[i]), moves);
        moves = false;
      }
  cairo_stroke (drawing->cr);
}

static Point
place_at (const Drawing *drawing, double along)
{
  size_t i = 0;

  while (i + 1 < drawing->count && drawing->along[i] < along)
    i++;
  return drawing->run[i];
}

/* Strokes as letters have them, 2.5 mm high, along the outline. */
static void
draw_letters (Drawing *drawing, double from)
{
  pen (drawing, 0.3, 1);
  for (double at = from + 1; at < from + LETTERS - 1; at += 2)
    {
      const Point foot = sheet_of (drawing, place_at (drawing, at));
      for (int stroke = 0; stroke < 3; stroke++)
        {
          const double from_x = random_between (&drawing->random, -0.7, 0.7), from_y = random_between (&drawing->random, -1.25, 1.25);
          const double to_x = random_between (&drawing->random, -0.7, 0.7), to_y = random_between (&drawing->random, -1.25, 1.25);
          straight (drawing, point_add (foot, (Point) { from_x, from_y }), point_add (foot, (Point) { to_x, to_y }));
        }
    }
}

/* Where the outline is interrupted behind `along`, for how long; INFINITY: not again. */
static double
next_gap (Drawing *drawing, double along, double *length, bool *letters)
{
  const double whole = drawing->along[drawing->count - 1];
  const double written[] = { 0.21 * whole, 0.72 * whole };

  *letters = false;
  for (int i = 0; i < 2 && drawing->recipe->marks & SHEET_LETTERING; i++)
    if (along < written[i] && written[i] < along + 40)
      {
        *letters = true;
        *length = LETTERS;
        return written[i];
      }
  *length = random_between (&drawing->random, 1, 3);
  if (drawing->recipe->marks & SHEET_BROKEN)
    return along + random_between (&drawing->random, 15, 35);
  return drawing->recipe->marks & SHEET_LETTERING && along < written[1] ? along + 30 : INFINITY;
}

static void
stroke_dashed_root (const Drawing *drawing, double from, double to)
{
  const double hidden = drawing->recipe->marks & SHEET_DASHED ? 16 : 0, whole = drawing->along[drawing->count - 1];
  const double mm = plan_camera_scale (&drawing->camera), dashes[] = { 3 * mm, 1.5 * mm };

  cairo_set_dash (drawing->cr, dashes, 2, 0);
  stroke_run (drawing, from, fmin (to, hidden));
  stroke_run (drawing, fmax (from, whole - hidden), to);
  cairo_set_dash (drawing->cr, NULL, 0, 0);
  stroke_run (drawing, fmax (from, hidden), fmin (to, whole - hidden));
}

static void
draw_outline (Drawing *drawing)
{
  const double whole = drawing->along[drawing->count - 1];

  for (double at = 0; at < whole;)
    {
      const bool faint = drawing->recipe->marks & SHEET_FAINT && at > 0.35 * whole && at < 0.6 * whole;
      double length;
      bool letters;
      const double gap = next_gap (drawing, at, &length, &letters);

      pen (drawing, drawing->recipe->line_mm, faint ? 0.35 : 1);
      stroke_dashed_root (drawing, at, fmin (gap, whole));
      if (letters)
        draw_letters (drawing, gap);
      at = letters || drawing->recipe->marks & SHEET_BROKEN ? gap + length : fmin (gap, whole);
    }
}

static void
draw_inner_line (const Drawing *drawing, const Outline *outline)
{
  bool moves = true;

  pen (drawing, drawing->recipe->line_mm, 1);
  for (size_t i = 1; i + 1 < drawing->count; i++)
    {
      const Point way = point_sub (drawing->run[i + 1], drawing->run[i - 1]);
      const double length = hypot (way.x, way.y);
      const Point inner = point_add (drawing->run[i], (Point) { INSIDE * way.y / length, -INSIDE * way.x / length });
      size_t segment;
      double t;
      const bool apart = inner.y > 0 && outline_nearest (outline, inner, &segment, &t) > INSIDE - 0.05;

      if (apart)
        path_to (drawing, sheet_of (drawing, inner), moves);
      moves = !apart;
    }
  cairo_stroke (drawing->cr);
}

static void
draw_ribs (const Drawing *drawing, const Outline *outline)
{
  StationCut cut;

  pen (drawing, 0.3, 1);
  for (double y = 30; y < 140; y += 21)
    for (double side = -0.75; side <= 0.75; side += 1.5)
      if (!planform_cut (outline, PLANFORM_CARRIED, y + side, &cut))
        straight (drawing, sheet_of (drawing, (Point) { cut.leading_x, y + side }),
                  sheet_of (drawing, (Point) { cut.trailing_x, y + side }));
}

static Point
frame_corner (int i)
{
  return (Point) { i == 0 || i == 3 ? MARGIN : SHEET_WIDTH - MARGIN, i < 2 ? MARGIN : SHEET_HEIGHT - MARGIN };
}

static void
draw_paper (const Drawing *drawing)
{
  const unsigned char *paper = drawing->recipe->paper;
  const bool framed = !(drawing->recipe->marks & SHEET_NO_FRAME);

  cairo_set_source_rgb (drawing->cr, 0.45 * paper[0] / 255, 0.45 * paper[1] / 255, 0.45 * paper[2] / 255);
  cairo_paint (drawing->cr);
  cairo_set_source_rgb (drawing->cr, paper[0] / 255.0, paper[1] / 255.0, paper[2] / 255.0);
  for (int i = 0; i < 4; i++)
    {
      const Point whole = { i == 0 || i == 3 ? 0 : SHEET_WIDTH, i < 2 ? 0 : SHEET_HEIGHT };
      const Point next = { i == 3 || i == 2 ? 0 : SHEET_WIDTH, i == 0 || i == 3 ? 0 : SHEET_HEIGHT };
      for (int step = 0; step < 100; step++)
        path_to (drawing, point_mix (framed ? whole : frame_corner (i), framed ? next : frame_corner ((i + 1) % 4), step / 100.0),
                 i == 0 && step == 0);
    }
  cairo_fill (drawing->cr);
  pen (drawing, framed ? 0.4 : 0.8, framed ? 1 : 0.5);
  for (int i = 0; i < 4; i++)
    {
      const Point off = framed ? (Point) { 0, 0 } : (Point) { i == 1 ? 0.6 : i == 3 ? -0.6 : 0, i == 0 ? -0.6 : i == 2 ? 0.6 : 0 };
      straight (drawing, point_add (frame_corner (i), off), point_add (frame_corner ((i + 1) % 4), off));
    }
}

static void
draw_all (Drawing *drawing, const Outline *outline)
{
  const Point trailing = outline_node (outline, outline_segment_count (outline));
  const double mm = plan_camera_scale (&drawing->camera), dashes[] = { 6 * mm, 1.5 * mm, mm, 1.5 * mm };

  draw_paper (drawing);
  if (drawing->recipe->marks & SHEET_RIBS)
    draw_ribs (drawing, outline);
  if (drawing->recipe->marks & SHEET_INNER_LINE)
    draw_inner_line (drawing, outline);
  draw_outline (drawing);
  pen (drawing, 0.25, 1);
  cairo_set_dash (drawing->cr, dashes, 4, 0);
  straight (drawing, sheet_of (drawing, (Point) { -8, 0 }), sheet_of (drawing, (Point) { trailing.x + 8, 0 }));
}

static Raster *
raster_of (Drawing *drawing, cairo_surface_t *surface, int width, int height)
{
  const SheetRecipe *recipe = drawing->recipe;
  const bool grey = recipe->ink[0] == recipe->ink[1] && recipe->ink[1] == recipe->ink[2] && recipe->paper[0] == recipe->paper[1]
                    && recipe->paper[1] == recipe->paper[2];
  const int channels = grey ? 1 : 3;
  const size_t count = (size_t) width * (size_t) height, stride = (size_t) cairo_image_surface_get_stride (surface);
  unsigned char *rgb = malloc (3 * count), *pixels = malloc (count * (size_t) channels);

  cairo_surface_flush (surface);
  for (int y = 0; y < height; y++)
    {
      const uint32_t *row = (const void *) (cairo_image_surface_get_data (surface) + (size_t) y * stride);
      for (int x = 0; x < width; x++)
        for (int channel = 0; channel < 3; channel++)
          rgb[3 * ((size_t) y * (size_t) width + (size_t) x) + (size_t) channel] = row[x] >> (16 - 8 * channel) & 0xff;
    }
  plan_sheet_wear (recipe, plan_camera_scale (&drawing->camera), width, height, rgb, &drawing->random);
  for (size_t i = 0; i < count * (size_t) channels; i++)
    pixels[i] = rgb[grey ? 3 * i : i];
  free (rgb);
  return raster_new (width, height, channels, 1, pixels);
}

static void
click (Drawing *drawing, PlanSheet *sheet, Point own)
{
  const Point px = plan_camera_px (&drawing->camera, sheet_of (drawing, own));
  const double x = random_between (&drawing->random, -CLICK_OFF, CLICK_OFF), y = random_between (&drawing->random, -CLICK_OFF, CLICK_OFF);

  ck_assert_uint_lt (sheet->click_count, SHEET_MOST_CLICKS);
  sheet->clicks[sheet->click_count++] = (Point) { px.x + x, px.y + y };
}

static bool
is_corner (const Outline *outline, Point place)
{
  for (size_t i = 1; i <= outline_segment_count (outline); i++)
    if (outline_node_kind (outline, i) == NODE_CORNER && point_distance (outline_node (outline, i), place) < 1e-9)
      return true;
  return false;
}

static double
heading (const Drawing *drawing, size_t i)
{
  const Point way = point_sub (drawing->run[i], drawing->run[i - 1]);

  return atan2 (way.y, way.x);
}

/* At both ends, at corners, and between them where the line has run or turned so much. */
static void
click_along (Drawing *drawing, PlanSheet *sheet)
{
  size_t last = 0;
  double turned = 0;

  click (drawing, sheet, drawing->run[0]);
  for (size_t i = 1; i < drawing->count; i++)
    {
      turned += i > last + 1 ? fabs (remainder (heading (drawing, i) - heading (drawing, i - 1), 2 * M_PI)) : 0;
      const bool bends = is_corner (sheet->outline, drawing->run[i]) || turned > TURN_BETWEEN_CLICKS;
      if (!bends && drawing->along[i] - drawing->along[last] < BETWEEN_CLICKS)
        continue;
      click (drawing, sheet, drawing->run[i]);
      last = i;
      turned = 0;
    }
}

static void
tell_truth (Drawing *drawing, PlanSheet *sheet)
{
  const Point trailing = outline_node (sheet->outline, outline_segment_count (sheet->outline));

  sheet->width_mm = SHEET_WIDTH - 2 * MARGIN;
  sheet->height_mm = SHEET_HEIGHT - 2 * MARGIN;
  sheet->px_per_mm = plan_camera_scale (&drawing->camera);
  sheet->axis = (ViewAxis) { plan_camera_px (&drawing->camera, sheet_of (drawing, (Point) { 0, 0 })),
                             plan_camera_px (&drawing->camera, sheet_of (drawing, trailing)) };
  for (int i = 0; i < 4; i++)
    {
      sheet->corners[i] = plan_camera_px (&drawing->camera, frame_corner (i));
      for (int k = 0; k < 7; k++)
        sheet->sides[i][k] = plan_camera_px (&drawing->camera, point_mix (frame_corner (i), frame_corner ((i + 1) % 4), (k + 1) / 8.0));
    }
  click_along (drawing, sheet);
}

PlanSheet
plan_sheet_draw (const SheetRecipe *recipe)
{
  int width, height;
  Drawing *drawing = calloc (1, sizeof *drawing);
  PlanSheet sheet = { .outline = plan_shape (recipe->shape) };

  *drawing = (Drawing) { .recipe = recipe, .camera = plan_camera_for (recipe, &width, &height), .random = { recipe->seed } };
  cairo_surface_t *surface = cairo_image_surface_create (CAIRO_FORMAT_RGB24, width, height);
  drawing->cr = cairo_create (surface);
  measure_run (drawing, sheet.outline);
  draw_all (drawing, sheet.outline);
  sheet.raster = raster_of (drawing, surface, width, height);
  tell_truth (drawing, &sheet);
  cairo_destroy (drawing->cr);
  cairo_surface_destroy (surface);
  free (drawing);
  return sheet;
}

void
plan_sheet_clear (PlanSheet *self)
{
  outline_unref (self->outline);
  raster_unref (self->raster);
}
