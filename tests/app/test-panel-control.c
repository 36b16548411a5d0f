/* A control in the panel under a real hand: what its rows show, take and refuse. */
#include <math.h>
#include "document/hinge.h"
#include "support/panel-stage.h"

static const Control *
control (const char *surface, const char *id)
{
  const Control *found = aeroplane_control_by_id (trammel_session_aeroplane (stage.session), surface, id);

  ck_assert_msg (found != NULL, "there is no “%s”", id);
  return found;
}

static const Control *
ailerons (void)
{
  return control ("wing", "ailerons");
}

static void
choose_control (const char *surface, const char *id)
{
  trammel_session_select (stage.session, selection_of_control (surface, id));
  gui_settle ();
}

static const char *
text_of (const char *field)
{
  return gtk_editable_get_text (GTK_EDITABLE (find (field)));
}

static void
undoes (const char *label)
{
  ck_assert_str_eq (trammel_session_undo_label (stage.session), label);
}

START_TEST (the_list_shows_controls_and_a_row_chosen_brings_its_rows)
{
  const Figures *figures = trammel_session_figures (stage.session);
  g_autofree char *area = units_area (trammel_session_units (stage.session), figures_of_control (figures, "wing", "ailerons")->area_mm2);
  g_autofree char *row = g_strdup_printf ("Ailerons, %s", area);

  press (row);
  ck_assert_str_eq (trammel_session_selection (stage.session)->control, "ailerons");
  ck_assert_str_eq (text_of ("Inner station, mm"), "160");
  ck_assert_str_eq (text_of ("Outer station, mm"), "290");
  ck_assert_str_eq (text_of ("Up, °"), "12");
  ck_assert_ptr_null (gui_find (GTK_WIDGET (stage.window), "Aspect ratio"));
}
END_TEST

START_TEST (a_station_typed_leaves_the_hinge_line_the_line_it_was)
{
  double expected;

  choose_control ("wing", "ailerons");
  expected = hinge_x_at (ailerons (), 180);
  retype ("Inner station, mm", "180");
  ck_assert_double_eq (ailerons ()->inner, 180);
  ck_assert_double_eq_tol (ailerons ()->hinge_inner_x, expected, 1e-9);
  ck_assert_double_eq (ailerons ()->hinge_outer_x, 179);
  undoes ("Move Hinge Line");
}
END_TEST

START_TEST (a_chord_typed_moves_that_end_and_no_other)
{
  choose_control ("wing", "ailerons");
  retype ("Chord, inner end, mm", "25");
  ck_assert_double_eq_tol (hinge_chord (wing (), ailerons (), false), 25, 1e-9);
  ck_assert_double_eq (ailerons ()->hinge_outer_x, 179);
  undoes ("Move Hinge Line");
}
END_TEST

static const struct { const char *field, *text, *sentence; } refused[] = {
  { "Inner station, mm", "300", "The inner end, at station 300\u00a0mm, lies beyond the outer one: exchange them." },
  { "Inner station, mm", "290", "Both ends stand at station 290\u00a0mm: put them apart along the span." },
  { "Outer station, mm", "330", "There is no surface at station 330\u00a0mm: put the end within it." },
  { "Chord, inner end, mm", "-5", "The hinge line leaves the trailing edge at station 160\u00a0mm: bring it further forward." },
  { "Chord, inner end, mm", "200", "The hinge line leaves the leading edge at station 160\u00a0mm: bring it further aft." },
  { "Up, °", "95", "A throw lies between 0 and 90°; 10 to 30 is usual." },
  { "Trailing edge up, mm", "60", "The trailing edge moves between 0 and the control's chord." },
};

START_TEST (what_cannot_be_is_refused_in_one_sentence_and_changes_nothing)
{
  g_autoptr (Aeroplane) before = aeroplane_ref ((Aeroplane *) trammel_session_aeroplane (stage.session));

  choose_control ("wing", "ailerons");
  retype (refused[_i].field, refused[_i].text);
  find (refused[_i].sentence);
  ck_assert_ptr_eq (trammel_session_aeroplane (stage.session), before);
}
END_TEST

START_TEST (what_it_is_can_be_changed)
{
  choose_control ("wing", "ailerons");
  gui_click (beside ("What it is"));
  gui_settle ();
  gui_click (find ("Flap"));
  gui_settle ();
  ck_assert_int_eq (ailerons ()->kind, CONTROL_FLAP);
  find ("Flaps");
  undoes ("Change What It Is");
}
END_TEST

/* Half of its chord is a turn by 30 degrees. */
START_TEST (a_throw_is_typed_in_degrees_or_as_a_rule_shows_it_and_taken_back)
{
  const double chord = hinge_chord (wing (), ailerons (), false);
  g_autofree char *half = g_strdup_printf ("%.6f", chord / 2);

  choose_control ("wing", "ailerons");
  retype ("Trailing edge up, mm", half);
  ck_assert_double_eq_tol (ailerons ()->up, 30, 0.001);
  retype ("Down, °", "15");
  ck_assert_double_eq (ailerons ()->down, 15);
  ck_assert_double_eq_tol (hinge_travel (wing (), ailerons (), 15), chord * sin (15 * G_PI / 180), 1e-9);
  undoes ("Change Throw");
  gtk_widget_grab_focus (find ("Down, °"));
  gui_settle ();
  gui_key ("<Control>a");
  gui_key ("Delete");
  gui_key ("Return");
  ck_assert (isnan (ailerons ()->down));
}
END_TEST

START_TEST (a_rudder_has_heights_and_turns_to_port_and_starboard)
{
  choose_control ("fin", "rudder");
  ck_assert_str_eq (text_of ("Lower end, height, mm"), "4");
  ck_assert_str_eq (text_of ("To port, °"), "20");
  retype ("Upper end, height, mm", "75");
  find ("There is no fin at height 75\u00a0mm: put the end within it.");
  retype ("Upper end, height, mm", "60");
  ck_assert_double_eq (control ("fin", "rudder")->outer, 60);
}
END_TEST

int
main (void)
{
  Suite *suite = suite_create ("panel-control");
  TCase *with = tcase_create ("example");

  gui_begin ();
  tcase_add_checked_fixture (with, stage_raise, stage_strike);
  tcase_set_timeout (with, 60);
  tcase_add_test (with, the_list_shows_controls_and_a_row_chosen_brings_its_rows);
  tcase_add_test (with, a_station_typed_leaves_the_hinge_line_the_line_it_was);
  tcase_add_test (with, a_chord_typed_moves_that_end_and_no_other);
  tcase_add_loop_test (with, what_cannot_be_is_refused_in_one_sentence_and_changes_nothing, 0, G_N_ELEMENTS (refused));
  tcase_add_test (with, what_it_is_can_be_changed);
  tcase_add_test (with, a_throw_is_typed_in_degrees_or_as_a_rule_shows_it_and_taken_back);
  tcase_add_test (with, a_rudder_has_heights_and_turns_to_port_and_starboard);
  suite_add_tcase (suite, with);
  return gui_run (suite);
}
