#include "support/shapes.h"

#include <check.h>
#include "geometry/shapes.h"

Outline *
outline_from (Point start, const Segment segments[], size_t count)
{
  Outline *made = NULL;
  const CoreStatus status = outline_new (start, segments, count, NULL, &made);

  ck_assert_msg (status == CORE_OK, "%s", core_status_sentence (status));
  return made;
}

Outline *
polygon_from (const Point nodes[], size_t count)
{
  Segment segments[count];

  for (size_t i = 1; i < count; i++)
    segments[i - 1] = segment_line (nodes[i]);
  return outline_from (nodes[0], segments, count - 1);
}

Outline *
taper_from (const double station[], const double leading_x[], const double chord[], size_t count)
{
  Outline *made = NULL;
  const CoreStatus status = shape_taper (station, leading_x, chord, count, &made);

  ck_assert_msg (status == CORE_OK, "%s", core_status_sentence (status));
  return made;
}

Outline *
ellipse_from (double x_root, double semispan, double ahead, double behind)
{
  Outline *made = NULL;
  const CoreStatus status = shape_ellipse (x_root, semispan, ahead, behind, &made);

  ck_assert_msg (status == CORE_OK, "%s", core_status_sentence (status));
  return made;
}

Outline *
mixed_wing (void)
{
  const Segment segments[] = {
    segment_line ((Point) { 13.5, 171.25 }),
    segment_curve ((Point) { 17.5, 221.5 }, (Point) { 31.25, 281.75 }, (Point) { 52.5, 321.5 }),
    segment_arc ((Point) { 112.5, 321.5 }, 60, 85.5, (Point) { 112.5, 407 }),
    segment_curve ((Point) { 166.5, 407 }, (Point) { 211.25, 343.5 }, (Point) { 222.75, 231.5 }),
    segment_line ((Point) { 236, 0 }),
  };

  return outline_from ((Point) { 0, 0 }, segments, 5);
}

Outline *
leaf_of_curves (void)
{
  const Segment segments[] = {
    segment_curve ((Point) { 3.5, 21.25 }, (Point) { 61.5, 36.75 }, (Point) { 121.5, 36.75 }),
    segment_curve ((Point) { 201.5, 36.75 }, (Point) { 321.25, 24.5 }, (Point) { 402.75, 13.25 }),
    segment_curve ((Point) { 471.25, 3.795092024539877 }, (Point) { 521.5, 2.25 }, (Point) { 611.5, 0 }),
  };

  return outline_from ((Point) { 3.5, 0 }, segments, 3);
}
