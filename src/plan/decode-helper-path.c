#define _GNU_SOURCE
#include "trammel-config.h"
#include "plan/decode-private.h"

#include <limits.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <unistd.h>

/* What is installed must never start a program out of a folder that anybody might make. */
static bool
runs_from_build_tree (void)
{
  char self[PATH_MAX], root[PATH_MAX];
  const ssize_t length = readlink ("/proc/self/exe", self, sizeof self - 1);

  if (length <= 0 || !realpath (TRAMMEL_BUILD_DIR, root))
    return false;
  self[length] = '\0';
  return strncmp (self, root, strlen (root)) == 0 && self[strlen (root)] == '/';
}

bool
decode_helper_path (char *path, size_t size)
{
  const char *folder = runs_from_build_tree () ? TRAMMEL_BUILD_DIR "/src/decoder" : TRAMMEL_LIBEXEC_DIR;
  const int length = snprintf (path, size, "%s/trammel-decoder", folder);

  return length > 0 && (size_t) length < size;
}
