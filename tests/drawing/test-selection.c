#include "drawing/selection.h"
#include "support/aeroplanes.h"
#include "support/easel.h"
#include "support/run-suite.h"
#include "support/shapes.h"

START_TEST (nothing_is_selected_at_first)
{
  Selection none = selection_none ();

  ck_assert (selection_is_empty (&none));
  ck_assert (!selection_has (&none, "wing"));
  ck_assert_ptr_null (selection_single (&none));
  ck_assert (!selection_has_node (&none, NULL, false, 0));
}
END_TEST

START_TEST (a_mark_alone_is_something)
{
  Selection mark = selection_of_mark (0);

  ck_assert (!selection_is_empty (&mark));
  ck_assert_ptr_null (selection_single (&mark));
}
END_TEST

START_TEST (a_point_alone_is_something_until_a_thing_is_added)
{
  Selection point = selection_of_point (SHEET_POINT_NEUTRAL);

  ck_assert (!selection_is_empty (&point));
  ck_assert_ptr_null (selection_single (&point));
  selection_toggle (&point, "wing");
  ck_assert_int_eq (point.point, SHEET_POINT_NONE);
  ck_assert_str_eq (selection_single (&point), "wing");
  selection_clear (&point);
}
END_TEST

START_TEST (toggling_adds_then_takes_away)
{
  Selection s = selection_of ("wing");

  selection_toggle (&s, "battery");
  ck_assert (selection_has (&s, "wing") && selection_has (&s, "battery"));
  ck_assert_ptr_null (selection_single (&s));
  selection_toggle (&s, "wing");
  ck_assert_str_eq (selection_single (&s), "battery");
  selection_toggle (&s, "battery");
  ck_assert (selection_is_empty (&s));
  selection_clear (&s);
}
END_TEST

START_TEST (toggled_nodes_stay_in_rising_order)
{
  Selection s = selection_of_node ("wing", false, 3);

  selection_toggle_node (&s, "wing", false, 1);
  selection_toggle_node (&s, "wing", false, 2);
  ck_assert_uint_eq (s.node_count, 3);
  for (size_t i = 0; i < 3; i++)
    ck_assert_uint_eq (s.nodes[i], i + 1);
  selection_toggle_node (&s, "wing", false, 2);
  ck_assert (!selection_has_node (&s, "wing", false, 2));
  ck_assert (selection_has_node (&s, "wing", false, 3));
  ck_assert (!selection_has_node (&s, "wing", true, 3));
  ck_assert (!selection_has_node (&s, "tail", false, 3));
  selection_clear (&s);
}
END_TEST

START_TEST (a_node_of_another_outline_begins_afresh)
{
  Selection s = selection_of_node ("body", false, 2);

  selection_toggle_node (&s, "body", true, 4);
  ck_assert (!selection_has_node (&s, "body", false, 2));
  ck_assert (selection_has_node (&s, "body", true, 4));
  selection_toggle_node (&s, "wing", false, 0);
  ck_assert_str_eq (selection_single (&s), "wing");
  ck_assert_uint_eq (s.node_count, 1);
  selection_clear (&s);
}
END_TEST

START_TEST (the_last_node_taken_away_leaves_its_piece_selected)
{
  Selection s = selection_of_node ("wing", false, 1), expected = selection_of ("wing");

  selection_toggle_node (&s, "wing", false, 1);
  ck_assert (selection_equal (&s, &expected));
  selection_clear (&s);
  selection_clear (&expected);
}
END_TEST

START_TEST (a_copy_is_equal_and_its_own)
{
  Selection s = selection_of_node ("wing", false, 1), copy = selection_copy (&s);

  ck_assert (selection_equal (&s, &copy));
  selection_toggle_node (&s, "wing", false, 2);
  ck_assert (!selection_equal (&s, &copy));
  ck_assert_uint_eq (copy.node_count, 1);
  selection_clear (&s);
  selection_clear (&copy);
}
END_TEST

START_TEST (what_differs_is_not_equal)
{
  Selection all[] = {
    selection_none (), selection_of ("wing"), selection_of ("tail"), selection_of_node ("wing", false, 1),
    selection_of_node ("wing", true, 1), selection_of_node ("wing", false, 2), selection_of_mark (0), selection_of_mark (1),
    selection_of_control ("wing", "ailerons"), selection_of_point (SHEET_POINT_BALANCE), selection_of_point (SHEET_POINT_NEUTRAL) };

  for (size_t i = 0; i < G_N_ELEMENTS (all); i++)
    for (size_t j = 0; j < G_N_ELEMENTS (all); j++)
      ck_assert_msg (selection_equal (&all[i], &all[j]) == (i == j), "%zu and %zu", i, j);
  for (size_t i = 0; i < G_N_ELEMENTS (all); i++)
    selection_clear (&all[i]);
}
END_TEST

/* What is kept of a selection in the racer: all, or what is expected. */
static void
assert_kept (Selection takes, Selection takes_expected)
{
  Aeroplane *aeroplane = racer_in_full ();
  Selection kept = selection_kept (&takes, aeroplane);

  ck_assert (selection_equal (&kept, &takes_expected));
  selection_clear (&kept);
  selection_clear (&takes);
  selection_clear (&takes_expected);
  aeroplane_unref (aeroplane);
}

START_TEST (what_still_exists_is_kept)
{
  assert_kept (selection_of_node ("wing", false, 2), selection_of_node ("wing", false, 2));
  assert_kept (selection_of_node ("body", true, 6), selection_of_node ("body", true, 6));
  assert_kept (selection_of_control ("wing", "ailerons"), selection_of_control ("wing", "ailerons"));
  assert_kept (selection_of_mark (0), selection_of_mark (0));
  assert_kept (selection_of_point (SHEET_POINT_BALANCE), selection_of_point (SHEET_POINT_BALANCE));
}
END_TEST

START_TEST (what_is_gone_is_dropped)
{
  assert_kept (selection_of ("second-wing"), selection_none ());
  assert_kept (selection_of_node ("wing", false, 3), selection_of ("wing"));      /* its nodes are 0 to 2 */
  assert_kept (selection_of_node ("battery", false, 0), selection_of ("battery"));
  assert_kept (selection_of_control ("tail", "ailerons"), selection_of ("tail"));
  assert_kept (selection_of_mark (1), selection_none ());
}
END_TEST

int
main (void)
{
  TCase *tests = tcase_create ("selection");

  tcase_add_test (tests, nothing_is_selected_at_first);
  tcase_add_test (tests, a_mark_alone_is_something);
  tcase_add_test (tests, a_point_alone_is_something_until_a_thing_is_added);
  tcase_add_test (tests, toggling_adds_then_takes_away);
  tcase_add_test (tests, toggled_nodes_stay_in_rising_order);
  tcase_add_test (tests, a_node_of_another_outline_begins_afresh);
  tcase_add_test (tests, the_last_node_taken_away_leaves_its_piece_selected);
  tcase_add_test (tests, a_copy_is_equal_and_its_own);
  tcase_add_test (tests, what_differs_is_not_equal);
  tcase_add_test (tests, what_still_exists_is_kept);
  tcase_add_test (tests, what_is_gone_is_dropped);
  return run_suite (suite_create ("drawing selection"), tests);
}
