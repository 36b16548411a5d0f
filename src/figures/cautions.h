#pragma once
#include <stddef.h>

/** The five cautions of the first run, of every wall sheet and of every report. Translated, owned by the room; counted from 0, NULL beyond the
 *  last. */
const char *cautions_sentence (size_t index);
