#include "aero/influence.h"

#include <math.h>
#include <stdbool.h>

/* Each loop below is compiled for plain processors and for those with wider vectors and fused multiplication; the choice
 * is made when the program starts. Sanitizers' own start is not ready for that. */
#if defined __x86_64__ && defined __linux__ && defined __GNUC__ && !defined __clang__ && __GNUC__ >= 12 \
  && !defined __SANITIZE_THREAD__ && !defined __SANITIZE_ADDRESS__
#define FOR_EACH_PROCESSOR __attribute__ ((target_clones ("arch=x86-64-v4", "arch=x86-64-v3", "default")))
#else
#define FOR_EACH_PROCESSOR
#endif
/* Only what is inlined is compiled anew for each processor. */
#define INLINED __attribute__ ((always_inline))

/* Keeps points on a vortex finite, in parts of the span squared: far below rounding anywhere else. */
static const double core = 1e-24;
/* The bound vortex's own line: below this the angle between the two ends is rounding. */
static const double least_opening = 1e-14;

/* A horseshoe as one strip's panel has it. */
typedef struct { double inner_x, inner_y, inner_z, outer_x, outer_y, outer_z; } Horseshoe;
typedef struct { double y, z; } Wash;

static inline INLINED Horseshoe
horseshoe_of (const Mesh *mesh, const MeshStrip *strip, size_t panel)
{
  return (Horseshoe) { .inner_x = mesh->inner_x[panel], .inner_y = strip->inner_y, .inner_z = strip->inner_z,
                       .outer_x = mesh->outer_x[panel], .outer_y = strip->outer_y, .outer_z = strip->outer_z };
}

static inline INLINED double
squared_distance (double y, double z, double tiny)
{
  return y * y + z * z + tiny;
}

/* Flow of a horseshoe of circulation 4π at (x, y, z); inverse: one over the squared distances of its two legs. The bound
 * part is Katz and Plotkin (2.68) in the form without cancellation, K = (Ra + Rb) / (Ra Rb (Ra Rb + ra·rb)); one division
 * serves all. */
static inline INLINED Wash
horseshoe_wash (const Horseshoe *vortex, double x, double y, double z, double inner_inverse, double outer_inverse, double tiny)
{
  const double ax = x - vortex->inner_x, ay = y - vortex->inner_y, az = z - vortex->inner_z;
  const double bx = x - vortex->outer_x, by = y - vortex->outer_y, bz = z - vortex->outer_z;
  const double a = sqrt (ax * ax + squared_distance (ay, az, tiny));
  const double b = sqrt (bx * bx + squared_distance (by, bz, tiny));
  const double product = a * b, least = least_opening * product;
  const double sum = product + ax * bx + ay * by + az * bz;
  const double opening = sum > least ? sum : least;
  const double all = 1 / (product * opening);
  const double bound = (a + b) * all;
  const double inner_leg = (1 + ax * (b * opening * all)) * inner_inverse;
  const double outer_leg = (1 + bx * (a * opening * all)) * outer_inverse;

  return (Wash) { .y = bound * (az * bx - ax * bz) + az * inner_leg - bz * outer_leg,
                  .z = bound * (ax * by - ay * bx) - ay * inner_leg + by * outer_leg };
}

/* One over the squared distance of a strip's leg from every control point, and from its mirror image. */
static inline INLINED void
invert_distances (const Mesh *mesh, double leg_y, double leg_z, double tiny, double *restrict own, double *restrict mirrored)
{
  for (size_t i = 0; i < mesh->panel_count; i++)
    {
      const double z = mesh->z[i] - leg_z;

      own[i] = 1 / squared_distance (mesh->y[i] - leg_y, z, tiny);
      mirrored[i] = 1 / squared_distance (mesh->y[i] + leg_y, z, tiny);
    }
}

/* One column: the image's flow at a point is that of the horseshoe at the point's own image, its y turned round. */
static inline INLINED void
fill_column (const Mesh *mesh, const Horseshoe *vortex, double *restrict const inverse[4],
             double *restrict symmetric, double *restrict antisymmetric)
{
  const double *restrict x = mesh->x, *restrict y = mesh->y, *restrict z = mesh->z;
  const double *restrict ny = mesh->ny, *restrict nz = mesh->nz;
  const double tiny = core * mesh->span * mesh->span;
  const double *restrict inner = inverse[0], *restrict inner_image = inverse[1];
  const double *restrict outer = inverse[2], *restrict outer_image = inverse[3];

  for (size_t i = 0; i < mesh->panel_count; i++)
    {
      const Wash own = horseshoe_wash (vortex, x[i], y[i], z[i], inner[i], outer[i], tiny);
      const Wash image = horseshoe_wash (vortex, x[i], -y[i], z[i], inner_image[i], outer_image[i], tiny);
      const double starboard = own.z * nz[i] + own.y * ny[i], port = image.z * nz[i] - image.y * ny[i];

      symmetric[i] = starboard + port;
      if (antisymmetric)
        antisymmetric[i] = starboard - port;
    }
}

static inline INLINED void
fill_columns (const Mesh *mesh, double inverse[], double symmetric[], double antisymmetric[])
{
  const size_t n = mesh->panel_count;
  const double tiny = core * mesh->span * mesh->span;
  double *const rows[4] = { inverse, inverse + n, inverse + 2 * n, inverse + 3 * n };

  for (size_t s = 0; s < mesh->strip_count; s++)
    {
      const MeshStrip *strip = &mesh->strips[s];

      invert_distances (mesh, strip->inner_y, strip->inner_z, tiny, rows[0], rows[1]);
      invert_distances (mesh, strip->outer_y, strip->outer_z, tiny, rows[2], rows[3]);
      for (size_t j = strip->panel; j < strip->panel + strip->panel_count; j++)
        {
          const Horseshoe vortex = horseshoe_of (mesh, strip, j);

          fill_column (mesh, &vortex, rows, symmetric + j * n, antisymmetric ? antisymmetric + j * n : NULL);
        }
    }
}

FOR_EACH_PROCESSOR void
influence_symmetric (const Mesh *mesh, double inverse[], double symmetric[])
{
  fill_columns (mesh, inverse, symmetric, NULL);
}

FOR_EACH_PROCESSOR void
influence_both (const Mesh *mesh, double inverse[], double symmetric[], double antisymmetric[])
{
  fill_columns (mesh, inverse, symmetric, antisymmetric);
}

/* Points stand at the innermost control station, for there the flow of a sheet cut into vortices is right; on the centre line,
 * an edge of strips, the sheet next to it would be missing. With an open gap the centre line is sound itself. */
static double
upwash_station (const Mesh *mesh)
{
  const MeshStrip *innermost = &mesh->strips[0];

  for (size_t s = 1; s < mesh->strip_count; s++)
    if (mesh->strips[s].inner_y < innermost->inner_y)
      innermost = &mesh->strips[s];
  return innermost->inner_y > 0 ? 0 : innermost->control_y;
}

FOR_EACH_PROCESSOR void
influence_upwash (const Mesh *mesh, const double circulation[], const double *restrict x, size_t count, double z,
                  double *restrict upwash)
{
  const double tiny = core * mesh->span * mesh->span, y = upwash_station (mesh);

  for (size_t s = 0; s < mesh->strip_count; s++)
    {
      const MeshStrip *strip = &mesh->strips[s];
      const double inner = 1 / squared_distance (y - strip->inner_y, z - strip->inner_z, tiny);
      const double outer = 1 / squared_distance (y - strip->outer_y, z - strip->outer_z, tiny);
      const double inner_image = 1 / squared_distance (y + strip->inner_y, z - strip->inner_z, tiny);
      const double outer_image = 1 / squared_distance (y + strip->outer_y, z - strip->outer_z, tiny);

      for (size_t j = strip->panel; j < strip->panel + strip->panel_count; j++)
        {
          const Horseshoe vortex = horseshoe_of (mesh, strip, j);

          for (size_t i = 0; i < count; i++)
            upwash[i] += circulation[j] * (horseshoe_wash (&vortex, x[i], y, z, inner, outer, tiny).z
                                           + horseshoe_wash (&vortex, x[i], -y, z, inner_image, outer_image, tiny).z);
        }
    }
}
