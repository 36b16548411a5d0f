/* Editing in real windows: undo and redo, the clipboard within and between windows, deleting, what the header says of it. */
#include "support/stage.h"
#include <string.h>
#include "app/strip.h"
#include "document/changes.h"

static TrammelWindow *
racer (void)
{
  return stage_open (stage_example ("saltmarsh-racer", "racer.trammel"));
}

static void
select_piece (TrammelWindow *window, const char *id)
{
  trammel_session_select (trammel_window_session (window), selection_of (id));
  gui_settle ();
}

/* The keyboard on the sheet, as after a click there; on the panel's first field it would be the field's. */
static void
focus_sheet (TrammelWindow *window)
{
  GtkWidget *sheet = gui_await (GTK_WIDGET (window), "Sheet");

  gtk_widget_grab_focus (sheet);
  gui_settle ();
}

static size_t
part_count (TrammelWindow *window)
{
  return aeroplane_count (stage_aeroplane (window), PIECE_PART);
}

static bool
has_more_parts (gpointer window)
{
  return part_count (window) > 10;
}

START_TEST (delete_takes_a_part_out_and_the_toast_brings_it_back)
{
  TrammelWindow *window = racer ();
  const size_t parts = part_count (window);

  select_piece (window, "battery");
  focus_sheet (window);
  gui_key ("Delete");
  ck_assert_uint_eq (part_count (window), parts - 1);
  ck_assert_str_eq (stage_state (window), "Edited");
  gui_await (GTK_WIDGET (window), "Battery 2S 450 deleted");
  gui_click (gui_await (GTK_WIDGET (window), "Undo"));
  ck_assert_uint_eq (part_count (window), parts);
  ck_assert_str_eq (stage_state (window), "");
}
END_TEST

START_TEST (what_a_field_cannot_take_is_said_beside_it_and_once_more_when_the_field_goes)
{
  static const char sentence[] = "“abc” is not a length. Write one such as 36 mm or 1 7/16 in. Span stays 640\u00a0mm.";
  TrammelWindow *window = racer ();

  select_piece (window, "wing");
  gtk_widget_grab_focus (gui_await (GTK_WIDGET (window), "Span, mm"));
  gui_key ("<Control>a");
  gui_type ("abc\t");
  gui_await (GTK_WIDGET (window), sentence);
  ck_assert_ptr_null (gui_find_type (GTK_WIDGET (window), TRAMMEL_TYPE_STRIP));
  select_piece (window, "battery");
  ck_assert_ptr_null (gui_find (GTK_WIDGET (window), "Span"));
  gui_await (GTK_WIDGET (window), sentence);      /* over the sheet, which stays where it is */
  ck_assert_ptr_null (gui_find_type (GTK_WIDGET (window), TRAMMEL_TYPE_STRIP));
  ck_assert_str_eq (stage_state (window), "");
}
END_TEST

START_TEST (a_field_given_up_by_escape_is_not_spoken_of)
{
  TrammelWindow *window = racer ();

  select_piece (window, "wing");
  gtk_widget_grab_focus (gui_await (GTK_WIDGET (window), "Span, mm"));
  gui_key ("<Control>a");
  gui_type ("abc");
  gui_key ("Escape");
  select_piece (window, "battery");
  ck_assert_ptr_null (gui_find (GTK_WIDGET (window), "“abc” is not a length. Write one such as 36 mm or 1 7/16 in. Span stays 640\u00a0mm."));
}
END_TEST

START_TEST (a_servo_takes_its_pushrod_along_in_one_step_and_the_toast_says_so)
{
  TrammelWindow *window = racer ();
  const size_t parts = part_count (window);

  select_piece (window, "servo-elevator");
  focus_sheet (window);
  gui_key ("Delete");
  ck_assert_uint_eq (part_count (window), parts - 2);
  ck_assert_ptr_null (aeroplane_part_by_id (stage_aeroplane (window), "pushrod"));
  gui_await (GTK_WIDGET (window), "Servo, elevator deleted, with 1 part that served nothing else");
  gui_key ("<Control>z");
  ck_assert_uint_eq (part_count (window), parts);
  select_piece (window, "servo-elevator");
  focus_sheet (window);
  gui_key ("<Control>x");
  ck_assert_uint_eq (part_count (window), parts - 1);
}
END_TEST

START_TEST (undo_and_redo_follow_their_keys_and_name_the_step)
{
  TrammelWindow *window = racer ();
  const size_t parts = part_count (window);

  ck_assert (!gtk_widget_get_sensitive (gui_await (GTK_WIDGET (window), "Undo")));
  select_piece (window, "receiver");
  focus_sheet (window);
  gui_key ("Delete");
  gui_await (GTK_WIDGET (window), "Undo Delete Receiver");
  gui_key ("<Control>z");
  ck_assert_uint_eq (part_count (window), parts);
  gui_await (GTK_WIDGET (window), "Redo Delete Receiver");
  gui_key ("<Control><Shift>z");
  ck_assert_uint_eq (part_count (window), parts - 1);
  gui_click (gui_await (GTK_WIDGET (window), "Undo Delete Receiver"));
  ck_assert_uint_eq (part_count (window), parts);
  gui_key ("<Control>y");
  ck_assert_uint_eq (part_count (window), parts - 1);
  gui_key ("<Control>z");
  gui_click (gui_await (GTK_WIDGET (window), "Redo Delete Receiver"));
  ck_assert_uint_eq (part_count (window), parts - 1);
}
END_TEST

static char *
today (void)
{
  g_autoptr (GDateTime) now = g_date_time_new_now_local ();

  return g_date_time_format (now, "%Y-%m-%d");
}

static const char *
day_of_change (TrammelWindow *window)
{
  static char day[11];

  g_strlcpy (day, aeroplane_traits (stage_aeroplane (window)).changed, sizeof day);
  return day;
}

/* Told once a step is made: what is dragged has no day yet. Midnight may come between two looks at the clock. */
START_TEST (a_step_is_of_its_day_and_undone_is_of_the_day_before)
{
  TrammelWindow *window = racer ();
  TrammelSession *session = trammel_window_session (window);
  g_autofree char *before = g_strdup (day_of_change (window)), *day = today (), *later = NULL;

  ck_assert_str_ne (before, day);
  trammel_session_preview (session, change_part_aboard (stage_aeroplane (window), "battery", false));
  ck_assert_str_eq (day_of_change (window), before);
  trammel_session_settle (session, "Remove Battery");
  later = today ();
  ck_assert_msg (g_str_equal (day_of_change (window), day) || g_str_equal (day_of_change (window), later), "%s", day_of_change (window));
  gui_key ("<Control>z");
  ck_assert_str_eq (day_of_change (window), before);
  select_piece (window, "battery");
  focus_sheet (window);
  gui_key ("Delete");
  ck_assert_str_ne (day_of_change (window), before);
}
END_TEST

START_TEST (the_offer_to_undo_goes_with_the_next_step)
{
  TrammelWindow *window = racer ();

  select_piece (window, "receiver");
  focus_sheet (window);
  gui_key ("Delete");
  gui_await (GTK_WIDGET (window), "Receiver deleted");
  select_piece (window, "battery");
  gui_key ("Delete");
  gui_wait_ms (400);              /* well before the first would go by itself */
  ck_assert_ptr_nonnull (gui_find (GTK_WIDGET (window), "Battery 2S 450 deleted"));
  ck_assert_ptr_null (gui_find (GTK_WIDGET (window), "Receiver deleted"));
}
END_TEST

START_TEST (copy_and_paste_makes_a_second_part_aside_in_one_step)
{
  TrammelWindow *window = racer ();
  const size_t parts = part_count (window);
  const Part *battery, *copy;

  select_piece (window, "battery");
  focus_sheet (window);
  gui_key ("<Control>c");
  gui_key ("<Control>v");
  ck_assert (gui_wait (has_more_parts, window));
  ck_assert_uint_eq (part_count (window), parts + 1);
  battery = aeroplane_part_by_id (stage_aeroplane (window), "battery");
  copy = trammel_session_selected_part (trammel_window_session (window));
  ck_assert_str_eq (copy->piece.id, "battery-2");
  ck_assert_double_eq_tol (copy->x - battery->x, 10, 1e-9);
  gui_key ("<Control>z");
  ck_assert_uint_eq (part_count (window), parts);
}
END_TEST

/* The example's tail weighs 4 g, its body 34 g. */
static const struct { const char *ids[2], *says; double more; } copied[] = {
  { { "tail", NULL },   "Pasted with its structure, 4\u00a0g more",      4 },
  { { "tail", "body" }, "Pasted with their structures, 38\u00a0g more", 38 },
};

START_TEST (a_copy_says_what_its_structure_adds_and_offers_to_take_it_back)
{
  TrammelWindow *window = racer ();
  TrammelSession *session = trammel_window_session (window);
  const double before = trammel_session_figures (session)->mass.total_g;
  Selection chosen = selection_of (copied[_i].ids[0]);

  if (copied[_i].ids[1] != NULL)
    selection_toggle (&chosen, copied[_i].ids[1]);
  trammel_session_select (session, chosen);
  focus_sheet (window);
  gui_key ("<Control>c");
  gui_key ("<Control>v");
  gui_await (GTK_WIDGET (window), copied[_i].says);
  ck_assert_double_eq_tol (trammel_session_figures (session)->mass.total_g, before + copied[_i].more, 1e-9);
  gui_wait_ms (400);              /* until it has slid in */
  gui_click (gui_await (GTK_WIDGET (window), "Undo"));
  ck_assert_double_eq (trammel_session_figures (session)->mass.total_g, before);
}
END_TEST

typedef struct { TrammelWindow *window; size_t surfaces; } Expected;

static bool
has_surfaces (gpointer data)
{
  const Expected *expected = data;

  return aeroplane_count (stage_aeroplane (expected->window), PIECE_SURFACE) == expected->surfaces;
}

START_TEST (cut_in_one_window_pastes_in_another_with_its_structure)
{
  TrammelWindow *from = racer (), *to;
  const size_t surfaces = aeroplane_count (stage_aeroplane (from), PIECE_SURFACE);
  g_autoptr (Aeroplane) before = aeroplane_ref (stage_aeroplane (from));

  select_piece (from, "tail");
  focus_sheet (from);
  gui_key ("<Control>x");
  ck_assert_uint_eq (aeroplane_count (stage_aeroplane (from), PIECE_SURFACE), surfaces - 1);
  gui_key ("<Control>n");
  to = stage_window ("New Aeroplane");
  gui_click (gui_await (GTK_WIDGET (to), "Empty Sheet"));
  gui_key ("<Control>v");
  ck_assert (gui_wait (has_surfaces, &(Expected) { to, 1 }));
  ck_assert (piece_equal (aeroplane_find (stage_aeroplane (to), "tail"), aeroplane_find (before, "tail")));
  ck_assert_str_eq (stage_state (to), "Not yet saved");
  gui_key ("<Control>z");
  ck_assert_uint_eq (aeroplane_piece_count (stage_aeroplane (to)), 0);
}
END_TEST

static bool
toast_is_there (gpointer window)
{
  return gui_find (window, "What was copied is no part of an aeroplane") != NULL;
}

/* px, from the left of the window: where a thing begins, or where it ends on the right. */
static float
edge_in (TrammelWindow *window, GtkWidget *widget, bool right)
{
  graphene_rect_t bounds;

  ck_assert (gtk_widget_compute_bounds (widget, GTK_WIDGET (window), &bounds));
  return bounds.origin.x + (right ? bounds.size.width : 0);
}

/* What a servo takes along needs a long sentence. */
START_TEST (a_toast_stands_over_the_sheet_and_leaves_the_foot_of_the_panel_free)
{
  TrammelWindow *window = racer ();
  GtkWidget *toast, *foot = gui_await (GTK_WIDGET (window), "Add Outline…");

  select_piece (window, "servo-elevator");
  focus_sheet (window);
  gui_key ("Delete");
  toast = gui_await (GTK_WIDGET (window), "Servo, elevator deleted, with 1 part that served nothing else");
  gui_settle ();
  ck_assert_float_lt (edge_in (window, toast, true), edge_in (window, foot, false));
  ck_assert (gtk_widget_get_mapped (foot));
}
END_TEST

START_TEST (foreign_text_is_refused_in_words_and_changes_nothing)
{
  TrammelWindow *window = racer ();

  gdk_clipboard_set_text (gtk_widget_get_clipboard (GTK_WIDGET (window)), "two eggs");
  focus_sheet (window);
  gui_key ("<Control>v");
  ck_assert (gui_wait (toast_is_there, window));
  ck_assert_str_eq (stage_state (window), "");
}
END_TEST

static void
text_arrived (GObject *clipboard, GAsyncResult *result, gpointer text)
{
  *(char **) text = gdk_clipboard_read_text_finish (GDK_CLIPBOARD (clipboard), result, NULL);
}

static bool
text_is_there (gpointer text)
{
  return *(char **) text != NULL;
}

START_TEST (a_copy_is_plain_text_too_and_that_text_can_be_pasted)
{
  TrammelWindow *window = racer ();
  const size_t parts = part_count (window);
  char *text = NULL;

  select_piece (window, "receiver");
  focus_sheet (window);
  gui_key ("<Control>c");
  gdk_clipboard_read_text_async (gtk_widget_get_clipboard (GTK_WIDGET (window)), NULL, text_arrived, &text);
  ck_assert (gui_wait (text_is_there, &text));
  ck_assert_ptr_nonnull (strstr (text, "<part id=\"receiver\""));
  gdk_clipboard_set_text (gtk_widget_get_clipboard (GTK_WIDGET (window)), text);
  g_free (text);
  gui_key ("<Control>v");
  ck_assert (gui_wait (has_more_parts, window));
  ck_assert_uint_eq (part_count (window), parts + 1);
}
END_TEST

START_TEST (select_all_takes_everything_and_delete_counts_it)
{
  TrammelWindow *window = racer ();
  Selection all;
  g_autofree char *sentence = NULL;
  size_t count = 0;

  focus_sheet (window);
  gui_key ("<Control>a");
  all = selection_copy (trammel_session_selection (trammel_window_session (window)));
  while (all.ids[count] != NULL)
    count++;
  ck_assert_uint_eq (count, aeroplane_count (stage_aeroplane (window), PIECE_SURFACE) + aeroplane_count (stage_aeroplane (window), PIECE_BODY)
                            + part_count (window));
  selection_clear (&all);
  gui_key ("Delete");
  sentence = g_strdup_printf ("%zu things deleted", count);
  gui_await (GTK_WIDGET (window), sentence);
  ck_assert_uint_eq (part_count (window), 0);
}
END_TEST

START_TEST (nodes_are_deleted_like_parts_and_their_outline_stays_selected)
{
  TrammelWindow *window = stage_open (stage_example ("heron-tourer", "heron.trammel"));
  TrammelSession *session = trammel_window_session (window);
  const size_t nodes = outline_node_count (aeroplane_surface_by_id (stage_aeroplane (window), "wing")->outline);

  trammel_session_select (session, selection_of_node ("wing", false, 2));
  focus_sheet (window);
  gui_key ("Delete");
  ck_assert_uint_eq (outline_node_count (aeroplane_surface_by_id (stage_aeroplane (window), "wing")->outline), nodes - 1);
  ck_assert_str_eq (selection_single (trammel_session_selection (session)), "wing");
  ck_assert_uint_eq (trammel_session_selection (session)->node_count, 0);
  gui_await (GTK_WIDGET (window), "Node deleted");
}
END_TEST

START_TEST (keys_in_a_field_belong_to_the_field)
{
  TrammelWindow *window = racer ();
  const size_t parts = part_count (window);
  GtkWidget *name;

  select_piece (window, "battery");
  name = gui_find_type (gui_await (GTK_WIDGET (window), "Selection"), GTK_TYPE_TEXT);
  if (name == NULL)
    name = gui_find_type (GTK_WIDGET (window), GTK_TYPE_TEXT);
  gtk_widget_grab_focus (name);
  gui_settle ();
  gui_key ("<Control>a");
  gui_key ("<Control>c");
  gui_key ("Delete");
  ck_assert_uint_eq (part_count (window), parts);
}
END_TEST

START_TEST (ctrl_z_in_the_field_of_a_bay_s_name_undoes_its_renaming)
{
  TrammelWindow *window = racer ();
  TrammelSession *session = trammel_window_session (window);

  trammel_session_do (session, aeroplane_with_added (stage_aeroplane (window), &bay_new ("hold", "F1", "F2")->piece), "Add Bay");
  select_piece (window, "hold");
  gtk_widget_grab_focus (gui_await (GTK_WIDGET (window), "Bay's name"));
  gui_settle ();
  gui_key ("<Control>a");
  gui_type ("nose");
  gui_key ("Return");
  gui_settle ();
  ck_assert_ptr_nonnull (aeroplane_find (stage_aeroplane (window), "nose"));
  gtk_widget_grab_focus (gui_await (GTK_WIDGET (window), "Bay's name"));
  gui_key ("<Control>z");
  gui_settle ();
  ck_assert_str_eq (trammel_session_redo_label (session), "Rename Bay");
  ck_assert_ptr_nonnull (aeroplane_find (stage_aeroplane (window), "hold"));
}
END_TEST

int
main (void)
{
  Suite *suite = suite_create ("window-edit");
  TCase *tests = tcase_create ("editing");

  gui_begin ();
  tcase_set_timeout (tests, 120);
  tcase_add_checked_fixture (tests, stage_raise, stage_strike);
  tcase_add_test (tests, delete_takes_a_part_out_and_the_toast_brings_it_back);
  tcase_add_test (tests, what_a_field_cannot_take_is_said_beside_it_and_once_more_when_the_field_goes);
  tcase_add_test (tests, a_field_given_up_by_escape_is_not_spoken_of);
  tcase_add_test (tests, a_toast_stands_over_the_sheet_and_leaves_the_foot_of_the_panel_free);
  tcase_add_test (tests, a_servo_takes_its_pushrod_along_in_one_step_and_the_toast_says_so);
  tcase_add_test (tests, undo_and_redo_follow_their_keys_and_name_the_step);
  tcase_add_test (tests, a_step_is_of_its_day_and_undone_is_of_the_day_before);
  tcase_add_test (tests, the_offer_to_undo_goes_with_the_next_step);
  tcase_add_test (tests, copy_and_paste_makes_a_second_part_aside_in_one_step);
  tcase_add_loop_test (tests, a_copy_says_what_its_structure_adds_and_offers_to_take_it_back, 0, G_N_ELEMENTS (copied));
  tcase_add_test (tests, cut_in_one_window_pastes_in_another_with_its_structure);
  tcase_add_test (tests, foreign_text_is_refused_in_words_and_changes_nothing);
  tcase_add_test (tests, a_copy_is_plain_text_too_and_that_text_can_be_pasted);
  tcase_add_test (tests, select_all_takes_everything_and_delete_counts_it);
  tcase_add_test (tests, nodes_are_deleted_like_parts_and_their_outline_stays_selected);
  tcase_add_test (tests, ctrl_z_in_the_field_of_a_bay_s_name_undoes_its_renaming);
  tcase_add_test (tests, keys_in_a_field_belong_to_the_field);
  suite_add_tcase (suite, tests);
  return gui_run (suite);
}
