#include <check.h>
#include <math.h>
#include <string.h>
#include "figures/csv-text.h"
#include "figures/part-rating.h"
#include "figures/part-stand.h"
#include "figures/report.h"
#include "figures/station-list.h"
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

/* Hundredths: grams and millimetres are worth no more. */
START_TEST (figures_in_a_file_are_rounded_to_what_they_are_worth)
{
  static const double figures[] = { 36.0049, -0.001, 2.4567, -8.125, 1234567, NAN };
  g_autoptr (GString) row = g_string_new (NULL);

  csv_field (row, "row");
  for (size_t i = 0; i < G_N_ELEMENTS (figures); i++)
    csv_number (row, figures[i]);
  csv_share (row, 0.17876);
  ck_assert_str_eq (row->str, "row,36,0,2.46,-8.13,1234567,,0.1788");
}
END_TEST

/* Formers and ribs of the shapes above, by hand: 2 × 20 wide; from the bottom, −20 + x / 20, up to 20. Ribs out of their order. */
START_TEST (formers_and_ribs_are_listed_from_the_nose_and_from_the_centre_line)
{
  g_autoptr (Aeroplane) made = with_surface (with_formers (), "wing", ROLE_WING, rectangle (60, 400, 100));
  Surface *wing = (Surface *) piece_dup (aeroplane_find (made, "wing"));

  wing->rib_count = 2;
  wing->ribs = g_new (NamedPlace, 2);
  wing->ribs[0] = (NamedPlace) { g_strdup ("R2"), 90 };
  wing->ribs[1] = (NamedPlace) { g_strdup ("R1"), 30 };
  g_autoptr (Aeroplane) ribbed = aeroplane_with_replaced (made, aeroplane_find (made, "wing"), &wing->piece);
  g_autoptr (GString) csv = g_string_new (NULL);
  csv_stations (csv, ribbed);

  ck_assert_ptr_nonnull (strstr (csv->str, "\r\nformer,body,F1,20,,,40,39,,\r\nformer,body,F2,80,,60,40,36,,\r\nformer,body,,140,,60,40,33,,\r\n"));
  ck_assert_ptr_nonnull (strstr (csv->str, "\r\nrib,wing,R1,,30,,,,60,100\r\nrib,wing,R2,,90,60,,,60,100\r\n"));
}
END_TEST

static Part *
rated (const char *class_name)
{
  Part *part = part_new ("part", class_name);

  part->mass = 5;
  return part;
}

static char *
rating_of (Part *takes, Units units)
{
  char *text = part_rating_text (takes, units);

  piece_unref (&takes->piece);
  return text;
}

START_TEST (what_a_part_is_bought_by_reads_as_the_shop_has_it)
{
  Part *motor = rated ("motor"), *propeller = rated ("propeller"), *odd = rated ("propeller"), *pack = rated ("battery"), *controller = rated ("controller");

  motor->rpm_per_volt = 1900, motor->power = 70;
  propeller->width = 152, propeller->pitch = 101.6;
  odd->width = 140, odd->pitch = 95;
  pack->cells = 2, pack->capacity = 450;
  controller->current = 12;
  piece_ref (&propeller->piece);
  g_autofree char *turns = rating_of (motor, metric), *across = rating_of (propeller, metric), *between = rating_of (odd, metric);
  g_autofree char *sold = rating_of (propeller, (Units) { LENGTH_INCH, MASS_OZ }), *cells = rating_of (pack, metric);
  g_autofree char *amperes = rating_of (controller, metric), *servo = rating_of (rated ("servo"), metric), *none = rating_of (rated ("receiver"), metric);

  ck_assert_str_eq (turns, "1900\u00a0rpm per volt, up to 70\u00a0W");
  ck_assert_str_eq (across, "152 × 102\u00a0mm (6 × 4\u00a0in)");
  ck_assert_str_eq (between, "140 × 95\u00a0mm");
  ck_assert_str_eq (sold, "6 × 4\u00a0in");
  ck_assert_str_eq (cells, "2 cells, 450\u00a0mAh");
  ck_assert_str_eq (amperes, "12\u00a0A");
  ck_assert_str_eq (servo, "of about 5\u00a0g");
  ck_assert_ptr_null (none);
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
  tcase_add_test (tests, figures_in_a_file_are_rounded_to_what_they_are_worth);
  tcase_add_test (tests, formers_and_ribs_are_listed_from_the_nose_and_from_the_centre_line);
  tcase_add_test (tests, what_a_part_is_bought_by_reads_as_the_shop_has_it);
  return run_suite (suite_create ("stands"), tests);
}
