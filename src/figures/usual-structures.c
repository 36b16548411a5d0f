#include "figures/usual-fit.h"

#include <math.h>
#include "figures/structure-figures.h"
#include "figures/surface-figures.h"
#include "trammel-config.h"
#include <glib/gi18n-lib.h>

/* Of the airframe, and how well each is known. Common practice, no source. */
static const double WINGS = 0.37, BODIES = 0.47, TAILS = 0.09, FINISH = 0.07, KNOWN_TO = 0.25;
static const double AIRFRAME = 0.48;      /* of all-up */

static double
area_of (const Surface *surface)
{
  Planform planform;

  return planform_measure (surface->outline, surface_sides (surface), &planform) == CORE_OK ? planform.area : 0;
}

static double
areas (const Aeroplane *aeroplane, bool wings)
{
  double sum = 0;

  for (size_t i = 0; i < aeroplane_count (aeroplane, PIECE_SURFACE); i++)
    if ((aeroplane_surface (aeroplane, i)->role == ROLE_WING) == wings)
      sum += area_of (aeroplane_surface (aeroplane, i));
  return sum;
}

/* By the scale or by its items; 0 while it has neither. */
static double
structure_mass (const Aeroplane *aeroplane, const Structure *structure)
{
  const Surface *surface = aeroplane_surface_by_id (aeroplane, structure->of);
  const Body *body = aeroplane_body_by_id (aeroplane, structure->of);
  SurfaceFigures alone;
  Spread spread;
  StructureFigures figures;

  if (surface)
    {
      alone = surface_figures_alone (surface);
      spread = spread_of_surface (&alone);
    }
  else if (body)
    spread = spread_of_body (body);
  figures = structure_figures_of (structure, surface || body ? &spread : NULL);
  g_clear_pointer (&figures.items_g, g_array_unref);
  return figures.mass_g > 0 ? figures.mass_g : 0;
}

double
structures_mass (const Aeroplane *aeroplane)
{
  double sum = 0;

  for (size_t i = 0; i < aeroplane_count (aeroplane, PIECE_STRUCTURE); i++)
    sum += structure_mass (aeroplane, aeroplane_structure (aeroplane, i));
  return sum;
}

static bool
any_structure_is_given (const Aeroplane *aeroplane)
{
  for (size_t i = 0; i < aeroplane_count (aeroplane, PIECE_STRUCTURE); i++)
    if (structure_is_given (aeroplane_structure (aeroplane, i)))
      return true;
  return false;
}

double
parts_mass (const Aeroplane *aeroplane)
{
  double sum = 0;

  for (size_t i = 0; i < aeroplane_count (aeroplane, PIECE_PART); i++)
    sum += aeroplane_part (aeroplane, i)->aboard ? aeroplane_part (aeroplane, i)->mass : 0;
  return sum;
}

double
usual_loading (double span_mm)
{
  return fmax (18.5 + 0.032 * (span_mm - 500), 8);
}

double
usual_all_up (const Aeroplane *aeroplane)
{
  const Surface *wing = aeroplane_reference_wing (aeroplane);
  const double built = structures_mass (aeroplane);
  Planform planform;

  if (!wing || planform_measure (wing->outline, surface_sides (wing), &planform) != CORE_OK)
    return NAN;
  if (built > 0)
    return built / AIRFRAME;
  return areas (aeroplane, true) / 1e4 * usual_loading (planform.span);
}

/* One structure's mass, in the place of a structure of the same thing that weighs nothing. */
static Aeroplane *
with_mass (Aeroplane *takes, const char *of, const char *stem, double mass, double x)
{
  g_autofree char *id = aeroplane_free_id (takes, stem);
  Structure *structure = structure_new (id, of, mass);
  const Structure *old = NULL;
  Aeroplane *made;

  structure->mass_sigma = KNOWN_TO * mass;
  structure->x = x;
  for (size_t i = 0; of && i < aeroplane_count (takes, PIECE_STRUCTURE); i++)
    if (g_strcmp0 (aeroplane_structure (takes, i)->of, of) == 0)
      old = aeroplane_structure (takes, i);
  if (old)
    {
      piece_unref (&structure->piece);
      structure = (Structure *) piece_dup (&old->piece);
      structure->mass = mass;
      structure->mass_sigma = KNOWN_TO * mass;
    }
  made = old ? aeroplane_with_replaced (takes, &old->piece, &structure->piece) : aeroplane_with_added (takes, &structure->piece);
  aeroplane_unref (takes);
  return made;
}

static Aeroplane *
with_surfaces (Aeroplane *takes, bool wings, double mass)
{
  const double all = areas (takes, wings);

  for (size_t i = 0; i < aeroplane_count (takes, PIECE_SURFACE); i++)
    {
      const Surface *surface = aeroplane_surface (takes, i);
      g_autofree char *stem = g_strconcat (surface->piece.id ? surface->piece.id : "surface", "-structure", NULL);

      if ((surface->role == ROLE_WING) == wings && area_of (surface) > 0 && surface->piece.id)
        takes = with_mass (takes, surface->piece.id, stem, mass * area_of (surface) / all, NAN);
    }
  return takes;
}

/* The first body's middle, else behind the wing: where a finish has its own. */
static double
finish_place (const Aeroplane *aeroplane)
{
  const Surface *wing = aeroplane_reference_wing (aeroplane);
  const Body *body = aeroplane_count (aeroplane, PIECE_BODY) > 0 ? aeroplane_body (aeroplane, 0) : NULL;
  const Outline *outline = body && body->outline ? body->outline : body && body->side_outline ? body->side_outline : wing->outline;
  const Box box = outline_bounds (outline);

  return round ((box.min.x + box.max.x) / 2);
}

Aeroplane *
usual_structures (const Aeroplane *aeroplane, double total)
{
  const double built = total - parts_mass (aeroplane), wings = areas (aeroplane, true), tails = areas (aeroplane, false);
  const Body *body = aeroplane_count (aeroplane, PIECE_BODY) > 0 ? aeroplane_body (aeroplane, 0) : NULL;
  const bool has_body = body && body->piece.id && (body->outline || body->side_outline);
  const double shares = WINGS + (has_body ? BODIES : 0) + (tails > 0 ? TAILS : 0) + FINISH;
  Aeroplane *made;

  if (!(built > 0) || !isfinite (built) || !(wings > 0) || any_structure_is_given (aeroplane))
    return NULL;
  made = with_surfaces (aeroplane_ref (aeroplane), true, built * WINGS / shares);
  if (tails > 0)
    made = with_surfaces (made, false, built * TAILS / shares);
  if (has_body)
    made = with_mass (made, body->piece.id, "body-structure", built * BODIES / shares, NAN);
  return with_mass (made, NULL, "finish", built * FINISH / shares, finish_place (aeroplane));
}
