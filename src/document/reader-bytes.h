#pragma once
#include "document/problems.h"

/** A file's bytes before a parser sees them. What is wrong with them is told in `problems`. Private to this room. */

/** All of the file; NULL where it cannot be read or is larger than any document needs to be (64 MB). The caller's. */
GByteArray *reader_bytes_of_file (const char *path, Problems *problems);
/** Whether they may be parsed: XML by their look, UTF-8, no declaration of a document type, no flood of attributes, of a size that is needed. */
bool reader_bytes_check (const char *data, size_t length, Problems *problems);
