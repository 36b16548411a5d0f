#include "balance/materials.h"

#include <math.h>

/* Common practice, no source: by grade names a careful sum is 18 % off, by weighed sheets 8 %; a line on a kitchen scale 0.3 g. */
static const double usual_share[] = { [MATERIAL_BY_GRADE] = 0.18, [MATERIAL_BY_SHEET] = 0.08 };
static const double usual_scale = 0.3e-3;
static const double pound_in_cubic_foot = 0.45359237 / (0.3048 * 0.3048 * 0.3048);      /* kg/m³, exactly by definition */

MaterialLine
material_line (void)
{
  return (MaterialLine) { .count = 1, .share = 1, .area = NAN, .length = NAN, .width = NAN, .thickness = NAN, .density = NAN,
                          .area_density = NAN, .each = NAN, .of_others = NAN, .weighed = NAN, .sigma = NAN };
}

static bool
is_share (const MaterialLine *line)
{
  return isnan (line->weighed) && !isnan (line->of_others);
}

/* A covering or a shell: glue is not reckoned on it. */
static bool
is_covering (const MaterialLine *line)
{
  return isnan (line->weighed) && isnan (line->each) && !isnan (line->area_density);
}

static double
mass_of_one (const MaterialLine *line)
{
  const double area = isnan (line->area) ? line->length * line->width : line->area;

  if (!isnan (line->each))
    return line->each;
  return isnan (line->area_density) ? area * line->thickness * line->density : area * line->area_density;
}

CoreStatus
material_line_mass (const MaterialLine *line, double *mass)
{
  const double made = isnan (line->weighed) ? line->count * mass_of_one (line) * line->share : line->weighed;

  if (isnan (made) || is_share (line))
    return CORE_OUT_OF_RANGE;
  if (isinf (made))
    return CORE_NOT_FINITE;
  *mass = made;
  return CORE_OK;
}

static MaterialKnown
known_of (const MaterialLine *line)
{
  return isnan (line->weighed) ? line->known : MATERIAL_BY_SCALE;
}

/* Within a kind lines stray together, so their deviations add; those on a scale stray each on its own. */
static void
add_line (MaterialSum *sum, const MaterialLine *line, double mass, double with_excess)
{
  const MaterialKnown known = known_of (line);
  const double sigma = isnan (line->sigma) ? known == MATERIAL_BY_SCALE ? usual_scale : usual_share[known] : line->sigma;

  sum->lines += mass;
  switch (known)
    {
    case MATERIAL_BY_SCALE:
      sum->by_scale = hypot (sum->by_scale, sigma);
      break;
    case MATERIAL_BY_SHEET:
      sum->by_sheet += sigma * mass * with_excess;
      break;
    case MATERIAL_BY_GRADE:
      sum->by_grade += sigma * mass * with_excess;
      break;
    }
  if (known != MATERIAL_BY_SCALE)
    sum->excess += mass * (with_excess - 1);
}

MaterialSum
materials_add_up (const MaterialLine lines[], size_t count, double excess, double masses[])
{
  MaterialSum sum = { 0 };
  double glued = 0;

  for (size_t i = 0; i < count; i++)
    {
      masses[i] = NAN;
      if (material_line_mass (&lines[i], &masses[i]) == CORE_OK && !is_covering (&lines[i]))
        glued += masses[i];
    }
  for (size_t i = 0; i < count; i++)
    {
      if (is_share (&lines[i]))
        masses[i] = lines[i].of_others * glued;
      if (!isnan (masses[i]))
        add_line (&sum, &lines[i], masses[i], 1 + excess);
    }
  sum.mass = sum.lines + sum.excess;
  sum.sigma = hypot (hypot (sum.by_grade, sum.by_sheet), sum.by_scale);
  return sum;
}

double
sheet_density (double mass, double length, double width, double thickness)
{
  return mass > 0 && length > 0 && width > 0 && thickness > 0 ? mass / (length * width * thickness) : NAN;
}

double
density_in_lb_ft3 (double kg_m3)
{
  return kg_m3 / pound_in_cubic_foot;
}

double
rib_side_area (double chord, double thickness)
{
  return 0.685 * thickness * chord * chord;
}
