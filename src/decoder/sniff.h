#pragma once
#include "decoder/job.h"

/** What kind of file it is, by its bytes alone. False: none that is known. */
bool sniff_kind (const unsigned char *bytes, size_t length, DecodeKind *kind);

/** Where the first picture of a file ends, by its own lengths and marks: bytes from the beginning (PNG, JPEG, GIF), or the whole
 *  length (other kinds). 0 if the file ends before, or its frame makes no sense. */
size_t sniff_end (DecodeKind kind, const unsigned char *bytes, size_t length);
size_t sniff_tiff_end (const unsigned char *bytes, size_t length);      /* of a TIFF file */

/** Pixels to the metre of a PNG (its pHYs chunk), right and down; false when it does not say. */
bool sniff_png_density (const unsigned char *bytes, size_t length, unsigned density[2]);
/** Width and height that a PNG's header claims, in pixels. */
void sniff_png_size (const unsigned char *bytes, size_t length, unsigned size[2]);
