#pragma once
#include "drawing/cutting.h"
#include "drawing/sheet-pages.h"

/** A file for cutting as a page to be looked at: its pieces at their places, edges with their kerf, each layer in its colour. One page, in broader lines
 *  than the file's hairlines. Takes what it holds. */
SheetPages *cutting_page (Cutting *takes);
