/* Reading a document of 10,000 nodes and parts, with its figures, against libxml2 building the tree of the same bytes; saving it durably
 * against libxml2 writing that tree and flushing it to disk. They take turns in one run, so that a busy machine or disk slows both. */
#include <fcntl.h>
#include <math.h>
#include <stdio.h>
#include <unistd.h>
#include <libxml/parser.h>
#include <libxml/tree.h>
#include "benchmark/timing.h"
#include "document/reader.h"
#include "document/writer.h"
#include "figures/figures.h"

enum { wing_nodes = 4996, parts_wanted = 5000, turns = 41 };

/* A wing whose tip is round in many short lines, so that its figures can be told. */
static Outline *
wing_outline (void)
{
  static Segment segments[wing_nodes - 1];
  Outline *made;

  for (int i = 1; i < wing_nodes; i++)
    {
      const double angle = M_PI * i / (wing_nodes - 1);

      segments[i - 1] = (Segment) { .kind = SEGMENT_LINE, .to = { 157.3 - 61.7 * cos (angle), i + 1 < wing_nodes ? 319.1 * sin (angle) : 0 } };
    }
  if (outline_new ((Point) { 95.6, 0 }, segments, wing_nodes - 1, NULL, &made))
    abort ();
  return made;
}

static Outline *
tail_outline (void)
{
  const Segment segments[] = { { .kind = SEGMENT_LINE, .to = { 403.1, 118.3 } }, { .kind = SEGMENT_LINE, .to = { 441.7, 118.3 } },
                               { .kind = SEGMENT_LINE, .to = { 454.9, 0 } } };
  Outline *made;

  if (outline_new ((Point) { 388.7, 0 }, segments, G_N_ELEMENTS (segments), NULL, &made))
    abort ();
  return made;
}

static Aeroplane *
large_aeroplane (void)
{
  static Piece *pieces[parts_wanted + 3];

  pieces[0] = &surface_new ("wing", ROLE_WING, wing_outline ())->piece;
  pieces[1] = &structure_new ("frame", "wing", 51.3)->piece;
  pieces[2] = &surface_new ("tail", ROLE_TAILPLANE, tail_outline ())->piece;
  for (int i = 0; i < parts_wanted; i++)
    {
      g_autofree char *id = g_strdup_printf ("part-%d", i + 1);
      Part *part = part_new (id, i % 2 ? "servo" : "other");

      part->mass = 0.01 + 0.001 * (i % 97);
      part->x = 40.3 + 0.017 * i;
      part->y = i % 89 - 44.1;
      part->z = 0.13 * (i % 31);
      pieces[i + 3] = &part->piece;
    }
  return aeroplane_from_pieces ((AeroplaneTraits) { .name = "Many Parts", .target = { 5, 15, 12 } }, pieces, G_N_ELEMENTS (pieces));
}

static double
time_reading (const char *text, size_t length)
{
  g_autoptr (GError) error = NULL;
  const double start = now ();
  Aeroplane *aeroplane = reader_read_data (text, length, "benchmark", NULL, &error);
  FiguresCache *cache = figures_cache_new ();
  Figures *figures = aeroplane ? figures_of (cache, aeroplane) : NULL;
  const double taken = now () - start;

  if (!aeroplane)
    g_error ("%s", error->message);
  if (!figures_are_sound (figures))
    g_error ("the figures are not sound");
  figures_unref (figures);
  figures_cache_free (cache);
  aeroplane_unref (aeroplane);
  return taken;
}

static double
time_tree (const char *text, size_t length)
{
  const double start = now ();
  xmlDoc *tree = xmlReadMemory (text, (int) length, "benchmark", NULL, XML_PARSE_NONET);
  const double taken = now () - start;

  if (!tree)
    abort ();
  xmlFreeDoc (tree);
  return taken;
}

static double
time_saving (const Aeroplane *aeroplane, const char *path)
{
  g_autoptr (GError) error = NULL;
  const double start = now ();

  if (!writer_save_file (aeroplane, path, &error))
    g_error ("%s", error->message);
  return now () - start;
}

static double
time_tree_saving (xmlDoc *tree, const char *path)
{
  const double start = now ();
  int file;

  if (xmlSaveFormatFile (path, tree, 1) < 0 || (file = open (path, O_RDONLY)) < 0 || fsync (file) || close (file))
    abort ();
  return now () - start;
}

static void
print_row (const char *what, double taken, double against, const double bound_and_aim[2])
{
  printf ("%s: %.2f ms; libxml2: %.2f ms; ratio %.2f (bound %g, aim %g)\n", what, 1e3 * taken, 1e3 * against, taken / against,
          bound_and_aim[0], bound_and_aim[1]);
}

static void
race (const Aeroplane *aeroplane, const char *folder)
{
  g_autofree char *ours = g_build_filename (folder, "ours.trammel", NULL), *theirs = g_build_filename (folder, "theirs.trammel", NULL);
  g_autofree char *backup = g_strconcat (ours, "~", NULL);
  double reading[turns], tree_reading[turns], saving[turns], tree_saving[turns];
  size_t length;
  g_autofree char *text = writer_text (aeroplane, &length);
  xmlDoc *tree = xmlReadMemory (text, (int) length, "benchmark", NULL, XML_PARSE_NONET);

  time_saving (aeroplane, ours);      /* from the second on there is a former file to keep, as in use */
  for (int i = 0; i < turns; i++)
    {
      reading[i] = time_reading (text, length);
      tree_reading[i] = time_tree (text, length);
      saving[i] = time_saving (aeroplane, ours);
      tree_saving[i] = time_tree_saving (tree, theirs);
    }
  print_row ("reading 10,000 nodes and parts, with figures", median (reading, turns), median (tree_reading, turns), (double[]) { 5, 3 });
  print_row ("saving 10,000 nodes and parts", median (saving, turns), median (tree_saving, turns), (double[]) { 3, 2 });
  xmlFreeDoc (tree);
  unlink (ours);
  unlink (theirs);
  unlink (backup);
}

int
main (int argc, char **argv)
{
  g_autoptr (Aeroplane) aeroplane = large_aeroplane ();
  g_autofree char *folder = g_strdup_printf ("%s/benchmark-document-XXXXXX", argc > 1 ? argv[1] : ".");

  if (!g_mkdtemp (folder))
    g_error ("%s cannot be made", folder);
  race (aeroplane, folder);
  xmlCleanupParser ();
  rmdir (folder);
  return 0;
}
