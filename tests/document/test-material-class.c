#include "document/material-class.h"
#include <glib.h>
#include <math.h>
#include <string.h>
#include "support/run-suite.h"

/* From rigid foam to steel (7850 kg/m³; CRC Handbook of Chemistry and Physics, from memory); coverings from bare film to foam board.
 * Common practice, no source. */
START_TEST (every_material_goes_by_one_density_and_that_is_one_a_model_is_made_of)
{
  size_t count = 0;

  for (const MaterialClass *class = material_classes (); class->word; class++, count++)
    {
      ck_assert_msg (class->name && *class->name, "%s", class->word);
      ck_assert_msg (isnan (class->density) != isnan (class->area_density), "%s", class->word);
      ck_assert_msg (isnan (class->density) || (class->density >= 20 && class->density <= 7850), "%s: %g kg/m³", class->word, class->density);
      ck_assert_msg (isnan (class->area_density) || (class->area_density >= 7 && class->area_density <= 550), "%s", class->word);
      ck_assert_msg (class->spread > 0 && class->spread <= 0.3, "%s: %g", class->word, class->spread);
    }
  ck_assert_uint_ge (count, 20);
}
END_TEST

START_TEST (each_material_is_found_by_its_own_word_and_no_word_is_there_twice)
{
  for (const MaterialClass *class = material_classes (); class->word; class++)
    {
      g_autofree char *copy = g_strdup (class->word);

      ck_assert_ptr_eq (material_class_find (copy), class);
      ck_assert_msg (strpbrk (class->word, " \t<&\"") == NULL, "%s", class->word);
    }
  ck_assert_ptr_null (material_class_find ("unobtainium"));
  ck_assert_ptr_null (material_class_find (NULL));
}
END_TEST

/* USDA Forest Products Laboratory, Wood Handbook: specific gravity of balsa 0.16, basswood 0.37, Sitka spruce 0.40, yellow birch 0.62;
 * air-dry density is 1.12 times that. Plywood weighs what its wood does, less or more by its glue. */
START_TEST (woods_weigh_air_dry_what_the_handbook_says)
{
  ck_assert_double_eq_tol (material_class_find ("balsa")->density, 1.12 * 160, 3);
  ck_assert_double_eq_tol (material_class_find ("basswood")->density, 1.12 * 370, 3);
  ck_assert_double_eq_tol (material_class_find ("spruce")->density, 1.12 * 400, 3);
  ck_assert_double_eq_tol (material_class_find ("birch-ply")->density, 1.12 * 620, 0.05 * 1.12 * 620);
}
END_TEST

/* The grades' bounds in lb/ft³: below 6, 5.5 to 6.5, 8, 10 to 12, 14 to 16. Common practice, no source. */
START_TEST (the_grades_of_balsa_lie_where_its_trade_has_them)
{
  static const struct { const char *word; double least, most; } grades[] = {
    { "balsa-contest", 4, 6 }, { "balsa-light", 5.5, 6.5 }, { "balsa-medium", 7.5, 8.5 }, { "balsa-medium-hard", 10, 12 }, { "balsa-hard", 14, 16 } };

  for (size_t i = 0; i < G_N_ELEMENTS (grades); i++)
    {
      const double pounds = material_class_find (grades[i].word)->density / 16.018463;

      ck_assert_msg (pounds >= grades[i].least && pounds <= grades[i].most, "%s: %g", grades[i].word, pounds);
    }
}
END_TEST

int
main (void)
{
  TCase *tests = tcase_create ("material classes");

  tcase_add_test (tests, every_material_goes_by_one_density_and_that_is_one_a_model_is_made_of);
  tcase_add_test (tests, each_material_is_found_by_its_own_word_and_no_word_is_there_twice);
  tcase_add_test (tests, woods_weigh_air_dry_what_the_handbook_says);
  tcase_add_test (tests, the_grades_of_balsa_lie_where_its_trade_has_them);
  return run_suite (suite_create ("document material classes"), tests);
}
