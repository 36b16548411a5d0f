#pragma once
#include <check.h>
#include "geometry/outline.h"

/* What the tests of outlines' changes share. */

static inline Outline *
outline_copied (const Outline *outline)
{
  const size_t count = outline_segment_count (outline);
  Segment segments[count];
  NodeKind kinds[count + 1];
  Outline *copy = NULL;

  for (size_t i = 0; i < count; i++)
    segments[i] = *outline_segment (outline, i);
  for (size_t i = 0; i <= count; i++)
    kinds[i] = outline_node_kind (outline, i);
  ck_assert_int_eq (outline_new (outline_node (outline, 0), segments, count, kinds, &copy), CORE_OK);
  return copy;
}

/** The outline that `call`, with `made` as its last argument, makes of `old`; ends the test unless it succeeds and leaves the old
 *  outline as it was. */
#define CHANGED(old, call) ({ \
    Outline *new_one = NULL, *copy_of_old = outline_copied (old), **made = &new_one; \
    ck_assert_int_eq (call, CORE_OK); \
    ck_assert (outline_equal (old, copy_of_old)); \
    outline_unref (copy_of_old); \
    new_one; })

static inline void
assert_place (Point got, double x, double y)
{
  ck_assert_msg (fabs (got.x - x) < 1e-9 && fabs (got.y - y) < 1e-9, "%.12g, %.12g instead of %.12g, %.12g", got.x, got.y, x, y);
}

static inline void
assert_arc (const Outline *outline, size_t segment, Point centre, double rx, double ry)
{
  const Segment *arc = outline_segment (outline, segment);

  ck_assert_int_eq (arc->kind, SEGMENT_ARC);
  assert_place (arc->centre, centre.x, centre.y);
  assert_place ((Point) { arc->rx, arc->ry }, rx, ry);
}

static inline Point
handle_of (const Outline *outline, size_t node, HandleSide side)
{
  Point place;

  ck_assert (outline_handle (outline, node, side, &place));
  return place;
}

/** Sine of the angle between the handles of a node: 0 when they run along one line. */
static inline double
bend_at (const Outline *outline, size_t node)
{
  const Point place = outline_node (outline, node);
  const Point before = point_sub (handle_of (outline, node, HANDLE_BEFORE), place);
  const Point after = point_sub (handle_of (outline, node, HANDLE_AFTER), place);

  ck_assert_double_lt (before.x * after.x + before.y * after.y, 0);
  return (before.x * after.y - before.y * after.x) / (hypot (before.x, before.y) * hypot (after.x, after.y));
}
