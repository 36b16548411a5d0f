/* What of a plan is in sight while it is worked on, under a real hand. */
#include "support/plan-hand.h"
#include "document/changes.h"

static Point
seen (Point place)
{
  return view_to_screen (trammel_sheet_canvas_view (hand_sheet ()), place);
}

static void
assert_in_sight (Point place)
{
  const SheetView *view = trammel_sheet_canvas_view (hand_sheet ());
  const Point at = seen (place);

  ck_assert_msg (at.x >= 0 && at.y >= 0 && at.x <= view->width && at.y <= view->height, "(%g, %g) of %g × %g px is out of sight", at.x, at.y,
                 view->width, view->height);
}

static bool
strip_is_shut (gpointer data)
{
  return gui_find (strip (), "Done") == NULL;
}

/* The wing's view in hand, and Select. */
static void
begin_with_a_wing (void)
{
  begin_with (plan_with_a_guess ());
  trammel_plan_store_choose (plans (), plan ()->piece.id, "wing-view");
  trammel_sheet_canvas_set_tool (hand_sheet (), "select");
  ck_assert (gui_wait (strip_is_shut, NULL));
  gui_settle ();
}

static void
set_text_scale (double scale)
{
  g_object_set (gtk_settings_get_default (), "gtk-xft-dpi", (int) (96 * 1024 * scale), NULL);
  gui_settle ();
}

/* px a mm; with the last there is no room for the whole view beneath the strip. */
static const struct { bool traces; double text, scale; } opened[] = {
  { false, 1, 2 }, { true, 1, 2 }, { false, 1.5, 2 }, { true, 1.5, 2 }, { true, 1, 4.8 } };

START_TEST (the_strip_that_slides_in_leaves_what_is_traced_in_sight)
{
  Point fore, aft;

  begin_with_a_wing ();
  set_text_scale (opened[_i].text);
  fore = on_sheet (view ()->fore);
  aft = on_sheet (view ()->aft);
  /* Its forward end just below the sheet's upper edge. */
  hand_look (fore, opened[_i].scale);
  trammel_sheet_canvas_pan (hand_sheet (), 0, 4 - seen (fore).y);
  assert_in_sight (fore);
  assert_in_sight (aft);
  gui_key ("t");
  gui_wait_ms (250);
  if (opened[_i].traces)
    gui_key ("o");
  gui_settle ();
  assert_in_sight (fore);
  assert_in_sight (aft);
  set_text_scale (1);
}
END_TEST

START_TEST (where_somebody_looks_at_a_detail_the_strip_moves_nothing)
{
  Point middle, before;

  begin_with_a_wing ();
  middle = point_mix (on_sheet (view ()->fore), on_sheet (view ()->aft), 0.5);
  hand_look (middle, 40);
  before = seen_at (point_mix (view ()->fore, view ()->aft, 0.5));
  gui_key ("t");
  gui_wait_ms (250);
  ck_assert_double_lt (point_distance (seen_at (point_mix (view ()->fore, view ()->aft, 0.5)), before), 1.5);
}
END_TEST

static void
assert_picture_in_sight (void)
{
  const Point ends[] = { { 0, 0 }, { WIDTH, 0 }, { 0, HEIGHT }, { WIDTH, HEIGHT } };

  for (size_t i = 0; i < G_N_ELEMENTS (ends); i++)
    assert_in_sight (on_sheet (ends[i]));
}

START_TEST (a_plan_that_was_seen_whole_is_so_beneath_its_strip_until_the_first_press)
{
  SheetView before;

  begin_with_a_wing ();
  gui_key ("Home");
  gui_wait_ms (250);
  assert_picture_in_sight ();
  gui_key ("t");
  gui_wait_ms (250);
  assert_picture_in_sight ();
  hand_click (on_sheet ((Point) { 600, 450 }));
  before = *trammel_sheet_canvas_view (hand_sheet ());
  gtk_window_set_default_size (GTK_WINDOW (hand_window ()), 1100, 700);
  gui_settle ();
  ck_assert_double_eq (trammel_sheet_canvas_view (hand_sheet ())->scale, before.scale);
  gtk_window_set_default_size (GTK_WINDOW (hand_window ()), 1280, 800);
  gui_settle ();
}
END_TEST

static void
draw_a_wing (void)
{
  const Segment segments[] = { segment_line ((Point) { 5, 40 }), segment_line ((Point) { 20, 40 }), segment_line ((Point) { 25, 0 }) };
  const NodeKind kinds[] = { NODE_CORNER, NODE_CORNER, NODE_CORNER, NODE_CORNER };
  Outline *outline = NULL;
  Surface *wing;

  ck_assert_int_eq (outline_new ((Point) { 0, 0 }, segments, 3, kinds, &outline), CORE_OK);
  wing = surface_new ("wing", ROLE_WING, outline);
  trammel_session_do (hand_session (), aeroplane_with_added (hand_aeroplane (), &wing->piece), "Trace");
}

START_TEST (home_shows_all_of_a_plan_that_is_worked_on_and_else_the_aeroplane)
{
  double worked_on;

  begin_with_a_wing ();
  draw_a_wing ();
  gui_key ("t");
  gui_wait_ms (250);
  gui_key ("Home");
  gui_wait_ms (250);
  assert_picture_in_sight ();
  worked_on = trammel_sheet_canvas_view (hand_sheet ())->scale;
  gui_key ("s");
  gui_key ("Home");
  gui_wait_ms (250);
  ck_assert_double_gt (trammel_sheet_canvas_view (hand_sheet ())->scale, 1.5 * worked_on);
}
END_TEST

START_TEST (a_sheet_that_moves_under_the_pointer_shows_enlarged_what_is_under_it_then)
{
  const SheetOverlay *overlay = trammel_sheet_canvas_overlay (hand_sheet ());
  Point place, px;

  begin ();
  place = on_sheet ((Point) { 600, 300 });
  hand_move (place);
  ck_assert (overlay->has_magnified);
  px = hand_px (place);
  gui_scroll (GTK_WIDGET (hand_sheet ()), px.x, px.y, 1);
  place = view_from_screen (trammel_sheet_canvas_view (hand_sheet ()), px.x, px.y);
  ck_assert_double_lt (point_distance (overlay->magnified, place), 0.3);
}
END_TEST

START_TEST (the_key_cursor_stays_where_it_is_when_tracing_begins)
{
  const SheetOverlay *overlay = trammel_sheet_canvas_overlay (hand_sheet ());
  Point there;

  begin_with_a_wing ();
  gui_key ("t");
  gui_wait_ms (250);
  hand_move (on_sheet ((Point) { 300, 300 }));
  gui_key ("<Shift>Left");
  ck_assert (overlay->has_cursor);
  there = overlay->cursor;
  gui_key ("o");
  gui_wait_ms (250);
  ck_assert (overlay->has_cursor);
  ck_assert_double_lt (point_distance (overlay->cursor, there), 1e-6);
  gui_key ("s");
  ck_assert (!overlay->has_cursor);
}
END_TEST

int
main (void)
{
  TCase *tests = tcase_create ("sight");

  tcase_add_loop_test (tests, the_strip_that_slides_in_leaves_what_is_traced_in_sight, 0, G_N_ELEMENTS (opened));
  tcase_add_test (tests, where_somebody_looks_at_a_detail_the_strip_moves_nothing);
  tcase_add_test (tests, a_plan_that_was_seen_whole_is_so_beneath_its_strip_until_the_first_press);
  tcase_add_test (tests, home_shows_all_of_a_plan_that_is_worked_on_and_else_the_aeroplane);
  tcase_add_test (tests, a_sheet_that_moves_under_the_pointer_shows_enlarged_what_is_under_it_then);
  tcase_add_test (tests, the_key_cursor_stays_where_it_is_when_tracing_begins);
  return hand_run ("plan sight", &tests, 1);
}
