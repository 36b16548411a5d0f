#include "document/problems.h"
#include <string.h>

G_DEFINE_QUARK (trammel-reader-error-quark, reader_error)

typedef struct { ReaderError code; int line; size_t order; char *sentence; } Problem;

struct Problems { const char *file; GArray *list; };

static void
problem_clear (gpointer data)
{
  g_free (((Problem *) data)->sentence);
}

Problems *
problems_new (const char *file)
{
  Problems *self = g_new0 (Problems, 1);

  self->file = file;
  self->list = g_array_new (FALSE, FALSE, sizeof (Problem));
  g_array_set_clear_func (self->list, problem_clear);
  return self;
}

void
problems_free (Problems *self)
{
  g_array_unref (self->list);
  g_free (self);
}

size_t
problems_count (const Problems *self)
{
  return self->list->len;
}

void
problems_add (Problems *self, ReaderError code, int line, const char *format, ...)
{
  Problem problem = { .code = code, .line = line, .order = self->list->len };
  va_list arguments;

  if (self->list->len == PROBLEMS_MOST)
    return;
  va_start (arguments, format);
  problem.sentence = g_strdup_vprintf (format, arguments);
  va_end (arguments);
  g_array_append_val (self->list, problem);
}

static int
problem_compare (gconstpointer a, gconstpointer b)
{
  const Problem *one = a, *other = b;

  if (one->line != other->line)
    return one->line < other->line ? -1 : 1;
  return one->order < other->order ? -1 : one->order > other->order;
}

static char *
problem_text (const Problems *self, const Problem *problem)
{
  if (problem->line > 0)
    return g_strdup_printf ("%s:%d: %s", self->file, problem->line, problem->sentence);
  return g_strdup_printf ("%s: %s", self->file, problem->sentence);
}

void
problems_tell (Problems *self, GPtrArray *texts, GError **error)
{
  g_array_sort (self->list, problem_compare);
  for (guint i = 0; i < self->list->len; i++)
    {
      const Problem *problem = &g_array_index (self->list, Problem, i);
      g_autofree char *text = problem_text (self, problem);

      if (i == 0)
        g_set_error_literal (error, READER_ERROR, problem->code, text);
      if (texts)
        g_ptr_array_add (texts, g_steal_pointer (&text));
    }
}

char *
problems_quote (const char *text, gssize length)
{
  g_autofree char *valid = g_utf8_make_valid (text, length);

  g_strdelimit (valid, "\n\r\t", ' ');
  if (g_utf8_strlen (valid, -1) <= 40)
    return g_steal_pointer (&valid);
  *g_utf8_offset_to_pointer (valid, 39) = '\0';
  return g_strconcat (valid, "…", NULL);
}
