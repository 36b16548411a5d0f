#include "trammel-config.h"
#include "drawing/wall-sheet-figures.h"
#include <glib/gi18n-lib.h>
#include <math.h>
#include "drawing/ruled-table.h"
#include "figures/tail-volume.h"

typedef struct { RuledTable *table; const Figures *figures; Units units; } FigureRows;

/* `takes` NULL: the figure is not to be had. */
static void
add_row (FigureRows *self, const char *label, char *takes)
{
  ruled_table_add (self->table, (char *const[]) { g_strdup (label), takes != NULL ? takes : g_strdup (_("not yet")) });
}

/* "39 ± 3 %": whole, the deviation at least 1. */
static char *
percent_words (double percent, double sigma)
{
  const double shown = fmax (1, round (sigma));
  g_autofree char *figure = units_percent (percent), *bare = NULL;

  if (!isfinite (percent))
    return NULL;
  if (!isfinite (sigma))
    return g_steal_pointer (&figure);
  bare = g_strdup_printf ("%s%.0f", round (percent) < 0 ? "\u2212" : "", fabs (round (percent)));
  /* Translators: a percentage and its standard deviation, "39 ± 3 %" */
  return g_strdup_printf (_("%s\u00A0±\u00A0%.0f\u00A0%%"), bare, shown);
}

static void
add_mass (FigureRows *self)
{
  const double mass = self->figures->mass.total_g;

  add_row (self, _("all-up mass"), mass > 0 ? units_mass (self->units, mass) : NULL);
}

/* Returns the area of all wings, mm². */
static double
add_wing (FigureRows *self)
{
  const double loading = self->figures->flight.wing_loading_g_dm2;
  double area = 0;
  size_t wings = 0;
  bool open = false;

  for (size_t i = 0; i < self->figures->surface_count; i++)
    {
      const SurfaceFigures *surface = &self->figures->surfaces[i];

      if (surface->surface->role != ROLE_WING)
        continue;
      wings++;
      area += surface->area_mm2;
      open |= surface->surface->root_open;
    }
  add_row (self, wings > 1 ? _("area of all wings") : open ? _("wing area, without the gap") : _("wing area, to the centre line"),
           area > 0 ? units_area (self->units, area) : NULL);
  add_row (self, _("wing loading"), isfinite (loading) ? units_loading (self->units, loading) : NULL);
  return area;
}

static void
add_balance (FigureRows *self)
{
  const NeutralPointFigures *point = &self->figures->neutral_point;
  const BalanceFigures *balance = &self->figures->balance;
  const double mac = self->figures->reference ? self->figures->reference->planform.mac : NAN;
  const double sigma = 100 * point->sigma_mm / mac, now = balance->static_margin_percent;
  const double aim = isfinite (balance->target_x_mm) ? aeroplane_traits (self->figures->aeroplane).target.aim : NAN;

  add_row (self, point->wing_alone ? _("neutral point of the wing alone, of the MAC") : _("neutral point, of the MAC"),
           percent_words (point->percent_mac, sigma));
  add_row (self, _("static margin as drawn"),
           point->wing_alone ? NULL : percent_words (now, balance->static_margin_sigma_percent));
  add_row (self, _("static margin at the mark"), percent_words (aim, sigma));
}

static bool
has_role (const Figures *figures, SurfaceRole role)
{
  for (size_t i = 0; i < figures->surface_count; i++)
    if (figures->surfaces[i].surface->role == role)
      return true;
  return false;
}

/* An aeroplane that never has a tail, or has it in front, has no such figure. */
static void
add_tail_volume (FigureRows *self, double wing_area)
{
  const Figures *figures = self->figures;
  const bool never = aeroplane_traits (figures->aeroplane).tailless || has_role (figures, ROLE_FOREPLANE);
  const double volume = figures->reference ? tail_volume_of (figures->surfaces, figures->surface_count, figures->reference, wing_area) : NAN;

  if (isfinite (volume) || !never)
    add_row (self, _("tail volume"), isfinite (volume) ? g_strdup_printf ("%.2f", volume) : NULL);
}

/* The first mark stands in the title block; what it is at other stations, here. */
static void
add_more_marks (FigureRows *self)
{
  const BalanceFigures *balance = &self->figures->balance;

  for (size_t i = 1; i < balance->mark_count && i < 5; i++)
    {
      g_autofree char *station = paper_length_figure (self->units, balance->marks[i].station_mm);
      g_autofree char *label = g_strdup_printf (_("balance mark at station %s"), station);

      add_row (self, label, isfinite (balance->marks[i].target_mm) ? paper_length (self->units, balance->marks[i].target_mm) : NULL);
    }
}

void
figure_table_draw (const SheetPen *pen, Point at, double caps)
{
  RuledTable table = ruled_table_new (_("Figures"), 2);
  FigureRows rows = { &table, pen->sheet->figures, pen->sheet->units };
  double area;

  table.caps = caps;
  table.widest = 70;
  table.to_right[1] = true;
  add_mass (&rows);
  area = add_wing (&rows);
  add_balance (&rows);
  add_tail_volume (&rows, area);
  add_more_marks (&rows);
  ruled_table_draw (pen, &table, at, 1);
  ruled_table_clear (&table);
}
