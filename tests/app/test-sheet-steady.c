/* What stays as it is while the sheet is zoomed or the pointer moves, so that it is not laid out or drawn again with every frame. */
#include "app/sheet-canvas-private.h"
#include "app/side-strip.h"
#include "app/steady-words.h"
#include "document/changes.h"
#include "support/sheet-hand.h"

static int
words_width (const char *text)
{
  GtkWidget *words = gtk_widget_get_ancestor (gui_await (GTK_WIDGET (hand_window ()), text), TRAMMEL_TYPE_STEADY_WORDS);

  ck_assert_ptr_nonnull (words);
  gui_settle ();
  return gtk_widget_get_width (words);
}

START_TEST (the_status_line_s_place_and_zoom_keep_their_widths_whatever_they_say)
{
  const double true_scale = trammel_sheet_canvas_true_scale (hand_sheet ());
  int width;

  hand_move ((Point) { 60, 0 });
  width = words_width ("on the centre line");
  hand_move ((Point) { 60, -4 });
  ck_assert_int_eq (words_width ("4 to port"), width);
  hand_look ((Point) { 0, 0 }, 25 * true_scale);
  width = words_width ("2500\u00a0%");
  ck_assert_int_gt (width, 0);
  hand_look ((Point) { 0, 0 }, 0.5 * true_scale);
  ck_assert_int_eq (words_width ("50\u00a0%"), width);
}
END_TEST

START_TEST (the_monitor_s_scale_is_remembered_only_once_there_is_a_monitor)
{
  TrammelSheetCanvas *alone = g_object_ref_sink (trammel_sheet_canvas_new (hand_session ()));

  ck_assert_double_gt (trammel_sheet_canvas_true_scale (alone), 0);
  ck_assert_double_eq (alone->true_scale, 0);
  ck_assert_double_eq (trammel_sheet_canvas_true_scale (hand_sheet ()), hand_sheet ()->true_scale);
  g_object_unref (alone);
}
END_TEST

/* Looks from afar and from near in turn, and lets happen what is not put off. False when the machine took so long that it may have been. */
static bool
zooms_quickly (double far, double near)
{
  const gint64 began = g_get_monotonic_time ();
  SheetView looked = *trammel_sheet_canvas_view (hand_sheet ());

  looked.scale = looked.scale > far * 1.01 ? far : near;
  trammel_sheet_canvas_set_view (hand_sheet (), looked);
  while (g_main_context_iteration (NULL, FALSE))
    ;
  return g_get_monotonic_time () - began < 150000;
}

static void
one_more (GdkFrameClock *clock, int *layouts)
{
  (*layouts)++;
}

static bool
tells_180_percent (gpointer nothing)
{
  return gui_find (GTK_WIDGET (hand_window ()), "180\u00a0%") != NULL;
}

START_TEST (the_window_is_not_laid_out_for_a_zoom_told_in_as_many_figures)
{
  const double true_scale = trammel_sheet_canvas_true_scale (hand_sheet ());
  GdkFrameClock *clock = gtk_widget_get_frame_clock (GTK_WIDGET (hand_window ()));
  int layouts = 0;
  bool quickly = false;

  g_signal_connect (clock, "layout", G_CALLBACK (one_more), &layouts);
  for (int i = 0; i < 50 && !quickly; i++) {
    hand_look ((Point) { 0, 0 }, 1.5 * true_scale);
    gui_settle ();
    layouts = 0;
    quickly = zooms_quickly (1.5 * true_scale, 1.8 * true_scale);
  }
  ck_assert (quickly);
  ck_assert (gui_wait (tells_180_percent, NULL));      /* a little later than the sheet shows it */
  g_signal_handlers_disconnect_by_func (clock, one_more, &layouts);
  ck_assert_int_eq (layouts, 0);
}
END_TEST

START_TEST (the_side_view_keeps_its_width_while_a_hand_zooms_and_follows_when_it_rests)
{
  GtkWidget *side = gui_find_type (GTK_WIDGET (hand_window ()), TRAMMEL_TYPE_SIDE_STRIP);
  bool quickly = false;
  int before = 0;

  ck_assert_ptr_nonnull (side);
  for (int i = 0; i < 50 && !quickly; i++) {
    hand_await_layout ();
    before = gtk_widget_get_width (side);
    quickly = zooms_quickly (0.5, 4);
  }
  ck_assert (quickly);
  ck_assert_int_eq (gtk_widget_get_width (side), before);
  hand_await_layout ();
  ck_assert_int_ne (gtk_widget_get_width (side), before);
}
END_TEST

/* Of the last frame; the caller's. */
static GskRenderNode *
paper_seen (void)
{
  gtk_widget_queue_draw (GTK_WIDGET (hand_sheet ()));
  gui_settle ();
  ck_assert_ptr_nonnull (hand_sheet ()->paper.sheet);
  return gsk_render_node_ref (hand_sheet ()->paper.sheet);
}

/* Whether it is drawn anew, once what was done has come to rest. */
static bool
is_drawn_anew (GskRenderNode **seen)
{
  GskRenderNode *now = paper_seen ();
  const bool anew = now != *seen;

  gsk_render_node_unref (*seen);
  *seen = now;
  return anew;
}

START_TEST (a_pointer_that_moves_has_the_aeroplane_drawn_once)
{
  GskRenderNode *seen;

  hand_move ((Point) { 60, 0 });
  seen = paper_seen ();
  hand_move ((Point) { 150, 60 });
  ck_assert (!is_drawn_anew (&seen));
  trammel_sheet_canvas_overlay (hand_sheet ())->guide_x = 50;
  ck_assert (!is_drawn_anew (&seen));
  trammel_sheet_canvas_clear_guides (hand_sheet ());
  ck_assert (!is_drawn_anew (&seen));
  gsk_render_node_unref (seen);
}
END_TEST

static int tooltips_said;

static void
count_tooltips (GtkWidget *widget)
{
  g_signal_connect_data (widget, "notify::tooltip-text", G_CALLBACK (g_atomic_int_inc), &tooltips_said, NULL, G_CONNECT_SWAPPED);
  for (GtkWidget *child = gtk_widget_get_first_child (widget); child != NULL; child = gtk_widget_get_next_sibling (child))
    count_tooltips (child);
}

/* Each makes the toolkit ask the display where the pointer is, and wait for it. */
START_TEST (while_a_node_is_pulled_no_tooltip_is_said_again)
{
  TrammelSession *session = trammel_sheet_canvas_session (hand_sheet ());
  const Surface *wing = aeroplane_reference_wing (trammel_session_aeroplane (session));
  Outline *next = NULL;

  tooltips_said = 0;
  count_tooltips (GTK_WIDGET (hand_window ()));
  for (int i = 1; i <= 2; i++) {
    Point tip = outline_node (wing->outline, 1);

    tip.y += 0.01 * i;
    ck_assert_int_eq (outline_with_node_at (wing->outline, 1, tip, &next), CORE_OK);
    trammel_session_preview (session, change_surface_outline (trammel_session_aeroplane (session), wing->piece.id, next));
    wing = aeroplane_reference_wing (trammel_session_aeroplane (session));
  }
  ck_assert_int_eq (tooltips_said, 0);
  trammel_session_abandon (session);
}
END_TEST

START_TEST (what_was_enlarged_of_a_plan_is_given_back_once_nothing_is)
{
  hand_sheet ()->enlarged_copy.surface = cairo_image_surface_create (CAIRO_FORMAT_A8, 4, 4);
  gsk_render_node_unref (paper_seen ());
  ck_assert_ptr_null (hand_sheet ()->enlarged_copy.surface);
}
END_TEST

START_TEST (whatever_changes_the_aeroplane_s_picture_has_it_drawn_anew)
{
  TrammelSettings *settings = trammel_session_settings (hand_session ());
  GskRenderNode *seen;

  hand_await_layout ();
  seen = paper_seen ();
  trammel_session_select (hand_session (), selection_of ("wing"));
  ck_assert (is_drawn_anew (&seen));
  trammel_settings_set_flag (settings, SHOW_NAMES, !trammel_settings_flag (settings, SHOW_NAMES));
  ck_assert (is_drawn_anew (&seen));
  trammel_settings_set_flag (settings, SHOW_NAMES, !trammel_settings_flag (settings, SHOW_NAMES));
  ck_assert (is_drawn_anew (&seen));
  trammel_settings_set_units (settings, (Units) { LENGTH_INCH, MASS_G });
  ck_assert (is_drawn_anew (&seen));
  trammel_sheet_canvas_pan (hand_sheet (), 10, 0);
  ck_assert (is_drawn_anew (&seen));
  g_object_set (gtk_settings_get_default (), "gtk-xft-hintstyle", "hintnone", NULL);
  ck_assert (is_drawn_anew (&seen));
  hand_begin_empty ();
  ck_assert (is_drawn_anew (&seen));
  gsk_render_node_unref (seen);
}
END_TEST

int
main (void)
{
  TCase *steady = tcase_create ("steady");

  tcase_add_test (steady, the_status_line_s_place_and_zoom_keep_their_widths_whatever_they_say);
  tcase_add_test (steady, the_monitor_s_scale_is_remembered_only_once_there_is_a_monitor);
  tcase_add_test (steady, the_window_is_not_laid_out_for_a_zoom_told_in_as_many_figures);
  tcase_add_test (steady, the_side_view_keeps_its_width_while_a_hand_zooms_and_follows_when_it_rests);
  tcase_add_test (steady, a_pointer_that_moves_has_the_aeroplane_drawn_once);
  tcase_add_test (steady, while_a_node_is_pulled_no_tooltip_is_said_again);
  tcase_add_test (steady, what_was_enlarged_of_a_plan_is_given_back_once_nothing_is);
  tcase_add_test (steady, whatever_changes_the_aeroplane_s_picture_has_it_drawn_anew);
  return hand_run ("sheet steady", &steady, 1);
}
