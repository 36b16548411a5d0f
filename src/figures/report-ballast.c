#include "figures/report-ballast.h"

#include <math.h>
#include "figures/ballast-worst.h"

/* mm: what the balance point is off by so little nobody is told. */
static const double NOTHING = 0.5;
enum { NAME_NEED_BLOCK = 3, LEFT = 1 << 1 | 1 << 2 };

BallastNeed
ballast_need_of (const Figures *figures)
{
  const double off = figures->mass.x_mm - figures->balance.advised_x_mm;

  return (BallastNeed) { figures->mass.total_g, figures->mass.x_mm, fabs (off) < NOTHING ? figures->mass.x_mm : figures->balance.advised_x_mm };
}

TextTable
report_ballast_table (const GArray *places, Units units)
{
  TextTable table = text_table_new (NAME_NEED_BLOCK, LEFT);

  for (guint i = 0; i < places->len; i++)
    {
      const BallastPlace *place = &g_array_index (places, BallastPlace, i);

      text_table_cell (&table, ballast_place_name (place));
      text_table_cell (&table, ballast_place_text (place, units));
      text_table_cell (&table, ballast_place_size (place, units));
    }
  return table;
}

TextTable
report_ballast (const Figures *figures, Units units)
{
  g_autoptr (GArray) places = ballast_places (figures->aeroplane, ballast_need_of (figures));

  return report_ballast_table (places, units);
}

static const char *
word_of (BallastPlaceKind kind)
{
  static const char *const words[] = { [BALLAST_BEFORE_FIREWALL] = "before_firewall", [BALLAST_NOSE_END] = "nose_end",
                                       [BALLAST_BAY_FORE] = "bay_fore", [BALLAST_BAY_AFT] = "bay_aft", [BALLAST_TAIL_END] = "tail_end" };

  return words[kind];
}

static void
write_block (JsonText *json, const BallastPlace *place)
{
  json_text_number (json, "y_mm", place->y_mm);
  json_text_number (json, "z_mm", place->z_mm);
  json_text_number (json, "length_mm", place->length_mm);
  json_text_number (json, "width_mm", place->width_mm);
  json_text_number (json, "height_mm", place->height_mm);
}

void
report_write_ballast_places (JsonText *json, const GArray *places)
{
  json_text_open_array (json, "ballast_places");
  for (guint i = 0; i < places->len; i++)
    {
      const BallastPlace *place = &g_array_index (places, BallastPlace, i);

      json_text_open_object (json, NULL);
      json_text_string (json, "place", word_of (place->kind));
      if (place->bay)
        json_text_string (json, "bay", place->bay->piece.id);
      if (place->former && place->former->name)
        json_text_string (json, "former", place->former->name);
      json_text_bool (json, "has_room", place->has_room);
      if (place->holds_g > 0)
        {
          json_text_number (json, "mass_g", place->mass_g);
          json_text_number (json, "x_mm", place->x_mm);
        }
      json_text_number (json, "holds_g", place->holds_g);
      if (place->has_room)
        write_block (json, place);
      json_text_close_object (json);
    }
  json_text_close_array (json);
}

static void
write_worst (JsonText *json, const Figures *figures)
{
  const BallastWorst worst = ballast_worst_of (figures);

  if (!isfinite (worst.further_mm))
    {
      json_text_null (json, "nose_weight_worst");
      return;
    }
  json_text_open_object (json, "nose_weight_worst");
  json_text_number (json, "further_mm", worst.further_mm);
  json_text_bool (json, "possible", isfinite (worst.told.mass_g));      /* false: the aim lies ahead of the nose */
  if (isfinite (worst.told.mass_g))
    json_text_number (json, "mass_g", worst.told.mass_g);
  if (worst.told.mass_g > 0)
    json_text_number (json, "x_mm", worst.told.x_mm);
  json_text_close_object (json);
}

void
report_write_ballast (JsonText *json, const Figures *figures)
{
  g_autoptr (GArray) places = ballast_places (figures->aeroplane, ballast_need_of (figures));

  report_write_ballast_places (json, places);
  write_worst (json, figures);
}
