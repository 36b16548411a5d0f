#pragma once
#include <libxml/tree.h>
#include "document/brought-lines.h"

/* Private to the document room. */

/** An affine map: x' = a x + c y + e, y' = b x + d y + f, as SVG's matrix(a b c d e f). */
typedef struct { double a, b, c, d, e, f; } SvgMatrix;

/** What a `transform` attribute says, after `outer`; the outer alone for NULL. false where it cannot be read.
 *  source  SVG 1.1, section 7.6 */
bool svg_matrix_read (const char *text, const SvgMatrix *outer, SvgMatrix *made);
/** The place, on our sheet's axes: SVG's y runs down the page as our x does, its x to the right as our y.
 *  In the drawing's unit (mm where its matrix scales to mm). */
Point svg_matrix_place (const SvgMatrix *self, double x, double y);

/** Adds what a path's `d` attribute draws. false where it cannot be read; what came before is kept, as SVG asks.
 *  source  SVG 1.1, section 8.3 and its appendix F.6 (arcs) */
bool svg_path_add (BroughtLines *lines, const char *text, const SvgMatrix *matrix, const char *name);

/** Reads one number, skipping blanks and a comma before it. As it stands, no unit; false, and neither changed, where there is none. */
bool svg_number (const char **at, double *value);

/** An element's attribute, a new string; NULL where it has none. Plain text alone: one that names entities may unfold to more than any
 *  memory holds, and counts as not there. */
char  *svg_attribute (xmlNode *node, const char *name);
/** An attribute's number, no unit; `otherwise` where it is missing or none. */
double svg_number_of (xmlNode *node, const char *name, double otherwise);
bool   svg_is        (xmlNode *node, const char *word);          /* by its name */
/** Adds the basic shape or path that the element is. false: it is none. Of a path that breaks off, what came before is drawn and the rest
 *  counts as left out. */
bool   svg_shape_add (BroughtLines *lines, xmlNode *node, const SvgMatrix *matrix, const char *name);
