#include "figures/hatch-way.h"

#include "trammel-config.h"
#include <glib/gi18n-lib.h>
#include "balance/hatch.h"
#include "document/part-box.h"
#include "figures/names.h"

static bool
is_wing (const HatchBar *bar)
{
  return bar->piece->kind == PIECE_SURFACE;
}

/* What lies over the pack on a body is lifted off with the lid: common practice, no source. */
static bool
goes_with_lid (const HatchBar *bar)
{
  static const char *const shells[] = { "canopy", "pilot", "cowl", NULL };
  const char *class_name = is_wing (bar) ? NULL : ((const Part *) bar->piece)->class_name;

  return class_name && g_strv_contains (shells, class_name);
}

/* Whether nothing stands across it; where a wing may, none but that. */
static bool
is_free (const Figures *figures, HatchOpening opening, bool but_for_wing)
{
  g_autoptr (GArray) bars = hatch_bars_of (figures, opening);

  return bars->len == 0 || (but_for_wing && bars->len == 1 && is_wing (&g_array_index (bars, HatchBar, 0)));
}

/* Whether a hatch as long has room in the body from there on, nothing across it, and the pack comes beneath it on its rail. */
static bool
may_be_cut_from (const Figures *figures, HatchSide side, double from)
{
  const HatchFigures *hatch = &figures->hatch;
  const double to = from + hatch->to_mm - hatch->from_mm, half = part_extent (hatch->part).x / 2 + 1e3 * HATCH_BEND;
  const Outline *outline = !hatch->body ? NULL : hatch->body->side_outline ? hatch->body->side_outline : hatch->body->outline;

  return outline && from > outline_bounds (outline).min.x && to < outline_bounds (outline).max.x && from + half <= hatch->part->rail_to
         && to - half >= hatch->part->rail_from && is_free (figures, (HatchOpening) { side, from, to }, false);
}

static char *
let_open_elsewhere (const char *name, HatchSide side, bool under_wing)
{
  if (side == HATCH_ON_TOP)
    return under_wing ? g_strdup_printf (_("“%s” stands across the hatch on the top: let it open on the bottom, and let the wing come off."), name)
                      : g_strdup_printf (_("“%s” stands across the hatch on the top: let it open on the bottom."), name);
  return under_wing ? g_strdup_printf (_("“%s” stands across the hatch on the bottom: let it open on the top, and let the wing come off."), name)
                    : g_strdup_printf (_("“%s” stands across the hatch on the bottom: let it open on the top."), name);
}

/* The shorter way off. */
static char *
let_move (const char *name, double forward, double aft)
{
  return forward < aft ? g_strdup_printf (_("“%s” stands across the hatch: move that part forward, clear of the opening."), name)
                       : g_strdup_printf (_("“%s” stands across the hatch: move that part aft, clear of the opening."), name);
}

static char *
part_text (const Figures *figures, const HatchBar *bar, HatchSide side)
{
  const HatchFigures *hatch = &figures->hatch;
  const Part *part = (const Part *) bar->piece;
  const char *name = piece_name (bar->piece);
  const double half = part_extent (part).x / 2, fore = part->x - half, aft = part->x + half;
  const HatchOpening other = { hatch_other_side (side), hatch->from_mm, hatch->to_mm };

  if (goes_with_lid (bar))
    return g_strdup_printf (_("“%s” stands across the hatch: let it come off with the lid."), name);
  if (may_be_cut_from (figures, side, fore - (hatch->to_mm - hatch->from_mm)))
    return g_strdup_printf (_("“%s” stands across the hatch: cut a hatch as long further forward, clear of it."), name);
  if (may_be_cut_from (figures, side, aft))
    return g_strdup_printf (_("“%s” stands across the hatch: cut a hatch as long further aft, clear of it."), name);
  if (is_free (figures, other, true))
    return let_open_elsewhere (name, side, !is_free (figures, other, false));
  return let_move (name, aft - hatch->from_mm, hatch->to_mm - fore);
}

static const char *
wing_text (const Figures *figures, HatchSide side)
{
  const HatchOpening other = { hatch_other_side (side), figures->hatch.from_mm, figures->hatch.to_mm };
  const bool top = side == HATCH_ON_TOP;

  if (!is_free (figures, other, false))
    return top ? _("The wing lies across the hatch on the top, and the bottom is not free either: let the wing come off.")
               : _("The wing lies across the hatch on the bottom, and the top is not free either: let the wing come off.");
  return top ? _("The wing lies across the hatch on the top: let it open on the bottom, or let the wing come off.")
             : _("The wing lies across the hatch on the bottom: let it open on the top, or let the wing come off.");
}

GPtrArray *
hatch_bar_texts (const Figures *figures)
{
  g_autoptr (GArray) bars = hatch_bars (figures);
  GPtrArray *texts = g_ptr_array_new_with_free_func (g_free);
  const HatchSide side = aeroplane_traits (figures->aeroplane).hatch;

  for (guint i = 0; i < bars->len; i++)
    {
      const HatchBar *bar = &g_array_index (bars, HatchBar, i);

      g_ptr_array_add (texts, is_wing (bar) ? g_strdup (wing_text (figures, side)) : part_text (figures, bar, side));
    }
  return texts;
}
