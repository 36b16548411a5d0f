#include "figures/neutral-point.h"

#include <math.h>
#include "aero/handbook.h"
#include "figures/solve-fault.h"
#include "figures/surface-figures.h"

/* The horizontal surfaces as both methods want them: the reference first, else in the document's order. */
typedef struct {
  size_t count;
  const SurfaceFigures **figures;
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
company_join (Company *company, const SurfaceFigures *figures)
{
  const Surface *surface = figures->surface;
  const size_t at = company->count++;

  company->figures[at] = figures;
  company->bends[at] = bends_of (surface);
  company->lattice[at] = (LatticeSurface) {
    .outline = surface->outline, .sides = surface_sides (surface), .z = surface->z,
    .dihedral = radians (surface->dihedral), .bends = company->bends[at], .bend_count = surface->break_count,
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
    .figures = g_new (const SurfaceFigures *, wanted->count), .lattice = g_new (LatticeSurface, wanted->count),
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

static void
fill_shares (NeutralPointSolution *made, const NeutralPointCase *wanted, const Company *company)
{
  made->share_count = company->count;
  made->shares = g_new (LiftShare, company->count);
  for (size_t i = 0; i < company->count; i++)
    made->shares[i] = (LiftShare) { .surface = (size_t) (company->figures[i] - wanted->surfaces), .lift = company->shares[i].lift_slope,
                                    .centre_x = company->shares[i].centre_x, .own_slope = company->shares[i].alone_lift_slope,
                                    .downwash_gradient = company->shares[i].downwash_gradient, .roll_damping = company->shares[i].roll_damping,
                                    .pitching_lift = company->shares[i].pitching_lift, .pitching_moment = company->shares[i].pitching_moment };
}

static GArray *
loading_of_reference (const Lattice *lattice)
{
  enum { most_stations = 256 };
  LatticeStation stations[most_stations];
  const size_t count = MIN (lattice_span_loading (lattice, 0, stations, most_stations), most_stations);
  GArray *made = g_array_sized_new (FALSE, FALSE, sizeof (SpanLoading), (guint) count);

  for (size_t i = 0; i < count; i++)
    {
      const SpanLoading one = { stations[i].station, stations[i].lift_ratio };

      g_array_append_val (made, one);
    }
  return made;
}

/* Tips whose chord falls to nothing carry a coefficient that no section there can have been asked for: the outermost 5 % are left out. */
static void
find_first_stall (NeutralPointSolution *made, double span)
{
  for (guint i = 0; i < made->loading->len; i++)
    {
      const SpanLoading *at = &g_array_index (made->loading, SpanLoading, i);

      if (at->station_mm < 0.95 * span / 2 && !(at->lift_ratio <= made->stall_ratio))
        {
          made->stall_ratio = at->lift_ratio;
          made->stall_station = at->station_mm;
        }
    }
}

static double
nose_flow (const Lattice *lattice, const NeutralPointCase *wanted)
{
  const SurfaceFigures *wing = wanted->reference;
  const double clear_x = outline_node (wing->surface->outline, 0).x - wing->planform.mac / 2;
  const double x = fmin (wanted->nose_x, clear_x);
  double upwash;

  lattice_upwash (lattice, &x, 1, wing->surface->z, &upwash);
  return 1 + upwash;
}

static void
fill_solution (NeutralPointSolution *made, const NeutralPointCase *wanted, const Lattice *lattice, const Company *company)
{
  const BodyCompany bodies = { wanted->surfaces, wanted->count, wanted->reference };
  double handbook_x;

  made->body = body_shift_of (lattice, wanted->aeroplane, &bodies, made->lattice.lift_slope);
  if (handbook_neutral_point (company->handbook, company->count, &handbook_x, NULL) == CORE_OK)
    made->handbook_x = handbook_x;
  made->nose_flow = nose_flow (lattice, wanted);
  made->loading = loading_of_reference (lattice);
  find_first_stall (made, wanted->reference->planform.span);
}

static void
find_fault (NeutralPointSolution *made, Lattice *lattice, const Company *company)
{
  if (made->status == CORE_TOO_MANY)
    return;                     /* all of them are to blame, and asking again would take long */
  const SolveFault fault = solve_fault_find (lattice, company->lattice, company->count, made->status);

  if (fault.first >= 0)
    made->at_fault[0] = company->figures[fault.first]->surface;
  if (fault.second >= 0)
    made->at_fault[1] = company->figures[fault.second]->surface;
}

NeutralPointSolution
neutral_point_solve (Lattice *lattice, const NeutralPointCase *wanted)
{
  NeutralPointSolution made = { .status = CORE_NO_AREA, .handbook_x = NAN, .nose_flow = NAN, .stall_station = NAN, .stall_ratio = NAN,
                                .lattice = { NAN, NAN, NAN, NAN, NAN, NAN } };
  Company company;

  if (!wanted->reference)
    return made;
  company = company_of (wanted);
  made.status = lattice_solve (lattice, company.lattice, company.count, lattice_default_options (),
                               LATTICE_ALONE | LATTICE_ROLL | LATTICE_FAR_WAKE | LATTICE_PITCH, wanted->reference->area_mm2,
                               wanted->reference->planform.span, company.shares, &made.lattice);
  if (made.status == CORE_OK)
    fill_shares (&made, wanted, &company);
  else
    find_fault (&made, lattice, &company);
  if (made.status == CORE_OK && all_are_measured (wanted))
    fill_solution (&made, wanted, lattice, &company);
  else if (made.status == CORE_OK)
    made.status = CORE_NO_AREA;
  company_clear (&company);
  return made;
}

void
neutral_point_solution_clear (NeutralPointSolution *self)
{
  g_clear_pointer (&self->shares, g_free);
  g_clear_pointer (&self->loading, g_array_unref);
  g_clear_pointer (&self->body.left_out, g_ptr_array_unref);
}
