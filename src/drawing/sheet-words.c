#include "drawing/sheet-draft.h"
#include <math.h>
#include "trammel-config.h"
#include <glib/gi18n-lib.h>
#include "document/part-class.h"
#include "drawing/outline-path.h"
#include "drawing/part-symbols.h"
#include "drawing/symbols.h"

void
sheet_take (SheetDraft *draft, Box px)
{
  if (draft->taken_count < SHEET_TAKEN_ROOM)
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

int
sheet_put_word (SheetDraft *draft, const Letters tries[], size_t count)
{
  for (size_t i = 0; i < count; i++)
    {
      Letters letters = tries[i];
      const Box box = lettering_box (&draft->lettering, &letters);

      if (!sheet_is_free (draft, box))
        continue;
      letters.halo = 2 * draft->look->u;
      lettering_draw (&draft->lettering, &letters);
      sheet_take (draft, box_grown (box, 2));
      return i;
    }
  return -1;
}

static Box
part_px (const SheetDraft *draft, const Part *part)
{
  return part_symbol_box (draft->look, box_to_screen (draft->view, sheet_part_box (part)));
}

static Box
around (Point at, double half)
{
  return (Box) { { at.x - half, at.y - half }, { at.x + half, at.y + half } };
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

/* The signs' places, before any word is put. */
static void
take_signs (SheetDraft *draft)
{
  SheetBand band;
  Point place;

  for (size_t i = 0; i < draft->figures->balance.mark_count; i++)
    if (sheet_mark_place (draft->figures, i, &place))
      for (int side = -1; side <= 1; side += 2)
        sheet_take (draft, around (sheet_px (draft->view, place.x, side * place.y), 11));
  take_neutral_point (draft);
  take_reference_chord (draft);
  if (sheet_band (draft->figures, &band))
    for (int side = -1; side <= 1; side += 2)
      {
        const Point a = sheet_px (draft->view, band.forward_x, side * band.inner), b = sheet_px (draft->view, band.aft_x, side * band.outer);

        sheet_take (draft, (Box) { { fmin (a.x, b.x), a.y }, { fmax (a.x, b.x), b.y } });
      }
  if (isfinite (draft->figures->mass.x_mm))
    sheet_take (draft, around (sheet_px (draft->view, draft->figures->mass.x_mm, draft->figures->mass.y_mm), 12));
}

void
sheet_take_all (SheetDraft *draft)
{
  for (size_t i = 0; i < aeroplane_count (draft->aeroplane, PIECE_PART); i++)
    {
      const Part *part = aeroplane_part (draft->aeroplane, i);

      if (part_symbol_is_solid (part->class_name))
        sheet_take (draft, part_px (draft, part));
    }
  take_signs (draft);
}

static void
put_datum_word (SheetDraft *draft)
{
  const double y = draft->view->origin_y, u = draft->look->u;
  const Letters letters = {
    .text = C_("on the sheet", "datum"), .place = { 21 * u, y - 5 * u }, .colour = draft->look->construction };

  if (y > 0 && y < draft->view->height)
    sheet_put_word (draft, &letters, 1);
}

static void
put_chord_word (SheetDraft *draft)
{
  const SurfaceFigures *reference = draft->figures->reference;
  g_autofree char *length = NULL, *text = NULL;
  Point at;
  double away;

  if (!reference || !isfinite (reference->planform.mac) || !draft->scene->show_figures)
    return;
  length = units_length_figure (draft->scene->units, reference->planform.mac);
  /* Translators: mean aerodynamic chord and its length, "MAC 110" */
  text = g_strdup_printf (_("MAC %s"), length);
  at = sheet_px (draft->view, reference->planform.mac_leading_edge_x + 0.62 * reference->planform.mac, reference->planform.mac_station);
  away = 12 * draft->look->u;
  sheet_put_word (draft, (Letters[]) {
    { .text = text, .place = { at.x + away, at.y } },
    { .text = text, .place = { at.x - away, at.y }, .across = 1 } }, 2);
}

static void
put_neutral_word (SheetDraft *draft)
{
  const bool alone = draft->figures->neutral_point.wing_alone;
  const char *text = alone ? _("neutral point of the wing alone") : _("neutral point");
  const Colour colour = draft->look->neutral;
  const double away = neutral_diamond_half (draft->look) + 4 * draft->look->u;
  Point place, at;

  if (!sheet_neutral_point (draft->figures, &place) || !draft->scene->show_figures)
    return;
  at = view_to_screen (draft->view, place);
  sheet_put_word (draft, (Letters[]) {
    { .text = text, .place = { at.x, at.y + away }, .across = 0.5, .rise = LETTERS_BELOW, .colour = colour },
    { .text = text, .place = { at.x, at.y + away }, .across = 0.43, .rise = LETTERS_BELOW, .colour = colour },
    { .text = text, .place = { at.x, at.y + away }, .across = 0.2, .rise = LETTERS_BELOW, .colour = colour },
    { .text = text, .place = { at.x, at.y + away }, .across = 0.8, .rise = LETTERS_BELOW, .colour = colour },
    { .text = text, .place = { at.x - away, at.y }, .across = 1, .rise = LETTERS_AT_MIDDLE, .colour = colour },
    { .text = text, .place = { at.x, at.y - away }, .across = 0.5, .colour = colour } }, 6);
}

/* A word beside the body for something inside it, on a thin line that leads there. */
static void
put_word_beside_body (SheetDraft *draft, const char *text, Box box, double x)
{
  const double middle = (box.min.y + box.max.y) / 2, beyond = 14 * draft->look->u;
  const double half = sheet_half_width (draft->aeroplane, x) * draft->view->scale;
  const double right = fmax (draft->view->origin_x + half, box.max.x) + beyond, left = fmin (draft->view->origin_x - half, box.min.x) - beyond;
  const Letters tries[] = {
    { .text = text, .place = { right, middle }, .rise = LETTERS_AT_MIDDLE },
    { .text = text, .place = { left, middle }, .across = 1, .rise = LETTERS_AT_MIDDLE } };
  const int taken = sheet_put_word (draft, tries, G_N_ELEMENTS (tries));
  const double air = 3 * draft->look->u;

  if (taken < 0)
    return;
  line_kind_set (draft->cr, draft->look, LINE_CONSTRUCTION);
  look_set_source (draft->cr, draft->look->construction);
  line_stroke (draft->cr, (Point) { taken == 0 ? box.max.x : left + air, middle }, (Point) { taken == 0 ? right - air : box.min.x, middle });
}

static void
put_word_round_box (SheetDraft *draft, const char *text, Box box)
{
  const Point middle = point_mix (box.min, box.max, 0.5);
  const double air = 5 * draft->look->u;
  const Letters tries[] = {
    { .text = text, .place = { middle.x, box.max.y + air }, .across = 0.5, .rise = LETTERS_BELOW },
    { .text = text, .place = { middle.x, box.min.y - air }, .across = 0.5 },
    { .text = text, .place = { box.max.x + air, middle.y }, .rise = LETTERS_AT_MIDDLE },
    { .text = text, .place = { box.min.x - air, middle.y }, .across = 1, .rise = LETTERS_AT_MIDDLE } };

  sheet_put_word (draft, tries, G_N_ELEMENTS (tries));
}

static void
put_part_word (SheetDraft *draft, const Part *part)
{
  const PartClass *class = part_class_find (part->class_name);
  const char *name = part->name ? part->name : class ? _(class->name) : part->piece.id;
  const bool ballast = g_strcmp0 (part->class_name, "ballast") == 0;
  g_autofree char *mass = ballast ? units_mass (draft->scene->units, part->mass) : NULL;
  const char *text = ballast ? mass : name;
  const Box box = part_px (draft, part);

  if (!text || !(draft->scene->show_names || ballast))
    return;
  if (fabs (part->y) < sheet_half_width (draft->aeroplane, part->x))
    put_word_beside_body (draft, text, box, part->x);
  else
    put_word_round_box (draft, text, box);
}

/* Formers get their names while their body is at hand. */
static void
put_former_words (SheetDraft *draft, const Body *body)
{
  for (size_t i = 0; body->outline && i < body->former_count; i++)
    {
      const NamedPlace *former = &body->formers[i];
      const Point at = sheet_px (draft->view, former->place, fmax (0, outline_reach_at (body->outline, former->place)));

      if (former->name)
        sheet_put_word (draft, &(Letters) { .text = former->name, .place = { at.x + 6, at.y }, .rise = LETTERS_AT_MIDDLE,
                                            .colour = draft->look->construction }, 1);
    }
}

void
sheet_draw_words (SheetDraft *draft)
{
  put_datum_word (draft);
  put_chord_word (draft);
  put_neutral_word (draft);
  for (size_t i = 0; i < aeroplane_count (draft->aeroplane, PIECE_PART); i++)
    put_part_word (draft, aeroplane_part (draft->aeroplane, i));
  for (size_t i = 0; i < aeroplane_count (draft->aeroplane, PIECE_BODY); i++)
    if (selection_has (draft->selection, aeroplane_body (draft->aeroplane, i)->piece.id))
      put_former_words (draft, aeroplane_body (draft->aeroplane, i));
}
