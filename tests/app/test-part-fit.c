/* The usual fit and the kind of a part in the real window: each one step, and what it does to the balance is said before. */
#include <math.h>
#include "document/catalogue.h"
#include "document/changes.h"
#include "figures/advice-state.h"
#include "figures/unweighed.h"
#include "figures/usual-whole.h"
#include "support/sheet-hand.h"

static GtkWidget *
window (void)
{
  return GTK_WIDGET (hand_window ());
}

static void
show_panel (void)
{
  g_action_group_change_action_state (G_ACTION_GROUP (hand_window ()), "show-panel", g_variant_new_boolean (TRUE));
  hand_await_layout ();
}

/* The racer with neither parts nor, when so asked, structures. */
static void
begin_bare (bool structures)
{
  Aeroplane *bare = aeroplane_ref (hand_aeroplane ());

  for (size_t i = aeroplane_piece_count (bare); i-- > 0;) {
    const Piece *piece = aeroplane_piece (bare, i);

    if (piece->kind == PIECE_PART || piece->kind == PIECE_LEAD || (!structures && piece->kind == PIECE_STRUCTURE)) {
      Aeroplane *next = aeroplane_without (bare, piece);

      aeroplane_unref (bare);
      bare = next;
    }
  }
  trammel_session_open (hand_session (), bare, NULL);
  gui_settle ();
}

/* What lies below the fold is brought into view first, as the keyboard does. */
static void
open_kinds (const char *id)
{
  GtkWidget *button;

  trammel_session_select (hand_session (), selection_of (id));
  show_panel ();
  button = gtk_widget_get_next_sibling (gui_await (window (), "Kind"));
  gtk_widget_grab_focus (button);
  gui_settle ();
  gui_click (button);
}

static GAction *
fit_action (void)
{
  return g_action_map_lookup_action (G_ACTION_MAP (hand_window ()), "usual-fit");
}

START_TEST (the_usual_fit_is_offered_while_there_are_no_parts)
{
  show_panel ();
  ck_assert_ptr_null (gui_find (window (), "Usual Fit…"));
  ck_assert (!g_action_get_enabled (fit_action ()));
  begin_bare (true);
  gui_await (window (), "Usual Fit…");
  ck_assert (g_action_get_enabled (fit_action ()));
}
END_TEST

START_TEST (a_choice_puts_all_parts_in_one_step)
{
  g_autofree char *before = NULL;

  begin_bare (true);
  before = hand_text ();
  g_action_activate (fit_action (), NULL);
  gui_click (gui_await (window (), "Motor, elevator and ailerons by two servos"));
  ck_assert_uint_ge (aeroplane_count (hand_aeroplane (), PIECE_PART), 8);
  ck_assert_ptr_nonnull (hand_part ("servo-left"));
  ck_assert (hand_part ("battery")->has_rail);
  ck_assert (!g_action_get_enabled (fit_action ()));
  hand_undoes ("Usual Fit", before);
}
END_TEST

START_TEST (each_choice_says_what_it_adds)
{
  g_autofree char *mass = NULL;
  g_autoptr (Catalogue) catalogue = catalogue_load (NULL);
  g_autoptr (Aeroplane) fitted = NULL;

  begin_bare (true);
  fitted = usual_fit (hand_aeroplane (), catalogue, FIT_GLIDER_ALL, false);
  mass = units_mass (trammel_session_units (hand_session ()), parts_mass (fitted));
  g_action_activate (fit_action (), NULL);
  gui_await (window (), "Glider: rudder, elevator and ailerons");
  gui_await (window (), mass);
  gui_key ("Escape");
}
END_TEST

/* Nothing drawn weighs anything: the airframe comes first, and what then stands balances as far as the rail lets it. */
START_TEST (with_the_usual_airframe_the_fit_is_one_step_and_balances)
{
  g_autofree char *before = NULL;
  const Solution *solution;

  begin_bare (false);
  before = hand_text ();
  g_action_activate (fit_action (), NULL);
  gui_await (window (), "Motor, rudder, elevator and ailerons");
  gui_click (gui_await (window (), "Motor, elevator and ailerons by two servos"));
  ck_assert_uint_eq (unweighed_pieces (hand_aeroplane (), NULL, 0), 0);
  ck_assert (trammel_session_advice (hand_session ())->has_margin);
  solution = figures_solution (trammel_session_figures (hand_session ()), "battery");
  ck_assert_double_eq_tol (hand_part ("battery")->x, CLAMP (solution->x_mm, solution->part->rail_from, solution->part->rail_to), 0.5);
  hand_undoes ("Usual Fit", before);
}
END_TEST

START_TEST (without_the_airframe_the_answer_names_no_margin_and_offers_what_is_missing)
{
  begin_bare (false);
  g_autoptr (Aeroplane) built = usual_airframe (hand_aeroplane ());
  g_autofree char *mass = units_mass (trammel_session_units (hand_session ()), structures_mass (built));
  g_autofree char *check = g_strdup_printf ("With the usual airframe, about %s", mass);
  g_action_activate (fit_action (), NULL);
  gui_click (gui_await (window (), check));
  gui_settle ();
  gui_click (gui_await (window (), "Motor, elevator and ailerons by two servos"));
  ck_assert_uint_eq (aeroplane_count (hand_aeroplane (), PIECE_STRUCTURE), 0);
  ck_assert (!trammel_session_advice (hand_session ())->has_margin);
  gui_await (window (), "parts alone");
  g_autofree char *before = hand_text ();
  gui_click (gui_await (window (), "Usual Airframe"));
  ck_assert_uint_eq (unweighed_pieces (hand_aeroplane (), NULL, 0), 0);
  ck_assert (trammel_session_advice (hand_session ())->has_margin);
  ck_assert_double_eq_tol (hand_part ("battery")->x, advice_place_x_mm (figures_solution (trammel_session_figures (hand_session ()), "battery")), 0.5);
  hand_undoes ("Usual Airframe", before);
}
END_TEST

START_TEST (a_rudder_without_a_fin_is_said_to_be_left_out)
{
  begin_bare (false);
  trammel_session_do (hand_session (), aeroplane_without_dependents (hand_aeroplane (), aeroplane_find (hand_aeroplane (), "fin")), "Delete");
  g_action_activate (fit_action (), NULL);
  gui_await (window (), "No fin is drawn: the rudder's servo is left out.");
  gui_key ("Escape");
}
END_TEST

/* Out of the band the answer itself does what it asks for. */
START_TEST (what_stands_out_of_the_band_is_moved_by_the_answer_in_one_step)
{
  g_autofree char *before = NULL;
  const Part *battery = hand_part ("battery");

  show_panel ();
  trammel_session_do (hand_session (), change_part_place (hand_aeroplane (), "battery", battery->rail_to + 60, battery->y, battery->z), "Move");
  gui_settle ();
  before = hand_text ();
  ck_assert_ptr_nonnull (trammel_session_advice (hand_session ())->to_move);
  gui_click (gui_await (window (), "Move to Aim"));
  ck_assert_ptr_null (trammel_session_advice (hand_session ())->to_move);
  ck_assert_double_eq_tol (hand_part ("battery")->x, advice_place_x_mm (figures_solution (trammel_session_figures (hand_session ()), "battery")), 0.1);
  hand_undoes ("Move to Aim", before);
}
END_TEST

START_TEST (another_kind_changes_mass_size_and_name_and_keeps_the_place)
{
  g_autofree char *before = hand_text ();
  const double x = hand_part ("battery")->x;

  open_kinds ("battery");
  gui_click (gui_await (window (), "Battery 2S 300 mAh"));
  ck_assert_str_eq (hand_part ("battery")->kind, "battery-2s-300");
  ck_assert_str_eq (hand_part ("battery")->name, "Battery 2S 300 mAh");
  ck_assert_double_eq (hand_part ("battery")->mass, 18);
  ck_assert_double_eq (hand_part ("battery")->length, 45);
  ck_assert_double_eq (hand_part ("battery")->x, x);
  ck_assert (hand_part ("battery")->has_rail);
  hand_undoes ("Change Kind", before);
}
END_TEST

/* The words of the row, from figures of an aeroplane changed by hand. */
START_TEST (a_kind_says_where_the_battery_then_belongs)
{
  g_autoptr (Catalogue) catalogue = catalogue_load (NULL);
  FiguresCache *cache = figures_cache_new ();
  const CatalogueEntry *heavier = catalogue_find (catalogue, "motor-28x18");
  g_autoptr (Aeroplane) changed = catalogue_change_kind (catalogue, hand_aeroplane (), "motor", heavier);
  g_autoptr (Figures) before = figures_of (cache, hand_aeroplane ()), after = figures_of (cache, changed);
  const double aft = figures_solution (after, "battery")->x_mm - figures_solution (before, "battery")->x_mm;
  g_autofree char *length = units_length (trammel_session_units (hand_session ()), aft);
  g_autofree char *words = g_strdup_printf ("The battery then belongs %s further aft.", length);

  ck_assert_double_gt (aft, 5);          /* a heavier nose wants the pack further back */
  open_kinds ("motor");
  gui_await (window (), words);
  gui_key ("Escape");
  figures_cache_free (cache);
}
END_TEST

START_TEST (an_all_up_mass_typed_becomes_structures_in_one_step)
{
  GtkWidget *entry;

  begin_bare (false);
  show_panel ();
  entry = gui_await (window (), "All-up mass, g");
  gui_click (entry);
  gui_key ("<Control>a");
  gui_type ("80");
  gui_key ("Return");
  ck_assert_double_eq_tol (trammel_session_figures (hand_session ())->mass.total_g, 80, 1e-6);
  ck_assert_uint_eq (aeroplane_count (hand_aeroplane (), PIECE_STRUCTURE), 5);
  ck_assert_str_eq (trammel_session_undo_label (hand_session ()), "Share Out All-Up Mass");
}
END_TEST

int
main (void)
{
  TCase *tests = tcase_create ("part fit");

  tcase_add_test (tests, the_usual_fit_is_offered_while_there_are_no_parts);
  tcase_add_test (tests, a_choice_puts_all_parts_in_one_step);
  tcase_add_test (tests, each_choice_says_what_it_adds);
  tcase_add_test (tests, with_the_usual_airframe_the_fit_is_one_step_and_balances);
  tcase_add_test (tests, without_the_airframe_the_answer_names_no_margin_and_offers_what_is_missing);
  tcase_add_test (tests, a_rudder_without_a_fin_is_said_to_be_left_out);
  tcase_add_test (tests, what_stands_out_of_the_band_is_moved_by_the_answer_in_one_step);
  tcase_add_test (tests, another_kind_changes_mass_size_and_name_and_keeps_the_place);
  tcase_add_test (tests, a_kind_says_where_the_battery_then_belongs);
  tcase_add_test (tests, an_all_up_mass_typed_becomes_structures_in_one_step);
  return hand_run ("part fit", (TCase *[]) { tests }, 1);
}
