#pragma once
#include <stdbool.h>
#include <stddef.h>
#include "plan/raster.h"

/** Pictures and pages become pixels in a process of their own, which may read the one file that it is handed, write nothing,
 *  start nothing and talk to nobody, within limits on memory and time: a hostile picture ends there. */

/** How asking for a picture ended. Codes are only ever appended. */
typedef enum {
  DECODE_OK = 0,
  DECODE_NOT_A_PICTURE,     /* none of the kinds below, whatever the file's name says */
  DECODE_EMPTY,             /* a file without a byte */
  DECODE_TRUNCATED,         /* the file ends before its picture does: half a plan would be measured wrong, so there is none */
  DECODE_DAMAGED,           /* begins as a picture or page, but cannot be understood */
  DECODE_NO_PIXELS,         /* a picture or page without width or height */
  DECODE_TOO_LARGE,         /* more than DECODE_MOST_FILE_PIXELS, or a page that no whole reduction makes small enough */
  DECODE_NO_LOADER,         /* the platform has no loader for this kind */
  DECODE_NEEDS_PASSWORD,
  DECODE_NO_SUCH_PAGE,
  DECODE_TOOK_TOO_LONG,
  DECODE_TOO_MUCH_MEMORY,
  DECODE_HELPER_MISSING,    /* the private program is not installed, or lacks a library */
  DECODE_HELPER_DIED,       /* it broke off, or answered what no sound decoder answers */
  DECODE_CANCELLED,
  DECODE_CANNOT_READ,       /* not a regular file that may be read, or no descriptor or process to be had */
  DECODE_STATUS_END
} DecodeStatus;

/** A sentence for people, without a full stop, marked for translation (the caller passes it through gettext).
 *  Never NULL; owned by the room. */
const char *decode_status_sentence (DecodeStatus status);

/** What the file is by its contents. */
typedef enum { DECODE_PNG, DECODE_JPEG, DECODE_TIFF, DECODE_WEBP, DECODE_BMP, DECODE_GIF, DECODE_SVG, DECODE_PDF, DECODE_KIND_END } DecodeKind;

/** What keeps the decoder within bounds; a kernel may refuse one, and the others are kept. */
typedef enum {
  DECODE_LIMIT_MEMORY     = 1 << 0,
  DECODE_LIMIT_TIME       = 1 << 1,      /* of the processor; the clock's limit is kept from outside, always */
  DECODE_LIMIT_FILES      = 1 << 2,      /* how many may be open, none may grow, no memory is dumped */
  DECODE_LIMIT_PRIVILEGES = 1 << 3,      /* nothing it could start would gain any */
  DECODE_LIMIT_CALLS      = 1 << 4,      /* of the system: no network, no program, no writing, no other process */
  DECODE_LIMIT_ALL        = (1 << 5) - 1
} DecodeLimit;

/** A picture with more pixels than this is refused before memory is taken for it: 400 million. Pages of a PDF and SVG are drawn
 *  at the size wanted and know no such bound. */
#define DECODE_MOST_FILE_PIXELS 400e6

/** What is wanted; a member that is 0 stands for what is usual. */
typedef struct {
  int file;                 /* descriptor of the file, a regular one, open for reading; lent, its offset is left alone */
  int page;                 /* of a PDF or a TIFF, from 1; 0: the first. Another picture has one page (an animation its first frame) */
  double dpi;               /* at which a PDF or SVG is drawn, 1 to 9600; 0: 300. A picture's pixels are as they are */
  size_t most_pixels;       /* that the raster may have; 0: 64 million. Larger ones are reduced by a whole factor */
  bool facts_only;          /* the facts, without a raster: quick, since nothing is drawn */
  double seconds;           /* by the clock; 0: 60 */
  size_t most_bytes;        /* of address space that the decoder may take; 0: 3 GiB */
} DecodeRequest;

/** What is known about a picture or page. */
typedef struct {
  DecodeKind kind;
  int pages;                                  /* of a PDF or a TIFF, whose thumbnails and masks are none; else 1 */
  double page_width_mm, page_height_mm;       /* NAN unless true to size: a PDF, an SVG whose width or height is in mm, cm, in, pt or pc */
  double width_px, height_px;                 /* the file's own pixels, turned upright as the file says; a page's at `dpi`, maybe not whole */
  int reduced;                                /* how many of them make one of the raster's, each way; without a raster, would make */
  double stored_dpi_x, stored_dpi_y;          /* pixels to the inch that a picture says it has, turned as it is; NAN: none, or no picture */
  unsigned limits_missing;                    /* DecodeLimit bits that the kernel refused; 0 as a rule */
} DecodeFacts;

/** Told how far decoding is, and asked whether to go on. */
typedef struct {
  bool (*go_on) (double done, void *data);    /* done: 0 to 1, never falling; false cancels. In the caller's thread, every 50 ms or oftener */
  void *data;
} DecodeWatch;

/** Decodes a picture or page, upright, transparent places on white, colours as 8-bit red, green and blue; one channel where the
 *  three are equal all over. Waits for the answer; may be called in any thread, in several at once.
 *  watch    NULL: nobody is told, nothing cancels
 *  facts    set on success, else untouched; may be NULL
 *  raster   set on success (one reference, the caller's), else untouched; NULL with facts_only
 *  returns  DECODE_OK, or why there is none; no process, descriptor or memory stays behind in any case */
DecodeStatus decode (const DecodeRequest *request, const DecodeWatch *watch, DecodeFacts *facts, Raster **raster);
