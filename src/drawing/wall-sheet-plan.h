#pragma once
#include "drawing/free-space.h"
#include "drawing/wall-sheet-parts.h"

/** The aeroplane from above on the wall sheet. The view's scale is that of the drawing, its origin mm on the paper. */

/** Whether there is anything to be drawn. */
bool wall_plan_exists (const WallSheet *sheet);
/** Shapes, parts, signs, and dimensions round them. `mark_on_plan`: the mark's dimension stands here, there being no section. */
void wall_plan_draw   (const SheetPen *pen, const SheetView *view, bool mark_on_plan);
/** The shapes filled, for a free_space: inside a wing nothing else finds room. */
void wall_plan_fill   (cairo_t *cr, const SheetView *view, const WallSheet *sheet);

/** Words and numbers whose places depend on what else is drawn. */
typedef struct {
  GArray *words;        /* of PlanWord */
  GArray *balloons;     /* of Balloon */
} PlanNotes;
typedef struct { char *text; Point at; double across, caps; LettersRise rise; bool turned; } PlanWord;      /* mm; caps: height of capitals */
typedef struct { int number; Point on_part, at; } Balloon;

/** Finds the places where they cover least, within `within`, and takes those. */
PlanNotes plan_notes_of    (const SheetPen *pen, const SheetView *view, const PartList *parts, FreeSpace *space, Box within);
void      plan_notes_draw  (const SheetPen *pen, const PlanNotes *notes);      /* words with a halo, balloons with their leaders */
PlanNotes plan_notes_copy  (const PlanNotes *self);        /* NULLs for NULLs */
void      plan_notes_clear (PlanNotes *self);
