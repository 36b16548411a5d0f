#include "trammel-config.h"
#include "drawing/parts-sheet-section.h"
#include <glib/gi18n-lib.h>
#include <math.h>
#include "figures/names.h"
#include "figures/station-list.h"

/* Of two that mirror one another both places. */
static char *
side_words (const PartLine *line, Units units)
{
  g_autofree char *off = line->part != NULL ? units_length (units, fabs (line->part->y)) : NULL;

  if (line->partner != NULL)
    return g_strdup_printf (_("%s to either side"), off);
  return line->part != NULL ? off_centre_text (line->part->y, units) : NULL;
}

/* From a former, or in a wing from its leading edge and a rib. */
static char *
front_words (const PartLine *line, Units units)
{
  const WingStand front = { line->wing.surface, line->wing.station_mm, line->wing.front_mm, line->wing.front_mm, line->wing.rib, line->wing.outboard_mm };

  if (line->stand.former != NULL)
    return part_stand_text (&line->stand, line->stand.front_mm, units);
  if (line->wing.surface == NULL)
    return NULL;
  g_autofree char *along = wing_stand_along_text (&front, units), *rib = wing_stand_rib_text (&front, units);
  return rib != NULL ? g_strdup_printf ("%s, %s", along, rib) : g_steal_pointer (&along);
}

PartsSection
parts_places_section (const WallSheet *sheet, const PartList *list)
{
  const MassFigures *mass = &sheet->figures->mass;
  const Units units = sheet->units;
  const char *const heads[] = { _("No."), _("part"), _("middle aft of datum"), _("off the centre line"), _("front edge"), _("above the bottom") };
  PartsSection section = section_new (_("Where Parts Stand"), G_N_ELEMENTS (heads) - (list->has_stands ? 0 : 1));

  set_heads (&section.table, heads);
  section.stretches = 1;
  section.table.to_right[2] = true;
  for (size_t i = 0; i < list->count; i++)
    {
      const PartLine *line = &list->lines[i];

      ruled_table_add (&section.table, (char *const[TABLE_COLUMNS]) {
        number_words (line->number), g_strdup (line->name), paper_length_figure (units, line->x), side_words (line, units), front_words (line, units),
        line->stand.former != NULL ? part_stand_height_text (&line->stand, units) : NULL });
    }
  if (list->count > 1 && isfinite (mass->x_mm))
    ruled_table_add (&section.table, (char *const[TABLE_COLUMNS]) {
      NULL, g_strdup (_("balance point as drawn")), paper_length_figure (units, mass->x_mm) });
  return section;
}

/* With whose it is, where more than one has some. */
static char *
station_name (const GArray *lines, guint i)
{
  const StationLine *line = &g_array_index (lines, StationLine, i);
  const char *name = line->place->name != NULL && *line->place->name != '\0' ? line->place->name : "–";

  if (g_array_index (lines, StationLine, 0).of == g_array_index (lines, StationLine, lines->len - 1).of)
    return g_strdup (name);
  /* Translators: a former's or a rib's name, and whose it is: "R1, wing" */
  return g_strdup_printf (_("%s, %s"), name, piece_name (line->of));
}

static char *
apart_words (const StationLine *line, Units units)
{
  return isnan (line->apart_mm) ? NULL : parts_known_figure (units, line->apart_mm);
}

static void
fill_former (char *cells[], const GArray *lines, guint i, Units units)
{
  const StationLine *line = &g_array_index (lines, StationLine, i);
  g_autofree char *wide = paper_length_figure (units, line->width_mm), *high = paper_length_figure (units, line->height_mm);

  cells[0] = station_name (lines, i);
  cells[1] = parts_known_figure (units, line->place->place);
  cells[2] = apart_words (line, units);
  cells[3] = g_strdup_printf ("%s\u00A0× %s", wide, high);
}

static void
fill_rib (char *cells[], const GArray *lines, guint i, Units units)
{
  const StationLine *line = &g_array_index (lines, StationLine, i);

  cells[0] = station_name (lines, i);
  cells[1] = parts_known_figure (units, line->place->place);
  cells[2] = apart_words (line, units);
  cells[3] = paper_length_figure (units, line->chord_mm);
}

PartsSection
parts_formers_section (const WallSheet *sheet)
{
  enum { COLUMNS = 4 };
  const char *const heads[2 * COLUMNS] = { _("former"), _("aft of datum"), _("from the one before"), _("body wide × high"),
                                           _("rib"), _("from the centre line"), _("from the one before"), _("chord") };
  g_autoptr (GArray) formers = former_stations (sheet->figures->aeroplane), ribs = rib_stations (sheet->figures->aeroplane);
  const bool both = formers->len > 0 && ribs->len > 0;
  PartsSection section = section_new (both ? _("Formers and Ribs") : formers->len > 0 ? _("Formers") : _("Ribs"), both ? 2 * COLUMNS : COLUMNS);

  set_heads (&section.table, formers->len > 0 ? heads : heads + COLUMNS);
  section.stretches = section.table.columns;
  section.parted = both ? COLUMNS : 0;
  for (unsigned i = 0; i < section.table.columns; i++)
    section.table.to_right[i] = i % COLUMNS != 0;
  for (guint i = 0; i < MAX (formers->len, ribs->len); i++)
    {
      char *cells[TABLE_COLUMNS] = { NULL };

      if (i < formers->len)
        fill_former (cells, formers, i, sheet->units);
      if (i < ribs->len)
        fill_rib (cells + section.parted, ribs, i, sheet->units);
      ruled_table_add (&section.table, cells);
    }
  return section;
}
