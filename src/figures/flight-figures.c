#include "figures/flight-figures.h"

#include "trammel-config.h"
#include <glib/gi18n-lib.h>
#include <math.h>
#include "aero/flight.h"
#include "figures/notes.h"

/* The middle of the trade's band for flat-bottomed sections; common practice, no source. */
static const struct { double reynolds, lift; } greatest_lift[] = {
  { 30000, 0.775 }, { 60000, 0.925 }, { 100000, 1.025 }, { 150000, 1.075 },
};

static double
greatest_lift_at (double reynolds)
{
  const size_t last = G_N_ELEMENTS (greatest_lift) - 1;

  if (reynolds <= greatest_lift[0].reynolds)
    return greatest_lift[0].lift;
  for (size_t i = 0; i < last; i++)
    if (reynolds <= greatest_lift[i + 1].reynolds)
      {
        const double along = (reynolds - greatest_lift[i].reynolds) / (greatest_lift[i + 1].reynolds - greatest_lift[i].reynolds);

        return greatest_lift[i].lift + along * (greatest_lift[i + 1].lift - greatest_lift[i].lift);
      }
  return greatest_lift[last].lift;
}

/* Speed, Reynolds number and lift hang on each other; each round takes the difference to a fifth or less, since speed goes with
 * the root of the lift and the table is flat: ten leave less than a millionth, sixteen nothing. */
static void
find_stall (FlightFigures *made, double mass, double area, double chord)
{
  enum { ROUNDS = 16 };
  const Air air = air_at (0);
  double lift = greatest_lift[0].lift, before = 0;

  for (int i = 0; i < ROUNDS && lift != before; i++)
    {
      before = lift;
      made->stall_speed_m_s = flight_stall_speed (mass, area, air.density, lift);
      made->reynolds_mac = flight_reynolds (&air, made->stall_speed_m_s, chord);
      lift = greatest_lift_at (made->reynolds_mac);
    }
  made->lift_max = lift;
}

FlightFigures
flight_figures_of (const Aerodynamics *aerodynamics, const Loads *loads)
{
  FlightFigures made = { NAN, NAN, NAN, NAN, NAN, NAN };
  const SurfaceFigures *reference = aerodynamics_reference (aerodynamics);
  const double grams = loads->figures.total_g;

  if (!reference || !(grams > 0))
    return made;
  const double area = aerodynamics->wing_area_mm2 * 1e-6;
  made.wing_loading_g_dm2 = grams / (aerodynamics->wing_area_mm2 * 1e-4);
  made.cube_loading_kg_m3 = grams * 1e-3 / (area * sqrt (area));
  find_stall (&made, grams * 1e-3, area, reference->planform.mac * 1e-3);
  return made;
}

void
flight_figures_note (const Figures *figures, GPtrArray *notes)
{
  if (isfinite (figures->flight.stall_speed_m_s))
    notes_add (notes, NOTE_NOTE, NULL, _("The stalling speed takes a greatest lift coefficient of %.2f, common practice for "
                                         "flat-bottomed sections at this size; a thick symmetrical section has about 0.15 less."),
               figures->flight.lift_max);
}
