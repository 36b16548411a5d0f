#include "figures/report.h"

#include <math.h>
#include "figures/lead-words.h"
#include "figures/csv-text.h"
#include "figures/names.h"
#include "figures/part-stand.h"

/* The former that it is measured from, and how far behind it: empty where no rule tells it. */
static void
append_stand (GString *text, const PartRule *rule, const Part *part)
{
  PartStand stand = { NULL, NAN, NAN, NAN, NAN };
  const bool told = part_stand_of (rule, part, &stand);
  const double numbers[] = { stand.front_mm, stand.rear_mm, stand.front_height_mm, stand.rear_height_mm };

  csv_field (text, told ? stand.former->name : "");
  for (size_t i = 0; i < G_N_ELEMENTS (numbers); i++)
    csv_number (text, numbers[i]);
}

static void
append_part (GString *text, const PartRule *rule, const Part *part)
{
  const double numbers[] = { part->mass, part->x, part->y, part->z, part->length, part->width, part->height,
                             part->has_rail ? part->rail_from : NAN, part->has_rail ? part->rail_to : NAN };

  csv_field (text, part->piece.id ? part->piece.id : "");
  csv_field (text, piece_name (&part->piece));
  csv_field (text, part->class_name ? part->class_name : "");
  for (size_t i = 0; i < G_N_ELEMENTS (numbers); i++)
    csv_number (text, numbers[i]);
  csv_field (text, !part->aboard ? "no" : part->to_come ? "to come" : "yes");
  append_stand (text, rule, part);
  csv_end (text);
}

char *
report_parts_csv (const Figures *figures)
{
  const Aeroplane *aeroplane = figures->aeroplane;
  g_autoptr (PartRule) rule = part_rule_new (aeroplane);
  GString *text = g_string_new ("id,name,class,mass_g,x_mm,y_mm,z_mm,length_mm,width_mm,height_mm,rail_from_mm,rail_to_mm,aboard,"
                                "former,front_behind_former_mm,rear_behind_former_mm,front_above_bottom_mm,rear_above_bottom_mm\r\n");

  for (size_t i = 0; i < aeroplane_piece_count (aeroplane); i++)
    {
      Part *part = piece_as_part (aeroplane, aeroplane_piece (aeroplane, i));

      if (part)
        append_part (text, rule, part);
      piece_unref (part ? &part->piece : NULL);
    }
  return g_string_free (text, FALSE);
}
