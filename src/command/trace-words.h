#pragma once
#include <glib.h>
#include "command/command.h"
#include "plan/axis-frame.h"
#include "plan/mapping.h"

/** What the words behind `trammel trace` ask for. Places are in the image's pixels. */
typedef struct {
  const char *image;
  GArray *known;              /* of KnownLength */
  KnownRectangle corners;
  bool has_corners;
  double mm_per_px;           /* NAN: not told */
  ViewAxis centre_line;
  bool has_centre_line;
  GArray *through;            /* of Point, two at least, no two that follow each other the same */
  int page, dpi;              /* page 0: the first */
  bool json;
  GPtrArray *line;            /* the words themselves */
} TraceWords;

/** Reads the words.
 *  words    set on success, then trace_words_clear gives it back
 *  status   set when there is nothing more to do: after --help, or COMMAND_USAGE when a word is wrong, which is then named
 *  returns  whether to go on */
bool trace_words_read  (int argc, char **argv, TraceWords *words, CommandStatus *status);
void trace_words_clear (TraceWords *words);      /* frees what the words hold; again is fine */

/** False, and status set, when a place that the line is to run through lies outside the picture, which is so many pixels wide and high, or
 *  one of --known, --corners or --centre-line further outside than a tenth of it. */
bool trace_words_inside (const TraceWords *words, double width_px, double height_px, CommandStatus *status);
