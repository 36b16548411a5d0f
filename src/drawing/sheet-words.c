#include "drawing/sheet-draft.h"
#include <math.h>
#include "trammel-config.h"
#include <glib/gi18n-lib.h>
#include "document/part-class.h"
#include "drawing/outline-path.h"
#include "drawing/part-symbols.h"
#include "drawing/symbols.h"

static Box
part_px (const SheetDraft *draft, const Part *part)
{
  return part_symbol_box (draft->look, box_to_screen (draft->view, sheet_part_box (part)));
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

/* Beside its bar, in the wing: where a hinge line or a name leaves room. */
static void
put_chord_word (SheetDraft *draft)
{
  static const double levels[] = { 0.62, 0.4, 0.8, 0.2 };
  const SurfaceFigures *reference = draft->figures->reference;
  const double away = 12 * draft->look->u;
  g_autofree char *length = NULL, *text = NULL;
  Letters tries[2 * G_N_ELEMENTS (levels)];

  if (!reference || !isfinite (reference->planform.mac) || !draft->scene->show_figures)
    return;
  length = units_length_figure (draft->scene->units, reference->planform.mac);
  /* Translators: mean aerodynamic chord and its length, "MAC 110" */
  text = g_strdup_printf (_("MAC %s"), length);
  for (size_t i = 0; i < G_N_ELEMENTS (tries); i++)
    {
      const Planform *planform = &reference->planform;
      const Point at = sheet_px (draft->view, planform->mac_leading_edge_x + levels[i / 2] * planform->mac, planform->mac_station);

      tries[i] = (Letters) { .text = text, .place = { at.x + (i % 2 ? -away : away), at.y }, .across = i % 2 };
    }
  sheet_put_word (draft, tries, G_N_ELEMENTS (tries));
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
    { .text = text, .place = { at.x, at.y + away }, .across = 0.6, .rise = LETTERS_BELOW, .colour = colour },
    { .text = text, .place = { at.x, at.y + away }, .across = 0.8, .rise = LETTERS_BELOW, .colour = colour },
    { .text = text, .place = { at.x - away, at.y }, .across = 1, .rise = LETTERS_AT_MIDDLE, .colour = colour },
    { .text = text, .place = { at.x, at.y - away }, .across = 0.5, .colour = colour },
    { .text = text, .place = { at.x, at.y - away }, .across = 0.8, .colour = colour } }, 8);
}

/* A word beside the body for something inside it, on a thin line that leads there: at its own height, or a line or two off. */
static void
put_word_beside_body (SheetDraft *draft, const char *text, Box box, double x)
{
  static const double steps[] = { 0, 1, -1, 2, -2 };
  const double middle = (box.min.y + box.max.y) / 2, beyond = 14 * draft->look->u, step = 1.25 * draft->look->text_size;
  const double half = sheet_half_width (draft->aeroplane, x) * draft->view->scale;
  const double right = fmax (draft->view->origin_x + half, box.max.x) + beyond, left = fmin (draft->view->origin_x - half, box.min.x) - beyond;
  const double air = 3 * draft->look->u;
  Letters tries[2 * G_N_ELEMENTS (steps)];
  int taken;

  for (size_t i = 0; i < G_N_ELEMENTS (tries); i++)
    tries[i] = (Letters) {
      .text = text, .place = { i % 2 ? left : right, middle + steps[i / 2] * step }, .across = i % 2, .rise = LETTERS_AT_MIDDLE };
  taken = sheet_put_word (draft, tries, G_N_ELEMENTS (tries));
  if (taken < 0)
    return;
  line_kind_set (draft->cr, draft->look, LINE_CONSTRUCTION);
  look_set_source (draft->cr, draft->look->construction);
  line_stroke (draft->cr, (Point) { taken % 2 ? box.min.x : box.max.x, middle },
               (Point) { taken % 2 ? left + air : right - air, tries[taken].place.y });
}

/* Below, above or beside it; below and above also pushed to either side, where something else stands in the way. */
static void
put_word_round_box (SheetDraft *draft, const char *text, Box box)
{
  static const double across[] = { 0.5, 0.5, 0.2, 0.8, 0.2, 0.8, 0, 1, 0, 1 };
  const Point middle = point_mix (box.min, box.max, 0.5);
  const double air = 5 * draft->look->u, side = (box.max.x - box.min.x) / 2;
  Letters tries[G_N_ELEMENTS (across) + 2];
  size_t count = 0;

  for (size_t i = 0; i < G_N_ELEMENTS (across); i++)
    {
      const bool below = i < 2 ? i == 0 : (i - 2) % 4 < 2;
      const double x = middle.x + (across[i] == 0 ? -side : across[i] == 1 ? side : 0);

      if (i == 2)
        {
          tries[count++] = (Letters) { .text = text, .place = { box.max.x + air, middle.y }, .rise = LETTERS_AT_MIDDLE };
          tries[count++] = (Letters) { .text = text, .place = { box.min.x - air, middle.y }, .across = 1, .rise = LETTERS_AT_MIDDLE };
        }
      tries[count++] = (Letters) {
        .text = text, .place = { x, below ? box.max.y + air : box.min.y - air }, .across = across[i],
        .rise = below ? LETTERS_BELOW : LETTERS_ON_LINE };
    }
  sheet_put_word (draft, tries, count);
}

static void
put_part_word (SheetDraft *draft, const Part *part)
{
  const PartClass *class = part_class_find (part->class_name);
  const char *name = part->name ? part->name : class ? _(class->name) : part->piece.id;
  const bool ballast = part_is_a (part, "ballast");
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

      if (former->name && !sheet_bays_name_former (draft, body, former))
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
