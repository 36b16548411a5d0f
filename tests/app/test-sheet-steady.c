/* What keeps its size while the sheet is zoomed and the pointer moves, so that the window is not laid out again with every frame. */
#include "app/side-strip.h"
#include "app/steady-words.h"
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

/* Looks from afar and from near in turn, and lets happen what is not put off. False when the machine took so long that it may have been. */
static bool
zooms_quickly (void)
{
  const gint64 began = g_get_monotonic_time ();
  SheetView looked = *trammel_sheet_canvas_view (hand_sheet ());

  looked.scale = looked.scale > 1 ? 0.5 : 4;
  trammel_sheet_canvas_set_view (hand_sheet (), looked);
  while (g_main_context_iteration (NULL, FALSE))
    ;
  return g_get_monotonic_time () - began < 150000;
}

START_TEST (the_side_view_keeps_its_width_while_a_hand_zooms_and_follows_when_it_rests)
{
  GtkWidget *side = gui_find_type (GTK_WIDGET (hand_window ()), TRAMMEL_TYPE_SIDE_STRIP);
  bool quickly = false;
  int before = 0;

  ck_assert_ptr_nonnull (side);
  for (int i = 0; i < 50 && !quickly; i++) {
    hand_await_layout ();
    before = gtk_widget_get_width (side);
    quickly = zooms_quickly ();
  }
  ck_assert (quickly);
  ck_assert_int_eq (gtk_widget_get_width (side), before);
  hand_await_layout ();
  ck_assert_int_ne (gtk_widget_get_width (side), before);
}
END_TEST

int
main (void)
{
  TCase *steady = tcase_create ("steady");

  tcase_add_test (steady, the_status_line_s_place_and_zoom_keep_their_widths_whatever_they_say);
  tcase_add_test (steady, the_side_view_keeps_its_width_while_a_hand_zooms_and_follows_when_it_rests);
  return hand_run ("sheet steady", &steady, 1);
}
