#include <check.h>
#include <math.h>
#include "figures/figures.h"
#include "support/aeroplanes.h"
#include "support/figures-once.h"
#include "support/run-suite.h"
#include "support/shapes.h"

static Aeroplane *
with_lossless_tail (Aeroplane *self, Outline *takes, double z)
{
  Surface *tail = surface_new ("tail", ROLE_TAILPLANE, takes);

  tail->z = z;
  tail->pressure_ratio = 1;
  return with_piece (self, tail);
}

/* Lifting-surface theory by two discretisations that agree to 0.0003 chords: rectangle of 1 × 6 and a tail of 0.5 × 2 whose leading edge
 * lies 3 behind and 0.3 above: neutral point at 0.4690 of the chord. Half a percent is what a working panelling is allowed. */
START_TEST (the_published_pair_of_rectangles_has_its_neutral_point_at_0_469_of_the_chord)
{
  Aeroplane *made = with_surface (aeroplane_new (), "wing", ROLE_WING, rectangle (0, 600, 100));
  g_autoptr (Aeroplane) aeroplane = with_lossless_tail (made, rectangle (300, 200, 50), 30);
  g_autoptr (Figures) figures = figures_once (aeroplane);

  ck_assert_double_eq_tol (figures->neutral_point.lattice_x_mm, 46.90, 0.5);
  ck_assert_double_eq_tol (figures->neutral_point.percent_mac, 46.90, 0.5);
}
END_TEST

/* The same theory for a tapered pair: chords 200 to 120 over 1000 mm, tail 90 to 60 over 360: 112.00 ± 0.05 mm, 51.74 % of MAC. */
START_TEST (the_published_tapered_pair_has_its_neutral_point_at_112_mm)
{
  Outline *wing = taper_from ((double[]) { 0, 500 }, (double[]) { 0, 60 }, (double[]) { 200, 120 }, 2);
  Outline *tail = taper_from ((double[]) { 0, 180 }, (double[]) { 620, 635 }, (double[]) { 90, 60 }, 2);
  Aeroplane *made = with_surface (aeroplane_new (), "wing", ROLE_WING, wing);
  g_autoptr (Aeroplane) aeroplane = with_lossless_tail (made, tail, -30);
  g_autoptr (Figures) figures = figures_once (aeroplane);

  ck_assert_double_eq_tol (figures->neutral_point.lattice_x_mm, 112.00, 0.005 * 163.3);
  ck_assert_double_eq_tol (figures->neutral_point.x_mm, figures->neutral_point.lattice_x_mm, 1e-12);   /* no body, no shift */
  ck_assert_double_eq (figures->neutral_point.body_shift_mm, 0);
}
END_TEST

/* Small angles add to the incidence and change no slope: thin-aerofoil theory. */
START_TEST (incidence_and_washout_move_no_neutral_point)
{
  Surface *twisted = surface_new ("wing", ROLE_WING, rectangle (0, 600, 100));
  Aeroplane *flat = with_surface (aeroplane_new (), "wing", ROLE_WING, rectangle (0, 600, 100));

  twisted->incidence = 2;
  twisted->washout = 1.5;
  g_autoptr (Aeroplane) plain = with_lossless_tail (flat, rectangle (300, 200, 50), 30);
  g_autoptr (Aeroplane) set = with_lossless_tail (with_piece (aeroplane_new (), twisted), rectangle (300, 200, 50), 30);
  g_autoptr (Figures) one = figures_once (plain);
  g_autoptr (Figures) other = figures_once (set);

  ck_assert_double_eq (one->neutral_point.x_mm, other->neutral_point.x_mm);
}
END_TEST

/* The pressure ratio multiplies the tail's own forces after the solve, so the neutral point moves towards the wing's in proportion. */
START_TEST (a_tail_in_slower_air_counts_for_less)
{
  Aeroplane *made = with_surface (aeroplane_new (), "wing", ROLE_WING, rectangle (0, 600, 100));
  g_autoptr (Aeroplane) full = with_lossless_tail (aeroplane_ref (made), rectangle (300, 200, 50), 30);
  g_autoptr (Aeroplane) slower = with_surface (made, "tail", ROLE_TAILPLANE, rectangle (300, 200, 50));      /* 0.9 unless told */
  g_autoptr (Figures) with_full = figures_once (full);
  g_autoptr (Figures) with_slower = figures_once (slower);

  ck_assert_double_lt (with_slower->neutral_point.x_mm, with_full->neutral_point.x_mm);
  ck_assert_double_gt (with_slower->neutral_point.x_mm, 23.88 + 0.85 * (with_full->neutral_point.x_mm - 23.88));
}
END_TEST

START_TEST (a_wing_by_itself_is_said_to_be_alone_and_gets_no_mark)
{
  g_autoptr (Aeroplane) aeroplane = with_mark (with_surface (aeroplane_new (), "wing", ROLE_WING, rectangle (0, 600, 100)), 40);
  g_autoptr (Figures) figures = figures_once (aeroplane);

  ck_assert (figures->neutral_point.wing_alone);
  /* Rectangle of aspect ratio 6, lifting-surface theory: 0.23881 of the chord. */
  ck_assert_double_eq_tol (figures->neutral_point.x_mm, 23.881, 0.5);
  ck_assert_double_nan (figures->balance.target_x_mm);
  ck_assert_double_nan (figures->balance.forward_limit_x_mm);
  ck_assert_double_nan (figures->balance.aft_limit_x_mm);
  ck_assert_uint_eq (figures->balance.mark_count, 0);
  ck_assert_double_nan (figures->neutral_point.downwash_gradient);
  ck_assert_ptr_nonnull (note_with (figures, "the wing's alone"));
  ck_assert (figures_are_sound (figures));                     /* a note, no problem */
}
END_TEST

START_TEST (an_aeroplane_that_is_to_have_no_tail_gets_its_mark)
{
  g_autoptr (Aeroplane) made = with_surface (aeroplane_new (), "wing", ROLE_WING, rectangle (0, 600, 100));
  AeroplaneTraits traits = aeroplane_traits (made);

  traits.tailless = true;
  g_autoptr (Aeroplane) aeroplane = aeroplane_with_traits (made, traits);
  g_autoptr (Figures) figures = figures_once (aeroplane);
  ck_assert (!figures->neutral_point.wing_alone);
  ck_assert_double_eq_tol (figures->balance.target_x_mm, figures->neutral_point.x_mm - 12, 1e-9);
  ck_assert_uint_eq (figures->balance.mark_count, 1);
  /* A flying wing may well have no body: its deviation is a plain model's. */
  ck_assert_double_eq_tol (figures->neutral_point.sigma_mm, 2.5, 1e-9);
}
END_TEST

START_TEST (two_wings_are_no_wing_alone)
{
  Aeroplane *made = with_surface (aeroplane_new (), "fore", ROLE_WING, rectangle (0, 500, 90));
  g_autoptr (Aeroplane) aeroplane = with_surface (made, "aft", ROLE_WING, rectangle (320, 500, 90));
  g_autoptr (Figures) figures = figures_once (aeroplane);

  ck_assert (!figures->neutral_point.wing_alone);
  ck_assert_double_gt (figures->neutral_point.x_mm, 90);       /* between the two */
  ck_assert_double_lt (figures->neutral_point.x_mm, 320);
  ck_assert_ptr_nonnull (note_with (figures, "first wing"));
}
END_TEST

START_TEST (a_fin_changes_nothing_but_its_own_figures)
{
  Aeroplane *made = with_surface (aeroplane_new (), "wing", ROLE_WING, rectangle (0, 600, 100));
  g_autoptr (Aeroplane) without = with_lossless_tail (made, rectangle (300, 200, 50), 30);
  g_autoptr (Aeroplane) with = with_surface (aeroplane_ref (without), "fin", ROLE_FIN, taper_from ((double[]) { 0, 80 },
                                             (double[]) { 300, 320 }, (double[]) { 80, 40 }, 2));
  g_autoptr (Figures) before = figures_once (without);
  g_autoptr (Figures) after = figures_once (with);

  ck_assert_double_eq (after->neutral_point.x_mm, before->neutral_point.x_mm);
}
END_TEST

/* The racer's body is slim: common practice expects 1.5 to 3 % of MAC, forward; the wing's downwash behind brings it below slender
 * bodies alone. */
START_TEST (a_body_moves_the_neutral_point_forward_by_a_few_percent)
{
  g_autoptr (Aeroplane) aeroplane = racer ();
  g_autoptr (Figures) figures = figures_once (aeroplane);
  const NeutralPointFigures *point = &figures->neutral_point;
  const double mac = figures->reference->planform.mac;

  ck_assert_double_lt (point->body_shift_mm, -0.005 * mac);
  ck_assert_double_gt (point->body_shift_mm, -0.03 * mac);
  ck_assert_double_eq_tol (point->x_mm, point->lattice_x_mm + point->body_shift_mm, 1e-12);
}
END_TEST

/* Slender-body theory (Munk, NACA Report 184; Multhopp, NACA TM 1036): a body in free flow has (π/2) ∫ w² dx. The body is 0 wide at 0,
 * 70 at 150, 70 at 350 and 20 at 700 mm, 3152064.62910 mm³ per radian, and the wing 30 m behind it, where its upwash has died away. */
START_TEST (a_body_far_ahead_of_its_wing_shifts_the_neutral_point_as_slender_bodies_do)
{
  Body *body = body_new ("body");

  body->outline = polygon_from ((Point[]) { { 0, 0 }, { 150, 35 }, { 350, 35 }, { 700, 10 } }, 4);
  g_autoptr (Aeroplane) made = with_piece (with_surface (aeroplane_new (), "wing", ROLE_WING, rectangle (30000, 600, 100)), body);
  AeroplaneTraits traits = aeroplane_traits (made);
  traits.tailless = true;
  g_autoptr (Aeroplane) aeroplane = aeroplane_with_traits (made, traits);
  g_autoptr (Figures) figures = figures_once (aeroplane);
  const double slope = figures->reference->lift_slope_per_rad;

  ck_assert_double_eq_tol (figures->neutral_point.body_shift_mm, -3152064.62910 / (60000 * slope), 1e-3 * 12);
}
END_TEST

START_TEST (a_body_not_yet_drawn_from_above_is_told_and_not_counted)
{
  Body *body = body_new ("body");
  Aeroplane *made = with_surface (aeroplane_new (), "wing", ROLE_WING, rectangle (100, 600, 100));

  body->side_outline = polygon_from ((Point[]) { { 0, 0 }, { 50, 20 }, { 400, 5 }, { 400, -5 }, { 50, -25 } }, 5);
  g_autoptr (Aeroplane) aeroplane = with_piece (with_lossless_tail (made, rectangle (400, 200, 50), 30), body);
  g_autoptr (Figures) figures = figures_once (aeroplane);
  ck_assert_double_nan (figures->neutral_point.body_shift_mm);
  ck_assert_double_eq (figures->neutral_point.x_mm, figures->neutral_point.lattice_x_mm);
  ck_assert_ptr_nonnull (note_with (figures, "from above"));
}
END_TEST

/* A racer's body is counted; a second one crosses itself from above, a third is seen from the side alone. */
START_TEST (each_body_that_cannot_be_counted_is_named)
{
  g_autoptr (Aeroplane) sound = racer ();
  g_autoptr (Figures) before = figures_once (sound);
  Body *twisted = body_new ("boom"), *upright = body_new ("pod");

  twisted->outline = polygon_from ((Point[]) { { 0, 0 }, { 100, 20 }, { 0, 20 }, { 100, 0 } }, 4);
  upright->side_outline = polygon_from ((Point[]) { { 0, 0 }, { 50, 20 }, { 400, 5 }, { 400, -5 }, { 50, -25 } }, 5);
  g_autoptr (Aeroplane) aeroplane = with_piece (with_piece (aeroplane_ref (sound), twisted), upright);
  g_autoptr (Figures) figures = figures_once (aeroplane);
  ck_assert_double_eq (figures->neutral_point.body_shift_mm, before->neutral_point.body_shift_mm);
  ck_assert_ptr_eq (note_with (figures, "“boom” has no usable outline from above")->piece, &aeroplane_body (aeroplane, 1)->piece);
  ck_assert_ptr_eq (note_with (figures, "“pod” has no usable outline from above")->piece, &aeroplane_body (aeroplane, 2)->piece);
  ck_assert_ptr_null (note_with (figures, "“body” has no usable outline"));
}
END_TEST

/* Builders find a reckoned neutral point out by 2.5 % of the MAC on a plain model, 4 % with a fat body or a big propeller: common
 * practice, no source. */
START_TEST (the_neutral_points_deviation_is_what_builders_find)
{
  g_autoptr (Aeroplane) aeroplane = racer ();
  g_autoptr (Figures) figures = figures_once (aeroplane);
  const NeutralPointFigures *point = &figures->neutral_point;
  const double mac = figures->reference->planform.mac;

  ck_assert_double_ge (point->sigma_mm, 0.025 * mac);
  ck_assert_double_le (point->sigma_mm, 0.045 * mac);
  ck_assert_double_ge (point->sigma_mm, fabs (point->x_mm - point->handbook_x_mm) / 2);
}
END_TEST

START_TEST (without_a_body_its_unknown_shift_is_held_in_the_deviation)
{
  Aeroplane *made = with_surface (aeroplane_new (), "wing", ROLE_WING, rectangle (0, 600, 100));
  g_autoptr (Aeroplane) aeroplane = with_lossless_tail (made, rectangle (300, 200, 50), 30);
  g_autoptr (Figures) figures = figures_once (aeroplane);
  const Contributions *owed = &figures->neutral_point.owed;
  double body = NAN;

  for (size_t i = 0; i < owed->count; i++)
    if (owed->of[i].kind == CONTRIBUTION_BODY)
      body = owed->of[i].sigma;
  ck_assert_double_eq_tol (body, 2.5, 1e-9);
}
END_TEST

START_TEST (two_surfaces_in_one_place_have_no_neutral_point_and_that_is_a_problem)
{
  Aeroplane *made = with_surface (aeroplane_new (), "wing", ROLE_WING, rectangle (0, 600, 100));
  g_autoptr (Aeroplane) aeroplane = with_surface (made, "again", ROLE_WING, rectangle (0, 600, 100));
  g_autoptr (Figures) figures = figures_once (aeroplane);

  ck_assert_double_nan (figures->neutral_point.x_mm);
  ck_assert (note_with (figures, "neutral point cannot be found")->problem);
}
END_TEST

START_TEST (an_open_tailplane_withholds_the_neutral_point_but_not_the_wings_figures)
{
  Aeroplane *made = with_surface (aeroplane_new (), "wing", ROLE_WING, rectangle (0, 600, 100));
  g_autoptr (Aeroplane) aeroplane = with_surface (made, "tail", ROLE_TAILPLANE,
                                                  polygon_from ((Point[]) { { 300, 0 }, { 310, 100 }, { 350, 80 } }, 3));
  g_autoptr (Figures) figures = figures_once (aeroplane);

  ck_assert_double_nan (figures->neutral_point.x_mm);
  ck_assert_double_eq_tol (figures->reference->area_mm2, 60000, 1e-6);
  ck_assert_double_gt (figures->reference->lift_slope_per_rad, 4);
  ck_assert_ptr_nonnull (note_with (figures, "withheld"));
}
END_TEST

START_TEST (an_empty_aeroplane_says_what_is_missing_and_is_not_sound)
{
  g_autoptr (Aeroplane) aeroplane = aeroplane_new ();
  g_autoptr (Figures) figures = figures_once (aeroplane);

  ck_assert (note_with (figures, "no surface yet")->problem);
  ck_assert (!figures_are_sound (figures));
}
END_TEST

START_TEST (a_small_tail_is_told_against_all_wings_area)
{
  Aeroplane *made = with_surface (aeroplane_new (), "lower", ROLE_WING, rectangle (100, 600, 100));
  Surface *upper = surface_new ("upper", ROLE_WING, rectangle (80, 600, 100));

  upper->z = 90;
  made = with_piece (made, upper);
  g_autoptr (Aeroplane) aeroplane = with_lossless_tail (made, rectangle (400, 200, 60), 20);
  g_autoptr (Figures) figures = figures_once (aeroplane);
  const SurfaceFigures *tail = figures_of_surface (figures, "tail");
  ck_assert_double_eq_tol (figures->tail_volume, tail->volume_coefficient / 2, 1e-12);
  ck_assert_double_gt (tail->volume_coefficient, 0.5);         /* on the first wing alone it would look ample */
  ck_assert_double_eq_tol (figures->wing_area_mm2, 120000, 1e-6);
}
END_TEST

static Aeroplane *
wing_and_tail (double tail_x, double tail_span)
{
  return with_lossless_tail (with_surface (aeroplane_new (), "wing", ROLE_WING, rectangle (100, 600, 100)),
                             rectangle (tail_x, tail_span, 40), 30);
}

/* Volume = span × 40 × arm / (600 × 100 × 100), the arm from 125 to the tail's x + 10. */
START_TEST (a_small_tail_of_one_wing_is_told_by_its_volume_alone)
{
  g_autoptr (Aeroplane) aeroplane = wing_and_tail (400, 130);      /* 5200 × 285 / 6e6 = 0.247: below the least, and shown so */
  g_autoptr (Figures) figures = figures_once (aeroplane);
  const Note *note = note_with (figures, "tail volume");

  ck_assert_double_eq_tol (figures->tail_volume, 0.247, 1e-9);
  ck_assert_msg (g_str_has_prefix (note->text, "The tail volume is 0.24. Common practice flies no less than 0.25"), "%s", note->text);
}
END_TEST

START_TEST (a_small_tail_of_two_wings_is_told_against_the_area_of_both)
{
  Surface *upper = surface_new ("upper", ROLE_WING, rectangle (100, 600, 100));

  upper->z = 90;
  g_autoptr (Aeroplane) aeroplane = with_piece (wing_and_tail (400, 130), upper);
  g_autoptr (Figures) figures = figures_once (aeroplane);
  ck_assert_ptr_nonnull (note_with (figures, "The tail volume is 0.12 of all wings' area."));
}
END_TEST

START_TEST (a_tailplane_ahead_of_the_wing_is_never_told_to_grow)
{
  g_autoptr (Aeroplane) aeroplane = wing_and_tail (-100, 130);
  g_autoptr (Figures) figures = figures_once (aeroplane);

  ck_assert_double_lt (figures->tail_volume, 0);
  ck_assert_ptr_nonnull (note_with (figures, "ahead of the wing's quarter chord"));
  ck_assert_ptr_null (note_with (figures, "enlarge"));
  for (guint i = 0; i < figures->notes->len; i++)
    ck_assert_ptr_null (strstr (((const Note *) g_ptr_array_index (figures->notes, i))->text, " -"));     /* no hyphen for a minus */
}
END_TEST

int
main (void)
{
  Suite *suite = suite_create ("figures neutral point");
  TCase *tests = tcase_create ("neutral point");

  tcase_add_test (tests, the_published_pair_of_rectangles_has_its_neutral_point_at_0_469_of_the_chord);
  tcase_add_test (tests, the_published_tapered_pair_has_its_neutral_point_at_112_mm);
  tcase_add_test (tests, a_tail_in_slower_air_counts_for_less);
  tcase_add_test (tests, incidence_and_washout_move_no_neutral_point);
  tcase_add_test (tests, a_wing_by_itself_is_said_to_be_alone_and_gets_no_mark);
  tcase_add_test (tests, an_aeroplane_that_is_to_have_no_tail_gets_its_mark);
  tcase_add_test (tests, two_wings_are_no_wing_alone);
  tcase_add_test (tests, a_fin_changes_nothing_but_its_own_figures);
  tcase_add_test (tests, a_body_moves_the_neutral_point_forward_by_a_few_percent);
  tcase_add_test (tests, a_body_far_ahead_of_its_wing_shifts_the_neutral_point_as_slender_bodies_do);
  tcase_add_test (tests, a_body_not_yet_drawn_from_above_is_told_and_not_counted);
  tcase_add_test (tests, each_body_that_cannot_be_counted_is_named);
  tcase_add_test (tests, the_neutral_points_deviation_is_what_builders_find);
  tcase_add_test (tests, without_a_body_its_unknown_shift_is_held_in_the_deviation);
  tcase_add_test (tests, two_surfaces_in_one_place_have_no_neutral_point_and_that_is_a_problem);
  tcase_add_test (tests, an_open_tailplane_withholds_the_neutral_point_but_not_the_wings_figures);
  tcase_add_test (tests, an_empty_aeroplane_says_what_is_missing_and_is_not_sound);
  tcase_add_test (tests, a_small_tail_is_told_against_all_wings_area);
  tcase_add_test (tests, a_small_tail_of_one_wing_is_told_by_its_volume_alone);
  tcase_add_test (tests, a_small_tail_of_two_wings_is_told_against_the_area_of_both);
  tcase_add_test (tests, a_tailplane_ahead_of_the_wing_is_never_told_to_grow);
  return run_suite (suite, tests);
}
