#include "figures/body-measure.h"

#include <math.h>
#include "figures/body-profile.h"

/* As many sections as a body is measured at. */
enum { SECTIONS = 256 };

/* Half the width and half the height there; a circle where one is not known, NAN beyond the ends. */
static void
section_at (const BodyProfile *profile, double x, double *half_width, double *half_height)
{
  double bottom, top;

  body_profile_at (profile, x, half_width, &bottom, &top);
  *half_height = (top - bottom) / 2;
  if (isnan (*half_height))
    *half_height = *half_width;
  if (isnan (*half_width))
    *half_width = *half_height;
}

static double
ellipse_girth (double a, double b)
{
  return G_PI * (3 * (a + b) - sqrt ((3 * a + b) * (a + 3 * b)));
}

static double
skin_of (const BodyProfile *profile, double from, double to)
{
  const double step = (to - from) / SECTIONS;
  double skin = 0, last = 0;

  for (int i = 0; i <= SECTIONS; i++)
    {
      double half_width, half_height, girth;

      section_at (profile, fmin (from + i * step, to), &half_width, &half_height);
      girth = ellipse_girth (half_width, half_height);
      if (i > 0)
        skin += (last + girth) / 2 * hypot (step, (girth - last) / (2 * G_PI));
      last = girth;
    }
  return skin;
}

static double
formers_of (const BodyProfile *profile, const Body *body)
{
  double area = 0;

  for (size_t i = 0; i < body->former_count; i++)
    {
      double half_width, half_height;

      section_at (profile, body->formers[i].place, &half_width, &half_height);
      if (!isnan (half_width))
        area += G_PI * half_width * half_height;
    }
  return area > 0 ? area : NAN;
}

/* Both halves, by the trapezoidal rule. */
static double
plan_of (const BodyProfile *profile, double from, double to)
{
  double area = 0;

  for (int i = 0; i <= SECTIONS; i++)
    {
      double half_width, bottom, top;

      body_profile_at (profile, fmin (from + i * (to - from) / SECTIONS, to), &half_width, &bottom, &top);
      area += half_width * (i == 0 || i == SECTIONS ? 1 : 2);
    }
  return area * (to - from) / SECTIONS;
}

BodyMeasure
body_measure (const Body *body)
{
  BodyMeasure made = { NAN, NAN, NAN, NAN };
  BodyProfile *profile = body_profile_new (body);
  double from, to;

  if (body_profile_ends (profile, &from, &to))
    made = (BodyMeasure) { plan_of (profile, from, to), skin_of (profile, from, to), formers_of (profile, body), to - from };
  body_profile_free (profile);
  return made;
}
