#pragma once
#include <sys/types.h>
#include "plan/decode-wire.h"

/** A decoder at work. */
typedef struct {
  pid_t process;
  int answers;                          /* the pipe's end that is read */
  double until;                         /* by the monotonic clock, seconds */
  double done;                          /* the last progress told, 0 to 1 */
  const DecodeWatch *watch;             /* may be NULL */
} DecodeTalk;

/** decode () with the program at `helper`, and with nothing in the request left open. */
DecodeStatus decode_with (const char *helper, const DecodeRequest *request, const DecodeWatch *watch, DecodeFacts *facts, Raster **raster);

/** Where the program is: in the build tree when what runs lies there, else where it is installed. In `path`, of `size` bytes;
 *  false when it does not fit. */
bool decode_helper_path (char *path, size_t size);

/** Starts `helper` with the request's file and nothing else open. DECODE_OK; DECODE_HELPER_MISSING; DECODE_CANNOT_READ. */
DecodeStatus decode_talk_begin (DecodeTalk *talk, const char *helper, const DecodeRequest *request, const DecodeWatch *watch);
/** Reads all of `count` bytes. DECODE_OK; DECODE_HELPER_DIED when the pipe ends before; DECODE_CANCELLED; DECODE_TOOK_TOO_LONG.
 *  While it reads, progress runs from what it is to `done_after` (NAN: stays), a fraction of all. */
DecodeStatus decode_talk_read (DecodeTalk *talk, void *bytes, size_t count, double done_after);
/** DECODE_OK if nothing more comes. */
DecodeStatus decode_talk_read_end (DecodeTalk *talk);
/** Ends the process, whatever it is doing, and gives back what was taken. What it died of makes DECODE_HELPER_DIED more exact;
 *  another status comes back as it is. */
DecodeStatus decode_talk_end (DecodeTalk *talk, DecodeStatus status);

/** Whether an answer can be that of a sound decoder to this request; only then may its numbers be used. */
bool decode_answer_is_sound (const DecodeWire *answer, const DecodeRequest *request);
