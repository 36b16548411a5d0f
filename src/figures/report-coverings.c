#include "figures/report-coverings.h"

#include "trammel-config.h"
#include <glib/gi18n-lib.h>
#include <math.h>
#include "figures/coverings.h"
#include "figures/names.h"
#include "figures/report-sections.h"

enum { COLUMNS = 6 };

/* "3.4 ± 0.5": the unit stands in the heading. */
static char *
mass_cell (const CoveringFigures *covering, Units units)
{
  g_autofree char *mass = units_mass_figure (units, covering->mass_g);
  g_autofree char *sigma = units_mass_deviation_figure (units, covering->mass_sigma_g);

  return g_strdup_printf (_("%s ± %s"), mass, sigma);
}

/* Headings of two lines, so that a row fits a terminal of 80 characters, in inches too; units stand in the second. */
static void
add_headings (TextTable *table, const char *where, Units units)
{
  const char *mass = units_mass_name (units), *length = units_length_name (units);
  /* Translators: headings of narrow columns, two lines each: at most eight characters a line; %s is a unit */
  char *texts[COLUMNS] = { g_strdup_printf ("\n%s", where), g_strdup_printf (_("weighs\n%s"), mass), g_strdup_printf (_("heavier\nby, %s"), mass),
                           g_strdup_printf (_("balance\naft, %s"), length), g_strdup_printf (_("part\naft, %s"), length),
                           g_strdup_printf (_("at the\nnose, %s"), mass) };

  for (guint line = 0; line < 2; line++)
    for (guint i = 0; i < COLUMNS; i++)
      {
        g_auto (GStrv) lines = g_strsplit (texts[i], "\n", 2);
        text_table_cell (table, g_strdup (lines[line]));
      }
  for (guint i = 0; i < COLUMNS; i++)
    g_free (texts[i]);
}

static void
add_covering (TextTable *table, const Coverings *coverings, const CoveringFigures *covering, Units units)
{
  text_table_cell (table, g_strdup_printf ("  %s", _(covering->covering->name)));
  text_table_cell (table, mass_cell (covering, units));
  text_table_cell (table, covering->present ? g_strdup (_("as now")) : units_mass_figure (units, covering->change_g));
  text_table_cell (table, units_length_figure (units, covering->balance_way_mm));
  text_table_cell (table, coverings->part ? units_length_figure (units, covering->part_way_mm) : NULL);
  text_table_cell (table, units_mass_figure (units, covering->nose_g));
}

static void
add_coverings (TextTable *table, const Coverings *coverings, Units units)
{
  add_headings (table, covering_where_name (coverings->where), units);
  for (size_t k = 0; k < coverings->count; k++)
    add_covering (table, coverings, &coverings->of[k], units);
}

/* Which part the table speaks of, and in a sentence what the choice is worth on the tail, where most of it is the nose's. */
static char *
words_beneath (const Coverings *tail, const Part *part, Units units)
{
  g_autofree char *worth = tail->bare ? NULL : coverings_text (tail, units);
  /* Translators: of the coverings compared; then a whole sentence. */
  g_autofree char *on_tail = worth ? g_strdup_printf (_("On the tail: %s"), worth) : NULL;
  g_autofree char *which = part ? g_strdup_printf (_("The part is “%s”."), piece_name (&part->piece)) : NULL;

  /* Translators: one whole sentence after another */
  return which && on_tail ? g_strdup_printf (_("%s %s"), which, on_tail) : g_strdup (which ? which : on_tail);
}

/* Each sum goes over all surfaces and bodies: the tail's serves its rows and the sentence. */
TextTable
report_coverings (const Figures *figures, Units units, char **beneath)
{
  TextTable table = text_table_new (COLUMNS, 0);
  g_autoptr (GArray) wheres = covering_wheres (figures);
  const Coverings tail = coverings_of (figures, (CoveringWhere) { .scope = COVERING_TAIL });
  const Part *part = NULL;

  for (guint i = 0; i < wheres->len; i++)
    {
      const CoveringWhere where = g_array_index (wheres, CoveringWhere, i);

      if (where.scope == COVERING_PIECE && wheres->len > 1)
        continue;
      const Coverings coverings = where.scope == COVERING_TAIL ? tail : coverings_of (figures, where);
      if (coverings.bare)
        continue;
      add_coverings (&table, &coverings, units);
      part = coverings.part;
    }
  *beneath = words_beneath (&tail, part, units);
  return table;
}

static void
write_kind (JsonText *json, const CoveringFigures *covering, const Part *part)
{
  json_text_open_object (json, NULL);
  json_text_string (json, "material", covering->covering->word);
  json_text_bool (json, "present", covering->present);
  json_text_number (json, "mass_g", covering->mass_g);
  json_text_number (json, "mass_sigma_g", covering->mass_sigma_g);
  json_text_number (json, "change_g", covering->change_g);
  json_text_number (json, "balance_x_mm", covering->balance_x_mm);
  json_text_number (json, "balance_way_mm", covering->balance_way_mm);
  json_text_number (json, "nose_g", covering->nose_g);
  if (part)
    {
      json_text_number (json, "part_way_mm", covering->part_way_mm);
      json_text_bool (json, "part_reaches", covering->part_reaches);
    }
  json_text_close_object (json);
}

void
report_write_coverings (JsonText *json, const Figures *figures)
{
  g_autoptr (GArray) wheres = covering_wheres (figures);

  json_text_open_array (json, "coverings");
  for (guint i = 0; i < wheres->len; i++)
    {
      const Coverings coverings = coverings_of (figures, g_array_index (wheres, CoveringWhere, i));

      json_text_open_object (json, NULL);
      json_text_string (json, "scope", covering_scope_word (coverings.where.scope));
      if (coverings.where.of)
        json_text_string (json, "of", coverings.where.of->id);
      json_text_bool (json, "bare", coverings.bare);
      json_text_number (json, "present_g", coverings.present_g);
      if (coverings.part)
        json_text_string (json, "part", coverings.part->piece.id);
      json_text_open_array (json, "kinds");
      for (size_t k = 0; k < coverings.count; k++)
        write_kind (json, &coverings.of[k], coverings.part);
      json_text_close_array (json);
      json_text_close_object (json);
    }
  json_text_close_array (json);
}
