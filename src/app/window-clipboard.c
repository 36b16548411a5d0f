#include "trammel-config.h"
#include "app/window-private.h"
#include <glib/gi18n-lib.h>
#include "app/fragment.h"
#include "app/lead-edit.h"
#include "app/node-edit.h"
#include "app/piece-edit.h"
#include "document/reader.h"
#include "document/writer.h"

static const char fragment_type[] = "application/x-trammel+xml";
static const char *fragment_types[] = { "application/x-trammel+xml", "text/plain;charset=utf-8", "text/plain", NULL };

/* Cut and copy */

/* The same text under both names: another window takes it as a fragment, an editor as words. */
static bool
window_copy_selection (TrammelWindow *self)
{
  g_autoptr (Aeroplane) fragment = fragment_of (trammel_session_aeroplane (self->session), trammel_session_selection (self->session));
  g_autoptr (GBytes) bytes = NULL;
  GdkContentProvider *kinds[2], *both;
  size_t length;
  char *text;

  if (fragment == NULL)
    return false;
  text = writer_text (fragment, &length);
  bytes = g_bytes_new_take (text, length);
  kinds[0] = gdk_content_provider_new_for_bytes (fragment_type, bytes);
  kinds[1] = gdk_content_provider_new_for_bytes ("text/plain;charset=utf-8", bytes);
  both = gdk_content_provider_new_union (kinds, 2);
  gdk_clipboard_set_content (gtk_widget_get_clipboard (GTK_WIDGET (self)), both);
  g_object_unref (both);
  return true;
}

static void
copy (GSimpleAction *action, GVariant *parameter, gpointer window)
{
  window_copy_selection (window);
}

/* Removing */

static void
window_offer_undo (TrammelWindow *self, char *takes_text)
{
  g_autofree char *text = takes_text;

  self->undo_toast = g_object_ref (adw_toast_new (text));
  adw_toast_set_button_label (self->undo_toast, _("_Undo"));
  adw_toast_set_detailed_action_name (self->undo_toast, "win.undo");
  adw_toast_overlay_add_toast (self->toasts, g_object_ref (self->undo_toast));
}

/* "Undo" on the toast means this step: with the next one the offer goes. */
static void
window_withdraw_undo (TrammelWindow *self)
{
  if (self->undo_toast != NULL)
    adw_toast_dismiss (self->undo_toast);
  g_clear_object (&self->undo_toast);
}

static char *
removed_what (const Aeroplane *before, const Selection *selection)
{
  const guint nodes = (guint) selection->node_count, pieces = (guint) fragment_count (before, selection);

  if (nodes > 0 && aeroplane_lead_by_id (before, selection->ids[0]) != NULL)
    return g_strdup_printf (ngettext ("Bend taken out", "%u bends taken out", nodes), nodes);
  if (nodes > 0)
    return g_strdup_printf (ngettext ("Node deleted", "%u nodes deleted", nodes), nodes);
  if (selection->control != NULL)
    return g_strdup (_("Hinge line deleted"));
  if (selection->mark >= 0)
    return g_strdup (_("Balance mark deleted"));
  if (pieces > 1)
    return g_strdup_printf (ngettext ("%u thing deleted", "%u things deleted", pieces), pieces);
  /* Translators: %s is the name of a part, or what a surface is: "Battery deleted". */
  return g_strdup_printf (_("%s deleted"), piece_edit_name (before, selection_single (selection)));
}

/* With what went along though nobody selected it. */
static char *
removed_sentence (const Aeroplane *before, const Selection *selection, const Selection *all)
{
  const guint along = (guint) (fragment_count (before, all) - fragment_count (before, selection));
  g_autofree char *what = removed_what (before, selection);

  if (along == 0)
    return g_steal_pointer (&what);
  /* Translators: %s is a sentence such as "Servo, elevator deleted"; what served a servo are its pushrod, horns and extension lead */
  return g_strdup_printf (ngettext ("%s, with %u part that served nothing else", "%s, with %u parts that served nothing else", along), what, along);
}

static Aeroplane *
without_selection (const Aeroplane *before, const Selection *selection)
{
  const bool nodes = selection->node_count > 0;

  if (nodes && aeroplane_lead_by_id (before, selection->ids[0]) != NULL)
    return lead_edit_all_removed (before, selection);
  return nodes ? node_edit_removed (before, selection) : piece_edit_removed (before, selection);
}

static char *
removed_label (const Aeroplane *before, const Selection *selection)
{
  if (selection->node_count > 0 && aeroplane_lead_by_id (before, selection->ids[0]) != NULL)
    return g_strdup (_("Take Out Bend"));
  if (selection->node_count > 0)
    return g_strdup (g_dngettext (GETTEXT_PACKAGE, "Delete Node", "Delete Nodes", selection->node_count));
  return piece_edit_removed_label (before, selection);
}

/* What is cut is pasted elsewhere as it was copied: nothing goes along. */
static void
window_remove_selection (TrammelWindow *self, bool with_fittings)
{
  const Aeroplane *before = trammel_session_aeroplane (self->session);
  const Selection *selection = trammel_session_selection (self->session);
  Selection all = with_fittings && selection->node_count == 0 ? piece_edit_with_fittings (before, selection) : selection_copy (selection);
  Aeroplane *after = without_selection (before, &all);

  if (after != NULL) {
    g_autofree char *label = removed_label (before, selection);
    char *sentence = removed_sentence (before, selection, &all);

    /* What is left selected is the outline: the numbers of its nodes mean others now. */
    if (selection->node_count > 0)
      trammel_session_select (self->session, selection_of (selection->ids[0]));
    trammel_session_do (self->session, after, label);
    window_offer_undo (self, sentence);
  }
  selection_clear (&all);
}

static void
cut (GSimpleAction *action, GVariant *parameter, gpointer window)
{
  TrammelWindow *self = window;

  if (window_copy_selection (self))
    window_remove_selection (self, false);
}

static void
delete_selection (GSimpleAction *action, GVariant *parameter, gpointer window)
{
  window_remove_selection (window, true);
}

static void
select_all (GSimpleAction *action, GVariant *parameter, gpointer window)
{
  TrammelWindow *self = window;

  trammel_session_select (self->session, fragment_all (trammel_session_aeroplane (self->session)));
}

/* Paste */

/* A surface or a body brings what it weighs along, as the thing itself would; a mass that nobody laid hands on must not grow unsaid. */
static void
window_say_structures (TrammelWindow *self, const Aeroplane *fragment)
{
  size_t count;
  const double grams = fragment_structures (fragment, &count);
  g_autofree char *mass = units_mass (trammel_session_units (self->session), grams);

  if (count > 0 && grams > 0)
    /* Translators: %s is a mass with its unit. */
    window_offer_undo (self, g_strdup_printf (ngettext ("Pasted with its structure, %s more", "Pasted with their structures, %s more",
                                                        count), mass));
}

static void
window_paste (TrammelWindow *self, GBytes *bytes)
{
  size_t length;
  const char *text = g_bytes_get_data (bytes, &length);
  g_autoptr (Aeroplane) fragment = reader_read_data (text, length, _("Clipboard"), NULL, NULL);
  Selection pasted;
  Aeroplane *next;

  if (fragment == NULL) {
    window_bring_text (self, bytes);
    return;
  }
  next = fragment_pasted (trammel_session_aeroplane (self->session), fragment, &pasted);
  if (next == NULL) {
    trammel_window_toast (self, _("What was copied is no part of an aeroplane"), NULL, NULL);
    return;
  }
  trammel_session_do (self->session, next, _("Paste"));
  trammel_session_select (self->session, pasted);
  window_say_structures (self, fragment);
  trammel_sheet_area_reveal_selection (TRAMMEL_SHEET_AREA (self->area));
}

static void
paste_arrived (GObject *stream, GAsyncResult *result, gpointer window)
{
  g_autoptr (TrammelWindow) self = window;
  GMemoryOutputStream *memory = G_MEMORY_OUTPUT_STREAM (stream);

  if (g_output_stream_splice_finish (G_OUTPUT_STREAM (stream), result, NULL) < 0)
    return;
  if (!window_is_gone (self)) {
    g_autoptr (GBytes) bytes = g_memory_output_stream_steal_as_bytes (memory);
    window_paste (self, bytes);
  }
}

static void
paste_opened (GObject *clipboard, GAsyncResult *result, gpointer window)
{
  g_autoptr (GInputStream) text = gdk_clipboard_read_finish (GDK_CLIPBOARD (clipboard), result, NULL, NULL);
  g_autoptr (GOutputStream) memory = NULL;
  TrammelWindow *self = window;

  if (text == NULL) {
    trammel_window_toast (self, _("Nothing was copied"), NULL, NULL);
    g_object_unref (self);
    return;
  }
  memory = g_memory_output_stream_new_resizable ();
  g_output_stream_splice_async (memory, text, G_OUTPUT_STREAM_SPLICE_CLOSE_SOURCE | G_OUTPUT_STREAM_SPLICE_CLOSE_TARGET,
                                G_PRIORITY_DEFAULT, NULL, paste_arrived, self);
}

static void
picture_arrived (GObject *clipboard, GAsyncResult *result, gpointer window)
{
  g_autoptr (TrammelWindow) self = window;
  g_autoptr (GdkTexture) texture = gdk_clipboard_read_texture_finish (GDK_CLIPBOARD (clipboard), result, NULL);

  if (window_is_gone (self))
    return;
  if (texture == NULL)
    trammel_window_toast (self, _("The copied picture cannot be read"), NULL, NULL);
  else
    window_paste_plan (self, texture);
}

/* A picture becomes a plan; text comes first, since what is copied here travels as text. */
static bool
holds_only_a_picture (GdkClipboard *clipboard)
{
  GdkContentFormats *formats = gdk_clipboard_get_formats (clipboard);

  for (size_t i = 0; fragment_types[i] != NULL; i++)
    if (gdk_content_formats_contain_mime_type (formats, fragment_types[i]))
      return false;
  return gdk_content_formats_contain_gtype (formats, GDK_TYPE_TEXTURE) || gdk_content_formats_contain_mime_type (formats, "image/png");
}

/* Files copied in a file manager: plans are opened as if they had been dropped. */
static void
files_arrived (GObject *clipboard, GAsyncResult *result, gpointer window)
{
  g_autoptr (TrammelWindow) self = window;
  const GValue *value = gdk_clipboard_read_value_finish (GDK_CLIPBOARD (clipboard), result, NULL);

  if (!window_is_gone (self) && (value == NULL || !window_take_files (self, g_value_get_boxed (value))))
    trammel_window_toast (self, _("The copied files cannot be read"), NULL, NULL);
}

static void
paste (GSimpleAction *action, GVariant *parameter, gpointer window)
{
  GdkClipboard *clipboard = gtk_widget_get_clipboard (window);

  if (gdk_content_formats_contain_gtype (gdk_clipboard_get_formats (clipboard), GDK_TYPE_FILE_LIST)) {
    gdk_clipboard_read_value_async (clipboard, GDK_TYPE_FILE_LIST, G_PRIORITY_DEFAULT, NULL, files_arrived, g_object_ref (window));
    return;
  }
  if (holds_only_a_picture (clipboard)) {
    gdk_clipboard_read_texture_async (clipboard, NULL, picture_arrived, g_object_ref (window));
    return;
  }
  gdk_clipboard_read_async (gtk_widget_get_clipboard (window), fragment_types, G_PRIORITY_DEFAULT, NULL, paste_opened, g_object_ref (window));
}

void
window_clipboard_begin (TrammelWindow *self)
{
  static const GActionEntry entries[] = {
    { .name = "cut",        .activate = cut },
    { .name = "copy",       .activate = copy },
    { .name = "paste",      .activate = paste },
    { .name = "select-all", .activate = select_all },
    { .name = "delete",     .activate = delete_selection },
  };

  g_action_map_add_action_entries (G_ACTION_MAP (self), entries, G_N_ELEMENTS (entries), self);
  g_signal_connect_swapped (self->session, "changed", G_CALLBACK (window_withdraw_undo), self);
}
