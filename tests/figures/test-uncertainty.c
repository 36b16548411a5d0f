#include "drawn.h"
#include "support/run-suite.h"

/* The deviations that the figures state, against many aeroplanes drawn at random with the same deviations of their inputs. */

enum { MASS_DRAWS = 4000, LIFT_DRAWS = 600 };

START_TEST (the_balance_points_deviation_is_that_of_many_aeroplanes)
{
  g_autoptr (Aeroplane) sound = parts_alone ();
  g_autoptr (Figures) stated = figures_once (sound);
  FiguresCache *cache = figures_cache_new ();
  Random random = { 2026 };
  Drawn x = { 0 }, total = { 0 }, loading = { 0 };

  for (int i = 0; i < MASS_DRAWS; i++)
    {
      g_autoptr (Aeroplane) aeroplane = with_parts_drawn (sound, &random);
      g_autoptr (Figures) figures = figures_of (cache, aeroplane);

      drawn_add (&x, figures->mass.x_mm);
      drawn_add (&total, figures->mass.total_g);
      drawn_add (&loading, figures->flight.wing_loading_g_dm2);
    }
  figures_cache_free (cache);
  ck_assert_double_eq_tol (drawn_sigma (&x), stated->mass.x_sigma_mm, 0.04 * stated->mass.x_sigma_mm);
  ck_assert_double_eq_tol (drawn_sigma (&total), stated->mass.total_sigma_g, 0.04 * stated->mass.total_sigma_g);
  ck_assert_double_eq_tol (drawn_sigma (&loading), stated->flight.wing_loading_sigma_g_dm2, 0.04 * stated->flight.wing_loading_sigma_g_dm2);
}
END_TEST

START_TEST (the_neutral_points_deviation_by_sections_and_pressure_is_that_of_many_aeroplanes)
{
  const double slope = 0.95, pressure = 0.9, sigma = 0.03;
  g_autoptr (Aeroplane) sound = tailed (slope, slope, pressure);
  g_autoptr (Figures) stated = figures_once (sound);
  const double wanted = owed_to (&stated->neutral_point.owed, 1u << CONTRIBUTION_SECTION | 1u << CONTRIBUTION_PRESSURE);
  FiguresCache *cache = figures_cache_new ();
  Random random = { 1126 };
  Drawn x = { 0 };

  for (int i = 0; i < LIFT_DRAWS; i++)
    {
      g_autoptr (Aeroplane) aeroplane = tailed (slope + sigma * random_normal (&random), slope + sigma * random_normal (&random),
                                                pressure + sigma * random_normal (&random));
      g_autoptr (Figures) figures = figures_of (cache, aeroplane);

      drawn_add (&x, figures->neutral_point.x_mm);
    }
  figures_cache_free (cache);
  ck_assert_double_eq_tol (drawn_sigma (&x), wanted, 0.10 * wanted);
}
END_TEST

/* Independent, as masses and lift are: the margin's is the root of both squares, in parts of the MAC. */
START_TEST (the_margins_deviation_is_that_of_both_points)
{
  g_autoptr (Aeroplane) aeroplane = racer ();
  g_autoptr (Figures) figures = figures_once (aeroplane);

  ck_assert_double_eq_tol (figures->balance.static_margin_sigma_percent * figures->reference->planform.mac / 100,
                           hypot (figures->neutral_point.sigma_mm, figures->mass.x_sigma_mm), 1e-9);
  ck_assert_double_eq_tol (figures->balance.marks[0].sigma_mm, figures->neutral_point.sigma_mm, 1e-12);
  ck_assert_double_eq_tol (sqrt (figures->mass.owed.variance), figures->mass.x_sigma_mm, 1e-9);
}
END_TEST

/* A place moves a balance point by m/M of itself, so the place wanted moves by M/m of the balance point. */
START_TEST (a_light_part_has_a_long_way_to_make_good)
{
  g_autoptr (Aeroplane) aeroplane = racer ();
  g_autoptr (Figures) figures = figures_once (aeroplane);
  const Solution *solution = &figures->solutions[0];
  const double margin = figures->balance.static_margin_sigma_percent * figures->reference->planform.mac / 100;

  ck_assert_double_eq_tol (solution->x_sigma_mm, margin * figures->mass.total_g / solution->part->mass, 1e-9);
}
END_TEST

/* V = √(2 W / ρ S C): half the relative deviations of mass and lift coefficient, which know nothing of each other. */
START_TEST (the_stalls_deviation_is_half_that_of_mass_and_lift)
{
  g_autoptr (Aeroplane) aeroplane = racer ();
  g_autoptr (Figures) figures = figures_once (aeroplane);
  const FlightFigures *flight = &figures->flight;

  ck_assert_double_eq_tol (flight->stall_speed_sigma_m_s / flight->stall_speed_m_s,
                           hypot (figures->mass.total_sigma_g / figures->mass.total_g, flight->lift_max_sigma / flight->lift_max) / 2, 1e-12);
}
END_TEST

static Aeroplane *
tailed_with_propeller (double wing_z)
{
  Surface *wing = surface_new ("wing", ROLE_WING, rectangle (100, 640, 110)), *tail = surface_new ("tail", ROLE_TAILPLANE, rectangle (420, 240, 55));
  Part *propeller = part_new ("propeller", "propeller");
  Body *body = body_new ("body");

  wing->z = wing_z;
  tail->z = 15;
  propeller->mass = 6;
  propeller->x = 5;
  propeller->width = 178;
  body->outline = polygon_from ((Point[]) { { 0, 0 }, { 60, 22 }, { 250, 20 }, { 480, 8 }, { 480, 0 } }, 5);
  return with_piece (with_piece (with_piece (with_piece (aeroplane_new (), wing), tail), body), propeller);
}

START_TEST (a_propellers_share_is_half_its_greatest_shift)
{
  g_autoptr (Aeroplane) aeroplane = tailed_with_propeller (20);
  g_autoptr (Figures) figures = figures_once (aeroplane);

  ck_assert_double_eq_tol (owed_to (&figures->neutral_point.owed, 1u << CONTRIBUTION_PROPELLER),
                           fabs (figures->neutral_point.propeller_to_mm) / 2, 1e-9);
}
END_TEST

/* A quarter of the shift; more where the wing stands above the body's axis, for then the two planes of the flow disagree. */
START_TEST (the_bodys_share_is_a_quarter_of_its_shift_and_more_under_a_high_wing)
{
  g_autoptr (Aeroplane) mid = tailed_with_propeller (0);
  g_autoptr (Aeroplane) high = tailed_with_propeller (45);
  g_autoptr (Figures) on_axis = figures_once (mid);
  g_autoptr (Figures) above = figures_once (high);
  const double shifts[] = { fabs (on_axis->neutral_point.body_shift_mm), fabs (above->neutral_point.body_shift_mm) };

  ck_assert_double_eq_tol (owed_to (&on_axis->neutral_point.owed, 1u << CONTRIBUTION_BODY), shifts[0] / 4, 1e-9);
  ck_assert_double_gt (owed_to (&above->neutral_point.owed, 1u << CONTRIBUTION_BODY), 1.02 * shifts[1] / 4);
}
END_TEST

/* What sections do is the lattice's affair: both methods are shifted alike, and what parts them stays. */
START_TEST (sections_do_not_part_the_two_methods)
{
  g_autoptr (Aeroplane) plain = tailed (1, 1, 0.9);
  g_autoptr (Aeroplane) thick = tailed (0.8, 0.7, 0.9);
  g_autoptr (Figures) one = figures_once (plain);
  g_autoptr (Figures) other = figures_once (thick);

  ck_assert_double_gt (fabs (other->neutral_point.section_shift_mm), 0.5);
  ck_assert_double_eq_tol (other->neutral_point.x_mm - other->neutral_point.handbook_x_mm,
                           one->neutral_point.x_mm - one->neutral_point.handbook_x_mm, 1e-9);
}
END_TEST

static double
sigma_of (Aeroplane *takes)
{
  g_autoptr (Aeroplane) aeroplane = takes;
  g_autoptr (Figures) figures = figures_once (aeroplane);

  return figures->neutral_point.sigma_mm;
}

START_TEST (what_is_measured_is_known_better)
{
  Surface *tail = surface_new ("tail", ROLE_TAILPLANE, rectangle (420, 240, 55));
  Aeroplane *guessed = with_piece (with_surface (aeroplane_new (), "wing", ROLE_WING, rectangle (100, 640, 110)), tail);

  ck_assert_double_lt (sigma_of (tailed (0.95, 0.95, 0.9)), sigma_of (guessed));
}
END_TEST

/* Whoever says what the sections are knows more than whoever does not. */
START_TEST (a_stated_section_is_known_better_than_none)
{
  Surface *wing = surface_new ("wing", ROLE_WING, rectangle (100, 640, 110)), *tail = surface_new ("tail", ROLE_TAILPLANE, rectangle (420, 240, 55));
  Aeroplane *unstated = with_surface (with_surface (aeroplane_new (), "wing", ROLE_WING, rectangle (100, 640, 110)), "tail", ROLE_TAILPLANE,
                                      rectangle (420, 240, 55));

  wing->section = SECTION_FLAT_BOTTOMED;
  tail->section = SECTION_FLAT_PLATE;
  ck_assert_double_lt (sigma_of (with_part (with_piece (with_piece (aeroplane_new (), wing), tail), "ballast", 160, 130)),
                       sigma_of (with_part (unstated, "ballast", 160, 130)));
}
END_TEST

/* The greatest is named first, and what fell out of the list still counts. */
START_TEST (the_greatest_shares_are_kept_in_order)
{
  g_autoptr (Aeroplane) aeroplane = parts_alone ();
  g_autoptr (Figures) figures = figures_once (aeroplane);
  const Contributions *owed = &figures->mass.owed;

  ck_assert_uint_eq (owed->count, CONTRIBUTIONS_KEPT);
  for (size_t i = 1; i < owed->count; i++)
    ck_assert_double_le (owed->of[i].sigma, owed->of[i - 1].sigma);
  ck_assert_double_lt (owed_to (owed, ~0u), sqrt (owed->variance));
  ck_assert_ptr_nonnull (owed->of[0].piece);
}
END_TEST

/* Who has measured says how well. */
START_TEST (a_typed_deviation_is_the_one_that_counts)
{
  Surface *wing = surface_new ("wing", ROLE_WING, rectangle (100, 640, 110)), *tail = surface_new ("tail", ROLE_TAILPLANE, rectangle (420, 240, 55));

  wing->section_slope = 0.9, wing->section_slope_sigma = 0.011;
  wing->lift_max = 1.1, wing->lift_max_sigma = 0.17;
  tail->section_slope_sigma = 0.2;                /* of the class's own slope */
  tail->pressure_ratio_sigma = 0.3;
  g_autoptr (Aeroplane) usual = with_part (with_piece (with_surface (aeroplane_new (), "wing", ROLE_WING, rectangle (100, 640, 110)),
                                                       surface_new ("tail", ROLE_TAILPLANE, rectangle (420, 240, 55))), "lead", 100, 130);
  g_autoptr (Aeroplane) typed = with_part (with_piece (with_piece (aeroplane_new (), wing), tail), "lead", 100, 130);
  g_autoptr (Figures) figures = figures_once (typed);
  g_autoptr (Figures) before = figures_once (usual);
  const unsigned pressure = 1u << CONTRIBUTION_PRESSURE;

  ck_assert_double_eq (figures->surfaces[0].section_slope_sigma, 0.011);
  ck_assert_double_eq (figures->surfaces[1].section_slope_sigma, 0.2);
  ck_assert_double_eq (figures->flight.lift_max_sigma, 0.17);
  ck_assert_double_gt (owed_to (&figures->neutral_point.owed, pressure), 5 * owed_to (&before->neutral_point.owed, pressure));
}
END_TEST

/* Polhamus' factor takes from the damping what it takes from the lift. */
START_TEST (dampings_count_the_sections)
{
  Surface *thin = surface_new ("wing", ROLE_WING, rectangle (100, 640, 110)), *thick = surface_new ("wing", ROLE_WING, rectangle (100, 640, 110));

  thick->section_slope = 0.8;
  g_autoptr (Aeroplane) plain = with_part (with_piece (aeroplane_new (), thin), "lead", 100, 140);
  g_autoptr (Aeroplane) counted = with_part (with_piece (aeroplane_new (), thick), "lead", 100, 140);
  g_autoptr (Figures) one = figures_once (plain);
  g_autoptr (Figures) other = figures_once (counted);
  const double left = other->surfaces[0].section_factor;

  ck_assert_double_lt (left, 0.9);
  ck_assert_double_eq_tol (other->motion.roll_damping, left * one->motion.roll_damping, 1e-12);
  ck_assert_double_eq_tol (other->motion.pitch_damping, left * one->motion.pitch_damping, 1e-12);
}
END_TEST

int
main (void)
{
  TCase *tests = tcase_create ("uncertainty");

  tcase_add_test (tests, the_balance_points_deviation_is_that_of_many_aeroplanes);
  tcase_add_test (tests, the_neutral_points_deviation_by_sections_and_pressure_is_that_of_many_aeroplanes);
  tcase_add_test (tests, the_margins_deviation_is_that_of_both_points);
  tcase_add_test (tests, a_light_part_has_a_long_way_to_make_good);
  tcase_add_test (tests, the_stalls_deviation_is_half_that_of_mass_and_lift);
  tcase_add_test (tests, a_propellers_share_is_half_its_greatest_shift);
  tcase_add_test (tests, the_bodys_share_is_a_quarter_of_its_shift_and_more_under_a_high_wing);
  tcase_add_test (tests, sections_do_not_part_the_two_methods);
  tcase_add_test (tests, what_is_measured_is_known_better);
  tcase_add_test (tests, a_stated_section_is_known_better_than_none);
  tcase_add_test (tests, the_greatest_shares_are_kept_in_order);
  tcase_add_test (tests, a_typed_deviation_is_the_one_that_counts);
  tcase_add_test (tests, dampings_count_the_sections);
  return run_suite (suite_create ("uncertainty"), tests);
}
