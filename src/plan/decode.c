#include "plan/decode-private.h"

#include <limits.h>
#include <stdlib.h>
#include <string.h>
#include <sys/stat.h>

static const double USUAL_DPI = 300, LEAST_DPI = 1, MOST_DPI = 9600, USUAL_SECONDS = 60;
static const size_t USUAL_MOST_PIXELS = 64000000;
static const size_t USUAL_MOST_BYTES = (size_t) 3 << 30;
/* Of the whole, decoding is reckoned to take this much; handing over the rest. */
static const double DECODING_SHARE = 0.9;

static DecodeRequest
with_what_is_usual (const DecodeRequest *request)
{
  DecodeRequest filled = *request;

  filled.page = request->page ? request->page : 1;
  filled.dpi = request->dpi > 0 ? fmin (fmax (request->dpi, LEAST_DPI), MOST_DPI) : USUAL_DPI;
  filled.most_pixels = request->most_pixels ? request->most_pixels : USUAL_MOST_PIXELS;
  filled.seconds = request->seconds > 0 ? fmin (request->seconds, 86400) : USUAL_SECONDS;
  filled.most_bytes = request->most_bytes ? request->most_bytes : USUAL_MOST_BYTES;
  return filled;
}

static bool
is_progress (const DecodeWire *message)
{
  return message->mark == DECODE_WIRE_MARK && message->word == DECODE_WORD_PROGRESS && message->done >= 0 && message->done <= 1;
}

/* Listens to progress until the answer comes. */
static DecodeStatus
hear_answer (DecodeTalk *talk, const DecodeRequest *request, DecodeWire *answer)
{
  DecodeStatus status;

  while (!(status = decode_talk_read (talk, answer, sizeof *answer, NAN)) && is_progress (answer))
    talk->done = fmax (talk->done, DECODING_SHARE * answer->done);
  if (status)
    return status;
  return decode_answer_is_sound (answer, request) ? (DecodeStatus) answer->status : DECODE_HELPER_DIED;
}

static DecodeStatus
hear_raster (DecodeTalk *talk, const DecodeWire *answer, Raster **raster)
{
  const size_t size = (size_t) answer->width * answer->height * answer->channels;
  unsigned char *pixels = malloc (size);
  DecodeStatus status = pixels ? decode_talk_read (talk, pixels, size, 1) : DECODE_TOO_MUCH_MEMORY;

  if (status == DECODE_OK)
    status = decode_talk_read_end (talk);
  if (status != DECODE_OK)
    {
      free (pixels);
      return status;
    }
  *raster = raster_new ((int) answer->width, (int) answer->height, (int) answer->channels, (int) answer->reduced, pixels);
  return *raster ? DECODE_OK : DECODE_TOO_MUCH_MEMORY;
}

static DecodeFacts
facts_of (const DecodeWire *answer)
{
  return (DecodeFacts) {
    .kind = (DecodeKind) answer->kind, .pages = (int) answer->pages, .reduced = (int) answer->reduced,
    .page_width_mm = answer->page_width_mm, .page_height_mm = answer->page_height_mm,
    .width_px = answer->width_px, .height_px = answer->height_px,
    .stored_dpi_x = answer->stored_dpi_x, .stored_dpi_y = answer->stored_dpi_y, .limits_missing = answer->limits_missing,
  };
}

DecodeStatus
decode_with (const char *helper, const DecodeRequest *request, const DecodeWatch *watch, DecodeFacts *facts, Raster **raster)
{
  Raster *made = NULL;
  DecodeWire answer;
  DecodeTalk talk;
  DecodeStatus status = decode_talk_begin (&talk, helper, request, watch);

  if (status)
    return status;
  status = hear_answer (&talk, request, &answer);
  if (status == DECODE_OK && !request->facts_only)
    status = hear_raster (&talk, &answer, &made);
  status = decode_talk_end (&talk, status);
  if (status)
    return status;
  if (facts)
    *facts = facts_of (&answer);
  if (made)
    *raster = made;
  return DECODE_OK;
}

DecodeStatus
decode (const DecodeRequest *request, const DecodeWatch *watch, DecodeFacts *facts, Raster **raster)
{
  const DecodeRequest filled = with_what_is_usual (request);
  char helper[PATH_MAX];
  struct stat file;

  if (fstat (filled.file, &file) != 0 || !S_ISREG (file.st_mode))
    return DECODE_CANNOT_READ;
  if (file.st_size == 0)
    return DECODE_EMPTY;
  if (filled.page < 1)
    return DECODE_NO_SUCH_PAGE;
  if (!decode_helper_path (helper, sizeof helper))
    return DECODE_HELPER_MISSING;
  return decode_with (helper, &filled, watch, facts, raster);
}
