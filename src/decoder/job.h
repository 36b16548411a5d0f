#pragma once
#include <stddef.h>
#include "plan/decode-wire.h"

/** What the program was asked, and the file's bytes, which whoever asked may still change under it: nothing read from them twice
 *  is relied on to be the same. */
typedef struct {
  const unsigned char *bytes;
  size_t length;                  /* >= 1 */
  int page;                       /* >= 1 */
  double dpi;
  double most_pixels;
  bool facts_only;
  DecodeWire answer;              /* its facts, filled in as they become known */
} Job;
