#include "drawing/sheet-draft.h"
#include "drawing/handles.h"
#include "drawing/part-symbols.h"

/* px: a part that hardly moves gets no arrow; the ring of the balance point then. */
static const double LEAST_ARROW = 12, RING = 7;

static void
draw_part_offered (const SheetDraft *draft, const Part *now, const Part *then)
{
  const Point from = sheet_px (draft->view, now->x, now->y), to = sheet_px (draft->view, then->x, then->y);

  draw_part_symbol (draft->cr, draft->look, &(PartSymbol) {
    .class_word = then->class_name, .box = box_to_screen (draft->view, sheet_part_own_box (then)), .turn = then->turn,
    .state = PART_PROPOSED });
  if (point_distance (from, to) >= LEAST_ARROW)
    draw_proposal_arrow (draft->cr, draft->look, from, to);
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
sheet_draw_offer (const SheetDraft *draft)
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
