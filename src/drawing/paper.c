#include "trammel-config.h"
#include "drawing/paper.h"
#include <glib/gi18n-lib.h>

static const Paper papers[] = {
  { .word = "a4",      .title = "A4",      .width = 297,   .height = 210 },
  { .word = "a3",      .title = "A3",      .width = 420,   .height = 297 },
  { .word = "a2",      .title = "A2",      .width = 594,   .height = 420 },
  { .word = "a1",      .title = "A1",      .width = 841,   .height = 594 },
  { .word = "a0",      .title = "A0",      .width = 1189,  .height = 841 },
  { .word = "letter",  .title = N_("Letter"),  .width = 279.4, .height = 215.9 },
  { .word = "tabloid", .title = N_("Tabloid"), .width = 431.8, .height = 279.4 },
  { .word = "ansi-c",  .title = "ANSI C",  .width = 558.8, .height = 431.8 },
  { .word = "ansi-d",  .title = "ANSI D",  .width = 863.6, .height = 558.8 },
};

const Paper *
paper_find (const char *word)
{
  for (size_t i = 0; i < G_N_ELEMENTS (papers); i++)
    if (g_ascii_strcasecmp (papers[i].word, word) == 0)
      return &papers[i];
  return NULL;
}

const Paper *
paper_nth (size_t index)
{
  return index < G_N_ELEMENTS (papers) ? &papers[index] : NULL;
}

char *
paper_words (const char *between)
{
  GString *words = g_string_new (papers[0].word);

  for (size_t i = 1; i < G_N_ELEMENTS (papers); i++)
    g_string_append_printf (words, "%s%s", between, papers[i].word);
  return g_string_free (words, FALSE);
}
