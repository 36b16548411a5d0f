#include "figures/ballast-told.h"

#include "trammel-config.h"
#include <glib/gi18n-lib.h>
#include <math.h>
#include "balance/slide.h"
#include "figures/ballast-deviation.h"
#include "figures/contribution.h"

/* All aboard, with the part at its rail's end as if it were. */
static BallastNeed
need_of (const Figures *figures, const Part *part, double part_x)
{
  BallastNeed need = { figures->mass.total_g, figures->mass.x_mm, figures->balance.advised_x_mm };
  double moment = need.mass_g * need.x_mm;

  if (!part)
    return need;
  moment += part->mass * (part->aboard ? part_x - part->x : part_x);
  need.mass_g += part->aboard ? 0 : part->mass;
  need.x_mm = moment / need.mass_g;
  return need;
}

static void
take_place (BallastTold *self, const Figures *figures, BallastNeed need, const Part *part, double part_x)
{
  g_autoptr (GArray) places = ballast_places_beside (figures->aeroplane, need, part, part_x);

  self->has_place = places->len && g_array_index (places, BallastPlace, 0).has_room;
  if (!self->has_place)
    return;
  self->place = g_array_index (places, BallastPlace, 0);
  self->mass_g = self->place.mass_g;
  self->x_mm = self->place.x_mm;
}

BallastTold
ballast_told_for (const Figures *figures, const Part *part, double part_x, double off_mm)
{
  BallastNeed need = need_of (figures, part, part_x);
  need.x_mm += off_mm;
  const SlideCase ends = { .target_x = need.target_x_mm, .nose_x = figures->nose_x_mm, .tail_x = figures->tail_x_mm };
  BallastTold self = { .mass_g = NAN, .x_mm = NAN, .sigma_g = NAN, .aft = need.x_mm < need.target_x_mm };

  if (ballast_solve (&ends, need.mass_g, need.x_mm, &self.mass_g, &self.x_mm) != CORE_OK)
    return self;
  take_place (&self, figures, need, part, part_x);
  const BallastCase wanted = { .loads = figures->loads, .count = figures->load_count, .part = part, .part_x_mm = part_x,
                               .target_x_mm = need.target_x_mm, .ballast_x_mm = self.x_mm, .ballast_g = self.mass_g,
                               .target_owed = &figures->neutral_point.owed };
  self.owed = ballast_owed (&wanted);
  self.sigma_g = contribution_sigma (&self.owed);
  return self;
}

BallastTold
ballast_told_of (const Figures *figures, const Solution *solution)
{
  const Part *part = solution ? solution->part : NULL;

  if (solution && solution->reachable)
    return (BallastTold) { .mass_g = 0, .x_mm = NAN, .sigma_g = 0 };
  return ballast_told_for (figures, part, !part ? NAN : solution->x_mm < part->rail_from ? part->rail_from : part->rail_to, 0);
}

char *
ballast_told_phrase (const BallastTold *self)
{
  if (self->has_place)
    return ballast_place_phrase (&self->place);
  return g_strdup (self->aft ? _("at the tail") : _("at the nose"));
}
