#include "figures/lead-words.h"

#include "trammel-config.h"
#include <glib/gi18n-lib.h>
#include "figures/names.h"

const char *
lead_end_name (const Aeroplane *aeroplane, const char *id)
{
  const Part *part = aeroplane_part_by_id (aeroplane, id);

  return part ? piece_name (&part->piece) : id ? id : "";
}

char *
lead_title (const Aeroplane *aeroplane, const Lead *lead)
{
  if (lead->name || lead_is_joined (lead))
    return g_strdup (piece_name (&lead->piece));
  return g_strdup_printf (_("Lead %s – %s"), lead_end_name (aeroplane, lead->from), lead_end_name (aeroplane, lead->to));
}

char *
lead_leg_title (const Aeroplane *aeroplane, const Lead *lead, LeadLeg leg)
{
  g_autofree char *title = lead_title (aeroplane, lead);

  if (!lead_is_joined (lead))
    return g_steal_pointer (&title);
  /* Translators: one leg of a lead with three ends: the lead's name, then that of the part at the leg's end */
  return g_strdup_printf (_("%s, to %s"), title, lead_end_name (aeroplane, lead_leg_part (lead, leg)));
}

static bool
is_aboard (const Aeroplane *aeroplane, const char *id)
{
  const Part *part = aeroplane_part_by_id (aeroplane, id);

  return part && part->aboard;
}

Part *
lead_as_part (const Aeroplane *aeroplane, const Lead *lead)
{
  double place[3];
  Part *part;

  if ((!(lead->mass > 0) && !lead_is_joined (lead)) || !lead_mass_place (aeroplane, lead, place))
    return NULL;
  part = part_new (lead->piece.id, "other");
  part->name = lead_title (aeroplane, lead);
  part->kind = g_strdup (lead->kind);
  part->mass = lead->mass;
  part->mass_sigma = lead->mass_sigma;
  part->x = place[0];
  part->y = place[1];
  part->z = place[2];
  part->aboard = is_aboard (aeroplane, lead->from) && is_aboard (aeroplane, lead->to)
                 && (!lead_is_joined (lead) || is_aboard (aeroplane, lead->also));
  return part;
}

Part *
piece_as_part (const Aeroplane *aeroplane, const Piece *piece)
{
  if (piece->kind == PIECE_LEAD)
    return lead_as_part (aeroplane, (const Lead *) piece);
  return piece->kind == PIECE_PART ? (Part *) piece_ref (piece) : NULL;
}
