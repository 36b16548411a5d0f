#include <math.h>
#include "drawing/part-symbols.h"
#include "document/part-class.h"
#include "drawing/rulers.h"
#include "drawing/sheet-draft.h"
#include "drawing/symbols.h"
#include "figures/lead-route.h"

/* Which places of the sheet are taken, so that words stand beside things and not on them. */

/* What lies outside the window takes no room from what is seen: words stand inside. */
static bool
is_seen (const SheetDraft *draft, Box px)
{
  return px.max.x >= 0 && px.max.y >= 0 && px.min.x <= draft->view->width && px.min.y <= draft->view->height;
}

void
sheet_take (SheetDraft *draft, Box px)
{
  if (is_seen (draft, px) && draft->taken_count < SHEET_TAKEN_ROOM)
    draft->taken[draft->taken_count++] = px;
}

bool
sheet_is_free (const SheetDraft *draft, Box px)
{
  for (size_t i = 0; i < draft->taken_count; i++)
    if (boxes_meet (draft->taken[i], px))
      return false;
  return true;
}

static bool
is_in_window (const SheetDraft *draft, Box px)
{
  return px.min.x >= 2 && px.min.y >= 2 && px.max.x <= draft->view->width - 2 && px.max.y <= draft->view->height - 2;
}

int
sheet_put_word (SheetDraft *draft, const Letters tries[], size_t count)
{
  for (size_t i = 0; i < count; i++)
    {
      Letters letters = tries[i];
      const Box box = lettering_box (&draft->lettering, &letters);

      if (!is_in_window (draft, box) || !sheet_is_free (draft, box))
        continue;
      letters.halo = 2 * draft->look->u;
      lettering_draw (&draft->lettering, &letters);
      sheet_take (draft, box_grown (box, 2));
      return i;
    }
  return -1;
}

/* How far a stretch must go to lie within 0..room. */
static double
push (double min, double max, double room)
{
  return min < 4 ? 4 - min : max > room - 4 ? room - 4 - max : 0;
}

void
sheet_put_word_anyway (SheetDraft *draft, const Letters tries[], size_t count)
{
  Letters letters = tries[0];
  Box box;

  if (sheet_put_word (draft, tries, count) >= 0)
    return;
  for (size_t i = count; i-- > 0;)      /* the first that lies in the window: pushed, it would run over what it speaks of */
    if (is_in_window (draft, lettering_box (&draft->lettering, &tries[i])))
      letters = tries[i];
  box = lettering_box (&draft->lettering, &letters);
  letters.place.x += push (box.min.x, box.max.x, draft->view->width);
  letters.place.y += push (box.min.y, box.max.y, draft->view->height);
  letters.plate = true;
  lettering_draw (&draft->lettering, &letters);
}

static Box
around (Point at, double half)
{
  return (Box) { { at.x - half, at.y - half }, { at.x + half, at.y + half } };
}

/* A slanting line as a row of small boxes. */
static void
take_stretch (SheetDraft *draft, Point from, Point to)
{
  const double step = 10, far = point_distance (from, to);

  for (double along = 0; along <= far && far < 1e5; along += step)
    sheet_take (draft, around (point_mix (from, to, far > 0 ? along / far : 0), 2));
}

static void
take_outline (SheetDraft *draft, const Outline *outline)
{
  enum { STEPS = 12 };

  for (size_t i = 0; i < outline_segment_count (outline); i++)
    {
      Point from = outline_node (outline, i);

      for (int j = 1; j <= STEPS; j++)
        {
          const Point to = segment_at (outline_node (outline, i), outline_segment (outline, i), j / (double) STEPS);

          take_stretch (draft, view_to_screen (draft->view, from), view_to_screen (draft->view, to));
          take_stretch (draft, sheet_px (draft->view, from.x, -from.y), sheet_px (draft->view, to.x, -to.y));
          from = to;
        }
    }
}

static void
take_control (SheetDraft *draft, const Surface *surface, const Control *control)
{
  const Point inner = { control->hinge_inner_x, control->inner }, outer = { control->hinge_outer_x, control->outer };
  const double inner_cut = sheet_control_cut (surface, inner.y, inner.x), outer_cut = sheet_control_cut (surface, outer.y, outer.x);

  for (int side = -1; side <= 1; side += 2)
    {
      take_stretch (draft, sheet_px (draft->view, inner.x, side * inner.y), sheet_px (draft->view, outer.x, side * outer.y));
      if (!isnan (inner_cut))
        take_stretch (draft, sheet_px (draft->view, inner.x, side * inner.y), sheet_px (draft->view, inner_cut, side * inner.y));
      if (!isnan (outer_cut))
        take_stretch (draft, sheet_px (draft->view, outer.x, side * outer.y), sheet_px (draft->view, outer_cut, side * outer.y));
    }
}

static void
take_surfaces (SheetDraft *draft)
{
  for (size_t i = 0; i < aeroplane_count (draft->aeroplane, PIECE_SURFACE); i++)
    {
      const Surface *surface = aeroplane_surface (draft->aeroplane, i);

      if (!surface_is_horizontal (surface))
        continue;
      take_outline (draft, surface->outline);
      for (size_t j = 0; j < surface->control_count; j++)
        take_control (draft, surface, &surface->controls[j]);
    }
}

static void
take_neutral_point (SheetDraft *draft)
{
  Point place, at;

  if (!sheet_neutral_point (draft->figures, &place))
    return;
  at = view_to_screen (draft->view, place);
  sheet_take (draft, around (at, neutral_diamond_half (draft->look)));
  sheet_take (draft, (Box) { { at.x, at.y - 2 }, { sheet_px (draft->view, 0, -sheet_half_width (draft->aeroplane, place.x)).x, at.y + 2 } });
}

static void
take_reference_chord (SheetDraft *draft)
{
  const SurfaceFigures *reference = draft->figures->reference;
  Box bar;

  if (!reference || !isfinite (reference->planform.mac))
    return;
  bar = (Box) { { reference->planform.mac_leading_edge_x, reference->planform.mac_station },
                { reference->planform.mac_leading_edge_x + reference->planform.mac, reference->planform.mac_station } };
  sheet_take (draft, box_grown (box_to_screen (draft->view, bar), 7));
}

static void
take_marks (SheetDraft *draft)
{
  Point place;

  for (size_t i = 0; i < draft->figures->balance.mark_count; i++)
    if (sheet_mark_place (draft->figures, i, &place))
      for (int side = -1; side <= 1; side += 2)
        sheet_take (draft, around (sheet_px (draft->view, place.x, side * place.y), 11));
}

static void
take_band (SheetDraft *draft)
{
  SheetBand band;

  if (!sheet_band (draft->figures, &band))
    return;
  for (int side = -1; side <= 1; side += 2)
    {
      const Point a = sheet_px (draft->view, band.forward_x, side * band.inner), b = sheet_px (draft->view, band.aft_x, side * band.outer);

      sheet_take (draft, (Box) { { fmin (a.x, b.x), a.y }, { fmax (a.x, b.x), b.y } });
    }
}

/* A part, and what stands out of it: a motor's shaft. A shell is a line round others, and words may stand in it. */
static void
take_part (SheetDraft *draft, const Part *part)
{
  const Box box = part_symbol_box (draft->look, box_to_screen (draft->view, sheet_part_box (part)));
  const double middle = (box.min.x + box.max.x) / 2, u = draft->look->u;

  if (part_symbol_is_shell (part->class_name))
    return;
  sheet_take (draft, box_grown (box, 2 * u));      /* a servo's arm stands out a little */
  if (part_is_a (part, "motor"))
    sheet_take (draft, (Box) { { middle - 3 * u, box.min.y - 8 * u }, { middle + 3 * u, box.min.y } });
}

/* The datum and the centre line, across the window. */
static void
take_axes (SheetDraft *draft)
{
  const Point origin = { draft->view->origin_x, draft->view->origin_y };

  sheet_take (draft, (Box) { { 0, origin.y - 1.5 }, { draft->view->width, origin.y + 1.5 } });
  sheet_take (draft, (Box) { { origin.x - 1.5, 0 }, { origin.x + 1.5, draft->view->height } });
}

static void
take_scale_bar (SheetDraft *draft)
{
  const Ruler ruler = { .look = draft->look, .units = draft->scene->units, .view = draft->view };

  if (!draft->look->paper)
    sheet_take (draft, scale_bar_box (&ruler));
}

static void
take_bodies (SheetDraft *draft)
{
  for (size_t i = 0; i < aeroplane_count (draft->aeroplane, PIECE_BODY); i++)
    if (aeroplane_body (draft->aeroplane, i)->outline != NULL)
      take_outline (draft, aeroplane_body (draft->aeroplane, i)->outline);
}

/* Every leg's line, from part to part or to the joint. */
static void
take_leads (SheetDraft *draft)
{
  for (size_t i = 0; i < aeroplane_count (draft->aeroplane, PIECE_LEAD); i++)
    {
      const Lead *lead = aeroplane_lead (draft->aeroplane, i);

      for (int leg = 0; leg < lead_leg_count (lead); leg++)
        {
          g_autoptr (GArray) route = lead_route (draft->aeroplane, lead, leg);

          for (guint k = 1; route && k < route->len; k++)
            take_stretch (draft, view_to_screen (draft->view, g_array_index (route, Point, k - 1)),
                          view_to_screen (draft->view, g_array_index (route, Point, k)));
        }
    }
}

void
sheet_take_all (SheetDraft *draft)
{
  take_axes (draft);
  take_scale_bar (draft);
  for (size_t i = 0; i < aeroplane_count (draft->aeroplane, PIECE_PART); i++)
    take_part (draft, aeroplane_part (draft->aeroplane, i));
  take_marks (draft);
  take_neutral_point (draft);
  take_reference_chord (draft);
  take_band (draft);
  if (isfinite (draft->figures->mass.x_mm))
    sheet_take (draft, around (sheet_px (draft->view, draft->figures->mass.x_mm, draft->figures->mass.y_mm), 12));
  take_surfaces (draft);
  take_bodies (draft);
  take_leads (draft);
}
