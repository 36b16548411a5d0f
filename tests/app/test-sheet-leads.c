/* Leads under a real hand: chosen, bent, their bends moved and taken out, with the pointer and with keys. */
#include <math.h>
#include <string.h>
#include "app/lead-edit.h"
#include "app/lead-fields.h"
#include "app/part-adder.h"
#include "app/tool.h"
#include "document/changes.h"
#include "figures/lead-need.h"
#include "support/sheet-hand.h"

/* The left aileron servo's lead runs from (176, -125) over (141, -119) and (141, -34) to the receiver. */
static const char left[] = "lead";

static const Lead *
lead (void)
{
  return aeroplane_lead_by_id (hand_aeroplane (), left);
}

static void
choose (void)
{
  hand_look ((Point) { 150, -80 }, 4);
  gui_settle ();
  hand_click ((Point) { 141, -60 });
  ck_assert_str_eq (hand_selected (), left);
}

static size_t
chosen_place (void)
{
  const Selection *selection = trammel_session_selection (hand_session ());

  ck_assert_str_eq (hand_selected (), left);
  ck_assert_uint_eq (selection->node_count, 1);
  return selection->nodes[0];
}

START_TEST (a_bend_is_dragged_and_one_undo_puts_it_back)
{
  g_autofree char *before = hand_text ();
  double needed;

  choose ();
  needed = lead_need_of (hand_aeroplane (), lead (), LEG_FROM).needed;
  hand_drag ((Point) { 141, -119 }, (Point) { 150, -110 });
  ck_assert_double_eq (lead ()->via[0].place.x, 150);
  ck_assert_double_eq (lead ()->via[0].place.y, -110);
  ck_assert_double_lt (lead_need_of (hand_aeroplane (), lead (), LEG_FROM).needed, needed);
  hand_undoes ("Move Bend", before);
}
END_TEST

START_TEST (esc_in_the_middle_of_a_drag_puts_the_bend_back)
{
  g_autofree char *before = hand_text ();

  choose ();
  hand_pull ((Point) { 141, -119 }, (Point) { 160, -110 });
  ck_assert_double_eq (lead ()->via[0].place.x, 160);
  ck_assert_ptr_nonnull (hand_plate ("Lead needs"));
  gui_key ("Escape");
  hand_release ();
  ck_assert_double_eq (lead ()->via[0].place.x, 141);
  g_autofree char *after = hand_text ();
  ck_assert_str_eq (before, after);
}
END_TEST

START_TEST (the_line_is_pulled_into_a_new_bend_that_is_then_chosen)
{
  g_autofree char *before = hand_text ();

  choose ();
  hand_drag ((Point) { 141, -80 }, (Point) { 130, -80 });
  ck_assert_uint_eq (lead ()->via_count, 3);
  ck_assert_double_eq (lead ()->via[1].place.x, 130);
  ck_assert_double_eq (lead ()->via[1].place.y, -80);
  ck_assert_uint_eq (chosen_place (), 1);
  hand_undoes ("Bend Lead", before);
}
END_TEST

START_TEST (two_quick_clicks_on_the_line_bend_it_there)
{
  /* However slow the machine is, these two are quick. */
  g_object_set (gtk_settings_get_default (), "gtk-double-click-time", 60000, NULL);
  hand_look ((Point) { 150, -80 }, 4);
  gui_settle ();
  hand_click ((Point) { 141, -60 });
  hand_click ((Point) { 141, -60 });
  gtk_settings_reset_property (gtk_settings_get_default (), "gtk-double-click-time");
  ck_assert_uint_eq (lead ()->via_count, 3);
  ck_assert_double_eq (lead ()->via[1].place.y, -60);
  ck_assert_uint_eq (chosen_place (), 1);
}
END_TEST

/* The longest stretch runs from station 119 to 34. */
START_TEST (insert_bends_the_longest_stretch_and_delete_takes_the_bend_out)
{
  g_autofree char *before = hand_text ();

  choose ();
  gui_key ("Insert");
  ck_assert_uint_eq (lead ()->via_count, 3);
  ck_assert_double_eq (lead ()->via[1].place.y, -76.5);
  gui_key ("Delete");
  ck_assert_uint_eq (lead ()->via_count, 2);
  ck_assert_str_eq (hand_selected (), left);
  trammel_session_undo (hand_session ());
  ck_assert_uint_eq (lead ()->via_count, 3);
  trammel_session_undo (hand_session ());
  g_autofree char *after = hand_text ();
  ck_assert_str_eq (before, after);
}
END_TEST

START_TEST (arrows_move_the_chosen_bend_and_tab_reaches_the_next)
{
  choose ();
  hand_click ((Point) { 141, -119 });
  ck_assert_uint_eq (chosen_place (), 0);
  gui_key ("Down");
  gui_key ("<Shift>Right");
  ck_assert_double_eq (lead ()->via[0].place.x, 142);
  ck_assert_double_eq (lead ()->via[0].place.y, -109);
  gui_key ("Tab");
  ck_assert_uint_eq (chosen_place (), 1);
}
END_TEST

START_TEST (delete_takes_a_lead_out_that_is_chosen_as_a_whole)
{
  g_autofree char *before = hand_text ();
  const size_t leads = aeroplane_count (hand_aeroplane (), PIECE_LEAD);

  choose ();
  gui_key ("Delete");
  ck_assert_uint_eq (aeroplane_count (hand_aeroplane (), PIECE_LEAD), leads - 1);
  ck_assert_ptr_null (lead ());
  hand_undoes ("Delete Lead", before);
}
END_TEST

/* Fixed to the wing, and nothing given: 176 is about half-way along the chord there, and the way bends on the centre line. */
static void
without_places (void)
{
  const Part *servo = hand_part ("servo-left");
  Part *fixed = (Part *) piece_dup (&servo->piece);
  Lead *bare = (Lead *) piece_dup (&lead ()->piece);
  g_autoptr (Aeroplane) one = NULL;

  g_free (fixed->of);
  fixed->of = g_strdup ("wing");
  g_clear_pointer (&bare->via, g_free);
  bare->via_count = 0;
  one = aeroplane_with_replaced (hand_aeroplane (), &servo->piece, &fixed->piece);
  trammel_session_do (hand_session (), change_lead (one, left, bare), "As Usual");
}

START_TEST (the_usual_way_becomes_a_given_one_where_a_hand_takes_hold_of_it)
{
  LeadPoint point;

  without_places ();
  ck_assert (lead_runs_as_usual (hand_aeroplane (), lead (), LEG_FROM));
  ck_assert (lead_edit_point (hand_aeroplane (), left, 0, &point));
  hand_look ((Point) { 150, -40 }, 4);
  gui_settle ();
  trammel_session_select (hand_session (), selection_of (left));
  hand_drag (point.place, (Point) { 190, -10 });
  ck_assert_uint_eq (lead ()->via_count, 1);
  ck_assert_double_eq (lead ()->via[0].place.x, 190);
  ck_assert_double_eq (lead ()->via[0].place.y, -10);
  ck_assert (!lead_runs_as_usual (hand_aeroplane (), lead (), LEG_FROM));
}
END_TEST

START_TEST (the_usual_way_follows_its_servo)
{
  LeadPoint before, after;

  without_places ();
  ck_assert (lead_edit_point (hand_aeroplane (), left, 0, &before));
  trammel_session_do (hand_session (), change_part_place (hand_aeroplane (), "servo-left", 150, -125, -5), "Move");
  ck_assert (lead_edit_point (hand_aeroplane (), left, 0, &after));
  ck_assert_double_lt (after.place.x, before.place.x - 10);
  ck_assert_uint_eq (lead ()->via_count, 0);
}
END_TEST

START_TEST (the_joint_of_a_two_into_one_lead_is_dragged_and_delete_puts_it_back)
{
  Lead *joined = (Lead *) piece_dup (&lead ()->piece);
  LeadPoint joint;

  joined->also = g_strdup ("servo-right");
  joined->joint_x = 180;
  joined->joint_y = 0;
  joined->via_count = 0;
  trammel_session_do (hand_session (), change_lead (hand_aeroplane (), left, joined), "Join");
  hand_look ((Point) { 180, 0 }, 4);
  gui_settle ();
  trammel_session_select (hand_session (), selection_of (left));
  hand_drag ((Point) { 180, 0 }, (Point) { 185, -40 });
  ck_assert_double_eq (lead ()->joint_x, 185);
  ck_assert_double_eq (lead ()->joint_y, -40);
  hand_click ((Point) { 185, -40 });
  gui_key ("Delete");
  ck_assert (isnan (lead ()->joint_x));
  ck_assert (lead_edit_point (hand_aeroplane (), left, 0, &joint));
  ck_assert (joint.joint);
}
END_TEST

START_TEST (the_tool_lays_a_lead_from_part_to_part_over_its_bends)
{
  g_autofree char *before = hand_text ();
  const size_t leads = aeroplane_count (hand_aeroplane (), PIECE_LEAD);
  const Part *motor = hand_part ("motor"), *servo = hand_part ("servo-left");
  const Lead *laid;

  hand_look ((Point) { 100, -60 }, 2);
  gui_settle ();
  gui_key ("l");
  hand_click ((Point) { servo->x, servo->y });
  hand_click ((Point) { 90, -100 });
  hand_click ((Point) { 70, -60 });
  gui_key ("BackSpace");
  hand_click ((Point) { motor->x, motor->y });
  ck_assert_uint_eq (aeroplane_count (hand_aeroplane (), PIECE_LEAD), leads + 1);
  laid = aeroplane_lead (hand_aeroplane (), leads);
  ck_assert_str_eq (laid->from, "servo-left");
  ck_assert_str_eq (laid->to, "motor");
  ck_assert_uint_eq (laid->via_count, 1);
  ck_assert_double_eq (laid->via[0].place.x, 90);
  ck_assert_double_eq (laid->via[0].place.y, -100);
  ck_assert_str_eq (hand_selected (), laid->piece.id);
  hand_undoes ("Add Lead", before);
}
END_TEST

START_TEST (esc_leaves_a_lead_that_is_being_laid)
{
  g_autofree char *before = hand_text ();
  const Part *servo = hand_part ("servo-left");

  hand_look ((Point) { 150, -80 }, 2);
  gui_settle ();
  gui_key ("l");
  hand_click ((Point) { servo->x, servo->y });
  ck_assert_uint_eq (trammel_sheet_canvas_overlay (hand_sheet ())->lead_count, 2);
  gui_key ("Escape");
  ck_assert_uint_eq (trammel_sheet_canvas_overlay (hand_sheet ())->lead_count, 0);
  ck_assert_str_eq (trammel_sheet_canvas_tool (hand_sheet ())->kind->word, "lead");
  g_autofree char *after = hand_text ();
  ck_assert_str_eq (after, before);
}
END_TEST

/* 250 mm, of which 59 are left over: of 120 mm 71 are missing, and 100 is what is sold. */
START_TEST (a_length_that_is_typed_says_what_is_left_over_or_which_extension_helps)
{
  const FieldList rows = lead_leg_fields (LEG_FROM);
  TrammelSession *session = hand_session ();

  choose ();
  ck_assert_double_eq_tol (rows.specs[3].value (session, &rows.specs[3]), 59, 0.5);
  ck_assert (isnan (rows.specs[4].value (session, &rows.specs[4])));
  trammel_session_do (session, rows.specs[0].change (session, &rows.specs[0], 120), "Type");
  ck_assert_double_eq (lead ()->length, 120);
  ck_assert_double_eq_tol (rows.specs[3].value (session, &rows.specs[3]), -71, 0.5);
  ck_assert_double_eq (rows.specs[4].value (session, &rows.specs[4]), 100);
  ck_assert_ptr_null (rows.specs[0].change (session, &rows.specs[0], -1));
}
END_TEST

/* Its own 250 mm are longer by a leg of 150 then; of the servos that may join in, elevator and right aileron, the second is chosen. */
START_TEST (a_second_servo_joins_in_and_its_own_lead_goes_in_one_step)
{
  g_autofree char *before = hand_text ();
  const size_t leads = aeroplane_count (hand_aeroplane (), PIECE_LEAD);
  GtkWidget *also;

  choose ();
  also = g_object_ref_sink (lead_also_control (hand_session ()));
  gtk_drop_down_set_selected (GTK_DROP_DOWN (also), 2);
  ck_assert_uint_eq (aeroplane_count (hand_aeroplane (), PIECE_LEAD), leads - 1);
  ck_assert_str_eq (lead ()->also, "servo-right");
  ck_assert_double_eq (lead ()->length, 400);
  ck_assert_double_eq (lead ()->also_length, 400);
  ck_assert_double_eq (lead ()->to_length, 150);
  ck_assert_double_eq (lead ()->mass, 4.5);
  g_object_unref (also);
  hand_undoes ("Join Two Leads", before);
}
END_TEST

/* The choices of an end by their names; the one shown has an asterisk. */
static char *
choices_of (GtkWidget *end)
{
  GListModel *names = gtk_drop_down_get_model (GTK_DROP_DOWN (end));
  GString *text = g_string_new (NULL);

  for (guint i = 0; i < g_list_model_get_n_items (names); i++)
    g_string_append_printf (text, "%s%s;", gtk_string_list_get_string (GTK_STRING_LIST (names), i),
                            i == gtk_drop_down_get_selected (GTK_DROP_DOWN (end)) ? "*" : "");
  return g_string_free (text, FALSE);
}

/* Both servos and the receiver: what is chosen at one end is not offered at another. */
START_TEST (all_three_ends_of_a_two_into_one_lead_are_shown_and_changed)
{
  g_autoptr (GtkWidget) from = NULL, to = NULL;
  g_autofree char *begins = NULL, *ends = NULL;
  Lead *joined;

  choose ();
  joined = (Lead *) piece_dup (&lead ()->piece);
  joined->also = g_strdup ("servo-right");
  trammel_session_do (hand_session (), change_lead (hand_aeroplane (), left, joined), "Join");
  from = g_object_ref_sink (lead_end_control (hand_session (), LEG_FROM));
  to = g_object_ref_sink (lead_end_control (hand_session (), LEG_TO));
  begins = choices_of (from);
  ends = choices_of (to);
  ck_assert_str_eq (begins, "Servo, elevator;Servo, left aileron*;");
  ck_assert_ptr_nonnull (strstr (ends, "Receiver*;"));
  ck_assert_ptr_null (strstr (ends, "Servo"));
  ck_assert_ptr_null (strstr (ends, "Pushrod"));
  gtk_drop_down_set_selected (GTK_DROP_DOWN (from), 0);
  ck_assert_str_eq (lead ()->from, "servo-elevator");
  ck_assert_str_eq (trammel_session_undo_label (hand_session ()), "Change Where a Lead Begins");
  gtk_drop_down_set_selected (GTK_DROP_DOWN (to), 0);
  ck_assert_str_ne (lead ()->to, "receiver");
  ck_assert_str_eq (lead ()->also, "servo-right");
  ck_assert_str_eq (trammel_session_undo_label (hand_session ()), "Change Where a Lead Ends");
}
END_TEST

static Part *
two_into_one (void)
{
  Part *pattern = part_new (NULL, "other");

  pattern->kind = g_strdup ("lead-two-into-one");
  pattern->name = g_strdup ("Two-into-one lead, 2 × 150 mm");
  return pattern;
}

/* Both aileron servos are the nearest pair, though receiver and elevator servo are nearer to where it is let go. */
START_TEST (a_two_into_one_lead_put_on_the_sheet_joins_both_aileron_servos_in_one_step)
{
  g_autofree char *before = hand_text ();
  const size_t parts = aeroplane_count (hand_aeroplane (), PIECE_PART), leads = aeroplane_count (hand_aeroplane (), PIECE_LEAD);
  Part *pattern = two_into_one ();

  trammel_sheet_canvas_set_part_pattern (hand_sheet (), pattern);
  trammel_sheet_canvas_set_tool (hand_sheet (), "part");
  hand_look ((Point) { 150, 0 }, 2);
  hand_click ((Point) { 170, -3 });
  ck_assert_uint_eq (aeroplane_count (hand_aeroplane (), PIECE_PART), parts);
  ck_assert_uint_eq (aeroplane_count (hand_aeroplane (), PIECE_LEAD), leads - 1);
  ck_assert_str_eq (hand_selected (), left);
  ck_assert_str_eq (lead ()->also, "servo-right");
  ck_assert_double_eq (lead ()->to_length, 150);
  ck_assert_ptr_nonnull (strstr (trammel_sheet_canvas_hint (hand_sheet ()), "“Servo, right aileron” to “Receiver”"));
  hand_undoes ("Add Two-into-one lead, 2 × 150 mm", before);
  piece_unref (&pattern->piece);
}
END_TEST

START_TEST (without_two_servos_a_two_into_one_lead_says_what_it_needs)
{
  Part *pattern = two_into_one ();

  for (const char *const *id = (const char *const[]) { "servo-left", "servo-right", NULL }; *id != NULL; id++)
    trammel_session_do (hand_session (), aeroplane_without_dependents (hand_aeroplane (), &hand_part (*id)->piece), "Delete");
  g_autofree char *before = hand_text (), *sentence = part_adder_put (hand_session (), pattern, NULL), *after = hand_text ();
  ck_assert_str_eq (sentence, "A two-into-one lead joins two servos to a receiver: add those first.");
  ck_assert_str_eq (before, after);
  piece_unref (&pattern->piece);
}
END_TEST

int
main (void)
{
  TCase *leads = tcase_create ("leads");

  tcase_add_test (leads, a_bend_is_dragged_and_one_undo_puts_it_back);
  tcase_add_test (leads, esc_in_the_middle_of_a_drag_puts_the_bend_back);
  tcase_add_test (leads, the_line_is_pulled_into_a_new_bend_that_is_then_chosen);
  tcase_add_test (leads, two_quick_clicks_on_the_line_bend_it_there);
  tcase_add_test (leads, insert_bends_the_longest_stretch_and_delete_takes_the_bend_out);
  tcase_add_test (leads, arrows_move_the_chosen_bend_and_tab_reaches_the_next);
  tcase_add_test (leads, delete_takes_a_lead_out_that_is_chosen_as_a_whole);
  tcase_add_test (leads, the_usual_way_becomes_a_given_one_where_a_hand_takes_hold_of_it);
  tcase_add_test (leads, the_usual_way_follows_its_servo);
  tcase_add_test (leads, the_joint_of_a_two_into_one_lead_is_dragged_and_delete_puts_it_back);
  tcase_add_test (leads, the_tool_lays_a_lead_from_part_to_part_over_its_bends);
  tcase_add_test (leads, esc_leaves_a_lead_that_is_being_laid);
  tcase_add_test (leads, a_length_that_is_typed_says_what_is_left_over_or_which_extension_helps);
  tcase_add_test (leads, a_second_servo_joins_in_and_its_own_lead_goes_in_one_step);
  tcase_add_test (leads, all_three_ends_of_a_two_into_one_lead_are_shown_and_changed);
  tcase_add_test (leads, a_two_into_one_lead_put_on_the_sheet_joins_both_aileron_servos_in_one_step);
  tcase_add_test (leads, without_two_servos_a_two_into_one_lead_says_what_it_needs);
  return hand_run ("sheet leads", (TCase *[]) { leads }, 1);
}
