#include "figures/no-neutral-point.h"

#include "trammel-config.h"
#include <glib/gi18n-lib.h>
#include <math.h>
#include "figures/names.h"

typedef enum { CAUSE_UNKNOWN, CAUSE_ONE_PLACE, CAUSE_NO_CHORD, CAUSE_NO_LIFT, CAUSE_NARROW, CAUSE_STEEP, CAUSE_TOO_MANY, CAUSE_NO_MEMORY } Cause;

/* Past this the lattice takes no dihedral, degrees. */
static const double steepest = 80;

static bool
is_steep (const Surface *surface)
{
  bool steep = fabs (surface->dihedral) > steepest;

  for (size_t i = 0; i < surface->break_count; i++)
    steep = steep || fabs (surface->breaks[i].angle) > steepest;
  return steep;
}

static Cause
cause_of (const NeutralPointFigures *point)
{
  const Surface *first = point->at_fault[0], *second = point->at_fault[1];

  switch (point->status)
    {
    case CORE_SINGULAR:
      if (!first || second)
        return CAUSE_ONE_PLACE;
      return surface_pressure_ratio (first) > 0 ? CAUSE_NO_CHORD : CAUSE_NO_LIFT;
    case CORE_OUT_OF_RANGE:
      return !first ? CAUSE_UNKNOWN : is_steep (first) ? CAUSE_STEEP : CAUSE_NARROW;
    case CORE_TOO_MANY:
      return CAUSE_TOO_MANY;
    case CORE_NO_MEMORY:
      return CAUSE_NO_MEMORY;
    default:
      return CAUSE_UNKNOWN;
    }
}

const char *
no_neutral_point_headline (const NeutralPointFigures *point)
{
  static const char *const headlines[] = {
    [CAUSE_UNKNOWN]   = N_("The neutral point cannot be found. Check wing and tail."),
    [CAUSE_ONE_PLACE] = N_("Two surfaces lie in one place. Move one of them."),
    [CAUSE_NO_CHORD]  = N_("One surface has no chord somewhere. Give it one there."),
    [CAUSE_NO_LIFT]   = N_("No surface lifts. Type a dynamic-pressure ratio above 0."),
    [CAUSE_NARROW]    = N_("One surface is too narrow. Give it more span."),
    [CAUSE_STEEP]     = N_("One dihedral is too steep. Make it less than 80°."),
    [CAUSE_TOO_MANY]  = N_("Too many surfaces for one neutral point. Take some away."),
    [CAUSE_NO_MEMORY] = N_("No memory is left for the figures. Close another window."),
  };

  return _(headlines[cause_of (point)]);
}

static char *
finding_of_two (const char *one, const char *other)
{
  if (!one)
    return g_strdup (_("The neutral point cannot be found: two surfaces lie in one place. Move one of them."));
  return g_strdup_printf (_("The neutral point cannot be found: “%s” and “%s” lie in one place. Move one of them."), one, other);
}

char *
no_neutral_point_finding (const NeutralPointFigures *point)
{
  const char *first = point->at_fault[0] ? piece_name (&point->at_fault[0]->piece) : NULL;
  const char *second = point->at_fault[1] ? piece_name (&point->at_fault[1]->piece) : NULL;

  switch (cause_of (point))
    {
    case CAUSE_ONE_PLACE:
      return finding_of_two (first, second);
    case CAUSE_NO_CHORD:
      return g_strdup_printf (_("The neutral point cannot be found: somewhere “%s” is as thin as a line. Give it a chord there."), first);
    case CAUSE_NO_LIFT:
      return g_strdup (_("The neutral point cannot be found: every surface's dynamic-pressure ratio is 0, so none lifts. Type a "
                         "greater one."));
    case CAUSE_NARROW:
      return g_strdup_printf (_("The neutral point cannot be found: the span of “%s” is too small for the method. Give it more."), first);
    case CAUSE_STEEP:
      return g_strdup_printf (_("The neutral point cannot be found: the dihedral of “%s” is too steep. Make it less than 80°."), first);
    case CAUSE_TOO_MANY:
      return g_strdup (_("The neutral point cannot be found: there are too many surfaces to be reckoned together. Join some into one outline, or "
                         "take some away."));
    case CAUSE_NO_MEMORY:
      return g_strdup (_("The neutral point cannot be found: there is no memory left. Close another window, then change something."));
    default:
      return g_strdup (_("The neutral point cannot be found. Check the size and the place of every wing and tail."));
    }
}
