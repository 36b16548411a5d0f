#pragma once
#include "document/aeroplane.h"

/** Surfaces and bodies from numbers alone, for whoever has no plan. mm. */
/** SHAPE_AREA stands for what is known by area and arm alone: a usual taper, marked as provisional. */
typedef enum { SHAPE_ELLIPSE, SHAPE_TAPER, SHAPE_CRANK, SHAPE_AREA, SHAPE_COUNT } NumbersShape;
typedef enum { NUMBERS_WING, NUMBERS_TAILPLANE, NUMBERS_FOREPLANE, NUMBERS_FIN, NUMBERS_BODY, NUMBERS_THING_COUNT } NumbersThing;

typedef enum {
  NUMBER_AREA,             /* both halves, mm²; a fin: its one side */
  NUMBER_SPAN,             /* tip to tip; a fin's height */
  NUMBER_ARM,              /* from the wing's quarter mean chord to its own; signed */
  NUMBER_AHEAD, NUMBER_BEHIND,             /* of the widest line: an ellipse's own semi-axes */
  NUMBER_ROOT_CHORD, NUMBER_TIP_CHORD, NUMBER_TIP_BACK,
  NUMBER_CRANK_STATION, NUMBER_CRANK_CHORD, NUMBER_CRANK_BACK,
  NUMBER_LENGTH, NUMBER_WIDTH, NUMBER_HEIGHT,            /* a body's */
  NUMBER_ROOT_X,           /* root's leading edge (a body: its nose) aft of the datum */
  NUMBER_COUNT
} Number;

/** Whether that number is asked for. */
bool numbers_asks (NumbersThing thing, NumbersShape shape, Number number);
/** The first number asked for that is too small to enclose anything: not above zero, or below it where zero will do (a tip's chord, one of
 *  an ellipse's semi-axes); NUMBER_AHEAD when both semi-axes are zero. NUMBER_COUNT when there is none. Values in mm, an area in mm². */
Number numbers_too_small (NumbersThing thing, NumbersShape shape, const double values[NUMBER_COUNT]);
/** What is usual to begin with beside what is already drawn. In mm, an area in mm². */
void numbers_usual (const Aeroplane *aeroplane, NumbersThing thing, double values[NUMBER_COUNT]);
/** The piece; NULL when the numbers make no outline (a chord below zero, a crank beyond the tip). A new one; in mm and mm². */
Piece *numbers_piece (const Aeroplane *aeroplane, NumbersThing thing, NumbersShape shape, const double values[NUMBER_COUNT]);
