#include <check.h>
#include "document/changes.h"
#include "support/run-suite.h"
#include "support/shapes.h"

/* Bays, and where parts may be. */

static Aeroplane *
with (Aeroplane *takes, void *piece)
{
  Aeroplane *made = aeroplane_with_added (takes, piece);

  aeroplane_unref (takes);
  return made;
}

static Aeroplane *
bays (void)
{
  Body *body = body_new ("body");
  Part *part = part_new ("pack", "battery"), *fixed = part_new ("motor", "motor");

  body->former_count = 3;
  body->formers = g_new (NamedPlace, 3);
  for (int i = 0; i < 3; i++)
    body->formers[i] = (NamedPlace) { g_strdup_printf ("F%d", i + 1), 20 + 90 * i };
  part->bays = g_strdup ("nose  wing");
  fixed->of = g_strdup ("body");
  fixed->x = 10;
  Aeroplane *made = with (with (aeroplane_new (), body), bay_new ("nose", "F1", "F2"));
  return with (with (made, part), fixed);
}

START_TEST (a_bay_is_added_between_two_formers_that_are_there)
{
  g_autoptr (Aeroplane) made = bays ();
  g_autofree char *id = NULL;
  g_autoptr (Aeroplane) more = change_bay_added (made, "F2", "F3", &id);
  const Bay *bay = (const Bay *) aeroplane_find (more, "bay");

  ck_assert_str_eq (id, "bay");
  ck_assert_str_eq (bay->from_former, "F2");
  ck_assert_str_eq (bay->to_former, "F3");
  ck_assert_ptr_null (change_bay_added (made, "F2", "F2", NULL));
  ck_assert_ptr_null (change_bay_added (made, "F2", "F9", NULL));
}
END_TEST

START_TEST (a_bay_that_is_renamed_takes_its_parts_along)
{
  g_autoptr (Aeroplane) made = bays ();
  g_autoptr (Aeroplane) named = change_bay_renamed (made, "nose", " front  floor ");

  ck_assert_ptr_nonnull (aeroplane_find (named, "front--floor"));
  ck_assert_str_eq (aeroplane_part_by_id (named, "pack")->bays, "front--floor wing");
  ck_assert_ptr_null (change_bay_renamed (made, "nose", "  "));
  ck_assert_ptr_null (change_bay_renamed (made, "nose", "motor"));
  g_autoptr (Aeroplane) same = change_bay_renamed (made, "nose", "nose");
  ck_assert (aeroplane_equal (same, made));
}
END_TEST

START_TEST (a_bay_goes_to_other_formers)
{
  g_autoptr (Aeroplane) made = bays ();
  g_autoptr (Aeroplane) moved = change_bay_formers (made, "nose", "F1", "F3");

  ck_assert_str_eq (((const Bay *) aeroplane_find (moved, "nose"))->to_former, "F3");
  ck_assert_ptr_null (change_bay_formers (made, "nose", "F3", "F3"));
}
END_TEST

START_TEST (a_bay_that_is_removed_is_in_no_part_s_list)
{
  g_autoptr (Aeroplane) made = bays ();
  g_autoptr (Aeroplane) without = change_bay_removed (made, "nose");
  g_autoptr (Aeroplane) nowhere = change_part_room (without, "pack", "wing", false);

  ck_assert_ptr_null (aeroplane_find (without, "nose"));
  ck_assert_str_eq (aeroplane_part_by_id (without, "pack")->bays, "wing");
  ck_assert_ptr_null (aeroplane_part_by_id (nowhere, "pack")->bays);
}
END_TEST

START_TEST (a_part_may_be_in_one_room_more_or_less)
{
  g_autoptr (Aeroplane) made = bays ();
  g_autoptr (Aeroplane) more = change_part_room (made, "pack", "cabin", true);
  g_autoptr (Aeroplane) first = change_part_room (made, "motor", "nose", true);

  ck_assert (part_may_be_in (aeroplane_part_by_id (more, "pack"), "cabin"));
  ck_assert (part_may_be_in (aeroplane_part_by_id (more, "pack"), "nose"));
  ck_assert (!part_may_be_in (aeroplane_part_by_id (more, "pack"), "no"));
  ck_assert_str_eq (aeroplane_part_by_id (first, "motor")->bays, "nose");
}
END_TEST

static const struct { double from, by, to; } turns[] = { { 0, 90, 90 }, { 90, 90, 180 }, { 180, 90, -90 }, { -90, 90, 0 }, { 30, -45, -15 } };

START_TEST (a_part_turned_on_comes_round_to_where_it_was)
{
  g_autoptr (Aeroplane) made = bays ();
  g_autoptr (Aeroplane) first = change_part_turned (made, "pack", turns[_i].from);
  g_autoptr (Aeroplane) next = change_part_turned (first, "pack", turns[_i].by);

  ck_assert_double_eq_tol (aeroplane_part_by_id (next, "pack")->turn, turns[_i].to, 1e-12);
  ck_assert_ptr_null (change_part_turned (made, "nobody", 90));
}
END_TEST

START_TEST (what_is_fixed_to_a_body_moves_with_it)
{
  g_autoptr (Aeroplane) moved = change_parts_moved_with (bays (), "body", 5, -2);

  ck_assert_double_eq (aeroplane_part_by_id (moved, "motor")->x, 15);
  ck_assert_double_eq (aeroplane_part_by_id (moved, "motor")->z, -2);
  ck_assert_double_eq (aeroplane_part_by_id (moved, "pack")->x, 0);
}
END_TEST

int
main (void)
{
  TCase *tests = tcase_create ("bays");

  tcase_add_test (tests, a_bay_is_added_between_two_formers_that_are_there);
  tcase_add_test (tests, a_bay_that_is_renamed_takes_its_parts_along);
  tcase_add_test (tests, a_bay_goes_to_other_formers);
  tcase_add_test (tests, a_bay_that_is_removed_is_in_no_part_s_list);
  tcase_add_test (tests, a_part_may_be_in_one_room_more_or_less);
  tcase_add_loop_test (tests, a_part_turned_on_comes_round_to_where_it_was, 0, G_N_ELEMENTS (turns));
  tcase_add_test (tests, what_is_fixed_to_a_body_moves_with_it);
  return run_suite (suite_create ("bays"), tests);
}
