#include "drawing/section-path.h"
#include <math.h>
#include <stdlib.h>
#include "geometry/section-shape.h"

void
section_path (cairo_t *cr, const SectionPath *section)
{
  enum { STEPS = 24 };
  const Point chord = point_sub (section->trailing, section->leading), normal = { chord.y, -chord.x };

  cairo_new_sub_path (cr);
  for (int i = -STEPS; i <= STEPS; i++)
    {
      const double x = section->until * (1 - cos (M_PI / 2 * abs (i) / STEPS));       /* crowded at the leading edge */
      const double half = (i < 0 ? 1 : -1) * section_half_thickness (section->thickness, x);
      const Point at = point_add (section->leading, point_add (point_scale (chord, x), point_scale (normal, half)));

      cairo_line_to (cr, at.x, at.y);
    }
}
