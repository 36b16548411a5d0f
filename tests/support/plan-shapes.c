#include "support/plan-shapes.h"

#include <check.h>

#define P(x, y) ((Point) { (x), (y) })
enum { MOST_SEGMENTS = 6 };

/* Those with bends in their edges or at the tip. */
static size_t
bent_segments (PlanShape shape, Segment made[MOST_SEGMENTS])
{
  size_t n = 0;

  switch (shape)
    {
    case SHAPE_CRANKED:
      made[n++] = segment_line (P (3, 57));
      made[n++] = segment_line (P (27, 150));
      made[n++] = segment_curve (P (27 + 10 * 24 / 93.0, 160), P (47 - 10 * 8 / 93.0, 160), P (47, 150));
      made[n++] = segment_line (P (55, 57));
      made[n++] = segment_line (P (68, 0));
      break;
    case SHAPE_BOWED:
      made[n++] = segment_curve (P (-1, 78), P (19, 156), P (40, 156));
      made[n++] = segment_curve (P (62, 156), P (63, 105), P (61, 70));
      made[n++] = segment_line (P (58, 22));
      made[n++] = segment_curve (P (47, 20), P (44, 10), P (44, 0));
      break;
    case SHAPE_SQUARE:
    default:
      made[n++] = segment_line (P (13, 150));
      made[n++] = segment_line (P (53, 150));
      made[n++] = segment_line (P (63, 0));
      break;
    }
  return n;
}

static size_t
smooth_segments (PlanShape shape, Segment made[MOST_SEGMENTS])
{
  size_t n = 0;

  switch (shape)
    {
    case SHAPE_TAPER:
      made[n++] = segment_line (P (6, 128));
      made[n++] = segment_curve (P (6.84375, 146), P (15, 158), P (25, 158));
      made[n++] = segment_curve (P (38, 158), P (44.8, 146), P (46.796875, 128));
      made[n++] = segment_line (P (61, 0));
      break;
    case SHAPE_ELLIPSE:
      made[n++] = segment_arc (P (21, 0), 21, 155, P (21, 155));
      made[n++] = segment_arc (P (21, 0), 46, 155, P (67, 0));
      break;
    case SHAPE_CONSTANT:
    default:
      made[n++] = segment_line (P (0, 116));
      made[n++] = segment_arc (P (24, 116), 24, 41, P (24, 157));
      made[n++] = segment_arc (P (24, 116), 35, 41, P (59, 116));
      made[n++] = segment_line (P (59, 0));
      break;
    }
  return n;
}

Outline *
plan_shape (PlanShape shape)
{
  Segment segments[MOST_SEGMENTS];
  const bool bent = shape == SHAPE_CRANKED || shape == SHAPE_BOWED || shape == SHAPE_SQUARE;
  const size_t count = bent ? bent_segments (shape, segments) : smooth_segments (shape, segments);
  Outline *outline = NULL;

  ck_assert_int_eq (outline_new (P (0, 0), segments, count, NULL, &outline), CORE_OK);
  return outline;
}
