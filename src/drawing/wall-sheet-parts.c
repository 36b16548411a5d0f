#include "trammel-config.h"
#include "drawing/wall-sheet-parts.h"
#include <glib/gi18n-lib.h>
#include <math.h>
#include "drawing/ruled-table.h"
#include "figures/lead-words.h"
#include "figures/names.h"

/* Alike, at the same place on either side. */
static bool
parts_are_pair (const Part *a, const Part *b)
{
  const double same = 0.05;

  return a != b && b->aboard && fabs (a->y) > same && fabs (a->y + b->y) < same && fabs (a->x - b->x) < same
         && a->mass == b->mass && g_strcmp0 (a->class_name, b->class_name) == 0
         && g_strcmp0 (piece_name (&a->piece), piece_name (&b->piece)) == 0;
}

/* The first part of the document that is this one's mirror image; NULL without. */
static const Part *
part_mate (const Aeroplane *aeroplane, const Part *part)
{
  for (size_t i = 0; i < aeroplane_count (aeroplane, PIECE_PART); i++)
    if (parts_are_pair (part, aeroplane_part (aeroplane, i)))
      return aeroplane_part (aeroplane, i);
  return NULL;
}

/* Two parts are a pair when each is the other's first mate. */
static const Part *
part_partner (const Aeroplane *aeroplane, const Part *part)
{
  const Part *mate = part_mate (aeroplane, part);

  return mate != NULL && part_mate (aeroplane, mate) == part ? mate : NULL;
}

static bool
part_stands_before (const Aeroplane *aeroplane, const Part *first, const Part *second)
{
  for (size_t i = 0; i < aeroplane_count (aeroplane, PIECE_PART); i++)
    {
      if (aeroplane_part (aeroplane, i) == first)
        return true;
      if (aeroplane_part (aeroplane, i) == second)
        return false;
    }
  return false;
}

static PartLine
line_of_part (const Part *part, const Part *partner, int number)
{
  const char *name = piece_name (&part->piece);

  if (partner == NULL)
    return (PartLine) { .number = number, .mass = part->mass, .x = part->x, .part = part,
                        .name = part->to_come ? g_strdup_printf (_("%s, to come"), name) : g_strdup (name) };
  return (PartLine) {
    /* Translators: a part's name and how many there are, "Servo, 2 off" */
    .number = number, .name = g_strdup_printf (_("%s, %d off"), name, 2), .mass = part->mass + partner->mass, .x = part->x,
    .part = part->y > 0 ? part : partner, .partner = part->y > 0 ? partner : part };
}

/* What leads weigh themselves, each with a line but without a number on the sheet; its moment about the datum, g mm. */
static double
add_leads (const Aeroplane *aeroplane, PartList *list)
{
  double moment = 0;

  for (size_t i = 0; i < aeroplane_count (aeroplane, PIECE_LEAD); i++)
    {
      Part *part = lead_as_part (aeroplane, aeroplane_lead (aeroplane, i));

      if (part && part->aboard)
        {
          list->lines[list->count++] = (PartLine) { .name = g_strdup (part->name), .mass = part->mass, .x = part->x };
          moment += part->mass * part->x;
        }
      piece_unref (part ? &part->piece : NULL);
    }
  return moment;
}

/* All structures as one line: what the scale says of the bare airframe is the structures' for the most part, and the lines are to come to
 * the whole. Its mass and place are what the whole leaves for it. */
static bool
line_of_structure (const Figures *figures, const PartList *list, double moment_of_leads, PartLine *line)
{
  double mass = figures->mass.total_g, moment = figures->mass.total_g * figures->mass.x_mm - moment_of_leads;

  for (size_t i = 0; i < list->count; i++)
    mass -= list->lines[i].mass;
  for (size_t i = 0; i < aeroplane_count (figures->aeroplane, PIECE_PART); i++)
    {
      const Part *part = aeroplane_part (figures->aeroplane, i);

      moment -= part->aboard ? part->mass * part->x : 0;
    }
  if (!figures->structure_count || !(mass > 1e-9))
    return false;
  *line = (PartLine) { .name = g_strdup (_("structure")), .mass = mass, .x = moment / mass };
  return true;
}

/* Where trays go, as a rule on the body tells it. */
static void
add_stands (const Aeroplane *aeroplane, PartList *list)
{
  g_autoptr (PartRule) rule = part_rule_new (aeroplane);

  for (size_t i = 0; i < list->count; i++)
    if (list->lines[i].part && part_stand_of (rule, list->lines[i].part, &list->lines[i].stand))
      list->has_stands = true;
    else if (list->lines[i].part && wing_stand_of (aeroplane, list->lines[i].part, &list->lines[i].wing))
      list->has_wings = true;
}

PartList
part_list_of (const Figures *figures)
{
  const Aeroplane *aeroplane = figures->aeroplane;
  const size_t count = aeroplane_count (aeroplane, PIECE_PART);
  PartList list = { .lines = g_new0 (PartLine, count + aeroplane_count (aeroplane, PIECE_LEAD) + 1) };
  int number = 0;
  double leads;

  for (size_t i = 0; i < count; i++)
    {
      const Part *part = aeroplane_part (aeroplane, i), *partner = part->aboard ? part_partner (aeroplane, part) : NULL;

      if (part->aboard && (partner == NULL || part_stands_before (aeroplane, part, partner)))
        list.lines[list.count++] = line_of_part (part, partner, ++number);
    }
  add_stands (aeroplane, &list);
  leads = add_leads (aeroplane, &list);
  if (line_of_structure (figures, &list, leads, &list.lines[list.count]))
    list.count++;
  return list;
}

void
part_list_clear (PartList *self)
{
  for (size_t i = 0; i < self->count; i++)
    g_free (self->lines[i].name);
  g_clear_pointer (&self->lines, g_free);
}

/* Where its front edge lies: from a former, or in a wing behind the leading edge. */
static char *
front_text (const PartLine *line, Units units)
{
  g_autofree char *aft = line->wing.surface ? paper_length (units, line->wing.front_mm) : NULL;

  if (line->stand.former)
    return part_stand_text (&line->stand, line->stand.front_mm, units);
  /* Translators: in a narrow column of a table, a length: where a part's front edge lies in a wing */
  return aft ? g_strdup_printf (_("%s aft of leading edge"), aft) : NULL;
}

/* How high it stands, or in a wing at which rib. */
static char *
other_text (const PartLine *line, Units units)
{
  if (line->stand.former)
    return part_stand_height_text (&line->stand, units);
  return line->wing.surface ? wing_stand_rib_text (&line->wing, units) : NULL;
}

static void
table_add_line (RuledTable *table, Units units, const PartLine *line)
{
  const bool stands = table->columns > 4;
  char *const cells[TABLE_COLUMNS] = {
    line->number > 0 ? g_strdup_printf ("%d", line->number) : g_strdup (""), g_strdup (line->name),
    units_mass_figure (units, line->mass), paper_length_figure (units, line->x),
    stands ? front_text (line, units) : NULL,
    stands ? other_text (line, units) : NULL };

  ruled_table_add (table, cells);
}

static void
table_add_rest (RuledTable *table, size_t count)
{
  /* Translators: at the end of a list that is cut short */
  g_autofree char *words = g_strdup_printf (ngettext ("and %d more, on the parts sheet", "and %d more, on the parts sheet", count), (int) count);

  ruled_table_add (table, (char *const[TABLE_COLUMNS]) { NULL, g_steal_pointer (&words) });
}

void
part_table_draw (const SheetPen *pen, const PartList *list, Point at, PartTableStyle style)
{
  const MassFigures *mass = &pen->sheet->figures->mass;
  const Units units = pen->sheet->units;
  RuledTable table = ruled_table_new (_("Parts"), list->has_stands || list->has_wings ? 6 : 4);
  const PartLine whole = { .name = (char *) _("all-up, balance point"), .mass = mass->total_g, .x = mass->x_mm };

  table.caps = style.caps;
  table.heads[0] = _("No.");
  table.heads[1] = _("part");
  table.heads[2] = units_mass_name (units);
  table.heads[3] = _("aft of datum");
  table.heads[4] = _("front edge");
  table.heads[5] = _("above the bottom");
  table.to_right[2] = table.to_right[3] = true;
  for (size_t i = 0; i < MIN (list->count, style.most); i++)
    table_add_line (&table, units, &list->lines[i]);
  if (list->count > style.most)
    table_add_rest (&table, list->count - style.most);
  if (list->count > 1 && isfinite (mass->x_mm))
    table_add_line (&table, units, &whole);
  ruled_table_draw (pen, &table, at, style.side_by_side);
  ruled_table_clear (&table);
}
