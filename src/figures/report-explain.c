#include "figures/report.h"

#include "trammel-config.h"
#include <glib/gi18n-lib.h>
#include "figures/explanation.h"
#include "figures/text-table.h"

enum { LINE_WIDTH = 78, INDENT = 4 };

/* "    Source: …", wrapped and hanging under its first letter. Nothing without text. */
static void
append_paragraph (GString *text, const char *label, const char *paragraph)
{
  g_autofree char *whole = NULL;

  if (!paragraph)
    return;
  whole = label ? g_strdup_printf ("%s %s", label, paragraph) : g_strdup (paragraph);
  g_string_append_printf (text, "%*s", INDENT, "");
  text_wrap (text, whole, INDENT, LINE_WIDTH);
}

static void
append_inputs (GString *text, const Explanation *one)
{
  TextTable table = text_table_new (2, 0);
  g_autoptr (GString) lines = g_string_new (NULL);

  for (size_t i = 0; i < one->input_count; i++)
    {
      text_table_cell (&table, g_strdup (one->inputs[i].label));
      text_table_cell (&table, g_strdup (one->inputs[i].text));
    }
  text_table_print (&table, lines);
  g_auto (GStrv) rows = g_strsplit (lines->str, "\n", -1);
  for (char **row = rows; *row && **row; row++)
    g_string_append_printf (text, "%*s%s\n", INDENT, "", *row);
}

static void
append_explanation (GString *text, const Explanation *one)
{
  g_string_append (text, "\n  ");
  g_autofree char *head = g_strdup_printf ("%s: %s", one->title, one->result);
  text_wrap (text, head, 2, LINE_WIDTH);
  append_paragraph (text, NULL, one->formula);
  append_inputs (text, one);
  append_paragraph (text, _("Source:"), one->source);
  append_paragraph (text, _("Limits:"), one->limits);
  append_paragraph (text, _("Deviation:"), one->owed);
}

char *
report_explanations (const Figures *figures, Units units)
{
  g_autoptr (GPtrArray) all = explanations_of (figures, units);
  GString *text = g_string_new (NULL);

  if (all->len)
    g_string_append_printf (text, "\n%s\n", _("How these figures are reckoned"));
  for (guint i = 0; i < all->len; i++)
    append_explanation (text, g_ptr_array_index (all, i));
  return g_string_free (text, FALSE);
}
