#include "app/window-private.h"

static const struct { const char *action; SettingsFlag flag; } flags[] = {
  { "show-grid", SHOW_GRID }, { "show-names", SHOW_NAMES }, { "show-figures", SHOW_FIGURES }, { "show-side-view", SHOW_SIDE_VIEW },
};

static void
toggle_flag (GSimpleAction *action, GVariant *state, gpointer window)
{
  TrammelWindow *self = window;

  for (size_t i = 0; i < G_N_ELEMENTS (flags); i++)
    if (g_str_equal (g_action_get_name (G_ACTION (action)), flags[i].action))
      trammel_settings_set_flag (trammel_session_settings (self->session), flags[i].flag, g_variant_get_boolean (state));
}

/* The settings are the one place that knows; a change made in another window arrives here, too. */
static void
window_follow_settings (TrammelWindow *self)
{
  TrammelSettings *settings = trammel_session_settings (self->session);

  for (size_t i = 0; i < G_N_ELEMENTS (flags); i++)
    g_simple_action_set_state (G_SIMPLE_ACTION (g_action_map_lookup_action (G_ACTION_MAP (self), flags[i].action)),
                               g_variant_new_boolean (trammel_settings_flag (settings, flags[i].flag)));
}

/* Folded over the sheet on a narrow window the panel comes and goes with the window's width; only a fold by hand is remembered. */
static void
window_remember_fold (TrammelWindow *self)
{
  if (!self->narrow)
    trammel_settings_set_flag (trammel_session_settings (self->session), SHOW_PANEL, adw_flap_get_reveal_flap (self->flap));
}

/* The panel can take the keyboard only once it is shown, which is a frame or two after it was asked to. */
static gboolean
window_act_when_shown (GtkWidget *window, GdkFrameClock *clock, gpointer nothing)
{
  TrammelWindow *self = TRAMMEL_WINDOW (window);
  g_autofree char *text = NULL;

  if (!adw_flap_get_reveal_flap (self->flap))
    self->panel_act = NULL;               /* folded away again before it came */
  else if (!gtk_widget_get_mapped (self->panel))
    return G_SOURCE_CONTINUE;
  self->panel_waiting = 0;
  text = g_steal_pointer (&self->panel_text);
  if (self->panel_act != NULL)
    self->panel_act (TRAMMEL_PANEL (self->panel), text);
  return G_SOURCE_REMOVE;
}

void
window_with_panel (TrammelWindow *self, PanelAct act, const char *text)
{
  if (adw_flap_get_reveal_flap (self->flap) && gtk_widget_get_mapped (self->panel)) {
    act (TRAMMEL_PANEL (self->panel), text);
    return;
  }
  g_free (self->panel_text);
  self->panel_act = act;
  self->panel_text = g_strdup (text);
  adw_flap_set_reveal_flap (self->flap, TRUE);
  if (self->panel_waiting == 0)
    self->panel_waiting = gtk_widget_add_tick_callback (GTK_WIDGET (self), window_act_when_shown, NULL, NULL);
}

enum { NARROW = 860 };            /* px wide; below, the panel folds over the sheet */
enum { LOW = 640 };               /* px high; below, the answer is one sentence */
enum { TOOLS, PLAN, SHEET, PANEL, PLACE_COUNT };

static int
window_focused_place (TrammelWindow *self)
{
  GtkWidget *focus = gtk_root_get_focus (GTK_ROOT (self));

  if (focus != NULL && gtk_widget_is_ancestor (focus, self->panel))
    return PANEL;
  if (focus == NULL || !gtk_widget_is_ancestor (focus, self->area))
    return PLACE_COUNT;
  if (trammel_sheet_area_plan_has_focus (TRAMMEL_SHEET_AREA (self->area)))
    return PLAN;
  return trammel_sheet_area_tools_have_focus (TRAMMEL_SHEET_AREA (self->area)) ? TOOLS : SHEET;
}

static bool
window_focus_place (TrammelWindow *self, int place)
{
  if (place == TOOLS)
    return trammel_sheet_area_focus_tools (TRAMMEL_SHEET_AREA (self->area));
  if (place == PLAN)
    return trammel_sheet_area_focus_plan (TRAMMEL_SHEET_AREA (self->area));
  if (place == PANEL)
    return adw_flap_get_reveal_flap (self->flap) && gtk_widget_child_focus (self->panel, GTK_DIR_TAB_FORWARD);
  trammel_sheet_area_focus (TRAMMEL_SHEET_AREA (self->area));
  return true;
}

static void
window_focus_beside (TrammelWindow *self, int step)
{
  int place = window_focused_place (self);

  if (place == PLACE_COUNT)
    place = step > 0 ? PLACE_COUNT - 1 : 0;
  for (int tries = 0; tries < PLACE_COUNT; tries++) {
    place = (place + step + PLACE_COUNT) % PLACE_COUNT;
    if (window_focus_place (self, place))
      return;
  }
}

static void
focus_sheet (GSimpleAction *action, GVariant *parameter, gpointer window)
{
  window_focus_place (window, SHEET);
}

static void
focus_next (GSimpleAction *action, GVariant *parameter, gpointer window)
{
  window_focus_beside (window, 1);
}

static void
focus_previous (GSimpleAction *action, GVariant *parameter, gpointer window)
{
  window_focus_beside (window, -1);
}

/* 300 px at 1024, 332 at 1280, 380 at 1920. */
static int
panel_width_in (int window_width)
{
  if (window_width < 1152)
    return 300;
  return window_width < 1600 ? 332 : 380;
}

static void
window_fit_panel (gpointer window)
{
  TrammelWindow *self = window;
  const bool narrow = self->width < NARROW;

  self->fitting = 0;
  gtk_widget_set_size_request (self->panel, panel_width_in (self->width), -1);
  trammel_panel_set_low (TRAMMEL_PANEL (self->panel), self->height < LOW);
  if (narrow == self->narrow)
    return;
  self->narrow = narrow;
  adw_flap_set_fold_policy (self->flap, narrow ? ADW_FLAP_FOLD_POLICY_ALWAYS : ADW_FLAP_FOLD_POLICY_NEVER);
  adw_flap_set_reveal_flap (self->flap, !narrow && trammel_settings_flag (trammel_session_settings (self->session), SHOW_PANEL));
}

void
window_view_fit (TrammelWindow *self, int width, int height)
{
  if (width == self->width && height == self->height)
    return;
  self->width = width;
  self->height = height;
  /* Not while the window is being laid out: the panel's wish would come too late for it. */
  if (self->fitting == 0)
    self->fitting = g_idle_add_once (window_fit_panel, self);
}

void
window_view_begin (TrammelWindow *self)
{
  static const GActionEntry entries[] = {
    { .name = "show-grid",      .state = "true", .change_state = toggle_flag },
    { .name = "show-names",     .state = "true", .change_state = toggle_flag },
    { .name = "show-figures",   .state = "true", .change_state = toggle_flag },
    { .name = "show-side-view", .state = "true", .change_state = toggle_flag },
    { .name = "focus-sheet",    .activate = focus_sheet },
    { .name = "focus-next",     .activate = focus_next },
    { .name = "focus-previous", .activate = focus_previous },
  };
  TrammelSettings *settings = trammel_session_settings (self->session);
  g_autoptr (GPropertyAction) show_panel = g_property_action_new ("show-panel", self->flap, "reveal-flap");

  g_action_map_add_action_entries (G_ACTION_MAP (self), entries, G_N_ELEMENTS (entries), self);
  adw_flap_set_fold_policy (self->flap, ADW_FLAP_FOLD_POLICY_NEVER);
  adw_flap_set_locked (self->flap, TRUE);
  adw_flap_set_reveal_flap (self->flap, trammel_settings_flag (settings, SHOW_PANEL));
  g_action_map_add_action (G_ACTION_MAP (self), G_ACTION (show_panel));
  g_signal_connect_swapped (self->flap, "notify::reveal-flap", G_CALLBACK (window_remember_fold), self);
  g_signal_connect_object (settings, "changed", G_CALLBACK (window_follow_settings), self, G_CONNECT_SWAPPED);
  window_follow_settings (self);
}
