#include "plan/placing.h"

Point
placing_sheet (const Placing *self, Point px)
{
  const Point own = axis_frame_own (&self->frame, mapping_to_mm (&self->mapping, px));

  return (Point) { own.x + self->x, own.y };
}

Point
placing_px (const Placing *self, Point sheet)
{
  return mapping_to_px (&self->mapping, axis_frame_paper (&self->frame, (Point) { sheet.x - self->x, sheet.y }));
}
