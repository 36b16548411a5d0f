#include "trammel-config.h"
#include "app/trace-telling.h"
#include <glib/gi18n-lib.h>
#include "app/doubt.h"
#include "app/trace-words.h"
#include "app/window.h"

static TrammelWindow *
window_of (GtkWidget *told)
{
  GtkRoot *root = gtk_widget_get_root (told);

  return TRAMMEL_IS_WINDOW (root) ? TRAMMEL_WINDOW (root) : NULL;
}

void
trace_telling_busy (GtkWidget *told, GCancellable *work)
{
  if (window_of (told) != NULL)
    trammel_window_tell_busy (window_of (told), _("Tracing the printed line…"), work);
}

void
trace_telling_done (GtkWidget *told, GCancellable *work)
{
  if (window_of (told) != NULL)
    trammel_window_tell_busy (window_of (told), NULL, work);
}

void
trace_telling_stale (GtkWidget *told)
{
  if (window_of (told) != NULL)
    trammel_window_tell (window_of (told), _("The plan was changed meanwhile: trace again."));
}

void
trace_telling_result (GtkWidget *told, Units units, const TraceOrder *order, const TraceResult *result)
{
  TrammelWindow *window = window_of (told);
  g_autofree char *sentence = NULL;

  if (window == NULL || result->status == CORE_CANCELLED)
    return;
  if (result->status != CORE_OK) {
    trammel_window_tell (window, trace_words_fault (result->status));
    return;
  }
  if (order->ends_on_root && order->root > 0) {
    sentence = trace_words_root (units, order->root);
    trammel_window_ask (window, sentence, (StripButton) { _("_Go On to the Centre Line"), "sheet.root-carried" },
                        (StripButton) { _("Leave the _Gap"), "sheet.root-open" });
    if (TRAMMEL_IS_SHEET_CANVAS (told))
      doubt_show (TRAMMEL_SHEET_CANVAS (told), order, NULL, sentence);
    return;
  }
  sentence = trace_words_done (units, order->ground, result);
  if (sentence == NULL)
    return;
  trammel_window_tell (window, sentence);
  if (TRAMMEL_IS_SHEET_CANVAS (told))
    doubt_show (TRAMMEL_SHEET_CANVAS (told), order, result->mean == NULL ? result->unseen : NULL, sentence);
}
