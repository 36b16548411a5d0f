#include "geometry/planform.h"

#include <stdlib.h>
#include "geometry/outline-private.h"
#include "geometry/quadrature.h"

/* Of the span: stations nearer than this to the tip, the root or one another are not told apart. */
static const double SAME_STATION = 1e-9;
static const double SAME_BREAK = 1e-6;
/* Of the outline's larger side: how far a mirrored half may reach over the centre line. */
static const double OVER_THE_CENTRE = 1e-6;
/* Of each integral: what Gauss's sum may differ by from Kronrod's in a panel. */
static const double PANEL_ACCURACY = 1e-10;

/** The stations a surface has: its own from root to tip, and what is carried to the centre line inboard of them. */
typedef struct {
  double inner, root, tip;      /* inner < root where a root is carried */
  double carried_leading, carried_trailing;
} Extent;

static Extent
extent_of (const Outline *outline, PlanformSides sides)
{
  const Point first = outline->stretches[0].from, last = outline->stretches[outline->count].from;
  const double root = (first.y + last.y) / 2;
  Extent extent = { .inner = outline->bounds.min.y, .root = outline->bounds.min.y, .tip = outline->bounds.max.y,
                    .carried_leading = fmin (first.x, last.x), .carried_trailing = fmax (first.x, last.x) };

  if (sides == PLANFORM_CARRIED && root > 0)
    {
      extent.inner = fmin (0, extent.inner);
      extent.root = root;
    }
  return extent;
}

CoreStatus
outline_surface_status (const Outline *self, PlanformSides sides)
{
  if (self->fault.status && self->fault.status != CORE_MULTI_VALUED)
    return self->fault.status;
  if (sides == PLANFORM_CARRIED && self->reaches_under_its_root)
    return CORE_OUT_OF_RANGE;
  if (sides != PLANFORM_SINGLE && self->bounds.min.y < -OVER_THE_CENTRE * box_larger_side (self->bounds))
    return CORE_OUT_OF_RANGE;
  return CORE_OK;
}

/** Adds to a cut the pieces that pass the station. The outline does not cross itself, so that the x of those running
 *  outboard and inboard, counted against each other, are the length inside. */
static void
cut_add_piece (StationCut *cut, const Outline *outline, const Piece *piece, double y)
{
  const double x = outline_piece_x (outline, piece, y);

  cut->leading_x = fmin (cut->leading_x, x);
  cut->trailing_x = fmax (cut->trailing_x, x);
  cut->chord += piece_direction (piece) * x;
  cut->pieces++;
}

static void
cut_finish (StationCut *cut)
{
  cut->chord = fabs (cut->chord);
  cut->pieces /= 2;
}

static void
cut_add_carried (StationCut *cut, const Extent *extent)
{
  cut->leading_x = fmin (cut->leading_x, extent->carried_leading);
  cut->trailing_x = fmax (cut->trailing_x, extent->carried_trailing);
  cut->chord += extent->carried_trailing - extent->carried_leading;
  cut->pieces++;
}

CoreStatus
planform_cut (const Outline *outline, PlanformSides sides, double y, StationCut *cut)
{
  const CoreStatus status = outline_surface_status (outline, sides);
  const Extent extent = extent_of (outline, sides);
  const double slack = SAME_STATION * (extent.tip - extent.inner);
  StationCut sum = { .leading_x = INFINITY, .trailing_x = -INFINITY };

  if (status)
    return status;
  if (!(y >= extent.inner - slack && y <= extent.tip + slack))
    return CORE_OUT_OF_RANGE;
  y = fmin (fmax (y, extent.inner), extent.tip);
  const bool outermost = y == extent.tip;
  for (size_t i = outline_piece_at_station (outline, y, outermost, 0); i < outline->piece_count;
       i = outline_piece_at_station (outline, y, outermost, i + 1))
    cut_add_piece (&sum, outline, &outline->pieces[i], y);
  cut_finish (&sum);
  if (y < extent.root && extent.inner < extent.root)
    cut_add_carried (&sum, &extent);
  *cut = sum;
  return CORE_OK;
}

/** A strip between two neighbouring levels, with the pieces that pass it. x is counted from `origin`, so that a surface far
 *  from the datum loses no digits. */
typedef struct {
  const Outline *outline;
  const Extent *extent;
  double origin;
  double low, high;
  bool carried;
  bool straight;              /* all its pieces are straight */
  size_t count;
  size_t *pieces;
} Strip;

enum { AREA, SQUARE, STATION, LEADING, INTEGRALS };

static void
strip_values (const Strip *strip, double y, double weight, double values[INTEGRALS])
{
  StationCut cut = { .leading_x = INFINITY, .trailing_x = -INFINITY };

  for (size_t i = 0; i < strip->count; i++)
    cut_add_piece (&cut, strip->outline, &strip->outline->pieces[strip->pieces[i]], y);
  cut_finish (&cut);
  if (strip->carried)
    cut_add_carried (&cut, strip->extent);
  values[AREA] = weight * cut.chord;
  values[SQUARE] = weight * cut.chord * cut.chord;
  values[STATION] = weight * cut.chord * y;
  values[LEADING] = cut.chord > 0 ? weight * cut.chord * (cut.leading_x - strip->origin) : 0;
}

/* y = middle - half cos θ: the square root at a round tip becomes smooth. */
static void
strip_values_at_angle (double angle, const void *data, double values[])
{
  const Strip *strip = data;
  const double middle = (strip->low + strip->high) / 2, half = (strip->high - strip->low) / 2;
  const double y = fmin (fmax (middle - half * cos (angle), strip->low), strip->high);

  strip_values (strip, y, half * sin (angle), values);
}

/* Between straight edges all four are polynomials of the second degree at most; Gauss's two places take the third. */
static void
strip_add_straight (const Strip *strip, double sums[INTEGRALS])
{
  const double middle = (strip->low + strip->high) / 2, half = (strip->high - strip->low) / 2;

  for (int side = -1; side <= 1; side += 2)
    {
      double values[INTEGRALS];

      strip_values (strip, middle + side * half / sqrt (3), half, values);
      for (size_t k = 0; k < INTEGRALS; k++)
        sums[k] += values[k];
    }
}

static void
strip_set (Strip *strip, double low, double high)
{
  const Outline *outline = strip->outline;
  const double middle = (low + high) / 2;

  strip->low = low;
  strip->high = high;
  strip->carried = middle < strip->extent->root;
  strip->straight = true;
  strip->count = 0;
  for (size_t i = outline_piece_at_station (outline, middle, false, 0); i < outline->piece_count;
       i = outline_piece_at_station (outline, middle, false, i + 1))
    {
      strip->pieces[strip->count++] = i;
      if (outline->stretches[outline->pieces[i].stretch].kind != SEGMENT_LINE)
        strip->straight = false;
    }
}

static void
planform_integrate (const Outline *outline, Strip *strip, double levels[], double sums[INTEGRALS])
{
  const Extent *extent = strip->extent;
  const double area = fabs (outline->area), breadth = outline->bounds.max.x - outline->bounds.min.x;
  const Quadrature quadrature = {
    .values = strip_values_at_angle, .data = strip, .count = INTEGRALS,
    .accuracy = { [AREA] = PANEL_ACCURACY * area, [SQUARE] = PANEL_ACCURACY * area * area / (extent->tip - outline->bounds.min.y),
                  [STATION] = PANEL_ACCURACY * area * (extent->tip - outline->bounds.min.y), [LEADING] = PANEL_ACCURACY * area * breadth }
  };
  const size_t count = outline_levels (outline, levels);

  for (size_t i = 0; i + 1 < count; i++)
    {
      strip_set (strip, levels[i], levels[i + 1]);
      if (strip->straight)
        strip_add_straight (strip, sums);
      else
        quadrature_add (&quadrature, 0, M_PI, sums);
    }
}

/* What is carried to the centre line beyond the outline's own stations. */
static void
planform_add_carried (const Extent *extent, double lowest, double origin, double sums[INTEGRALS])
{
  const double width = fmin (lowest, extent->root) - extent->inner, chord = extent->carried_trailing - extent->carried_leading;

  if (!(width > 0) || !(extent->inner < extent->root))
    return;
  sums[AREA] += width * chord;
  sums[SQUARE] += width * chord * chord;
  sums[STATION] += width * chord * (extent->inner + width / 2);
  sums[LEADING] += width * chord * (extent->carried_leading - origin);
}

static CoreStatus
planform_sums (const Outline *outline, const Extent *extent, double origin, double sums[INTEGRALS])
{
  double *levels = malloc (2 * outline->piece_count * sizeof *levels);
  size_t *pieces = malloc (outline->piece_count * sizeof *pieces);
  Strip strip = { .outline = outline, .extent = extent, .origin = origin, .pieces = pieces };
  const CoreStatus status = levels && pieces ? CORE_OK : CORE_NO_MEMORY;

  if (status == CORE_OK)
    {
      planform_integrate (outline, &strip, levels, sums);
      planform_add_carried (extent, outline->bounds.min.y, origin, sums);
    }
  free (levels);
  free (pieces);
  return status;
}

CoreStatus
planform_measure (const Outline *outline, PlanformSides sides, Planform *planform)
{
  CoreStatus status = outline_surface_status (outline, sides);
  const Extent extent = extent_of (outline, sides);
  const double halves = sides == PLANFORM_SINGLE ? 1 : 2;
  const double origin = outline->bounds.min.x;
  double sums[INTEGRALS] = { 0 };

  if (status)
    return status;
  status = planform_sums (outline, &extent, origin, sums);
  if (status)
    return status;
  const double span = sides == PLANFORM_SINGLE ? extent.tip - extent.inner : 2 * extent.tip;
  *planform = (Planform) {
    .area = halves * sums[AREA],
    .span = span,
    .aspect_ratio = span * span / (halves * sums[AREA]),
    .mean_chord = halves * sums[AREA] / span,
    .mac = sums[SQUARE] / sums[AREA],
    .mac_station = sums[STATION] / sums[AREA],
    .mac_leading_edge_x = origin + sums[LEADING] / sums[AREA]
  };
  return CORE_OK;
}

/* The first and the last station stay whatever stands beside them. */
static size_t
breaks_thin_out (double levels[], size_t count, double apart)
{
  size_t kept = 1;

  for (size_t i = 1; i < count; i++)
    if (levels[i] - levels[kept - 1] >= apart)
      levels[kept++] = levels[i];
  if (kept > 1)
    levels[kept - 1] = levels[count - 1];
  return kept;
}

size_t
planform_breaks (const Outline *outline, PlanformSides sides, double stations[], size_t room)
{
  const Extent extent = extent_of (outline, sides);
  double *levels = malloc ((2 * outline->piece_count + 1) * sizeof *levels);
  size_t count;

  if (!levels || outline_surface_status (outline, sides))
    {
      free (levels);
      return 0;
    }
  levels[0] = extent.inner;
  count = outline_levels (outline, levels + 1) + 1;
  count = breaks_thin_out (levels, count, SAME_BREAK * (extent.tip - extent.inner));
  for (size_t i = 0; i < count && i < room; i++)
    stations[i] = levels[i];
  free (levels);
  return count;
}
