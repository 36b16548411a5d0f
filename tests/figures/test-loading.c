#include <check.h>
#include "figures/passed-click.h"
#include "support/aeroplanes.h"
#include "support/figures-once.h"
#include "support/run-suite.h"

/* A slip of the keyboard in a mass shows in the loadings. The bounds are common practice, no source. */

/* A rectangle of this span and a sixth of it in chord, loaded so, g/dm². */
static Figures *
loaded (double span, double g_dm2)
{
  const double chord = span / 6;
  Aeroplane *made = with_surface (aeroplane_new (), "wing", ROLE_WING, rectangle (100, span, chord));
  g_autoptr (Aeroplane) aeroplane = with_part (made, "lead", g_dm2 * span * chord * 1e-4, 120);

  return figures_once (aeroplane);
}

static const struct { double span, heaviest; } spans[] = {
  { 500, 30 }, { 575, 33 }, { 650, 36 }, { 700, 38 }, { 800, 42 }, { 900, 47 }, { 1000, 52 },
};

START_TEST (a_wing_loading_beyond_what_experienced_hands_fly_deserves_a_look)
{
  g_autoptr (Figures) heavy = loaded (spans[_i].span, spans[_i].heaviest + 1), usual = loaded (spans[_i].span, spans[_i].heaviest - 1);
  g_autofree char *said = g_strdup_printf ("The wing loading of %.0f\u00a0g/dm² is more than experienced hands fly at this span, about "
                                           "%.0f\u00a0g/dm²: check the masses.", spans[_i].heaviest + 1, spans[_i].heaviest);
  const Note *note = note_with (heavy, "wing loading of");

  ck_assert_ptr_nonnull (note);
  ck_assert_str_eq (note->text, said);
  ck_assert_int_eq (note->severity, NOTE_LOOK);
  ck_assert_int_eq (note->explained, EXPLAIN_WING_LOADING);
  ck_assert_ptr_null (note_with (usual, "wing loading of"));
}
END_TEST

/* 1 ft² = 9.290304 dm² and 1 oz = 28.349523125 g (International yard and pound agreement, 1959): 39 g/dm² are 12.8 oz/ft². */
START_TEST (a_wing_loading_is_told_in_the_reader_s_units)
{
  g_autoptr (Figures) heavy = loaded (700, 39);
  const Note *note = note_with (heavy, "wing loading of");
  g_autofree char *metric = note_words (note, (Units) { LENGTH_MM, MASS_G }), *imperial = note_words (note, (Units) { LENGTH_INCH, MASS_OZ });

  ck_assert_str_eq (metric, note->text);
  ck_assert_str_eq (imperial, "The wing loading of 13\u00a0oz/ft² is more than experienced hands fly at this span, about 12\u00a0oz/ft²: "
                              "check the masses.");
}
END_TEST

/* A rectangle of 300 by 50 mm: 1.5 dm², so 16 kg/m³ is 16 × 0.015^1.5 kg, and 19.6 g/dm² are nothing much at that span. */
START_TEST (a_hot_cubic_loading_deserves_a_look)
{
  g_autoptr (Figures) hot = loaded (300, 19.6), cool = loaded (300, 18);
  const Note *note = note_with (hot, "cubic loading of 16.0 kg/m³");

  ck_assert_double_eq_tol (hot->flight.cube_loading_kg_m3, 16, 0.01);
  ck_assert_ptr_nonnull (note);
  ck_assert_int_eq (note->severity, NOTE_LOOK);
  ck_assert_int_eq (note->explained, EXPLAIN_CUBIC_LOADING);
  ck_assert_ptr_null (note_with (hot, "wing loading of"));
  ck_assert_ptr_null (note_with (cool, "cubic loading of"));
}
END_TEST

START_TEST (a_battery_of_fifty_kilograms_is_told_once)
{
  g_autoptr (Aeroplane) aeroplane = with_part (racer (), "battery of kilograms", 50000, 124);
  g_autoptr (Figures) figures = figures_once (aeroplane), plain = NULL;
  g_autoptr (Aeroplane) as_drawn = racer ();

  plain = figures_once (as_drawn);
  ck_assert_ptr_nonnull (note_with (figures, "check the masses"));
  ck_assert_ptr_null (note_with (figures, "cubic loading of"));
  ck_assert_ptr_null (note_with (plain, "check the masses"));
}
END_TEST

int
main (void)
{
  TCase *tests = tcase_create ("loading");

  tcase_add_loop_test (tests, a_wing_loading_beyond_what_experienced_hands_fly_deserves_a_look, 0, G_N_ELEMENTS (spans));
  tcase_add_test (tests, a_wing_loading_is_told_in_the_reader_s_units);
  tcase_add_test (tests, a_hot_cubic_loading_deserves_a_look);
  tcase_add_test (tests, a_battery_of_fifty_kilograms_is_told_once);
  return run_suite (suite_create ("figures loading"), tests);
}
