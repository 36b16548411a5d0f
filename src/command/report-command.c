#include "command/subcommand.h"

#include "trammel-config.h"
#include <glib/gi18n-lib.h>
#include <stdio.h>
#include "command/problems.h"
#include "command/usage.h"
#include "figures/report.h"

typedef struct { gboolean json, explain; char *units, *mass_units; } ReportOptions;

static bool
parse (int argc, char **argv, ReportOptions *options, const char **file, CommandStatus *status)
{
  const GOptionEntry entries[] = {
    { .long_name = "json", .arg = G_OPTION_ARG_NONE, .arg_data = &options->json, .description = N_("print JSON for programs") },
    { .long_name = "explain", .arg = G_OPTION_ARG_NONE, .arg_data = &options->explain,
      .description = N_("tell how each figure came about") },
    { .long_name = "units", .arg = G_OPTION_ARG_STRING, .arg_data = &options->units,
      .description = N_("lengths in millimetres or inches (metric)"), .arg_description = "metric|inch" },
    { .long_name = "mass-units", .arg = G_OPTION_ARG_STRING, .arg_data = &options->mass_units,
      .description = N_("masses in grams or ounces (g; oz with inches)"), .arg_description = "g|oz" },
    { .long_name = NULL }
  };
  const Usage usage = {
    .word = "report", .entries = entries,
    .summary = _("Prints every figure that follows from the document: the balance mark and its limits, the static\n"
                 "margin, the neutral point by two methods, surfaces, masses, and where a sliding part must be."),
    .examples = _("JSON is always in millimetres and grams, its units in the names.\n\n"
                  "Examples:\n  trammel report racer.trammel\n  trammel report racer.trammel --units=inch --mass-units=g\n"
                  "  trammel report racer.trammel --explain\n  trammel report racer.trammel --json > racer.json"),
  };

  return usage_parse (&usage, argc, argv, file, status);
}

static bool
options_agree (const ReportOptions *options, CommandStatus *status)
{
  if (!options->json || !options->explain)
    return true;
  *status = usage_error ("report", "%s", _("--explain belongs to the text, --json to programs: choose one."));
  return false;
}

static void
print_text (const Figures *figures, bool explain, Units units)
{
  g_autofree char *text = report_text (figures, units);
  g_autofree char *explanations = explain ? report_explanations (figures, units) : NULL;

  fputs (text, stdout);
  if (explain)
    fputs (explanations, stdout);
  else
    /* TRANSLATORS: the quoted words are typed as they stand */
    printf ("\n%s\n", _("“trammel report FILE --explain” tells how each figure came about."));
}

static CommandStatus
report_file (const char *file, const ReportOptions *options, Units units)
{
  g_autoptr (Figures) figures = problems_read (file);
  g_autofree char *json = NULL;

  if (!figures)
    return COMMAND_PROBLEM;
  if (options->json)
    {
      json = report_json (figures);
      fputs (json, stdout);
    }
  else
    print_text (figures, options->explain, units);
  problems_of_figures (figures, file);
  return figures_are_sound (figures) ? COMMAND_DONE : COMMAND_PROBLEM;
}

CommandStatus
report_command (int argc, char **argv)
{
  ReportOptions options = { 0 };
  CommandStatus status;
  const char *file;
  Units units;

  if (parse (argc, argv, &options, &file, &status) && options_agree (&options, &status)
      && usage_units ("report", options.units, options.mass_units, &units, &status))
    status = report_file (file, &options, units);
  g_free (options.units);
  g_free (options.mass_units);
  return status;
}
