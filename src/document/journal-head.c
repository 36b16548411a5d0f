#include "document/journal-head.h"
#include <errno.h>
#include <signal.h>
#include <stdlib.h>
#include <string.h>
#include <unistd.h>

static const char first_line[] = "trammel-journal 1\n";

/* The 22nd field of /proc/PID/stat (proc(5)); the second may hold blanks and brackets, so counting begins behind the last bracket.
 * 0 where it cannot be told. */
static guint64
process_started (int process)
{
  g_autofree char *path = g_strdup_printf ("/proc/%d/stat", process);
  g_autofree char *stat = NULL;
  g_auto (GStrv) fields = NULL;
  const char *behind;

  if (!g_file_get_contents (path, &stat, NULL, NULL) || !(behind = strrchr (stat, ')')))
    return 0;
  fields = g_strsplit (behind + 1, " ", -1);
  return g_strv_length (fields) > 20 ? g_ascii_strtoull (fields[20], NULL, 10) : 0;
}

JournalHead
journal_head_now (void)
{
  const int process = getpid ();

  return (JournalHead) { .process = process, .started = process_started (process), .time = g_get_real_time () / G_USEC_PER_SEC };
}

void
journal_head_clear (JournalHead *head)
{
  g_clear_pointer (&head->path, g_free);
  g_clear_pointer (&head->name, g_free);
}

static void
append_text (GString *to, const char *key, const char *value)
{
  g_autofree char *escaped = value ? g_strescape (value, NULL) : NULL;

  if (escaped)
    g_string_append_printf (to, "%s=%s\n", key, escaped);
}

char *
journal_head_text (const JournalHead *head)
{
  GString *text = g_string_new (first_line);

  g_string_append_printf (text, "process=%d %" G_GUINT64_FORMAT "\n", head->process, head->started);
  g_string_append_printf (text, "time=%" G_GINT64_FORMAT "\n", head->time);
  append_text (text, "path", head->path);
  append_text (text, "name", head->name);
  g_string_append_c (text, '\n');
  return g_string_free (text, FALSE);
}

static void
read_line (JournalHead *head, const char *line)
{
  char *behind;

  if (g_str_has_prefix (line, "process="))
    {
      head->process = (int) strtol (line + 8, &behind, 10);
      head->started = g_ascii_strtoull (behind, NULL, 10);
    }
  else if (g_str_has_prefix (line, "time="))
    head->time = g_ascii_strtoll (line + 5, NULL, 10);
  else if (g_str_has_prefix (line, "path=") && !head->path)
    head->path = g_strcompress (line + 5);
  else if (g_str_has_prefix (line, "name=") && !head->name)
    head->name = g_strcompress (line + 5);
}

bool
journal_head_read (const char *text, JournalHead *head, const char **body)
{
  const char *end = strstr (text, "\n\n");
  g_autofree char *lines = NULL;
  g_auto (GStrv) split = NULL;

  if (!g_str_has_prefix (text, first_line) || !end)
    return false;
  *head = (JournalHead) { 0 };
  lines = g_strndup (text, (size_t) (end - text));
  split = g_strsplit (lines, "\n", -1);
  for (char **line = split; *line; line++)
    read_line (head, *line);
  *body = end + 2;
  return true;
}

bool
journal_head_is_running (const JournalHead *head)
{
  if (head->process <= 0 || (kill (head->process, 0) < 0 && errno == ESRCH))
    return false;
  return process_started (head->process) == head->started;
}
