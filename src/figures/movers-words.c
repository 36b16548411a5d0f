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
reach_text (const Mover *mover, Units units)
{
  g_autofree char *reach = way_text (mover->reach_x_mm - mover->part->x, units), *left = units_length (units, fabs (mover->left_mm));

  return g_strdup_printf (_("%s at most, %s are missing then"), reach, left);
}

/* Of one that may move, and not towards where it is wanted. */
static char *
end_text (const Mover *mover, const char *mass, Units units)
{
  g_autofree char *left = units_length (units, fabs (mover->left_mm));

  if (mass)
    /* TRANSLATORS: of a part that stands at the end of its rail; the mass is what it would have to weigh instead */
    return g_strdup_printf (_("goes no further that way; %s in its place would balance"), mass);
  /* TRANSLATORS: of a part that stands at the end of its rail; the length is how far the balance point is off */
  return g_strdup_printf (_("goes no further that way, %s are missing"), left);
}

/* Of one that is fixed: where it would do it, as far as that is a place for it, and what it would have to weigh. */
static char *
fixed_text (const Mover *mover, const char *way, const char *mass)
{
  if (isnan (mover->told_x_mm))
    return mass ? g_strdup_printf (_("%s in its place would balance"), mass) : NULL;
  return mass ? g_strdup_printf (_("%s or %s would balance"), way, mass) : g_strdup_printf (_("%s would balance"), way);
}

char *
mover_text (const Movers *movers, const Mover *mover, Units units)
{
  g_autofree char *wanted = NULL, *mass = NULL;

  if (!isfinite (movers->off_mm) || !isfinite (mover->wanted_x_mm) || fabs (mover->wanted_x_mm - mover->part->x) < LEAST_MM)
    return NULL;
  wanted = way_text (mover->wanted_x_mm - mover->part->x, units);
  mass = mass_text (mover, units);
  if (mover->balances)
    return mass ? g_strdup_printf (_("%s balances, as would %s"), wanted, mass) : g_strdup_printf (_("%s balances"), wanted);
  if (mover->can_move && fabs (mover->reach_x_mm - mover->part->x) >= LEAST_MM)
    return reach_text (mover, units);
  return mover->can_move ? end_text (mover, mass, units) : fixed_text (mover, wanted, mass);
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
  g_autofree char *mass = NULL, *place = NULL, *some = NULL, *way = NULL;

  if (movers->has_pair)
    return pair_text (&movers->pair, units);
  if (!(movers->told.mass_g >= LEAST_G) || (movers->count && movers->of[0].balances))
    return NULL;
  mass = units_mass (units, movers->told.mass_g);
  place = ballast_told_phrase (&movers->told);
  some = units_mass (units, MOVERS_SOME_G);
  way = units_length (units, fabs (movers->told_some_mm));
  /* TRANSLATORS: a static margin ("the aim, 12 %"), a mass, where it goes ("at the fore end of “nose”"), a mass, a length */
  return g_strdup_printf (_("For %s, %s are missing %s; %s there move the balance point %s."), movers->margin, mass, place, some, way);
}

char *
movers_ends_text (const Figures *figures, Units units)
{
  const double nose = movers_added_mm (figures, MOVERS_SOME_G, figures->nose_x_mm);
  const double tail = movers_added_mm (figures, MOVERS_SOME_G, figures->tail_x_mm);
  g_autofree char *some = units_mass (units, MOVERS_SOME_G);
  g_autofree char *forward = units_length (units, -nose), *aft = units_length (units, tail);

  if (!(nose < 0 && tail > 0))
    return NULL;
  return g_strdup_printf (_("%s more at the nose move the balance point %s forward, at the tail %s aft."), some, forward, aft);
}
