/* Parts by their size, against the catalogue's own classes. Common practice, no source, where none is named. */
#include "document/part-size.h"
#include <math.h>
#include <stdio.h>
#include <string.h>
#include "document/catalogue.h"
#include "document/data-path.h"
#include "support/run-suite.h"

static Catalogue *
usual (void)
{
  g_autofree char *path = data_path ("catalogue.xml");

  return catalogue_read_file (NULL, path, NULL);
}

START_TEST (a_pack_by_cells_and_capacity_weighs_and_measures_as_its_class)
{
  g_autoptr (Catalogue) catalogue = usual ();
  size_t met = 0;

  for (size_t i = 0; i < catalogue_count (catalogue); i++)
    {
      const CatalogueEntry *entry = catalogue_entry (catalogue, i);
      PartSize size;

      if (strcmp (entry->class_name, "battery") != 0)
        continue;
      met++;
      ck_assert (part_size_pack (entry->cells, entry->capacity, &size));
      ck_assert_msg (fabs (size.mass - entry->mass) <= entry->mass_sigma, "%s: %g g", entry->id, size.mass);
      ck_assert_msg (fabs (size.mass_sigma - entry->mass_sigma) <= 2, "%s: ± %g g", entry->id, size.mass_sigma);
      ck_assert_msg (fabs (size.length - entry->length) <= 3 && fabs (size.width - entry->width) <= 3
                     && fabs (size.height - entry->height) <= 3, "%s: %g × %g × %g", entry->id, size.length, size.width, size.height);
    }
  ck_assert_uint_eq (met, 12);
}
END_TEST

START_TEST (a_pack_of_more_cells_or_more_capacity_weighs_more)
{
  for (int cells = 1; cells <= 6; cells++)
    for (double capacity = 60; capacity < 5000; capacity *= 1.05)
      {
        PartSize here, larger, longer;

        ck_assert (part_size_pack (cells, capacity, &here));
        ck_assert (part_size_pack (cells, capacity * 1.05, &larger));
        ck_assert (part_size_pack (cells + 1, capacity, &longer));
        ck_assert_msg (larger.mass > here.mass, "%dS %g", cells, capacity);
        ck_assert_msg (longer.mass > here.mass, "%dS %g", cells, capacity);
      }
}
END_TEST

START_TEST (a_motor_by_its_can_weighs_as_its_class)
{
  g_autoptr (Catalogue) catalogue = usual ();
  size_t met = 0;

  for (size_t i = 0; i < catalogue_count (catalogue); i++)
    {
      const CatalogueEntry *entry = catalogue_entry (catalogue, i);
      PartSize size;
      double diameter, length;

      if (sscanf (entry->id, "motor-%lfx%lf", &diameter, &length) != 2)
        continue;
      met++;
      ck_assert (part_size_motor (diameter, length, &size));
      ck_assert_msg (fabs (size.mass - entry->mass) <= entry->mass_sigma, "%s: %g g", entry->id, size.mass);
      ck_assert_double_eq (size.length, length);
      ck_assert_double_eq (size.width, diameter);
    }
  ck_assert_uint_eq (met, 5);
}
END_TEST

/* The smallest and the largest can of each class: within two standard deviations. */
START_TEST (cans_at_the_ends_of_a_class_still_weigh_as_it)
{
  static const struct { double diameter, length, mass, sigma; } cans[] = {
    { 18, 12, 8, 1.5 }, { 18, 15, 8, 1.5 }, { 22, 14, 14, 2 }, { 23, 18, 14, 2 }, { 27, 17, 24, 3 }, { 28, 20, 24, 3 }, { 28, 24, 41, 4 },
    { 28, 26, 41, 4 }, { 28, 28, 54, 4 }, { 28, 30, 54, 4 } };
  PartSize size;

  ck_assert (part_size_motor (cans[_i].diameter, cans[_i].length, &size));
  ck_assert_msg (fabs (size.mass - cans[_i].mass) <= 2 * cans[_i].sigma, "%g × %g: %g g", cans[_i].diameter, cans[_i].length, size.mass);
}
END_TEST

START_TEST (a_propeller_by_its_diameter_weighs_as_its_class_within_a_fifth)
{
  g_autoptr (Catalogue) catalogue = usual ();
  size_t met = 0;

  for (size_t i = 0; i < catalogue_count (catalogue); i++)
    {
      const CatalogueEntry *entry = catalogue_entry (catalogue, i);
      PartSize size;
      double inches, pitch;

      if (sscanf (entry->id, "propeller-%lfx%lf", &inches, &pitch) != 2)
        continue;
      met++;
      ck_assert (part_size_propeller (inches, 2, !strstr (entry->id, "thin"), &size));
      ck_assert_msg (fabs (size.mass - entry->mass) <= 0.2 * entry->mass, "%s: %g g", entry->id, size.mass);
      ck_assert_double_eq_tol (size.width, entry->width, 0.06);
    }
  ck_assert_uint_eq (met, 24);
}
END_TEST

START_TEST (three_blades_weigh_half_as_much_again)
{
  PartSize two, three;

  ck_assert (part_size_propeller (8, 2, true, &two));
  ck_assert (part_size_propeller (8, 3, true, &three));
  ck_assert_double_eq_tol (three.mass / two.mass, 1.45, 0.15);
}
END_TEST

/* Geometry: π/4 d² l ρ, a metre of each; 7.85 and 1.55 g/cm³. */
START_TEST (rods_weigh_what_their_volume_says)
{
  ck_assert_double_eq_tol (part_size_wire (1, 1000), 6.165, 0.001);
  ck_assert_double_eq_tol (part_size_wire (2, 1000), 24.66, 0.01);
  ck_assert_double_eq_tol (part_size_carbon (1.5, 1000), 2.739, 0.001);
  ck_assert_double_eq (part_size_wire (1, 0), 0);
}
END_TEST

START_TEST (what_no_such_part_can_be_is_refused)
{
  PartSize size = { .mass = -1 };

  ck_assert (!part_size_pack (0, 450, &size) && !part_size_pack (2.5, 450, &size) && !part_size_pack (2, 5, &size));
  ck_assert (!part_size_pack (NAN, 450, &size) && !part_size_pack (2, NAN, &size) && !part_size_pack (13, 450, &size));
  ck_assert (!part_size_motor (4, 20, &size) && !part_size_motor (28, 101, &size) && !part_size_motor (NAN, 20, &size));
  ck_assert (!part_size_propeller (0.5, 2, true, &size) && !part_size_propeller (8, 4, true, &size) && !part_size_propeller (NAN, 2, true, &size));
  ck_assert_double_eq (size.mass, -1);
}
END_TEST

int
main (void)
{
  TCase *tests = tcase_create ("part size");

  tcase_add_test (tests, a_pack_by_cells_and_capacity_weighs_and_measures_as_its_class);
  tcase_add_test (tests, a_pack_of_more_cells_or_more_capacity_weighs_more);
  tcase_add_test (tests, a_motor_by_its_can_weighs_as_its_class);
  tcase_add_loop_test (tests, cans_at_the_ends_of_a_class_still_weigh_as_it, 0, 10);
  tcase_add_test (tests, a_propeller_by_its_diameter_weighs_as_its_class_within_a_fifth);
  tcase_add_test (tests, three_blades_weigh_half_as_much_again);
  tcase_add_test (tests, rods_weigh_what_their_volume_says);
  tcase_add_test (tests, what_no_such_part_can_be_is_refused);
  return run_suite (suite_create ("document part size"), tests);
}
