/* The panel's list of all that there is. */
#include "app/object-list.h"
#include "support/sheet-hand.h"

static bool
list_is_there (gpointer data)
{
  return gui_find_type (GTK_WIDGET (hand_window ()), TRAMMEL_TYPE_OBJECT_LIST) != NULL;
}

static GtkListBoxRow *
row_nth (int number)
{
  GtkWidget *list = gui_find_type (gui_find_type (GTK_WIDGET (hand_window ()), TRAMMEL_TYPE_OBJECT_LIST), GTK_TYPE_LIST_BOX);

  return gtk_list_box_get_row_at_index (GTK_LIST_BOX (list), number);
}

static GtkListBoxRow *
row_chosen (void)
{
  for (int i = 0; row_nth (i) != NULL; i++)
    if (gtk_list_box_row_is_selected (row_nth (i)))
      return row_nth (i);
  return NULL;
}

/* All of it lies within the part of the page that is seen. */
static bool
is_in_sight (gpointer row)
{
  GtkWidget *scroller = gtk_widget_get_ancestor (row, GTK_TYPE_SCROLLED_WINDOW);
  graphene_rect_t place;

  return gtk_widget_compute_bounds (row, scroller, &place) && place.origin.y >= 0
         && place.origin.y + place.size.height <= gtk_widget_get_height (scroller);
}

static void
choose (int number)
{
  GtkWidget *row = GTK_WIDGET (row_nth (number));

  gtk_widget_grab_focus (row);
  gui_settle ();
  ck_assert (gui_wait (is_in_sight, row));
  gui_click (row);
}

START_TEST (a_row_that_is_chosen_stays_in_sight_though_the_page_above_it_is_another)
{
  static const int numbers[] = { 0, 3, 8, 1 };

  g_action_group_change_action_state (G_ACTION_GROUP (hand_window ()), "show-panel", g_variant_new_boolean (TRUE));
  ck_assert (gui_wait (list_is_there, NULL));
  for (size_t i = 0; i < G_N_ELEMENTS (numbers); i++) {
    choose (numbers[i]);
    gui_settle ();
    ck_assert_ptr_nonnull (row_chosen ());
    ck_assert (gui_wait (is_in_sight, row_chosen ()));
    gui_wait_ms (100);
    ck_assert (is_in_sight (row_chosen ()));
    ck_assert (gtk_widget_has_focus (GTK_WIDGET (row_chosen ())));
  }
}
END_TEST

int
main (void)
{
  TCase *tcase = tcase_create ("list");

  tcase_add_test (tcase, a_row_that_is_chosen_stays_in_sight_though_the_page_above_it_is_another);
  return hand_run ("app panel-list", &tcase, 1);
}
