#include <check.h>
#include <math.h>
#include "support/aeroplanes.h"
#include "support/figures-once.h"
#include "support/run-suite.h"
#include "support/shapes.h"

/* A rectangle of aspect ratio 6 and a tail behind it; 200 g of ballast. */
static Aeroplane *
model (SectionClass wing_section, SectionClass tail_section)
{
  Surface *wing = surface_new ("wing", ROLE_WING, rectangle (100, 660, 110));
  Surface *tail = surface_new ("tail", ROLE_TAILPLANE, rectangle (420, 240, 55));

  wing->section = wing_section;
  tail->section = tail_section;
  tail->z = 20;
  return with_part (with_piece (with_piece (aeroplane_new (), wing), tail), "ballast", 200, 130);
}

static Figures *
figures_taking (Aeroplane *takes)
{
  g_autoptr (Aeroplane) aeroplane = takes;

  return figures_once (aeroplane);
}

static Aeroplane *
with_propeller (Aeroplane *self, const char *id, double x, double diameter)
{
  Part *propeller = part_new (id, "propeller");

  propeller->mass = 6;
  propeller->x = x;
  propeller->width = diameter;
  return with_piece (self, propeller);
}

START_TEST (without_a_stated_section_lift_is_that_of_thin_plates)
{
  g_autoptr (Figures) figures = figures_taking (model (SECTION_UNSTATED, SECTION_UNSTATED));

  ck_assert_double_eq (figures->neutral_point.section_shift_mm, 0);
  ck_assert_double_eq (figures->surfaces[0].section_slope, 1);
  ck_assert_double_eq_tol (figures->surfaces[0].lift_slope_per_rad, 4.2146, 0.01 * 4.2146);    /* lifting-surface theory, aspect ratio 6 */
}
END_TEST

/* ρ V c / μ with the standard atmosphere's 1.225 kg/m³ and 1.78938e-5 Pa s (ISO 2533:1975). */
START_TEST (reynolds_numbers_are_of_each_mean_chord_at_the_stall)
{
  g_autoptr (Figures) figures = figures_taking (model (SECTION_UNSTATED, SECTION_UNSTATED));
  const double speed = figures->flight.stall_speed_m_s;

  ck_assert_double_eq_tol (figures->surfaces[0].reynolds, 1.225 * speed * 0.110 / 1.78938e-5, 10);
  ck_assert_double_eq_tol (figures->surfaces[1].reynolds, figures->surfaces[0].reynolds / 2, 10);
}
END_TEST

/* The tail flies at half the wing's Reynolds number and has the poorer slope; with a thick section on it alone its share is less. */
START_TEST (a_thick_section_on_a_small_tail_moves_the_neutral_point_forward)
{
  g_autoptr (Figures) plain = figures_taking (model (SECTION_UNSTATED, SECTION_UNSTATED));
  g_autoptr (Figures) thick = figures_taking (model (SECTION_UNSTATED, SECTION_SYMMETRICAL));

  ck_assert_double_lt (thick->surfaces[1].section_slope, thick->surfaces[0].section_slope);
  ck_assert_double_lt (thick->neutral_point.x_mm, plain->neutral_point.x_mm);
  ck_assert_double_eq_tol (thick->neutral_point.section_shift_mm, thick->neutral_point.lattice_x_mm - plain->neutral_point.lattice_x_mm, 1e-9);
  ck_assert_double_eq_tol (thick->neutral_point.x_mm, thick->neutral_point.lattice_x_mm + thick->neutral_point.body_shift_mm, 1e-9);
}
END_TEST

/* Downwash goes with the lift that makes it (Etkin and Reid, Dynamics of Flight, 3rd ed., appendix B: dε/dα is in proportion to the wing's
 * lift slope): a wing that lifts less leaves its tail more. */
START_TEST (a_wing_that_lifts_less_washes_its_tail_down_less)
{
  g_autoptr (Figures) plain = figures_taking (model (SECTION_UNSTATED, SECTION_UNSTATED));
  g_autoptr (Figures) thick = figures_taking (model (SECTION_SYMMETRICAL, SECTION_UNSTATED));
  const double kept = thick->surfaces[0].section_factor;

  ck_assert_double_lt (kept, 1);
  ck_assert_double_eq_tol (thick->neutral_point.downwash_gradient, kept * plain->neutral_point.downwash_gradient, 1e-12);
  ck_assert_double_gt (thick->surfaces[1].company_lift_per_rad, plain->surfaces[1].company_lift_per_rad);
  ck_assert_double_gt (thick->neutral_point.x_mm, plain->neutral_point.x_mm);
}
END_TEST

/* One propeller ahead and one behind: their shifts stand against each other, their doubts do not. */
START_TEST (two_propellers_are_twice_as_doubtful_though_their_shifts_cancel)
{
  Aeroplane *both = with_propeller (model (SECTION_UNSTATED, SECTION_UNSTATED), "ahead", 10, 178);

  both = with_propeller (both, "behind", 290, 178);
  g_autoptr (Figures) one = figures_taking (with_propeller (model (SECTION_UNSTATED, SECTION_UNSTATED), "ahead", 10, 178));
  g_autoptr (Figures) two = figures_taking (both);
  ck_assert_double_gt (two->neutral_point.propeller_to_mm, one->neutral_point.propeller_to_mm + 1);
  ck_assert_double_gt (two->neutral_point.sigma_mm, one->neutral_point.sigma_mm);
}
END_TEST

/* What the tail keeps of its lift, the aeroplane's lift and its moment about the datum, by the tail's section. */
typedef struct { double kept, lift, moment; } Lever;

static Lever
lever_with (double tail_slope, double own_slope)
{
  Aeroplane *made = model (SECTION_UNSTATED, SECTION_UNSTATED);
  const Piece *old = aeroplane_find (made, "tail");
  Surface *tail = (Surface *) piece_dup (old);

  tail->section_slope = tail_slope;
  g_autoptr (Figures) figures = figures_taking (aeroplane_with_replaced (made, old, &tail->piece));
  aeroplane_unref (made);
  return (Lever) { figures->surfaces[1].lift_slope_per_rad / own_slope, figures->motion.lift_slope_per_rad,
                   figures->motion.lift_slope_per_rad * figures->neutral_point.x_mm };
}

/* Forces on a lever: both the sum of lifts and the sum of moments go in proportion to what the tail keeps of its own. */
START_TEST (the_neutral_point_is_the_mean_of_the_surfaces_lift)
{
  const Lever full = lever_with (1, 1), half = lever_with (0.5, full.kept), three_quarters = lever_with (0.75, full.kept);
  const double along = (three_quarters.kept - half.kept) / (1 - half.kept);

  ck_assert_double_gt (half.kept, 0.5);
  ck_assert_double_lt (half.kept, 0.7);
  ck_assert_double_eq_tol (three_quarters.lift, half.lift + along * (full.lift - half.lift), 1e-9);
  ck_assert_double_eq_tol (three_quarters.moment, half.moment + along * (full.moment - half.moment), 1e-6);
}
END_TEST

START_TEST (a_greatest_lift_that_is_stated_is_taken)
{
  Aeroplane *made = model (SECTION_FLAT_BOTTOMED, SECTION_FLAT_PLATE);
  const Piece *old = aeroplane_find (made, "wing");
  Surface *wing = (Surface *) piece_dup (old);
  Aeroplane *stated;

  wing->lift_max = 1.2;
  stated = aeroplane_with_replaced (made, old, &wing->piece);
  g_autoptr (Figures) by_class = figures_taking (made);
  g_autoptr (Figures) given = figures_taking (stated);
  /* V = √(2 W / (ρ S C_Lmax)), any textbook */
  ck_assert_double_eq_tol (given->flight.stall_speed_m_s, sqrt (2 * 0.2 * 9.80665 / (1.225 * 0.66 * 0.11 * 1.2)), 1e-6);
  ck_assert_double_lt (given->flight.stall_speed_m_s, by_class->flight.stall_speed_m_s);
  ck_assert_double_lt (given->flight.stall_speed_sigma_m_s, by_class->flight.stall_speed_sigma_m_s);
}
END_TEST

/* Power usually moves the neutral point forward by 1 to 4 % of the chord: common practice, no source. */
START_TEST (a_propeller_ahead_shifts_the_neutral_point_forward_within_bounds)
{
  g_autoptr (Figures) without = figures_taking (model (SECTION_UNSTATED, SECTION_UNSTATED));
  g_autoptr (Figures) with = figures_taking (with_propeller (model (SECTION_UNSTATED, SECTION_UNSTATED), "propeller", 10, 178));
  const double mac = with->reference->planform.mac;

  ck_assert_double_lt (with->neutral_point.propeller_from_mm, -0.005 * mac);
  ck_assert_double_lt (with->neutral_point.propeller_to_mm, with->neutral_point.propeller_from_mm);
  ck_assert_double_gt (with->neutral_point.propeller_to_mm, -0.05 * mac);
  ck_assert_double_eq (with->neutral_point.x_mm, without->neutral_point.x_mm);
  ck_assert_double_gt (with->neutral_point.sigma_mm, without->neutral_point.sigma_mm);
  ck_assert_ptr_nonnull (note_with (with, "The propeller shifts the neutral point too"));
}
END_TEST

START_TEST (a_propeller_left_ashore_shifts_nothing)
{
  Aeroplane *made = with_propeller (model (SECTION_UNSTATED, SECTION_UNSTATED), "propeller", 10, 178);
  const Piece *old = aeroplane_find (made, "propeller");
  Part *ashore = (Part *) piece_dup (old);

  ashore->aboard = false;
  g_autoptr (Figures) figures = figures_taking (aeroplane_with_replaced (made, old, &ashore->piece));
  aeroplane_unref (made);
  ck_assert_double_eq (figures->neutral_point.propeller_to_mm, 0);
  ck_assert_ptr_null (note_with (figures, "The propeller shifts"));
}
END_TEST

static Body *
body_of (const char *id, const Point points[], size_t count)
{
  Body *body = body_new (id);

  body->outline = polygon_from (points, count);
  return body;
}

/* A spinner and a cowl ahead of the wing, a bare stick under and behind it: each is a body, and their shifts add up. */
START_TEST (spinner_cowl_and_stick_are_bodies_and_their_shifts_add_up)
{
  static const Point spinner[] = { { 0, 0 }, { 25, 15 }, { 25, 0 } }, cowl[] = { { 25, 20 }, { 90, 24 } },
                     stick[] = { { 90, 4 }, { 470, 4 } };
  const struct { const char *id; const Point *points; size_t count; } bodies[] = {
    { "spinner", spinner, 3 }, { "cowl", cowl, 2 }, { "stick", stick, 2 } };
  Aeroplane *all = model (SECTION_UNSTATED, SECTION_UNSTATED);
  double sum = 0;

  for (size_t i = 0; i < G_N_ELEMENTS (bodies); i++)
    {
      g_autoptr (Figures) one = figures_taking (with_piece (model (SECTION_UNSTATED, SECTION_UNSTATED),
                                                            body_of (bodies[i].id, bodies[i].points, bodies[i].count)));

      ck_assert (isfinite (one->neutral_point.body_shift_mm));
      sum += one->neutral_point.body_shift_mm;
      all = with_piece (all, body_of (bodies[i].id, bodies[i].points, bodies[i].count));
    }
  g_autoptr (Figures) together = figures_taking (all);
  ck_assert_double_eq_tol (together->neutral_point.body_shift_mm, sum, 1e-9);
  ck_assert_double_lt (sum, 0);
}
END_TEST

/* Wing and tail in one plane, as every aeroplane is drawn until a height is typed: the tail slides by hundredths of a millimetre, and no
 * single vortex of it may be met by the body's flow. Likewise with a little height, a foreplane, or a second wing. */
static const struct { const char *because; SurfaceRole role; double x, span, chord, z; } sliding[] = {
  { "a tailplane in the wing's plane", ROLE_TAILPLANE, 400, 240, 70, 0 },
  { "a tailplane a millimetre above it", ROLE_TAILPLANE, 400, 240, 70, 1 },
  { "a foreplane in its plane", ROLE_FOREPLANE, 10, 200, 60, 0 },
  { "a second wing in its plane", ROLE_WING, 300, 500, 100, 0 },
};

START_TEST (the_bodys_shift_does_not_jump_as_a_surface_slides_along_it)
{
  static const Point sides[] = { { 0, 0 }, { 60, 22 }, { 250, 20 }, { 480, 8 }, { 480, 0 } };
  FiguresCache *cache = figures_cache_new ();
  double before = NAN;

  for (double slid = 0; slid < 20; slid += 0.05)
    {
      Surface *surface = surface_new ("other", sliding[_i].role, rectangle (sliding[_i].x + slid, sliding[_i].span, sliding[_i].chord));
      Aeroplane *made = with_surface (aeroplane_new (), "wing", ROLE_WING, rectangle (100, 640, 120));

      surface->z = sliding[_i].z;
      g_autoptr (Aeroplane) aeroplane = with_piece (with_piece (made, surface), body_of ("body", sides, G_N_ELEMENTS (sides)));
      g_autoptr (Figures) figures = figures_of (cache, aeroplane);
      const double shift = figures->neutral_point.body_shift_mm;

      if (!isnan (before))
        ck_assert_msg (fabs (shift - before) < 0.05, "%s, slid by %g mm: from %g to %g", sliding[_i].because, slid, before, shift);
      before = shift;
    }
  figures_cache_free (cache);
}
END_TEST

/* A rectangle of aspect ratio 6 by itself: lifting-surface theory, near exact, -0.4402; span efficiency by lifting line 1 / 1.0483
 * (Glauert, Elements of Aerofoil and Airscrew Theory, chapter XI), a little more by lifting surface. */
START_TEST (damping_and_span_efficiency_are_the_lattices)
{
  Surface *wing = surface_new ("wing", ROLE_WING, rectangle (0, 660, 110));
  g_autoptr (Figures) figures = figures_taking (with_piece (aeroplane_new (), wing));

  ck_assert_double_eq_tol (figures->motion.roll_damping, -0.4402, 0.004);
  ck_assert_double_gt (figures->motion.span_efficiency, 1 / 1.0483);
  ck_assert_double_lt (figures->motion.span_efficiency, 1);
  ck_assert_double_lt (figures->motion.pitch_damping, 0);
  ck_assert_double_lt (figures->motion.first_stall_station_mm, 0.1 * 330);     /* a rectangle stalls at its root first */
}
END_TEST

/* Tapered wings stall further out, the more so the more they taper: any textbook. */
START_TEST (a_tapered_wing_stalls_further_out)
{
  Outline *outline = polygon_from ((Point[]) { { 0, 0 }, { 20, 400 }, { 70, 400 }, { 150, 0 } }, 4);
  g_autoptr (Figures) figures = figures_taking (with_piece (aeroplane_new (), surface_new ("wing", ROLE_WING, outline)));

  ck_assert_double_gt (figures->motion.first_stall_station_mm, 0.5 * 400);
  ck_assert_double_gt (figures->motion.first_stall_ratio, 1.05);
}
END_TEST

/* Schrenk, NACA TM 948 (1940): half the chord's own share and half an ellipse's; within 7 % of the root's for straight wings. */
START_TEST (the_spread_of_lift_is_schrenks)
{
  Surface *wing = surface_new ("wing", ROLE_WING, rectangle (0, 660, 110));
  g_autoptr (Figures) figures = figures_taking (with_piece (aeroplane_new (), wing));
  const GArray *loading = figures->motion.loading;

  ck_assert_uint_ge (loading->len, 20);
  for (guint i = 0; i < loading->len; i++)
    {
      const SpanLoading *at = &g_array_index (loading, SpanLoading, i);
      const double y = at->station_mm / 330;

      if (y < 0.8)
        ck_assert_double_eq_tol (at->lift_ratio, (1 + 4 / M_PI * sqrt (1 - y * y)) / 2, 0.07);
    }
}
END_TEST

int
main (void)
{
  TCase *tests = tcase_create ("sections");

  tcase_add_test (tests, without_a_stated_section_lift_is_that_of_thin_plates);
  tcase_add_test (tests, reynolds_numbers_are_of_each_mean_chord_at_the_stall);
  tcase_add_test (tests, a_thick_section_on_a_small_tail_moves_the_neutral_point_forward);
  tcase_add_test (tests, a_wing_that_lifts_less_washes_its_tail_down_less);
  tcase_add_test (tests, two_propellers_are_twice_as_doubtful_though_their_shifts_cancel);
  tcase_add_test (tests, the_neutral_point_is_the_mean_of_the_surfaces_lift);
  tcase_add_test (tests, a_greatest_lift_that_is_stated_is_taken);
  tcase_add_test (tests, a_propeller_ahead_shifts_the_neutral_point_forward_within_bounds);
  tcase_add_test (tests, a_propeller_left_ashore_shifts_nothing);
  tcase_add_test (tests, spinner_cowl_and_stick_are_bodies_and_their_shifts_add_up);
  tcase_add_loop_test (tests, the_bodys_shift_does_not_jump_as_a_surface_slides_along_it, 0, G_N_ELEMENTS (sliding));
  tcase_add_test (tests, damping_and_span_efficiency_are_the_lattices);
  tcase_add_test (tests, the_spread_of_lift_is_schrenks);
  tcase_add_test (tests, a_tapered_wing_stalls_further_out);
  return run_suite (suite_create ("sections"), tests);
}
