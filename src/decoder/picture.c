#include "decoder/picture.h"

static Picture
mirrored (Picture self)
{
  self.origin += (self.width - 1) * self.right;
  self.right = -self.right;
  return self;
}

static Picture
upside_down (Picture self)
{
  self.origin += (self.height - 1) * self.down;
  self.down = -self.down;
  return self;
}

static Picture
transposed (Picture self)
{
  const Picture old = self;

  self.right = old.down;
  self.down = old.right;
  self.width = old.height;
  self.height = old.width;
  return self;
}

Picture
picture_oriented (Picture stored, int orientation)
{
  switch (orientation)
    {
    case 2:  return mirrored (stored);
    case 3:  return upside_down (mirrored (stored));
    case 4:  return upside_down (stored);
    case 5:  return transposed (stored);
    case 6:  return mirrored (transposed (stored));
    case 7:  return upside_down (mirrored (transposed (stored)));
    case 8:  return upside_down (transposed (stored));
    default: return stored;
    }
}

static const unsigned char *
pixel_at (const Picture *self, int x, int y)
{
  return self->origin + x * self->right + y * self->down;
}

bool
picture_is_grey (const Picture *self)
{
  for (int y = 0; y < self->height; y++)
    {
      const unsigned char *pixel = pixel_at (self, 0, y);

      for (int x = 0; x < self->width; x++, pixel += self->right)
        if (pixel[self->red] != pixel[self->green] || pixel[self->green] != pixel[self->blue])
          return false;
    }
  return true;
}

static unsigned
on_white (const Picture *self, const unsigned char *pixel, int channel)
{
  const unsigned opaque = self->alpha < 0 ? 255 : pixel[self->alpha];

  return (pixel[channel] * opaque + 255 * (255 - opaque) + 127) / 255;
}

static unsigned char
mean_on_white (const Picture *self, int left, int top, int reduced, int channel)
{
  const int right = left + reduced < self->width ? left + reduced : self->width;
  const int bottom = top + reduced < self->height ? top + reduced : self->height;
  const unsigned count = (unsigned) ((right - left) * (bottom - top));
  unsigned sum = count / 2;

  for (int y = top; y < bottom; y++)
    {
      const unsigned char *pixel = pixel_at (self, left, y);

      for (int x = left; x < right; x++, pixel += self->right)
        sum += on_white (self, pixel, channel);
    }
  return (unsigned char) (sum / count);
}

/* The usual row: neither reduced nor transparent. */
static void
row_as_it_is (const Picture *self, int y, int channels, unsigned char *bytes)
{
  const unsigned char *pixel = pixel_at (self, 0, y);

  for (int x = 0; x < self->width; x++, pixel += self->right)
    {
      *bytes++ = pixel[self->red];
      if (channels == 1)
        continue;
      *bytes++ = pixel[self->green];
      *bytes++ = pixel[self->blue];
    }
}

void
picture_row (const Picture *self, int y, int reduced, int channels, unsigned char *bytes)
{
  const int from[] = { self->red, self->green, self->blue };

  if (reduced == 1 && self->alpha < 0)
    {
      row_as_it_is (self, y, channels, bytes);
      return;
    }
  for (int left = 0; left < self->width; left += reduced)
    for (int channel = 0; channel < channels; channel++)
      *bytes++ = mean_on_white (self, left, y * reduced, reduced, from[channel]);
}
