#include <check.h>
#include <math.h>
#include "figures/figures.h"
#include "support/aeroplanes.h"
#include "support/figures-once.h"
#include "support/run-suite.h"
#include "support/shapes.h"

/* FAA-H-8083-1: leading edge of the MAC at 144, its trailing edge at 206, balance at 161: 27.4 %. */
START_TEST (the_handbooks_balance_point_is_27_4_percent_of_the_mean_chord)
{
  Aeroplane *made = with_surface (aeroplane_new (), "wing", ROLE_WING, rectangle (144, 400, 62));
  g_autoptr (Aeroplane) aeroplane = with_part (made, "load", 100, 161);
  g_autoptr (Figures) figures = figures_once (aeroplane);

  ck_assert_double_eq_tol (figures->reference->planform.mac, 62, 1e-9);
  ck_assert_double_eq_tol (figures->balance.percent_mac, 27.4, 0.05);
  ck_assert_double_eq_tol (figures->balance.percent_mac, 100 * 17 / 62.0, 1e-9);
}
END_TEST

START_TEST (margin_target_and_limits_are_counted_from_the_neutral_point)
{
  g_autoptr (Aeroplane) aeroplane = racer ();
  g_autoptr (Figures) figures = figures_once (aeroplane);
  const BalanceFigures *balance = &figures->balance;
  const double mac = figures->reference->planform.mac, x = figures->neutral_point.x_mm;

  ck_assert_double_eq_tol (balance->static_margin_percent, 100 * (x - figures->mass.x_mm) / mac, 1e-9);
  ck_assert_double_eq_tol (balance->static_margin_sigma_percent,
                           100 * hypot (figures->neutral_point.sigma_mm, figures->mass.x_sigma_mm) / mac, 1e-9);
  ck_assert_double_eq_tol (balance->target_x_mm, x - 0.12 * mac, 1e-9);
  ck_assert_double_eq_tol (balance->forward_limit_x_mm, x - 0.15 * mac, 1e-9);
  ck_assert_double_eq_tol (balance->aft_limit_x_mm, x - 0.05 * mac, 1e-9);
}
END_TEST

START_TEST (the_wanted_band_is_the_aeroplanes_own)
{
  g_autoptr (Aeroplane) made = racer ();
  AeroplaneTraits traits = aeroplane_traits (made);

  traits.target = (Target) { .from = 7, .to = 19, .aim = 13.5 };
  g_autoptr (Aeroplane) aeroplane = aeroplane_with_traits (made, traits);
  g_autoptr (Figures) figures = figures_once (aeroplane);
  const double mac = figures->reference->planform.mac, x = figures->neutral_point.x_mm;
  ck_assert_double_eq_tol (figures->balance.target_x_mm, x - 0.135 * mac, 1e-9);
  ck_assert_double_eq_tol (figures->balance.forward_limit_x_mm, x - 0.19 * mac, 1e-9);
  ck_assert_double_eq_tol (figures->balance.aft_limit_x_mm, x - 0.07 * mac, 1e-9);
}
END_TEST

/* The local leading edge of the ellipse at station 40, by its equation. */
START_TEST (a_mark_stands_aft_of_the_local_leading_edge)
{
  g_autoptr (Aeroplane) aeroplane = racer ();
  g_autoptr (Figures) figures = figures_once (aeroplane);
  const MarkFigures *mark = &figures->balance.marks[0];
  const double leading_edge = 157 - 45 * sqrt (1 - 40.0 * 40 / (320.0 * 320));

  ck_assert_uint_eq (figures->balance.mark_count, 1);
  ck_assert_double_eq_tol (mark->target_mm, figures->balance.target_x_mm - leading_edge, 1e-7);
  ck_assert_double_eq_tol (mark->forward_mm, figures->balance.forward_limit_x_mm - leading_edge, 1e-7);
  ck_assert_double_eq_tol (mark->aft_mm, figures->balance.aft_limit_x_mm - leading_edge, 1e-7);
}
END_TEST

START_TEST (a_mark_beyond_the_tip_has_no_figures_and_a_note)
{
  g_autoptr (Aeroplane) aeroplane = with_mark (racer (), 333);
  g_autoptr (Figures) figures = figures_once (aeroplane);

  ck_assert_uint_eq (figures->balance.mark_count, 2);
  ck_assert_double_nan (figures->balance.marks[1].target_mm);
  ck_assert_ptr_eq (note_with (figures, "does not meet the wing")->piece, aeroplane_nth (aeroplane, PIECE_MARK, 1));
  ck_assert_ptr_nonnull (note_with (figures, "Balance mark 2 does not"));      /* a station would be in one unit for all readers */
}
END_TEST

/* The racer's body is 26 mm to a side there: fingers 15 mm beside it, in whole fives. */
START_TEST (without_a_mark_a_usual_station_beside_the_body_is_taken)
{
  g_autoptr (Aeroplane) marked = racer ();
  g_autoptr (Aeroplane) aeroplane = aeroplane_without (marked, aeroplane_nth (marked, PIECE_MARK, 0));
  g_autoptr (Figures) figures = figures_once (aeroplane);

  ck_assert_uint_eq (figures->balance.mark_count, 1);
  ck_assert_double_eq (figures->balance.marks[0].station_mm, 40);
  ck_assert_ptr_nonnull (note_with (figures, "usual station"));
}
END_TEST

/* A wing of 8 mm: half way to the tip. */
START_TEST (the_usual_station_of_the_smallest_wing_still_lies_on_it)
{
  Aeroplane *made = with_surface (aeroplane_new (), "wing", ROLE_WING, rectangle (10, 8, 2));
  g_autoptr (Aeroplane) aeroplane = with_surface (made, "tail", ROLE_TAILPLANE, rectangle (16, 4, 1));
  g_autoptr (Figures) figures = figures_once (aeroplane);

  ck_assert_double_eq_tol (figures->balance.marks[0].station_mm, 2, 1e-12);
  ck_assert_double_eq_tol (figures->balance.marks[0].target_mm, figures->balance.target_x_mm - 10, 1e-9);
  ck_assert_ptr_null (note_with (figures, "does not meet the wing"));
}
END_TEST

static Aeroplane *
racer_with_battery_at (double x)
{
  g_autoptr (Aeroplane) made = racer ();
  const Part *old = aeroplane_part_by_id (made, "battery");
  Part *battery = (Part *) piece_dup (&old->piece);

  battery->x = x;
  return aeroplane_with_replaced (made, &old->piece, &battery->piece);
}

START_TEST (the_battery_put_where_it_is_told_balances_on_the_aim)
{
  g_autoptr (Aeroplane) first = racer ();
  g_autoptr (Figures) before = figures_once (first);
  const Solution *solution = figures_solution (before, "battery");
  g_autoptr (Aeroplane) moved = racer_with_battery_at (solution->x_mm);
  g_autoptr (Figures) after = figures_once (moved);

  ck_assert (solution->reachable);
  ck_assert_double_eq (solution->ballast_g, 0);
  ck_assert_double_nan (solution->ballast_x_mm);
  ck_assert_double_eq_tol (after->mass.x_mm, after->balance.target_x_mm, 1e-9);
  ck_assert_double_eq_tol (after->balance.static_margin_percent, 12, 1e-8);
}
END_TEST

START_TEST (the_band_of_places_is_clipped_to_the_rail)
{
  g_autoptr (Aeroplane) aeroplane = racer ();
  g_autoptr (Figures) figures = figures_once (aeroplane);
  const Solution *solution = figures_solution (figures, "battery");
  g_autoptr (Aeroplane) moved = racer_with_battery_at (solution->band_from_mm);
  g_autoptr (Figures) foremost = figures_once (moved);

  ck_assert_double_eq_tol (foremost->balance.static_margin_percent, 15, 1e-8);
  ck_assert_double_eq_tol (solution->band_to_mm, 134, 1e-9);    /* the rail ends before the aft limit */
}
END_TEST

START_TEST (a_tail_heavy_racer_gets_its_ballast_at_the_bodys_nose)
{
  g_autoptr (Aeroplane) aeroplane = with_part (racer (), "anchor", 9, 440);
  g_autoptr (Figures) figures = figures_once (aeroplane);
  const Solution *solution = figures_solution (figures, "battery");

  ck_assert (!solution->reachable);
  ck_assert_double_lt (solution->x_mm, 82);
  ck_assert_double_eq_tol (solution->ballast_x_mm, 0, 1e-12);
  ck_assert_double_gt (solution->ballast_g, 0);
  ck_assert_ptr_nonnull (note_with (figures, "ends too far aft"));
}
END_TEST

START_TEST (a_nose_heavy_racer_gets_its_ballast_at_the_bodys_tail)
{
  g_autoptr (Aeroplane) aeroplane = with_part (racer (), "iron", 25, 10);
  g_autoptr (Figures) figures = figures_once (aeroplane);
  const Solution *solution = figures_solution (figures, "battery");

  ck_assert (!solution->reachable);
  ck_assert_double_gt (solution->x_mm, 134);
  ck_assert_double_eq_tol (solution->ballast_x_mm, 463, 1e-9);
  ck_assert_ptr_nonnull (note_with (figures, "ends too far forward"));
}
END_TEST

START_TEST (without_a_body_ballast_goes_to_the_ends_of_the_outlines)
{
  Aeroplane *made = with_surface (aeroplane_new (), "wing", ROLE_WING, rectangle (100, 600, 100));

  made = with_surface (made, "tail", ROLE_TAILPLANE, rectangle (400, 220, 60));
  g_autoptr (Aeroplane) aeroplane = with_battery (with_part (made, "motor", 60, 130), 20, 120, 110, 115);
  g_autoptr (Figures) figures = figures_once (aeroplane);
  ck_assert_double_eq_tol (figures_solution (figures, "battery")->ballast_x_mm, 460, 1e-9);     /* nose-heavy */
  ck_assert_double_eq_tol (figures->nose_x_mm, 100, 1e-9);
}
END_TEST

START_TEST (a_part_left_ashore_is_placed_as_if_it_came_aboard)
{
  g_autoptr (Aeroplane) made = racer ();
  const Part *old = aeroplane_part_by_id (made, "battery");
  Part *ashore = (Part *) piece_dup (&old->piece);
  g_autoptr (Figures) aboard = figures_once (made);

  ashore->aboard = false;
  g_autoptr (Aeroplane) aeroplane = aeroplane_with_replaced (made, &old->piece, &ashore->piece);
  g_autoptr (Figures) figures = figures_once (aeroplane);
  ck_assert_double_eq_tol (figures->mass.total_g, aboard->mass.total_g - 27, 1e-9);
  ck_assert_double_eq_tol (figures_solution (figures, "battery")->x_mm, figures_solution (aboard, "battery")->x_mm, 1e-9);
}
END_TEST

START_TEST (a_negative_margin_is_a_problem_and_the_figures_are_not_sound)
{
  g_autoptr (Aeroplane) aeroplane = with_part (racer (), "anchor", 30, 440);
  g_autoptr (Figures) figures = figures_once (aeroplane);
  const Note *first = g_ptr_array_index (figures->notes, 0);

  ck_assert_double_lt (figures->balance.static_margin_percent, 0);
  ck_assert (!figures_are_sound (figures));
  ck_assert (first->problem);                                  /* the gravest stands first */
  ck_assert_ptr_nonnull (strstr (first->text, "do not fly"));
}
END_TEST

START_TEST (a_margin_outside_its_band_is_a_note_and_no_problem)
{
  g_autoptr (Aeroplane) nose = with_part (racer (), "iron", 25, 10);
  g_autoptr (Aeroplane) tail = with_part (racer (), "anchor", 4, 440);
  g_autoptr (Figures) nose_heavy = figures_once (nose);
  g_autoptr (Figures) tail_heavy = figures_once (tail);

  ck_assert_int_eq (note_with (nose_heavy, "Nose-heavy")->severity, NOTE_LOOK);
  ck_assert_int_eq (note_with (tail_heavy, "Tail-heavy")->severity, NOTE_ACT);
  ck_assert (figures_are_sound (nose_heavy));
  ck_assert (figures_are_sound (tail_heavy));
}
END_TEST

/* 0.25 kg on an ellipse of 640 × 120: 41.4465998 g/dm², 16.8757606 kg/m³, and 8.14613766 m/s at a lift coefficient of 1 in the standard
 * atmosphere (closed forms; the stall goes with 1/√C_L). */
START_TEST (loadings_and_stall_follow_the_closed_forms)
{
  Aeroplane *made = with_surface (aeroplane_new (), "wing", ROLE_WING, ellipse_from (0, 320, 60, 60));
  g_autoptr (Aeroplane) aeroplane = with_part (made, "all", 250, 40);
  g_autoptr (Figures) figures = figures_once (aeroplane);
  const FlightFigures *flight = &figures->flight;

  ck_assert_double_eq_tol (flight->wing_loading_g_dm2, 41.4465998, 1e-7);
  ck_assert_double_eq_tol (flight->cube_loading_kg_m3, 16.8757606, 1e-7);
  ck_assert_double_eq_tol (flight->stall_speed_m_s * sqrt (flight->lift_max), 8.14613766, 1e-5);    /* density to five digits */
  ck_assert_double_nan (flight->pitch_speed_m_s);
  ck_assert_ptr_nonnull (note_with (figures, "pitch speed"));
}
END_TEST

/* Common practice, no source: flat-bottomed sections, the middle of the band: 0.775 at 30,000, 0.925 at 60,000. The figures agree among
 * themselves: V c / ν with ν of the standard atmosphere, 1.46072e-5 m²/s. */
START_TEST (the_greatest_lift_is_the_trades_at_the_stalls_own_reynolds_number)
{
  Aeroplane *made = with_surface (aeroplane_new (), "wing", ROLE_WING, ellipse_from (0, 320, 60, 60));
  g_autoptr (Aeroplane) aeroplane = with_part (made, "all", 120, 40);
  g_autoptr (Figures) figures = figures_once (aeroplane);
  const FlightFigures *flight = &figures->flight;

  ck_assert_double_eq_tol (flight->reynolds_mac, flight->stall_speed_m_s * 0.101859163579 / 1.46072e-5, 1e-4 * flight->reynolds_mac);
  ck_assert_double_gt (flight->reynolds_mac, 30000);
  ck_assert_double_lt (flight->reynolds_mac, 60000);
  ck_assert_double_eq_tol (flight->lift_max, 0.775 + 0.15 * (flight->reynolds_mac - 30000) / 30000, 1e-9);
}
END_TEST

int
main (void)
{
  Suite *suite = suite_create ("figures balance");
  TCase *tests = tcase_create ("balance");

  tcase_add_test (tests, the_handbooks_balance_point_is_27_4_percent_of_the_mean_chord);
  tcase_add_test (tests, margin_target_and_limits_are_counted_from_the_neutral_point);
  tcase_add_test (tests, the_wanted_band_is_the_aeroplanes_own);
  tcase_add_test (tests, a_mark_stands_aft_of_the_local_leading_edge);
  tcase_add_test (tests, a_mark_beyond_the_tip_has_no_figures_and_a_note);
  tcase_add_test (tests, without_a_mark_a_usual_station_beside_the_body_is_taken);
  tcase_add_test (tests, the_usual_station_of_the_smallest_wing_still_lies_on_it);
  tcase_add_test (tests, the_battery_put_where_it_is_told_balances_on_the_aim);
  tcase_add_test (tests, the_band_of_places_is_clipped_to_the_rail);
  tcase_add_test (tests, a_tail_heavy_racer_gets_its_ballast_at_the_bodys_nose);
  tcase_add_test (tests, a_nose_heavy_racer_gets_its_ballast_at_the_bodys_tail);
  tcase_add_test (tests, without_a_body_ballast_goes_to_the_ends_of_the_outlines);
  tcase_add_test (tests, a_part_left_ashore_is_placed_as_if_it_came_aboard);
  tcase_add_test (tests, a_negative_margin_is_a_problem_and_the_figures_are_not_sound);
  tcase_add_test (tests, a_margin_outside_its_band_is_a_note_and_no_problem);
  tcase_add_test (tests, loadings_and_stall_follow_the_closed_forms);
  tcase_add_test (tests, the_greatest_lift_is_the_trades_at_the_stalls_own_reynolds_number);
  return run_suite (suite, tests);
}
