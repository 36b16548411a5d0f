/* Parts that are chosen and moved together, and pairs on either side of the centre line, under a real hand. */
#include <math.h>
#include "app/part-group.h"
#include "app/sheet-command.h"
#include "support/sheet-hand.h"

static const Selection *
selection (void)
{
  return trammel_session_selection (hand_session ());
}

/* Receiver and elevator servo, selected together. */
static void
select_two (void)
{
  Selection two = selection_of ("receiver");

  selection_toggle (&two, "servo-elevator");
  trammel_session_select (hand_session (), two);
  gui_settle ();
}

START_TEST (ctrl_j_groups_what_is_selected_and_takes_it_apart)
{
  g_autofree char *before = hand_text ();

  select_two ();
  gui_key ("<Control>j");
  ck_assert_str_eq (hand_part ("receiver")->group, "group");
  ck_assert_str_eq (hand_part ("servo-elevator")->group, "group");
  ck_assert_str_eq (trammel_session_undo_label (hand_session ()), "Group Parts");
  gui_key ("<Control>j");
  ck_assert_ptr_null (hand_part ("receiver")->group);
  ck_assert_str_eq (trammel_session_undo_label (hand_session ()), "Take Group Apart");
  trammel_session_undo (hand_session ());
  hand_undoes ("Group Parts", before);
}
END_TEST

START_TEST (a_click_takes_the_group_a_second_the_part_a_third_what_lies_beneath)
{
  select_two ();
  gui_key ("<Control>j");
  trammel_session_select (hand_session (), selection_none ());
  hand_click ((Point) { 171, 2 });
  ck_assert (selection_has (selection (), "receiver"));
  ck_assert (selection_has (selection (), "servo-elevator"));
  ck_assert_str_eq (trammel_sheet_canvas_hint (hand_sheet ()), "These parts move as one. Click again for this part alone.");
  hand_click ((Point) { 167, -4 });      /* elsewhere on it */
  ck_assert_str_eq (hand_selected (), "receiver");
  hand_click ((Point) { 167, -4 });
  ck_assert_str_eq (hand_selected (), "body");
}
END_TEST

START_TEST (a_group_moves_as_one)
{
  g_autofree char *grouped = NULL;

  select_two ();
  gui_key ("<Control>j");
  grouped = hand_text ();
  hand_click ((Point) { 60, 200 });
  hand_drag ((Point) { 160, 0 }, (Point) { 170, 4 });
  ck_assert_double_eq_tol (hand_part ("receiver")->x, 173, 0.3);
  ck_assert_double_eq_tol (hand_part ("servo-elevator")->x - hand_part ("receiver")->x, 23, 1e-9);
  ck_assert_double_eq_tol (hand_part ("servo-elevator")->y - hand_part ("receiver")->y, 5, 1e-9);
  hand_undoes ("Move Several", grouped);
}
END_TEST

/* The battery's rail ends at 130: what it carries stops with it. */
START_TEST (a_group_stops_where_the_rail_of_one_of_it_ends)
{
  Selection two = selection_of ("battery");

  selection_toggle (&two, "receiver");
  trammel_session_select (hand_session (), two);
  gui_key ("<Control>j");
  const double battery = hand_part ("battery")->x, apart = hand_part ("receiver")->x - battery, end = hand_part ("battery")->rail_to;
  hand_click ((Point) { 60, 200 });
  hand_drag ((Point) { battery, 0 }, (Point) { end + 30, 8 });
  ck_assert_double_eq_tol (hand_part ("battery")->x, end, 1e-9);
  ck_assert_double_eq_tol (hand_part ("receiver")->x - end, apart, 1e-9);
  ck_assert_double_eq_tol (hand_part ("receiver")->y, 0, 1e-9);
}
END_TEST

/* The racer with one aileron servo, the left. */
static void
remove_right_servo (void)
{
  trammel_session_do (hand_session (), aeroplane_without_dependents (hand_aeroplane (), &hand_part ("servo-right")->piece), "Delete");
}

START_TEST (a_duplicate_stands_on_the_other_side_turned_the_other_way_with_its_lead)
{
  remove_right_servo ();
  const size_t leads = aeroplane_count (hand_aeroplane (), PIECE_LEAD);
  Part *turned = (Part *) piece_dup (&hand_part ("servo-left")->piece);
  const Part *copy;
  const Lead *lead;

  turned->turn = 30;
  trammel_session_do (hand_session (), aeroplane_with_replaced (hand_aeroplane (), &hand_part ("servo-left")->piece, &turned->piece), "Turn");
  hand_look ((Point) { 176, -125 }, 4);
  hand_context_click ((Point) { 176, -125 });
  gui_click (gui_await (GTK_WIDGET (hand_sheet ()), "Duplicate on the Other Side"));
  gui_settle ();
  copy = hand_part ("servo-left-2");
  ck_assert_ptr_nonnull (copy);
  ck_assert_double_eq (copy->y, 125);
  ck_assert_double_eq (copy->x, 176);
  ck_assert_double_eq (copy->turn, -30);
  ck_assert_str_eq (hand_selected (), "servo-left-2");
  ck_assert_uint_eq (aeroplane_count (hand_aeroplane (), PIECE_LEAD), leads + 1);
  lead = aeroplane_lead (hand_aeroplane (), leads);
  ck_assert_str_eq (lead->from, "servo-left-2");
  ck_assert_str_eq (lead->to, "receiver");
  ck_assert_double_gt (lead->via[0].place.y, 0);
  ck_assert_str_eq (trammel_session_undo_label (hand_session ()), "Duplicate on the Other Side");
}
END_TEST

/* Of a pair each is the other's copy: a second one would stand in it. */
START_TEST (a_pair_is_not_copied_into_itself_and_the_status_says_so)
{
  Selection pair = selection_of ("servo-left");
  g_autofree char *before = hand_text (), *after = NULL;

  selection_toggle (&pair, "servo-right");
  trammel_session_select (hand_session (), pair);
  ck_assert (!sheet_command_mirror (hand_sheet ()));
  ck_assert_str_eq (trammel_sheet_canvas_hint (hand_sheet ()), "Both sides have it already: nothing was copied.");
  after = hand_text ();
  ck_assert_str_eq (before, after);
}
END_TEST

START_TEST (on_the_centre_line_there_is_no_other_side)
{
  Selection made = selection_none ();
  Selection battery = selection_of ("battery");

  ck_assert_ptr_null (part_group_mirrored (hand_aeroplane (), &battery, &made));
  selection_clear (&battery);
}
END_TEST

int
main (void)
{
  TCase *groups = tcase_create ("groups");

  tcase_add_test (groups, ctrl_j_groups_what_is_selected_and_takes_it_apart);
  tcase_add_test (groups, a_click_takes_the_group_a_second_the_part_a_third_what_lies_beneath);
  tcase_add_test (groups, a_group_moves_as_one);
  tcase_add_test (groups, a_group_stops_where_the_rail_of_one_of_it_ends);
  tcase_add_test (groups, a_duplicate_stands_on_the_other_side_turned_the_other_way_with_its_lead);
  tcase_add_test (groups, a_pair_is_not_copied_into_itself_and_the_status_says_so);
  tcase_add_test (groups, on_the_centre_line_there_is_no_other_side);
  return hand_run ("sheet groups", (TCase *[]) { groups }, 1);
}
