#include "command/subcommand.h"

#include "trammel-config.h"
#include <glib/gi18n-lib.h>
#include <stdio.h>
#include "command/problems.h"
#include "command/usage.h"
#include "document/writer.h"
#include "figures/arranging.h"

typedef struct { gboolean json; char *output, *units, *mass_units; } ArrangeOptions;

static bool
parse (int argc, char **argv, ArrangeOptions *options, const char **file, CommandStatus *status)
{
  const GOptionEntry entries[] = {
    { .long_name = "json", .arg = G_OPTION_ARG_NONE, .arg_data = &options->json, .description = N_("print JSON for programs") },
    { .long_name = "output", .short_name = 'o', .arg = G_OPTION_ARG_FILENAME, .arg_data = &options->output,
      .description = N_("write the document so arranged to this file"), .arg_description = "NEW" },
    { .long_name = "units", .arg = G_OPTION_ARG_STRING, .arg_data = &options->units,
      .description = N_("lengths in millimetres or inches (metric)"), .arg_description = "metric|inch" },
    { .long_name = "mass-units", .arg = G_OPTION_ARG_STRING, .arg_data = &options->mass_units,
      .description = N_("masses in grams or ounces (g; oz with inches)"), .arg_description = "g|oz" },
    { .long_name = NULL }
  };
  const Usage usage = {
    .word = "arrange", .entries = entries,
    .summary = _("Finds where all parts with a rail or with bays must be so that the aeroplane balances with the least\n"
                 "ballast: no two in one another's way, every lead reaching, the balance point nearest to the aim."),
    .examples = _("The exit status is 1 when there is no such arrangement; what contradicts is said then.\n\n"
                  "Examples:\n  trammel arrange racer.trammel\n  trammel arrange racer.trammel --output arranged.trammel\n"
                  "  trammel arrange racer.trammel --json"),
  };

  return usage_parse (&usage, argc, argv, file, status);
}

static CommandStatus
fault (const char *file, const char *message)
{
  fprintf (stderr, "%s: %s\n", file, message);
  return COMMAND_PROBLEM;
}

static CommandStatus
write_arranged (const Arranging *arranging, const Arrangement *best, const char *output)
{
  g_autoptr (Aeroplane) arranged = arranging_applied (arranging, best);
  g_autoptr (GError) error = NULL;

  if (writer_save_file (arranged, output, &error))
    return COMMAND_DONE;
  return fault (output, error->message);
}

static const char *
none_text (const ArrangingAnswer *answer)
{
  if (answer->found.status != ARRANGE_NOT_FOUND)
    return _("There is no arrangement that does.");
  return answer->limit_count ? _("No arrangement was found whose leads reach.") : _("No arrangement was found in the time.");
}

static CommandStatus
tell (const Arranging *arranging, const ArrangingAnswer *answer, const char *file, const ArrangeOptions *options, Units units)
{
  g_autofree char *text = options->json ? arranging_json (arranging, answer) : arranging_text (arranging, answer, units);

  if (options->json || answer->found.count)
    fputs (text, stdout);
  if (answer->found.count)
    return options->output ? write_arranged (arranging, &answer->found.found[0], options->output) : COMMAND_DONE;
  fault (file, none_text (answer));
  for (size_t i = 0; i < answer->limit_count; i++)
    {
      g_autofree char *limit = arranging_limit_text (arranging, &answer->limits[i], units);
      fault (file, limit);
    }
  return COMMAND_PROBLEM;
}

static CommandStatus
arrange_file (const char *file, const ArrangeOptions *options, Units units)
{
  g_autoptr (Figures) figures = problems_read (file);
  g_autoptr (Arranging) arranging = NULL;
  ArrangingAnswer answer;
  CommandStatus status;

  if (!figures)
    return COMMAND_PROBLEM;
  const ArrangingWhy why = arranging_new (figures, NULL, &arranging);
  if (why != ARRANGING_CAN)
    return fault (file, arranging_why_text (why));
  arranging_find (arranging, 1, &answer);
  status = answer.status == CORE_OK ? tell (arranging, &answer, file, options, units) : fault (file, arranging_fault_text (answer.status));
  arranging_answer_clear (&answer);
  return status;
}

CommandStatus
arrange_command (int argc, char **argv)
{
  ArrangeOptions options = { 0 };
  CommandStatus status;
  const char *file;
  Units units;

  if (parse (argc, argv, &options, &file, &status) && usage_units ("arrange", options.units, options.mass_units, &units, &status))
    status = arrange_file (file, &options, units);
  g_free (options.output);
  g_free (options.units);
  g_free (options.mass_units);
  return status;
}
