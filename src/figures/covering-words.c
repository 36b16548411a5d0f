#include "figures/coverings.h"

#include "trammel-config.h"
#include <glib/gi18n-lib.h>
#include <math.h>
#include "figures/names.h"

/* mm, g: less is not told. */
static const double LEAST_MM = 0.5, LEAST_G = 0.05;

const char *
covering_where_name (CoveringWhere where)
{
  switch (where.scope)
    {
    case COVERING_ALL:
      return _("Whole aeroplane");
    case COVERING_TAIL:
      return _("Tail");
    default:
      return piece_name (where.of);
    }
}

const char *
covering_scope_word (CoveringScope scope)
{
  switch (scope)
    {
    case COVERING_ALL:
      return "all";
    case COVERING_TAIL:
      return "tail";
    default:
      return "piece";
    }
}

/* One more clause of the list; takes it, NULL adds none. */
static void
add_clause (GString *text, char *takes)
{
  if (takes && text->len)
    g_string_append (text, "; ");
  if (takes)
    g_string_append (text, takes);
  g_free (takes);
}

static char *
mass_clause (double grams, Units units)
{
  g_autofree char *mass = units_mass (units, fabs (grams));

  if (!(fabs (grams) >= LEAST_G))
    return NULL;
  return grams > 0 ? g_strdup_printf (_("%s heavier"), mass) : g_strdup_printf (_("%s lighter"), mass);
}

static char *
nose_clause (double grams, Units units)
{
  g_autofree char *mass = units_mass (units, fabs (grams));

  if (!(fabs (grams) >= LEAST_G))
    return NULL;
  return grams > 0 ? g_strdup_printf (_("%s more at the nose"), mass) : g_strdup_printf (_("%s less at the nose"), mass);
}

static char *
balance_clause (double mm, Units units)
{
  g_autofree char *way = units_length (units, fabs (mm));

  if (!(fabs (mm) >= LEAST_MM))
    return NULL;
  return mm > 0 ? g_strdup_printf (_("balance point %s aft"), way) : g_strdup_printf (_("balance point %s forward"), way);
}

static char *
part_clause (const Part *part, double mm, Units units)
{
  g_autofree char *way = units_length (units, fabs (mm));
  const char *name = part ? piece_name (&part->piece) : NULL;

  if (!part || !(fabs (mm) >= LEAST_MM))
    return NULL;
  return mm > 0 ? g_strdup_printf (_("“%s” wanted %s further aft"), name, way)
                : g_strdup_printf (_("“%s” wanted %s further forward"), name, way);
}

char *
covering_text (const Coverings *coverings, const CoveringFigures *covering, Units units)
{
  GString *text = g_string_new (NULL);

  add_clause (text, mass_clause (covering->change_g, units));
  add_clause (text, balance_clause (covering->balance_way_mm, units));
  add_clause (text, part_clause (coverings->part, covering->part_way_mm, units));
  add_clause (text, nose_clause (covering->nose_g, units));
  return g_string_free (text, text->len == 0);
}

/* Of what is bare: what the choice is worth. */
static char *
choice_text (const CoveringFigures *light, const CoveringFigures *heavy, Units units)
{
  g_autofree char *here = units_mass (units, heavy->mass_g - light->mass_g);
  g_autofree char *nose = units_mass (units, heavy->nose_g - light->nose_g);

  return g_strdup_printf (_("Between “%s” and “%s” lie %s there, and %s at the nose."), _(light->covering->name), _(heavy->covering->name),
                          here, nose);
}

char *
coverings_text (const Coverings *coverings, Units units)
{
  const CoveringFigures *light = &coverings->of[0];

  if (!coverings->count || isnan (light->nose_g))
    return NULL;
  if (coverings->bare)
    return light->nose_g >= LEAST_G ? choice_text (light, &coverings->of[coverings->count - 1], units) : NULL;
  if (light->nose_g > -LEAST_G)
    return NULL;
  g_autofree char *here = units_mass (units, -light->change_g), *nose = units_mass (units, -light->nose_g);
  return g_strdup_printf (_("The lightest, “%s”, spares %s there and %s at the nose."), _(light->covering->name), here, nose);
}
