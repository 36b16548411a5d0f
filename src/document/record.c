#include "document/elements.h"
#include <string.h>

void
record_set_defaults (ElementId id, void *record)
{
  for (const Attribute *at = element_of (id)->attributes; at->name; at++)
    switch (at->kind)
      {
      case VALUE_NUMBER: *record_number (at, record) = at->fallback; break;
      case VALUE_FLAG:   *record_flag (at, record) = at->fallback != 0; break;
      case VALUE_WORD:   *record_word (at, record) = (int) at->fallback; break;
      case VALUE_TEXT:
    case VALUE_DATE:
      case VALUE_ID:     break;      /* NULL from the start; what the maker put there stays */
      }
}

static bool
attribute_is_text (const Attribute *at)
{
  return at->kind == VALUE_TEXT || at->kind == VALUE_ID || at->kind == VALUE_DATE;
}

void
record_dup_texts (ElementId id, void *record)
{
  for (const Attribute *at = element_of (id)->attributes; at->name; at++)
    if (attribute_is_text (at))
      *record_text (at, record) = g_strdup (*record_text (at, record));
}

void
record_clear (ElementId id, void *record)
{
  for (const Attribute *at = element_of (id)->attributes; at->name; at++)
    if (attribute_is_text (at))
      g_clear_pointer (record_text (at, record), g_free);
}

/* Numbers not given are equal to each other. */
static bool
number_equal (double a, double b)
{
  return a == b || (isnan (a) && isnan (b));
}

static bool
attribute_equal (const Attribute *at, const void *a, const void *b)
{
  void *one = (void *) a, *other = (void *) b;      /* only read here */

  switch (at->kind)
    {
    case VALUE_NUMBER: return number_equal (*record_number (at, one), *record_number (at, other));
    case VALUE_FLAG:   return *record_flag (at, one) == *record_flag (at, other);
    case VALUE_WORD:   return *record_word (at, one) == *record_word (at, other);
    case VALUE_TEXT:
    case VALUE_DATE:
    case VALUE_ID:     return g_strcmp0 (*record_text (at, one), *record_text (at, other)) == 0;
    }
  return false;
}

bool
record_equal (ElementId id, const void *a, const void *b)
{
  for (const Attribute *at = element_of (id)->attributes; at->name; at++)
    if (!attribute_equal (at, a, b))
      return false;
  return true;
}
