#include "figures/cowl-fit.h"

#include <math.h>
#include "figures/body-profile.h"

enum { LOOKS = 32 };

/* The greatest box about the outlines over the cowl's length; NAN where one of them is not known. */
static void
look_along (const BodyProfile *profile, double from, double length, double *width, double *bottom, double *top)
{
  *width = *bottom = *top = NAN;
  for (int i = 0; i <= LOOKS; i++)
    {
      double half_width, low, high;

      body_profile_at (profile, from + length * i / LOOKS, &half_width, &low, &high);
      *width = fmax (*width, 2 * half_width);
      *bottom = fmin (*bottom, low);
      *top = fmax (*top, high);
    }
}

void
cowl_fit_nose (Part *cowl, const Aeroplane *aeroplane)
{
  BodyProfile *profile = aeroplane_count (aeroplane, PIECE_BODY) > 0 ? body_profile_new (aeroplane_body (aeroplane, 0)) : NULL;
  double from, to, width, bottom, top;

  if (profile && cowl->length > 0 && body_profile_ends (profile, &from, &to))
    {
      look_along (profile, from, fmin (cowl->length, to - from), &width, &bottom, &top);
      cowl->x = from + cowl->length / 2;
      if (width > 0)
        cowl->width = width;
      if (top > bottom)
        {
          cowl->height = top - bottom;
          cowl->z = (top + bottom) / 2;
        }
    }
  body_profile_free (profile);
}
