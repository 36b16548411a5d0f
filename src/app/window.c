#include "trammel-config.h"
#include "app/window-private.h"
#include "app/tool.h"
#include <glib/gi18n-lib.h>
#include "app/cautions-card.h"
#include "app/first-frame.h"
#include "app/start-page.h"
#include "app/start-room.h"

G_DEFINE_FINAL_TYPE (TrammelWindow, trammel_window, ADW_TYPE_APPLICATION_WINDOW)

static void
trammel_window_dispose (GObject *object)
{
  TrammelWindow *self = TRAMMEL_WINDOW (object);

  window_plans_end (self);
  window_taking_end (self);
  g_clear_pointer (&self->watch, file_watch_free);
  g_clear_pointer (&self->recorder, recorder_leave);
  g_clear_handle_id (&self->fitting, g_source_remove);
  if (self->session != NULL)
    g_signal_handlers_disconnect_by_data (self->session, self);
  G_OBJECT_CLASS (trammel_window_parent_class)->dispose (object);
  g_clear_pointer (&self->panel_text, g_free);
  g_clear_object (&self->undo_toast);
  g_clear_object (&self->busy);
  g_clear_pointer (&self->busy_words, g_free);
  g_clear_object (&self->session);
}

static void
trammel_window_size_allocate (GtkWidget *widget, int width, int height, int baseline)
{
  window_view_fit (TRAMMEL_WINDOW (widget), width, height);
  GTK_WIDGET_CLASS (trammel_window_parent_class)->size_allocate (widget, width, height, baseline);
}

static void
trammel_window_class_init (TrammelWindowClass *klass)
{
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (klass);

  G_OBJECT_CLASS (klass)->dispose = trammel_window_dispose;
  widget_class->size_allocate = trammel_window_size_allocate;
  g_type_ensure (TRAMMEL_TYPE_STRIP);
  gtk_widget_class_set_template_from_resource (widget_class, "/org/trammel/Trammel/window.ui");
  gtk_widget_class_bind_template_child (widget_class, TrammelWindow, title);
  gtk_widget_class_bind_template_child (widget_class, TrammelWindow, open_button);
  gtk_widget_class_bind_template_child (widget_class, TrammelWindow, menu_button);
  gtk_widget_class_bind_template_child (widget_class, TrammelWindow, main_menu);
  gtk_widget_class_bind_template_child (widget_class, TrammelWindow, undo_button);
  gtk_widget_class_bind_template_child (widget_class, TrammelWindow, redo_button);
  gtk_widget_class_bind_template_child (widget_class, TrammelWindow, strip);
  gtk_widget_class_bind_template_child (widget_class, TrammelWindow, flap);
  gtk_widget_class_bind_template_child (widget_class, TrammelWindow, table);
  gtk_widget_class_bind_template_child (widget_class, TrammelWindow, toasts);
  window_keys_install (widget_class);
}

/* The split button's second half has a tooltip, which is no name to a screen reader. */
static void
window_name_arrow (TrammelWindow *self)
{
  for (GtkWidget *child = gtk_widget_get_first_child (GTK_WIDGET (self->open_button)); child != NULL; child = gtk_widget_get_next_sibling (child))
    if (GTK_IS_MENU_BUTTON (child))
      gtk_accessible_update_property (GTK_ACCESSIBLE (gtk_widget_get_first_child (child)), GTK_ACCESSIBLE_PROPERTY_LABEL,
                                      _("Recent documents and examples"), -1);
}

/* A menu's popover is made when it first opens: at the start nobody waits for it. */
static void
window_open_menu (GtkMenuButton *button, gpointer window)
{
  if (gtk_menu_button_get_popover (button) == NULL)
    gtk_menu_button_set_menu_model (button, TRAMMEL_WINDOW (window)->main_menu);
}

static void
trammel_window_init (TrammelWindow *self)
{
  gtk_widget_init_template (GTK_WIDGET (self));
  gtk_menu_button_set_create_popup_func (self->menu_button, window_open_menu, self, NULL);
  window_name_arrow (self);
}

static void
window_refresh_title (TrammelWindow *self)
{
  g_autofree char *title = trammel_session_title (self->session);
  const bool saved = trammel_session_is_saved (self->session);
  const char *state = saved ? "" : trammel_session_path (self->session) != NULL ? _("Edited") : _("Not yet saved");

  adw_window_title_set_title (self->title, title);
  adw_window_title_set_subtitle (self->title, state);
  gtk_window_set_title (GTK_WINDOW (self), title);
}

static void
window_refresh_start_page (TrammelWindow *self)
{
  const bool empty = aeroplane_piece_count (trammel_session_aeroplane (self->session)) == 0;

  gtk_widget_set_visible (self->start_page, empty && !self->start_page_dismissed);
}

void
window_dismiss_start_page (TrammelWindow *self)
{
  self->start_page_dismissed = true;
  window_refresh_start_page (self);
}

static void
window_state_changed (TrammelWindow *self)
{
  window_refresh_title (self);
  window_actions_refresh (self);
}

static void
window_changed (TrammelWindow *self)
{
  window_refresh_start_page (self);
  window_actions_refresh (self);
}

/* The panel opens for what was begun on the sheet. */
static void
window_edit_requested (TrammelWindow *self, const char *text)
{
  window_with_panel (self, trammel_panel_edit_first, text);
}

static void
window_show_cautions (GtkWidget *window)
{
  TrammelWindow *self = TRAMMEL_WINDOW (window);
  GtkWidget *cautions = cautions_card_new (trammel_session_settings (self->session));

  if (cautions != NULL)
    gtk_overlay_add_overlay (self->table, cautions);
}

/* The sheet, and over it the page to start from and, a frame later, the cautions. */
static void
window_lay_table (TrammelWindow *self)
{
  self->area = trammel_sheet_area_new (self->session);
  self->panel = trammel_panel_new (self->session);
  trammel_panel_set_plan_store (TRAMMEL_PANEL (self->panel), trammel_sheet_area_plan_store (TRAMMEL_SHEET_AREA (self->area)));
  self->start_page = start_page_new ();
  gtk_overlay_set_child (self->table, self->area);
  gtk_overlay_add_overlay (self->table, self->start_page);
  start_room_share (self->table, self->start_page);
  first_frame_then (GTK_WIDGET (self), window_show_cautions);
  adw_flap_set_flap (self->flap, self->panel);
  g_signal_connect_object (self->area, "edit-requested", G_CALLBACK (window_edit_requested), self, G_CONNECT_SWAPPED);
  g_signal_connect_object (self->panel, "part-chosen", G_CALLBACK (trammel_sheet_area_set_part_pattern), self->area, G_CONNECT_SWAPPED);
}

TrammelWindow *
trammel_window_new (GtkApplication *application, TrammelSettings *settings)
{
  TrammelWindow *self = g_object_new (TRAMMEL_TYPE_WINDOW, "application", application, NULL);

  self->session = trammel_session_new (settings);
  window_lay_table (self);
  window_actions_begin (self);
  window_view_begin (self);
  window_keys_begin (self);
  window_clipboard_begin (self);
  window_lists_begin (self);
  window_files_begin (self);
  window_plans_begin (self);
  window_brought_begin (self);
  window_taking_begin (self);
  window_recovery_begin (self);
  window_strip_begin (self);
  window_closing_begin (self);
  g_signal_connect_swapped (self->session, "state-changed", G_CALLBACK (window_state_changed), self);
  g_signal_connect_swapped (self->session, "selection-changed", G_CALLBACK (window_actions_refresh), self);
  g_signal_connect_swapped (self->session, "changed", G_CALLBACK (window_changed), self);
  window_state_changed (self);
  window_changed (self);
  return self;
}

TrammelSession *
trammel_window_session (TrammelWindow *self)
{
  return self->session;
}

const char *
trammel_window_help_page (TrammelWindow *self)
{
  TrammelSheetArea *area = TRAMMEL_SHEET_AREA (self->area);
  const ToolKind *kind = tool_kind_find (trammel_sheet_area_tool (area));
  const char *page = kind != NULL ? kind->help : NULL;

  return g_strcmp0 (page, "draw") == 0 && trammel_plan_store_plan (trammel_sheet_area_plan_store (area)) != NULL ? tool_plan.help : page;
}

bool
window_is_gone (const TrammelWindow *self)
{
  return self->session == NULL;
}

bool
trammel_window_is_untouched (TrammelWindow *self)
{
  return trammel_session_path (self->session) == NULL && trammel_session_is_saved (self->session) && !self->opening && self->plan_opening == NULL
         && trammel_session_undo_label (self->session) == NULL && trammel_session_redo_label (self->session) == NULL
         && aeroplane_piece_count (trammel_session_aeroplane (self->session)) == 0;
}

void
trammel_window_toast (TrammelWindow *self, const char *text, const char *label, const char *action)
{
  AdwToast *toast;

  if (window_is_gone (self))
    return;
  toast = adw_toast_new (text);
  if (label != NULL) {
    adw_toast_set_button_label (toast, label);
    adw_toast_set_detailed_action_name (toast, action);
  }
  adw_toast_overlay_add_toast (self->toasts, toast);
}
