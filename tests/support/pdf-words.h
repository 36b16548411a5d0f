#pragma once
#include <glib.h>
#include <poppler.h>
#include "geometry/segment.h"

/** A word on a page as poppler reads it, mm from the page's upper left corner. */
typedef struct {
  Box box;
  GArray *letters;         /* Box, what each letter's body fills at least */
  char *text;
} PdfWord;

/** All words of a page, PdfWord; freed with the array. */
GArray *pdf_words (PopplerPage *page);
/** Whether letters of the one lie on letters of the other. */
gboolean pdf_words_meet (const PdfWord *a, const PdfWord *b);
