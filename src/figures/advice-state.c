#include "figures/advice-state.h"

#include <math.h>
#include "balance/slide.h"
#include "figures/names.h"
#include "figures/place-notes.h"
#include "figures/surface-figures.h"
#include "figures/tail-volume.h"
#include "figures/unweighed.h"

/* A deviation that says "weigh first", % MAC. */
static const double large_deviation = 5;
/* A shift of the balance point that nobody can measure, mm. */
static const double no_shift = 0.5;

/* A battery before anything else, one that reaches the band before one that does not, else the first. */
static int
worth_of (const Solution *solution)
{
  if (!solution->part->aboard || isnan (solution->x_mm))
    return 0;
  return 1 + part_is_battery (solution->part) + 2 * isfinite (solution->band_from_mm);
}

static const Solution *
best_solution (const Figures *figures)
{
  const Solution *best = NULL;

  for (size_t i = 0; i < figures->solution_count; i++)
    if (worth_of (&figures->solutions[i]) > (best ? worth_of (best) : 0))
      best = &figures->solutions[i];
  return best;
}

double
advice_place_x_mm (const Solution *solution)
{
  if (isfinite (solution->band_from_mm))
    return CLAMP (solution->x_mm, solution->band_from_mm, solution->band_to_mm);
  return CLAMP (solution->x_mm, solution->part->rail_from, solution->part->rail_to);
}

double
advice_rail_short_mm (const Figures *figures, const Solution *solution, double balance_x_mm)
{
  const double way = (balance_x_mm - figures->balance.advised_x_mm) * figures->mass.total_g / solution->part->mass;
  const double missing = solution->part->rail_from - (solution->x_mm + way);

  return missing >= no_shift ? missing : 0;
}

/* What lead would do for all that balances at x, at the end of the body or of the outlines. */
static double
ballast_for (const Figures *figures, double x)
{
  const SlideCase wanted = { .target_x = figures->balance.advised_x_mm, .nose_x = figures->nose_x_mm, .tail_x = figures->tail_x_mm };
  double ballast, place;

  if (ballast_solve (&wanted, figures->mass.total_g, x, &ballast, &place) != CORE_OK)
    return NAN;
  return ballast;
}

AdviceMeans
advice_means_of (const Figures *figures)
{
  AdviceMeans means = { .solution = best_solution (figures), .move_mm = NAN, .ballast_g = NAN };

  if (!figures->reference || isnan (figures->balance.target_x_mm) || isnan (figures->mass.x_mm))
    return means;
  if (!means.solution)
    {
      means.ballast_g = ballast_for (figures, figures->mass.x_mm);
      return means;
    }
  const double deviation = figures->balance.static_margin_sigma_percent / 100 * figures->reference->planform.mac;
  means.reaches_band = isfinite (means.solution->band_from_mm);
  means.move_mm = advice_place_x_mm (means.solution) - means.solution->part->x;
  means.about = deviation * figures->mass.total_g / means.solution->part->mass > fabs (means.move_mm);
  means.ballast_g = means.solution->ballast_g;
  return means;
}

static AdviceState
state_of_outline (const SurfaceFigures *surface)
{
  if (isfinite (surface->area_mm2))
    return STATE_IN_BAND;
  switch (surface->status)
    {
    case CORE_OPEN:
      return STATE_OUTLINE_OPEN;
    case CORE_CROSSES_ITSELF:
      return STATE_OUTLINE_CROSSES;
    case CORE_OUT_OF_RANGE:
      return surface_is_beyond_the_centre (surface->surface) ? STATE_OUTLINE_BEYOND : STATE_OUTLINE_INBOARD;
    case CORE_NO_SPAN:
    case CORE_NO_AREA:
      return STATE_OUTLINE_EMPTY;
    default:
      return STATE_OUTLINE_UNMEASURED;
    }
}

static AdviceState
state_of_outlines (const Figures *figures, const SurfaceFigures **surface)
{
  for (size_t i = 0; i < figures->surface_count; i++)
    {
      const AdviceState state = state_of_outline (&figures->surfaces[i]);

      *surface = &figures->surfaces[i];
      if (state != STATE_IN_BAND)
        return state;
    }
  *surface = NULL;
  return STATE_IN_BAND;
}

static AdviceState
state_in_band (const Figures *figures, const AdviceMeans *means)
{
  const NeutralPointFigures *point = &figures->neutral_point;

  if (figures->balance.static_margin_sigma_percent > large_deviation && figures->mass.x_sigma_mm > point->sigma_mm)
    return STATE_ESTIMATES;
  if (place_guessed_of_mark (figures->aeroplane))
    return STATE_PLACE_GUESSED;
  if (fabs (point->x_mm - point->handbook_x_mm) > point->sigma_mm)
    return STATE_METHODS_DIFFER;
  if (figures->tail_volume < tail_volume_least)
    return STATE_SMALL_TAIL;
  if (means->solution && means->move_mm * means->solution->part->mass <= -no_shift * figures->mass.total_g)
    return STATE_MOVE_FOR_FIRST_FLIGHT;
  return STATE_IN_BAND;
}

static AdviceState
state_of_margin (const Figures *figures, const AdviceMeans *means)
{
  const double margin = figures->balance.static_margin_percent;
  const Target target = aeroplane_traits (figures->aeroplane).target;

  if (margin < 0)
    return STATE_TAIL_HEAVY;
  if (!airframe_is_weighed (figures->aeroplane))
    return STATE_NO_AIRFRAME;
  if (unweighed_pieces (figures->aeroplane, NULL, 0))
    return STATE_UNWEIGHED;
  if (weightless_slider (figures))
    return STATE_WEIGHTLESS;
  if (margin < target.from)
    return STATE_LITTLE_MARGIN;
  if (margin > target.to)
    return STATE_NOSE_HEAVY;
  return state_in_band (figures, means);
}

AdviceState
advice_state_of (const Figures *figures, const AdviceMeans *means, const SurfaceFigures **surface)
{
  AdviceState state = state_of_outlines (figures, surface);

  if (state != STATE_IN_BAND)
    return state;
  if (!figures->reference)
    return STATE_NO_WING;
  if (isnan (figures->neutral_point.x_mm))
    return STATE_NO_NEUTRAL_POINT;
  if (figures->neutral_point.wing_alone)
    return STATE_WING_ALONE;
  if (isnan (figures->mass.x_mm))
    return figures->mass.total_g > 0 ? STATE_NO_PLACE : STATE_NO_MASSES;
  return state_of_margin (figures, means);
}
