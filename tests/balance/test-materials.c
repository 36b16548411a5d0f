#include <check.h>
#include <math.h>
#include <stdlib.h>
#include "balance/materials.h"
#include "geometry/section-shape.h"
#include "support/run-suite.h"

static const double gram = 1e-3, mm = 1e-3, square_mm = 1e-6, lb_ft3 = 16.018463;

static MaterialLine
wood (double count, double length_mm, double width_mm, double thickness_mm, double kg_m3)
{
  MaterialLine line = material_line ();

  line.count = count;
  line.length = length_mm * mm;
  line.width = width_mm * mm;
  line.thickness = thickness_mm * mm;
  line.density = kg_m3;
  return line;
}

static MaterialLine
sheet (double area_mm2, double thickness_mm, double kg_m3)
{
  MaterialLine line = material_line ();

  line.area = area_mm2 * square_mm;
  line.thickness = thickness_mm * mm;
  line.density = kg_m3;
  return line;
}

static MaterialLine
covering (double area_mm2, double g_m2, double share)
{
  MaterialLine line = material_line ();

  line.area = area_mm2 * square_mm;
  line.area_density = g_m2 * gram;
  line.share = share;
  return line;
}

static MaterialLine
pieces (double grams)
{
  MaterialLine line = material_line ();

  line.each = grams * gram;
  return line;
}

static MaterialLine
glue (double share)
{
  MaterialLine line = material_line ();

  line.of_others = share;
  return line;
}

static double
grams_of (MaterialLine line)
{
  double mass = NAN;

  ck_assert_int_eq (material_line_mass (&line, &mass), CORE_OK);
  return mass / gram;
}

/* Geometry: mass over volume. Sheets of 3 × 36 in at the density in lb/ft³, to the tenth of a gram that a scale shows. */
START_TEST (a_sheet_weighs_what_its_density_says_and_tells_its_density)
{
  static const struct { double inches, pounds, grams; } sheets[] = {
    { 1.0 / 32, 6, 5.3 }, { 1.0 / 32, 8, 7.1 }, { 1.0 / 32, 10, 8.9 }, { 1.0 / 32, 12, 10.6 }, { 1.0 / 32, 16, 14.2 },
    { 1.0 / 16, 6, 10.6 }, { 1.0 / 16, 8, 14.2 }, { 1.0 / 16, 10, 17.7 }, { 1.0 / 16, 12, 21.3 }, { 1.0 / 16, 16, 28.3 },
    { 3.0 / 32, 6, 15.9 }, { 3.0 / 32, 8, 21.3 }, { 3.0 / 32, 10, 26.6 }, { 3.0 / 32, 12, 31.9 }, { 3.0 / 32, 16, 42.5 },
    { 1.0 / 8, 6, 21.3 }, { 1.0 / 8, 8, 28.3 }, { 1.0 / 8, 10, 35.4 }, { 1.0 / 8, 12, 42.5 }, { 1.0 / 8, 16, 56.7 } };

  for (size_t i = 0; i < sizeof sheets / sizeof *sheets; i++)
    {
      const double thickness = sheets[i].inches * 25.4;
      const double density = sheet_density (sheets[i].grams * gram, 36 * 25.4 * mm, 3 * 25.4 * mm, thickness * mm);

      ck_assert_double_eq_tol (grams_of (wood (1, 36 * 25.4, 3 * 25.4, thickness, sheets[i].pounds * lb_ft3)), sheets[i].grams, 0.051);
      ck_assert_double_eq_tol (density_in_lb_ft3 (density), sheets[i].pounds, 0.06);
      ck_assert_double_eq_tol (density_in_lb_ft3 (density), 3.81 * sheets[i].grams / (36 * 3 * sheets[i].inches), 0.005 * sheets[i].pounds);
    }
}
END_TEST

START_TEST (a_sheet_without_a_size_or_a_mass_has_no_density)
{
  ck_assert_double_nan (sheet_density (0, 1, 1, 1));
  ck_assert_double_nan (sheet_density (0.01, 0, 1, 1));
  ck_assert_double_nan (sheet_density (0.01, 1, 1, NAN));
}
END_TEST

/* Geometry: sticks, grams a metre at 8 and 12 lb/ft³. */
START_TEST (sticks_weigh_by_their_section_and_density)
{
  ck_assert_double_eq_tol (grams_of (wood (1, 1000, 1.5875, 1.5875, 8 * lb_ft3)), 0.32, 0.005);
  ck_assert_double_eq_tol (grams_of (wood (1, 1000, 3.175, 3.175, 8 * lb_ft3)), 1.29, 0.005);
  ck_assert_double_eq_tol (grams_of (wood (1, 1000, 3.175, 3.175, 12 * lb_ft3)), 1.94, 0.005);
  ck_assert_double_eq_tol (grams_of (wood (1, 1000, 6.35, 6.35, 12 * lb_ft3)), 7.8, 0.05);
}
END_TEST

/* Abbott and von Doenhoff, Theory of Wing Sections, section 6.4: y_t = 5 t (0.2969 √x − 0.1260 x − 0.3516 x² + 0.2843 x³ − 0.1015 x⁴),
 * whose integral over both sides is 10 t (0.2969 · 2/3 − 0.1260/2 − 0.3516/3 + 0.2843/4 − 0.1015/5). */
START_TEST (the_side_of_a_rib_is_0_685_of_thickness_ratio_times_chord_squared)
{
  const double published = 10 * (0.2969 * 2 / 3 - 0.1260 / 2 - 0.3516 / 3 + 0.2843 / 4 - 0.1015 / 5);
  double summed = 0;

  for (int i = 0; i < 4000; i++)
    summed += 2 * section_half_thickness (0.1, (i + 0.5) / 4000) / 4000;
  ck_assert_double_eq_tol (rib_side_area (1, 0.1), 0.1 * published, 1e-5);
  ck_assert_double_eq_tol (rib_side_area (1, 0.1), summed, 0.007 * summed);       /* this shape is closed at its trailing edge */
  ck_assert_double_eq_tol (rib_side_area (0.122, 0.1), 0.122 * 0.122 * rib_side_area (1, 0.1), 1e-12);
}
END_TEST

START_TEST (a_line_goes_by_the_scale_first_then_by_pieces_then_by_area)
{
  MaterialLine line = wood (4, 100, 10, 1, 100);

  line.share = 0.5;
  ck_assert_double_eq_tol (grams_of (line), 0.2, 1e-12);
  line.area_density = 50 * gram;
  ck_assert_double_eq_tol (grams_of (line), 0.1, 1e-12);
  line.each = 3 * gram;
  ck_assert_double_eq_tol (grams_of (line), 6, 1e-12);
  line.weighed = 7.3 * gram;
  ck_assert_double_eq_tol (grams_of (line), 7.3, 1e-12);
}
END_TEST

START_TEST (a_line_without_a_size_weighs_nothing_that_is_known)
{
  MaterialLine lines[] = { pieces (5), wood (1, 100, NAN, 1, 100) };
  double mass = 42, masses[2];
  const MaterialSum sum = materials_add_up (lines, 2, 0, masses);

  ck_assert_int_eq (material_line_mass (&lines[1], &mass), CORE_OUT_OF_RANGE);
  ck_assert_double_eq (mass, 42);
  ck_assert_double_eq_tol (sum.mass, 5 * gram, 1e-15);
  ck_assert_double_nan (masses[1]);
}
END_TEST

START_TEST (glue_is_a_share_of_wood_and_pieces_and_of_no_covering)
{
  const MaterialLine lines[] = { glue (0.08), pieces (10), covering (1e5, 36, 1), wood (1, 1000, 10, 10, 150) };
  double masses[4];

  materials_add_up (lines, 4, 0, masses);
  ck_assert_double_eq_tol (masses[0] / gram, 0.08 * 25, 1e-9);
}
END_TEST

/* Common practice, no source: 18 % by grade, 8 % by weighed sheets, 0.3 g a line on the scale. */
START_TEST (lines_of_a_kind_stray_together_and_kinds_apart)
{
  MaterialLine lines[] = { pieces (10), pieces (30), pieces (20), pieces (1), pieces (1) };
  double masses[5];
  MaterialSum sum;

  lines[2].known = MATERIAL_BY_SHEET;
  lines[3].weighed = 4 * gram;
  lines[4].weighed = 5 * gram;
  sum = materials_add_up (lines, 5, 0, masses);
  ck_assert_double_eq_tol (sum.by_grade / gram, 0.18 * 40, 1e-9);
  ck_assert_double_eq_tol (sum.by_sheet / gram, 0.08 * 20, 1e-9);
  ck_assert_double_eq_tol (sum.by_scale / gram, 0.3 * sqrt (2), 1e-9);
  ck_assert_double_eq_tol (sum.sigma / gram, sqrt (7.2 * 7.2 + 1.6 * 1.6 + 0.18), 1e-9);
}
END_TEST

START_TEST (a_deviation_that_is_stated_takes_the_place_of_the_usual_one)
{
  MaterialLine lines[] = { pieces (10), pieces (10) };
  double masses[2];
  MaterialSum sum;

  lines[0].sigma = 0.05;
  lines[1].weighed = 10 * gram;
  lines[1].sigma = 1 * gram;
  sum = materials_add_up (lines, 2, 0, masses);
  ck_assert_double_eq_tol (sum.by_grade / gram, 0.5, 1e-9);
  ck_assert_double_eq_tol (sum.by_scale / gram, 1, 1e-9);
}
END_TEST

START_TEST (the_usual_excess_is_on_what_is_not_weighed_and_strays_with_it)
{
  MaterialLine lines[] = { pieces (10), pieces (10) };
  double masses[2];
  MaterialSum sum;

  lines[1].weighed = 10 * gram;
  sum = materials_add_up (lines, 2, 0.12, masses);
  ck_assert_double_eq_tol (sum.lines / gram, 20, 1e-9);
  ck_assert_double_eq_tol (sum.excess / gram, 1.2, 1e-9);
  ck_assert_double_eq_tol (sum.mass / gram, 21.2, 1e-9);
  ck_assert_double_eq_tol (sum.by_grade / gram, 0.18 * 11.2, 1e-9);
}
END_TEST

/* The airframe of a racer that never was, built from practice: 680 mm elliptical wing of 6.52 dm², sheet tail, body of 490 mm. What a line
 * comes to is geometry; which lines there are is common practice, no source. */
enum { WING_LINES = 9, TAIL_LINES = 3, BODY_LINES = 12, GEAR_LINES = 2, ALL_LINES = WING_LINES + TAIL_LINES + BODY_LINES + GEAR_LINES };

static void
lay_wing (MaterialLine lines[])
{
  lines[0] = sheet (16600, 1.5875, 8 * lb_ft3);                                     /* 23 ribs, 10 % thick, 1.66 dm² */
  lines[0].share = 0.95;
  lines[1] = wood (2, 680, 3.175, 3.175, 10.6 * lb_ft3);                            /* spars */
  lines[2] = wood (1, 720, 3.175, 3.175, 9.5 * lb_ft3);                             /* leading edge, round the ellipse */
  lines[3] = wood (1, 700, 12, 3, 9 * lb_ft3);                                      /* trailing edge, a triangle */
  lines[3].share = 0.5;
  lines[4] = pieces (1.1);                                                          /* tips */
  lines[5] = wood (2, 60, 105, 1.5875, 8 * lb_ft3);                                 /* centre sheet, both faces */
  lines[6] = pieces (2.4);                                                          /* servo plates, gussets */
  lines[7] = glue (0.08);
  lines[8] = covering (2 * 1.03 * 65200, 36, 1.05);
}

static void
lay_tail (MaterialLine lines[])
{
  lines[0] = sheet (16000, 1.5875, 7 * lb_ft3);
  lines[1] = covering (2 * 1.03 * 16000, 36, 1);
  lines[2] = pieces (1.0);
}

static void
lay_body (MaterialLine lines[])
{
  static const double things[] = { 3.4, 3.6, 3.5, 2.5, 1.5 };   /* nose sheet, firewall, floors, doublers, hatch */

  lines[0] = sheet (8000, 3.175, 8 * lb_ft3);                                       /* formers, holes left: 0.55 of what they fill */
  lines[0].count = 2.4;
  lines[0].share = 0.55;
  lines[1] = wood (2, 490, 8, 3.175, 8 * lb_ft3);                                   /* keels */
  lines[2] = wood (20, 490, 1.5875, 1.5875, 8.6 * lb_ft3);                          /* stringers */
  for (int i = 0; i < 5; i++)
    lines[3 + i] = pieces (things[i]);
  lines[8] = glue (0.098);
  lines[9] = covering (0.62 * 200 * 490, 36, 1.1);
  lines[10] = covering (9434, 530, 1);                                              /* cowl of 0.5 mm sheet */
  lines[11] = covering (6667, 375, 1);                                              /* canopy */
}

static void
lay_airframe (MaterialLine lines[])
{
  lay_wing (lines);
  lay_tail (lines + WING_LINES);
  lay_body (lines + WING_LINES + TAIL_LINES);
  lines[ALL_LINES - 2] = pieces (10);                                               /* gear and wheels */
  lines[ALL_LINES - 1] = pieces (6);                                                /* paint and markings */
}

START_TEST (each_line_of_the_worked_wing_weighs_what_the_trade_reckons)
{
  static const double expected[WING_LINES] = { 3.2, 2.3, 1.1, 1.8, 1.1, 2.6, 2.4, 1.2, 5.1 };
  MaterialLine lines[WING_LINES];
  double masses[WING_LINES];
  MaterialSum sum;

  lay_wing (lines);
  sum = materials_add_up (lines, WING_LINES, 0, masses);
  for (int i = 0; i < WING_LINES; i++)
    ck_assert_double_eq_tol (masses[i] / gram, expected[i], 0.06);
  ck_assert_double_eq_tol (sum.mass / gram, 21, 0.5);
  ck_assert_double_eq_tol (sum.mass / gram / 6.52, 3.2, 0.05);                      /* g/dm² */
}
END_TEST

/* 2.06 × 6.52 dm² × 1.05 × (75 − 36) g/m²: geometry. */
START_TEST (an_opaque_film_adds_5_and_a_half_grams_to_the_worked_wing)
{
  MaterialLine lines[WING_LINES];
  double masses[WING_LINES], light;

  lay_wing (lines);
  light = materials_add_up (lines, WING_LINES, 0, masses).mass;
  lines[8].area_density = 75 * gram;
  ck_assert_double_eq_tol ((materials_add_up (lines, WING_LINES, 0, masses).mass - light) / gram, 5.5, 0.05);
}
END_TEST

START_TEST (the_worked_tail_weighs_5_g_and_the_body_38)
{
  MaterialLine tail[TAIL_LINES], body[BODY_LINES];
  double masses[BODY_LINES];

  lay_tail (tail);
  lay_body (body);
  ck_assert_double_eq_tol (materials_add_up (tail, TAIL_LINES, 0, masses).mass / gram, 5, 0.3);
  ck_assert_double_eq_tol (masses[0] / gram, 2.8, 0.06);
  ck_assert_double_eq_tol (masses[1] / gram, 1.2, 0.06);
  ck_assert_double_eq_tol (materials_add_up (body, BODY_LINES, 0, masses).mass / gram, 38, 0.5);
  ck_assert_double_eq_tol (masses[0] / gram, 4.3, 0.06);
  ck_assert_double_eq_tol (masses[1] / gram, 3.2, 0.06);
  ck_assert_double_eq_tol (masses[2] / gram, 3.4, 0.06);
  ck_assert_double_eq_tol (masses[8] / gram, 2.5, 0.06);
  ck_assert_double_eq_tol (masses[9] / gram, 2.4, 0.06);
}
END_TEST

START_TEST (the_worked_airframe_weighs_80_g_within_18_percent_and_comes_out_at_90)
{
  MaterialLine lines[ALL_LINES];
  double masses[ALL_LINES];
  MaterialSum sum;

  lay_airframe (lines);
  sum = materials_add_up (lines, WING_LINES, 0, masses);
  sum.mass += materials_add_up (lines + WING_LINES, TAIL_LINES, 0, masses).mass;
  sum.mass += materials_add_up (lines + WING_LINES + TAIL_LINES, BODY_LINES, 0, masses).mass;
  sum.mass += materials_add_up (lines + ALL_LINES - GEAR_LINES, GEAR_LINES, 0, masses).mass;
  ck_assert_double_eq_tol (sum.mass / gram, 80, 1);
  lines[7].of_others = lines[WING_LINES + TAIL_LINES + 8].of_others = 0;            /* glue of each alone is reckoned above */
  sum = materials_add_up (lines, ALL_LINES, 0.12, masses);
  ck_assert_double_eq_tol (sum.sigma / sum.mass, 0.18, 1e-9);
  ck_assert_double_eq_tol (sum.mass / sum.lines, 1.12, 1e-9);
}
END_TEST

/* 8 % with weighed wood; what is on the scale itself is known to a few tenths of a gram. Common practice, no source. */
START_TEST (weighing_the_sheets_more_than_halves_the_spread_of_the_worked_airframe)
{
  MaterialLine lines[ALL_LINES];
  double masses[ALL_LINES];
  MaterialSum sum;

  lay_airframe (lines);
  for (int i = 0; i < ALL_LINES; i++)
    lines[i].known = MATERIAL_BY_SHEET;
  sum = materials_add_up (lines, ALL_LINES, 0, masses);
  ck_assert_double_eq_tol (sum.sigma / sum.mass, 0.08, 1e-9);
  for (int i = 0; i < ALL_LINES; i++)
    lines[i].weighed = masses[i];
  ck_assert_double_eq_tol (materials_add_up (lines, ALL_LINES, 0.12, masses).sigma / gram, 0.3 * sqrt (ALL_LINES), 1e-9);
}
END_TEST

int
main (void)
{
  TCase *tests = tcase_create ("materials");

  tcase_add_test (tests, a_sheet_weighs_what_its_density_says_and_tells_its_density);
  tcase_add_test (tests, a_sheet_without_a_size_or_a_mass_has_no_density);
  tcase_add_test (tests, sticks_weigh_by_their_section_and_density);
  tcase_add_test (tests, the_side_of_a_rib_is_0_685_of_thickness_ratio_times_chord_squared);
  tcase_add_test (tests, a_line_goes_by_the_scale_first_then_by_pieces_then_by_area);
  tcase_add_test (tests, a_line_without_a_size_weighs_nothing_that_is_known);
  tcase_add_test (tests, glue_is_a_share_of_wood_and_pieces_and_of_no_covering);
  tcase_add_test (tests, lines_of_a_kind_stray_together_and_kinds_apart);
  tcase_add_test (tests, a_deviation_that_is_stated_takes_the_place_of_the_usual_one);
  tcase_add_test (tests, the_usual_excess_is_on_what_is_not_weighed_and_strays_with_it);
  tcase_add_test (tests, each_line_of_the_worked_wing_weighs_what_the_trade_reckons);
  tcase_add_test (tests, an_opaque_film_adds_5_and_a_half_grams_to_the_worked_wing);
  tcase_add_test (tests, the_worked_tail_weighs_5_g_and_the_body_38);
  tcase_add_test (tests, the_worked_airframe_weighs_80_g_within_18_percent_and_comes_out_at_90);
  tcase_add_test (tests, weighing_the_sheets_more_than_halves_the_spread_of_the_worked_airframe);
  return run_suite (suite_create ("balance materials"), tests);
}
