#pragma once
#include "app/sheet-canvas.h"

/** The actions of group "sheet": tool (string), snapping, zoom-in, zoom-out, fit-sheet, fit-selection, true-size, add-node, node-kind
 *  (smooth, symmetric, corner), segment-kind (line, curve, arc), split-node, join-nodes, add-rail, remove-rail, aboard,
 *  root-carried, root-open (of what was traced last). The caller's. */
GActionGroup *sheet_actions_new (TrammelSheetCanvas *sheet);
