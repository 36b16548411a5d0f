/* What a hand does to leads, and what becomes of the places on their way when a wing or a body is moved. */
#include "document/changes.h"
#include <math.h>
#include "document/documents.h"
#include "support/run-suite.h"

/* A wing from 100 to 200, its servo and the body's receiver; of the places on the lead's way two are in the wing, one ahead of it. */
static const char document[] =
  "<aeroplane xmlns=\"urn:trammel:aeroplane\" version=\"1\">\n"
  "  <surface id=\"wing\" role=\"wing\" z=\"0\" dihedral=\"0\" incidence=\"0\" washout=\"0\">\n"
  "    <outline><start x=\"100\" y=\"0\"/><line x=\"100\" y=\"300\"/><line x=\"200\" y=\"300\"/><line x=\"200\" y=\"0\"/></outline>\n"
  "  </surface>\n"
  "  <body id=\"body\">\n"
  "    <outline><start x=\"0\" y=\"20\"/><line x=\"400\" y=\"20\"/></outline>\n"
  "  </body>\n"
  "  <part id=\"left\" mass=\"5\" x=\"150\" y=\"-200\" of=\"wing\"/>\n"
  "  <part id=\"right\" mass=\"5\" x=\"150\" y=\"200\" of=\"wing\"/>\n"
  "  <part id=\"receiver\" mass=\"5\" x=\"60\" of=\"body\"/>\n"
  "  <lead from=\"left\" to=\"receiver\" length=\"250\"><via x=\"150\" y=\"-100\" hole=\"8\"/><via x=\"140\" y=\"0\"/><via x=\"80\" y=\"5\"/></lead>\n"
  "  <lead id=\"joined\" from=\"left\" also=\"right\" to=\"receiver\" length=\"250\" also-length=\"260\" to-length=\"150\" joint-x=\"145\" joint-y=\"0\""
  " slack=\"1.1\" unplugs=\"no\" allowance=\"35\" mass=\"4.5\" mass-sigma=\"0.5\" name=\"Y\" kind=\"lead-two-into-one\"><via x=\"150\" y=\"100\" leg=\"also\"/></lead>\n"
  "</aeroplane>\n";

static Aeroplane *
read_it (void)
{
  return read_bytes (document, strlen (document));
}

static char *
written (const Aeroplane *aeroplane)
{
  size_t length;

  return writer_text (aeroplane, &length);
}

START_TEST (all_that_a_two_into_one_lead_says_comes_back)
{
  g_autoptr (Aeroplane) read = read_it ();
  g_autofree char *text = written (read);
  g_autoptr (Aeroplane) again = read_bytes (text, strlen (text));
  const Lead *lead = aeroplane_lead_by_id (again, "joined");

  ck_assert_ptr_nonnull (lead);
  ck_assert (aeroplane_equal (read, again));
  ck_assert (lead_is_joined (lead));
  ck_assert_str_eq (lead->also, "right");
  ck_assert_double_eq (lead_leg_length (lead, LEG_FROM), 250);
  ck_assert_double_eq (lead_leg_length (lead, LEG_ALSO), 260);
  ck_assert_double_eq (lead_leg_length (lead, LEG_TO), 150);
  ck_assert_double_eq (lead->joint_x, 145);
  ck_assert_double_eq (lead->slack, 1.1);
  ck_assert_int_eq (lead->unplugs, UNPLUGS_NO);
  ck_assert_double_eq (lead->allowance, 35);
  ck_assert_double_eq (lead->mass, 4.5);
  ck_assert_str_eq (lead->name, "Y");
  ck_assert_int_eq (lead->via[0].leg, LEG_ALSO);
}
END_TEST

START_TEST (a_lead_of_an_older_document_is_read_as_before_and_can_be_chosen)
{
  g_autoptr (Aeroplane) read = read_it ();
  const Lead *lead = aeroplane_lead (read, 0);

  ck_assert_str_eq (lead->piece.id, "lead");
  ck_assert (!lead_is_joined (lead));
  ck_assert_double_eq (lead->length, 250);
  ck_assert (isnan (lead->slack) && isnan (lead->allowance) && isnan (lead->joint_x));
  ck_assert_int_eq (lead->unplugs, UNPLUGS_AS_USUAL);
  ck_assert_double_eq (lead->mass, 0);
  ck_assert_uint_eq (lead->via_count, 3);
}
END_TEST

static const struct { const char *instead, *of, *told; } wrong[] = {
  { "also=\"nobody\"", "also=\"right\"", "also is “nobody”" },
  { "also=\"left\"", "also=\"right\"", "also is the same part" },
  { "", "joint-y=\"0\"", "only one of joint-x and joint-y" },
  { "slack=\"0.9\"", "slack=\"1.1\"", "slack" },
  { "unplugs=\"often\"", "unplugs=\"no\"", "unplugs" },
};

START_TEST (a_lead_that_contradicts_itself_is_told_of)
{
  g_auto (GStrv) pieces = g_strsplit (document, wrong[_i].of, 2);
  g_autofree char *text = g_strjoinv (wrong[_i].instead, pieces);
  g_autoptr (GError) error = NULL;
  Aeroplane *read = reader_read_data (text, strlen (text), "text", NULL, &error);

  ck_assert_ptr_null (read);
  ck_assert_msg (strstr (error->message, wrong[_i].told) != NULL, "%s", error->message);
}
END_TEST

START_TEST (places_in_a_wing_go_with_it_and_those_in_the_body_stay)
{
  g_autoptr (Aeroplane) read = read_it (), moved = change_surface_moved (read, "wing", 12, 3);
  const Lead *plain = aeroplane_lead (moved, 0), *joined = aeroplane_lead (moved, 1);

  ck_assert_double_eq (plain->via[0].place.x, 162);
  ck_assert_double_eq (plain->via[1].place.x, 152);
  ck_assert_double_eq (plain->via[2].place.x, 80);
  ck_assert_double_eq (plain->via[0].place.y, -100);
  ck_assert_double_eq (joined->joint_x, 157);
  ck_assert_double_eq (joined->via[0].place.x, 162);
}
END_TEST

/* What lies in the wing is the wing's, though the body is there too. */
START_TEST (places_in_a_body_alone_go_with_the_body)
{
  g_autoptr (Aeroplane) read = read_it ();
  Aeroplane *moved = change_parts_moved_with (aeroplane_ref (read), "body", 9, 0);
  const Lead *plain = aeroplane_lead (moved, 0), *joined = aeroplane_lead (moved, 1);

  ck_assert_double_eq (plain->via[0].place.x, 150);
  ck_assert_double_eq (plain->via[1].place.x, 140);
  ck_assert_double_eq (plain->via[2].place.x, 89);
  ck_assert_double_eq (joined->joint_x, 145);
  aeroplane_unref (moved);
}
END_TEST

START_TEST (what_a_later_version_said_of_a_place_stays_with_it)
{
  g_autoptr (Aeroplane) read = read_it ();
  g_autoptr (Aeroplane) more = change_lead_via_added (read, "lead", 0, (LeadVia) { { 150, -180 }, LEG_FROM });
  g_autoptr (Aeroplane) less = change_lead_via_removed (more, "lead", 0);
  g_autoptr (Aeroplane) gone = change_lead_via_removed (read, "lead", 0);
  g_autofree char *text = written (more), *without = written (gone);

  ck_assert_msg (strstr (text, "<via x=\"150\" y=\"-180\"/>") != NULL, "%s", text);
  ck_assert_msg (strstr (text, "<via x=\"150\" y=\"-100\" hole=\"8\"/>") != NULL, "%s", text);
  ck_assert_ptr_null (strstr (without, "hole"));
  ck_assert (aeroplane_equal (less, read));
  ck_assert_ptr_null (change_lead_via_removed (read, "lead", 3));
  ck_assert_ptr_null (change_lead_via_added (read, "lead", 4, (LeadVia) { { 0, 0 }, LEG_FROM }));
  ck_assert_ptr_null (change_lead_via_added (read, "lead", 0, (LeadVia) { { NAN, 0 }, LEG_FROM }));
}
END_TEST

START_TEST (a_receiver_takes_every_lead_along_that_ends_at_it)
{
  g_autoptr (Aeroplane) read = read_it ();
  g_autoptr (Aeroplane) left = aeroplane_without_dependents (read, aeroplane_find (read, "receiver"));

  ck_assert_uint_eq (aeroplane_count (left, PIECE_LEAD), 0);
}
END_TEST

START_TEST (of_a_two_into_one_lead_the_servo_that_is_left_keeps_a_plain_one)
{
  static const char *const gone[] = { "left", "right" }, *const stays[] = { "right", "left" };
  g_autoptr (Aeroplane) read = read_it ();
  g_autoptr (Aeroplane) left = aeroplane_without_dependents (read, aeroplane_find (read, gone[_i]));
  const Lead *lead = aeroplane_lead_by_id (left, "joined");
  g_autofree char *text = written (left);

  ck_assert_ptr_nonnull (lead);
  ck_assert (!lead_is_joined (lead));
  ck_assert_str_eq (lead->from, stays[_i]);
  ck_assert_str_eq (lead->to, "receiver");
  ck_assert_double_nan (lead->length);
  ck_assert_double_eq (lead->mass, 0);
  ck_assert_uint_eq (lead->via_count, 0);
  ck_assert_ptr_nonnull (strstr (text, "id=\"joined\""));
  ck_assert_ptr_null (strstr (text, "joint-x"));
}
END_TEST

int
main (void)
{
  TCase *tests = tcase_create ("changes leads");

  tcase_add_test (tests, all_that_a_two_into_one_lead_says_comes_back);
  tcase_add_test (tests, a_lead_of_an_older_document_is_read_as_before_and_can_be_chosen);
  tcase_add_loop_test (tests, a_lead_that_contradicts_itself_is_told_of, 0, (int) G_N_ELEMENTS (wrong));
  tcase_add_test (tests, places_in_a_wing_go_with_it_and_those_in_the_body_stay);
  tcase_add_test (tests, places_in_a_body_alone_go_with_the_body);
  tcase_add_test (tests, what_a_later_version_said_of_a_place_stays_with_it);
  tcase_add_test (tests, a_receiver_takes_every_lead_along_that_ends_at_it);
  tcase_add_loop_test (tests, of_a_two_into_one_lead_the_servo_that_is_left_keeps_a_plain_one, 0, 2);
  return run_suite (suite_create ("document changes leads"), tests);
}
