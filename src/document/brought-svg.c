#include "document/brought-svg.h"

#include "trammel-config.h"
#include <glib/gi18n-lib.h>
#include <libxml/parser.h>
#include <math.h>
#include <string.h>

static const double MM_PER_PX = 25.4 / 96;      /* CSS 2.1, section 4.3.2 */
enum { DEEPEST = 64, NAME_ROOM = 80, MOST_NODES = 1000000 };
/* Bytes of attributes, again with each use: more than the largest file without uses has. */
static const size_t MOST_TEXT = 2 * (size_t) BROUGHT_BYTES_MOST;

typedef struct {
  BroughtLines lines;
  GHashTable *ids;              /* id -> xmlNode, lent by the document */
  size_t seen, text;            /* elements looked at and bytes read of them, again with each use */
} SvgReading;

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
  g_autofree char *box = svg_attribute (node, "viewBox"), *aspect = svg_attribute (node, "preserveAspectRatio");
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
  const SvgMatrix there = { 1, 0, 0, 1, svg_number_of (node, "x", 0), svg_number_of (node, "y", 0) }, moved = after (outer, there);
  SvgMatrix box;

  return fit_box (node, svg_number_of (node, "width", NAN), svg_number_of (node, "height", NAN), &box) ? after (&moved, box) : moved;
}

/* What is only kept for use elsewhere is not drawn where it stands, nor what is hidden. */
static bool
is_kept_apart (xmlNode *node)
{
  g_autofree char *display = svg_attribute (node, "display"), *style = svg_attribute (node, "style");

  if (g_strcmp0 (display, "none") == 0 || (style && (strstr (style, "display:none") || strstr (style, "display: none"))))
    return true;
  return svg_is (node, "defs") || svg_is (node, "clipPath") || svg_is (node, "mask") || svg_is (node, "symbol") || svg_is (node, "pattern") || svg_is (node,
                                                            "marker");
}

/* Elements by their id; of two with one, the first. */
static void
gather_ids (GHashTable *ids, xmlNode *parent, int depth)
{
  for (xmlNode *node = parent->children; node && depth < DEEPEST; node = node->next)
    {
      char *id = node->type == XML_ELEMENT_NODE ? svg_attribute (node, "id") : NULL;

      if (id && !g_hash_table_contains (ids, id))
        g_hash_table_insert (ids, id, node);
      else
        g_free (id);
      if (node->type == XML_ELEMENT_NODE)
        gather_ids (ids, node, depth + 1);
    }
}

/* What uses what uses may come to more than anybody waits for, by how many they are or by how much is written of each: then the rest is
 * left out. */
static bool
is_enough (SvgReading *self, const xmlNode *node)
{
  const size_t each = 8;

  if (self->seen >= MOST_NODES || self->text >= MOST_TEXT)
    {
      self->lines.left_out++;
      return true;
    }
  self->seen++;
  for (const xmlAttr *at = node->type == XML_ELEMENT_NODE ? node->properties : NULL; at; at = at->next)
    self->text += each + (at->children && at->children->content ? strlen ((const char *) at->children->content) : 0);
  return false;
}

static void add_node (SvgReading *self, xmlNode *node, const SvgMatrix *outer, const char *name, int depth);

static void
add_children (SvgReading *self, xmlNode *parent, const SvgMatrix *outer, int depth)
{
  for (xmlNode *node = parent->children; node && depth < DEEPEST && !is_enough (self, node); node = node->next)
    if (node->type == XML_ELEMENT_NODE && !is_kept_apart (node))
      add_node (self, node, outer, NULL, depth);
}

/* What a `use` shows, within this file, or NULL: an element that is drawn where it stands, or a symbol. */
static xmlNode *
used_node (SvgReading *self, xmlNode *node)
{
  g_autofree char *href = svg_attribute (node, "href");
  xmlNode *used = href && *href == '#' ? g_hash_table_lookup (self->ids, href + 1) : NULL;

  return used && (svg_is (used, "symbol") || !is_kept_apart (used)) ? used : NULL;
}

/* SVG 1.1, section 5.6: as if it stood here, moved by x and y; a symbol has this element's size. */
static void
add_used (SvgReading *self, xmlNode *node, const SvgMatrix *outer, const char *name, int depth)
{
  const SvgMatrix there = { 1, 0, 0, 1, svg_number_of (node, "x", 0), svg_number_of (node, "y", 0) }, moved = after (outer, there);
  xmlNode *used = used_node (self, node);
  SvgMatrix box;

  if (!used || depth >= DEEPEST)
    self->lines.left_out++;
  else if (is_enough (self, used))
    return;
  else if (!svg_is (used, "symbol"))
    add_node (self, used, &moved, name, depth + 1);
  else
    {
      const bool fits = fit_box (used, svg_number_of (node, "width", NAN), svg_number_of (node, "height", NAN), &box);
      const SvgMatrix inner = fits ? after (&moved, box) : moved;
      add_children (self, used, &inner, depth + 1);
    }
}

/* `name` is that of the `use` which shows it; NULL: its own. */
static void
add_node (SvgReading *self, xmlNode *node, const SvgMatrix *outer, const char *name, int depth)
{
  g_autofree char *transform = svg_attribute (node, "transform"), *id = svg_attribute (node, "id");
  SvgMatrix matrix;

  if (id && strlen (id) > NAME_ROOM)
    id[0] = '\0';
  if (!svg_matrix_read (transform, outer, &matrix))
    self->lines.left_out++;
  else if (svg_is (node, "g") || svg_is (node, "a") || svg_is (node, "switch"))
    add_children (self, node, &matrix, depth + 1);
  else if (svg_is (node, "svg"))
    {
      const SvgMatrix inner = inner_matrix (node, &matrix);
      add_children (self, node, &inner, depth + 1);
    }
  else if (svg_is (node, "use"))
    add_used (self, node, &matrix, name ? name : id, depth);
  else if (!svg_shape_add (&self->lines, node, &matrix, name ? name : id) && (svg_is (node, "text") || svg_is (node, "image")))
    self->lines.left_out++;
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
  g_autofree char *width = svg_attribute (root, "width"), *height = svg_attribute (root, "height");
  const double wide = length_mm (width, unit_known), high = length_mm (height, unit_known);
  SvgMatrix made;

  return fit_box (root, wide, high, &made) ? made : (SvgMatrix) { MM_PER_PX, 0, 0, MM_PER_PX, 0, 0 };
}

Brought *
brought_read_svg (const char *data, size_t length, const char *name, GError **error)
{
  xmlDoc *document = xmlReadMemory (data, (int) length, NULL, NULL, XML_PARSE_NONET | XML_PARSE_NOERROR | XML_PARSE_NOWARNING);
  xmlNode *root = document ? xmlDocGetRootElement (document) : NULL;
  SvgReading self = { .seen = 0 };
  bool unit_known = false;

  if (!root || !svg_is (root, "svg"))
    {
      g_set_error (error, BROUGHT_ERROR, BROUGHT_ERROR_FOREIGN, _("%s: this SVG is broken; save it again in the program that drew it."),
                   name);
      xmlFreeDoc (document);
      return NULL;
    }
  const SvgMatrix matrix = root_matrix (root, &unit_known);
  brought_lines_init (&self.lines);
  self.ids = g_hash_table_new_full (g_str_hash, g_str_equal, g_free, NULL);
  gather_ids (self.ids, root, 0);
  add_children (&self, root, &matrix, 0);
  g_hash_table_unref (self.ids);
  xmlFreeDoc (document);
  Brought *made = brought_lines_finish (&self.lines, 1, unit_known, name, error);
  if (made)
    made->unit_mm = MM_PER_PX;
  return made;
}
