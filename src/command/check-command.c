#include "command/subcommand.h"

#include "trammel-config.h"
#include <glib/gi18n-lib.h>
#include "command/problems.h"
#include "command/usage.h"

CommandStatus
check_command (int argc, char **argv)
{
  static const GOptionEntry entries[] = { { .long_name = NULL } };
  const Usage usage = {
    .word = "check", .entries = entries,
    .summary = _("Reads the document and says, a line each on standard error, what is wrong with it or with\n"
                 "its figures: an outline that is open or crosses itself, a neutral point that cannot be found,\n"
                 "a balance point behind the neutral point. Silent when all is well."),
    .examples = _("Example:\n  trammel check racer.trammel && echo sound"),
  };
  CommandStatus status;
  const char *file;

  if (!usage_parse (&usage, argc, argv, &file, &status))
    return status;
  g_autoptr (Figures) figures = problems_read (file);
  if (!figures)
    return COMMAND_PROBLEM;
  problems_of_figures (figures, file);
  return figures_are_sound (figures) ? COMMAND_DONE : COMMAND_PROBLEM;
}
