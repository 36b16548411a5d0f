#pragma once
#include "drawing/cutting.h"

/** The sheet as DXF of release 12, ASCII: millimetres, y up from the sheet's lower left corner, a layer in capitals for each purpose. A
 *  straight line is a LINE, one circle's arc an ARC, a whole circle a CIRCLE, all else a POLYLINE of straight sides within 0.005 mm of the
 *  line, closed where it is. Words are TEXT. Characters beyond ASCII are written as \U+00E4. The same pieces give the same bytes.
 *  source  the format's published reference, "DXF reference" of its release 12, from memory; AC1009 and the header's variables by its
 *          chapter on header variables */
GBytes *cutting_dxf (const Cutting *cutting);
