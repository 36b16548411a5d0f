#include "figures/notes.h"

static void
note_free (gpointer data)
{
  Note *note = data;

  g_ref_string_release (note->text);
  g_free (note);
}

GPtrArray *
notes_new (void)
{
  return g_ptr_array_new_with_free_func (note_free);
}

static void
add (GPtrArray *notes, Note note)
{
  g_ptr_array_add (notes, g_memdup2 (&note, sizeof note));
}

G_GNUC_PRINTF (1, 0) static char *
sentence (const char *format, va_list arguments)
{
  char *text = g_strdup_vprintf (format, arguments);
  char *shared = g_ref_string_new (text);

  g_free (text);
  return shared;
}

void
notes_add (GPtrArray *notes, NoteSeverity severity, const Piece *piece, const char *format, ...)
{
  va_list arguments;

  va_start (arguments, format);
  add (notes, (Note) { .severity = severity, .piece = piece, .text = sentence (format, arguments) });
  va_end (arguments);
}

void
notes_add_problem (GPtrArray *notes, const Piece *piece, const char *format, ...)
{
  va_list arguments;

  va_start (arguments, format);
  add (notes, (Note) { .severity = NOTE_ACT, .problem = true, .piece = piece, .text = sentence (format, arguments) });
  va_end (arguments);
}

void
notes_explain (GPtrArray *notes, guint from, ExplainedFigure what)
{
  for (guint i = from; i < notes->len; i++)
    ((Note *) g_ptr_array_index (notes, i))->explained = what;
}

void
notes_append (GPtrArray *notes, const GPtrArray *more)
{
  for (guint i = 0; i < more->len; i++)
    {
      Note note = *(const Note *) g_ptr_array_index (more, i);

      note.text = g_ref_string_acquire (note.text);
      add (notes, note);
    }
}

bool
note_needs_change (const Note *note)
{
  return note->severity == NOTE_ACT || (note->room && note->room->kind != ROOM_MOTOR_OUT);
}

static int
graver_first (gconstpointer a, gconstpointer b)
{
  const Note *first = *(const Note *const *) a, *second = *(const Note *const *) b;

  if (first->severity != second->severity)
    return (int) second->severity - (int) first->severity;
  if (note_needs_change (first) != note_needs_change (second))
    return note_needs_change (second) ? 1 : -1;
  return (int) second->problem - (int) first->problem;
}

void
notes_sort (GPtrArray *notes)
{
  g_ptr_array_sort (notes, graver_first);      /* a merge sort: stable */
}
