#pragma once
#include <glib.h>
#include <stdbool.h>

/** The parser's events as the reader's files pass them to each other. Texts are lent for the call. Private to this room. */

/** The parser leaves & as &#38; in every value, namespaces' names among them: sax_plain gives the text that is meant. */

typedef struct { const char *prefix, *uri; } SaxNamespace;      /* prefix NULL: the default; uri "": none */

/** Four or five texts in a row in the arrays, as libxml2's SAX2 interface hands them over. */
typedef struct {
  const char *name, *prefix, *uri;      /* prefix, uri NULL: none */
  const unsigned char **namespaces;  int namespace_count;
  const unsigned char **attributes;  int attribute_count;
  int line;                             /* where its tag begins */
} SaxElement;

typedef struct {
  const char *name, *prefix, *uri;
  const char *value;  size_t length;
} SaxAttribute;

SaxNamespace sax_namespace (const SaxElement *element, int index);      /* declared on it; index < namespace_count */
SaxAttribute sax_attribute (const SaxElement *element, int index);      /* index < attribute_count; lent like the element */
/** The text that is meant, a new string. */
char *sax_plain (const char *text, size_t length);
/** The value in plain text, a new string. */
char *sax_value (const SaxAttribute *attribute);
/** The attribute of that name without a prefix; false when there is none. */
bool sax_find (const SaxElement *element, const char *name, SaxAttribute *found);
/** "prefix:name", or the name alone. A new string. */
char *sax_full_name (const char *prefix, const char *name);
