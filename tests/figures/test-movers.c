#include <check.h>
#include <math.h>
#include "document/changes.h"
#include "figures/movers.h"
#include "support/aeroplanes.h"
#include "support/figures-once.h"
#include "support/run-suite.h"

/* What each part can do for the balance, each held against the figures of the aeroplane so changed. */

static const Units metric = { LENGTH_MM, MASS_G };

static Aeroplane *
racer_with_aft_receiver (void)
{
  g_autoptr (Aeroplane) made = racer ();

  return change_part_rail (made, "receiver", 120, 260);
}

static double
balance_of (const Aeroplane *aeroplane)
{
  g_autoptr (Figures) figures = figures_once (aeroplane);

  return figures->mass.x_mm - figures->balance.advised_x_mm;
}

static const Mover *
mover_called (const Movers *movers, const char *id)
{
  for (size_t i = 0; i < movers->count; i++)
    if (g_str_equal (movers->of[i].part->piece.id, id))
      return &movers->of[i];
  ck_abort_msg ("%s is no mover", id);
}

static Aeroplane *
with_mass (const Aeroplane *aeroplane, const Part *part, double mass)
{
  Part *next = (Part *) piece_dup (&part->piece);

  next->mass = mass;
  return aeroplane_with_replaced (aeroplane, &part->piece, &next->piece);
}

START_TEST (each_part_put_where_it_is_told_alone_brings_the_balance_to_the_place_advised)
{
  g_autoptr (Aeroplane) aeroplane = racer_with_aft_receiver ();
  g_autoptr (Figures) figures = figures_once (aeroplane);
  Movers movers = movers_of (figures);

  ck_assert_uint_eq (movers.count, aeroplane_count (aeroplane, PIECE_PART));
  for (size_t i = 0; i < movers.count; i++)
    {
      const Part *part = movers.of[i].part;
      g_autoptr (Aeroplane) moved = change_part_place (aeroplane, part->piece.id, movers.of[i].wanted_x_mm, part->y, part->z);
      ck_assert_double_eq_tol (balance_of (moved), 0, 1e-6);
    }
  movers_clear (&movers);
}
END_TEST

START_TEST (a_part_of_the_mass_told_in_its_place_does_the_same)
{
  g_autoptr (Aeroplane) aeroplane = racer ();
  g_autoptr (Figures) figures = figures_once (aeroplane);
  Movers movers = movers_of (figures);
  const Mover *motor = mover_called (&movers, "motor");
  g_autoptr (Aeroplane) heavier = with_mass (aeroplane, motor->part, motor->wanted_g);

  ck_assert_double_gt (motor->wanted_g, motor->part->mass);
  ck_assert_double_eq_tol (balance_of (heavier), 0, 1e-6);
  movers_clear (&movers);
}
END_TEST

/* By hand: a millimetre of 27 g in M moves it by 27 / M. */
START_TEST (moments_are_mass_by_distance_and_shares_are_of_all_mass)
{
  g_autoptr (Aeroplane) aeroplane = racer ();
  g_autoptr (Figures) figures = figures_once (aeroplane);
  Movers movers = movers_of (figures);
  const Mover *battery = mover_called (&movers, "battery");

  ck_assert_double_eq_tol (battery->share, 27 / figures->mass.total_g, 1e-9);
  ck_assert_double_eq_tol (battery->moment_g_mm, 27 * (124 - figures->mass.x_mm), 1e-9);
  movers_clear (&movers);
}
END_TEST

START_TEST (the_most_useful_comes_first_and_says_what_it_does)
{
  g_autoptr (Aeroplane) aeroplane = racer_with_aft_receiver ();
  g_autoptr (Figures) figures = figures_once (aeroplane);
  Movers movers = movers_of (figures);
  g_autofree char *text = mover_text (&movers, &movers.of[0], metric);

  ck_assert_str_eq (movers.of[0].part->piece.id, "battery");
  ck_assert_double_eq (movers.of[0].left_mm, 0);
  ck_assert (movers.of[1].can_move && !movers.of[2].can_move);
  ck_assert_ptr_nonnull (strstr (text, "forward balances"));
  ck_assert (!movers.has_pair);
  movers_clear (&movers);
}
END_TEST

/* The rail ends 4 mm short; the receiver does the rest. */
START_TEST (where_no_part_does_it_alone_two_do_it_together)
{
  g_autoptr (Aeroplane) wide = racer_with_aft_receiver ();
  g_autoptr (Figures) before = figures_once (wide);
  const double wanted = figures_solution (before, "battery")->x_mm;
  g_autoptr (Aeroplane) aeroplane = change_part_rail (wide, "battery", wanted + 4, 134);
  g_autoptr (Figures) figures = figures_once (aeroplane);
  Movers movers = movers_of (figures);
  g_autofree char *text = movers_text (&movers, metric);

  ck_assert (movers.has_pair);
  ck_assert_str_eq (movers.pair.first->part->piece.id, "battery");
  ck_assert_str_eq (movers.pair.second->part->piece.id, "receiver");
  g_autoptr (Aeroplane) one = change_part_place (aeroplane, "battery", movers.pair.first_x_mm, 0, 0);
  g_autoptr (Aeroplane) both = change_part_place (one, "receiver", movers.pair.second_x_mm, 0, 8);
  ck_assert_double_eq_tol (balance_of (both), 0, 1e-6);
  ck_assert_ptr_nonnull (strstr (text, "together"));
  movers_clear (&movers);
}
END_TEST

START_TEST (where_nothing_does_it_the_ballast_and_the_worth_of_a_gram_are_told)
{
  g_autoptr (Aeroplane) wide = racer ();
  g_autoptr (Aeroplane) aeroplane = change_part_rail (wide, "battery", 123, 134);
  g_autoptr (Figures) figures = figures_once (aeroplane);
  Movers movers = movers_of (figures);
  g_autofree char *text = movers_text (&movers, metric);
  Part *lead = part_new ("lead", "ballast");

  ck_assert_double_gt (movers.ballast_g, 0);
  ck_assert_double_lt (movers.gram_mm, 0);
  ck_assert_ptr_nonnull (strstr (text, "missing in the nose end of the body; 10"));
  g_autofree char *inches = movers_text (&movers, (Units) { LENGTH_INCH, MASS_OZ });
  ck_assert_ptr_nonnull (strstr (inches, "oz there move the balance point"));
  ck_assert_ptr_null (strstr (inches, "mm"));
  lead->mass = movers.ballast_g;
  lead->x = movers.ballast_x_mm;
  g_autoptr (Aeroplane) leaded = aeroplane_with_added (aeroplane, &lead->piece);
  ck_assert_double_eq_tol (balance_of (leaded), 0, 1e-6);
  movers_clear (&movers);
}
END_TEST

/* With so short a rail much is wanted of light parts: most of them would have to be ahead of the nose. */
START_TEST (no_part_is_told_of_a_place_that_it_cannot_be_in)
{
  g_autoptr (Aeroplane) wide = racer ();
  g_autoptr (Aeroplane) aeroplane = change_part_rail (wide, "battery", 123, 134);
  g_autoptr (Figures) figures = figures_once (aeroplane);
  Movers movers = movers_of (figures);
  size_t beyond = 0;

  for (size_t i = 0; i < movers.count; i++)
    {
      const Mover *mover = &movers.of[i];
      g_autofree char *text = mover_text (&movers, mover, metric);
      if (mover->can_move)
        ck_assert (mover->told_x_mm >= 123 && mover->told_x_mm <= 134);
      else if (isfinite (mover->told_x_mm))
        ck_assert (mover->told_x_mm >= fmin (figures->nose_x_mm, mover->part->x) && mover->told_x_mm <= figures->tail_x_mm);
      else
        ck_assert (!text || !strstr (text, "forward"));
      beyond += mover->wanted_x_mm < figures->nose_x_mm;
    }
  ck_assert_uint_ge (beyond, 1);
  movers_clear (&movers);
}
END_TEST

/* 100 mm further forward would be in the body, but ahead of the wing's leading edge. */
START_TEST (a_part_fixed_to_the_wing_is_told_of_no_place_off_its_chord)
{
  g_autoptr (Aeroplane) made = racer ();
  Part *servo = (Part *) piece_dup (&aeroplane_part_by_id (made, "servo-left")->piece);

  g_free (servo->of);
  servo->of = g_strdup ("wing");
  g_autoptr (Aeroplane) aeroplane = aeroplane_with_replaced (made, &aeroplane_part_by_id (made, "servo-left")->piece, &servo->piece);
  g_autoptr (Figures) figures = figures_once (aeroplane);
  Movers movers = movers_of (figures);
  const Mover *mover = mover_called (&movers, "servo-left");

  ck_assert_double_gt (mover->wanted_x_mm, figures->nose_x_mm + 20);
  ck_assert_double_lt (mover->wanted_x_mm, 100);
  ck_assert_double_nan (mover->told_x_mm);
  movers_clear (&movers);
}
END_TEST

/* It stands where its rail ends. */
START_TEST (a_part_at_the_end_of_its_rail_says_that_it_goes_no_further)
{
  g_autoptr (Aeroplane) wide = racer ();
  g_autoptr (Aeroplane) aeroplane = change_part_rail (wide, "battery", 124, 134);
  g_autoptr (Figures) figures = figures_once (aeroplane);
  Movers movers = movers_of (figures);
  g_autofree char *text = mover_text (&movers, mover_called (&movers, "battery"), metric);

  ck_assert (g_str_has_prefix (text, "goes no further that way"));
  movers_clear (&movers);
}
END_TEST

START_TEST (without_a_target_there_are_none)
{
  g_autoptr (Aeroplane) aeroplane = with_part (aeroplane_new (), "pack", 27, 100);
  g_autoptr (Figures) figures = figures_once (aeroplane);
  Movers movers = movers_of (figures);

  ck_assert_uint_eq (movers.count, 0);
  ck_assert_double_nan (movers.ballast_g);
  ck_assert_ptr_null (movers_text (&movers, metric));
  movers_clear (&movers);
}
END_TEST

static Aeroplane *
after (Aeroplane *takes, Aeroplane *next)
{
  aeroplane_unref (takes);
  return next;
}

/* Every two of 500 are tried, and none of them balances it: bays and bodies are looked into once for each part. */
START_TEST (of_many_parts_in_bays_none_does_it_alone_nor_together)
{
  Aeroplane *made = racer ();
  made = after (made, change_named_place_added (made, "body", 100));
  made = after (made, change_named_place_added (made, "body", 260));
  made = after (made, change_bay_added (made, "F1", "F2", NULL));
  for (int i = 0; i < 500; i++)
    {
      Part *part = part_new (NULL, "other");
      part->mass = 1;
      part->x = 250;
      part->length = part->width = part->height = 1;
      part->bays = g_strdup (i % 2 ? "bay" : "bay bay");
      part->has_rail = true;
      part->rail_from = 249;
      part->rail_to = 250;
      made = with_piece (made, part);
    }
  g_autoptr (Aeroplane) aeroplane = made;
  g_autoptr (Figures) figures = figures_once (aeroplane);
  Movers movers = movers_of (figures);

  ck_assert_uint_eq (movers.count, aeroplane_count (aeroplane, PIECE_PART));
  ck_assert (movers.of[0].can_move && movers.of[0].left_mm > 0 && !movers.has_pair);
  movers_clear (&movers);
}
END_TEST

START_TEST (without_parts_the_ballast_is_told)
{
  Aeroplane *made = racer ();
  while (aeroplane_count (made, PIECE_PART))
    made = after (made, aeroplane_without_dependents (made, &aeroplane_part (made, 0)->piece));
  g_autoptr (Aeroplane) aeroplane = made;
  g_autoptr (Figures) figures = figures_once (aeroplane);
  Movers movers = movers_of (figures);

  ck_assert_uint_eq (movers.count, 0);
  ck_assert_double_gt (movers.ballast_g, 0);
  movers_clear (&movers);
}
END_TEST

int
main (void)
{
  TCase *tests = tcase_create ("movers");

  tcase_add_test (tests, each_part_put_where_it_is_told_alone_brings_the_balance_to_the_place_advised);
  tcase_add_test (tests, a_part_of_the_mass_told_in_its_place_does_the_same);
  tcase_add_test (tests, moments_are_mass_by_distance_and_shares_are_of_all_mass);
  tcase_add_test (tests, the_most_useful_comes_first_and_says_what_it_does);
  tcase_add_test (tests, where_no_part_does_it_alone_two_do_it_together);
  tcase_add_test (tests, where_nothing_does_it_the_ballast_and_the_worth_of_a_gram_are_told);
  tcase_add_test (tests, no_part_is_told_of_a_place_that_it_cannot_be_in);
  tcase_add_test (tests, a_part_fixed_to_the_wing_is_told_of_no_place_off_its_chord);
  tcase_add_test (tests, a_part_at_the_end_of_its_rail_says_that_it_goes_no_further);
  tcase_add_test (tests, without_a_target_there_are_none);
  tcase_add_test (tests, of_many_parts_in_bays_none_does_it_alone_nor_together);
  tcase_add_test (tests, without_parts_the_ballast_is_told);
  return run_suite (suite_create ("movers"), tests);
}
