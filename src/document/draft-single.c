#include "document/draft-private.h"
#include "document/reader-values.h"
#include "trammel-config.h"
#include <glib/gi18n-lib.h>

void
draft_tell_second (const Draft *self, const Piece *piece, ElementId element, int line)
{
  g_autofree char *subject = element_subject (element_of (element_of_piece (piece->kind))->name, piece->id);

  problems_add (self->problems, READER_ERROR_VALUE, line, _("%s has a second <%s>; keep one of them"), subject, element_of (element)->name);
}

void
draft_begin_single (Draft *self, const SingleField *field, const SaxElement *element)
{
  Piece *piece = self->frames[self->depth - 2].piece;
  char *attributes;

  if (*piece_single (field, piece))
    draft_tell_second (self, piece, field->element, element->line);
  *piece_single (field, piece) = true;
  values_read (field->element, element, piece, self->problems, &attributes);
  draft_keep_inner (self, field->inner, 0, attributes);
}
