#include "aero/wake.h"

#include <math.h>

static double
strip_circulation (const MeshStrip *strip, const double circulation[])
{
  double sum = 0;

  for (size_t i = 0; i < strip->panel_count; i++)
    sum += circulation[strip->panel + i];
  return sum;
}

/* Normal flow at a strip of a straight vortex of circulation 4π at (y, z). */
static double
line_wash (const MeshStrip *at, double y, double z)
{
  const double across = at->control_y - y, above = at->control_z - z;

  return 2 * (across * at->cosine + above * at->sine) / (across * across + above * above);
}

/* Both legs of a strip and of its image on the port side. */
static double
strip_wash (const MeshStrip *at, const MeshStrip *from)
{
  return line_wash (at, from->outer_y, from->outer_z) - line_wash (at, from->inner_y, from->inner_z)
       + line_wash (at, -from->inner_y, from->inner_z) - line_wash (at, -from->outer_y, from->outer_z);
}

double
wake_span_efficiency (const Mesh *mesh, const double circulation[])
{
  const MeshSurface *first = &mesh->surfaces[0];
  const MeshStrip *strips = mesh->strips + first->strip;
  const double span = 2 * strips[first->strip_count - 1].outer_y;
  double lift = 0, drag = 0;

  for (size_t i = 0; i < first->strip_count; i++)
    {
      const double own = strip_circulation (&strips[i], circulation), width = strips[i].outer_y - strips[i].inner_y;
      double wash = 0;

      for (size_t j = 0; j < first->strip_count; j++)
        wash += strip_circulation (&strips[j], circulation) * strip_wash (&strips[i], &strips[j]);
      lift += 16 * M_PI * own * width;
      drag -= 8 * M_PI * own * wash * width / strips[i].cosine;
    }
  return lift * lift / (M_PI * span * span * drag);
}
