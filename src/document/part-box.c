#include "document/part-box.h"

#include <math.h>
#include "document/part-class.h"

/* Whole quarter turns exactly: a box turned by one fits where its length and width say. */
static Point
direction (const Part *part)
{
  const double quarters = part->turn / 90, whole = round (quarters);
  static const Point exact[] = { { 1, 0 }, { 0, 1 }, { -1, 0 }, { 0, -1 } };

  if (quarters == whole)
    return exact[((int) whole % 4 + 4) % 4];
  return (Point) { cos (part->turn * G_PI / 180), sin (part->turn * G_PI / 180) };
}

bool
part_stands_clear (const Part *part)
{
  return part->length > 0 && part->width > 0 && part->height > 0 && part_class_keeps_clear (part->class_name);
}

Point
part_extent (const Part *part)
{
  const Point d = direction (part);

  return (Point) { fabs (d.x) * part->length + fabs (d.y) * part->width, fabs (d.y) * part->length + fabs (d.x) * part->width };
}

void
part_corners (const Part *part, Point corners[4])
{
  static const Point signs[] = { { -1, -1 }, { -1, 1 }, { 1, 1 }, { 1, -1 } };
  const Point d = direction (part);

  for (int i = 0; i < 4; i++)
    {
      const double along = signs[i].x * part->length / 2, across = signs[i].y * part->width / 2;
      corners[i] = (Point) { part->x + d.x * along - d.y * across, part->y + d.y * along + d.x * across };
    }
}
