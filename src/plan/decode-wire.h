#pragma once
#include <math.h>
#include <stdint.h>
#include "plan/decode.h"

/** What the decoder says through its pipe: messages of this one size, any number of them about progress, then one answer. With
 *  DECODE_OK and channels > 0, width * height * channels bytes of pixels follow, then the end. Both ends are built together and
 *  run on one machine, so numbers stand as they are in memory. */
typedef struct {
  uint32_t mark;                        /* DECODE_WIRE_MARK; another: built from other sources, or no decoder at all */
  uint32_t word;                        /* DecodeWord */
  double done;                          /* progress: 0 to 1 */
  uint32_t status, kind;                /* the answer: DecodeStatus, DecodeKind */
  uint32_t pages, reduced;
  uint32_t width, height, channels;     /* of the raster; channels 0: none follows */
  uint32_t limits_missing;
  double page_width_mm, page_height_mm, width_px, height_px, stored_dpi_x, stored_dpi_y;
} DecodeWire;

typedef enum { DECODE_WORD_PROGRESS = 1, DECODE_WORD_ANSWER = 2 } DecodeWord;

#define DECODE_WIRE_MARK 0x54724431u
/** No picture or page is wider or higher, in pixels, before it is reduced. */
#define DECODE_WIRE_LONGEST 1e7
/** The greatest factor of a reduction. */
#define DECODE_WIRE_MOST_REDUCED 64

/** The arguments of the program, after its name: all whole decimal numbers. The file is its standard input, the pipe its
 *  standard output. */
typedef enum {
  DECODE_ARGUMENT_PAGE = 1,             /* from 1 */
  DECODE_ARGUMENT_MILLIDPI,             /* dots to a thousand inches */
  DECODE_ARGUMENT_MOST_PIXELS,
  DECODE_ARGUMENT_FACTS_ONLY,           /* 0, 1 */
  DECODE_ARGUMENT_SECONDS,              /* of the processor, rounded up */
  DECODE_ARGUMENT_MOST_BYTES,
  DECODE_ARGUMENT_END
} DecodeArgument;

/** How many of a raster's pixels cover `length` of the file's when `reduced` of them make one: >= 1. A thousandth of a
 *  pixel counts as nothing: lengths in some files are kept in single precision. */
static inline uint32_t
decode_wire_cells (double length, uint32_t reduced)
{
  const double cells = ceil (length / reduced - 1e-3);

  return cells < 1 ? 1 : (uint32_t) cells;
}
