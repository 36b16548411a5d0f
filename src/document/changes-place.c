#include "document/changes-private.h"

/* How far a piece was moved as a whole between two aeroplanes, mm: aft, and in its side view up. */
static Point
shift_of (const Outline *was, const Outline *is)
{
  return was && is ? point_sub (outline_node (is, 0), outline_node (was, 0)) : (Point) { 0, 0 };
}

static const Outline *
outline_in (const Piece *piece, const char *view)
{
  const Surface *surface = piece->kind == PIECE_SURFACE ? (const Surface *) piece : NULL;
  const Body *body = piece->kind == PIECE_BODY ? (const Body *) piece : NULL;

  if (surface && g_strcmp0 (surface->traced, view) == 0)
    return surface->outline;
  if (body && g_strcmp0 (body->traced, view) == 0)
    return body->outline;
  return body && g_strcmp0 (body->side_traced, view) == 0 ? body->side_outline : NULL;
}

/* How a hand moved what was traced in that view; false where it left all there in its place. */
static bool
view_shift (const Aeroplane *before, const Aeroplane *now, const char *view, const char *typed, Point *shift)
{
  for (size_t i = 0; i < aeroplane_piece_count (now); i++)
    {
      const Piece *piece = aeroplane_piece (now, i), *was = piece->id ? aeroplane_find (before, piece->id) : NULL;

      if (!was || !outline_in (piece, view) || !outline_in (was, view))
        continue;
      *shift = shift_of (outline_in (was, view), outline_in (piece, view));
      if (shift->x != 0 || g_strcmp0 (piece->id, typed) == 0)
        return true;
    }
  return false;
}

static Point
shifted (Point mm, const void *shift)
{
  return (Point) { mm.x + ((const Point *) shift)->x, mm.y };
}

/* What else was traced in that view goes where its print goes. */
static Aeroplane *
others_carried (const Aeroplane *before, Aeroplane *takes, const char *view, const Point *shift)
{
  const TracedMove move = { view, shifted, shift };
  const size_t count = shift->x != 0 ? aeroplane_piece_count (takes) : 0;
  Aeroplane *now = takes;

  for (size_t i = 0; i < count; i++)
    {
      const Piece *piece = aeroplane_piece (now, i), *was = piece->id ? aeroplane_find (before, piece->id) : NULL;
      Piece *copy = outline_in (piece, view) && was == piece ? piece_carried (piece, &move) : NULL;
      Aeroplane *last = now;

      if (!copy)
        continue;
      now = changed_to (last, piece, copy);
      aeroplane_unref (last);
    }
  return now;
}

/* The view put where the hand has put what was traced in it. */
static Aeroplane *
view_put (Aeroplane *takes, const Plan *plan, size_t index, Point shift)
{
  Plan *next = (Plan *) piece_dup (&plan->piece);
  Aeroplane *now;

  next->views[index].x += shift.x;
  next->views[index].for_now = false;
  if (next->views[index].shows == VIEW_BODY_SIDE)
    next->views[index].z += shift.y;
  now = changed_to (takes, &plan->piece, &next->piece);
  aeroplane_unref (takes);
  return now;
}

Aeroplane *
change_views_following (const Aeroplane *before, Aeroplane *takes, const char *typed)
{
  Aeroplane *now = takes;
  Point shift;

  for (size_t i = 0; takes && i < aeroplane_count (before, PIECE_PLAN); i++)
    for (size_t k = 0; k < aeroplane_plan (before, i)->view_count; k++)
      {
        const Plan *plan = aeroplane_plan (now, i);
        const PlanView *view = &plan->views[k];

        if (!view->for_now || !view_shift (before, now, view->id, typed, &shift))
          continue;
        now = others_carried (before, now, aeroplane_plan (before, i)->views[k].id, &shift);
        now = view_put (now, aeroplane_plan (now, i), k, shift);
      }
  return now;
}
