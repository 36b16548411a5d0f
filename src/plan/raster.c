#include "plan/raster.h"

#include <assert.h>
#include <stdatomic.h>
#include <stddef.h>
#include <stdlib.h>

struct Raster {
  atomic_uint references;
  int width, height, channels, reduced;
  unsigned char *pixels;
};

Raster *
raster_new (int width, int height, int channels, int reduced, unsigned char *pixels)
{
  Raster *self = malloc (sizeof *self);

  assert (width >= 1 && height >= 1 && (channels == 1 || channels == 3) && reduced >= 1 && pixels);
  if (!self)
    {
      free (pixels);
      return NULL;
    }
  atomic_init (&self->references, 1);
  self->width = width;
  self->height = height;
  self->channels = channels;
  self->reduced = reduced;
  self->pixels = pixels;
  return self;
}

Raster *
raster_ref (const Raster *self)
{
  Raster *counted = (Raster *) self;             /* the count is not part of the value */

  atomic_fetch_add_explicit (&counted->references, 1, memory_order_relaxed);
  return counted;
}

void
raster_unref (Raster *self)
{
  if (!self || atomic_fetch_sub_explicit (&self->references, 1, memory_order_acq_rel) > 1)
    return;
  free (self->pixels);
  free (self);
}

int
raster_width (const Raster *self)
{
  return self->width;
}

int
raster_height (const Raster *self)
{
  return self->height;
}

int
raster_channels (const Raster *self)
{
  return self->channels;
}

int
raster_reduced (const Raster *self)
{
  return self->reduced;
}

const unsigned char *
raster_row (const Raster *self, int y)
{
  assert (y >= 0 && y < self->height);
  return self->pixels + (size_t) y * self->width * self->channels;
}
