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

START_TEST (a_former_is_moved_when_it_has_the_name_told)
{
  g_autoptr (Aeroplane) before = read_it (), after = change_named_place_moved (before, "body", 1, "F9", 210.5);

  ck_assert_double_eq (body_of (after)->formers[1].place, 210.5);
  ck_assert_ptr_null (change_named_place_moved (before, "body", 1, "F2", 100));
  ck_assert_ptr_null (change_named_place_moved (before, "body", 2, "F9", 100));
  ck_assert_ptr_null (change_named_place_moved (before, "nobody", 1, "F9", 100));
  ck_assert_ptr_null (change_named_place_moved (before, "body", 1, "F9", NAN));
}
END_TEST

START_TEST (a_former_that_goes_takes_what_a_later_version_said_of_it_and_leaves_the_others_theirs)
{
  g_autoptr (Aeroplane) before = read_it (), after = change_named_place_removed (before, "body", 0, "F1");
  g_autofree char *written = writer_text (after, NULL);

  ck_assert_uint_eq (body_of (after)->former_count, 1);
  ck_assert_ptr_nonnull (strstr (written, "later=\"b\""));
  ck_assert_ptr_null (strstr (written, "later=\"a\""));
  ck_assert_ptr_null (change_named_place_removed (before, "body", 1, "F2"));
}
END_TEST

static Aeroplane *
read_formers (const char *formers)
{
  g_autofree char *all = g_strdup_printf ("<aeroplane xmlns=\"urn:trammel:aeroplane\" version=\"1\"><body id=\"body\">%s</body></aeroplane>",
                                          formers);
  Aeroplane *made = reader_read_data (all, strlen (all), "test", NULL, NULL);

  ck_assert_ptr_nonnull (made);
  return made;
}

START_TEST (of_formers_with_one_name_the_one_meant_is_moved_or_goes)
{
  g_autoptr (Aeroplane) before = read_formers ("<former name=\"F1\" x=\"40\"/><former name=\"F1\" x=\"90\"/><former name=\"F1\" x=\"200\"/>");
  g_autoptr (Aeroplane) moved = change_named_place_moved (before, "body", 1, "F1", 100);
  g_autoptr (Aeroplane) removed = change_named_place_removed (before, "body", 1, "F1");

  ck_assert_double_eq (body_of (moved)->formers[0].place, 40);
  ck_assert_double_eq (body_of (moved)->formers[1].place, 100);
  ck_assert_uint_eq (body_of (removed)->former_count, 2);
  ck_assert_double_eq (body_of (removed)->formers[0].place, 40);
  ck_assert_double_eq (body_of (removed)->formers[1].place, 200);
}
END_TEST

static const struct { const char *last, *next; } counted[] = {
  { "F999999", "F1000000" }, { "F2147483646", "F2147483647" }, { "F0000000041", "F42" },
  { "F2147483647", "F1" }, { "F99999999999999999999999", "F1" },     /* none is greater: they count anew */
};

START_TEST (names_count_on_however_many_digits_they_have)
{
  g_autofree char *formers = g_strdup_printf ("<former name=\"%s\" x=\"40\"/>", counted[_i].last);
  g_autoptr (Aeroplane) aeroplane = read_formers (formers);
  g_autofree char *next = named_place_next (&body_of (aeroplane)->piece);

  ck_assert_str_eq (next, counted[_i].next);
}
END_TEST

int
main (void)
{
  Suite *suite = suite_create ("named places");
  TCase *tests = tcase_create ("named places");

  tcase_add_test (tests, a_former_takes_the_greatest_number_and_one_more);
  tcase_add_test (tests, the_first_rib_is_r1_and_the_next_r2);
  tcase_add_test (tests, a_former_is_moved_when_it_has_the_name_told);
  tcase_add_test (tests, a_former_that_goes_takes_what_a_later_version_said_of_it_and_leaves_the_others_theirs);
  tcase_add_test (tests, of_formers_with_one_name_the_one_meant_is_moved_or_goes);
  tcase_add_loop_test (tests, names_count_on_however_many_digits_they_have, 0, G_N_ELEMENTS (counted));
  return run_suite (suite, tests);
}
