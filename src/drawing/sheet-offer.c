#include "drawing/sheet-draft.h"
#include <math.h>
#include "drawing/handles.h"
#include "drawing/part-symbols.h"

/* px: over a shorter way an arrow would be all head; the ring of the balance point then. mm: nobody moves anything by less. */
static const double LEAST_ARROW = 12, RING = 7, STAYS = 0.5;

/* How far it goes, beside it or beside the body, a line or two off where something has its name there, else above or below it. */
static void
put_way (SheetDraft *draft, const Part *then, Box box, const char *text)
{
  static const double lines[] = { 0, 1, -1, 2, -2 };
  const Point at = sheet_px (draft->view, then->x, then->y);
  const double air = 5 * draft->look->u, line = 1.25 * draft->look->text_size, half = sheet_half_width (draft->aeroplane, then->x) * draft->view->scale;
  const double left = fmin (box.min.x, draft->view->origin_x - half) - air, right = fmax (box.max.x, draft->view->origin_x + half) + air;
  const double beside[] = { box.max.x + air, box.min.x - air, right, left };
  Letters tries[G_N_ELEMENTS (lines) * G_N_ELEMENTS (beside) + 2];
  size_t count = 0;

  for (size_t i = 0; i < G_N_ELEMENTS (lines); i++)
    for (size_t k = 0; k < G_N_ELEMENTS (beside); k++)
      tries[count++] = (Letters) {
        .text = text, .place = { beside[k], at.y + lines[i] * line }, .across = k % 2, .rise = LETTERS_AT_MIDDLE,
        .colour = draft->look->selection };
  tries[count++] = (Letters) { .text = text, .place = { at.x, box.min.y - air }, .across = 0.5, .colour = draft->look->selection };
  tries[count++] = (Letters) { .text = text, .place = { at.x, box.max.y + air }, .across = 0.5, .rise = LETTERS_BELOW,
                               .colour = draft->look->selection };
  sheet_put_word_anyway (draft, tries, count);
}

/* A dot where it stands, a bar across where it goes, and how far that is: what the eye cannot take from so short a way. */
static void
draw_short_way (SheetDraft *draft, const Part *now, const Part *then, Box box, bool told)
{
  const Point from = sheet_px (draft->view, now->x, now->y), to = sheet_px (draft->view, then->x, then->y);
  const double mm = hypot (then->x - now->x, then->y - now->y), u = draft->look->u;
  const Point along = point_scale (point_sub (to, from), 4 * u / fmax (point_distance (from, to), 1e-9)), across = { -along.y, along.x };
  const Colour colour = draft->look->selection;
  g_autofree char *text = units_length (draft->scene->units, mm);
  line_kind_set (draft->cr, draft->look, LINE_SELECTED);
  look_set_source (draft->cr, colour);
  line_stroke (draft->cr, from, to);
  line_stroke (draft->cr, point_add (to, across), point_sub (to, across));
  cairo_new_sub_path (draft->cr);
  cairo_arc (draft->cr, from.x, from.y, 2 * u, 0, 2 * G_PI);
  cairo_fill (draft->cr);
  if (told)
    put_way (draft, then, box, text);
}

/* What goes with another of its group, as far and the same way, needs no figure of its own. */
static bool
goes_with_a_mate (const SheetDraft *draft, const Part *now, const Part *then)
{
  const Aeroplane *offered = draft->scene->offered->aeroplane;

  for (size_t i = 0; then->group && aeroplane_part (offered, i) != then; i++)
    {
      const Part *mate = aeroplane_part (offered, i), *before = aeroplane_part_by_id (draft->aeroplane, mate->piece.id);

      if (before && g_strcmp0 (mate->group, then->group) == 0 && fabs (mate->x - before->x - (then->x - now->x)) < STAYS
          && fabs (mate->y - before->y - (then->y - now->y)) < STAYS)
        return true;
    }
  return false;
}

static void
draw_part_offered (SheetDraft *draft, const Part *now, const Part *then)
{
  const Point from = sheet_px (draft->view, now->x, now->y), to = sheet_px (draft->view, then->x, then->y);
  const Box box = box_to_screen (draft->view, sheet_part_own_box (then));

  draw_part_symbol (draft->cr, draft->look, &(PartSymbol) {
    .class_word = then->class_name, .box = box, .turn = then->turn,
    .state = PART_PROPOSED });
  if (point_distance (from, to) >= LEAST_ARROW)
    draw_proposal_arrow (draft->cr, draft->look, from, to);
  else if (hypot (then->x - now->x, then->y - now->y) >= STAYS)
    draw_short_way (draft, now, then, part_symbol_box (draft->look, box), !goes_with_a_mate (draft, now, then));
}

static void
draw_balance_offered (const SheetDraft *draft, const MassFigures *mass)
{
  const Point at = sheet_px (draft->view, mass->x_mm, mass->y_mm);

  if (!point_is_finite (at))
    return;
  line_kind_set (draft->cr, draft->look, LINE_HIDDEN);
  look_set_source (draft->cr, draft->look->selection);
  cairo_new_sub_path (draft->cr);
  cairo_arc (draft->cr, at.x, at.y, RING * draft->look->u, 0, 2 * G_PI);
  cairo_stroke (draft->cr);
}

void
sheet_draw_offer (SheetDraft *draft)
{
  const Figures *offered = draft->scene->offered;

  if (!offered)
    return;
  cairo_save (draft->cr);
  for (size_t i = 0; i < aeroplane_count (offered->aeroplane, PIECE_PART); i++)
    {
      const Part *then = aeroplane_part (offered->aeroplane, i), *now = aeroplane_part_by_id (draft->aeroplane, then->piece.id);

      if (now && now != then && (now->x != then->x || now->y != then->y))
        draw_part_offered (draft, now, then);
    }
  draw_balance_offered (draft, &offered->mass);
  cairo_restore (draft->cr);
}
