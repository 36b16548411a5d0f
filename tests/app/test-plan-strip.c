/* The plan's strip without a pointer, and what it says when a step is undone. */
#include "app/plan-view-edit.h"
#include "app/plan-work.h"
#include "document/changes.h"
#include "support/plan-hand.h"

static GtkWidget *
focus (void)
{
  return gtk_root_get_focus (GTK_ROOT (hand_window ()));
}

static bool
focus_is_in (GtkWidget *place)
{
  return focus () != NULL && (focus () == place || gtk_widget_is_ancestor (focus (), place));
}

START_TEST (f6_goes_from_the_tools_to_the_strip_to_the_sheet_while_a_plan_is_worked_on)
{
  begin ();
  gtk_widget_grab_focus (GTK_WIDGET (hand_sheet ()));
  gui_key ("<Shift>F6");
  ck_assert (focus_is_in (strip ()));
  gui_key ("<Shift>F6");
  ck_assert (focus () != NULL && !focus_is_in (strip ()) && focus () != GTK_WIDGET (hand_sheet ()));
  gui_key ("F6");
  ck_assert (focus_is_in (gui_await (strip (), "Known Length")));
  gui_key ("F6");
  ck_assert (focus () == GTK_WIDGET (hand_sheet ()));
  gui_click (gui_await (strip (), "Done"));
  gui_wait_ms (300);
  gui_key ("<Shift>F6");
  ck_assert (!focus_is_in (strip ()));
}
END_TEST

START_TEST (esc_in_the_strip_gives_the_keyboard_back_to_the_sheet)
{
  begin ();
  gui_key ("<Shift>F6");
  gui_key ("Escape");
  ck_assert (focus () == GTK_WIDGET (hand_sheet ()));
  ck_assert_str_eq (trammel_sheet_canvas_tool (hand_sheet ())->kind->word, "plan");
}
END_TEST

/* A list that closes takes some frames to let go of the keyboard. */
static bool
focus_is_back (gpointer place)
{
  return focus_is_in (place);
}

START_TEST (tab_walks_the_strip_as_it_is_read_and_space_opens_its_lists)
{
  static const char *const walk[] = { "View", "Trace", "Done", "View in Hand", "About This View", "Add View" };

  begin ();
  set_level_length ("80");
  add_view ();
  gui_key ("<Shift>F6");
  for (size_t i = 0; i < G_N_ELEMENTS (walk); i++) {
    ck_assert_msg (focus_is_in (gui_await (strip (), walk[i])), "at “%s”", walk[i]);
    if (i == 3) {
      gui_key ("space");
      ck_assert (focus () != NULL && gtk_widget_get_ancestor (focus (), GTK_TYPE_POPOVER) != NULL);
      gui_key ("Escape");
      ck_assert (gui_wait (focus_is_back, gui_await (strip (), walk[i])));
    }
    gui_key ("Tab");
  }
}
END_TEST

/* The side view's axis, chosen in the list and clicked. */
static void
add_side_view (void)
{
  PlanView next;

  plan_view_add (hand_sheet ());
  next = trammel_plan_work_next_view (trammel_plan_work_of (hand_sheet ()));
  next.shows = VIEW_BODY_SIDE;
  trammel_plan_work_set_next_view (trammel_plan_work_of (hand_sheet ()), next);
  gui_settle ();
  click_px (point_add (level_from, (Point) { 4, -5 }));
  click_px (point_add (level_to, (Point) { -5, 3 }));
  await_look ();
  ck_assert_uint_eq (plan ()->view_count, 2);
  ck_assert_int_eq (trammel_plan_store_view (plans ())->shows, VIEW_BODY_SIDE);
}

START_TEST (a_view_that_is_undone_is_asked_for_again_and_redone_is_in_hand_again)
{
  TrammelPlanWork *work = NULL;
  Point seen;

  begin ();
  set_level_length ("80");
  add_view ();
  work = trammel_plan_work_of (hand_sheet ());
  add_side_view ();
  seen = seen_at (level_from);
  gui_key ("<Control>z");
  ck_assert_uint_eq (plan ()->view_count, 1);
  ck_assert_ptr_null (trammel_plan_store_view (plans ()));
  ck_assert (trammel_plan_work_adds_view (work));
  ck_assert_int_eq (trammel_plan_work_next_view (work).shows, VIEW_BODY_SIDE);
  gui_await (strip (), "Click the forward end of the body's axis, the line along its middle.");
  gui_key ("<Control><Shift>z");
  ck_assert_int_eq (trammel_plan_store_view (plans ())->shows, VIEW_BODY_SIDE);
  ck_assert (!trammel_plan_work_adds_view (work));
  ck_assert_double_lt (point_distance (seen_at (level_from), seen), 60);
  gui_key ("<Control>z");
  gui_key ("Escape");
  ck_assert_int_eq (trammel_plan_store_view (plans ())->shows, VIEW_WING);
}
END_TEST

static bool
has_view (gpointer data)
{
  return plan ()->view_count > 0;
}

START_TEST (what_was_said_of_an_axis_goes_when_that_is_undone)
{
  begin ();
  set_level_length ("80");
  step ("Square Up");
  hand_drag (on_sheet ((Point) { 300, 406 }), on_sheet ((Point) { 900, 406 }));
  await_look ();
  step ("View");
  hand_look (on_sheet ((Point) { 600, 740 }), 10);
  click_px ((Point) { 600, 600 });
  click_px ((Point) { 603, 720 });
  ck_assert (gui_wait (has_view, NULL));
  ck_assert_ptr_nonnull (trammel_plan_work_note (trammel_plan_work_of (hand_sheet ()), plan ()));
  gui_key ("<Control>z");
  ck_assert_uint_eq (plan ()->view_count, 0);
  ck_assert_ptr_null (trammel_plan_work_note (trammel_plan_work_of (hand_sheet ()), plan ()));
}
END_TEST

START_TEST (the_strip_tells_the_place_of_what_was_traced_as_the_panel_does)
{
  const Segment segments[] = { segment_line ((Point) { 201, 40 }), segment_line ((Point) { 215, 40 }), segment_line ((Point) { 220, 0 }) };
  const NodeKind kinds[] = { NODE_CORNER, NODE_CORNER, NODE_CORNER, NODE_CORNER };
  Outline *outline = NULL;
  Surface *tail;
  Plan *next;

  begin ();
  set_level_length ("80");
  add_view ();
  next = (Plan *) piece_dup (&plan ()->piece);
  next->views[0].x = 185;
  next->views[0].for_now = true;
  ck_assert_int_eq (outline_new ((Point) { 196, 0 }, segments, 3, kinds, &outline), CORE_OK);
  tail = surface_new ("tail", ROLE_TAILPLANE, outline);
  tail->traced = g_strdup (view ()->id);
  trammel_session_do (hand_session (), change_plan (hand_aeroplane (), plan ()->piece.id, next), "Place View");
  trammel_session_do (hand_session (), aeroplane_with_added (hand_aeroplane (), &tail->piece), "Trace");
  step ("Trace");
  gui_await (strip (), "The root's leading edge stands 196\u00a0mm aft of the datum, a guess: step View takes it to its own place.");
}
END_TEST

int
main (void)
{
  TCase *tests = tcase_create ("strip");

  tcase_add_test (tests, f6_goes_from_the_tools_to_the_strip_to_the_sheet_while_a_plan_is_worked_on);
  tcase_add_test (tests, esc_in_the_strip_gives_the_keyboard_back_to_the_sheet);
  tcase_add_test (tests, tab_walks_the_strip_as_it_is_read_and_space_opens_its_lists);
  tcase_add_test (tests, a_view_that_is_undone_is_asked_for_again_and_redone_is_in_hand_again);
  tcase_add_test (tests, what_was_said_of_an_axis_goes_when_that_is_undone);
  tcase_add_test (tests, the_strip_tells_the_place_of_what_was_traced_as_the_panel_does);
  return hand_run ("plan strip", &tests, 1);
}
