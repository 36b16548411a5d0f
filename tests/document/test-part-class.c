#include "document/part-class.h"
#include <glib.h>
#include <math.h>
#include <string.h>
#include "support/run-suite.h"

/* Bounds of what goes into a model of some 650 mm and 200 g: common practice, no source. */
START_TEST (every_class_is_a_thing_that_fits_into_a_small_model)
{
  size_t count = 0;

  for (const PartClass *class = part_classes (); class->word; class++, count++)
    {
      ck_assert_msg (class->name && *class->name, "%s", class->word);
      ck_assert_msg (class->mass > 0 && class->mass < 100, "%s: %g g", class->word, class->mass);
      ck_assert_msg (class->length > 0 && class->width > 0 && class->height > 0, "%s", class->word);
      ck_assert_msg (class->length < 500 && class->width < 500 && class->height < 500, "%s", class->word);
      ck_assert_msg (class->mass_sigma_share > 0 && class->mass_sigma_share < 0.5, "%s: %g", class->word, class->mass_sigma_share);
      ck_assert_msg (class->place_sigma > 0 && class->place_sigma <= 10, "%s: %g mm", class->word, class->place_sigma);
    }
  ck_assert_uint_ge (count, 10);
}
END_TEST

/* Nothing aboard is denser than lead (11.34 g/cm³; CRC Handbook of Chemistry and Physics, from memory). */
START_TEST (no_class_is_denser_than_lead)
{
  for (const PartClass *class = part_classes (); class->word; class++)
    ck_assert_msg (class->mass / (class->length * class->width * class->height) <= 11.34e-3, "%s", class->word);
}
END_TEST

START_TEST (each_class_is_found_by_its_own_word_and_no_word_is_there_twice)
{
  for (const PartClass *class = part_classes (); class->word; class++)
    {
      g_autofree char *copy = g_strdup (class->word);

      ck_assert_ptr_eq (part_class_find (copy), class);
      ck_assert_msg (strpbrk (class->word, " \t<&\"") == NULL, "%s", class->word);
    }
}
END_TEST

START_TEST (a_deviation_is_the_share_of_the_class_in_the_mass_asked_about)
{
  const PartClass *battery = part_class_find ("battery");

  ck_assert_ptr_nonnull (battery);
  ck_assert_double_eq_tol (part_class_mass_sigma ("battery", 31.7), 31.7 * battery->mass_sigma_share, 1e-12);
  ck_assert_double_eq (part_class_place_sigma ("battery"), battery->place_sigma);
}
END_TEST

START_TEST (a_part_of_no_known_class_has_ten_percent_and_three_millimetres)
{
  static const char *const words[] = { NULL, "", "Battery", "reactor" };

  for (size_t i = 0; i < G_N_ELEMENTS (words); i++)
    {
      ck_assert_ptr_null (part_class_find (words[i]));
      ck_assert_double_eq_tol (part_class_mass_sigma (words[i], 23.4), 2.34, 1e-12);
      ck_assert_double_eq (part_class_place_sigma (words[i]), 3);
    }
}
END_TEST

int
main (void)
{
  TCase *tests = tcase_create ("part class");

  tcase_add_test (tests, every_class_is_a_thing_that_fits_into_a_small_model);
  tcase_add_test (tests, no_class_is_denser_than_lead);
  tcase_add_test (tests, each_class_is_found_by_its_own_word_and_no_word_is_there_twice);
  tcase_add_test (tests, a_deviation_is_the_share_of_the_class_in_the_mass_asked_about);
  tcase_add_test (tests, a_part_of_no_known_class_has_ten_percent_and_three_millimetres);
  return run_suite (suite_create ("document part class"), tests);
}
