#include "explained.h"
#include "figures/contribution-sentence.h"
#include "figures/report.h"
#include "odd-aeroplanes.h"
#include "support/run-suite.h"

/* Every figure can be asked how it came about, and what it answers can be read. */

static bool
is_text (const char *text)
{
  return text && *text && g_utf8_validate (text, -1, NULL) && !strstr (text, "%s") && !strstr (text, "nan");
}

static bool
has_digit (const char *text)
{
  return strpbrk (text, "0123456789") != NULL;
}

static void
assert_complete (const Explanation *one)
{
  ck_assert (is_text (one->title) && is_text (one->formula) && is_text (one->result) && is_text (one->source) && is_text (one->limits));
  ck_assert_msg (one->input_count >= 1, "“%s” has no input", one->title);
  ck_assert_msg (isfinite (one->value) == has_digit (one->result) && !strstr (one->result, "–"), "“%s” gives %s", one->title, one->result);
  for (size_t i = 0; i < one->input_count; i++)
    {
      const ExplanationInput *input = &one->inputs[i];

      ck_assert_msg (is_text (input->label) && is_text (input->text) && !strstr (input->text, "–"), "“%s”: %s is %s", one->title,
                     input->label, input->text);
    }
}

START_TEST (every_figure_has_formula_inputs_source_and_limits)
{
  bool met[EXPLAIN_COUNT] = { false };
  g_autoptr (Figures) plain = figures_taking (example_racer ());
  g_autoptr (Figures) bound = figures_taking (racer_with_a_short_rail ());
  const Units units = _i ? imperial : metric;
  g_autoptr (GPtrArray) all = explanations_of (plain, units);
  g_autoptr (GPtrArray) more = explanations_of (bound, units), cowled = NULL;
  g_autoptr (Figures) in_cowl = figures_taking (racer_with_a_cowl ());

  for (guint i = 0; i < all->len; i++)
    assert_complete (g_ptr_array_index (all, i));
  cowled = explanations_of (in_cowl, units);
  g_ptr_array_extend_and_steal (all, g_steal_pointer (&more));
  g_ptr_array_extend_and_steal (all, g_steal_pointer (&cowled));
  for (guint i = 0; i < all->len; i++)
    {
      assert_complete (g_ptr_array_index (all, i));
      met[((Explanation *) g_ptr_array_index (all, i))->what] = true;
    }
  for (ExplainedFigure what = EXPLAIN_NONE + 1; what < EXPLAIN_COUNT; what++)
    ck_assert_msg (met[what], "figure %d is never explained", what);
}
END_TEST

/* Whatever says “±” says what that is owed to; what the panel's buttons open is the same. */
START_TEST (every_deviation_is_owed_to_something)
{
  static const ExplainedFigure without[] = { EXPLAIN_SECTION, EXPLAIN_GREATEST_LIFT };       /* read off a table, or typed */
  static const ExplainedFigure with[] = { EXPLAIN_BALANCE_HEIGHT, EXPLAIN_BALLAST, EXPLAIN_LATTICE, EXPLAIN_BODY_SHIFT, EXPLAIN_HANDBOOK,
                                          EXPLAIN_DOWNWASH, EXPLAIN_LIFT_SLOPE, EXPLAIN_TAIL_VOLUME, EXPLAIN_REYNOLDS, EXPLAIN_INERTIA_ROLL,
                                          EXPLAIN_INERTIA_PITCH, EXPLAIN_INERTIA_YAW, EXPLAIN_CUBIC_LOADING, EXPLAIN_STALL_SPEED,
                                          EXPLAIN_AEROPLANE_LIFT, EXPLAIN_ROLL_DAMPING, EXPLAIN_PITCH_DAMPING, EXPLAIN_SPAN_EFFICIENCY };
  g_autoptr (Figures) figures = figures_taking (racer_with_a_short_rail ());
  g_autoptr (GPtrArray) all = explanations_of (figures, metric);
  bool owed[EXPLAIN_COUNT] = { false };

  for (guint i = 0; i < all->len; i++)
    {
      const Explanation *one = g_ptr_array_index (all, i);

      ck_assert_msg (!strstr (one->result, "±") || one->owed || one->what == without[0] || one->what == without[1], "“%s”", one->title);
      owed[one->what] |= one->owed != NULL;
    }
  for (size_t i = 0; i < G_N_ELEMENTS (with); i++)
    ck_assert_msg (owed[with[i]], "figure %d is owed to nothing", with[i]);
}
END_TEST

/* Where a figure is not there its explanation is not either, and none speaks of what is missing. */
START_TEST (nothing_is_explained_that_cannot_be_had)
{
  g_autoptr (Aeroplane) aeroplane = odd_aeroplanes[_i].made ();
  g_autoptr (Figures) figures = figures_once (aeroplane);
  g_autoptr (GPtrArray) all = explanations_of (figures, metric);
  const struct { ExplainedFigure what; double figure; } pairs[] = {
    { EXPLAIN_STATIC_MARGIN, figures->balance.static_margin_percent }, { EXPLAIN_AIM, figures->balance.target_x_mm },
    { EXPLAIN_BALANCE_POINT, figures->mass.x_mm }, { EXPLAIN_NEUTRAL_POINT, figures->neutral_point.x_mm },
    { EXPLAIN_HANDBOOK, figures->neutral_point.handbook_x_mm }, { EXPLAIN_DOWNWASH, figures->neutral_point.downwash_gradient },
    { EXPLAIN_WING_LOADING, figures->flight.wing_loading_g_dm2 }, { EXPLAIN_INERTIA_YAW, figures->mass.inertia_yaw_kgm2 },
    { EXPLAIN_PITCH_DAMPING, figures->motion.pitch_damping },
  };

  for (guint i = 0; i < all->len; i++)
    assert_complete (g_ptr_array_index (all, i));
  for (size_t i = 0; i < G_N_ELEMENTS (pairs); i++)
    {
      g_autoptr (Explanation) one = explanation_new (figures, pairs[i].what, NULL, metric);

      ck_assert_msg ((one != NULL) == isfinite (pairs[i].figure), "%s: figure %d", odd_aeroplanes[_i].because, pairs[i].what);
    }
}
END_TEST

START_TEST (an_empty_aeroplane_has_nothing_to_explain)
{
  g_autoptr (Figures) figures = figures_taking (aeroplane_new ());
  g_autoptr (GPtrArray) all = explanations_of (figures, metric);

  ck_assert_uint_eq (all->len, 0);
}
END_TEST

START_TEST (who_is_not_there_is_not_explained)
{
  g_autoptr (Figures) figures = figures_taking (example_racer ());

  ck_assert_ptr_null (explanation_new (figures, EXPLAIN_NONE, NULL, metric));
  ck_assert_ptr_null (explanation_new (figures, EXPLAIN_AREA, "nobody", metric));
  ck_assert_ptr_null (explanation_new (figures, EXPLAIN_SOLUTION, "motor", metric));
  ck_assert_ptr_null (explanation_new (figures, EXPLAIN_MARK, "7", metric));
  ck_assert_ptr_null (explanation_new (figures, EXPLAIN_TAIL_VOLUME, "wing", metric));
}
END_TEST

/* Half a millimetre, a sixty-fourth of an inch, half a gram, a twentieth of an ounce: as the trade rounds. */
static void
assert_printed (const ExplanationInput *input, Units units)
{
  const double length = units.length == LENGTH_INCH ? 25.4 / 64 : 0.5, mass = units.mass == MASS_OZ ? 28.35 / 20 : 0.5;
  double read;

  if (g_str_has_suffix (input->text, "\u00a0mm") || g_str_has_suffix (input->text, "\u00a0in"))
    {
      if (units_parse_length (units, input->text, &read, NULL))       /* "27 g at 124 mm" is no single length */
        ck_assert_msg (fabs (read - input->value) <= length + 1e-9, "%s: %s is not %g", input->label, input->text, input->value);
    }
  else if (units_parse_mass (units, input->text, &read, NULL) && (g_str_has_suffix (input->text, "\u00a0g") || g_str_has_suffix (input->text, "oz")))
    ck_assert_msg (fabs (read - input->value) <= mass + 1e-9, "%s: %s is not %g", input->label, input->text, input->value);
}

START_TEST (what_is_printed_is_what_it_was_made_of)
{
  const Units units = _i ? imperial : metric;
  g_autoptr (Figures) figures = figures_taking (racer_with_a_short_rail ());
  g_autoptr (GPtrArray) all = explanations_of (figures, units);

  for (guint i = 0; i < all->len; i++)
    {
      const Explanation *one = g_ptr_array_index (all, i);

      for (size_t j = 0; j < one->input_count; j++)
        assert_printed (&one->inputs[j], units);
    }
}
END_TEST

START_TEST (inches_and_ounces_are_the_persons)
{
  g_autoptr (Figures) figures = figures_taking (example_racer ());
  g_autoptr (Explanation) margin = explanation_new (figures, EXPLAIN_STATIC_MARGIN, NULL, imperial);
  g_autoptr (Explanation) mass = explanation_new (figures, EXPLAIN_MASS, NULL, imperial);

  ck_assert (g_str_has_suffix (input (margin, "Neutral point")->text, "\u00a0in"));
  ck_assert_str_eq (mass->result, "5.31 ± 0.31\u00a0oz");
  assert_close (mass->value, figures->mass.total_g);
}
END_TEST

/* A structure of surface or body is called as people call it. */
START_TEST (what_a_deviation_is_owed_to_is_one_sentence)
{
  g_autoptr (Aeroplane) aeroplane = example_racer ();
  const Piece *body = aeroplane_find (aeroplane, "body-structure"), *tail = aeroplane_find (aeroplane, "tail");
  Contributions owed = { .count = 0 };

  ck_assert_ptr_null (contributions_sentence (&owed, aeroplane));
  contribution_add (&owed, CONTRIBUTION_MASS, body, 3);
  g_autofree char *alone = contributions_sentence (&owed, aeroplane);
  ck_assert_str_eq (alone, "Most of it is the mass of the body: weigh it.");
  contribution_add (&owed, CONTRIBUTION_DOWNWASH, tail, 2.6);
  g_autofree char *half = contributions_sentence (&owed, aeroplane);
  ck_assert_str_eq (half, "About half of it is the mass of the body: weigh it. Next comes the downwash at the tailplane.");
  contribution_add (&owed, CONTRIBUTION_PROPELLER, NULL, 9);
  g_autofree char *propeller = contributions_sentence (&owed, aeroplane);
  ck_assert_str_eq (propeller, "Most of it is the propeller.");
  contribution_add (&owed, CONTRIBUTION_PLACE, body, 8.5);
  contribution_add (&owed, CONTRIBUTION_REST, NULL, 8);
  g_autofree char *many = contributions_sentence (&owed, aeroplane);
  ck_assert_str_eq (many, "It is shared by many; the greatest shares are the propeller and the place of the body.");
}
END_TEST

START_TEST (joined_deviations_keep_the_greatest_of_both_and_all_of_the_variance)
{
  Contributions one = { .count = 0 }, other = { .count = 0 };

  for (int i = 0; i < 2 * CONTRIBUTIONS_KEPT; i++)
    contribution_add (i % 2 ? &one : &other, CONTRIBUTION_REST, NULL, i + 1);
  const Contributions all = contributions_joined (&one, &other);
  ck_assert_uint_eq (all.count, CONTRIBUTIONS_KEPT);
  ck_assert_double_eq (all.of[0].sigma, 16);
  ck_assert_double_eq (all.of[CONTRIBUTIONS_KEPT - 1].sigma, 9);
  ck_assert_double_eq (all.variance, 16 * 17 * 33 / 6.0);
}
END_TEST

START_TEST (the_report_of_explanations_fits_a_terminal_and_holds_them_all)
{
  g_autoptr (Figures) figures = figures_taking (example_racer ());
  g_autofree char *text = report_explanations (figures, metric);
  g_autoptr (GPtrArray) all = explanations_of (figures, metric);
  g_auto (GStrv) lines = g_strsplit (text, "\n", -1);

  for (char **line = lines; *line; line++)
    ck_assert_msg (g_utf8_strlen (*line, -1) <= 80, "too long: %s", *line);
  for (guint i = 0; i < all->len; i++)
    ck_assert_ptr_nonnull (strstr (text, ((Explanation *) g_ptr_array_index (all, i))->title));
}
END_TEST

/* From a finding to the figure that it speaks of. */
START_TEST (a_finding_knows_its_figure)
{
  g_autoptr (Figures) figures = figures_taking (racer_with_a_short_rail ());
  const Note *rail = note_with (figures, "ends too far aft"), *propeller = note_with (figures, "propeller shifts");
  const Note *plain = note_with (figures, "Roll rates");

  ck_assert_int_eq (rail->explained, EXPLAIN_SOLUTION);
  ck_assert_int_eq (propeller->explained, EXPLAIN_PROPELLER);
  ck_assert_int_eq (plain->explained, EXPLAIN_NONE);
}
END_TEST

int
main (void)
{
  TCase *tests = tcase_create ("explanation");

  tcase_add_test (tests, every_deviation_is_owed_to_something);
  tcase_add_loop_test (tests, every_figure_has_formula_inputs_source_and_limits, 0, 2);
  tcase_add_loop_test (tests, nothing_is_explained_that_cannot_be_had, 0, ODD_AEROPLANES);
  tcase_add_test (tests, an_empty_aeroplane_has_nothing_to_explain);
  tcase_add_test (tests, who_is_not_there_is_not_explained);
  tcase_add_loop_test (tests, what_is_printed_is_what_it_was_made_of, 0, 2);
  tcase_add_test (tests, inches_and_ounces_are_the_persons);
  tcase_add_test (tests, what_a_deviation_is_owed_to_is_one_sentence);
  tcase_add_test (tests, joined_deviations_keep_the_greatest_of_both_and_all_of_the_variance);
  tcase_add_test (tests, the_report_of_explanations_fits_a_terminal_and_holds_them_all);
  tcase_add_test (tests, a_finding_knows_its_figure);
  return run_suite (suite_create ("explanation"), tests);
}
