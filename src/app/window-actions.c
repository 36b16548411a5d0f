#include "trammel-config.h"
#include "app/window-private.h"
#include <glib/gi18n-lib.h>
#include "app/export-dialog.h"
#include "app/fit-offer.h"
#include "app/fragment.h"
#include "app/preferences.h"
#include "app/tooltip.h"
#include "app/traced.h"

/* What is not finished goes before what is: click by click. */
static void
undo (GSimpleAction *action, GVariant *parameter, gpointer window)
{
  TrammelWindow *self = window;

  if (trammel_sheet_area_take_back (TRAMMEL_SHEET_AREA (self->area)) || trammel_traced_cancel (trammel_traced_of (self->session)))
    return;
  trammel_session_undo (self->session);
  trammel_sheet_area_reveal_selection (TRAMMEL_SHEET_AREA (self->area));
}

static void
redo (GSimpleAction *action, GVariant *parameter, gpointer window)
{
  TrammelWindow *self = window;

  trammel_session_redo (self->session);
  trammel_sheet_area_reveal_selection (TRAMMEL_SHEET_AREA (self->area));
}

static void
panel_start_from_numbers (TrammelPanel *panel, const char *text)
{
  trammel_panel_start_from_numbers (panel);
}

static void
panel_arrange (TrammelPanel *panel, const char *text)
{
  trammel_panel_arrange (panel);
}

static void
panel_read_answer (TrammelPanel *panel, const char *text)
{
  trammel_panel_read_answer (panel);
}

static void
start_from_numbers (GSimpleAction *action, GVariant *parameter, gpointer window)
{
  TrammelWindow *self = window;

  window_dismiss_start_page (self);
  window_with_panel (self, panel_start_from_numbers, NULL);
}

static void
arrange_parts (GSimpleAction *action, GVariant *parameter, gpointer window)
{
  TrammelWindow *self = window;

  window_dismiss_start_page (self);
  window_with_panel (self, panel_arrange, NULL);
}

static void
panel_offer_fit (TrammelPanel *panel, const char *text)
{
  trammel_panel_offer_fit (panel);
}

static void
offer_fit (GSimpleAction *action, GVariant *parameter, gpointer window)
{
  window_with_panel (window, panel_offer_fit, NULL);
}

static void
draw_outline (GSimpleAction *action, GVariant *parameter, gpointer window)
{
  TrammelWindow *self = window;

  window_dismiss_start_page (self);
  trammel_sheet_area_set_tool (TRAMMEL_SHEET_AREA (self->area), "outline");
  trammel_sheet_area_focus (TRAMMEL_SHEET_AREA (self->area));
}

static void
empty_sheet (GSimpleAction *action, GVariant *parameter, gpointer window)
{
  TrammelWindow *self = window;

  window_dismiss_start_page (self);
  trammel_sheet_area_focus (TRAMMEL_SHEET_AREA (self->area));
}

static void
export_sheet (GSimpleAction *action, GVariant *parameter, gpointer window)
{
  export_dialog_present (window, EXPORT_TO_FILE);
}

static void
print_sheet (GSimpleAction *action, GVariant *parameter, gpointer window)
{
  export_dialog_present (window, EXPORT_TO_PRINTER);
}

static void
show_preferences (GSimpleAction *action, GVariant *parameter, gpointer window)
{
  TrammelWindow *self = window;

  preferences_present (GTK_WINDOW (self), trammel_session_settings (self->session));
}

static void
read_answer (GSimpleAction *action, GVariant *parameter, gpointer window)
{
  TrammelWindow *self = window;

  window_with_panel (self, panel_read_answer, NULL);
}

/* Under the name that GTK looks for, it would be made with every window, before anybody asks. Once set it brings its own action. */
static void
show_shortcuts (GSimpleAction *action, GVariant *parameter, gpointer window)
{
  g_autoptr (GtkBuilder) builder = gtk_builder_new_from_resource ("/org/trammel/Trammel/help-overlay.ui");
  GtkWindow *overlay = GTK_WINDOW (gtk_builder_get_object (builder, "help_overlay"));

  gtk_application_window_set_help_overlay (window, GTK_SHORTCUTS_WINDOW (overlay));
  gtk_window_present (overlay);
}

static void
close_window (GSimpleAction *action, GVariant *parameter, gpointer window)
{
  gtk_window_close (window);
}

void
window_enable (TrammelWindow *self, const char *action, bool possible)
{
  g_simple_action_set_enabled (G_SIMPLE_ACTION (g_action_map_lookup_action (G_ACTION_MAP (self), action)), possible);
}

/* What the button says when pointed at, and to a screen reader: which step it is. */
static void
button_say (GtkWidget *button, char *takes_text)
{
  tooltip_set (button, takes_text);
  gtk_accessible_update_property (GTK_ACCESSIBLE (button), GTK_ACCESSIBLE_PROPERTY_LABEL, takes_text, -1);
  g_free (takes_text);
}

void
window_actions_refresh (TrammelWindow *self)
{
  const char *undo_label = trammel_session_undo_label (self->session);
  const char *redo_label = trammel_session_redo_label (self->session);
  const bool something = aeroplane_piece_count (trammel_session_aeroplane (self->session)) > 0;
  const Selection *selection = trammel_session_selection (self->session);
  const bool pieces = fragment_count (trammel_session_aeroplane (self->session), selection) > 0;

  window_enable (self, "undo", undo_label != NULL);
  window_enable (self, "redo", redo_label != NULL);
  window_enable (self, "export", something);
  window_enable (self, "print", something);
  window_enable (self, "select-all", something);
  window_enable (self, "arrange", aeroplane_count (trammel_session_aeroplane (self->session), PIECE_PART) > 0);
  window_enable (self, "usual-fit", fit_offer_is_useful (trammel_session_settled (self->session)));
  window_enable (self, "cut", pieces);
  window_enable (self, "copy", pieces);
  window_enable (self, "delete", !selection_is_empty (selection));
  /* Translators: %s is the name of a step, such as "Move Battery". */
  button_say (self->undo_button, undo_label == NULL ? g_strdup (_("Undo")) : g_strdup_printf (_("Undo %s"), undo_label));
  /* Translators: %s is the name of a step, such as "Move Battery". */
  button_say (self->redo_button, redo_label == NULL ? g_strdup (_("Redo")) : g_strdup_printf (_("Redo %s"), redo_label));
}

void
window_actions_begin (TrammelWindow *self)
{
  static const GActionEntry entries[] = {
    { .name = "undo",               .activate = undo },
    { .name = "redo",               .activate = redo },
    { .name = "start-from-numbers", .activate = start_from_numbers },
    { .name = "arrange",            .activate = arrange_parts },
    { .name = "usual-fit",          .activate = offer_fit },
    { .name = "draw-outline",       .activate = draw_outline },
    { .name = "empty-sheet",        .activate = empty_sheet },
    { .name = "export",             .activate = export_sheet },
    { .name = "print",              .activate = print_sheet },
    { .name = "preferences",        .activate = show_preferences },
    { .name = "read-answer",        .activate = read_answer },
    { .name = "show-help-overlay",  .activate = show_shortcuts },
    { .name = "close",              .activate = close_window },
  };

  g_action_map_add_action_entries (G_ACTION_MAP (self), entries, G_N_ELEMENTS (entries), self);
}
