/* The panel's choices about a part under a real hand: whether it flies, what it is fixed to, where it may be, how it is turned. */
#include <math.h>
#include "document/changes.h"
#include "figures/nose-figures.h"
#include "support/panel-stage.h"

static const Part *
part (const char *id)
{
  return aeroplane_part_by_id (trammel_session_aeroplane (stage.session), id);
}

/* Opens a drop-down and takes what reads so. */
static void
pick (const char *label, const char *words)
{
  gtk_widget_grab_focus (beside (label));
  gui_settle ();
  gui_click (beside (label));
  gui_settle ();
  gui_click (find (words));
  gui_settle ();
}

static void
undo_is (const char *label)
{
  ck_assert_str_eq (trammel_session_undo_label (stage.session), label);
  trammel_session_undo (stage.session);
  gui_settle ();
}

START_TEST (a_part_still_to_come_counts_and_reads_so_in_the_list)
{
  const double before = trammel_session_figures (stage.session)->mass.total_g;

  choose ("receiver");
  pick ("In Flight", "Still to Come");
  ck_assert (part ("receiver")->aboard && part ("receiver")->to_come);
  ck_assert_double_eq (trammel_session_figures (stage.session)->mass.total_g, before);
  find ("3\u00a0g, to come");
  undo_is ("Still to Come");
  ck_assert (!part ("receiver")->to_come);
}
END_TEST

START_TEST (a_part_left_out_counts_nowhere)
{
  const double before = trammel_session_figures (stage.session)->mass.total_g;

  choose ("receiver");
  pick ("In Flight", "Left Out");
  ck_assert (!part ("receiver")->aboard);
  ck_assert_double_eq_tol (trammel_session_figures (stage.session)->mass.total_g, before - 3, 1e-9);
  undo_is ("Leave Out");
  ck_assert (part ("receiver")->aboard);
}
END_TEST

START_TEST (a_part_is_fixed_to_what_it_belongs_to_and_moves_with_it)
{
  choose ("servo-left");
  pick ("Fixed to", "Wing");
  ck_assert_str_eq (part ("servo-left")->of, "wing");
  trammel_session_do (stage.session, change_surface_moved (trammel_session_aeroplane (stage.session), "wing", 7, 0), "Move Wing");
  ck_assert_double_eq (part ("servo-left")->x, 183);
  trammel_session_undo (stage.session);
  undo_is ("Change What It Is Fixed To");
  ck_assert_ptr_null (part ("servo-left")->of);
}
END_TEST

START_TEST (a_list_opened_by_keys_begins_at_what_is_chosen)
{
  choose ("servo-left");
  pick ("Fixed to", "Wing");
  gtk_widget_grab_focus (beside ("Fixed to"));
  gui_key ("Return");
  gui_key ("Return");
  ck_assert_str_eq (part ("servo-left")->of, "wing");
  gui_key ("Return");
  gui_key ("Up");
  gui_key ("Return");
  ck_assert_ptr_null (part ("servo-left")->of);
}
END_TEST

START_TEST (rooms_that_are_ticked_are_where_it_may_be)
{
  trammel_session_do (stage.session, change_bay_added (trammel_session_aeroplane (stage.session), "F4", "F6", NULL), "Add Bay");
  choose ("servo-left");
  press ("bay");
  ck_assert_str_eq (part ("servo-left")->bays, "bay");
  press ("Wing");
  ck_assert_str_eq (part ("servo-left")->bays, "bay wing");
  press ("bay");
  ck_assert_str_eq (part ("servo-left")->bays, "wing");
  undo_is ("Change Where It May Be");
  ck_assert (part_may_be_in (part ("servo-left"), "bay"));
  ck_assert (gtk_check_button_get_active (GTK_CHECK_BUTTON (find ("bay"))));
}
END_TEST

/* Between F1 and F2 there are 28 mm less a former's thickness; the pushrod is 220 mm long. */
START_TEST (a_bay_that_is_too_short_cannot_be_ticked_and_says_so)
{
  GtkWidget *check;

  trammel_session_do (stage.session, change_bay_added (trammel_session_aeroplane (stage.session), "F1", "F2", NULL), "Add Bay");
  choose ("pushrod");
  check = find ("bay");
  ck_assert (!gtk_widget_is_sensitive (check));
  ck_assert (g_str_has_prefix (gtk_label_get_text (GTK_LABEL (gtk_widget_get_next_sibling (check))), "too short: "));
  press ("bay");
  ck_assert_ptr_null (part ("pushrod")->bays);
  choose ("receiver");
  ck_assert (gtk_widget_is_sensitive (find ("bay")));
  ck_assert (!gtk_widget_get_visible (gtk_widget_get_next_sibling (find ("bay"))));
}
END_TEST

/* It was ticked while it fitted: what does not fit any more can be taken back. */
START_TEST (a_ticked_room_that_has_become_too_small_says_so_and_can_be_unticked)
{
  trammel_session_do (stage.session, change_bay_added (trammel_session_aeroplane (stage.session), "F1", "F2", NULL), "Add Bay");
  trammel_session_do (stage.session, change_part_room (trammel_session_aeroplane (stage.session), "pushrod", "bay", true), "Tick");
  choose ("pushrod");
  ck_assert (gtk_widget_is_sensitive (find ("bay")));
  ck_assert (gtk_widget_get_visible (gtk_widget_get_next_sibling (find ("bay"))));
  press ("bay");
  ck_assert_ptr_null (part ("pushrod")->bays);
}
END_TEST

START_TEST (a_turn_and_a_group_are_typed)
{
  choose ("servo-left");
  retype ("Turn, °", "90");
  ck_assert_double_eq (part ("servo-left")->turn, 90);
  gtk_widget_grab_focus (beside ("Group"));
  gui_settle ();
  gui_type ("ailerons");
  gui_key ("Return");
  ck_assert_str_eq (part ("servo-left")->group, "ailerons");
  undo_is ("Change Group");
  undo_is ("Turn Part");
  ck_assert_double_eq (part ("servo-left")->turn, 0);
}
END_TEST

START_TEST (the_battery_s_page_tells_the_hatch_to_cut_from_the_formers)
{
  choose ("battery");
  find ("Hatch to Cut");
  find ("6\u00a0mm ahead of F2");
  find ("F6");
  ck_assert_ptr_null (gui_find (GTK_WIDGET (stage.window), "F1"));      /* the firewall is between */
  choose ("receiver");
  ck_assert_ptr_null (gui_find (GTK_WIDGET (stage.window), "Hatch to Cut"));
}
END_TEST

START_TEST (on_which_side_the_hatch_opens_is_chosen_on_the_battery_s_page)
{
  choose ("battery");
  ck_assert_int_eq (aeroplane_traits (trammel_session_aeroplane (stage.session)).hatch, HATCH_ON_TOP);
  pick ("Opens on", "Bottom");
  ck_assert_int_eq (aeroplane_traits (trammel_session_aeroplane (stage.session)).hatch, HATCH_ON_BOTTOM);
  undo_is ("Change Where the Hatch Opens");
  ck_assert_int_eq (aeroplane_traits (trammel_session_aeroplane (stage.session)).hatch, HATCH_ON_TOP);
}
END_TEST

START_TEST (what_stands_on_a_label_is_typed_and_what_it_gives_is_read)
{
  const PowerFigures *power;

  choose ("motor");
  gtk_widget_grab_focus (beside ("Measured"));
  gui_settle ();
  gui_type ("58");
  gui_key ("Return");
  choose ("propeller");
  retype ("Pitch, in", "4 1/2");
  ck_assert_double_eq_tol (part ("propeller")->pitch, 4.5 * 25.4, 1e-9);
  power = &trammel_session_figures (stage.session)->power;
  ck_assert_int_eq (power->by, POWER_MEASURED);
  ck_assert_double_eq (power->input_w, 58);
  trammel_session_select (stage.session, (Selection) { 0 });
  gui_settle ();
  find ("rpm, by the meter");
  find ("Thrust, standing");
  undo_is ("Change Rating");
  choose ("propeller");
  gtk_widget_grab_focus (find ("Pitch, in"));
  gui_settle ();
  gui_key ("<Control>a");
  gui_key ("Delete");
  gui_key ("Return");
  ck_assert_double_eq (part ("propeller")->pitch, 0);
  choose ("receiver");
  ck_assert_ptr_null (gui_find (GTK_WIDGET (stage.window), "Rating"));
}
END_TEST

START_TEST (a_part_s_tray_is_read_and_typed_from_a_former)
{
  choose ("receiver");
  find ("Place in the Body");
  find ("behind F5");
  find ("above the bottom");
  const double edge = part ("receiver")->x - part ("receiver")->length / 2;
  retype ("Front edge, mm", "20");
  ck_assert_double_eq_tol (part ("receiver")->x - part ("receiver")->length / 2, edge + 20 - 12, 0.5);
  undo_is ("Move Part");
  const double z = part ("receiver")->z;
  retype ("Front height, mm", "34");
  ck_assert_double_eq_tol (part ("receiver")->z, z - 2, 0.5);
  undo_is ("Move Part");
  choose ("servo-left");
  ck_assert_ptr_null (gui_find (GTK_WIDGET (stage.window), "Place in the Body"));
}
END_TEST

/* The battery's rear edge is 27.5 mm behind its middle, which slides from 82 to 134, and F3 is at 78. */
START_TEST (a_part_on_a_rail_is_not_typed_past_the_end_of_it)
{
  choose ("battery");
  retype ("Rear edge, mm", "120");
  find ("That is past the end of its rail, on which this edge goes from 32\u00a0mm behind F3 to 84\u00a0mm behind F3.");
  ck_assert_double_eq (part ("battery")->x, 124);
  retype ("Rear edge, mm", "84");
  ck_assert_double_eq (part ("battery")->x, 134);
}
END_TEST

/* The battery's rail goes from 82 to 134. */
START_TEST (a_place_past_the_rail_is_taken_and_says_so_both_ways)
{
  choose ("battery");
  ck_assert_ptr_null (gui_find (GTK_WIDGET (stage.window), "Behind its rail, which ends at 134\u00a0mm: move it forward, or lengthen the rail."));
  retype ("Middle, aft of datum, mm", "140");
  ck_assert_double_eq (part ("battery")->x, 140);
  find ("Behind its rail, which ends at 134\u00a0mm: move it forward, or lengthen the rail.");
  retype ("Middle, aft of datum, mm", "80");
  find ("Ahead of its rail, which begins at 82\u00a0mm: move it aft, or lengthen the rail.");
  retype ("Middle, aft of datum, mm", "134");
  ck_assert_ptr_null (gui_find (GTK_WIDGET (stage.window), "Ahead of its rail, which begins at 82\u00a0mm: move it aft, or lengthen the rail."));
}
END_TEST

START_TEST (a_place_off_centre_says_its_side_beside_the_sign_it_is_typed_with)
{
  choose ("receiver");
  retype ("Off centre, mm", "-8");
  find ("to port (−)");
  retype ("Off centre, mm", "8");
  find ("to starboard (+)");
  retype ("Off centre, mm", "0");
  ck_assert_ptr_null (gui_find (GTK_WIDGET (stage.window), "to starboard (+)"));
}
END_TEST

START_TEST (a_propeller_behind_its_cowl_s_front_is_not_told_with_a_minus)
{
  Part *cowl = part_new ("cowl", "cowl");

  cowl->x = part ("propeller")->x - 8 + 25, cowl->length = 50, cowl->width = 60, cowl->height = 60;
  trammel_session_do (stage.session, aeroplane_with_added (trammel_session_aeroplane (stage.session), &cowl->piece), "Add Cowl");
  choose ("motor");
  find ("behind the front");
  ck_assert_ptr_null (gui_find (GTK_WIDGET (stage.window), "ahead of the front"));
  ck_assert_str_eq (gtk_label_get_text (GTK_LABEL (beside ("Propeller's plane"))), "8");
}
END_TEST

static void
add_cowl (void)
{
  Part *cowl = part_new ("cowl", "cowl");

  cowl->x = 60, cowl->length = 50, cowl->width = 60, cowl->height = 60;
  trammel_session_do (stage.session, aeroplane_with_added (trammel_session_aeroplane (stage.session), &cowl->piece), "Add Cowl");
}

START_TEST (a_motor_too_far_out_is_set_in_its_cowl_in_one_step)
{
  add_cowl ();
  const double gap = 35 - (part ("propeller")->x + part ("propeller")->length / 2), out = gap - 3, motor = part ("motor")->x;
  const double propeller = part ("propeller")->x;
  choose ("motor");
  find ("Propeller and Cowl");
  press ("Set Motor in Cowl");
  gui_settle ();
  ck_assert_double_eq_tol (part ("motor")->x, motor + out, 1e-6);
  ck_assert_double_eq_tol (part ("propeller")->x, propeller + out, 1e-6);
  ck_assert_ptr_null (gui_find (GTK_WIDGET (stage.window), "Set Motor in Cowl"));
  undo_is ("Set Motor in Cowl");
  ck_assert_double_eq (part ("motor")->x, motor);
  choose ("battery");
  ck_assert_ptr_null (gui_find (GTK_WIDGET (stage.window), "Propeller and Cowl"));
}
END_TEST

START_TEST (the_thrust_lines_angles_tell_how_far_off_the_middle_the_shaft_leaves_the_firewall)
{
  const Piece *thrust;

  add_cowl ();
  choose ("motor");
  find ("Shaft raised");
  find ("Shaft aside");
  thrust = aeroplane_nth (trammel_session_aeroplane (stage.session), PIECE_THRUST, 0);
  trammel_session_do (stage.session, aeroplane_without (trammel_session_aeroplane (stage.session), thrust), "Delete Thrust Line");
  choose ("battery");
  choose ("motor");
  ck_assert_ptr_null (gui_find (GTK_WIDGET (stage.window), "Shaft raised"));
}
END_TEST

START_TEST (a_motor_without_its_propeller_says_what_is_lacking)
{
  const Aeroplane *now = trammel_session_aeroplane (stage.session);

  trammel_session_do (stage.session, aeroplane_without (now, &part ("propeller")->piece), "Delete Propeller");
  choose ("motor");
  g_autofree char *lack = nose_lack_text (NOSE_NO_PROPELLER, part ("motor"));
  find ("Propeller and Cowl");
  find (lack);
  ck_assert_ptr_null (gui_find (GTK_WIDGET (stage.window), "Set Motor in Cowl"));
  ck_assert_ptr_null (gui_find (GTK_WIDGET (stage.window), "Shaft"));
}
END_TEST

static AeroplaneTraits
traits (void)
{
  return aeroplane_traits (trammel_session_aeroplane (stage.session));
}

START_TEST (what_it_shall_weigh_and_what_the_airframe_weighs_is_typed)
{
  retype ("Wanted all-up, g", "180");
  ck_assert_double_eq (traits ().target.all_up, 180);
  retype ("Loading, g/dm²", "30");
  ck_assert (traits ().target.all_up == 0 && traits ().target.loading == 30);
  retype ("Bare airframe, g", "72");
  ck_assert (traits ().airframe == 72 && traits ().airframe_sigma == 0);
  undo_is ("Weigh Airframe");
  undo_is ("Change Wanted Loading");
  undo_is ("Change Wanted Mass");
  ck_assert (traits ().target.all_up == 0);
}
END_TEST

static double
load_mass (const char *id)
{
  const Figures *figures = trammel_session_figures (stage.session);

  for (size_t i = 0; i < figures->load_count; i++)
    if (g_str_equal (figures->loads[i].piece->id, id))
      return figures->loads[i].mass_g;
  return NAN;
}

START_TEST (where_the_bare_airframe_balances_is_typed_once_it_is_weighed)
{
  const double before = trammel_session_figures (stage.session)->mass.x_mm;

  retype ("Balances at, mm", "215");
  find ("Type first what the bare airframe weighs: a place alone corrects nothing.");
  ck_assert (!traits ().airframe_balanced);
  gui_key ("Escape");
  retype ("Bare airframe, g", "72");
  retype ("Balances at, mm", "215 +- 1");
  ck_assert (traits ().airframe_balanced && traits ().airframe_x == 215 && traits ().airframe_x_sigma == 1);
  ck_assert_double_gt (trammel_session_figures (stage.session)->mass.x_mm, before + 2);
  find ("aft of the datum, as found");
  choose ("wing");
  g_autofree char *mass = units_mass ((Units) { LENGTH_MM, MASS_G }, load_mass ("wing-structure"));
  g_autofree char *counts = g_strdup_printf ("counts as %s", mass);
  find (counts);
  trammel_session_select (stage.session, (Selection) { 0 });
  undo_is ("Balance Airframe");
  find ("aft of the datum, reckoned");
  undo_is ("Weigh Airframe");
  ck_assert_double_eq (trammel_session_figures (stage.session)->mass.x_mm, before);
}
END_TEST

/* 8 oz/ft² are 8 × 28.349523125 / 9.290304 g/dm²: International yard and pound agreement, 1959. */
START_TEST (a_wanted_loading_is_typed_in_the_reader_s_units)
{
  trammel_settings_set_units (stage.settings, (Units) { LENGTH_INCH, MASS_OZ });
  gui_settle ();
  retype ("Loading, oz/ft²", "8");
  ck_assert_double_eq_tol (traits ().target.loading, 24.4121, 1e-4);
  ck_assert_str_eq (gtk_editable_get_text (GTK_EDITABLE (find ("Loading, oz/ft²"))), "8");
  retype ("Loading, oz/ft²", "-1");
  find ("A loading is more than nothing; at 650 mm of span 5.9 to 9.2 oz/ft² is usual.");
}
END_TEST

int
main (void)
{
  Suite *suite = suite_create ("panel parts");
  TCase *tests = tcase_create ("parts");

  gui_begin ();
  tcase_add_checked_fixture (tests, stage_raise, stage_strike);
  tcase_set_timeout (tests, 300);
  tcase_add_test (tests, a_part_still_to_come_counts_and_reads_so_in_the_list);
  tcase_add_test (tests, a_part_left_out_counts_nowhere);
  tcase_add_test (tests, a_part_is_fixed_to_what_it_belongs_to_and_moves_with_it);
  tcase_add_test (tests, a_list_opened_by_keys_begins_at_what_is_chosen);
  tcase_add_test (tests, a_bay_that_is_too_short_cannot_be_ticked_and_says_so);
  tcase_add_test (tests, a_ticked_room_that_has_become_too_small_says_so_and_can_be_unticked);
  tcase_add_test (tests, rooms_that_are_ticked_are_where_it_may_be);
  tcase_add_test (tests, a_turn_and_a_group_are_typed);
  tcase_add_test (tests, the_battery_s_page_tells_the_hatch_to_cut_from_the_formers);
  tcase_add_test (tests, on_which_side_the_hatch_opens_is_chosen_on_the_battery_s_page);
  tcase_add_test (tests, what_stands_on_a_label_is_typed_and_what_it_gives_is_read);
  tcase_add_test (tests, a_part_on_a_rail_is_not_typed_past_the_end_of_it);
  tcase_add_test (tests, a_place_past_the_rail_is_taken_and_says_so_both_ways);
  tcase_add_test (tests, a_place_off_centre_says_its_side_beside_the_sign_it_is_typed_with);
  tcase_add_test (tests, a_propeller_behind_its_cowl_s_front_is_not_told_with_a_minus);
  tcase_add_test (tests, a_part_s_tray_is_read_and_typed_from_a_former);
  tcase_add_test (tests, a_motor_too_far_out_is_set_in_its_cowl_in_one_step);
  tcase_add_test (tests, a_motor_without_its_propeller_says_what_is_lacking);
  tcase_add_test (tests, the_thrust_lines_angles_tell_how_far_off_the_middle_the_shaft_leaves_the_firewall);
  tcase_add_test (tests, a_wanted_loading_is_typed_in_the_reader_s_units);
  tcase_add_test (tests, what_it_shall_weigh_and_what_the_airframe_weighs_is_typed);
  tcase_add_test (tests, where_the_bare_airframe_balances_is_typed_once_it_is_weighed);
  suite_add_tcase (suite, tests);
  return gui_run (suite);
}
