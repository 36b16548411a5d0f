#include "document/sniff.h"
#include <string.h>
#include "trammel-config.h"
#include <glib/gi18n-lib.h>

#define PICTURE N_("this is a picture, not a Trammel document; open a file that ends in .trammel")
#define PAGES   N_("this is a PDF document, not a Trammel document; open a file that ends in .trammel")
#define PACKED  N_("this is a packed file; unpack it and open the .trammel file in it")
#define WIDE    N_("this text is not UTF-8; save it as UTF-8")

/* The first bytes of kinds of files, from their formats' own definitions. */
static const struct { size_t at; const char *bytes; size_t length; const char *sentence; } kinds[] = {
  { 0, "\x89PNG\r\n\x1a\n", 8, PICTURE },
  { 0, "\xff\xd8\xff", 3, PICTURE },                                /* JPEG */
  { 0, "GIF8", 4, PICTURE },
  { 0, "II*\0", 4, PICTURE }, { 0, "MM\0*", 4, PICTURE },           /* TIFF */
  { 0, "BM", 2, PICTURE },
  { 8, "WEBP", 4, PICTURE },
  { 4, "ftypheic", 8, PICTURE }, { 4, "ftypavif", 8, PICTURE },
  { 0, "%PDF", 4, PAGES },
  { 0, "\x1f\x8b", 2, PACKED }, { 0, "PK\x03\x04", 4, PACKED }, { 0, "\xfd" "7zXZ", 5, PACKED }, { 0, "BZh", 3, PACKED },
  { 0, "\x28\xb5\x2f\xfd", 4, PACKED },                             /* Zstandard */
  { 0, "\xff\xfe", 2, WIDE }, { 0, "\xfe\xff", 2, WIDE },
  { 0, "<\0", 2, WIDE }, { 0, "\0<", 2, WIDE },
};

const char *
sniff_foreign (const char *data, size_t length)
{
  if (length == 0)
    return _("the file is empty; take its backup, the same name with ~ behind it, or another copy");
  for (size_t i = 0; i < G_N_ELEMENTS (kinds); i++)
    if (length >= kinds[i].at + kinds[i].length && memcmp (data + kinds[i].at, kinds[i].bytes, kinds[i].length) == 0)
      return _(kinds[i].sentence);
  if (length >= 3 && memcmp (data, "\xef\xbb\xbf", 3) == 0)      /* a byte order mark may stand before XML */
    data += 3, length -= 3;
  while (length > 0 && g_ascii_isspace (*data))
    data++, length--;
  if (length == 0 || *data != '<' || memchr (data, '\0', length))
    return _("this is not a Trammel document: it is not XML; open a file that ends in .trammel");
  return NULL;
}
