/* How far the lattice is from its own limit, panel by panel: wings alone and with a tail. Run by hand; prints a table in percent,
 * neutral point of the wing's MAC, lift slope of itself. The limit is extrapolated from two fine lattices of ratio two, the error
 * that is left being of the first order (sweep's kinks). */
#include <stdio.h>
#include <stdlib.h>
#include "aero/lattice.h"
#include "geometry/planform.h"
#include "geometry/shapes.h"

enum { wing_stations = 3 };

/* A wing of up to three stations, or an ellipse. */
typedef struct {
  const char *name;
  int stations;                 /* 0: an ellipse with the semi-axes ahead and behind in chord[0] and chord[1] */
  double station[wing_stations], leading_x[wing_stations], chord[wing_stations];
  double dihedral;
} Wing;

static const Wing wings[] = {
  { .name = "straight 120",       .stations = 2, .station = { 0, 400 }, .chord = { 120, 120 } },
  { .name = "tapered 150-90",     .stations = 2, .station = { 0, 400 }, .leading_x = { 0, 15 }, .chord = { 150, 90 } },
  { .name = "straight edge, 160-80", .stations = 2, .station = { 0, 400 }, .chord = { 160, 80 } },
  { .name = "parallel, cut tips", .stations = 3, .station = { 0, 240, 400 }, .leading_x = { 0, 0, 32 }, .chord = { 144, 144, 72 } },
  { .name = "cranked",            .stations = 3, .station = { 0, 170, 400 }, .leading_x = { 0, 7, 50 }, .chord = { 150, 136, 75 } },
  { .name = "elliptical 45 + 85", .station = { 0, 320 }, .chord = { 45, 85 }, .dihedral = 0.07 },
  { .name = "elliptical 30 + 90", .station = { 0, 320 }, .chord = { 30, 90 } },
  { .name = "swept 15, tapered",  .stations = 2, .station = { 0, 400 }, .leading_x = { 0, 107 }, .chord = { 160, 96 } },
  { .name = "swept -10, tapered", .stations = 2, .station = { 0, 400 }, .leading_x = { 0, -50 }, .chord = { 160, 90 } },
  { .name = "outer wing swept 23", .stations = 3, .station = { 0, 130, 400 }, .leading_x = { 0, 0, 115 }, .chord = { 150, 150, 90 } },
  { .name = "swept 19, tapered",  .stations = 2, .station = { 0, 400 }, .leading_x = { 0, 137 }, .chord = { 160, 96 } },
  { .name = "swept 28, tapered",  .stations = 2, .station = { 0, 400 }, .leading_x = { 0, 213 }, .chord = { 160, 96 } },
  { .name = "swept 45, parallel", .stations = 2, .station = { 0, 400 }, .leading_x = { 0, 400 }, .chord = { 130, 130 } },
};
/* The tail's span in parts of the wing's; 0 for none. */
static const double tails[] = { 0, 0.25, 0.36, 0.5 };
static const LatticeOptions panels[] = { { .spanwise = 10, .chordwise = 4 }, { .spanwise = 20, .chordwise = 6 },
                                         { .spanwise = 36, .chordwise = 10 } };
enum { panel_count = sizeof panels / sizeof *panels };

static Outline *
wing_outline (const Wing *wing)
{
  Outline *made = NULL;
  const CoreStatus status = wing->stations
    ? shape_taper (wing->station, wing->leading_x, wing->chord, (size_t) wing->stations, &made)
    : shape_ellipse (0, wing->station[1], wing->chord[0], wing->chord[1], &made);

  if (status)
    abort ();
  return made;
}

/* Two thirds of the wing in chord, four MAC behind it, swept like it. */
static Outline *
tail_outline (const Wing *wing, double part, const Planform *planform)
{
  const int last = wing->stations ? wing->stations - 1 : 1;
  const double semispan = part * wing->station[last];
  const double sweep = wing->stations ? wing->leading_x[last] / wing->station[last] : 0;
  const double x = planform->mac_leading_edge_x + 4 * planform->mac;
  Outline *made = NULL;

  if (shape_taper ((double[]) { 0, semispan }, (double[]) { x, x + sweep * semispan },
                   (double[]) { 0.62 * planform->mac, 0.5 * planform->mac }, 2, &made))
    abort ();
  return made;
}

static LatticeResult
solve (Lattice *lattice, const LatticeSurface surfaces[], size_t count, LatticeOptions options)
{
  LatticeShare shares[2];
  LatticeResult result;

  if (lattice_solve (lattice, surfaces, count, options, LATTICE_NEUTRAL_POINT, 1, 1, shares, &result))
    abort ();
  return result;
}

static LatticeResult
limit (Lattice *lattice, const LatticeSurface surfaces[], size_t count)
{
  const LatticeResult fine = solve (lattice, surfaces, count, (LatticeOptions) { .spanwise = 36, .chordwise = 10 });
  LatticeResult finest = solve (lattice, surfaces, count, (LatticeOptions) { .spanwise = 72, .chordwise = 20 });

  finest.lift_slope += finest.lift_slope - fine.lift_slope;
  finest.neutral_point_x += finest.neutral_point_x - fine.neutral_point_x;
  return finest;
}

static void
print_case (Lattice *lattice, const Wing *wing, double tail)
{
  Outline *outlines[2] = { wing_outline (wing), NULL };
  const size_t count = tail > 0 ? 2 : 1;
  LatticeSurface surfaces[2] = { { .outline = outlines[0], .dihedral = wing->dihedral, .pressure_ratio = 1 } };
  LatticeResult exact;
  Planform planform;

  if (planform_measure (outlines[0], PLANFORM_CARRIED, &planform))
    abort ();
  if (count == 2)
    surfaces[1] = (LatticeSurface) { .outline = outlines[1] = tail_outline (wing, tail, &planform), .z = 0.1 * planform.mac,
                                     .pressure_ratio = 0.9 };
  exact = limit (lattice, surfaces, count);
  printf ("%-22s %4.2f  %6.2f %7.4f", wing->name, tail,
          100 * (exact.neutral_point_x - planform.mac_leading_edge_x) / planform.mac, exact.lift_slope / planform.area);
  for (int i = 0; i < panel_count; i++)
    {
      const LatticeResult result = solve (lattice, surfaces, count, panels[i]);

      printf ("   %+7.3f %+7.3f", 100 * (result.neutral_point_x - exact.neutral_point_x) / planform.mac,
              100 * (result.lift_slope / exact.lift_slope - 1));
    }
  printf ("\n");
  outline_unref (outlines[0]);
  outline_unref (outlines[1]);
}

int
main (void)
{
  Lattice *lattice = lattice_new ();

  printf ("%-22s tail     limit            ", "wing");
  for (int i = 0; i < panel_count; i++)
    printf ("   %2dx%-2d           ", panels[i].spanwise, panels[i].chordwise);
  printf ("\n%-22s       %% MAC   slope", "");
  for (int i = 0; i < panel_count; i++)
    printf ("    neutral   slope");
  printf ("\n");
  for (size_t w = 0; w < sizeof wings / sizeof *wings; w++)
    for (size_t t = 0; t < sizeof tails / sizeof *tails; t++)
      print_case (lattice, &wings[w], tails[t]);
  lattice_free (lattice);
  return 0;
}
