#include <check.h>
#include <math.h>
#include <string.h>
#include "document/changes.h"
#include "document/reader.h"
#include "document/writer.h"
#include "support/run-suite.h"

static const char text[] =
  "<aeroplane xmlns=\"urn:trammel:aeroplane\" version=\"1\">\n"
  "  <body id=\"body\"><outline><start x=\"0\" y=\"0\"/><line x=\"0\" y=\"20\"/><line x=\"300\" y=\"0\"/></outline>\n"
  "    <former name=\"F1\" x=\"40\" later=\"a\"/><former name=\"F9\" x=\"200\" later=\"b\"/></body>\n"
  "  <surface id=\"wing\" role=\"wing\"><outline><start x=\"0\" y=\"0\"/><line x=\"0\" y=\"200\"/><line x=\"90\" y=\"200\"/>"
  "<line x=\"90\" y=\"0\"/></outline></surface>\n"
  "</aeroplane>\n";

static Aeroplane *
read_it (void)
{
  Aeroplane *made = reader_read_data (text, sizeof text - 1, "test", NULL, NULL);

  ck_assert_ptr_nonnull (made);
  return made;
}

static const Body *
body_of (const Aeroplane *aeroplane)
{
  return aeroplane_body (aeroplane, 0);
}

START_TEST (a_former_takes_the_greatest_number_and_one_more)
{
  g_autoptr (Aeroplane) before = read_it (), after = change_named_place_added (before, "body", 120);

  ck_assert_uint_eq (body_of (after)->former_count, 3);
  ck_assert_str_eq (body_of (after)->formers[2].name, "F10");
  ck_assert_double_eq (body_of (after)->formers[2].place, 120);
  ck_assert_uint_eq (body_of (before)->former_count, 2);
}
END_TEST

START_TEST (the_first_rib_is_r1_and_the_next_r2)
{
  g_autoptr (Aeroplane) before = read_it (), one = change_named_place_added (before, "wing", 0);
  g_autoptr (Aeroplane) two = change_named_place_added (one, "wing", 35);

  ck_assert_str_eq (aeroplane_surface (two, 0)->ribs[0].name, "R1");
  ck_assert_str_eq (aeroplane_surface (two, 0)->ribs[1].name, "R2");
}
END_TEST

START_TEST (a_former_is_moved_by_its_name)
{
  g_autoptr (Aeroplane) before = read_it (), after = change_named_place_moved (before, "body", "F9", 210.5);

  ck_assert_double_eq (body_of (after)->formers[1].place, 210.5);
  ck_assert_ptr_null (change_named_place_moved (before, "body", "F2", 100));
  ck_assert_ptr_null (change_named_place_moved (before, "nobody", "F9", 100));
  ck_assert_ptr_null (change_named_place_moved (before, "body", "F9", NAN));
}
END_TEST

START_TEST (a_former_that_goes_takes_what_a_later_version_said_of_it_and_leaves_the_others_theirs)
{
  g_autoptr (Aeroplane) before = read_it (), after = change_named_place_removed (before, "body", "F1");
  g_autofree char *written = writer_text (after, NULL);

  ck_assert_uint_eq (body_of (after)->former_count, 1);
  ck_assert_ptr_nonnull (strstr (written, "later=\"b\""));
  ck_assert_ptr_null (strstr (written, "later=\"a\""));
  ck_assert_ptr_null (change_named_place_removed (before, "body", "F2"));
}
END_TEST

int
main (void)
{
  Suite *suite = suite_create ("named places");
  TCase *tests = tcase_create ("named places");

  tcase_add_test (tests, a_former_takes_the_greatest_number_and_one_more);
  tcase_add_test (tests, the_first_rib_is_r1_and_the_next_r2);
  tcase_add_test (tests, a_former_is_moved_by_its_name);
  tcase_add_test (tests, a_former_that_goes_takes_what_a_later_version_said_of_it_and_leaves_the_others_theirs);
  return run_suite (suite, tests);
}
