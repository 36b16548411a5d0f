#include <glib.h>
#include <stdint.h>
#include <stdlib.h>
#include "document/reader.h"
#include "document/writer.h"
#include "fuzz/fuzz-reader.h"

/* Ends the process, which is how a fuzzer learns of it. */
static void
require_of (bool holds, const char *what, const char *of)
{
  if (holds)
    return;
  g_printerr ("%s: %s\n", what, of);
  abort ();
}

/* Each problem is one line with the file in front, and the error is the first of them. */
static void
require_problems (const GPtrArray *problems, const GError *error)
{
  require_of (error != NULL && problems->len > 0 && problems->len <= 20, "not 1 to 20 problems", error ? error->message : "none");
  require_of (g_str_equal (error->message, g_ptr_array_index (problems, 0)), "the error is not the first problem", error->message);
  for (guint i = 0; i < problems->len; i++)
    {
      const char *line = g_ptr_array_index (problems, i);

      require_of (g_utf8_validate (line, -1, NULL), "a problem is not UTF-8", line);
      require_of (g_str_has_prefix (line, "input:") && !strchr (line, '\n'), "a problem is no line that names the file", line);
    }
}

static void
require_round_trip (const Aeroplane *read)
{
  size_t length, again_length;
  g_autofree char *written = writer_text (read, &length);
  g_autoptr (Aeroplane) again = reader_read_data (written, length, "written", NULL, NULL);
  g_autofree char *again_written = again ? writer_text (again, &again_length) : NULL;

  require_of (again != NULL, "what is written cannot be read", written);
  require_of (aeroplane_equal (read, again), "what is read again is another", written);
  require_of (again_length == length && g_str_equal (written, again_written), "writing again gives other bytes", written);
}

int
LLVMFuzzerTestOneInput (const uint8_t *data, size_t size)
{
  g_autoptr (GPtrArray) problems = g_ptr_array_new_with_free_func (g_free);
  g_autoptr (GError) error = NULL;
  g_autoptr (Aeroplane) read = reader_read_data ((const char *) data, size, "input", problems, &error);

  if (read)
    {
      require_of (!error && problems->len == 0, "what is read has problems", error ? error->message : "");
      require_round_trip (read);
    }
  else
    require_problems (problems, error);
  return 0;
}
