#pragma once
#include "command/command.h"

/** One subcommand. */
typedef struct {
  const char *word;
  const char *summary;                                   /* one line for the overall help, marked for translation */
  CommandStatus (*run) (int argc, char **argv);          /* argv[0] is the word */
} Subcommand;

CommandStatus report_command (int argc, char **argv);
CommandStatus export_command (int argc, char **argv);
CommandStatus check_command  (int argc, char **argv);
CommandStatus arrange_command (int argc, char **argv);
CommandStatus trace_command  (int argc, char **argv);
