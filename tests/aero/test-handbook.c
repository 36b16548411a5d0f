#include <stdlib.h>
#include "aero/handbook.h"
#include "support/run-suite.h"
#include "wings.h"

static const double degree = M_PI / 180;

/* Polhamus's formula as in USAF DATCOM 4.1.3.2, from memory; values by hand, eight digits. Without sweep and with k = 1 it is
 * Helmbold's. The fifth is the wing known as Warren 12, whose lift slope by lifting-surface theory is 2.750. */
static const struct { double aspect_ratio, sweep_deg, section, expected; } slopes[] = {
  { .aspect_ratio = 1, .section = 1, .expected = 1.48325885 },
  { .aspect_ratio = 4, .section = 1, .expected = 3.88322208 },
  { .aspect_ratio = 6, .section = 1, .expected = 4.52866374 },
  { .aspect_ratio = 6, .section = 0.95, .expected = 4.37096615 },
  { .aspect_ratio = 2.8284271247, .sweep_deg = 45, .section = 1, .expected = 2.74585266 },
  { .aspect_ratio = 5, .sweep_deg = 45, .section = 1, .expected = 3.36054233 },
};

START_TEST (lift_slope_is_datcoms)
{
  ck_assert_double_eq_tol (handbook_lift_slope (slopes[_i].aspect_ratio, slopes[_i].sweep_deg * degree, slopes[_i].section),
                           slopes[_i].expected, 1e-8);
}
END_TEST

/* Etkin and Reid, Dynamics of Flight, 3rd ed., appendix B; USAF DATCOM. The formula from memory, values by hand. */
START_TEST (downwash_is_datcoms)
{
  ck_assert_double_eq_tol (handbook_downwash (6, 1, 0, 0.5, 0), 0.3606402646, 1e-9);
  ck_assert_double_eq_tol (handbook_downwash (6, 0.5, 0, 0.5, 0.1), 0.4008340928, 1e-9);
  ck_assert_double_eq_tol (handbook_downwash (6, 0.5, 0, 0.5, -0.1), 0.4008340928, 1e-9);
}
END_TEST

/* Sweep enters as √cos to the power 1.19, the arm as its cube root. */
START_TEST (downwash_falls_with_sweep_and_arm)
{
  const double straight = handbook_downwash (7.3, 0.62, 0, 0.47, 0.06);

  ck_assert_double_eq_tol (handbook_downwash (7.3, 0.62, 27 * degree, 0.47, 0.06), straight * pow (cos (27 * degree), 0.595), 1e-12);
  ck_assert_double_eq_tol (handbook_downwash (7.3, 0.62, 0, 8 * 0.47, 0.06), straight * pow (2, -1.19), 1e-12);
}
END_TEST

/* Anderson, Introduction to Flight, chapter 7, its worked sequence: a wing and body of 0.1 m² with 0.1 m of chord, centre at 0.24 of it,
 * C_M,ac -0.032, slope 0.08 a degree, mass centre at 0.35; a tail of 0.02 m² 0.17 m behind that, 0.1 a degree, set at 2.7 degrees,
 * dε/dα 0.35. All but the tail volume is his arithmetic, which stands here so that every figure he prints follows from it. */
typedef struct { double wing_centre, balance, wing_slope, tail_slope, moment_at_centre, setting, downwash, volume; } Sequence;

static Sequence
andersons_aeroplane (void)
{
  return (Sequence) { .wing_centre = 0.24, .balance = 0.35, .wing_slope = 0.08, .tail_slope = 0.1, .moment_at_centre = -0.032,
                      .setting = 2.7, .downwash = 0.35, .volume = handbook_tail_volume (0.02, 0.17, 0.1, 0.1) };
}

static double
moment_slope (const Sequence *of)
{
  return of->wing_slope * (of->balance - of->wing_centre) - of->volume * of->tail_slope * (1 - of->downwash);
}

START_TEST (tail_volume_gives_andersons_moments)
{
  const Sequence plane = andersons_aeroplane ();
  const double slope = moment_slope (&plane), at_zero = plane.moment_at_centre + plane.volume * plane.tail_slope * plane.setting;

  ck_assert_double_eq_tol (plane.volume, 0.34, 1e-15);
  ck_assert_double_eq_tol (slope, -0.0133, 1e-9);
  ck_assert_double_eq_tol (at_zero, 0.06, 0.0005);
  ck_assert_double_eq_tol (at_zero, 0.0598, 1e-9);
  ck_assert_double_eq_tol (at_zero + slope * 7.88, -0.045, 0.0005);
  ck_assert_double_eq_tol (at_zero + slope * 7.88, -0.045004, 1e-9);
  ck_assert_double_eq_tol (-at_zero / slope, 4.5, 0.05);
}
END_TEST

START_TEST (tail_volume_gives_andersons_neutral_point_and_static_margin)
{
  const Sequence plane = andersons_aeroplane ();
  const double neutral = plane.wing_centre + plane.volume * plane.tail_slope / plane.wing_slope * (1 - plane.downwash);

  ck_assert_double_eq_tol (neutral, 0.516, 0.0005);
  ck_assert_double_eq_tol (neutral, 0.51625, 1e-9);
  ck_assert_double_eq_tol (neutral - plane.balance, 0.166, 0.0005);
  ck_assert_double_eq_tol (-moment_slope (&plane) / plane.wing_slope, neutral - plane.balance, 1e-12);
}
END_TEST

/* Nelson, Flight Stability and Automatic Control, 2nd ed., chapter 2, the general-aviation aeroplane: 43 ft² 16 ft behind 184 ft²
 * of 5.7 ft chord, V_H = 0.66; with 3.91 a radian and dε/dα = 0.45 the tail's moment slope is printed as -1.42. */
START_TEST (tail_volume_gives_nelsons_pitching_moment)
{
  const double volume = handbook_tail_volume (43, 16, 184, 5.7);

  ck_assert_double_eq_tol (volume, 0.655987796, 1e-9);
  ck_assert_double_eq_tol (volume, 0.66, 0.005);
  ck_assert_double_eq_tol (-volume * 3.91 * (1 - 0.45), -1.42, 0.015);   /* the book rounds V_H before it goes on */
  ck_assert_double_lt (handbook_tail_volume (43, -16, 184, 5.7), 0);
}
END_TEST

/* The same aeroplane: aspect ratio 6.06, taper 0.54, span 33.4 ft. Lifting-line theory gave the book 4.3 for the wing of a section slope
 * of 0.097 a degree, and dε/dα = 2 · 4.3 / (π · 6.06) = 0.45; DATCOM's formulas, other methods, are held to bands about those. */
START_TEST (datcoms_slope_and_downwash_are_near_nelsons)
{
  const double section = 0.097 * 180 / M_PI;

  ck_assert_double_eq_tol (handbook_lift_slope (6.06, 0, section / (2 * M_PI)), 4.3, 0.04 * 4.3);
  ck_assert_double_eq_tol (handbook_downwash (6.06, 0.54, 0, 16 / 33.4, 0), 0.45, 0.1 * 0.45);
}
END_TEST

/* Its neutral point by hand from the book's inputs: 0.25 - 0.12/4.3 + 0.66 (3.91/4.3)(1 - 0.45) = 0.5522 of the chord. */
START_TEST (tail_volume_gives_nelsons_neutral_point)
{
  ck_assert_double_eq_tol (0.25 - 0.12 / 4.3 + handbook_tail_volume (43, 16, 184, 5.7) * (3.91 / 4.3) * (1 - 0.45), 0.5522, 0.005);
}
END_TEST

/* Two rectangles, 6 by 1 and 2 by 0.5: slopes 4.52866374 and 3.88322208 as above, each at its quarter chord. */
START_TEST (a_rectangles_tail_adds_its_lift_in_the_wings_downwash)
{
  Outline *wing = wing_trapezium ((Trapezium) { 3, 0, 1, 0, 1 }), *tail = wing_trapezium ((Trapezium) { 1, 3, 0.5, 3, 0.5 });
  const HandbookSurface surfaces[2] = { { .outline = wing, .pressure_ratio = 1 },
                                        { .outline = tail, .z = 0.3, .pressure_ratio = 0.9 } };
  const double tail_lift = 3.88322208 * 0.9 / 6 * (1 - handbook_downwash (6, 1, 0, 2.875 / 6, 0.3 / 6));
  double x, slope;

  ck_assert_int_eq (handbook_neutral_point (surfaces, 2, &x, &slope), CORE_OK);
  ck_assert_double_eq_tol (slope, 4.52866374 + tail_lift, 1e-8);
  ck_assert_double_eq_tol (x, (4.52866374 * 0.25 + tail_lift * 3.125) / (4.52866374 + tail_lift), 1e-8);
  ck_assert_int_eq (handbook_neutral_point (surfaces, 2, &x, NULL), CORE_OK);
  outline_unref (wing);
  outline_unref (tail);
}
END_TEST

/* A straight taper stands for itself: quarter MAC at 68.3333, tan of half-chord sweep (60 − 40) / 500. */
START_TEST (a_tapered_wing_alone_is_neutral_at_its_quarter_chord)
{
  Outline *wing = wing_trapezium ((Trapezium) { 500, 0, 200, 60, 120 });
  const HandbookSurface surface = { .outline = wing, .pressure_ratio = 1 };
  double x, slope;

  ck_assert_int_eq (handbook_neutral_point (&surface, 1, &x, &slope), CORE_OK);
  ck_assert_double_eq_tol (x, 68.3333333333, 1e-7);
  ck_assert_double_eq_tol (slope, handbook_lift_slope (6.25, atan (20. / 500), 1), 1e-8);
  outline_unref (wing);
}
END_TEST

/* Straight tapers stand for themselves: taper 0.6, tan of quarter-chord sweep (60 − 80/4) / 500, quarter MAC at 68.3333.
 * The tail: chords 92 to 58, MAC (2/3) · 92 · (1 + k + k²)/(1 + k), k = 58/92, its leading edge 15/180 of its station aft. */
START_TEST (a_tapered_wings_own_sweep_and_taper_make_its_downwash)
{
  Outline *wing = wing_trapezium ((Trapezium) { 500, 0, 200, 60, 120 });
  Outline *tail = wing_trapezium ((Trapezium) { 180, 620, 92, 635, 58 });
  const HandbookSurface surfaces[2] = { { .outline = wing, .pressure_ratio = 1 },
                                        { .outline = tail, .z = 41, .pressure_ratio = 1 } };
  const double k = 58. / 92, mac = 2. / 3 * 92 * (1 + k + k * k) / (1 + k), station = 60 * (1 + 2 * k) / (1 + k);
  const double tail_x = 620 + 15 * station / 180 + mac / 4, arm = tail_x - 68.3333333333;
  const double downwash = handbook_downwash (6.25, 0.6, atan (40. / 500), arm / 1000, 41. / 1000);
  const double wing_lift = handbook_lift_slope (6.25, atan (20. / 500), 1);
  const double tail_lift = handbook_lift_slope (360 / 75., atan ((15 - 17.) / 180), 1) * 0.16875 * (1 - downwash);
  double x;

  ck_assert_int_eq (handbook_neutral_point (surfaces, 2, &x, NULL), CORE_OK);
  ck_assert_double_eq_tol (x, (wing_lift * 68.3333333333 + tail_lift * tail_x) / (wing_lift + tail_lift), 1e-6);
  outline_unref (wing);
  outline_unref (tail);
}
END_TEST

/* Where the methods disagree: 0 to 5 % of MAC in the neutral point of honest layouts, the downwash by up to 0.11. */
START_TEST (the_handbook_is_within_5_percent_of_mac_of_the_lattice)
{
  Outline *wing = wing_trapezium ((Trapezium) { 500, 0, 200, 60, 120 });
  Outline *tail = wing_trapezium ((Trapezium) { 180, 620, 90, 635, 60 });
  const HandbookSurface surfaces[2] = { { .outline = wing, .pressure_ratio = 1 },
                                        { .outline = tail, .z = -30, .pressure_ratio = 1 } };
  const LatticeSurface panelled[2] = { { .outline = wing, .pressure_ratio = 1 },
                                       { .outline = tail, .z = -30, .pressure_ratio = 1 } };
  const Answer lattice = answer_of (panelled, 2);
  double x, slope;

  ck_assert_int_eq (handbook_neutral_point (surfaces, 2, &x, &slope), CORE_OK);
  ck_assert_double_eq_tol (x, lattice.result.neutral_point_x, 0.05 * lattice.reference.mac);
  ck_assert_double_eq_tol (slope, lattice.result.lift_slope, 0.08 * lattice.result.lift_slope);
  outline_unref (wing);
  outline_unref (tail);
}
END_TEST

START_TEST (a_foreplane_takes_lift_from_the_wing_and_moves_the_neutral_point_forward)
{
  Outline *wing = wing_trapezium ((Trapezium) { 400, 500, 130, 520, 110 });
  Outline *foreplane = wing_trapezium ((Trapezium) { 150, 100, 70, 110, 60 });
  const HandbookSurface surfaces[2] = { { .outline = wing, .pressure_ratio = 1 }, { .outline = foreplane, .pressure_ratio = 1 } };
  double alone_x, alone_slope, x, slope;

  ck_assert_int_eq (handbook_neutral_point (surfaces, 1, &alone_x, &alone_slope), CORE_OK);
  ck_assert_int_eq (handbook_neutral_point (surfaces, 2, &x, &slope), CORE_OK);
  ck_assert_double_lt (x, alone_x - 50);
  ck_assert_double_gt (slope, alone_slope);
  ck_assert_double_lt (slope, alone_slope + handbook_lift_slope (300. / 65, 0, 1) * 300 * 65 / (800. * 120));
  outline_unref (wing);
  outline_unref (foreplane);
}
END_TEST

/* A biplane's wings stand over each other: neither is in the other's wake, and the formula's arm would be nothing. */
START_TEST (wings_of_a_biplane_fly_side_by_side)
{
  Outline *upper = wing_trapezium ((Trapezium) { 400, 100, 130, 100, 130 }), *lower = NULL;
  double x, slope, single;

  ck_assert_int_eq (outline_mapped (upper, (Point) { 1, 1 }, (Point) { 13, 0 }, &lower), CORE_OK);
  const HandbookSurface surfaces[2] = { { .outline = upper, .z = 130, .pressure_ratio = 1 },
                                        { .outline = lower, .pressure_ratio = 1 } };

  ck_assert_int_eq (handbook_neutral_point (surfaces, 1, &x, &single), CORE_OK);
  ck_assert_int_eq (handbook_neutral_point (surfaces, 2, &x, &slope), CORE_OK);
  ck_assert_double_eq_tol (slope, 2 * single, 1e-9);
  ck_assert_double_eq_tol (x, 100 + 130 / 4. + 13 / 2., 1e-7);
  outline_unref (upper);
  outline_unref (lower);
}
END_TEST

START_TEST (a_tail_higher_than_the_span_is_out_of_the_formulas_range)
{
  Outline *wing = wing_trapezium ((Trapezium) { 200, 0, 100, 0, 100 }), *tail = wing_trapezium ((Trapezium) { 80, 300, 50, 300, 50 });
  const HandbookSurface surfaces[2] = { { .outline = wing, .pressure_ratio = 1 }, { .outline = tail, .z = 401, .pressure_ratio = 1 } };
  double x = 0.75, slope = 0.25;

  ck_assert_int_eq (handbook_neutral_point (surfaces, 2, &x, &slope), CORE_OUT_OF_RANGE);
  ck_assert_double_eq (x, 0.75);
  ck_assert_double_eq (slope, 0.25);
  outline_unref (wing);
  outline_unref (tail);
}
END_TEST

int
main (void)
{
  TCase *tests = tcase_create ("handbook");

  tcase_add_loop_test (tests, lift_slope_is_datcoms, 0, sizeof slopes / sizeof *slopes);
  tcase_add_test (tests, downwash_is_datcoms);
  tcase_add_test (tests, downwash_falls_with_sweep_and_arm);
  tcase_add_test (tests, tail_volume_gives_andersons_moments);
  tcase_add_test (tests, tail_volume_gives_andersons_neutral_point_and_static_margin);
  tcase_add_test (tests, tail_volume_gives_nelsons_pitching_moment);
  tcase_add_test (tests, datcoms_slope_and_downwash_are_near_nelsons);
  tcase_add_test (tests, tail_volume_gives_nelsons_neutral_point);
  tcase_add_test (tests, a_rectangles_tail_adds_its_lift_in_the_wings_downwash);
  tcase_add_test (tests, a_tapered_wing_alone_is_neutral_at_its_quarter_chord);
  tcase_add_test (tests, a_tapered_wings_own_sweep_and_taper_make_its_downwash);
  tcase_add_test (tests, the_handbook_is_within_5_percent_of_mac_of_the_lattice);
  tcase_add_test (tests, a_foreplane_takes_lift_from_the_wing_and_moves_the_neutral_point_forward);
  tcase_add_test (tests, wings_of_a_biplane_fly_side_by_side);
  tcase_add_test (tests, a_tail_higher_than_the_span_is_out_of_the_formulas_range);
  return run_suite (suite_create ("handbook"), tests);
}
