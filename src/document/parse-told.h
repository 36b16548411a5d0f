#pragma once
#include <libxml/parser.h>
#include "document/problems.h"

/** What a parser of ours tells about where it is. Private to this room. */

/** The line on which the tag begins whose end the parser has reached. */
int  parse_line_of_tag (const xmlParserCtxt *context);
/** Tells in a sentence what is not well-formed. */
void parse_tell_broken (const xmlParserCtxt *context, const xmlError *error, Problems *problems);
