#include "aero/section.h"

#include <stddef.h>

typedef struct { double reynolds; Spreading of[SECTION_CLASSES]; } Row;

/* In the order of SectionClass: unstated, flat plate, curved plate, flat-bottomed, symmetrical. */
static const Row slopes[] = {
  { 20e3,  { { 1, 0.13 }, { 0.95, 0.05 }, { 0.90, 0.07 }, { 0.80, 0.08 }, { 0.70, 0.12 } } },
  { 60e3,  { { 1, 0.09 }, { 0.95, 0.05 }, { 0.95, 0.05 }, { 0.92, 0.055 }, { 0.85, 0.08 } } },
  { 100e3, { { 1, 0.065 }, { 0.95, 0.05 }, { 0.95, 0.05 }, { 0.94, 0.05 }, { 0.92, 0.06 } } },
  { 200e3, { { 1, 0.06 }, { 0.95, 0.05 }, { 0.96, 0.04 }, { 0.96, 0.04 }, { 0.95, 0.05 } } },
};

static const Row lifts[] = {
  { 30e3,  { { 0.775, 0.12 }, { 0.65, 0.08 }, { 0.925, 0.075 }, { 0.775, 0.075 }, { 0.625, 0.075 } } },
  { 60e3,  { { 0.925, 0.12 }, { 0.68, 0.08 }, { 1.025, 0.075 }, { 0.925, 0.075 }, { 0.775, 0.075 } } },
  { 100e3, { { 1.025, 0.12 }, { 0.70, 0.08 }, { 1.075, 0.075 }, { 1.025, 0.075 }, { 0.875, 0.075 } } },
  { 150e3, { { 1.075, 0.12 }, { 0.70, 0.08 }, { 1.125, 0.075 }, { 1.075, 0.075 }, { 0.925, 0.075 } } },
};

static Spreading
row_between (const Row rows[], size_t count, SectionClass class, double reynolds)
{
  size_t above = 1;

  if (!(reynolds > rows[0].reynolds))
    return rows[0].of[class];
  while (above < count && rows[above].reynolds < reynolds)
    above++;
  if (above == count)
    return rows[count - 1].of[class];
  const Row *low = &rows[above - 1], *high = &rows[above];
  const double along = (reynolds - low->reynolds) / (high->reynolds - low->reynolds);
  const Spreading from = low->of[class], to = high->of[class];

  return (Spreading) { from.value + along * (to.value - from.value), from.sigma + along * (to.sigma - from.sigma) };
}

Spreading
section_slope_ratio (SectionClass class, double reynolds)
{
  return row_between (slopes, sizeof slopes / sizeof *slopes, class, reynolds);
}

Spreading
section_greatest_lift (SectionClass class, double reynolds)
{
  return row_between (lifts, sizeof lifts / sizeof *lifts, class, reynolds);
}
