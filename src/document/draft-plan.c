#include "document/draft-private.h"
#include "document/base64.h"
#include "document/reader-values.h"
#include "trammel-config.h"
#include <glib/gi18n-lib.h>

/* As much text as the largest picture has, and a little to know more by. */
static const size_t TEXT_MOST = PLAN_IMAGE_MOST / 3 * 4 + 8;

void
draft_begin_image (Draft *self, const SaxElement *element)
{
  Plan *plan = (Plan *) self->frames[self->depth - 2].piece;
  char *attributes;

  if (plan->image)
    draft_tell_second (self, &plan->piece, ELEMENT_IMAGE, element->line);
  values_read (ELEMENT_IMAGE, element, plan, self->problems, &attributes);
  draft_keep_inner (self, INNER_IMAGE, 0, attributes);
  self->image = g_string_new (NULL);
}

bool
draft_text (Draft *self, const char *text, size_t length)
{
  if (!self->image || self->frames[self->depth - 1].id != ELEMENT_IMAGE)
    return false;
  for (size_t i = 0; i < length && self->image->len < TEXT_MOST; i++)
    if (!g_ascii_isspace (text[i]))
      g_string_append_c (self->image, text[i]);
  return true;
}

void
draft_end_image (Draft *self, Plan *plan, int line)
{
  GBytes *bytes = base64_read (self->image->str, self->image->len);
  const size_t size = bytes ? g_bytes_get_size (bytes) : 0;

  if (self->image->len >= TEXT_MOST || size > PLAN_IMAGE_MOST)
    problems_add (self->problems, READER_ERROR_VALUE, line,
                  _("<image>: its picture is larger than %u MB; keep it as a file beside the document, and name it with file=\"…\""),
                  PLAN_IMAGE_MOST / 1024 / 1024);
  else if (!bytes)
    problems_add (self->problems, READER_ERROR_VALUE, line,
                  _("<image>: its text is no picture’s (base64); put the picture in again, or take the element out"));
  else if (size == 0)
    problems_add (self->problems, READER_ERROR_VALUE, line, _("<image>: it is empty; put a picture in, or take the element out"));
  g_clear_pointer (&plan->image, g_bytes_unref);
  if (size > 0)
    plan->image = g_steal_pointer (&bytes);
  g_clear_pointer (&bytes, g_bytes_unref);
  g_string_free (g_steal_pointer (&self->image), TRUE);
}
