#include "figures/wing-through.h"

#include <math.h>
#include "document/part-class.h"
#include "figures/surface-figures.h"
#include "geometry/section-shape.h"

/* Along the chord: between two of them a section of usual thickness stands out by less than a tenth of a mm. */
enum { PLACES = 6 };

/* At one station, so far as the stretch [from, to] reaches over the chord; whether it does. */
static bool
add_station (const Surface *surface, double station, double from, double to, WingThrough *through)
{
  const double turn = surface->incidence * G_PI / 180;
  StationCut cut;

  if (planform_cut (surface->outline, surface_sides (surface), station, &cut) != CORE_OK)
    return false;
  const double first = fmax (from, cut.leading_x), last = fmin (to, cut.trailing_x), chord = cut.trailing_x - cut.leading_x;
  const double root = surface->z + station * tan (surface->dihedral * G_PI / 180);
  if (!(first < last))
    return false;
  for (int i = 0; i < PLACES; i++)
    {
      const double x = first + (last - first) * i / (PLACES - 1), middle = root - (x - cut.leading_x) * tan (turn);
      const double half = section_half_thickness (surface->thickness / 100, (x - cut.leading_x) / chord) * chord;

      through->bottom = fmin (through->bottom, middle - half);
      through->top = fmax (through->top, middle + half);
    }
  return true;
}

bool
wing_through (const Surface *surface, Point middle, double length, double width, WingThrough *through)
{
  const double near = fmax (fabs (middle.y) - width / 2, 0), far = fabs (middle.y) + width / 2;
  WingThrough found = { surface, INFINITY, -INFINITY };

  if (!surface_is_horizontal (surface) || isnan (surface->thickness) || surface->root_open)
    return false;
  const bool at_near = add_station (surface, near, middle.x - length / 2, middle.x + length / 2, &found);
  const bool at_far = add_station (surface, far, middle.x - length / 2, middle.x + length / 2, &found);
  if (at_near || at_far)
    *through = found;
  return at_near || at_far;
}

static bool
keeps_out (const Part *part)
{
  static const char *const gear[] = { "motor", "controller", "battery", "receiver", "servo", "switch" };

  for (size_t i = 0; i < G_N_ELEMENTS (gear); i++)
    if (part_is_a (part, gear[i]))
      return true;
  return false;
}

bool
wings_through (const Aeroplane *aeroplane, const Part *part, Point middle, double length, double width, WingThrough *through)
{
  WingThrough one;
  bool found = false;

  for (size_t i = 0; keeps_out (part) && i < aeroplane_count (aeroplane, PIECE_SURFACE); i++)
    {
      const Surface *surface = aeroplane_surface (aeroplane, i);

      if ((part->of && g_strcmp0 (part->of, surface->piece.id) == 0) || !wing_through (surface, middle, length, width, &one))
        continue;
      through->surface = surface;
      through->bottom = found ? fmin (through->bottom, one.bottom) : one.bottom;
      through->top = found ? fmax (through->top, one.top) : one.top;
      found = true;
    }
  return found;
}

BodyClear
body_clear_above (BodyClear clear, const WingThrough *through)
{
  clear.bottom = fmax (clear.bottom, through->top);
  return clear;
}

BodyClear
body_clear_beneath (BodyClear clear, const WingThrough *through)
{
  clear.top = fmin (clear.top, through->bottom);
  return clear;
}
