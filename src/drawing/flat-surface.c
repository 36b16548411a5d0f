#include "drawing/flat-half.h"
#include "trammel-config.h"
#include <glib/gi18n-lib.h>
#include <math.h>

/* The outline, carried to the centre line at the chord of its root unless that is open: what planform_measure takes the area of. */
static void
add_outline (const FlatHalf *half)
{
  const Outline *outline = half->surface->outline;
  const size_t count = outline_segment_count (outline);
  const Point first = outline_node (outline, 0), last = outline_node (outline, count);
  const bool carried = surface_is_horizontal (half->surface) && !half->surface->root_open && first.y > 0;
  g_autoptr (GArray) run = g_array_new (FALSE, FALSE, sizeof (Segment));
  const Segment outboard = segment_line (first), inboard = segment_line ((Point) { last.x, 0 });

  if (carried)
    g_array_append_val (run, outboard);
  for (size_t i = 0; i < count; i++)
    g_array_append_val (run, *outline_segment (outline, i));
  if (carried)
    g_array_append_val (run, inboard);
  flat_add_run (half->piece, half->surface, FLAT_CUT, true, carried ? (Point) { first.x, 0 } : first, (const Segment *) (void *) run->data, run->len);
}

/* How much longer than in plan it is from root to tip, and how many of its breaks lie between. */
static double
percent_longer (const Surface *surface, size_t *breaks)
{
  const Box box = outline_bounds (surface->outline);
  const double root = surface->root_open ? box.min.y : 0;

  *breaks = 0;
  for (size_t i = 0; i < surface->break_count; i++)
    *breaks += surface->breaks[i].from > root && surface->breaks[i].from < box.max.y;
  return 100 * ((flat_station (surface, box.max.y) - flat_station (surface, root)) / (box.max.y - root) - 1);
}

static char *
remark_of (const Surface *surface)
{
  size_t breaks;
  const double percent = surface_is_horizontal (surface) ? percent_longer (surface, &breaks) : 0;
  g_autofree char *longer = units_number (percent, percent < 0.1 ? 2 : 1);
  g_autofree char *angle = units_angle (fabs (surface->dihedral));

  if (!(percent >= 0.005))
    return NULL;
  if (breaks > 0)
    return g_strdup_printf (ngettext ("Developed flat: the dihedral breaks at %zu station, %s %% longer than in plan",
                                      "Developed flat: the dihedral breaks at %zu stations, %s %% longer than in plan", breaks), breaks, longer);
  /* Translators: an angle and a number: "Developed flat: 4° of dihedral, 0.2 % longer than in plan" */
  return g_strdup_printf (surface->dihedral < 0 ? _("Developed flat: %s of anhedral, %s %% longer than in plan")
                                                : _("Developed flat: %s of dihedral, %s %% longer than in plan"), angle, longer);
}

/* By its role where that tells it, else by what it is called as well. */
static char *
name_of (const Figures *figures, const Surface *surface)
{
  size_t alike = 0;

  for (size_t i = 0; i < figures->surface_count; i++)
    alike += figures->surfaces[i].surface->role == surface->role;
  if (alike < 2 || !surface->piece.id)
    return g_strdup (surface_role_name (surface->role));
  /* Translators: what a surface is and what it is called: "Wing “upper”" */
  return g_strdup_printf (_("%s “%s”"), surface_role_name (surface->role), surface->piece.id);
}

static FlatPiece *
half_made (const Figures *figures, const Surface *surface, Units units, double side, const char *name)
{
  g_autofree char *remark = remark_of (surface);
  const FlatHalf half = { .figures = figures, .surface = surface, .units = units, .side = side, .piece = flat_piece_new (name, remark) };

  add_outline (&half);
  flat_half_add_centre (&half);
  flat_half_add_ribs (&half);
  flat_half_add_controls (&half);
  flat_half_add_parts (&half);
  flat_half_add_leads (&half);
  flat_half_add_spars (&half);
  flat_half_add_marks (&half);
  return half.piece;
}

static FlatPiece *
starboard_of (const Figures *figures, const Surface *surface, Units units, const char *what)
{
  /* Translators: which surface: "Wing, starboard" */
  g_autofree char *name = g_strdup_printf (_("%s, starboard"), what);

  return half_made (figures, surface, units, 1, name);
}

static FlatPiece *
port_of (const Figures *figures, const Surface *surface, Units units, const char *what)
{
  /* Translators: which surface: "Wing, port" */
  g_autofree char *name = g_strdup_printf (_("%s, port"), what);
  g_autoptr (FlatPiece) made = half_made (figures, surface, units, -1, name);

  return flat_piece_mirrored (made, name);
}

/* A flat tail is cut from one sheet; a wing's halves are built one after the other. */
static bool
is_one_piece (const Surface *surface)
{
  size_t breaks;

  return surface->role != ROLE_WING && !surface->root_open && !(percent_longer (surface, &breaks) > 0);
}

static void
add_halves (GPtrArray *pieces, const Figures *figures, const Surface *surface, Units units, ExportHalves halves)
{
  g_autofree char *name = name_of (figures, surface);
  g_autoptr (FlatPiece) starboard = starboard_of (figures, surface, units, name), port = port_of (figures, surface, units, name);

  if (halves == EXPORT_BOTH_HALVES && is_one_piece (surface))
    {
      g_ptr_array_add (pieces, flat_halves_joined (starboard, port, name));
      return;
    }
  if (halves != EXPORT_PORT)
    g_ptr_array_add (pieces, g_steal_pointer (&starboard));
  if (halves != EXPORT_STARBOARD)
    g_ptr_array_add (pieces, g_steal_pointer (&port));
}

void
flat_surface_add (GPtrArray *pieces, const Figures *figures, const SurfaceFigures *surface, Units units, ExportHalves halves)
{
  if (surface->surface->provisional || !isfinite (surface->area_mm2))
    return;
  if (!surface_is_horizontal (surface->surface))
    {
      g_autofree char *name = name_of (figures, surface->surface);

      g_ptr_array_add (pieces, half_made (figures, surface->surface, units, 1, name));
      return;
    }
  add_halves (pieces, figures, surface->surface, units, halves);
}
