#include "document/catalogue-private.h"
#include <math.h>
#include <string.h>
#include <libxml/parserInternals.h>
#include "document/number-text.h"
#include "document/parse-told.h"
#include "document/part-class.h"
#include "document/reader-values.h"
#include "trammel-config.h"
#include <glib/gi18n-lib.h>

/* In parts of a model of this size nothing is heavier, longer or stronger. */
#define MOST 1e5
enum { DEPTH_MOST = 64, ELEMENTS_MOST = 20000 };

#define NUMBER(word, field, of_unit) \
  { .name = word, .offset = offsetof (CatalogueEntry, field), .least = 0, .most = MOST, .fallback = NAN, .unit = of_unit }
#define TEXT(word, field) { .name = word, .kind = VALUE_TEXT, .offset = offsetof (CatalogueEntry, field) }

static const Attribute of_entry[] = {
  { .name = "id", .kind = VALUE_ID, .presence = PRESENCE_REQUIRED, .offset = offsetof (CatalogueEntry, id) },
  { .name = "class", .kind = VALUE_TEXT, .presence = PRESENCE_REQUIRED, .offset = offsetof (CatalogueEntry, class_name) },
  { .name = "name", .kind = VALUE_TEXT, .presence = PRESENCE_REQUIRED, .offset = offsetof (CatalogueEntry, name) },
  { .name = "mass", .presence = PRESENCE_REQUIRED, .offset = offsetof (CatalogueEntry, mass), .least = 0, .most = MOST, .unit = "g" },
  NUMBER ("mass-sigma", mass_sigma, "g"), NUMBER ("length", length, "mm"), NUMBER ("width", width, "mm"), NUMBER ("height", height, "mm"),
  NUMBER ("lead", lead, "mm"), NUMBER ("cells", cells, ""), NUMBER ("capacity", capacity, "mAh"), NUMBER ("power", power, "W"),
  NUMBER ("current", current, "A"), NUMBER ("rpm-per-volt", rpm_per_volt, ""), NUMBER ("pitch", pitch, "mm"),
  NUMBER ("fits-from", fits_from, "g"), NUMBER ("fits-to", fits_to, "g"),
  TEXT ("use", use), TEXT ("source", source),
  { .name = NULL }
};

static const Attribute of_root[] = {
  { .name = "version", .presence = PRESENCE_REQUIRED, .least = 1, .most = CATALOGUE_VERSION },
  { .name = NULL }
};

typedef struct {
  xmlParserCtxt *context;
  const CatalogueSink *sink;
  Problems *problems;
  int depth, elements;
  bool stopped;
} Parse;

void
catalogue_entry_free (CatalogueEntry *entry)
{
  for (const Attribute *at = of_entry; entry && at->name; at++)
    if (at->kind != VALUE_NUMBER)
      g_free (*record_text (at, entry));
  g_free (entry);
}

static void
parse_stop (Parse *parse)
{
  parse->stopped = true;
  xmlStopParser (parse->context);
}

/* Sizes are drawn where they are given. */
static void
settle_sizes (CatalogueEntry *entry)
{
  double *const sizes[] = { &entry->length, &entry->width, &entry->height };

  for (size_t i = 0; i < G_N_ELEMENTS (sizes); i++)
    if (isnan (*sizes[i]))
      *sizes[i] = 0;
}

static void
tell_unknown_class (Parse *parse, const SaxElement *element, const CatalogueEntry *entry)
{
  g_autofree char *subject = element_subject (element->name, entry->id), *quote = problems_quote (entry->class_name, -1);
  g_autoptr (GString) words = g_string_new (NULL);

  for (const PartClass *class = part_classes (); class->word; class++)
    g_string_append_printf (words, "%s%s", words->len > 0 ? ", " : "", class->word);
  problems_add (parse->problems, READER_ERROR_VALUE, element->line, _("%s: class is “%s”; write one of these: %s"),
                subject, quote, words->str);
}

static void
take_entry (Parse *parse, const SaxElement *element)
{
  const size_t before = problems_count (parse->problems);
  CatalogueEntry *entry = g_new0 (CatalogueEntry, 1);
  g_autofree char *foreign = NULL;

  for (const Attribute *at = of_entry; at->name; at++)
    if (at->kind == VALUE_NUMBER)
      *record_number (at, entry) = at->fallback;
  values_read_by (of_entry, element, entry, parse->problems, &foreign);
  settle_sizes (entry);
  if (problems_count (parse->problems) == before && !part_class_find (entry->class_name))
    tell_unknown_class (parse, element, entry);
  if (problems_count (parse->problems) == before)
    parse->sink->take (parse->sink->taker, entry, element->line);
  else
    catalogue_entry_free (entry);
  if (problems_count (parse->problems) == PROBLEMS_MOST)
    parse_stop (parse);
}

static bool
begin_root (Parse *parse, const SaxElement *element)
{
  g_autofree char *quote = problems_quote (element->name, -1), *foreign = NULL;
  const size_t before = problems_count (parse->problems);
  SaxAttribute found;
  double version;

  if (strcmp (element->name, "catalogue") != 0 || g_strcmp0 (element->uri, CATALOGUE_NAMESPACE) != 0)
    problems_add (parse->problems, READER_ERROR_FOREIGN, element->line,
                  _("this is <%s>, not a catalogue of parts; write <catalogue xmlns=\"%s\" version=\"%d\">"), quote, CATALOGUE_NAMESPACE,
                  CATALOGUE_VERSION);
  else if (sax_find (element, "version", &found) && number_read (found.value, found.length, &version) && version > CATALOGUE_VERSION)
    problems_add (parse->problems, READER_ERROR_NEWER, element->line,
                  _("this catalogue is of version %g, and this program reads version %d; write one of that version"),
                  version, CATALOGUE_VERSION);
  else
    values_read_by (of_root, element, &version, parse->problems, &foreign);
  return problems_count (parse->problems) == before;
}

/* Elements of a later version are passed over, with all in them. */
static void
begin (Parse *parse, const SaxElement *element)
{
  parse->depth++;
  if (parse->depth > DEPTH_MOST || ++parse->elements > ELEMENTS_MOST)
    {
      problems_add (parse->problems, READER_ERROR_HOSTILE, element->line,
                    _("this is more than any catalogue needs; what stands behind it was not read"));
      parse_stop (parse);
    }
  else if (parse->depth == 1 && !begin_root (parse, element))
    parse_stop (parse);
  else if (parse->depth == 2 && strcmp (element->name, "part") == 0 && g_strcmp0 (element->uri, CATALOGUE_NAMESPACE) == 0)
    take_entry (parse, element);
}

static void
on_start (void *data, const xmlChar *name, const xmlChar *prefix, const xmlChar *uri, int namespace_count,
          const xmlChar **namespaces, int attribute_count, int defaulted, const xmlChar **attributes)
{
  Parse *parse = data;
  const SaxElement element = {
    .name = (const char *) name, .prefix = (const char *) prefix, .uri = (const char *) uri,
    .namespaces = namespaces, .namespace_count = namespace_count,
    .attributes = attributes, .attribute_count = attribute_count, .line = parse_line_of_tag (parse->context),
  };

  if (!parse->stopped)
    begin (parse, &element);
}

static void
on_end (void *data, const xmlChar *name, const xmlChar *prefix, const xmlChar *uri)
{
  ((Parse *) data)->depth--;
}

/* The scan before has refused declarations; this is the second bolt on that door. */
static void
on_declaration (void *data, const xmlChar *name, const xmlChar *external, const xmlChar *system)
{
  parse_stop (data);
}

static void
on_error (void *data, xmlErrorPtr error)
{
  Parse *parse = data;

  if (parse->stopped || error->level < XML_ERR_ERROR)
    return;
  parse_tell_broken (parse->context, error, parse->problems);
  parse_stop (parse);
}

static const xmlSAXHandler handler = {
  .initialized = XML_SAX2_MAGIC, .internalSubset = on_declaration, .startElementNs = on_start, .endElementNs = on_end, .serror = on_error,
};

void
catalogue_parse (const char *data, size_t length, const CatalogueSink *sink, Problems *problems)
{
  Parse parse = { .context = xmlCreateMemoryParserCtxt (data, (int) length), .sink = sink, .problems = problems };

  if (!parse.context)
    {
      problems_add (problems, READER_ERROR_UNREADABLE, 0, _("there is not enough memory to read it; close something and try again"));
      return;
    }
  *parse.context->sax = handler;
  parse.context->userData = &parse;
  /* No network and no entities; the encoding has been looked at before. */
  xmlCtxtUseOptions (parse.context, XML_PARSE_NONET | XML_PARSE_IGNORE_ENC);
  xmlParseDocument (parse.context);
  xmlFreeParserCtxt (parse.context);
}
