#include "geometry/outline-draft.h"
#include "geometry/outline-fit.h"
#include "geometry/outline-private.h"

#include <assert.h>

CoreStatus
outline_with_node_inserted (const Outline *self, size_t segment, double t, Outline **made)
{
  Draft draft;
  Segment second;

  assert (segment < self->count);
  if (!(t > 0 && t < 1))
    return CORE_OUT_OF_RANGE;
  if (outline_draft_begin (&draft, self, 1))
    return CORE_NO_MEMORY;
  const Stretch *old = &self->stretches[segment];
  draft_open (&draft, segment);
  segment_split (old->from, &old->segment, t, &draft.segments[segment], &second);
  draft.segments[segment + 1] = second;
  draft.kinds[segment + 1] = old->segment.kind == SEGMENT_LINE ? NODE_CORNER : NODE_SMOOTH;
  return outline_draft_finish (&draft, made);
}

CoreStatus
outline_without_node (const Outline *self, size_t node, Outline **made)
{
  Draft draft;

  assert (node <= self->count);
  if (self->count < 2)
    return CORE_TOO_FEW_NODES;
  if (outline_draft_begin (&draft, self, 0))
    return CORE_NO_MEMORY;
  if (node == 0)
    {
      const NodeKind kind = draft.kinds[1];
      draft.start = draft.segments[0].to;
      draft_remove (&draft, 0);
      draft.kinds[0] = kind;
    }
  else if (node == self->count)
    {
      draft.count--;
    }
  else
    {
      const Segment joined = segment_fitted (&self->stretches[node - 1], &self->stretches[node]);
      draft_remove (&draft, node - 1);
      draft.segments[node - 1] = joined;
      if (joined.kind == SEGMENT_LINE)        /* all else has kept its tangents */
        {
          draft_settle (&draft, node - 1);
          draft_settle (&draft, node);
        }
    }
  return outline_draft_finish (&draft, made);
}

/* The parameter `length` along the stretch: Newton's steps inside a bracket, since the pace is known. */
static double
t_at_length (const Stretch *stretch, double length)
{
  double low = 0, high = 1, t = 0.5;

  for (int i = 0; i < 60 && high - low > 1e-14; i++)
    {
      Segment first, second;
      segment_split (stretch->from, &stretch->segment, t, &first, &second);
      const double miss = segment_length (stretch->from, &first) - length;
      double next = t - miss / point_length (stretch_slope (stretch, t));

      if (miss > 0)
        high = t;
      else
        low = t;
      if (!(next > low && next < high))
        next = (low + high) / 2;
      if (fabs (next - t) < 1e-13)
        break;
      t = next;
    }
  return t;
}

static double
t_to_cut_at (const Stretch *stretch, double length, bool from_its_end)
{
  const double whole = segment_length (stretch->from, &stretch->segment), cut = fmin (length, whole / 2);

  if (!(whole > 0))
    return 0.5;
  return t_at_length (stretch, from_its_end ? whole - cut : cut);
}

CoreStatus
outline_with_node_split (const Outline *self, size_t node, double length, Outline **made)
{
  Draft draft;
  Segment before, after, cut_off;

  assert (node <= self->count);
  if (!isfinite (length))
    return CORE_NOT_FINITE;
  if (!(length > 0) || node == 0 || node == self->count)
    return CORE_OUT_OF_RANGE;
  if (outline_draft_begin (&draft, self, 1))
    return CORE_NO_MEMORY;
  const Stretch *arriving = &self->stretches[node - 1], *leaving = &self->stretches[node];
  segment_split (arriving->from, &arriving->segment, t_to_cut_at (arriving, length, true), &before, &cut_off);
  segment_split (leaving->from, &leaving->segment, t_to_cut_at (leaving, length, false), &cut_off, &after);
  draft_open (&draft, node);
  draft.segments[node - 1] = before;
  draft.segments[node] = segment_line (cut_off.to);
  draft.segments[node + 1] = after;
  draft.kinds[node] = NODE_CORNER;
  return outline_draft_finish (&draft, made);
}

CoreStatus
outline_with_nodes_joined (const Outline *self, size_t node, Outline **made)
{
  Draft draft;

  assert (node < self->count);
  if (self->count < 2)
    return CORE_TOO_FEW_NODES;
  if (outline_draft_begin (&draft, self, 0))
    return CORE_NO_MEMORY;
  const Point middle = point_mix (draft_node (&draft, node), draft_node (&draft, node + 1), 0.5);
  draft_move_node (&draft, node, middle);
  draft_move_node (&draft, node + 1, middle);
  draft_remove (&draft, node);
  draft.kinds[node] = NODE_CORNER;
  if (node > 0 && node < draft.count)
    {
      const Stretch before = draft_stretch (&draft, node - 1), after = draft_stretch (&draft, node);
      draft.kinds[node] = outline_kind_from_shape (&before, &after);
    }
  if (node > 0)
    draft_settle (&draft, node - 1);
  draft_settle (&draft, node + 1);
  return outline_draft_finish (&draft, made);
}
