#include "drawing/sheet-places.h"
#include <math.h>

Box
box_empty (void)
{
  return (Box) { { INFINITY, INFINITY }, { -INFINITY, -INFINITY } };
}

bool
box_is_empty (Box box)
{
  return !(box.min.x <= box.max.x && box.min.y <= box.max.y);
}

Box
box_joined (Box a, Box b)
{
  if (box_is_empty (a))
    return b;
  if (box_is_empty (b))
    return a;
  return (Box) { { fmin (a.min.x, b.min.x), fmin (a.min.y, b.min.y) }, { fmax (a.max.x, b.max.x), fmax (a.max.y, b.max.y) } };
}

Box
box_with (Box box, Point place)
{
  return box_joined (box, (Box) { place, place });
}

Box
box_grown (Box box, double by)
{
  return box_is_empty (box) ? box : (Box) { { box.min.x - by, box.min.y - by }, { box.max.x + by, box.max.y + by } };
}

bool
box_holds (Box box, Point place)
{
  return box.min.x <= place.x && place.x <= box.max.x && box.min.y <= place.y && place.y <= box.max.y;
}

bool
boxes_meet (Box a, Box b)
{
  return a.min.x < b.max.x && b.min.x < a.max.x && a.min.y < b.max.y && b.min.y < a.max.y;
}

Box
box_to_screen (const SheetView *view, Box box)
{
  return box_is_empty (box) ? box : (Box) { view_to_screen (view, box.min), view_to_screen (view, box.max) };
}
