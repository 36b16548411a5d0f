/* The decoder may have been taken over by what it read: nothing it says is used before it was found possible. */
#include "plan/decode-private.h"

static bool
is_length_px (double px)
{
  return px > 0 && px <= DECODE_WIRE_LONGEST;
}

static bool
is_nan_or_within (double value, double least, double most)
{
  return isnan (value) || (value >= least && value <= most);
}

static bool
facts_are_sound (const DecodeWire *answer)
{
  return answer->kind < DECODE_KIND_END
      && answer->pages >= 1 && answer->pages <= 100000000
      && answer->reduced >= 1 && answer->reduced <= DECODE_WIRE_MOST_REDUCED
      && answer->limits_missing <= DECODE_LIMIT_ALL
      && is_length_px (answer->width_px) && is_length_px (answer->height_px)
      && is_nan_or_within (answer->page_width_mm, 1e-6, 1e9) && is_nan_or_within (answer->page_height_mm, 1e-6, 1e9)
      && isnan (answer->page_width_mm) == isnan (answer->page_height_mm)
      && is_nan_or_within (answer->stored_dpi_x, 1e-3, 1e6) && is_nan_or_within (answer->stored_dpi_y, 1e-3, 1e6);
}

static bool
raster_is_sound (const DecodeWire *answer, const DecodeRequest *request)
{
  if (request->facts_only)
    return answer->channels == 0;
  return (answer->channels == 1 || answer->channels == 3)
      && answer->width == decode_wire_cells (answer->width_px, answer->reduced)
      && answer->height == decode_wire_cells (answer->height_px, answer->reduced)
      && (uint64_t) answer->width * answer->height <= request->most_pixels;
}

bool
decode_answer_is_sound (const DecodeWire *answer, const DecodeRequest *request)
{
  if (answer->mark != DECODE_WIRE_MARK || answer->word != DECODE_WORD_ANSWER || answer->status >= DECODE_STATUS_END)
    return false;
  return answer->status != DECODE_OK || (facts_are_sound (answer) && raster_is_sound (answer, request));
}
