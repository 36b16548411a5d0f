#include "figures/neutral-point.h"

#include <math.h>
#include "aero/handbook.h"
#include "figures/body-shift.h"
#include "figures/solve-fault.h"
#include "figures/surface-figures.h"

/* The horizontal surfaces as both methods want them: the reference first, else in the document's order. */
typedef struct {
  size_t count;
  SurfaceFigures **figures;
  LatticeSurface *lattice;
  HandbookSurface *handbook;
  LatticeBend **bends;
  LatticeShare *shares;
} Company;

static double
radians (double degrees)
{
  return degrees * (G_PI / 180);
}

static LatticeBend *
bends_of (const Surface *surface)
{
  LatticeBend *bends = g_new (LatticeBend, surface->break_count);

  for (size_t i = 0; i < surface->break_count; i++)
    bends[i] = (LatticeBend) { surface->breaks[i].from, radians (surface->breaks[i].angle) };
  return bends;
}

static void
company_join (Company *company, SurfaceFigures *figures)
{
  const Surface *surface = figures->surface;
  const size_t at = company->count++;

  company->figures[at] = figures;
  company->bends[at] = bends_of (surface);
  company->lattice[at] = (LatticeSurface) {
    .outline = surface->outline, .sides = surface_sides (surface), .z = surface->z,
    .dihedral = radians (surface->dihedral), .bends = company->bends[at], .bend_count = surface->break_count,
    .incidence = radians (surface->incidence), .washout = radians (surface->washout),
    .pressure_ratio = surface_pressure_ratio (surface),
  };
  company->handbook[at] = (HandbookSurface) {
    .outline = surface->outline, .sides = surface_sides (surface), .z = surface->z,
    .pressure_ratio = surface_pressure_ratio (surface),
  };
}

static bool
can_join (const SurfaceFigures *figures)
{
  return surface_is_horizontal (figures->surface) && isfinite (figures->area_mm2);
}

static Company
company_of (const NeutralPointCase *wanted)
{
  Company company = {
    .figures = g_new (SurfaceFigures *, wanted->count), .lattice = g_new (LatticeSurface, wanted->count),
    .handbook = g_new (HandbookSurface, wanted->count), .bends = g_new (LatticeBend *, wanted->count),
    .shares = g_new0 (LatticeShare, wanted->count),
  };

  for (size_t i = 0; i < wanted->count; i++)
    if (&wanted->surfaces[i] == wanted->reference)
      company_join (&company, &wanted->surfaces[i]);
  for (size_t i = 0; i < wanted->count; i++)
    if (&wanted->surfaces[i] != wanted->reference && can_join (&wanted->surfaces[i]))
      company_join (&company, &wanted->surfaces[i]);
  return company;
}

static void
company_clear (Company *company)
{
  for (size_t i = 0; i < company->count; i++)
    g_free (company->bends[i]);
  g_free (company->bends);
  g_free (company->figures);
  g_free (company->lattice);
  g_free (company->handbook);
  g_free (company->shares);
}

static bool
all_are_measured (const NeutralPointCase *wanted)
{
  for (size_t i = 0; i < wanted->count; i++)
    if (surface_is_horizontal (wanted->surfaces[i].surface) && !isfinite (wanted->surfaces[i].area_mm2))
      return false;
  return true;
}

static double
first_tailplanes_downwash (const Company *company)
{
  for (size_t i = 0; i < company->count; i++)
    if (company->figures[i]->surface->role == ROLE_TAILPLANE)
      return company->shares[i].downwash_gradient;
  return NAN;
}

/* The b of the header, in parts of the MAC. */
static double
plain_deviation (const NeutralPointCase *wanted, const BodyShift *body, double mac)
{
  const double plain = 0.025, fat = 0.040, slim_shift = 0.03, fat_shift = 0.05;
  const double along = (fabs (body->shift_mm) / mac - slim_shift) / (fat_shift - slim_shift);

  if (!body->bodies)
    return aeroplane_traits (wanted->aeroplane).tailless ? plain : fat;
  return plain + (fat - plain) * CLAMP (along, 0, 1);
}

static double
deviation_of (const NeutralPointCase *wanted, const NeutralPointFigures *point, const BodyShift *body)
{
  const double mac = wanted->reference->planform.mac;
  const double plain = plain_deviation (wanted, body, mac) * mac;
  const double methods = isfinite (point->handbook_x_mm) ? (point->x_mm - point->handbook_x_mm) / 2 : 0;

  return sqrt (plain * plain + methods * methods + body->plane_mm * body->plane_mm / 4);
}

static void
fill_point (NeutralPointSolution *made, const NeutralPointCase *wanted, const Lattice *lattice, const Company *company,
            const LatticeResult *result)
{
  const Planform *wing = &wanted->reference->planform;
  const BodyShift body = body_shift_of (lattice, wanted->aeroplane, wanted->reference, result->lift_slope);
  const double counted = isfinite (body.shift_mm) ? body.shift_mm : 0;
  NeutralPointFigures *point = &made->point;
  double handbook_x;

  point->lattice_x_mm = result->neutral_point_x;
  point->body_shift_mm = body.shift_mm;
  point->x_mm = result->neutral_point_x + counted;
  point->percent_mac = 100 * (point->x_mm - wing->mac_leading_edge_x) / wing->mac;
  point->downwash_gradient = first_tailplanes_downwash (company);
  if (handbook_neutral_point (company->handbook, company->count, &handbook_x, NULL) == CORE_OK)
    point->handbook_x_mm = handbook_x + counted;
  point->sigma_mm = deviation_of (wanted, point, &body);
  made->body_plane_mm = body.plane_mm;
  made->left_out = body.left_out;
}

static void
find_fault (NeutralPointFigures *point, Lattice *lattice, const Company *company)
{
  const SolveFault fault = solve_fault_find (lattice, company->lattice, company->count, point->status);

  if (fault.first >= 0)
    point->at_fault[0] = company->figures[fault.first]->surface;
  if (fault.second >= 0)
    point->at_fault[1] = company->figures[fault.second]->surface;
}

NeutralPointSolution
neutral_point_solve (Lattice *lattice, const NeutralPointCase *wanted)
{
  NeutralPointSolution made = { .point = { NAN, NAN, NAN, NAN, NAN, NAN, NAN, false, CORE_NO_AREA, { NULL, NULL } } };
  NeutralPointFigures *point = &made.point;
  LatticeResult result;
  Company company;

  if (!wanted->reference)
    return made;
  company = company_of (wanted);
  point->status = lattice_solve (lattice, company.lattice, company.count, lattice_default_options (),
                                 LATTICE_NEUTRAL_POINT | LATTICE_ALONE, wanted->reference->area_mm2,
                                 wanted->reference->planform.span, company.shares, &result);
  if (point->status == CORE_OK)
    {
      for (size_t i = 0; i < company.count; i++)
        company.figures[i]->lift_slope_per_rad = company.shares[i].alone_lift_slope;
      if (all_are_measured (wanted))
        fill_point (&made, wanted, lattice, &company, &result);
      else
        point->status = CORE_NO_AREA;
    }
  else
    find_fault (point, lattice, &company);
  company_clear (&company);
  return made;
}
