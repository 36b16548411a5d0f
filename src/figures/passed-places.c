#include "figures/passed-places.h"

#include <math.h>

/* One stretch of the way, and a line of formers or ribs that it may meet. */
typedef struct { Point from, to; } Stretch;
typedef struct { const NamedPlace *place; double along; } Meeting;

static const double END = 1e-9;

/* How far along the stretch it comes to that place between a and b; negative where it does not. Where it begins the stretch before has met it. */
static double
met_at (double a, double b, double place)
{
  const double along = (place - a) / (b - a);

  return a != b && along > END && along <= 1 ? along : -1;
}

static Point
point_along (Stretch stretch, double along)
{
  return (Point) { stretch.from.x + along * (stretch.to.x - stretch.from.x), stretch.from.y + along * (stretch.to.y - stretch.from.y) };
}

static void
add_meeting (GArray *meetings, const NamedPlace *place, double along)
{
  const Meeting made = { place, along };

  if (place->name && *place->name)
    g_array_append_val (meetings, made);
}

static gint
compare_meetings (gconstpointer a, gconstpointer b)
{
  const Meeting *one = a, *other = b;

  return (one->along > other->along) - (one->along < other->along);
}

static void
meet_formers (const Aeroplane *aeroplane, Stretch stretch, GArray *meetings)
{
  for (size_t b = 0; b < aeroplane_count (aeroplane, PIECE_BODY); b++)
    {
      const Body *body = aeroplane_body (aeroplane, b);

      for (size_t i = 0; i < body->former_count; i++)
        {
          const double along = met_at (stretch.from.x, stretch.to.x, body->formers[i].place);

          if (along >= 0 && body_covers (body, point_along (stretch, along)))
            add_meeting (meetings, &body->formers[i], along);
        }
    }
}

static void
meet_ribs (const Aeroplane *aeroplane, Stretch stretch, GArray *meetings)
{
  for (size_t s = 0; s < aeroplane_count (aeroplane, PIECE_SURFACE); s++)
    {
      const Surface *surface = aeroplane_surface (aeroplane, s);

      for (size_t i = 0; i < 2 * surface->rib_count; i++)
        {
          const NamedPlace *rib = &surface->ribs[i / 2];
          const double along = met_at (stretch.from.y, stretch.to.y, i % 2 ? -rib->place : rib->place);

          if (along >= 0 && (i % 2 == 0 || rib->place != 0) && surface_covers (surface, point_along (stretch, along)))
            add_meeting (meetings, rib, along);
        }
    }
}

typedef void (*Meet) (const Aeroplane *aeroplane, Stretch stretch, GArray *meetings);

static GPtrArray *
passed (const Aeroplane *aeroplane, const Point way[], size_t count, Meet meet)
{
  GPtrArray *found = g_ptr_array_new ();

  for (size_t i = 1; i < count; i++)
    {
      g_autoptr (GArray) meetings = g_array_new (FALSE, FALSE, sizeof (Meeting));

      meet (aeroplane, (Stretch) { way[i - 1], way[i] }, meetings);
      g_array_sort (meetings, compare_meetings);
      for (guint k = 0; k < meetings->len; k++)
        {
          const Meeting *meeting = &g_array_index (meetings, Meeting, k);
          const bool only_ends_there = i + 1 == count && meeting->along > 1 - END;

          if (!only_ends_there && !g_ptr_array_find (found, meeting->place, NULL))
            g_ptr_array_add (found, (gpointer) meeting->place);
        }
    }
  return found;
}

GPtrArray *
formers_passed (const Aeroplane *aeroplane, const Point way[], size_t count)
{
  return passed (aeroplane, way, count, meet_formers);
}

GPtrArray *
ribs_passed (const Aeroplane *aeroplane, const Point way[], size_t count)
{
  return passed (aeroplane, way, count, meet_ribs);
}
