#pragma once
#include <adwaita.h>
#include "app/sheet-paper.h"
#include "app/tool.h"

/* What the canvas's own files share. */
struct _TrammelSheetCanvas {
  GtkWidget parent;
  TrammelSession *session;
  TrammelPlanStore *plans;
  SheetPlan plan_shown;         /* what the scene lends */
  SheetPrint print_shown;
  SheetPlanCopy plan_copy;      /* of the plan as it was painted last */
  SheetPlanCopy enlarged_copy;  /* and of what is enlarged of it: what lies over the sheet is drawn twice a frame */
  SheetPaper paper;             /* all that stays while a hand only points */
  TrammelPointerPlate *plate;
  TrammelSheetField *field;

  SheetView view;
  graphene_point_t corner;      /* where its upper left corner stands in the window, px */
  bool fits;                    /* the whole sheet was fitted and nobody has moved it since: follow the window's size */
  double true_scale;            /* of the monitor; 0: not yet asked for */
  gint64 true_scale_asked;      /* when */
  SheetView glide_from, glide_to;
  Box extent;                   /* of the sheet after the last step */
  bool previewed;               /* what is settled next was seen already */
  AdwAnimation *glide;          /* from the one to the other; NULL */
  Look look;
  SheetOverlay overlay;

  Tool *tool;
  bool hand;                    /* Space is held: a drag moves the sheet */
  bool bare;                    /* V is held: of a plan nothing but its print is shown */
  Part *part_pattern;           /* what the Part tool puts; NULL: what is still missing */
  Part *dropped;                /* what is dragged over it, as it would stand; NULL */
  char *hint;                   /* NULL: the tool's */
  Pull *pull;
  OutlineSpot spot;

  ToolEvent pointer;            /* the last one seen */
  bool pointer_inside;
  Point in_window;              /* where the pointer was seen last, px of the window */
  bool pressed, grabbed, dead;  /* a button is down; it has moved; Esc has ended it */
  bool panning;                 /* this drag moves the sheet */
  ToolEvent from;               /* where it was pressed */
  guint frame;                  /* tick that hands on the pointer; 0: none asked for */
  double pan_x, pan_y;          /* how far a middle drag or two fingers had come */
  double pinch;                 /* scale of a pinch so far */

  const InkLevels *seen_ink;    /* the plan's when it lay so; nothing is read of it */
  Placing seen_placing;

  struct Grip *nudge;           /* held by the arrow keys while they are down; NULL */
  Point nudged;                 /* how far */
  GtkWidget *menu;              /* popover; made when first wanted */
};

/* sheet-cursor.c: the key cursor of tools that draw */
void      sheet_cursor_move  (TrammelSheetCanvas *self, Point steps);   /* it begins where the pointer was, and stays in view */
void      sheet_cursor_hover (TrammelSheetCanvas *self);
ToolEvent sheet_cursor_event (TrammelSheetCanvas *self);      /* as if the pointer stood where the key cursor does */
void      sheet_cursor_follow_print (TrammelSheetCanvas *self);         /* when the plan may lie elsewhere */

/* sheet-sight.c */
/** All of the plan's picture, mm; false where there is none. */
bool sheet_sight_picture    (TrammelSheetCanvas *self, Box *box);
/** After a strip above has taken that many pixels from the sheet: what is worked on, where it was in sight, comes from under it.
 *  0 and less: nothing is done. */
void sheet_sight_keep_clear (TrammelSheetCanvas *self, double covered);

void sheet_canvas_add_pointer  (TrammelSheetCanvas *self);      /* sheet-pointer.c */
void sheet_canvas_add_drop     (TrammelSheetCanvas *self);      /* sheet-drop.c */
void sheet_canvas_add_keys     (TrammelSheetCanvas *self);      /* sheet-keys.c */
void sheet_canvas_add_menu     (TrammelSheetCanvas *self);      /* sheet-menu.c */
void sheet_canvas_drop_pointer (TrammelSheetCanvas *self);      /* forgets a press under way, after Esc */
void sheet_canvas_ask_frame    (TrammelSheetCanvas *self);      /* hands on the pointer with the next frame */
void sheet_canvas_stop_nudging (TrammelSheetCanvas *self);      /* settles what the arrow keys moved */
void sheet_canvas_flush        (TrammelSheetCanvas *self);      /* hands on the pointer now */
void sheet_canvas_keep_in_view (TrammelSheetCanvas *self);      /* after a change: sheet-zoom.c */
/** What the sheet looks like now. */
Look sheet_canvas_look         (TrammelSheetCanvas *self);
/** Whether the tool in hand is one that works on a plan, where the sheet must stand still under the hand. */
bool sheet_canvas_draws_over_plan (TrammelSheetCanvas *self);
/** Whether a plan is worked on, so that its print is compared with what is drawn. */
bool sheet_canvas_shows_print  (TrammelSheetCanvas *self);
/** It has got that size, px, and perhaps another place in its window. */
void sheet_canvas_resized      (TrammelSheetCanvas *self, int width, int height);
void sheet_canvas_plan_changed (TrammelSheetCanvas *self);      /* its picture came, or lies elsewhere */
void sheet_canvas_emit_view    (TrammelSheetCanvas *self);
void sheet_canvas_emit_pointer (TrammelSheetCanvas *self);      /* says where the pointer is */
void sheet_canvas_menu_by_key  (TrammelSheetCanvas *self);      /* for what is selected, at its place */
