#include "figures/station-list.h"

#include <math.h>
#include "figures/body-profile.h"
#include "figures/csv-text.h"
#include "figures/surface-figures.h"

static int
compare_places (const void *a, const void *b)
{
  const double one = (*(const NamedPlace *const *) a)->place, other = (*(const NamedPlace *const *) b)->place;

  return (one > other) - (one < other);
}

/* In the order in which they stand, whatever the document's. */
static GPtrArray *
in_order (const NamedPlace places[], size_t count)
{
  GPtrArray *made = g_ptr_array_new ();

  for (size_t i = 0; i < count; i++)
    g_ptr_array_add (made, (gpointer) &places[i]);
  g_ptr_array_sort (made, compare_places);
  return made;
}

static StationLine
line_at (const Piece *of, const GPtrArray *places, guint i)
{
  const NamedPlace *place = g_ptr_array_index (places, i), *before = i > 0 ? g_ptr_array_index (places, i - 1) : NULL;

  return (StationLine) { of, place, before ? place->place - before->place : NAN, NAN, NAN, NAN, NAN };
}

static void
add_formers (GArray *lines, const Body *body)
{
  g_autoptr (GPtrArray) places = in_order (body->formers, body->former_count);
  BodyProfile *profile = body_profile_new (body);

  for (guint i = 0; i < places->len; i++)
    {
      StationLine line = line_at (&body->piece, places, i);
      double half_width, bottom, top;

      body_profile_at (profile, line.place->place, &half_width, &bottom, &top);
      line.width_mm = 2 * half_width;
      line.height_mm = top - bottom;
      g_array_append_val (lines, line);
    }
  body_profile_free (profile);
}

static void
add_ribs (GArray *lines, const Surface *surface)
{
  g_autoptr (GPtrArray) places = in_order (surface->ribs, surface->rib_count);
  StationCut cut;

  for (guint i = 0; i < places->len; i++)
    {
      StationLine line = line_at (&surface->piece, places, i);

      if (planform_cut (surface->outline, surface_sides (surface), line.place->place, &cut) == CORE_OK)
        {
          line.leading_x_mm = cut.leading_x;
          line.chord_mm = cut.chord;
        }
      g_array_append_val (lines, line);
    }
}

GArray *
former_stations (const Aeroplane *aeroplane)
{
  GArray *lines = g_array_new (FALSE, FALSE, sizeof (StationLine));

  for (size_t i = 0; i < aeroplane_count (aeroplane, PIECE_BODY); i++)
    add_formers (lines, aeroplane_body (aeroplane, i));
  return lines;
}

GArray *
rib_stations (const Aeroplane *aeroplane)
{
  GArray *lines = g_array_new (FALSE, FALSE, sizeof (StationLine));

  for (size_t i = 0; i < aeroplane_count (aeroplane, PIECE_SURFACE); i++)
    add_ribs (lines, aeroplane_surface (aeroplane, i));
  return lines;
}

static void
csv_line (GString *text, const StationLine *line, const char *kind)
{
  const bool rib = line->of->kind == PIECE_SURFACE;
  const double numbers[] = { rib ? NAN : line->place->place, rib ? line->place->place : NAN, line->apart_mm, line->width_mm, line->height_mm,
                             line->leading_x_mm, line->chord_mm };

  csv_field (text, kind);
  csv_field (text, line->of->id);
  csv_field (text, line->place->name);
  for (size_t i = 0; i < G_N_ELEMENTS (numbers); i++)
    csv_number (text, numbers[i]);
  csv_end (text);
}

void
csv_stations (GString *text, const Aeroplane *aeroplane)
{
  g_autoptr (GArray) formers = former_stations (aeroplane), ribs = rib_stations (aeroplane);

  g_string_append (text, "kind,of,name,x_mm,station_mm,from_the_one_before_mm,body_width_mm,body_height_mm,leading_edge_x_mm,chord_mm\r\n");
  for (guint i = 0; i < formers->len; i++)
    csv_line (text, &g_array_index (formers, StationLine, i), "former");
  for (guint i = 0; i < ribs->len; i++)
    csv_line (text, &g_array_index (ribs, StationLine, i), "rib");
}
