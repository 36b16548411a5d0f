#include "trammel-config.h"
#include "app/window-private.h"
#include <glib/gi18n-lib.h>
#include <string.h>
#include "app/brought-io.h"
#include "app/plan-kind.h"

/* Lines that may be meant as either: a plan to trace over, or an outline as it is. */
static bool
is_drawing (const char *path)
{
  const char *dot = strrchr (path, '.');

  return dot != NULL && (g_ascii_strcasecmp (dot, ".svg") == 0 || g_ascii_strcasecmp (dot, ".svgz") == 0);
}

static char *
drawings_question (const GPtrArray *drawings)
{
  g_autofree char *name = g_filename_display_basename (drawings->pdata[0]);

  if (drawings->len == 1)
    /* Translators: %s is the name of a file. */
    return g_strdup_printf (_("%s holds lines: lay it beneath the sheet to trace over, or take an outline from it as it is?"), name);
  /* Translators: %s is the name of a file, %u a number of files above zero. */
  return g_strdup_printf (ngettext ("%s and %u more hold lines: lay them beneath the sheet to trace over, or take an outline as it is?",
                                    "%s and %u more hold lines: lay them beneath the sheet to trace over, or take an outline as it is?",
                                    drawings->len - 1), name, drawings->len - 1);
}

/* What was asked before and not answered is asked no more, unless that question still stands. */
static void
window_ask_drawing (TrammelWindow *self, const char *path)
{
  g_autofree char *asked = self->drawings->len > 0 ? drawings_question (self->drawings) : NULL;
  g_autofree char *question = NULL;

  if (asked == NULL || g_strcmp0 (trammel_strip_sentence (self->strip), asked) != 0)
    g_ptr_array_set_size (self->drawings, 0);
  g_ptr_array_add (self->drawings, g_strdup (path));
  question = drawings_question (self->drawings);
  trammel_window_ask (self, question, (StripButton) { _("Use As _Plan"), "win.use-as-plan" },
                      (StripButton) { _("Bring In As _Outline"), "win.use-as-outline" });
}

bool
trammel_window_take (TrammelWindow *self, const char *path)
{
  if (g_str_has_suffix (path, ".trammel"))
    return false;
  if (is_drawing (path))
    window_ask_drawing (self, path);
  else if (plan_kind_of_file (path))
    trammel_window_open_plan (self, path);
  else if (brought_io_takes (path))
    trammel_window_bring (self, path);
  else
    return false;
  return true;
}

static void
window_answer (TrammelWindow *self, void (*take) (TrammelWindow *self, const char *path))
{
  g_autoptr (GPtrArray) answered = g_steal_pointer (&self->drawings);

  self->drawings = g_ptr_array_new_with_free_func (g_free);
  for (guint i = 0; i < answered->len; i++)
    take (self, answered->pdata[i]);
}

static void
use_as_plan (GSimpleAction *action, GVariant *parameter, gpointer window)
{
  window_answer (window, trammel_window_open_plan);
}

static void
use_as_outline (GSimpleAction *action, GVariant *parameter, gpointer window)
{
  window_answer (window, trammel_window_bring);
}

void
window_taking_begin (TrammelWindow *self)
{
  static const GActionEntry entries[] = {
    { .name = "use-as-plan", .activate = use_as_plan },
    { .name = "use-as-outline", .activate = use_as_outline },
  };

  self->drawings = g_ptr_array_new_with_free_func (g_free);
  g_action_map_add_action_entries (G_ACTION_MAP (self), entries, G_N_ELEMENTS (entries), self);
}

void
window_taking_end (TrammelWindow *self)
{
  g_clear_pointer (&self->drawings, g_ptr_array_unref);
}
