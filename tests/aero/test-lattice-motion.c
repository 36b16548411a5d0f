#include "aero/wings.h"
#include "aero/handbook.h"
#include "support/run-suite.h"

enum { most_stations = 64 };

static LatticeResult
result_of (const LatticeSurface surfaces[], size_t count, const Planform *reference, LatticeOptions options)
{
  Lattice *lattice = lattice_new ();
  LatticeShare shares[2];
  LatticeResult result;

  ck_assert_int_eq (lattice_solve (lattice, surfaces, count, options, LATTICE_PITCH, reference->area, reference->span, shares, &result),
                    CORE_OK);
  lattice_free (lattice);
  return result;
}

static Planform
planform_of (const Outline *outline)
{
  Planform planform;

  ck_assert_int_eq (planform_measure (outline, PLANFORM_CARRIED, &planform), CORE_OK);
  return planform;
}

/* Thin aerofoil theory: turning about its own quarter chord an aerofoil is a cambered one, A1 = q c / 2V, c_m = -π/4 A1 (Glauert,
 * Elements of Aerofoil and Airscrew Theory, 1926, chapter VII). A wing of aspect ratio 100 is nearly one. */
START_TEST (a_long_wings_damping_in_pitch_is_the_aerofoils)
{
  Outline *wing = wing_trapezium ((Trapezium) { 5000, 0, 100, 0, 100 });
  const LatticeSurface surface = { .outline = wing, .pressure_ratio = 1 };
  const Planform planform = planform_of (wing);
  const LatticeResult result = result_of (&surface, 1, &planform, (LatticeOptions) { .spanwise = 40, .chordwise = 12 });

  ck_assert_double_eq_tol (lattice_pitch_damping (&result, 25, 100), -M_PI / 4, 0.02);
  outline_unref (wing);
}
END_TEST

/* A tail's share is -2 a_t V l_t / c with a_t its slope by itself (Etkin and Reid, Dynamics of Flight, 3rd ed., section 5.4; Nelson,
 * Flight Stability and Automatic Control, 2nd ed., chapter 3), the wing's some tenths; the wing turns in its own wash too. */
START_TEST (a_tails_damping_in_pitch_is_the_handbooks)
{
  Outline *wing = wing_trapezium ((Trapezium) { 500, 0, 200, 60, 120 }), *tail = wing_trapezium ((Trapezium) { 180, 620, 90, 635, 60 });
  const LatticeSurface surfaces[2] = { { .outline = wing, .pressure_ratio = 1 }, { .outline = tail, .z = -30, .pressure_ratio = 1 } };
  const Planform own = planform_of (wing), tails = planform_of (tail);
  const double axis_x = own.mac_leading_edge_x + 0.3 * own.mac;
  const double arm = tails.mac_leading_edge_x + tails.mac / 4 - axis_x;
  const double slope = handbook_lift_slope (tails.aspect_ratio, 0, 1);
  const double handbook = -2 * slope * handbook_tail_volume (tails.area, arm, own.area, own.mac) * arm / own.mac;
  const LatticeResult both = result_of (surfaces, 2, &own, lattice_default_options ());
  const LatticeResult alone = result_of (surfaces, 1, &own, lattice_default_options ());
  const double tails_share = lattice_pitch_damping (&both, axis_x, own.mac) - lattice_pitch_damping (&alone, axis_x, own.mac);

  ck_assert_double_eq_tol (tails_share, handbook, -0.1 * handbook);
  outline_unref (wing);
  outline_unref (tail);
}
END_TEST

START_TEST (damping_in_pitch_does_not_depend_on_the_datum)
{
  double damping[2];

  for (int i = 0; i < 2; i++)
    {
      Outline *wing = wing_trapezium ((Trapezium) { 400, 700 * i, 160, 700 * i + 107, 96 });
      const LatticeSurface surface = { .outline = wing, .pressure_ratio = 1 };
      const Planform planform = planform_of (wing);
      const LatticeResult result = result_of (&surface, 1, &planform, lattice_default_options ());

      damping[i] = lattice_pitch_damping (&result, 700 * i + 60, planform.mac);
      outline_unref (wing);
    }
  ck_assert_double_eq_tol (damping[1], damping[0], 1e-9);
}
END_TEST

static size_t
loading_of (const Outline *wing, const Planform *planform, LatticeStation stations[most_stations])
{
  const LatticeSurface surface = { .outline = wing, .pressure_ratio = 1 };
  Lattice *lattice = lattice_new ();
  LatticeShare share;
  LatticeResult result;
  size_t count;

  ck_assert_int_eq (lattice_solve (lattice, &surface, 1, lattice_default_options (), LATTICE_NEUTRAL_POINT, planform->area,
                                   planform->span, &share, &result), CORE_OK);
  count = lattice_span_loading (lattice, 0, stations, most_stations);
  lattice_free (lattice);
  return count;
}

/* Half the wing's own chord and half an ellipse of its area: Schrenk, A Simple Approximation Method for Obtaining the Spanwise Lift
 * Distribution, NACA TM 948 (1940). A rule of thumb, within 7 % of the root's for straight wings of this aspect ratio; of the outermost
 * fifth it says too much on straight wings. */
static const double tip_chords[] = { 160, 110, 80 };

START_TEST (lift_is_spread_along_a_tapered_wing_as_schrenk_has_it)
{
  Outline *wing = wing_trapezium ((Trapezium) { 400, 0, 160, (160 - tip_chords[_i]) / 4, tip_chords[_i] });
  const Planform planform = planform_of (wing);
  LatticeStation stations[most_stations];
  const size_t count = loading_of (wing, &planform, stations);

  ck_assert_uint_ge (count, 20);
  for (size_t i = 0; i < count && stations[i].station < 0.8 * 400; i++)
    {
      const double y = stations[i].station / 400, ellipse = 4 * planform.area / (M_PI * planform.span) * sqrt (1 - y * y);

      ck_assert_double_eq_tol (stations[i].lift_ratio * stations[i].chord, (stations[i].chord + ellipse) / 2, 0.07 * 160);
    }
  outline_unref (wing);
}
END_TEST

START_TEST (the_spread_of_lift_adds_up_to_the_wings)
{
  Outline *wing = wing_ellipse (0, 320, 45, 85);
  const Planform planform = planform_of (wing);
  LatticeStation stations[most_stations];
  const size_t count = loading_of (wing, &planform, stations);
  double sum = 0, before = 0;

  for (size_t i = 0; i < count; i++)
    {
      const double after = i + 1 < count ? (stations[i].station + stations[i + 1].station) / 2 : 320;

      sum += 2 * stations[i].lift_ratio * stations[i].chord * (after - before);
      before = after;
    }
  ck_assert_double_eq_tol (sum, planform.area, 0.01 * planform.area);
  outline_unref (wing);
}
END_TEST

START_TEST (no_more_stations_are_written_than_there_is_room_for)
{
  Outline *wing = wing_ellipse (0, 320, 45, 85);
  const LatticeSurface surface = { .outline = wing, .pressure_ratio = 1 };
  LatticeStation stations[3] = { [2] = { .station = -1 } };
  Lattice *lattice = lattice_new ();
  LatticeShare share;
  LatticeResult result;

  ck_assert_int_eq (lattice_solve (lattice, &surface, 1, lattice_default_options (), LATTICE_NEUTRAL_POINT, 1, 1, &share, &result),
                    CORE_OK);
  ck_assert_uint_eq (lattice_span_loading (lattice, 0, stations, 2), 20);
  ck_assert_double_gt (stations[1].station, stations[0].station);
  ck_assert_double_eq (stations[2].station, -1);
  lattice_free (lattice);
  outline_unref (wing);
}
END_TEST

/* What a section takes from a surface's damping it can only take from its own share. */
START_TEST (the_surfaces_shares_of_a_damping_make_the_whole)
{
  Outline *wing = wing_trapezium ((Trapezium) { 500, 0, 120, 20, 80 }), *tail = wing_trapezium ((Trapezium) { 180, 400, 70, 410, 50 });
  const LatticeSurface surfaces[2] = { { .outline = wing, .pressure_ratio = 1 }, { .outline = tail, .z = 20, .pressure_ratio = 0.9 } };
  const Planform planform = planform_of (wing);
  Lattice *lattice = lattice_new ();
  LatticeShare shares[2];
  LatticeResult result;

  ck_assert_int_eq (lattice_solve (lattice, surfaces, 2, lattice_default_options (), LATTICE_PITCH | LATTICE_ROLL, planform.area, planform.span,
                                   shares, &result), CORE_OK);
  ck_assert_double_eq_tol (shares[0].roll_damping + shares[1].roll_damping, result.roll_damping, 1e-12);
  ck_assert_double_eq_tol (shares[0].pitching_lift + shares[1].pitching_lift, result.pitching_lift, 1e-9 * fabs (result.pitching_lift));
  ck_assert_double_eq_tol (shares[0].pitching_moment + shares[1].pitching_moment, result.pitching_moment, 1e-9 * fabs (result.pitching_moment));
  ck_assert_double_lt (shares[0].roll_damping, shares[1].roll_damping);
  ck_assert_double_lt (shares[1].roll_damping, 0);
  lattice_free (lattice);
  outline_unref (wing);
  outline_unref (tail);
}
END_TEST

int
main (void)
{
  TCase *tests = tcase_create ("lattice motion");

  tcase_add_test (tests, the_surfaces_shares_of_a_damping_make_the_whole);
  tcase_add_test (tests, a_long_wings_damping_in_pitch_is_the_aerofoils);
  tcase_add_test (tests, a_tails_damping_in_pitch_is_the_handbooks);
  tcase_add_test (tests, damping_in_pitch_does_not_depend_on_the_datum);
  tcase_add_loop_test (tests, lift_is_spread_along_a_tapered_wing_as_schrenk_has_it, 0, sizeof tip_chords / sizeof *tip_chords);
  tcase_add_test (tests, the_spread_of_lift_adds_up_to_the_wings);
  tcase_add_test (tests, no_more_stations_are_written_than_there_is_room_for);
  return run_suite (suite_create ("lattice motion"), tests);
}
