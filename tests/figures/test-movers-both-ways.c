#include <check.h>
#include <math.h>
#include <string.h>
#include "document/changes.h"
#include "figures/movers.h"
#include "support/aeroplanes.h"
#include "support/figures-once.h"
#include "support/run-suite.h"

/* What is told of a gram, of a part moved and of a part swapped, tail-heavy and nose-heavy.
 * Moments: FAA-H-8083-1, Weight and Balance Handbook, chapter on shifting and on adding or removing weight. */

static const Units metric = { LENGTH_MM, MASS_G };

static Figures *
figures_with_mass (const Aeroplane *aeroplane, const char *id, double mass)
{
  const Piece *piece = aeroplane_find (aeroplane, id);
  Part *next = (Part *) piece_dup (piece);

  next->mass = mass;
  g_autoptr (Aeroplane) made = aeroplane_with_replaced (aeroplane, piece, &next->piece);
  return figures_once (made);
}

/* The motor is so heavy that the battery is wanted aft. */
static Figures *
nose_heavy (void)
{
  g_autoptr (Aeroplane) aeroplane = racer ();

  return figures_with_mass (aeroplane, "motor", 60);
}

static Figures *
tail_heavy (void)
{
  g_autoptr (Aeroplane) aeroplane = racer ();

  return figures_once (aeroplane);
}

static Figures *
with_added (const Figures *figures, double grams, double x)
{
  g_autoptr (Aeroplane) made = with_part (aeroplane_ref (figures->aeroplane), "added", grams, x);

  return figures_once (made);
}

static double
battery_wanted (const Figures *figures)
{
  Movers movers = movers_of (figures);
  double x = NAN;

  for (size_t i = 0; i < movers.count; i++)
    if (g_str_equal (movers.of[i].part->piece.id, "battery"))
      x = movers.of[i].wanted_x_mm;
  movers_clear (&movers);
  return x;
}

static double
battery_mass (const Figures *figures)
{
  return ((const Part *) aeroplane_find (figures->aeroplane, "battery"))->mass;
}

/* Δx of the battery is Δm (x wanted − x of Δm) / m of the battery. */
static void
assert_a_gram_moves_the_battery (const Figures *figures, double x)
{
  g_autoptr (Figures) then = with_added (figures, 1, x);
  const double told = (figures->balance.advised_x_mm - x) / battery_mass (figures);

  ck_assert_double_eq_tol (battery_wanted (then) - battery_wanted (figures), told, 1e-6);
}

START_TEST (a_gram_at_the_nose_lets_the_battery_go_aft_and_one_at_the_tail_wants_it_forward)
{
  g_autoptr (Figures) tail = tail_heavy (), nose = nose_heavy ();
  const Figures *both[] = { tail, nose };

  for (size_t i = 0; i < G_N_ELEMENTS (both); i++)
    {
      assert_a_gram_moves_the_battery (both[i], both[i]->nose_x_mm);
      assert_a_gram_moves_the_battery (both[i], both[i]->tail_x_mm);
      ck_assert_double_lt (both[i]->nose_x_mm, both[i]->balance.advised_x_mm);
      ck_assert_double_gt (both[i]->tail_x_mm, both[i]->balance.advised_x_mm);
    }
}
END_TEST

/* Held against the figures of the aeroplane with just that at that end. */
static void
assert_some_grams_do_what_is_told (const Figures *figures, const Movers *movers)
{
  g_autoptr (Figures) gram = with_added (figures, 1, movers->ballast_x_mm);
  g_autoptr (Figures) some = with_added (figures, MOVERS_SOME_G, movers->ballast_x_mm);

  ck_assert_double_eq_tol (gram->mass.x_mm - figures->mass.x_mm, movers->gram_mm, 1e-9);
  ck_assert_double_eq_tol (some->mass.x_mm - figures->mass.x_mm, movers->some_mm, 1e-9);
}

START_TEST (tail_heavy_ten_grams_at_the_nose_take_the_balance_point_forward_by_what_is_told)
{
  g_autoptr (Figures) figures = tail_heavy ();
  Movers movers = movers_of (figures);

  g_autofree char *ends = movers_ends_text (figures, metric), *told = units_length (metric, -movers.some_mm);
  g_autofree char *wanted = g_strdup_printf ("nose move the balance point %s forward, at the tail", told);

  ck_assert_ptr_nonnull (strstr (ends, wanted));
  ck_assert_double_gt (movers.off_mm, 0);
  ck_assert_double_eq (movers.ballast_x_mm, figures->nose_x_mm);
  ck_assert_double_lt (movers.gram_mm, 0);
  assert_some_grams_do_what_is_told (figures, &movers);
  movers_clear (&movers);
}
END_TEST

START_TEST (nose_heavy_ten_grams_at_the_tail_take_it_aft_by_what_is_told)
{
  g_autoptr (Figures) figures = nose_heavy ();
  Movers movers = movers_of (figures);

  ck_assert_double_lt (movers.off_mm, 0);
  ck_assert_double_eq (movers.ballast_x_mm, figures->tail_x_mm);
  ck_assert_double_gt (movers.gram_mm, 0);
  assert_some_grams_do_what_is_told (figures, &movers);
  movers_clear (&movers);
}
END_TEST

START_TEST (what_drives_the_battery_aft_drives_it_as_far_forward_when_it_goes)
{
  g_autoptr (Aeroplane) aeroplane = racer ();
  const Part *motor = (const Part *) aeroplane_find (aeroplane, "motor");
  g_autoptr (Figures) now = figures_once (aeroplane);
  g_autoptr (Figures) heavier = figures_with_mass (aeroplane, "motor", motor->mass + 5);
  g_autoptr (Figures) lighter = figures_with_mass (aeroplane, "motor", motor->mass - 5);
  const double aft = battery_wanted (heavier) - battery_wanted (now), forward = battery_wanted (lighter) - battery_wanted (now);

  ck_assert_double_gt (aft, 0);
  ck_assert_double_eq_tol (aft, -forward, 1e-6);
  ck_assert_double_eq_tol (aft, 5 * (now->balance.advised_x_mm - motor->x) / battery_mass (now), 1e-6);
}
END_TEST

START_TEST (every_part_is_wanted_forward_tail_heavy_and_aft_nose_heavy)
{
  g_autoptr (Figures) tail = tail_heavy (), nose = nose_heavy ();
  Movers forward = movers_of (tail), aft = movers_of (nose);

  for (size_t i = 0; i < forward.count; i++)
    ck_assert_double_lt (forward.of[i].wanted_x_mm, forward.of[i].part->x);
  for (size_t i = 0; i < aft.count; i++)
    {
      g_autofree char *text = mover_text (&aft, &aft.of[i], metric);
      ck_assert_double_gt (aft.of[i].wanted_x_mm, aft.of[i].part->x);
      ck_assert_ptr_null (text ? strstr (text, "forward") : NULL);
    }
  movers_clear (&forward);
  movers_clear (&aft);
}
END_TEST

/* The moment about the place wanted stays: m (x_t − x) = m' (x_t − x'). */
START_TEST (a_heavier_battery_need_not_go_so_far_from_the_place_wanted)
{
  g_autoptr (Figures) now = tail_heavy ();
  g_autoptr (Figures) swapped = figures_with_mass (now->aeroplane, "battery", 30);
  const double target = now->balance.advised_x_mm;

  ck_assert_double_eq_tol (30 * (target - battery_wanted (swapped)), battery_mass (now) * (target - battery_wanted (now)), 1e-6);
}
END_TEST

/* The rail lets the battery come so near that 0.3 mm are left, which no one is told of in whole millimetres. */
START_TEST (what_is_said_of_one_part_and_of_all_of_them_agrees_below_half_a_millimetre)
{
  g_autoptr (Figures) wide = tail_heavy ();
  const double short_of = 0.3 * wide->mass.total_g / battery_mass (wide);
  g_autoptr (Aeroplane) made = change_part_rail (wide->aeroplane, "battery", battery_wanted (wide) + short_of, 134);
  g_autoptr (Figures) figures = figures_once (made);
  Movers movers = movers_of (figures);
  g_autofree char *one = mover_text (&movers, &movers.of[0], metric), *all = movers_text (&movers, metric);

  ck_assert_double_eq_tol (movers.of[0].left_mm, 0.3, 1e-6);
  ck_assert (movers.of[0].balances);
  ck_assert_ptr_nonnull (strstr (one, "balances"));
  ck_assert (!movers.has_pair);
  ck_assert_ptr_null (all);
  movers_clear (&movers);
}
END_TEST

int
main (void)
{
  TCase *tests = tcase_create ("movers both ways");

  tcase_add_test (tests, a_gram_at_the_nose_lets_the_battery_go_aft_and_one_at_the_tail_wants_it_forward);
  tcase_add_test (tests, tail_heavy_ten_grams_at_the_nose_take_the_balance_point_forward_by_what_is_told);
  tcase_add_test (tests, nose_heavy_ten_grams_at_the_tail_take_it_aft_by_what_is_told);
  tcase_add_test (tests, what_drives_the_battery_aft_drives_it_as_far_forward_when_it_goes);
  tcase_add_test (tests, every_part_is_wanted_forward_tail_heavy_and_aft_nose_heavy);
  tcase_add_test (tests, a_heavier_battery_need_not_go_so_far_from_the_place_wanted);
  tcase_add_test (tests, what_is_said_of_one_part_and_of_all_of_them_agrees_below_half_a_millimetre);
  return run_suite (suite_create ("movers both ways"), tests);
}
