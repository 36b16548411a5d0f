#include "document/brought-lines.h"

#include "trammel-config.h"
#include <glib/gi18n-lib.h>
#include <gio/gio.h>
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

/* As SVGs are packed (.svgz). No more than the largest file that is read, and one byte; NULL where it is damaged. */
static char *
unpacked (const char *data, size_t length, size_t *made)
{
  g_autoptr (GConverter) unpacking = G_CONVERTER (g_zlib_decompressor_new (G_ZLIB_COMPRESSOR_FORMAT_GZIP));
  g_autofree char *text = g_malloc (BROUGHT_BYTES_MOST + 1);
  GConverterResult result = G_CONVERTER_CONVERTED;
  size_t at = 0;

  *made = 0;
  while (result == G_CONVERTER_CONVERTED && *made <= BROUGHT_BYTES_MOST)
    {
      gsize read = 0, written = 0;

      result = g_converter_convert (unpacking, data + at, length - at, text + *made, BROUGHT_BYTES_MOST + 1 - *made,
                                    G_CONVERTER_INPUT_AT_END, &read, &written, NULL);
      at += read;
      *made += written;
    }
  return result == G_CONVERTER_ERROR ? NULL : g_memdup2 (text, *made);
}

/* UTF-16 is known by its first two bytes. An XML declaration says so too, and would be wrong. */
static char *
narrowed (const char *data, size_t length, size_t *made)
{
  g_autofree char *text = g_convert (data, (gssize) length, "UTF-8", "UTF-16", NULL, made, NULL);
  const char *behind = text && g_str_has_prefix (text, "<?xml") ? strstr (text, "?>") : NULL;
  const size_t skipped = behind ? (size_t) (behind + 2 - text) : 0;

  *made = text ? *made - skipped : 0;
  return text ? g_memdup2 (text + skipped, *made) : NULL;
}

static bool
refuse_large (size_t length, const char *name, GError **error)
{
  if (length > BROUGHT_BYTES_MOST)
    g_set_error (error, BROUGHT_ERROR, BROUGHT_ERROR_VALUE, _("%s: this file is larger than 16 MB; take out what is not the outline."),
                 name);
  return length > BROUGHT_BYTES_MOST;
}

static Brought *
read_plain (const char *data, size_t length, const char *name, GError **error)
{
  if (refuse_large (length, name, error))
    return NULL;
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

Brought *
brought_read (const char *data, size_t length, const char *name, GError **error)
{
  const bool packed = length > 3 && memcmp (data, "\x1f\x8b\x08", 3) == 0;
  const bool wide = length > 2 && (memcmp (data, "\xff\xfe", 2) == 0 || memcmp (data, "\xfe\xff", 2) == 0);
  size_t made = 0;

  if (refuse_large (length, name, error))
    return NULL;
  g_autofree char *text = packed ? unpacked (data, length, &made) : wide ? narrowed (data, length, &made) : NULL;
  if (text)
    return read_plain (text, made, name, error);
  if (!packed)
    return read_plain (data, length, name, error);
  g_set_error (error, BROUGHT_ERROR, BROUGHT_ERROR_FOREIGN, _("%s: this file is damaged; save it again in the program that drew it."), name);
  return NULL;
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
