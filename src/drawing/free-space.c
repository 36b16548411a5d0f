#include "drawing/free-space.h"
#include <glib.h>
#include <math.h>
#include <string.h>
#include "drawing/sheet-places.h"

enum { FINENESS = 2 };           /* px a mm */
enum { FAINT = 12 };             /* of 255: what edges of a neighbour leave behind is not taken */
static const double step = 1.5;    /* mm between places that are tried */

struct FreeSpace {
  int width, height;             /* px */
  cairo_surface_t *picture;      /* NULL once closed */
  guint32 *taken, *ink;          /* sums over all px above and to the left, (width + 1) × (height + 1) */
  GArray *boxes;                 /* of Box, taken since */
};

FreeSpace *
free_space_new (double width, double height)
{
  FreeSpace *self = g_new0 (FreeSpace, 1);

  self->width = (int) ceil (width * FINENESS);
  self->height = (int) ceil (height * FINENESS);
  self->picture = cairo_image_surface_create (CAIRO_FORMAT_ARGB32, self->width, self->height);
  self->boxes = g_array_new (FALSE, FALSE, sizeof (Box));
  return self;
}

void
free_space_free (FreeSpace *self)
{
  if (self == NULL)
    return;
  if (self->picture != NULL)
    cairo_surface_destroy (self->picture);
  g_array_unref (self->boxes);
  g_free (self->taken);
  g_free (self->ink);
  g_free (self);
}

cairo_t *
free_space_open (FreeSpace *self)
{
  cairo_t *cr = cairo_create (self->picture);

  cairo_scale (cr, FINENESS, FINENESS);
  return cr;
}

static size_t
sum_index (const FreeSpace *self, int x, int y)
{
  return (size_t) y * (self->width + 1) + x;
}

/* A row of cairo's premultiplied pixels: opacity is what is covered, and what of it no green shines through is ink. */
static void
sum_row (FreeSpace *self, const unsigned char *row, int y)
{
  guint32 taken = 0, ink = 0;

  for (int x = 0; x < self->width; x++)
    {
      const size_t here = sum_index (self, x + 1, y + 1), above = sum_index (self, x + 1, y);
      guint32 pixel, alpha;

      memcpy (&pixel, row + 4 * x, sizeof pixel);
      alpha = pixel >> 24;
      taken += alpha > FAINT;
      ink += alpha - (pixel >> 8 & 0xFF);
      self->taken[here] = self->taken[above] + taken;
      self->ink[here] = self->ink[above] + ink;
    }
}

void
free_space_close (FreeSpace *self)
{
  const size_t count = (size_t) (self->width + 1) * (self->height + 1);
  const bool painted = cairo_surface_status (self->picture) == CAIRO_STATUS_SUCCESS;

  self->taken = g_new0 (guint32, count);
  self->ink = g_new0 (guint32, count);
  cairo_surface_flush (self->picture);
  for (int y = 0; painted && y < self->height; y++)
    sum_row (self, cairo_image_surface_get_data (self->picture) + (size_t) y * cairo_image_surface_get_stride (self->picture), y);
  g_clear_pointer (&self->picture, cairo_surface_destroy);
}

static int
px_within (double mm, int most)
{
  return CLAMP ((int) mm, 0, most);
}

static guint32
sum_within (const FreeSpace *self, const guint32 sums[], Box box)
{
  const int x0 = px_within (floor (box.min.x * FINENESS), self->width), x1 = px_within (ceil (box.max.x * FINENESS), self->width);
  const int y0 = px_within (floor (box.min.y * FINENESS), self->height), y1 = px_within (ceil (box.max.y * FINENESS), self->height);

  if (x1 <= x0 || y1 <= y0)
    return 0;
  return sums[sum_index (self, x1, y1)] - sums[sum_index (self, x0, y1)] - sums[sum_index (self, x1, y0)] + sums[sum_index (self, x0, y0)];
}

bool
free_space_is_clear (const FreeSpace *self, Box box)
{
  if (sum_within (self, self->taken, box) > 0)
    return false;
  for (guint i = 0; i < self->boxes->len; i++)
    if (boxes_meet (box, g_array_index (self->boxes, Box, i)))
      return false;
  return true;
}

double
free_space_ink (const FreeSpace *self, Box box)
{
  double ink = sum_within (self, self->ink, box) / (255.0 * FINENESS * FINENESS);

  for (guint i = 0; i < self->boxes->len; i++)
    {
      const Box taken = g_array_index (self->boxes, Box, i);
      const double across = fmin (box.max.x, taken.max.x) - fmax (box.min.x, taken.min.x);
      const double down = fmin (box.max.y, taken.max.y) - fmax (box.min.y, taken.min.y);

      if (across > 0 && down > 0)
        ink += across * down;
    }
  return ink;
}

void
free_space_take (FreeSpace *self, Box box)
{
  g_array_append_val (self->boxes, box);
}

size_t
free_space_taken (const FreeSpace *self)
{
  return self->boxes->len;
}

void
free_space_give_back (FreeSpace *self, size_t taken)
{
  g_array_set_size (self->boxes, taken);
}

/* Places to be tried along one axis: from `from` on, every mm up to `to`, and the wished one where it lies between. */
static int
place_count (double from, double to)
{
  return to < from ? 0 : (int) floor ((to - from) / step) + 1;
}

static double
place_nth (double from, double to, double wished, int i)
{
  return i >= 0 ? from + i * step : CLAMP (wished, from, to);
}

/* The right edge of what lies furthest to the right in a box that is not clear, mm: by halving, from the sums. */
static double
blocked_until (const FreeSpace *self, Box box)
{
  double edge = -INFINITY, low = box.min.x, high = box.max.x;

  for (guint i = 0; i < self->boxes->len; i++)
    if (boxes_meet (box, g_array_index (self->boxes, Box, i)))
      edge = fmax (edge, g_array_index (self->boxes, Box, i).max.x);
  if (sum_within (self, self->taken, box) == 0)
    return edge;
  while (high - low > 0.25)
    {
      const double middle = (low + high) / 2;

      if (sum_within (self, self->taken, (Box) { { middle, box.min.y }, box.max }) > 0)
        low = middle;
      else
        high = middle;
    }
  return fmax (edge, low);
}

/* One row of places, the box's upper edge at y; *best is the least cost so far. What is in the way is leapt over. */
static void
find_in_row (const FreeSpace *self, const Wish *wish, double y, Box *found, double *best)
{
  const double from = wish->within.min.x, to = wish->within.max.x - wish->size.x;
  const Point wished = { wish->anchor.x - wish->corner.x * wish->size.x, wish->anchor.y - wish->corner.y * wish->size.y };
  const double aside = wish->down * fabs (y - wished.y);
  const int count = place_count (from, to);

  for (int i = -1; aside < *best && i < count; i++)
    {
      const double x = place_nth (from, to, wished.x, i), cost = aside + wish->across * fabs (x - wished.x);
      const Box box = { { x, y }, { x + wish->size.x, y + wish->size.y } }, grown = box_grown (box, wish->clear);

      if (cost >= *best)
        continue;
      if (free_space_is_clear (self, grown))
        {
          *best = cost;
          *found = box;
        }
      else if (i >= 0)
        i = MAX (i, (int) ceil ((blocked_until (self, grown) + wish->clear - from) / step) - 1);
    }
}

bool
free_space_find (const FreeSpace *self, const Wish *wish, Box *found, double *cost)
{
  const double from = wish->within.min.y, to = wish->within.max.y - wish->size.y;
  const double wished = wish->anchor.y - wish->corner.y * wish->size.y;
  const int count = wish->within.max.x - wish->within.min.x < wish->size.x ? 0 : place_count (from, to);
  double best = INFINITY;

  for (int j = count > 0 ? -1 : 0; j < count; j++)
    find_in_row (self, wish, place_nth (from, to, wished, j), found, &best);
  if (isfinite (best))
    *cost = best;
  return isfinite (best);
}
