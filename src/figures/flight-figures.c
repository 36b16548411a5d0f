#include "figures/flight-figures.h"

#include "trammel-config.h"
#include <glib/gi18n-lib.h>
#include <math.h>
#include "aero/flight.h"
#include "aero/section.h"
#include "document/units.h"
#include "figures/notes.h"

/* Whoever types a greatest lift has measured or read it somewhere. Common practice, no source. */
static const double given_lift_sigma = 0.05;

static Spreading
greatest_lift_at (const Surface *wing, double reynolds)
{
  Spreading lift = { wing->lift_max, given_lift_sigma };

  if (isnan (wing->lift_max))
    lift = section_greatest_lift (wing->section, reynolds);
  if (!isnan (wing->lift_max_sigma))
    lift.sigma = wing->lift_max_sigma;
  return lift;
}

/* Speed, Reynolds number and lift hang on each other; each round takes the difference to a fifth or less, since speed goes with
 * the root of the lift and the table is flat: ten leave less than a millionth, sixteen nothing. */
static void
find_stall (FlightFigures *made, double mass, double area, const SurfaceFigures *wing)
{
  enum { ROUNDS = 16 };
  const Air air = air_at (0);
  Spreading lift = greatest_lift_at (wing->surface, 0);
  double before = 0;

  for (int i = 0; i < ROUNDS && lift.value != before; i++)
    {
      before = lift.value;
      made->stall_speed_m_s = flight_stall_speed (mass, area, air.density, lift.value);
      made->reynolds_mac = flight_reynolds (&air, made->stall_speed_m_s, wing->planform.mac * 1e-3);
      lift = greatest_lift_at (wing->surface, made->reynolds_mac);
    }
  made->lift_max = lift.value;
  made->lift_max_sigma = lift.sigma;
}

/* To the first order: speed goes with the root of mass over lift. Areas are taken as drawn. */
static void
find_deviations (FlightFigures *made, const MassFigures *mass)
{
  const double of_mass = mass->total_sigma_g / mass->total_g, of_lift = made->lift_max_sigma / made->lift_max;

  made->wing_loading_sigma_g_dm2 = made->wing_loading_g_dm2 * of_mass;
  made->stall_speed_sigma_m_s = made->stall_speed_m_s * hypot (of_mass, of_lift) / 2;
  made->cube_loading_sigma_kg_m3 = made->cube_loading_kg_m3 * of_mass;
  made->reynolds_mac_sigma = made->reynolds_mac * hypot (of_mass, of_lift) / 2;
}

FlightFigures
flight_figures_of (const Aerodynamics *aerodynamics, const Loads *loads)
{
  FlightFigures made = { NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN };
  const SurfaceFigures *reference = aerodynamics_reference (aerodynamics);
  const double grams = loads->figures.total_g;

  if (!reference || !(grams > 0))
    return made;
  const double area = aerodynamics->wing_area_mm2 * 1e-6;
  made.wing_loading_g_dm2 = grams / (aerodynamics->wing_area_mm2 * 1e-4);
  made.cube_loading_kg_m3 = grams * 1e-3 / (area * sqrt (area));
  find_stall (&made, grams * 1e-3, area, reference);
  find_deviations (&made, &loads->figures);
  return made;
}

/* The most that experienced hands fly at a span, g/dm²; between the rows and beyond them in proportion. Common practice, no source. */
static double
heaviest_loading (double span_mm)
{
  static const struct { double span_mm, g_dm2; } rows[] = { { 500, 30 }, { 650, 36 }, { 800, 42 }, { 1000, 52 } };
  size_t row = 0;

  while (row + 2 < G_N_ELEMENTS (rows) && span_mm > rows[row + 1].span_mm)
    row++;
  const double slope = (rows[row + 1].g_dm2 - rows[row].g_dm2) / (rows[row + 1].span_mm - rows[row].span_mm);
  return rows[row].g_dm2 + slope * (span_mm - rows[row].span_mm);
}

/* From here on a model is hot, whatever its size. Common practice, no source. */
static const double hot_cubic_loading = 15;

char *
flight_loading_words (double loading_g_dm2, double most_g_dm2, Units units)
{
  g_autofree char *loading = units_loading (units, loading_g_dm2), *most = units_loading (units, most_g_dm2);

  return g_strdup_printf (_("The wing loading of %s is more than experienced hands fly at this span, about %s: check the masses."),
                          loading, most);
}

static void
note_wing_loading (const Piece *wing, double loading, double most, GPtrArray *notes)
{
  g_autofree char *text = flight_loading_words (loading, most, (Units) { LENGTH_MM, MASS_G });

  notes_add (notes, NOTE_LOOK, wing, "%s", text);
  notes_explain (notes, notes->len - 1, EXPLAIN_WING_LOADING);
  ((Note *) g_ptr_array_index (notes, notes->len - 1))->loading_g_dm2 = loading;
  ((Note *) g_ptr_array_index (notes, notes->len - 1))->most_loading_g_dm2 = most;
}

/* As it is read: what is told apart by no figure is not told. */
static bool
is_read_as_more (double loading, double most)
{
  const Units metric = { LENGTH_MM, MASS_G };

  if (!(loading > most))
    return false;
  g_autofree char *first = units_loading (metric, loading), *second = units_loading (metric, most);
  return !g_str_equal (first, second);
}

static void
note_cubic_loading (const Piece *wing, double loading, GPtrArray *notes)
{
  const guint from = notes->len;
  g_autofree char *cubic = units_number (loading, 1), *hot = units_number (hot_cubic_loading, 0);

  notes_add (notes, NOTE_LOOK, wing, _("The cubic loading of %s kg/m³ is that of a hot aeroplane, above %s kg/m³: check the masses, or "
                                       "keep it for experienced hands."), cubic, hot);
  notes_explain (notes, from, EXPLAIN_CUBIC_LOADING);
}

/* A slip of the keyboard makes a battery of 50 kg; one note tells, of the loading that the span's own measure is. */
static void
note_loading (const Figures *figures, GPtrArray *notes)
{
  const FlightFigures *flight = &figures->flight;

  if (!isfinite (flight->wing_loading_g_dm2))
    return;
  const Piece *wing = &figures->reference->surface->piece;
  const double heaviest = heaviest_loading (figures->reference->planform.span);
  if (is_read_as_more (flight->wing_loading_g_dm2, heaviest))
    note_wing_loading (wing, flight->wing_loading_g_dm2, heaviest, notes);
  else if (flight->cube_loading_kg_m3 > hot_cubic_loading)
    note_cubic_loading (wing, flight->cube_loading_kg_m3, notes);
}

void
flight_figures_note (const Figures *figures, GPtrArray *notes)
{
  const Surface *wing = figures->reference ? figures->reference->surface : NULL;
  guint from;

  note_loading (figures, notes);
  from = notes->len;
  if (isfinite (figures->flight.stall_speed_m_s) && wing->section == SECTION_UNSTATED && isnan (wing->lift_max))
    notes_add (notes, NOTE_NOTE, &wing->piece, _("The stalling speed takes a greatest lift coefficient of %.2f, common practice for "
                                                 "flat-bottomed sections at this size. Choose the wing's section to know it better."),
               figures->flight.lift_max);
  notes_explain (notes, from, EXPLAIN_STALL_SPEED);
}
