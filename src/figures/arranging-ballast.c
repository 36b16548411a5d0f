#include "figures/arranging-private.h"

#include "trammel-config.h"
#include <glib/gi18n-lib.h>
#include <math.h>

/* mm: a balance point so near to a limit is at it. */
static const double NEAR_MM = 0.05;

/* All mass of the question without ballast, g. */
static double
mass_of (const Arranging *self)
{
  double mass = self->wanted.other_mass;

  for (size_t i = 0; i < self->wanted.part_count; i++)
    mass += self->wanted.parts[i].mass;
  return mass * 1e3;
}

static GArray *
places_for (const Arranging *self, const Arrangement *found, double wanted_mm)
{
  g_autoptr (Aeroplane) bare = arranging_applied_bare (self, found);
  const double mass = mass_of (self), target = found->x * 1e3;
  /* What its ballast makes up for: n (x_t − x_n) = W (x − x_t). */
  const double off = found->ballast > 0 ? found->ballast * 1e3 * (target - found->ballast_x * 1e3) / mass : 0;

  return ballast_places (bare, (BallastNeed) { mass, target + off, wanted_mm });
}

GArray *
arranging_ballast_places (const Arranging *self, const Arrangement *found)
{
  return places_for (self, found, found->x * 1e3);
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

ArrangedAt
arranging_balances_at (const Arranging *self, const Arrangement *found)
{
  const double near = NEAR_MM * ARRANGING_METRE;

  if (fabs (found->x - self->wanted.aim_x) < near)
    return ARRANGED_AT_AIM;
  if (fabs (found->x - self->wanted.aft_limit_x) < near)
    return ARRANGED_AT_AFT_LIMIT;
  return fabs (found->x - self->wanted.forward_limit_x) < near ? ARRANGED_AT_FORWARD_LIMIT : ARRANGED_BETWEEN;
}

double
arranging_ballast_for_aim_g (const Arranging *self, const Arrangement *found)
{
  g_autoptr (GArray) places = NULL;

  if (found->ballast * 1e3 < ARRANGING_LEAST_BALLAST_G)
    return NAN;
  places = places_for (self, found, self->wanted.aim_x * 1e3);
  return places->len && g_array_index (places, BallastPlace, 0).has_room ? g_array_index (places, BallastPlace, 0).mass_g : NAN;
}

/* "the aft limit, 5 %"; NULL between the limits. */
static char *
limit_phrase (const Arranging *self, ArrangedAt at)
{
  const Target target = aeroplane_traits (self->aeroplane).target;
  g_autofree char *aft = units_percent (target.from), *forward = units_percent (target.to);

  if (at == ARRANGED_AT_AFT_LIMIT)
    /* TRANSLATORS: a static margin, "5 %", in a sentence that says what ballast is for */
    return g_strdup_printf (_("the aft limit, %s"), aft);
  /* TRANSLATORS: likewise */
  return at == ARRANGED_AT_FORWARD_LIMIT ? g_strdup_printf (_("the forward limit, %s"), forward) : NULL;
}

char *
arranging_ballast_sentence (const Arranging *self, const Arrangement *found, Units units)
{
  const ArrangedAt at = arranging_balances_at (self, found);
  g_autofree char *limit = limit_phrase (self, at);
  const double aim_g = limit ? arranging_ballast_for_aim_g (self, found) : NAN;
  g_autofree char *more = units_mass (units, aim_g);

  if (found->ballast * 1e3 < ARRANGING_LEAST_BALLAST_G || (!limit && at != ARRANGED_AT_AIM))
    return NULL;
  if (!limit)
    /* TRANSLATORS: a static margin: "the aim, 12 %" */
    return g_strdup_printf (_("This ballast is for %s."), self->aim);
  if (isnan (aim_g))
    return g_strdup_printf (_("This ballast is for %s; for %s, no place has room enough."), limit, self->aim);
  /* TRANSLATORS: a static margin ("the aft limit, 5 %"), another ("the aim, 12 %"), and a mass */
  return g_strdup_printf (_("This ballast is for %s; for %s, it takes %s."), limit, self->aim, more);
}
