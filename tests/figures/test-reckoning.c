#include "explained.h"
#include "support/run-suite.h"

/* The inputs of an explanation are what its figure was made of: put into its formula they give it again. Definitions: Etkin and Reid,
 * Dynamics of Flight, 3rd ed., chapter 2; FAA-H-8083-1, Weight and Balance Handbook. */

START_TEST (the_margin_is_what_its_inputs_make)
{
  g_autoptr (Figures) figures = figures_taking (example_racer ());
  g_autoptr (Explanation) margin = explained (figures, EXPLAIN_STATIC_MARGIN, NULL);
  g_autoptr (Explanation) aim = explained (figures, EXPLAIN_AIM, NULL);
  g_autoptr (Explanation) mark = explained (figures, EXPLAIN_MARK, "0");
  const double neutral = number (margin, "Neutral point"), chord = number (margin, "Mean chord");

  assert_close (100 * (neutral - number (margin, "Balance point")) / chord, figures->balance.static_margin_percent);
  assert_close (margin->value, figures->balance.static_margin_percent);
  assert_close (number (aim, "Neutral point") - number (aim, "Wanted margin") / 100 * number (aim, "Mean chord"), aim->value);
  assert_close (neutral - number (aim, "Least margin") / 100 * chord, number (aim, "Aft limit"));
  assert_close (neutral - number (aim, "Most margin") / 100 * chord, number (aim, "Forward limit"));
  assert_close (number (mark, "Aim") - number (mark, "Leading edge"), figures->balance.marks[0].target_mm);
  ck_assert_str_eq (margin->inputs[0].text, "162\u00a0mm");
}
END_TEST

/* Σ m x / Σ m, and the sum itself. */
START_TEST (the_balance_point_is_what_its_masses_make)
{
  g_autoptr (Figures) figures = figures_taking (example_racer ());
  const ExplainedFigure places[] = { EXPLAIN_BALANCE_POINT, EXPLAIN_BALANCE_ACROSS, EXPLAIN_BALANCE_HEIGHT };
  const double wanted[] = { figures->mass.x_mm, figures->mass.y_mm, figures->mass.z_mm };

  for (size_t i = 0; i < G_N_ELEMENTS (places); i++)
    {
      g_autoptr (Explanation) one = explained (figures, places[i], NULL);
      double mass = 0, moment = 0;

      for (size_t j = 0; j < one->input_count; j++)
        {
          mass += one->inputs[j].value;
          moment += one->inputs[j].value * one->inputs[j].second;
        }
      assert_close (mass, figures->mass.total_g);
      assert_close (moment / mass, wanted[i]);
    }
}
END_TEST

static double
sum_of (const Figures *figures, ExplainedFigure what)
{
  g_autoptr (Explanation) one = explained (figures, what, NULL);
  double sum = 0;

  for (size_t i = 0; i < one->input_count; i++)
    sum += one->inputs[i].value;
  assert_close (sum, one->value);
  return sum;
}

START_TEST (what_is_a_sum_has_all_its_terms)
{
  g_autoptr (Figures) figures = figures_taking (example_racer ());

  assert_close (sum_of (figures, EXPLAIN_MASS), figures->mass.total_g);
  assert_close (sum_of (figures, EXPLAIN_INERTIA_ROLL), 1e4 * figures->mass.inertia_roll_kgm2);
  assert_close (sum_of (figures, EXPLAIN_INERTIA_PITCH), 1e4 * figures->mass.inertia_pitch_kgm2);
  assert_close (sum_of (figures, EXPLAIN_INERTIA_YAW), 1e4 * figures->mass.inertia_yaw_kgm2);
  assert_close (sum_of (figures, EXPLAIN_AEROPLANE_LIFT), figures->motion.lift_slope_per_rad);
}
END_TEST

START_TEST (a_deviation_is_the_root_of_the_sum_of_its_squares)
{
  g_autoptr (Figures) figures = figures_taking (example_racer ());
  const ExplainedFigure deviations[] = { EXPLAIN_BALANCE_DEVIATION, EXPLAIN_NEUTRAL_DEVIATION };
  const double wanted[] = { figures->mass.x_sigma_mm, figures->neutral_point.sigma_mm };

  for (size_t i = 0; i < G_N_ELEMENTS (deviations); i++)
    {
      g_autoptr (Explanation) one = explained (figures, deviations[i], NULL);
      double variance = 0;

      for (size_t j = 0; j < one->input_count; j++)
        variance += one->inputs[j].value * one->inputs[j].value;
      assert_close (sqrt (variance), wanted[i]);
    }
}
END_TEST

static double
place_by (const Explanation *one)
{
  return number (one, "Place now")
         + (number (one, "Aim") - number (one, "Balance point")) * number (one, "All-up mass") / number (one, "Mass of the part");
}

START_TEST (the_batterys_place_is_what_its_inputs_make)
{
  g_autoptr (Figures) figures = figures_taking (example_racer ());
  g_autoptr (Explanation) one = explained (figures, EXPLAIN_SOLUTION, "battery");

  assert_close (place_by (one), figures_solution (figures, "battery")->x_mm);
}
END_TEST

/* Left out it weighs nothing yet: everything aboard is the rest. */
START_TEST (the_place_of_a_part_left_out_is_what_its_inputs_make)
{
  g_autoptr (Aeroplane) aeroplane = example_racer ();
  const Part *battery = aeroplane_part_by_id (aeroplane, "battery");
  Part *ashore = (Part *) piece_dup (&battery->piece);

  ashore->aboard = false;
  g_autoptr (Aeroplane) without = aeroplane_with_replaced (aeroplane, &battery->piece, &ashore->piece);
  g_autoptr (Figures) figures = figures_once (without);
  g_autoptr (Explanation) one = explained (figures, EXPLAIN_SOLUTION, "battery");
  const double aim = number (one, "Aim");

  assert_close (aim + (aim - number (one, "Balance point")) * number (one, "Mass aboard") / number (one, "Mass of the part"), one->value);
  assert_close (one->value, figures_solution (figures, "battery")->x_mm);
}
END_TEST

START_TEST (the_ballast_is_what_its_inputs_make)
{
  g_autoptr (Figures) figures = figures_taking (racer_with_a_short_rail ());
  g_autoptr (Explanation) one = explained (figures, EXPLAIN_BALLAST, "battery");
  const double aim = number (one, "Aim"), moment = number (one, "All-up mass") * (number (one, "Balance point") - aim)
                     + number (one, "Mass of the part") * (number (one, "Nearer end") - number (one, "Place of the part"));

  assert_close (moment / (aim - number (one, "Place of the ballast")), one->value);
  ck_assert_double_gt (one->value, figures_solution (figures, "battery")->ballast_g);      /* at the very end there is no room */
}
END_TEST

/* The battery's rail taken away, and the battery put where it makes the aeroplane tail-heavy. */
START_TEST (ballast_with_nothing_to_slide_is_what_its_inputs_make)
{
  g_autoptr (Aeroplane) aeroplane = example_racer ();
  const Part *battery = aeroplane_part_by_id (aeroplane, "battery");
  Part *fixed = (Part *) piece_dup (&battery->piece);

  fixed->has_rail = false;
  fixed->x = 200;
  g_autoptr (Aeroplane) without = aeroplane_with_replaced (aeroplane, &battery->piece, &fixed->piece);
  g_autoptr (Figures) figures = figures_once (without);
  g_autoptr (Explanation) one = explained (figures, EXPLAIN_BALLAST, NULL);
  const double aim = number (one, "Aim");

  assert_close (number (one, "All-up mass") * (number (one, "Balance point") - aim) / (aim - number (one, "Place of the ballast")), one->value);
}
END_TEST

START_TEST (the_neutral_point_is_what_its_inputs_make)
{
  g_autoptr (Figures) figures = figures_taking (racer_with_a_short_rail ());
  g_autoptr (Explanation) point = explained (figures, EXPLAIN_NEUTRAL_POINT, NULL);
  g_autoptr (Explanation) lattice = explained (figures, EXPLAIN_LATTICE, NULL);
  g_autoptr (Explanation) sections = explained (figures, EXPLAIN_SECTION_SHIFT, NULL);
  const ExplanationInput *wing = input (lattice, "Lift κL of “wing”"), *tail = input (lattice, "Lift κL of “tail”");

  assert_close (number (point, "By the vortex lattice") + number (point, "Shift by the body"), figures->neutral_point.x_mm);
  assert_close ((wing->value * wing->second + tail->value * tail->second) / (wing->value + tail->value), figures->neutral_point.lattice_x_mm);
  assert_close (number (sections, "Neutral point with") - number (sections, "Neutral point of thin plates"),
                figures->neutral_point.section_shift_mm);
  ck_assert_double_lt (number (lattice, "κ of “wing”"), 0.95);
}
END_TEST

START_TEST (shifts_and_downwash_are_what_their_inputs_make)
{
  g_autoptr (Figures) figures = figures_taking (example_racer ());
  const NeutralPointFigures *point = &figures->neutral_point;
  g_autoptr (Explanation) body = explained (figures, EXPLAIN_BODY_SHIFT, NULL);
  g_autoptr (Explanation) propeller = explained (figures, EXPLAIN_PROPELLER, NULL);
  g_autoptr (Explanation) downwash = explained (figures, EXPLAIN_DOWNWASH, NULL);

  assert_close (-number (body, "Moment") / (number (body, "Area") * number (body, "Lift slope")), point->body_shift_mm);
  assert_close (number (propeller, "Its force across the shaft, at full power") * (number (propeller, "Place of") - number (propeller, "Neutral point"))
                * number (propeller, "Cross flow") / (number (propeller, "Area") * number (propeller, "Lift slope")), point->propeller_to_mm);
  assert_close (1 - number (downwash, "Lift of the tailplane") * number (downwash, "Area of the wing")
                    / (number (downwash, "Its lift alone") * number (downwash, "Area of the tailplane") * number (downwash, "Pressure ratio")),
                point->downwash_gradient);
}
END_TEST

START_TEST (a_surfaces_figures_are_what_their_inputs_make)
{
  g_autoptr (Figures) figures = figures_taking (racer_with_a_short_rail ());
  const SurfaceFigures *wing = figures->reference;
  g_autoptr (Explanation) area = explained (figures, EXPLAIN_AREA, "wing");
  g_autoptr (Explanation) aspect = explained (figures, EXPLAIN_ASPECT_RATIO, "wing");
  g_autoptr (Explanation) slope = explained (figures, EXPLAIN_LIFT_SLOPE, "wing");
  g_autoptr (Explanation) arm = explained (figures, EXPLAIN_TAIL_ARM, "tail");

  assert_close (number (area, "Span") * number (area, "Average chord"), wing->area_mm2);
  ck_assert_ptr_null (strstr (area->formula, "mean chord"));       /* which is MAC everywhere else */
  assert_close (pow (number (aspect, "Span"), 2) / number (aspect, "Area"), wing->planform.aspect_ratio);
  assert_close (number (slope, "Thin plate") * number (slope, "κ"), wing->lift_slope_per_rad);
  assert_close (number (arm, "Its own quarter") - number (arm, "Quarter MAC of the wing"), figures_of_surface (figures, "tail")->tail_arm_mm);
}
END_TEST

/* A fin's is on the span, a tailplane's on the mean chord. */
START_TEST (a_tail_volume_is_what_its_inputs_make)
{
  g_autoptr (Figures) figures = figures_taking (example_racer ());
  g_autoptr (Explanation) tail = explained (figures, EXPLAIN_TAIL_VOLUME, "tail");
  g_autoptr (Explanation) fin = explained (figures, EXPLAIN_TAIL_VOLUME, "fin");

  assert_close (number (tail, "Its area") * number (tail, "Its arm") / (number (tail, "Area of the wing") * number (tail, "Mean chord")),
                figures_of_surface (figures, "tail")->volume_coefficient);
  assert_close (number (fin, "Its area") * number (fin, "Its arm") / (number (fin, "Area of the wing") * number (fin, "Span of the wing")),
                figures_of_surface (figures, "fin")->volume_coefficient);
  ck_assert_str_ne (tail->formula, fin->formula);
}
END_TEST

START_TEST (loading_and_stall_are_what_their_inputs_make)
{
  g_autoptr (Figures) figures = figures_taking (example_racer ());
  const FlightFigures *flight = &figures->flight;
  g_autoptr (Explanation) loading = explained (figures, EXPLAIN_WING_LOADING, NULL);
  g_autoptr (Explanation) cubic = explained (figures, EXPLAIN_CUBIC_LOADING, NULL);
  g_autoptr (Explanation) stall = explained (figures, EXPLAIN_STALL_SPEED, NULL);
  g_autoptr (Explanation) reynolds = explained (figures, EXPLAIN_REYNOLDS, NULL);
  const double mass = number (loading, "All-up mass"), area = number (loading, "Area of all wings");

  assert_close (mass / (area * 1e-4), flight->wing_loading_g_dm2);
  assert_close (mass * 1e-3 / pow (area * 1e-6, 1.5), flight->cube_loading_kg_m3);
  assert_close (sqrt (2 * number (stall, "All-up mass") * 1e-3 * number (stall, "Gravity")
                      / (number (stall, "Density") * number (stall, "Area") * 1e-6 * number (stall, "Greatest lift"))), flight->stall_speed_m_s);
  assert_close (number (reynolds, "Density") * number (reynolds, "Stalling speed") * number (reynolds, "Mean chord") * 1e-3
                / (number (reynolds, "Viscosity") * 1e-6), flight->reynolds_mac);
  ck_assert_double_eq (number (cubic, "All-up mass"), mass);
}
END_TEST

START_TEST (a_greatest_lift_that_was_typed_is_said_to_be_typed)
{
  g_autoptr (Aeroplane) aeroplane = example_racer ();
  const Surface *wing = aeroplane_reference_wing (aeroplane);
  Surface *typed = (Surface *) piece_dup (&wing->piece);

  typed->lift_max = 1.1;
  g_autoptr (Figures) by_table = figures_once (aeroplane);
  g_autoptr (Figures) by_hand = figures_taking (aeroplane_with_replaced (aeroplane, &wing->piece, &typed->piece));
  g_autoptr (Explanation) tabled = explained (by_table, EXPLAIN_STALL_SPEED, NULL);
  g_autoptr (Explanation) given = explained (by_hand, EXPLAIN_STALL_SPEED, NULL);

  ck_assert_ptr_null (strstr (tabled->source, "as typed"));
  ck_assert_ptr_nonnull (strstr (given->source, "the greatest lift as typed"));
}
END_TEST

int
main (void)
{
  TCase *tests = tcase_create ("reckoning");

  tcase_add_test (tests, the_margin_is_what_its_inputs_make);
  tcase_add_test (tests, the_balance_point_is_what_its_masses_make);
  tcase_add_test (tests, what_is_a_sum_has_all_its_terms);
  tcase_add_test (tests, a_deviation_is_the_root_of_the_sum_of_its_squares);
  tcase_add_test (tests, the_batterys_place_is_what_its_inputs_make);
  tcase_add_test (tests, the_place_of_a_part_left_out_is_what_its_inputs_make);
  tcase_add_test (tests, the_ballast_is_what_its_inputs_make);
  tcase_add_test (tests, ballast_with_nothing_to_slide_is_what_its_inputs_make);
  tcase_add_test (tests, the_neutral_point_is_what_its_inputs_make);
  tcase_add_test (tests, shifts_and_downwash_are_what_their_inputs_make);
  tcase_add_test (tests, a_surfaces_figures_are_what_their_inputs_make);
  tcase_add_test (tests, a_tail_volume_is_what_its_inputs_make);
  tcase_add_test (tests, loading_and_stall_are_what_their_inputs_make);
  tcase_add_test (tests, a_greatest_lift_that_was_typed_is_said_to_be_typed);
  return run_suite (suite_create ("reckoning"), tests);
}
