#include "drawing/line-kind.h"
#include <math.h>
#include <stddef.h>

typedef struct {
  int count;
  double screen[6], paper[6];      /* px, mm */
  cairo_line_cap_t cap;
} Dashes;

static const Dashes dashes[] = {
  [LINE_OUTLINE] = { 0 }, [LINE_SELECTED] = { 0 }, [LINE_INNER] = { 0 }, [LINE_PART] = { 0 }, [LINE_CONSTRUCTION] = { 0 },
  [LINE_HIDDEN]         = { 2, { 4, 3 }, { 1.5, 1 }, CAIRO_LINE_CAP_BUTT },
  [LINE_CENTRE]         = { 4, { 14, 3, 2.5, 3 }, { 9, 1.2, 1.2, 1.2 }, CAIRO_LINE_CAP_BUTT },
  [LINE_OTHER_POSITION] = { 6, { 12, 4, 3, 4, 3, 4 }, { 6, 1, 1, 1, 1, 1 }, CAIRO_LINE_CAP_BUTT },
  [LINE_DATUM]          = { 2, { 2, 3 }, { 0.6, 0.9 }, CAIRO_LINE_CAP_BUTT },
  [LINE_PROPOSAL]       = { 2, { 4, 3 }, { 1.5, 1 }, CAIRO_LINE_CAP_BUTT },
  [LINE_LEAD]           = { 2, { 1.2, 2.6 }, { 0.4, 0.8 }, CAIRO_LINE_CAP_ROUND },
};

static double
line_kind_width (const Look *look, LineKind kind)
{
  switch (kind)
    {
    case LINE_OUTLINE:        return look->outline_width;
    case LINE_SELECTED:       return look->selected_width;
    case LINE_INNER:          return look->inner_width;
    case LINE_PART:           return look->part_width;
    case LINE_OTHER_POSITION: return look_size (look, 1.2, 0.25) * look->symbol_line;
    case LINE_PROPOSAL:       return look_size (look, 1.2, 0.25) * look->symbol_line;
    case LINE_LEAD:           return look_size (look, 1.2, 0.35) * look->symbol_line;
    case LINE_CONSTRUCTION: case LINE_HIDDEN: case LINE_CENTRE: case LINE_DATUM: break;
    }
  return look->thin_width;
}

void
line_kind_set (cairo_t *cr, const Look *look, LineKind kind)
{
  const Dashes *d = &dashes[kind];

  cairo_set_line_width (cr, line_kind_width (look, kind));
  cairo_set_dash (cr, look->paper ? d->paper : d->screen, d->count, 0);
  cairo_set_line_cap (cr, d->cap);
  cairo_set_line_join (cr, CAIRO_LINE_JOIN_ROUND);
}

bool
device_axis (cairo_t *cr, bool across, DeviceAxis *axis)
{
  cairo_surface_t *target = cairo_get_target (cr);
  const cairo_surface_type_t type = cairo_surface_get_type (target);
  cairo_matrix_t m;
  double sx = 1, sy = 1;

  if (type == CAIRO_SURFACE_TYPE_PDF || type == CAIRO_SURFACE_TYPE_SVG || type == CAIRO_SURFACE_TYPE_PS)
    return false;
  cairo_get_matrix (cr, &m);
  cairo_surface_get_device_scale (target, &sx, &sy);
  if (m.xy != 0 || m.yx != 0)
    return false;
  *axis = across ? (DeviceAxis) { m.xx * sx, m.x0 * sx } : (DeviceAxis) { m.yy * sy, m.y0 * sy };
  return axis->scale > 0;
}

/* A width between two whole ones takes the lower one's place: one full pixel and faint edges look firmer than two grey ones. */
static double
crisp (cairo_t *cr, bool across, double place, double width)
{
  DeviceAxis axis;
  double device;

  if (!device_axis (cr, across, &axis))
    return place;
  device = place * axis.scale + axis.shift;
  device = (long) fmax (1, round (width * axis.scale - 0.2)) % 2 ? floor (device) + 0.5 : round (device);
  return (device - axis.shift) / axis.scale;
}

double line_crisp_x (cairo_t *cr, double x, double width) { return crisp (cr, true, x, width); }
double line_crisp_y (cairo_t *cr, double y, double width) { return crisp (cr, false, y, width); }

/* How long the dashes are until they begin anew; 0: the line has none. */
static double
dash_period (cairo_t *cr)
{
  double lengths[6], period = 0;
  const int count = cairo_get_dash_count (cr);

  if (count == 0 || count > 6)
    return 0;
  cairo_get_dash (cr, lengths, NULL);
  for (int i = 0; i < count; i++)
    period += lengths[i];
  return count % 2 == 0 ? period : 2 * period;
}

/* The part from `*first` to `*last` of a line, in parts of it, that runs between two places; empty: where first is beyond last. */
static void
keep_between (double from, double to, double low, double high, double *first, double *last)
{
  const double a = (low - from) / (to - from), b = (high - from) / (to - from);

  if (from == to)
    return;
  *first = fmax (*first, fmin (a, b));
  *last = fmin (*last, fmax (a, b));
}

/* Enlarged, a line runs on far beyond what is seen, and each of its dashes would be laid. Those that are seen stay where they are. */
static void
keep_dashes_in_sight (cairo_t *cr, Point *from, Point *to)
{
  const double length = point_distance (*from, *to), period = dash_period (cr);
  const Point a = *from, b = *to;
  double left, top, right, bottom, first = 0, last = 1;

  if (!(period > 0) || !(length > 100 * period))
    return;
  cairo_clip_extents (cr, &left, &top, &right, &bottom);
  keep_between (a.x, b.x, left - period, right + period, &first, &last);
  keep_between (a.y, b.y, top - period, bottom + period, &first, &last);
  if (first > last)
    return;
  *from = point_mix (a, b, floor (first * length / period) * period / length);
  *to = point_mix (a, b, last);
}

void
line_stroke (cairo_t *cr, Point from, Point to)
{
  const double width = cairo_get_line_width (cr);

  if (fabs (from.x - to.x) < 1e-9)
    from.x = to.x = line_crisp_x (cr, from.x, width);
  if (fabs (from.y - to.y) < 1e-9)
    from.y = to.y = line_crisp_y (cr, from.y, width);
  keep_dashes_in_sight (cr, &from, &to);
  cairo_move_to (cr, from.x, from.y);
  cairo_line_to (cr, to.x, to.y);
  cairo_stroke (cr);
}

void
line_add_box (cairo_t *cr, Box box)
{
  const double width = cairo_get_line_width (cr);
  const double x = line_crisp_x (cr, box.min.x, width), y = line_crisp_y (cr, box.min.y, width);

  cairo_rectangle (cr, x, y, line_crisp_x (cr, box.max.x, width) - x, line_crisp_y (cr, box.max.y, width) - y);
}
