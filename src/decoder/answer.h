#pragma once
#include "decoder/job.h"
#include "decoder/picture.h"

/** Sends how far decoding is: a fraction, 1 is all. Ends the program when nobody listens any longer. */
void answer_progress (double done);
/** Sends why there is no picture, and ends the program. */
_Noreturn void answer_refuse (DecodeStatus status);
/** Sends the facts alone, and ends the program. */
_Noreturn void answer_facts (Job *job);
/** Sends the facts and the picture, reduced as the facts say, and ends the program. */
_Noreturn void answer_picture (Job *job, const Picture *picture);
/** Sends the facts and a picture that was drawn at the reduced size already, and ends the program. */
_Noreturn void answer_drawn (Job *job, const Picture *picture);
/** From here on a library that gives up for want of memory is heard as DECODE_TOO_MUCH_MEMORY. */
void answer_also_on_abort (size_t most_bytes);

/** Sets reduced, width and height of the answer from width_px and height_px, so that the raster stays under most_pixels and no
 *  side is longer than `longest`; refuses what no factor makes small enough. */
void answer_fit (Job *job, double longest);
