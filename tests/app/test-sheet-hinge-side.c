/* Hinge lines drawn on a fin in the side view under a real hand. */
#include <math.h>
#include "app/side-strip.h"
#include "document/changes.h"
#include "drawing/side-view.h"
#include "support/sheet-hand.h"

static size_t
count_on_fin (void)
{
  return hand_surface ("fin")->control_count;
}

/* The last one of the fin. */
static const Control *
added (void)
{
  ck_assert_uint_gt (count_on_fin (), 0);
  return &hand_surface ("fin")->controls[count_on_fin () - 1];
}

static GtkWidget *
strip (void)
{
  return gui_find_type (GTK_WIDGET (hand_window ()), TRAMMEL_TYPE_SIDE_STRIP);
}

/* x aft and z up. */
static Point
strip_px (Point place)
{
  const SheetScene scene = trammel_sheet_canvas_scene (hand_sheet ());
  const SideScene side = { .scene = &scene, .width = gtk_widget_get_width (strip ()), .height = gtk_widget_get_height (strip ()) };

  return (Point) { side_view_px_of_z (&side, place.y), hand_px ((Point) { place.x, 0 }).y };
}

static void
click_side (Point place)
{
  const Point px = strip_px (place);

  gui_wait_ms (450);            /* not within the time of a double click */
  gui_move_to (strip (), px.x, px.y);
  gui_press (1);
  gui_release (1);
  gui_settle ();
}

START_TEST (two_clicks_on_the_fin_in_the_side_view_make_a_rudder)
{
  const double foot = hand_surface ("fin")->z;
  g_autofree char *before = NULL;

  trammel_session_do (hand_session (), change_control_removed (hand_aeroplane (), "fin", "rudder"), "Delete");
  before = hand_text ();
  gui_key ("h");
  hand_look ((Point) { 400, 0 }, 3);
  gui_settle ();
  click_side ((Point) { 440, foot + 10 });
  ck_assert_ptr_nonnull (hand_plate ("Height"));
  click_side ((Point) { 438, foot + 50 });
  ck_assert_int_eq (added ()->kind, CONTROL_RUDDER);
  ck_assert_double_eq_tol (added ()->inner, 10, 0.5);
  ck_assert_double_eq_tol (added ()->outer, 50, 0.5);
  ck_assert_double_eq_tol (added ()->hinge_inner_x, 440, 0.5);
  hand_undoes ("Add Rudder", before);
}
END_TEST

START_TEST (heights_are_typed_for_an_end_on_the_fin)
{
  const double foot = hand_surface ("fin")->z;
  Point px;

  gui_key ("h");
  hand_look ((Point) { 400, 0 }, 3);
  gui_settle ();
  click_side ((Point) { 430, foot + 10 });
  px = strip_px ((Point) { 430, foot + 40 });
  gui_move_to (strip (), px.x, px.y);
  gui_type ("45.5");
  ck_assert_ptr_nonnull (hand_plate ("Height"));
  gui_key ("Tab");
  gui_type ("431.25");
  gui_key ("Return");
  gui_settle ();
  ck_assert_uint_eq (count_on_fin (), 2);
  ck_assert_double_eq (added ()->outer, 45.5);
  ck_assert_double_eq (added ()->hinge_outer_x, 431.25);
}
END_TEST

START_TEST (a_rudders_hinge_line_is_selected_and_its_end_dragged_in_the_side_view)
{
  const double foot = hand_surface ("fin")->z;
  Point from, to;

  hand_look ((Point) { 400, 0 }, 3);
  click_side ((Point) { 440, foot + 30 });
  ck_assert_str_eq (trammel_session_selection (hand_session ())->control, "rudder");
  from = strip_px ((Point) { 440, foot + 62 });
  to = strip_px ((Point) { 436, foot + 55 });
  gui_wait_ms (450);
  gui_drag (strip (), (GuiDrag) { from.x, from.y, to.x, to.y });
  gui_settle ();
  ck_assert_double_eq_tol (added ()->outer, 55, 1);
  ck_assert_double_eq_tol (added ()->hinge_outer_x, 436, 1);
  ck_assert_str_eq (trammel_session_undo_label (hand_session ()), "Move Hinge Line");
}
END_TEST

START_TEST (over_a_fins_edge_the_status_line_says_where_its_hinge_line_is_drawn)
{
  gui_key ("h");
  hand_look ((Point) { 420, 0 }, 2);
  hand_move ((Point) { 462, 0 });
  ck_assert_str_eq (trammel_sheet_canvas_hint (hand_sheet ()), "A fin's hinge line is drawn in the side view, or over the plan's view of the fin.");
}
END_TEST

/* Across the sheet are stations, across the side view heights: a place of the one says nothing in the other. */
START_TEST (the_second_end_is_taken_only_where_the_first_was)
{
  const double foot = hand_surface ("fin")->z;

  trammel_session_do (hand_session (), change_control_removed (hand_aeroplane (), "fin", "rudder"), "Delete");
  gui_key ("h");
  hand_look ((Point) { 400, 0 }, 3);
  gui_settle ();
  click_side ((Point) { 440, foot + 10 });
  hand_move ((Point) { 438, foot + 50 });
  ck_assert_ptr_null (trammel_sheet_canvas_overlay (hand_sheet ())->hinge);
  hand_click ((Point) { 438, foot + 50 });
  ck_assert_uint_eq (count_on_fin (), 0);
  ck_assert_str_eq (trammel_sheet_canvas_hint (hand_sheet ()), "The first end stands in the side view: click the other one there, too.");
  click_side ((Point) { 438, foot + 50 });
  ck_assert_uint_eq (count_on_fin (), 1);
}
END_TEST

START_TEST (a_tool_that_is_taken_in_the_middle_of_a_press_does_nothing_in_the_side_view)
{
  const size_t pieces = aeroplane_piece_count (hand_aeroplane ());
  Point px;

  gui_key ("h");
  hand_look ((Point) { 400, 0 }, 3);
  gui_settle ();
  px = strip_px ((Point) { 440, hand_surface ("fin")->z + 10 });
  gui_move_to (strip (), px.x, px.y);
  gui_press (1);
  trammel_sheet_canvas_set_tool (hand_sheet (), "part");
  gui_release (1);
  gui_settle ();
  ck_assert_uint_eq (aeroplane_piece_count (hand_aeroplane ()), pieces);
}
END_TEST

static char *
strip_as_seen (void)
{
  char *bytes = NULL;
  gsize length;

  gui_photograph (strip (), stage_path ("strip.png"));
  ck_assert (g_file_get_contents (stage_path ("strip.png"), &bytes, &length, NULL));
  g_autofree char *sum = g_compute_checksum_for_data (G_CHECKSUM_SHA256, (const guchar *) bytes, length);
  g_free (bytes);
  return g_steal_pointer (&sum);
}

START_TEST (nothing_stays_drawn_in_the_side_view_when_the_hand_has_left_it)
{
  const Point sheet = { 440, 40 };
  g_autofree char *before = NULL, *over = NULL, *after = NULL;
  Point px;

  gui_key ("h");
  hand_look ((Point) { 400, 0 }, 3);
  hand_move (sheet);
  before = strip_as_seen ();
  px = strip_px ((Point) { 440, hand_surface ("fin")->z + 10 });
  gui_move_to (strip (), px.x, px.y);
  over = strip_as_seen ();
  ck_assert_str_ne (over, before);
  hand_move (sheet);
  after = strip_as_seen ();
  ck_assert_str_eq (after, before);
}
END_TEST

int
main (void)
{
  TCase *side = tcase_create ("in the side view");

  tcase_add_test (side, two_clicks_on_the_fin_in_the_side_view_make_a_rudder);
  tcase_add_test (side, heights_are_typed_for_an_end_on_the_fin);
  tcase_add_test (side, a_rudders_hinge_line_is_selected_and_its_end_dragged_in_the_side_view);
  tcase_add_test (side, over_a_fins_edge_the_status_line_says_where_its_hinge_line_is_drawn);
  tcase_add_test (side, the_second_end_is_taken_only_where_the_first_was);
  tcase_add_test (side, nothing_stays_drawn_in_the_side_view_when_the_hand_has_left_it);
  tcase_add_test (side, a_tool_that_is_taken_in_the_middle_of_a_press_does_nothing_in_the_side_view);
  return hand_run ("hinge lines in the side view", &side, 1);
}
