#pragma once
#include <stddef.h>
#include <stdint.h>

/** Random numbers that are the same in every run: xorshift64* (Marsaglia, Xorshift RNGs, 2003; Vigna, 2016). Seed: not 0. */
typedef struct { uint64_t state; } Random;

static inline uint64_t
random_next (Random *self)
{
  self->state ^= self->state >> 12;
  self->state ^= self->state << 25;
  self->state ^= self->state >> 27;
  return self->state * UINT64_C (0x2545F4914F6CDD1D);
}

static inline double
random_between (Random *self, double low, double high)
{
  return low + (high - low) * (double) (random_next (self) >> 11) * 0x1p-53;
}

static inline size_t
random_below (Random *self, size_t count)
{
  return (size_t) (random_next (self) >> 33) % count;
}
