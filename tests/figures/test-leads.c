/* Which way leads run, how long they must be, and what a two-into-one lead is in figures and lists. Lengths by hand; slack, loop, what the
 * hand needs at the wing and extensions as sold: common practice, no source. */
#include <math.h>
#include <string.h>
#include "document/reader.h"
#include "figures/arranging.h"
#include "figures/lead-need.h"
#include "figures/lead-words.h"
#include "figures/report.h"
#include "figures/room-faults.h"
#include "support/figures-once.h"
#include "support/run-suite.h"

static const Units metric = { LENGTH_MM, MASS_G };

/* A wing of 100 mm chord at the root from 100 on, 50 at the tip from 125 on: half-way out, 40 % of the chord is at 142.5, at the root 140. */
static const char before[] =
  "<aeroplane xmlns=\"urn:trammel:aeroplane\" version=\"1\"><surface id=\"wing\" role=\"wing\"><outline><start x=\"100\" y=\"0\"/>"
  "<line x=\"125\" y=\"300\"/><line x=\"175\" y=\"300\"/><line x=\"200\" y=\"0\"/></outline></surface>"
  "<surface id=\"tail\" role=\"tailplane\"><outline><start x=\"400\" y=\"0\"/><line x=\"400\" y=\"100\"/><line x=\"450\" y=\"100\"/>"
  "<line x=\"450\" y=\"0\"/></outline></surface>"
  "<part id=\"left\" class=\"servo\" name=\"Left\" mass=\"5\" x=\"142.5\" y=\"-150\" of=\"wing\"/>"
  "<part id=\"right\" class=\"servo\" name=\"Right\" mass=\"5\" x=\"142.5\" y=\"150\" of=\"wing\"/>"
  "<part id=\"receiver\" class=\"receiver\" name=\"Receiver\" mass=\"5\" x=\"60\" length=\"20\" width=\"10\" height=\"5\"><rail from=\"20\" to=\"90\"/></part>"
  "<part id=\"battery\" class=\"battery\" mass=\"50\" x=\"120\" z=\"-15\" length=\"50\" width=\"20\" height=\"10\"/>";

static Aeroplane *
with (const char *lead)
{
  g_autofree char *text = g_strconcat (before, lead, "</aeroplane>", NULL);
  g_autoptr (GError) error = NULL;
  Aeroplane *read = reader_read_data (text, strlen (text), "text", NULL, &error);

  ck_assert_msg (read != NULL, "%s", error ? error->message : "no reason");
  return read;
}

static const char plain[] = "<lead from=\"left\" to=\"receiver\" length=\"200\"/>";
static const char joined[] = "<lead id=\"y\" from=\"left\" also=\"right\" to=\"receiver\" length=\"200\" also-length=\"150\" to-length=\"150\" mass=\"4.5\"/>";

static void
assert_place (const GArray *route, guint i, double x, double y)
{
  ck_assert_uint_lt (i, route->len);
  ck_assert_double_eq_tol (g_array_index (route, Point, i).x, x, 1e-9);
  ck_assert_double_eq_tol (g_array_index (route, Point, i).y, y, 1e-9);
}

START_TEST (from_a_wing_a_lead_runs_along_its_own_share_of_the_chord_to_the_centre_line_and_then_along_the_body)
{
  g_autoptr (Aeroplane) aeroplane = with (plain);
  const Lead *lead = aeroplane_lead (aeroplane, 0);
  g_autoptr (GArray) route = lead_route (aeroplane, lead, LEG_FROM);
  const LeadNeed need = lead_need_of (aeroplane, lead, LEG_FROM);

  ck_assert_uint_eq (route->len, 3);
  assert_place (route, 0, 142.5, -150);
  assert_place (route, 1, 140, 0);
  assert_place (route, 2, 60, 0);
  ck_assert (lead_runs_as_usual (aeroplane, lead, LEG_FROM));
  ck_assert_double_eq_tol (need.route, hypot (2.5, 150) + 80, 1e-9);
  ck_assert_double_eq_tol (need.needed, 1.12 * need.route + 50, 1e-9);
}
END_TEST

/* Geometry by hand. The wing's plane is 12 mm up at its root and 150·tan 4° more where the servo is; between the wing's root and the receiver,
 * 30 mm down 80 mm ahead, a bend half-way is half-way in height. */
START_TEST (from_the_side_a_lead_is_in_the_wings_plane_and_then_goes_evenly_to_the_height_of_its_end)
{
  g_autoptr (Aeroplane) flat = with ("<lead from=\"left\" to=\"receiver\"><via x=\"142\" y=\"-75\"/><via x=\"140\" y=\"0\"/><via x=\"100\" y=\"0\"/></lead>");
  Surface *wing = (Surface *) piece_dup (&aeroplane_surface_by_id (flat, "wing")->piece);
  Part *receiver = (Part *) piece_dup (&aeroplane_part_by_id (flat, "receiver")->piece);

  wing->z = 12;
  wing->dihedral = 4;
  receiver->z = -30;
  g_autoptr (Aeroplane) lifted = aeroplane_with_replaced (flat, &aeroplane_surface_by_id (flat, "wing")->piece, &wing->piece);
  g_autoptr (Aeroplane) aeroplane = aeroplane_with_replaced (lifted, &aeroplane_part_by_id (lifted, "receiver")->piece, &receiver->piece);
  g_autoptr (GArray) route = lead_route_from_side (aeroplane, aeroplane_lead (aeroplane, 0), LEG_FROM);
  ck_assert_uint_eq (route->len, 5);
  assert_place (route, 0, 142.5, 0);
  assert_place (route, 1, 142, 12 + 75 * tan (4 * G_PI / 180));
  assert_place (route, 2, 140, 12);
  assert_place (route, 4, 60, -30);
}
END_TEST

START_TEST (outside_the_wing_heights_go_evenly)
{
  g_autoptr (Aeroplane) aeroplane = with ("<lead from=\"battery\" to=\"receiver\"><via x=\"120\" y=\"15\"/><via x=\"60\" y=\"15\"/></lead>");
  g_autoptr (GArray) route = lead_route_from_side (aeroplane, aeroplane_lead (aeroplane, 0), LEG_FROM);

  assert_place (route, 0, 120, -15);
  assert_place (route, 1, 120, -15 + 15 * 15 / 90.0);
  assert_place (route, 2, 60, -15 + 15 * 75 / 90.0);
  assert_place (route, 3, 60, 0);
}
END_TEST

/* What is found once for a drawing is what is reckoned anew for a table. */
START_TEST (a_route_that_is_known_is_as_long_as_the_way)
{
  g_autoptr (Aeroplane) aeroplane = with (joined);
  const Lead *lead = aeroplane_lead (aeroplane, 0);

  for (int leg = 0; leg < LEG_COUNT; leg++)
    {
      g_autoptr (GArray) route = lead_route (aeroplane, lead, leg);

      ck_assert_double_eq_tol (lead_way_along (aeroplane, lead, leg, route), lead_way (aeroplane, lead, leg), 1e-9);
    }
}
END_TEST

START_TEST (where_places_are_given_it_runs_over_those)
{
  g_autoptr (Aeroplane) aeroplane = with ("<lead from=\"left\" to=\"receiver\"><via x=\"180\" y=\"-150\"/><via x=\"180\" y=\"0\"/></lead>");
  const Lead *lead = aeroplane_lead (aeroplane, 0);
  const LeadNeed need = lead_need_of (aeroplane, lead, LEG_FROM);

  ck_assert (!lead_runs_as_usual (aeroplane, lead, LEG_FROM));
  ck_assert_double_eq_tol (need.route, 37.5 + 150 + 120, 1e-9);
  ck_assert (isnan (need.left) && isnan (need.missing));
}
END_TEST

static const struct { const char *said; double slack, more; } slacks[] = {
  { "", 1.12, 50 }, { "slack=\"1.15\"", 1.15, 50 }, { "unplugs=\"no\"", 1.12, 10 }, { "allowance=\"30\"", 1.12, 40 },
  { "unplugs=\"yes\" allowance=\"30\" slack=\"1.1\"", 1.1, 40 },
};

START_TEST (slack_and_what_the_hand_needs_can_be_told)
{
  g_autofree char *lead = g_strdup_printf ("<lead from=\"left\" to=\"receiver\" length=\"400\" %s><via x=\"60\" y=\"-150\"/></lead>", slacks[_i].said);
  g_autoptr (Aeroplane) aeroplane = with (lead);
  const LeadNeed need = lead_need_of (aeroplane, aeroplane_lead (aeroplane, 0), LEG_FROM);

  ck_assert_double_eq_tol (need.needed, slacks[_i].slack * (82.5 + 150) + slacks[_i].more, 1e-9);
  ck_assert_double_eq_tol (need.left, 400 - need.needed, 1e-9);
  ck_assert_double_eq (need.missing, 0);
}
END_TEST

/* Each as sold: 100, 150, 200, 300, 450, 600 mm. */
START_TEST (the_shortest_extension_that_is_sold_makes_up_for_what_is_missing)
{
  const struct { double missing, extension; } cases[] = {
    { 0, 0 }, { 1, 100 }, { 100, 100 }, { 101, 150 }, { 151, 200 }, { 201, 300 }, { 301, 450 }, { 451, 600 }, { 601, NAN }, { NAN, NAN } };

  for (size_t i = 0; i < G_N_ELEMENTS (cases); i++)
    ck_assert (isnan (cases[i].extension) ? isnan (lead_extension_for (cases[i].missing))
                                          : lead_extension_for (cases[i].missing) == cases[i].extension);
}
END_TEST

/* The legs meet where the ways of both servos reach the centre line; only the last has the loop and what the hand needs. */
START_TEST (a_two_into_one_lead_has_three_legs_that_meet_at_its_joint)
{
  g_autoptr (Aeroplane) aeroplane = with (joined);
  const Lead *lead = aeroplane_lead_by_id (aeroplane, "y");
  const Point joint = lead_joint (aeroplane, lead);
  const double out = hypot (2.5, 150);

  ck_assert_int_eq (lead_leg_count (lead), 3);
  ck_assert_double_eq_tol (joint.x, 140, 1e-9);
  ck_assert_double_eq (joint.y, 0);
  ck_assert_double_eq_tol (lead_need_of (aeroplane, lead, LEG_FROM).needed, 1.12 * out, 1e-9);
  ck_assert_double_eq_tol (lead_need_of (aeroplane, lead, LEG_ALSO).missing, 1.12 * out - 150, 1e-9);
  ck_assert_double_eq_tol (lead_need_of (aeroplane, lead, LEG_TO).needed, 1.12 * 80 + 50, 1e-9);
}
END_TEST

/* 4.5 g more, at 140. */
START_TEST (it_weighs_where_its_joint_is_and_is_one_thing_in_every_list)
{
  g_autoptr (Aeroplane) aeroplane = with (joined), bare = with ("");
  g_autoptr (Figures) figures = figures_once (aeroplane), without = figures_once (bare);
  g_autofree char *json = report_json (figures), *csv = report_parts_csv (figures), *text = report_text (figures, (Units) { LENGTH_MM, MASS_G });

  ck_assert_double_eq_tol (figures->mass.total_g, without->mass.total_g + 4.5, 1e-9);
  ck_assert_double_eq_tol (figures->mass.total_g * figures->mass.x_mm, without->mass.total_g * without->mass.x_mm + 4.5 * 140, 1e-6);
  ck_assert_ptr_nonnull (strstr (json, "\"id\": \"y\",\n      \"name\": \"Two-into-one lead\",\n      \"mass_g\": 4.5"));
  ck_assert_ptr_nonnull (strstr (json, "\"also\": \"right\""));
  ck_assert_ptr_nonnull (strstr (csv, "y,Two-into-one lead,other,4.5,140,0,0,"));
  ck_assert_ptr_nonnull (strstr (text, "Two-into-one lead, to Right"));
}
END_TEST

START_TEST (with_one_of_its_ends_left_at_home_it_weighs_nothing)
{
  g_autoptr (Aeroplane) aeroplane = with (joined), bare = with ("");
  const Part *right = aeroplane_part_by_id (aeroplane, "right");
  Part *ashore = (Part *) piece_dup (&right->piece);
  g_autoptr (Aeroplane) left = NULL;
  g_autoptr (Figures) figures = NULL, without = figures_once (bare);

  ashore->aboard = false;
  left = aeroplane_with_replaced (aeroplane, &right->piece, &ashore->piece);
  figures = figures_once (left);
  ck_assert_double_eq_tol (figures->mass.total_g, without->mass.total_g - 5, 1e-9);
}
END_TEST

START_TEST (the_leg_that_does_not_reach_is_named_with_what_helps)
{
  g_autoptr (Aeroplane) aeroplane = with (joined);
  g_autoptr (Figures) figures = figures_once (aeroplane);
  size_t told = 0;

  for (guint i = 0; i < figures->notes->len; i++) {
    const Note *note = g_ptr_array_index (figures->notes, i);

    if (note->room == NULL || note->room->kind != ROOM_LEAD_SHORT)
      continue;
    told++;
    ck_assert_str_eq (note->text, "“Two-into-one lead” does not reach “Right” with slack: an extension makes up for it.");
    ck_assert_ptr_eq (note->piece, aeroplane_find (aeroplane, "y"));
    ck_assert_double_eq (note->room->extension_mm, 100);
    ck_assert_double_eq_tol (note->room->lacking_mm, 1.12 * hypot (2.5, 150) - 150, 1e-9);
  }
  ck_assert_uint_eq (told, 1);
}
END_TEST

/* The leg to the receiver is 150 long: it serves (150 − 50) / 1.12 mm from the joint. */
START_TEST (arranging_counts_the_leg_that_reaches_for_a_part_that_moves)
{
  g_autoptr (Aeroplane) aeroplane = with (joined);
  g_autoptr (Figures) figures = figures_once (aeroplane);
  g_autoptr (Arranging) arranging = NULL;
  ArrangingAnswer answer;

  ck_assert_int_eq (arranging_new (figures, NULL, &arranging), ARRANGING_CAN);
  ck_assert_uint_eq (arranging_lead_count (arranging), 1);
  ck_assert_double_eq (arranging_lead_length (arranging, 0), 150);
  arranging_find (arranging, 1, &answer);
  ck_assert_uint_eq (answer.found.count, 1);
  g_autoptr (Aeroplane) arranged = arranging_applied (arranging, &answer.found.found[0]);
  const LeadNeed need = lead_need_of (arranged, aeroplane_lead_by_id (arranged, "y"), LEG_TO);
  ck_assert_double_eq_tol (need.needed, arranging_lead_needed (arranging, &answer.found.found[0], 0), 0.05);
  ck_assert_double_le (need.needed, 150.05);
  ck_assert_double_ge (aeroplane_part_by_id (arranged, "receiver")->x, 140 - 100 / 1.12 - 0.05);
  arranging_answer_clear (&answer);
}
END_TEST

/* Servos and receiver slide, the joint goes with the servos; by turns the battery pulls forward and aft. */
static Aeroplane *
with_sliding_servos (int battery_x, int to_length)
{
  g_autofree char *lead = g_strdup_printf ("<lead id=\"y\" from=\"left\" also=\"right\" to=\"receiver\" length=\"190\" also-length=\"190\" "
                                           "to-length=\"%d\"/>", to_length);
  static const char *const sliding[] = { "left", "right" };
  Aeroplane *made = with (lead);

  for (size_t i = 0; i <= G_N_ELEMENTS (sliding); i++)
    {
      const Part *part = aeroplane_part_by_id (made, i < G_N_ELEMENTS (sliding) ? sliding[i] : "battery");
      Part *next = (Part *) piece_dup (&part->piece);
      Aeroplane *last = made;

      if (i == G_N_ELEMENTS (sliding))
        next->x = battery_x;
      next->has_rail = i < G_N_ELEMENTS (sliding);
      next->rail_from = 130;
      next->rail_to = 160;
      made = aeroplane_with_replaced (last, &part->piece, &next->piece);
      aeroplane_unref (last);
    }
  return made;
}

static const struct { int battery_x, to_length; } pulls[] = {
  { 90, 110 }, { 120, 110 }, { 125, 110 }, { 130, 110 }, { 150, 110 }, { 100, 120 }, { 124, 120 }, { 128, 120 }, { 124, 105 } };

START_TEST (an_offer_tells_the_lengths_that_the_leads_have_once_it_is_used_and_they_reach)
{
  g_autoptr (Aeroplane) aeroplane = with_sliding_servos (pulls[_i].battery_x, pulls[_i].to_length);
  g_autoptr (Figures) figures = figures_once (aeroplane);
  g_autoptr (Arranging) arranging = NULL;
  ArrangingAnswer answer;

  ck_assert_int_eq (arranging_new (figures, NULL, &arranging), ARRANGING_CAN);
  ck_assert_uint_eq (arranging_lead_count (arranging), 3);
  arranging_find (arranging, 3, &answer);
  ck_assert_uint_ge (answer.found.count, 1);
  for (size_t k = 0; k < answer.found.count; k++)
    {
      g_autoptr (Aeroplane) used = arranging_applied (arranging, &answer.found.found[k]);
      const Lead *lead = aeroplane_lead_by_id (used, "y");

      for (int leg = 0; leg < LEG_COUNT; leg++)
        {
          const LeadNeed need = lead_need_of (used, lead, leg);

          ck_assert_double_eq_tol (need.needed, arranging_lead_needed (arranging, &answer.found.found[k], (size_t) leg), 1e-6);
          ck_assert_double_le (need.missing, 0.5);
        }
    }
  arranging_answer_clear (&answer);
}
END_TEST

/* Foremost, at 130, the servos stand (130 − 112.5) / 75 along the chord half-way out, so the joint stands at 100 + 100 × 17.5 / 75 = 123.3;
 * the receiver reaches to 90: 1.12 × 33.3 + 10 + 40 = 87.3. That is no proof, but it is why. */
START_TEST (where_no_way_lets_a_lead_reach_it_is_named_with_what_it_needs_where_it_came_nearest)
{
  g_autoptr (Aeroplane) aeroplane = with_sliding_servos (124, 80 + 5 * _i);
  g_autoptr (Figures) figures = figures_once (aeroplane);
  g_autoptr (Arranging) arranging = NULL;
  ArrangingAnswer answer;

  ck_assert_int_eq (arranging_new (figures, NULL, &arranging), ARRANGING_CAN);
  arranging_find (arranging, 3, &answer);
  if (_i < 2)
    {
      g_autofree char *all = arranging_text (arranging, &answer, metric), *had = units_length (metric, 80 + 5 * _i);
      g_autofree char *told = g_strdup_printf ("It is %s long; where it came nearest it needs 87", had);

      ck_assert_int_eq (answer.found.status, ARRANGE_NOT_FOUND);
      ck_assert_uint_eq (answer.limit_count, 1);
      ck_assert_msg (strstr (all, "None was found whose leads reach.") && strstr (all, told), "%s", all);
    }
  else
    ck_assert_uint_ge (answer.found.count, 1);
  arranging_answer_clear (&answer);
}
END_TEST

int
main (void)
{
  TCase *tests = tcase_create ("leads");

  tcase_add_test (tests, from_a_wing_a_lead_runs_along_its_own_share_of_the_chord_to_the_centre_line_and_then_along_the_body);
  tcase_add_test (tests, from_the_side_a_lead_is_in_the_wings_plane_and_then_goes_evenly_to_the_height_of_its_end);
  tcase_add_test (tests, outside_the_wing_heights_go_evenly);
  tcase_add_test (tests, a_route_that_is_known_is_as_long_as_the_way);
  tcase_add_test (tests, where_places_are_given_it_runs_over_those);
  tcase_add_loop_test (tests, slack_and_what_the_hand_needs_can_be_told, 0, (int) G_N_ELEMENTS (slacks));
  tcase_add_test (tests, the_shortest_extension_that_is_sold_makes_up_for_what_is_missing);
  tcase_add_test (tests, a_two_into_one_lead_has_three_legs_that_meet_at_its_joint);
  tcase_add_test (tests, it_weighs_where_its_joint_is_and_is_one_thing_in_every_list);
  tcase_add_test (tests, with_one_of_its_ends_left_at_home_it_weighs_nothing);
  tcase_add_test (tests, the_leg_that_does_not_reach_is_named_with_what_helps);
  tcase_add_test (tests, arranging_counts_the_leg_that_reaches_for_a_part_that_moves);
  tcase_add_loop_test (tests, an_offer_tells_the_lengths_that_the_leads_have_once_it_is_used_and_they_reach, 0, (int) G_N_ELEMENTS (pulls));
  tcase_add_loop_test (tests, where_no_way_lets_a_lead_reach_it_is_named_with_what_it_needs_where_it_came_nearest, 0, 3);
  return run_suite (suite_create ("figures leads"), tests);
}
