#include "trammel-config.h"
#include "drawing/parts-sheet-section.h"
#include <glib/gi18n-lib.h>
#include <math.h>
#include "document/part-class.h"
#include "figures/before-closing.h"
#include "figures/cautions.h"
#include "figures/lead-lists.h"
#include "figures/lead-words.h"
#include "figures/part-rating.h"

/* The number that the part has on the wall sheet; 0 without. */
static int
number_of (const PartList *list, const void *part)
{
  for (size_t i = 0; part != NULL && i < list->count; i++)
    if (list->lines[i].part == part || list->lines[i].partner == part)
      return list->lines[i].number;
  return 0;
}

/* "9 – 5", as far as the ends have numbers. */
static char *
numbers_of_lead (const Aeroplane *aeroplane, const PartList *list, const Lead *lead, LeadLeg leg)
{
  const bool from_joint = lead_is_joined (lead) && leg == LEG_TO;
  const int from = from_joint ? 0 : number_of (list, aeroplane_part_by_id (aeroplane, lead_leg_part (lead, leg)));
  const int to = lead_is_joined (lead) && !from_joint ? 0 : number_of (list, aeroplane_part_by_id (aeroplane, lead->to));

  return from > 0 && to > 0 ? g_strdup_printf ("%d\u00A0–\u00A0%d", from, to) : number_words (from + to);
}

static PartsSection
closing_section (const WallSheet *sheet, const PartList *list)
{
  const Aeroplane *aeroplane = sheet->figures->aeroplane;
  const char *const heads[] = { "", _("No."), _("to put in"), _("place") };
  PartsSection section = section_new (_("Before the Body Is Closed"), G_N_ELEMENTS (heads));
  g_autoptr (GArray) steps = before_closing_of (sheet->figures);

  set_heads (&section.table, heads);
  section.ticks = true;
  section.stretches = 3;
  for (guint i = 0; i < steps->len; i++)
    {
      const ClosingStep *step = &g_array_index (steps, ClosingStep, i);
      char *number = step->kind == CLOSING_LEAD ? numbers_of_lead (aeroplane, list, (const Lead *) step->piece, step->leg)
                                                : number_words (number_of (list, step->piece));

      ruled_table_add (&section.table, (char *const[TABLE_COLUMNS]) { NULL, number, closing_what (sheet->figures, step, sheet->units),
                                                                      closing_where (sheet->figures, step, sheet->units) });
    }
  return section;
}

/* The name, and what it is where the name does not say so. */
static char *
part_words (const PartLine *line)
{
  const PartClass *class = line->part != NULL ? part_class_find (line->part->class_name) : NULL;
  g_autofree char *name = g_utf8_casefold (line->name, -1), *kind = class != NULL ? g_utf8_casefold (_(class->name), -1) : NULL;

  if (kind == NULL || strstr (name, kind) != NULL || g_str_equal (class->word, "other"))
    return g_strdup (line->name);
  return g_strdup_printf ("%s (%s)", line->name, _(class->name));
}

static char *
known_words (const PartLine *line, Units units)
{
  g_autofree char *sigma = line->part != NULL ? units_mass_deviation_figure (units, line->part->mass_sigma) : NULL;

  if (line->part == NULL)
    return NULL;
  if (isnan (line->part->mass_sigma))
    return g_strdup (_("estimated"));
  return g_strdup_printf (line->partner != NULL ? _("± %s each") : _("± %s"), sigma);
}

/* As the box lies: along, across, high. */
static char *
size_words (const Part *part, Units units)
{
  return part != NULL && (part->length > 0 || part->width > 0 || part->height > 0)
         ? units_size (units, part->length, part->width, part->height) : NULL;
}

static void
add_part_line (RuledTable *table, const PartLine *line, Units units)
{
  ruled_table_add (table, (char *const[TABLE_COLUMNS]) {
    number_words (line->number), part_words (line), line->part != NULL ? part_rating_text (line->part, units) : NULL,
    units_mass_figure (units, line->mass), known_words (line, units), size_words (line->part, units) });
}

static PartsSection
parts_section (const WallSheet *sheet, const PartList *list)
{
  const MassFigures *mass = &sheet->figures->mass;
  g_autofree char *sigma = units_mass_deviation_figure (sheet->units, mass->total_sigma_g);
  const char *const heads[] = { _("No."), _("part"), _("to buy"), units_mass_name (sheet->units), _("known to"), _("long × wide × high") };
  PartsSection section = section_new (_("Parts"), G_N_ELEMENTS (heads));

  set_heads (&section.table, heads);
  section.stretches = 2;
  section.table.to_right[3] = true;
  for (size_t i = 0; i < list->count; i++)
    add_part_line (&section.table, &list->lines[i], sheet->units);
  if (list->count > 1 && isfinite (mass->x_mm))
    ruled_table_add (&section.table, (char *const[TABLE_COLUMNS]) {
      NULL, g_strdup (_("all-up")), NULL, units_mass_figure (sheet->units, mass->total_g), g_strdup_printf (_("± %s"), sigma) });
  if (list->count > 0)
    section.words = one_paragraph (g_strdup (_("Numbers are those on the wall sheet. A mass is estimated as usual for its kind until a scale says better.")));
  return section;
}

static void
add_leg (RuledTable *table, const WallSheet *sheet, const PartList *list, const Lead *lead, LeadLeg leg)
{
  const Aeroplane *aeroplane = sheet->figures->aeroplane;
  const LeadNeed need = lead_need_of (aeroplane, lead, leg);

  ruled_table_add (table, (char *const[TABLE_COLUMNS]) {
    numbers_of_lead (aeroplane, list, lead, leg), lead_leg_title (aeroplane, lead, leg), units_length_figure (sheet->units, lead_leg_length (lead, leg)),
    units_length_figure (sheet->units, need.needed), lead_extension_figure (&need, sheet->units) });
}

static PartsSection
leads_section (const WallSheet *sheet, const PartList *list)
{
  const Aeroplane *aeroplane = sheet->figures->aeroplane;
  const char *const heads[] = { _("No."), _("lead"), _("has"), _("needs"), _("extension to buy or to make") };
  PartsSection section = section_new (_("Leads"), G_N_ELEMENTS (heads));
  char *buy = leads_to_buy (aeroplane, sheet->units);

  set_heads (&section.table, heads);
  section.stretches = 1;
  section.table.to_right[2] = section.table.to_right[3] = section.table.to_right[4] = true;
  for (size_t i = 0; i < aeroplane_count (aeroplane, PIECE_LEAD); i++)
    for (int leg = 0; leg < lead_leg_count (aeroplane_lead (aeroplane, i)); leg++)
      add_leg (&section.table, sheet, list, aeroplane_lead (aeroplane, i), leg);
  if (buy != NULL)
    section.words = one_paragraph (buy);
  return section;
}

static PartsSection
cautions_section (void)
{
  PartsSection section = section_new (_("Cautions"), 0);
  GPtrArray *sentences = g_ptr_array_new ();

  for (size_t i = 0; cautions_sentence (i) != NULL; i++)
    g_ptr_array_add (sentences, g_strdup (cautions_sentence (i)));
  g_ptr_array_add (sentences, NULL);
  section.words = (char **) g_ptr_array_free (sentences, FALSE);
  section.small = true;
  return section;
}

static bool
has_rows (const PartsSection *section)
{
  return section->table.rows->len > 0;
}

/* What is empty says what it waits for. */
static void
say_what_is_missing (const Aeroplane *aeroplane, PartsSection sections[PARTS_SECTIONS])
{
  PartsSection *closing = &sections[PARTS_CLOSING], *parts = &sections[PARTS_LIST], *cutting = &sections[PARTS_CUTTING];

  if (!has_rows (closing) && !has_rows (parts) && !has_rows (cutting))
    closing->words = one_paragraph (g_strdup (_("Nothing is listed yet. Place parts, draw the body, or say what the structures are made of.")));
  else
    {
      if (!has_rows (closing))
        closing->words = one_paragraph (g_strdup (aeroplane_count (aeroplane, PIECE_BODY) > 0
          ? _("Nothing stands in the body yet. Place parts.") : _("No body is drawn yet. Draw it, and what goes into it is listed here.")));
      if (!has_rows (parts))
        parts->words = one_paragraph (g_strdup (_("No parts are placed yet. Place them, and they are listed here.")));
      if (!has_rows (cutting))
        cutting->words = one_paragraph (g_strdup (_("No structure says what it is made of. List sheet, sticks and covering under Structure.")));
    }
}

void
parts_sections_of (const WallSheet *sheet, PartsSection sections[PARTS_SECTIONS])
{
  PartList list = part_list_of (sheet->figures);

  sections[PARTS_CLOSING] = closing_section (sheet, &list);
  sections[PARTS_LIST] = parts_section (sheet, &list);
  sections[PARTS_PLACES] = parts_places_section (sheet, &list);
  sections[PARTS_FORMERS] = parts_formers_section (sheet);
  sections[PARTS_LEADS] = leads_section (sheet, &list);
  sections[PARTS_CUTTING] = parts_cutting_section (sheet);
  sections[PARTS_CAUTIONS] = cautions_section ();
  say_what_is_missing (sheet->figures->aeroplane, sections);
  part_list_clear (&list);
}

void
parts_sections_clear (PartsSection sections[PARTS_SECTIONS])
{
  for (size_t i = 0; i < PARTS_SECTIONS; i++)
    {
      ruled_table_clear (&sections[i].table);
      g_strfreev (sections[i].words);
    }
}
