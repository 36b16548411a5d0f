/* The hands of all other window tests: what they do must arrive in a window as it does from a person. */
#include "support/gui.h"

typedef struct { GtkWindow *window; GtkWidget *button, *entry, *area; int clicks; double moved_x, moved_y; } Stage;
static Stage stage;

static void
count_click (void)
{
  stage.clicks++;
}

static void
keep_offset (GtkGestureDrag *gesture, double x, double y)
{
  stage.moved_x = x;
  stage.moved_y = y;
}

static void
stage_raise (void)
{
  GtkWidget *box = gtk_box_new (GTK_ORIENTATION_VERTICAL, 6);
  GtkGesture *gesture = gtk_gesture_drag_new ();

  stage = (Stage) { .window = GTK_WINDOW (gtk_window_new ()), .button = gtk_button_new_with_mnemonic ("_Press Me"),
                    .entry = gtk_entry_new (), .area = gtk_drawing_area_new () };
  g_signal_connect (stage.button, "clicked", count_click, NULL);
  g_signal_connect (gesture, "drag-end", G_CALLBACK (keep_offset), NULL);
  gtk_widget_add_controller (stage.area, GTK_EVENT_CONTROLLER (gesture));
  gtk_accessible_update_property (GTK_ACCESSIBLE (stage.entry), GTK_ACCESSIBLE_PROPERTY_LABEL, "Span", -1);
  gtk_widget_set_size_request (stage.area, 300, 200);
  gtk_box_append (GTK_BOX (box), stage.button);
  gtk_box_append (GTK_BOX (box), stage.entry);
  gtk_box_append (GTK_BOX (box), stage.area);
  gtk_window_set_child (stage.window, box);
  gtk_window_set_title (stage.window, "Stage");
  gui_present (stage.window);
}

static void
stage_strike (void)
{
  gtk_window_destroy (stage.window);
  gui_settle ();
}

START_TEST (a_click_reaches_the_button_that_reads_so)
{
  gui_click (gui_await (GTK_WIDGET (stage.window), "Press Me"));
  ck_assert_int_eq (stage.clicks, 1);
  gui_click (stage.button);
  ck_assert_int_eq (stage.clicks, 2);
}
END_TEST

START_TEST (typed_text_arrives_with_its_capitals_and_signs)
{
  gui_click (gui_await (GTK_WIDGET (stage.window), "Span"));
  gui_type ("25 1/4\" of A_b: 1,5");
  ck_assert_str_eq (gtk_editable_get_text (GTK_EDITABLE (stage.entry)), "25 1/4\" of A_b: 1,5");
  gui_key ("<Control>a");
  gui_key ("Delete");
  ck_assert_str_eq (gtk_editable_get_text (GTK_EDITABLE (stage.entry)), "");
}
END_TEST

START_TEST (a_drag_arrives_with_its_length)
{
  gui_drag (stage.area, (GuiDrag) { 40, 30, 171, 93 });
  ck_assert_double_eq_tol (stage.moved_x, 131, 1);       /* events come in whole px */
  ck_assert_double_eq_tol (stage.moved_y, 63, 1);
}
END_TEST

START_TEST (what_is_not_shown_is_not_found)
{
  gtk_widget_set_visible (stage.button, FALSE);
  gui_settle ();
  ck_assert_ptr_null (gui_find (GTK_WIDGET (stage.window), "Press Me"));
  ck_assert (gui_window_is_there ("Stage"));
  ck_assert (!gui_window_is_there ("Another"));
}
END_TEST

int
main (void)
{
  Suite *suite = suite_create ("gui-support");
  TCase *events = tcase_create ("real events");

  gui_begin ();
  tcase_set_timeout (events, 60);
  tcase_add_checked_fixture (events, stage_raise, stage_strike);
  tcase_add_test (events, a_click_reaches_the_button_that_reads_so);
  tcase_add_test (events, typed_text_arrives_with_its_capitals_and_signs);
  tcase_add_test (events, a_drag_arrives_with_its_length);
  tcase_add_test (events, what_is_not_shown_is_not_found);
  suite_add_tcase (suite, events);
  return gui_run (suite);
}
