#include "figures/report.h"

#include <math.h>
#include <string.h>
#include "figures/digits.h"
#include "figures/names.h"

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

static void
append_part (GString *text, const Part *part)
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
  g_string_append_printf (text, ",%s\r\n", !part->aboard ? "no" : part->to_come ? "to come" : "yes");
}

char *
report_parts_csv (const Figures *figures)
{
  const Aeroplane *aeroplane = figures->aeroplane;
  GString *text = g_string_new ("id,name,class,mass_g,x_mm,y_mm,z_mm,length_mm,width_mm,height_mm,rail_from_mm,rail_to_mm,aboard\r\n");

  for (size_t i = 0; i < aeroplane_piece_count (aeroplane); i++)
    if (aeroplane_piece (aeroplane, i)->kind == PIECE_PART)
      append_part (text, (const Part *) aeroplane_piece (aeroplane, i));
  return g_string_free (text, FALSE);
}
