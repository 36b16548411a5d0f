#pragma once
#include <stdatomic.h>
#include "plan/ink-levels.h"

/* One of the copies. Where a block of it has no ink at all, `inked` says 0: most of a plan is paper, and need not be looked at. */
typedef struct {
  int width, height;
  const unsigned char *pixels;
  int blocks_across;
  const unsigned char *inked;      /* a byte a block, row by row */
} Level;

enum { INK_BLOCK = 16 };           /* px of the copy, each way */

struct InkLevels {
  atomic_int references;
  Ink *ink;
  Level levels[INK_LEVELS_MOST];
  int count;
  unsigned char *copies;           /* the pixels of all but the first level, and every level's blocks */
};
