/* All figures' aerodynamics after a node moved, against factoring and solving every system that needs it by LAPACK alone.
 * The two take turns in one run, so that a busy machine slows both; the medians' ratio is what counts. */
#include <stdio.h>
#include "benchmark/lapack-alone.h"
#include "benchmark/racer.h"

enum { pairs = 400, most_systems = 3 };
static const double ratio_bound = 2.5, ratio_aim = 1.8;

/* A node moves: the wing's outline is a new one each time, as in the window. */
static double
time_lattice (Lattice *lattice, int turn)
{
  Outline *outlines[2], *moved;
  LatticeSurface surfaces[2];
  LatticeShare shares[2];
  LatticeResult result;
  double start, taken;

  racer_outlines (outlines);
  if (outline_mapped (outlines[0], (Point) { 1 + 1e-4 * (turn % 10), 1 }, (Point) { 0 }, &moved))
    abort ();
  outline_unref (outlines[0]);
  outlines[0] = moved;
  racer_surfaces (outlines, surfaces);
  start = now ();
  if (lattice_solve (lattice, surfaces, 2, lattice_default_options (), LATTICE_ALONE, racer_area, racer_span, shares, &result))
    abort ();
  taken = now () - start;
  outline_unref (outlines[0]);
  outline_unref (outlines[1]);
  return taken;
}

int
main (void)
{
  Lattice *lattice = lattice_new ();
  System systems[most_systems] = { system_new (20 * 6 + 12 * 4), system_new (20 * 6), system_new (12 * 4) };
  double lapack[pairs], solve[pairs], ratio;

  for (int i = 0; i < pairs; i++)
    {
      lapack[i] = time_lapack (systems, most_systems);
      solve[i] = time_lattice (lattice, i);
    }
  ratio = median (solve, pairs) / median (lapack, pairs);
  printf ("lattice 20x6 + 12x4, together and each alone: %.3f ms; LAPACK alone: %.3f ms; ratio %.2f (bound %.1f, aim %.1f)\n",
          1e3 * median (solve, pairs), 1e3 * median (lapack, pairs), ratio, ratio_bound, ratio_aim);
  for (int i = 0; i < most_systems; i++)
    system_clear (&systems[i]);
  lattice_free (lattice);
  return 0;
}
