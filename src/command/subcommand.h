#pragma once
#include "command/command.h"

/** One subcommand. */
typedef struct {
  const char *word;
  const char *summary;                                   /* one line for the overall help, marked for translation */
  CommandStatus (*run) (int argc, char **argv);          /* argv[0] is the word */
} Subcommand;

CommandStatus report_command (int argc, char **argv);      /* prints the figures of a document; 0 or what went wrong */
CommandStatus export_command (int argc, char **argv);      /* writes a sheet or a list of a document to a file */
CommandStatus check_command  (int argc, char **argv);      /* says on standard error what is wrong with a document; silent when nothing is */
CommandStatus arrange_command (int argc, char **argv);      /* finds where parts may stand so that it balances */
CommandStatus trace_command  (int argc, char **argv);      /* traces the outline printed in a picture */
