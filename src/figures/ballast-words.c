#include "figures/ballast-places.h"

#include "trammel-config.h"
#include <glib/gi18n-lib.h>
#include "figures/wing-stand.h"

static const char *
former_of (const BallastPlace *place)
{
  return place->former ? place->former->name : NULL;
}

char *
ballast_place_name (const BallastPlace *place)
{
  if (former_of (place))
    return g_strdup_printf (place->kind == BALLAST_NOSE_END ? _("Body behind %s") : _("Body ahead of %s"), former_of (place));
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
  if (former_of (place))
    return g_strdup_printf (place->kind == BALLAST_NOSE_END ? _("in the body behind %s") : _("in the body ahead of %s"), former_of (place));
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

char *
ballast_place_block (const BallastPlace *place, Units units)
{
  g_autofree char *length = units_length (units, place->length_mm), *width = units_length (units, place->width_mm);
  g_autofree char *height = units_length (units, place->height_mm), *aside = off_centre_text (place->y_mm, units);

  if (!place->has_room)
    return NULL;
  if (aside)
    /* Translators: three lengths, then how far to which side: "block 10 mm long, 13 mm wide and 6 mm high, off the centre line: 15 mm to port" */
    return g_strdup_printf (_("block %s long, %s wide and %s high, off the centre line: %s"), length, width, height, aside);
  return g_strdup_printf (_("block %s long, %s wide and %s high"), length, width, height);
}

char *
ballast_place_size (const BallastPlace *place, Units units)
{
  g_autofree char *length = units_length_figure (units, place->length_mm), *width = units_length_figure (units, place->width_mm);
  g_autofree char *height = units_length (units, place->height_mm), *aside = off_centre_text (place->y_mm, units);

  if (!place->has_room)
    return NULL;
  g_autofree char *size = g_strdup_printf ("%s × %s × %s", length, width, height);
  return g_strjoin (", ", size, aside, NULL);
}
