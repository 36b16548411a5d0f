/* Balance marks in the panel under a real hand: all there are, one more, one less. */
#include "document/changes.h"
#include "support/panel-stage.h"

static size_t
stated (void)
{
  return aeroplane_count (trammel_session_aeroplane (stage.session), PIECE_MARK);
}

static double
station (size_t mark)
{
  return aeroplane_mark (trammel_session_aeroplane (stage.session), mark)->station;
}

static void
add (double at)
{
  trammel_session_do (stage.session, aeroplane_with_added (trammel_session_aeroplane (stage.session), &mark_new (at)->piece), "Add");
  gui_settle ();
}

START_TEST (every_mark_of_the_document_has_its_row_and_is_typed_there)
{
  while (stated () < 7)
    add (20 + 30 * (double) stated ());
  retype ("Station 7, mm", "222");
  ck_assert_double_eq (station (6), 222);
  retype ("Station 1, mm", "33");
  ck_assert_double_eq (station (0), 33);
}
END_TEST

START_TEST (a_mark_tells_its_target_and_both_limits)
{
  const MarkFigures *mark = &trammel_session_figures (stage.session)->balance.marks[0];
  g_autofree char *words = g_strdup_printf ("mark %.0f\u00a0mm, from %.0f to %.0f\u00a0mm", mark->target_mm, mark->forward_mm, mark->aft_mm);

  find (words);
}
END_TEST

START_TEST (a_mark_is_added_and_taken_out_by_keys_and_its_field_has_the_keyboard)
{
  const size_t before = stated ();

  gtk_widget_grab_focus (find ("Add a Balance Mark"));
  gui_key ("space");
  gui_settle ();
  ck_assert_uint_eq (stated (), before + 1);
  ck_assert_str_eq (trammel_session_undo_label (stage.session), "Add Balance Mark");
  gui_key ("<Control>a");
  gui_type ("101");
  gui_key ("Return");
  ck_assert_double_eq (station (before), 101);
  gtk_widget_grab_focus (find ("Remove Balance Mark 1"));
  gui_key ("space");
  gui_settle ();
  ck_assert_uint_eq (stated (), before);
  ck_assert_double_eq (station (before - 1), 101);
  ck_assert_str_eq (trammel_session_undo_label (stage.session), "Delete Balance Mark");
  trammel_session_undo (stage.session);
  ck_assert_uint_eq (stated (), before + 1);
}
END_TEST

START_TEST (the_usual_mark_becomes_stated_with_the_second_and_comes_back_without_any)
{
  while (stated () > 0)
    press ("Remove Balance Mark 1");
  const double usual = trammel_session_figures (stage.session)->balance.marks[0].station_mm;

  ck_assert_ptr_null (gui_find (GTK_WIDGET (stage.window), "Remove Balance Mark 1"));
  press ("Add a Balance Mark");
  ck_assert_uint_eq (stated (), 2);
  ck_assert_double_eq (station (0), usual);
  ck_assert (station (1) != usual);
  trammel_session_undo (stage.session);
  ck_assert_uint_eq (stated (), 0);
}
END_TEST

int
main (void)
{
  Suite *suite = suite_create ("panel-marks");
  TCase *with = tcase_create ("example");

  gui_begin ();
  tcase_add_checked_fixture (with, stage_raise, stage_strike);
  tcase_set_timeout (with, 60);
  tcase_add_test (with, every_mark_of_the_document_has_its_row_and_is_typed_there);
  tcase_add_test (with, a_mark_tells_its_target_and_both_limits);
  tcase_add_test (with, a_mark_is_added_and_taken_out_by_keys_and_its_field_has_the_keyboard);
  tcase_add_test (with, the_usual_mark_becomes_stated_with_the_second_and_comes_back_without_any);
  suite_add_tcase (suite, with);
  return gui_run (suite);
}
