#pragma once
#include <stddef.h>

/** The five cautions of the first run and of every wall sheet. Translated, owned by the room; counted from 0, NULL beyond the last. */
const char *cautions_sentence (size_t index);
