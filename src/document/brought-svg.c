#include "document/brought-svg.h"

#include "trammel-config.h"
#include <glib/gi18n-lib.h>
#include <libxml/parser.h>
#include <math.h>
#include <string.h>

static const double MM_PER_PX = 25.4 / 96;      /* CSS 2.1, section 4.3.2 */
enum { DEEPEST = 64, NAME_ROOM = 80 };

typedef struct { BroughtLines lines; } SvgReading;

static SvgMatrix
after (const SvgMatrix *o, SvgMatrix i)
{
  return (SvgMatrix) { o->a * i.a + o->c * i.b, o->b * i.a + o->d * i.b, o->a * i.c + o->c * i.d, o->b * i.c + o->d * i.d,
                       o->a * i.e + o->c * i.f + o->e, o->b * i.e + o->d * i.f + o->f };
}

Point
svg_matrix_place (const SvgMatrix *self, double x, double y)
{
  return (Point) { .x = self->b * x + self->d * y + self->f, .y = self->a * x + self->c * y + self->e };
}

static bool
one_transform (const char *word, size_t length, const double n[6], int count, SvgMatrix *made)
{
  const double turn = n[0] * M_PI / 180;

  if (length == 6 && strncmp (word, "matrix", 6) == 0 && count == 6)
    *made = (SvgMatrix) { n[0], n[1], n[2], n[3], n[4], n[5] };
  else if (length == 9 && strncmp (word, "translate", 9) == 0 && (count == 1 || count == 2))
    *made = (SvgMatrix) { 1, 0, 0, 1, n[0], count == 2 ? n[1] : 0 };
  else if (length == 5 && strncmp (word, "scale", 5) == 0 && (count == 1 || count == 2))
    *made = (SvgMatrix) { n[0], 0, 0, count == 2 ? n[1] : n[0], 0, 0 };
  else if (length == 5 && strncmp (word, "skewX", 5) == 0 && count == 1)
    *made = (SvgMatrix) { 1, 0, tan (turn), 1, 0, 0 };
  else if (length == 5 && strncmp (word, "skewY", 5) == 0 && count == 1)
    *made = (SvgMatrix) { 1, tan (turn), 0, 1, 0, 0 };
  else if (length == 6 && strncmp (word, "rotate", 6) == 0 && (count == 1 || count == 3))
    {
      const SvgMatrix there = { 1, 0, 0, 1, n[1], n[2] };
      const SvgMatrix turned = after (&there, (SvgMatrix) { cos (turn), sin (turn), -sin (turn), cos (turn), 0, 0 });
      *made = count == 3 ? after (&turned, (SvgMatrix) { 1, 0, 0, 1, -n[1], -n[2] })
                         : (SvgMatrix) { cos (turn), sin (turn), -sin (turn), cos (turn), 0, 0 };
    }
  else
    return false;
  return true;
}

bool
svg_matrix_read (const char *text, const SvgMatrix *outer, SvgMatrix *made)
{
  *made = *outer;
  while (text && *text)
    {
      double numbers[6] = { 0 };
      int count = 0;
      SvgMatrix one;
      while (g_ascii_isspace (*text) || *text == ',')
        text++;
      if (*text == '\0')
        break;
      const char *word = text;
      while (g_ascii_isalpha (*text))
        text++;
      const size_t length = (size_t) (text - word);
      while (g_ascii_isspace (*text))
        text++;
      if (*text++ != '(')
        return false;
      while (count < 6 && svg_number (&text, &numbers[count]))
        count++;
      while (g_ascii_isspace (*text))
        text++;
      if (*text++ != ')' || !one_transform (word, length, numbers, count, &one))
        return false;
      *made = after (made, one);
    }
  return true;
}

/* Plain text alone: one that names entities may unfold to more than any memory holds, and counts as not there. */
static char *
attribute (xmlNode *node, const char *name)
{
  const xmlAttr *found = xmlHasProp (node, (const xmlChar *) name);

  if (!found || found->type != XML_ATTRIBUTE_NODE || !found->children || found->children->next || found->children->type != XML_TEXT_NODE)
    return NULL;
  return g_strdup ((const char *) found->children->content);
}

static double
number_of (xmlNode *node, const char *name, double otherwise)
{
  g_autofree char *text = attribute (node, name);
  const char *at = text;
  double value;

  return text && svg_number (&at, &value) ? value : otherwise;
}

/* A circle or an ellipse. */
static void
add_round (SvgReading *self, xmlNode *node, const SvgMatrix *matrix, const char *name, double rx, double ry)
{
  const double cx = number_of (node, "cx", 0), cy = number_of (node, "cy", 0);
  const Point centre = svg_matrix_place (matrix, cx, cy), right = svg_matrix_place (matrix, cx + rx, cy);

  if (!(rx > 0) || !(ry > 0))
    return;
  brought_lines_begin (&self->lines, right, name);
  brought_lines_arc (&self->lines, centre, point_sub (right, centre), point_sub (svg_matrix_place (matrix, cx, cy + ry), centre), 0,
                     2 * M_PI);
  brought_lines_close (&self->lines);
}

static void
add_corners (SvgReading *self, const char *text, bool closed, const SvgMatrix *matrix, const char *name)
{
  double x, y;
  bool begun = false;

  while (text && svg_number (&text, &x) && svg_number (&text, &y))
    {
      const Point place = svg_matrix_place (matrix, x, y);
      if (begun)
        brought_lines_line (&self->lines, place);
      else
        brought_lines_begin (&self->lines, place, name);
      begun = true;
    }
  if (closed)
    brought_lines_close (&self->lines);
  else
    brought_lines_end (&self->lines);
}

static void
add_straight (SvgReading *self, xmlNode *node, bool is_box, const SvgMatrix *matrix, const char *name)
{
  const double x = number_of (node, is_box ? "x" : "x1", 0), y = number_of (node, is_box ? "y" : "y1", 0);
  const double right = is_box ? x + number_of (node, "width", 0) : number_of (node, "x2", 0);
  const double below = is_box ? y + number_of (node, "height", 0) : number_of (node, "y2", 0);

  brought_lines_begin (&self->lines, svg_matrix_place (matrix, x, y), name);
  if (is_box)
    brought_lines_line (&self->lines, svg_matrix_place (matrix, right, y));
  brought_lines_line (&self->lines, svg_matrix_place (matrix, right, below));
  if (is_box)
    {
      brought_lines_line (&self->lines, svg_matrix_place (matrix, x, below));
      brought_lines_close (&self->lines);
    }
  brought_lines_end (&self->lines);
}

static bool
is (xmlNode *node, const char *word)
{
  return strcmp ((const char *) node->name, word) == 0;
}

/* false: no shape that draws a line. Of a path that breaks off, what came before is drawn and the rest counts as left out. */
static bool
add_shape (SvgReading *self, xmlNode *node, const SvgMatrix *matrix, const char *name)
{
  g_autofree char *text = attribute (node, is (node, "path") ? "d" : "points");

  if (is (node, "path"))
    self->lines.left_out += !svg_path_add (&self->lines, text ? text : "", matrix, name);
  else if (is (node, "polygon") || is (node, "polyline"))
    add_corners (self, text, is (node, "polygon"), matrix, name);
  else if (is (node, "line") || is (node, "rect"))
    add_straight (self, node, is (node, "rect"), matrix, name);
  else if (is (node, "circle"))
    add_round (self, node, matrix, name, number_of (node, "r", 0), number_of (node, "r", 0));
  else if (is (node, "ellipse"))
    add_round (self, node, matrix, name, number_of (node, "rx", 0), number_of (node, "ry", 0));
  else
    return false;
  return true;
}

/* The part of spare room that stands before the drawing: none, half or all of it. */
static double
part_before (const char *aspect, const char *least, const char *most)
{
  return aspect && strstr (aspect, least) ? 0 : aspect && strstr (aspect, most) ? 1 : 0.5;
}

/* How an element's view box is laid into its place of that size; one of both sizes may be NAN. false without a view box.
 * source  SVG 1.1, section 7.8 */
static bool
fit_box (xmlNode *node, double wide, double high, SvgMatrix *made)
{
  g_autofree char *box = attribute (node, "viewBox"), *aspect = attribute (node, "preserveAspectRatio");
  const char *at = box;
  double n[4];

  for (int i = 0; i < 4; i++)
    if (!at || !svg_number (&at, &n[i]))
      return false;
  double across = wide / n[2], down = high / n[3];
  across = isnan (across) ? down : across;
  down = isnan (down) ? across : down;
  if (!aspect || !strstr (aspect, "none"))
    across = down = aspect && strstr (aspect, "slice") ? fmax (across, down) : fmin (across, down);
  if (!(across > 0) || !(down > 0) || !isfinite (across) || !isfinite (down))
    return false;
  const double x = isnan (wide) ? 0 : (wide - across * n[2]) * part_before (aspect, "xMin", "xMax");
  const double y = isnan (high) ? 0 : (high - down * n[3]) * part_before (aspect, "YMin", "YMax");
  *made = (SvgMatrix) { across, 0, 0, down, x - n[0] * across, y - n[1] * down };
  return true;
}

/* A drawing within the drawing. */
static SvgMatrix
inner_matrix (xmlNode *node, const SvgMatrix *outer)
{
  const SvgMatrix there = { 1, 0, 0, 1, number_of (node, "x", 0), number_of (node, "y", 0) }, moved = after (outer, there);
  SvgMatrix box;

  return fit_box (node, number_of (node, "width", NAN), number_of (node, "height", NAN), &box) ? after (&moved, box) : moved;
}

/* What is only kept for use elsewhere is not drawn where it stands, nor what is hidden. */
static bool
is_kept_apart (xmlNode *node)
{
  g_autofree char *display = attribute (node, "display"), *style = attribute (node, "style");

  if (g_strcmp0 (display, "none") == 0 || (style && (strstr (style, "display:none") || strstr (style, "display: none"))))
    return true;
  return is (node, "defs") || is (node, "clipPath") || is (node, "mask") || is (node, "symbol") || is (node, "pattern") || is (node,
                                                            "marker");
}

static void
add_children (SvgReading *self, xmlNode *parent, const SvgMatrix *outer, int depth)
{
  for (xmlNode *node = parent->children; node && depth < DEEPEST; node = node->next)
    {
      if (node->type != XML_ELEMENT_NODE || is_kept_apart (node))
        continue;
      g_autofree char *transform = attribute (node, "transform"), *id = attribute (node, "id");
      SvgMatrix matrix;
      if (id && strlen (id) > NAME_ROOM)
        id[0] = '\0';
      if (!svg_matrix_read (transform, outer, &matrix))
        self->lines.left_out++;
      else if (is (node, "g") || is (node, "a") || is (node, "switch"))
        add_children (self, node, &matrix, depth + 1);
      else if (is (node, "svg"))
        {
          const SvgMatrix inner = inner_matrix (node, &matrix);
          add_children (self, node, &inner, depth + 1);
        }
      else if (!add_shape (self, node, &matrix, id) && (is (node, "text") || is (node, "image") || is (node, "use")))
        self->lines.left_out++;
    }
}

/* A length with one of CSS's units, mm; NAN without one (a bare number counts px). */
static double
length_mm (const char *text, bool *has_unit)
{
  static const struct { const char *word; double mm; } units[] = {
    { "mm", 1 }, { "cm", 10 }, { "in", 25.4 }, { "pt", 25.4 / 72 }, { "pc", 25.4 / 6 }, { "px", 25.4 / 96 }, { "", 25.4 / 96 } };
  double value;

  if (!text || !svg_number (&text, &value))
    return NAN;
  while (g_ascii_isspace (*text))
    text++;
  for (size_t i = 0; i < G_N_ELEMENTS (units); i++)
    if (strcmp (text, units[i].word) == 0)
      {
        *has_unit = *has_unit || i < 5;
        return value * units[i].mm;
      }
  return NAN;
}

/* From user units to millimetres. */
static SvgMatrix
root_matrix (xmlNode *root, bool *unit_known)
{
  g_autofree char *width = attribute (root, "width"), *height = attribute (root, "height");
  const double wide = length_mm (width, unit_known), high = length_mm (height, unit_known);
  SvgMatrix made;

  return fit_box (root, wide, high, &made) ? made : (SvgMatrix) { MM_PER_PX, 0, 0, MM_PER_PX, 0, 0 };
}

Brought *
brought_read_svg (const char *data, size_t length, const char *name, GError **error)
{
  xmlDoc *document = xmlReadMemory (data, (int) length, NULL, NULL, XML_PARSE_NONET | XML_PARSE_NOERROR | XML_PARSE_NOWARNING);
  xmlNode *root = document ? xmlDocGetRootElement (document) : NULL;
  SvgReading self;
  bool unit_known = false;

  if (!root || !is (root, "svg"))
    {
      g_set_error (error, BROUGHT_ERROR, BROUGHT_ERROR_FOREIGN, _("%s: this SVG is broken; save it again in the program that drew it."),
                   name);
      xmlFreeDoc (document);
      return NULL;
    }
  const SvgMatrix matrix = root_matrix (root, &unit_known);
  brought_lines_init (&self.lines);
  add_children (&self, root, &matrix, 0);
  xmlFreeDoc (document);
  Brought *made = brought_lines_finish (&self.lines, 1, unit_known, name, error);
  if (made)
    made->unit_mm = MM_PER_PX;
  return made;
}
