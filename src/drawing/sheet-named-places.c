#include "drawing/sheet-draft.h"
#include <math.h>
#include "drawing/outline-path.h"

/* Ribs and formers while somebody puts them: on both sides, each with its name at its outer end. */

static void
put_name (SheetDraft *draft, const char *name, Point at, double across, double size)
{
  if (name)
    lettering_draw (&draft->lettering, &(Letters) { .text = name, .place = at, .across = across, .rise = LETTERS_AT_MIDDLE, .size = size,
                                                    .colour = draft->look->graphite, .halo = 2 * draft->look->u });
}

static void
draw_surface_ribs (SheetDraft *draft, const Surface *surface)
{
  const PlanformSides sides = surface->root_open ? PLANFORM_OPEN : PLANFORM_CARRIED;
  StationCut cut;

  for (size_t i = 0; i < surface->rib_count && surface_is_horizontal (surface); i++)
    {
      const double station = surface->ribs[i].place;
      if (planform_cut (surface->outline, sides, station, &cut) != CORE_OK)
        continue;
      for (int side = -1; side <= 1; side += 2)
        line_stroke (draft->cr, sheet_px (draft->view, cut.leading_x, side * station), sheet_px (draft->view, cut.trailing_x, side * station));
      const Point behind = sheet_px (draft->view, cut.trailing_x, station);
      put_name (draft, surface->ribs[i].name, (Point) { behind.x, behind.y + draft->look->ruler_size }, 0.5, draft->look->ruler_size);
    }
}

void
sheet_draw_named_places (SheetDraft *draft)
{
  line_kind_set (draft->cr, draft->look, LINE_CONSTRUCTION);
  for (size_t i = 0; i < aeroplane_count (draft->aeroplane, PIECE_SURFACE); i++)
    {
      look_set_source (draft->cr, draft->look->construction);
      draw_surface_ribs (draft, aeroplane_surface (draft->aeroplane, i));
    }
  for (size_t i = 0; i < aeroplane_count (draft->aeroplane, PIECE_BODY); i++)
    {
      const Body *body = aeroplane_body (draft->aeroplane, i);
      for (size_t j = 0; body->outline && j < body->former_count; j++)
        {
          const double x = body->formers[j].place;
          const Point side = sheet_px (draft->view, x, outline_reach_at (body->outline, x));
          put_name (draft, body->formers[j].name, (Point) { side.x + 5, side.y }, 0, draft->look->text_size);
        }
    }
}
