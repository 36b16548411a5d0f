#include <check.h>
#include "document/changes.h"
#include "document/plan-marks.h"
#include "figures/advice.h"
#include "figures/passed-click.h"
#include "figures/place-notes.h"
#include "figures/report.h"
#include "support/aeroplanes.h"
#include "support/figures-once.h"
#include "support/run-suite.h"

/* What was traced in a view of the plan that stands only where such a thing usually does is said to be a guess. */

static const struct { const char *id; bool for_now, is_body, from_the_side; } traced[] = {
  { "tail", true, false, false }, { "tail", false, false, false }, { "body", true, true, false }, { "body", true, true, true },
};

/* The racer with that piece traced in a view. */
static Aeroplane *
traced_in_view (const char *id, bool for_now, bool is_body, bool from_the_side)
{
  g_autoptr (Aeroplane) made = racer ();
  Plan *plan = plan_new ("sheet");
  const Plan *with = plan_with_view (plan, (PlanView) { .id = (char *) "view", .aft = { 0, 100 }, .for_now = for_now });
  g_autoptr (Aeroplane) planned = aeroplane_with_added (made, (Piece *) &with->piece);
  const Piece *old = aeroplane_find (planned, id);
  Piece *copy;

  piece_unref (&plan->piece);
  ck_assert_ptr_nonnull (old);
  copy = piece_dup (old);
  if (!is_body)
    ((Surface *) copy)->traced = g_strdup ("view");
  else if (from_the_side)
    ((Body *) copy)->side_traced = g_strdup ("view");
  else
    ((Body *) copy)->traced = g_strdup ("view");
  return aeroplane_with_replaced (planned, old, copy);
}

static Aeroplane *
racer_traced (size_t i)
{
  return traced_in_view (traced[i].id, traced[i].for_now, traced[i].is_body, traced[i].from_the_side);
}

START_TEST (a_part_traced_where_it_usually_stands_is_said_to_be_a_guess_until_it_is_placed)
{
  g_autoptr (Aeroplane) aeroplane = racer_traced (_i);
  g_autoptr (Figures) figures = figures_once (aeroplane);
  const Note *note = note_with (figures, "is a guess, and the balance mark with it");

  ck_assert_int_eq (note != NULL, traced[_i].for_now && !traced[_i].from_the_side);
  if (note) {
    ck_assert_int_eq (note->severity, NOTE_LOOK);
    ck_assert_str_eq (note->piece->id, traced[_i].id);
    ck_assert_ptr_nonnull (strstr (note->text, traced[_i].id));
  }
}
END_TEST

START_TEST (the_answer_of_a_plane_in_the_band_says_so_too)
{
  g_autoptr (Aeroplane) aeroplane = racer_traced (_i);
  g_autoptr (Figures) figures = figures_once (aeroplane);
  Advice *advice;

  figures->balance.static_margin_percent = 10;
  figures->balance.static_margin_sigma_percent = 3;
  figures->tail_volume = 0.5;
  figures->mass.x_sigma_mm = 1;
  advice = advice_new (figures, (Units) { LENGTH_MM, MASS_G });
  ck_assert_int_eq (strstr (advice->headline, "stands is a guess") != NULL, traced[_i].for_now && !traced[_i].from_the_side);
  advice_free (advice);
}
END_TEST

/* Margins of a plane that is tail-heavy, has too little and too much. */
static const double margins[] = { -4, 2, 40 };

START_TEST (the_answer_says_so_wherever_there_is_a_mark_whatever_else_it_has_to_say)
{
  g_autoptr (Aeroplane) guessed = racer_traced (0), placed = racer_traced (1);
  g_autoptr (Figures) figures = figures_once (guessed), other = figures_once (placed);
  Advice *advice, *sure;

  figures->balance.static_margin_percent = other->balance.static_margin_percent = margins[_i];
  advice = advice_new (figures, (Units) { LENGTH_MM, MASS_G });
  sure = advice_new (other, (Units) { LENGTH_MM, MASS_G });
  ck_assert_ptr_nonnull (strstr (advice->headline, " How far aft “tail” stands is a guess."));
  ck_assert (g_str_has_prefix (advice->headline, sure->headline));
  ck_assert_ptr_null (strstr (sure->headline, "guess"));
  advice_free (advice);
  advice_free (sure);
}
END_TEST

/* What the mark does not follow makes no guess of it. */
START_TEST (a_fin_s_guessed_place_is_said_without_the_balance_mark_which_does_not_follow_it)
{
  g_autoptr (Aeroplane) aeroplane = traced_in_view ("fin", true, false, false);
  g_autoptr (Figures) figures = figures_once (aeroplane);
  Outline *aft = NULL;

  ck_assert_int_eq (outline_mapped (aeroplane_surface_by_id (aeroplane, "fin")->outline, (Point) { 1, 1 }, (Point) { 30, 0 }, &aft), CORE_OK);
  g_autoptr (Aeroplane) moved = change_surface_outline (aeroplane, "fin", aft);
  g_autoptr (Figures) then = figures_once (moved);

  ck_assert_double_eq (then->neutral_point.x_mm, figures->neutral_point.x_mm);
  ck_assert_ptr_nonnull (note_with (figures, "“fin” stands is a guess: "));
  ck_assert_ptr_null (note_with (figures, "and the balance mark with it"));
  ck_assert_ptr_null (place_guessed_of_mark (aeroplane));
}
END_TEST

/* A trace that passes a click. */

static const Units millimetres = { LENGTH_MM, MASS_G }, inches = { LENGTH_INCH, MASS_G };

static Aeroplane *
passing (const char *id, PassedClick from_above, PassedClick from_the_side)
{
  g_autoptr (Aeroplane) made = racer ();
  const Piece *old = aeroplane_find (made, id);
  Piece *copy = piece_dup (old);

  if (copy->kind == PIECE_SURFACE)
    ((Surface *) copy)->passed = from_above;
  else
    {
      ((Body *) copy)->passed = from_above;
      ((Body *) copy)->side_passed = from_the_side;
    }
  return aeroplane_with_replaced (made, old, copy);
}

static const struct { const char *id; PassedClick above, side; const char *says; } passed[] = {
  { "wing", { 4.2, { 120, 312 }, false }, { 0, { 0, 0 }, false }, "“wing” passes your click at station 312\u00a0mm by 4.2\u00a0mm: " },
  { "fin", { 3, { 420, 60 }, false }, { 0, { 0, 0 }, false }, "“fin” passes your click at height 60\u00a0mm by 3\u00a0mm: " },
  { "body", { 3, { 250, 20 }, false }, { 0, { 0, 0 }, false }, "“body” from above passes your click 250\u00a0mm aft of the datum by 3\u00a0mm: " },
  { "body", { 0, { 0, 0 }, false }, { 3, { 250, 20 }, false }, "“body” from the side passes your click 250\u00a0mm aft of the datum by 3\u00a0mm: " },
};

START_TEST (an_outline_that_passes_a_click_is_found_with_its_place_and_what_to_do)
{
  g_autoptr (Aeroplane) aeroplane = passing (passed[_i].id, passed[_i].above, passed[_i].side), plain = racer ();
  g_autoptr (Figures) figures = figures_once (aeroplane), none = figures_once (plain);
  const Note *note = note_with (figures, "passes your click");
  g_autofree char *json = report_json (figures);

  ck_assert_ptr_nonnull (note);
  ck_assert_int_eq (note->severity, NOTE_LOOK);
  ck_assert_str_eq (note->piece->id, passed[_i].id);
  ck_assert_msg (g_str_has_prefix (note->text, passed[_i].says), "%s", note->text);
  ck_assert_ptr_nonnull (strstr (note->text, "trace it again with more clicks there, or accept it."));
  ck_assert_ptr_nonnull (strstr (json, "passes your click"));
  ck_assert_ptr_null (note_with (none, "passes your click"));
}
END_TEST

static const struct { const char *id, *says; } aside[] = {
  { "wing", "“wing” goes aside at station 312\u00a0mm by 4.2\u00a0mm over bare paper, " },
  { "fin", "“fin” goes aside at height 312\u00a0mm by 4.2\u00a0mm over bare paper, " },
};

START_TEST (an_outline_that_goes_aside_over_bare_paper_is_found_until_it_is_accepted)
{
  g_autoptr (Aeroplane) aeroplane = passing (aside[_i].id, (PassedClick) { 4.2, { 120, 312 }, true }, (PassedClick) { .by = 0 });
  g_autoptr (Aeroplane) accepted = change_outline_accepted (aeroplane, aside[_i].id);
  g_autoptr (Figures) figures = figures_once (aeroplane), none = figures_once (accepted);
  const Note *note = note_with (figures, "goes aside");

  ck_assert_ptr_nonnull (note);
  ck_assert_int_eq (note->severity, NOTE_LOOK);
  ck_assert_msg (g_str_has_prefix (note->text, aside[_i].says), "%s", note->text);
  ck_assert_ptr_null (note_with (none, "goes aside"));
}
END_TEST

START_TEST (a_body_that_runs_up_a_fin_and_back_is_found_until_it_is_accepted)
{
  g_autoptr (Aeroplane) aeroplane = passing ("body", (PassedClick) { .by = 0 }, (PassedClick) { 35, { 585, 40 }, true });
  g_autoptr (Aeroplane) accepted = change_outline_accepted (aeroplane, "body");
  g_autoptr (Figures) figures = figures_once (aeroplane), none = figures_once (accepted);
  const Note *note = note_with (figures, "runs out and back");

  ck_assert_ptr_nonnull (note);
  ck_assert_msg (g_str_has_prefix (note->text, "“body” from the side runs out and back 585\u00a0mm aft of the datum, by 35\u00a0mm: "), "%s",
                 note->text);
  ck_assert_ptr_null (note_with (none, "runs out and back"));
}
END_TEST

START_TEST (a_passed_click_is_told_in_the_reader_s_units)
{
  g_autoptr (Aeroplane) aeroplane = passing ("wing", (PassedClick) { 6.35, { 120, 254 }, false }, (PassedClick) { .by = 0 });
  g_autoptr (Figures) figures = figures_once (aeroplane);
  g_autofree char *words = note_words (note_with (figures, "passes your click"), inches), *report = report_text (figures, inches);
  g_autofree char *all = passed_clicks_of (aeroplane_find (aeroplane, "wing"), millimetres);

  ck_assert_msg (g_str_has_prefix (words, "“wing” passes your click at station 10\u00a0in by 1/4\u00a0in: "), "%s", words);
  ck_assert_ptr_nonnull (strstr (report, "station 10\u00a0in"));
  ck_assert (g_str_has_prefix (all, "“wing” passes your click at station 254\u00a0mm by 6.4\u00a0mm: "));
  ck_assert_ptr_null (passed_clicks_of (aeroplane_find (aeroplane, "tail"), millimetres));
}
END_TEST

int
main (void)
{
  TCase *tests = tcase_create ("places");

  tcase_add_loop_test (tests, a_part_traced_where_it_usually_stands_is_said_to_be_a_guess_until_it_is_placed, 0, G_N_ELEMENTS (traced));
  tcase_add_loop_test (tests, the_answer_of_a_plane_in_the_band_says_so_too, 0, G_N_ELEMENTS (traced));
  tcase_add_loop_test (tests, the_answer_says_so_wherever_there_is_a_mark_whatever_else_it_has_to_say, 0, G_N_ELEMENTS (margins));
  tcase_add_test (tests, a_fin_s_guessed_place_is_said_without_the_balance_mark_which_does_not_follow_it);
  tcase_add_loop_test (tests, an_outline_that_passes_a_click_is_found_with_its_place_and_what_to_do, 0, G_N_ELEMENTS (passed));
  tcase_add_loop_test (tests, an_outline_that_goes_aside_over_bare_paper_is_found_until_it_is_accepted, 0, G_N_ELEMENTS (aside));
  tcase_add_test (tests, a_body_that_runs_up_a_fin_and_back_is_found_until_it_is_accepted);
  tcase_add_test (tests, a_passed_click_is_told_in_the_reader_s_units);
  return run_suite (suite_create ("places"), tests);
}
