#include "trammel-config.h"
#include "app/replace-question.h"
#include <glib/gi18n-lib.h>
#include "app/message-start.h"

typedef struct {
  ReplaceAnswered answered;
  gpointer data;
  GDestroyNotify free_data;
} Question;

static void
question_free (gpointer data, GClosure *closure)
{
  Question *question = data;

  if (question->free_data != NULL)
    question->free_data (question->data);
  g_free (question);
}

/* The answer may close the parent while the question is still on its way out. */
static void
dialog_let_go (GtkWindow *dialog)
{
  GtkWindow *parent = gtk_window_get_transient_for (dialog);

  if (parent == NULL)
    return;
  g_signal_handlers_disconnect_by_func (parent, gtk_window_destroy, dialog);
  gtk_window_set_transient_for (dialog, NULL);
}

static void
dialog_answered (AdwMessageDialog *dialog, const char *response, Question *question)
{
  dialog_let_go (GTK_WINDOW (dialog));
  question->answered (g_str_equal (response, "replace") ? REPLACE_THEM
                      : g_str_equal (response, "elsewhere") ? REPLACE_NOT_BUT_ELSEWHERE : REPLACE_NOTHING, question->data);
}

/* A new string. */
static char *
words_of_files (const GPtrArray *paths)
{
  g_autofree char *first = g_path_get_basename (paths->pdata[0]), *last = g_path_get_basename (paths->pdata[paths->len - 1]);

  if (paths->len == 1)
    return g_strdup_printf (_("There is a file called “%s” already. Replacing it loses what it holds."), first);
  /* Translators: the names of the first and the last of several files */
  return g_strdup_printf (_("There are files called “%1$s” to “%2$s” already. Replacing them loses what they hold."), first, last);
}

void
replace_question_ask (GtkWindow *parent, const GPtrArray *paths, ReplaceAnswered answered, gpointer data, GDestroyNotify free_data)
{
  Question *question = g_new (Question, 1);
  g_autofree char *words = words_of_files (paths);
  GtkWidget *widget = adw_message_dialog_new (parent, paths->len > 1 ? _("Replace Files?") : _("Replace File?"), words);
  AdwMessageDialog *dialog = ADW_MESSAGE_DIALOG (widget);

  *question = (Question) { answered, data, free_data };
  adw_message_dialog_add_responses (dialog, "cancel", _("_Cancel"), "elsewhere", _("Choose _Another Name…"), "replace", _("_Replace"), NULL);
  adw_message_dialog_set_response_appearance (dialog, "replace", ADW_RESPONSE_DESTRUCTIVE);
  adw_message_dialog_set_close_response (dialog, "cancel");
  message_start_at (dialog, "cancel");
  g_signal_connect_data (dialog, "response", G_CALLBACK (dialog_answered), question, question_free, 0);
  /* Who asked may hold the window, which then would not take the question along. */
  g_signal_connect_object (parent, "unrealize", G_CALLBACK (gtk_window_destroy), dialog, G_CONNECT_SWAPPED);
  gtk_window_present (GTK_WINDOW (widget));
}
