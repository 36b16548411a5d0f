#pragma once
#include <stddef.h>
#include "document/aeroplane.h"

/** The one table of the format's elements: what each is called, where it stands, which attributes it has, and where their values
 *  live in memory. Reader, writer, copying and comparing all go by it; a test holds the schema to it. Private to this room. */

typedef enum {
  ELEMENT_AEROPLANE, ELEMENT_TARGET, ELEMENT_SURFACE, ELEMENT_BODY, ELEMENT_STRUCTURE, ELEMENT_PART, ELEMENT_LEAD, ELEMENT_MARK,
  ELEMENT_BAY, ELEMENT_THRUST, ELEMENT_PLAN,                                         /* in the aeroplane */
  ELEMENT_OUTLINE, ELEMENT_SIDE_OUTLINE, ELEMENT_RIB, ELEMENT_CONTROL, ELEMENT_BREAK, ELEMENT_FORMER, ELEMENT_RAIL, ELEMENT_VIA,
  ELEMENT_IMAGE, ELEMENT_CORNERS, ELEMENT_LEVEL, ELEMENT_LENGTH, ELEMENT_STRAIGHT, ELEMENT_AT, ELEMENT_VIEW,       /* in a plan */
  ELEMENT_ITEM,                                                           /* in a structure */
  ELEMENT_START, ELEMENT_LINE, ELEMENT_CURVE, ELEMENT_ARC,                /* in an outline */
  ELEMENT_COUNT,
  ELEMENT_NONE = ELEMENT_COUNT
} ElementId;

typedef enum {
  VALUE_NUMBER,       /* double */
  VALUE_TEXT,         /* char *, any text */
  VALUE_ID,           /* char *, not empty and without blanks */
  VALUE_DATE,         /* char *, a day of the calendar as ISO 8601 writes it: 2026-11-25 */
  VALUE_WORD,         /* an enum: the place in `words` */
  VALUE_FLAG          /* bool: words[0] is false, words[1] true */
} ValueKind;

typedef enum {
  PRESENCE_OPTIONAL,  /* written only where it differs from the fallback */
  PRESENCE_SHOWN,     /* may be missing, is always written */
  PRESENCE_REQUIRED
} Presence;

typedef struct {
  const char *name;               /* as in the file; NULL ends a list */
  ValueKind kind;
  Presence presence;
  size_t offset;                  /* of the value in the element's record */
  double least, most;             /* both bounds included; 0, 0: as far as any place may be (DOCUMENT_REACH) */
  double fallback;                /* number, flag or word when missing; NAN: not given */
  const char *unit;               /* of a number, for messages; "" none */
  const char *const *words;       /* NULL-terminated */
} Attribute;

typedef struct {
  const char *name;
  unsigned inside;                /* the elements it may stand in, a bit each */
  size_t size;                    /* of its record */
  const Attribute *attributes;
} Element;

/** No length, mass or angle in a document goes beyond this, either way. */
#define DOCUMENT_REACH 1e7
/** The namespace of the format and the version that this program writes. */
#define DOCUMENT_NAMESPACE "urn:trammel:aeroplane"
#define DOCUMENT_VERSION 1

/** The record of ELEMENT_AEROPLANE and ELEMENT_TARGET. */
typedef struct { char *name, *changed; bool tailless; double version; double from, to, aim, all_up, loading, airframe, airframe_sigma,
  airframe_x, airframe_x_sigma; HatchSide hatch; } RootRecord;
/** The record of an outline's elements; fields of the other kinds are zero. node: 0 told from the shape, else NodeKind + 1.
 *  segment  which of the elements it is */
typedef struct { double x, y, x1, y1, x2, y2, cx, cy, rx, ry; int node; ElementId segment; } NodeRecord;

/** The table's entry; id < ELEMENT_COUNT. */
const Element *element_of (ElementId id);
/** The element of that name which may stand in `parent`; ELEMENT_NONE when there is none. */
ElementId element_find (ElementId parent, const char *name);
/** The element of a kind of piece; ELEMENT_NONE for PIECE_FOREIGN. */
ElementId element_of_piece (PieceKind kind);
/** The kind of piece of an element; PIECE_FOREIGN where it is none. */
PieceKind piece_of_element (ElementId id);
/** A word's place in a list; -1 when it is not there. */
int word_find (const char *const *words, const char *word);
extern const char *const element_role_words[];
extern const char *const element_section_words[];
extern const char *const element_control_words[];

/** A list of inner records in a piece: where its array and its count are. */
typedef struct { PieceKind piece; ElementId element; InnerKind inner; size_t array, count; } ListField;
/** An outline in a piece. */
typedef struct { PieceKind piece; ElementId element; InnerKind inner, node; size_t offset; } OutlineField;
/** An element that stands once in a piece, its values in the piece itself, and whether it is there: a bool. */
typedef struct { PieceKind piece; ElementId element; InnerKind inner; size_t given; } SingleField;
/** All end with an entry whose element is ELEMENT_NONE; in the order of writing. */
extern const SingleField element_singles[];
extern const ListField element_lists[];
extern const OutlineField element_outlines[];

/** Where the piece (of the field's kind) holds that outline; the place may hold NULL. */
static inline Outline **
piece_outline (const OutlineField *field, Piece *piece)
{
  return (Outline **) ((char *) piece + field->offset);
}

/** Where the piece (of the list's kind) holds that array of records; NULL in it when there are none. */
static inline void **
piece_list (const ListField *list, Piece *piece)
{
  return (void **) ((char *) piece + list->array);
}

/** Whether the piece (of the field's kind) has that element; to be read or set. */
static inline bool *
piece_single (const SingleField *field, Piece *piece)
{
  return (bool *) ((char *) piece + field->given);
}

/** How many records that array has. */
static inline size_t
piece_list_count (const ListField *list, const Piece *piece)
{
  return *(const size_t *) ((const char *) piece + list->count);
}

/** Puts what a piece keeps into its order; the piece is not yet seen by anybody else. */
void piece_sort_kept (Piece *piece);

/* Records by their table. `record` is a struct of the element's kind. */
void   record_set_defaults (ElementId id, void *record);         /* every attribute's fallback; texts stay */
void   record_dup_texts    (ElementId id, void *record);         /* after a plain copy: texts of its own */
void   record_clear        (ElementId id, void *record);         /* frees its texts */
bool   record_equal        (ElementId id, const void *a, const void *b);       /* attribute by attribute; NAN equals NAN */

/* Where an attribute's value is in a record of its element, lent; the attribute must be of that kind. */

/** A number, in the attribute's unit (mm, g, degrees or none). */
static inline double     *record_number (const Attribute *at, void *record) { return (double *)     ((char *) record + at->offset); }
/** A text, VALUE_TEXT, VALUE_ID or VALUE_DATE: owned by the record, or NULL. */
static inline char      **record_text   (const Attribute *at, void *record) { return (char **)      ((char *) record + at->offset); }
/** A flag. */
static inline bool       *record_flag   (const Attribute *at, void *record) { return (bool *)       ((char *) record + at->offset); }
/** A word's place in the attribute's list. */
static inline int        *record_word   (const Attribute *at, void *record) { return (int *)        ((char *) record + at->offset); }
