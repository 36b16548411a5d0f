#include "command/subcommand.h"

#include "trammel-config.h"
#include <glib/gi18n-lib.h>
#include <math.h>
#include <stdio.h>
#include "command/problems.h"
#include "command/usage.h"
#include "drawing/export-cutting.h"
#include "drawing/paper.h"

/* Numbers as they were typed: their sentences are ours. */
typedef struct { char *output, *sheet, *list, *paper, *orientation, *halves, *units, *mass_units, *kerf, *read_short, *read_long; int dpi; } Wanted;

enum { LEAST_DPI = 30, MOST_DPI = 1200, NOT_GIVEN = G_MININT, LEAST_READING = 90, MOST_READING = 110 };

/* What only templates and files for cutting have; `all` is of GOptionEntry. */
static void
add_entries_of_shop (GArray *all, Wanted *wanted)
{
  const GOptionEntry entries[] = {
    { .long_name = "halves", .arg = G_OPTION_ARG_STRING, .arg_data = &wanted->halves,
      .description = N_("which halves of wings and tails a template or a file for cutting holds (both)"), .arg_description = "both|starboard|port" },
    { .long_name = "kerf", .arg = G_OPTION_ARG_STRING, .arg_data = &wanted->kerf,
      .description = N_("how wide the cut is, 0 to 2 mm (0)"), .arg_description = "MM" },
    { .long_name = "read-short", .arg = G_OPTION_ARG_STRING, .arg_data = &wanted->read_short,
      .description = N_("how long your printer draws a template's 100 mm along the paper's short side (100)"), .arg_description = "MM" },
    { .long_name = "read-long", .arg = G_OPTION_ARG_STRING, .arg_data = &wanted->read_long,
      .description = N_("the same along its long side (100)"), .arg_description = "MM" },
  };

  g_array_append_vals (all, entries, G_N_ELEMENTS (entries));
}

static void
add_entries (GArray *all, Wanted *wanted, const char *papers)
{
  const GOptionEntry entries[] = {
    { .long_name = "output", .short_name = 'o', .arg = G_OPTION_ARG_FILENAME, .arg_data = &wanted->output,
      .description = N_("the file to write; its ending says what: png, pdf, svg, dxf, csv, json"), .arg_description = "OUT" },
    { .long_name = "sheet", .arg = G_OPTION_ARG_STRING, .arg_data = &wanted->sheet,
      .description = N_("which sheet (wall; cutting for a dxf)"), .arg_description = "wall|template|parts|cutting" },
    { .long_name = "list", .arg = G_OPTION_ARG_STRING, .arg_data = &wanted->list,
      .description = N_("a CSV's: parts, groups, moments, movers, coverings, leads, cutting, before-closing, formers (parts)"), .arg_description = "LIST" },
    { .long_name = "paper", .arg = G_OPTION_ARG_STRING, .arg_data = &wanted->paper,
      .description = N_("its paper (a4; a template without it is one page as large as needed)"), .arg_description = papers },
    { .long_name = "orientation", .arg = G_OPTION_ARG_STRING, .arg_data = &wanted->orientation,
      .description = N_("how the paper of a wall sheet or a template lies (landscape)"), .arg_description = "landscape|portrait" },
    { .long_name = "dpi", .arg = G_OPTION_ARG_INT, .arg_data = &wanted->dpi,
      .description = N_("dots an inch of a PNG, 30 to 1200 (150)"), .arg_description = "N" },
    { .long_name = "units", .arg = G_OPTION_ARG_STRING, .arg_data = &wanted->units,
      .description = N_("lengths on the sheet (metric)"), .arg_description = "metric|inch" },
    { .long_name = "mass-units", .arg = G_OPTION_ARG_STRING, .arg_data = &wanted->mass_units,
      .description = N_("masses on the sheet (g; oz with inches)"), .arg_description = "g|oz" },
  };

  g_array_append_vals (all, entries, G_N_ELEMENTS (entries));
}

static bool
parse (int argc, char **argv, Wanted *wanted, const char **file, CommandStatus *status)
{
  g_autofree char *papers = paper_words ("|");
  g_autoptr (GArray) entries = g_array_new (TRUE, FALSE, sizeof (GOptionEntry));
  Usage usage = {
    .word = "export",
    .summary = _("Writes a sheet for the shop or a template at full size (png, pdf, svg), a file for cutting (svg, dxf), a list (csv) or every figure (json) to a file."),
    .examples = _("Examples:\n  trammel export racer.trammel --output racer.pdf --paper a3\n"
                  "  trammel export racer.trammel --output racer.png --dpi 300\n"
                  "  trammel export racer.trammel --output template.pdf --sheet=template --paper a4\n"
                  "  trammel export racer.trammel --output parts.csv\n"
                  "  trammel export racer.trammel --output moments.csv --list moments\n"
                  "  trammel export racer.trammel --output racer.dxf --halves=starboard --kerf 0.2"),
  };

  add_entries (entries, wanted, papers);
  add_entries_of_shop (entries, wanted);
  usage.entries = (const GOptionEntry *) entries->data;
  return usage_parse (&usage, argc, argv, file, status);
}

static CommandStatus
paper_error (const char *paper)
{
  g_autofree char *known = paper_words (", ");

  /* Translators: the list is of words that stay as they are, "a4, a3, letter" */
  return usage_error ("export", _("--paper is one of %s, not “%s”."), known, paper);
}

/* The place of a word among `count`, some of them NULL; -1 for none of them. */
static int
word_among (const char *const words[], int count, const char *word)
{
  for (int i = 0; i < count; i++)
    if (words[i] != NULL && g_str_equal (words[i], word))
      return i;
  return -1;
}

/* Which sheet, told or by the ending, and whether that ending can hold it. */
static bool
understand_sheet (const Wanted *wanted, ExportOptions *options, CommandStatus *status)
{
  static const char *const words[EXPORT_SHEET_COUNT] = { [EXPORT_WALL_SHEET] = "wall", [EXPORT_TEMPLATE] = "template",
                                                           [EXPORT_PARTS_SHEET] = "parts", [EXPORT_CUTTING] = "cutting" };
  const bool dxf = options->format == EXPORT_DXF;
  const int sheet = wanted->sheet ? word_among (words, EXPORT_SHEET_COUNT, wanted->sheet) : dxf ? EXPORT_CUTTING : EXPORT_WALL_SHEET;

  if (sheet < 0)
    *status = usage_error ("export", _("--sheet is wall, template, parts or cutting, not “%s”."), wanted->sheet);
  else if (dxf && sheet != EXPORT_CUTTING)
    *status = usage_error ("export", _("A .dxf file is for cutting and holds no other sheet; leave out --sheet=%s."), wanted->sheet);
  else if (sheet == EXPORT_CUTTING && !dxf && options->format != EXPORT_SVG)
    *status = usage_error ("export", _("A file for cutting ends in .svg or .dxf, not as “%s” does."), wanted->output);
  else
    {
      options->sheet = sheet;
      options->one_page = wanted->paper == NULL;
      return true;
    }
  return false;
}

/* Which way the paper lies, where it may lie either way. */
static bool
understand_orientation (const Wanted *wanted, ExportOptions *options, CommandStatus *status)
{
  static const char *const words[] = { "landscape", "portrait" };
  const int way = wanted->orientation ? word_among (words, G_N_ELEMENTS (words), wanted->orientation) : 0;
  const bool one_way = options->sheet == EXPORT_PARTS_SHEET || options->sheet == EXPORT_CUTTING;

  if (way < 0)
    *status = usage_error ("export", _("--orientation is landscape or portrait, not “%s”."), wanted->orientation);
  else if (wanted->orientation && one_way)
    *status = usage_error ("export", "%s", _("--orientation goes with a wall sheet or a template: the other sheets lie one way."));
  else if (wanted->orientation && options->sheet == EXPORT_TEMPLATE && options->one_page)
    *status = usage_error ("export", "%s", _("--orientation of a template goes with --paper: without one it is a single page as large as needed."));
  else
    {
      options->portrait = way == 1;
      return true;
    }
  return false;
}

/* What only a template has: what a rule reads on it. */
static bool
understand_readings (const Wanted *wanted, ExportOptions *options, CommandStatus *status)
{
  double on_short = 100, on_long = 100;

  if (!usage_number ("export", "--read-short", wanted->read_short, &on_short, status)
      || !usage_number ("export", "--read-long", wanted->read_long, &on_long, status))
    return false;
  if (options->sheet != EXPORT_TEMPLATE && (wanted->read_short || wanted->read_long))
    *status = usage_error ("export", "%s", _("--read-short and --read-long go with --sheet=template."));
  else if (fmin (on_short, on_long) < LEAST_READING || fmax (on_short, on_long) > MOST_READING)
    *status = usage_error ("export", _("--read-short and --read-long are from %d to %d mm."), LEAST_READING, MOST_READING);
  else
    {
      options->read_short = on_short;
      options->read_long = on_long;
      return true;
    }
  return false;
}

/* What templates and files for cutting have. */
static bool
understand_cutting (const Wanted *wanted, ExportOptions *options, CommandStatus *status)
{
  static const char *const words[EXPORT_HALVES_COUNT] = { [EXPORT_BOTH_HALVES] = "both", [EXPORT_STARBOARD] = "starboard", [EXPORT_PORT] = "port" };
  const int halves = wanted->halves ? word_among (words, EXPORT_HALVES_COUNT, wanted->halves) : EXPORT_BOTH_HALVES;
  const bool cutting = options->sheet == EXPORT_CUTTING;
  double kerf = 0;

  if (!usage_number ("export", "--kerf", wanted->kerf, &kerf, status))
    return false;
  if (halves < 0)
    *status = usage_error ("export", _("--halves is both, starboard or port, not “%s”."), wanted->halves);
  else if (wanted->halves && !cutting && options->sheet != EXPORT_TEMPLATE)
    *status = usage_error ("export", "%s", _("--halves goes with --sheet=template or --sheet=cutting."));
  else if (wanted->kerf && !cutting)
    *status = usage_error ("export", "%s", _("--kerf goes with --sheet=cutting."));
  else if (kerf < 0 || kerf > EXPORT_KERF_MOST)
    *status = usage_error ("export", _("--kerf is from 0 to %g mm, not %g."), EXPORT_KERF_MOST, kerf);
  else
    {
      options->halves = halves;
      options->kerf = kerf;
      return true;
    }
  return false;
}

/* What is asked for, made of the words; false, and status set, when one is wrong. */
static bool
understand (const Wanted *wanted, ExportOptions *options, CommandStatus *status)
{
  double width, height;

  if (!wanted->output)
    *status = usage_error ("export", "%s", _("Name the file to write: --output OUT.pdf"));
  else if (!export_format_of (wanted->output, &options->format))
    *status = usage_error ("export", _("“%s” does not end in .png, .pdf, .svg, .dxf, .csv or .json."), wanted->output);
  else if (wanted->list && !report_list_from_word (wanted->list, &options->list))
    *status = usage_error ("export", _("--list is parts, groups, moments, movers, coverings, leads, cutting, before-closing or formers, not “%s”."), wanted->list);
  else if (wanted->list && options->format != EXPORT_CSV)
    *status = usage_error ("export", "%s", _("--list goes into a .csv file."));
  else if (wanted->paper && !export_paper_size (wanted->paper, &width, &height))
    *status = paper_error (wanted->paper);
  else if (wanted->dpi != NOT_GIVEN && (wanted->dpi < LEAST_DPI || wanted->dpi > MOST_DPI))
    *status = usage_error ("export", _("--dpi is from %d to %d, not %d."), LEAST_DPI, MOST_DPI, wanted->dpi);
  else if (understand_sheet (wanted, options, status) && understand_cutting (wanted, options, status)
           && understand_orientation (wanted, options, status) && understand_readings (wanted, options, status)
           && usage_units ("export", wanted->units, wanted->mass_units, &options->units, status))
    {
      if (wanted->paper)
        g_strlcpy (options->paper, wanted->paper, sizeof options->paper);
      if (wanted->dpi != NOT_GIVEN)
        options->dpi = wanted->dpi;
      return true;
    }
  return false;
}

/* Who names a file to write knows it; what several pages are called is made up from that name, and so each one that was there is told. */
static void
tell_replaced (const GPtrArray *paths)
{
  for (guint i = 0; i < paths->len; i++)
    fprintf (stderr, _("Replaced %s, which was there.\n"), (const char *) paths->pdata[i]);
}

static bool
write_files (const Figures *figures, const ExportOptions *options, const char *output, GError **error)
{
  g_autoptr (GPtrArray) files = export_files (figures, options, output, error), there = files ? export_files_in_the_way (files) : NULL;

  if (!files || !export_files_write (files, error))
    return false;
  if (files->len > 1)
    tell_replaced (there);
  return true;
}

/* It is written whatever the figures are, and what is unsound of them is said: who prints it must know. */
static CommandStatus
export_file (const char *file, const ExportOptions *options, const char *output)
{
  g_autoptr (Figures) figures = problems_read (file);
  g_autoptr (GError) error = NULL;

  if (!figures)
    return COMMAND_PROBLEM;
  if (!write_files (figures, options, output, &error))
    {
      fprintf (stderr, "%s\n", error->message);
      return COMMAND_PROBLEM;
    }
  problems_of_figures (figures, file);
  return figures_are_sound (figures) ? COMMAND_DONE : COMMAND_PROBLEM;
}

CommandStatus
export_command (int argc, char **argv)
{
  Wanted wanted = { .dpi = NOT_GIVEN };
  CommandStatus status;
  const char *file;

  if (parse (argc, argv, &wanted, &file, &status))
    {
      ExportOptions options = export_default_options (wanted.output ? wanted.output : "");

      if (understand (&wanted, &options, &status))
        status = export_file (file, &options, wanted.output);
    }
  g_free (wanted.output);
  g_free (wanted.sheet);
  g_free (wanted.list);
  g_free (wanted.paper);
  g_free (wanted.orientation);
  g_free (wanted.halves);
  g_free (wanted.kerf);
  g_free (wanted.read_short);
  g_free (wanted.read_long);
  g_free (wanted.units);
  g_free (wanted.mass_units);
  return status;
}
