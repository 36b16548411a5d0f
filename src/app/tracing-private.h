#pragma once
#include "app/traced.h"
#include "app/tracing.h"
#include "drawing/sheet-trace.h"

/* What the tracing's own files share. */

typedef struct {
  Point px;                  /* the file's */
  bool drawn;                /* the stretch that arrives here was drawn by hand */
  bool via;                  /* it came with the next one and goes with it */
  guint serial;              /* by which a line that arrives late finds it */
  Point *found;              /* the stretch that arrives here, px; NULL: straight */
  size_t found_count;
  guint asked;               /* for which look at it: an earlier one that arrives later says nothing */
} TraceClick;

/* Where a click would go. */
typedef struct {
  Point px, own;             /* the file's; mm in the view's own axes */
  bool drawn;                /* straight there */
  bool ends;                 /* and that ends it */
} TraceAim;

struct Tracing {
  TrammelSheetCanvas *sheet;           /* NULL once freed: a line may still arrive */
  TraceGround *ground;                 /* NULL: nothing to cling to */
  GArray *clicks;                      /* of TraceClick */
  TraceOrder *ordered;                 /* of the clicks, while it is traced; NULL */
  guint serials;
  gulong arrival;                      /* handler of the traced one's "changed" */

  Point keyed;                         /* mm: where the key cursor stood at its last click; NAN */
  bool has_aim;  TraceAim aim;
  bool holds;                          /* H is down */
  bool resumed;                        /* the clicks in hand began with an unfinished outline of the document */
  bool pulled;                         /* this press drew by hand */
  bool following, wanted;              /* a proposal is being looked for; the pointer has moved on since */
  Stretch proposal;                    /* px; count 0: none */
  TraceAim asked, proposed;            /* for where: what is being looked for, and what has come */
  guint asked_from, proposed_from;     /* and from which click, by its serial */

  SheetTrace shown;
  GArray *accepted, *ahead, *dots;     /* of Point, mm: what `shown` lends */
};

/* tracing.c */
TraceClick *tracing_last (Tracing *self);              /* NULL without */
TraceClick *tracing_click_at (Tracing *self, guint i);
TraceClick *tracing_add (Tracing *self, Point px, bool drawn, bool via);      /* behind the others; px of the file; lent, until the next is added */
void tracing_forget       (Tracing *self);             /* every click in hand */
/* tracing-ending.c */
void tracing_end          (Tracing *self, bool open);
bool tracing_return       (Tracing *self);             /* false: it clicks at the key cursor */
void tracing_resume       (Tracing *self, Point px);   /* a first click goes on with what was ended before it was done and still stands so */
bool tracing_is_unfinished (Tracing *self);            /* there is such a thing */
/* tracing-ahead.c: the proposal */
void tracing_propose      (Tracing *self);             /* for the aim, latest wins */
bool tracing_has_proposal (Tracing *self);             /* for where the pointer is now, or about */
void tracing_find         (Tracing *self, guint to);   /* the stretch that arrives at an accepted click, by the clicks on both its sides */
void tracing_drop_proposal (Tracing *self);
double   tracing_click_sigma (const Tracing *self, Point px);      /* pixels of the file that a click is off there, >= 2 */
double   tracing_root (Tracing *self);                       /* mm off the axis: where a click ends it; 0: on the axis */
double   tracing_near (Tracing *self);                       /* mm: so near a root or the first click it is meant */
bool     tracing_has_picture (Tracing *self, Point px);
bool     tracing_lets_go     (const ToolEvent *event);       /* of the printed line */
TraceAim tracing_aim      (Tracing *self, const ToolEvent *event);
/* tracing-show.c */
void tracing_show         (Tracing *self);             /* overlay, plate and hint */
void tracing_hide         (Tracing *self);
