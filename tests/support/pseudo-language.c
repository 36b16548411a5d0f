#include "support/pseudo-language.h"
#include <glib.h>
#include <string.h>

static bool speaks;

void
pseudo_language_speak (bool speak)
{
  speaks = speak;
}

/* How long a printf directive is, "%1$s" or "%.*f"; 0 for none. */
static size_t
directive_length (const char *text)
{
  return *text != '%' ? 0 : 1 + strspn (text + 1, "0123456789$.-+ #*lhzjt") + 1;
}

static const char *
accented (char letter)
{
  static const char plain[] = "aeiouyAEIOUY", *const others[] = { "á", "ê", "ï", "õ", "ü", "ý", "Á", "Ê", "Ï", "Õ", "Ü", "Ý" };
  const char *at = letter == '\0' ? NULL : strchr (plain, letter);

  return at == NULL ? NULL : others[at - plain];
}

static const char *
spoken (const char *text)
{
  g_autoptr (GString) made = g_string_new (NULL);

  if (!speaks)
    return text;
  while (*text != '\0')
    {
      const size_t directive = strnlen (text, directive_length (text));
      const char *vowel = accented (*text);

      if (directive > 0)
        g_string_append_len (made, text, directive);
      else if (vowel != NULL)
        g_string_append_printf (made, "%s%s", vowel, vowel);
      else
        g_string_append_c (made, *text);
      text += MAX (directive, 1);
    }
  return g_intern_string (made->str);
}

/* What GLib's macros for translation call, in place of GLib's own. */

const gchar *
g_dgettext (const gchar *domain, const gchar *text)
{
  return spoken (text);
}

const gchar *
g_dngettext (const gchar *domain, const gchar *one, const gchar *many, gulong count)
{
  return spoken (count == 1 ? one : many);
}

const gchar *
g_dpgettext (const gchar *domain, const gchar *context_and_text, gsize text)
{
  return spoken (context_and_text + text);
}
