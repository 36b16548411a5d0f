#pragma once
#include "drawing/flat-piece.h"

/** What goes into a file for cutting, whatever its format: pieces at full size, side by side on one sheet, with a layer for each purpose. */

typedef struct {
  GPtrArray *pieces;             /* of FlatPiece, as they lie on the sheet: mm from its upper left corner, x to the right, y down */
  double width, height;          /* of the sheet, mm */
  char *title, *description;     /* what the file says of itself */
} Cutting;

/** How a purpose shows in a file. Each has a colour of its own, by which the programs that drive a cutter tell what is to be cut and what
 *  marked: black is cut, red is cut out of the inside. Common practice, no source. */
typedef struct {
  const char *id;                /* "cut"; never translated. In capitals the layer's name in a DXF */
  const char *title;             /* what is on it and what becomes of it: "Edges: cut, last"; to be translated */
  const char *rgb;               /* "#000000" */
  int index;                     /* the same colour by its number in a DXF */
} CuttingLayer;

/** Of words, whatever they belong to but a piece's name: whoever wants none leaves out this layer. */
enum { CUTTING_WORDS = FLAT_PURPOSE_COUNT, CUTTING_LAYER_COUNT };
/** The layer that a word is on: FLAT_NAME for the name of a piece, which each has, else CUTTING_WORDS. */
int cutting_word_layer (const FlatWord *word);
/** The layer of a purpose, or of CUTTING_WORDS. */
const CuttingLayer *cutting_layer (int layer);
/** Layer number i of a file: what is drawn upon a piece comes first, the edge that frees it last. */
int cutting_layer_order (int i);

/** Lays out copies of the pieces, their edges moved for a kerf of `kerf` mm >= 0. The title is copied; it may be NULL. */
Cutting *cutting_new  (const GPtrArray *pieces, double kerf, const char *title);
void     cutting_free (Cutting *self);        /* NULL is fine */
G_DEFINE_AUTOPTR_CLEANUP_FUNC (Cutting, cutting_free)
