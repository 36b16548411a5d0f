/* The rows of the panel under a real hand: what a click marks, a list chooses and a field takes or refuses. */
#include <math.h>
#include "support/panel-stage.h"

static GtkAdjustment *
panel_scroll (void)
{
  return gtk_scrolled_window_get_vadjustment (GTK_SCROLLED_WINDOW (gui_find_named (GTK_WIDGET (stage.window), "panel-scroller")));
}

static GtkWidget *
section_class (void)
{
  return beside ("Class");
}

/* Scrolls the panel until that row stands as the last in sight. */
static void
scroll_low (GtkWidget *row)
{
  GtkWidget *viewport = gtk_widget_get_ancestor (row, GTK_TYPE_VIEWPORT);
  graphene_rect_t place;

  ck_assert (gtk_widget_compute_bounds (row, gtk_viewport_get_child (GTK_VIEWPORT (viewport)), &place));
  gtk_adjustment_set_value (panel_scroll (), place.origin.y + place.size.height + 4 - gtk_adjustment_get_page_size (panel_scroll ()));
  gui_settle ();
}

START_TEST (a_row_of_a_list_low_in_the_scrolled_panel_is_the_row_that_is_chosen)
{
  double before;

  choose (wing ()->piece.id);
  scroll_low (section_class ());
  before = gtk_adjustment_get_value (panel_scroll ());
  gui_click (section_class ());
  gui_settle ();
  gui_click (find ("Flat-bottomed"));
  gui_settle ();
  ck_assert_int_eq (wing ()->section, SECTION_FLAT_BOTTOMED);
  ck_assert_double_eq (gtk_adjustment_get_value (panel_scroll ()), before);
}
END_TEST

START_TEST (a_click_into_an_empty_field_leaves_only_what_is_typed)
{
  take_away (&structure_of ("fin")->piece);
  choose ("fin");
  scroll_low (find ("Mass, g"));
  gui_click (find ("Mass, g"));
  gui_type ("38");
  gui_key ("Return");
  ck_assert_ptr_nonnull (structure_of ("fin"));
  ck_assert_double_eq (structure_of ("fin")->mass, 38);
}
END_TEST

START_TEST (a_click_into_a_field_selects_all_of_it_and_the_next_click_places_the_cursor)
{
  int from, to;

  choose ("battery");
  gui_click (find ("Mass, g"));
  ck_assert (gtk_editable_get_selection_bounds (GTK_EDITABLE (find ("Mass, g")), &from, &to));
  ck_assert_int_eq (from, 0);
  ck_assert_int_eq (to, 2);
  gui_wait_ms (500);          /* or it would be a double click */
  gui_click (find ("Mass, g"));
  ck_assert (!gtk_editable_get_selection_bounds (GTK_EDITABLE (find ("Mass, g")), NULL, NULL));
  gui_key ("<Control>a");
  gui_type ("41");
  gui_key ("Return");
  ck_assert_double_eq (battery ()->mass, 41);
}
END_TEST

/* Of a row without a unit, whose label reads like its field. */
static void
type_beside (const char *label, const char *text)
{
  gtk_widget_grab_focus (beside (label));
  gui_settle ();
  gui_key ("<Control>a");
  gui_key ("Delete");
  gui_type (text);
  gui_key ("Return");
}

static GtkEditable *
name_entry (void)
{
  return GTK_EDITABLE (beside ("Name"));
}

static int
name_is_scrolled_by (void)
{
  int offset;

  gui_settle ();
  g_object_get (gtk_editable_get_delegate (name_entry ()), "scroll-offset", &offset, NULL);
  return offset;
}

/* Else its frame cuts the first letter in two. */
START_TEST (a_long_name_is_seen_from_its_beginning)
{
  choose ("battery");
  gtk_widget_grab_focus (GTK_WIDGET (name_entry ()));
  gui_settle ();
  gui_key ("<Control>a");
  gui_type ("Battery of two cells that lies beneath the wing, behind the speed controller");
  ck_assert_int_gt (name_is_scrolled_by (), 0);
  gui_key ("Return");
  ck_assert_str_eq (battery ()->name, "Battery of two cells that lies beneath the wing, behind the speed controller");
  ck_assert_int_eq (name_is_scrolled_by (), 0);
  gui_key ("Tab");
  ck_assert_int_eq (name_is_scrolled_by (), 0);
  gui_key ("<Shift>Tab");
  ck_assert_int_eq (name_is_scrolled_by (), 0);
}
END_TEST

START_TEST (what_a_section_does_can_be_typed_and_taken_back)
{
  choose (wing ()->piece.id);
  const double slope = trammel_session_figures (stage.session)->reference->section_slope;
  const double lift = trammel_session_figures (stage.session)->flight.lift_max;

  type_beside ("Lift slope over 2π", "0.71");
  type_beside ("Greatest lift coefficient", "1.44");
  ck_assert_double_eq (wing ()->section_slope, 0.71);
  ck_assert_double_eq (wing ()->lift_max, 1.44);
  type_beside ("Lift slope over 2π", "");
  type_beside ("Greatest lift coefficient", "");
  ck_assert_double_nan (wing ()->section_slope);
  ck_assert_double_nan (wing ()->lift_max);
  ck_assert_double_eq_tol (trammel_session_figures (stage.session)->reference->section_slope, slope, 1e-9);
  ck_assert_double_eq_tol (trammel_session_figures (stage.session)->flight.lift_max, lift, 1e-9);
}
END_TEST

/* The stalling speed takes the first wing's for the area of all. */
START_TEST (only_the_first_wing_is_asked_for_its_greatest_lift)
{
  Surface *upper = (Surface *) piece_dup (&wing ()->piece);

  g_free (upper->piece.id);
  upper->piece.id = g_strdup ("upper");
  upper->z += 120;
  trammel_session_do (stage.session, aeroplane_with_added (trammel_session_aeroplane (stage.session), &upper->piece), "Add");
  choose ("upper");
  find ("Lift slope over 2π");
  ck_assert_ptr_null (gui_find (GTK_WIDGET (stage.window), "Greatest lift coefficient"));
  choose (wing ()->piece.id);
  find ("Greatest lift coefficient");
}
END_TEST

START_TEST (a_point_that_is_no_more_does_not_stay_selected)
{
  trammel_session_select (stage.session, selection_of_point (SHEET_POINT_NEUTRAL));
  take_away (&aeroplane_body (trammel_session_aeroplane (stage.session), 0)->piece);
  ck_assert_int_eq (trammel_session_selection (stage.session)->point, SHEET_POINT_NEUTRAL);
  take_away (&wing ()->piece);
  ck_assert (selection_is_empty (trammel_session_selection (stage.session)));
}
END_TEST

START_TEST (what_is_selected_elsewhere_comes_before_the_findings)
{
  press ("Findings");
  choose ("battery");
  find ("Mass, g");
}
END_TEST

START_TEST (a_span_beyond_the_limit_is_refused_in_the_words_of_the_sheet)
{
  choose (wing ()->piece.id);
  retype ("Span, mm", "0");
  find ("A span is more than 0 and at most 20 m.");
  retype ("Span, mm", "99999999");
  find ("“99999999” is too large a length for a small aeroplane. Write less.");
}
END_TEST

/* As a tail is enlarged at the bench: half as long again in every length has 2.25 times the area. */
START_TEST (an_area_is_typed_all_lengths_go_with_it_and_the_tail_arm_stays)
{
  const SurfaceFigures *tail = figures_of_surface (trammel_session_figures (stage.session), "tail");
  const double span = tail->planform.span, mac = tail->planform.mac, arm = tail->tail_arm_mm;
  g_autofree char *larger = g_strdup_printf ("%.6f", 2.25 * tail->area_mm2 / 1e4);

  choose ("tail");
  retype ("Area, dm²", larger);
  tail = figures_of_surface (trammel_session_figures (stage.session), "tail");
  ck_assert_double_eq_tol (tail->planform.span, 1.5 * span, 1e-3);
  ck_assert_double_eq_tol (tail->planform.mac, 1.5 * mac, 1e-3);
  ck_assert_double_eq_tol (tail->tail_arm_mm, arm, 1e-6);
  ck_assert_str_eq (trammel_session_undo_label (stage.session), "Change Area");
  trammel_session_undo (stage.session);
  ck_assert_double_eq (figures_of_surface (trammel_session_figures (stage.session), "tail")->planform.span, span);
}
END_TEST

START_TEST (an_area_that_no_surface_has_is_refused_in_words)
{
  choose ("tail");
  retype ("Area, dm²", "0");
  find ("An area is more than 0.");
  retype ("Area, dm²", "90000");
  find ("A span is more than 0 and at most 20 m.");
}
END_TEST

START_TEST (the_handbook_speaks_of_a_body_only_where_there_is_one)
{
  trammel_session_select (stage.session, selection_of_point (SHEET_POINT_NEUTRAL));
  gui_settle ();
  find ("with body");
  take_away (&aeroplane_body (trammel_session_aeroplane (stage.session), 0)->piece);
  ck_assert_ptr_null (gui_find (GTK_WIDGET (stage.window), "with body"));
}
END_TEST

/* A label that tries width after width, at each layout of the window, took most of a start. */
START_TEST (a_row_s_name_is_as_wide_at_any_height)
{
  GtkWidget *name;
  int least[2], wanted[2];

  choose ("battery");
  name = gtk_widget_get_parent (find ("Name"));
  for (int i = 0; i < 2; i++)
    gtk_widget_measure (name, GTK_ORIENTATION_HORIZONTAL, i == 0 ? -1 : gtk_widget_get_height (name), &least[i], &wanted[i], NULL, NULL);
  ck_assert_int_eq (least[0], least[1]);
  ck_assert_int_eq (wanted[0], wanted[1]);
}
END_TEST

int
main (void)
{
  Suite *suite = suite_create ("panel-fields");
  TCase *with = tcase_create ("example");

  gui_begin ();
  tcase_add_checked_fixture (with, stage_raise, stage_strike);
  tcase_set_timeout (with, 60);
  tcase_add_test (with, a_row_s_name_is_as_wide_at_any_height);
  tcase_add_test (with, a_row_of_a_list_low_in_the_scrolled_panel_is_the_row_that_is_chosen);
  tcase_add_test (with, a_click_into_an_empty_field_leaves_only_what_is_typed);
  tcase_add_test (with, a_click_into_a_field_selects_all_of_it_and_the_next_click_places_the_cursor);
  tcase_add_test (with, a_long_name_is_seen_from_its_beginning);
  tcase_add_test (with, what_a_section_does_can_be_typed_and_taken_back);
  tcase_add_test (with, only_the_first_wing_is_asked_for_its_greatest_lift);
  tcase_add_test (with, a_point_that_is_no_more_does_not_stay_selected);
  tcase_add_test (with, what_is_selected_elsewhere_comes_before_the_findings);
  tcase_add_test (with, an_area_is_typed_all_lengths_go_with_it_and_the_tail_arm_stays);
  tcase_add_test (with, an_area_that_no_surface_has_is_refused_in_words);
  tcase_add_test (with, a_span_beyond_the_limit_is_refused_in_the_words_of_the_sheet);
  tcase_add_test (with, the_handbook_speaks_of_a_body_only_where_there_is_one);
  suite_add_tcase (suite, with);
  return gui_run (suite);
}
