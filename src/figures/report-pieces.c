#include "figures/report-sections.h"

#include "trammel-config.h"
#include <glib/gi18n-lib.h>
#include <math.h>
#include "figures/ballast-told.h"
#include "figures/loads.h"
#include "figures/lead-words.h"
#include "figures/names.h"

/* One row of the table of surfaces: a label and how its figure is had. */
typedef char *(*SurfaceCell) (const SurfaceFigures *surface, Units units);

static char *cell_role    (const SurfaceFigures *s, Units u) { return g_strdup (surface_role_name (s->surface->role)); }
static char *cell_span    (const SurfaceFigures *s, Units u) { return units_length (u, s->planform.span); }
static char *cell_area    (const SurfaceFigures *s, Units u) { return units_area (u, s->planform.area); }
static char *
cell_counted (const SurfaceFigures *surface, Units units)
{
  if (!surface_is_horizontal (surface->surface))
    return g_strdup (_("one side"));
  return g_strdup (surface->surface->root_open ? _("open at root") : _("to centre line"));
}

static char *cell_aspect  (const SurfaceFigures *s, Units u) { return units_number (s->planform.aspect_ratio, 2); }
static char *cell_chord   (const SurfaceFigures *s, Units u) { return units_length (u, s->planform.mean_chord); }
static char *cell_mac     (const SurfaceFigures *s, Units u) { return units_length (u, s->planform.mac); }
static char *cell_station (const SurfaceFigures *s, Units u) { return units_length (u, s->planform.mac_station); }
static char *cell_edge    (const SurfaceFigures *s, Units u) { return units_length (u, s->planform.mac_leading_edge_x); }
static char *cell_quarter (const SurfaceFigures *s, Units u) { return units_length (u, s->quarter_mac_x_mm); }

/* "4.46 ± 0.35"; takes both. */
static char *
deviating (char *figure, char *deviation)
{
  g_autofree char *of = figure, *sigma = deviation;

  return deviation_is_told (sigma) ? g_strdup_printf (_("%s ± %s"), of, sigma) : g_strdup (of);
}

static char *
cell_slope (const SurfaceFigures *surface, Units units)
{
  return deviating (units_number (surface->lift_slope_per_rad, 2), units_number (surface->lift_slope_sigma, 2));
}

/* In whole hundreds: no more of it is known. */
static char *
cell_reynolds (const SurfaceFigures *surface, Units units)
{
  return deviating (units_number (round (surface->reynolds / 100) * 100, 0), units_number (round (surface->reynolds_sigma / 100) * 100, 0));
}

static char *cell_section (const SurfaceFigures *s, Units u) { return g_strdup (section_class_name (s->surface->section)); }
static char *
cell_section_slope (const SurfaceFigures *surface, Units units)
{
  if (!surface_is_horizontal (surface->surface))
    return g_strdup ("–");
  return deviating (units_number (surface->section_slope, 2), units_number (surface->section_slope_sigma, 2));
}

static char *cell_arm     (const SurfaceFigures *s, Units u) { return units_length (u, s->tail_arm_mm); }

static char *
cell_volume (const SurfaceFigures *surface, Units units)
{
  return deviating (units_number (surface->volume_coefficient, 3), units_number (surface->volume_sigma, 3));
}

static const struct { const char *label; SurfaceCell cell; } surface_rows[] = {
  { N_("Role"), cell_role },
  { N_("Span (a fin: height)"), cell_span },
  { N_("Area"), cell_area },
  { N_("Area counted"), cell_counted },
  { N_("Aspect ratio"), cell_aspect },
  { N_("Mean chord, area over span"), cell_chord },
  { N_("Mean aerodynamic chord (MAC)"), cell_mac },
  { N_("MAC at station"), cell_station },
  { N_("MAC's leading edge, aft of datum"), cell_edge },
  { N_("Quarter MAC, aft of datum"), cell_quarter },
  { N_("Lift slope alone, per radian"), cell_slope },
  { N_("Section"), cell_section },
  { N_("Section's slope over 2π"), cell_section_slope },
  { N_("Reynolds number at the stall"), cell_reynolds },
  { N_("Tail arm"), cell_arm },
  { N_("Tail volume"), cell_volume },
};

TextTable
report_surfaces (const Figures *figures, Units units)
{
  TextTable table = text_table_new ((unsigned) figures->surface_count + 1, 0);

  if (!figures->surface_count)
    return table;
  text_table_cell (&table, NULL);
  for (size_t i = 0; i < figures->surface_count; i++)
    text_table_cell (&table, g_strdup (piece_name (&figures->surfaces[i].surface->piece)));
  for (size_t row = 0; row < G_N_ELEMENTS (surface_rows); row++)
    {
      text_table_cell (&table, g_strdup (_(surface_rows[row].label)));
      for (size_t i = 0; i < figures->surface_count; i++)
        text_table_cell (&table, surface_rows[row].cell (&figures->surfaces[i], units));
    }
  return table;
}

static void
add_headings (TextTable *table, const char *const headings[], size_t count)
{
  for (size_t i = 0; i < count; i++)
    text_table_cell (table, g_strdup (*headings[i] ? _(headings[i]) : ""));
}

TextTable
report_controls (const Figures *figures, Units units)
{
  static const char *const headings[] = { N_("Control"), N_("on"), N_("area"), N_("share") };
  TextTable table = text_table_new (G_N_ELEMENTS (headings), 1 << 1);

  if (figures->control_count)
    add_headings (&table, headings, G_N_ELEMENTS (headings));
  for (size_t i = 0; i < figures->control_count; i++)
    {
      const ControlFigures *control = &figures->controls[i];

      text_table_cell (&table, g_strdup (control_kind_name (control->control->kind)));
      text_table_cell (&table, g_strdup (piece_name (&control->surface->piece)));
      text_table_cell (&table, units_area (units, control->area_mm2));
      text_table_cell (&table, units_percent (control->area_share_percent));
    }
  return table;
}

static char *
mass_with_deviation (double mass, double sigma, Units units)
{
  g_autofree char *figure = units_mass (units, mass);
  const bool kilograms = units.mass == MASS_G && mass >= 999.5;      /* the deviation has a unit of its own then */
  g_autofree char *deviation = kilograms ? units_mass_deviation (units, sigma) : units_mass_deviation_figure (units, sigma);

  if (!(sigma > 0))
    return g_steal_pointer (&figure);
  return g_strdup_printf (_("%s ± %s"), figure, deviation);
}

static void
add_part (TextTable *table, const Part *part, Units units)
{
  text_table_cell (table, g_strdup (piece_name (&part->piece)));
  text_table_cell (table, mass_with_deviation (part->mass, part_mass_deviation (part), units));
  text_table_cell (table, units_length (units, part->x));
  text_table_cell (table, units_length (units, part->y));
  text_table_cell (table, units_length (units, part->z));
  text_table_cell (table, !part->aboard ? g_strdup (_("left out")) : part->to_come ? g_strdup (_("to come")) : NULL);
}

/* What counts: the whole airframe on the scale has corrected it. */
static char *
structure_mass (const Figures *figures, const StructureFigures *weighed, Units units)
{
  for (size_t i = 0; figures->airframe.weighed && i < figures->load_count; i++)
    if (figures->loads[i].piece == &weighed->structure->piece)
      return mass_with_deviation (figures->loads[i].mass_g, figures->loads[i].mass_sigma_g, units);
  return mass_with_deviation (weighed->mass_g, weighed->mass_sigma_g, units);
}

static void
add_structure (TextTable *table, const Figures *figures, const StructureFigures *weighed, Units units)
{
  const Structure *structure = weighed->structure;
  const bool placed = !isnan (structure->x);

  text_table_cell (table, g_strdup (piece_name (&structure->piece)));
  text_table_cell (table, structure_mass (figures, weighed, units));
  text_table_cell (table, placed ? units_length (units, structure->x) : g_strdup ("–"));
  text_table_cell (table, placed ? units_length (units, structure->y) : g_strdup ("–"));
  text_table_cell (table, placed ? units_length (units, structure->z) : g_strdup ("–"));
  text_table_cell (table, placed ? NULL : g_strdup_printf (_("over “%s”"), structure->of ? structure->of : ""));
}

TextTable
report_parts (const Figures *figures, Units units)
{
  static const char *const headings[] = { N_("Part"), N_("mass"), N_("aft"), N_("starboard"), N_("up"), "" };
  const Aeroplane *aeroplane = figures->aeroplane;
  TextTable table = text_table_new (G_N_ELEMENTS (headings), 1 << 5);

  for (size_t i = 0; i < aeroplane_piece_count (aeroplane); i++)
    {
      const Piece *piece = aeroplane_piece (aeroplane, i);
      Part *part = piece_as_part (aeroplane, piece);

      if (!part && piece->kind != PIECE_STRUCTURE)
        continue;
      if (!table.cells->len)
        add_headings (&table, headings, G_N_ELEMENTS (headings));
      if (part)
        add_part (&table, part, units);
      else
        add_structure (&table, figures, figures_of_structure (figures, (const Structure *) piece), units);
      piece_unref (part ? &part->piece : NULL);
    }
  return table;
}

static char *
reach_text (const Figures *figures, const Solution *solution, Units units)
{
  if (isnan (solution->x_mm))
    return NULL;
  if (solution->reachable)
    return g_strdup (_("reached"));
  const BallastTold told = ballast_told_of (figures, solution);
  g_autofree char *ballast = mass_with_deviation (told.mass_g, told.sigma_g, units), *place = ballast_told_phrase (&told);
  if (isnan (told.mass_g))
    return g_strdup (_("beyond the rail"));
  /* TRANSLATORS: how much ballast and where it goes: "beyond; 26 g ± 3 at the fore end of “nose”" */
  return g_strdup_printf (_("beyond; %s %s"), ballast, place);
}

/* "103 ± 41 mm" */
static char *
place_text (const Solution *solution, Units units)
{
  if (isnan (solution->x_sigma_mm))
    return units_length (units, solution->x_mm);
  return deviating (units_length_figure (units, solution->x_mm), units_length (units, solution->x_sigma_mm));
}

static char *
range_text (double from_mm, double to_mm, Units units)
{
  g_autofree char *from = units_length_figure (units, from_mm), *to = units_length (units, to_mm);

  if (isnan (from_mm))
    return g_strdup ("–");
  return g_strdup_printf (_("%s to %s"), from, to);
}

/* "88 ± 41 to 134 mm": an end that is the rail's own has no deviation. */
static char *
band_text (const Solution *solution, Units units)
{
  const double from_sigma = solution->band_from_sigma_mm, to_sigma = solution->band_to_sigma_mm;
  g_autofree char *from = units_length_figure (units, solution->band_from_mm), *to = units_length_figure (units, solution->band_to_mm);
  g_autofree char *least = from_sigma > 0 ? deviating (g_steal_pointer (&from), units_length_figure (units, from_sigma)) : g_steal_pointer (&from);
  g_autofree char *most = to_sigma > 0 ? deviating (g_steal_pointer (&to), units_length (units, to_sigma))
                                       : units_length (units, solution->band_to_mm);

  if (isnan (solution->band_from_mm))
    return g_strdup ("–");
  return g_strdup_printf (_("%s to %s"), least, most);
}

TextTable
report_solutions (const Figures *figures, Units units)
{
  static const char *const headings[] = { N_("Part"), N_("now at"), N_("aim at"), N_("in the band"), N_("rail"), "" };
  TextTable table = text_table_new (G_N_ELEMENTS (headings), 1 << 5);

  if (figures->solution_count)
    add_headings (&table, headings, G_N_ELEMENTS (headings));
  for (size_t i = 0; i < figures->solution_count; i++)
    {
      const Solution *solution = &figures->solutions[i];

      text_table_cell (&table, g_strdup (piece_name (&solution->part->piece)));
      text_table_cell (&table, units_length (units, solution->part->x));
      text_table_cell (&table, place_text (solution, units));
      text_table_cell (&table, band_text (solution, units));
      text_table_cell (&table, range_text (solution->part->rail_from, solution->part->rail_to, units));
      text_table_cell (&table, reach_text (figures, solution, units));
    }
  return table;
}
