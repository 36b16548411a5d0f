#pragma once
#include "document/aeroplane.h"
#include "drawing/selection.h"

/** What a key or menu does to nodes. Each makes the next aeroplane, or NULL when it does not apply or geometry refuses. `selection` holds
 *  nodes of one outline. */
Aeroplane *node_edit_kind     (const Aeroplane *aeroplane, const Selection *selection, NodeKind kind);
/** Takes the selected nodes out; NULL when fewer than two would be left. */
Aeroplane *node_edit_removed  (const Aeroplane *aeroplane, const Selection *selection);
/** Cuts the corner at the first selected node into two, `length` mm to each side. */
Aeroplane *node_edit_split    (const Aeroplane *aeroplane, const Selection *selection, double length);
/** Makes one of the first selected node and the next. */
Aeroplane *node_edit_joined   (const Aeroplane *aeroplane, const Selection *selection);

/** A place on an outline: what a click on a line leaves behind, so that a node can be put there. */
typedef struct { char *id; bool side; size_t segment; double t; } OutlineSpot;
void       outline_spot_clear (OutlineSpot *spot);      /* frees the id; again is fine */
/** A node on the spot; it is node segment + 1 then, and the shape stays. */
Aeroplane *node_edit_inserted (const Aeroplane *aeroplane, const OutlineSpot *spot);
/** The spot's segment as line, curve or arc. */
Aeroplane *node_edit_segment_kind (const Aeroplane *aeroplane, const OutlineSpot *spot, SegmentKind kind);
/** Whether the spot still lies on an outline of the aeroplane. */
bool       outline_spot_exists (const Aeroplane *aeroplane, const OutlineSpot *spot);
