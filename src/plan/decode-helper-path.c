#include "trammel-config.h"
#include "plan/build-tree.h"
#include "plan/decode-private.h"

#include <stdio.h>

bool
decode_helper_path (char *path, size_t size)
{
  const char *folder = runs_from_build_tree () ? TRAMMEL_BUILD_DIR "/src/decoder" : TRAMMEL_LIBEXEC_DIR;
  const int length = snprintf (path, size, "%s/trammel-decoder", folder);

  return length > 0 && (size_t) length < size;
}
