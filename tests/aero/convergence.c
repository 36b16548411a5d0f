/* How far the lattice is from its own limit: wings alone and in company, by panel numbers and by the spacing of strips. Run by hand:
 * prints a table in percent, the neutral point of the wing's MAC, the lift slope of itself; given a folder it also writes the page
 * and its plots there. The limit is extrapolated from two fine lattices of ratio two, the error that is left being of the first
 * order (sweep's kinks). */
#include <math.h>
#include <stdio.h>
#include <stdlib.h>
#include <time.h>
#include "convergence-page.h"
#include "convergence-plots.h"

const LatticeOptions study_panels[study_steps] = {
  { .spanwise = 6, .chordwise = 2 },  { .spanwise = 10, .chordwise = 4 }, { .spanwise = 14, .chordwise = 4 },
  { .spanwise = 20, .chordwise = 6 }, { .spanwise = 28, .chordwise = 8 }, { .spanwise = 36, .chordwise = 10 },
};
static const int grid_spanwise[] = { 10, 14, 20, 28 }, grid_chordwise[] = { 4, 6, 8 };

const StudyRow *
study_row (const StudyFindings *self, size_t wing, size_t company)
{
  return &self->rows[wing * study_company_count + company];
}

double
study_greatest (const StudyFindings *self, StudyGroup group, int step, bool is_even)
{
  double most = 0;

  for (size_t w = 0; w < study_wing_count; w++)
    for (size_t c = 0; c < study_company_count; c++)
      if (study_group (&study_wings[w], &study_companies[c]) == group)
        {
          const StudyRow *row = study_row (self, w, c);

          most = fmax (most, fabs (is_even ? row->even[step] : row->neutral[step]));
        }
  return most;
}

static StudyRow
row_of (Lattice *lattice, const StudyCase *flown)
{
  const LatticeResult limit = study_limit (lattice, flown);
  const LatticeResult coarser = study_limit_from (lattice, flown, (LatticeOptions) { .spanwise = 28, .chordwise = 8 });
  StudyRow row = { .limit_percent = 100 * (limit.neutral_point_x - flown->planform.mac_leading_edge_x) / flown->planform.mac,
                   .limit_slope = limit.lift_slope, .doubt = study_neutral_error (flown, &coarser, &limit) };

  for (int i = 0; i < study_steps; i++)
    {
      LatticeOptions options = study_panels[i];
      const LatticeResult cosine = study_solve (lattice, flown, options);

      options.spacing = LATTICE_EVEN;
      const LatticeResult even = study_solve (lattice, flown, options);

      row.neutral[i] = study_neutral_error (flown, &cosine, &limit);
      row.slope[i] = 100 * (cosine.lift_slope / limit.lift_slope - 1);
      row.even[i] = study_neutral_error (flown, &even, &limit);
    }
  return row;
}

static void
print_head (void)
{
  printf ("%-28s %-28s limit           doubt ", "wing", "company");
  for (int i = 0; i < study_steps; i++)
    printf (" %2dx%-2d           ", study_panels[i].spanwise, study_panels[i].chordwise);
  printf ("\n%-57s %% MAC   slope         ", "");
  for (int i = 0; i < study_steps; i++)
    printf ("neutral   slope  ");
  printf ("\n");
}

static void
print_row (const StudyCase *flown, const StudyRow *row)
{
  printf ("%-28s %-28s %6.2f %7.4f %+7.3f ", flown->wing->name, flown->company->name, row->limit_percent, row->limit_slope, row->doubt);
  for (int i = 0; i < study_steps; i++)
    printf (" %+7.3f %+7.3f ", row->neutral[i], row->slope[i]);
  printf ("\n");
}

static void
fill_rows (Lattice *lattice, StudyRow rows[])
{
  print_head ();
  for (size_t w = 0; w < study_wing_count; w++)
    for (size_t c = 0; c < study_company_count; c++)
      {
        StudyCase flown = study_case_of (&study_wings[w], &study_companies[c]);

        *rows = row_of (lattice, &flown);
        print_row (&flown, rows++);
        study_case_clear (&flown);
      }
}

/* The shortest of many solves of one wing with its tail, in seconds. */
static double
time_of (Lattice *lattice, LatticeOptions options)
{
  StudyCase flown = study_case_of (&study_wings[3], &study_companies[2]);
  double least = INFINITY;

  for (int i = 0; i < 40; i++)
    {
      struct timespec before, after;

      timespec_get (&before, TIME_UTC);
      study_solve (lattice, &flown, options);
      timespec_get (&after, TIME_UTC);
      least = fmin (least, (double) (after.tv_sec - before.tv_sec) + 1e-9 * (double) (after.tv_nsec - before.tv_nsec));
    }
  study_case_clear (&flown);
  return least;
}

/* The limit stands in the rows. */
static double
error_with (Lattice *lattice, size_t wing, size_t company, LatticeOptions options, const StudyRow *row)
{
  StudyCase flown = study_case_of (&study_wings[wing], &study_companies[company]);
  const LatticeResult result = study_solve (lattice, &flown, options);
  const double percent = 100 * (result.neutral_point_x - flown.planform.mac_leading_edge_x) / flown.planform.mac;

  study_case_clear (&flown);
  return fabs (percent - row->limit_percent);
}

static StudyCell
cell_of (Lattice *lattice, const StudyFindings *findings, LatticeOptions options)
{
  StudyCell cell = { .options = options, .cost = time_of (lattice, options) / time_of (lattice, study_panels[study_working]) };

  for (size_t w = 0; w < study_wing_count; w++)
    for (size_t c = 0; c < study_company_count; c++)
      {
        const StudyGroup group = study_group (&study_wings[w], &study_companies[c]);
        double *greatest = group == STUDY_ALONE ? &cell.alone : group == STUDY_TAILED ? &cell.tailed : NULL;

        if (greatest)
          *greatest = fmax (*greatest, error_with (lattice, w, c, options, study_row (findings, w, c)));
      }
  return cell;
}

static void
fill_costs (Lattice *lattice, StudyFindings *findings)
{
  const double working = time_of (lattice, study_panels[study_working]);

  for (int i = 0; i < study_steps; i++)
    findings->cost[i] = time_of (lattice, study_panels[i]) / working;
  for (int i = 0; i < study_grid; i++)
    findings->grid[i] = cell_of (lattice, findings, (LatticeOptions) { .spanwise = grid_spanwise[i / 3],
                                                                       .chordwise = grid_chordwise[i % 3] });
}

int
main (int argc, char *argv[])
{
  StudyFindings findings = { .rows = calloc (study_wing_count * study_company_count, sizeof (StudyRow)) };
  Lattice *lattice = lattice_new ();
  bool good = true;

  if (!findings.rows || !lattice)
    abort ();
  fill_rows (lattice, findings.rows);
  if (argc > 1)
    {
      fill_costs (lattice, &findings);
      if (!(good = plots_write (&findings, argv[1]) && page_write (&findings, argv[1])))
        fprintf (stderr, "The page could not be written into %s.\n", argv[1]);
    }
  lattice_free (lattice);
  free (findings.rows);
  return !good;
}
