#include "explained.h"
#include "figures/budget.h"
#include "figures/nose-figures.h"
#include "figures/part-stand.h"
#include "support/run-suite.h"

/* What is explained of budget, power, nose and trays: its inputs, put into its formula, give the figure again, whichever way it came about.
 * Definitions of the propeller's coefficients: T = C_T ρ n² D⁴, P = C_P ρ n³ D⁵; all else is common practice, no source. */

static Aeroplane *
with_airframe (double grams)
{
  g_autoptr (Aeroplane) aeroplane = example_racer ();
  AeroplaneTraits traits = aeroplane_traits (aeroplane);

  traits.airframe = grams;
  return aeroplane_with_traits (aeroplane, traits);
}

static Aeroplane *
without_structures (void)
{
  Aeroplane *made = example_racer ();

  while (aeroplane_count (made, PIECE_STRUCTURE) > 0)
    {
      Aeroplane *last = made;

      made = aeroplane_without (last, aeroplane_nth (last, PIECE_STRUCTURE, 0));
      aeroplane_unref (last);
    }
  return made;
}

static Explanation *
of (const Figures *figures, ExplainedFigure what)
{
  return explained (figures, what, NULL);
}

START_TEST (what_is_left_for_gear_is_wanted_less_airframe)
{
  g_autoptr (Figures) figures = figures_taking (example_racer ());
  g_autoptr (Explanation) wanted = of (figures, EXPLAIN_WANTED_MASS);
  g_autoptr (Explanation) left = of (figures, EXPLAIN_LEFT_FOR_GEAR);
  Budget budget;

  ck_assert (budget_of (figures, &budget));
  assert_close (wanted->inputs[1].value * number (wanted, "Area of all wings") / 1e4, budget.wanted_g);
  assert_close (number (left, "Wanted all-up mass") - number (left, "Bare airframe"), budget.left_g);
  assert_close (left->value, budget.left_g);
  ck_assert_ptr_nonnull (strstr (left->owed, "weigh it"));
}
END_TEST

START_TEST (airframe_and_gear_are_the_sums_of_what_is_named)
{
  g_autoptr (Figures) figures = figures_taking (example_racer ());
  const ExplainedFigure sums[] = { EXPLAIN_AIRFRAME, EXPLAIN_GEAR };
  double all = 0;

  for (size_t i = 0; i < G_N_ELEMENTS (sums); i++)
    {
      g_autoptr (Explanation) one = of (figures, sums[i]);
      double sum = 0;

      for (size_t k = 0; k < one->input_count; k++)
        sum += one->inputs[k].value;
      assert_close (sum, one->value);
      all += sum;
    }
  assert_close (all, figures->mass.total_g);
}
END_TEST

START_TEST (a_weighed_airframe_is_explained_by_the_scale_and_one_of_nothing_by_the_usual_share)
{
  g_autoptr (Figures) weighed = figures_taking (with_airframe (80));
  g_autoptr (Figures) bare = figures_taking (without_structures ());
  g_autoptr (Explanation) by_scale = of (weighed, EXPLAIN_AIRFRAME);
  g_autoptr (Explanation) usual = of (bare, EXPLAIN_AIRFRAME);

  assert_close (number (by_scale, "On the scale"), 80);
  ck_assert_str_eq (by_scale->result, "80 ± 0.5\u00a0g");
  ck_assert_ptr_nonnull (strstr (by_scale->owed, "scale"));
  assert_close (number (usual, "Wanted all-up mass") * number (usual, "Usual share"), usual->value);
  ck_assert_ptr_nonnull (usual->owed);
}
END_TEST

/* A centre of mass is Σ m x / Σ m: statics, FAA-H-8083-1. */
START_TEST (where_the_airframe_balances_is_the_centre_of_what_is_named)
{
  g_autoptr (Figures) figures = figures_taking (example_racer ());
  g_autoptr (Explanation) place = of (figures, EXPLAIN_AIRFRAME_PLACE);
  double mass = 0, moment = 0;
  Budget budget;

  ck_assert (budget_of (figures, &budget));
  for (size_t i = 0; i < place->input_count; i++)
    {
      mass += place->inputs[i].value;
      moment += place->inputs[i].value * place->inputs[i].second;
    }
  assert_close (moment / mass, place->value);
  assert_close (place->value, budget.airframe_x_mm);
  ck_assert_ptr_nonnull (strstr (place->owed, "shrinks"));
}
END_TEST

/* Two millimetres are what fingers beneath a wing tell: common practice, no source. */
START_TEST (where_the_airframe_was_found_to_balance_is_explained_by_the_hand_that_lifted_it)
{
  g_autoptr (Aeroplane) weighed = with_airframe (80);
  AeroplaneTraits traits = aeroplane_traits (weighed);

  g_autoptr (Figures) unfound = figures_taking (aeroplane_ref (weighed));
  g_autoptr (Explanation) before = of (unfound, EXPLAIN_AIRFRAME_PLACE);
  traits.airframe_balanced = true;
  traits.airframe_x = 204;
  g_autoptr (Figures) found = figures_taking (aeroplane_with_traits (weighed, traits));
  g_autoptr (Explanation) place = of (found, EXPLAIN_AIRFRAME_PLACE);

  assert_close (before->value, unfound->airframe.reckoned_x_mm);
  assert_close (number (before, "The same by its structures and parts"), before->value);
  ck_assert_str_eq (place->result, "204 ± 2\u00a0mm");
  assert_close (number (place, "Where it was found to balance"), 204);
  assert_close (number (place, "The same by its structures and parts"), before->value);
  ck_assert_ptr_nonnull (strstr (place->owed, "two millimetres"));
}
END_TEST

/* By a meter, by the volts, by the motor's class. */
static Aeroplane *
driven (PowerBy by)
{
  g_autoptr (Aeroplane) aeroplane = example_racer ();
  const Part *motor = aeroplane_part_by_id (aeroplane, "motor");
  Part *made = (Part *) piece_dup (&motor->piece);

  made->input = by == POWER_MEASURED ? 40 : 0;
  made->rpm_per_volt = by == POWER_BY_VOLTS ? 2000 : 0;
  made->power = 60;
  return aeroplane_with_replaced (aeroplane, &motor->piece, &made->piece);
}

START_TEST (revolutions_and_input_are_what_their_inputs_make)
{
  g_autoptr (Figures) figures = figures_taking (driven ((PowerBy) _i));
  g_autoptr (Explanation) turns = of (figures, EXPLAIN_REVOLUTIONS);
  g_autoptr (Explanation) input = of (figures, EXPLAIN_INPUT);
  const Explanation *driving = _i == POWER_BY_VOLTS ? input : turns;
  const double shaft = number (driving, "Power coefficient") * number (driving, "Density of air") * pow (figures->power.rpm / 60, 3)
                       * pow (number (driving, "Diameter") * 1e-3, 5);

  ck_assert_int_eq (figures->power.by, _i);
  assert_close (turns->value, figures->power.rpm);
  assert_close (input->value, figures->power.input_w);
  if (_i == POWER_BY_VOLTS)
    {
      assert_close (number (turns, "Share under load") * number (turns, "Turns per volt") * number (turns, "Volts of a cell")
                    * number (turns, "Cells"), turns->value);
      assert_close (shaft / number (input, "Efficiency"), input->value);
    }
  else
    assert_close (shaft / number (turns, "Efficiency"), number (turns, "Input of the motor"));
  ck_assert_ptr_nonnull (turns->owed);
  ck_assert_ptr_nonnull (input->owed);
}
END_TEST

START_TEST (thrust_pitch_speed_current_and_time_are_what_their_inputs_make)
{
  g_autoptr (Figures) figures = figures_taking (example_racer ());
  g_autoptr (Explanation) thrust = of (figures, EXPLAIN_THRUST);
  g_autoptr (Explanation) speed = of (figures, EXPLAIN_PITCH_SPEED);
  g_autoptr (Explanation) current = of (figures, EXPLAIN_CURRENT);
  g_autoptr (Explanation) minutes = of (figures, EXPLAIN_MINUTES);
  const PowerFigures *power = &figures->power;

  assert_close (1e3 * number (thrust, "Thrust coefficient") * number (thrust, "Density of air") * pow (number (thrust, "Turns a second"), 2)
                * pow (number (thrust, "Diameter") * 1e-3, 4) / number (thrust, "Gravity"), power->thrust_g);
  assert_close (number (speed, "Pitch") * 1e-3 * number (speed, "Turns a second"), power->pitch_speed_m_s);
  assert_close (number (current, "Input of all motors") / (number (current, "Volts of a cell") * number (current, "Cells")), power->current_a);
  assert_close (60e-3 * number (minutes, "Of it used") * number (minutes, "Capacity")
                / (number (minutes, "Of it at half throttle") * number (minutes, "Greatest current")), power->minutes);
}
END_TEST

START_TEST (the_nose_is_what_its_inputs_make)
{
  g_autoptr (Figures) figures = figures_taking (racer_with_a_cowl ());
  g_autoptr (Explanation) plane = explained (figures, EXPLAIN_PROPELLER_PLANE, "motor");
  g_autoptr (Explanation) gap = explained (figures, EXPLAIN_NOSE_GAP, "motor");
  g_autoptr (Explanation) wall = explained (figures, EXPLAIN_FIREWALL, "motor");
  g_autoptr (Explanation) offset = explained (figures, EXPLAIN_SHAFT_OFFSET, "motor");
  NoseFigures nose;

  ck_assert (nose_figures_of (figures->aeroplane, aeroplane_part_by_id (figures->aeroplane, "motor"), &nose));
  assert_close (number (plane, "Front of the cowl") - number (plane, "Middle of the propeller"), nose.plane_ahead_mm);
  assert_close (number (gap, "Front of the cowl") - number (gap, "Rear face"), nose.gap_mm);
  assert_close (number (wall, "Rear of the motor") - number (wall, "Front of the cowl") + number (wall, "Motor too far out"), nose.firewall_then_mm);
  assert_close (number (offset, "From the firewall") * tan (number (offset, "Thrust line to the right") * G_PI / 180), nose.to_port_mm);
  ck_assert_ptr_null (explanation_new (figures, EXPLAIN_FIREWALL, "battery", metric));
}
END_TEST

START_TEST (where_a_part_stands_is_what_its_inputs_make_and_owed_to_its_place)
{
  g_autoptr (Figures) figures = figures_taking (example_racer ());
  g_autoptr (Explanation) one = explained (figures, EXPLAIN_STAND, "battery");

  assert_close (number (one, "Middle of the part") - number (one, "Its length along the body") / 2 - number (one, "F3"), one->value);
  ck_assert (g_str_has_suffix (one->result, "behind F3"));
  ck_assert_str_eq (one->owed, "Most of it is the place of the battery: measure it.");
  ck_assert_ptr_null (explanation_new (figures, EXPLAIN_STAND, "nobody", metric));
}
END_TEST

int
main (void)
{
  TCase *tests = tcase_create ("gear");

  tcase_add_test (tests, what_is_left_for_gear_is_wanted_less_airframe);
  tcase_add_test (tests, airframe_and_gear_are_the_sums_of_what_is_named);
  tcase_add_test (tests, where_the_airframe_balances_is_the_centre_of_what_is_named);
  tcase_add_test (tests, where_the_airframe_was_found_to_balance_is_explained_by_the_hand_that_lifted_it);
  tcase_add_test (tests, a_weighed_airframe_is_explained_by_the_scale_and_one_of_nothing_by_the_usual_share);
  tcase_add_loop_test (tests, revolutions_and_input_are_what_their_inputs_make, POWER_MEASURED, POWER_USUAL + 1);
  tcase_add_test (tests, thrust_pitch_speed_current_and_time_are_what_their_inputs_make);
  tcase_add_test (tests, the_nose_is_what_its_inputs_make);
  tcase_add_test (tests, where_a_part_stands_is_what_its_inputs_make_and_owed_to_its_place);
  return run_suite (suite_create ("reckoning of gear"), tests);
}
