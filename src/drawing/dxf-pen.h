#pragma once
#include <glib.h>
#include "geometry/point.h"

/** Writes what a DXF file is made of: a number that says what follows, and a line with it. */
typedef struct {
  GString *to;
  double height;          /* of the sheet, mm: its foot is y = 0 of the file */
  const char *layer;      /* of the entities that follow; NULL none */
} DxfPen;

void dxf_pen_text    (DxfPen *self, int code, const char *text);     /* on one line, in ASCII: \U+00E4 for what is beyond */
void dxf_pen_whole   (DxfPen *self, int code, int number);
void dxf_pen_real    (DxfPen *self, int code, double number);        /* six decimals, whatever the locale; mm for a length */
void dxf_pen_angle   (DxfPen *self, int code, double radians);       /* in degrees from 0 up to 360 */
void dxf_pen_place   (DxfPen *self, int code, Point place);          /* of our sheet, mm, y down; x goes to `code`, y and z to the tens above */
void dxf_pen_section (DxfPen *self, const char *name);               /* begins it */
void dxf_pen_entity  (DxfPen *self, const char *kind);               /* begins it, on the layer at hand */
/** The section of tables: the plain line, the layers of files for cutting, the plain lettering. */
void dxf_pen_tables  (DxfPen *self);
