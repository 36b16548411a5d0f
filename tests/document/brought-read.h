#pragma once
#include <check.h>
#include <math.h>
#include <string.h>
#include "document/brought.h"

/** What a text holds; ends the test where it is refused. brought_free it. */
static inline Brought *
brought_from (const char *text)
{
  GError *error = NULL;
  Brought *made = brought_read (text, strlen (text), "drawing", &error);

  ck_assert_msg (made != NULL, "%s", error ? error->message : "");
  return made;
}

/** The sentence with which it is refused; the caller's. Ends the test where it is taken. */
static inline char *
brought_refusal (const char *text, BroughtError code)
{
  GError *error = NULL;
  Brought *made = brought_read (text, strlen (text), "drawing", &error);
  char *sentence;

  ck_assert_ptr_null (made);
  ck_assert (g_error_matches (error, BROUGHT_ERROR, (int) code));
  sentence = g_strdup (error->message);
  g_error_free (error);
  return sentence;
}

/** Node i of a line; 0 is its start. */
static inline Point
brought_node (const BroughtLine *line, size_t i)
{
  return i ? line->segments[i - 1].to : line->start;
}

static inline void
assert_near (Point found, double x, double y, double within)
{
  ck_assert_msg (hypot (found.x - x, found.y - y) <= within, "(%.9g, %.9g) is not (%.9g, %.9g)", found.x, found.y, x, y);
}

/** Whether `lines` in whatever order hold a line of that name. */
static inline const BroughtLine *
brought_named (const Brought *self, const char *name)
{
  for (size_t i = 0; i < self->count; i++)
    if (g_strcmp0 (self->lines[i].name, name) == 0)
      return &self->lines[i];
  ck_abort_msg ("no line is called %s", name);
  return NULL;
}
