#include "drawing/sheet-draft.h"
#include <math.h>
#include "trammel-config.h"
#include <glib/gi18n-lib.h>
#include "drawing/handles.h"
#include "drawing/part-symbols.h"
#include "drawing/room-edges.h"
#include "drawing/runs.h"

static Box
part_px (const SheetDraft *draft, const Part *part)
{
  return part_symbol_box (draft->look, box_to_screen (draft->view, sheet_part_box (part)));
}

static void
draw_part_rail (const SheetDraft *draft, const Part *part, bool selected)
{
  const Solution *solution = part->piece.id ? figures_solution (draft->figures, part->piece.id) : NULL;
  const SheetView *view = draft->view;
  RailLine rail = {
    .x = sheet_rail_px (draft->look, view, part), .from = view->origin_y + part->rail_from * view->scale,
    .to = view->origin_y + part->rail_to * view->scale, .band_from = NAN, .band_to = NAN,
    .colour = selected ? draft->look->selection : draft->look->graphite };

  if (solution && isfinite (solution->band_from_mm) && isfinite (solution->band_to_mm))
    {
      rail.band_from = view->origin_y + solution->band_from_mm * view->scale;
      rail.band_to = view->origin_y + solution->band_to_mm * view->scale;
    }
  draw_rail (draft->cr, draft->look, &rail);
}

static void
draw_one_part (const SheetDraft *draft, const Part *part, bool selected)
{
  const PartSymbol symbol = {
    .class_word = part->class_name, .box = box_to_screen (draft->view, sheet_part_own_box (part)), .turn = part->turn,
    .state = part_state_of (part, selected) };

  draw_part_symbol (draft->cr, draft->look, &symbol);
}

/* Where the selected part should be for the aim: a broken box, and an arrow beside it. */
static void
draw_proposal (const SheetDraft *draft, const Part *part)
{
  const Box around = part_px (draft, part);
  Box box = part_symbol_box (draft->look, box_to_screen (draft->view, sheet_part_own_box (part)));
  double x, shift;

  if (!sheet_proposed_x (draft->figures, part, &x))
    return;
  shift = (x - part->x) * draft->view->scale;
  if (fabs (shift) >= 10)
    {
      const double beside = around.max.x + 5 * draft->look->u, y = (box.min.y + box.max.y) / 2, reach = fmin (fabs (shift), 20);

      draw_proposal_arrow (draft->cr, draft->look, (Point) { beside, y }, (Point) { beside, y + copysign (reach, shift) });
    }
  box.min.y += shift;
  box.max.y += shift;
  draw_part_symbol (draft->cr, draft->look, &(PartSymbol) { .class_word = part->class_name, .box = box, .turn = part->turn,
                                                                .state = PART_PROPOSED });
}

void
sheet_draw_parts (const SheetDraft *draft)
{
  const size_t count = aeroplane_count (draft->aeroplane, PIECE_PART);
  const bool one = selection_single (draft->selection) != NULL;

  for (int selected = 0; selected < 2; selected++)
    for (size_t i = 0; i < count; i++)
      {
        const Part *part = aeroplane_part (draft->aeroplane, i);

        if (selection_has (draft->selection, part->piece.id) != selected)
          continue;
        if (selected && one && !draft->look->paper)
          draw_proposal (draft, part);
        draw_one_part (draft, part, selected);
        if (part->has_rail)
          draw_part_rail (draft, part, selected);
      }
  if (!draft->look->paper)
    draw_room_edges (draft->cr, draft->look, draft->view, draft->figures, false);
}
