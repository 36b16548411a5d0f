#pragma once
#include <stdbool.h>

/** What `trammel` gives back to the shell. */
typedef enum {
  COMMAND_DONE = 0,
  COMMAND_PROBLEM = 1,       /* the document, its figures or the picture have one, said on standard error as FILE:LINE: message */
  COMMAND_USAGE = 2          /* the command line itself is wrong */
} CommandStatus;

/** Whether the word is a subcommand of this version. */
bool command_is_subcommand (const char *word);

/** Whether the command line is meant for command_main(): a subcommand, an option of ours or of nobody, or a first word that is neither
 *  a file nor a subcommand. Else it is for the window: nothing, files, and the options of the window system. */
bool command_takes (int argc, char **argv);

/** Runs a subcommand, or says what is wrong with the line. Needs no display. Returns a CommandStatus. */
int command_main (int argc, char **argv);
