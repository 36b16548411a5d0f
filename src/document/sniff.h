#pragma once
#include <stddef.h>

/** Tells what some bytes are if they cannot be one of our documents: a translated sentence with what to do, owned by the room; NULL
 *  when they may be XML. Looks at the first few bytes alone. Private to this room. */
const char *sniff_foreign (const char *data, size_t length);
