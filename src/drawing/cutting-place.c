#include "drawing/cutting-place.h"
#include <math.h>
#include "drawing/cutting-name.h"

/* With a gap on both sides what a small laser's bed takes, 600 mm; common practice, no source. */
static const double usual_width = 600 - 2 * CUTTING_GAP;

/* Where the next piece goes, and how far the row and all rows reach. */
typedef struct { double x, y, foot, right; } Place;

static double
row_width (const GPtrArray *pieces)
{
  double width = usual_width;

  for (guint i = 0; i < pieces->len; i++)
    {
      const Box box = cutting_name_bounds (pieces->pdata[i]);
      width = fmax (width, box.max.x - box.min.x);
    }
  return width;
}

static FlatPiece *
placed (const FlatPiece *piece, Box box, double width, Place *place)
{
  const double across = box.max.x - box.min.x, down = box.max.y - box.min.y;

  if (place->x > CUTTING_GAP && place->x + across > CUTTING_GAP + width)
    *place = (Place) { CUTTING_GAP, place->foot + CUTTING_GAP, 0, place->right };
  FlatPiece *made = flat_piece_moved (piece, (Point) { place->x - box.min.x, place->y - box.min.y });
  place->x += across + CUTTING_GAP;
  place->foot = fmax (place->foot, place->y + down);
  place->right = fmax (place->right, place->x);
  return made;
}

GPtrArray *
cutting_place (const GPtrArray *pieces, double *width, double *height)
{
  GPtrArray *made = g_ptr_array_new_with_free_func ((GDestroyNotify) flat_piece_free);
  Place place = { CUTTING_GAP, CUTTING_GAP, CUTTING_GAP, 2 * CUTTING_GAP };
  const double row = row_width (pieces);

  for (guint i = 0; i < pieces->len; i++)
    {
      const Box box = cutting_name_bounds (pieces->pdata[i]);
      if (box.min.x <= box.max.x)
        g_ptr_array_add (made, placed (pieces->pdata[i], box, row, &place));
    }
  *width = ceil (place.right);
  *height = ceil (place.foot + CUTTING_GAP);
  return made;
}
