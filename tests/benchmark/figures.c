/* All figures after a node moved, and after one of thirty parts moved, against factoring and solving every system that the aeroplane needs
 * (all surfaces together, the same rolling, each by itself) by LAPACK alone. The three take turns in one run, so that a busy machine slows
 * all; the medians' ratios are what counts. */
#include <stdio.h>
#include "benchmark/lapack-alone.h"
#include "document/changes.h"
#include "document/reader.h"
#include "figures/figures.h"

enum { turns = 400, systems_needed = 4, parts_wanted = 30 };

/* The example with as many parts as wanted. */
static Aeroplane *
racer_with_parts (const char *path)
{
  g_autoptr (GError) error = NULL;
  Aeroplane *made = reader_read_file (path, NULL, &error);

  if (!made)
    g_error ("%s", error->message);
  for (int i = 0; aeroplane_count (made, PIECE_PART) < parts_wanted; i++)
    {
      g_autofree char *id = g_strdup_printf ("more-%d", i);
      Part *part = part_new (id, "other");
      Aeroplane *next;

      part->mass = 0.1;
      part->x = 100 + 3 * i;
      next = aeroplane_with_added (made, &part->piece);
      aeroplane_unref (made);
      made = next;
    }
  return made;
}

/* The change itself is outside the measured time; what came before is what the cache remembers. */
static double
time_figures (FiguresCache *cache, const Aeroplane *before, const Aeroplane *after)
{
  Figures *first = figures_of (cache, before), *second;
  double start, taken;

  start = now ();
  second = figures_of (cache, after);
  taken = now () - start;
  figures_unref (first);
  figures_unref (second);
  return taken;
}

static Aeroplane *
with_node_moved (const Aeroplane *racer, int turn)
{
  const Surface *wing = aeroplane_surface_by_id (racer, "wing");
  Outline *moved;

  if (outline_mapped (wing->outline, (Point) { 1 + 1e-4 * (1 + turn % 10), 1 }, (Point) { 0 }, &moved))
    abort ();
  return change_surface_outline (racer, "wing", moved);
}

static void
print_row (const char *what, double taken, double against, const double bound_and_aim[2])
{
  printf ("%s: %.4f ms; LAPACK alone: %.3f ms; ratio %.4f (bound %g, aim %g)\n", what, 1e3 * taken, 1e3 * against, taken / against,
          bound_and_aim[0], bound_and_aim[1]);
}

int
main (int argc, char **argv)
{
  FiguresCache *cache = figures_cache_new ();
  g_autoptr (Aeroplane) racer = racer_with_parts (argv[1]);
  System systems[systems_needed] = { system_new (20 * 6 + 12 * 4), system_new (20 * 6 + 12 * 4), system_new (20 * 6), system_new (12 * 4) };
  double lapack[turns], node[turns], part[turns];

  for (int i = 0; i < turns; i++)
    {
      g_autoptr (Aeroplane) bent = with_node_moved (racer, i);
      g_autoptr (Aeroplane) shifted = change_part_place (racer, "battery", 100 + 0.1 * (i % 100), 0, 2);

      lapack[i] = time_lapack (systems, systems_needed);
      node[i] = time_figures (cache, racer, bent);
      part[i] = time_figures (cache, racer, shifted);
    }
  const double against = median (lapack, turns);
  print_row ("all figures after a node moved, 30 parts", median (node, turns), against, (double[]) { 2.5, 1.8 });
  print_row ("all figures after a part moved, 30 parts", median (part, turns), against, (double[]) { 0.05, 0.01 });
  for (int i = 0; i < systems_needed; i++)
    system_clear (&systems[i]);
  figures_cache_free (cache);
  return argc > 1 ? 0 : 2;
}
