#pragma once
#include "decoder/job.h"

/** What kind of file it is, by its bytes alone. False: none that is known. */
bool sniff_kind (const unsigned char *bytes, size_t length, DecodeKind *kind);

/** Whether it begins as an SVG does, in UTF-8 or UTF-16. */
bool sniff_svg (const unsigned char *bytes, size_t length);
/** Whether it is packed by gzip (RFC 1952, section 2.3.1). */
bool sniff_packed (const unsigned char *bytes, size_t length);

/** Where the first picture of a file ends, by its own lengths and marks: bytes from the beginning (PNG, JPEG, GIF), or the whole
 *  length (other kinds). 0 if the file ends before, or its frame makes no sense. */
size_t sniff_end (DecodeKind kind, const unsigned char *bytes, size_t length);
/** Of a TIFF file and the page whose directory begins there. */
size_t sniff_tiff_end (const unsigned char *bytes, size_t length, size_t directory);

/** More directories of a TIFF than this are not looked at. */
enum { SNIFF_TIFF_DIRECTORIES = 1000 };
/** How many pages a TIFF has, thumbnails and masks of other pages left out, and where the directory of one of them (from 1) begins; 0:
 *  there is no such page. */
unsigned sniff_tiff_pages (const unsigned char *bytes, size_t length, unsigned page, size_t *directory);
/** How TIFF's own tag 274 says the first picture lies, or that of EXIF, which is laid out alike; 1 (upright) where it does not say. */
int sniff_tiff_orientation (const unsigned char *bytes, size_t length);
/** The same of a PNG's eXIf chunk (PNG extensions 1.5.0, section 3.7). */
int sniff_png_orientation (const unsigned char *bytes, size_t length);

/** Pixels to the metre of a PNG (its pHYs chunk), right and down; false when it does not say. */
bool sniff_png_density (const unsigned char *bytes, size_t length, unsigned density[2]);
/** Width and height that a PNG's header claims, in pixels. */
void sniff_png_size (const unsigned char *bytes, size_t length, unsigned size[2]);
