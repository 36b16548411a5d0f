#include "document/parse-told.h"
#include <libxml/parserInternals.h>
#include "trammel-config.h"
#include <glib/gi18n-lib.h>

/* The line on which the tag begins whose end the parser has reached: no "<" can stand inside it. */
int
parse_line_of_tag (const xmlParserCtxt *context)
{
  const xmlParserInput *input = context->input;
  const xmlChar *at = input->cur;
  int line = input->line;

  while (at > input->base && *at != '<')
    line -= *--at == '\n';
  return *at == '<' ? line : input->line;
}

static bool
at_end (const xmlParserCtxt *context)
{
  const xmlParserInput *input = context->input;

  return input && input->cur >= input->end;
}

void
parse_tell_broken (const xmlParserCtxt *context, const xmlError *error, Problems *problems)
{
  g_autofree char *message = g_strstrip (g_utf8_make_valid (error->message ? error->message : "", -1));
  g_autofree char *entity = problems_quote (error->str1 ? error->str1 : "", -1);

  g_strdelimit (message, "\n\r\t", ' ');      /* the parser cites the document, and a sentence is one line */
  if (at_end (context))
    problems_add (problems, READER_ERROR_BROKEN, error->line,
                  _("the file ends in the middle; take its backup, the same name with ~ behind it, or another copy"));
  else if (error->code == XML_ERR_INTERNAL_ERROR)      /* a limit of the parser's own */
    problems_add (problems, READER_ERROR_HOSTILE, error->line,
                  _("something here is larger than any document needs, so nothing was read"));
  else if (error->code == XML_ERR_TAG_NAME_MISMATCH)
    problems_add (problems, READER_ERROR_BROKEN, error->line,
                  _("an element ends that is not the one open here (%s); correct the end tags"), message);
  else if (error->code == XML_ERR_UNDECLARED_ENTITY)
    problems_add (problems, READER_ERROR_BROKEN, error->line,
                  _("&%s; is not known; write the character itself"), entity);
  else
    problems_add (problems, READER_ERROR_BROKEN, error->line,
                  _("this is not well-formed XML (%s); correct it in a text editor"), message);
}
