#pragma once
#include "document/elements.h"
#include "document/problems.h"
#include "document/sax.h"

/** An aeroplane in the making: elements come in as the parser meets them, and pieces grow from them. Knows nothing of the parser.
 *  Private to this room. */
typedef struct Draft Draft;

Draft *draft_new  (Problems *problems);      /* an empty one; problems are lent and must live longer */
void   draft_free (Draft *self);      /* with all that was not handed over */

/** A known element begins. `parent` is the known element it stands in; ELEMENT_NONE for the root. */
void draft_begin (Draft *self, ElementId id, ElementId parent, const SaxElement *element);
/** It ends; elements end in the reverse order in which they began. */
void draft_end   (Draft *self, ElementId id);
/** Foreign text (an element, a comment) that stands in the open element, or outside the root before or behind it. Taken. */
void draft_keep  (Draft *self, char *takes);

/** Text that stands in the open element; false when none belongs there. Lent; may come in several stretches. */
bool draft_text (Draft *self, const char *text, size_t length);

/** Looks at what belongs together (ids, references), and gives the aeroplane; NULL when there are problems. */
Aeroplane *draft_finish (Draft *self);
