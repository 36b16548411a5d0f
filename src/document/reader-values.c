#include "document/reader-values.h"
#include <string.h>
#include "document/foreign-text.h"
#include "document/number-text.h"
#include "trammel-config.h"
#include <glib/gi18n-lib.h>

/* One attribute on its way into a record. */
typedef struct {
  const SaxElement *element;
  const Attribute *rule;
  const SaxAttribute *found;
  Problems *problems;
} Value;

char *
element_subject (const char *name, const char *id)
{
  g_autofree char *quote = id ? problems_quote (id, -1) : NULL;

  return quote ? g_strdup_printf ("<%s id=\"%s\">", name, quote) : g_strdup_printf ("<%s>", name);
}

static char *
subject_of (const SaxElement *element)
{
  SaxAttribute attribute;
  g_autofree char *id = sax_find (element, "id", &attribute) ? sax_value (&attribute) : NULL;

  return element_subject (element->name, id);
}

static char *
quote_of (const Value *value)
{
  g_autofree char *text = sax_value (value->found);

  return problems_quote (text, -1);
}

static void
tell_not_a_number (const Value *value)
{
  g_autofree char *subject = subject_of (value->element);
  g_autofree char *quote = quote_of (value);

  if (memchr (value->found->value, ',', value->found->length))
    problems_add (value->problems, READER_ERROR_VALUE, value->element->line,
                  _("%s: %s is “%s”; write a point for the decimals, not a comma"), subject, value->rule->name, quote);
  else
    problems_add (value->problems, READER_ERROR_VALUE, value->element->line,
                  _("%s: %s is “%s”, which is not a number; write one such as 12.5"), subject, value->rule->name, quote);
}

static void
tell_out_of_range (const Value *value, double number, double least, double most)
{
  g_autofree char *subject = subject_of (value->element);
  g_autofree char *quote = quote_of (value);
  char bound[NUMBER_ROOM];

  number_write (number < least ? least : most, bound);
  if (number < least)
    problems_add (value->problems, READER_ERROR_VALUE, value->element->line, _("%s: %s is “%s”; write %s or more"),
                  subject, value->rule->name, quote, bound);
  else
    problems_add (value->problems, READER_ERROR_VALUE, value->element->line, _("%s: %s is “%s”; write %s or less"),
                  subject, value->rule->name, quote, bound);
}

/* The words that an attribute can be. */
static char *
words_of (const Attribute *rule)
{
  return g_strjoinv (", ", (char **) rule->words + (*rule->words[0] ? 0 : 1));
}

static void
tell_not_a_word (const Value *value)
{
  g_autofree char *subject = subject_of (value->element);
  g_autofree char *quote = quote_of (value);
  g_autofree char *words = words_of (value->rule);

  problems_add (value->problems, READER_ERROR_VALUE, value->element->line,
                _("%s: %s is “%s”; write one of these: %s"), subject, value->rule->name, quote, words);
}

static void
tell_not_an_id (const Value *value)
{
  g_autofree char *subject = subject_of (value->element);
  g_autofree char *quote = quote_of (value);

  problems_add (value->problems, READER_ERROR_VALUE, value->element->line,
                _("%s: %s is “%s”; write one word without blanks"), subject, value->rule->name, quote);
}

static void
tell_missing (const SaxElement *element, const Attribute *rule, Problems *problems)
{
  g_autofree char *subject = subject_of (element);
  g_autofree char *words = rule->words ? words_of (rule) : NULL;

  if (words)
    problems_add (problems, READER_ERROR_VALUE, element->line, _("%s has no %s; add %s=\"…\", one of these: %s"),
                  subject, rule->name, rule->name, words);
  else if (rule->unit && *rule->unit)
    problems_add (problems, READER_ERROR_VALUE, element->line, _("%s has no %s; add %s=\"…\", in %s"),
                  subject, rule->name, rule->name, rule->unit);
  else if (rule->kind == VALUE_NUMBER)
    problems_add (problems, READER_ERROR_VALUE, element->line, _("%s has no %s; add %s=\"%d\""),
                  subject, rule->name, rule->name, (int) rule->least);
  else
    problems_add (problems, READER_ERROR_VALUE, element->line, _("%s has no %s; add %s=\"…\""), subject, rule->name, rule->name);
}

static void
read_number (const Value *value, void *record)
{
  const bool everywhere = value->rule->least == 0 && value->rule->most == 0;
  const double least = everywhere ? -DOCUMENT_REACH : value->rule->least;
  const double most = everywhere ? DOCUMENT_REACH : value->rule->most;
  double number;

  if (!number_read (value->found->value, value->found->length, &number))
    tell_not_a_number (value);
  else if (!(number >= least && number <= most))
    tell_out_of_range (value, number, least, most);
  else
    *record_number (value->rule, record) = number;
}

static void
read_word (const Value *value, void *record)
{
  g_autofree char *text = sax_value (value->found);
  const int place = *text ? word_find (value->rule->words, text) : -1;

  if (place < 0)
    tell_not_a_word (value);
  else if (value->rule->kind == VALUE_FLAG)
    *record_flag (value->rule, record) = place == 1;
  else
    *record_word (value->rule, record) = place;
}

static void
tell_not_a_date (const Value *value)
{
  g_autofree char *subject = subject_of (value->element), *quote = quote_of (value);

  problems_add (value->problems, READER_ERROR_VALUE, value->element->line,
                _("%s: %s is “%s”; write a day as 2026-11-25"), subject, value->rule->name, quote);
}

static bool
is_date (const char *text)
{
  static const char shape[] = "dddd-dd-dd";

  for (size_t i = 0; i < sizeof shape; i++)
    if (shape[i] == 'd' ? !g_ascii_isdigit (text[i]) : text[i] != shape[i])
      return false;
  return g_date_valid_dmy ((GDateDay) atoi (text + 8), (GDateMonth) atoi (text + 5), (GDateYear) atoi (text));
}

static bool
is_one_word (const char *text)
{
  if (!*text)
    return false;
  for (; *text; text = g_utf8_next_char (text))
    if (g_unichar_isspace (g_utf8_get_char (text)))
      return false;
  return true;
}

static void
read_text (const Value *value, void *record)
{
  char *text = sax_value (value->found);

  if (value->rule->kind == VALUE_ID && !is_one_word (text))
    {
      tell_not_an_id (value);
      g_free (text);
      return;
    }
  if (value->rule->kind == VALUE_DATE && !is_date (text))
    {
      tell_not_a_date (value);
      g_free (text);
      return;
    }
  g_free (*record_text (value->rule, record));
  *record_text (value->rule, record) = text;
}

static void
read_value (const Value *value, void *record)
{
  switch (value->rule->kind)
    {
    case VALUE_NUMBER: read_number (value, record); break;
    case VALUE_FLAG:
    case VALUE_WORD:   read_word (value, record); break;
    case VALUE_TEXT:
    case VALUE_DATE:
    case VALUE_ID:     read_text (value, record); break;
    }
}

static const Attribute *
rule_of (const Attribute *rules, const SaxAttribute *attribute)
{
  if (attribute->prefix)
    return NULL;
  for (const Attribute *rule = rules; rule->name; rule++)
    if (strcmp (rule->name, attribute->name) == 0)
      return rule;
  return NULL;
}

static bool
is_known (const SaxAttribute *attribute, gconstpointer rules)
{
  return rule_of (rules, attribute) != NULL;
}

void
values_read_by (const Attribute *rules, const SaxElement *element, void *record, Problems *problems, char **foreign)
{
  guint64 met = 0;      /* a bit a rule */
  int unknown = 0;

  for (int i = 0; i < element->attribute_count; i++)
    {
      const SaxAttribute found = sax_attribute (element, i);
      const Attribute *rule = rule_of (rules, &found);

      if (!rule)
        unknown++;
      else
        {
          met |= (guint64) 1 << (rule - rules);
          read_value (&(Value) { element, rule, &found, problems }, record);
        }
    }
  for (const Attribute *rule = rules; rule->name; rule++)
    if (rule->presence == PRESENCE_REQUIRED && !(met >> (rule - rules) & 1))
      tell_missing (element, rule, problems);
  *foreign = unknown > 0 || element->namespace_count > 0 ? foreign_attributes (element, is_known, rules) : NULL;
}

void
values_read (ElementId id, const SaxElement *element, void *record, Problems *problems, char **foreign)
{
  values_read_by (element_of (id)->attributes, element, record, problems, foreign);
}
