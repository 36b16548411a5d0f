#include "figures/hatch-way.h"

#include <math.h>
#include "document/part-box.h"
#include "document/part-class.h"
#include "figures/surface-figures.h"

/* mm: less no builder saws. */
static const double WORTH_TELLING = 1;

HatchSide
hatch_other_side (HatchSide side)
{
  return side == HATCH_ON_TOP ? HATCH_ON_BOTTOM : side == HATCH_ON_BOTTOM ? HATCH_ON_TOP : HATCH_NOT_CHOSEN;
}

/* How much of the opening lies between these; whether that is worth telling. */
static bool
bar_over (HatchBar *bar, HatchOpening opening, double from, double to)
{
  bar->from_mm = fmax (opening.from_mm, from);
  bar->to_mm = fmin (opening.to_mm, to);
  return bar->to_mm - bar->from_mm > WORTH_TELLING;
}

static bool
wing_is_across (const Figures *figures, HatchOpening opening, HatchBar *bar)
{
  const SurfaceFigures *wing = figures->reference;
  const double level = figures->hatch.part->z;
  StationCut root;

  if (!wing || planform_cut (wing->surface->outline, surface_sides (wing->surface), 0, &root) != CORE_OK)
    return false;
  bar->piece = &wing->surface->piece;
  return !(opening.side == HATCH_ON_TOP ? wing->surface->z < level : wing->surface->z > level)
         && bar_over (bar, opening, root.leading_x, root.trailing_x);
}

/* Wheels hang clear of it, but for one in a slot. */
static bool
is_at_body (const Part *part, const Body *body)
{
  if (!body)
    return true;
  return body_covers (body, (Point) { part->x, part->y })
         && !(part_is_a (part, "wheels") && body->side_outline && part->z + part->height / 2 < outline_bounds (body->side_outline).min.y);
}

static bool
is_beyond (const Part *part, const Part *pack, HatchSide side)
{
  return part_is_a (part, "cowl") || (side == HATCH_ON_TOP ? part->z > pack->z : part->z < pack->z);
}

static bool
part_is_across (const Figures *figures, const Part *part, HatchOpening opening, HatchBar *bar)
{
  const HatchFigures *hatch = &figures->hatch;

  if (!part->aboard || !is_beyond (part, hatch->part, opening.side) || !part_class_is_of_airframe (part->class_name))
    return false;
  const Point extent = part_extent (part);
  bar->piece = &part->piece;
  return bar_over (bar, opening, part->x - extent.x / 2, part->x + extent.x / 2)
         && fabs (part->y - hatch->part->y) < (extent.y + hatch->width_mm) / 2 && is_at_body (part, hatch->body);
}

GArray *
hatch_bars_of (const Figures *figures, HatchOpening opening)
{
  GArray *bars = g_array_new (FALSE, FALSE, sizeof (HatchBar));
  HatchBar bar;

  if (!figures->hatch.part || opening.side == HATCH_NOT_CHOSEN)
    return bars;
  if (wing_is_across (figures, opening, &bar))
    g_array_append_val (bars, bar);
  for (size_t i = 0; i < aeroplane_count (figures->aeroplane, PIECE_PART); i++)
    if (part_is_across (figures, aeroplane_part (figures->aeroplane, i), opening, &bar))
      g_array_append_val (bars, bar);
  return bars;
}

GArray *
hatch_bars (const Figures *figures)
{
  return hatch_bars_of (figures, (HatchOpening) { aeroplane_traits (figures->aeroplane).hatch, figures->hatch.from_mm, figures->hatch.to_mm });
}

void
hatch_bars_write (JsonText *json, const Figures *figures)
{
  g_autoptr (GArray) bars = hatch_bars (figures);

  json_text_open_array (json, "in_the_way");
  for (guint i = 0; i < bars->len; i++)
    {
      const HatchBar *bar = &g_array_index (bars, HatchBar, i);

      json_text_open_object (json, NULL);
      json_text_string (json, "id", bar->piece->id);
      json_text_number (json, "from_mm", bar->from_mm);
      json_text_number (json, "to_mm", bar->to_mm);
      json_text_close_object (json);
    }
  json_text_close_array (json);
}
