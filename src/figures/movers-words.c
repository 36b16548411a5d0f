#include "figures/movers.h"

#include "trammel-config.h"
#include <glib/gi18n-lib.h>
#include <math.h>
#include "figures/names.h"

/* mm: less is not moved. g: less is not weighed. Nothing of its kind weighs so many times more, or less. */
static const double LEAST_MM = 0.5, LEAST_G = 0.1, TIMES = 4;

static char *
way_text (double mm, Units units)
{
  g_autofree char *length = units_length (units, fabs (mm));

  /* TRANSLATORS: how far a part is moved: "17 mm forward" */
  return g_strdup_printf (mm < 0 ? _("%s forward") : _("%s aft"), length);
}

/* What a part of another mass in its place would have to weigh; NULL where none does, or as good as this. */
static char *
mass_text (const Mover *mover, Units units)
{
  g_autofree char *mass = units_mass (units, mover->wanted_g);

  if (!(mover->wanted_g < TIMES * mover->part->mass && mover->wanted_g * TIMES > mover->part->mass)
      || fabs (mover->wanted_g - mover->part->mass) < LEAST_G)
    return NULL;
  return g_steal_pointer (&mass);
}

static char *
place_text (const Mover *mover, Units units)
{
  g_autofree char *wanted = way_text (mover->wanted_x_mm - mover->part->x, units);
  g_autofree char *reach = way_text (mover->reach_x_mm - mover->part->x, units), *left = units_length (units, fabs (mover->left_mm));

  if (!mover->can_move)
    return g_strdup_printf (_("it would have to go %s"), wanted);
  if (mover->left_mm == 0)
    return g_strdup_printf (_("%s and it balances"), wanted);
  if (fabs (mover->reach_x_mm - mover->part->x) < LEAST_MM)
    return g_strdup_printf (_("as far as it goes; it would have to go %s"), wanted);
  return g_strdup_printf (_("%s is as far as it goes; the balance point is %s off then"), reach, left);
}

char *
mover_text (const Movers *movers, const Mover *mover, Units units)
{
  g_autofree char *place = NULL, *mass = NULL;

  if (!isfinite (movers->off_mm) || fabs (mover->wanted_x_mm - mover->part->x) < LEAST_MM || !isfinite (mover->wanted_x_mm))
    return NULL;
  place = place_text (mover, units);
  mass = mass_text (mover, units);
  /* TRANSLATORS: what moving a part does, or else one of that mass in its place */
  return mass ? g_strdup_printf (_("%s, or %s in its place"), place, mass) : g_steal_pointer (&place);
}

static char *
pair_text (const MoverPair *pair, Units units)
{
  const Part *first = pair->first->part, *second = pair->second->part;
  g_autofree char *one = way_text (pair->first_x_mm - first->x, units), *other = way_text (pair->second_x_mm - second->x, units);

  return g_strdup_printf (_("“%s” %s and “%s” %s do it together."), piece_name (&first->piece), one, piece_name (&second->piece), other);
}

char *
movers_text (const Movers *movers, Units units)
{
  g_autofree char *mass = NULL, *gram = NULL;

  if (movers->has_pair)
    return pair_text (&movers->pair, units);
  if (!(movers->ballast_g >= LEAST_G) || (movers->count && movers->of[0].left_mm == 0))
    return NULL;
  mass = units_mass (units, movers->ballast_g);
  gram = units_number (fabs (movers->gram_mm), 1);
  if (movers->off_mm > 0)
    return g_strdup_printf (_("%s are missing at the nose; a gram there moves the balance point %s mm."), mass, gram);
  return g_strdup_printf (_("%s are missing at the tail; a gram there moves the balance point %s mm."), mass, gram);
}
