#include "app/sheet-canvas-private.h"
#include "trammel-config.h"
#include <glib/gi18n-lib.h>
#include "app/digit-key.h"
#include "app/grip.h"
#include "app/pull.h"
#include "app/sheet-command.h"

static const double pan_px = 40;      /* one press of an arrow key */

static const GdkModifierType meant = GDK_SHIFT_MASK | GDK_CONTROL_MASK | GDK_ALT_MASK | GDK_SUPER_MASK;

/* Arrows */

double
trammel_sheet_canvas_key_step (TrammelSheetCanvas *self)
{
  return trammel_session_units (self->session).length == LENGTH_INCH ? 25.4 / 32 : 1;
}

/* The direction of an arrow key on the sheet: x down, y to the right. */
static bool
sheet_keys_arrow (guint keyval, Point *direction)
{
  switch (keyval) {
    case GDK_KEY_Up:    case GDK_KEY_KP_Up:    *direction = (Point) { -1, 0 }; return true;
    case GDK_KEY_Down:  case GDK_KEY_KP_Down:  *direction = (Point) { 1, 0 };  return true;
    case GDK_KEY_Left:  case GDK_KEY_KP_Left:  *direction = (Point) { 0, -1 }; return true;
    case GDK_KEY_Right: case GDK_KEY_KP_Right: *direction = (Point) { 0, 1 };  return true;
    default: return false;
  }
}

static bool
sheet_keys_nudge (TrammelSheetCanvas *self, Point by)
{
  Aeroplane *next;

  if (self->nudge == NULL) {
    self->nudge = grip_new_for_selection (trammel_session_aeroplane (self->session), trammel_session_selection (self->session));
    self->nudged = (Point) { 0, 0 };
  }
  if (self->nudge == NULL)
    return false;
  self->nudged = point_add (self->nudged, by);
  next = grip_moved (self->nudge, point_add (grip_place (self->nudge), self->nudged), false);
  trammel_session_preview (self->session, next);
  return true;
}

void
sheet_canvas_stop_nudging (TrammelSheetCanvas *self)
{
  struct Grip *grip = g_steal_pointer (&self->nudge);
  g_autofree char *label = NULL;

  if (grip == NULL)
    return;
  label = grip_label (grip);
  if (trammel_session_is_previewing (self->session))
    trammel_session_settle (self->session, label);
  grip_free (grip);
}

static bool
sheet_keys_arrows (TrammelSheetCanvas *self, guint keyval, GdkModifierType state)
{
  const double times = state & GDK_SHIFT_MASK ? 10 : 1;
  Point direction;

  if ((state & (GDK_CONTROL_MASK | GDK_ALT_MASK)) || !sheet_keys_arrow (keyval, &direction) || self->pressed)
    return false;
  if (self->tool->kind->draws)
    sheet_cursor_move (self, point_scale (direction, times));
  else if (!sheet_keys_nudge (self, point_scale (direction, times * trammel_sheet_canvas_key_step (self))))
    trammel_sheet_canvas_pan (self, -direction.y * pan_px, -direction.x * pan_px);
  return true;
}

/* Digits */

static bool
sheet_keys_digit (TrammelSheetCanvas *self, guint keyval, GdkModifierType state)
{
  char text[7];
  Grip *grip;

  if (!digit_key_text (keyval, state, text))
    return false;
  if (self->pull != NULL) {
    pull_type (self->pull, text);
    return true;
  }
  /* A number is the place of one thing; several have no one place. */
  if (selection_single (trammel_session_selection (self->session)) == NULL && trammel_session_selection (self->session)->mark < 0)
    return false;
  grip = grip_new_for_selection (trammel_session_aeroplane (self->session), trammel_session_selection (self->session));
  if (grip == NULL || self->tool->kind != &tool_select) {
    grip_free (grip);
    return false;
  }
  pull_type (pull_begin_on_sheet (self, grip, grip_place (grip)), text);
  return true;
}

/* The rest */

static bool
sheet_keys_escape (TrammelSheetCanvas *self)
{
  const bool busy = self->pressed && self->grabbed && !self->dead;
  bool put_back = self->pull != NULL;

  /* The pull first: the side view pulls whatever the tool in hand is. */
  if (put_back)
    pull_cancel (self->pull);
  if (self->tool->kind->cancel != NULL && (!put_back || self->grabbed))
    put_back = self->tool->kind->cancel (self->tool) || put_back;
  sheet_canvas_drop_pointer (self);
  if (busy || put_back)
    return true;
  if (self->tool->kind != &tool_select)
    trammel_sheet_canvas_set_tool (self, "select");
  else
    trammel_session_select (self->session, selection_none ());
  return true;
}

static bool
sheet_keys_return (TrammelSheetCanvas *self)
{
  if (self->tool->kind->draws && self->overlay.has_cursor) {
    const ToolEvent event = sheet_cursor_event (self);

    if (self->tool->kind->press != NULL)
      self->tool->kind->press (self->tool, &event);
    if (self->tool->kind->click != NULL)
      self->tool->kind->click (self->tool, &event);
    return true;
  }
  if (selection_is_empty (trammel_session_selection (self->session)))
    return false;
  g_signal_emit_by_name (self, "edit-requested", "");
  return true;
}

/* A letter shows nothing under the hand: the status line says which tool it took. */
static void
sheet_keys_say_tool (TrammelSheetCanvas *self)
{
  const ToolKind *kind = self->tool->kind;
  /* Translators: the name of a tool that a key has just chosen, and a sentence that says what it does: two sentences. */
  g_autofree char *hint = g_strdup_printf (_("%s. %s"), _(kind->name), _(kind->hint));

  trammel_sheet_canvas_set_hint (self, hint);
}

/* A tool's letter, alone; with Shift the kinds of a node. */
static bool
sheet_keys_letter (TrammelSheetCanvas *self, guint keyval, GdkModifierType state)
{
  const gunichar typed = g_unichar_toupper (gdk_keyval_to_unicode (keyval));
  char letter[7] = "";

  if (typed == 0 || (state & (GDK_CONTROL_MASK | GDK_ALT_MASK | GDK_SUPER_MASK)))
    return false;
  letter[g_unichar_to_utf8 (typed, letter)] = '\0';
  if (state & GDK_SHIFT_MASK) {
    /* Translators: keys that make a node smooth, a corner, or symmetric, with Shift held. */
    if (g_str_equal (letter, C_("key", "S"))) return sheet_command_node_kind (self, NODE_SMOOTH);
    if (g_str_equal (letter, C_("key", "C"))) return sheet_command_node_kind (self, NODE_CORNER);
    if (g_str_equal (letter, C_("key", "Y"))) return sheet_command_node_kind (self, NODE_SYMMETRIC);
    /* Translators: the key that turns the selected parts by a quarter, with Shift held. */
    if (g_str_equal (letter, C_("key", "R"))) return sheet_command_turn (self);
    return false;
  }
  for (const ToolKind *const *kind = tool_kinds (); *kind != NULL; kind++)
    if (g_str_equal (letter, _((*kind)->letter)) && tool_kind_is_useful (*kind, trammel_session_aeroplane (self->session))) {
      trammel_sheet_canvas_set_tool (self, (*kind)->word);
      sheet_keys_say_tool (self);
      return true;
    }
  return false;
}

static bool
sheet_keys_hand (TrammelSheetCanvas *self, bool hand)
{
  self->hand = hand;
  gtk_widget_set_cursor_from_name (GTK_WIDGET (self), hand ? "grab" : self->tool->kind->cursor);
  return true;
}

static void
sheet_keys_bare (TrammelSheetCanvas *self, bool bare)
{
  if (self->bare == bare)
    return;
  self->bare = bare;
  gtk_widget_queue_draw (GTK_WIDGET (self));
}

/* Translators: the key that, held down, shows of a plan nothing but its print; one letter, lower case, and no tool's. */
static bool
is_baring_key (guint keyval)
{
  return gdk_keyval_to_unicode (gdk_keyval_to_lower (keyval)) == g_utf8_get_char (C_("key", "v"));
}

/* Without a plan it is no key at all. */
static bool
sheet_keys_lay_bare (TrammelSheetCanvas *self, guint keyval, GdkModifierType state)
{
  if (!is_baring_key (keyval) || (state & (GDK_CONTROL_MASK | GDK_ALT_MASK | GDK_SUPER_MASK))
      || trammel_sheet_canvas_scene (self).plan == NULL)
    return false;
  sheet_keys_bare (self, true);
  return true;
}

/* What lies in a corner then may be what is traced next. */
static bool
sheet_keys_enlarge (TrammelSheetCanvas *self, guint keyval, GdkModifierType state)
{
  TrammelSettings *settings = trammel_session_settings (self->session);

  /* Translators: the key that shows what is under the pointer enlarged, or no longer; one letter, lower case, and no tool's. */
  if (gdk_keyval_to_unicode (gdk_keyval_to_lower (keyval)) != g_utf8_get_char (C_("key", "e"))
      || (state & (GDK_CONTROL_MASK | GDK_ALT_MASK | GDK_SUPER_MASK)) || !sheet_canvas_shows_print (self))
    return false;
  trammel_settings_set_flag (settings, ENLARGED_VIEW, !trammel_settings_flag (settings, ENLARGED_VIEW));
  if (self->overlay.has_cursor)
    sheet_cursor_hover (self);
  else
    sheet_canvas_ask_frame (self);
  return true;
}

static bool
sheet_keys_plain (TrammelSheetCanvas *self, guint keyval, GdkModifierType state)
{
  const bool shift = state & GDK_SHIFT_MASK, returns = keyval == GDK_KEY_Return || keyval == GDK_KEY_KP_Enter;

  /* With Ctrl a click at the key cursor clings to nothing, as one of the pointer. */
  if (state == GDK_CONTROL_MASK && returns && self->tool->kind->draws && self->overlay.has_cursor)
    return sheet_keys_return (self);
  if (state & (GDK_CONTROL_MASK | GDK_ALT_MASK | GDK_SUPER_MASK))
    return false;
  switch (keyval) {
    case GDK_KEY_Return: case GDK_KEY_KP_Enter:        return sheet_keys_return (self);
    case GDK_KEY_Tab:                                  return sheet_command_walk (self, shift);
    case GDK_KEY_ISO_Left_Tab:                         return sheet_command_walk (self, true);
    case GDK_KEY_space:                                return sheet_keys_hand (self, true);
    case GDK_KEY_Insert: case GDK_KEY_KP_Insert:       return sheet_command_add_node (self);
    case GDK_KEY_Delete: case GDK_KEY_KP_Delete:
    case GDK_KEY_BackSpace:                            return gtk_widget_activate_action (GTK_WIDGET (self), "win.delete", NULL);
    case GDK_KEY_Home: case GDK_KEY_KP_Home:
      if (shift)
        trammel_sheet_canvas_fit_selection (self);
      else
        trammel_sheet_canvas_fit (self, true);
      return true;
    case GDK_KEY_Menu:
      sheet_canvas_menu_by_key (self);
      return true;
    case GDK_KEY_F10:
      if (shift)
        sheet_canvas_menu_by_key (self);
      return shift;
    default:
      return false;
  }
}

/* Shift or Ctrl pressed in the middle of a drag shows at once. */
static void
sheet_keys_modifier (TrammelSheetCanvas *self, guint keyval, bool down)
{
  if (keyval == GDK_KEY_Shift_L || keyval == GDK_KEY_Shift_R)
    self->pointer.shift = down;
  else if (keyval == GDK_KEY_Control_L || keyval == GDK_KEY_Control_R)
    self->pointer.loose = down;
  else
    return;
  if (self->overlay.has_cursor && self->tool->kind->draws)
    sheet_cursor_hover (self);
  else
    sheet_canvas_ask_frame (self);
}

bool
trammel_sheet_canvas_take_back (TrammelSheetCanvas *self)
{
  return self->tool->kind->take_back != NULL && self->tool->kind->take_back (self->tool);
}

/* Here too, and not only in the action: that is off as long as no step is finished. */
static bool
sheet_keys_take_back (TrammelSheetCanvas *self, guint keyval, GdkModifierType state)
{
  return state == GDK_CONTROL_MASK && gdk_keyval_to_lower (keyval) == GDK_KEY_z && trammel_sheet_canvas_take_back (self);
}

static gboolean
sheet_keys_pressed (GtkEventControllerKey *keys, guint keyval, guint code, GdkModifierType state, TrammelSheetCanvas *self)
{
  state &= meant;
  self->pointer.loose = state & GDK_CONTROL_MASK;
  sheet_keys_modifier (self, keyval, true);
  if (keyval == GDK_KEY_Escape)
    return sheet_keys_escape (self);
  /* Tab alone walks over the sheet; with Ctrl it leaves. */
  if ((state & GDK_CONTROL_MASK) && (keyval == GDK_KEY_Tab || keyval == GDK_KEY_ISO_Left_Tab))
    return gtk_widget_activate_action (GTK_WIDGET (self), state & GDK_SHIFT_MASK ? "win.focus-previous" : "win.focus-next", NULL);
  if (sheet_keys_take_back (self, keyval, state))
    return TRUE;
  if (sheet_keys_lay_bare (self, keyval, state) || sheet_keys_enlarge (self, keyval, state))
    return TRUE;
  if (self->tool->kind->key != NULL && self->tool->kind->key (self->tool, keyval, state))
    return TRUE;
  return sheet_keys_digit (self, keyval, state) || sheet_keys_arrows (self, keyval, state) || sheet_keys_plain (self, keyval, state)
         || sheet_keys_letter (self, keyval, state);
}

static void
sheet_keys_released (GtkEventControllerKey *keys, guint keyval, guint code, GdkModifierType state, TrammelSheetCanvas *self)
{
  Point direction;

  sheet_keys_modifier (self, keyval, false);
  if (self->tool->kind->key_up != NULL)
    self->tool->kind->key_up (self->tool, keyval);
  if (keyval == GDK_KEY_space)
    sheet_keys_hand (self, false);
  if (is_baring_key (keyval))
    sheet_keys_bare (self, false);
  if (sheet_keys_arrow (keyval, &direction))
    sheet_canvas_stop_nudging (self);
}

static void
sheet_keys_left (GtkEventControllerFocus *focus, TrammelSheetCanvas *self)
{
  sheet_canvas_stop_nudging (self);
  if (self->hand)
    sheet_keys_hand (self, false);
  sheet_keys_bare (self, false);
  gtk_widget_queue_draw (GTK_WIDGET (self));
}

void
sheet_canvas_add_keys (TrammelSheetCanvas *self)
{
  GtkEventController *keys = gtk_event_controller_key_new (), *focus = gtk_event_controller_focus_new ();

  g_signal_connect (keys, "key-pressed", G_CALLBACK (sheet_keys_pressed), self);
  g_signal_connect (keys, "key-released", G_CALLBACK (sheet_keys_released), self);
  gtk_widget_add_controller (GTK_WIDGET (self), keys);
  g_signal_connect (focus, "leave", G_CALLBACK (sheet_keys_left), self);
  g_signal_connect_swapped (focus, "enter", G_CALLBACK (gtk_widget_queue_draw), self);
  gtk_widget_add_controller (GTK_WIDGET (self), focus);
}
