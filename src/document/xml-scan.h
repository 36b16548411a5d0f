#pragma once
#include <stddef.h>

/** What makes XML costly to parse, found by one pass over its bytes before a parser sees it. Private to this room. */
typedef enum {
  SCAN_SOUND,
  SCAN_DECLARATION,       /* a document type declaration */
  SCAN_ATTRIBUTES,        /* more attributes in one tag than SCAN_ATTRIBUTES_MOST: looking for doubles is quadratic */
  SCAN_ENCODING,          /* a declared encoding other than UTF-8 or ASCII */
  SCAN_NOT_UTF8
} ScanResult;

enum { SCAN_ATTRIBUTES_MOST = 128 };

/** line  set to where it was found, unless all is sound. What is not well-formed is left to the parser. */
ScanResult xml_scan (const char *data, size_t length, int *line);
