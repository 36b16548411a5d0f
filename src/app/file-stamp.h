#pragma once
#include <stdbool.h>
#include <stdint.h>

/** Tells whether a file is still the one we read or wrote: which file it is, its length, and when it last changed. A value. */
typedef struct {
  bool there;
  uint64_t device, inode;
  int64_t length, changed_ns;
} FileStamp;

/** The stamp of the file at `path` (links followed) as it is now; `there` is false when there is none. Asks the disk. */
FileStamp file_stamp_of    (const char *path);
bool      file_stamp_equal (const FileStamp *a, const FileStamp *b);      /* of the same file, unchanged; two that are not there are equal */
