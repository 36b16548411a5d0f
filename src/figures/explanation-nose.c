#include "figures/reckoning.h"

#include "trammel-config.h"
#include <glib/gi18n-lib.h>
#include <math.h>
#include "document/part-box.h"
#include "figures/contribution.h"
#include "figures/names.h"
#include "figures/nose-figures.h"
#include "figures/part-stand.h"

/* Where motor, propeller and cowl are, and where a part stands: what a rule along the body tells. */

static bool
begin_nose (Reckoning *self, NoseFigures *nose)
{
  const Part *motor = self->id ? aeroplane_part_by_id (self->figures->aeroplane, self->id) : NULL;

  if (!motor || !nose_figures_of (self->figures->aeroplane, motor, nose))
    return false;
  reckoning_about (self, piece_name (&motor->piece));
  return true;
}

static const char *
front_label (const NoseFigures *nose)
{
  return nose->cowl ? _("Front of the cowl") : _("Front of the body");
}

bool
reckon_propeller_plane (Reckoning *self)
{
  NoseFigures nose;

  if (!begin_nose (self, &nose))
    return false;
  reckoning_length (self, front_label (&nose), nose.front_x_mm);
  reckoning_length (self, _("Middle of the propeller"), nose.propeller->x);
  reckoning_length (self, _("Front of the motor's can"), nose.propeller->x + nose.shaft_mm);
  reckoning_length (self, _("Shaft, from the can to the plane"), nose.shaft_mm);
  reckoning_gives_length (self, nose.plane_ahead_mm, NAN);
  return true;
}

bool
reckon_nose_gap (Reckoning *self)
{
  NoseFigures nose;

  if (!begin_nose (self, &nose))
    return false;
  reckoning_fine_length (self, front_label (&nose), nose.front_x_mm);
  reckoning_fine_length (self, nose.spinner ? _("Rear face of the spinner") : _("Rear face of the hub"), nose.front_x_mm - nose.gap_mm);
  reckoning_words (self, _("Usual"), nose.spinner ? _("1.5 to 3 mm behind a spinner") : _("1.5 to 8 mm behind a bare hub"));
  reckoning_gives_length (self, nose.gap_mm, NAN);
  return true;
}

bool
reckon_firewall (Reckoning *self)
{
  NoseFigures nose;

  if (!begin_nose (self, &nose))
    return false;
  reckoning_length (self, front_label (&nose), nose.front_x_mm);
  reckoning_length (self, _("Rear of the motor and its mount"), nose.front_x_mm + nose.firewall_mm);
  reckoning_length (self, _("Firewall now, behind that front"), nose.firewall_mm);
  reckoning_fine_length (self, _("Motor too far out (less than nought: too deep)"), nose.out_mm);
  reckoning_gives_length (self, nose.firewall_then_mm, NAN);
  return true;
}

bool
reckon_shaft_offset (Reckoning *self)
{
  NoseFigures nose;

  if (!begin_nose (self, &nose) || aeroplane_count (self->figures->aeroplane, PIECE_THRUST) == 0)
    return false;
  const Thrust *thrust = (const Thrust *) aeroplane_nth (self->figures->aeroplane, PIECE_THRUST, 0);
  reckoning_length (self, _("From the firewall to the front"), nose.firewall_then_mm);
  reckoning_number (self, _("Thrust line to the right"), thrust->right, 1, "°");
  reckoning_number (self, _("Thrust line down"), thrust->down, 1, "°");
  reckoning_fine_length (self, _("To port, at the firewall"), nose.to_port_mm);
  reckoning_fine_length (self, _("Up, at the firewall"), nose.up_mm);
  reckoning_gives_length (self, nose.to_port_mm, NAN);
  return true;
}

static double
place_sigma (const Figures *figures, const Part *part)
{
  for (size_t i = 0; i < figures->load_count; i++)
    if (figures->loads[i].piece == &part->piece)
      return figures->loads[i].x_sigma_mm;
  return NAN;
}

/* "18 ± 3 mm behind F3" */
static char *
stand_text (Units units, const PartStand *stand, double sigma)
{
  const double away = fabs (stand->front_mm);
  g_autofree char *length = reckoning_deviating (units_length_figure (units, away), units_length (units, sigma), units_length (units, 0),
                                                 units_length (units, away));

  return g_strdup_printf (stand->front_mm < 0 ? _("%s ahead of %s") : _("%s behind %s"), length, stand->former->name);
}

bool
reckon_stand (Reckoning *self)
{
  const Part *part = self->id ? aeroplane_part_by_id (self->figures->aeroplane, self->id) : NULL;
  g_autoptr (PartRule) rule = part_rule_new (self->figures->aeroplane);
  Contributions owed = { .count = 0 };
  PartStand stand;

  if (!part || !part_stand_of (rule, part, &stand))
    return false;
  const double sigma = place_sigma (self->figures, part);
  reckoning_about (self, piece_name (&part->piece));
  reckoning_length_known (self, _("Middle of the part"), part->x, sigma);
  reckoning_length (self, _("Its length along the body"), part_extent (part).x);
  reckoning_length (self, stand.former->name, stand.former->place);
  reckoning_length (self, _("Underside above the bottom, at the front"), stand.front_height_mm);
  reckoning_length (self, _("Underside above the bottom, at the rear"), stand.rear_height_mm);
  reckoning_gives (self, stand_text (self->units, &stand, sigma), stand.front_mm);
  contribution_add (&owed, CONTRIBUTION_PLACE, &part->piece, sigma);
  if (owed.count)
    reckoning_owes (self, &owed, NULL);
  return true;
}
