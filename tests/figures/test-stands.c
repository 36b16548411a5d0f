#include <check.h>
#include <math.h>
#include <string.h>
#include "figures/part-stand.h"
#include "figures/report.h"
#include "support/aeroplanes.h"
#include "support/figures-once.h"
#include "support/run-suite.h"
#include "support/shapes.h"

/* Where parts stand from a former and above the bottom: common practice at the bench, no source. */

static const Units metric = { LENGTH_MM, MASS_G };

/* 200 mm long and 40 wide; its bottom rises from −20 to −10; formers at 20, 80 and 140, the last without a name. */
static Aeroplane *
with_formers (void)
{
  Body *body = body_new ("body");

  body->outline = polygon_from ((Point[]) { { 0, 0 }, { 0, 20 }, { 200, 20 }, { 200, 0 } }, 4);
  body->side_outline = polygon_from ((Point[]) { { 0, 20 }, { 200, 20 }, { 200, -10 }, { 0, -20 } }, 4);
  body->former_count = 3;
  body->formers = g_new (NamedPlace, 3);
  body->formers[0] = (NamedPlace) { g_strdup ("F1"), 20 };
  body->formers[1] = (NamedPlace) { g_strdup ("F2"), 80 };
  body->formers[2] = (NamedPlace) { NULL, 140 };
  return with_piece (aeroplane_new (), body);
}

static Aeroplane *
with_box (double x, double y, double z)
{
  Part *part = part_new ("pack", "battery");

  part->mass = 27;
  part->x = x, part->y = y, part->z = z;
  part->length = 40, part->width = 30, part->height = 12;
  return with_piece (with_formers (), part);
}

static bool
stand_in (const Aeroplane *aeroplane, PartStand *stand)
{
  g_autoptr (PartRule) rule = part_rule_new (aeroplane);

  return part_stand_of (rule, aeroplane_part_by_id (aeroplane, "pack"), stand);
}

START_TEST (both_edges_are_told_from_the_nearest_named_former_ahead_of_the_front_one)
{
  static const struct { double x; const char *former; double front, rear; } rows[] = {
    { 118, "F2", 18, 58 }, { 180, "F2", 80, 120 }, { 90, "F1", 50, 90 }, { 100, "F2", 0, 40 }, { 25, "F1", -15, 25 }, { -40, "F1", -80, -40 },
  };
  g_autoptr (Aeroplane) made = with_box (rows[_i].x, 0, 0);
  PartStand stand;

  ck_assert (stand_in (made, &stand));
  ck_assert_str_eq (stand.former->name, rows[_i].former);
  ck_assert_double_eq_tol (stand.front_mm, rows[_i].front, 1e-9);
  ck_assert_double_eq_tol (stand.rear_mm, rows[_i].rear, 1e-9);
}
END_TEST

/* The bottom by hand: −20 + x / 20; the underside 6 mm beneath the middle. */
START_TEST (the_underside_is_told_above_the_bottom_at_both_edges)
{
  g_autoptr (Aeroplane) made = with_box (120, 0, 2);
  PartStand stand;

  ck_assert (stand_in (made, &stand));
  ck_assert_double_eq_tol (stand.front_height_mm, -4 - (-20 + 100 / 20.), 0.05);
  ck_assert_double_eq_tol (stand.rear_height_mm, -4 - (-20 + 140 / 20.), 0.05);
}
END_TEST

START_TEST (what_hangs_out_of_the_body_has_no_tray_s_height)
{
  g_autoptr (Aeroplane) low = with_box (120, 0, -20), ahead = with_box (-40, 0, 0);
  PartStand stand;

  ck_assert (stand_in (low, &stand));
  ck_assert (isnan (stand.front_height_mm) && isnan (stand.rear_height_mm));
  ck_assert (stand_in (ahead, &stand));
  ck_assert (isnan (stand.front_height_mm));
}
END_TEST

START_TEST (a_turned_part_is_measured_as_it_is_turned)
{
  g_autoptr (Aeroplane) straight = with_box (118, 0, 0);
  Part *turned = (Part *) piece_dup (aeroplane_find (straight, "pack"));
  PartStand stand;

  turned->turn = 90;
  g_autoptr (Aeroplane) made = aeroplane_with_replaced (straight, aeroplane_find (straight, "pack"), &turned->piece);
  ck_assert (stand_in (made, &stand));
  ck_assert_double_eq_tol (stand.front_mm, 118 - 15 - 80, 1e-9);
}
END_TEST

START_TEST (what_is_in_the_wing_or_beside_the_body_is_not_measured_on_it)
{
  g_autoptr (Aeroplane) beside = with_box (118, 60, 0), within = with_box (118, 0, 0);
  Part *fixed = (Part *) piece_dup (aeroplane_find (within, "pack"));
  PartStand stand;

  fixed->of = g_strdup ("wing");
  g_autoptr (Aeroplane) in_wing = aeroplane_with_replaced (within, aeroplane_find (within, "pack"), &fixed->piece);
  ck_assert (!stand_in (beside, &stand));
  ck_assert (!stand_in (in_wing, &stand));
}
END_TEST

START_TEST (it_reads_as_one_says_it_at_the_bench)
{
  const NamedPlace former = { (char *) "F3", 100 };
  const PartStand stand = { &former, 18, -4, NAN, NAN };
  g_autofree char *behind = part_stand_text (&stand, stand.front_mm, metric), *ahead = part_stand_text (&stand, stand.rear_mm, metric);
  g_autofree char *at = part_stand_text (&stand, 0.2, metric), *inch = part_stand_text (&stand, 12.7, (Units) { LENGTH_INCH, MASS_G });

  ck_assert_str_eq (behind, "18\u00a0mm behind F3");
  ck_assert_str_eq (ahead, "4\u00a0mm ahead of F3");
  ck_assert_str_eq (at, "at F3");
  ck_assert_str_eq (inch, "1/2\u00a0in behind F3");
}
END_TEST

START_TEST (report_json_and_parts_list_tell_it_too)
{
  g_autoptr (Aeroplane) made = with_box (118, 0, 2);
  g_autoptr (Figures) figures = figures_once (made);
  g_autofree char *text = report_text (figures, metric), *json = report_json (figures), *csv = report_parts_csv (figures);

  ck_assert_ptr_nonnull (strstr (text, "18\u00a0mm behind F2"));
  ck_assert_ptr_nonnull (strstr (text, "58\u00a0mm behind F2"));
  ck_assert_ptr_nonnull (strstr (json, "\"former\": \"F2\""));
  ck_assert_ptr_nonnull (strstr (json, "\"front_behind_former_mm\": 18"));
  ck_assert_ptr_nonnull (strstr (csv, ",yes,F2,18,58,"));
}
END_TEST

int
main (void)
{
  TCase *tests = tcase_create ("stands");

  tcase_add_loop_test (tests, both_edges_are_told_from_the_nearest_named_former_ahead_of_the_front_one, 0, 6);
  tcase_add_test (tests, the_underside_is_told_above_the_bottom_at_both_edges);
  tcase_add_test (tests, what_hangs_out_of_the_body_has_no_tray_s_height);
  tcase_add_test (tests, a_turned_part_is_measured_as_it_is_turned);
  tcase_add_test (tests, what_is_in_the_wing_or_beside_the_body_is_not_measured_on_it);
  tcase_add_test (tests, it_reads_as_one_says_it_at_the_bench);
  tcase_add_test (tests, report_json_and_parts_list_tell_it_too);
  return run_suite (suite_create ("stands"), tests);
}
