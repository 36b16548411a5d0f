#include "document/sax.h"
#include <string.h>

SaxNamespace
sax_namespace (const SaxElement *element, int index)
{
  const unsigned char **at = element->namespaces + 2 * index;

  return (SaxNamespace) { (const char *) at[0], at[1] ? (const char *) at[1] : "" };
}

SaxAttribute
sax_attribute (const SaxElement *element, int index)
{
  const unsigned char **at = element->attributes + 5 * index;

  return (SaxAttribute) {
    .name = (const char *) at[0], .prefix = (const char *) at[1], .uri = (const char *) at[2],
    .value = (const char *) at[3], .length = (size_t) (at[4] - at[3]),
  };
}

char *
sax_plain (const char *raw, size_t length)
{
  char *text = g_strndup (raw, length), *to = text;

  for (const char *from = text; *from; to++)
    {
      const bool amp = strncmp (from, "&#38;", 5) == 0;

      *to = *from;
      from += amp ? 5 : 1;
    }
  *to = '\0';
  return text;
}

char *
sax_value (const SaxAttribute *attribute)
{
  return sax_plain (attribute->value, attribute->length);
}

bool
sax_find (const SaxElement *element, const char *name, SaxAttribute *found)
{
  for (int i = 0; i < element->attribute_count; i++)
    {
      *found = sax_attribute (element, i);
      if (!found->prefix && strcmp (found->name, name) == 0)
        return true;
    }
  return false;
}

char *
sax_full_name (const char *prefix, const char *name)
{
  return prefix ? g_strconcat (prefix, ":", name, NULL) : g_strdup (name);
}
