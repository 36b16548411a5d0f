#include <stdlib.h>
#include "aero/influence.h"
#include "aero/linear.h"
#include "support/run-suite.h"
#include "wings.h"

/* "Near-exact" below are lifting-surface figures on which two unrelated discretisations agree (cosine points in both
 * directions; horseshoes with Richardson extrapolation). Tolerances: 0.3 % on lift slope and 0.3 % of the chord on the
 * aerodynamic centre for refined panels, 1 % and 0.5 % for those of every day. */
static const double slope_refined = 0.003, slope_working = 0.01, centre_refined = 0.003, centre_working = 0.005;
static const LatticeOptions refined = { .spanwise = 40, .chordwise = 12 };

typedef enum { TRAPEZIUM, ELLIPSE } Kind;

/* For an ellipse: semispan, and the semi-axes ahead and behind as root_chord and tip_chord. */
static const struct { const char *name; Kind kind; Trapezium shape; double slope, centre_x, chord; } near_exact[] = {
  /* Tuck, J. Austral. Math. Soc. B 35 (1993), 1.460227, from memory */
  { .name = "square", .shape = { 0.5, 0, 1, 0, 1 }, .slope = 1.46023, .centre_x = 0.16674, .chord = 1 },
  /* Jordan, AIAA J. 11 (1973), 1.790 and 0.521 of the radius ahead of the centre, from memory; first Kinner (1937) */
  { .name = "circle", .kind = ELLIPSE, .shape = { 1, 0, 1, 0, 1 }, .slope = 1.7900, .centre_x = 0.4790, .chord = 1 },
  { .name = "rectangle, A 4", .shape = { 2, 0, 1, 0, 1 }, .slope = 3.6120, .centre_x = 0.23193, .chord = 1 },
  { .name = "rectangle, A 6", .shape = { 3, 0, 1, 0, 1 }, .slope = 4.2146, .centre_x = 0.23881, .chord = 1 },
  { .name = "rectangle, A 8", .shape = { 4, 0, 1, 0, 1 }, .slope = 4.5861, .centre_x = 0.24200, .chord = 1 },
  { .name = "ellipse, half-chord line straight", .kind = ELLIPSE, .shape = { 0.75 * M_PI, 0, 0.5, 0, 0.5 },
    .slope = 4.4034, .centre_x = 0.2806, .chord = 1 },
  { .name = "ellipse, quarter-chord line straight", .kind = ELLIPSE, .shape = { 0.75 * M_PI, 0, 0.25, 0, 0.75 },
    .slope = 4.3932, .centre_x = 0.2417, .chord = 1 },
  { .name = "A 6, taper 1/2, quarter-chord line straight", .shape = { 4.5, 0, 2, 0.25, 1 }, .slope = 4.3420,
    .centre_x = 0.11111111 + 0.2402 * 1.55555556, .chord = 1.55555556 },
  { .name = "tapered 200 to 120, tip 60 aft", .shape = { 500, 0, 200, 60, 120 }, .slope = 4.3800, .centre_x = 65.938,
    .chord = 163.333 },
};
/* Straight edges swept past 50 degrees: only refined panels. The first after Mason, Applied Computational Aerodynamics, chapter 6,
 * who quotes 2.743 for the wing known as Warren 12. */
static const struct { const char *name; Trapezium shape; double slope, centre_x; } swept[] = {
  { .name = "Warren 12", .shape = { M_SQRT2, 0, 1.5, M_SQRT2 + 0.5, 0.5 }, .slope = 2.7503, .centre_x = 1.1302 },
  { .name = "delta, A 2", .shape = { 0.5, 0, 1, 1, 0 }, .slope = 2.199, .centre_x = 0.590 },
};

static Outline *
outline_of (Kind kind, Trapezium shape)
{
  return kind == ELLIPSE ? wing_ellipse (shape.root_x, shape.semispan, shape.root_chord, shape.tip_chord) : wing_trapezium (shape);
}

START_TEST (wings_have_the_lift_and_centre_of_lifting_surface_theory)
{
  const Answer working = answer_of_wing (outline_of (near_exact[_i].kind, near_exact[_i].shape), lattice_default_options ());
  const Answer fine = answer_of_wing (outline_of (near_exact[_i].kind, near_exact[_i].shape), refined);

  ck_assert_msg (fabs (working.result.lift_slope / near_exact[_i].slope - 1) < slope_working, "%s", near_exact[_i].name);
  ck_assert_msg (fabs (fine.result.lift_slope / near_exact[_i].slope - 1) < slope_refined, "%s", near_exact[_i].name);
  ck_assert_double_eq_tol (working.result.neutral_point_x, near_exact[_i].centre_x, centre_working * near_exact[_i].chord);
  ck_assert_double_eq_tol (fine.result.neutral_point_x, near_exact[_i].centre_x, centre_refined * near_exact[_i].chord);
}
END_TEST

START_TEST (strongly_swept_wings_come_near_it_with_fine_panels)
{
  const Answer fine = answer_of_wing (wing_trapezium (swept[_i].shape), refined);

  ck_assert_double_eq_tol (fine.result.lift_slope, swept[_i].slope, slope_refined * swept[_i].slope);
  ck_assert_double_eq_tol (fine.result.neutral_point_x, swept[_i].centre_x, centre_refined);
}
END_TEST

/* His moment about the root's apex on the mean chord, 1: -3.10, of which -3.108 is the converged value. */
START_TEST (warren_12_has_masons_lift_slope_and_moment)
{
  const Answer answer = answer_of_wing (wing_trapezium (swept[0].shape), lattice_default_options ());
  const double moment = -answer.result.lift_slope * answer.result.neutral_point_x;

  ck_assert_double_eq_tol (answer.result.lift_slope, 2.743, 0.005 * 2.743);
  ck_assert_double_eq_tol (moment, -3.10, 0.005 * 3.10);
  ck_assert_double_eq_tol (moment, -3.108, 0.003 * 3.108);
}
END_TEST

/* Bertin and Smith, Aerodynamics for Engineers, 5th ed., example 7.2: A 5, swept 45 degrees, b = 1, four even strips a side. */
static LatticeSurface
bertins_wing (void)
{
  return (LatticeSurface) { .outline = wing_trapezium ((Trapezium) { 0.5, 0, 0.2, 0.5, 0.2 }), .pressure_ratio = 1 };
}

START_TEST (bertins_wing_has_the_influences_and_circulations_worked_out_by_hand)
{
  const double influence[4] = { -53.00368589, 13.34368912, 1.66435054, 0.64336392 };      /* on point 1; units of Γ/4πb */
  const double printed[4] = { 0.0273, 0.0287, 0.0286, 0.0250 };                           /* Γ/4πbVα, root to tip */
  const double digits[4] = { 0.02730227, 0.02873278, 0.02863582, 0.02496219 };
  const LatticeSurface surface = bertins_wing ();
  double matrix[16], inverse[16], circulation[4] = { -1, -1, -1, -1 };
  const LatticeOptions options = { .spanwise = 4, .chordwise = 1, .spacing = LATTICE_EVEN };
  int pivots[4];
  Mesh mesh = { 0 };

  ck_assert_int_eq (mesh_build (&mesh, &surface, 1, options, 1), CORE_OK);
  ck_assert_uint_eq (mesh.panel_count, 4);
  influence_symmetric (&mesh, inverse, matrix);
  for (int j = 0; j < 4; j++)
    ck_assert_double_eq_tol (matrix[4 * j], influence[j], 1e-8);          /* eight decimals are given */
  ck_assert_int_eq (linear_solve (4, 1, matrix, pivots, circulation), CORE_OK);
  for (int j = 0; j < 4; j++)
    {
      ck_assert_double_eq_tol (circulation[j], printed[j], 0.0001);
      ck_assert_double_eq_tol (circulation[j], digits[j], 1e-8);
    }
  mesh_clear (&mesh);
  outline_unref ((Outline *) surface.outline);
}
END_TEST

/* Printed: 3.443 a radian, 0.0601 a degree. The other counts and all further digits: the same arithmetic done independently. */
static const struct { int spanwise, chordwise; double slope; } bertin[] = {
  { .spanwise = 4, .chordwise = 1, .slope = 3.4442241877 },
  { .spanwise = 8, .chordwise = 1, .slope = 3.3051218064 },
  { .spanwise = 8, .chordwise = 4, .slope = 3.3170298338 },
};

START_TEST (bertins_wing_has_his_lift_slope)
{
  const LatticeOptions options = { .spanwise = bertin[_i].spanwise, .chordwise = bertin[_i].chordwise, .spacing = LATTICE_EVEN };
  const Answer answer = answer_of_wing ((Outline *) bertins_wing ().outline, options);

  ck_assert_double_eq_tol (answer.result.lift_slope, bertin[_i].slope, 1e-9 * bertin[_i].slope);
  if (_i == 0)
    {
      ck_assert_double_eq_tol (answer.result.lift_slope, 3.443, 0.0015);
      ck_assert_double_eq_tol (answer.result.lift_slope * M_PI / 180, 0.0601, 0.0001);
      ck_assert_double_eq_tol (answer.result.neutral_point_x, 1.4797129700 * 0.2, 1e-9);
      /* C_m about the apex. */
      ck_assert_double_eq_tol (-answer.result.lift_slope * answer.result.neutral_point_x / 0.2, -5.0964632022, 1e-8);
    }
}
END_TEST

/* Munk: an elliptical load has the least induced drag. The lattice's own load on a flat elliptical wing differs from it by
 * 0.04 %; one above 1.0005 would be an error of the tip or of the spacing. */
START_TEST (a_flat_elliptical_wings_span_efficiency_is_near_one)
{
  const Answer answer = answer_of_wing (wing_ellipse (0, 0.75 * M_PI, 0.5, 0.5), lattice_default_options ());

  ck_assert_double_eq_tol (answer.result.span_efficiency, 0.9996, 0.0002);
}
END_TEST

/* Lifting-line theory (Glauert, 1926, chapter 11) puts the rectangle of A 6 at 1 / 1.048; its load is fuller than the surface's. */
START_TEST (a_rectangles_span_efficiency_is_between_lifting_lines_and_one)
{
  const Answer answer = answer_of_wing (wing_trapezium ((Trapezium) { 3, 0, 1, 0, 1 }), lattice_default_options ());

  ck_assert_double_gt (answer.result.span_efficiency, 1 / 1.04829);
  ck_assert_double_lt (answer.result.span_efficiency, 1);
}
END_TEST

/* Near-exact by the two discretisations: -0.44019 for the rectangle of A 6. */
START_TEST (a_rectangles_damping_in_roll_is_lifting_surface_theorys)
{
  const Outline *const made = wing_trapezium ((Trapezium) { 3, 0, 1, 0, 1 });
  const Answer answer = answer_of_wing ((Outline *) made, lattice_default_options ());

  ck_assert_double_eq_tol (answer.result.roll_damping, -0.44019, 0.001 * 0.44019);
}
END_TEST

/* Lifting line, exact: -(π/4) A/(A + 4) for an ellipse (theory as in Pearson and Jones, NACA Report 635, 1938); lifting surfaces
 * have 11 to 17 % less at A 6. */
START_TEST (an_ellipses_damping_in_roll_is_less_than_lifting_lines)
{
  const Answer answer = answer_of_wing (wing_ellipse (0, 0.75 * M_PI, 0.5, 0.5), lattice_default_options ());

  ck_assert_double_gt (answer.result.roll_damping, -0.89 * 0.471238898);
  ck_assert_double_lt (answer.result.roll_damping, -0.83 * 0.471238898);
}
END_TEST

/* Vertical flow behind the wing in the plane of its wake, y = 0, in parts of the angle of attack, near-exact to 0.0003; places are
 * semi-spans behind the root's quarter chord. */
static const double behind[] = { 0.5, 0.75, 1.0, 1.5, 2.0, 1e4 };
static const struct { Kind kind; Trapezium shape; double downwash[6]; } wakes[] = {
  { .shape = { 3, 0, 1, 0, 1 }, .downwash = { 0.5155, 0.4393, 0.4078, 0.3825, 0.3728, 0.3594 } },
  { .kind = ELLIPSE, .shape = { 0.75 * M_PI, 0, 0.25, 0, 0.75 }, .downwash = { 0.6570, 0.5689, 0.5344, 0.5073, 0.4970, 0.4830 } },
};

START_TEST (downwash_behind_a_wing_is_lifting_surface_theorys)
{
  Outline *outline = outline_of (wakes[_i].kind, wakes[_i].shape);
  const LatticeSurface surface = { .outline = outline, .pressure_ratio = 1 };
  Lattice *lattice = lattice_new ();
  LatticeShare share;
  LatticeResult result;

  ck_assert_int_eq (lattice_solve (lattice, &surface, 1, lattice_default_options (), LATTICE_NEUTRAL_POINT, 1, 1, &share,
                                   &result), CORE_OK);
  for (int i = 0; i < 6; i++)
    {
      const double x = 0.25 + behind[i] * wakes[_i].shape.semispan;
      double upwash;

      lattice_upwash (lattice, &x, 1, 0, &upwash);
      ck_assert_double_eq_tol (-upwash, wakes[_i].downwash[i], 0.003 * wakes[_i].downwash[i]);
    }
  lattice_free (lattice);
  outline_unref (outline);
}
END_TEST

/* Far away a wing is a pair of trailing vortices close together, whose strength is its lift: w = C_L S V / (16π x²) ahead of it. */
START_TEST (flow_far_ahead_tells_the_lift)
{
  Outline *outline = wing_trapezium ((Trapezium) { 2.9, 0.13, 1.1, 0.6, 0.7 });
  const LatticeSurface surface = { .outline = outline, .dihedral = 0.07, .pressure_ratio = 1 };
  const double centre = 0.62, far[2] = { centre - 4000, centre - 8000 };
  Lattice *lattice = lattice_new ();
  double upwash[2];
  LatticeShare share;
  LatticeResult result;

  ck_assert_int_eq (lattice_solve (lattice, &surface, 1, lattice_default_options (), LATTICE_NEUTRAL_POINT, 1, 1, &share,
                                   &result), CORE_OK);
  lattice_upwash (lattice, far, 2, 0.2, upwash);
  ck_assert_double_eq_tol (16 * M_PI * 4000. * 4000 * upwash[0], result.lift_slope, 1e-3 * result.lift_slope);
  ck_assert_double_eq_tol (16 * M_PI * 8000. * 8000 * upwash[1], result.lift_slope, 1e-3 * result.lift_slope);
  lattice_free (lattice);
  outline_unref (outline);
}
END_TEST

int
main (void)
{
  TCase *tests = tcase_create ("lattice");

  tcase_add_loop_test (tests, wings_have_the_lift_and_centre_of_lifting_surface_theory, 0, sizeof near_exact / sizeof *near_exact);
  tcase_add_loop_test (tests, strongly_swept_wings_come_near_it_with_fine_panels, 0, sizeof swept / sizeof *swept);
  tcase_add_test (tests, warren_12_has_masons_lift_slope_and_moment);
  tcase_add_test (tests, bertins_wing_has_the_influences_and_circulations_worked_out_by_hand);
  tcase_add_loop_test (tests, bertins_wing_has_his_lift_slope, 0, sizeof bertin / sizeof *bertin);
  tcase_add_test (tests, a_flat_elliptical_wings_span_efficiency_is_near_one);
  tcase_add_test (tests, a_rectangles_span_efficiency_is_between_lifting_lines_and_one);
  tcase_add_test (tests, a_rectangles_damping_in_roll_is_lifting_surface_theorys);
  tcase_add_test (tests, an_ellipses_damping_in_roll_is_less_than_lifting_lines);
  tcase_add_loop_test (tests, downwash_behind_a_wing_is_lifting_surface_theorys, 0, sizeof wakes / sizeof *wakes);
  tcase_add_test (tests, flow_far_ahead_tells_the_lift);
  return run_suite (suite_create ("lattice"), tests);
}
