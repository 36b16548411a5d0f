#include "figures/before-closing.h"

#include "figures/csv-text.h"
#include "figures/lead-words.h"
#include "figures/names.h"

const char *
closing_word (ClosingKind kind)
{
  static const char *const words[CLOSING_KIND_COUNT] = {
    [CLOSING_FIREWALL] = "firewall", [CLOSING_FLOOR] = "floor", [CLOSING_HATCH] = "hatch", [CLOSING_TRAY] = "tray",
    [CLOSING_UNDERCARRIAGE] = "undercarriage", [CLOSING_PUSHROD] = "pushrod", [CLOSING_LEAD] = "lead", [CLOSING_MARK_BLOCK] = "mark-block",
    [CLOSING_BALLAST] = "ballast" };

  return words[kind];
}

/* Names parted by blanks. */
static void
csv_names (GString *text, const GPtrArray *places)
{
  g_autoptr (GString) names = g_string_new (NULL);

  for (guint i = 0; places && i < places->len; i++)
    g_string_append_printf (names, i ? " %s" : "%s", ((const NamedPlace *) g_ptr_array_index (places, i))->name);
  csv_field (text, names->str);
}

static void
csv_numbers (GString *text, const double numbers[], size_t count)
{
  for (size_t i = 0; i < count; i++)
    csv_number (text, numbers[i]);
}

/* A hatch's after edge, which has a former of its own. */
static void
csv_after_edge (GString *text, const Aeroplane *aeroplane, const ClosingStep *step)
{
  const NamedPlace *former = NULL;
  double behind = NAN;

  if (step->kind == CLOSING_HATCH)
    hatch_nearest_former (aeroplane, step->to_mm, &former, &behind);
  csv_field (text, former ? former->name : NULL);
  csv_number (text, former ? behind : NAN);
}

static char *
name_of (const Aeroplane *aeroplane, const ClosingStep *step)
{
  if (step->kind == CLOSING_LEAD)
    return lead_leg_title (aeroplane, (const Lead *) step->piece, step->leg);
  return step->piece ? g_strdup (piece_name (step->piece)) : NULL;
}

static void
csv_step (GString *text, const Aeroplane *aeroplane, const ClosingStep *step, guint number)
{
  g_autofree char *name = name_of (aeroplane, step);
  const PartStand *stand = &step->stand;
  const double along[] = { step->from_mm, step->to_mm, step->y_mm, step->above_thrust_mm };
  const double stands[] = { stand->front_mm, stand->rear_mm, stand->front_height_mm, stand->rear_height_mm };
  const double rest[] = { step->length_mm, step->needed_mm, step->extension_mm, step->station_mm, step->aft_of_edge_mm, step->ballast_g };

  csv_number (text, number);
  csv_field (text, closing_word (step->kind));
  csv_field (text, step->piece ? step->piece->id : NULL);
  csv_field (text, name);
  csv_numbers (text, along, G_N_ELEMENTS (along));
  csv_field (text, stand->former ? stand->former->name : NULL);
  csv_numbers (text, stands, G_N_ELEMENTS (stands));
  csv_names (text, step->formers);
  csv_names (text, step->ribs);
  csv_numbers (text, rest, G_N_ELEMENTS (rest));
  csv_field (text, step->kind != CLOSING_BALLAST ? NULL : step->in_case ? "yes" : "no");
  csv_wing_stand (text, &step->wing);
  csv_after_edge (text, aeroplane, step);
  csv_end (text);
}

void
csv_before_closing (GString *text, const Figures *figures)
{
  g_autoptr (GArray) steps = before_closing_of (figures);

  g_string_append (text, "order,what,id,name,from_x_mm,to_x_mm,y_mm,underside_above_thrust_line_mm,former,front_behind_former_mm,"
                         "rear_behind_former_mm,front_above_bottom_mm,rear_above_bottom_mm,formers_passed,ribs_passed,lead_length_mm,"
                         "lead_needed_mm,extension_mm,mark_station_mm,mark_behind_leading_edge_mm,ballast_g,only_in_the_worst_case,"
                         CSV_WING_STAND_HEADING ",after_edge_former,after_edge_behind_that_former_mm\r\n");
  for (guint i = 0; i < steps->len; i++)
    csv_step (text, figures->aeroplane, &g_array_index (steps, ClosingStep, i), i + 1);
}
