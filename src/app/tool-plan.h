#pragma once
#include "app/plan-work.h"
#include "app/tool.h"
#include "drawing/sheet-plan-marks.h"

/** The Plan tool's state, shared by its own files. Places are px of the file. */
typedef struct {
  Tool tool;
  TrammelPlanWork *work;
  gulong work_changed, plans_changed;
  Placing placing;              /* as painted; stands still while a mark is dragged */
  PlanMark pressed, chosen;
  Point clicks[PLAN_PENDING_MOST];
  double sigmas[PLAN_PENDING_MOST];        /* how far off each was clicked: the sheet may be zoomed from one to the next */
  size_t click_count;           /* of what is being marked */
  Point aim; bool aims;         /* where the next click would be */
  bool loose;                   /* Ctrl was held at the last one */
  Plan *draft;                  /* with the mark being dragged; NULL: none */
  bool drags;                   /* a mark, a line or a view is in the hand */
  Point held;                   /* px of the file: where the mark dragged is from where it was taken hold of */
  double from, stood;           /* mm aft of the datum: where it was taken hold of, and the view being dragged stood */
  guint nudging;                /* until what the arrow keys moved is settled; 0: nothing */
  SheetPlanMarks marks;
} PlanTool;

/* tool-plan.c */
/** Lets go of the mark being dragged. */
void        plan_tool_clear_draft (PlanTool *self);
const Plan *plan_tool_plan (PlanTool *self);              /* with the mark being dragged; NULL none */
void        plan_tool_show (PlanTool *self);              /* what the overlay shows */
/** Where a press there means, px of the file: at a printed corner or end nearby, where such places are wanted. */
Point       plan_tool_aim  (PlanTool *self, const ToolEvent *event);
/** The number of the view in hand; false when there is none. */
bool        plan_tool_view (PlanTool *self, size_t *index);

/* tool-plan-marks.c: marks that are there */
void plan_tool_hold_mark  (PlanTool *self, const ToolEvent *from);      /* takes hold of the one pressed */
void plan_tool_drag_mark  (PlanTool *self, const ToolEvent *event);
void plan_tool_drop_mark  (PlanTool *self);      /* one step, or offered again; nothing unless it was dragged */
void plan_tool_drag_view  (PlanTool *self, double dx);      /* the view in hand, mm aft of where it stood */
bool plan_tool_walk       (PlanTool *self, bool back);      /* chooses the next mark, or none after the last; false when there are none */
bool plan_tool_nudge      (PlanTool *self, guint keyval, GdkModifierType state);      /* arrows move the chosen mark; whether the key was for that */
void plan_tool_end_nudge  (PlanTool *self, bool keep);      /* one step of all nudges since, or none of them */
bool plan_tool_remove     (PlanTool *self);      /* takes out the chosen mark, one step; false without one */
/** Opens the field of what is chosen, or of the figure at `screen` (px; NULL: nowhere). */
bool plan_tool_open_field (PlanTool *self, const Point *screen);
void plan_tool_ask_width  (PlanTool *self);      /* opens the field of an offered rectangle's width */

/* tool-plan-words.c */
const char *plan_tool_sentence (PlanTool *self);          /* what to do now; translated */

/* tool-plan-clicks.c: marks that come */
size_t          plan_tool_wanted  (PlanTool *self);       /* clicks for the next mark; 0: none is being made */
PlanPendingKind plan_tool_pending (PlanTool *self);
bool            plan_tool_catches (PlanTool *self);       /* whether they cling to corners and ends of what is printed */
void            plan_tool_add_click  (PlanTool *self, Point px);
bool            plan_tool_finish_row (PlanTool *self);    /* Return: takes a row that may be of any length; or what is offered */
bool            plan_tool_take_back  (Tool *tool);        /* the last click; false: none in hand */
