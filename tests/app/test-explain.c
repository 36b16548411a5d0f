/* The explanations in a real window: opened by pointer and keyboard, read, closed again. */
#include "document/changes.h"
#include "support/panel-stage.h"

static GtkWidget *
button_of (const char *figure)
{
  g_autofree char *name = g_strdup_printf ("How “%s” is reckoned", figure);

  return gui_find (GTK_WIDGET (stage.window), name);
}

static GtkWidget *
popover_below (GtkWidget *widget)
{
  GtkWidget *found = GTK_IS_POPOVER (widget) && gtk_widget_has_css_class (widget, "explain-popover") ? widget : NULL;

  for (GtkWidget *child = gtk_widget_get_first_child (widget); child != NULL && found == NULL; child = gtk_widget_get_next_sibling (child))
    found = popover_below (child);
  return found;
}

/* The one that is open, NULL without. */
static GtkWidget *
popover (void)
{
  return popover_below (GTK_WIDGET (stage.window));
}

static bool
popover_is_there (gpointer wanted)
{
  GtkWidget *open = popover ();

  return (open != NULL && gtk_widget_get_mapped (open)) == GPOINTER_TO_INT (wanted);
}

static void
await_popover (bool there)
{
  ck_assert_msg (gui_wait (popover_is_there, GINT_TO_POINTER (there)), there ? "no explanation opens" : "the explanation stays");
  gui_settle ();
}

static void
assert_reads (const char *words)
{
  ck_assert_msg (gui_find (popover (), words) != NULL, "the explanation does not say “%s”", words);
}

static void
open_by_pointer (const char *figure)
{
  GtkWidget *button = button_of (figure);

  ck_assert_msg (button != NULL, "nothing explains “%s”", figure);
  gtk_widget_grab_focus (button);
  gui_settle ();
  gui_click (button);
  await_popover (true);
}

static void
close_by_key (void)
{
  gui_key ("Escape");
  await_popover (false);
}

START_TEST (a_click_opens_formula_inputs_source_and_limits)
{
  open_by_pointer ("Wing loading");
  assert_reads ("Wing loading");
  assert_reads ("all-up mass / area of all wings");
  assert_reads ("Area of all wings");
  assert_reads ("6.53\u00a0dm²");
  assert_reads ("151\u00a0g");
  assert_reads ("Common practice, no source.");
  assert_reads ("It compares aeroplanes of one size; a larger one bears more. Tails do not count.");
  ck_assert_int_le (gtk_widget_get_width (popover ()), 400);       /* its shadow and arrow are counted */
  close_by_key ();
}
END_TEST

static GtkWidget *
focused (void)
{
  return gtk_root_get_focus (GTK_ROOT (stage.window));
}

/* From the row's own place in the order of the keyboard, and back to it. */
START_TEST (tab_reaches_it_return_opens_it_and_escape_gives_the_keyboard_back)
{
  GtkWidget *button = button_of ("All-up mass"), *next = button_of ("Wing loading");

  gtk_widget_grab_focus (button);
  gui_settle ();
  gui_key ("Tab");
  ck_assert_ptr_eq (focused (), next);
  gui_key ("Return");
  await_popover (true);
  assert_reads ("Wing loading");
  close_by_key ();
  ck_assert_ptr_eq (focused (), next);
  ck_assert (gtk_widget_has_focus (next));
}
END_TEST

static double
scrolled_to (void)
{
  GtkWidget *scrolled = gui_find_type (popover (), GTK_TYPE_SCROLLED_WINDOW);

  return gtk_adjustment_get_value (gtk_scrolled_window_get_vadjustment (GTK_SCROLLED_WINDOW (scrolled)));
}

START_TEST (a_long_one_is_scrolled_by_the_arrows)
{
  open_by_pointer ("Balance point, aft of datum");
  ck_assert_double_eq (scrolled_to (), 0);
  gui_key ("Down");
  ck_assert_double_gt (scrolled_to (), 0);
  gui_key ("Up");
  ck_assert_double_eq (scrolled_to (), 0);
  close_by_key ();
}
END_TEST

START_TEST (the_answers_own_figures_are_explained)
{
  open_by_pointer ("Static Margin");
  assert_reads ("(neutral point − balance point) / mean chord");
  assert_reads ("= 9\u00a0% ± 5");
  close_by_key ();
  open_by_pointer ("Balance Mark");
  assert_reads ("Balance mark at station 40");
  close_by_key ();
  open_by_pointer ("Balance Point");
  assert_reads ("x = Σ m x / Σ m");
  close_by_key ();
}
END_TEST

START_TEST (a_surfaces_figures_are_those_of_the_surface_that_is_selected)
{
  trammel_session_select (stage.session, selection_of ("tail"));
  gui_settle ();
  open_by_pointer ("Area");
  assert_reads ("Area of “tail”");
  close_by_key ();
  open_by_pointer ("Tail volume");
  assert_reads ("Tail volume of “tail”");
  assert_reads ("260\u00a0mm");
  close_by_key ();
}
END_TEST

START_TEST (a_marks_row_and_a_rail_are_explained)
{
  open_by_pointer ("Station");
  assert_reads ("Balance mark at station 40");
  close_by_key ();
  trammel_session_select (stage.session, selection_of ("battery"));
  gui_settle ();
  open_by_pointer ("Aim on the rail");
  assert_reads ("Where “Battery 2S 450” must be");
  close_by_key ();
}
END_TEST

START_TEST (budget_power_and_a_parts_stand_are_explained)
{
  open_by_pointer ("Left for gear");
  assert_reads ("wanted all-up mass − bare airframe");
  close_by_key ();
  open_by_pointer ("Thrust, standing");
  assert_reads ("T = C ρ n² D⁴ / g");
  close_by_key ();
  trammel_session_select (stage.session, selection_of ("battery"));
  gui_settle ();
  open_by_pointer ("Front edge");
  assert_reads ("Where “Battery 2S 450” stands");
  close_by_key ();
}
END_TEST

START_TEST (a_finding_is_explained_where_it_stands)
{
  const Note *note = NULL;
  const GPtrArray *notes = trammel_session_figures (stage.session)->notes;

  for (guint i = 0; i < notes->len && note == NULL; i++)
    if (((const Note *) g_ptr_array_index (notes, i))->explained == EXPLAIN_STALL_SPEED)
      note = g_ptr_array_index (notes, i);
  ck_assert_ptr_nonnull (note);
  gui_click (find ("Findings"));
  open_by_pointer (note->text);
  assert_reads ("V = √(2 m g / (ρ S C))");
  ck_assert (selection_is_empty (trammel_session_selection (stage.session)));
  close_by_key ();
}
END_TEST

START_TEST (the_persons_units_are_its_units)
{
  trammel_settings_set_units (stage.settings, (Units) { LENGTH_INCH, MASS_OZ });
  gui_settle ();
  open_by_pointer ("Stalling speed, about");
  assert_reads ("5.31\u00a0oz");
  assert_reads ("= 14.6\u00a0mph ± 1.1\u00a0mph");
  close_by_key ();
  ck_assert_str_eq (gtk_label_get_text (GTK_LABEL (find ("14.6"))), "14.6");         /* and those of the row: no m/s in inches */
  find ("mph");
}
END_TEST

/* What lies open is of the aeroplane as it was. */
START_TEST (a_change_of_the_aeroplane_closes_it)
{
  open_by_pointer ("Static Margin");
  trammel_session_do (stage.session, change_surface_span (trammel_session_aeroplane (stage.session), "wing", 700), "Change Span");
  await_popover (false);
}
END_TEST

START_TEST (its_row_may_go_while_it_is_open)
{
  open_by_pointer ("Wing loading");
  trammel_session_select (stage.session, selection_of ("wing"));
  await_popover (false);
  ck_assert_ptr_null (button_of ("Wing loading"));
}
END_TEST

/* A figure that loses its inputs loses its button, and gets it back with them. */
START_TEST (the_button_is_there_as_long_as_the_figure)
{
  ck_assert_ptr_nonnull (button_of ("Static Margin"));
  trammel_session_do (stage.session, aeroplane_new (), "Clear");
  gui_settle ();
  ck_assert_ptr_null (button_of ("Static Margin"));
  trammel_session_undo (stage.session);
  gui_settle ();
  ck_assert_ptr_nonnull (button_of ("Static Margin"));
}
END_TEST

START_TEST (an_empty_sheet_explains_nothing)
{
  ck_assert_ptr_null (button_of ("Static Margin"));
  ck_assert_ptr_null (button_of ("Balance Mark"));
  ck_assert_ptr_null (button_of ("Balance Point"));
  ck_assert_ptr_null (button_of ("Wing loading"));
}
END_TEST

static Suite *
explain_suite (void)
{
  Suite *suite = suite_create ("explain");
  TCase *with = tcase_create ("example"), *empty = tcase_create ("empty");

  tcase_add_checked_fixture (with, stage_raise, stage_strike);
  tcase_set_timeout (with, 60);
  tcase_add_test (with, a_click_opens_formula_inputs_source_and_limits);
  tcase_add_test (with, tab_reaches_it_return_opens_it_and_escape_gives_the_keyboard_back);
  tcase_add_test (with, a_long_one_is_scrolled_by_the_arrows);
  tcase_add_test (with, the_answers_own_figures_are_explained);
  tcase_add_test (with, a_surfaces_figures_are_those_of_the_surface_that_is_selected);
  tcase_add_test (with, a_marks_row_and_a_rail_are_explained);
  tcase_add_test (with, budget_power_and_a_parts_stand_are_explained);
  tcase_add_test (with, a_finding_is_explained_where_it_stands);
  tcase_add_test (with, the_persons_units_are_its_units);
  tcase_add_test (with, a_change_of_the_aeroplane_closes_it);
  tcase_add_test (with, its_row_may_go_while_it_is_open);
  tcase_add_test (with, the_button_is_there_as_long_as_the_figure);
  suite_add_tcase (suite, with);
  tcase_add_checked_fixture (empty, stage_raise_empty, stage_strike);
  tcase_set_timeout (empty, 60);
  tcase_add_test (empty, an_empty_sheet_explains_nothing);
  suite_add_tcase (suite, empty);
  return suite;
}

int
main (void)
{
  gui_begin ();
  return gui_run (explain_suite ());
}
