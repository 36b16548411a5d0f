/* Looking at the sheet of a real window: zoom, pan, fit, rulers' company, the side view, the status line. */
#include <math.h>
#include "app/side-strip.h"
#include "app/status-line.h"
#include "app/tool.h"
#include "drawing/side-view.h"
#include "support/sheet-hand.h"

static const SheetView *
view (void)
{
  return trammel_sheet_canvas_view (hand_sheet ());
}

static GtkWidget *
sheet (void)
{
  return GTK_WIDGET (hand_sheet ());
}

static bool
expect_within (Point px, double x, double y, double tolerance)
{
  return fabs (px.x - x) <= tolerance && fabs (px.y - y) <= tolerance;
}

START_TEST (ctrl_and_the_wheel_zoom_to_the_pointer_within_a_px)
{
  const Point place = { 137, 44 }, before = hand_px (place);

  hand_move (place);
  gui_key_down ("Control_L");
  gui_scroll (sheet (), before.x, before.y, -5);
  ck_assert_double_eq_tol (view ()->scale, 4 * pow (1.15, 5), 1e-9);
  ck_assert (expect_within (hand_px (place), before.x, before.y, 1));
  gui_scroll (sheet (), before.x, before.y, 9);
  gui_key_up ("Control_L");
  ck_assert (expect_within (hand_px (place), before.x, before.y, 1));
}
END_TEST

START_TEST (the_wheel_moves_the_sheet_down_and_with_shift_sideways)
{
  const SheetView before = *view ();

  gui_scroll (sheet (), 200, 200, 2);
  ck_assert_double_eq (view ()->origin_y, before.origin_y - 120);
  gui_key_down ("Shift_L");
  gui_scroll (sheet (), 200, 200, 1);
  gui_key_up ("Shift_L");
  ck_assert_double_eq (view ()->origin_x, before.origin_x - 60);
  ck_assert_double_eq (view ()->scale, before.scale);
}
END_TEST

static void
drag_sheet (int button)
{
  gui_move_to (sheet (), 200, 200);
  gui_press (button);
  gui_move_to (sheet (), 230, 240);
  gui_move_to (sheet (), 260, 250);
  gui_release (button);
}

START_TEST (the_middle_button_space_and_the_hand_move_the_sheet_with_the_pointer)
{
  const SheetView before = *view ();
  g_autofree char *text = hand_text (), *after = NULL;

  drag_sheet (2);
  ck_assert (expect_within ((Point) { view ()->origin_x, view ()->origin_y }, before.origin_x + 60, before.origin_y + 50, 1));
  gui_wait_ms (500);
  gui_key_down ("space");
  drag_sheet (1);
  gui_key_up ("space");
  ck_assert (expect_within ((Point) { view ()->origin_x, view ()->origin_y }, before.origin_x + 120, before.origin_y + 100, 1));
  gui_wait_ms (500);
  gui_key ("m");
  drag_sheet (1);
  ck_assert (expect_within ((Point) { view ()->origin_x, view ()->origin_y }, before.origin_x + 180, before.origin_y + 150, 1));
  after = hand_text ();
  ck_assert_str_eq (after, text);
}
END_TEST

static GtkGesture *
pinch_gesture (void)
{
  g_autoptr (GListModel) controllers = gtk_widget_observe_controllers (sheet ());

  for (guint i = 0; i < g_list_model_get_n_items (controllers); i++) {
    g_autoptr (GtkEventController) controller = g_list_model_get_item (controllers, i);

    if (GTK_IS_GESTURE_ZOOM (controller))
      return GTK_GESTURE (controller);
  }
  return NULL;
}

/* Without a touch screen the gesture itself is asked to speak. */
START_TEST (a_pinch_zooms_and_puts_back_what_one_finger_was_pulling)
{
  GtkGesture *pinch = pinch_gesture ();
  g_autofree char *before = hand_text (), *after = NULL;

  hand_pull ((Point) { 124, 0 }, (Point) { 105, 0 });
  g_signal_emit_by_name (pinch, "begin", NULL);
  after = hand_text ();
  ck_assert_str_eq (after, before);
  g_signal_emit_by_name (pinch, "scale-changed", 1.5);
  g_signal_emit_by_name (pinch, "scale-changed", 2.0);
  ck_assert_double_eq_tol (view ()->scale, 8, 1e-9);
  hand_release ();
  ck_assert_ptr_null (trammel_session_undo_label (hand_session ()));
}
END_TEST

START_TEST (home_shows_the_whole_sheet_and_shift_home_the_selection)
{
  Box extent, tail;
  Point near, far;

  gui_key ("Home");
  hand_await_layout ();
  extent = sheet_extent (trammel_session_figures (hand_session ()));
  near = hand_px (extent.min);
  far = hand_px (extent.max);
  ck_assert (near.x >= 0 && near.y >= 0 && far.x <= view ()->width && far.y <= view ()->height);
  ck_assert (fmin (fmin (near.x, near.y), fmin (view ()->width - far.x, view ()->height - far.y)) < 30);       /* and no smaller */
  trammel_session_select (hand_session (), selection_of ("tail"));
  gui_key ("<Shift>Home");
  hand_await_layout ();
  gui_key ("<Shift>Home");
  tail = sheet_selection_extent (trammel_session_figures (hand_session ()), trammel_session_selection (hand_session ()));
  near = hand_px (tail.min);
  far = hand_px (tail.max);
  ck_assert (near.x >= 0 && far.x <= view ()->width);
  ck_assert_double_gt (far.x - near.x, 0.5 * view ()->width);
}
END_TEST

START_TEST (ctrl_with_plus_minus_and_zero_and_the_buttons_zoom)
{
  gui_key ("<Control>plus");
  ck_assert_double_eq_tol (view ()->scale, 5, 1e-9);
  gui_key ("<Control>minus");
  ck_assert_double_eq_tol (view ()->scale, 4, 1e-9);
  gui_key ("<Control>0");
  ck_assert_double_eq_tol (view ()->scale, trammel_sheet_canvas_true_scale (hand_sheet ()), 1e-9);
  gui_click (gui_await (GTK_WIDGET (hand_window ()), "Zoom In"));
  ck_assert_double_eq_tol (view ()->scale, 1.25 * trammel_sheet_canvas_true_scale (hand_sheet ()), 1e-9);
  gui_click (gui_await (GTK_WIDGET (hand_window ()), "Zoom Out"));
  gui_click (gui_await (GTK_WIDGET (hand_window ()), "Zoom"));
  gui_click (gui_await (GTK_WIDGET (hand_window ()), "Fit Sheet"));
  ck_assert_double_lt (view ()->scale, 2);
}
END_TEST

static bool
window_has_size (gpointer size)
{
  const int *wanted = size, frame = 30;      /* px that a window without a compositor draws around itself */

  return abs (gtk_widget_get_width (GTK_WIDGET (hand_window ())) - wanted[0]) < frame
         && abs (gtk_widget_get_height (GTK_WIDGET (hand_window ())) - wanted[1]) < frame;
}

/* What is asked for while the display server still answers what was asked before may be lost: it is asked for again, a pixel off, since
   the same again is no change. */
static void
resize (int width, int height)
{
  int size[] = { width, height };
  bool has_it = false;

  for (int i = 0; i < 3 && !has_it; i++)
    {
      gtk_window_set_default_size (GTK_WINDOW (hand_window ()), width + i, height);
      has_it = gui_wait (window_has_size, size);
    }
  ck_assert_msg (has_it, "%d × %d, not %d × %d", gtk_widget_get_width (GTK_WIDGET (hand_window ())),
                 gtk_widget_get_height (GTK_WIDGET (hand_window ())), width, height);
  hand_await_layout ();
}

START_TEST (a_fitted_sheet_follows_the_window_s_size)
{
  Box extent = sheet_extent (trammel_session_figures (hand_session ()));
  Point near, far;

  gui_key ("Home");
  resize (1000, 620);
  near = hand_px (extent.min);
  far = hand_px (extent.max);
  ck_assert (near.x >= 0 && near.y >= 0 && far.x <= view ()->width && far.y <= view ()->height);
  resize (1280, 800);
}
END_TEST

START_TEST (what_undo_selects_out_of_sight_comes_into_view)
{
  trammel_session_select (hand_session (), selection_of ("tail"));
  hand_look ((Point) { 0, 0 }, 8);
  trammel_sheet_canvas_reveal_selection (hand_sheet ());
  ck_assert (expect_within (hand_px ((Point) { 421, 0 }), view ()->width / 2, view ()->height / 2, 1));
}
END_TEST

START_TEST (the_status_line_says_where_the_pointer_is_and_what_the_tool_does)
{
  hand_move ((Point) { 150, 60 });
  gui_await (GTK_WIDGET (hand_window ()), "150 aft");
  gui_await (GTK_WIDGET (hand_window ()), "60 to starboard");
  hand_move ((Point) { 60, -40 });
  gui_await (GTK_WIDGET (hand_window ()), "40 to port");
  hand_move ((Point) { 60, 0 });
  gui_await (GTK_WIDGET (hand_window ()), "on the centre line");
  gui_key ("d");
  gui_await (GTK_WIDGET (hand_window ()), "Dimension. Click two points to measure between them. Shift measures straight along or across.");
}
END_TEST

START_TEST (places_before_the_datum_are_ahead)
{
  g_autofree char *ahead = status_place_along ((Units) { LENGTH_MM, MASS_G }, -12.4), *aft = status_place_along ((Units) { LENGTH_INCH, MASS_G }, 36.5125);

  ck_assert_str_eq (ahead, "12 ahead");
  ck_assert_str_eq (aft, "1\u00a07/16 aft");
}
END_TEST

START_TEST (ctrl_g_and_the_button_switch_snapping)
{
  TrammelSettings *settings = trammel_session_settings (hand_session ());

  gui_key ("<Control>g");
  ck_assert (!trammel_settings_flag (settings, SNAPPING));
  gui_click (gui_await (GTK_WIDGET (hand_window ()), "Snapping"));
  ck_assert (trammel_settings_flag (settings, SNAPPING));
}
END_TEST

/* The side view */

static Point
strip_px (GtkWidget *strip, Point place)
{
  const SheetScene scene = trammel_sheet_canvas_scene (hand_sheet ());
  const SideScene side = { .scene = &scene, .width = gtk_widget_get_width (strip), .height = gtk_widget_get_height (strip) };

  return (Point) { side_view_px_of_z (&side, place.y), hand_px ((Point) { place.x, 0 }).y };
}

static GtkWidget *
strip (void)
{
  GtkWidget *widget = gui_find_type (GTK_WIDGET (hand_window ()), TRAMMEL_TYPE_SIDE_STRIP);

  ck_assert_ptr_nonnull (widget);
  return widget;
}

static void
drag_side (Point from, Point to)
{
  const Point a = strip_px (strip (), from), b = strip_px (strip (), to);

  gui_drag (strip (), (GuiDrag) { a.x, a.y, b.x, b.y });
}

START_TEST (a_part_dragged_across_the_side_view_changes_its_height_and_along_its_place)
{
  g_autofree char *before = hand_text ();

  hand_look ((Point) { 150, 0 }, 2);
  drag_side ((Point) { 186, 3 }, (Point) { 190, 9 });
  ck_assert_double_eq (hand_part ("servo-elevator")->x, 190);
  ck_assert_double_eq (hand_part ("servo-elevator")->z, 9);
  ck_assert_double_eq (hand_part ("servo-elevator")->y, 5);
  hand_undoes ("Move Servo, elevator", before);
}
END_TEST

START_TEST (esc_puts_back_what_is_pulled_in_the_side_view_whatever_tool_is_in_the_hand)
{
  g_autofree char *before = hand_text (), *after = NULL;
  Point a, b;

  hand_look ((Point) { 150, 0 }, 2);
  gui_key ("d");
  a = strip_px (strip (), (Point) { 186, 3 });
  b = strip_px (strip (), (Point) { 180, 9 });
  gui_move_to (strip (), a.x, a.y);
  gui_press (1);
  gui_move_to (strip (), b.x, b.y);
  ck_assert_double_eq (hand_part ("servo-elevator")->x, 180);
  gui_key ("Escape");
  gui_release (1);
  after = hand_text ();
  ck_assert_str_eq (after, before);
}
END_TEST

START_TEST (a_wing_is_lifted_in_the_side_view_and_a_body_s_side_node_pulled)
{
  Point node;

  hand_look ((Point) { 150, 0 }, 2);
  trammel_session_select (hand_session (), selection_of ("body"));
  node = outline_node (aeroplane_body_by_id (hand_aeroplane (), "body")->side_outline, 3);
  drag_side (node, (Point) { node.x + 4, node.y + 5 });
  node = outline_node (aeroplane_body_by_id (hand_aeroplane (), "body")->side_outline, 3);
  ck_assert_double_eq (node.x, 164);
  ck_assert_double_eq (node.y, 39);
  ck_assert_str_eq (trammel_session_undo_label (hand_session ()), "Move Node");
  trammel_session_select (hand_session (), selection_of_node ("body", true, 3));
  gui_key ("Right");
  ck_assert_double_eq (outline_node (aeroplane_body_by_id (hand_aeroplane (), "body")->side_outline, 3).y, 40);
}
END_TEST

START_TEST (the_side_view_s_edge_can_be_dragged_within_its_bounds)
{
  int before;

  hand_look ((Point) { 150, 0 }, 2);
  before = gtk_widget_get_width (strip ());
  gui_drag (strip (), (GuiDrag) { 2, 300, -38, 300 });
  ck_assert_int_eq (gtk_widget_get_width (strip ()), before + 40);
  gui_drag (strip (), (GuiDrag) { 2, 300, 402, 300 });
  ck_assert_int_eq (gtk_widget_get_width (strip ()), 110);
}
END_TEST

static bool
is_shown (gpointer widget)
{
  return gtk_widget_get_mapped (widget);
}

static bool
is_gone (gpointer widget)
{
  return !gtk_widget_get_mapped (widget);
}

START_TEST (the_side_view_goes_with_its_setting_and_on_a_narrow_window)
{
  TrammelSettings *settings = trammel_session_settings (hand_session ());
  GtkWidget *side = strip ();

  trammel_settings_set_flag (settings, SHOW_SIDE_VIEW, false);
  ck_assert (gui_wait (is_gone, side));
  trammel_settings_set_flag (settings, SHOW_SIDE_VIEW, true);
  ck_assert (gui_wait (is_shown, side));
  resize (760, 600);
  ck_assert (gui_wait (is_gone, side));
  resize (1280, 800);
  ck_assert (gui_wait (is_shown, side));
}
END_TEST

static TCase *
case_sheet (void)
{
  TCase *seeing = tcase_create ("sheet");

  tcase_add_test (seeing, ctrl_and_the_wheel_zoom_to_the_pointer_within_a_px);
  tcase_add_test (seeing, the_wheel_moves_the_sheet_down_and_with_shift_sideways);
  tcase_add_test (seeing, the_middle_button_space_and_the_hand_move_the_sheet_with_the_pointer);
  tcase_add_test (seeing, a_pinch_zooms_and_puts_back_what_one_finger_was_pulling);
  tcase_add_test (seeing, home_shows_the_whole_sheet_and_shift_home_the_selection);
  tcase_add_test (seeing, ctrl_with_plus_minus_and_zero_and_the_buttons_zoom);
  tcase_add_test (seeing, a_fitted_sheet_follows_the_window_s_size);
  tcase_add_test (seeing, what_undo_selects_out_of_sight_comes_into_view);
  tcase_add_test (seeing, the_status_line_says_where_the_pointer_is_and_what_the_tool_does);
  tcase_add_test (seeing, places_before_the_datum_are_ahead);
  tcase_add_test (seeing, ctrl_g_and_the_button_switch_snapping);
  return seeing;
}

static TCase *
case_side (void)
{
  TCase *side = tcase_create ("side view");

  tcase_add_test (side, a_part_dragged_across_the_side_view_changes_its_height_and_along_its_place);
  tcase_add_test (side, esc_puts_back_what_is_pulled_in_the_side_view_whatever_tool_is_in_the_hand);
  tcase_add_test (side, a_wing_is_lifted_in_the_side_view_and_a_body_s_side_node_pulled);
  tcase_add_test (side, the_side_view_goes_with_its_setting_and_on_a_narrow_window);
  /* Last: the width that was chosen stays. */
  tcase_add_test (side, the_side_view_s_edge_can_be_dragged_within_its_bounds);
  return side;
}

int
main (void)
{
  TCase *cases[] = { case_sheet (), case_side () };

  return hand_run ("sheet view", cases, G_N_ELEMENTS (cases));
}
