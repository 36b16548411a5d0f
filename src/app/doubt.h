#pragma once
#include "app/sheet-canvas.h"
#include "app/trace-work.h"

/** What was said of an outline just traced holds as long as that outline stands: undone, edited, removed or accepted it takes the sentence from the
 *  strip. One at a time.
 *  unseen  where along it no printed line is to be seen, as in TraceResult; NULL: that is not what was said. Dashed on the sheet, over the
 *          print, as long as the outline stands and its view is in hand, whether the strip still says so or not */
void doubt_show (TrammelSheetCanvas *sheet, const TraceOrder *order, const GArray *unseen, const char *sentence);
