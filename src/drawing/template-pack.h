#pragma once
#include "drawing/template-cell.h"

/** Pieces that are to be laid on tiles. mm */
typedef struct {
  const GArray *upright, *turned;      /* of TemplateCell: every piece both ways, in one order, the upper left corner at 0, 0 */
  Point step;                          /* from tile to tile */
  double apart;                        /* of pieces, and of what is taken */
  const Box *shapes;  guint shape_count;      /* of the notes, which lie before all else; at least one */
} TemplatePack;

/** Which way a piece lies. */
typedef enum { TEMPLATE_EITHER, TEMPLATE_UPRIGHT, TEMPLATE_TURNED } TemplateTurn;
typedef struct { guint piece; TemplateTurn turn; } TemplateTake;

/** How far in from a tile's edge anything begins, mm: beyond what the neighbour shows of it. */
static const double TEMPLATE_CLEAR = 6;
/** What a page costs, and a piece that an edge cuts though it had room on one tile. */
static const double TEMPLATE_PAGE_COST = 10;

/** Takes the pieces one after the other, as many as there are, and lays each where it needs the fewest new tiles and the fewest cuts, then as
 *  far up and to the left as it can; nothing upon anything, and no edge of a tile through a name.
 *  taken   where none may lie, mm
 *  places  as many cells as pieces, in the pieces' own order: filled
 *  work    raised by what was looked at: the time it took, counted the same on every machine */
void   template_pack      (const TemplatePack *self, Box taken, const TemplateTake takes[], TemplateCell places[], size_t *work);
/** What those places cost, as a ratio to one cut through a piece: pages, cuts and slivers; a little less the fuller the full pages are, so that
 *  others run empty. */
double template_pack_cost (const TemplatePack *self, Box taken, const TemplateCell places[]);
