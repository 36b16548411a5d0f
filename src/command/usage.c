#include "command/usage.h"

#include "trammel-config.h"
#include <glib/gi18n-lib.h>
#include <math.h>
#include <stdio.h>

CommandStatus
usage_error (const char *word, const char *format, ...)
{
  g_autofree char *name = word ? g_strconcat ("trammel ", word, NULL) : g_strdup ("trammel");
  g_autofree char *message = NULL;
  va_list arguments;

  va_start (arguments, format);
  message = g_strdup_vprintf (format, arguments);
  va_end (arguments);
  fprintf (stderr, "%s: %s\n", name, message);
  fprintf (stderr, _("“%s --help” shows how it is used."), name);
  fputc ('\n', stderr);
  return COMMAND_USAGE;
}

static GOptionContext *
context_for (const Usage *usage, gboolean *help)
{
  const GOptionEntry own[] = {
    { .long_name = "help", .short_name = 'h', .arg = G_OPTION_ARG_NONE, .arg_data = help, .description = _("show this help") },
    { .long_name = NULL }
  };
  GOptionContext *context = g_option_context_new (usage->takes_image ? _("IMAGE") : _("FILE"));

  g_option_context_set_help_enabled (context, FALSE);
  g_option_context_set_translation_domain (context, GETTEXT_PACKAGE);
  g_option_context_set_summary (context, usage->summary);
  g_option_context_set_description (context, usage->examples);
  g_option_context_add_main_entries (context, usage->entries, GETTEXT_PACKAGE);
  g_option_context_add_main_entries (context, own, NULL);
  return context;
}

static void
print_help (const Usage *usage, GOptionContext *context)
{
  g_autofree char *name = g_strconcat ("trammel ", usage->word, NULL);
  g_autofree char *help = NULL;

  g_set_prgname (name);
  help = g_option_context_get_help (context, TRUE, NULL);
  fputs (help, stdout);
}

bool
usage_parse (const Usage *usage, int argc, char **argv, const char **file, CommandStatus *status)
{
  gboolean help = FALSE;
  g_autoptr (GOptionContext) context = context_for (usage, &help);
  g_autoptr (GError) error = NULL;

  if (!g_option_context_parse (context, &argc, &argv, &error))
    *status = usage_error (usage->word, "%s", error->message);
  else if (help)
    {
      print_help (usage, context);
      *status = COMMAND_DONE;
    }
  else if (argc < 2)
    *status = usage_error (usage->word, "%s", usage->takes_image ? _("Name the plan, a picture or a PDF, before the options.")
                                                                 : _("Name the document: a .trammel file."));
  else if (argc > 2)
    *status = usage_error (usage->word, usage->takes_image ? _("One plan at a time: “%s” is one too many.")
                                                           : _("One document at a time: “%s” is one too many."), argv[2]);
  else
    {
      *file = argv[1];
      return true;
    }
  return false;
}

static bool
number_of (const char *text, double *value)
{
  char *end;

  *value = g_ascii_strtod (text, &end);
  return end != text && *end == '\0' && isfinite (*value);
}

bool
usage_number (const char *word, const char *option, const char *text, double *value, CommandStatus *status)
{
  g_auto (GStrv) parts = g_strsplit (text ? text : "", ",", -1);
  g_autofree char *pointed = g_strjoinv (".", parts);
  double number = 0;

  if (text && !number_of (pointed, &number))
    *status = usage_error (word, _("%s takes a number such as 0.25, not “%s”."), option, text);
  else if (text && !g_str_equal (text, pointed))
    *status = usage_error (word, _("%s: write %s with a point, not “%s”."), option, pointed, text);
  else
    {
      *value = text ? number : *value;
      return true;
    }
  return false;
}

bool
usage_units (const char *word, const char *units, const char *mass_units, Units *chosen, CommandStatus *status)
{
  const bool inch = g_strcmp0 (units, "inch") == 0;
  const bool ounces = mass_units ? g_str_equal (mass_units, "oz") : inch;

  if (units && !inch && !g_str_equal (units, "metric"))
    *status = usage_error (word, _("--units is “metric” or “inch”, not “%s”."), units);
  else if (mass_units && !ounces && !g_str_equal (mass_units, "g"))
    *status = usage_error (word, _("--mass-units is “g” or “oz”, not “%s”."), mass_units);
  else
    {
      *chosen = (Units) { .length = inch ? LENGTH_INCH : LENGTH_MM, .mass = ounces ? MASS_OZ : MASS_G };
      return true;
    }
  return false;
}
