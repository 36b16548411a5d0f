#include "app/grip-kind.h"
#include "app/outline-owner.h"

/* The half-outline of a horizontal surface or of a body's plan begins on the centre line, a fin's at its root, unless it was drawn below
 * it. A side outline may reach as low as it likes. */
double
grip_floor (const Grip *self)
{
  const Surface *surface = aeroplane_surface_by_id (self->start, self->id);

  if (grip_across (self) != ACROSS_HEIGHT)
    return 0;
  return surface == NULL ? -INFINITY : fmin (outline_bounds (surface->outline).min.y, 0);
}

/* One that stood below from the beginning is nobody's business here. */
static bool
grip_handle_sinks (const Grip *self, const Outline *outline, size_t node, HandleSide side)
{
  const Outline *start = grip_outline (self, self->start);
  const double floor = grip_floor (self);
  Point now, before;

  if (!outline_handle (outline, node, side, &now) || now.y >= floor)
    return false;
  return !outline_handle (start, node, side, &before) || before.y >= floor;
}

static Outline *
grip_handle_lifted (const Grip *self, Outline *takes, size_t node, HandleSide side)
{
  Outline *made = NULL;
  Point place;

  if (!grip_handle_sinks (self, takes, node, side) || !outline_handle (takes, node, side, &place))
    return takes;
  if (outline_with_handle_at (takes, node, side, (Point) { place.x, grip_floor (self) }, &made) != CORE_OK)
    return takes;
  outline_unref (takes);
  return made;
}

Outline *
grip_lifted (const Grip *self, Outline *takes, size_t node)
{
  const size_t last = MIN (node + 1, outline_node_count (takes) - 1);

  /* A straight neighbour that turned has turned the handle at its other end. */
  for (size_t i = node > 0 ? node - 1 : 0; i <= last; i++) {
    takes = grip_handle_lifted (self, takes, i, HANDLE_BEFORE);
    takes = grip_handle_lifted (self, takes, i, HANDLE_AFTER);
  }
  return takes;
}

bool
grip_stays_on_its_half (const Grip *self, const Outline *outline)
{
  const double rounding = 1e-9;   /* mm, and of every mm */
  const Box box = outline_bounds (outline), start = outline_bounds (grip_outline (self, self->start));

  return box.min.y >= fmin (grip_floor (self), start.min.y) - rounding * (1 + box.max.y);
}
