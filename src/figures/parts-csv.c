#include "figures/report.h"

#include <math.h>
#include "figures/csv-text.h"
#include "figures/lead-lists.h"
#include "figures/lead-words.h"
#include "figures/names.h"
#include "figures/part-rating.h"
#include "figures/part-stand.h"
#include "figures/wing-stand.h"

/* How many figures each row has before and after its stand's former. */
enum { NUMBERS = 9, STAND_NUMBERS = 4 };

/* The former that it is measured from, and how far behind it: empty where no rule tells it. */
static void
append_stand (GString *text, const PartRule *rule, const Part *part)
{
  PartStand stand = { NULL, NAN, NAN, NAN, NAN };
  const bool told = part_stand_of (rule, part, &stand);
  const double numbers[STAND_NUMBERS] = { stand.front_mm, stand.rear_mm, stand.front_height_mm, stand.rear_height_mm };

  csv_field (text, told ? stand.former->name : "");
  for (size_t i = 0; i < G_N_ELEMENTS (numbers); i++)
    csv_number (text, numbers[i]);
}

/* On which side of the centre line, and where in a wing; all empty without a part. */
static void
append_place (GString *text, const Aeroplane *aeroplane, const Part *part)
{
  WingStand stand = wing_stand_none ();

  if (part)
    wing_stand_of (aeroplane, part, &stand);
  csv_field (text, !part || part->y == 0 ? NULL : part->y > 0 ? "starboard" : "port");
  csv_number (text, part ? fabs (part->y) : NAN);
  csv_wing_stand (text, &stand);
}

/* A lead that weighs something itself has such a row as well, and tells there of its last leg. */
static void
append_part (GString *text, const Figures *figures, const PartRule *rule, const Part *part)
{
  const Lead *lead = aeroplane_lead_by_id (figures->aeroplane, part->piece.id);

  const double numbers[NUMBERS] = { part->mass, part->x, part->y, part->z, part->length, part->width, part->height,
                             part->has_rail ? part->rail_from : NAN, part->has_rail ? part->rail_to : NAN };

  csv_field (text, part->piece.id ? part->piece.id : "");
  csv_field (text, piece_name (&part->piece));
  csv_field (text, part->class_name ? part->class_name : "");
  for (size_t i = 0; i < G_N_ELEMENTS (numbers); i++)
    csv_number (text, numbers[i]);
  csv_field (text, !part->aboard ? "no" : part->to_come ? "to come" : "yes");
  append_stand (text, rule, part);
  csv_lead (text, figures->aeroplane, lead, lead && lead_is_joined (lead) ? LEG_TO : LEG_FROM);
  append_place (text, figures->aeroplane, part);
  csv_part_rating (text, part);
  csv_end (text);
}

static bool
is_aboard (const Aeroplane *aeroplane, const char *id)
{
  const Part *part = aeroplane_part_by_id (aeroplane, id);

  return part && part->aboard;
}

/* A leg that no part's row tells of: there is nothing to weigh or to place, but something to order. */
static void
append_leg (GString *text, const Aeroplane *aeroplane, const Lead *lead, LeadLeg leg)
{
  g_autofree char *title = lead_leg_title (aeroplane, lead, leg);
  const bool aboard = is_aboard (aeroplane, lead_leg_part (lead, leg)) && (lead_is_joined (lead) || is_aboard (aeroplane, lead->to));

  csv_field (text, lead->piece.id ? lead->piece.id : "");
  csv_field (text, title);
  csv_field (text, "lead");
  for (int i = 0; i < NUMBERS; i++)
    csv_number (text, NAN);
  csv_field (text, aboard ? "yes" : "no");
  csv_field (text, NULL);
  for (int i = 0; i < STAND_NUMBERS; i++)
    csv_number (text, NAN);
  csv_lead (text, aeroplane, lead, leg);
  append_place (text, aeroplane, NULL);
  csv_part_rating (text, NULL);
  csv_end (text);
}

static void
append_legs (GString *text, const Aeroplane *aeroplane, const Lead *lead, bool has_row)
{
  for (int leg = 0; leg < lead_leg_count (lead); leg++)
    if (!has_row || (lead_is_joined (lead) && leg != LEG_TO))
      append_leg (text, aeroplane, lead, leg);
}

char *
report_parts_csv (const Figures *figures)
{
  const Aeroplane *aeroplane = figures->aeroplane;
  g_autoptr (PartRule) rule = part_rule_new (aeroplane);
  GString *text = g_string_new ("id,name,class,mass_g,x_mm,y_mm,z_mm,length_mm,width_mm,height_mm,rail_from_mm,rail_to_mm,aboard,"
                                "former,front_behind_former_mm,rear_behind_former_mm,front_above_bottom_mm,rear_above_bottom_mm,"
                                CSV_LEAD_HEADING ",side,off_centre_line_mm," CSV_WING_STAND_HEADING "," CSV_RATING_HEADING "\r\n");

  for (size_t i = 0; i < aeroplane_piece_count (aeroplane); i++)
    {
      const Piece *piece = aeroplane_piece (aeroplane, i);
      Part *part = piece_as_part (aeroplane, piece);

      if (part)
        append_part (text, figures, rule, part);
      if (piece->kind == PIECE_LEAD)
        append_legs (text, aeroplane, (const Lead *) piece, part != NULL);
      piece_unref (part ? &part->piece : NULL);
    }
  return g_string_free (text, FALSE);
}
