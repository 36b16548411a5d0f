#pragma once
#include <glib.h>
#include "command/command.h"
#include "document/units.h"

/** Says on standard error what is wrong with the command line and where its help is; gives COMMAND_USAGE.
 *  word  the subcommand, or NULL for the whole program */
CommandStatus usage_error (const char *word, const char *format, ...) G_GNUC_PRINTF (2, 3);

/** One subcommand's command line. */
typedef struct {
  const char *word;
  const char *summary;          /* what it does, translated */
  const char *examples;         /* ends its help */
  const GOptionEntry *entries;  /* its options but --help */
  bool takes_image;             /* FILE is the picture of a plan, not a document */
} Usage;

/** Reads the options of a subcommand and its one FILE.
 *  file     set to the file (lent by argv) on success
 *  status   set when the caller has nothing more to do: after --help, or with COMMAND_USAGE when the line is wrong
 *  returns  whether to go on */
bool usage_parse (const Usage *usage, int argc, char **argv, const char **file, CommandStatus *status);

/** The number behind an option, in the C locale whatever the user's is; `value` stays as it is where `text` is NULL. False, and status
 *  set, for what is none: a decimal comma is told how it is written.
 *  option   "--kerf"
 *  value    the option's own unit (mm, a ratio, no unit); finite */
bool usage_number (const char *word, const char *option, const char *text, double *value, CommandStatus *status);

/** What --units and --mass-units chose: NULL is metric; ounces go with inches unless told. False, and status set, for an unknown word. */
bool usage_units (const char *word, const char *units, const char *mass_units, Units *chosen, CommandStatus *status);
