#include <math.h>
#include "support/canvas.h"
#include "support/run-suite.h"

enum { LOOKS = LOOK_DARK_CONTRAST + 1 };

typedef struct { const char *name; Colour colour, ground; } Role;
enum { ROLES = 10 };

static void
fill_roles (const Look *look, Role roles[ROLES])
{
  const Role all[ROLES] = {
    { "graphite", look->graphite, look->sheet },   { "construction", look->construction, look->sheet },
    { "centre line", look->centre_line, look->sheet }, { "band", look->band, look->sheet },
    { "balance", look->balance, look->sheet },     { "neutral", look->neutral, look->sheet },
    { "warning", look->warning, look->sheet },     { "selection", look->selection, look->sheet },
    { "words on rulers", look->dim_text, look->ruler_ground }, { "graphite on parts", look->graphite, look->part_fill } };

  for (int i = 0; i < ROLES; i++)
    {
      roles[i] = all[i];
      roles[i].ground.alpha = 1;
    }
}

/* WCAG 2.1, success criterion 1.4.3: 4.5 : 1 for text. Every role but the grounds writes words somewhere. */
START_TEST (every_role_can_be_read_on_its_ground_in_every_look)
{
  const Look look = look_for_screen (_i, 1);
  Role roles[ROLES];

  fill_roles (&look, roles);
  for (int i = 0; i < ROLES; i++)
    ck_assert_msg (colour_contrast (roles[i].colour, roles[i].ground) >= 4.5, "%s in look %d", roles[i].name, _i);
}
END_TEST

/* WCAG 2.1, success criterion 1.4.6: 7 : 1. */
START_TEST (high_contrast_looks_reach_seven_to_one)
{
  const Look look = look_for_screen (_i, 1);
  Role roles[ROLES];

  fill_roles (&look, roles);
  for (int i = 0; i < ROLES; i++)
    ck_assert_msg (colour_contrast (roles[i].colour, roles[i].ground) >= 7, "%s in look %d", roles[i].name, _i);
}
END_TEST

/* The figures that the palette was chosen by, to its one decimal. */
START_TEST (the_palette_has_the_contrasts_it_was_chosen_by)
{
  const Look light = look_for_screen (LOOK_LIGHT, 1), dark = look_for_screen (LOOK_DARK, 1);
  const double tolerance = 0.051;

  ck_assert_double_eq_tol (colour_contrast (light.graphite, light.sheet), 13.4, tolerance);
  ck_assert_double_eq_tol (colour_contrast (light.construction, light.sheet), 5.0, tolerance);
  ck_assert_double_eq_tol (colour_contrast (light.band, light.sheet), 5.9, tolerance);
  ck_assert_double_eq_tol (colour_contrast (light.neutral, light.sheet), 7.7, tolerance);
  ck_assert_double_eq_tol (colour_contrast (light.warning, light.sheet), 5.5, tolerance);
  ck_assert_double_eq_tol (colour_contrast (light.selection, light.sheet), 5.9, tolerance);
  ck_assert_double_eq_tol (colour_contrast (dark.graphite, dark.sheet), 13.0, tolerance);
  ck_assert_double_eq_tol (colour_contrast (dark.band, dark.sheet), 8.9, tolerance);
  ck_assert_double_eq_tol (colour_contrast (dark.neutral, dark.sheet), 8.4, tolerance);
  ck_assert_double_eq_tol (colour_contrast (dark.warning, dark.sheet), 7.9, tolerance);
}
END_TEST

START_TEST (high_contrast_draws_thicker_and_has_no_grid)
{
  for (int i = 0; i < 2; i++)
    {
      const Look usual = look_for_screen (i == 0 ? LOOK_LIGHT : LOOK_DARK, 1);
      const Look strong = look_for_screen (i == 0 ? LOOK_LIGHT_CONTRAST : LOOK_DARK_CONTRAST, 1);

      ck_assert_double_gt (strong.outline_width, usual.outline_width);
      ck_assert_double_gt (strong.inner_width, usual.inner_width);
      ck_assert_double_gt (strong.hatch_width, usual.hatch_width);
      ck_assert_double_eq (strong.symbol_line, 1.5);
      ck_assert_double_eq (strong.grid_coarse.alpha, 0);
      ck_assert_double_eq (strong.part_fill.alpha, 1);
      ck_assert_double_gt (usual.grid_coarse.alpha, usual.grid_fine.alpha);
    }
}
END_TEST

START_TEST (larger_text_grows_every_letter_and_no_line)
{
  const Look one = look_for_screen (LOOK_LIGHT, 1), large = look_for_screen (LOOK_LIGHT, 1.37);
  const double exact = 1e-12;

  ck_assert_double_eq_tol (large.text_size, 1.37 * one.text_size, exact * 20);
  ck_assert_double_eq_tol (large.figure_size, 1.37 * one.figure_size, exact * 20);
  ck_assert_double_eq_tol (large.ruler_size, 1.37 * one.ruler_size, exact * 20);
  ck_assert_double_eq_tol (large.plate_size, 1.37 * one.plate_size, exact * 20);
  ck_assert_double_eq (large.outline_width, one.outline_width);
}
END_TEST

/* Line widths of ISO 128 and capital heights of ISO 3098, from memory: 0.18, 0.25, 0.5; 2.5 and 3.5 mm. */
START_TEST (paper_is_black_on_white_with_the_standard_widths)
{
  const Look paper = look_for_paper ();

  ck_assert (paper.paper);
  ck_assert_double_eq (colour_contrast (paper.graphite, paper.sheet), 21);
  ck_assert_double_eq (colour_contrast (paper.neutral, paper.sheet), 21);
  ck_assert_double_eq (paper.outline_width, 0.5);
  ck_assert_double_eq (paper.inner_width, 0.25);
  ck_assert_double_eq (paper.thin_width, 0.18);
  ck_assert_double_eq_tol (paper.text_size * paper.cap_height, 2.5, 1e-9);
  ck_assert_double_eq_tol (paper.figure_size * paper.cap_height, 3.5, 1e-9);
}
END_TEST

int
main (void)
{
  TCase *tests = tcase_create ("look");

  tcase_add_loop_test (tests, every_role_can_be_read_on_its_ground_in_every_look, 0, LOOKS);
  tcase_add_loop_test (tests, high_contrast_looks_reach_seven_to_one, LOOK_LIGHT_CONTRAST, LOOKS);
  tcase_add_test (tests, the_palette_has_the_contrasts_it_was_chosen_by);
  tcase_add_test (tests, high_contrast_draws_thicker_and_has_no_grid);
  tcase_add_test (tests, larger_text_grows_every_letter_and_no_line);
  tcase_add_test (tests, paper_is_black_on_white_with_the_standard_widths);
  return run_suite (suite_create ("drawing look"), tests);
}
