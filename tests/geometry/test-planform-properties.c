#include <check.h>
#include "geometry/planform.h"
#include "support/run-suite.h"
#include "support/shapes.h"

static Planform
measured (const Outline *outline, PlanformSides sides)
{
  Planform planform;

  ck_assert_int_eq (planform_measure (outline, sides, &planform), CORE_OK);
  return planform;
}

/* Every figure to 1e-9 of its own size; places to 1e-9 of the wing's. */
static void
assert_same (const Planform *got, const Planform *wanted, const char *what)
{
  ck_assert_msg (fabs (got->area - wanted->area) <= 1e-9 * wanted->area, "%s: area %.15g, %.15g", what, got->area, wanted->area);
  ck_assert_msg (fabs (got->span - wanted->span) <= 1e-9 * wanted->span, "%s: span %.15g, %.15g", what, got->span, wanted->span);
  ck_assert_msg (fabs (got->mac - wanted->mac) <= 1e-9 * wanted->mac, "%s: MAC %.15g, %.15g", what, got->mac, wanted->mac);
  ck_assert_msg (fabs (got->aspect_ratio - wanted->aspect_ratio) <= 2e-9 * wanted->aspect_ratio, "%s: aspect ratio", what);
  ck_assert_msg (fabs (got->mean_chord - wanted->mean_chord) <= 1e-9 * wanted->mean_chord, "%s: mean chord", what);
  ck_assert_msg (fabs (got->mac_station - wanted->mac_station) <= 1e-9 * wanted->span, "%s: station %.15g, %.15g", what,
                 got->mac_station, wanted->mac_station);
  ck_assert_msg (fabs (got->mac_leading_edge_x - wanted->mac_leading_edge_x) <= 1e-9 * wanted->span, "%s: leading edge %.15g, %.15g",
                 what, got->mac_leading_edge_x, wanted->mac_leading_edge_x);
}

typedef Outline *(*Builder) (void);

static Outline *
ellipse (void)
{
  return ellipse_from (110, 320, 40, 90);
}

/* A notch in the trailing edge, and a leading edge that reaches back over itself near the tip. */
static Outline *
notched_wing (void)
{
  const Segment edges[] = {
    segment_line ((Point) { 20, 260 }), segment_curve ((Point) { 25, 300 }, (Point) { 70, 330 }, (Point) { 90, 290 }),
    segment_line ((Point) { 110, 310 }), segment_line ((Point) { 140, 90 }), segment_line ((Point) { 105, 70 }),
    segment_line ((Point) { 150, 50 }), segment_line ((Point) { 155, 0 }),
  };

  return outline_from ((Point) { 0, 0 }, edges, 7);
}

static Outline *
polygon (void)
{
  return taper_from ((const double[]) { 0, 211, 437 }, (const double[]) { 3, 17, 61 }, (const double[]) { 191, 163, 71 }, 3);
}

static const Builder builders[] = { ellipse, mixed_wing, leaf_of_curves, notched_wing, polygon };
enum { BUILDERS = sizeof builders / sizeof *builders };

START_TEST (splitting_any_segment_changes_nothing)
{
  Outline *wing = builders[_i] ();
  const Planform wanted = measured (wing, PLANFORM_CARRIED);

  for (size_t segment = 0; segment < outline_segment_count (wing); segment++)
    for (double t = 0.109375; t < 1; t += 0.28125)
      {
        Outline *split = NULL;
        ck_assert_int_eq (outline_with_node_inserted (wing, segment, t, &split), CORE_OK);
        const Planform got = measured (split, PLANFORM_CARRIED);
        assert_same (&got, &wanted, "split");
        outline_unref (split);
      }
  outline_unref (wing);
}
END_TEST

START_TEST (scaling_and_shifting_scale_and_shift_every_figure)
{
  const Point scale = { 0.0254, 0.37 }, shift = { 1234.5, 0 };
  Outline *wing = builders[_i] (), *mapped = NULL;
  Planform wanted = measured (wing, PLANFORM_CARRIED);

  ck_assert_int_eq (outline_mapped (wing, scale, shift, &mapped), CORE_OK);
  const Planform got = measured (mapped, PLANFORM_CARRIED);
  wanted = (Planform) {
    .area = wanted.area * scale.x * scale.y, .span = wanted.span * scale.y, .aspect_ratio = wanted.aspect_ratio * scale.y / scale.x,
    .mean_chord = wanted.mean_chord * scale.x, .mac = wanted.mac * scale.x, .mac_station = wanted.mac_station * scale.y,
    .mac_leading_edge_x = wanted.mac_leading_edge_x * scale.x + shift.x
  };
  assert_same (&got, &wanted, "mapped");
  outline_unref (mapped);
  outline_unref (wing);
}
END_TEST

START_TEST (the_run_from_the_other_end_measures_the_same)
{
  Outline *wing = builders[_i] (), *reversed = NULL;
  const Planform wanted = measured (wing, PLANFORM_CARRIED);

  ck_assert_int_eq (outline_reversed (wing, &reversed), CORE_OK);
  const Planform got = measured (reversed, PLANFORM_CARRIED);
  assert_same (&got, &wanted, "reversed");
  outline_unref (reversed);
  outline_unref (wing);
}
END_TEST

static Point
mirrored (Point place)
{
  return (Point) { -place.x, place.y };
}

/* With nose and tail exchanged, chords keep their lengths; the leading edge is what was the trailing edge. */
START_TEST (a_wing_back_to_front_has_the_same_chords)
{
  Outline *wing = builders[_i] ();
  const size_t count = outline_segment_count (wing);
  Segment segments[count];

  for (size_t i = 0; i < count; i++)
    {
      segments[i] = *outline_segment (wing, i);
      segments[i].to = mirrored (segments[i].to);
      segments[i].centre = mirrored (segments[i].centre);
      segments[i].control1 = mirrored (segments[i].control1);
      segments[i].control2 = mirrored (segments[i].control2);
    }
  Outline *back = outline_from (mirrored (outline_node (wing, 0)), segments, count);
  const Planform wanted = measured (wing, PLANFORM_CARRIED);
  Planform got = measured (back, PLANFORM_CARRIED);
  got.mac_leading_edge_x = wanted.mac_leading_edge_x;
  assert_same (&got, &wanted, "back to front");
  outline_unref (back);
  outline_unref (wing);
}
END_TEST

START_TEST (boundary_and_strips_give_the_same_area)
{
  Outline *wing = builders[_i] ();

  for (PlanformSides sides = PLANFORM_CARRIED; sides <= PLANFORM_SINGLE; sides++)
    {
      const Planform planform = measured (wing, sides);
      AreaMoments moments;

      ck_assert_int_eq (planform_moments (wing, sides, &moments), CORE_OK);
      ck_assert_double_eq_tol (moments.area, planform.area, 1e-9 * planform.area);
    }
  outline_unref (wing);
}
END_TEST

/* Between two cuts the chord is what the measure has integrated: the midpoint rule in the same angle, 4,000 places. */
START_TEST (the_chords_that_are_cut_add_up_to_the_area)
{
  enum { PLACES = 4000 };
  Outline *wing = builders[_i] ();
  const Planform planform = measured (wing, PLANFORM_CARRIED);
  const double tip = planform.span / 2;
  double area = 0;
  bool sound = true;

  for (int i = 0; i < PLACES; i++)
    {
      const double angle = M_PI * (i + 0.5) / PLACES;
      StationCut cut;

      sound = sound && planform_cut (wing, PLANFORM_CARRIED, tip * (1 - cos (angle)) / 2, &cut) == CORE_OK
              && cut.chord <= cut.trailing_x - cut.leading_x + 1e-9;
      area += cut.chord * sin (angle) * M_PI / PLACES * tip;
    }
  ck_assert (sound);
  ck_assert_double_eq_tol (area, planform.area, 5e-4 * planform.area);     /* a step of the chord costs a part of one place */
  outline_unref (wing);
}
END_TEST

static Outline *
fin_with_root_at (double root)
{
  return taper_from ((const double[]) { root, root + 83.5 }, (const double[]) { 611, 640 }, (const double[]) { 97, 51 }, 2);
}

/* A trapezium of chords 97 and 51 over 83.5; closed forms as for a straight taper. */
START_TEST (a_root_off_the_centre_line_is_carried_left_open_or_counted_once)
{
  const double root = 31.25, height = 83.5, half = height * (97 + 51) / 2;
  Outline *fin = fin_with_root_at (root);
  const Planform carried = measured (fin, PLANFORM_CARRIED), open = measured (fin, PLANFORM_OPEN), single = measured (fin, PLANFORM_SINGLE);

  ck_assert_double_eq_tol (carried.area, 2 * (half + root * 97), 1e-9 * carried.area);
  ck_assert_double_eq_tol (open.area, 2 * half, 1e-9 * open.area);
  ck_assert_double_eq_tol (single.area, half, 1e-9 * single.area);
  ck_assert_double_eq_tol (carried.span, 2 * (root + height), 1e-9 * carried.span);
  ck_assert_double_eq_tol (open.span, 2 * (root + height), 1e-9 * open.span);
  ck_assert_double_eq_tol (single.span, height, 1e-9 * single.span);
  ck_assert_double_eq_tol (single.mac, 2.0 / 3 * (97 * 97 + 97 * 51 + 51 * 51) / (97 + 51), 1e-9 * 97);
  ck_assert_double_eq_tol (single.mac_station, root + height / 3 * (97 + 2 * 51) / (97 + 51), 1e-9 * 115);
  ck_assert_double_eq_tol (open.mac, single.mac, 1e-9 * 97);
  ck_assert_double_eq_tol (carried.mac_station, (single.mac_station * half + root / 2 * root * 97) / (half + root * 97), 1e-9 * 115);
  ck_assert_double_eq_tol (carried.mac_leading_edge_x, (single.mac_leading_edge_x * half + 611 * root * 97) / (half + root * 97), 1e-9 * 640);
  ck_assert_double_eq_tol (carried.mac, (single.mac * half + 97 * 97 * root) / (half + root * 97), 1e-9 * 97);
  outline_unref (fin);
}
END_TEST

START_TEST (a_wing_that_reaches_over_the_centre_line_is_refused)
{
  Outline *wing = fin_with_root_at (-1);
  Planform planform = { .area = 17 };
  AreaMoments moments;

  ck_assert_int_eq (planform_measure (wing, PLANFORM_CARRIED, &planform), CORE_OUT_OF_RANGE);
  ck_assert_double_eq (planform.area, 17);
  ck_assert_int_eq (planform_moments (wing, PLANFORM_OPEN, &moments), CORE_OUT_OF_RANGE);
  ck_assert_int_eq (planform_measure (wing, PLANFORM_SINGLE, &planform), CORE_OK);
  outline_unref (wing);
}
END_TEST

START_TEST (a_root_is_not_carried_over_the_surface_itself)
{
  const Point inboard[] = { { 0, 90 }, { 10, 20 }, { 80, 20 }, { 100, 90 } };
  const Point fillet[] = { { 0, 40 }, { 0, 240 }, { 90, 240 }, { 130, 60 }, { 120, 20 }, { 100, 40 } };
  Outline *under = polygon_from (inboard, 4), *beside = polygon_from (fillet, 6);
  Planform planform;

  ck_assert_int_eq (planform_measure (under, PLANFORM_CARRIED, &planform), CORE_OUT_OF_RANGE);
  ck_assert_int_eq (planform_measure (under, PLANFORM_OPEN, &planform), CORE_OK);
  ck_assert_double_eq_tol (planform.area, 70.0 * (70 + 100), 1e-9 * 11900);
  /* The fillet behind the root's trailing edge adds to what is carried. */
  const Planform open = measured (beside, PLANFORM_OPEN), carried = measured (beside, PLANFORM_CARRIED);
  ck_assert_double_eq_tol (carried.area, open.area + 2 * 40 * 100, 1e-9 * carried.area);
  outline_unref (under);
  outline_unref (beside);
}
END_TEST

/* The fin's foot is a curve that turns below its root: the turn is its lowest station, to the last bit. */
START_TEST (a_surface_is_cut_at_the_very_turn_it_ends_in)
{
  const Segment edges[] = { segment_line ((Point) { 31, 81.5 }), segment_line ((Point) { 93, 85 }),
                            segment_curve ((Point) { 121.3, -31.7 }, (Point) { 17.9, -11.3 }, (Point) { 0, 7 }) };
  Outline *fin = outline_from ((Point) { 0, 7 }, edges, 3);
  double stations[8];
  const size_t count = planform_breaks (fin, PLANFORM_SINGLE, stations, 8);

  ck_assert_uint_ge (count, 3);
  ck_assert_double_lt (stations[0], 0);
  for (size_t i = 0; i < count; i++)
    {
      StationCut cut;
      ck_assert_int_eq (planform_cut (fin, PLANFORM_SINGLE, stations[i], &cut), CORE_OK);
      ck_assert_int_ge (cut.pieces, 1);
      ck_assert (isfinite (cut.leading_x));
    }
  outline_unref (fin);
}
END_TEST

START_TEST (what_is_no_surface_is_not_measured)
{
  const Point bow[] = { { 0, 0 }, { 100, 80 }, { 0, 80 }, { 100, 0 } }, open[] = { { 0, 0 }, { 10, 90 }, { 100, 5 } };
  Outline *crossing = polygon_from (bow, 4), *loose = polygon_from (open, 3);
  Planform planform = { .area = 17 };
  StationCut cut = { .chord = 17 };
  AreaMoments moments = { .area = 17 };
  double stations[4];

  ck_assert_int_eq (planform_measure (crossing, PLANFORM_CARRIED, &planform), CORE_CROSSES_ITSELF);
  ck_assert_int_eq (planform_measure (loose, PLANFORM_CARRIED, &planform), CORE_OPEN);
  ck_assert_int_eq (planform_cut (loose, PLANFORM_CARRIED, 20, &cut), CORE_OPEN);
  ck_assert_int_eq (planform_moments (crossing, PLANFORM_SINGLE, &moments), CORE_CROSSES_ITSELF);
  ck_assert_uint_eq (planform_breaks (crossing, PLANFORM_CARRIED, stations, 4), 0);
  ck_assert (planform.area == 17 && cut.chord == 17 && moments.area == 17);
  outline_unref (crossing);
  outline_unref (loose);
}
END_TEST

int
main (void)
{
  TCase *tests = tcase_create ("properties");

  tcase_add_loop_test (tests, splitting_any_segment_changes_nothing, 0, BUILDERS);
  tcase_add_loop_test (tests, scaling_and_shifting_scale_and_shift_every_figure, 0, BUILDERS);
  tcase_add_loop_test (tests, the_run_from_the_other_end_measures_the_same, 0, BUILDERS);
  tcase_add_loop_test (tests, a_wing_back_to_front_has_the_same_chords, 0, BUILDERS);
  tcase_add_loop_test (tests, boundary_and_strips_give_the_same_area, 0, BUILDERS);
  tcase_add_loop_test (tests, the_chords_that_are_cut_add_up_to_the_area, 0, BUILDERS);
  tcase_add_test (tests, a_root_off_the_centre_line_is_carried_left_open_or_counted_once);
  tcase_add_test (tests, a_wing_that_reaches_over_the_centre_line_is_refused);
  tcase_add_test (tests, a_root_is_not_carried_over_the_surface_itself);
  tcase_add_test (tests, a_surface_is_cut_at_the_very_turn_it_ends_in);
  tcase_add_test (tests, what_is_no_surface_is_not_measured);
  return run_suite (suite_create ("planform properties"), tests);
}
