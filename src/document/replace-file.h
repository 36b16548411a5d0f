#pragma once
#include <stdbool.h>
#include <stddef.h>

/** Putting bytes where a file is, all or nothing. Private to this room; the world uses writer.h.
 *  returns 0, or an errno value with the old file as it was and nothing left behind. EEXIST_PROTECTED: the old file is write-protected.
 *
 *  The new file has no name until it is whole and on the disk (O_TMPFILE), so that a process killed in the middle leaves nothing. With a
 *  backup it is then linked as `path~` and exchanged with the old one in one step; without, or where a file system cannot do that, it
 *  has a name of its own for the moment between two calls. */
int replace_file (const char *path, const void *bytes, size_t length, bool backup);

enum { EEXIST_PROTECTED = 100000 };
