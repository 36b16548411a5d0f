#include "app/outline-sketch.h"
#include "document/changes.h"

static Segment
outline_sketch_segment (Point from, const Point *leave, const Point *arrive, Point to)
{
  if (leave == NULL && arrive == NULL)
    return segment_line (to);
  /* A side without a handle points at the other's, a third of the way: a curve without a kink of its own. */
  return segment_curve (leave != NULL ? *leave : point_mix (from, *arrive, 1.0 / 3),
                        arrive != NULL ? *arrive : point_mix (to, *leave, 1.0 / 3), to);
}

Outline *
outline_sketch_with (const Outline *outline, Point start, const Point *leave, const Point *arrive, Point to)
{
  const Segment segment = outline_sketch_segment (outline != NULL ? outline_sketch_end (outline) : start, leave, arrive, to);
  Outline *made = NULL;

  if (outline == NULL)
    outline_new (start, &segment, 1, NULL, &made);
  else
    outline_with_segment_added (outline, &segment, &made);
  return made;
}

Outline *
outline_sketch_without_last (const Outline *outline)
{
  const size_t left = outline_segment_count (outline) - 1;
  g_autofree Segment *segments = g_new (Segment, left + 1);
  g_autofree NodeKind *kinds = g_new (NodeKind, left + 2);
  Outline *made = NULL;

  if (left == 0)
    return NULL;
  for (size_t i = 0; i < left; i++)
    segments[i] = *outline_segment (outline, i);
  for (size_t i = 0; i <= left; i++)
    kinds[i] = outline_node_kind (outline, i);
  outline_new (outline_node (outline, 0), segments, left, kinds, &made);
  return made;
}

Point
outline_sketch_end (const Outline *outline)
{
  return outline_node (outline, outline_node_count (outline) - 1);
}

bool
outline_sketch_closes (const Outline *outline, Point to)
{
  return outline != NULL && to.y == outline_node (outline, 0).y && to.x != outline_node (outline, 0).x;
}

bool
outline_sketch_is_open (const Surface *surface)
{
  return surface != NULL && surface_is_horizontal (surface)
         && outline_sketch_end (surface->outline).y != outline_node (surface->outline, 0).y;
}

static bool
outline_sketch_has_role (const Aeroplane *aeroplane, SurfaceRole role)
{
  for (size_t i = 0; i < aeroplane_count (aeroplane, PIECE_SURFACE); i++)
    if (aeroplane_surface (aeroplane, i)->role == role)
      return true;
  return false;
}

SurfaceRole
outline_sketch_role (const Aeroplane *aeroplane)
{
  if (outline_sketch_has_role (aeroplane, ROLE_WING) && !outline_sketch_has_role (aeroplane, ROLE_TAILPLANE))
    return ROLE_TAILPLANE;
  return ROLE_WING;
}

Aeroplane *
outline_sketch_put (const Aeroplane *aeroplane, const char *id, Outline *takes)
{
  if (aeroplane_surface_by_id (aeroplane, id) != NULL)
    return change_surface_outline (aeroplane, id, takes);
  return aeroplane_with_added (aeroplane, &surface_new (id, outline_sketch_role (aeroplane), takes)->piece);
}
