#pragma once
#include "document/elements.h"
#include "document/problems.h"
#include "document/sax.h"

/** Fills a record from an element's attributes by the table; what cannot be is told in sentences with the element's line, and the
 *  record keeps its fallback there. Private to this room.
 *  record   with its defaults set; texts in it belong to it afterwards
 *  foreign  set to the attributes that the table does not have, NULL when there are none */
void values_read (ElementId id, const SaxElement *element, void *record, Problems *problems, char **foreign);
/** The same by a table that is none of the document's: of at most 64 attributes, ended by one without a name. */
void values_read_by (const Attribute *rules, const SaxElement *element, void *record, Problems *problems, char **foreign);

/** How an element is spoken of: '<part id="battery">'. `name` and `id` as in the file; id may be NULL. A new string. */
char *element_subject (const char *name, const char *id);
