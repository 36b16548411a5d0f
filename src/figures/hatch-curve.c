#include "figures/hatch-curve.h"

#include <math.h>
#include "figures/body-profile.h"

static const double STEP = 2, TELLING = 0.5;      /* mm */

struct HatchCurve { double from, to; size_t count; double *along; };      /* at each step from the opening's forward end, the last past its after end */

static double
edge_at (const BodyProfile *profile, HatchSide side, double x)
{
  double half_width, bottom, top;

  body_profile_at (profile, x, &half_width, &bottom, &top);
  return side == HATCH_ON_TOP ? top : bottom;
}

/* Beyond the opening's end the edge goes on as it ended. */
static void
add_up (HatchCurve *self, const BodyProfile *profile, HatchSide side)
{
  for (size_t i = 1; i < self->count; i++)
    {
      const double before = self->from + STEP * (i - 1), here = fmin (before + STEP, self->to);
      const double rise = edge_at (profile, side, here) - edge_at (profile, side, before);

      self->along[i] = self->along[i - 1] + (here > before ? hypot (here - before, rise) * STEP / (here - before) : STEP);
    }
}

HatchCurve *
hatch_curve_new (const Figures *figures)
{
  const HatchFigures *hatch = &figures->hatch;
  const HatchSide side = aeroplane_traits (figures->aeroplane).hatch;

  if (!hatch->part || !hatch->body || side == HATCH_NOT_CHOSEN || !(hatch->to_mm > hatch->from_mm))
    return NULL;
  HatchCurve *self = g_new0 (HatchCurve, 1);
  BodyProfile *profile = body_profile_new (hatch->body);
  *self = (HatchCurve) { hatch->from_mm, hatch->to_mm, (size_t) ceil ((hatch->to_mm - hatch->from_mm) / STEP) + 1, NULL };
  self->along = g_new0 (double, self->count);
  add_up (self, profile, side);
  body_profile_free (profile);
  if (isfinite (self->along[self->count - 1]))
    return self;
  hatch_curve_free (self);
  return NULL;
}

void
hatch_curve_free (HatchCurve *self)
{
  if (!self)
    return;
  g_free (self->along);
  g_free (self);
}

double
hatch_curve_at (const HatchCurve *self, double x)
{
  if (!self || x <= self->from)
    return x;
  const double steps = (fmin (x, self->to) - self->from) / STEP;
  const size_t i = MIN ((size_t) steps, self->count - 2);
  const double beyond = fmax (x - self->to, 0);

  return self->from + self->along[i] + (steps - i) * (self->along[i + 1] - self->along[i]) + beyond;
}

double
hatch_curve_longer (const HatchCurve *self)
{
  const double longer = self ? hatch_curve_at (self, self->to) - self->to : 0;

  return longer < TELLING ? 0 : longer;
}
