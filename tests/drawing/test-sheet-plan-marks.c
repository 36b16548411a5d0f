#include "drawing/sheet-plan-marks.h"
#include <math.h>
#include <string.h>
#include "drawing/plan-placing.h"
#include "support/easel.h"
#include "support/run-suite.h"

static Easel *easel;
static Plan *plan;
static SheetPlanMarks marks;
static const PlanMarkKind everything[] = { PLAN_MARK_CORNER, PLAN_MARK_STRAIGHT, PLAN_MARK_LEVEL, PLAN_MARK_AXIS, PLAN_MARK_LENGTH };

/* A sheet 4 px a millimetre with one length across, a rectangle and a level line, on an empty drawing. */
static void
set_up (void)
{
  Plan *bare = plan_new ("sheet");
  Mapping mapping;

  bare->width = bare->height = 1000;
  bare->has_level = true;
  bare->level[0] = (Point) { 100, 900 };
  bare->level[1] = (Point) { 900, 900 };
  plan = plan_with_length (bare, (PlanLength) { (Point) { 100, 100 }, (Point) { 900, 100 }, 200, 0, 0 });
  piece_unref (&bare->piece);
  easel = easel_new (aeroplane_new ());
  marks = (SheetPlanMarks) { .plan = plan, .kinds = everything, .kind_count = G_N_ELEMENTS (everything) };
  ck_assert_int_eq (plan_mapping (plan, false, &mapping, NULL, NULL), CORE_OK);
  ck_assert_int_eq (plan_placing (plan, &mapping, NULL, &marks.placing), CORE_OK);
}

static void
tear_down (void)
{
  easel_free (easel);
  piece_unref (&plan->piece);
}

static Point
screen (PlanMark mark)
{
  Point at;

  ck_assert (plan_marks_screen (&marks, &easel->view, mark, &at));
  return at;
}

/* How much of the box about a mark is of that colour. */
static double
share (const Canvas *canvas, PlanMark mark, Colour colour)
{
  const Point at = screen (mark);

  return canvas_share (canvas, (Box) { { at.x - 4, at.y - 4 }, { at.x + 4, at.y + 4 } }, colour);
}

START_TEST (marks_are_drawn_while_they_are_told_and_the_chosen_one_is_filled)
{
  const PlanMark ends[] = { { PLAN_MARK_LENGTH, 0, 0 }, { PLAN_MARK_LENGTH, 0, 1 } };
  Canvas without = easel_painted (easel, 1), with;

  easel->overlay.plan_marks = &marks;
  marks.chosen = ends[1];
  with = easel_painted (easel, 1);
  ck_assert_double_eq (share (&without, ends[1], easel->look.selection), 0);
  ck_assert_double_gt (share (&with, ends[1], easel->look.selection), 0.5);
  ck_assert_double_lt (share (&with, ends[0], easel->look.selection), 0.1);
  /* The dimension line between them. */
  const Point middle = point_mix (screen (ends[0]), screen (ends[1]), 0.25);
  ck_assert_double_gt (colour_distance (canvas_at (&with, middle.x, middle.y), canvas_at (&without, middle.x, middle.y)), 0.3);
  canvas_clear (&with);
  canvas_clear (&without);
}
END_TEST

START_TEST (only_the_kinds_of_the_step_are_drawn_and_caught)
{
  static const PlanMarkKind level[] = { PLAN_MARK_LEVEL };
  const PlanMark end = { PLAN_MARK_LENGTH, 0, 0 }, line = { PLAN_MARK_LEVEL, 0, 1 };

  ck_assert (plan_mark_equal (plan_marks_hit (&marks, &easel->view, screen (end), 12), end));
  marks.kinds = level;
  marks.kind_count = 1;
  ck_assert_int_eq (plan_marks_hit (&marks, &easel->view, screen (end), 12).kind, PLAN_MARK_NONE);
  ck_assert (plan_mark_equal (plan_marks_hit (&marks, &easel->view, screen (line), 12), line));
}
END_TEST

START_TEST (a_mark_is_caught_within_its_reach_and_the_nearer_one_first)
{
  const PlanMark end = { PLAN_MARK_LENGTH, 0, 0 };
  const Point at = screen (end);

  ck_assert (plan_mark_equal (plan_marks_hit (&marks, &easel->view, point_add (at, (Point) { 8, 8 }), 12), end));
  ck_assert_int_eq (plan_marks_hit (&marks, &easel->view, point_add (at, (Point) { 9, 9 }), 12).kind, PLAN_MARK_NONE);
}
END_TEST

START_TEST (the_width_stands_on_a_side_nearest_the_picture_s_horizontal)
{
  static const struct { Point corners[4]; size_t first; } cases[] = {
    { { { 0, 0 }, { 100, 5 }, { 100, 60 }, { 0, 50 } }, 0 },
    { { { 0, 0 }, { 0, 50 }, { 100, 60 }, { 100, 5 } }, 1 },
    { { { 100, 60 }, { 0, 50 }, { 0, 0 }, { 100, 5 } }, 0 },
  };
  size_t ends[2];

  memcpy (plan->corners, cases[_i].corners, sizeof plan->corners);
  ck_assert (!plan_marks_side (plan, 0, ends));
  plan->has_corners = true;
  ck_assert (plan_marks_side (plan, 0, ends));
  ck_assert_uint_eq (ends[0], cases[_i].first);
  ck_assert (plan_marks_side (plan, 1, ends));
  ck_assert_uint_eq (ends[0], 1 - cases[_i].first);
}
END_TEST

/* A photograph on its corner, each side of which climbs more than it runs: what is written on a side is what makes the plan true. */
START_TEST (the_width_written_on_a_side_is_the_length_that_side_gets)
{
  const KnownRectangle rectangle = { { { 300, 100 }, { 364, 177 }, { 314, 264 }, { 250, 187 } }, 70, 90 };
  const Knowns knowns = { .rectangle = &rectangle, .mm_per_px = NAN, .width_px = 1000, .height_px = 1000 };
  Mapping mapping;
  size_t ends[2];

  plan->has_corners = true;
  memcpy (plan->corners, rectangle.corners, sizeof plan->corners);
  ck_assert_int_eq (mapping_solve (&knowns, &mapping, NULL), CORE_OK);
  ck_assert (plan_marks_side (plan, 0, ends));
  ck_assert_double_eq_tol (point_distance (mapping_to_mm (&mapping, plan->corners[ends[0]]),
                                           mapping_to_mm (&mapping, plan->corners[ends[1] % 4])), 70, 1e-9);
}
END_TEST

START_TEST (the_magnifier_stands_in_the_corner_away_from_the_pointer_and_only_over_a_plan)
{
  Canvas before = easel_painted (easel, 1), after;

  easel->overlay.has_magnified = true;
  easel->overlay.magnified = view_from_screen (&easel->view, 50, 50);
  after = easel_painted (easel, 1);
  ck_assert_double_eq (colour_distance (canvas_at (&before, easel->view.width - 98, easel->view.height - 130 - 30),
                                        canvas_at (&after, easel->view.width - 98, easel->view.height - 130 - 30)), 0);
  canvas_clear (&after);

  unsigned char *pixels = malloc (100 * 100);
  memset (pixels, 240, 100 * 100);
  Raster *raster = raster_new (100, 100, 1, 1, pixels);
  Ink *ink;
  ck_assert_int_eq (ink_new (raster, NULL, NULL, &ink), CORE_OK);
  raster_unref (raster);
  SheetPlan shown = { .ink = ink_levels_new (ink), .placing = marks.placing, .strength = 0.75, .device_scale = 1 };
  easel->scene.plan = &shown;
  after = easel_painted (easel, 1);
  /* One arm of its cross. */
  ck_assert_double_gt (colour_distance (canvas_at (&before, easel->view.width - 98, easel->view.height - 130 - 15),
                                        canvas_at (&after, easel->view.width - 98, easel->view.height - 130 - 15)), 0.3);
  easel->scene.plan = NULL;
  ink_levels_unref ((InkLevels *) shown.ink);
  canvas_clear (&after);
  canvas_clear (&before);
}
END_TEST

/* A picture of one shade of grey with a line across, as ink; the caller's. */
static Ink *
crossed (int row)
{
  unsigned char *pixels = malloc (100 * 100);
  Ink *ink;

  memset (pixels, 240, 100 * 100);
  memset (pixels + 100 * row, 0, 3 * 100);
  Raster *raster = raster_new (100, 100, 1, 1, pixels);
  ck_assert_int_eq (ink_new (raster, NULL, NULL, &ink), CORE_OK);
  raster_unref (raster);
  return ink;
}

/* The window draws what lies over the sheet twice a frame, once to see how far it reaches. */
START_TEST (what_the_magnifier_shows_is_looked_up_once_for_one_place)
{
  SheetPlanCopy enlarged = { 0 };
  InkLevels *levels = ink_levels_new (crossed (50));
  const SheetPlan shown = { .ink = levels, .placing = marks.placing, .strength = 1, .device_scale = 1, .enlarged = &enlarged };
  cairo_surface_t *first;
  Canvas canvas;

  easel->overlay.has_magnified = true;
  easel->overlay.magnified = view_from_screen (&easel->view, 50, 50);
  easel->scene.plan = &shown;
  canvas = easel_painted (easel, 1);
  canvas_clear (&canvas);
  ck_assert_ptr_nonnull (enlarged.surface);
  first = cairo_surface_reference (enlarged.surface);
  canvas = easel_painted (easel, 1);
  canvas_clear (&canvas);
  ck_assert_ptr_eq (enlarged.surface, first);
  easel->overlay.magnified = view_from_screen (&easel->view, 60, 50);
  canvas = easel_painted (easel, 1);
  canvas_clear (&canvas);
  ck_assert_ptr_ne (enlarged.surface, first);
  easel->scene.plan = NULL;
  cairo_surface_destroy (first);
  sheet_plan_copy_clear (&enlarged);
  ink_levels_unref (levels);
}
END_TEST

/* While it stays, nothing else can come to stand at its address and be taken for it. */
START_TEST (what_was_painted_of_a_plan_holds_on_to_the_picture_it_was_painted_from)
{
  Ink *ink = crossed (20);
  InkLevels *levels = ink_levels_new (ink);
  SheetPlanCopy copy = { 0 };
  SheetPlan shown = { .ink = levels, .placing = marks.placing, .strength = 1, .device_scale = 1, .copy = &copy };
  easel->scene.plan = &shown;
  Canvas painted = easel_painted (easel, 1);

  ink_levels_unref (levels);
  ck_assert_ptr_eq (copy.shown[0], levels);
  ck_assert_ptr_eq (ink_levels_ink (copy.shown[0]), ink);
  ck_assert_int_eq (ink_width (ink), 100);
  easel->scene.plan = NULL;
  sheet_plan_copy_clear (&copy);
  ck_assert_ptr_null (copy.shown[0]);
  canvas_clear (&painted);
}
END_TEST

int
main (void)
{
  TCase *tests = tcase_create ("marks of a plan, drawn");

  tcase_add_checked_fixture (tests, set_up, tear_down);
  tcase_add_test (tests, marks_are_drawn_while_they_are_told_and_the_chosen_one_is_filled);
  tcase_add_test (tests, only_the_kinds_of_the_step_are_drawn_and_caught);
  tcase_add_test (tests, a_mark_is_caught_within_its_reach_and_the_nearer_one_first);
  tcase_add_loop_test (tests, the_width_stands_on_a_side_nearest_the_picture_s_horizontal, 0, 3);
  tcase_add_test (tests, the_width_written_on_a_side_is_the_length_that_side_gets);
  tcase_add_test (tests, the_magnifier_stands_in_the_corner_away_from_the_pointer_and_only_over_a_plan);
  tcase_add_test (tests, what_the_magnifier_shows_is_looked_up_once_for_one_place);
  tcase_add_test (tests, what_was_painted_of_a_plan_holds_on_to_the_picture_it_was_painted_from);
  return run_suite (suite_create ("sheet-plan-marks"), tests);
}
