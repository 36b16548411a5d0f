#include "figures/ballast-deviation.h"

#include <math.h>
#include "figures/contribution.h"
#include "figures/loads.h"

static void
add_load (Contributions *owed, const BallastCase *wanted, const LoadFigures *load, double x_mm)
{
  const double lever = wanted->target_x_mm - wanted->ballast_x_mm;

  contribution_add (owed, CONTRIBUTION_MASS, load->piece, (x_mm - wanted->target_x_mm) * load->mass_sigma_g / lever);
  contribution_add (owed, CONTRIBUTION_PLACE, load->piece, load->mass_g * load->x_sigma_mm / lever);
}

/* Of a part that is left out nothing stands among the loads. */
static LoadFigures
load_left_out (const Part *part)
{
  const MassItem item = load_of_part (part);

  return (LoadFigures) { .piece = &part->piece, .mass_g = part->mass, .mass_sigma_g = item.mass_sigma * 1e3, .x_sigma_mm = item.x_sigma * 1e3 };
}

Contributions
ballast_owed (const BallastCase *wanted)
{
  Contributions owed = { .count = 0 };
  double all = wanted->ballast_g;

  for (size_t i = 0; i < wanted->count; i++)
    {
      const LoadFigures *load = &wanted->loads[i];
      const bool moved = wanted->part && load->piece == &wanted->part->piece;

      add_load (&owed, wanted, load, moved ? wanted->part_x_mm : load->x_mm);
      all += load->mass_g;
    }
  if (wanted->part && !wanted->part->aboard)
    {
      const LoadFigures load = load_left_out (wanted->part);

      add_load (&owed, wanted, &load, wanted->part_x_mm);
      all += load.mass_g;
    }
  const Contributions by_target = contributions_scaled (wanted->target_owed, all / (wanted->target_x_mm - wanted->ballast_x_mm));
  return contributions_joined (&owed, &by_target);
}
