#include "command/command.h"

#include "trammel-config.h"
#include <glib/gi18n-lib.h>
#include <stdio.h>
#include <string.h>
#include "command/subcommand.h"
#include "command/usage.h"

static const Subcommand subcommands[] = {
  { "report", N_("print every figure, as text or as JSON"), report_command },
  { "export", N_("write a sheet for the shop, a list or the figures to a file"), export_command },
  { "check",  N_("say whether the document and its figures are sound"), check_command },
  { "arrange", N_("find the arrangement of parts that needs the least ballast"), arrange_command },
  { "trace",  N_("follow the printed line of a plan and print its outline"), trace_command },
};

static const Subcommand *
find_subcommand (const char *word)
{
  for (size_t i = 0; i < G_N_ELEMENTS (subcommands); i++)
    if (g_str_equal (subcommands[i].word, word))
      return &subcommands[i];
  return NULL;
}

bool
command_is_subcommand (const char *word)
{
  return word && find_subcommand (word);
}

/* Options that the window's library reads itself. */
static bool
is_for_the_window (const char *option)
{
  return g_str_has_prefix (option, "--gapplication") || g_str_has_prefix (option, "--display") || g_str_equal (option, "--");
}

static bool
is_help (const char *word)
{
  return g_str_equal (word, "help");
}

bool
command_takes (int argc, char **argv)
{
  if (argc < 2)
    return false;
  if (command_is_subcommand (argv[1]) || is_help (argv[1]))
    return true;
  if (*argv[1] == '-')
    return !is_for_the_window (argv[1]);
  return !strstr (argv[1], "://") && !g_file_test (argv[1], G_FILE_TEST_EXISTS);
}

static void
print_help (void)
{
  printf ("%s\n  trammel [%s…]\n  trammel %s [%s…] %s\n  trammel help [%s]\n\n%s\n\n%s\n", _("Usage:"), _("FILE"), _("SUBCOMMAND"),
          _("OPTION"), _("FILE"), _("SUBCOMMAND"),
          _("Trammel turns the plan of a small model aeroplane into the mark where it must balance.\n"
            "Without a subcommand it opens its window on the files named."), _("Subcommands, none of which needs a display:"));
  for (size_t i = 0; i < G_N_ELEMENTS (subcommands); i++)
    printf ("  %-8s %s\n", subcommands[i].word, _(subcommands[i].summary));
  printf ("\n%s\n  -h, --help     %s\n  --version      %s\n\n%s\n", _("Options:"), _("show this help; “trammel help report” shows a subcommand's"),
          _("show the version"), _("Examples:"));
  printf ("  trammel report racer.trammel --units=inch\n"
          "  trammel export racer.trammel --output racer.pdf --paper a3\n"
          "  trammel check racer.trammel\n"
          "  trammel trace plan.pdf --through 1200,800 1900,850 2400,1000\n\n%s\n",
          _("The exit status is 0 when all is well, 1 when the document, its figures or the picture have a problem,\n"
            "2 when the command line is wrong."));
}

static size_t
distance_row (const char *word, size_t row[], size_t length, const char *other)
{
  for (size_t j = 0; j <= length; j++)
    row[j] = j;
  for (size_t i = 1; other[i - 1]; i++)
    {
      size_t diagonal = row[0];

      row[0] = i;
      for (size_t j = 1; j <= length; j++)
        {
          const size_t changed = diagonal + (word[j - 1] != other[i - 1]);

          diagonal = row[j];
          row[j] = MIN (changed, MIN (row[j - 1], row[j]) + 1);
        }
    }
  return row[length];
}

/* The subcommand that is at most two letters away from what was typed (Levenshtein's distance). */
static const char *
near_subcommand (const char *word)
{
  enum { LONGEST = 12, NEAR = 2 };
  const size_t length = strlen (word);
  size_t row[LONGEST + 1];

  if (length > LONGEST)
    return NULL;
  for (size_t i = 0; i < G_N_ELEMENTS (subcommands); i++)
    if (distance_row (word, row, length, subcommands[i].word) <= NEAR)
      return subcommands[i].word;
  return NULL;
}

static CommandStatus
refuse_word (const char *word)
{
  const char *near = near_subcommand (word);

  if (*word == '-')
    return usage_error (NULL, _("“%s” is no option of trammel."), word);
  if (near)
    return usage_error (NULL, _("“%s” is neither a file nor a subcommand. Did you mean “%s”?"), word, near);
  return usage_error (NULL, _("“%s” is neither a file nor a subcommand."), word);
}

static CommandStatus
refuse_topic (const char *word)
{
  const char *near = near_subcommand (word);

  if (near)
    return usage_error (NULL, _("There is no subcommand “%s” to help on. Did you mean “%s”?"), word, near);
  return usage_error (NULL, _("There is no subcommand “%s” to help on."), word);
}

/* “help”, and whose: the same as --help behind it. */
static CommandStatus
help_on (int argc, char **argv)
{
  char option[] = "--help";
  const Subcommand *found = argc > 2 ? find_subcommand (argv[2]) : NULL;

  if (argc > 3)
    return usage_error (NULL, _("Help on one subcommand at a time: “%s” is one too many."), argv[3]);
  if (found)
    return found->run (2, (char *[]) { argv[2], option, NULL });
  if (argc > 2 && !is_help (argv[2]))
    return refuse_topic (argv[2]);
  print_help ();
  return COMMAND_DONE;
}

static CommandStatus
run (int argc, char **argv)
{
  const char *word = argc > 1 ? argv[1] : "--help";

  if (command_is_subcommand (word))
    return find_subcommand (word)->run (argc - 1, argv + 1);
  if (is_help (word))
    return help_on (argc, argv);
  if (g_str_equal (word, "--version"))
    {
      printf ("trammel %s\n", TRAMMEL_VERSION);
      return COMMAND_DONE;
    }
  if (g_str_equal (word, "--help") || g_str_equal (word, "-h"))
    {
      print_help ();
      return COMMAND_DONE;
    }
  return refuse_word (word);
}

int
command_main (int argc, char **argv)
{
  const CommandStatus status = run (argc, argv);

  if (fflush (stdout) == 0 && !ferror (stdout))
    return (int) status;
  fprintf (stderr, "trammel: %s\n", _("The output could not be written in full. Is the disk full?"));
  return status == COMMAND_DONE ? COMMAND_PROBLEM : (int) status;
}
