#include "drawing/sheet-hit-private.h"

enum { STACK_ROOM = 64 };

/* What can be selected at one place, from the top down; what is beyond the room is not reached. */
typedef struct { Hit hits[STACK_ROOM]; size_t count; } Stack;

static void
stack_add (Stack *stack, Hit hit)
{
  if (stack->count < STACK_ROOM)
    stack->hits[stack->count++] = hit;
}

static void
stack_find (Stack *stack, const HitQuery *q, bool (*find) (const HitQuery *, Hit *))
{
  Hit hit = { .kind = HIT_NOTHING };

  if (find (q, &hit))
    stack_add (stack, hit);
}

static double
area_px (const HitQuery *q, const char *id)
{
  const Box box = hit_part_px (q, aeroplane_part_by_id (q->aeroplane, id));

  return (box.max.x - box.min.x) * (box.max.y - box.min.y);
}

/* The smallest first, as they are found; of equal ones the one drawn last. */
static void
stack_parts (Stack *stack, const HitQuery *q)
{
  const size_t first = stack->count;

  for (size_t i = aeroplane_count (q->aeroplane, PIECE_PART); i-- > 0;)
    {
      const Part *part = aeroplane_part (q->aeroplane, i);
      size_t at = stack->count;

      if (!box_holds (hit_part_px (q, part), q->px) || stack->count == STACK_ROOM)
        continue;
      for (; at > first && area_px (q, stack->hits[at - 1].id) > area_px (q, part->piece.id); at--)
        stack->hits[at] = stack->hits[at - 1];
      stack->hits[at] = (Hit) { .kind = HIT_PART, .id = part->piece.id };
      stack->count++;
    }
}

static void
stack_surfaces (Stack *stack, const HitQuery *q, bool covering)
{
  for (size_t i = aeroplane_count (q->aeroplane, PIECE_SURFACE); i-- > 0;)
    if (hit_surface_holds (q, aeroplane_surface (q->aeroplane, i), covering))
      stack_add (stack, (Hit) { .kind = HIT_SURFACE, .id = aeroplane_surface (q->aeroplane, i)->piece.id, .port = q->port });
}

static void
stack_bodies (Stack *stack, const HitQuery *q)
{
  for (size_t i = aeroplane_count (q->aeroplane, PIECE_BODY); i-- > 0;)
    if (hit_body_holds (q, aeroplane_body (q->aeroplane, i)))
      stack_add (stack, (Hit) { .kind = HIT_BODY, .id = aeroplane_body (q->aeroplane, i)->piece.id, .port = q->port });
}

static bool
is_same (const Hit *a, const Hit *b)
{
  return a->kind == b->kind && a->index == b->index && g_strcmp0 (a->id, b->id) == 0 && g_strcmp0 (a->control, b->control) == 0;
}

Hit
sheet_hit_beneath (const SheetScene *scene, double x, double y, double radius, const Hit *above)
{
  const HitQuery query = hit_query_of (scene, x, y, radius);
  Stack stack = { .count = 0 };

  stack_find (&stack, &query, hit_find_mark);
  stack_parts (&stack, &query);
  stack_find (&stack, &query, hit_find_any_lead);
  stack_find (&stack, &query, hit_find_control);
  stack_find (&stack, &query, hit_find_point);
  stack_find (&stack, &query, hit_find_fin);
  stack_surfaces (&stack, &query, true);
  stack_bodies (&stack, &query);
  stack_surfaces (&stack, &query, false);
  for (size_t i = 0; i < stack.count; i++)
    if (is_same (&stack.hits[i], above))
      return stack.hits[(i + 1) % stack.count];
  return stack.count > 0 ? stack.hits[0] : (Hit) { .kind = HIT_NOTHING };
}
