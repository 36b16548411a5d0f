#include "convergence-wings.h"

#include <math.h>
#include <stdlib.h>
#include "geometry/shapes.h"

const StudyWing study_wings[] = {
  { .name = "straight", .corner_count = 4, .corners = { { 0, 0 }, { 0, 400 }, { 120, 400 }, { 120, 0 } } },
  { .name = "straight, aspect ratio 3", .corner_count = 4, .corners = { { 0, 0 }, { 0, 225 }, { 150, 225 }, { 150, 0 } } },
  { .name = "straight, aspect ratio 12", .corner_count = 4, .corners = { { 0, 0 }, { 0, 480 }, { 80, 480 }, { 80, 0 } } },
  { .name = "tapered 150 to 90", .corner_count = 4, .corners = { { 0, 0 }, { 15, 400 }, { 105, 400 }, { 150, 0 } } },
  { .name = "straight leading edge", .corner_count = 4, .corners = { { 0, 0 }, { 0, 400 }, { 80, 400 }, { 160, 0 } }, .sweep_deg = -3 },
  { .name = "straight trailing edge", .corner_count = 4, .corners = { { 0, 0 }, { 80, 400 }, { 160, 400 }, { 160, 0 } },
    .sweep_deg = 9 },
  { .name = "parallel, tapered tips", .corner_count = 6,
    .corners = { { 0, 0 }, { 0, 240 }, { 32, 400 }, { 104, 400 }, { 144, 240 }, { 144, 0 } }, .sweep_deg = 5 },
  { .name = "cranked", .corner_count = 6,
    .corners = { { 0, 0 }, { 7, 170 }, { 50, 400 }, { 125, 400 }, { 143, 170 }, { 150, 0 } }, .sweep_deg = 7 },
  { .name = "steep dihedral, 20°", .corner_count = 4, .corners = { { 0, 0 }, { 15, 400 }, { 105, 400 }, { 150, 0 } },
    .dihedral = 0.349 },
  { .name = "tips bent up by 30°", .corner_count = 4, .corners = { { 0, 0 }, { 10, 400 }, { 110, 400 }, { 140, 0 } },
    .dihedral = 0.05, .bend = { .station = 250, .angle = 0.524 } },
  { .name = "elliptical 45 + 85", .semispan = 320, .ahead = 45, .behind = 85, .dihedral = 0.07 },
  { .name = "elliptical 30 + 90", .semispan = 320, .ahead = 30, .behind = 90 },
  { .name = "square notch at the root", .corner_count = 6,
    .corners = { { 0, 0 }, { 12, 400 }, { 108, 400 }, { 138, 45 }, { 95, 45 }, { 95, 0 } } },
  { .name = "slanting notch at the root", .corner_count = 5,
    .corners = { { 0, 0 }, { 12, 400 }, { 108, 400 }, { 136, 70 }, { 80, 0 } } },
  { .name = "trapezium notch, swept 8", .corner_count = 6,
    .corners = { { 0, 0 }, { 70, 400 }, { 160, 400 }, { 152, 80 }, { 100, 40 }, { 100, 0 } }, .sweep_deg = 8 },
  { .name = "swept 15, tapered", .corner_count = 4, .corners = { { 0, 0 }, { 123, 400 }, { 219, 400 }, { 160, 0 } },
    .sweep_deg = 15 },
  { .name = "swept forward 10, tapered", .corner_count = 4,
    .corners = { { 0, 0 }, { -53, 400 }, { 37, 400 }, { 160, 0 } }, .sweep_deg = -10 },
  { .name = "outer wing swept 20", .corner_count = 6,
    .corners = { { 0, 0 }, { 0, 130 }, { 115, 400 }, { 205, 400 }, { 150, 130 }, { 150, 0 } }, .sweep_deg = 20 },
  { .name = "swept 19, tapered", .corner_count = 4, .corners = { { 0, 0 }, { 154, 400 }, { 250, 400 }, { 160, 0 } },
    .sweep_deg = 19 },
  { .name = "swept 28, tapered", .corner_count = 4, .corners = { { 0, 0 }, { 229, 400 }, { 325, 400 }, { 160, 0 } },
    .sweep_deg = 28 },
  { .name = "swept 45, parallel", .corner_count = 4, .corners = { { 0, 0 }, { 400, 400 }, { 530, 400 }, { 130, 0 } },
    .sweep_deg = 45 },
};
const size_t study_wing_count = sizeof study_wings / sizeof *study_wings;

const StudyCompany study_companies[] = {
  { .name = "alone" },
  { .name = "small tail", .arm = 4, .height = 0.1, .span = 0.25, .pressure_ratio = 0.9 },
  { .name = "tail", .arm = 4, .height = 0.1, .span = 0.36, .pressure_ratio = 0.9 },
  { .name = "wide tail", .arm = 4, .height = 0.1, .span = 0.5, .pressure_ratio = 0.9 },
  { .name = "low tail in the wake's plane", .arm = 3.5, .span = 0.36, .pressure_ratio = 0.9 },
  { .name = "foreplane", .arm = -2.8, .height = 0.15, .span = 0.38, .pressure_ratio = 1 },
  { .name = "biplane", .arm = 0.3, .height = -1, .span = 1, .pressure_ratio = 1 },
};
const size_t study_company_count = sizeof study_companies / sizeof *study_companies;

static Outline *
wing_outline (const StudyWing *wing)
{
  Segment sides[study_room];
  Outline *made = NULL;
  CoreStatus status;

  for (size_t i = 1; i < wing->corner_count; i++)
    sides[i - 1] = segment_line (wing->corners[i]);
  status = wing->corner_count ? outline_new (wing->corners[0], sides, wing->corner_count - 1, NULL, &made)
                              : shape_ellipse (0, wing->semispan, wing->ahead, wing->behind, &made);
  if (status)
    abort ();
  return made;
}

/* The wing again, or a tapered surface of two thirds of its chord, swept like it. */
static Outline *
company_outline (const StudyCase *flown)
{
  const StudyCompany *company = flown->company;
  const Planform *planform = &flown->planform;
  const double semispan = company->span * planform->span / 2, swept = semispan * tan (flown->wing->sweep_deg * M_PI / 180);
  const double x = planform->mac_leading_edge_x + company->arm * planform->mac;
  Outline *made = NULL;
  CoreStatus status;

  if (company->span == 1)
    status = outline_mapped (flown->outlines[0], (Point) { 1, 1 }, (Point) { company->arm * planform->mac, 0 }, &made);
  else
    status = shape_taper ((double[]) { 0, semispan }, (double[]) { x, x + swept },
                          (double[]) { 0.62 * planform->mac, 0.5 * planform->mac }, 2, &made);
  if (status)
    abort ();
  return made;
}

StudyCase
study_case_of (const StudyWing *wing, const StudyCompany *company)
{
  StudyCase made = { .wing = wing, .company = company, .outlines = { wing_outline (wing) }, .count = 1 };

  if (planform_measure (made.outlines[0], PLANFORM_CARRIED, &made.planform))
    abort ();
  made.surfaces[0] = (LatticeSurface) { .outline = made.outlines[0], .dihedral = wing->dihedral, .bends = &wing->bend,
                                        .bend_count = wing->bend.station > 0, .pressure_ratio = 1 };
  if (!(company->span > 0))
    return made;
  made.outlines[1] = company_outline (&made);
  made.surfaces[1] = (LatticeSurface) { .outline = made.outlines[1], .z = company->height * made.planform.mac,
                                        .pressure_ratio = company->pressure_ratio };
  if (company->span == 1)
    {
      made.surfaces[1].dihedral = wing->dihedral;
      made.surfaces[1].bends = made.surfaces[0].bends;
      made.surfaces[1].bend_count = made.surfaces[0].bend_count;
    }
  made.count = 2;
  return made;
}

void
study_case_clear (StudyCase *self)
{
  outline_unref (self->outlines[0]);
  outline_unref (self->outlines[1]);
}

LatticeResult
study_solve (Lattice *lattice, const StudyCase *flown, LatticeOptions options)
{
  LatticeShare shares[2];
  LatticeResult result;

  if (lattice_solve (lattice, flown->surfaces, flown->count, options, LATTICE_NEUTRAL_POINT, flown->planform.area,
                     flown->planform.span, shares, &result))
    abort ();
  return result;
}

LatticeResult
study_limit_from (Lattice *lattice, const StudyCase *flown, LatticeOptions coarse)
{
  const LatticeOptions twice = { .spanwise = 2 * coarse.spanwise, .chordwise = 2 * coarse.chordwise };
  const LatticeResult fine = study_solve (lattice, flown, coarse);
  LatticeResult finest = study_solve (lattice, flown, twice);

  finest.lift_slope += finest.lift_slope - fine.lift_slope;
  finest.neutral_point_x += finest.neutral_point_x - fine.neutral_point_x;
  return finest;
}

LatticeResult
study_limit (Lattice *lattice, const StudyCase *flown)
{
  return study_limit_from (lattice, flown, (LatticeOptions) { .spanwise = 36, .chordwise = 10 });
}

double
study_neutral_error (const StudyCase *flown, const LatticeResult *result, const LatticeResult *limit)
{
  return 100 * (result->neutral_point_x - limit->neutral_point_x) / flown->planform.mac;
}

StudyGroup
study_group (const StudyWing *wing, const StudyCompany *company)
{
  if (abs (wing->sweep_deg) > 15)
    return STUDY_SWEPT;
  if (!(company->span > 0))
    return STUDY_ALONE;
  if (company->arm < 0 || company->span == 1)
    return STUDY_PAIRED;
  return STUDY_TAILED;
}

double
study_promise (StudyGroup group)
{
  return group == STUDY_ALONE || group == STUDY_TAILED ? 0.15 : 0.4;
}
