#include <check.h>
#include "geometry/planform.h"
#include "support/run-suite.h"
#include "support/shapes.h"

/* Closed forms are held to 1e-9 of themselves; a length that may be zero, to 1e-9 of the chord it belongs to. */
#define CLOSED_FORM 1e-9

static void
assert_near (double got, double wanted, double tolerance, const char *what)
{
  ck_assert_msg (fabs (got - wanted) <= tolerance, "%s: %.15g, wanted %.15g", what, got, wanted);
}

static void
assert_planform (const Planform *got, const Planform *wanted)
{
  assert_near (got->area, wanted->area, CLOSED_FORM * wanted->area, "area");
  assert_near (got->span, wanted->span, CLOSED_FORM * wanted->span, "span");
  assert_near (got->mac, wanted->mac, CLOSED_FORM * wanted->mac, "mean aerodynamic chord");
  assert_near (got->mac_station, wanted->mac_station, CLOSED_FORM * wanted->mac_station, "its station");
  assert_near (got->mac_leading_edge_x, wanted->mac_leading_edge_x, CLOSED_FORM * wanted->mac, "its leading edge");
  assert_near (got->mean_chord, wanted->area / wanted->span, CLOSED_FORM * wanted->mac, "mean chord");
  assert_near (got->aspect_ratio, wanted->span * wanted->span / wanted->area, 1e-8, "aspect ratio");
}

static Planform
measured (const Outline *outline, PlanformSides sides)
{
  Planform planform;

  ck_assert_int_eq (planform_measure (outline, sides, &planform), CORE_OK);
  return planform;
}

static void
assert_carried (Outline *outline, const Planform *wanted)
{
  const Planform got = measured (outline, PLANFORM_CARRIED);

  assert_planform (&got, wanted);
  outline_unref (outline);
}

/* Definitions: S = 2 ∫ c dy, MAC = (2/S) ∫ c² dy and so on, e.g. Etkin and Reid, Dynamics of Flight, appendix C. The closed
 * forms follow from them; computed once with all digits and compared with adaptive quadrature. */

/* S = π s (a + b) / 2, MAC = 8 (a + b) / 3π, y = 4 s / 3π, x_LE = a (1 - 8 / 3π). */
static const struct { const char *what; double semispan, ahead, behind; Planform wanted; } ellipses[] = {
  { .what = "an ellipse", .semispan = 320, .ahead = 60, .behind = 60,
    .wanted = { .area = 60318.5789489, .span = 640, .mac = 101.859163579, .mac_station = 135.812218105, .mac_leading_edge_x = 9.07041821059 } },
  { .what = "two half ellipses", .semispan = 450, .ahead = 40, .behind = 110,
    .wanted = { .area = 106028.752059, .span = 900, .mac = 127.323954474, .mac_station = 190.985931710, .mac_leading_edge_x = 6.04694547373 } },
  { .what = "a straight leading edge", .semispan = 250, .ahead = 0, .behind = 100,
    .wanted = { .area = 39269.9081699, .span = 500, .mac = 84.8826363157, .mac_station = 106.103295395, .mac_leading_edge_x = 0 } },
  { .what = "a circle", .semispan = 100, .ahead = 100, .behind = 100,
    .wanted = { .area = 31415.9265359, .span = 200, .mac = 169.765272631, .mac_station = 42.4413181578, .mac_leading_edge_x = 15.1173636843 } },
};

START_TEST (an_elliptical_wing_measures_as_its_closed_form)
{
  assert_carried (ellipse_from (0, ellipses[_i].semispan, ellipses[_i].ahead, ellipses[_i].behind), &ellipses[_i].wanted);
}
END_TEST

/* Sums over trapezoids: h (c1 + c2) / 2, h (c1² + c1 c2 + c2²) / 3, h [c1 (2 y1 + y2) + c2 (y1 + 2 y2)] / 6. */
static const struct { const char *what; double station[3], leading[3], chord[3]; size_t count; Planform wanted; } tapers[] = {
  { .what = "a straight taper", .count = 2, .station = { 0, 500 }, .leading = { 0, 60 }, .chord = { 200, 120 },
    .wanted = { .area = 160000, .span = 1000, .mac = 163.333333333333, .mac_station = 229.166666666667, .mac_leading_edge_x = 27.5 } },
  { .what = "a cranked taper", .count = 3, .station = { 0, 250, 600 }, .leading = { 0, 10, 75 }, .chord = { 220, 200, 110 },
    .wanted = { .area = 213500, .span = 1200, .mac = 184.340359094, .mac_station = 267.876658860, .mac_leading_edge_x = 22.4199843872 } },
  { .what = "a parallel centre with tapered tips", .count = 3, .station = { 0, 300, 500 }, .leading = { 0, 0, 40 }, .chord = { 180, 180, 90 },
    .wanted = { .area = 162000, .span = 1000, .mac = 166.666666666667, .mac_station = 229.629629629630, .mac_leading_edge_x = 5.92592592592593 } },
  /* A 4, taper 0.6, 45 degrees at the quarter chord, span 24 in, S 144 in²: a wing of the NACA transonic series, about
   * 1949-50, MAC 6.125 in (from memory; the figures follow exactly from root 7.5 and tip 4.5 in). */
  { .what = "the swept wing of the NACA transonic series", .count = 2, .station = { 0, 12 }, .leading = { 0, 12.75 }, .chord = { 7.5, 4.5 },
    .wanted = { .area = 144, .span = 24, .mac = 6.125, .mac_station = 5.5, .mac_leading_edge_x = 5.84375 } },
  /* Warren 12: root 1.5, tip 0.5, span 2√2, half-chord line swept 45 degrees. */
  { .what = "the Warren 12 planform", .count = 2, .station = { 0, M_SQRT2 }, .leading = { 0, 0.5 + M_SQRT2 }, .chord = { 1.5, 0.5 },
    .wanted = { .area = 2 * M_SQRT2, .span = 2 * M_SQRT2, .mac = 13.0 / 12, .mac_station = 5 * M_SQRT2 / 12, .mac_leading_edge_x = 0.797588984322 } },
};

START_TEST (a_tapered_wing_measures_as_its_closed_form)
{
  assert_carried (taper_from (tapers[_i].station, tapers[_i].leading, tapers[_i].chord, tapers[_i].count), &tapers[_i].wanted);
}
END_TEST

/* Nelson, Flight Stability and Automatic Control, 2nd ed. 1998, ch. 2: root 7.2 ft, taper 0.54, span 33.4 ft; S 184 ft² and
 * MAC 5.7 ft as printed, rounded by the book: S within 1 %, MAC within 0.05 ft. */
START_TEST (the_general_aviation_wing_has_the_area_and_chord_that_the_book_prints)
{
  Outline *wing = taper_from ((const double[]) { 0, 16.7 }, (const double[]) { 0, 0.83 }, (const double[]) { 7.2, 7.2 * 0.54 }, 2);
  const Planform got = measured (wing, PLANFORM_CARRIED);

  assert_near (got.area, 184, 1.84, "area");
  assert_near (got.mac, 5.7, 0.05, "mean aerodynamic chord");
  outline_unref (wing);
}
END_TEST

/* Parallel to y = 400, then half-elliptic tips of spanwise axis 120, 50 ahead and 100 behind. */
START_TEST (a_parallel_wing_with_half_elliptic_tips_measures_as_its_closed_form)
{
  const Point joint = { 50, 400 };
  const Segment edges[] = {
    segment_line ((Point) { 0, 400 }), segment_arc (joint, 50, 120, (Point) { 50, 520 }),
    segment_arc (joint, 100, 120, (Point) { 150, 400 }), segment_line ((Point) { 150, 0 }),
  };
  const Planform wanted = { .area = 148274.333882, .span = 1040, .mac = 145.675919995,
                            .mac_station = 247.849594672, .mac_leading_edge_x = 1.44136000156 };

  assert_carried (outline_from ((Point) { 0, 0 }, edges, 4), &wanted);
}
END_TEST

/* x_LE = 50 (y/s)², x_TE = 150 - 100 (y/s)², which cubic curves run exactly: S = 4 c0 s / 3, MAC = 4 c0 / 5, y = 3 s / 8. */
START_TEST (a_wing_of_parabolic_chord_measures_as_its_closed_form)
{
  const Segment edges[] = {
    segment_curve ((Point) { 0, 400.0 / 3 }, (Point) { 50.0 / 3, 800.0 / 3 }, (Point) { 50, 400 }),
    segment_curve ((Point) { 50 + 200.0 / 3, 800.0 / 3 }, (Point) { 150, 400.0 / 3 }, (Point) { 150, 0 }),
  };
  const Planform wanted = { .area = 80000, .span = 800, .mac = 120, .mac_station = 150, .mac_leading_edge_x = 10 };

  assert_carried (outline_from ((Point) { 0, 0 }, edges, 2), &wanted);
}
END_TEST

/* With q = √(1 - (y/s)²), x_LE = 160 (1 - q) and x_TE = 120 + 40 (1 - q): two elliptical arcs that end in a cusp. */
START_TEST (a_crescent_measures_as_its_closed_form)
{
  const Point centre = { 160, 0 };
  const Segment edges[] = { segment_arc (centre, 160, 400, (Point) { 160, 400 }), segment_arc (centre, 40, 400, (Point) { 120, 0 }) };
  const Planform wanted = { .area = 75398.2236862, .span = 800, .mac = 101.859163579,
                            .mac_station = 169.765272631, .mac_leading_edge_x = 24.1877818949 };

  assert_carried (outline_from ((Point) { 0, 0 }, edges, 2), &wanted);
}
END_TEST

int
main (void)
{
  TCase *tests = tcase_create ("published");

  tcase_add_loop_test (tests, an_elliptical_wing_measures_as_its_closed_form, 0, sizeof ellipses / sizeof *ellipses);
  tcase_add_loop_test (tests, a_tapered_wing_measures_as_its_closed_form, 0, sizeof tapers / sizeof *tapers);
  tcase_add_test (tests, the_general_aviation_wing_has_the_area_and_chord_that_the_book_prints);
  tcase_add_test (tests, a_parallel_wing_with_half_elliptic_tips_measures_as_its_closed_form);
  tcase_add_test (tests, a_wing_of_parabolic_chord_measures_as_its_closed_form);
  tcase_add_test (tests, a_crescent_measures_as_its_closed_form);
  return run_suite (suite_create ("planform"), tests);
}
