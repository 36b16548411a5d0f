#pragma once
#include "document/elements.h"

/* What the writer's own files share. */

/** Appends a piece's element, with the line end behind it, two blanks in. */
void write_piece (GString *to, const Piece *piece);
/** Appends an outline's elements; `element` its own record's. */
void write_outline (GString *to, const Piece *piece, const OutlineField *field, const Outline *outline);
/** Appends a plan's picture. */
void write_image (GString *to, const Plan *plan);
/** Appends a plan's straight lines, each with its places. */
void write_straight (GString *to, const Plan *plan);
/** Begins a tag: '<name' and its attributes by the table, then ' foreign="…"'; `foreign` may be NULL. */
void write_tag (GString *to, int depth, ElementId id, const void *record, const char *foreign);
/** Appends the attributes alone. */
void write_attributes (GString *to, ElementId id, const void *record);
/** Appends an end tag and the line's end. */
void write_end (GString *to, int depth, ElementId id);
/** Ends a tag that has nothing in it but this foreign text (may be NULL). */
void write_tag_end (GString *to, int depth, ElementId id, const char *inside);
/** Appends what is kept before an inner element and tells what else is kept of it; pointers are NULL where nothing is. */
Kept write_kept_before (GString *to, int depth, const Piece *piece, InnerKind inner, size_t index);
/** Appends what is kept before inner elements that are no longer there: all from `count` on. */
void write_kept_behind (GString *to, int depth, const Piece *piece, InnerKind inner, size_t count);
/** Appends a line of foreign text at its depth; nothing for NULL. */
void write_foreign (GString *to, int depth, const char *text);
