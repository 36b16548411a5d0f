#include "document/foreign-text.h"
#include <string.h>
#include "document/elements.h"
#include "document/xml-text.h"

/* A prefix ("" the default), what it stands for, and the depth at which it was declared. The texts live in the parser's dictionary. */
typedef struct { const char *prefix, *uri; int depth; } Declared;

void
foreign_text_init (ForeignText *self)
{
  *self = (ForeignText) { .text = g_string_new (NULL), .declared = g_array_new (FALSE, FALSE, sizeof (Declared)) };
}

void
foreign_text_clear (ForeignText *self)
{
  g_string_free (self->text, TRUE);
  g_array_unref (self->declared);
}

bool
foreign_text_is_open (const ForeignText *self)
{
  return self->depth > 0;
}

static void
append_declaration (GString *text, const char *prefix, const char *uri)
{
  g_autofree char *name = *prefix ? g_strconcat ("xmlns:", prefix, NULL) : g_strdup ("xmlns");
  g_autofree char *plain = sax_plain (uri, strlen (uri));

  xml_append_attribute (text, name, plain, -1);
}

static void
declare (ForeignText *self, const char *prefix, const char *uri)
{
  const Declared declared = { prefix, uri, self->depth };

  append_declaration (self->text, prefix, uri);
  g_array_append_val (self->declared, declared);
}

/* What the prefix stands for where the text will be read: what it declares itself, else only our own default and "xml". */
static const char *
uri_in_force (const ForeignText *self, const char *prefix)
{
  for (guint i = self->declared->len; i > 0; i--)
    {
      const Declared *declared = &g_array_index (self->declared, Declared, i - 1);

      if (strcmp (declared->prefix, prefix) == 0)
        return declared->uri;
    }
  return *prefix == '\0' ? DOCUMENT_NAMESPACE : NULL;
}

static void
need (ForeignText *self, const char *prefix, const char *uri)
{
  const char *now;

  prefix = prefix ? prefix : "";
  uri = uri ? uri : "";
  if (strcmp (prefix, "xml") == 0)
    return;
  now = uri_in_force (self, prefix);
  if (!now || strcmp (now, uri) != 0)
    declare (self, prefix, uri);
}

static void
close_tag (ForeignText *self)
{
  if (self->tag_open)
    g_string_append_c (self->text, '>');
  self->tag_open = false;
}

static void
append_attribute (GString *text, const SaxAttribute *attribute)
{
  g_autofree char *name = sax_full_name (attribute->prefix, attribute->name);
  g_autofree char *value = sax_value (attribute);

  xml_append_attribute (text, name, value, -1);
}

void
foreign_text_start (ForeignText *self, const SaxElement *element)
{
  close_tag (self);
  self->depth++;
  g_string_append_c (self->text, '<');
  if (element->prefix)
    g_string_append_printf (self->text, "%s:", element->prefix);
  g_string_append (self->text, element->name);
  for (int i = 0; i < element->namespace_count; i++)
    {
      const SaxNamespace namespace = sax_namespace (element, i);

      declare (self, namespace.prefix ? namespace.prefix : "", namespace.uri);
    }
  /* All declarations before all attributes, as they come when this is read again. */
  need (self, element->prefix, element->uri);
  for (int i = 0; i < element->attribute_count; i++)
    {
      const SaxAttribute attribute = sax_attribute (element, i);

      if (attribute.prefix)
        need (self, attribute.prefix, attribute.uri);
    }
  for (int i = 0; i < element->attribute_count; i++)
    {
      const SaxAttribute attribute = sax_attribute (element, i);

      append_attribute (self->text, &attribute);
    }
  self->tag_open = true;
}

void
foreign_text_end (ForeignText *self, const char *prefix, const char *name)
{
  guint kept = self->declared->len;

  if (self->tag_open)
    g_string_append (self->text, "/>");
  else if (prefix)
    g_string_append_printf (self->text, "</%s:%s>", prefix, name);
  else
    g_string_append_printf (self->text, "</%s>", name);
  self->tag_open = false;
  while (kept > 0 && g_array_index (self->declared, Declared, kept - 1).depth == self->depth)
    kept--;
  g_array_set_size (self->declared, kept);
  self->depth--;
}

void
foreign_text_add (ForeignText *self, const char *text, size_t length)
{
  close_tag (self);
  xml_append_text (self->text, text, (gssize) length);
}

void
foreign_text_cdata (ForeignText *self, const char *text, size_t length)
{
  close_tag (self);
  g_string_append (self->text, "<![CDATA[");
  g_string_append_len (self->text, text, (gssize) length);
  g_string_append (self->text, "]]>");
}

void
foreign_text_comment (ForeignText *self, const char *text)
{
  close_tag (self);
  g_string_append_printf (self->text, "<!--%s-->", text);
}

void
foreign_text_instruction (ForeignText *self, const char *target, const char *data)
{
  close_tag (self);
  if (data)
    g_string_append_printf (self->text, "<?%s %s?>", target, data);
  else
    g_string_append_printf (self->text, "<?%s?>", target);
}

char *
foreign_text_take (ForeignText *self)
{
  char *text = g_strndup (self->text->str, self->text->len);

  g_string_truncate (self->text, 0);
  return text;
}

/* Whether that prefix is declared on the element itself. */
static bool
element_declares (const SaxElement *element, const char *prefix)
{
  for (int i = 0; i < element->namespace_count; i++)
    if (g_strcmp0 (sax_namespace (element, i).prefix, prefix) == 0)
      return true;
  return false;
}

/* Declares the prefix of attribute `index` unless the element does, or an earlier foreign attribute had need of it. */
static void
append_need (GString *text, const SaxElement *element, const SaxAttribute *attribute)
{
  g_autofree char *declaration = NULL;

  if (!attribute->prefix || strcmp (attribute->prefix, "xml") == 0 || element_declares (element, attribute->prefix))
    return;
  declaration = g_strdup_printf (" xmlns:%s=\"", attribute->prefix);
  if (!strstr (text->str, declaration))
    append_declaration (text, attribute->prefix, attribute->uri);
}

char *
foreign_attributes (const SaxElement *element, bool (*is_known) (const SaxAttribute *attribute, gconstpointer data), gconstpointer data)
{
  GString *text = g_string_new (NULL);

  for (int i = 0; i < element->namespace_count; i++)
    if (sax_namespace (element, i).prefix)      /* the default is ours again when we write */
      append_declaration (text, sax_namespace (element, i).prefix, sax_namespace (element, i).uri);
  for (int i = 0; i < element->attribute_count; i++)
    {
      const SaxAttribute attribute = sax_attribute (element, i);

      if (!is_known (&attribute, data))
        append_need (text, element, &attribute);
    }
  for (int i = 0; i < element->attribute_count; i++)
    {
      const SaxAttribute attribute = sax_attribute (element, i);

      if (!is_known (&attribute, data))
        append_attribute (text, &attribute);
    }
  return g_string_free (text, text->len == 0);
}
