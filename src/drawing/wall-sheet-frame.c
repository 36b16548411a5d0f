#include "drawing/wall-sheet-frame.h"
#include <math.h>
#include "drawing/wall-sheet-title.h"

static const double left_margin = 20, margin = 10;
static const double strip = 5;                 /* of the zones, outside the border line */
static const double reach = 5;                 /* of a centring mark inside the border line */
static const double clear = 1.5;               /* of anything from a centring mark's end */
static const double zone = 50, least_zone = 20;
static const double border = 0.7, thin = 0.25;

Box
wall_frame_box (const WallSheet *sheet)
{
  double width, height;

  wall_sheet_size (sheet, &width, &height);
  return (Box) { { left_margin, margin }, { width - margin, height - margin } };
}

Box
wall_room_box (const WallSheet *sheet)
{
  Box room = box_grown (wall_frame_box (sheet), -reach - clear);

  room.max.y += reach - clear;
  return room;
}

Box
wall_lower_mark_box (const WallSheet *sheet)
{
  const Box frame = wall_frame_box (sheet);
  double width, height;

  wall_sheet_size (sheet, &width, &height);
  return (Box) { { width / 2 - border, frame.max.y - reach }, { width / 2 + border, frame.max.y } };
}

/* One side's zones: counted from the near end, cut every 50 mm from the paper's middle; the last takes what is left over. */
typedef struct { double from, to, middle; } ZoneSide;

static int
zone_half_count (double length)
{
  const int whole = (int) floor (length / zone);

  return length - whole * zone >= least_zone || whole == 0 ? whole + 1 : whole;
}

static int
zone_count (ZoneSide side)
{
  return zone_half_count (side.middle - side.from) + zone_half_count (side.to - side.middle);
}

/* Where zone `i` begins; zone_count gives the end of the last. */
static double
zone_edge (ZoneSide side, int i)
{
  const int before = zone_half_count (side.middle - side.from);

  if (i == 0)
    return side.from;
  return i == zone_count (side) ? side.to : side.middle + (i - before) * zone;
}

/* I and O are left out: they would be read as figures. */
static void
zone_name (bool across, int i, char name[4])
{
  static const char letters[] = "ABCDEFGHJKLMNPQRSTUVWXYZ";

  if (across)
    g_snprintf (name, 4, "%d", i + 1);
  else
    g_snprintf (name, 4, "%c", letters[i % (sizeof letters - 1)]);
}

/* Zones along one direction, on both edges of the sheet. near and far: the two border lines, outwards of which the strips lie. */
static void
draw_zones (const SheetPen *pen, ZoneSide side, bool across, double near, double far)
{
  const double edges[] = { near - strip, far };

  for (int i = 0; i < zone_count (side); i++)
    for (int edge = 0; edge < 2; edge++)
      {
        const double middle = (zone_edge (side, i) + zone_edge (side, i + 1)) / 2, cut = zone_edge (side, i);
        const double low = edges[edge], line = low + strip / 2 + caps_small / 2;
        char name[4];

        zone_name (across, i, name);
        pen_write (pen, (Script) { across ? (Point) { middle, line } : (Point) { low + strip / 2, middle + caps_small / 2 }, caps_small, 0.5 }, name);
        if (i > 0 && across)
          pen_line (pen, thin, (Point) { cut, low }, (Point) { cut, low + strip });
        else if (i > 0)
          pen_line (pen, thin, (Point) { low, cut }, (Point) { low + strip, cut });
      }
}

/* The title block is not cut into. */
static void
draw_centring_marks (const SheetPen *pen, Box frame, Point middle)
{
  const double below = wall_title_box (pen->sheet).min.x < middle.x ? 0 : reach;

  pen_line (pen, border, (Point) { middle.x, frame.min.y - strip }, (Point) { middle.x, frame.min.y + reach });
  pen_line (pen, border, (Point) { middle.x, frame.max.y - below }, (Point) { middle.x, frame.max.y + strip });
  pen_line (pen, border, (Point) { frame.min.x - strip, middle.y }, (Point) { frame.min.x + reach, middle.y });
  pen_line (pen, border, (Point) { frame.max.x - reach, middle.y }, (Point) { frame.max.x + strip, middle.y });
}

void
wall_frame_draw (const SheetPen *pen)
{
  const Box frame = wall_frame_box (pen->sheet);
  double width, height;

  wall_sheet_size (pen->sheet, &width, &height);
  draw_zones (pen, (ZoneSide) { frame.min.x, frame.max.x, width / 2 }, true, frame.min.y, frame.max.y);
  draw_zones (pen, (ZoneSide) { frame.min.y, frame.max.y, height / 2 }, false, frame.min.x, frame.max.x);
  pen_box (pen, thin, box_grown (frame, strip));
  draw_centring_marks (pen, frame, (Point) { width / 2, height / 2 });
  pen_box (pen, border, frame);
}
