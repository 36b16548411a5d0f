#pragma once
#include "app/session.h"

/** The outline whose node is selected (a surface's, or a body's top or side), and which node; NULL without exactly one. */
const Outline *node_selected_outline (TrammelSession *session, size_t *node);
/** The aeroplane with that outline replaced. */
Aeroplane     *node_with_outline     (TrammelSession *session, Outline *takes);
