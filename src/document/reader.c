#include "document/reader.h"
#include "document/problems.h"
#include "document/reader-bytes.h"
#include "document/reader-xml.h"

static Aeroplane *
read_bytes (const char *data, size_t length, Problems *problems)
{
  Draft *draft;
  Aeroplane *made;

  if (!reader_bytes_check (data, length, problems))
    return NULL;
  draft = draft_new (problems);
  reader_parse (data, length, draft, problems);
  made = draft_finish (draft);
  draft_free (draft);
  return made;
}

Aeroplane *
reader_read_data (const char *data, size_t length, const char *name, GPtrArray *texts, GError **error)
{
  Problems *problems = problems_new (name);
  Aeroplane *made = read_bytes (data, length, problems);

  problems_tell (problems, texts, error);
  problems_free (problems);
  return made;
}

Aeroplane *
reader_read_file (const char *path, GPtrArray *texts, GError **error)
{
  Problems *problems = problems_new (path);
  GByteArray *bytes = reader_bytes_of_file (path, problems);
  Aeroplane *made = bytes ? read_bytes ((const char *) bytes->data, bytes->len, problems) : NULL;

  if (bytes)
    g_byte_array_unref (bytes);
  problems_tell (problems, texts, error);
  problems_free (problems);
  return made;
}
