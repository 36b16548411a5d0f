#include "app/file-stamp.h"
#include <stddef.h>
#include <sys/stat.h>

FileStamp
file_stamp_of (const char *path)
{
  struct stat found;

  if (path == NULL || stat (path, &found) != 0)
    return (FileStamp) { .there = false };
  return (FileStamp) { .there = true, .device = found.st_dev, .inode = found.st_ino, .length = found.st_size,
                       .changed_ns = (int64_t) found.st_mtim.tv_sec * 1000000000 + found.st_mtim.tv_nsec };
}

bool
file_stamp_equal (const FileStamp *a, const FileStamp *b)
{
  if (!a->there || !b->there)
    return a->there == b->there;
  return a->device == b->device && a->inode == b->inode && a->length == b->length && a->changed_ns == b->changed_ns;
}
