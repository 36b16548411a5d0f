#include <stdlib.h>
#include "support/run-suite.h"
#include "wings.h"

/* Near-exact cases of two surfaces: two unrelated discretisations agree; flat wakes along x, no loss of pressure. Tolerances: 0.5 % of
 * the wing's MAC on neutral point and centres, 1 % on slopes. */
static const struct {
  const char *name;
  Trapezium wing, tail;
  double tail_z, mac, slope, neutral_x, wing_slope, wing_x, tail_slope, tail_x;
} pairs[] = {
  { .name = "rectangles", .wing = { 3, 0, 1, 0, 1 }, .tail = { 1, 3, 0.5, 3, 0.5 }, .tail_z = 0.3, .mac = 1,
    .slope = 4.6095, .neutral_x = 0.4690, .wing_slope = 4.241, .wing_x = 0.2391, .tail_slope = 0.3683, .tail_x = 3.1170 },
  { .name = "tapered", .wing = { 500, 0, 200, 60, 120 }, .tail = { 180, 620, 90, 635, 60 }, .tail_z = -30, .mac = 163.333333,
    .slope = 4.779, .neutral_x = 112.00, .wing_slope = 4.399, .wing_x = 65.97, .tail_slope = 0.3801, .tail_x = 644.84 },
};

START_TEST (a_wing_and_its_tail_are_neutral_where_lifting_surface_theory_says)
{
  Outline *wing = wing_trapezium (pairs[_i].wing), *tail = wing_trapezium (pairs[_i].tail);
  const LatticeSurface surfaces[2] = { { .outline = wing, .pressure_ratio = 1 },
                                       { .outline = tail, .z = pairs[_i].tail_z, .pressure_ratio = 1 } };
  const Answer answer = answer_of (surfaces, 2);
  const double far = 0.005 * pairs[_i].mac;

  ck_assert_int_eq (answer.status, CORE_OK);
  ck_assert_double_eq_tol (answer.result.lift_slope, pairs[_i].slope, 0.01 * pairs[_i].slope);
  ck_assert_double_eq_tol (answer.result.neutral_point_x, pairs[_i].neutral_x, far);
  ck_assert_double_eq_tol (answer.shares[0].lift_slope, pairs[_i].wing_slope, 0.01 * pairs[_i].wing_slope);
  ck_assert_double_eq_tol (answer.shares[0].centre_x, pairs[_i].wing_x, far);
  ck_assert_double_eq_tol (answer.shares[1].lift_slope, pairs[_i].tail_slope, 0.01 * pairs[_i].tail_slope);
  ck_assert_double_eq_tol (answer.shares[1].centre_x, pairs[_i].tail_x, far);
  outline_unref (wing);
  outline_unref (tail);
}
END_TEST

/* The rectangle alone has 4.2146 at 0.2388; the tail's upwash gives it 0.6 %. */
START_TEST (a_tails_upwash_lifts_the_wing_a_little)
{
  Outline *wing = wing_trapezium (pairs[0].wing), *tail = wing_trapezium (pairs[0].tail);
  const LatticeSurface surfaces[2] = { { .outline = wing, .pressure_ratio = 1 }, { .outline = tail, .z = 0.3, .pressure_ratio = 1 } };
  const Answer answer = answer_of (surfaces, 2);

  ck_assert_double_eq_tol (answer.shares[0].alone_lift_slope, 4.2146, 0.001 * 4.2146);
  ck_assert_double_eq_tol (answer.shares[0].alone_centre_x, 0.23881, 0.001);
  ck_assert_double_eq_tol (answer.shares[0].downwash_gradient, -0.0063, 0.001);
  outline_unref (wing);
  outline_unref (tail);
}
END_TEST

/* A racer's wing and tail, with the lift of the tail given by the downwash it meets. */
static void
racer (Outline *outlines[2], LatticeSurface surfaces[2])
{
  outlines[0] = wing_ellipse (112, 320, 45, 85);
  outlines[1] = wing_ellipse (388, 118, 26, 40);
  surfaces[0] = (LatticeSurface) { .outline = outlines[0], .z = -12, .dihedral = 0.0698, .pressure_ratio = 1 };
  surfaces[1] = (LatticeSurface) { .outline = outlines[1], .z = 10, .pressure_ratio = 0.9 };
}

START_TEST (shares_add_up_to_the_aeroplane)
{
  Outline *outlines[2];
  LatticeSurface surfaces[2];

  racer (outlines, surfaces);
  const Answer answer = answer_of (surfaces, 2);
  const LatticeShare *wing = &answer.shares[0], *tail = &answer.shares[1];

  ck_assert_double_eq_tol (wing->lift_slope + tail->lift_slope, answer.result.lift_slope, 1e-12);
  ck_assert_double_eq_tol ((wing->lift_slope * wing->centre_x + tail->lift_slope * tail->centre_x) / answer.result.lift_slope,
                           answer.result.neutral_point_x, 1e-9);
  outline_unref (outlines[0]);
  outline_unref (outlines[1]);
}
END_TEST

START_TEST (downwash_gradient_is_what_the_tail_lacks_of_its_own_lift)
{
  Outline *outlines[2];
  LatticeSurface surfaces[2];
  Planform tail;

  racer (outlines, surfaces);
  ck_assert_int_eq (planform_measure (outlines[1], PLANFORM_CARRIED, &tail), CORE_OK);
  const Answer answer = answer_of (surfaces, 2);
  const LatticeShare *share = &answer.shares[1];

  ck_assert_double_eq_tol (share->lift_slope,
                           0.9 * share->alone_lift_slope * (1 - share->downwash_gradient) * tail.area / answer.reference.area, 1e-9);
  ck_assert_double_gt (share->downwash_gradient, 0.4);
  ck_assert_double_lt (share->downwash_gradient, 0.6);
  outline_unref (outlines[0]);
  outline_unref (outlines[1]);
}
END_TEST

START_TEST (pressure_ratio_scales_a_surfaces_own_forces_alone)
{
  Outline *outlines[2];
  LatticeSurface surfaces[2];

  racer (outlines, surfaces);
  const Answer slow = answer_of (surfaces, 2);
  surfaces[1].pressure_ratio = 0.63;
  const Answer slower = answer_of (surfaces, 2);

  ck_assert_double_eq_tol (slower.shares[1].lift_slope, slow.shares[1].lift_slope * 0.63 / 0.9, 1e-12);
  ck_assert_double_eq (slower.shares[0].lift_slope, slow.shares[0].lift_slope);
  ck_assert_double_eq (slower.shares[1].downwash_gradient, slow.shares[1].downwash_gradient);
  ck_assert_double_eq (slower.shares[1].centre_x, slow.shares[1].centre_x);
  ck_assert_double_lt (slower.result.neutral_point_x, slow.result.neutral_point_x);
  outline_unref (outlines[0]);
  outline_unref (outlines[1]);
}
END_TEST

/* With strip edges of its own a tail in the wake's plane would put the neutral point off by several percent of MAC, never to
 * settle; a hair's breadth above the wake it would be another still. */
START_TEST (a_tail_in_the_plane_of_the_wake_settles)
{
  Outline *outlines[2];
  LatticeSurface surfaces[2];

  racer (outlines, surfaces);
  surfaces[0].z = surfaces[0].dihedral = surfaces[1].z = 0;
  const Answer coarse = answer_with (surfaces, 2, (LatticeOptions) { .spanwise = 10, .chordwise = 4 });
  const Answer working = answer_of (surfaces, 2);
  const Answer fine = answer_with (surfaces, 2, (LatticeOptions) { .spanwise = 40, .chordwise = 12 });
  surfaces[1].z = 0.001;
  const Answer above = answer_of (surfaces, 2);
  const double mac = working.reference.mac;

  ck_assert_double_eq_tol (coarse.result.neutral_point_x, fine.result.neutral_point_x, 0.001 * mac);
  ck_assert_double_eq_tol (working.result.neutral_point_x, fine.result.neutral_point_x, 0.0005 * mac);
  ck_assert_double_eq_tol (above.result.neutral_point_x, working.result.neutral_point_x, 1e-4 * mac);
  outline_unref (outlines[0]);
  outline_unref (outlines[1]);
}
END_TEST

/* The wing of the tail grows past the wing's own tip, through every merging and parting of strips. */
START_TEST (a_tail_of_any_span_in_the_wakes_plane_changes_the_neutral_point_smoothly)
{
  Outline *wing = wing_ellipse (112, 320, 45, 85);
  double before = NAN, step = NAN;

  for (double semispan = 311; semispan < 329; semispan += 0.25)
    {
      Outline *tail = wing_ellipse (388, semispan, 26, 40);
      const LatticeSurface surfaces[2] = { { .outline = wing, .pressure_ratio = 1 }, { .outline = tail, .pressure_ratio = 1 } };
      const Answer answer = answer_of (surfaces, 2);
      const double x = answer.result.neutral_point_x;

      ck_assert_int_eq (answer.status, CORE_OK);
      if (!isnan (step))
        ck_assert_double_eq_tol (x - before, step, 0.001 * answer.reference.mac);
      step = isnan (before) ? NAN : x - before;
      before = x;
      outline_unref (tail);
    }
  outline_unref (wing);
}
END_TEST

/* What the header promises of the default panels, against the limit of two fine lattices, first order taken out. Straight, tapered,
 * swept 15 degrees forward and back, and 40, each with a tail of 0.36 of its span. */
static const struct { double tip_x, tip_chord, tail_tip_x, neutral, slope; } promised[] = {
  { .tip_x = 0, .tip_chord = 160, .neutral = 0.0015, .slope = 0.001 },
  { .tip_x = 15, .tip_chord = 90, .tail_tip_x = 6, .neutral = 0.0015, .slope = 0.001 },
  { .tip_x = 107, .tip_chord = 96, .tail_tip_x = 39, .neutral = 0.0015, .slope = 0.001 },
  { .tip_x = -74, .tip_chord = 96, .tail_tip_x = -20, .neutral = 0.0015, .slope = 0.001 },
  { .tip_x = 340, .tip_chord = 110, .tail_tip_x = 120, .neutral = 0.0025, .slope = 0.0015 },
};

START_TEST (default_panels_are_as_near_the_limit_as_promised)
{
  Outline *wing = wing_trapezium ((Trapezium) { 400, 0, 160, promised[_i].tip_x, promised[_i].tip_chord });
  Outline *tail = wing_trapezium ((Trapezium) { 144, 560, 80, 560 + promised[_i].tail_tip_x, 66 });
  const LatticeSurface surfaces[2] = { { .outline = wing, .pressure_ratio = 1 },
                                       { .outline = tail, .z = 13, .pressure_ratio = 0.9 } };
  const Answer working = answer_of (surfaces, 2);
  const Answer fine = answer_with (surfaces, 2, (LatticeOptions) { .spanwise = 28, .chordwise = 8 });
  const Answer finest = answer_with (surfaces, 2, (LatticeOptions) { .spanwise = 56, .chordwise = 16 });
  const double neutral_x = 2 * finest.result.neutral_point_x - fine.result.neutral_point_x;
  const double slope = 2 * finest.result.lift_slope - fine.result.lift_slope;

  ck_assert_double_eq_tol (working.result.neutral_point_x, neutral_x, promised[_i].neutral * working.reference.mac);
  ck_assert_double_eq_tol (working.result.lift_slope, slope, promised[_i].slope * slope);
  outline_unref (wing);
  outline_unref (tail);
}
END_TEST

/* Sweep grows through the angles at which extrapolation sets in: no figure may jump. */
START_TEST (extrapolation_sets_in_smoothly_as_sweep_grows)
{
  Outline *tail = wing_trapezium ((Trapezium) { 144, 560, 80, 590, 66 });
  double before = NAN, step = NAN;

  for (double tip_x = 90; tip_x < 210; tip_x += 4)
    {
      Outline *wing = wing_trapezium ((Trapezium) { 400, 0, 160, tip_x, 96 });
      const LatticeSurface surfaces[2] = { { .outline = wing, .pressure_ratio = 1 }, { .outline = tail, .pressure_ratio = 0.9 } };
      const Answer answer = answer_of (surfaces, 2);
      const double x = answer.result.neutral_point_x;

      outline_unref (wing);
      if (!isnan (step))
        ck_assert_double_eq_tol (x - before, step, 0.0003 * answer.reference.mac);
      step = isnan (before) ? NAN : x - before;
      before = x;
    }
  outline_unref (tail);
}
END_TEST

/* The wing's kink is the wing's: a straight tail by itself has the lift it has without any wing before it. */
START_TEST (a_straight_tails_own_lift_owes_nothing_to_the_sweep_of_the_wing)
{
  Outline *wing = wing_trapezium ((Trapezium) { 400, 0, 160, 213, 96 });
  Outline *tail = wing_trapezium ((Trapezium) { 144, 700, 80, 700, 80 });
  const LatticeSurface surfaces[2] = { { .outline = wing, .pressure_ratio = 1 }, { .outline = tail, .z = 13, .pressure_ratio = 1 } };
  const Answer both = answer_of (surfaces, 2), alone = answer_of (surfaces + 1, 1);

  ck_assert_double_eq_tol (both.shares[1].alone_lift_slope, alone.shares[0].alone_lift_slope, 0.0005 * alone.shares[0].alone_lift_slope);
  outline_unref (wing);
  outline_unref (tail);
}
END_TEST

START_TEST (a_foreplane_flies_in_the_wings_upwash_and_the_wing_in_its_downwash)
{
  Outline *wing = wing_trapezium ((Trapezium) { 400, 500, 130, 530, 100 });
  Outline *foreplane = wing_trapezium ((Trapezium) { 150, 100, 70, 110, 60 });
  const LatticeSurface surfaces[2] = { { .outline = wing, .pressure_ratio = 1 },
                                       { .outline = foreplane, .z = 15, .pressure_ratio = 1 } };
  const Answer both = answer_of (surfaces, 2), alone = answer_of (surfaces, 1);

  ck_assert_double_lt (both.shares[1].downwash_gradient, 0);
  ck_assert_double_gt (both.shares[0].downwash_gradient, 0);
  ck_assert_double_lt (both.result.neutral_point_x, alone.result.neutral_point_x - 50);
  outline_unref (wing);
  outline_unref (foreplane);
}
END_TEST

/* Two wings very far apart do not know of each other; a chord apart each has lost a fifth to a third of its lift (Munk's biplane
 * theory, NACA Report 151 (1922): the pair approaches one wing of the same span as the gap closes). */
START_TEST (a_biplanes_wings_take_lift_from_each_other)
{
  Outline *wing = wing_trapezium ((Trapezium) { 400, 100, 130, 100, 130 });
  LatticeSurface surfaces[2] = { { .outline = wing, .z = 130, .pressure_ratio = 1 }, { .outline = wing, .pressure_ratio = 1 } };
  const Answer alone = answer_of (surfaces, 1), near = answer_of (surfaces, 2);
  surfaces[0].z = 4e5;
  const Answer apart = answer_of (surfaces, 2);

  ck_assert_double_eq_tol (apart.result.lift_slope, 2 * alone.result.lift_slope, 0.001 * alone.result.lift_slope);
  ck_assert_double_gt (near.result.lift_slope, 1.3 * alone.result.lift_slope);
  ck_assert_double_lt (near.result.lift_slope, 1.7 * alone.result.lift_slope);
  ck_assert_double_eq_tol (near.shares[0].lift_slope, near.shares[1].lift_slope, 0.005 * near.shares[0].lift_slope);
  outline_unref (wing);
}
END_TEST

/* Wings of 600 by 100, the second so far above the first. The limit of the pair's neutral point is that of 20 by 16 and 20 by
 * 32 panels on each, the error of the first order taken out; percent of the chord. */
static const struct { double gap, limit, promise; } close_pairs[] = {
  { 50, 20.933, 0.15 }, { 35, 20.844, 0.15 }, { 25, 21.027, 0.15 }, { 15, 21.529, 0.15 }, { 10, 21.960, 0.15 },
  { 5, 22.561, 0.25 },
};

START_TEST (wings_close_over_each_other_get_as_many_panels_as_it_takes)
{
  Outline *wing = wing_trapezium ((Trapezium) { 300, 0, 100, 0, 100 });
  const LatticeSurface surfaces[2] = { { .outline = wing, .pressure_ratio = 1 },
                                       { .outline = wing, .z = close_pairs[_i].gap, .pressure_ratio = 1 } };
  const Answer pair = answer_of (surfaces, 2);

  ck_assert_int_eq (pair.status, CORE_OK);
  ck_assert_double_eq_tol (pair.result.neutral_point_x, close_pairs[_i].limit, close_pairs[_i].promise);
  outline_unref (wing);
}
END_TEST

/* The middle one of three is close to both; where all of them have no room for more panels, they keep the usual ones. */
START_TEST (closeness_never_makes_them_too_many)
{
  Outline *wing = wing_trapezium ((Trapezium) { 300, 0, 100, 0, 100 });
  const LatticeSurface surfaces[3] = { { .outline = wing, .pressure_ratio = 1 }, { .outline = wing, .z = 20, .pressure_ratio = 1 },
                                       { .outline = wing, .z = 40, .pressure_ratio = 1 } };
  LatticeOptions tight = lattice_default_options ();

  tight.most_panels = 20 * 6 + 2 * 20 * 4;
  ck_assert_int_eq (answer_with (surfaces, 3, tight).status, CORE_OK);
  ck_assert_double_ne (answer_with (surfaces, 3, tight).result.neutral_point_x, answer_of (surfaces, 3).result.neutral_point_x);
  outline_unref (wing);
}
END_TEST

START_TEST (the_order_of_further_surfaces_does_not_matter)
{
  Outline *wing = wing_trapezium ((Trapezium) { 407, 130, 140, 141, 110 });
  Outline *foreplane = wing_trapezium ((Trapezium) { 131, -100, 60, -90, 50 }), *tail = wing_ellipse (520, 163, 30, 50);
  const LatticeSurface one = { .outline = wing, .dihedral = 0.05, .pressure_ratio = 1 };
  const LatticeSurface two = { .outline = foreplane, .z = -21, .pressure_ratio = 1 };
  const LatticeSurface three = { .outline = tail, .z = 33, .pressure_ratio = 0.9 };
  const Answer forward = answer_of ((LatticeSurface[]) { one, two, three }, 3);
  const Answer backward = answer_of ((LatticeSurface[]) { one, three, two }, 3);

  ck_assert_int_eq (forward.status, CORE_OK);
  ck_assert_double_eq_tol (forward.result.neutral_point_x, backward.result.neutral_point_x, 1e-9 * 140);
  ck_assert_double_eq_tol (forward.shares[2].downwash_gradient, backward.shares[1].downwash_gradient, 1e-10);
  ck_assert_double_eq_tol (forward.result.roll_damping, backward.result.roll_damping, 1e-10);
  outline_unref (wing);
  outline_unref (foreplane);
  outline_unref (tail);
}
END_TEST

/* A wing drawn as a centre piece and, in its gap, two outer panels is the same wing. */
START_TEST (a_wing_in_two_pieces_is_the_wing_in_one)
{
  Outline *whole = wing_trapezium ((Trapezium) { 500, 0, 200, 60, 120 });
  Outline *inner = wing_trapezium ((Trapezium) { 210, 0, 200, 25.2, 166.4 }), *outer = NULL;

  ck_assert_int_eq (shape_taper ((double[]) { 210, 500 }, (double[]) { 25.2, 60 }, (double[]) { 166.4, 120 }, 2, &outer), CORE_OK);
  const LatticeSurface one = { .outline = whole, .pressure_ratio = 1 };
  const LatticeSurface two[2] = { { .outline = inner, .pressure_ratio = 1, .chordwise = 6 },
                                  { .outline = outer, .sides = PLANFORM_OPEN, .pressure_ratio = 1, .chordwise = 6, .spanwise = 20 } };
  const Answer single = answer_of (&one, 1), parted = answer_of (two, 2);
  const double area = parted.reference.area / single.reference.area;

  ck_assert_int_eq (parted.status, CORE_OK);
  ck_assert_double_eq_tol (parted.result.lift_slope * area, single.result.lift_slope, 0.002 * single.result.lift_slope);
  ck_assert_double_eq_tol (parted.result.neutral_point_x, single.result.neutral_point_x, 0.001 * single.reference.mac);
  outline_unref (whole);
  outline_unref (inner);
  outline_unref (outer);
}
END_TEST

START_TEST (an_open_gap_costs_lift)
{
  Outline *halves = NULL;

  ck_assert_int_eq (shape_taper ((double[]) { 40, 300 }, (double[]) { 0, 10 }, (double[]) { 110, 90 }, 2, &halves), CORE_OK);
  const LatticeSurface carried = { .outline = halves, .pressure_ratio = 1 };
  const LatticeSurface open = { .outline = halves, .sides = PLANFORM_OPEN, .pressure_ratio = 1 };
  const Answer closed = answer_of (&carried, 1), gapped = answer_of (&open, 1);

  ck_assert_int_eq (gapped.status, CORE_OK);
  ck_assert_double_lt (gapped.result.lift_slope * gapped.reference.area, 0.95 * closed.result.lift_slope * closed.reference.area);
  outline_unref (halves);
}
END_TEST

int
main (void)
{
  TCase *tests = tcase_create ("lattice company");

  tcase_set_timeout (tests, 60);
  tcase_add_loop_test (tests, a_wing_and_its_tail_are_neutral_where_lifting_surface_theory_says, 0, sizeof pairs / sizeof *pairs);
  tcase_add_test (tests, a_tails_upwash_lifts_the_wing_a_little);
  tcase_add_test (tests, shares_add_up_to_the_aeroplane);
  tcase_add_test (tests, downwash_gradient_is_what_the_tail_lacks_of_its_own_lift);
  tcase_add_test (tests, pressure_ratio_scales_a_surfaces_own_forces_alone);
  tcase_add_test (tests, a_tail_in_the_plane_of_the_wake_settles);
  tcase_add_test (tests, a_tail_of_any_span_in_the_wakes_plane_changes_the_neutral_point_smoothly);
  tcase_add_loop_test (tests, default_panels_are_as_near_the_limit_as_promised, 0, sizeof promised / sizeof *promised);
  tcase_add_test (tests, extrapolation_sets_in_smoothly_as_sweep_grows);
  tcase_add_test (tests, a_straight_tails_own_lift_owes_nothing_to_the_sweep_of_the_wing);
  tcase_add_test (tests, a_foreplane_flies_in_the_wings_upwash_and_the_wing_in_its_downwash);
  tcase_add_test (tests, a_biplanes_wings_take_lift_from_each_other);
  tcase_add_loop_test (tests, wings_close_over_each_other_get_as_many_panels_as_it_takes, 0, (int) (sizeof close_pairs / sizeof *close_pairs));
  tcase_add_test (tests, closeness_never_makes_them_too_many);
  tcase_add_test (tests, the_order_of_further_surfaces_does_not_matter);
  tcase_add_test (tests, a_wing_in_two_pieces_is_the_wing_in_one);
  tcase_add_test (tests, an_open_gap_costs_lift);
  return run_suite (suite_create ("lattice company"), tests);
}
