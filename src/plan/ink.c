#include "plan/ink.h"

#include <math.h>
#include <stdatomic.h>
#include <stdlib.h>
#include <string.h>
#include "plan/ink-ground.h"

struct Ink {
  atomic_int references;
  int width, height, reduced;
  bool light;
  unsigned char *pixels;
};

/* How far values lie from the ground, in steps: 1 means twice as bright or black. */
enum { STEPS = 256, EVERY = 5, REPORT_ROWS = 64 };
/* The share of a picture's pixels that are inked at least as strongly as what is shown in full. */
static const double DARKEST_SHARE = 0.005;
/* Below this the paper's own grain cannot be told from ink. */
static const double LEAST_DARKEST = 0.06;

/* What a look at every fifth pixel of every fifth row tells of a channel. */
typedef struct { double skew, noise, darkest; } Glance;

static double
share_level (const long histogram[STEPS + 1], long count, double share)
{
  long seen = 0;

  for (int i = STEPS; i > 0; i--)
    if ((double) (seen += histogram[i]) >= share * (double) count)
      return (double) i / STEPS;
  return 1.0 / STEPS;
}

static bool
glance (const Raster *raster, const InkGround *ground, Glance *seen)
{
  const int width = raster_width (raster), height = raster_height (raster), channels = raster_channels (raster);
  float *levels = malloc ((size_t) width * sizeof *levels);
  long dark[STEPS + 1] = { 0 }, light[STEPS + 1] = { 0 }, both[STEPS + 1] = { 0 }, count = 0;
  double skew = 0;

  if (!levels)
    return false;
  for (int y = 0; y < height; y += EVERY)
    {
      ink_ground_row (ground, y, width, levels);
      for (int x = 0; x < width; x += EVERY, count++)
        {
          const double off = channel_value (raster_row (raster, y) + (size_t) x * (size_t) channels, ground->channel) / levels[x] - 1;
          const int step = (int) (fmin (fabs (off), 1) * STEPS);
          skew += fmin (fmax (off * off * off, -1), 1);
          (off < 0 ? dark : light)[step]++;
          both[step]++;
        }
    }
  free (levels);
  *seen = (Glance) { .skew = skew / (double) count, .noise = share_level (both, count, 0.5),
                     .darkest = fmax (share_level (skew > 0 ? light : dark, count, DARKEST_SHARE), LEAST_DARKEST) };
  return true;
}

/* The ground of the channel whose lines stand out most. */
static bool
choose_channel (const Raster *raster, InkGround *ground, Glance *seen)
{
  const int last = raster_channels (raster) == 3 ? CHANNEL_MEAN : CHANNEL_FIRST;
  double best = -1;

  *ground = (InkGround) { 0 };
  for (int channel = last; channel >= CHANNEL_FIRST; channel--)
    {
      InkGround tried;
      Glance glanced;
      if (!ink_ground_make (raster, (InkChannel) channel, &tried))
        break;
      if (!glance (raster, &tried, &glanced) || !(glanced.darkest / glanced.noise > best))
        {
          ink_ground_clear (&tried);
          continue;
        }
      ink_ground_clear (ground);
      *ground = tried;
      *seen = glanced;
      best = glanced.darkest / glanced.noise;
    }
  return ground->level != NULL;
}

static bool
lift (Ink *self, const Raster *raster, const InkGround *ground, double darkest, InkGoesOn goes_on, void *data, float *levels)
{
  const int channels = raster_channels (raster);
  const float gain = (float) ((self->light ? -255 : 255) / darkest);

  for (int y = 0; y < self->height; y++)
    {
      const unsigned char *from = raster_row (raster, y);
      unsigned char *to = self->pixels + (size_t) y * (size_t) self->width;

      if (y % REPORT_ROWS == 0 && goes_on && !goes_on ((double) y / self->height, data))
        return false;
      ink_ground_row (ground, y, self->width, levels);
      for (int x = 0; x < self->width; x++, from += channels)
        {
          const float ink = (1 - (float) channel_value (from, ground->channel) / levels[x]) * gain;
          to[x] = (unsigned char) (ink < 0 ? 0 : ink > 254.5f ? 255 : ink + 0.5f);
        }
    }
  return true;
}

static Ink *
ink_blank (const Raster *raster)
{
  Ink *self = calloc (1, sizeof *self);

  if (!self)
    return NULL;
  atomic_init (&self->references, 1);
  self->width = raster_width (raster);
  self->height = raster_height (raster);
  self->reduced = raster_reduced (raster);
  self->pixels = malloc ((size_t) self->width * (size_t) self->height);
  if (self->pixels)
    return self;
  free (self);
  return NULL;
}

CoreStatus
ink_new (const Raster *raster, InkGoesOn goes_on, void *data, Ink **made)
{
  Ink *self = ink_blank (raster);
  float *levels = malloc ((size_t) raster_width (raster) * sizeof *levels);
  InkGround ground = { 0 };
  Glance seen = { 0 };
  CoreStatus status = CORE_NO_MEMORY;

  if (self && levels && choose_channel (raster, &ground, &seen))
    {
      self->light = seen.skew > 0;
      status = lift (self, raster, &ground, seen.darkest, goes_on, data, levels) ? CORE_OK : CORE_CANCELLED;
    }
  ink_ground_clear (&ground);
  free (levels);
  if (status == CORE_OK)
    *made = self;
  else
    ink_unref (self);
  return status;
}

Ink *
ink_of_channel (const Raster *raster, int channel)
{
  const int channels = raster_channels (raster), offset = channels == 3 ? channel : 0;
  Ink *self = ink_blank (raster);

  for (int y = 0; self && y < self->height; y++)
    {
      const unsigned char *from = raster_row (raster, y) + offset;
      unsigned char *to = self->pixels + (size_t) y * (size_t) self->width;

      for (int x = 0; x < self->width; x++, from += channels)
        to[x] = *from ? *from : 1;
    }
  return self;
}

Ink *
ink_ref (const Ink *self)
{
  Ink *mine = (Ink *) self;

  atomic_fetch_add (&mine->references, 1);
  return mine;
}

void
ink_unref (Ink *self)
{
  if (!self || atomic_fetch_sub (&self->references, 1) > 1)
    return;
  free (self->pixels);
  free (self);
}

int
ink_width (const Ink *self)
{
  return self->width;
}

int
ink_height (const Ink *self)
{
  return self->height;
}

int
ink_reduced (const Ink *self)
{
  return self->reduced;
}

bool
ink_is_light (const Ink *self)
{
  return self->light;
}

const unsigned char *
ink_row (const Ink *self, int y)
{
  return self->pixels + (size_t) y * (size_t) self->width;
}

static double
clamp (double value, double most)
{
  return value < 0 ? 0 : value > most ? most : value;
}

double
ink_at (const Ink *self, Point place)
{
  const double x = clamp (place.x - 0.5, self->width - 1), y = clamp (place.y - 0.5, self->height - 1);
  const int left = (int) x, top = (int) y;
  const int right = left + 1 < self->width ? left + 1 : left, bottom = top + 1 < self->height ? top + 1 : top;
  const unsigned char *above = ink_row (self, top), *below = ink_row (self, bottom);
  const double upper = above[left] + (above[right] - above[left]) * (x - left);
  const double lower = below[left] + (below[right] - below[left]) * (x - left);

  return upper + (lower - upper) * (y - top);
}
