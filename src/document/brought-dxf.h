#pragma once
#include "document/brought-lines.h"

/* Private to the document room. */

/** What a DXF file is made of: a number that says what follows, and a line of text. */
typedef struct { int code; const char *text; } DxfGroup;

/** A walk over the groups; text is cut into lines where it lies. */
typedef struct { char *rest; DxfGroup group; bool pushed_back, broken; guint line; } DxfWalk;

/** The next group, or false at the end or where the file is broken (`line` is then the line that is at fault, counted from 1). */
bool   dxf_next      (DxfWalk *self);
/** The group at hand comes once more. */
void   dxf_push_back (DxfWalk *self);
double dxf_number    (const DxfGroup *group);           /* NAN where it is none; as it stands, in the drawing's unit, degrees or no unit */

/** One entity's groups, gathered: repeated ones in their order. */
enum { DXF_NAME_ROOM = 80 };
typedef struct {
  char layer[DXF_NAME_ROOM], name[DXF_NAME_ROOM];    /* 8 and 2 */
  double number[256];              /* of each code below 256, the last one; NAN where it did not stand */
  GArray *x, *y, *bulge, *knots;   /* doubles: 10, 20 and 42 of each vertex, 40 of a spline */
  GArray *weights;                 /* 41 of a spline */
  bool from_behind;                /* drawn on a plane that faces away: its x runs to the left */
} DxfEntity;

void dxf_entity_init  (DxfEntity *self);      /* nothing read yet: numbers NAN, lists empty. dxf_entity_clear() it */
void dxf_entity_clear (DxfEntity *self);      /* gives its lists back */
/** Reads up to the next group 0, which is pushed back. */
void dxf_entity_read  (DxfEntity *self, DxfWalk *walk, const char *kind);

/** Draws the entity; false where it is none that draws a line. `kind` is its name; a POLYLINE has had its vertices gathered.
 *  source  the entities' group codes as published with the format's reference, from memory */
bool dxf_entity_draw (const DxfEntity *self, const char *kind, BroughtLines *lines);
