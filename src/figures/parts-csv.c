#include "figures/report.h"

#include <math.h>
#include <string.h>
#include "figures/digits.h"
#include "figures/lead-words.h"
#include "figures/names.h"
#include "figures/part-stand.h"

/* RFC 4180: quoted where a comma, a quote or a line's end would mislead; quotes doubled. */
static void
append_field (GString *text, const char *field)
{
  if (!strpbrk (field, ",\"\r\n"))
    {
      g_string_append (text, field);
      return;
    }
  g_string_append_c (text, '"');
  for (const char *at = field; *at; at++)
    {
      if (*at == '"')
        g_string_append_c (text, '"');
      g_string_append_c (text, *at);
    }
  g_string_append_c (text, '"');
}

/* A field of its own after a comma; empty where there is no number. */
static void
append_number (GString *text, double value)
{
  char room[G_ASCII_DTOSTR_BUF_SIZE];

  g_string_append_c (text, ',');
  if (isfinite (value))
    g_string_append (text, digits_of (room, value));
}

/* The former that it is measured from, and how far behind it: empty where no rule tells it. */
static void
append_stand (GString *text, const PartRule *rule, const Part *part)
{
  PartStand stand = { NULL, NAN, NAN, NAN, NAN };
  const bool told = part_stand_of (rule, part, &stand);
  const double numbers[] = { stand.front_mm, stand.rear_mm, stand.front_height_mm, stand.rear_height_mm };

  g_string_append_c (text, ',');
  append_field (text, told ? stand.former->name : "");
  for (size_t i = 0; i < G_N_ELEMENTS (numbers); i++)
    append_number (text, numbers[i]);
}

static void
append_part (GString *text, const PartRule *rule, const Part *part)
{
  const double numbers[] = { part->mass, part->x, part->y, part->z, part->length, part->width, part->height,
                             part->has_rail ? part->rail_from : NAN, part->has_rail ? part->rail_to : NAN };

  append_field (text, part->piece.id ? part->piece.id : "");
  g_string_append_c (text, ',');
  append_field (text, piece_name (&part->piece));
  g_string_append_c (text, ',');
  append_field (text, part->class_name ? part->class_name : "");
  for (size_t i = 0; i < G_N_ELEMENTS (numbers); i++)
    append_number (text, numbers[i]);
  g_string_append_printf (text, ",%s", !part->aboard ? "no" : part->to_come ? "to come" : "yes");
  append_stand (text, rule, part);
  g_string_append (text, "\r\n");
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
