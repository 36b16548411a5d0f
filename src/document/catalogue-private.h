#pragma once
#include "document/catalogue.h"
#include "document/problems.h"

/** Reads the entries of one file as they come. Private to this room.
 *  take    gets each sound entry, which it owns, texts and all, and the line it stands in
 *  taker   handed through */
typedef struct { void (*take) (void *taker, CatalogueEntry *takes, int line); void *taker; } CatalogueSink;
void catalogue_parse (const char *data, size_t length, const CatalogueSink *sink, Problems *problems);

/** Frees an entry with its texts; NULL is fine. */
void catalogue_entry_free (CatalogueEntry *entry);
