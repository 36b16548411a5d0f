#include "support/canvas.h"
#include <check.h>
#include <math.h>
#include <stdint.h>

Canvas
canvas_new (double width, double height, double scale, Colour ground)
{
  Canvas self = { .scale = scale };

  self.surface = cairo_image_surface_create (CAIRO_FORMAT_ARGB32, ceil (width * scale), ceil (height * scale));
  cairo_surface_set_device_scale (self.surface, scale, scale);
  self.cr = cairo_create (self.surface);
  look_set_source (self.cr, ground);
  cairo_paint (self.cr);
  return self;
}

void
canvas_clear (Canvas *self)
{
  ck_assert_int_eq (cairo_status (self->cr), CAIRO_STATUS_SUCCESS);
  cairo_destroy (self->cr);
  cairo_surface_destroy (self->surface);
}

/* Everything is painted on an opaque ground, so alpha is 1 everywhere. */
static Colour
device_pixel (const Canvas *self, int x, int y)
{
  const unsigned char *data = cairo_image_surface_get_data (self->surface);
  const uint32_t argb = *(const uint32_t *) (const void *) (data + y * cairo_image_surface_get_stride (self->surface) + 4 * x);

  return (Colour) { (argb >> 16 & 0xFF) / 255.0, (argb >> 8 & 0xFF) / 255.0, (argb & 0xFF) / 255.0, 1 };
}

Colour
canvas_at (const Canvas *self, double x, double y)
{
  const int i = floor (x * self->scale), j = floor (y * self->scale);

  cairo_surface_flush (self->surface);
  ck_assert (i >= 0 && j >= 0 && i < cairo_image_surface_get_width (self->surface) && j < cairo_image_surface_get_height (self->surface));
  return device_pixel (self, i, j);
}

double
colour_distance (Colour a, Colour b)
{
  return fmax (fabs (a.red - b.red), fmax (fabs (a.green - b.green), fabs (a.blue - b.blue)));
}

double
canvas_share (const Canvas *self, Box box, Colour colour)
{
  int all = 0, met = 0;

  cairo_surface_flush (self->surface);
  for (int y = ceil (box.min.y * self->scale); y < floor (box.max.y * self->scale); y++)
    for (int x = ceil (box.min.x * self->scale); x < floor (box.max.x * self->scale); x++)
      {
        all++;
        met += colour_distance (device_pixel (self, x, y), colour) <= 0.12;
      }
  ck_assert_int_gt (all, 0);
  return met / (double) all;
}

Box
canvas_marked (const Canvas *self, Colour ground)
{
  Box box = { { INFINITY, INFINITY }, { -INFINITY, -INFINITY } };

  cairo_surface_flush (self->surface);
  for (int y = 0; y < cairo_image_surface_get_height (self->surface); y++)
    for (int x = 0; x < cairo_image_surface_get_width (self->surface); x++)
      if (colour_distance (device_pixel (self, x, y), ground) > 0.02)
        {
          box.min = (Point) { fmin (box.min.x, x / self->scale), fmin (box.min.y, y / self->scale) };
          box.max = (Point) { fmax (box.max.x, (x + 1) / self->scale), fmax (box.max.y, (y + 1) / self->scale) };
        }
  return box;
}

static double
linear_channel (double channel)
{
  return channel <= 0.04045 ? channel / 12.92 : pow ((channel + 0.055) / 1.055, 2.4);
}

double
colour_luminance (Colour c)
{
  return 0.2126 * linear_channel (c.red) + 0.7152 * linear_channel (c.green) + 0.0722 * linear_channel (c.blue);
}

double
colour_contrast (Colour a, Colour b)
{
  const double one = colour_luminance (a), two = colour_luminance (b);

  return (fmax (one, two) + 0.05) / (fmin (one, two) + 0.05);
}
