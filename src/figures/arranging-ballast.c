#include "figures/arranging-private.h"

#include "trammel-config.h"
#include <glib/gi18n-lib.h>
#include <math.h>

/* All mass of the question without ballast, g. */
static double
mass_of (const Arranging *self)
{
  double mass = self->wanted.other_mass;

  for (size_t i = 0; i < self->wanted.part_count; i++)
    mass += self->wanted.parts[i].mass;
  return mass * 1e3;
}

GArray *
arranging_ballast_places (const Arranging *self, const Arrangement *found)
{
  g_autoptr (Aeroplane) bare = arranging_applied_bare (self, found);
  const double mass = mass_of (self), target = found->x * 1e3;
  /* What its ballast makes up for: n (x_t − x_n) = W (x − x_t). */
  const double off = found->ballast > 0 ? found->ballast * 1e3 * (target - found->ballast_x * 1e3) / mass : 0;

  return ballast_places (bare, (BallastNeed) { mass, target + off, target });
}

bool
arranging_ballast_place (const Arranging *self, const Arrangement *found, BallastPlace *place)
{
  g_autoptr (GArray) places = arranging_ballast_places (self, found);

  if (!places->len || !g_array_index (places, BallastPlace, 0).has_room)
    return false;
  *place = g_array_index (places, BallastPlace, 0);
  return true;
}

/* Those with less ballast come first; nothing else changes their order. */
static void
put_least_first (Arrangements *found)
{
  for (size_t i = 1; i < found->count; i++)
    for (size_t k = i; k > 0 && found->found[k].ballast < found->found[k - 1].ballast - ARRANGING_LEAST_BALLAST_G * 1e-3; k--)
      {
        const Arrangement last = found->found[k];
        found->found[k] = found->found[k - 1];
        found->found[k - 1] = last;
      }
  if (found->count)
    found->status = found->found[0].status;
}

void
arranging_place_ballast (const Arranging *self, Arrangements *found)
{
  for (size_t i = 0; i < found->count; i++)
    {
      Arrangement *made = &found->found[i];
      BallastPlace place;

      if (made->ballast * 1e3 < ARRANGING_LEAST_BALLAST_G || !arranging_ballast_place (self, made, &place))
        continue;
      made->ballast = place.mass_g * 1e-3;
      made->ballast_x = place.x_mm * ARRANGING_METRE;
    }
  put_least_first (found);
}

char *
arranging_ballast_phrase (const Arranging *self, const Arrangement *found)
{
  BallastPlace place;

  if (arranging_ballast_place (self, found, &place))
    return ballast_place_phrase (&place);
  return g_strdup (found->ballast_x == self->wanted.nose_x ? _("at the nose") : _("at the tail"));
}
