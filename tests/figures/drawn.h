#pragma once
#include <check.h>
#include <math.h>
#include "support/aeroplanes.h"
#include "support/figures-once.h"
#include "support/random.h"
#include "support/shapes.h"

/* What the tests share that hold stated deviations against aeroplanes drawn at random. */

/* Of standard normal distribution: Box and Muller, Annals of Mathematical Statistics 29 (1958), 610. */
static inline double
random_normal (Random *random)
{
  const double radius = sqrt (-2 * log (1 - random_between (random, 0, 1)));

  return radius * cos (random_between (random, 0, 2 * M_PI));
}

/* Mean and deviation of what was drawn so far: Welford, Technometrics 4 (1962), 419. */
typedef struct { int count; double mean, squares; } Drawn;

static inline void
drawn_add (Drawn *self, double value)
{
  const double off = value - self->mean;

  self->mean += off / ++self->count;
  self->squares += off * (value - self->mean);
}

static inline double
drawn_sigma (const Drawn *self)
{
  return sqrt (self->squares / (self->count - 1));
}

/* Every part with its mass and place drawn; its place along each axis alike. */
static inline Aeroplane *
with_parts_drawn (const Aeroplane *sound, Random *random)
{
  Aeroplane *made = aeroplane_ref ((Aeroplane *) sound);

  for (size_t i = 0; i < aeroplane_count (sound, PIECE_PART); i++)
    {
      const Part *part = aeroplane_part (sound, i);
      Part *drawn = (Part *) piece_dup (&part->piece);
      Aeroplane *next;

      drawn->mass += part->mass_sigma * random_normal (random);
      drawn->x += part->x_sigma * random_normal (random);
      drawn->y += part->x_sigma * random_normal (random);
      drawn->z += part->x_sigma * random_normal (random);
      next = aeroplane_with_replaced (made, &part->piece, &drawn->piece);
      aeroplane_unref (made);
      made = next;
    }
  return made;
}

/* A dozen parts and nothing else that weighs, each with deviations of its own. */
static inline Aeroplane *
parts_alone (void)
{
  Aeroplane *made = with_surface (aeroplane_new (), "wing", ROLE_WING, rectangle (100, 640, 110));

  for (int i = 0; i < 12; i++)
    {
      g_autofree char *id = g_strdup_printf ("part-%d", i);
      Part *part = part_new (id, "other");

      part->mass = 4 + 2.5 * i;
      part->x = 20 + 35 * ((7 * i) % 12);
      part->mass_sigma = (0.04 + 0.01 * (i % 5)) * part->mass;
      part->x_sigma = 1 + i % 4;
      made = with_piece (made, part);
    }
  return made;
}

/* Both surfaces with the section's slope stated, so that it can be drawn; its deviation is then 0.03, that of a stated pressure ratio too. */
static inline Aeroplane *
tailed (double wing_slope, double tail_slope, double tail_pressure)
{
  Surface *wing = surface_new ("wing", ROLE_WING, rectangle (100, 640, 110));
  Surface *tail = surface_new ("tail", ROLE_TAILPLANE, rectangle (420, 240, 55));

  wing->section_slope = wing_slope;
  tail->section_slope = tail_slope;
  tail->pressure_ratio = tail_pressure;
  tail->z = 20;
  return with_piece (with_piece (aeroplane_new (), wing), tail);
}

static inline double
owed_to (const Contributions *owed, unsigned kinds)
{
  double variance = 0;

  for (size_t i = 0; i < owed->count; i++)
    if (kinds & 1u << owed->of[i].kind)
      variance += owed->of[i].sigma * owed->of[i].sigma;
  return sqrt (variance);
}
