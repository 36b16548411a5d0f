#pragma once
#include "document/catalogue.h"
#include "document/problems.h"

/** Reads the entries of one file as they come. Private to this room.
 *  take    gets each sound entry, which it owns, texts and all, and the line it stands in
 *  taker   handed through */
typedef struct { void (*take) (void *taker, CatalogueEntry *takes, int line); void *taker; } CatalogueSink;
/** What is wrong with the file is added to problems. */
void catalogue_parse (const char *data, size_t length, const CatalogueSink *sink, Problems *problems);

/** Gives a part of its what its class goes by: cells and capacity, power, current, pitch. What a meter showed is forgotten. */
void catalogue_entry_give (const CatalogueEntry *entry, Part *part);

/** Frees an entry with its texts; NULL is fine. */
void catalogue_entry_free (CatalogueEntry *entry);
