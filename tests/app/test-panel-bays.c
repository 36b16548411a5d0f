/* Bays in the panel under a real hand: added between two formers, named, put between others, taken out, chosen in the list. */
#include "document/changes.h"
#include "support/panel-stage.h"

static const Bay *
bay (const char *id)
{
  return (const Bay *) aeroplane_find (trammel_session_aeroplane (stage.session), id);
}

static void
raise_on_body (void)
{
  stage_raise ();
  trammel_session_select (stage.session, selection_of ("body"));
  gui_settle ();
}

static void
pick (const char *label, const char *words)
{
  GtkWidget *button = find (label);

  gtk_widget_grab_focus (gtk_widget_get_parent (button));
  gui_settle ();
  gui_click (button);
  gui_settle ();
  gui_click (find (words));
  gui_settle ();
}

static void
press_row (const char *words)
{
  GtkWidget *row = gtk_widget_get_ancestor (find (words), GTK_TYPE_LIST_BOX_ROW);

  gtk_widget_grab_focus (row);
  gui_settle ();
  gui_click (row);
}

START_TEST (a_bay_is_added_between_two_formers_that_are_chosen)
{
  pick ("To former", "F5");
  press ("Add a Bay");
  ck_assert_str_eq (bay ("bay")->from_former, "F1");
  ck_assert_str_eq (bay ("bay")->to_former, "F5");
  ck_assert_str_eq (trammel_session_undo_label (stage.session), "Add Bay");
  find ("Bay bay");
}
END_TEST

START_TEST (the_bay_added_last_is_the_one_that_is_named_next)
{
  press ("Add a Bay");
  gui_type ("nose");
  gui_key ("Tab");
  press ("Add a Bay");
  gui_type ("hold");
  gui_key ("Tab");
  gui_settle ();
  ck_assert_ptr_nonnull (bay ("nose"));
  ck_assert_ptr_nonnull (bay ("hold"));
}
END_TEST

START_TEST (the_next_bay_begins_where_the_aftmost_ends)
{
  press ("Add a Bay");
  press ("Add a Bay");
  ck_assert_str_eq (bay ("bay")->to_former, "F2");
  ck_assert_str_eq (bay ("bay-2")->from_former, "F2");
  ck_assert_str_eq (bay ("bay-2")->to_former, "F3");
}
END_TEST

START_TEST (a_part_that_slides_is_not_said_to_stay_where_no_bay_is_ticked)
{
  trammel_session_select (stage.session, selection_of ("battery"));
  gui_settle ();
  find ("none ticked: along its rail");
  trammel_session_select (stage.session, selection_of ("motor"));
  gui_settle ();
  find ("none ticked: it stays");
}
END_TEST

START_TEST (a_bay_is_renamed_and_what_may_be_in_it_follows)
{
  press ("Add a Bay");
  trammel_session_do (stage.session, change_part_room (trammel_session_aeroplane (stage.session), "battery", "bay", true), "Room");
  gui_settle ();
  retype ("Bay's name", "nose floor");
  ck_assert_ptr_nonnull (bay ("nose-floor"));
  ck_assert_str_eq (aeroplane_part_by_id (trammel_session_aeroplane (stage.session), "battery")->bays, "nose-floor");
  ck_assert_str_eq (trammel_session_undo_label (stage.session), "Rename Bay");
  retype ("Bay's name", "battery");
  ck_assert_ptr_nonnull (bay ("nose-floor"));
}
END_TEST

START_TEST (a_bay_chosen_in_the_list_has_its_own_page_and_keeps_it_when_renamed)
{
  press ("Add a Bay");
  press_row ("Bay bay");
  ck_assert_str_eq (selection_single (trammel_session_selection (stage.session)), "bay");
  retype ("Bay's name", "cabin");
  ck_assert_str_eq (selection_single (trammel_session_selection (stage.session)), "cabin");
  pick ("From former", "F2");
  ck_assert_str_eq (bay ("cabin")->from_former, "F1");      /* F2 twice bounds nothing */
  pick ("To former", "F3");
  ck_assert_str_eq (bay ("cabin")->to_former, "F3");
}
END_TEST

START_TEST (skin_and_formers_of_its_body_are_typed_on_a_bays_page_and_are_as_usual_when_emptied)
{
  press ("Add a Bay");
  press_row ("Bay bay");
  retype ("Skin, mm", "3");
  retype ("Formers, mm", "4");
  const Body *body = aeroplane_body_by_id (trammel_session_aeroplane (stage.session), "body");
  ck_assert_double_eq (body->skin, 3);
  ck_assert_double_eq (body->former_thickness, 4);
  ck_assert_str_eq (trammel_session_undo_label (stage.session), "Change Thickness of Formers");
  gtk_widget_grab_focus (find ("Skin, mm"));
  gui_settle ();
  gui_key ("<Control>a");
  gui_key ("Delete");
  gui_key ("Return");
  ck_assert_double_nan (aeroplane_body_by_id (trammel_session_aeroplane (stage.session), "body")->skin);
}
END_TEST

START_TEST (a_bay_is_taken_out)
{
  press ("Add a Bay");
  press ("Remove Bay bay");
  ck_assert_ptr_null (bay ("bay"));
  trammel_session_undo (stage.session);
  gui_settle ();
  ck_assert_ptr_nonnull (bay ("bay"));
  find ("Remove Bay bay");
}
END_TEST

int
main (void)
{
  Suite *suite = suite_create ("panel bays");
  TCase *tests = tcase_create ("bays");

  gui_begin ();
  tcase_add_checked_fixture (tests, raise_on_body, stage_strike);
  tcase_set_timeout (tests, 300);
  tcase_add_test (tests, a_bay_is_added_between_two_formers_that_are_chosen);
  tcase_add_test (tests, the_bay_added_last_is_the_one_that_is_named_next);
  tcase_add_test (tests, the_next_bay_begins_where_the_aftmost_ends);
  tcase_add_test (tests, a_part_that_slides_is_not_said_to_stay_where_no_bay_is_ticked);
  tcase_add_test (tests, a_bay_is_renamed_and_what_may_be_in_it_follows);
  tcase_add_test (tests, a_bay_chosen_in_the_list_has_its_own_page_and_keeps_it_when_renamed);
  tcase_add_test (tests, skin_and_formers_of_its_body_are_typed_on_a_bays_page_and_are_as_usual_when_emptied);
  tcase_add_test (tests, a_bay_is_taken_out);
  suite_add_tcase (suite, tests);
  return gui_run (suite);
}
