#include <check.h>
#include <math.h>
#include <stdlib.h>
#include "geometry/planform.h"
#include "geometry/ascending.h"
#include "plan/trace.h"
#include "support/plan-sheet.h"
#include "support/run-suite.h"

/* Sheets drawn from known outlines, worn, and traced as a person would have them traced: a few clicks, each up to 3 pixels off. No
 * published source: the bounds are what the product promises. */
#define DARK { 40, 40, 40 }
#define PAPER { 236, 236, 236 }
#define ALL_PRINTED (SHEET_INNER_LINE | SHEET_RIBS | SHEET_LETTERING)

static const SheetRecipe recipes[] = {
  { .because = "a clean scan of a straight taper", .shape = SHAPE_TAPER, .seed = 1, .dpi = 200, .skew_degrees = 0.4, .line_mm = 0.4,
    .marks = SHEET_RIBS | SHEET_NOISE, .ink = DARK, .paper = PAPER },
  { .because = "an ellipse with a double line, ribs and lettering in it, x and y of two scales", .shape = SHAPE_ELLIPSE, .seed = 2,
    .dpi = 220, .skew_degrees = -0.8, .stretch_x = 0.004, .line_mm = 0.4, .marks = ALL_PRINTED | SHEET_NOISE, .ink = DARK, .paper = PAPER },
  { .because = "a cranked wing, its left half, folded and compressed", .shape = SHAPE_CRANKED, .seed = 3, .dpi = 200, .skew_degrees = 1.6,
    .line_mm = 0.45, .marks = SHEET_RIBS | SHEET_LETTERING | SHEET_FOLDS | SHEET_JPEG | SHEET_NOISE, .other_side = true, .ink = DARK,
    .paper = PAPER },
  { .because = "a bowed wing with a cut-out, broken lines, stained", .shape = SHAPE_BOWED, .seed = 4, .dpi = 200, .skew_degrees = 2.1,
    .line_mm = 0.4, .marks = SHEET_RIBS | SHEET_INNER_LINE | SHEET_BROKEN | SHEET_STAINS | SHEET_NOISE, .ink = DARK, .paper = PAPER },
  { .because = "a square-cornered tip, dashed beneath the body, few pixels", .shape = SHAPE_SQUARE, .seed = 5, .dpi = 150,
    .skew_degrees = -1.2, .line_mm = 0.5, .marks = SHEET_RIBS | SHEET_DASHED | SHEET_SHADE | SHEET_NOISE, .ink = DARK, .paper = PAPER },
  { .because = "constant chord with an elliptical tip, partly faint", .shape = SHAPE_CONSTANT, .seed = 6, .dpi = 200, .skew_degrees = 0.9,
    .line_mm = 0.4, .marks = ALL_PRINTED | SHEET_FAINT | SHEET_NOISE, .ink = DARK, .paper = PAPER },
  { .because = "light lines on a dark ground", .shape = SHAPE_ELLIPSE, .seed = 7, .dpi = 200, .skew_degrees = 0.6, .line_mm = 0.4,
    .marks = SHEET_RIBS | SHEET_INNER_LINE | SHEET_SHADE | SHEET_NOISE, .ink = { 225, 225, 225 }, .paper = { 60, 60, 60 } },
  { .because = "blue lines on cream paper", .shape = SHAPE_CONSTANT, .seed = 8, .dpi = 200, .skew_degrees = -0.5, .line_mm = 0.4,
    .marks = SHEET_RIBS | SHEET_INNER_LINE | SHEET_STAINS | SHEET_NOISE, .ink = { 70, 90, 190 }, .paper = { 240, 228, 196 } },
  { .because = "a photograph at an angle through a lens", .shape = SHAPE_TAPER, .seed = 9, .dpi = 170, .skew_degrees = 2, .tilt = 0.22,
    .k1 = -0.012, .line_mm = 0.45, .marks = ALL_PRINTED | SHEET_VIGNETTE | SHEET_SHADE | SHEET_NOISE, .ink = DARK, .paper = PAPER },
  { .because = "a compressed photograph of a cranked wing", .shape = SHAPE_CRANKED, .seed = 10, .dpi = 170, .skew_degrees = -2,
    .tilt = 0.15, .k1 = -0.008, .line_mm = 0.45, .marks = SHEET_RIBS | SHEET_VIGNETTE | SHEET_FOLDS | SHEET_JPEG | SHEET_NOISE,
    .ink = { 60, 70, 150 }, .paper = { 238, 236, 226 } },
  { .because = "a cut-out whose corner has an inner line's beside it", .shape = SHAPE_BOWED, .seed = 1011, .dpi = 166, .skew_degrees = 0.5,
    .line_mm = 0.43, .marks = SHEET_INNER_LINE | SHEET_RIBS | SHEET_FOLDS | SHEET_NOISE | SHEET_JPEG, .ink = DARK, .paper = PAPER },
  { .because = "an outline faint, dashed, broken and lettered beside a whole inner line", .shape = SHAPE_CRANKED, .seed = 1194, .dpi = 197,
    .skew_degrees = 0.5, .line_mm = 0.55, .marks = SHEET_INNER_LINE | SHEET_LETTERING | SHEET_DASHED | SHEET_BROKEN | SHEET_FAINT
    | SHEET_VIGNETTE | SHEET_NOISE | SHEET_JPEG, .other_side = true, .ink = { 60, 70, 150 }, .paper = { 240, 228, 196 } },
};

static const SheetRecipe double_lined[] = {
  { .because = "an ellipse lettered and faint", .shape = SHAPE_ELLIPSE, .seed = 1048, .dpi = 152, .skew_degrees = 0.5, .line_mm = 0.55,
    .marks = SHEET_INNER_LINE | SHEET_LETTERING | SHEET_FAINT | SHEET_FOLDS | SHEET_NOISE, .ink = DARK, .paper = PAPER },
  { .because = "a cranked wing lettered, broken and faint", .shape = SHAPE_CRANKED, .seed = 1008, .dpi = 222, .skew_degrees = 1,
    .line_mm = 0.46, .marks = ALL_PRINTED | SHEET_BROKEN | SHEET_FAINT | SHEET_FOLDS | SHEET_NOISE, .ink = DARK, .paper = PAPER },
  { .because = "a taper faint and broken", .shape = SHAPE_TAPER, .seed = 1039, .dpi = 217, .skew_degrees = 1, .line_mm = 0.32,
    .marks = ALL_PRINTED | SHEET_BROKEN | SHEET_FAINT | SHEET_FOLDS | SHEET_STAINS | SHEET_NOISE, .ink = DARK, .paper = PAPER },
  { .because = "an ellipse, all of it there", .shape = SHAPE_ELLIPSE, .seed = 1077, .dpi = 151, .skew_degrees = 1, .line_mm = 0.5,
    .marks = SHEET_INNER_LINE | SHEET_LETTERING | SHEET_NOISE, .ink = DARK, .paper = PAPER },
};

static Mapping
true_mapping (const PlanSheet *sheet, const SheetRecipe *recipe)
{
  KnownRectangle frame = { .width = sheet->width_mm, .height = sheet->height_mm };
  StraightLine lines[4];
  Knowns knowns = { .rectangle = &frame, .mm_per_px = NAN, .width_px = raster_width (sheet->raster),
                    .height_px = raster_height (sheet->raster) };
  Mapping mapping;

  for (int i = 0; i < 4; i++)
    {
      frame.corners[i] = sheet->corners[i];
      lines[i] = (StraightLine) { sheet->sides[i], 7 };
    }
  if (recipe->k1 != 0)
    {
      knowns.straight = lines;
      knowns.straight_count = 4;
    }
  ck_assert_int_eq (mapping_solve (&knowns, &mapping, NULL), CORE_OK);
  return mapping;
}

static Trace
traced (const PlanSheet *sheet, const Mapping *mapping, ViewAxis axis, const Point clicks[])
{
  TraceRequest request = { .mapping = mapping, .clicks = clicks, .click_count = sheet->click_count, .click_sigma = 2,
                           .ends_on_axis = true, .tolerance = NAN };
  Trace trace;
  Ink *ink;

  ck_assert_int_eq (axis_frame_on (mapping, axis, axis_side (mapping, axis, clicks[sheet->click_count / 2]), &request.frame), CORE_OK);
  ck_assert_int_eq (ink_new (sheet->raster, NULL, NULL, &ink), CORE_OK);
  ck_assert_int_eq (trace_outline (ink, &request, &trace), CORE_OK);
  ink_unref (ink);
  return trace;
}

static size_t
distances_from (const Outline *from, const Outline *to, double *room)
{
  size_t count = 0, segment;
  double t;

  for (size_t i = 0; i < outline_segment_count (from); i++)
    {
      const Segment *piece = outline_segment (from, i);
      const int steps = (int) ceil (segment_length (outline_node (from, i), piece));
      for (int step = 0; step < steps; step++)
        room[count++] = outline_nearest (to, segment_at (outline_node (from, i), piece, (step + 0.5) / steps), &segment, &t);
    }
  return count;
}

/* What 95 % of both outlines keep of each other, mm. */
static double
most_of_distance (const Outline *a, const Outline *b)
{
  enum { ROOM = 4000 };
  double *room = malloc (ROOM * sizeof *room);
  size_t count = distances_from (a, b, room);

  count += distances_from (b, a, room + count);
  ck_assert_uint_le (count, ROOM);
  qsort (room, count, sizeof *room, ascending_doubles);
  const double most = room[count * 95 / 100];
  free (room);
  return most;
}

static double
percent (double got, double wanted)
{
  return 100 * (got / wanted - 1);
}

static void
assert_figures (const Outline *got, const Outline *wanted, double leading_edge, const char *because)
{
  Planform one, other;

  ck_assert_msg (planform_measure (got, PLANFORM_CARRIED, &one) == CORE_OK, "%s: encloses nothing", because);
  ck_assert_int_eq (planform_measure (wanted, PLANFORM_CARRIED, &other), CORE_OK);
  ck_assert_msg (fabs (percent (one.area, other.area)) < 0.3, "%s: area %+.3f %%", because, percent (one.area, other.area));
  ck_assert_msg (fabs (percent (one.mac, other.mac)) < 0.3, "%s: mean chord %+.3f %%", because, percent (one.mac, other.mac));
  ck_assert_msg (fabs (one.mac_leading_edge_x - other.mac_leading_edge_x) < leading_edge, "%s: its leading edge off by %+.3f mm", because,
                 one.mac_leading_edge_x - other.mac_leading_edge_x);
}

/* All but two of which a corner lies where its line is broken away. */
static const int cornered[] = { 0, 1, 2, 4, 5, 6, 7, 8, 9, 10 };

/* How far the corner is from the nearest one in the outline, mm; the ends are none. */
static double
nearest_corner (const Outline *outline, Point place)
{
  double nearest = INFINITY;

  for (size_t i = 1; i < outline_segment_count (outline); i++)
    if (outline_node_kind (outline, i) == NODE_CORNER)
      nearest = fmin (nearest, point_distance (outline_node (outline, i), place));
  return nearest;
}

START_TEST (an_outline_keeps_its_area_chord_and_line_through_wear)
{
  const SheetRecipe *recipe = &recipes[_i];
  PlanSheet sheet = plan_sheet_draw (recipe);
  const Mapping mapping = true_mapping (&sheet, recipe);
  Trace trace = traced (&sheet, &mapping, sheet.axis, sheet.clicks);
  const double most = most_of_distance (trace.outline, sheet.outline);

  assert_figures (trace.outline, sheet.outline, 0.3, recipe->because);
  ck_assert_msg (most < (recipe->tilt > 0 ? 0.5 : 0.3), "%s: 95 %% of the outline within %.3f mm", recipe->because, most);
  trace_clear (&trace);
  plan_sheet_clear (&sheet);
}
END_TEST

START_TEST (corners_are_found_where_they_are_and_nowhere_else)
{
  const SheetRecipe *recipe = &recipes[cornered[_i]];
  PlanSheet sheet = plan_sheet_draw (recipe);
  const Mapping mapping = true_mapping (&sheet, recipe);
  Trace trace = traced (&sheet, &mapping, sheet.axis, sheet.clicks);

  for (size_t i = 1; i < outline_segment_count (sheet.outline); i++)
    {
      const Point at = outline_node (sheet.outline, i);
      const double off = nearest_corner (trace.outline, at);
      ck_assert_msg (outline_node_kind (sheet.outline, i) != NODE_CORNER || off < 1, "%s: the corner at %.1f, %.1f is %.2f mm off",
                     recipe->because, at.x, at.y, off);
    }
  for (size_t i = 1; i < outline_segment_count (trace.outline); i++)
    {
      const Point at = outline_node (trace.outline, i);
      ck_assert_msg (outline_node_kind (trace.outline, i) != NODE_CORNER || nearest_corner (sheet.outline, at) < 1,
                     "%s: there is no corner at %.1f, %.1f", recipe->because, at.x, at.y);
    }
  trace_clear (&trace);
  plan_sheet_clear (&sheet);
}
END_TEST

START_TEST (few_segments_make_an_outline)
{
  enum { FEW = 12 };
  PlanSheet sheet = plan_sheet_draw (&recipes[_i]);
  const Mapping mapping = true_mapping (&sheet, &recipes[_i]);
  Trace trace = traced (&sheet, &mapping, sheet.axis, sheet.clicks);

  ck_assert_msg (outline_segment_count (trace.outline) <= FEW, "%s: %zu segments", recipes[_i].because, outline_segment_count (trace.outline));
  ck_assert (outline_node (trace.outline, 0).y == 0 && outline_node (trace.outline, outline_segment_count (trace.outline)).y == 0);
  trace_clear (&trace);
  plan_sheet_clear (&sheet);
}
END_TEST

/* The axis clicked 1.5 px off at either end turns the whole outline, which its figures hardly notice. */
START_TEST (an_axis_a_click_off_keeps_area_and_chord)
{
  PlanSheet sheet = plan_sheet_draw (&recipes[0]);
  const Mapping mapping = true_mapping (&sheet, &recipes[0]);
  const ViewAxis off = { { sheet.axis.fore.x + 1.5, sheet.axis.fore.y - 1.5 }, { sheet.axis.aft.x - 1.5, sheet.axis.aft.y + 1.5 } };
  Trace trace = traced (&sheet, &mapping, off, sheet.clicks);

  assert_figures (trace.outline, sheet.outline, 0.6, "axis 1.5 px off");
  trace_clear (&trace);
  plan_sheet_clear (&sheet);
}
END_TEST

START_TEST (an_outline_that_passes_a_click_far_off_says_where)
{
  PlanSheet sheet = plan_sheet_draw (&recipes[0]);
  const Mapping mapping = true_mapping (&sheet, &recipes[0]);
  const Point inwards = { 0, 5 * sheet.px_per_mm };
  Trace near = traced (&sheet, &mapping, sheet.axis, sheet.clicks);
  sheet.clicks[2] = point_add (sheet.clicks[2], inwards);
  Trace far = traced (&sheet, &mapping, sheet.axis, sheet.clicks);

  ck_assert_double_lt (near.astray, 1);
  ck_assert_double_eq_tol (far.astray, 5, 0.7);
  ck_assert_double_lt (point_distance (far.polyline_px[0], near.polyline_px[0]), 0.5 * sheet.px_per_mm);
  trace_clear (&near);
  trace_clear (&far);
  plan_sheet_clear (&sheet);
}
END_TEST

/* A small picture on the screen: few clicks, all of them 1.2 mm inside of the outline, 1.8 mm outside of the line printed within it. */
START_TEST (few_clicks_inside_a_double_line_leave_it_the_outer_one)
{
  const SheetRecipe *recipe = &double_lined[_i];
  PlanSheet sheet = plan_sheet_draw (recipe);
  const Mapping mapping = true_mapping (&sheet, recipe);
  const Point middle = point_mix (sheet.axis.fore, sheet.axis.aft, 0.5);
  Point clicks[SHEET_MOST_CLICKS];
  size_t count = 0;
  Planform drawn, found;

  for (size_t i = 0; i < sheet.click_count; i++)
    if (i % 2 == 0 || i + 1 == sheet.click_count)
      {
        const Point inward = point_sub (middle, sheet.clicks[i]);
        clicks[count++] = point_add (sheet.clicks[i], point_scale (inward, 1.2 * sheet.px_per_mm / hypot (inward.x, inward.y)));
      }
  sheet.click_count = count;
  Trace trace = traced (&sheet, &mapping, sheet.axis, clicks);
  ck_assert_int_eq (planform_measure (sheet.outline, PLANFORM_CARRIED, &drawn), CORE_OK);
  ck_assert_int_eq (planform_measure (trace.outline, PLANFORM_CARRIED, &found), CORE_OK);
  ck_assert_msg (fabs (found.area / drawn.area - 1) < 0.003, "%s: area off by %.2f %%", recipe->because, 100 * (found.area / drawn.area - 1));
  trace_clear (&trace);
  plan_sheet_clear (&sheet);
}
END_TEST

START_TEST (clicked_from_the_trailing_edge_the_outline_is_the_same)
{
  PlanSheet sheet = plan_sheet_draw (&recipes[4]);
  const Mapping mapping = true_mapping (&sheet, &recipes[4]);
  Point backwards[SHEET_MOST_CLICKS];

  for (size_t i = 0; i < sheet.click_count; i++)
    backwards[i] = sheet.clicks[sheet.click_count - 1 - i];
  Trace trace = traced (&sheet, &mapping, sheet.axis, sheet.clicks), back = traced (&sheet, &mapping, sheet.axis, backwards);
  ck_assert_double_lt (outline_node (back.outline, 0).x, outline_node (back.outline, outline_segment_count (back.outline)).x);
  ck_assert_double_lt (most_of_distance (trace.outline, back.outline), 0.1);
  trace_clear (&back);
  trace_clear (&trace);
  plan_sheet_clear (&sheet);
}
END_TEST

START_TEST (the_polyline_is_the_outline_in_mm_and_px)
{
  PlanSheet sheet = plan_sheet_draw (&recipes[8]);
  const Mapping mapping = true_mapping (&sheet, &recipes[8]);
  Trace trace = traced (&sheet, &mapping, sheet.axis, sheet.clicks);
  AxisFrame frame;
  size_t segment;
  double t;

  ck_assert_int_eq (axis_frame_on (&mapping, sheet.axis, axis_side (&mapping, sheet.axis, sheet.clicks[3]), &frame), CORE_OK);
  for (size_t i = 0; i < trace.count; i++)
    {
      const Point own = axis_frame_own (&frame, mapping_to_mm (&mapping, trace.polyline_px[i]));
      ck_assert_double_le (i ? point_distance (trace.polyline[i], trace.polyline[i - 1]) : 0, 0.5);
      ck_assert_double_lt (point_distance (own, trace.polyline[i]), 1e-6);
      ck_assert_double_lt (outline_nearest (trace.outline, trace.polyline[i], &segment, &t), 1e-6);
    }
  trace_clear (&trace);
  plan_sheet_clear (&sheet);
}
END_TEST

static bool
never (double done, void *data)
{
  (void) done, (void) data;
  return false;
}

static bool
never_less (double done, void *data)
{
  double *most = data;

  ck_assert_double_ge (done, *most);
  ck_assert_double_le (done, 1);
  *most = done;
  return true;
}

/* Broken at one of its two corners: first followed anew from both, then from the other alone. */
START_TEST (the_share_that_is_done_never_falls_back_though_the_line_is_followed_three_times)
{
  SheetRecipe recipe = recipes[10];
  recipe.seed = 1001;
  recipe.marks |= SHEET_BROKEN;
  PlanSheet sheet = plan_sheet_draw (&recipe);
  const Mapping mapping = true_mapping (&sheet, &recipe);
  double most = 0;
  TraceRequest request = { .mapping = &mapping, .clicks = sheet.clicks, .click_count = sheet.click_count, .click_sigma = 2,
                           .ends_on_axis = true, .tolerance = NAN, .goes_on = never_less, .data = &most };
  Trace trace;
  Ink *ink;

  ck_assert_int_eq (axis_frame_on (&mapping, sheet.axis, axis_side (&mapping, sheet.axis, sheet.clicks[sheet.click_count / 2]), &request.frame),
                    CORE_OK);
  ck_assert_int_eq (ink_new (sheet.raster, NULL, NULL, &ink), CORE_OK);
  ck_assert_int_eq (trace_outline (ink, &request, &trace), CORE_OK);
  ck_assert_double_gt (most, 0);
  trace_clear (&trace);
  ink_unref (ink);
  plan_sheet_clear (&sheet);
}
END_TEST

START_TEST (who_does_not_want_to_wait_is_told_so_and_nothing_is_left_behind)
{
  PlanSheet sheet = plan_sheet_draw (&recipes[4]);
  const Mapping mapping = true_mapping (&sheet, &recipes[4]);
  TraceRequest request = { .mapping = &mapping, .clicks = sheet.clicks, .click_count = sheet.click_count, .click_sigma = 2,
                           .ends_on_axis = true, .tolerance = NAN, .goes_on = never };
  Trace trace = { .count = 4711 };
  Ink *ink;

  ck_assert_int_eq (axis_frame_on (&mapping, sheet.axis, 1, &request.frame), CORE_OK);
  ck_assert_int_eq (ink_new (sheet.raster, NULL, NULL, &ink), CORE_OK);
  ck_assert_int_eq (trace_outline (ink, &request, &trace), CORE_CANCELLED);
  ck_assert_uint_eq (trace.count, 4711);
  ink_unref (ink);
  plan_sheet_clear (&sheet);
}
END_TEST

int
main (void)
{
  enum { RECIPES = sizeof recipes / sizeof *recipes };
  Suite *suite = suite_create ("trace");
  TCase *tests = tcase_create ("drawn sheets");

  tcase_set_timeout (tests, 120);
  tcase_add_loop_test (tests, an_outline_keeps_its_area_chord_and_line_through_wear, 0, RECIPES);
  tcase_add_loop_test (tests, corners_are_found_where_they_are_and_nowhere_else, 0, sizeof cornered / sizeof *cornered);
  tcase_add_test (tests, an_outline_that_passes_a_click_far_off_says_where);
  tcase_add_loop_test (tests, few_clicks_inside_a_double_line_leave_it_the_outer_one, 0, sizeof double_lined / sizeof *double_lined);
  tcase_add_loop_test (tests, few_segments_make_an_outline, 0, RECIPES);
  tcase_add_test (tests, an_axis_a_click_off_keeps_area_and_chord);
  tcase_add_test (tests, clicked_from_the_trailing_edge_the_outline_is_the_same);
  tcase_add_test (tests, the_polyline_is_the_outline_in_mm_and_px);
  tcase_add_test (tests, the_share_that_is_done_never_falls_back_though_the_line_is_followed_three_times);
  tcase_add_test (tests, who_does_not_want_to_wait_is_told_so_and_nothing_is_left_behind);
  return run_suite (suite, tests);
}
