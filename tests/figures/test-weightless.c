#include <check.h>
#include <math.h>
#include "figures/advice.h"
#include "figures/report.h"
#include "support/aeroplanes.h"
#include "support/figures-once.h"
#include "support/run-suite.h"

/* What weighs nothing yet is asked for before anything is said about where weight should go. */

static const Units metric = { LENGTH_MM, MASS_G };

/* The racer with these masses of its structures; NAN takes the structure away. */
typedef struct { double wing, tail, fin, body; } Masses;

static Aeroplane *
with_mass_of (Aeroplane *takes, const char *id, double mass)
{
  g_autoptr (Aeroplane) aeroplane = takes;
  const Piece *old = aeroplane_find (aeroplane, id);
  Structure *structure = (Structure *) piece_dup (old);

  structure->mass = mass;
  if (!isnan (mass))
    return aeroplane_with_replaced (aeroplane, old, &structure->piece);
  piece_unref (&structure->piece);
  return aeroplane_without (aeroplane, old);
}

static Aeroplane *
racer_weighing (Masses masses)
{
  Aeroplane *made = racer ();

  made = with_mass_of (made, "wing-structure", masses.wing);
  made = with_mass_of (made, "tail-structure", masses.tail);
  made = with_mass_of (made, "fin-structure", masses.fin);
  return with_mass_of (made, "body-structure", masses.body);
}

/* The racer with its battery so heavy and there. */
static Aeroplane *
with_the_battery (Aeroplane *takes, double mass, double x)
{
  g_autoptr (Aeroplane) aeroplane = takes;
  const Piece *old = aeroplane_find (aeroplane, "battery");
  Part *battery = (Part *) piece_dup (old);

  battery->mass = mass, battery->x = x;
  return aeroplane_with_replaced (aeroplane, old, &battery->piece);
}

static Advice *
advice_on (const Aeroplane *aeroplane, Figures **figures)
{
  *figures = figures_once (aeroplane);
  return advice_new (*figures, metric);
}

static const struct { Masses masses; const char *headline; } asked[] = {
  { { 0, 0, 0, 0 }, "The airframe has no mass yet: type what wing, tail and body weigh." },
  { { 0, NAN, NAN, NAN }, "The airframe has no mass yet: type what wing, tail and body weigh." },
  { { 24, 4, 2, 0 }, "The body has no mass yet: type what it weighs." },
  { { 24, 4, 2, NAN }, "The body has no mass yet: type what it weighs." },
  { { 0, 4, 2, 34 }, "The wing has no mass yet: type what it weighs." },
  { { 24, 0, 2, 34 }, "The tailplane has no mass yet: type what it weighs." },
  { { 24, 4, 0, 34 }, "The fin has no mass yet: type what it weighs." },
  { { 24, 4, 0, 0 }, "Type what the fin and the body weigh: they have no mass yet." },
  { { 24, 0, NAN, 0 }, "Type what the tailplane, the fin and the body weigh: they have no mass yet." },
};

START_TEST (what_has_no_mass_is_asked_for_before_weight_is_moved)
{
  g_autoptr (Aeroplane) aeroplane = racer_weighing (asked[_i].masses);
  g_autoptr (Figures) figures = NULL;
  Advice *advice = advice_on (aeroplane, &figures);

  ck_assert_double_gt (figures->balance.static_margin_percent, 0);
  ck_assert_str_eq (advice->headline, asked[_i].headline);
  advice_free (advice);
}
END_TEST

START_TEST (a_structure_of_nothing_is_noted_as_none_is)
{
  g_autoptr (Aeroplane) nothing = racer_weighing ((Masses) { 0, 4, 2, 34 }), none = racer_weighing ((Masses) { NAN, 4, 2, 34 });
  g_autoptr (Figures) of_nothing = figures_once (nothing), of_none = figures_once (none);

  ck_assert_ptr_nonnull (note_with (of_nothing, "“wing” has no mass yet"));
  ck_assert_ptr_nonnull (note_with (of_none, "“wing” has no mass yet"));
  ck_assert_ptr_null (note_with (of_nothing, "“body” has no mass yet"));
  ck_assert_uint_eq (of_nothing->notes->len, of_none->notes->len);
}
END_TEST

static const struct { Masses masses; double battery; const char *second; } dangers[] = {
  { { 24, 4, 2, 0 }, 27, "The body has no mass yet." },
  { { 24, 4, 0, 0 }, 27, "Some of what is drawn has no mass yet." },
  { { 0, 0, 0, 0 }, 27, "The airframe has no mass yet." },
  { { 24, 4, 2, 34 }, 0, "The battery weighs nothing." },
};

/* A heavy thing at the tail makes it dangerous whatever else weighs nothing. */
START_TEST (a_negative_margin_stands_first_and_what_weighs_nothing_beneath)
{
  g_autoptr (Aeroplane) made = with_the_battery (racer_weighing (dangers[_i].masses), dangers[_i].battery, 124);
  g_autoptr (Aeroplane) aeroplane = with_part (aeroplane_ref (made), "lead", 60, 440);
  g_autoptr (Figures) figures = NULL;
  Advice *advice = advice_on (aeroplane, &figures);

  ck_assert_double_lt (figures->balance.static_margin_percent, 0);
  ck_assert (g_str_has_prefix (advice->headline, "Tail-heavy: do not fly."));
  ck_assert (g_str_has_prefix (advice->second, "Limits ") || strstr (advice->second, " Limits "));
  ck_assert_msg (g_str_has_suffix (advice->second, dangers[_i].second), "%s", advice->second);
  advice_free (advice);
}
END_TEST

START_TEST (a_weighed_aeroplane_is_told_nothing_of_it)
{
  g_autoptr (Aeroplane) aeroplane = with_part (racer (), "lead", 60, 440);
  g_autoptr (Figures) figures = NULL;
  Advice *advice = advice_on (aeroplane, &figures);

  ck_assert_ptr_null (strstr (advice->second, "no mass"));
  ck_assert_ptr_null (strstr (advice->second, "weighs nothing"));
  advice_free (advice);
}
END_TEST

/* Sliding it would do nothing, and weight taken from the nose would be wrong once it weighs something. */
START_TEST (a_battery_that_weighs_nothing_is_told)
{
  g_autoptr (Aeroplane) aeroplane = with_the_battery (racer (), 0, 124);
  g_autoptr (Figures) figures = NULL;
  Advice *advice = advice_on (aeroplane, &figures);

  ck_assert_str_eq (advice->headline, "The battery weighs nothing, so moving it balances nothing. Type its mass.");
  advice_free (advice);
}
END_TEST

/* Two alike are told apart by their names. */
START_TEST (of_two_wings_the_one_without_mass_is_named)
{
  Surface *lower = surface_new ("lower", ROLE_WING, rectangle (140, 500, 80));

  lower->z = -90;
  g_autoptr (Aeroplane) aeroplane = with_piece (racer (), lower);
  g_autoptr (Figures) figures = NULL;
  Advice *advice = advice_on (aeroplane, &figures);

  ck_assert_str_eq (advice->headline, "“lower” has no mass yet: type what it weighs.");
  advice_free (advice);
}
END_TEST

int
main (void)
{
  Suite *suite = suite_create ("figures weightless");
  TCase *tests = tcase_create ("weightless");

  tcase_add_loop_test (tests, what_has_no_mass_is_asked_for_before_weight_is_moved, 0, G_N_ELEMENTS (asked));
  tcase_add_test (tests, a_structure_of_nothing_is_noted_as_none_is);
  tcase_add_loop_test (tests, a_negative_margin_stands_first_and_what_weighs_nothing_beneath, 0, G_N_ELEMENTS (dangers));
  tcase_add_test (tests, a_weighed_aeroplane_is_told_nothing_of_it);
  tcase_add_test (tests, a_battery_that_weighs_nothing_is_told);
  tcase_add_test (tests, of_two_wings_the_one_without_mass_is_named);
  return run_suite (suite, tests);
}
