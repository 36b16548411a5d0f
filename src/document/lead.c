#include "document/piece.h"
#include <math.h>
#include "document/kept-follow.h"

bool
lead_is_joined (const Lead *lead)
{
  return lead->also != NULL;
}

double *
lead_leg_length_in (Lead *lead, LeadLeg leg)
{
  if (leg == LEG_ALSO)
    return &lead->also_length;
  return leg == LEG_TO && lead_is_joined (lead) ? &lead->to_length : &lead->length;
}

double
lead_leg_length (const Lead *lead, LeadLeg leg)
{
  return *lead_leg_length_in ((Lead *) lead, leg);      /* only read */
}

const char *
lead_leg_part (const Lead *lead, LeadLeg leg)
{
  return leg == LEG_ALSO ? lead->also : leg == LEG_TO ? lead->to : lead->from;
}

void
lead_become_plain (Lead *lead, const char *without)
{
  if (without && g_strcmp0 (lead->from, without) == 0)
    {
      g_free (lead->from);
      lead->from = g_steal_pointer (&lead->also);
    }
  g_clear_pointer (&lead->also, g_free);
  lead->length = lead->also_length = lead->to_length = lead->joint_x = lead->joint_y = NAN;
  lead->mass = 0;
  lead->mass_sigma = NAN;
  g_clear_pointer (&lead->kind, g_free);
  g_clear_pointer (&lead->name, g_free);
  while (lead->via_count > 0)
    kept_follow_removed (&lead->piece, INNER_VIA, --lead->via_count);
  g_clear_pointer (&lead->via, g_free);
}
