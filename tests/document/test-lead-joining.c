#include <check.h>
#include <math.h>
#include <string.h>
#include "document/data-path.h"
#include "document/lead-joining.h"
#include "support/aeroplanes.h"
#include "support/run-suite.h"

/* Which servos a two-into-one lead joins, and what becomes of their own leads. */

static Aeroplane *
with_class (Aeroplane *takes, const char *id, const char *class_name, Point place)
{
  Part *part = part_new (id, class_name);

  part->x = place.x;
  part->y = place.y;
  part->kind = g_strdup (strcmp (class_name, "servo") == 0 ? "servo-5" : "receiver");
  return with_piece (takes, part);
}

/* Two in the wing, two in the body, a receiver before them. */
static Aeroplane *
four_servos (void)
{
  Aeroplane *made = with_class (aeroplane_new (), "elevator", "servo", (Point) { 195, 5 });

  made = with_class (made, "rudder", "servo", (Point) { 195, -5 });
  made = with_class (made, "left", "servo", (Point) { 170, -160 });
  made = with_class (made, "right", "servo", (Point) { 170, 160 });
  return with_class (made, "receiver", "receiver", (Point) { 160, 0 });
}

static Catalogue *
shipped (void)
{
  g_autofree char *path = data_path ("catalogue.xml");

  return catalogue_read_file (NULL, path, NULL);
}

static void
ck_ends (const Aeroplane *aeroplane, const Point *place, const char *one, const char *other)
{
  const Part *ends[LEG_COUNT];

  ck_assert (lead_joining_ends (aeroplane, place, ends));
  ck_assert_str_eq (ends[LEG_FROM]->piece.id, one);
  ck_assert_str_eq (ends[LEG_ALSO]->piece.id, other);
  ck_assert_str_eq (ends[LEG_TO]->piece.id, "receiver");
}

START_TEST (the_pair_in_the_wing_is_joined_before_the_servos_in_the_body)
{
  g_autoptr (Aeroplane) made = four_servos ();

  ck_ends (made, &(Point) { 190, 1 }, "right", "left");
  ck_ends (made, &(Point) { 190, -1 }, "left", "right");
  ck_ends (made, NULL, "right", "left");
}
END_TEST

START_TEST (without_two_in_the_wing_those_in_the_body_are_joined)
{
  g_autoptr (Aeroplane) four = four_servos ();
  g_autoptr (Aeroplane) made = aeroplane_without (four, aeroplane_find (four, "left"));

  ck_ends (made, &(Point) { 195, 6 }, "elevator", "rudder");
}
END_TEST

START_TEST (one_that_shares_a_joint_already_is_left_out)
{
  g_autoptr (Aeroplane) four = four_servos ();
  g_autoptr (Catalogue) catalogue = shipped ();
  g_autofree char *id = NULL;
  g_autoptr (Aeroplane) made = leads_joined (four, catalogue, "left", "right", "receiver", &id);

  ck_ends (made, &(Point) { 170, 160 }, "elevator", "rudder");
}
END_TEST

START_TEST (with_fewer_than_two_servos_or_no_receiver_there_is_nothing_to_join)
{
  g_autoptr (Aeroplane) four = four_servos ();
  g_autoptr (Aeroplane) deaf = aeroplane_without (four, aeroplane_find (four, "receiver"));
  g_autoptr (Aeroplane) one = with_class (with_class (aeroplane_new (), "left", "servo", (Point) { 1, 1 }), "receiver", "receiver", (Point) { 0, 0 });
  const Part *ends[LEG_COUNT];

  ck_assert (!lead_joining_ends (deaf, NULL, ends));
  ck_assert (!lead_joining_ends (one, NULL, ends));
}
END_TEST

/* The class of 4 to 5 g comes with 135 mm, a leg has 150; common practice, no source. */
START_TEST (each_own_lead_is_longer_by_a_leg_and_its_plain_lead_goes)
{
  Lead *plain = lead_new ("right", "receiver");

  plain->length = 200;
  g_autoptr (Aeroplane) made = with_piece (four_servos (), plain);
  g_autoptr (Catalogue) catalogue = shipped ();
  g_autofree char *id = NULL;
  g_autoptr (Aeroplane) joined = leads_joined (made, catalogue, "left", "right", "receiver", &id);
  const Lead *lead = aeroplane_lead_by_id (joined, id);
  ck_assert_uint_eq (aeroplane_count (joined, PIECE_LEAD), 1);
  ck_assert_double_eq (lead->length, 135 + 150);
  ck_assert_double_eq (lead->also_length, 200 + 150);
  ck_assert_double_eq (lead->to_length, 150);
  ck_assert_double_eq (lead->mass, 4.5);
}
END_TEST

START_TEST (a_part_is_not_joined_with_itself_or_with_what_is_not_there)
{
  g_autoptr (Aeroplane) made = four_servos ();
  g_autoptr (Catalogue) catalogue = shipped ();
  char *id = NULL;

  ck_assert_ptr_null (leads_joined (made, catalogue, "left", "left", "receiver", &id));
  ck_assert_ptr_null (leads_joined (made, catalogue, "left", "right", "left", &id));
  ck_assert_ptr_null (leads_joined (made, catalogue, "left", "nobody", "receiver", &id));
  ck_assert_ptr_null (id);
}
END_TEST

int
main (void)
{
  TCase *tests = tcase_create ("lead joining");

  tcase_add_test (tests, the_pair_in_the_wing_is_joined_before_the_servos_in_the_body);
  tcase_add_test (tests, without_two_in_the_wing_those_in_the_body_are_joined);
  tcase_add_test (tests, one_that_shares_a_joint_already_is_left_out);
  tcase_add_test (tests, with_fewer_than_two_servos_or_no_receiver_there_is_nothing_to_join);
  tcase_add_test (tests, each_own_lead_is_longer_by_a_leg_and_its_plain_lead_goes);
  tcase_add_test (tests, a_part_is_not_joined_with_itself_or_with_what_is_not_there);
  return run_suite (suite_create ("document lead joining"), tests);
}
