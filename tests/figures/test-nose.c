#include <check.h>
#include <math.h>
#include <string.h>
#include "figures/nose-figures.h"
#include "figures/report.h"
#include "support/aeroplanes.h"
#include "support/figures-once.h"
#include "support/run-suite.h"
#include "support/shapes.h"

/* A motor behind its cowl's front. Gaps, shaft and mount are common practice, no source; all else is geometry by hand. */

static const Units metric = { LENGTH_MM, MASS_G };

static Aeroplane *
with_thing (Aeroplane *takes, const char *id, const char *class_name, double x, double length, double width)
{
  Part *part = part_new (id, class_name);

  part->mass = 10;
  part->x = x, part->length = length, part->width = width, part->height = 18;
  return with_piece (takes, part);
}

/* A blunt body 300 mm long, F1 at 20; a can of 18 mm with its front at `front`, its propeller's plane 15 mm ahead. */
static Aeroplane *
nosed (double front, double nose_half_width)
{
  Body *body = body_new ("body");

  body->outline = polygon_from ((Point[]) { { 0, 0 }, { 0, nose_half_width }, { 60, 25 }, { 300, 5 }, { 300, 0 } }, 5);
  body->former_count = 1;
  body->formers = g_new (NamedPlace, 1);
  body->formers[0] = (NamedPlace) { g_strdup ("F1"), 20 };
  Aeroplane *made = with_thing (with_piece (aeroplane_new (), body), "motor", "motor", front + 9, 18, 28);
  return with_thing (made, "propeller", "propeller", front - 15, 9, 178);
}

/* With a spinner whose rear face stands 11 mm ahead of the can. */
static Aeroplane *
spun (double front)
{
  return with_thing (nosed (front, 20), "spinner", "spinner", front - 26, 30, 30);
}

static NoseFigures
nose_in (const Aeroplane *aeroplane)
{
  NoseFigures nose;

  ck_assert (nose_figures_of (aeroplane, aeroplane_part_by_id (aeroplane, "motor"), &nose));
  return nose;
}

/* The spinner's rear face is 11 mm ahead of the can; 2 mm of gap put the can 9 mm behind the front. */
START_TEST (a_motor_is_too_far_out_sunk_or_right_by_the_gap_behind_its_spinner)
{
  static const struct { double can, gap, out; } rows[] = { { 3, 8, 6 }, { 9, 2, 0 }, { 13, -2, -4 }, { 9.5, 1.5, 0 }, { 8, 3, 0 }, { 7.9, 3.1, 1.1 } };
  g_autoptr (Aeroplane) made = spun (rows[_i].can);
  const NoseFigures nose = nose_in (made);

  ck_assert_double_eq_tol (nose.gap_mm, rows[_i].gap, 1e-9);
  ck_assert_double_eq_tol (nose.out_mm, rows[_i].out, 1e-9);
}
END_TEST

START_TEST (plane_and_firewall_are_told_from_the_front_and_from_a_former)
{
  g_autoptr (Aeroplane) made = spun (3);
  const NoseFigures nose = nose_in (made);

  ck_assert_double_eq_tol (nose.plane_ahead_mm, 12, 1e-9);
  ck_assert_double_eq_tol (nose.shaft_mm, 15, 1e-9);
  ck_assert_double_eq_tol (nose.firewall_mm, 3 + 18 + 3, 1e-9);
  ck_assert_double_eq_tol (nose.firewall_then_mm, 30, 1e-9);
  ck_assert_str_eq (nose.former->name, "F1");
  ck_assert_double_eq_tol (nose.behind_former_mm, 10, 1e-9);
}
END_TEST

START_TEST (a_cowl_among_the_parts_is_the_front_before_the_body_s_nose)
{
  g_autoptr (Aeroplane) made = with_thing (spun (3), "cowl", "cowl", 15, 50, 60);

  ck_assert_double_eq_tol (nose_in (made).front_x_mm, -10, 1e-9);
  ck_assert_double_eq_tol (nose_in (made).out_mm, -10 + 8 - 2, 1e-9);
}
END_TEST

/* The usual band is wider: nobody sees the gap behind a hub. */
START_TEST (without_a_spinner_the_hub_may_stand_off_further)
{
  g_autoptr (Aeroplane) near = nosed (3, 20), far = nosed (1, 20);

  ck_assert_double_eq_tol (nose_in (near).gap_mm, 15 - 4.5 - 3, 1e-9);
  ck_assert_double_eq (nose_in (near).out_mm, 0);
  ck_assert_double_eq_tol (nose_in (far).out_mm, 9.5 - 3, 1e-9);
}
END_TEST

/* A pointed nose is drawn with its spinner: where the cowl is cut nobody knows. */
START_TEST (of_a_nose_drawn_with_its_spinner_nothing_is_claimed)
{
  g_autoptr (Aeroplane) made = nosed (25, 2), with_cowl = with_thing (nosed (25, 2), "cowl", "cowl", 40, 50, 60);
  NoseFigures nose;

  ck_assert (!nose_figures_of (made, aeroplane_part_by_id (made, "motor"), &nose));
  ck_assert_double_eq_tol (nose_in (with_cowl).front_x_mm, 15, 1e-9);
}
END_TEST

/* Why nothing is said of a motor: each in the sentence that tells what to do. */
START_TEST (what_is_lacking_for_the_figures_is_told)
{
  g_autoptr (Aeroplane) blunt = nosed (3, 20), pointed = nosed (25, 2);
  g_autoptr (Aeroplane) bare = aeroplane_without (blunt, aeroplane_find (blunt, "propeller"));
  g_autoptr (Aeroplane) bodiless = aeroplane_without (blunt, aeroplane_find (blunt, "body"));
  g_autoptr (Aeroplane) cowled = with_thing (nosed (3, 20), "cowl", "cowl", 15, 0, 60);
  const struct { const Aeroplane *of; NoseLack lack; const char *says; } rows[] = {
    { blunt, NOSE_KNOWN, NULL },
    { bare, NOSE_NO_PROPELLER, "No propeller is on the shaft" },
    { bodiless, NOSE_NO_FRONT, "add a cowl" },
    { pointed, NOSE_POINTED, "move the propeller ahead of the nose" },
    { cowled, NOSE_COWL_SIZE, "has no length" },
  };

  for (size_t i = 0; i < G_N_ELEMENTS (rows); i++)
    {
      const Part *motor = aeroplane_part_by_id (rows[i].of, "motor");
      NoseFigures nose;
      const NoseLack lack = nose_look (rows[i].of, motor, &nose);
      g_autofree char *text = nose_lack_text (lack, motor);

      ck_assert_int_eq (lack, rows[i].lack);
      ck_assert (rows[i].says ? text && strstr (text, rows[i].says) : text == NULL);
    }
}
END_TEST

START_TEST (without_a_propeller_nothing_is_claimed)
{
  g_autoptr (Aeroplane) made = nosed (3, 20);
  g_autoptr (Aeroplane) bare = aeroplane_without (made, aeroplane_find (made, "propeller"));
  NoseFigures nose;

  ck_assert (!nose_figures_of (bare, aeroplane_part_by_id (bare, "motor"), &nose));
}
END_TEST

START_TEST (a_motor_that_pushes_is_left_alone)
{
  g_autoptr (Aeroplane) made = nosed (20, 20);
  Part *propeller = (Part *) piece_dup (aeroplane_find (made, "propeller"));
  NoseFigures nose;

  propeller->x = 60;
  g_autoptr (Aeroplane) pushing = aeroplane_with_replaced (made, aeroplane_find (made, "propeller"), &propeller->piece);
  ck_assert (!nose_figures_of (pushing, aeroplane_part_by_id (pushing, "motor"), &nose));
}
END_TEST

static Aeroplane *
angled (double can, double down, double right)
{
  Thrust *thrust = thrust_new ();

  thrust->x = can;
  thrust->down = down;
  thrust->right = right;
  return with_piece (spun (can), thrust);
}

/* The firewall belongs 30 mm behind the front; at 2° and at 3° that is 1.05 and 1.57 mm, wherever the motor stands now. */
START_TEST (the_shaft_s_foot_stands_off_by_the_angles_of_the_thrust_line)
{
  g_autoptr (Aeroplane) made = angled (3, 2, 3);

  g_autoptr (Aeroplane) settled = nose_settled (made, aeroplane_part_by_id (made, "motor"));
  const NoseFigures noses[] = { nose_in (made), nose_in (settled) };
  for (int i = 0; i < 2; i++)
    {
      ck_assert_double_eq_tol (noses[i].up_mm, 30 * tan (2 * G_PI / 180), 1e-9);
      ck_assert_double_eq_tol (noses[i].to_port_mm, 30 * tan (3 * G_PI / 180), 1e-9);
    }
}
END_TEST

START_TEST (the_motor_goes_into_its_cowl_with_all_that_is_bolted_to_it)
{
  g_autoptr (Aeroplane) made = angled (3, 2, 3);
  g_autoptr (Aeroplane) settled = nose_settled (made, aeroplane_part_by_id (made, "motor"));
  static const char *const moved[] = { "motor", "propeller", "spinner" };

  for (size_t i = 0; i < G_N_ELEMENTS (moved); i++)
    ck_assert_double_eq_tol (aeroplane_part_by_id (settled, moved[i])->x, aeroplane_part_by_id (made, moved[i])->x + 6, 1e-9);
  const Thrust *thrust = (const Thrust *) aeroplane_nth (settled, PIECE_THRUST, 0);
  ck_assert_double_eq_tol (thrust->x, 9, 1e-9);
  ck_assert (thrust->down == 2 && thrust->right == 3);
  ck_assert_double_eq (nose_in (settled).out_mm, 0);
  g_autoptr (Aeroplane) again = nose_settled (settled, aeroplane_part_by_id (settled, "motor"));
  ck_assert_ptr_eq (again, settled);
}
END_TEST

START_TEST (it_is_said_both_ways_in_words_findings_and_json)
{
  g_autoptr (Aeroplane) out = spun (3), sunk = spun (13);
  const NoseFigures far = nose_in (out), deep = nose_in (sunk);
  g_autofree char *first = nose_text (&far, metric), *second = nose_text (&deep, metric);
  g_autoptr (Figures) figures = figures_once (out), others = figures_once (sunk);
  g_autofree char *text = report_text (figures, metric), *json = report_json (figures), *other = report_text (others, metric);

  ck_assert_str_eq (first, "“Motor” is too far out of the cowl by 6\u00a0mm; its firewall belongs 30\u00a0mm behind the cowl's front, "
                           "10\u00a0mm behind F1.");
  ck_assert_ptr_nonnull (strstr (second, "is sunk into the cowl by 4\u00a0mm"));
  ck_assert_ptr_nonnull (strstr (text, "is too far out of the cowl: set"));
  ck_assert_ptr_nonnull (strstr (other, "is sunk into the cowl"));
  ck_assert_ptr_nonnull (strstr (json, "\"out_mm\": 6"));
}
END_TEST

int
main (void)
{
  TCase *tests = tcase_create ("nose");

  tcase_add_loop_test (tests, a_motor_is_too_far_out_sunk_or_right_by_the_gap_behind_its_spinner, 0, 6);
  tcase_add_test (tests, plane_and_firewall_are_told_from_the_front_and_from_a_former);
  tcase_add_test (tests, a_cowl_among_the_parts_is_the_front_before_the_body_s_nose);
  tcase_add_test (tests, without_a_spinner_the_hub_may_stand_off_further);
  tcase_add_test (tests, of_a_nose_drawn_with_its_spinner_nothing_is_claimed);
  tcase_add_test (tests, what_is_lacking_for_the_figures_is_told);
  tcase_add_test (tests, without_a_propeller_nothing_is_claimed);
  tcase_add_test (tests, a_motor_that_pushes_is_left_alone);
  tcase_add_test (tests, the_shaft_s_foot_stands_off_by_the_angles_of_the_thrust_line);
  tcase_add_test (tests, the_motor_goes_into_its_cowl_with_all_that_is_bolted_to_it);
  tcase_add_test (tests, it_is_said_both_ways_in_words_findings_and_json);
  return run_suite (suite_create ("nose"), tests);
}
