#include "document/brought-svg.h"

#include <math.h>
#include <string.h>

/* A pen over a path's text, in the path's own units. */
typedef struct {
  BroughtLines *lines;
  const SvgMatrix *matrix;
  const char *name, *at;
  double x, y, begun_x, begun_y;      /* where it is; where the part under way began */
  double last_x, last_y;              /* the last handle, for smooth curves */
  char before;                        /* the last command, in capitals */
  bool drawing;
} SvgPen;

bool
svg_number (const char **at, double *value)
{
  char *end;

  while (g_ascii_isspace (**at) || **at == ',')
    (*at)++;
  if (!g_ascii_isdigit (**at) && **at != '-' && **at != '+' && **at != '.')
    return false;
  /* "0x10" is no number here, and not sixteen. */
  const char *digits = *at + strspn (*at, "+-");
  if (digits[0] == '0' && g_ascii_tolower (digits[1]) == 'x')
    return false;
  *value = g_ascii_strtod (*at, &end);
  if (end == *at || !isfinite (*value))
    return false;
  *at = end;
  return true;
}

static void
skip_blanks (SvgPen *pen)
{
  while (g_ascii_isspace (*pen->at) || *pen->at == ',')
    pen->at++;
}

/* A single 0 or 1; what follows may stand right behind it. */
static bool
read_flag (SvgPen *pen, bool *flag)
{
  skip_blanks (pen);
  if (*pen->at != '0' && *pen->at != '1')
    return false;
  *flag = *pen->at++ == '1';
  return true;
}

static bool
read_numbers (SvgPen *pen, double numbers[], int count)
{
  for (int i = 0; i < count; i++)
    if (!svg_number (&pen->at, &numbers[i]))
      return false;
  return true;
}

static Point
place (const SvgPen *pen, double x, double y)
{
  return svg_matrix_place (pen->matrix, x, y);
}

static void
begin_if_needed (SvgPen *pen)
{
  if (!pen->drawing)
    brought_lines_begin (pen->lines, place (pen, pen->x, pen->y), pen->name);
  pen->drawing = true;
}

static void
draw_to (SvgPen *pen, double x, double y)
{
  begin_if_needed (pen);
  pen->x = x;
  pen->y = y;
  brought_lines_line (pen->lines, place (pen, x, y));
}

static void
bend_to (SvgPen *pen, double x1, double y1, double x2, double y2, double x, double y)
{
  begin_if_needed (pen);
  brought_lines_curve (pen->lines, place (pen, x1, y1), place (pen, x2, y2), place (pen, x, y));
  pen->last_x = x2;
  pen->last_y = y2;
  pen->x = x;
  pen->y = y;
}

/* A quadratic curve as the cubic that it is. */
static void
bend_once (SvgPen *pen, double qx, double qy, double x, double y)
{
  bend_to (pen, pen->x + 2.0 / 3 * (qx - pen->x), pen->y + 2.0 / 3 * (qy - pen->y), x + 2.0 / 3 * (qx - x), y + 2.0 / 3 * (qy - y), x, y);
  pen->last_x = qx;
  pen->last_y = qy;
}

/* The ellipse through both ends, by SVG 1.1 appendix F.6.5 and F.6.6. */
static void
arc_to (SvgPen *pen, const double n[3], bool large, bool sweep, double x, double y)
{
  double rx = fabs (n[0]), ry = fabs (n[1]);
  const double turn = n[2] * M_PI / 180, c = cos (turn), s = sin (turn);
  const double dx = (pen->x - x) / 2, dy = (pen->y - y) / 2, px = c * dx + s * dy, py = -s * dx + c * dy;

  if (!(rx > 0) || !(ry > 0) || (dx == 0 && dy == 0))
    {
      draw_to (pen, x, y);
      return;
    }
  const double excess = px * px / (rx * rx) + py * py / (ry * ry);
  if (excess > 1)
    {
      rx *= sqrt (excess);
      ry *= sqrt (excess);
    }
  const double top = rx * rx * ry * ry - rx * rx * py * py - ry * ry * px * px, bottom = rx * rx * py * py + ry * ry * px * px;
  const double root = (large == sweep ? -1 : 1) * sqrt (fmax (top / bottom, 0)), cpx = root * rx * py / ry, cpy = -root * ry * px / rx;
  const double cx = c * cpx - s * cpy + (pen->x + x) / 2, cy = s * cpx + c * cpy + (pen->y + y) / 2;
  const double from = atan2 ((py - cpy) / ry, (px - cpx) / rx);
  double way = atan2 ((-py - cpy) / ry, (-px - cpx) / rx) - from;
  way += sweep && way < 0 ? 2 * M_PI : !sweep && way > 0 ? -2 * M_PI : 0;
  const Point centre = place (pen, cx, cy);
  begin_if_needed (pen);
  brought_lines_arc (pen->lines, centre, point_sub (place (pen, cx + rx * c, cy + rx * s), centre),
                     point_sub (place (pen, cx - ry * s, cy + ry * c), centre), from, way);
  brought_lines_settle (pen->lines, place (pen, x, y));
  pen->x = x;
  pen->y = y;
}

static bool
is_smooth_after (const SvgPen *pen, const char *commands)
{
  return strchr (commands, pen->before) != NULL;
}

static bool
draw_curves (SvgPen *pen, char command, double ox, double oy)
{
  const bool after_cubic = is_smooth_after (pen, "CS"), after_square = is_smooth_after (pen, "QT");
  double n[6];

  switch (command)
    {
    case 'C':
      if (!read_numbers (pen, n, 6))
        return false;
      bend_to (pen, ox + n[0], oy + n[1], ox + n[2], oy + n[3], ox + n[4], oy + n[5]);
      return true;
    case 'S':
      if (!read_numbers (pen, n, 4))
        return false;
      bend_to (pen, after_cubic ? 2 * pen->x - pen->last_x : pen->x, after_cubic ? 2 * pen->y - pen->last_y : pen->y,
               ox + n[0], oy + n[1], ox + n[2], oy + n[3]);
      return true;
    case 'Q':
      if (!read_numbers (pen, n, 4))
        return false;
      bend_once (pen, ox + n[0], oy + n[1], ox + n[2], oy + n[3]);
      return true;
    case 'T':
      if (!read_numbers (pen, n, 2))
        return false;
      bend_once (pen, after_square ? 2 * pen->x - pen->last_x : pen->x, after_square ? 2 * pen->y - pen->last_y : pen->y,
                 ox + n[0], oy + n[1]);
      return true;
    default:
      return false;
    }
}

static bool
draw_arc (SvgPen *pen, double ox, double oy)
{
  double radii[3], to[2];
  bool large, sweep;

  if (!read_numbers (pen, radii, 3) || !read_flag (pen, &large) || !read_flag (pen, &sweep) || !read_numbers (pen, to, 2))
    return false;
  arc_to (pen, radii, large, sweep, ox + to[0], oy + to[1]);
  return true;
}

static bool
move (SvgPen *pen, double ox, double oy)
{
  double n[2];

  if (!read_numbers (pen, n, 2))
    return false;
  brought_lines_end (pen->lines);
  pen->drawing = false;
  pen->x = pen->begun_x = ox + n[0];
  pen->y = pen->begun_y = oy + n[1];
  return true;
}

static bool
draw_straight (SvgPen *pen, char command, double ox, double oy)
{
  double n[2];

  if (!read_numbers (pen, n, command == 'L' ? 2 : 1))
    return false;
  draw_to (pen, command == 'V' ? pen->x : ox + n[0], command == 'V' ? oy + n[0] : command == 'H' ? pen->y : oy + n[1]);
  return true;
}

/* One command with one set of its numbers. */
static bool
draw (SvgPen *pen, char command, bool relative)
{
  const double ox = relative ? pen->x : 0, oy = relative ? pen->y : 0;

  switch (command)
    {
    case 'M': return move (pen, ox, oy);
    case 'L': case 'H': case 'V': return draw_straight (pen, command, ox, oy);
    case 'A': return draw_arc (pen, ox, oy);
    default:  return draw_curves (pen, command, ox, oy);
    }
}

static void
close_part (SvgPen *pen)
{
  if (pen->drawing)
    brought_lines_close (pen->lines);
  pen->drawing = false;
  pen->x = pen->begun_x;
  pen->y = pen->begun_y;
}

bool
svg_path_add (BroughtLines *lines, const char *text, const SvgMatrix *matrix, const char *name)
{
  SvgPen pen = { .lines = lines, .matrix = matrix, .name = name, .at = text, .before = 'M' };
  char command = '\0';
  bool sound = true;

  for (skip_blanks (&pen); sound && *pen.at; skip_blanks (&pen))
    {
      const bool named = g_ascii_isalpha (*pen.at);
      if (named && command == '\0' && g_ascii_toupper (*pen.at) != 'M')
        break;                                     /* every path begins by saying where */
      if (named)
        command = *pen.at++;
      else if (command == 'M' || command == 'm')
        command = command == 'M' ? 'L' : 'l';      /* further pairs behind a move are lines */
      const char kind = g_ascii_toupper (command);
      if (kind == 'Z' && named)
        close_part (&pen);
      else
        sound = command != '\0' && kind != 'Z' && draw (&pen, kind, g_ascii_islower (command));
      pen.before = kind;
    }
  brought_lines_end (lines);
  return sound && *pen.at == '\0';
}
