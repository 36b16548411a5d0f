#pragma once

/** One standard deviation of a length traced off a plan, as a share of it: a pencil's line and paper that has shrunk, half a millimetre
 *  on a chord of 100. Lengths of different outlines, and along and across, know nothing of each other. Common practice, no source. */
static const double outline_tolerance = 0.005;
