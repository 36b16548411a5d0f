#include <check.h>
#include "figures/arranging.h"
#include "support/aeroplanes.h"
#include "support/figures-once.h"
#include "support/run-suite.h"

/* What tells one offer from another, in words. The racer's battery is on a rail and a lead goes from it to the controller. */

static const Units metric = { LENGTH_MM, MASS_G };

/* Two arrangements of the racer's parts: in the one the battery stands so far off its place, mm, and its lead goes so much further; in the other
 * it is where it was. Of a way 40 mm longer, 45 mm more are needed: slack counts. */
static char *
told (ArrangePlace off, double lead)
{
  Lead *made = lead_new ("controller", "battery");
  made->length = 120;
  g_autoptr (Aeroplane) aeroplane = with_piece (racer (), &made->piece);
  g_autoptr (Figures) figures = figures_once (aeroplane);
  Arranging *arranging = NULL;
  ck_assert_int_eq (arranging_new (figures, NULL, &arranging), ARRANGING_CAN);
  ck_assert_uint_eq (arranging_movable (arranging), 1);
  ck_assert_uint_eq (arranging_lead_count (arranging), 1);
  const Part *battery = arranging_parts (arranging)[0];
  ArrangePlace there = { battery->x * 1e-3, battery->y * 1e-3, battery->z * 1e-3 };
  ArrangePlace here = { there.x + off.x * 1e-3, there.y + off.y * 1e-3, there.z + off.z * 1e-3 };
  double needs = 0.08, needs_other = needs + lead * 1e-3;
  const Arrangement one = { .places = &here, .needed = &needs_other }, other = { .places = &there, .needed = &needs };
  char *text = arranging_difference_text (arranging, &one, &other, metric);

  arranging_free (arranging);
  return text;
}

START_TEST (the_part_that_stands_furthest_from_where_the_other_has_it_is_named_with_its_way)
{
  const struct { ArrangePlace off; const char *words; } cases[] = {
    { { -12, 3, 0 }, "“Battery” 12 mm further forward" }, { { 9, 0, -2 }, "“Battery” 9 mm further aft" },
    { { 1, -7, 0 }, "“Battery” 7 mm further to port" }, { { 0, 7, 0 }, "“Battery” 7 mm further to starboard" },
    { { 0, 0, 4 }, "“Battery” 4 mm higher" }, { { 0, 0, -4 }, "“Battery” 4 mm lower" } };
  g_autofree char *text = told (cases[_i].off, 0);

  ck_assert_str_eq (text, cases[_i].words);
}
END_TEST

START_TEST (leads_are_told_together_and_where_nothing_is_another_that_is_said)
{
  g_autofree char *shorter = told ((ArrangePlace) { -12, 0, 0 }, -40), *longer = told ((ArrangePlace) { 0, 0, 0 }, 40);
  g_autofree char *same = told ((ArrangePlace) { 0.2, 0, 0 }, 0);

  ck_assert_str_eq (shorter, "“Battery” 12 mm further forward, leads 45 mm shorter in all");
  ck_assert_str_eq (longer, "leads 45 mm longer in all");
  ck_assert_str_eq (same, "hardly anything");
}
END_TEST

int
main (void)
{
  TCase *tests = tcase_create ("arranging difference");

  tcase_add_loop_test (tests, the_part_that_stands_furthest_from_where_the_other_has_it_is_named_with_its_way, 0, 6);
  tcase_add_test (tests, leads_are_told_together_and_where_nothing_is_another_that_is_said);
  return run_suite (suite_create ("arranging difference"), tests);
}
