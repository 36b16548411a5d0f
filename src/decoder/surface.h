#pragma once
#include <cairo.h>
#include "decoder/job.h"

/** White paper of the answer's width and height, on which one unit is one of the page's pixels before it is reduced. Refuses for
 *  want of memory. */
cairo_t *surface_paper (const Job *job);
/** Sends what was drawn, and ends the program. */
_Noreturn void surface_answer (Job *job, cairo_t *paper);
/** No cairo picture is longer than this, in pixels. */
#define SURFACE_LONGEST 32767.0
