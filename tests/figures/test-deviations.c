#include "drawn.h"
#include "document/changes.h"
#include "figures/outline-tolerance.h"
#include "support/run-suite.h"

/* The deviations of the figures that follow from lift, masses and outlines, against many aeroplanes drawn at random. */

enum { MASS_DRAWS = 3000, LIFT_DRAWS = 700 };

static const unsigned sections_and_pressure = 1u << CONTRIBUTION_SECTION | 1u << CONTRIBUTION_PRESSURE;

/* Of `draws` drawn the deviation itself is known to 1 / √(2 draws): four times that, and what the first order leaves. */
static void
assert_drawn (const char *what, const Drawn *drawn, double stated)
{
  const double tolerance = 4 / sqrt (2.0 * drawn->count) + 0.015;

  ck_assert_msg (stated > 0 && fabs (drawn_sigma (drawn) - stated) < tolerance * stated, "%s: drawn %g, stated %g", what, drawn_sigma (drawn), stated);
}

/* As parts_alone(), off the centre line too. */
static Aeroplane *
parts_all_about (void)
{
  Aeroplane *made = parts_alone ();

  for (size_t i = 0; i < aeroplane_count (made, PIECE_PART); i++)
    {
      const Part *part = aeroplane_part (made, i);
      Part *off = (Part *) piece_dup (&part->piece);
      Aeroplane *next;

      off->y = (i % 2 ? 1 : -1) * 17.0 * i;
      off->z = 3.0 * (i % 5) - 6;
      next = aeroplane_with_replaced (made, &part->piece, &off->piece);
      aeroplane_unref (made);
      made = next;
    }
  return made;
}

START_TEST (inertias_and_the_balance_points_other_places_spread_as_stated)
{
  g_autoptr (Aeroplane) sound = parts_all_about ();
  g_autoptr (Figures) stated = figures_once (sound);
  const MassFigures *mass = &stated->mass;
  FiguresCache *cache = figures_cache_new ();
  Random random = { 77 };
  Drawn y = { 0 }, z = { 0 }, roll = { 0 }, pitch = { 0 }, yaw = { 0 }, cubic = { 0 };

  for (int i = 0; i < MASS_DRAWS; i++)
    {
      g_autoptr (Aeroplane) aeroplane = with_parts_drawn (sound, &random);
      g_autoptr (Figures) figures = figures_of (cache, aeroplane);

      drawn_add (&y, figures->mass.y_mm);
      drawn_add (&z, figures->mass.z_mm);
      drawn_add (&roll, figures->mass.inertia_roll_kgm2);
      drawn_add (&pitch, figures->mass.inertia_pitch_kgm2);
      drawn_add (&yaw, figures->mass.inertia_yaw_kgm2);
      drawn_add (&cubic, figures->flight.cube_loading_kg_m3);
    }
  figures_cache_free (cache);
  assert_drawn ("y", &y, mass->y_sigma_mm);
  assert_drawn ("z", &z, mass->z_sigma_mm);
  assert_drawn ("inertia in roll", &roll, mass->inertia_roll_sigma_kgm2);
  assert_drawn ("inertia in pitch", &pitch, mass->inertia_pitch_sigma_kgm2);
  assert_drawn ("inertia in yaw", &yaw, mass->inertia_yaw_sigma_kgm2);
  assert_drawn ("cubic loading", &cubic, stated->flight.cube_loading_sigma_kg_m3);
}
END_TEST

/* A place on the axis has no slope there: what is left is of the second order, √2 m σ² for each of two directions. */
START_TEST (a_mass_on_the_axis_still_has_a_deviation_of_inertia)
{
  Part *part = part_new ("only", NULL);

  part->mass = 100, part->mass_sigma = 0, part->x_sigma = 3;
  g_autoptr (Aeroplane) aeroplane = with_piece (with_surface (aeroplane_new (), "wing", ROLE_WING, rectangle (100, 640, 110)), part);
  g_autoptr (Figures) figures = figures_once (aeroplane);

  ck_assert_double_eq_tol (figures->mass.inertia_roll_sigma_kgm2, 0.1 * M_SQRT2 * 9e-6 * M_SQRT2, 1e-12);
}
END_TEST

/* Three parts with the wing's greatest lift typed. */
static Aeroplane *
stalling (double lift_max)
{
  Surface *wing = surface_new ("wing", ROLE_WING, rectangle (100, 640, 110));
  Aeroplane *made;

  wing->lift_max = lift_max;
  made = with_piece (aeroplane_new (), wing);
  for (int i = 0; i < 3; i++)
    {
      Part *part = part_new (((const char *[]) { "a", "b", "c" })[i], "other");

      part->mass = 50 + 10 * i, part->mass_sigma = 6, part->x_sigma = 2, part->x = 100 + 40 * i;
      made = with_piece (made, part);
    }
  return made;
}

START_TEST (stalling_speed_and_reynolds_number_spread_as_stated)
{
  g_autoptr (Aeroplane) sound = stalling (1);
  g_autoptr (Figures) stated = figures_once (sound);
  FiguresCache *cache = figures_cache_new ();
  Random random = { 4711 };
  Drawn speed = { 0 }, reynolds = { 0 };

  for (int i = 0; i < LIFT_DRAWS; i++)
    {
      g_autoptr (Aeroplane) lifting = stalling (1 + 0.05 * random_normal (&random));
      g_autoptr (Aeroplane) aeroplane = with_parts_drawn (lifting, &random);
      g_autoptr (Figures) figures = figures_of (cache, aeroplane);

      drawn_add (&speed, figures->flight.stall_speed_m_s);
      drawn_add (&reynolds, figures->surfaces[0].reynolds);
    }
  figures_cache_free (cache);
  assert_drawn ("stalling speed", &speed, stated->flight.stall_speed_sigma_m_s);
  assert_drawn ("Reynolds number", &reynolds, stated->surfaces[0].reynolds_sigma);
  ck_assert_double_eq (stated->surfaces[0].reynolds_sigma, stated->flight.reynolds_mac_sigma);
}
END_TEST

START_TEST (lift_slopes_and_dampings_spread_by_sections_and_pressure_as_stated)
{
  const double slope = 0.95, pressure = 0.9, sigma = 0.03;
  g_autoptr (Aeroplane) sound = with_part (tailed (slope, slope, pressure), "lead", 100, 140);
  g_autoptr (Figures) stated = figures_once (sound);
  FiguresCache *cache = figures_cache_new ();
  Random random = { 31 };
  Drawn lift = { 0 }, wing = { 0 }, roll = { 0 }, pitch = { 0 };

  for (int i = 0; i < LIFT_DRAWS; i++)
    {
      g_autoptr (Aeroplane) aeroplane = with_part (tailed (slope + sigma * random_normal (&random), slope + sigma * random_normal (&random),
                                                           pressure + sigma * random_normal (&random)), "lead", 100, 140);
      g_autoptr (Figures) figures = figures_of (cache, aeroplane);

      drawn_add (&lift, figures->motion.lift_slope_per_rad);
      drawn_add (&wing, figures->surfaces[0].lift_slope_per_rad);
      drawn_add (&roll, figures->motion.roll_damping);
      drawn_add (&pitch, figures->motion.pitch_damping);
    }
  figures_cache_free (cache);
  assert_drawn ("the aeroplane's lift slope", &lift, owed_to (&stated->neutral_point.lift_owed, sections_and_pressure));
  assert_drawn ("the wing's lift slope", &wing, stated->surfaces[0].lift_slope_sigma);
  assert_drawn ("damping in roll", &roll, owed_to (&stated->motion.roll_owed, sections_and_pressure));
  assert_drawn ("damping in pitch", &pitch, owed_to (&stated->motion.pitch_owed, sections_and_pressure));
  ck_assert_double_gt (stated->motion.roll_damping_sigma, owed_to (&stated->motion.roll_owed, sections_and_pressure));
}
END_TEST

/* A battery that slides and two parts that do not, under a wing with a tail. */
static Aeroplane *
sliding (double rail_from, double rail_to)
{
  Aeroplane *made = tailed (0.95, 0.95, 0.9);

  for (int i = 0; i < 3; i++)
    {
      Part *part = part_new (((const char *[]) { "battery", "motor", "servo" })[i], "other");

      part->mass = ((const double[]) { 60, 40, 30 })[i];
      part->x = ((const double[]) { 120, 60, 259 })[i];
      part->mass_sigma = 0.06 * part->mass;
      part->x_sigma = i ? 2 : 0;                 /* the battery's own place is what is asked for */
      part->has_rail = i == 0, part->rail_from = rail_from, part->rail_to = rail_to;
      made = with_piece (made, part);
    }
  return made;
}

/* What the neutral point is out by, aim and limits are out by. */
static Aeroplane *
with_aim_shifted (const Aeroplane *aeroplane, double percent)
{
  AeroplaneTraits traits = aeroplane_traits (aeroplane);

  traits.target.from += percent, traits.target.to += percent, traits.target.aim += percent;
  return aeroplane_with_traits (aeroplane, traits);
}

START_TEST (a_solutions_place_and_its_band_spread_as_stated)
{
  g_autoptr (Aeroplane) sound = sliding (-900, 900);
  g_autoptr (Figures) stated = figures_once (sound);
  const Solution *wanted = &stated->solutions[0];
  const double shift = 100 * stated->neutral_point.sigma_mm / stated->reference->planform.mac;
  FiguresCache *cache = figures_cache_new ();
  Random random = { 5 };
  Drawn x = { 0 }, from = { 0 }, to = { 0 };

  for (int i = 0; i < MASS_DRAWS; i++)
    {
      g_autoptr (Aeroplane) weighed = with_parts_drawn (sound, &random);
      g_autoptr (Aeroplane) aeroplane = with_aim_shifted (weighed, shift * random_normal (&random));
      g_autoptr (Figures) figures = figures_of (cache, aeroplane);

      drawn_add (&x, figures->solutions[0].x_mm);
      drawn_add (&from, figures->solutions[0].band_from_mm);
      drawn_add (&to, figures->solutions[0].band_to_mm);
    }
  figures_cache_free (cache);
  assert_drawn ("place", &x, wanted->x_sigma_mm);
  assert_drawn ("band from", &from, wanted->band_from_sigma_mm);
  assert_drawn ("band to", &to, wanted->band_to_sigma_mm);
}
END_TEST

START_TEST (ballast_spreads_as_stated)
{
  g_autoptr (Aeroplane) sound = sliding (200, 260);
  g_autoptr (Figures) stated = figures_once (sound);
  const Solution *wanted = &stated->solutions[0];
  const double shift = 100 * stated->neutral_point.sigma_mm / stated->reference->planform.mac;
  FiguresCache *cache = figures_cache_new ();
  Random random = { 6 };
  Drawn ballast = { 0 };

  ck_assert_double_gt (wanted->ballast_g, 3 * wanted->ballast_sigma_g);
  for (int i = 0; i < MASS_DRAWS; i++)
    {
      g_autoptr (Aeroplane) weighed = with_parts_drawn (sound, &random);
      g_autoptr (Aeroplane) aeroplane = with_aim_shifted (weighed, shift * random_normal (&random));
      g_autoptr (Figures) figures = figures_of (cache, aeroplane);

      drawn_add (&ballast, figures->solutions[0].ballast_g);
    }
  figures_cache_free (cache);
  assert_drawn ("ballast", &ballast, wanted->ballast_sigma_g);
}
END_TEST

/* An end that is the rail's own does not move with the masses. */
START_TEST (where_the_rail_ends_first_the_band_is_known)
{
  g_autoptr (Aeroplane) endless = sliding (-900, 900);
  g_autoptr (Figures) free = figures_once (endless);
  const double place = free->solutions[0].x_mm;
  g_autoptr (Aeroplane) aeroplane = sliding (-900, place);
  g_autoptr (Figures) figures = figures_once (aeroplane);
  const Solution *solution = &figures->solutions[0];

  ck_assert_double_eq_tol (solution->band_to_mm, place, 1e-9);
  ck_assert_double_eq (solution->band_to_sigma_mm, 0);
  ck_assert_double_eq (solution->band_from_sigma_mm, solution->x_sigma_mm);
  ck_assert_double_eq (solution->ballast_sigma_g, 0);
}
END_TEST

/* What no drawing of inputs can tell (downwash, body, propeller, methods, the rest) is drawn as it is stated. */
static double
drawn_shares (const Contributions *owed, unsigned without, Random *random)
{
  double sum = 0;

  for (size_t i = 0; i < owed->count; i++)
    if (!(without & 1u << owed->of[i].kind))
      sum += owed->of[i].sigma * random_normal (random);
  return sum;
}

static Aeroplane *
flying (double wing_slope, double tail_slope, double tail_pressure)
{
  Body *body = body_new ("body");
  Part *propeller = part_new ("propeller", "propeller"), *battery = part_new ("battery", "other");

  body->outline = polygon_from ((Point[]) { { 0, 0 }, { 60, 22 }, { 250, 20 }, { 480, 8 }, { 480, 0 } }, 5);
  propeller->mass = 8, propeller->mass_sigma = 1, propeller->x = 5, propeller->x_sigma = 1, propeller->width = 178;
  battery->mass = 110, battery->mass_sigma = 8, battery->x = 165, battery->x_sigma = 4;
  return with_piece (with_piece (with_piece (tailed (wing_slope, tail_slope, tail_pressure), body), propeller), battery);
}

START_TEST (the_margin_spreads_as_stated)
{
  const double slope = 0.95, pressure = 0.9, sigma = 0.03;
  g_autoptr (Aeroplane) sound = flying (slope, slope, pressure);
  g_autoptr (Figures) stated = figures_once (sound);
  const double mac = stated->reference->planform.mac;
  FiguresCache *cache = figures_cache_new ();
  Random random = { 99 };
  Drawn margin = { 0 };

  for (int i = 0; i < LIFT_DRAWS; i++)
    {
      g_autoptr (Aeroplane) lifting = flying (slope + sigma * random_normal (&random), slope + sigma * random_normal (&random),
                                              pressure + sigma * random_normal (&random));
      g_autoptr (Aeroplane) aeroplane = with_parts_drawn (lifting, &random);
      g_autoptr (Figures) figures = figures_of (cache, aeroplane);

      drawn_add (&margin, figures->balance.static_margin_percent
                          + 100 / mac * drawn_shares (&stated->neutral_point.owed, sections_and_pressure, &random));
    }
  figures_cache_free (cache);
  assert_drawn ("static margin", &margin, stated->balance.static_margin_sigma_percent);
}
END_TEST

static double
traced (double length, Random *random)
{
  return length * (1 + outline_tolerance * random_normal (random));
}

/* Five lengths, traced. */
START_TEST (tail_volume_spreads_as_outlines_do)
{
  g_autoptr (Aeroplane) sound = tailed (1, 1, 0.9);
  g_autoptr (Figures) stated = figures_once (sound);
  const double arm = figures_of_surface (stated, "tail")->tail_arm_mm;
  FiguresCache *cache = figures_cache_new ();
  Random random = { 12 };
  Drawn volume = { 0 }, efficiency = { 0 };

  for (int i = 0; i < LIFT_DRAWS; i++)
    {
      const double chord = traced (110, &random), tail_chord = traced (55, &random);
      const double tail_x = 100 + chord / 4 + traced (arm, &random) - tail_chord / 4;
      g_autoptr (Aeroplane) aeroplane = with_surface (with_surface (aeroplane_new (), "wing", ROLE_WING, rectangle (100, traced (640, &random), chord)),
                                                      "tail", ROLE_TAILPLANE, rectangle (tail_x, traced (240, &random), tail_chord));
      g_autoptr (Figures) figures = figures_of (cache, aeroplane);

      drawn_add (&volume, figures->tail_volume);
      drawn_add (&efficiency, figures->motion.span_efficiency);
    }
  figures_cache_free (cache);
  assert_drawn ("tail volume", &volume, stated->tail_volume_sigma);
  ck_assert_double_eq_tol (stated->tail_volume_sigma, figures_of_surface (stated, "tail")->volume_sigma, 1e-12);
  ck_assert_double_lt (drawn_sigma (&efficiency), stated->motion.span_efficiency_sigma);
}
END_TEST

/* The second opinion is never said to be better known than the first; a body that nobody drew is in doubt all the same. */
START_TEST (what_both_methods_part_by_is_the_handbooks_deviation)
{
  g_autoptr (Aeroplane) aeroplane = tailed (0.95, 0.95, 0.9);
  g_autoptr (Figures) figures = figures_once (aeroplane);
  const NeutralPointFigures *point = &figures->neutral_point;
  const double parting = point->x_mm - point->handbook_x_mm;

  ck_assert_double_eq_tol (pow (point->handbook_sigma_mm, 2), pow (point->sigma_mm, 2) + 0.75 * parting * parting, 1e-9);
  ck_assert_double_lt (point->lattice_sigma_mm, point->sigma_mm);
  ck_assert_double_eq (point->body_shift_mm, 0);
  ck_assert_double_eq_tol (point->body_shift_sigma_mm, 0.025 * figures->reference->planform.mac, 1e-9);
  ck_assert_double_ge (point->downwash_gradient_sigma, 0.04);
}
END_TEST

int
main (void)
{
  TCase *tests = tcase_create ("deviations");

  tcase_add_test (tests, inertias_and_the_balance_points_other_places_spread_as_stated);
  tcase_add_test (tests, a_mass_on_the_axis_still_has_a_deviation_of_inertia);
  tcase_add_test (tests, stalling_speed_and_reynolds_number_spread_as_stated);
  tcase_add_test (tests, lift_slopes_and_dampings_spread_by_sections_and_pressure_as_stated);
  tcase_add_test (tests, a_solutions_place_and_its_band_spread_as_stated);
  tcase_add_test (tests, ballast_spreads_as_stated);
  tcase_add_test (tests, where_the_rail_ends_first_the_band_is_known);
  tcase_add_test (tests, the_margin_spreads_as_stated);
  tcase_add_test (tests, tail_volume_spreads_as_outlines_do);
  tcase_add_test (tests, what_both_methods_part_by_is_the_handbooks_deviation);
  return run_suite (suite_create ("deviations"), tests);
}
