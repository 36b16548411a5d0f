#include "document/changes-private.h"
#include <math.h>
#include <string.h>
#include "document/kept-follow.h"

static bool
lead_is_finite (const Lead *lead)
{
  const double given[] = { lead->length, lead->also_length, lead->to_length, lead->joint_x, lead->joint_y, lead->slack, lead->allowance,
                           lead->mass, lead->mass_sigma };

  for (size_t i = 0; i < G_N_ELEMENTS (given); i++)
    if (isinf (given[i]))
      return false;
  for (size_t i = 0; i < lead->via_count; i++)
    if (!point_is_finite (lead->via[i].place))
      return false;
  return isfinite (lead->mass) && isnan (lead->joint_x) == isnan (lead->joint_y);
}

Aeroplane *
change_lead (const Aeroplane *self, const char *id, Lead *takes)
{
  const Lead *old = aeroplane_lead_by_id (self, id);

  if (!old || !takes || !lead_is_finite (takes))
    {
      piece_unref (takes ? &takes->piece : NULL);
      return NULL;
    }
  return changed_to (self, &old->piece, &takes->piece);
}

Aeroplane *
change_lead_via_added (const Aeroplane *self, const char *id, size_t at, LeadVia via)
{
  const Lead *old = aeroplane_lead_by_id (self, id);
  Lead *next;

  if (!old || at > old->via_count)
    return NULL;
  next = (Lead *) piece_dup (&old->piece);
  next->via = g_renew (LeadVia, next->via, next->via_count + 1);
  memmove (next->via + at + 1, next->via + at, (next->via_count - at) * sizeof *next->via);
  next->via[at] = via;
  next->via_count++;
  kept_follow_added (&next->piece, INNER_VIA, at);
  return change_lead (self, id, next);
}

Aeroplane *
change_lead_via_removed (const Aeroplane *self, const char *id, size_t at)
{
  const Lead *old = aeroplane_lead_by_id (self, id);
  Lead *next;

  if (!old || at >= old->via_count)
    return NULL;
  next = (Lead *) piece_dup (&old->piece);
  memmove (next->via + at, next->via + at + 1, (next->via_count - at - 1) * sizeof *next->via);
  next->via_count--;
  kept_follow_removed (&next->piece, INNER_VIA, at);
  return change_lead (self, id, next);
}

/* The surfaces and bodies that a lead's ends are fixed to, and of which one has just been moved. */
typedef struct { const Aeroplane *aeroplane; const char *of[LEG_COUNT]; const char *moved; double dx; } Carriers;

/* A place in a wing that one end is fixed to is the wing's, though the body may be there too. */
static bool
goes_along (const Carriers *carriers, Point place)
{
  const Point there = { place.x + carriers->dx, place.y };

  if (surface_covers (aeroplane_surface_by_id (carriers->aeroplane, carriers->moved), there))
    return true;
  for (int i = 0; i < LEG_COUNT; i++)
    if (surface_covers (aeroplane_surface_by_id (carriers->aeroplane, carriers->of[i]), place))
      return false;
  return body_covers (aeroplane_body_by_id (carriers->aeroplane, carriers->moved), there);
}

/* The lead with its places in the piece that was moved where that is now; NULL when no end is fixed to it. */
static Lead *
lead_moved_with (const Aeroplane *now, const Lead *lead, const char *moved, double dx)
{
  const char *ends[LEG_COUNT] = { lead->from, lead->also, lead->to };
  Carriers carriers = { .aeroplane = now, .moved = moved, .dx = dx };
  bool hangs = false;
  Lead *next;

  for (int i = 0; i < LEG_COUNT; i++)
    {
      const Part *part = aeroplane_part_by_id (now, ends[i]);

      carriers.of[i] = part ? part->of : NULL;
      hangs = hangs || (carriers.of[i] && g_strcmp0 (carriers.of[i], moved) == 0);
    }
  if (!hangs)
    return NULL;
  next = (Lead *) piece_dup (&lead->piece);
  for (size_t i = 0; i < next->via_count; i++)
    next->via[i].place.x += goes_along (&carriers, next->via[i].place) ? dx : 0;
  if (isfinite (next->joint_x) && goes_along (&carriers, (Point) { next->joint_x, next->joint_y }))
    next->joint_x += dx;
  return next;
}

Aeroplane *
leads_moved_with (Aeroplane *takes, const char *id, double dx)
{
  Aeroplane *now = takes;

  for (size_t i = 0; now && dx != 0 && i < aeroplane_count (now, PIECE_LEAD); i++)
    {
      const Lead *lead = aeroplane_lead (now, i);
      Lead *next = lead_moved_with (now, lead, id, dx);
      Aeroplane *last = now;

      if (!next)
        continue;
      now = changed_to (last, &lead->piece, &next->piece);
      aeroplane_unref (last);
    }
  return now;
}
