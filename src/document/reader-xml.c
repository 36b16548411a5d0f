#include "document/reader-xml.h"
#include <string.h>
#include <libxml/parser.h>
#include <libxml/parserInternals.h>
#include "document/elements.h"
#include "document/foreign-text.h"
#include "document/number-text.h"
#include "document/parse-told.h"
#include "document/reader-values.h"
#include "trammel-config.h"
#include <glib/gi18n-lib.h>

enum {
  DEPTH_MOST = 64,          /* nested elements, known or not */
  ELEMENTS_MOST = 1000000,  /* elements, comments and instructions: each may cost a hundred bytes of memory for a few in the file */
  NAMESPACES_MOST = 256     /* declarations in force at one place: looking one up is linear */
};

typedef struct {
  xmlParserCtxt *context;
  Draft *draft;
  Problems *problems;
  ElementId open[DEPTH_MOST + 1];       /* known elements that are open; open[0] is ELEMENT_NONE */
  int namespaces[DEPTH_MOST + 1];       /* declared by each open element, known or not */
  int known, depth, namespaces_in_force, elements;
  ForeignText foreign;
  bool stopped, text_told;
} Parse;

static void
parse_stop (Parse *parse)
{
  parse->stopped = true;
  xmlStopParser (parse->context);
}

static int
line_now (const Parse *parse)
{
  return parse->context->input ? parse->context->input->line : 0;
}

static void
tell_other_root (Parse *parse, const SaxElement *element)
{
  g_autofree char *quote = problems_quote (element->name, -1);
  g_autofree char *plain = element->uri ? sax_plain (element->uri, strlen (element->uri)) : g_strdup ("");
  g_autofree char *uri = problems_quote (plain, -1);

  if (strcmp (element->name, "svg") == 0)
    problems_add (parse->problems, READER_ERROR_FOREIGN, element->line,
                  _("this is a drawing (SVG), not a Trammel document; open a file that ends in .trammel"));
  else if (strcmp (element->name, "aeroplane") != 0)
    problems_add (parse->problems, READER_ERROR_FOREIGN, element->line,
                  _("this is XML of another kind (<%s>), not a Trammel document; open a file that ends in .trammel"), quote);
  else if (!element->uri)
    problems_add (parse->problems, READER_ERROR_FOREIGN, element->line,
                  _("<aeroplane> is in no namespace; add xmlns=\"%s\" to it"), DOCUMENT_NAMESPACE);
  else
    problems_add (parse->problems, READER_ERROR_FOREIGN, element->line,
                  _("<aeroplane> is in the namespace “%s”; it must be “%s”"), uri, DOCUMENT_NAMESPACE);
}

/* A greater version may mean anything by what it says: nothing else is looked at. */
static bool
version_is_newer (Parse *parse, const SaxElement *element)
{
  SaxAttribute found;
  double version;
  g_autofree char *quote = NULL;

  if (!sax_find (element, "version", &found) || !number_read (found.value, found.length, &version) || version <= DOCUMENT_VERSION)
    return false;
  quote = problems_quote (found.value, (gssize) found.length);
  problems_add (parse->problems, READER_ERROR_NEWER, element->line,
                _("this document is of version %s, and this program reads version %d; open it with a newer Trammel"),
                quote, DOCUMENT_VERSION);
  return true;
}

static bool
begin_root (Parse *parse, const SaxElement *element)
{
  const bool ours = strcmp (element->name, "aeroplane") == 0 && g_strcmp0 (element->uri, DOCUMENT_NAMESPACE) == 0;

  if (!ours)
    tell_other_root (parse, element);
  return ours && !version_is_newer (parse, element);
}

/* Counts an element, a comment or an instruction; false when that was one too many. */
static bool
count_element (Parse *parse, int line)
{
  if (++parse->elements <= ELEMENTS_MOST)
    return true;
  problems_add (parse->problems, READER_ERROR_HOSTILE, line,
                _("this is the element after the first %d; no document needs that many, so nothing was read"), ELEMENTS_MOST);
  return false;
}

/* Too many, too deep, or too many prefixes in force. */
static bool
is_hostile (Parse *parse, const SaxElement *element)
{
  if (!count_element (parse, element->line))
    return true;
  parse->namespaces_in_force += element->namespace_count;
  if (++parse->depth > DEPTH_MOST)
    problems_add (parse->problems, READER_ERROR_HOSTILE, element->line,
                  _("elements are nested more than %d deep here; no document needs that, so nothing was read"), DEPTH_MOST);
  else if (parse->namespaces_in_force > NAMESPACES_MOST)
    problems_add (parse->problems, READER_ERROR_HOSTILE, element->line,
                  _("more than %d namespaces are declared here; no document needs that, so nothing was read"), NAMESPACES_MOST);
  else
    {
      parse->namespaces[parse->depth] = element->namespace_count;
      return false;
    }
  return true;
}

static void
begin_known (Parse *parse, ElementId id, const SaxElement *element)
{
  draft_begin (parse->draft, id, parse->open[parse->known], element);
  parse->open[++parse->known] = id;
  parse->text_told = false;
}

static void
begin (Parse *parse, const SaxElement *element)
{
  ElementId id;

  if (is_hostile (parse, element) || (parse->depth == 1 && !begin_root (parse, element)))
    {
      parse_stop (parse);
      return;
    }
  if (parse->depth == 1)
    id = ELEMENT_AEROPLANE;
  else if (foreign_text_is_open (&parse->foreign) || g_strcmp0 (element->uri, DOCUMENT_NAMESPACE) != 0)
    id = ELEMENT_NONE;
  else
    id = element_find (parse->open[parse->known], element->name);
  if (id == ELEMENT_NONE)
    foreign_text_start (&parse->foreign, element);
  else
    begin_known (parse, id, element);
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
  if (!parse->stopped && problems_count (parse->problems) == PROBLEMS_MOST)
    parse_stop (parse);
}

/* Foreign text goes to the draft as soon as nothing of it is open. */
static void
hand_over (Parse *parse)
{
  if (!foreign_text_is_open (&parse->foreign))
    draft_keep (parse->draft, foreign_text_take (&parse->foreign));
}

static void
on_end (void *data, const xmlChar *name, const xmlChar *prefix, const xmlChar *uri)
{
  Parse *parse = data;

  if (parse->stopped)
    return;
  parse->namespaces_in_force -= parse->namespaces[parse->depth--];
  if (foreign_text_is_open (&parse->foreign))
    {
      foreign_text_end (&parse->foreign, (const char *) prefix, (const char *) name);
      hand_over (parse);
    }
  else
    draft_end (parse->draft, parse->open[parse->known--]);
}

static void
tell_text (Parse *parse, const char *text, int length)
{
  g_autofree char *quote = g_strstrip (problems_quote (text, length));

  if (!parse->text_told)
    problems_add (parse->problems, READER_ERROR_VALUE, line_now (parse),
                  _("the text “%s” stands where none belongs; take it out"), quote);
  parse->text_told = true;
}

static bool
is_blank (const char *text, int length)
{
  for (int i = 0; i < length; i++)
    if (!g_ascii_isspace (text[i]))
      return false;
  return true;
}

static void
on_text (void *data, const xmlChar *text, int length)
{
  Parse *parse = data;

  if (parse->stopped)
    return;
  if (foreign_text_is_open (&parse->foreign))
    foreign_text_add (&parse->foreign, (const char *) text, (size_t) length);
  else if (!draft_text (parse->draft, (const char *) text, (size_t) length) && !is_blank ((const char *) text, length))
    tell_text (parse, (const char *) text, length);
}

static void
on_cdata (void *data, const xmlChar *text, int length)
{
  Parse *parse = data;

  if (parse->stopped)
    return;
  if (foreign_text_is_open (&parse->foreign))
    foreign_text_cdata (&parse->foreign, (const char *) text, (size_t) length);
  else if (!draft_text (parse->draft, (const char *) text, (size_t) length) && !is_blank ((const char *) text, length))
    tell_text (parse, (const char *) text, length);
}

/* Counts what is not an element. */
static bool
may_go_on (Parse *parse)
{
  if (!parse->stopped && !count_element (parse, line_now (parse)))
    parse_stop (parse);
  return !parse->stopped;
}

static void
on_comment (void *data, const xmlChar *text)
{
  Parse *parse = data;

  if (!may_go_on (parse))
    return;
  foreign_text_comment (&parse->foreign, (const char *) text);
  hand_over (parse);
}

static void
on_instruction (void *data, const xmlChar *target, const xmlChar *text)
{
  Parse *parse = data;

  if (!may_go_on (parse))
    return;
  foreign_text_instruction (&parse->foreign, (const char *) target, (const char *) text);
  hand_over (parse);
}

/* The scan before has refused declarations; this is the second bolt on that door. */
static void
on_declaration (void *data, const xmlChar *name, const xmlChar *external, const xmlChar *system)
{
  Parse *parse = data;

  problems_add (parse->problems, READER_ERROR_HOSTILE, line_now (parse),
                _("a document type declaration (<!DOCTYPE …>) is not read; take it out"));
  parse_stop (parse);
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
  .initialized = XML_SAX2_MAGIC,
  .internalSubset = on_declaration,
  .startElementNs = on_start,
  .endElementNs = on_end,
  .characters = on_text,
  .ignorableWhitespace = on_text,
  .cdataBlock = on_cdata,
  .comment = on_comment,
  .processingInstruction = on_instruction,
  .serror = on_error,
};

void
reader_parse (const char *data, size_t length, Draft *draft, Problems *problems)
{
  Parse parse = { .draft = draft, .problems = problems, .open = { ELEMENT_NONE } };

  parse.context = xmlCreateMemoryParserCtxt (data, (int) length);
  if (!parse.context)
    {
      problems_add (problems, READER_ERROR_UNREADABLE, 0, _("there is not enough memory to read it; close something and try again"));
      return;
    }
  foreign_text_init (&parse.foreign);
  *parse.context->sax = handler;
  parse.context->userData = &parse;
  /* No network and no entities; the encoding has been looked at before. */
  xmlCtxtUseOptions (parse.context, XML_PARSE_NONET | XML_PARSE_IGNORE_ENC);
  xmlParseDocument (parse.context);
  if (!parse.stopped && !parse.context->wellFormed && problems_count (problems) == 0)
    problems_add (problems, READER_ERROR_BROKEN, 0, _("this is not well-formed XML; correct it in a text editor"));
  xmlFreeParserCtxt (parse.context);
  foreign_text_clear (&parse.foreign);
}
