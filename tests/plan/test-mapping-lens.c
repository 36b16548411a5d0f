#include "mapping-cases.h"
#include "support/run-suite.h"

static const double WIDTH = 283.7, HEIGHT = 197.3;
enum { PER_SIDE = 9, SIDES = 4 };

typedef struct { Point places[SIDES][PER_SIDE]; StraightLine lines[SIDES]; KnownRectangle rectangle; } Frame;

/* A printed frame as the camera sees it: its corners, and places along its edges, each as far off as a hand would click them. */
static void
see_frame (Frame *frame, const Mapping *by, double off_px, uint64_t *state)
{
  const Point corners[4] = { { 0, 0 }, { WIDTH, 0 }, { WIDTH, HEIGHT }, { 0, HEIGHT } };

  frame->rectangle = (KnownRectangle) { .width = WIDTH, .height = HEIGHT };
  for (int i = 0; i < SIDES; i++)
    {
      frame->rectangle.corners[i] = mapping_to_px (by, corners[i]);
      frame->lines[i] = (StraightLine) { frame->places[i], PER_SIDE };
      for (int k = 0; k < PER_SIDE; k++)
        {
          const Point px = mapping_to_px (by, point_mix (corners[i], corners[(i + 1) % 4], (k + 0.7) / (PER_SIDE + 0.3)));

          frame->places[i][k] = (Point) { px.x + off_px * spread (state), px.y + off_px * spread (state) };
        }
    }
}

static Knowns
knowns_of (const Frame *frame, bool with_rectangle)
{
  Knowns knowns = knowns_nothing ();

  knowns.straight = frame->lines;
  knowns.straight_count = SIDES;
  if (with_rectangle)
    knowns.rectangle = &frame->rectangle;
  else
    knowns.mm_per_px = 0.1;
  return knowns;
}

static const double lenses[] = { -0.008, -0.011, -0.0571, 0.0337 };

START_TEST (straight_lines_and_corners_give_camera_and_lens_back)
{
  const Mapping by = camera (lenses[_i]);
  uint64_t state = 1;
  Frame frame;
  Knowns knowns;
  MappingMisfit misfit;
  Mapping got;

  see_frame (&frame, &by, 0, &state);
  knowns = knowns_of (&frame, true);
  got = solved (&knowns, &misfit);
  ck_assert (misfit.lens_used);
  ck_assert_double_eq_tol (got.k1, lenses[_i], 1e-9);
  ck_assert_double_gt (misfit.bend_before_px, 0.2);
  ck_assert_double_lt (misfit.bend_after_px, 1e-5);
  for (double y = 3.1; y < HEIGHT; y += 31.7)
    for (double x = 2.3; x < WIDTH; x += 41.3)
      assert_place (mapping_to_px (&got, (Point) { x, y }), mapping_to_px (&by, (Point) { x, y }), 1e-6, "seen alike");
}
END_TEST

START_TEST (the_lens_is_centred_on_the_picture_and_measured_by_half_its_diagonal)
{
  const Mapping by = camera (-0.011);
  uint64_t state = 1;
  Frame frame;
  Knowns knowns;
  Mapping got;

  see_frame (&frame, &by, 0, &state);
  knowns = knowns_of (&frame, false);
  got = solved (&knowns, NULL);
  assert_place (got.lens_centre, (Point) { PICTURE_WIDTH / 2, PICTURE_HEIGHT / 2 }, 0, "the middle");
  ck_assert_double_eq (got.lens_radius, hypot (PICTURE_WIDTH, PICTURE_HEIGHT) / 2);
}
END_TEST

START_TEST (a_picture_without_a_lens_does_not_get_one_from_unsteady_places)
{
  const Mapping by = camera (0);
  uint64_t state = 20261129;
  int used = 0;

  for (int run = 0; run < 200; run++)
    {
      Frame frame;
      Knowns knowns;
      MappingMisfit misfit;

      see_frame (&frame, &by, MAPPING_CLICK_PX, &state);
      knowns = knowns_of (&frame, true);
      solved (&knowns, &misfit);
      used += misfit.lens_used;
    }
  /* Beyond 2.5 standard deviations of a normal law lie 1.2 in a hundred. */
  ck_assert_int_le (used, 200 * 3 / 100);
}
END_TEST

/* What the places are said to explain of k1 is two standard deviations of what they make of it. */
START_TEST (what_the_places_explain_of_the_lens_is_what_they_make)
{
  const Mapping by = camera (-0.02);
  uint64_t state = 20261130;
  double squares = 0, stated = 0;

  for (int run = 0; run < 300; run++)
    {
      Frame frame;
      Knowns knowns;
      MappingMisfit misfit;

      see_frame (&frame, &by, MAPPING_CLICK_PX, &state);
      knowns = knowns_of (&frame, false);
      solved (&knowns, &misfit);
      squares += (misfit.lens_k1 + 0.02) * (misfit.lens_k1 + 0.02) / 300;
      stated += misfit.lens_k1_click / 300;
    }
  ck_assert_double_eq_tol (stated / (2 * sqrt (squares)), 1, 0.15);
}
END_TEST

START_TEST (a_line_along_a_side_of_the_rectangle_goes_through_its_corners)
{
  /* Three places near the middle of one side say little by themselves; with the corners the bow shows. */
  const Mapping by = camera (-0.03);
  uint64_t state = 1;
  Frame frame;
  Knowns knowns;
  MappingMisfit alone, together;

  see_frame (&frame, &by, 0, &state);
  frame.lines[0] = (StraightLine) { frame.places[0] + 3, 3 };
  knowns = knowns_of (&frame, false);
  knowns.straight_count = 1;
  solved (&knowns, &alone);
  knowns.rectangle = &frame.rectangle;
  solved (&knowns, &together);
  ck_assert_double_lt (together.lens_k1_click, alone.lens_k1_click / 5);
}
END_TEST

START_TEST (lengths_are_measured_with_the_lens_undone)
{
  Mapping by = camera (-0.03);
  uint64_t state = 1;
  Frame frame;
  Knowns knowns;
  KnownLength length;
  Mapping got;

  by = (Mapping) { .h = { 0.1, 0, 0, 0, 0.1, 0, 0, 0, 1 }, .lens_centre = by.lens_centre, .lens_radius = by.lens_radius, .k1 = by.k1 };
  see_frame (&frame, &by, 0, &state);
  length = (KnownLength) { mapping_to_px (&by, (Point) { 10, 20 }), mapping_to_px (&by, (Point) { 260, 21 }), hypot (250, 1), 0 };
  knowns = knowns_of (&frame, false);
  knowns.lengths = &length;
  knowns.length_count = 1;
  got = solved (&knowns, NULL);
  ck_assert_double_eq_tol (mapping_mm_per_px (&got, got.lens_centre, (Point) { 1, 0 }), 0.1, 1e-8);
}
END_TEST

int
main (void)
{
  TCase *tests = tcase_create ("lens");

  tcase_add_loop_test (tests, straight_lines_and_corners_give_camera_and_lens_back, 0, 4);
  tcase_add_test (tests, the_lens_is_centred_on_the_picture_and_measured_by_half_its_diagonal);
  tcase_add_test (tests, a_picture_without_a_lens_does_not_get_one_from_unsteady_places);
  tcase_add_test (tests, what_the_places_explain_of_the_lens_is_what_they_make);
  tcase_add_test (tests, a_line_along_a_side_of_the_rectangle_goes_through_its_corners);
  tcase_add_test (tests, lengths_are_measured_with_the_lens_undone);
  return run_suite (suite_create ("plan lens"), tests);
}
