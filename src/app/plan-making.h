#pragma once
#include "app/sheet-canvas.h"

/** What a finished row of clicks makes of the plan in hand, each in one step. Places are px of the file. */

/** The rectangle whose corners were clicked, offered, its sides as long as they measure now. */
void plan_making_rectangle  (TrammelSheetCanvas *sheet, const Point corners[4]);
bool plan_making_is_offered (TrammelSheetCanvas *sheet);      /* whether such a rectangle is shown that nobody has accepted yet */
/** It is right: it stays, and with it the lines printed along its sides, which show how the lens bends. */
void plan_making_accept     (TrammelSheetCanvas *sheet);
/** A line level: the one printed near those two places, unless `loose`. */
void plan_making_level      (TrammelSheetCanvas *sheet, Point a, Point b, bool loose);
/** A line known to be straight, through three places or more. */
void plan_making_straight   (TrammelSheetCanvas *sheet, const Point places[], size_t count);
/** A view, its axis by two places, the forward end first: as plan_axis_settle. It comes in hand, and stands
 *  for now where first_place says. */
void plan_making_view       (TrammelSheetCanvas *sheet, Point fore, Point aft, bool loose);
/** None comes: the view that was in hand before comes back. */
void plan_making_no_view    (TrammelSheetCanvas *sheet);
/** The plan has changed: where that undid the view that was added last, and it was in hand, its axis is asked for again; where it did that
 *  again, it is in hand again. What of the picture was seen stays there.
 *  seen  how the picture lay before */
void plan_making_follow     (TrammelSheetCanvas *sheet, const Placing *seen);
/** Takes the side view in hand, so that the place of the one in hand can be clicked in it; false without a side view, or in it. */
bool plan_making_begin_place (TrammelSheetCanvas *sheet);
/** The surface that was traced in the view of that id, whose root's leading edge then is what is placed; NULL for none. Lent. */
const Surface *plan_making_traced (TrammelSheetCanvas *sheet, const char *view);
/** That place: the root's leading edge traced in it, else its axis's forward end, stands as far aft as the place clicked, or it stays where it
 *  is (NULL). It comes back in hand. */
void plan_making_place       (TrammelSheetCanvas *sheet, const Point *px);
