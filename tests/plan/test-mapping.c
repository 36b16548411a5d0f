#include "mapping-cases.h"
#include "support/run-suite.h"

static void
assert_round_trips (const Mapping *mapping)
{
  for (double y = 0.5; y < PICTURE_HEIGHT; y += 229.7)
    for (double x = 0.5; x < PICTURE_WIDTH; x += 317.3)
      assert_place (mapping_to_px (mapping, mapping_to_mm (mapping, (Point) { x, y })), (Point) { x, y }, 1e-9, "there and back");
}

static const double lenses[] = { 0, -0.011, -0.0937, 0.0431 };

START_TEST (a_place_goes_to_the_paper_and_back_to_where_it_was)
{
  const Mapping mapping = camera (lenses[_i]);

  assert_round_trips (&mapping);
}
END_TEST

START_TEST (the_lens_moves_a_place_as_its_formula_says)
{
  /* Brown, 1971: px = c + (q - c) (1 + k1 r²); with h the identity, mm are q. */
  const Mapping mapping = { .h = { 1, 0, 0, 0, 1, 0, 0, 0, 1 }, .lens_centre = { 1000.7, 803.1 }, .lens_radius = 1282.3, .k1 = -0.037 };
  const Point straight = { 1717.9, 211.3 };
  const double r = hypot (717.2, -591.8) / 1282.3, even = 1 - 0.037 * r * r;
  const Point px = { 1000.7 + 717.2 * even, 803.1 - 591.8 * even };

  assert_place (mapping_to_px (&mapping, straight), px, 1e-12 * 2000, "through the lens");
  assert_place (mapping_to_mm (&mapping, px), straight, 1e-12 * 2000, "undone");
}
END_TEST

START_TEST (the_derivatives_are_the_limit_of_differences)
{
  const Mapping mapping = camera (lenses[_i]);
  const Point px = { 2711.3, 417.9 };
  const double step = 1e-3;
  const Point along = point_scale (point_sub (mapping_to_mm (&mapping, (Point) { px.x + step, px.y }),
                                              mapping_to_mm (&mapping, (Point) { px.x - step, px.y })), 1 / (2 * step));
  const Point down = point_scale (point_sub (mapping_to_mm (&mapping, (Point) { px.x, px.y + step }),
                                             mapping_to_mm (&mapping, (Point) { px.x, px.y - step })), 1 / (2 * step));
  const MappingJacobian at = mapping_jacobian (&mapping, px);

  assert_place ((Point) { at.xx, at.yx }, along, 1e-9, "along");
  assert_place ((Point) { at.xy, at.yy }, down, 1e-9, "down");
  ck_assert_double_eq_tol (mapping_mm_per_px (&mapping, px, (Point) { 0, 7.3 }), hypot (down.x, down.y), 1e-9);
}
END_TEST

START_TEST (beyond_the_horizon_there_is_no_paper)
{
  const Mapping mapping = { .h = { 0.1, 0, 0, 0, 0.1, 0, 0, 1e-3, -0.2 }, .lens_radius = 1 };      /* the horizon at y = 200 */

  ck_assert (point_is_finite (mapping_to_mm (&mapping, (Point) { 100.3, 200.7 })));
  ck_assert (!point_is_finite (mapping_to_mm (&mapping, (Point) { 100.3, 199.3 })));
  ck_assert (!point_is_finite (mapping_to_px (&mapping, (Point) { 10.3, -40 })));
  ck_assert (isnan (mapping_jacobian (&mapping, (Point) { 100.3, 199.3 }).xx));
}
END_TEST

START_TEST (beyond_where_a_lens_folds_the_picture_there_is_no_place)
{
  const Mapping mapping = { .h = { 1, 0, 0, 0, 1, 0, 0, 0, 1 }, .lens_radius = 1000, .k1 = -0.1 };
  /* r (1 + k1 r²) has its top where 1 + 3 k1 r² = 0. */
  const double top = 1000 * 2.0 / 3 / sqrt (0.3);

  ck_assert (point_is_finite (mapping_to_mm (&mapping, (Point) { top - 0.1, 0 })));
  ck_assert (!point_is_finite (mapping_to_mm (&mapping, (Point) { top + 0.1, 0 })));
  ck_assert (!point_is_finite (mapping_to_px (&mapping, (Point) { 1000 / sqrt (0.3) + 0.1, 0 })));
}
END_TEST

START_TEST (a_page_true_to_size_keeps_its_own_scale)
{
  Knowns knowns = knowns_nothing ();
  Mapping mapping;
  MappingMisfit misfit;

  knowns.mm_per_px = 25.4 / 300;
  mapping = solved (&knowns, &misfit);
  assert_place (mapping_to_mm (&mapping, (Point) { 300, 601.3 }), (Point) { 25.4, 601.3 * 25.4 / 300 }, 1e-12, "an inch");
  ck_assert_int_eq (misfit.maker, MADE_BY_TRUE_SIZE);
  ck_assert_double_eq_tol (misfit.scale_x, 25.4 / 300, 1e-15);
}
END_TEST

START_TEST (a_length_overrules_the_page_and_says_by_how_much)
{
  const KnownLength length = { { 100.3, 200.7 }, { 1100.3, 200.7 }, 101, 0 };
  Knowns knowns = knowns_lengths (&length, 1);
  Mapping mapping;
  MappingMisfit misfit;

  knowns.mm_per_px = 0.1;
  mapping = solved (&knowns, &misfit);
  ck_assert_int_eq (misfit.maker, MADE_BY_LENGTHS);
  ck_assert_double_eq_tol (mapping_mm_per_px (&mapping, (Point) { 0, 0 }, (Point) { 1, 0 }), 0.101, 1e-15);
  ck_assert_double_eq_tol (misfit.true_size_percent, 1, 1e-9);
}
END_TEST

static Point
turned_way (double degrees, double length)
{
  const double angle = degrees * acos (-1) / 180;

  return (Point) { length * cos (angle), length * sin (angle) };
}

/* A line drawn at 2.3° (or near upright) comes out level (or upright), distances as they were. */
START_TEST (a_level_line_turns_the_paper_to_the_nearest_axis)
{
  static const struct { double drawn, wanted; } cases[] = { { 2.3, 0 }, { -38.1, 0 }, { 92.7, 90 }, { 177.1, 180 }, { -51.3, -90 } };
  const Point way = turned_way (cases[_i].drawn, 1711.3), wanted = turned_way (cases[_i].wanted, 171.13);
  Knowns knowns = knowns_nothing ();
  Mapping mapping;

  knowns.mm_per_px = 0.1;
  knowns.has_level = true;
  knowns.level[0] = (Point) { 811.3, 711.9 };
  knowns.level[1] = point_add (knowns.level[0], way);
  mapping = solved (&knowns, NULL);
  assert_place (point_sub (mapping_to_mm (&mapping, knowns.level[1]), mapping_to_mm (&mapping, knowns.level[0])), wanted, 1e-9, "level");
  assert_place (mapping_to_mm (&mapping, (Point) { 0, 0 }), (Point) { 0, 0 }, 1e-12, "the origin stays");
}
END_TEST

START_TEST (levelling_comes_after_scaling_because_unequal_scales_turn_angles)
{
  const KnownLength lengths[] = { { { 0, 100 }, { 2000, 100 }, 200, 0 }, { { 100, 0 }, { 100, 2000 }, 202, 0 } };
  Knowns knowns = knowns_lengths (lengths, 2);
  Mapping mapping;

  knowns.has_level = true;
  knowns.level[0] = (Point) { 300, 300 };
  knowns.level[1] = (Point) { 2300, 700 };
  mapping = solved (&knowns, NULL);
  ck_assert_double_eq_tol (mapping_to_mm (&mapping, knowns.level[0]).y, mapping_to_mm (&mapping, knowns.level[1]).y, 1e-10);
}
END_TEST

static Knowns spoilt;
static const Point one_place[3] = { { 7, 7 }, { 7, 7 }, { 7, 7 } }, lost_place[3] = { { 7, 7 }, { NAN, 7 }, { 9, 7 } };
static const StraightLine too_short = { one_place, 2 }, coincident = { one_place, 3 }, lost = { lost_place, 3 };
static const KnownLength of_nothing = { { 3, 4 }, { 3, 4 }, 10, 0 }, of_no_mm = { { 3, 4 }, { 300, 4 }, 0, 0 },
                         of_less = { { 3, 4 }, { 300, 4 }, -10, 0 }, of_nan = { { 3, 4 }, { 300, NAN }, 10, 0 };
static KnownLength many_lengths[KNOWN_LENGTHS_MOST + 1];
static const KnownRectangle
  on_a_line   = { { { 0, 0 }, { 100, 100 }, { 200, 200 }, { 0, 300 } }, 10, 20 },
  one_inside  = { { { 0, 0 }, { 1000, 0 }, { 300, 200 }, { 0, 1000 } }, 10, 20 },
  bow_tie     = { { { 0, 0 }, { 1000, 700 }, { 1000, 0 }, { 0, 700 } }, 10, 20 },
  two_in_one  = { { { 0, 0 }, { 0, 0 }, { 1000, 700 }, { 0, 700 } }, 10, 20 },
  no_width    = { { { 0, 0 }, { 1000, 0 }, { 1000, 700 }, { 0, 700 } }, 0, 20 },
  nan_corner  = { { { 0, 0 }, { 1000, 0 }, { INFINITY, 700 }, { 0, 700 } }, 10, 20 };

#define ON_A_PICTURE .width_px = 100, .height_px = 100

static const struct { const char *because; CoreStatus expected; Knowns knowns; } refused[] = {
  { "nothing known gives no scale", CORE_SINGULAR, { .mm_per_px = NAN, ON_A_PICTURE } },
  { "a picture has a size", CORE_OUT_OF_RANGE, { .mm_per_px = 1, .width_px = 0, .height_px = 100 } },
  { "a page's scale is positive", CORE_OUT_OF_RANGE, { .mm_per_px = -1, ON_A_PICTURE } },
  { "a page's scale is finite", CORE_NOT_FINITE, { .mm_per_px = INFINITY, ON_A_PICTURE } },
  { "both ends are one", CORE_SINGULAR, { .lengths = &of_nothing, .length_count = 1, .mm_per_px = NAN, ON_A_PICTURE } },
  { "a length is not nought", CORE_OUT_OF_RANGE, { .lengths = &of_no_mm, .length_count = 1, .mm_per_px = NAN, ON_A_PICTURE } },
  { "nor less", CORE_OUT_OF_RANGE, { .lengths = &of_less, .length_count = 1, .mm_per_px = NAN, ON_A_PICTURE } },
  { "an end is somewhere", CORE_NOT_FINITE, { .lengths = &of_nan, .length_count = 1, .mm_per_px = NAN, ON_A_PICTURE } },
  { "more lengths than there is room for", CORE_TOO_MANY,
    { .lengths = many_lengths, .length_count = KNOWN_LENGTHS_MOST + 1, .mm_per_px = NAN, ON_A_PICTURE } },
  { "three corners on a line", CORE_SINGULAR, { .rectangle = &on_a_line, .mm_per_px = NAN, ON_A_PICTURE } },
  { "a corner within the others", CORE_SINGULAR, { .rectangle = &one_inside, .mm_per_px = NAN, ON_A_PICTURE } },
  { "sides that cross", CORE_CROSSES_ITSELF, { .rectangle = &bow_tie, .mm_per_px = NAN, ON_A_PICTURE } },
  { "two corners in one place", CORE_SINGULAR, { .rectangle = &two_in_one, .mm_per_px = NAN, ON_A_PICTURE } },
  { "a rectangle without width", CORE_OUT_OF_RANGE, { .rectangle = &no_width, .mm_per_px = NAN, ON_A_PICTURE } },
  { "a corner is somewhere", CORE_NOT_FINITE, { .rectangle = &nan_corner, .mm_per_px = NAN, ON_A_PICTURE } },
  { "two places are no line", CORE_OUT_OF_RANGE, { .straight = &too_short, .straight_count = 1, .mm_per_px = 1, ON_A_PICTURE } },
  { "nor is one, three times", CORE_SINGULAR, { .straight = &coincident, .straight_count = 1, .mm_per_px = 1, ON_A_PICTURE } },
  { "a place is somewhere", CORE_NOT_FINITE, { .straight = &lost, .straight_count = 1, .mm_per_px = 1, ON_A_PICTURE } },
  { "a level line has a way", CORE_SINGULAR,
    { .has_level = true, .level = { { 5, 5 }, { 5, 5 } }, .mm_per_px = 1, ON_A_PICTURE } },
};

START_TEST (what_cannot_be_known_is_refused_and_nothing_is_made)
{
  Mapping mapping = { .k1 = 4711 };
  MappingMisfit misfit = { .length_count = 4711 };

  spoilt = refused[_i].knowns;
  ck_assert_msg (mapping_solve (&spoilt, &mapping, &misfit) == refused[_i].expected, "%s", refused[_i].because);
  ck_assert_double_eq (mapping.k1, 4711);
  ck_assert_uint_eq (misfit.length_count, 4711);
}
END_TEST

int
main (void)
{
  TCase *tests = tcase_create ("mapping");

  tcase_add_loop_test (tests, a_place_goes_to_the_paper_and_back_to_where_it_was, 0, 4);
  tcase_add_test (tests, the_lens_moves_a_place_as_its_formula_says);
  tcase_add_loop_test (tests, the_derivatives_are_the_limit_of_differences, 0, 4);
  tcase_add_test (tests, beyond_the_horizon_there_is_no_paper);
  tcase_add_test (tests, beyond_where_a_lens_folds_the_picture_there_is_no_place);
  tcase_add_test (tests, a_page_true_to_size_keeps_its_own_scale);
  tcase_add_test (tests, a_length_overrules_the_page_and_says_by_how_much);
  tcase_add_loop_test (tests, a_level_line_turns_the_paper_to_the_nearest_axis, 0, 5);
  tcase_add_test (tests, levelling_comes_after_scaling_because_unequal_scales_turn_angles);
  tcase_add_loop_test (tests, what_cannot_be_known_is_refused_and_nothing_is_made, 0, (int) (sizeof refused / sizeof *refused));
  return run_suite (suite_create ("plan mapping"), tests);
}
