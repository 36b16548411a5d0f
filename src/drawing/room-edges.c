#include "drawing/room-edges.h"
#include <math.h>
#include <string.h>
#include "document/part-box.h"
#include "drawing/line-kind.h"
#include "drawing/side-places.h"

typedef struct {
  cairo_t *cr;
  const SheetView *view;
  Point corners[4];      /* of the box as seen, in order round; x aft, y to starboard or up, mm */
} EdgeDraft;

/* The side of the box that looks most that way. */
static void
add_edge (const EdgeDraft *d, Point way)
{
  const Point middle = point_mix (d->corners[0], d->corners[2], 0.5);
  double most = -INFINITY;
  int best = 0;

  for (int i = 0; i < 4; i++)
    {
      const Point out = point_sub (point_mix (d->corners[i], d->corners[(i + 1) % 4], 0.5), middle);
      const double length = hypot (out.x, out.y), looks = length > 0 ? (out.x * way.x + out.y * way.y) / length : -INFINITY;
      if (looks > most)
        {
          most = looks;
          best = i;
        }
    }
  const Point from = view_to_screen (d->view, d->corners[best]), to = view_to_screen (d->view, d->corners[(best + 1) % 4]);
  cairo_move_to (d->cr, from.x, from.y);
  cairo_line_to (d->cr, to.x, to.y);
}

static void
add_edges (cairo_t *cr, const SheetView *view, const Part *part, unsigned edges, bool side)
{
  const unsigned low = side ? EDGE_BOTTOM : EDGE_PORT, high = side ? EDGE_TOP : EDGE_STARBOARD;
  EdgeDraft draft = { .cr = cr, .view = view };

  part_corners (part, draft.corners);
  if (side)
    {
      const Box box = side_part_box (part);
      memcpy (draft.corners, (Point[]) { box.min, { box.min.x, box.max.y }, box.max, { box.max.x, box.min.y } }, sizeof draft.corners);
    }
  if (edges & EDGE_FORE)
    add_edge (&draft, (Point) { -1, 0 });
  if (edges & EDGE_AFT)
    add_edge (&draft, (Point) { 1, 0 });
  if (edges & low)
    add_edge (&draft, (Point) { 0, -1 });
  if (edges & high)
    add_edge (&draft, (Point) { 0, 1 });
}

void
draw_room_edges (cairo_t *cr, const Look *look, const SheetView *view, const Figures *figures, bool side)
{
  cairo_save (cr);
  for (guint i = 0; i < figures->room->len; i++)
    {
      const RoomFault *fault = &g_array_index (figures->room, RoomFault, i);

      add_edges (cr, view, fault->part, fault->edges, side);
      if (fault->other)
        add_edges (cr, view, fault->other, fault->other_edges, side);
    }
  line_kind_set (cr, look, LINE_PART);
  cairo_set_line_width (cr, 1.3 * look->selected_width);
  look_set_source (cr, look->warning);
  cairo_stroke (cr);
  cairo_restore (cr);
}
