#include "document/brought-lines.h"

#include "trammel-config.h"
#include <glib/gi18n-lib.h>
#include <string.h>

G_DEFINE_QUARK (trammel-brought-error-quark, brought_error)

enum { LOOKED_AT = 4096 };

/* What stands first tells the kind: an angle bracket, or a DXF's group code 0 (or a comment's, 999) with SECTION behind it. */
static bool
looks_like_dxf (const char *data, size_t length)
{
  const char *section = g_strstr_len (data, (gssize) MIN (length, LOOKED_AT), "SECTION");

  while (length > 0 && g_ascii_isspace (*data))
    {
      data++;
      length--;
    }
  return length > 3 && section && (*data == '0' || *data == '9');
}

static bool
looks_like_svg (const char *data, size_t length)
{
  return g_strstr_len (data, (gssize) MIN (length, LOOKED_AT), "<svg") != NULL
         || (g_strstr_len (data, (gssize) MIN (length, 16), "<?xml") && g_strstr_len (data, (gssize) length, "<svg"));
}

Brought *
brought_read (const char *data, size_t length, const char *name, GError **error)
{
  if (length > BROUGHT_BYTES_MOST)
    {
      g_set_error (error, BROUGHT_ERROR, BROUGHT_ERROR_VALUE, _("%s: this file is larger than 16 MB; take out what is not the outline."),
                   name);
      return NULL;
    }
  if (memchr (data, 0, length))
    {
      g_set_error (error, BROUGHT_ERROR, BROUGHT_ERROR_FOREIGN,
                   _("%s: this is neither an SVG, an ASCII DXF nor a table of points; open a picture as a plan instead."), name);
      return NULL;
    }
  if (looks_like_svg (data, length))
    return brought_read_svg (data, length, name, error);
  if (looks_like_dxf (data, length))
    return brought_read_dxf (data, length, name, error);
  return brought_read_table (data, length, name, error);
}

void
brought_free (Brought *self)
{
  for (size_t i = 0; self && i < self->count; i++)
    {
      g_free (self->lines[i].name);
      g_free (self->lines[i].segments);
    }
  if (self)
    g_free (self->lines);
  g_free (self);
}
