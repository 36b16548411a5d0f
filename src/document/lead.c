#include "document/piece.h"

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
