#include "trammel-config.h"
#include "document/data-path.h"
#include <glib.h>

char *
data_path (const char *relative)
{
  const char *const folders[] = { g_getenv ("TRAMMEL_DATA_DIR"), TRAMMEL_SOURCE_DATA_DIR };

  for (size_t i = 0; i < G_N_ELEMENTS (folders); i++)
    if (folders[i] != NULL && folders[i][0] != '\0')
      {
        g_autofree char *path = g_build_filename (folders[i], relative, NULL);

        if (g_file_test (path, G_FILE_TEST_EXISTS))
          return g_steal_pointer (&path);
      }
  return g_build_filename (TRAMMEL_DATA_DIR, relative, NULL);
}
