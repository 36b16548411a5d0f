#pragma once
#include "app/sheet-canvas.h"

/** Where and how the pointer, or the key cursor, acts. */
typedef struct {
  double x, y;           /* px on the canvas */
  Point place;           /* the same, mm */
  bool shift, loose;     /* straight along or across; snaps to nothing */
  bool keyed;            /* at the key cursor without Ctrl: `loose`, since it stands where it was put, but a printed line is clung to */
  bool finger;           /* things are caught from further away */
  GtkWidget *strip;      /* the side view, where places are x aft and z up; NULL: the sheet */
} ToolEvent;

/** A drawing tool: its words and what it does. Functions that are NULL do nothing. A press is followed by a click, or by grab, pull…, drop. */
typedef struct {
  const char *word;      /* for actions: "select" */
  const char *name;      /* marked for translation */
  const char *letter;    /* its key, marked for translation */
  const char *hint;      /* one sentence, marked for translation */
  const char *help;      /* the page of the help that tells of it, "parts"; NULL: its first */
  const char *cursor;    /* a CSS cursor's name */
  int group;             /* tools of one group stand together */
  bool draws;            /* arrows move a key cursor, Return clicks there */
  bool in_side_view;     /* acts there too: press, click, grab, pull, drop, hover and leave, with the event's `strip` */
  size_t size;           /* of its state, which begins with a Tool */
  bool (*is_useful) (const Aeroplane *aeroplane);        /* whether there is anything to act on; NULL: always */
  void (*begin)   (Tool *self);                          /* in hand: the canvas holds it already */
  void (*press)   (Tool *self, const ToolEvent *event);
  void (*click)   (Tool *self, const ToolEvent *event);
  void (*grab)    (Tool *self, const ToolEvent *from);   /* the hand begins to move; `from` is where it pressed */
  void (*pull)    (Tool *self, const ToolEvent *event);
  void (*drop)    (Tool *self, const ToolEvent *event);
  void (*hover)   (Tool *self, const ToolEvent *event);
  void (*leave)   (Tool *self);                          /* the pointer has left the sheet */
  bool (*key)     (Tool *self, guint keyval, GdkModifierType state);
  void (*key_up)  (Tool *self, guint keyval);            /* any key was let go */
  bool (*take_back) (Tool *self);                        /* the last click of a step that is not finished; false: none in hand */
  bool (*cancel)  (Tool *self);                          /* Esc; false: nothing was going on */
  void (*changed) (Tool *self);                          /* the aeroplane is another */
  void (*finish)  (Tool *self);                          /* put away; frees what the state holds */
} ToolKind;

struct Tool {
  const ToolKind *kind;
  TrammelSheetCanvas *sheet;
};

/** Makes the tool of that word; select's when unknown. */
Tool *tool_new  (const char *word, TrammelSheetCanvas *sheet);
void  tool_free (Tool *self);      /* NULL is fine */
/** All tools, in the order of their column; the last is NULL. */
const ToolKind *const *tool_kinds (void);
const ToolKind *tool_kind_find   (const char *word);      /* NULL when unknown */
bool            tool_kind_is_useful (const ToolKind *kind, const Aeroplane *aeroplane);

/** What lies under the event, caught within 12 px, 22 with a finger. */
Hit tool_hit (const Tool *self, const ToolEvent *event);
/** What lies there beneath `above`, and so on round. */
Hit tool_hit_beneath (const Tool *self, const ToolEvent *event, const Hit *above);

extern const ToolKind tool_select, tool_move_sheet, tool_outline, tool_hinge, tool_part, tool_rail, tool_lead, tool_former, tool_mark, tool_dimension,
                      tool_plan;
