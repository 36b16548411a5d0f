#include "support/pseudo-language.h"
#include <glib.h>
#include <libintl.h>
#include <locale.h>
#include <string.h>

#define DOMAIN "trammel"

static bool speaks, translates;

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

bool
translation_speak (const char *language)
{
  translates = language != NULL;
  if (!translates)
    return true;
  /* A locale called "C" would keep gettext from translating at all; numbers stay as they are. */
  setlocale (LC_MESSAGES, "C.UTF-8");
  g_setenv ("LANGUAGE", language, TRUE);
  bindtextdomain (DOMAIN, g_getenv ("TRAMMEL_TRANSLATIONS"));
  bind_textdomain_codeset (DOMAIN, "UTF-8");
  return strcmp (g_dpgettext (DOMAIN, "language\004en", strlen ("language") + 1), language) == 0;
}

char **
translation_languages (void)
{
  g_autofree char *path = g_build_filename (g_getenv ("TRAMMEL_SOURCE_ROOT"), "po", "LINGUAS", NULL);
  g_autofree char *text = NULL;
  g_auto (GStrv) lines = NULL;
  GPtrArray *languages = g_ptr_array_new ();

  g_file_get_contents (path, &text, NULL, NULL);
  lines = g_strsplit (text != NULL ? text : "", "\n", -1);
  for (int i = 0; lines[i] != NULL; i++)
    if (*lines[i] != '\0' && *lines[i] != '#')
      g_ptr_array_add (languages, g_strdup (lines[i]));
  g_ptr_array_add (languages, NULL);
  return (char **) g_ptr_array_free (languages, FALSE);
}

/* What GLib's macros for translation call, in place of GLib's own. */

const gchar *
g_dgettext (const gchar *domain, const gchar *text)
{
  return translates ? dgettext (domain, text) : spoken (text);
}

const gchar *
g_dngettext (const gchar *domain, const gchar *one, const gchar *many, gulong count)
{
  return translates ? dngettext (domain, one, many, count) : spoken (count == 1 ? one : many);
}

const gchar *
g_dpgettext (const gchar *domain, const gchar *context_and_text, gsize text)
{
  const char *translated = translates ? dgettext (domain, context_and_text) : context_and_text;

  return translated != context_and_text ? translated : spoken (context_and_text + text);
}
