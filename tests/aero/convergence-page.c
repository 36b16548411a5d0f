#include "convergence-page.h"

#include <stdio.h>

enum { most_path = 4096 };

static void
write_head (FILE *file)
{
  fputs ("# How near the lattice is to its own limit\n\n"
         "The vortex lattice in `src/aero/` replaces each lifting surface by panels. More panels cost time and\n"
         "come nearer to one answer, the limit. This page tells how near the panels of every day come, and why\n"
         "they are as many and stand as they do. It is written by a program; after a change of `src/aero/` write\n"
         "it again:\n\n"
         "    ninja -C build && build/tests/aero/aero-convergence tests/aero\n\n"
         "Without a folder the program only prints its table. The suite `aero lattice-limits` runs the same wings\n"
         "and fails where the promise below is broken; wings and companies are one table, `convergence-wings.c`.\n\n", file);
}

static void
write_method (FILE *file, double doubt)
{
  fprintf (file, "## What was done\n\n"
           "%zu wings fly in %zu companies each: alone, with tails of a quarter to a half of their span, one of them\n"
           "in the plane of the wing's wake, with a foreplane, and as a biplane. Each case is solved with six\n"
           "numbers of panels, and its limit is told from two lattices of 36 by 10 and 72 by 20 panels, the error\n"
           "that is in proportion to the panels' size taken out (Richardson's extrapolation). The limit of each case\n"
           "was told once more from 28 by 8 and 56 by 16; the two differ by no more than %.2f %% of MAC, which is\n"
           "how well the limit is known. This says how well the equations are solved, not how well they describe\n"
           "air; for that `test-lattice.c` compares with published lifting-surface theory.\n\n"
           "Errors are those of the neutral point in percent of the wing's mean aerodynamic chord (MAC). Panels are\n"
           "counted on a half-wing, along the span by along the chord; the second surface gets three fifths of the\n"
           "strips and two thirds of the panels along the chord (12 by 4 beside 20 by 6), and all surfaces have the\n"
           "edges of their strips at the same stations.\n\n",
           study_wing_count, study_company_count, doubt);
}

static void
write_choice (FILE *file, const StudyFindings *findings)
{
  fprintf (file, "## What was chosen, and why\n\n"
           "**20 by 6 panels on a half-wing, 12 by 4 on a tail.** They leave at most %.2f %% on wings alone and\n"
           "%.2f %% with a tail, up to 15° of sweep. What is promised is 0.15 %%: on a MAC of 120 mm less than 0.2 mm,\n"
           "no more than a sharp pencil's line. 10 by 4 would take %.2g of the time and leave up to %.2f %% with a\n"
           "tail; 28 by 8 takes %.2g times as long for %.2f %%.\n\n",
           study_greatest (findings, STUDY_ALONE, study_working, false), study_greatest (findings, STUDY_TAILED, study_working, false),
           findings->cost[1], study_greatest (findings, STUDY_TAILED, 1, false), findings->cost[4],
           study_greatest (findings, STUDY_TAILED, 4, false));
  fprintf (file, "**Strips that narrow towards tips like a cosine**, control points midway in its angle, not strips of one\n"
           "width: with as many panels, even strips leave up to %.2f %% alone and %.2f %% with a tail, and more of\n"
           "them help slowly.\n\n",
           study_greatest (findings, STUDY_ALONE, study_working, true), study_greatest (findings, STUDY_TAILED, study_working, true));
}

static void
write_exceptions (FILE *file, const StudyFindings *findings)
{
  fprintf (file, "**0.4 %% is promised beyond that**: past 15° of sweep (at most %.2f %% here, up to 45°), and for a\n"
           "foreplane or a biplane (%.2f %%).\n", study_greatest (findings, STUDY_SWEPT, study_working, false),
           study_greatest (findings, STUDY_PAIRED, study_working, false));
  fputs ("Sweep leaves a kink at the centre line, whose error falls only in proportion to the panels' size; from\n"
         "15° to 25° of sweep the lattice goes over to an answer extrapolated from two numbers of panels, the\n"
         "second half the first, which costs about an eighth more time.\n\n", file);
  fputs ("Two surfaces over each other nearer than three quarters of the shorter chord would see each other's\n"
         "single vortices: 0.3 % at a quarter of the chord, 0.8 % at a fourteenth. They get up to 2⅔ times the\n"
         "panels along the chord, which leaves 0.15 % down to a tenth and 0.25 % to a twentieth of the chord; the\n"
         "suite `aero lattice-company` holds it.\n\n", file);
}

static void
write_plot (FILE *file, const char *name, const char *caption)
{
  fprintf (file, "![%s](convergence/%s.svg)\n\n", caption, name);
}

static void
write_plots (FILE *file)
{
  fputs ("## Plots\n\n", file);
  write_plot (file, "promise", "Error of the neutral point at 20 by 6 panels, a row for each wing and a mark for each company");
  write_plot (file, "greatest", "The greatest error of each group of wings against the number of panels");
  write_plot (file, "spacing", "Error with cosine and with even spacing against the number of panels");
  fputs ("Where a line dips in the two plots of single wings, the error changes its sign there.\n\n", file);
  write_plot (file, "alone", "Error of five wings alone against the number of panels");
  write_plot (file, "tailed", "Error of the same wings with a tail against the number of panels");
}

static void
write_costs (FILE *file, const StudyFindings *findings)
{
  fputs ("## Time\n\n"
         "Time of one solve of a tapered wing with its tail, in parts of that with 20 by 6 panels, and the\n"
         "greatest errors up to 15° of sweep in percent of MAC. From one\n"
         "machine to another the times differ by a third.\n\n"
         "| panels | time | alone | with a tail |\n"
         "|---|---:|---:|---:|\n", file);
  for (int i = 0; i < study_steps; i++)
    fprintf (file, "| %d by %d | %.2g | %.3f | %.3f |\n", study_panels[i].spanwise, study_panels[i].chordwise, findings->cost[i],
             study_greatest (findings, STUDY_ALONE, i, false), study_greatest (findings, STUDY_TAILED, i, false));
  fputs ("\nThe two numbers varied one by one: neither more strips nor more panels along the chord help much without\n"
         "the other.\n\n"
         "| strips | along the chord | time | alone | with a tail |\n"
         "|---:|---:|---:|---:|---:|\n", file);
  for (int i = 0; i < study_grid; i++)
    fprintf (file, "| %d | %d | %.2g | %.3f | %.3f |\n", findings->grid[i].options.spanwise, findings->grid[i].options.chordwise,
             findings->grid[i].cost, findings->grid[i].alone, findings->grid[i].tailed);
  fputc ('\n', file);
}

static void
write_cases (FILE *file, const StudyFindings *findings)
{
  fputs ("## Every case\n\n"
         "At 20 by 6 panels. The limit: the neutral point behind the leading edge of MAC, in percent of it, and\n"
         "the lift slope per radian on the wing's area. Errors: aft and more lift positive, in percent of MAC and\n"
         "of the slope.\n\n"
         "| wing | company | limit, % MAC | slope | error | of the slope | even strips |\n"
         "|---|---|---:|---:|---:|---:|---:|\n", file);
  for (size_t w = 0; w < study_wing_count; w++)
    for (size_t c = 0; c < study_company_count; c++)
      {
        const StudyRow *row = study_row (findings, w, c);

        fprintf (file, "| %s | %s | %.2f | %.4f | %+.3f | %+.3f | %+.3f |\n", study_wings[w].name, study_companies[c].name,
                 row->limit_percent, row->limit_slope, row->neutral[study_working], row->slope[study_working],
                 row->even[study_working]);
      }
}

static double
greatest_doubt (const StudyFindings *findings)
{
  double most = 0;

  for (size_t i = 0; i < study_wing_count * study_company_count; i++)
    most = findings->rows[i].doubt > most ? findings->rows[i].doubt : -findings->rows[i].doubt > most ? -findings->rows[i].doubt : most;
  return most;
}

bool
page_write (const StudyFindings *findings, const char *folder)
{
  char path[most_path];
  FILE *file;

  snprintf (path, sizeof path, "%s/convergence.md", folder);
  if (!(file = fopen (path, "w")))
    return false;
  write_head (file);
  write_method (file, greatest_doubt (findings));
  write_choice (file, findings);
  write_exceptions (file, findings);
  write_plots (file);
  write_costs (file, findings);
  write_cases (file, findings);
  return !ferror (file) & !fclose (file);
}
