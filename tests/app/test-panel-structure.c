/* What structures are made of, in the panel under a real hand. */
#include <math.h>
#include "support/panel-stage.h"

static const StructureFigures *
weighed (const char *id)
{
  return figures_of_structure (trammel_session_figures (stage.session), structure_of (id));
}

/* Presses the button whose label reads so, brought into view first. */
static void
press_label (const char *words)
{
  GtkWidget *widget = find (words), *button = gtk_widget_get_ancestor (widget, GTK_TYPE_BUTTON);

  gtk_widget_grab_focus (button != NULL ? button : widget);
  gui_settle ();
  gui_click (find (words));
  gui_settle ();
}

/* The wing, or another, with the usual lines in the place of what was typed. */
static void
lay_down (const char *id)
{
  const Structure *typed = structure_of (id);

  if (typed != NULL)
    trammel_session_do (stage.session, aeroplane_without_dependents (trammel_session_aeroplane (stage.session), &typed->piece), "Delete");
  choose (id);
  press_label ("Usual Lines");
  gui_settle ();
}

/* Of a row without a unit, whose label reads like its field. */
static void
type_beside (const char *label, const char *text)
{
  gtk_widget_grab_focus (beside (label));
  gui_settle ();
  gui_key ("<Control>a");
  gui_type (text);
  gui_key ("Return");
}

static double
line_g (const char *id, guint place)
{
  return g_array_index (weighed (id)->items_g, double, place);
}

START_TEST (the_usual_lines_give_a_wing_its_mass_in_one_step)
{
  lay_down ("wing");
  ck_assert_uint_gt (structure_of ("wing")->item_count, 5);
  ck_assert (weighed ("wing")->mass_g > 10 && weighed ("wing")->mass_g < 40);
  find ("Ribs");
  find ("Usual excess");
  find ("by its lines");
  trammel_session_undo (stage.session);
  gui_settle ();
  ck_assert_ptr_null (structure_of ("wing"));
}
END_TEST

START_TEST (a_tail_is_a_sheet_and_a_body_has_formers)
{
  lay_down ("tail");
  find ("Sheet");
  lay_down ("body");
  find ("Formers");
  ck_assert (weighed ("tail")->mass_g < weighed ("body")->mass_g);
}
END_TEST

START_TEST (a_line_opens_at_a_click_is_typed_in_and_closes_again)
{
  double before;

  lay_down ("wing");
  before = line_g ("wing", 1);
  press_label ("Spars");
  ck_assert_ptr_eq (gtk_window_get_focus (stage.window), gtk_widget_get_ancestor (find ("Spars"), GTK_TYPE_BUTTON));
  type_beside ("How many", "4");
  ck_assert_double_eq_tol (line_g ("wing", 1), 2 * before, 1e-9);
  press_label ("Spars");
  ck_assert_ptr_null (gui_find (GTK_WIDGET (stage.window), "How many"));
}
END_TEST

START_TEST (what_the_scale_says_of_a_line_takes_the_place_of_the_reckoning_and_goes_again)
{
  double before;

  lay_down ("wing");
  before = line_g ("wing", 0);
  press_label ("Ribs");
  retype ("On the scale, g", "3.7");
  ck_assert_double_eq (line_g ("wing", 0), 3.7);
  gtk_widget_grab_focus (find ("On the scale, g"));
  gui_key ("<Control>a");
  gui_key ("Delete");
  gui_key ("Return");
  ck_assert_double_eq_tol (line_g ("wing", 0), before, 1e-9);
}
END_TEST

START_TEST (a_spar_is_given_its_place_and_emptied_is_spread_again)
{
  lay_down ("wing");
  press_label ("Spars");
  retype ("Middle, aft of datum, mm", "150");
  ck_assert_double_eq (structure_of ("wing")->items[1].x, 150);
  gtk_widget_grab_focus (find ("Middle, aft of datum, mm"));
  gui_key ("<Control>a");
  gui_key ("Delete");
  gui_key ("Return");
  ck_assert (isnan (structure_of ("wing")->items[1].x));
}
END_TEST

START_TEST (a_thickness_is_typed_in_fractions_of_an_inch_and_shown_in_tenths)
{
  lay_down ("wing");
  press_label ("Ribs");
  ck_assert_str_eq (gtk_editable_get_text (GTK_EDITABLE (find ("Thickness, mm"))), "1.6");
  retype ("Thickness, mm", "3/32 in");
  ck_assert_double_eq_tol (structure_of ("wing")->items[0].thickness, 25.4 * 3 / 32, 1e-12);
  trammel_settings_set_units (stage.settings, (Units) { LENGTH_INCH, MASS_G });
  gui_settle ();
  ck_assert_str_eq (gtk_editable_get_text (GTK_EDITABLE (find ("Thickness, in"))), "3/32");
}
END_TEST

START_TEST (a_weighed_sheet_gives_the_line_its_density_in_one_step)
{
  const Aeroplane *before;

  lay_down ("wing");
  press_label ("Ribs");
  before = trammel_session_aeroplane (stage.session);
  press_label ("Weigh a Sheet");
  retype ("Sheet weighs, g", "10.6");
  gui_settle ();
  ck_assert (structure_of ("wing")->items[0].density_weighed);
  ck_assert_double_eq_tol (structure_of ("wing")->items[0].density / 16.018463, 6, 0.05);
  trammel_session_undo (stage.session);
  ck_assert_ptr_eq (trammel_session_aeroplane (stage.session), before);
}
END_TEST

START_TEST (a_line_is_added_by_its_material_opens_and_can_be_removed)
{
  size_t before;

  lay_down ("wing");
  before = structure_of ("wing")->item_count;
  press_label ("Add Line");
  press ("Basswood");
  gui_settle ();
  ck_assert_uint_eq (structure_of ("wing")->item_count, before + 1);
  ck_assert_str_eq (structure_of ("wing")->items[before].material, "basswood");
  find ("Thickness, mm");
  press_label ("Remove Line");
  gui_settle ();
  ck_assert_uint_eq (structure_of ("wing")->item_count, before);
}
END_TEST

START_TEST (the_excess_is_seen_and_can_be_left_out)
{
  double lines;

  lay_down ("wing");
  lines = weighed ("wing")->mass_g - weighed ("wing")->excess_g;
  retype ("Usual excess, %", "0");
  ck_assert_double_eq_tol (weighed ("wing")->mass_g, lines, 1e-9);
}
END_TEST

START_TEST (the_mass_of_the_whole_wins_and_emptied_leaves_the_word_to_the_lines)
{
  double lines;

  lay_down ("wing");
  lines = weighed ("wing")->mass_g;
  retype ("Mass, g", "22.5 +- 0.5");
  ck_assert_double_eq (weighed ("wing")->mass_g, 22.5);
  gtk_widget_grab_focus (find ("Mass, g"));
  gui_key ("<Control>a");
  gui_key ("Delete");
  gui_key ("Return");
  ck_assert_double_eq_tol (weighed ("wing")->mass_g, lines, 1e-9);
  find ("by its lines");
}
END_TEST

static GtkAdjustment *
panel_scroll (void)
{
  return gtk_scrolled_window_get_vadjustment (GTK_SCROLLED_WINDOW (gui_find_named (GTK_WIDGET (stage.window), "panel-scroller")));
}

/* Else a line opens out of sight, and has to be looked for. */
START_TEST (a_line_opens_where_it_was_pressed)
{
  double before;

  lay_down ("wing");
  gtk_widget_grab_focus (find ("Usual excess, %"));
  gui_settle ();
  before = gtk_adjustment_get_value (panel_scroll ());
  ck_assert_double_gt (before, 0);
  gui_click (find ("Covering"));
  gui_settle ();
  gui_wait_ms (200);          /* the rows are laid out, and would then be scrolled */
  find ("Goes by");
  ck_assert_double_eq (gtk_adjustment_get_value (panel_scroll ()), before);
}
END_TEST

static bool
is_in_sight (GtkWidget *widget)
{
  GtkWidget *viewport = gtk_widget_get_ancestor (widget, GTK_TYPE_VIEWPORT);
  graphene_rect_t place;

  return gtk_widget_compute_bounds (widget, viewport, &place) && place.origin.y >= 0
         && place.origin.y + place.size.height <= gtk_widget_get_height (viewport);
}

/* A kitchen scale's half gram: common practice, no source. What was reckoned or guessed before it has no say in that. */
START_TEST (a_mass_typed_alone_is_a_scale_s)
{
  lay_down ("wing");
  choose ("wing");
  retype ("Mass, g", "22.5");
  ck_assert_double_eq (structure_of ("wing")->mass_sigma, 0.5);
  retype ("Mass, g", "22.5 +- 4");
  retype ("Mass, g", "23");
  ck_assert_double_eq (structure_of ("wing")->mass_sigma, 0.5);
  retype ("Mass, g", "23 +- 0.1");
  retype ("Mass, g", "22");
  ck_assert_double_eq (structure_of ("wing")->mass_sigma, 0.1);
  retype ("Mass, g", "0");
  ck_assert_double_nan (structure_of ("wing")->mass_sigma);
}
END_TEST

START_TEST (the_sentence_that_asks_for_a_mass_leads_to_the_field_for_it)
{
  const Structure *weighed = structure_of ("wing");

  trammel_session_do (stage.session, aeroplane_without_dependents (trammel_session_aeroplane (stage.session), &weighed->piece), "Delete");
  choose ("battery");
  find ("The wing has no mass yet: type what it weighs.");
  gui_click (find ("Type the Mass"));
  gui_settle ();
  gui_wait_ms (200);          /* the rows are laid out, and then scrolled */
  ck_assert (is_in_sight (find ("Mass, g")));
  gui_type ("31");
  gui_key ("Return");
  gui_settle ();
  ck_assert_double_eq (structure_of ("wing")->mass, 31);
  ck_assert_ptr_null (gui_find (GTK_WIDGET (stage.window), "Type the Mass"));
}
END_TEST

START_TEST (what_is_half_typed_in_a_line_does_not_land_in_another_structure)
{
  lay_down ("tail");
  lay_down ("wing");
  press_label ("Ribs");
  gtk_widget_grab_focus (find ("Thickness, mm"));
  gui_settle ();
  gui_type ("7");
  choose ("tail");
  ck_assert_double_eq_tol (structure_of ("wing")->items[0].thickness, 25.4 / 16, 1e-9);
  ck_assert_double_lt (structure_of ("tail")->items[0].thickness, 5);
}
END_TEST

static bool
has_line_of (const char *id, const char *material)
{
  const Structure *structure = structure_of (id);

  for (size_t i = 0; structure != NULL && i < structure->item_count; i++)
    if (g_strcmp0 (structure->items[i].material, material) == 0)
      return true;
  return false;
}

START_TEST (another_covering_is_compared_and_put_on_in_one_step)
{
  double before;

  lay_down ("tail");
  lay_down ("wing");
  before = weighed ("wing")->mass_g;
  press_label ("Compare Coverings…");
  find ("as it is now");
  press ("Iron-on film, opaque");
  gui_settle ();
  ck_assert (has_line_of ("wing", "iron-on"));
  ck_assert (!has_line_of ("tail", "iron-on"));
  ck_assert_double_gt (weighed ("wing")->mass_g, before + 3);
  trammel_session_undo (stage.session);
  gui_settle ();
  ck_assert_double_eq_tol (weighed ("wing")->mass_g, before, 1e-9);
}
END_TEST

START_TEST (the_tail_is_covered_while_the_wing_is_selected)
{
  lay_down ("tail");
  lay_down ("wing");
  press_label ("Compare Coverings…");
  gtk_drop_down_set_selected (GTK_DROP_DOWN (find ("What Is Covered")), 1);
  gui_settle ();
  press ("Polyester film");
  gui_settle ();
  ck_assert (has_line_of ("tail", "film"));
  ck_assert (!has_line_of ("wing", "film"));
}
END_TEST

int
main (void)
{
  Suite *suite = suite_create ("panel-structure");
  TCase *with = tcase_create ("example");

  gui_begin ();
  tcase_add_checked_fixture (with, stage_raise, stage_strike);
  tcase_set_timeout (with, 60);
  tcase_add_test (with, the_usual_lines_give_a_wing_its_mass_in_one_step);
  tcase_add_test (with, a_tail_is_a_sheet_and_a_body_has_formers);
  tcase_add_test (with, a_line_opens_where_it_was_pressed);
  tcase_add_test (with, a_line_opens_at_a_click_is_typed_in_and_closes_again);
  tcase_add_test (with, what_the_scale_says_of_a_line_takes_the_place_of_the_reckoning_and_goes_again);
  tcase_add_test (with, a_spar_is_given_its_place_and_emptied_is_spread_again);
  tcase_add_test (with, a_thickness_is_typed_in_fractions_of_an_inch_and_shown_in_tenths);
  tcase_add_test (with, a_weighed_sheet_gives_the_line_its_density_in_one_step);
  tcase_add_test (with, a_line_is_added_by_its_material_opens_and_can_be_removed);
  tcase_add_test (with, the_excess_is_seen_and_can_be_left_out);
  tcase_add_test (with, the_mass_of_the_whole_wins_and_emptied_leaves_the_word_to_the_lines);
  tcase_add_test (with, a_mass_typed_alone_is_a_scale_s);
  tcase_add_test (with, the_sentence_that_asks_for_a_mass_leads_to_the_field_for_it);
  tcase_add_test (with, what_is_half_typed_in_a_line_does_not_land_in_another_structure);
  tcase_add_test (with, another_covering_is_compared_and_put_on_in_one_step);
  tcase_add_test (with, the_tail_is_covered_while_the_wing_is_selected);
  suite_add_tcase (suite, with);
  return gui_run (suite);
}
