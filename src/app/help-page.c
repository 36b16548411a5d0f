#include "app/help-page.h"
#include <stdbool.h>
#include <string.h>

/* What is being read: the block under way collects markup until its element ends. */
typedef struct {
  GPtrArray *blocks;
  GString *words;                /* NULL between blocks */
  HelpBlockKind kind;
  int number, steps;
  GPtrArray *open;               /* names of open elements */
} Reading;

static void
block_free (gpointer data)
{
  HelpBlock *block = data;

  g_free (block->markup);
  g_free (block);
}

static bool
reading_is_inside (const Reading *reading, const char *element)
{
  for (guint i = 0; i < reading->open->len; i++)
    if (g_str_equal (reading->open->pdata[i], element))
      return true;
  return false;
}

static const char *
reading_parent (const Reading *reading)
{
  return reading->open->len == 0 ? "" : reading->open->pdata[reading->open->len - 1];
}

/* What a title or a paragraph is depends on where it stands. */
static HelpBlockKind
reading_block_kind (const Reading *reading, const char *element)
{
  if (g_str_equal (element, "title")) {
    const char *parent = reading_parent (reading);
    return g_str_equal (parent, "page") ? HELP_TITLE : g_str_equal (parent, "item") ? HELP_TERM : HELP_HEADING;
  }
  if (reading_is_inside (reading, "note"))
    return HELP_NOTE;
  if (reading_is_inside (reading, "steps"))
    return HELP_STEP;
  return reading_is_inside (reading, "list") ? HELP_BULLET : HELP_PARAGRAPH;
}

static const struct { const char *element, *before, *after; } inline_elements[] = {
  { "gui",    "<b>", "</b>" },
  { "key",    "<tt>", "</tt>" },
  { "em",     "<i>", "</i>" },
  { "code",   "<tt>", "</tt>" },
  { "file",   "<tt>", "</tt>" },
  { "link",   NULL, "</a>" },
};

static void
reading_open_inline (Reading *reading, const char *element, const char **names, const char **values)
{
  /* Keys pressed together stand joined. */
  if (g_str_equal (element, "key") && g_str_equal (reading_parent (reading), "keyseq") && g_str_has_suffix (reading->words->str, "</tt>"))
    g_string_append (reading->words, "+");
  for (size_t i = 0; i < G_N_ELEMENTS (inline_elements); i++)
    if (g_str_equal (element, inline_elements[i].element) && inline_elements[i].before != NULL)
      g_string_append (reading->words, inline_elements[i].before);
  for (size_t i = 0; g_str_equal (element, "link") && names[i] != NULL; i++)
    if (g_str_equal (names[i], "xref")) {
      g_autofree char *page = g_markup_escape_text (values[i], -1);
      g_string_append_printf (reading->words, "<a href=\"%s\">", page);
    }
}

static void
element_begins (GMarkupParseContext *context, const char *element, const char **names, const char **values, gpointer data, GError **error)
{
  Reading *reading = data;

  if (reading->words != NULL) {
    reading_open_inline (reading, element, names, values);
  } else if ((g_str_equal (element, "p") || g_str_equal (element, "title")) && !reading_is_inside (reading, "info")) {
    reading->kind = reading_block_kind (reading, element);
    reading->words = g_string_new (NULL);
  }
  if (g_str_equal (element, "steps"))
    reading->steps = 0;
  if (g_str_equal (element, "item"))
    reading->steps++;
  g_ptr_array_add (reading->open, g_strdup (element));
}

static void
reading_end_block (Reading *reading)
{
  HelpBlock *block = g_new0 (HelpBlock, 1);

  block->kind = reading->kind;
  block->number = reading->kind == HELP_STEP ? reading->steps : 0;
  block->markup = g_strstrip (g_string_free (g_steal_pointer (&reading->words), FALSE));
  g_ptr_array_add (reading->blocks, block);
}

static void
element_ends (GMarkupParseContext *context, const char *element, gpointer data, GError **error)
{
  Reading *reading = data;

  g_ptr_array_set_size (reading->open, (int) reading->open->len - 1);
  if (reading->words == NULL)
    return;
  if (g_str_equal (element, "p") || g_str_equal (element, "title"))
    reading_end_block (reading);
  else
    for (size_t i = 0; i < G_N_ELEMENTS (inline_elements); i++)
      if (g_str_equal (element, inline_elements[i].element))
        g_string_append (reading->words, inline_elements[i].after);
}

/* Line breaks and indentation of the source are one blank. */
static void
text_found (GMarkupParseContext *context, const char *text, gsize length, gpointer data, GError **error)
{
  Reading *reading = data;
  g_autofree char *escaped = NULL;
  bool blank;

  if (reading->words == NULL)
    return;
  escaped = g_markup_escape_text (text, (gssize) length);
  blank = reading->words->len > 0 && reading->words->str[reading->words->len - 1] == ' ';
  for (const char *c = escaped; *c != '\0'; c++) {
    const bool is_blank = g_ascii_isspace (*c);
    if (!is_blank || !blank)
      g_string_append_c (reading->words, is_blank ? ' ' : *c);
    blank = is_blank;
  }
}

GPtrArray *
help_page_read (const char *text, gssize length, GError **error)
{
  static const GMarkupParser parser = { .start_element = element_begins, .end_element = element_ends, .text = text_found };
  Reading reading = { .blocks = g_ptr_array_new_with_free_func (block_free), .open = g_ptr_array_new_with_free_func (g_free) };
  g_autoptr (GMarkupParseContext) context = g_markup_parse_context_new (&parser, 0, &reading, NULL);
  const bool sound = g_markup_parse_context_parse (context, text, length, error) && g_markup_parse_context_end_parse (context, error);

  g_ptr_array_unref (reading.open);
  if (reading.words != NULL)
    g_string_free (reading.words, TRUE);
  if (sound)
    return reading.blocks;
  g_ptr_array_unref (reading.blocks);
  return NULL;
}

char *
help_page_title (const GPtrArray *page)
{
  for (guint i = 0; i < page->len; i++) {
    const HelpBlock *block = page->pdata[i];
    if (block->kind == HELP_TITLE)
      return g_strdup (block->markup);
  }
  return g_strdup ("");
}
