/* The side panel in a real window: what is typed and pressed there becomes the aeroplane, one undo step at a time. */
#include <math.h>
#include "document/changes.h"
#include "support/panel-stage.h"

static double
wing_span (void)
{
  return figures_of_surface (trammel_session_figures (stage.session), wing ()->piece.id)->planform.span;
}

START_TEST (a_typed_span_is_the_wings_to_the_last_digit_and_one_step_to_undo)
{
  trammel_session_select (stage.session, selection_of (wing ()->piece.id));
  gui_settle ();
  retype ("Span, mm", "702.4");
  ck_assert_double_eq_tol (wing_span (), 702.4, 1e-9);
  ck_assert_str_eq (trammel_session_undo_label (stage.session), "Change Span");
  trammel_session_undo (stage.session);
  ck_assert_double_eq_tol (wing_span (), 640, 1e-9);
  ck_assert_ptr_null (trammel_session_undo_label (stage.session));
}
END_TEST

/* A second window of the same session, not yet shown. */
static GtkWidget *
second_panel (GtkWindow **window)
{
  GtkWidget *panel = trammel_panel_new (stage.session);

  *window = GTK_WINDOW (gtk_window_new ());
  gtk_window_set_child (*window, panel);
  gtk_window_set_default_size (*window, 380, 720);
  return panel;
}

typedef struct { GtkWidget *panel; int frames; bool answer, rows; } Sight;

static void
sight_take (GdkFrameClock *clock, Sight *sight)
{
  if (sight->frames++ > 0)
    return;
  sight->answer = gui_find (sight->panel, "Static Margin") != NULL;
  sight->rows = gui_find (sight->panel, "Name") != NULL;
}

START_TEST (the_first_sight_is_the_answer_and_the_rows_follow)
{
  GtkWindow *window;
  Sight sight = { .panel = second_panel (&window) };

  gtk_window_present (window);
  g_signal_connect (gtk_widget_get_frame_clock (GTK_WIDGET (window)), "after-paint", G_CALLBACK (sight_take), &sight);
  gui_await (sight.panel, "Name");
  ck_assert (sight.answer);
  ck_assert (!sight.rows);
  g_signal_handlers_disconnect_by_data (gtk_widget_get_frame_clock (GTK_WIDGET (window)), &sight);
  gtk_window_destroy (window);
}
END_TEST

START_TEST (what_is_typed_before_the_rows_are_seen_goes_into_the_first)
{
  GtkWindow *window;
  GtkWidget *panel = second_panel (&window);

  trammel_session_select (stage.session, selection_of (wing ()->piece.id));
  gtk_window_present (window);
  trammel_panel_edit_first (TRAMMEL_PANEL (panel), "702");
  gui_present (window);
  gui_type (".4");
  gui_key ("Return");
  ck_assert_double_eq_tol (wing_span (), 702.4, 1e-9);
  gtk_window_destroy (window);
}
END_TEST

START_TEST (an_inch_fraction_is_kept_exactly)
{
  trammel_session_select (stage.session, selection_of ("battery"));
  gui_settle ();
  retype ("Middle, aft of datum, mm", "4 3/16 in");
  ck_assert_double_eq (battery ()->x, 4.1875 * 25.4);
}
END_TEST

START_TEST (a_number_that_may_be_a_thousand_is_asked_about_and_nothing_changes)
{
  trammel_session_select (stage.session, selection_of ("battery"));
  gui_settle ();
  const double mass = battery ()->mass;

  retype ("Mass, g", "1,000");
  ck_assert_double_eq (battery ()->mass, mass);
  ck_assert (gtk_widget_has_css_class (find ("Mass, g"), "error"));
  ck_assert_str_eq (gtk_editable_get_text (GTK_EDITABLE (find ("Mass, g"))), "1,000");
  gui_key ("Escape");
  ck_assert (!gtk_widget_has_css_class (find ("Mass, g"), "error"));
}
END_TEST

START_TEST (a_mass_below_zero_is_refused_with_a_sentence)
{
  trammel_session_select (stage.session, selection_of ("battery"));
  gui_settle ();
  const double mass = battery ()->mass;

  retype ("Mass, g", "-5");
  ck_assert_double_eq (battery ()->mass, mass);
  find ("A mass lies between 0 and 100 kg.");
}
END_TEST

START_TEST (ctrl_z_in_a_field_undoes_the_value_just_typed)
{
  const double mass = battery ()->mass;

  trammel_session_select (stage.session, selection_of ("battery"));
  gui_settle ();
  retype ("Mass, g", "40");
  ck_assert_double_eq (battery ()->mass, 40);
  /* The window's action is not in this stage: the field must leave the keys to it, and its own text alone. */
  gui_key ("<Control>z");
  ck_assert_str_eq (gtk_editable_get_text (GTK_EDITABLE (find ("Mass, g"))), "40");
  trammel_session_undo (stage.session);
  ck_assert_double_eq (battery ()->mass, mass);
}
END_TEST

START_TEST (half_typed_text_does_not_land_on_what_is_selected_next)
{
  const double mass = battery ()->mass;
  const Part *other = NULL;

  for (size_t i = 0; i < aeroplane_count (trammel_session_aeroplane (stage.session), PIECE_PART); i++)
    if (aeroplane_part (trammel_session_aeroplane (stage.session), i) != battery ())
      other = aeroplane_part (trammel_session_aeroplane (stage.session), i);
  ck_assert_ptr_nonnull (other);
  const double other_mass = other->mass;
  g_autofree char *other_id = g_strdup (other->piece.id);

  trammel_session_select (stage.session, selection_of ("battery"));
  gui_settle ();
  gtk_widget_grab_focus (find ("Mass, g"));
  gui_key ("<Control>a");
  gui_type ("77");
  trammel_session_select (stage.session, selection_of (other_id));
  gui_settle ();
  ck_assert_double_eq (aeroplane_part_by_id (trammel_session_aeroplane (stage.session), other_id)->mass, other_mass);
  ck_assert (battery ()->mass == mass || battery ()->mass == 77);
}
END_TEST

START_TEST (a_row_of_the_list_selects_its_thing_and_the_rows_follow)
{
  press ("Battery 2S 450, 27\u00a0g");
  ck_assert_str_eq (selection_single (trammel_session_selection (stage.session)), "battery");
  find ("Forward end, mm");
}
END_TEST

static void
replace_wing (Outline *takes)
{
  const Aeroplane *now = trammel_session_aeroplane (stage.session);

  ck_assert_ptr_nonnull (takes);
  trammel_session_do (stage.session, change_surface_outline (now, "wing", takes), "Change Outline");
}

static Outline *
polygon (const Point nodes[], size_t count)
{
  Segment segments[8];
  Outline *made = NULL;

  for (size_t i = 1; i < count; i++)
    segments[i - 1] = segment_line (nodes[i]);
  ck_assert_int_eq (outline_new (nodes[0], segments, count - 1, NULL, &made), CORE_OK);
  return made;
}

static const struct { const char *says; Point nodes[5]; } faulty_wings[] = {
  { "Wing, outline open",             { { 100, 0 }, { 110, 300 }, { 190, 300 }, { 200, 80 }, { 200, 60 } } },
  { "Wing, outline crosses itself",   { { 100, 0 }, { 190, 300 }, { 110, 300 }, { 200, 150 }, { 200, 0 } } },
  { "Wing, crosses the centre line",  { { 100, -20 }, { 110, 300 }, { 190, 300 }, { 195, 100 }, { 200, -20 } } },
  { "Wing, encloses nothing",         { { 100, 0 }, { 110, 300 }, { 100, 0 }, { 110, 300 }, { 100, 0 } } },
};

START_TEST (the_list_says_what_is_wrong_with_an_outline)
{
  replace_wing (polygon (faulty_wings[_i].nodes, G_N_ELEMENTS (faulty_wings[_i].nodes)));
  find (faulty_wings[_i].says);
}
END_TEST

START_TEST (move_to_aim_puts_the_margin_on_the_aim_where_the_rail_reaches)
{
  trammel_session_select (stage.session, selection_of ("battery"));
  gui_settle ();
  press ("Move to Aim");
  ck_assert_double_eq_tol (trammel_session_figures (stage.session)->balance.static_margin_percent,
                           aeroplane_traits (trammel_session_aeroplane (stage.session)).target.aim, 1e-6);
}
END_TEST

START_TEST (a_rail_can_be_taken_away_and_given_again)
{
  trammel_session_select (stage.session, selection_of ("battery"));
  gui_settle ();
  press ("Remove Rail");
  ck_assert (!battery ()->has_rail);
  press ("Add a Rail");
  ck_assert (battery ()->has_rail);
  ck_assert_double_eq (battery ()->rail_to - battery ()->rail_from, 60);
}
END_TEST

START_TEST (a_rails_end_does_not_pass_the_other)
{
  trammel_session_select (stage.session, selection_of ("battery"));
  gui_settle ();
  const double from = battery ()->rail_from;

  retype ("Forward end, mm", "900");
  ck_assert_double_eq (battery ()->rail_from, from);
  find ("The forward end lies ahead of the aft end.");
}
END_TEST

START_TEST (the_part_is_pulled_along_its_drawn_rail_by_pointer_and_arrow)
{
  GtkWidget *picture;

  trammel_session_select (stage.session, selection_of ("battery"));
  gui_settle ();
  gtk_widget_grab_focus (find ("Move to Aim"));
  gui_settle ();
  picture = find ("At 124\u00a0mm on a rail from 82\u00a0mm to 134\u00a0mm");
  gui_drag (picture, (GuiDrag) { gtk_widget_get_width (picture) * 0.7, 35, 5, 35 });
  ck_assert_double_eq (battery ()->x, 82);
  ck_assert_str_eq (trammel_session_undo_label (stage.session), "Move Part");
  gtk_widget_grab_focus (picture);
  gui_key ("<Shift>Right");
  ck_assert_double_eq (battery ()->x, 92);
  gui_key ("Left");
  ck_assert_double_eq (battery ()->x, 91);
}
END_TEST

START_TEST (arrows_on_the_drawn_rail_are_one_step_until_they_are_let_go)
{
  GtkWidget *picture;

  trammel_session_select (stage.session, selection_of ("battery"));
  gui_settle ();
  picture = find ("At 124\u00a0mm on a rail from 82\u00a0mm to 134\u00a0mm");
  gtk_widget_grab_focus (picture);
  gui_settle ();
  gui_key_down ("Shift_L");
  gui_key_down ("Left");
  gui_key_up ("Shift_L");
  gui_key_down ("Right");
  ck_assert_double_eq (battery ()->x, 115);
  ck_assert_ptr_null (trammel_session_undo_label (stage.session));
  gui_key_up ("Right");
  gui_key_up ("Left");
  ck_assert_str_eq (trammel_session_undo_label (stage.session), "Move Part");
  trammel_session_undo (stage.session);
  ck_assert_double_eq (battery ()->x, 124);
  ck_assert_ptr_null (trammel_session_undo_label (stage.session));
}
END_TEST

START_TEST (what_is_left_out_no_longer_weighs)
{
  const double total = trammel_session_figures (stage.session)->mass.total_g;
  const double mass = battery ()->mass;

  trammel_session_select (stage.session, selection_of ("battery"));
  gui_settle ();
  gtk_widget_grab_focus (beside ("In Flight"));
  gui_key ("space");
  gui_key ("Down");
  gui_key ("Return");
  ck_assert (!battery ()->aboard);
  ck_assert_double_eq_tol (trammel_session_figures (stage.session)->mass.total_g, total - mass, 1e-9);
}
END_TEST

START_TEST (a_nodes_kind_and_place_can_be_chosen)
{
  trammel_session_select (stage.session, selection_of_node (wing ()->piece.id, false, 1));
  gui_settle ();
  press ("Corner");
  ck_assert_int_eq (outline_node_kind (wing ()->outline, 1), NODE_CORNER);
  retype ("Station, mm", "330");
  ck_assert_double_eq (outline_node (wing ()->outline, 1).y, 330);
  retype ("Station, mm", "-2");
  find ("A station lies between the centre line and 20 m from it.");
  ck_assert_double_eq (outline_node (wing ()->outline, 1).y, 330);
}
END_TEST

START_TEST (the_wanted_band_keeps_its_order)
{
  press ("Change the wanted static margin");
  retype ("Aim, %", "10");
  ck_assert_double_eq (aeroplane_traits (trammel_session_aeroplane (stage.session)).target.aim, 10);
  retype ("Least, %", "40");
  ck_assert_double_eq (aeroplane_traits (trammel_session_aeroplane (stage.session)).target.from, 5);
  gui_key ("Escape");      /* puts the field back */
  gui_key ("Escape");      /* closes the popover */
}
END_TEST

START_TEST (the_marks_station_can_be_typed_beside_the_answer)
{
  press ("Change the station of the balance mark");
  gui_key ("<Control>a");
  gui_type ("45");
  gui_key ("Return");
  ck_assert_double_eq (trammel_session_figures (stage.session)->balance.marks[0].station_mm, 45);
  gui_key ("Escape");
}
END_TEST

START_TEST (inches_and_ounces_are_shown_apart_as_chosen)
{
  trammel_session_select (stage.session, selection_of ("battery"));
  trammel_settings_set_units (stage.settings, (Units) { LENGTH_INCH, MASS_G });
  gui_settle ();
  ck_assert_str_eq (gtk_editable_get_text (GTK_EDITABLE (find ("Mass, g"))), "27");
  retype ("Middle, aft of datum, in", "4 1/2");
  ck_assert_double_eq (battery ()->x, 4.5 * 25.4);
}
END_TEST

START_TEST (a_finding_selects_what_it_speaks_of_or_says_nothing_needs_a_change)
{
  press ("Findings");
  const GPtrArray *notes = trammel_session_figures (stage.session)->notes;

  for (guint i = 0; i < notes->len; i++) {
    const Note *note = g_ptr_array_index (notes, i);

    if (note->piece == NULL || note->piece->id == NULL)
      continue;
    g_autofree char *id = g_strdup (note->piece->id);

    press (note->text);
    ck_assert_str_eq (selection_single (trammel_session_selection (stage.session)), id);
    return;
  }
}
END_TEST

/* Its middle still within the body, its side through it. */
START_TEST (a_part_without_room_counts_among_what_needs_a_change)
{
  const Part *pack = battery ();

  find ("Findings");
  trammel_session_do (stage.session, change_part_place (trammel_session_aeroplane (stage.session), "battery", pack->x, 18, pack->z), "Move Part");
  gui_settle ();
  find ("Findings, 1 needs a change");
  trammel_session_undo (stage.session);
  gui_settle ();
  find ("Findings");
}
END_TEST

static double
top_of (GtkWidget *widget)
{
  graphene_rect_t place;

  ck_assert (gtk_widget_compute_bounds (widget, GTK_WIDGET (stage.window), &place));
  return place.origin.y;
}

static Aeroplane *
with_hatch_on (HatchSide side)
{
  AeroplaneTraits traits = aeroplane_traits (trammel_session_aeroplane (stage.session));

  traits.hatch = side;
  return aeroplane_with_traits (trammel_session_aeroplane (stage.session), traits);
}

/* The example's wing lies beneath its battery. */
START_TEST (what_hinders_a_hatch_is_to_be_looked_at_and_stands_first_on_its_batterys_page)
{
  const char *words = "The wing lies across the hatch on the bottom: let it open on the top, or let the wing come off.";

  choose ("battery");
  ck_assert_ptr_null (gui_find (GTK_WIDGET (stage.window), words));
  trammel_session_do (stage.session, with_hatch_on (HATCH_ON_BOTTOM), "Change Where the Hatch Opens");
  gui_settle ();
  find ("Findings, 1 to look at");
  ck_assert_double_lt (top_of (find (words)), top_of (find ("Part")));
  trammel_session_undo (stage.session);
  gui_settle ();
  find ("Findings");
  ck_assert_ptr_null (gui_find (GTK_WIDGET (stage.window), words));
}
END_TEST

START_TEST (a_wing_from_numbers_is_drawn_while_typing_and_one_step)
{
  press ("Add Outline…");
  ck_assert_ptr_nonnull (wing ());       /* drawn already, as a proposal */
  gtk_widget_grab_focus (find ("Span"));
  gui_key ("<Control>a");
  gui_type ("700");
  ck_assert_double_eq_tol (wing_span (), 700, 1e-9);
  press ("Add to the Sheet");
  ck_assert_str_eq (trammel_session_undo_label (stage.session), "Add Wing");
  ck_assert_str_eq (selection_single (trammel_session_selection (stage.session)), wing ()->piece.id);
  trammel_session_undo (stage.session);
  ck_assert_ptr_null (wing ());
}
END_TEST

START_TEST (numbers_given_up_leave_the_sheet_as_it_was)
{
  press ("Add Outline…");
  ck_assert_ptr_nonnull (wing ());
  gui_key ("Escape");
  ck_assert_ptr_null (wing ());
  ck_assert_ptr_null (trammel_session_undo_label (stage.session));
}
END_TEST

START_TEST (numbers_that_enclose_nothing_say_so_and_cannot_be_added)
{
  press ("Add Outline…");
  gtk_widget_grab_focus (find ("Span"));
  gui_key ("<Control>a");
  gui_type ("0");
  ck_assert (!gtk_widget_is_sensitive (find ("Add to the Sheet")));
  ck_assert_ptr_null (wing ());
  find ("“Span” must be above zero.");
  gui_key ("Escape");
}
END_TEST

START_TEST (an_ellipse_without_any_depth_names_its_semi_axes)
{
  press ("Add Outline…");
  for (int i = 0; i < 2; i++) {
    gtk_widget_grab_focus (beside (i == 0 ? "Ahead of the widest line" : "Behind the widest line"));
    gui_settle ();
    gui_key ("<Control>a");
    gui_type ("0");
  }
  find ("“Ahead of the widest line” and “Behind the widest line” cannot both be zero.");
  gui_type ("20");
  ck_assert (gtk_widget_is_sensitive (find ("Add to the Sheet")));
  gui_key ("Escape");
}
END_TEST

START_TEST (five_parts_come_with_their_usual_mass_and_place)
{
  static const char *const names[] = { "Motor", "Battery", "Speed Controller", "Receiver", "Servo" };

  for (size_t i = 0; i < G_N_ELEMENTS (names); i++) {
    press ("Add a Part");
    press (names[i]);
    ck_assert_ptr_nonnull (trammel_session_selected_part (stage.session));
    ck_assert_double_gt (trammel_session_selected_part (stage.session)->mass, 0);
  }
  ck_assert_uint_eq (aeroplane_count (trammel_session_aeroplane (stage.session), PIECE_PART), 5);
}
END_TEST

START_TEST (a_part_changes_class_and_a_surface_its_role_as_steps)
{
  trammel_session_select (stage.session, selection_of (wing ()->piece.id));
  gui_settle ();
  gtk_drop_down_set_selected (GTK_DROP_DOWN (gui_find_type (GTK_WIDGET (stage.window), GTK_TYPE_DROP_DOWN)), ROLE_FOREPLANE);
  ck_assert_str_eq (trammel_session_undo_label (stage.session), "Change What It Is");
  trammel_session_undo (stage.session);
  ck_assert_int_eq (wing ()->role, ROLE_WING);
}
END_TEST

static Suite *
panel_suite (void)
{
  Suite *suite = suite_create ("panel");
  TCase *with = tcase_create ("example"), *empty = tcase_create ("empty");

  tcase_add_checked_fixture (with, stage_raise, stage_strike);
  tcase_set_timeout (with, 60);
  tcase_add_test (with, a_typed_span_is_the_wings_to_the_last_digit_and_one_step_to_undo);
  tcase_add_test (with, the_first_sight_is_the_answer_and_the_rows_follow);
  tcase_add_test (with, what_is_typed_before_the_rows_are_seen_goes_into_the_first);
  tcase_add_test (with, an_inch_fraction_is_kept_exactly);
  tcase_add_test (with, a_number_that_may_be_a_thousand_is_asked_about_and_nothing_changes);
  tcase_add_test (with, a_mass_below_zero_is_refused_with_a_sentence);
  tcase_add_test (with, ctrl_z_in_a_field_undoes_the_value_just_typed);
  tcase_add_test (with, half_typed_text_does_not_land_on_what_is_selected_next);
  tcase_add_test (with, a_row_of_the_list_selects_its_thing_and_the_rows_follow);
  tcase_add_loop_test (with, the_list_says_what_is_wrong_with_an_outline, 0, G_N_ELEMENTS (faulty_wings));
  tcase_add_test (with, move_to_aim_puts_the_margin_on_the_aim_where_the_rail_reaches);
  tcase_add_test (with, a_rail_can_be_taken_away_and_given_again);
  tcase_add_test (with, a_rails_end_does_not_pass_the_other);
  tcase_add_test (with, the_part_is_pulled_along_its_drawn_rail_by_pointer_and_arrow);
  tcase_add_test (with, arrows_on_the_drawn_rail_are_one_step_until_they_are_let_go);
  tcase_add_test (with, what_is_left_out_no_longer_weighs);
  tcase_add_test (with, a_nodes_kind_and_place_can_be_chosen);
  tcase_add_test (with, the_wanted_band_keeps_its_order);
  tcase_add_test (with, the_marks_station_can_be_typed_beside_the_answer);
  tcase_add_test (with, inches_and_ounces_are_shown_apart_as_chosen);
  tcase_add_test (with, a_finding_selects_what_it_speaks_of_or_says_nothing_needs_a_change);
  tcase_add_test (with, a_part_without_room_counts_among_what_needs_a_change);
  tcase_add_test (with, what_hinders_a_hatch_is_to_be_looked_at_and_stands_first_on_its_batterys_page);
  tcase_add_test (with, a_part_changes_class_and_a_surface_its_role_as_steps);
  suite_add_tcase (suite, with);
  tcase_add_checked_fixture (empty, stage_raise_empty, stage_strike);
  tcase_set_timeout (empty, 60);
  tcase_add_test (empty, a_wing_from_numbers_is_drawn_while_typing_and_one_step);
  tcase_add_test (empty, numbers_given_up_leave_the_sheet_as_it_was);
  tcase_add_test (empty, numbers_that_enclose_nothing_say_so_and_cannot_be_added);
  tcase_add_test (empty, an_ellipse_without_any_depth_names_its_semi_axes);
  tcase_add_test (empty, five_parts_come_with_their_usual_mass_and_place);
  suite_add_tcase (suite, empty);
  return suite;
}

int
main (void)
{
  gui_begin ();
  return gui_run (panel_suite ());
}
