#define _GNU_SOURCE
#include "trammel-config.h"
#include "plan/build-tree.h"

#include <limits.h>
#include <stdlib.h>
#include <string.h>
#include <unistd.h>

bool
runs_from_build_tree (void)
{
  char self[PATH_MAX], root[PATH_MAX];
  const ssize_t length = readlink ("/proc/self/exe", self, sizeof self - 1);

  if (length <= 0 || !realpath (TRAMMEL_BUILD_DIR, root))
    return false;
  self[length] = '\0';
  return strncmp (self, root, strlen (root)) == 0 && self[strlen (root)] == '/';
}
