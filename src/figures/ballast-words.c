#include "figures/ballast-places.h"

#include "trammel-config.h"
#include <glib/gi18n-lib.h>

char *
ballast_place_name (const BallastPlace *place)
{
  switch (place->kind)
    {
    case BALLAST_BEFORE_FIREWALL: return g_strdup (_("In front of the firewall"));
    case BALLAST_NOSE_END:        return g_strdup (_("Nose end of the body"));
    case BALLAST_BAY_FORE:        return g_strdup_printf (_("Fore end of %s"), place->bay->piece.id);
    case BALLAST_BAY_AFT:         return g_strdup_printf (_("Aft end of %s"), place->bay->piece.id);
    case BALLAST_TAIL_END:        return g_strdup (_("Tail end of the body"));
    }
  return NULL;
}

char *
ballast_place_phrase (const BallastPlace *place)
{
  switch (place->kind)
    {
    case BALLAST_BEFORE_FIREWALL: return g_strdup (_("in front of the firewall"));
    case BALLAST_NOSE_END:        return g_strdup (_("in the nose end of the body"));
    case BALLAST_BAY_FORE:        return g_strdup_printf (_("at the fore end of “%s”"), place->bay->piece.id);
    case BALLAST_BAY_AFT:         return g_strdup_printf (_("at the aft end of “%s”"), place->bay->piece.id);
    case BALLAST_TAIL_END:        return g_strdup (_("in the tail end of the body"));
    }
  return NULL;
}

char *
ballast_place_text (const BallastPlace *place, Units units)
{
  g_autofree char *mass = units_mass (units, place->mass_g), *x = units_length (units, place->x_mm);
  g_autofree char *holds = units_mass (units, place->holds_g);

  if (place->has_room)
    /* TRANSLATORS: so much ballast with its middle so far aft of the datum: "26 g at 12 mm" */
    return g_strdup_printf (_("%s at %s"), mass, x);
  if (place->holds_g > 0)
    return g_strdup_printf (_("needs %s, has room for %s"), mass, holds);
  return g_strdup (_("no room"));
}
