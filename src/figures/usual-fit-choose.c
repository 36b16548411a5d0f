#include "figures/usual-fit-choose.h"

#include <math.h>
#include <string.h>

static const double CELL_VOLTS = 3.7;      /* of a lithium-polymer cell, nominal */

/* By ratio, to the middle of what it fits; a range from nothing is taken to begin at a quarter of its end. */
static double
distance_from (const CatalogueEntry *entry, double all_up)
{
  return fabs (log (all_up / sqrt (fmax (entry->fits_from, entry->fits_to / 4) * entry->fits_to)));
}

const CatalogueEntry *
fit_entry_for (const Catalogue *catalogue, const char *class_name, double all_up)
{
  const CatalogueEntry *best = NULL;

  for (size_t i = 0; i < catalogue_count (catalogue); i++)
    {
      const CatalogueEntry *entry = catalogue_entry (catalogue, i);

      if (strcmp (entry->class_name, class_name) == 0 && entry->fits_to > 0 && entry->fits_from >= 0
          && (!best || distance_from (entry, all_up) < distance_from (best, all_up)))
        best = entry;
    }
  return best;
}

/* Inches by what the motor weighs: 5 in at 8 g, 9 in at 54 g, the classes of the catalogue between. */
static double
usual_diameter (double motor_mass)
{
  static const struct { double mass, inches; } rows[] = { { 11, 5 }, { 18, 6 }, { 32, 7 }, { 47, 8 } };

  for (size_t i = 0; i < G_N_ELEMENTS (rows); i++)
    if (motor_mass < rows[i].mass)
      return rows[i].inches;
  return 9;
}

const CatalogueEntry *
fit_propeller_of (const Catalogue *catalogue, const Part *motor)
{
  const double wanted = usual_diameter (motor->mass) * 25.4;
  const CatalogueEntry *best = NULL;

  for (size_t i = 0; i < catalogue_count (catalogue); i++)
    {
      const CatalogueEntry *entry = catalogue_entry (catalogue, i);

      if (strcmp (entry->class_name, "propeller") == 0 && !strstr (entry->id, "thin")
          && (!best || fabs (entry->width - wanted) < fabs (best->width - wanted)))
        best = entry;
    }
  return best;
}

const CatalogueEntry *
fit_controller_of (const Catalogue *catalogue, const Part *motor, const CatalogueEntry *battery)
{
  const CatalogueEntry *driven = motor ? catalogue_find (catalogue, motor->kind) : NULL, *best = NULL;
  const double power = driven && driven->power > 0 ? driven->power : 3 * (motor ? motor->mass : 20);      /* W; 3 W a gram of motor */
  const double amperes = power / (CELL_VOLTS * (battery && battery->cells > 0 ? battery->cells : 2));

  for (size_t i = 0; i < catalogue_count (catalogue); i++)
    {
      const CatalogueEntry *entry = catalogue_entry (catalogue, i);
      const bool enough = entry->current >= amperes, had_enough = best && best->current >= amperes;

      if (strcmp (entry->class_name, "controller") != 0 || !(entry->current > 0))
        continue;
      if (!best || (enough && (!had_enough || entry->current < best->current)) || (!had_enough && entry->current > best->current))
        best = entry;
    }
  return best;
}

const CatalogueEntry *
fit_glider_pack (const Catalogue *catalogue, double all_up)
{
  const CatalogueEntry *best = NULL;

  for (size_t i = 0; i < catalogue_count (catalogue); i++)
    {
      const CatalogueEntry *entry = catalogue_entry (catalogue, i);
      const double wanted = all_up < 200 ? 1 : 2;

      if (strcmp (entry->class_name, "battery") == 0 && entry->cells == wanted
          && (!best || fabs (entry->capacity - 300) < fabs (best->capacity - 300)))
        best = entry;
    }
  return best;
}

static const Surface *
first_of_role (const Aeroplane *aeroplane, SurfaceRole role)
{
  for (size_t i = 0; i < aeroplane_count (aeroplane, PIECE_SURFACE); i++)
    if (aeroplane_surface (aeroplane, i)->role == role)
      return aeroplane_surface (aeroplane, i);
  return NULL;
}

const Surface *
fit_elevator_surface (const Aeroplane *aeroplane)
{
  const Surface *tail = first_of_role (aeroplane, ROLE_TAILPLANE);

  return tail ? tail : first_of_role (aeroplane, ROLE_FOREPLANE);
}

const Surface *
fit_rudder_surface (const Aeroplane *aeroplane)
{
  return first_of_role (aeroplane, ROLE_FIN);
}
