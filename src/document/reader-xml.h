#pragma once
#include "document/draft.h"

/** Parses the bytes (UTF-8, scanned by xml_scan) and feeds the draft; what is not well-formed, nested too deep, of another kind or
 *  newer is told in `problems`. The only file that knows libxml2's parser. Private to this room. */
void reader_parse (const char *data, size_t length, Draft *draft, Problems *problems);
