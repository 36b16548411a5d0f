#pragma once
#include "app/sheet-canvas.h"
#include "app/trace-work.h"

/** Where along an outline just traced no printed line is to be seen, shown on the sheet as long as the strip says so. It goes with the
 *  sentence, and the sentence goes with the outline: when it is undone, edited or removed. One at a time. */
void doubt_show (TrammelSheetCanvas *sheet, const TraceOrder *order, const TraceResult *result, const char *sentence);
