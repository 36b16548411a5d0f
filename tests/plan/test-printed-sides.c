#include <check.h>
#include <math.h>
#include "plan/printed-sides.h"
#include "drawn-raster.h"
#include "support/plan-sheet.h"
#include "support/run-suite.h"

/* Photographs through a lens: of a sheet with a printed frame, and of one whose known rectangle is the paper itself, with a shadow along
 * its edge. No published source: the scatter is what a fit over hundreds of pixels leaves. */
static const SheetRecipe framed = {
  .because = "frame", .shape = SHAPE_TAPER, .seed = 21, .dpi = 180, .skew_degrees = 1.5, .tilt = 0.2, .k1 = -0.014, .line_mm = 0.4,
  .marks = SHEET_RIBS | SHEET_SHADE | SHEET_VIGNETTE | SHEET_NOISE, .ink = { 40, 40, 40 }, .paper = { 236, 236, 236 },
};
static const SheetRecipe flat = {
  .because = "scan", .shape = SHAPE_TAPER, .seed = 22, .dpi = 180, .skew_degrees = -1, .line_mm = 0.4,
  .marks = SHEET_RIBS | SHEET_FOLDS | SHEET_NOISE, .ink = { 40, 40, 40 }, .paper = { 236, 236, 236 },
};
static const SheetRecipe bare = {
  .because = "paper alone", .shape = SHAPE_TAPER, .seed = 23, .dpi = 180, .skew_degrees = 1, .tilt = 0.2, .k1 = -0.014, .line_mm = 0.4,
  .marks = SHEET_RIBS | SHEET_NO_FRAME | SHEET_NOISE, .ink = { 40, 40, 40 }, .paper = { 236, 236, 236 },
};

/* px: where a hand puts the four corners. */
static const Point off[4] = { { 1.5, -1.2 }, { -1.3, 1.5 }, { 1.1, 1.4 }, { -1.5, -1.5 } };

typedef struct { PlanSheet sheet; KnownRectangle clicked; Knowns knowns; Ink *ink; } Stage;

static void
stage_set (Stage *self, const SheetRecipe *recipe)
{
  *self = (Stage) { .sheet = plan_sheet_draw (recipe) };
  self->clicked = (KnownRectangle) { .width = self->sheet.width_mm, .height = self->sheet.height_mm };
  for (int i = 0; i < 4; i++)
    self->clicked.corners[i] = point_add (self->sheet.corners[i], off[i]);
  self->knowns = (Knowns) { .rectangle = &self->clicked, .mm_per_px = NAN, .width_px = raster_width (self->sheet.raster),
                            .height_px = raster_height (self->sheet.raster) };
  ck_assert_int_eq (ink_new (self->sheet.raster, NULL, NULL, &self->ink), CORE_OK);
}

static void
stage_clear (Stage *self)
{
  ink_unref (self->ink);
  plan_sheet_clear (&self->sheet);
}

/* The worst place of the frame's sides, mm: where the mapping has it against where it is. */
static double
worst_place (const Stage *stage, const Mapping *mapping)
{
  const Point frame[4] = { { 0, 0 }, { stage->clicked.width, 0 }, { stage->clicked.width, stage->clicked.height },
                           { 0, stage->clicked.height } };
  double worst = 0;

  for (int i = 0; i < 4; i++)
    for (int k = 0; k < 7; k++)
      {
        const Point true_mm = point_mix (frame[i], frame[(i + 1) % 4], (k + 1) / 8.0);
        worst = fmax (worst, point_distance (mapping_to_mm (mapping, stage->sheet.sides[i][k]), true_mm));
      }
  return worst;
}

START_TEST (a_printed_frame_tells_the_lens_and_where_its_corners_are)
{
  Stage stage;
  Mapping printed, clicked;
  MappingMisfit misfit;

  stage_set (&stage, &framed);
  ck_assert_int_eq (mapping_solve (&stage.knowns, &clicked, NULL), CORE_OK);
  ck_assert_int_eq (mapping_solve_printed (stage.ink, &stage.knowns, NULL, NULL, &printed, &misfit), CORE_OK);
  ck_assert (misfit.lens_used);
  ck_assert_double_eq_tol (printed.k1, framed.k1, 0.0007);
  ck_assert_double_gt (worst_place (&stage, &clicked), 0.3);
  ck_assert_double_lt (worst_place (&stage, &printed), 0.05);
  stage_clear (&stage);
}
END_TEST

START_TEST (corners_go_to_where_the_sides_meet_to_a_fifth_of_a_pixel)
{
  const SheetRecipe *const recipe[] = { &framed, &flat };
  PrintedSides sides;
  Stage stage;

  stage_set (&stage, recipe[_i]);
  ck_assert_int_eq (printed_sides_find (stage.ink, &stage.clicked, NULL, NULL, &sides), CORE_OK);
  ck_assert_uint_eq (sides.line_count, 4);
  for (int i = 0; i < 4; i++)
    ck_assert_double_lt (point_distance (sides.rectangle.corners[i], stage.sheet.corners[i]), 0.2);
  stage_clear (&stage);
}
END_TEST

START_TEST (a_scan_gets_no_lens)
{
  Stage stage;
  Mapping printed;

  stage_set (&stage, &flat);
  ck_assert_int_eq (mapping_solve_printed (stage.ink, &stage.knowns, NULL, NULL, &printed, NULL), CORE_OK);
  ck_assert (printed.k1 == 0);
  ck_assert_double_lt (worst_place (&stage, &printed), 0.05);
  stage_clear (&stage);
}
END_TEST

START_TEST (the_paper_s_own_edges_do_no_harm)
{
  Stage stage;
  Mapping printed, clicked;

  stage_set (&stage, &bare);
  ck_assert_int_eq (mapping_solve (&stage.knowns, &clicked, NULL), CORE_OK);
  ck_assert_int_eq (mapping_solve_printed (stage.ink, &stage.knowns, NULL, NULL, &printed, NULL), CORE_OK);
  ck_assert_double_le (worst_place (&stage, &printed), 1.05 * worst_place (&stage, &clicked));
  stage_clear (&stage);
}
END_TEST

START_TEST (straight_lines_that_are_given_are_taken_in_place_of_the_sides)
{
  Stage stage;
  Mapping printed, given;
  StraightLine line;

  stage_set (&stage, &framed);
  line = (StraightLine) { stage.sheet.sides[0], 7 };
  stage.knowns.straight = &line;
  stage.knowns.straight_count = 1;
  ck_assert_int_eq (mapping_solve (&stage.knowns, &given, NULL), CORE_OK);
  ck_assert_int_eq (mapping_solve_printed (stage.ink, &stage.knowns, NULL, NULL, &printed, NULL), CORE_OK);
  ck_assert_mem_eq (&printed.h, &given.h, sizeof given.h);
  stage_clear (&stage);
}
END_TEST

/* How much the axis lies askew of the true one, px at the end that is worse. */
static double
axis_off (ViewAxis axis, ViewAxis true_axis)
{
  const Point way = point_sub (true_axis.aft, true_axis.fore), fore = point_sub (axis.fore, true_axis.fore);
  const Point aft = point_sub (axis.aft, true_axis.fore);
  const double length = hypot (way.x, way.y);

  return fmax (fabs (fore.x * way.y - fore.y * way.x), fabs (aft.x * way.y - aft.y * way.x)) / length;
}

/* As clicked where none is printed there. */
static ViewAxis
axis_by (const Ink *ink, ViewAxis clicked, double sigma, double px_per_mm)
{
  const AxisClicks clicks = { .axis = clicked, .sigma = sigma, .px_per_mm = px_per_mm };
  ViewAxis axis = clicked;

  printed_axis (ink, &clicks, NULL, NULL, &axis);
  return axis;
}

START_TEST (an_axis_lies_down_on_the_centre_line_printed_there)
{
  Stage stage;

  stage_set (&stage, &flat);
  const ViewAxis true_axis = stage.sheet.axis;
  const ViewAxis clicked = { point_add (true_axis.fore, (Point) { 1.5, 0.4 }), point_add (true_axis.aft, (Point) { -1.5, -0.7 }) };
  const ViewAxis printed = axis_by (stage.ink, clicked, 1, stage.sheet.px_per_mm);
  ck_assert_double_gt (axis_off (clicked, true_axis), 1.2);
  ck_assert_double_lt (axis_off (printed, true_axis), 0.2);
  ck_assert_double_lt (point_distance (printed.fore, clicked.fore), 2.3);
  stage_clear (&stage);
}
END_TEST

/* Seen small, a click is further off; what a careful hand would not have meant is meant then. */
START_TEST (an_axis_clicked_on_a_small_picture_lies_down_from_further_off)
{
  Stage stage;

  stage_set (&stage, &flat);
  const ViewAxis true_axis = stage.sheet.axis;
  const ViewAxis clicked = { point_add (true_axis.fore, (Point) { 4, 0.4 }), point_add (true_axis.aft, (Point) { -3.5, -0.7 }) };
  ck_assert_double_gt (axis_off (axis_by (stage.ink, clicked, 1, stage.sheet.px_per_mm), true_axis), 3);
  ck_assert_double_lt (axis_off (axis_by (stage.ink, clicked, 2, stage.sheet.px_per_mm), true_axis), 0.2);
  stage_clear (&stage);
}
END_TEST

START_TEST (an_axis_with_no_line_within_a_click_stays_where_it_is)
{
  const Point aside[] = { { 6, 0 }, { 30, 0 }, { -9, 0 } };
  Stage stage;

  stage_set (&stage, &flat);
  const ViewAxis clicked = { point_add (stage.sheet.axis.fore, aside[_i]), point_add (stage.sheet.axis.aft, aside[_i]) };
  const ViewAxis stays = axis_by (stage.ink, clicked, 1, stage.sheet.px_per_mm);
  ck_assert_mem_eq (&stays, &clicked, sizeof clicked);
  const ViewAxis nowhere = { clicked.fore, clicked.fore }, still = axis_by (stage.ink, nowhere, 1, stage.sheet.px_per_mm);
  ck_assert_mem_eq (&still, &nowhere, sizeof nowhere);
  stage_clear (&stage);
}
END_TEST

/* A dashed centre line and a rib's side, solid and as dark, three pixels beside it: a tail's root on a photograph. Clicked towards the
 * rib. No published source. */
enum { DASHES = 12 };

START_TEST (a_broken_centre_line_is_found_beside_a_rib_as_dark)
{
  const Point from = { 30, 40 }, to = { 330, 52 }, aside = { -0.12, 3 };
  const ViewAxis true_axis = { point_mix (from, to, 0.25), point_mix (from, to, 0.75) };
  DrawnLine lines[DASHES + 1];
  for (int i = 0; i < DASHES; i++)
    lines[i] = (DrawnLine) { point_mix (from, to, (i + 0.0) / DASHES), point_mix (from, to, (i + 0.7) / DASHES), 1.2, 1 };
  lines[DASHES] = (DrawnLine) { point_add (true_axis.fore, aside), point_add (true_axis.aft, aside), 1.2, 1 };
  Ink *ink = drawn_ink (lines, DASHES + 1, 360, 100);
  const Point missed = point_scale (aside, 1.1 / 3);
  const ViewAxis clicked = { point_add (true_axis.fore, missed), point_add (true_axis.aft, missed) };
  const ViewAxis printed = axis_by (ink, clicked, 1, 5);

  ck_assert_double_lt (axis_off (printed, true_axis), 0.25);
  ck_assert_double_lt (point_distance (printed.aft, clicked.aft), 1.5);
  ink_unref (ink);
}
END_TEST

/* Clicked across a line, some way off at either end, each to its own side. No published source. */
START_TEST (a_line_that_only_crosses_an_axis_is_not_its_line)
{
  const Point from = { 50, 20 }, to = { 46, 420 };
  const DrawnLine line = { from, to, 4, 1 };
  Ink *ink = drawn_ink (&line, 1, 100, 440);
  const ViewAxis clicked = { { 54.9, 59.1 }, { 39.8, 379.4 } };
  const ViewAxis stays = axis_by (ink, clicked, 1, 10);

  ck_assert_mem_eq (&stays, &clicked, sizeof clicked);
  ink_unref (ink);
}
END_TEST

static bool
never (double done, void *data)
{
  (void) done, (void) data;
  return false;
}

START_TEST (looking_for_the_sides_can_be_cancelled_and_needs_four_places)
{
  Stage stage;
  Mapping mapping = { .k1 = 4711 };

  stage_set (&stage, &flat);
  ck_assert_int_eq (mapping_solve_printed (stage.ink, &stage.knowns, never, NULL, &mapping, NULL), CORE_CANCELLED);
  stage.clicked.corners[1] = stage.clicked.corners[0];
  ck_assert_int_eq (mapping_solve_printed (stage.ink, &stage.knowns, NULL, NULL, &mapping, NULL), CORE_SINGULAR);
  ck_assert (mapping.k1 == 4711);
  stage_clear (&stage);
}
END_TEST

int
main (void)
{
  Suite *suite = suite_create ("printed sides");
  TCase *tests = tcase_create ("photographs and scans");

  tcase_set_timeout (tests, 120);
  tcase_add_test (tests, a_printed_frame_tells_the_lens_and_where_its_corners_are);
  tcase_add_loop_test (tests, corners_go_to_where_the_sides_meet_to_a_fifth_of_a_pixel, 0, 2);
  tcase_add_test (tests, an_axis_lies_down_on_the_centre_line_printed_there);
  tcase_add_test (tests, a_line_that_only_crosses_an_axis_is_not_its_line);
  tcase_add_test (tests, an_axis_clicked_on_a_small_picture_lies_down_from_further_off);
  tcase_add_loop_test (tests, an_axis_with_no_line_within_a_click_stays_where_it_is, 0, 3);
  tcase_add_test (tests, a_broken_centre_line_is_found_beside_a_rib_as_dark);
  tcase_add_test (tests, a_scan_gets_no_lens);
  tcase_add_test (tests, the_paper_s_own_edges_do_no_harm);
  tcase_add_test (tests, straight_lines_that_are_given_are_taken_in_place_of_the_sides);
  tcase_add_test (tests, looking_for_the_sides_can_be_cancelled_and_needs_four_places);
  return run_suite (suite, tests);
}
