#include "support/pdf-words.h"
#include <math.h>

static const double points_per_mm = 72 / 25.4;

static void
word_clear (gpointer data)
{
  PdfWord *word = data;

  g_array_unref (word->letters);
  g_free (word->text);
}

static Box
box_of_letter (PopplerRectangle letter)
{
  return (Box) { { letter.x1 / points_per_mm, letter.y1 / points_per_mm }, { letter.x2 / points_per_mm, letter.y2 / points_per_mm } };
}

/* Poppler's box of a letter has the room of its highest ascender and its lowest descender; this has the part that letters have ink in. */
static Box
body_of_letter (Box box)
{
  const double x = 0.2 * (box.max.x - box.min.x), y = 0.3 * (box.max.y - box.min.y);

  return (Box) { { box.min.x + x, box.min.y + y }, { box.max.x - x, box.max.y - y } };
}

static Box
box_around (Box a, Box b)
{
  return (Box) { { fmin (a.min.x, b.min.x), fmin (a.min.y, b.min.y) }, { fmax (a.max.x, b.max.x), fmax (a.max.y, b.max.y) } };
}

static void
word_add_letter (PdfWord *word, Box box, const char *letter)
{
  const Box body = body_of_letter (box);
  char *longer = g_strdup_printf ("%s%.*s", word->text == NULL ? "" : word->text, (int) (g_utf8_next_char (letter) - letter), letter);

  word->box = word->letters->len == 0 ? box : box_around (word->box, box);
  g_array_append_val (word->letters, body);
  g_free (word->text);
  word->text = longer;
}

GArray *
pdf_words (PopplerPage *page)
{
  GArray *words = g_array_new (FALSE, FALSE, sizeof (PdfWord));
  g_autofree char *text = poppler_page_get_text (page);
  g_autofree PopplerRectangle *letters = NULL;
  PdfWord *word = NULL;
  guint count = 0, i = 0;

  g_array_set_clear_func (words, word_clear);
  poppler_page_get_text_layout (page, &letters, &count);
  for (const char *at = text; *at != '\0' && i < count; at = g_utf8_next_char (at), i++)
    {
      if (g_unichar_isspace (g_utf8_get_char (at)))
        {
          word = NULL;
          continue;
        }
      if (word == NULL)
        {
          const PdfWord none = { .letters = g_array_new (FALSE, FALSE, sizeof (Box)) };

          g_array_append_val (words, none);
          word = &g_array_index (words, PdfWord, words->len - 1);
        }
      word_add_letter (word, box_of_letter (letters[i]), at);
    }
  return words;
}

static gboolean
boxes_share (Box a, Box b)
{
  return a.min.x < b.max.x && b.min.x < a.max.x && a.min.y < b.max.y && b.min.y < a.max.y;
}

gboolean
pdf_words_meet (const PdfWord *a, const PdfWord *b)
{
  if (!boxes_share (a->box, b->box))
    return FALSE;
  for (guint i = 0; i < a->letters->len; i++)
    for (guint j = 0; j < b->letters->len; j++)
      if (boxes_share (g_array_index (a->letters, Box, i), g_array_index (b->letters, Box, j)))
        return TRUE;
  return FALSE;
}
