#include "drawing/flat-half.h"
#include <math.h>
#include "document/part-box.h"
#include "drawing/sheet-places.h"
#include "drawing/wall-sheet-pen.h"
#include "figures/lead-route.h"
#include "figures/names.h"
#include "figures/surface-figures.h"

/* How far off the wing's plane a part that is fixed to nothing stands and is still taken to be built into it, mm. Common practice, no
 * source. */
static const double off_plane = 20;

static double
off_plane_of (const Surface *surface, const Part *part)
{
  return fabs (part->z - surface->z - surface_lift (surface, fabs (part->y)));
}

/* Of what is fixed to nothing: the surface that it stands in, beside the body; NULL where it stands in none. */
static const Surface *
stood_in (const Aeroplane *aeroplane, const Part *part)
{
  const Surface *nearest = NULL;

  if (!(fabs (part->y) > sheet_half_width (aeroplane, part->x)))
    return NULL;
  for (size_t i = 0; i < aeroplane_count (aeroplane, PIECE_SURFACE); i++)
    {
      const Surface *surface = aeroplane_surface (aeroplane, i);

      if (surface_covers (surface, (Point) { part->x, part->y }) && off_plane_of (surface, part) <= off_plane
          && (!nearest || off_plane_of (surface, part) < off_plane_of (nearest, part)))
        nearest = surface;
    }
  return nearest;
}

static bool
is_in_half (const FlatHalf *half, const Part *part)
{
  const Aeroplane *aeroplane = half->figures->aeroplane;

  if (!part || !part->aboard)
    return false;
  if (part->of ? aeroplane_surface_by_id (aeroplane, part->of) != half->surface : stood_in (aeroplane, part) != half->surface)
    return false;
  return !surface_is_horizontal (half->surface) || half->side * part->y >= 0;
}

/* Its four corners as places of the surface's own: from above, in a fin from the side. */
static void
corners_of (const FlatHalf *half, const Part *part, Point corners[4])
{
  const double height = part->z - half->surface->z;
  const Point low = { part->x - part->length / 2, height - part->height / 2 }, high = { part->x + part->length / 2, height + part->height / 2 };

  if (surface_is_horizontal (half->surface))
    {
      part_corners (part, corners);
      for (int i = 0; i < 4; i++)
        corners[i].y *= half->side;
      return;
    }
  corners[0] = low;
  corners[1] = (Point) { low.x, high.y };
  corners[2] = high;
  corners[3] = (Point) { high.x, low.y };
}

static void
add_part (const FlatHalf *half, const Part *part)
{
  Point corners[4], words;

  corners_of (half, part, corners);
  if (!(point_distance (corners[0], corners[1]) > 0 && point_distance (corners[1], corners[2]) > 0))
    return;
  const Segment sides[] = { segment_line (corners[1]), segment_line (corners[2]), segment_line (corners[3]) };
  flat_add_run (half->piece, half->surface, FLAT_ROOM, true, corners[0], sides, G_N_ELEMENTS (sides));
  words = (Point) { (corners[0].x + corners[2].x) / 2, fmax (fmax (corners[0].y, corners[1].y), fmax (corners[2].y, corners[3].y)) };
  flat_half_add_words (half, FLAT_ROOM, caps_small, words, (Point) { 2, caps_small / 2 }, piece_name (&part->piece));
}

void
flat_half_add_parts (const FlatHalf *half)
{
  const Aeroplane *aeroplane = half->figures->aeroplane;

  for (size_t i = 0; i < aeroplane_count (aeroplane, PIECE_PART); i++)
    if (is_in_half (half, aeroplane_part (aeroplane, i)))
      add_part (half, aeroplane_part (aeroplane, i));
}

/* A lead on its way through a half: within the surface, outside the parts at its ends. */
typedef struct {
  const FlatHalf *half;
  const char *name;
  const Part *ends[2];         /* NULL where no part of this half is there */
  GArray *places;              /* of Point, of the channel under way */
} Channel;

static bool
part_holds (const FlatHalf *half, const Part *part, Point own)
{
  Point corners[4];
  int left = 0;

  corners_of (half, part, corners);
  for (int i = 0; i < 4; i++)
    {
      const Point side = point_sub (corners[(i + 1) % 4], corners[i]), to = point_sub (own, corners[i]);

      left += side.x * to.y - side.y * to.x > 0;
    }
  return left == 0 || left == 4;
}

static bool
is_within (const Channel *channel, Point own)
{
  for (int i = 0; i < 2; i++)
    if (channel->ends[i] && part_holds (channel->half, channel->ends[i], own))
      return false;
  return own.y >= 0 && surface_covers (channel->half->surface, own);
}

/* Where the way from a place within to one that is not leaves the half: the last place within. */
static Point
left_at (const Channel *channel, Point within, Point beyond)
{
  double low = 0, high = 1;

  for (int i = 0; i < 40; i++)
    {
      const double middle = (low + high) / 2;

      if (is_within (channel, point_mix (within, beyond, middle)))
        low = middle;
      else
        high = middle;
    }
  return point_mix (within, beyond, low);
}

static void
end_channel (const Channel *channel)
{
  const guint count = channel->places->len;
  const Point *at = (const Point *) (void *) channel->places->data;
  g_autofree Segment *ways = g_new (Segment, count + 1);

  for (guint i = 1; i < count; i++)
    ways[i - 1] = segment_line (at[i]);
  if (count > 1)
    {
      flat_add_run (channel->half->piece, channel->half->surface, FLAT_ROOM, false, at[0], ways, count - 1);
      flat_half_add_words (channel->half, FLAT_ROOM, caps_field, point_mix (at[count - 2], at[count - 1], 0.5), (Point) { 1, -1 }, channel->name);
    }
  g_array_set_size (channel->places, 0);
}

static void
go_on (const Channel *channel, Point from, Point to)
{
  const bool begins = is_within (channel, from), ends = is_within (channel, to);

  if (!begins)
    end_channel (channel);
  if (!begins && !ends)
    return;
  const Point first = begins ? from : left_at (channel, to, from), last = ends ? to : left_at (channel, from, to);
  if (channel->places->len == 0)
    g_array_append_val (channel->places, first);
  g_array_append_val (channel->places, last);
  if (!ends)
    end_channel (channel);
}

static void
add_way (const Channel *channel, const GArray *route)
{
  for (guint i = 1; i < route->len; i++)
    {
      Point from = g_array_index (route, Point, i - 1), to = g_array_index (route, Point, i);

      from.y *= channel->half->side;
      to.y *= channel->half->side;
      go_on (channel, from, to);
    }
  end_channel (channel);
}

/* A leg has a part at its one end; at the other the receiver, or a joint. */
static void
add_leg (const FlatHalf *half, const Lead *lead, LeadLeg leg)
{
  const Aeroplane *aeroplane = half->figures->aeroplane;
  const Part *begin = aeroplane_part_by_id (aeroplane, lead_leg_part (lead, leg)), *end = lead_is_joined (lead) ? NULL : aeroplane_part_by_id (aeroplane, lead->to);
  g_autoptr (GArray) places = g_array_new (FALSE, FALSE, sizeof (Point)), route = NULL;
  Channel channel = { .half = half, .name = piece_name (&lead->piece), .places = places };

  channel.ends[0] = is_in_half (half, begin) ? begin : NULL;
  channel.ends[1] = is_in_half (half, end) ? end : NULL;
  if (!channel.ends[0] && !channel.ends[1])
    return;
  route = lead_route (aeroplane, lead, leg);
  if (route)
    add_way (&channel, route);
}

void
flat_half_add_leads (const FlatHalf *half)
{
  const Aeroplane *aeroplane = half->figures->aeroplane;

  for (size_t i = 0; surface_is_horizontal (half->surface) && i < aeroplane_count (aeroplane, PIECE_LEAD); i++)
    for (int leg = 0; leg < lead_leg_count (aeroplane_lead (aeroplane, i)); leg++)
      add_leg (half, aeroplane_lead (aeroplane, i), leg);
}
