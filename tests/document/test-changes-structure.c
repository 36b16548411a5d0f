#include <check.h>
#include <math.h>
#include <string.h>
#include "document/changes.h"
#include "document/reader.h"
#include "document/writer.h"
#include "support/run-suite.h"

static const char text[] =
  "<aeroplane xmlns=\"urn:trammel:aeroplane\" version=\"1\">\n"
  "  <surface id=\"wing\" role=\"wing\"><outline><start x=\"0\" y=\"0\"/><line x=\"0\" y=\"200\"/><line x=\"90\" y=\"200\"/>"
  "<line x=\"90\" y=\"0\"/></outline></surface>\n"
  "  <structure id=\"frame\" of=\"wing\"><item name=\"Tips\" weighed=\"1.1\" later=\"a\"/>"
  "<item name=\"Spar\" weighed=\"2\" later=\"b\"/></structure>\n"
  "</aeroplane>\n";

static Aeroplane *
read_it (void)
{
  Aeroplane *made = reader_read_data (text, sizeof text - 1, "test", NULL, NULL);

  ck_assert_ptr_nonnull (made);
  return made;
}

static const Structure *
frame_of (const Aeroplane *aeroplane)
{
  return aeroplane_structure (aeroplane, 0);
}

START_TEST (a_line_is_changed_and_the_aeroplane_before_keeps_its_own)
{
  g_autoptr (Aeroplane) before = read_it ();
  StructureItem next = frame_of (before)->items[1];

  next.weighed = 2.4;
  g_autoptr (Aeroplane) after = change_structure_item (before, "frame", 1, &next);
  ck_assert_double_eq (frame_of (after)->items[1].weighed, 2.4);
  ck_assert_str_eq (frame_of (after)->items[1].name, "Spar");
  ck_assert_double_eq (frame_of (before)->items[1].weighed, 2);
  ck_assert_ptr_null (change_structure_item (before, "frame", 2, &next));
  ck_assert_ptr_null (change_structure_item (before, "wing", 0, &next));
}
END_TEST

START_TEST (a_line_that_stays_as_it_is_makes_no_other_aeroplane)
{
  g_autoptr (Aeroplane) before = read_it (), after = change_structure_item (before, "frame", 0, &frame_of (before)->items[0]);

  ck_assert_ptr_eq (after, before);
}
END_TEST

START_TEST (the_first_line_makes_a_structure_that_its_lines_tell)
{
  g_autoptr (Aeroplane) whole = read_it (), bare = aeroplane_without_dependents (whole, &frame_of (whole)->piece);
  StructureItem tips = structure_item ("Tips");

  tips.weighed = 1.2;
  g_autoptr (Aeroplane) after = change_structure_item_added (bare, "wing", &tips);
  structure_item_clear (&tips);
  ck_assert_str_eq (frame_of (after)->piece.id, "wing-structure");
  ck_assert_double_nan (frame_of (after)->mass);
  ck_assert_str_eq (frame_of (after)->items[0].name, "Tips");
  ck_assert_ptr_null (change_structure_item_added (bare, "body", &frame_of (after)->items[0]));
}
END_TEST

START_TEST (a_mass_of_nought_gives_way_to_lines_and_comes_back_without_them)
{
  g_autoptr (Aeroplane) before = read_it (), one = change_structure_item_removed (before, "frame", 0);
  g_autoptr (Aeroplane) none = change_structure_item_removed (one, "frame", 0);
  g_autoptr (Aeroplane) again = change_structure_item_added (none, "wing", &frame_of (before)->items[0]);

  ck_assert_uint_eq (frame_of (one)->item_count, 1);
  ck_assert_str_eq (frame_of (one)->items[0].name, "Spar");
  ck_assert_double_eq (frame_of (none)->mass, 0);
  ck_assert_double_nan (frame_of (again)->mass);
}
END_TEST

START_TEST (a_line_that_goes_takes_what_a_later_version_said_of_it_and_leaves_the_others_theirs)
{
  g_autoptr (Aeroplane) before = read_it (), after = change_structure_item_removed (before, "frame", 0);
  g_autofree char *written = writer_text (after, NULL);

  ck_assert_ptr_null (strstr (written, "later=\"a\""));
  ck_assert_ptr_nonnull (strstr (written, "name=\"Spar\" weighed=\"2\" later=\"b\""));
}
END_TEST

START_TEST (what_has_a_place_in_a_surface_moves_with_it)
{
  g_autoptr (Aeroplane) before = read_it ();
  StructureItem block = frame_of (before)->items[0];

  block.x = 70;
  block.z = -4;
  g_autoptr (Aeroplane) placed = change_structure_item (before, "frame", 0, &block);
  g_autoptr (Aeroplane) moved = change_surface_moved (placed, "wing", 12, 3);
  ck_assert_double_eq (frame_of (moved)->items[0].x, 82);
  ck_assert_double_eq (frame_of (moved)->items[0].z, -1);
  ck_assert_double_nan (frame_of (moved)->items[1].x);
  ck_assert_double_nan (frame_of (moved)->x);
  ck_assert_double_eq (frame_of (moved)->z, 0);
}
END_TEST

int
main (void)
{
  TCase *tests = tcase_create ("changes of structure");

  tcase_add_test (tests, a_line_is_changed_and_the_aeroplane_before_keeps_its_own);
  tcase_add_test (tests, a_line_that_stays_as_it_is_makes_no_other_aeroplane);
  tcase_add_test (tests, the_first_line_makes_a_structure_that_its_lines_tell);
  tcase_add_test (tests, a_mass_of_nought_gives_way_to_lines_and_comes_back_without_them);
  tcase_add_test (tests, a_line_that_goes_takes_what_a_later_version_said_of_it_and_leaves_the_others_theirs);
  tcase_add_test (tests, what_has_a_place_in_a_surface_moves_with_it);
  return run_suite (suite_create ("document changes of structure"), tests);
}
