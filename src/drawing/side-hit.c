#include <math.h>
#include "drawing/outline-path.h"
#include "drawing/part-symbols.h"
#include "drawing/sheet-places.h"
#include "drawing/side-leads.h"
#include "drawing/side-places.h"

/* One question: what is at this px of the strip. `mm` is x aft and z up. */
typedef struct {
  const SideScene *side;
  const Selection *selection;
  const Aeroplane *aeroplane;
  SheetView view;
  Point px, mm;
  double radius;
} SideQuery;

static double
px_between (const SideQuery *q, Point mm)
{
  return point_distance (q->mm, mm) * q->view.scale;
}

static bool
find_node_of (const SideQuery *q, const char *id, const Outline *outline, bool side, Hit *hit)
{
  double nearest = nextafter (q->radius, INFINITY);
  Point place;

  for (size_t i = 0; i < outline_node_count (outline); i++)
    {
      const double far = px_between (q, outline_node (outline, i));

      if (far >= nearest)
        continue;
      *hit = (Hit) { .kind = HIT_NODE, .id = id, .index = i };
      nearest = far;
    }
  for (size_t i = 0; i < outline_node_count (outline); i++)
    for (int handle = HANDLE_BEFORE; handle <= HANDLE_AFTER; handle++)
      if (selection_has_node (q->selection, id, side, i) && outline_handle (outline, i, handle, &place)
          && px_between (q, place) < nearest)
        {
          *hit = (Hit) { .kind = HIT_HANDLE, .id = id, .index = i, .side = handle };
          nearest = px_between (q, place);
        }
  return hit->kind != HIT_NOTHING;
}

static bool
find_segment_of (const SideQuery *q, const char *id, const Outline *outline, Hit *hit)
{
  Hit found = { .kind = HIT_SEGMENT, .id = id };

  if (outline_nearest (outline, q->mm, &found.index, &found.t) * q->view.scale > q->radius)
    return false;
  *hit = found;
  return true;
}

/* Nodes, then lines, of the one selected body or fin. */
static bool
find_selected_outline (const SideQuery *q, Hit *hit)
{
  const char *id = selection_single (q->selection);
  const Body *body = aeroplane_body_by_id (q->aeroplane, id);
  const Surface *surface = aeroplane_surface_by_id (q->aeroplane, id);
  Outline *outline = NULL;

  if (body && body->side_outline)
    outline = outline_ref (body->side_outline);
  else if (surface && !surface_is_horizontal (surface) && !q->selection->control)
    outline = side_fin_outline (surface);
  if (!outline)
    return false;
  id = body ? body->piece.id : surface->piece.id;
  if (!find_node_of (q, id, outline, body != NULL, hit))
    find_segment_of (q, id, outline, hit);
  outline_unref (outline);
  return hit->kind != HIT_NOTHING;
}

static Point
hinge_end (const Surface *fin, const Control *control, bool outer)
{
  return outer ? (Point) { control->hinge_outer_x, fin->z + control->outer } : (Point) { control->hinge_inner_x, fin->z + control->inner };
}

/* An end of the selected control's hinge line. */
static bool
find_hinge_end (const SideQuery *q, Hit *hit)
{
  const Surface *fin = aeroplane_surface_by_id (q->aeroplane, selection_single (q->selection));
  const Control *control = fin ? aeroplane_control_by_id (q->aeroplane, fin->piece.id, q->selection->control) : NULL;
  double inner, outer;

  if (!control || surface_is_horizontal (fin))
    return false;
  inner = px_between (q, hinge_end (fin, control, false));
  outer = px_between (q, hinge_end (fin, control, true));
  if (fmin (inner, outer) > q->radius)
    return false;
  *hit = (Hit) { .kind = HIT_HINGE_END, .id = fin->piece.id, .control = control->id, .index = outer < inner };
  return true;
}

static double
px_to_stretch (const SideQuery *q, Point a, Point b)
{
  const Point along = point_sub (b, a), to = point_sub (q->mm, a);
  const double square = along.x * along.x + along.y * along.y;
  const double t = square > 0 ? fmin (1, fmax (0, (to.x * along.x + to.y * along.y) / square)) : 0;

  return px_between (q, point_mix (a, b, t));
}

static bool
find_control (const SideQuery *q, Hit *hit)
{
  for (size_t i = aeroplane_count (q->aeroplane, PIECE_SURFACE); i-- > 0;)
    {
      const Surface *fin = aeroplane_surface (q->aeroplane, i);

      for (size_t j = 0; !surface_is_horizontal (fin) && j < fin->control_count; j++)
        {
          const Control *control = &fin->controls[j];

          if (px_to_stretch (q, hinge_end (fin, control, false), hinge_end (fin, control, true)) > q->radius / 2)
            continue;
          *hit = (Hit) { .kind = HIT_CONTROL, .id = fin->piece.id, .control = control->id };
          return true;
        }
    }
  return false;
}

static bool
find_part (const SideQuery *q, bool selected, Hit *hit)
{
  double smallest = INFINITY;

  for (size_t i = aeroplane_count (q->aeroplane, PIECE_PART); i-- > 0;)
    {
      const Part *part = aeroplane_part (q->aeroplane, i);
      const Box box = part_symbol_box (q->side->scene->look, box_to_screen (&q->view, side_part_box (part)));
      const double area = (box.max.x - box.min.x) * (box.max.y - box.min.y);

      if (selection_has (q->selection, part->piece.id) != selected || area >= smallest || !box_holds (box_grown (box, 2), q->px))
        continue;
      *hit = (Hit) { .kind = HIT_PART, .id = part->piece.id };
      smallest = area;
    }
  return hit->kind != HIT_NOTHING;
}

/* The one whose line is nearest, of those that are selected or of the others. */
static bool
find_lead (const SideQuery *q, bool selected, double radius, Hit *hit)
{
  double nearest = radius;

  for (size_t i = aeroplane_count (q->aeroplane, PIECE_LEAD); i-- > 0;)
    {
      const Lead *lead = aeroplane_lead (q->aeroplane, i);
      const double far = lead->piece.id && selection_has (q->selection, lead->piece.id) == selected
                         ? side_px_to_lead (q->side, &q->view, lead, q->px) : INFINITY;

      if (far >= nearest)
        continue;
      *hit = (Hit) { .kind = HIT_LEAD, .id = lead->piece.id, .place = q->mm };
      nearest = far;
    }
  return hit->kind != HIT_NOTHING;
}

/* A section is caught by its chord line. */
static bool
is_on_section (const SideQuery *q, const Surface *surface)
{
  SideSection section;
  double t, chord;

  if (!side_section (surface, &section))
    return false;
  chord = point_distance (section.leading, section.trailing);
  t = fmin (1, fmax (0, (q->mm.x - section.leading.x) / chord));
  return px_between (q, point_mix (section.leading, section.trailing, t))
         <= fmax (q->radius / 2, section.thickness * chord / 2 * q->view.scale);
}

static bool
is_on_surface (const SideQuery *q, const Surface *surface)
{
  Outline *outline;
  bool inside;

  if (surface_is_horizontal (surface))
    return is_on_section (q, surface);
  outline = side_fin_outline (surface);
  inside = outline && outline_contains (outline, q->mm);
  outline_unref (outline);
  return inside;
}

static bool
find_surface (const SideQuery *q, Hit *hit)
{
  for (size_t i = aeroplane_count (q->aeroplane, PIECE_SURFACE); i-- > 0;)
    {
      const Surface *surface = aeroplane_surface (q->aeroplane, i);

      if (!is_on_surface (q, surface))
        continue;
      *hit = (Hit) { .kind = HIT_SURFACE, .id = surface->piece.id };
      return true;
    }
  return false;
}

static bool
find_body (const SideQuery *q, Hit *hit)
{
  for (size_t i = aeroplane_count (q->aeroplane, PIECE_BODY); i-- > 0;)
    {
      const Body *body = aeroplane_body (q->aeroplane, i);

      if (!body->side_outline || !outline_contains (body->side_outline, q->mm))
        continue;
      *hit = (Hit) { .kind = HIT_BODY, .id = body->piece.id };
      return true;
    }
  return false;
}

Hit
side_view_hit (const SideScene *side, double x, double y, double radius)
{
  SideQuery query = {
    .side = side, .selection = side->scene->selection, .aeroplane = side->scene->figures->aeroplane,
    .view = side_view_of (side), .px = { x, y }, .radius = radius };
  Hit hit = { .kind = HIT_NOTHING };

  query.mm = view_from_screen (&query.view, x, y);
  if (find_hinge_end (&query, &hit) || find_part (&query, true, &hit) || find_selected_outline (&query, &hit)
      || find_lead (&query, true, radius / 2, &hit) || find_part (&query, false, &hit)
      || find_lead (&query, false, radius / 3, &hit) || find_control (&query, &hit) || find_surface (&query, &hit) || find_body (&query, &hit))
    return hit;
  if (fabs (y - query.view.origin_y) <= radius / 2)
    hit.kind = HIT_DATUM;
  return hit;
}
