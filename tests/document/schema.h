#pragma once
#include <check.h>
#include <glib.h>
#include <libxml/parser.h>
#include <libxml/relaxng.h>

/** The schema of the format, ready to hold documents against. */
typedef struct { xmlRelaxNG *schema; xmlDoc *source; } Schema;

static inline void
schema_silent (void *data, xmlError *error)
{
}

static inline Schema
schema_load (void)
{
  g_autofree char *path = g_build_filename (g_getenv ("TRAMMEL_SOURCE_ROOT"), "data", "trammel.rng", NULL);
  Schema schema = { .source = xmlReadFile (path, NULL, XML_PARSE_NONET) };
  xmlRelaxNGParserCtxt *context = xmlRelaxNGNewDocParserCtxt (schema.source);

  schema.schema = xmlRelaxNGParse (context);
  xmlRelaxNGFreeParserCtxt (context);
  ck_assert_msg (schema.schema != NULL, "%s is no schema", path);
  return schema;
}

static inline void
schema_clear (Schema *schema)
{
  xmlRelaxNGFree (schema->schema);
  xmlFreeDoc (schema->source);
}

static inline bool
schema_allows_tree (const Schema *schema, xmlDoc *document)
{
  xmlRelaxNGValidCtxt *context = xmlRelaxNGNewValidCtxt (schema->schema);
  int result;

  xmlRelaxNGSetValidStructuredErrors (context, schema_silent, NULL);
  result = xmlRelaxNGValidateDoc (context, document);
  xmlRelaxNGFreeValidCtxt (context);
  return result == 0;
}

static inline bool
schema_allows (const Schema *schema, const char *text, size_t length)
{
  xmlDoc *document = xmlReadMemory (text, (int) length, NULL, NULL, XML_PARSE_NONET | XML_PARSE_NOERROR | XML_PARSE_NOWARNING);
  const bool allowed = document && schema_allows_tree (schema, document);

  xmlFreeDoc (document);
  return allowed;
}
