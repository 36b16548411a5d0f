#include "document/plan-marks.h"
#include <math.h>
#include <string.h>

static size_t
first_place (const Plan *plan, size_t line)
{
  size_t first = 0;

  for (size_t i = 0; i < line; i++)
    first += plan->straight[i].count;
  return first;
}

size_t
plan_mark_count (const Plan *plan, PlanMarkKind kind)
{
  switch (kind)
    {
    case PLAN_MARK_LENGTH:   return 2 * plan->length_count;
    case PLAN_MARK_LEVEL:    return plan->has_level ? 2 : 0;
    case PLAN_MARK_CORNER:   return plan->has_corners ? 4 : 0;
    case PLAN_MARK_STRAIGHT: return plan->place_count;
    case PLAN_MARK_AXIS:     return 2 * plan->view_count;
    case PLAN_MARK_STANDS:   return plan->view_count;
    default:                 return 0;
    }
}

PlanMark
plan_mark_nth (const Plan *plan, PlanMarkKind kind, size_t number)
{
  PlanMark mark = { .kind = kind };

  switch (kind)
    {
    case PLAN_MARK_LENGTH: case PLAN_MARK_AXIS:
      mark.index = number / 2;
      mark.end = number % 2;
      break;
    case PLAN_MARK_STRAIGHT:
      while (number >= plan->straight[mark.index].count)
        number -= plan->straight[mark.index++].count;
      mark.end = number;
      break;
    case PLAN_MARK_STANDS:
      mark.index = number;
      break;
    default:
      mark.end = number;
    }
  return mark;
}

/* The place itself, within the plan; NULL when there is none. */
static const Point *
mark_place (const Plan *plan, PlanMark mark)
{
  switch (mark.kind)
    {
    case PLAN_MARK_LENGTH:
      return mark.index < plan->length_count ? mark.end ? &plan->lengths[mark.index].b : &plan->lengths[mark.index].a : NULL;
    case PLAN_MARK_LEVEL:
      return plan->has_level && mark.end < 2 ? &plan->level[mark.end] : NULL;
    case PLAN_MARK_CORNER:
      return plan->has_corners && mark.end < 4 ? &plan->corners[mark.end] : NULL;
    case PLAN_MARK_STRAIGHT:
      return mark.index < plan->straight_count && mark.end < plan->straight[mark.index].count
             ? &plan->places[first_place (plan, mark.index) + mark.end] : NULL;
    case PLAN_MARK_AXIS:
      return mark.index < plan->view_count ? mark.end ? &plan->views[mark.index].aft : &plan->views[mark.index].fore : NULL;
    default:
      return NULL;
    }
}

bool
plan_mark_place (const Plan *plan, PlanMark mark, Point *px)
{
  const Point *place = mark_place (plan, mark);

  if (place)
    *px = *place;
  return place;
}

bool
plan_mark_equal (PlanMark a, PlanMark b)
{
  return a.kind == b.kind && a.index == b.index && a.end == b.end;
}

static Plan *
plan_copy (const Plan *plan)
{
  return (Plan *) piece_dup (&plan->piece);
}

Plan *
plan_with_mark_at (const Plan *plan, PlanMark mark, Point px, double click_sigma)
{
  Plan *copy;

  if (!mark_place (plan, mark))
    return NULL;
  copy = plan_copy (plan);
  *(Point *) mark_place (copy, mark) = px;
  if (mark.kind == PLAN_MARK_LENGTH)
    *(mark.end ? &copy->lengths[mark.index].sigma_b : &copy->lengths[mark.index].sigma_a) = click_sigma;
  return copy;
}

/* Takes `taken` of the `*count` elements of an array out, from `first` on. */
static void
take_out (void *array, size_t *count, size_t size, size_t first, size_t taken)
{
  char *bytes = array;

  memmove (bytes + first * size, bytes + (first + taken) * size, (*count - first - taken) * size);
  *count -= taken;
}

/* What is kept of inner elements follows those that stay; of those that go it goes too. */
static void
let_kept_follow (Plan *plan, InnerKind inner, size_t first, size_t taken)
{
  size_t stays = 0;

  for (size_t i = 0; i < plan->piece.kept_count; i++)
    {
      Kept kept = plan->piece.kept[i];

      if (kept.inner == inner && kept.index >= first && kept.index < first + taken)
        {
          g_free (kept.before);
          g_free (kept.attributes);
          g_free (kept.inside);
          continue;
        }
      if (kept.inner == inner && kept.index >= first + taken)
        kept.index -= taken;
      plan->piece.kept[stays++] = kept;
    }
  plan->piece.kept_count = stays;
}

static void
take_out_straight (Plan *plan, size_t line)
{
  let_kept_follow (plan, INNER_STRAIGHT, line, 1);
  let_kept_follow (plan, INNER_AT, first_place (plan, line), plan->straight[line].count);
  take_out (plan->places, &plan->place_count, sizeof *plan->places, first_place (plan, line), plan->straight[line].count);
  take_out (plan->straight, &plan->straight_count, sizeof *plan->straight, line, 1);
}

Plan *
plan_without_mark (const Plan *plan, PlanMark mark)
{
  Plan *copy;

  if (mark.kind == PLAN_MARK_STANDS)
    mark = (PlanMark) { .kind = PLAN_MARK_AXIS, .index = mark.index };
  if (!mark_place (plan, mark))
    return NULL;
  copy = plan_copy (plan);
  if (mark.kind == PLAN_MARK_LENGTH || mark.kind == PLAN_MARK_AXIS)
    let_kept_follow (copy, mark.kind == PLAN_MARK_AXIS ? INNER_VIEW : INNER_LENGTH, mark.index, 1);
  if (mark.kind == PLAN_MARK_LENGTH)
    take_out (copy->lengths, &copy->length_count, sizeof *copy->lengths, mark.index, 1);
  else if (mark.kind == PLAN_MARK_LEVEL)
    copy->has_level = false;
  else if (mark.kind == PLAN_MARK_CORNER)
    copy->has_corners = false;
  else if (mark.kind == PLAN_MARK_STRAIGHT)
    take_out_straight (copy, mark.index);
  else
    {
      g_free (copy->views[mark.index].id);
      take_out (copy->views, &copy->view_count, sizeof *copy->views, mark.index, 1);
    }
  return copy;
}

Plan *
plan_with_length (const Plan *plan, PlanLength length)
{
  Plan *copy = plan_copy (plan);

  copy->lengths = g_renew (PlanLength, copy->lengths, copy->length_count + 1);
  copy->lengths[copy->length_count++] = length;
  return copy;
}

Plan *
plan_with_straight (const Plan *plan, const Point places[], size_t count)
{
  Plan *copy = plan_copy (plan);

  copy->straight = g_renew (PlanStraight, copy->straight, copy->straight_count + 1);
  copy->straight[copy->straight_count++] = (PlanStraight) { .count = count };
  copy->places = g_renew (Point, copy->places, copy->place_count + count);
  memcpy (copy->places + copy->place_count, places, count * sizeof *places);
  copy->place_count += count;
  return copy;
}

Plan *
plan_with_view (const Plan *plan, PlanView view)
{
  Plan *copy = plan_copy (plan);

  view.id = g_strdup (view.id);
  copy->views = g_renew (PlanView, copy->views, copy->view_count + 1);
  copy->views[copy->view_count++] = view;
  return copy;
}
