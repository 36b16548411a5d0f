/* The basic shapes of an SVG (SVG 1.1, chapter 9). */
#include "document/brought-svg.h"

#include <math.h>
#include <string.h>

char *
svg_attribute (xmlNode *node, const char *name)
{
  const xmlAttr *found = xmlHasProp (node, (const xmlChar *) name);

  if (!found || found->type != XML_ATTRIBUTE_NODE || !found->children || found->children->next || found->children->type != XML_TEXT_NODE)
    return NULL;
  return g_strdup ((const char *) found->children->content);
}

double
svg_number_of (xmlNode *node, const char *name, double otherwise)
{
  g_autofree char *text = svg_attribute (node, name);
  const char *at = text;
  double value;

  return text && svg_number (&at, &value) ? value : otherwise;
}

/* A circle or an ellipse. */
static void
add_round (BroughtLines *lines, xmlNode *node, const SvgMatrix *matrix, const char *name, double rx, double ry)
{
  const double cx = svg_number_of (node, "cx", 0), cy = svg_number_of (node, "cy", 0);
  const Point centre = svg_matrix_place (matrix, cx, cy), right = svg_matrix_place (matrix, cx + rx, cy);

  if (!(rx > 0) || !(ry > 0))
    return;
  brought_lines_begin (lines, right, name);
  brought_lines_arc (lines, centre, point_sub (right, centre), point_sub (svg_matrix_place (matrix, cx, cy + ry), centre), 0,
                     2 * M_PI);
  brought_lines_close (lines);
}

static void
add_corners (BroughtLines *lines, const char *text, bool closed, const SvgMatrix *matrix, const char *name)
{
  double x, y;
  bool begun = false;

  while (text && svg_number (&text, &x) && svg_number (&text, &y))
    {
      const Point place = svg_matrix_place (matrix, x, y);
      if (begun)
        brought_lines_line (lines, place);
      else
        brought_lines_begin (lines, place, name);
      begun = true;
    }
  if (closed)
    brought_lines_close (lines);
  else
    brought_lines_end (lines);
}

static void
add_line (BroughtLines *lines, xmlNode *node, const SvgMatrix *matrix, const char *name)
{
  brought_lines_begin (lines, svg_matrix_place (matrix, svg_number_of (node, "x1", 0), svg_number_of (node, "y1", 0)), name);
  brought_lines_line (lines, svg_matrix_place (matrix, svg_number_of (node, "x2", 0), svg_number_of (node, "y2", 0)));
  brought_lines_end (lines);
}

/* A box, the radii of its corners, which may be nothing. */
typedef struct { double x, y, width, height, rx, ry; } RoundBox;

/* A radius that is not given is as the other; none is more than half a side (SVG 1.1, section 9.2). */
static RoundBox
box_of (xmlNode *node)
{
  const double rx = svg_number_of (node, "rx", NAN), ry = svg_number_of (node, "ry", NAN);
  RoundBox box = { svg_number_of (node, "x", 0), svg_number_of (node, "y", 0), svg_number_of (node, "width", 0),
              svg_number_of (node, "height", 0), rx >= 0 ? rx : ry, ry >= 0 ? ry : rx };

  box.rx = fmin (box.rx, box.width / 2);
  box.ry = fmin (box.ry, box.height / 2);
  if (!(rx > 0 || ry > 0) || !(box.rx > 0) || !(box.ry > 0))
    box.rx = box.ry = 0;
  return box;
}

/* Round each corner to the right, as the box is drawn: from the end of one side to the beginning of the next. */
static void
add_box (BroughtLines *lines, xmlNode *node, const SvgMatrix *matrix, const char *name)
{
  const RoundBox b = box_of (node);
  const struct { double x, y, out_x, out_y; } corners[] = {
    { b.x + b.width - b.rx, b.y + b.ry, 0, -1 }, { b.x + b.width - b.rx, b.y + b.height - b.ry, 1, 0 },
    { b.x + b.rx, b.y + b.height - b.ry, 0, 1 }, { b.x + b.rx, b.y + b.ry, -1, 0 } };

  if (!(b.width > 0) || !(b.height > 0))
    return;
  brought_lines_begin (lines, svg_matrix_place (matrix, b.x + b.rx, b.y), name);
  for (int i = 0; i < 4; i++)
    {
      const double x = corners[i].x, y = corners[i].y, out_x = corners[i].out_x, out_y = corners[i].out_y;
      const Point centre = svg_matrix_place (matrix, x, y), from = svg_matrix_place (matrix, x + out_x * b.rx, y + out_y * b.ry);
      const Point to = svg_matrix_place (matrix, x - out_y * b.rx, y + out_x * b.ry);
      brought_lines_line (lines, from);
      if (b.rx > 0)
        brought_lines_arc (lines, centre, point_sub (from, centre), point_sub (to, centre), 0, M_PI / 2);
    }
  brought_lines_close (lines);
}

bool
svg_is (xmlNode *node, const char *word)
{
  return strcmp ((const char *) node->name, word) == 0;
}

bool
svg_shape_add (BroughtLines *lines, xmlNode *node, const SvgMatrix *matrix, const char *name)
{
  g_autofree char *text = svg_attribute (node, svg_is (node, "path") ? "d" : "points");

  if (svg_is (node, "path"))
    lines->left_out += !svg_path_add (lines, text ? text : "", matrix, name);
  else if (svg_is (node, "polygon") || svg_is (node, "polyline"))
    add_corners (lines, text, svg_is (node, "polygon"), matrix, name);
  else if (svg_is (node, "line"))
    add_line (lines, node, matrix, name);
  else if (svg_is (node, "rect"))
    add_box (lines, node, matrix, name);
  else if (svg_is (node, "circle"))
    add_round (lines, node, matrix, name, svg_number_of (node, "r", 0), svg_number_of (node, "r", 0));
  else if (svg_is (node, "ellipse"))
    add_round (lines, node, matrix, name, svg_number_of (node, "rx", 0), svg_number_of (node, "ry", 0));
  else
    return false;
  return true;
}
