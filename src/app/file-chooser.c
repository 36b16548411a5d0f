#include "trammel-config.h"
#include "app/file-chooser.h"
#include <glib/gi18n-lib.h>
#include "app/brought-io.h"
#include "app/plan-kind.h"
#include "app/replace-question.h"

/* One question under way: kept until it is answered. */
typedef struct {
  GtkFileChooserNative *chooser;
  GtkWindow *parent;
  char *ending, *typed, *path;
  FileCompleted complete;
  FilesInTheWay in_the_way;
  FileChosen chosen;
  FileRefused refused;
  gpointer data;
} Question;

static Question *
question_new (GtkWindow *parent, const char *heading, GtkFileChooserAction action, const char *accept)
{
  Question *question = g_new0 (Question, 1);

  question->parent = g_object_ref (parent);
  question->chooser = gtk_file_chooser_native_new (heading, parent, action, accept, _("_Cancel"));
  gtk_native_dialog_set_modal (GTK_NATIVE_DIALOG (question->chooser), TRUE);
  return question;
}

static void
question_free (Question *question)
{
  g_object_unref (question->chooser);
  g_object_unref (question->parent);
  g_free (question->ending);
  g_free (question->typed);
  g_free (question->path);
  g_free (question);
}

static void
question_refuse (Question *question)
{
  if (question->refused != NULL)
    question->refused (question->data);
  question_free (question);
}

static void
question_accept (Question *question)
{
  question->chosen (question->path, question->data);
  question_free (question);
}

/* At the place and under the name that was not to be taken, to be altered. */
static void
question_ask_again (Question *question)
{
  g_autofree char *folder_path = g_path_get_dirname (question->path), *name = g_path_get_basename (question->path);
  g_autoptr (GFile) folder = g_file_new_for_path (folder_path);

  gtk_file_chooser_set_current_folder (GTK_FILE_CHOOSER (question->chooser), folder, NULL);
  gtk_file_chooser_set_current_name (GTK_FILE_CHOOSER (question->chooser), name);
  gtk_native_dialog_show (GTK_NATIVE_DIALOG (question->chooser));
}

static void
replace_answered (ReplaceAnswer answer, gpointer data)
{
  Question *question = data;

  if (answer == REPLACE_THEM)
    question_accept (question);
  else if (answer == REPLACE_NOT_BUT_ELSEWHERE)
    question_ask_again (question);
  else
    question_refuse (question);
}

/* The caller's. */
static char *
question_complete (const Question *question, const char *typed)
{
  if (question->complete != NULL)
    return question->complete (typed, question->data);
  return question->ending == NULL || g_str_has_suffix (typed, question->ending) ? g_strdup (typed) : g_strconcat (typed, question->ending, NULL);
}

/* What would be lost unasked: the chooser asked about the name that was typed, and about no other. Who asks may be gone meanwhile. */
static void
files_told (GPtrArray *takes, gpointer data)
{
  g_autoptr (GPtrArray) paths = takes;
  Question *question = data;

  if (!gtk_widget_get_realized (GTK_WIDGET (question->parent)))
    question_refuse (question);
  else if (paths->len == 0 || (paths->len == 1 && g_str_equal (paths->pdata[0], question->typed)))
    question_accept (question);
  else
    replace_question_ask (question->parent, paths, replace_answered, question, NULL);
}

/* The caller's. */
static GPtrArray *
question_file_there (const Question *question)
{
  GPtrArray *paths = g_ptr_array_new_with_free_func (g_free);

  if (question->ending != NULL && g_file_test (question->path, G_FILE_TEST_EXISTS))
    g_ptr_array_add (paths, g_strdup (question->path));
  return paths;
}

/* Takes the path that was typed or pressed. */
static void
question_answered (Question *question, char *takes)
{
  g_free (question->typed);
  g_free (question->path);
  question->typed = takes;
  question->path = question_complete (question, takes);
  if (question->in_the_way != NULL)
    question->in_the_way (question->path, files_told, question, question->data);
  else
    files_told (question_file_there (question), question);
}

static void
chooser_answered (Question *question, int response)
{
  g_autoptr (GFile) file = response == GTK_RESPONSE_ACCEPT ? gtk_file_chooser_get_file (GTK_FILE_CHOOSER (question->chooser)) : NULL;
  char *path = file == NULL ? NULL : g_file_get_path (file);

  if (path == NULL)
    question_refuse (question);
  else
    question_answered (question, path);
}

static void
question_ask (Question *question)
{
  g_signal_connect_swapped (question->chooser, "response", G_CALLBACK (chooser_answered), question);
  gtk_native_dialog_show (GTK_NATIVE_DIALOG (question->chooser));
}

/* Files of this ending (NULL: none), and of others (without the dot). */
static void
question_filter (Question *question, const char *kind, const char *ending, const char *const *others)
{
  g_autoptr (GtkFileFilter) filter = gtk_file_filter_new ();

  gtk_file_filter_set_name (filter, kind);
  if (ending != NULL)
    gtk_file_filter_add_suffix (filter, ending + 1);
  for (size_t i = 0; others != NULL && others[i] != NULL; i++)
    gtk_file_filter_add_suffix (filter, others[i]);
  gtk_file_chooser_add_filter (GTK_FILE_CHOOSER (question->chooser), filter);
}

static void
question_filter_all (Question *question)
{
  g_autoptr (GtkFileFilter) all = gtk_file_filter_new ();

  gtk_file_filter_set_name (all, _("All files"));
  gtk_file_filter_add_pattern (all, "*");
  gtk_file_chooser_add_filter (GTK_FILE_CHOOSER (question->chooser), all);
}

/* Whatever can be opened at all, and so what is meant as a rule. */
static void
question_filter_everything (Question *question)
{
  g_autoptr (GStrvBuilder) endings = g_strv_builder_new ();
  g_auto (GStrv) all = NULL;

  g_strv_builder_addv (endings, (const char **) plan_kind_endings ());
  g_strv_builder_addv (endings, (const char **) brought_io_endings ());
  all = g_strv_builder_end (endings);
  question_filter (question, _("Documents, plans and outlines"), ".trammel", (const char *const *) all);
}

void
file_chooser_open (GtkWindow *parent, FileChosen chosen, gpointer data)
{
  Question *question = question_new (parent, _("Open"), GTK_FILE_CHOOSER_ACTION_OPEN, _("_Open"));

  question->chosen = chosen;
  question->data = data;
  question_filter_everything (question);
  question_filter (question, _("Trammel documents"), ".trammel", NULL);
  question_filter (question, _("Plans: pictures and PDFs"), NULL, plan_kind_endings ());
  question_filter (question, _("Outlines: SVG, DXF and tables of points"), NULL, brought_io_endings ());
  question_filter_all (question);
  question_ask (question);
}

void
file_chooser_open_plan (GtkWindow *parent, const char *heading, FileChosen chosen, gpointer data)
{
  Question *question = question_new (parent, heading, GTK_FILE_CHOOSER_ACTION_OPEN, _("_Open"));

  question->chosen = chosen;
  question->data = data;
  question_filter (question, _("Plans: pictures and PDFs"), NULL, plan_kind_endings ());
  question_filter_all (question);
  question_ask (question);
}

void
file_chooser_open_outline (GtkWindow *parent, FileChosen chosen, gpointer data)
{
  Question *question = question_new (parent, _("Bring In Outline"), GTK_FILE_CHOOSER_ACTION_OPEN, _("_Open"));

  question->chosen = chosen;
  question->data = data;
  question_filter (question, _("Outlines: SVG, DXF and tables of points"), NULL, brought_io_endings ());
  question_filter_all (question);
  question_ask (question);
}

static void
question_propose (Question *question, const SaveChoice *choice)
{
  g_autofree char *name = g_strconcat (choice->name, g_str_has_suffix (choice->name, choice->ending) ? "" : choice->ending, NULL);

  g_strdelimit (name, "/", '-');
  gtk_file_chooser_set_current_name (GTK_FILE_CHOOSER (question->chooser), name);
  if (choice->folder != NULL || choice->folder_of != NULL) {
    g_autofree char *path = choice->folder != NULL ? g_strdup (choice->folder) : g_path_get_dirname (choice->folder_of);
    g_autoptr (GFile) folder = g_file_new_for_path (path);
    gtk_file_chooser_set_current_folder (GTK_FILE_CHOOSER (question->chooser), folder, NULL);
  }
}

void
file_chooser_save (GtkWindow *parent, const SaveChoice *choice)
{
  Question *question = question_new (parent, choice->heading, GTK_FILE_CHOOSER_ACTION_SAVE, _("_Save"));

  question->ending = g_strdup (choice->ending);
  question->complete = choice->complete;
  question->in_the_way = choice->in_the_way;
  question->chosen = choice->chosen;
  question->refused = choice->refused;
  question->data = choice->data;
  question_filter (question, choice->kind, choice->ending, NULL);
  question_propose (question, choice);
  question_ask (question);
}
