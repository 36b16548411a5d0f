#include "drawing/hit.h"
#include <math.h>
#include "drawing/outline-path.h"
#include "drawing/part-symbols.h"
#include "drawing/sheet-dimensions.h"
#include "drawing/sheet-draft.h"
#include "drawing/sheet-hit-private.h"
#include "drawing/symbols.h"

typedef bool (*HitFinder) (const HitQuery *query, Hit *hit);

static double
px_between (const HitQuery *q, Point mm)
{
  return point_distance (q->mm, mm) * q->view->scale;
}

/* The outline whose nodes are shown: the one selected surface's or body's. */
static const Outline *
shown_outline (const HitQuery *q, const char **id)
{
  const char *single = selection_single (q->scene->selection);
  const Surface *surface = aeroplane_surface_by_id (q->aeroplane, single);
  const Body *body = aeroplane_body_by_id (q->aeroplane, single);

  *id = surface ? surface->piece.id : body ? body->piece.id : NULL;
  if (surface && (!surface_is_horizontal (surface) || q->scene->selection->control))
    return NULL;
  return surface ? surface->outline : body ? body->outline : NULL;
}

/* Handles stand to starboard only, and only at selected nodes; a node wins over a handle that lies on it. */
static bool
find_node (const HitQuery *q, Hit *hit)
{
  const char *id;
  const Outline *outline = shown_outline (q, &id);
  double nearest = nextafter (q->radius, INFINITY);
  Point place;

  for (size_t i = 0; outline && i < outline_node_count (outline); i++)
    {
      const double far = px_between (q, outline_node (outline, i));

      if (far < nearest)
        {
          *hit = (Hit) { .kind = HIT_NODE, .id = id, .index = i, .port = q->port };
          nearest = far;
        }
    }
  for (size_t i = 0; outline && !q->port && i < outline_node_count (outline); i++)
    for (int side = HANDLE_BEFORE; side <= HANDLE_AFTER; side++)
      if (selection_has_node (q->scene->selection, id, false, i) && outline_handle (outline, i, side, &place)
          && px_between (q, place) < nearest)
        {
          *hit = (Hit) { .kind = HIT_HANDLE, .id = id, .index = i, .side = side };
          nearest = px_between (q, place);
        }
  return hit->kind != HIT_NOTHING;
}

static bool
find_hinge_end (const HitQuery *q, Hit *hit)
{
  const Surface *surface = aeroplane_surface_by_id (q->aeroplane, selection_single (q->scene->selection));

  if (!surface || !surface_is_horizontal (surface))
    return false;
  for (size_t i = 0; q->scene->selection->control && i < surface->control_count; i++)
    {
      const Control *c = &surface->controls[i];
      const double inner = px_between (q, (Point) { c->hinge_inner_x, c->inner });
      const double outer = px_between (q, (Point) { c->hinge_outer_x, c->outer });

      if (g_strcmp0 (c->id, q->scene->selection->control) != 0 || fmin (inner, outer) > q->radius)
        continue;
      *hit = (Hit) { .kind = HIT_HINGE_END, .id = surface->piece.id, .control = c->id, .index = outer < inner, .port = q->port };
      return true;
    }
  return false;
}

Box
hit_part_px (const HitQuery *q, const Part *part)
{
  return part_symbol_box (q->scene->look, box_to_screen (q->view, sheet_part_box (part)));
}

static bool
find_selected_part (const HitQuery *q, Hit *hit)
{
  for (size_t i = 0; i < aeroplane_count (q->aeroplane, PIECE_PART); i++)
    {
      const Part *part = aeroplane_part (q->aeroplane, i);

      if (selection_has (q->scene->selection, part->piece.id) && box_holds (hit_part_px (q, part), q->px))
        {
          *hit = (Hit) { .kind = HIT_PART, .id = part->piece.id };
          return true;
        }
    }
  return false;
}

static bool
find_rail_end (const HitQuery *q, Hit *hit)
{
  const Part *part = aeroplane_part_by_id (q->aeroplane, selection_single (q->scene->selection));
  double x, from, to;

  if (!part || !part->has_rail)
    return false;
  x = sheet_rail_px (q->scene->look, q->view, part);
  from = point_distance (q->px, (Point) { x, sheet_px (q->view, part->rail_from, 0).y });
  to = point_distance (q->px, (Point) { x, sheet_px (q->view, part->rail_to, 0).y });
  if (fmin (from, to) > q->radius)
    return false;
  *hit = (Hit) { .kind = HIT_RAIL_END, .id = part->piece.id, .index = to < from };
  return true;
}

static bool
find_dimension (const HitQuery *q, Hit *hit)
{
  SheetDimension list[SHEET_DIMENSION_ROOM];
  const size_t count = sheet_dimensions (q->scene, list);
  Lettering lettering = lettering_begin (NULL, q->scene->look);

  for (size_t i = count; i-- > 0 && !hit->kind;)
    if (box_holds (box_grown (dimension_figure_box (&lettering, &list[i].dimension), 3), q->px))
      *hit = list[i].hit;
  return hit->kind != HIT_NOTHING;
}

bool
hit_find_mark (const HitQuery *q, Hit *hit)
{
  Point place;

  for (size_t i = q->scene->figures->balance.mark_count; i-- > 0;)
    if (sheet_mark_place (q->scene->figures, i, &place) && px_between (q, place) <= q->radius)
      {
        *hit = (Hit) { .kind = HIT_MARK, .index = i, .port = q->port };
        return true;
      }
  return false;
}

/* The two signs, as large as they are drawn; parts that lie beneath are wanted more often. */
bool
hit_find_point (const HitQuery *q, Hit *hit)
{
  const MassFigures *mass = &q->scene->figures->mass;
  const Look *look = q->scene->look;
  Point neutral;

  if (sheet_has_point (q->scene->figures, SHEET_POINT_BALANCE)
      && point_distance (q->px, sheet_px (q->view, mass->x_mm, mass->y_mm)) <= balance_disc_radius (look, DISC_ON_SHEET))
    *hit = (Hit) { .kind = HIT_POINT, .index = SHEET_POINT_BALANCE };
  else if (sheet_neutral_point (q->scene->figures, &neutral)
           && point_distance (q->px, view_to_screen (q->view, neutral)) <= neutral_diamond_half (look))
    *hit = (Hit) { .kind = HIT_POINT, .index = SHEET_POINT_NEUTRAL };
  return hit->kind != HIT_NOTHING;
}

/* Of several boxes over each other the smallest: a cowl must not keep the motor from the hand. */
static bool
find_part_within (const HitQuery *q, double beyond, Hit *hit)
{
  double smallest = INFINITY;

  for (size_t i = aeroplane_count (q->aeroplane, PIECE_PART); i-- > 0;)
    {
      const Part *part = aeroplane_part (q->aeroplane, i);
      const Box box = hit_part_px (q, part);
      const double area = (box.max.x - box.min.x) * (box.max.y - box.min.y);

      if (area < smallest && box_holds (box_grown (box, beyond), q->px))
        {
          *hit = (Hit) { .kind = HIT_PART, .id = part->piece.id };
          smallest = area;
        }
    }
  return hit->kind != HIT_NOTHING;
}

static bool
find_part (const HitQuery *q, Hit *hit)
{
  return find_part_within (q, 0, hit) || find_part_within (q, q->radius / 3, hit);
}

double
hit_to_stretch (Point place, Point a, Point b)
{
  const Point along = point_sub (b, a), to = point_sub (place, a);
  const double square = along.x * along.x + along.y * along.y;
  const double t = square > 0 ? fmin (1, fmax (0, (to.x * along.x + to.y * along.y) / square)) : 0;

  return point_distance (place, point_mix (a, b, t));
}

static double
px_to_stretch (const HitQuery *q, Point a, Point b)
{
  return hit_to_stretch (q->mm, a, b) * q->view->scale;
}

bool
hit_find_control (const HitQuery *q, Hit *hit)
{
  for (size_t i = aeroplane_count (q->aeroplane, PIECE_SURFACE); i-- > 0;)
    {
      const Surface *surface = aeroplane_surface (q->aeroplane, i);

      for (size_t j = 0; surface_is_horizontal (surface) && j < surface->control_count; j++)
        {
          const Control *c = &surface->controls[j];

          if (px_to_stretch (q, (Point) { c->hinge_inner_x, c->inner }, (Point) { c->hinge_outer_x, c->outer }) > q->radius / 2)
            continue;
          *hit = (Hit) { .kind = HIT_CONTROL, .id = surface->piece.id, .control = c->id, .port = q->port };
          return true;
        }
    }
  return false;
}

/* The outline of a piece that the plan shows, NULL for others. */
static const Outline *
plan_outline_of (const Piece *piece)
{
  if (piece->kind == PIECE_BODY)
    return ((const Body *) piece)->outline;
  return piece->kind == PIECE_SURFACE && surface_is_horizontal ((const Surface *) piece) ? ((const Surface *) piece)->outline : NULL;
}

static bool
find_segment_of (const HitQuery *q, bool selected, double radius, Hit *hit)
{
  double nearest = radius;

  for (size_t i = aeroplane_piece_count (q->aeroplane); i-- > 0;)
    {
      const Piece *piece = aeroplane_piece (q->aeroplane, i);
      const Outline *outline = plan_outline_of (piece);
      Hit found = { .kind = HIT_SEGMENT, .id = piece->id, .port = q->port };
      double far;

      if (!outline || selection_has (q->scene->selection, piece->id) != selected)
        continue;
      far = outline_nearest (outline, q->mm, &found.index, &found.t) * q->view->scale;
      if (far >= nearest)
        continue;
      nearest = far;
      *hit = found;
    }
  return hit->kind != HIT_NOTHING;
}

static bool find_selected_segment (const HitQuery *q, Hit *hit) { return find_segment_of (q, true, q->radius, hit); }
static bool find_segment (const HitQuery *q, Hit *hit) { return find_segment_of (q, false, q->radius / 2, hit); }

/* A fin's edge on the centre line, which a slender body would else cover with its own lines. */
bool
hit_find_fin (const HitQuery *q, Hit *hit)
{
  for (size_t i = 0; i < aeroplane_count (q->aeroplane, PIECE_SURFACE); i++)
    {
      const Surface *surface = aeroplane_surface (q->aeroplane, i);

      if (surface_is_horizontal (surface) || !box_holds (box_grown (box_to_screen (q->view, sheet_surface_box (surface)), 4), q->px))
        continue;
      *hit = (Hit) { .kind = HIT_SURFACE, .id = surface->piece.id };
      return true;
    }
  return false;
}

bool
hit_surface_holds (const HitQuery *q, const Surface *surface, bool covering)
{
  return surface_is_horizontal (surface) && sheet_surface_covers_body (q->aeroplane, surface) == covering
         && outline_contains (surface->outline, q->mm);
}

bool
hit_body_holds (const HitQuery *q, const Body *body)
{
  return body->outline && q->mm.y <= outline_reach_at (body->outline, q->mm.x);
}

static bool
find_surface (const HitQuery *q, bool covering, Hit *hit)
{
  for (size_t i = aeroplane_count (q->aeroplane, PIECE_SURFACE); i-- > 0;)
    {
      const Surface *surface = aeroplane_surface (q->aeroplane, i);

      if (!hit_surface_holds (q, surface, covering))
        continue;
      *hit = (Hit) { .kind = HIT_SURFACE, .id = surface->piece.id, .port = q->port };
      return true;
    }
  return false;
}

static bool
find_body (const HitQuery *q, Hit *hit)
{
  for (size_t i = aeroplane_count (q->aeroplane, PIECE_BODY); i-- > 0;)
    {
      const Body *body = aeroplane_body (q->aeroplane, i);

      if (!hit_body_holds (q, body))
        continue;
      *hit = (Hit) { .kind = HIT_BODY, .id = body->piece.id, .port = q->port };
      return true;
    }
  return false;
}

static bool
find_area (const HitQuery *q, Hit *hit)
{
  return find_surface (q, true, hit) || find_body (q, hit) || find_surface (q, false, hit);
}

static bool
find_datum (const HitQuery *q, Hit *hit)
{
  if (fabs (q->px.y - q->view->origin_y) > q->radius / 2)
    return false;
  *hit = (Hit) { .kind = HIT_DATUM };
  return true;
}

HitQuery
hit_query_of (const SheetScene *scene, double x, double y, double radius)
{
  const Point mm = view_from_screen (scene->view, x, y);

  return (HitQuery) { .scene = scene, .aeroplane = scene->figures->aeroplane, .view = scene->view, .px = { x, y }, .radius = radius,
                      .mm = { mm.x, fabs (mm.y) }, .port = mm.y < 0 };
}

Hit
sheet_hit (const SheetScene *scene, double x, double y, double radius)
{
  static const HitFinder finders[] = {
    find_node, find_hinge_end, hit_find_lead_point, find_selected_part, find_rail_end, find_dimension, hit_find_mark, find_part,
    hit_find_selected_lead, hit_find_control, hit_find_point, find_selected_segment, hit_find_lead, hit_find_fin, find_segment, find_area, find_datum };
  const HitQuery query = hit_query_of (scene, x, y, radius);
  Hit hit = { .kind = HIT_NOTHING };

  for (size_t i = 0; i < G_N_ELEMENTS (finders); i++)
    if (finders[i] (&query, &hit))
      break;
  return hit;
}

bool
sheet_dimension_box (const SheetScene *scene, const Hit *dimension, Box *px)
{
  SheetDimension list[SHEET_DIMENSION_ROOM];
  const size_t count = sheet_dimensions (scene, list);
  Lettering lettering = lettering_begin (NULL, scene->look);
  bool found = false;

  for (size_t i = 0; i < count && !found; i++)
    if (list[i].hit.dimension == dimension->dimension && list[i].hit.index == dimension->index
        && g_strcmp0 (list[i].hit.id, dimension->id) == 0)
      {
        *px = dimension_figure_box (&lettering, &list[i].dimension);
        found = true;
      }
  return found;
}
