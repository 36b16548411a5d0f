/* Arrange under a real hand: offered on the sheet, used in one step, given up without a trace. */
#include <math.h>
#include "document/changes.h"
#include "figures/figures.h"
#include "support/sheet-hand.h"

static GtkWidget *
find_button (const char *label)
{
  return gui_await (GTK_WIDGET (hand_window ()), label);
}

static bool
is_offered (gpointer nothing)
{
  return trammel_session_offered (hand_session ()) != NULL && gtk_widget_get_sensitive (find_button ("Use This"));
}

static bool
is_not_offered (gpointer nothing)
{
  return trammel_session_offered (hand_session ()) == NULL;
}

static void
open_arrange (void)
{
  g_action_group_activate_action (G_ACTION_GROUP (hand_window ()), "arrange", NULL);
  ck_assert (gui_wait (is_offered, NULL));
  gui_settle ();
}

static const Part *
offered (const char *id)
{
  return aeroplane_part_by_id (trammel_session_offered (hand_session ())->aeroplane, id);
}

/* The next test's window begins with the pages as people find them. */
static void
close_arrange (void)
{
  gui_key ("Escape");
  gui_settle ();
  ck_assert (!trammel_session_is_arranging (hand_session ()));
}

START_TEST (an_arrangement_is_offered_beside_what_is_there_and_used_in_one_step)
{
  const double was = hand_part ("battery")->x;
  g_autofree char *before = hand_text ();
  double then;

  open_arrange ();
  then = offered ("battery")->x;
  ck_assert_double_lt (then, was - 5);
  ck_assert_double_eq (hand_part ("battery")->x, was);
  gui_click (find_button ("Use This"));
  gui_settle ();
  ck_assert_double_eq (hand_part ("battery")->x, then);
  ck_assert (is_not_offered (NULL));
  hand_undoes ("Arrange", before);
}
END_TEST

START_TEST (given_up_by_esc_or_cancel_nothing_has_changed)
{
  g_autofree char *before = hand_text ();

  open_arrange ();
  if (_i == 0)
    gui_key ("Escape");
  else
    gui_click (find_button ("Cancel"));
  gui_settle ();
  g_autofree char *after = hand_text ();
  ck_assert_str_eq (after, before);
  ck_assert (is_not_offered (NULL));
  ck_assert_ptr_null (gui_find (GTK_WIDGET (hand_window ()), "Use This"));
}
END_TEST

/* With so much at the tail the battery's rail does not reach. */
START_TEST (ballast_that_is_needed_is_a_block_in_its_place_and_every_place_has_its_row)
{
  Part *lump = part_new ("lump", "other");
  const Part *ballast;

  lump->mass = 10;
  lump->x = 600;
  trammel_session_do (hand_session (), aeroplane_with_added (hand_aeroplane (), &lump->piece), "Add Part");
  gui_settle ();
  open_arrange ();
  ballast = offered ("ballast");
  ck_assert_ptr_nonnull (ballast);
  ck_assert_double_lt (ballast->x, hand_part ("battery")->x);
  ck_assert_double_gt (ballast->width, 0);
  ck_assert_ptr_nonnull (gui_find (GTK_WIDGET (hand_window ()), "Ballast: Body behind F1"));
  ck_assert_ptr_nonnull (gui_find (GTK_WIDGET (hand_window ()), "Better balanced by itself"));
  close_arrange ();
}
END_TEST

/* The racer's battery may slide so far that there are others within its limits. */
START_TEST (the_next_best_is_another_one_and_after_the_last_comes_the_first)
{
  double first;
  int steps = 0;

  open_arrange ();
  first = offered ("battery")->x;
  ck_assert (gtk_widget_get_sensitive (find_button ("Next Best")));
  do {
    gui_await (GTK_WIDGET (hand_window ()), offered ("battery")->x == first ? "Beside offer 2" : "Beside offer 1");
    gui_click (find_button ("Next Best"));
    gui_settle ();
    steps++;
    if (steps == 1)
      ck_assert_double_ge (fabs (offered ("battery")->x - first), 14.9);
  } while (offered ("battery")->x != first && steps < 5);
  ck_assert_int_ge (steps, 2);
  ck_assert_int_le (steps, 3);
  close_arrange ();
}
END_TEST

START_TEST (a_part_unticked_stays_and_with_none_ticked_the_page_says_what_is_missing)
{
  open_arrange ();
  gui_click (find_button ("Battery 2S 450"));
  ck_assert (gui_wait (is_not_offered, NULL));
  gui_await (GTK_WIDGET (hand_window ()), "No part is ticked: tick one that may move.");
  ck_assert (!gtk_widget_get_sensitive (find_button ("Use This")));
  gui_click (find_button ("Battery 2S 450"));
  ck_assert (gui_wait (is_offered, NULL));
  gui_click (find_button ("Battery 2S 450"));
  ck_assert (gui_wait (is_not_offered, NULL));
  close_arrange ();
  open_arrange ();
  close_arrange ();
}
END_TEST

START_TEST (what_changes_on_the_sheet_meanwhile_is_arranged_anew)
{
  double first;

  open_arrange ();
  first = offered ("battery")->x;
  trammel_session_do (hand_session (), change_part_place (hand_aeroplane (), "receiver", hand_part ("receiver")->x + 60, 0, 0), "Move Receiver");
  ck_assert (gui_wait (is_offered, NULL));
  ck_assert_double_lt (offered ("battery")->x, first - 1);
  close_arrange ();
}
END_TEST

/* Whether the sheet's picture is another than the one before, which it becomes. */
static bool
sheet_changed (GBytes **last)
{
  GdkPaintable *paintable = gtk_widget_paintable_new (GTK_WIDGET (hand_sheet ()));
  GtkSnapshot *snapshot = gtk_snapshot_new ();
  GskRenderNode *node;
  GBytes *now;
  bool changed;

  gdk_paintable_snapshot (paintable, snapshot, gtk_widget_get_width (GTK_WIDGET (hand_sheet ())), gtk_widget_get_height (GTK_WIDGET (hand_sheet ())));
  node = gtk_snapshot_free_to_node (snapshot);
  g_object_unref (paintable);
  now = gsk_render_node_serialize (node);
  gsk_render_node_unref (node);
  changed = *last == NULL || !g_bytes_equal (*last, now);
  g_clear_pointer (last, g_bytes_unref);
  *last = now;
  return changed;
}

/* Nothing moves and nothing is offered, so what the sheet shows more are the bays alone. */
START_TEST (while_it_is_open_bays_stand_on_the_sheet_and_the_status_line_says_what_to_do)
{
  const char *todo = "Tick what may move; Next Best shows another arrangement, Use This takes it, Esc gives up.";
  GBytes *sheet = NULL;

  open_arrange ();
  gui_key ("Escape");
  trammel_session_do (hand_session (), aeroplane_with_added (hand_aeroplane (), &bay_new ("cabin", "F3", "F6")->piece), "Add Bay");
  gui_settle ();
  sheet_changed (&sheet);
  ck_assert (!sheet_changed (&sheet));
  ck_assert_ptr_null (gui_find (GTK_WIDGET (hand_window ()), todo));
  trammel_session_set_arranging (hand_session (), true);
  gui_settle ();
  ck_assert (sheet_changed (&sheet));
  trammel_session_set_arranging (hand_session (), false);
  open_arrange ();
  gui_await (GTK_WIDGET (hand_window ()), todo);
  ck_assert (trammel_session_is_arranging (hand_session ()));
  close_arrange ();
  ck_assert_ptr_null (gui_find (GTK_WIDGET (hand_window ()), todo));
  g_bytes_unref (sheet);
}
END_TEST

int
main (void)
{
  TCase *tests = tcase_create ("arrange");

  tcase_add_test (tests, an_arrangement_is_offered_beside_what_is_there_and_used_in_one_step);
  tcase_add_loop_test (tests, given_up_by_esc_or_cancel_nothing_has_changed, 0, 2);
  tcase_add_test (tests, ballast_that_is_needed_is_a_block_in_its_place_and_every_place_has_its_row);
  tcase_add_test (tests, the_next_best_is_another_one_and_after_the_last_comes_the_first);
  tcase_add_test (tests, a_part_unticked_stays_and_with_none_ticked_the_page_says_what_is_missing);
  tcase_add_test (tests, what_changes_on_the_sheet_meanwhile_is_arranged_anew);
  tcase_add_test (tests, while_it_is_open_bays_stand_on_the_sheet_and_the_status_line_says_what_to_do);
  return hand_run ("app arrange", &tests, 1);
}
