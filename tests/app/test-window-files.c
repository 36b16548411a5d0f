/* Documents on the disk: opening, saving, saving as, the recent list, closing with unsaved work, and what another program does to them. */
#include <string.h>
#include <glib/gstdio.h>
#include "app/strip.h"
#include "document/changes.h"
#include "support/stage.h"

static void
take_battery_out (TrammelWindow *window)
{
  trammel_session_select (trammel_window_session (window), selection_of ("battery"));
  gtk_widget_grab_focus (gui_await (GTK_WIDGET (window), "Sheet"));
  gui_settle ();
  gui_key ("Delete");
  ck_assert_ptr_null (aeroplane_part_by_id (stage_aeroplane (window), "battery"));
}

static bool
file_has_battery (const char *path)
{
  g_autoptr (Aeroplane) found = stage_read (path);

  return aeroplane_part_by_id (found, "battery") != NULL;
}

/* Opening */

START_TEST (a_file_named_at_the_start_is_shown_under_its_name)
{
  TrammelWindow *window = stage_open (stage_example ("saltmarsh-racer", "racer.trammel"));

  ck_assert_str_eq (gtk_window_get_title (GTK_WINDOW (window)), "Saltmarsh Racer");
  ck_assert_str_eq (stage_state (window), "");
  ck_assert_int_eq (stage_window_count (), 1);
}
END_TEST

static bool
two_windows (gpointer nothing)
{
  return stage_window_count () == 2;
}

START_TEST (an_untouched_window_is_reused_and_a_used_one_is_not)
{
  const char *racer = stage_example ("saltmarsh-racer", "racer.trammel"), *heron = stage_example ("heron-tourer", "heron.trammel");
  TrammelWindow *window = stage_open (NULL);

  gui_key ("<Control>o");
  stage_choose ("Open", racer, false);
  ck_assert_ptr_eq (stage_window ("Saltmarsh Racer"), window);
  ck_assert_int_eq (stage_window_count (), 1);
  gui_click (gui_await (GTK_WIDGET (window), "Open"));
  stage_choose ("Open", heron, false);
  ck_assert (gui_wait (two_windows, NULL));
  ck_assert_ptr_ne (stage_window ("Heron Tourer"), window);
}
END_TEST

START_TEST (a_document_that_is_open_comes_to_the_front_instead_of_a_second_time)
{
  const char *racer = stage_example ("saltmarsh-racer", "racer.trammel");
  TrammelWindow *window = stage_open (racer);

  take_battery_out (window);
  ck_assert_ptr_eq (stage_open (racer), window);
  ck_assert_int_eq (stage_window_count (), 1);
  ck_assert_str_eq (stage_state (window), "Edited");
}
END_TEST

START_TEST (a_broken_file_is_one_sentence_in_the_strip_and_the_document_stays)
{
  const char *broken = stage_path ("broken.trammel");
  TrammelWindow *window = stage_open (NULL);

  ck_assert (g_file_set_contents (broken, "<aeroplane xmlns=\"urn:trammel:aeroplane\" version=\"1\">\n<surface", -1, NULL));
  gui_key ("<Control>o");
  stage_choose ("Open", broken, false);
  stage_await_strip (window, "broken.trammel:2:");
  ck_assert_int_eq (stage_window_count (), 1);
  ck_assert_ptr_null (trammel_session_path (trammel_window_session (window)));
  gui_click (gui_await (gui_find_type (GTK_WIDGET (window), TRAMMEL_TYPE_STRIP), "Close"));
  ck_assert_ptr_null (gui_find_type (GTK_WIDGET (window), TRAMMEL_TYPE_STRIP));
}
END_TEST

START_TEST (a_file_that_cannot_be_read_opens_no_second_window)
{
  const char *broken = stage_path ("broken.trammel");
  TrammelWindow *window = stage_open (stage_example ("saltmarsh-racer", "racer.trammel"));

  ck_assert (g_file_set_contents (broken, "<aeroplane xmlns=\"urn:trammel:aeroplane\" version=\"1\">\n<surface", -1, NULL));
  gui_key ("<Control>o");
  stage_choose ("Open", broken, false);
  stage_await_strip (window, "broken.trammel:2:");
  gui_settle ();
  ck_assert_int_eq (stage_window_count (), 1);
  ck_assert_str_eq (gtk_window_get_title (GTK_WINDOW (window)), "Saltmarsh Racer");
}
END_TEST

/* Saving */

START_TEST (save_writes_what_is_shown_and_the_former_file_stays_beside_it)
{
  const char *path = stage_example ("saltmarsh-racer", "racer.trammel");
  TrammelWindow *window = stage_open (path);

  take_battery_out (window);
  ck_assert_str_eq (stage_state (window), "Edited");
  gui_key ("<Control>s");
  stage_await_state (window, "");
  ck_assert (!file_has_battery (path));
  ck_assert (file_has_battery (stage_path ("racer.trammel~")));
}
END_TEST

START_TEST (what_is_still_being_typed_is_saved_too)
{
  const char *path = stage_example ("saltmarsh-racer", "racer.trammel");
  TrammelWindow *window = stage_open (path);
  g_autoptr (Aeroplane) found = NULL;

  gui_click (gui_find_type (gtk_widget_get_ancestor (gui_await (GTK_WIDGET (window), "Name"), GTK_TYPE_LIST_BOX_ROW), GTK_TYPE_TEXT));
  gui_key ("<Control>a");
  gui_type ("Thistle");
  gui_key ("<Control>s");
  gui_wait_ms (300);
  stage_await_state (window, "");
  found = stage_read (path);
  ck_assert_str_eq (aeroplane_traits (found).name, "Thistle");
}
END_TEST

START_TEST (save_as_adds_the_ending_and_takes_the_new_name)
{
  const char *path = stage_example ("saltmarsh-racer", "racer.trammel");
  TrammelWindow *window = stage_open (path);

  take_battery_out (window);
  gui_key ("<Control><Shift>s");
  stage_choose ("Save As", stage_path ("second"), true);
  stage_await_state (window, "");
  ck_assert_str_eq (trammel_session_path (trammel_window_session (window)), stage_path ("second.trammel"));
  ck_assert (!file_has_battery (stage_path ("second.trammel")));
  ck_assert (file_has_battery (path));
}
END_TEST

START_TEST (the_ending_added_never_replaces_another_file_unasked)
{
  const char *other = stage_example ("heron-tourer", "other.trammel");
  g_autoptr (Aeroplane) heron = stage_read (other);
  g_autoptr (Aeroplane) again = NULL;

  stage_open (stage_example ("saltmarsh-racer", "racer.trammel"));
  gui_key ("<Control><Shift>s");
  stage_choose ("Save As", stage_path ("other"), true);
  stage_answer ("Replace File?", "Replace");
  gui_key ("Escape");
  again = stage_read (other);
  ck_assert (aeroplane_equal (heron, again));
}
END_TEST

START_TEST (an_example_is_saved_under_a_name_of_its_own)
{
  TrammelWindow *window = stage_open (NULL);

  gui_click (gui_await (GTK_WIDGET (window), "Look at the Example"));
  window = stage_window ("Saltmarsh Racer");
  ck_assert_str_eq (stage_state (window), "");
  take_battery_out (window);
  ck_assert_str_eq (stage_state (window), "Not yet saved");
  gui_key ("<Control>s");
  stage_choose ("Save As", stage_path ("mine.trammel"), true);
  stage_await_state (window, "");
  ck_assert (!file_has_battery (stage_path ("mine.trammel")));
}
END_TEST

START_TEST (a_place_that_cannot_be_written_is_said_and_nothing_is_lost)
{
  const char *path = stage_example ("saltmarsh-racer", "racer.trammel");
  TrammelWindow *window = stage_open (path);

  take_battery_out (window);
  gui_key ("<Control><Shift>s");
  stage_choose ("Save As", "/proc/racer.trammel", true);
  stage_await_strip (window, "/proc");
  ck_assert_str_eq (stage_state (window), "Edited");
  ck_assert_str_eq (trammel_session_path (trammel_window_session (window)), path);
}
END_TEST

/* Recent */

static bool
recent_lists (gpointer path)
{
  g_autoptr (GFile) file = g_file_new_for_path (path);
  g_autofree char *uri = g_file_get_uri (file);

  return gtk_recent_manager_has_item (gtk_recent_manager_get_default (), uri);
}

static void
remember_files (bool enabled)
{
  g_object_set (gtk_settings_get_default (), "gtk-recent-files-enabled", enabled, NULL);
}

START_TEST (what_was_opened_is_in_the_recent_menu_and_opens_from_there)
{
  const char *path = stage_example ("heron-tourer", "his_heron.trammel");
  TrammelWindow *window;

  remember_files (true);
  window = stage_open (path);
  ck_assert (gui_wait (recent_lists, (gpointer) path));
  gui_key ("<Control>w");
  window = stage_open (NULL);
  gui_click (gui_await (GTK_WIDGET (window), "Recent documents and examples"));
  gui_click (gui_await (GTK_WIDGET (window), "his_heron.trammel"));
  ck_assert_ptr_eq (stage_window ("Heron Tourer"), window);
  remember_files (false);
}
END_TEST

START_TEST (a_desktop_that_remembers_no_files_is_told_of_none)
{
  const char *path = stage_example ("heron-tourer", "unremembered.trammel");

  stage_open (path);
  gui_wait_ms (300);
  ck_assert (!recent_lists ((gpointer) path));
}
END_TEST

START_TEST (a_recent_document_that_is_gone_is_said_so_and_forgotten)
{
  const char *path = stage_example ("heron-tourer", "gone.trammel");
  TrammelWindow *window;

  remember_files (true);
  window = stage_open (path);
  ck_assert (gui_wait (recent_lists, (gpointer) path));
  gui_key ("<Control>w");
  ck_assert_int_eq (g_unlink (path), 0);
  window = stage_open (NULL);
  gui_click (gui_await (GTK_WIDGET (window), "Recent documents and examples"));
  gui_click (gui_await (GTK_WIDGET (window), "gone.trammel"));
  stage_await_strip (window, "gone.trammel");
  gui_wait_ms (400);
  ck_assert (!recent_lists ((gpointer) path));
  remember_files (false);
}
END_TEST

START_TEST (the_second_example_opens_from_the_recent_menu)
{
  TrammelWindow *window = stage_open (NULL);

  gui_click (gui_await (GTK_WIDGET (window), "Recent documents and examples"));
  gui_click (gui_await (GTK_WIDGET (window), "Heron Tourer"));
  ck_assert_ptr_eq (stage_window ("Heron Tourer"), window);
  ck_assert_ptr_null (trammel_session_path (trammel_window_session (window)));
}
END_TEST

/* Another program */

static void
another_program_writes (const char *path)
{
  g_autofree char *text = NULL;
  g_autofree char *heron = g_build_filename (g_getenv ("TRAMMEL_SOURCE_ROOT"), "data", "examples", "heron-tourer.trammel", NULL);

  ck_assert (g_file_get_contents (heron, &text, NULL, NULL));
  ck_assert (g_file_set_contents (path, text, -1, NULL));
}

START_TEST (a_file_changed_outside_is_offered_and_reload_is_a_step_like_others)
{
  const char *path = stage_example ("saltmarsh-racer", "racer.trammel");
  TrammelWindow *window = stage_open (path);

  take_battery_out (window);
  another_program_writes (path);
  stage_await_strip (window, "Changed by another program");
  gui_click (gui_await (GTK_WIDGET (window), "Reload"));
  stage_window ("Heron Tourer");
  ck_assert_str_eq (stage_state (window), "");
  gui_key ("<Control>z");
  ck_assert_str_eq (gtk_window_get_title (GTK_WINDOW (window)), "Saltmarsh Racer");
  ck_assert_str_eq (stage_state (window), "Edited");
}
END_TEST

START_TEST (keep_mine_saves_over_it_only_when_told)
{
  const char *path = stage_example ("saltmarsh-racer", "racer.trammel");
  TrammelWindow *window = stage_open (path);
  g_autoptr (Aeroplane) found = NULL;

  another_program_writes (path);
  stage_await_strip (window, "Changed by another program");
  gui_click (gui_await (GTK_WIDGET (window), "Keep Mine"));
  ck_assert_str_eq (stage_state (window), "Edited");
  gui_key ("<Control>s");
  stage_await_state (window, "");
  found = stage_read (path);
  ck_assert_str_eq (aeroplane_traits (found).name, "Saltmarsh Racer");
}
END_TEST

START_TEST (saving_without_an_answer_overwrites_nothing)
{
  const char *path = stage_example ("saltmarsh-racer", "racer.trammel");
  TrammelWindow *window = stage_open (path);
  g_autoptr (Aeroplane) found = NULL;

  take_battery_out (window);
  another_program_writes (path);
  gui_key ("<Control>s");
  stage_await_strip (window, "Changed by another program");
  gui_wait_ms (200);
  found = stage_read (path);
  ck_assert_str_eq (aeroplane_traits (found).name, "Heron Tourer");
  ck_assert_str_eq (stage_state (window), "Edited");
}
END_TEST

START_TEST (our_own_saving_is_not_taken_for_another_program)
{
  const char *path = stage_example ("saltmarsh-racer", "racer.trammel");
  TrammelWindow *window = stage_open (path);

  take_battery_out (window);
  gui_key ("<Control>s");
  stage_await_state (window, "");
  gui_wait_ms (600);              /* longer than the watch waits before it tells */
  ck_assert_ptr_null (gui_find_type (GTK_WIDGET (window), TRAMMEL_TYPE_STRIP));
}
END_TEST

/* Closing */

static bool
no_window (gpointer nothing)
{
  return stage_window_count () == 0;
}

START_TEST (a_saved_document_closes_without_a_question)
{
  stage_open (stage_example ("saltmarsh-racer", "racer.trammel"));
  gui_key ("<Control>w");
  ck_assert (gui_wait (no_window, NULL));
}
END_TEST

START_TEST (numbers_that_were_never_added_are_nothing_to_save)
{
  TrammelWindow *window = stage_open (stage_example ("saltmarsh-racer", "racer.trammel"));

  gui_click (gui_await (GTK_WIDGET (window), "Add Outline…"));
  gui_await (GTK_WIDGET (window), "Add to the Sheet");
  gui_settle ();
  gui_key ("<Control>a");          /* beside a complete aeroplane nothing is proposed before a number is typed */
  gui_type ("500");
  ck_assert (trammel_session_is_previewing (trammel_window_session (window)));
  ck_assert_str_eq (stage_state (window), "");
  gui_key ("<Control>w");
  ck_assert (gui_wait (no_window, NULL));
}
END_TEST

static GtkWidget *
close_question (const char *answer)
{
  gui_key ("<Control>w");
  return stage_answer ("Save Changes?", answer);
}

START_TEST (unsaved_work_is_asked_about_and_cancel_keeps_the_window)
{
  TrammelWindow *window = stage_open (stage_example ("saltmarsh-racer", "racer.trammel"));

  take_battery_out (window);
  gui_click (close_question ("Cancel"));
  ck_assert_int_eq (stage_window_count (), 1);
  close_question ("Cancel");
  gui_key ("Escape");
  ck_assert_int_eq (stage_window_count (), 1);
}
END_TEST

START_TEST (discard_closes_and_leaves_the_file)
{
  const char *path = stage_example ("saltmarsh-racer", "racer.trammel");
  TrammelWindow *window = stage_open (path);

  take_battery_out (window);
  gui_click (close_question ("Discard"));
  ck_assert (gui_wait (no_window, NULL));
  ck_assert (file_has_battery (path));
}
END_TEST

START_TEST (save_in_the_question_saves_and_closes)
{
  const char *path = stage_example ("saltmarsh-racer", "racer.trammel");
  TrammelWindow *window = stage_open (path);

  take_battery_out (window);
  gui_click (close_question ("Save"));
  ck_assert (gui_wait (no_window, NULL));
  ck_assert (!file_has_battery (path));
}
END_TEST

START_TEST (the_question_on_closing_begins_on_save)
{
  const char *path = stage_example ("saltmarsh-racer", "racer.trammel");

  take_battery_out (stage_open (path));
  close_question ("Save");
  gui_key ("Return");
  ck_assert (gui_wait (no_window, NULL));
  ck_assert (!file_has_battery (path));
}
END_TEST

START_TEST (closing_in_the_middle_of_a_drag_asks)
{
  TrammelWindow *window = stage_open (stage_example ("saltmarsh-racer", "racer.trammel"));
  TrammelSession *session = trammel_window_session (window);

  trammel_session_preview (session, change_part_place (trammel_session_aeroplane (session), "battery", 130, 0, 0));
  close_question ("Cancel");
  gui_key ("Escape");
  ck_assert_int_eq (stage_window_count (), 1);
}
END_TEST

START_TEST (quit_asks_for_each_window_with_unsaved_work)
{
  TrammelWindow *window = stage_open (stage_example ("saltmarsh-racer", "racer.trammel"));

  take_battery_out (window);
  gui_key ("<Control>n");
  stage_window ("New Aeroplane");
  gui_key ("<Control>q");
  stage_answer ("Save Changes?", "Cancel");
  ck_assert_int_eq (stage_window_count (), 1);
}
END_TEST

/* Dropping */

START_TEST (a_document_dropped_on_the_window_is_opened)
{
  const char *path = stage_example ("heron-tourer", "heron.trammel");
  TrammelWindow *window = stage_open (NULL);
  GtkWidget *handle = gui_await (GTK_WIDGET (window), "Where Must It Balance?");
  GtkDragSource *source = gtk_drag_source_new ();

  /* A file manager's part is played by a label of ours. */
  g_signal_connect (source, "prepare", G_CALLBACK (stage_dragged_file), (gpointer) path);
  gtk_widget_add_controller (handle, GTK_EVENT_CONTROLLER (source));
  gui_drag (handle, (GuiDrag) { 20, 10, 120, 300 });
  ck_assert_ptr_eq (stage_window ("Heron Tourer"), window);
}
END_TEST

int
main (void)
{
  Suite *suite = suite_create ("window-files");
  TCase *tests = tcase_create ("files");

  gui_begin ();
  tcase_set_timeout (tests, 240);
  tcase_add_checked_fixture (tests, stage_raise, stage_strike);
  tcase_add_test (tests, a_file_named_at_the_start_is_shown_under_its_name);
  tcase_add_test (tests, an_untouched_window_is_reused_and_a_used_one_is_not);
  tcase_add_test (tests, a_document_that_is_open_comes_to_the_front_instead_of_a_second_time);
  tcase_add_test (tests, a_broken_file_is_one_sentence_in_the_strip_and_the_document_stays);
  tcase_add_test (tests, a_file_that_cannot_be_read_opens_no_second_window);
  tcase_add_test (tests, save_writes_what_is_shown_and_the_former_file_stays_beside_it);
  tcase_add_test (tests, what_is_still_being_typed_is_saved_too);
  tcase_add_test (tests, save_as_adds_the_ending_and_takes_the_new_name);
  tcase_add_test (tests, the_ending_added_never_replaces_another_file_unasked);
  tcase_add_test (tests, an_example_is_saved_under_a_name_of_its_own);
  tcase_add_test (tests, a_place_that_cannot_be_written_is_said_and_nothing_is_lost);
  tcase_add_test (tests, what_was_opened_is_in_the_recent_menu_and_opens_from_there);
  tcase_add_test (tests, a_desktop_that_remembers_no_files_is_told_of_none);
  tcase_add_test (tests, a_recent_document_that_is_gone_is_said_so_and_forgotten);
  tcase_add_test (tests, the_second_example_opens_from_the_recent_menu);
  tcase_add_test (tests, a_file_changed_outside_is_offered_and_reload_is_a_step_like_others);
  tcase_add_test (tests, keep_mine_saves_over_it_only_when_told);
  tcase_add_test (tests, saving_without_an_answer_overwrites_nothing);
  tcase_add_test (tests, our_own_saving_is_not_taken_for_another_program);
  tcase_add_test (tests, a_saved_document_closes_without_a_question);
  tcase_add_test (tests, unsaved_work_is_asked_about_and_cancel_keeps_the_window);
  tcase_add_test (tests, discard_closes_and_leaves_the_file);
  tcase_add_test (tests, save_in_the_question_saves_and_closes);
  tcase_add_test (tests, the_question_on_closing_begins_on_save);
  tcase_add_test (tests, numbers_that_were_never_added_are_nothing_to_save);
  tcase_add_test (tests, closing_in_the_middle_of_a_drag_asks);
  tcase_add_test (tests, quit_asks_for_each_window_with_unsaved_work);
  tcase_add_test (tests, a_document_dropped_on_the_window_is_opened);
  suite_add_tcase (suite, tests);
  return gui_run (suite);
}
