#pragma once
#include "document/aeroplane.h"

/** What a hand does to an aeroplane, each a plain function from the old value to the next: a new reference, the same aeroplane where
 *  nothing differs by value. NULL when the id is not there, a number is not finite or geometry refuses (then nothing changed). mm. */

Aeroplane *change_surface_outline (const Aeroplane *self, const char *id, Outline *takes);    /* half-outline, mm; also of a fin */
Aeroplane *change_body_outline    (const Aeroplane *self, const char *id, Outline *takes);    /* top view, mm */
Aeroplane *change_body_side       (const Aeroplane *self, const char *id, Outline *takes);    /* side view, mm */
/** Moves the whole surface by dx aft and dz up, mm: its outline, its height and its controls' hinge lines, and the parts that are fixed to
 *  it. Stations stay (ribs, controls, breaks). */
Aeroplane *change_surface_moved   (const Aeroplane *self, const char *id, double dx, double dz);
/** Stretches a surface's half-outline to this span > 0, mm (tip to tip; a fin: height), stations with it (ribs, controls, breaks). */
Aeroplane *change_surface_span    (const Aeroplane *self, const char *id, double span);
/** Makes a surface larger or smaller alike in length and span: its outline by scale > 0 about the place about_x aft of the datum, mm, and
 *  the centre line (a fin: its foot), stations and hinge lines with it. Its area goes by the square of that. Parts stay. */
Aeroplane *change_surface_scaled  (const Aeroplane *self, const char *id, double scale, double about_x);
/** Puts a part's centre there, mm; its rail does not hold it. */
Aeroplane *change_part_place      (const Aeroplane *self, const char *id, double x, double y, double z);
/** Gives a part a rail from and to these x, mm aft of the datum; the ends are put in order. */
Aeroplane *change_part_rail       (const Aeroplane *self, const char *id, double from, double to);
/** Whether a part is aboard and counts. */
Aeroplane *change_part_aboard     (const Aeroplane *self, const char *id, bool aboard);
/** Turns a part by so many degrees about its centre, its forward end to port; the sum is kept above -180 and up to 180. */
Aeroplane *change_part_turned     (const Aeroplane *self, const char *id, double degrees);
/** `takes` with all parts that are fixed to that surface or body, which has been moved by dx aft and dz up, mm, moved as well, rails too;
 *  and places of its structure, of that structure's items, and in it on the way of leads with an end fixed to it. NULL stays NULL. */
Aeroplane *change_parts_moved_with (Aeroplane *takes, const char *id, double dx, double dz);
/** Puts the mark of that number at x, mm aft of the datum; adds the first when there is none. NULL when there is no such mark. */
Aeroplane *change_mark_station    (const Aeroplane *self, size_t mark, double station);

/* Leads. */

/** Puts `takes` in the place of the lead of that id. NULL also for a number that is infinite, and for half a joint. */
Aeroplane *change_lead             (const Aeroplane *self, const char *id, Lead *takes);
/** Puts a place on its way before the one that is number `at` in the file, or behind the last. */
Aeroplane *change_lead_via_added   (const Aeroplane *self, const char *id, size_t at, LeadVia via);
/** Takes the place of that number out. */
Aeroplane *change_lead_via_removed (const Aeroplane *self, const char *id, size_t at);

/* Ribs of a surface and formers of a body, named and counted on. */

/** The name that the next rib (station) or former has: that of the greatest number so far, one more; R1 or F1 where there is none. A new
 *  string. The piece is a surface or a body. */
char      *named_place_next           (const Piece *piece);
/** Adds a rib at station `place` to a surface, or a former at x to a body, mm, with that name. */
Aeroplane *change_named_place_added   (const Aeroplane *self, const char *id, double place);
/** Moves the rib or former of that index, from 0, there, mm. Names need not differ; its own is told as a check: NULL when it has another,
 *  or there is none. */
Aeroplane *change_named_place_moved   (const Aeroplane *self, const char *id, size_t index, const char *name, double place);
/** Takes the one of that index out; its name likewise. */
Aeroplane *change_named_place_removed (const Aeroplane *self, const char *id, size_t index, const char *name);

/* Bays, between two formers of a body. */

/** What a bay may be called: nothing that is in use, no blanks; blanks within a name become "-". A new string; NULL when nothing is left of
 *  it or something else has it.
 *  own  the bay's present name, which it may keep; NULL for a new one */
char      *bay_name_from      (const Aeroplane *self, const char *typed, const char *own);
/** Adds a bay between the formers of these names, called "bay", "bay-2", … NULL also where they are the same, or one is missing.
 *  id  set to its name, a new string; may be NULL */
Aeroplane *change_bay_added   (const Aeroplane *self, const char *from_former, const char *to_former, char **id);
/** Gives a bay a name (bay_name_from); parts that may be in it follow. */
Aeroplane *change_bay_renamed (const Aeroplane *self, const char *id, const char *name);
/** Puts a bay between these formers; refused as change_bay_added does. */
Aeroplane *change_bay_formers (const Aeroplane *self, const char *id, const char *from_former, const char *to_former);
/** Takes a bay out, and out of what parts say of where they may be. */
Aeroplane *change_bay_removed (const Aeroplane *self, const char *id);
/** Whether a part may be in that bay or surface. */
bool       part_may_be_in     (const Part *part, const char *room);
/** Lets a part be in a bay or surface, or no longer; in none left it has none. */
Aeroplane *change_part_room   (const Aeroplane *self, const char *id, const char *room, bool may);

/* Controls of a surface. */

/** Adds a control to the surface of that id, with an id of its own kind's word (its own is not looked at). NULL also where hinge_check
 *  finds a fault.
 *  id  set to the new control's, a new string; may be NULL */
Aeroplane *change_control_added   (const Aeroplane *self, const char *surface, const Control *control, char **id);
/** Puts its kind, stations, hinge and throws in the place of those of the control of that id, which it keeps. NULL also where hinge_check
 *  finds a fault, unless the hinge line stays where it was. */
Aeroplane *change_control         (const Aeroplane *self, const char *surface, const char *control, const Control *next);
Aeroplane *change_control_removed (const Aeroplane *self, const char *surface, const char *control);      /* NULL where it is not there */

/* What a structure is made of. */

/** Puts this in the place of the structure's item of that index; its texts are copied. */
Aeroplane *change_structure_item         (const Aeroplane *self, const char *id, size_t index, const StructureItem *next);
/** Adds a copy of an item to the structure of that surface or body, a new structure where it has none; a mass of 0 is forgotten. */
Aeroplane *change_structure_item_added   (const Aeroplane *self, const char *of, const StructureItem *item);
/** Takes it out; the last one leaves a structure whose mass nobody has said: 0. */
Aeroplane *change_structure_item_removed (const Aeroplane *self, const char *id, size_t index);

/* The plan beneath the sketch. */

/** Adds a plan, taken, behind the last piece. It and its views get ids where they have none, or one that somebody else has. */
Aeroplane *change_plan_added      (const Aeroplane *self, Plan *takes);
/** Puts `takes` in the place of the plan of that id, which it gets: other marks, views, ways to be shown. New views get ids; what was
 *  traced in a view that is gone is traced in none. */
Aeroplane *change_plan            (const Aeroplane *self, const char *id, Plan *takes);
/** Takes the plan out. What was traced in it stays, and is traced in none. */
Aeroplane *change_plan_removed    (const Aeroplane *self, const char *id);
/** A half-outline traced in the view of that id (NULL: in none), mm; else as change_surface_outline and its fellows.
 *  passed  the click that it passes by far, in the outline's own places; NULL: none. An outline that is put or edited otherwise than by
 *          these forgets it; where it is moved or stretched as a whole, the click goes along */
Aeroplane *change_surface_traced   (const Aeroplane *self, const char *id, Outline *takes, const char *view, const PassedClick *passed);
/** The same of a body from above. */
Aeroplane *change_body_traced      (const Aeroplane *self, const char *id, Outline *takes, const char *view, const PassedClick *passed);
/** The same of a body from the side. */
Aeroplane *change_body_side_traced (const Aeroplane *self, const char *id, Outline *takes, const char *view, const PassedClick *passed);
/** The outlines of that surface or body were looked at and are right: they pass no click any more. */
Aeroplane *change_outline_accepted (const Aeroplane *self, const char *id);

/** How all that was traced in a view moves when its plan is made true anew: where `move` says a place of the outline's own axes goes,
 *  mm to mm. Nothing that `move` says may depend on the call before. */
typedef struct {
  const char *view;                                     /* its id */
  Point (*move) (Point mm, const void *data);           /* not finite where it cannot tell */
  const void *data;
} TracedMove;

/** Corrects a plan and carries what was traced in its views along, in one step: as change_plan, and each outline traced in a view of
 *  `moves` follows, its nodes and handles moved. An arc stays one where the move leaves its axes parallel and its ellipse an ellipse
 *  (within a millionth of it), else it becomes smooth curves within 2e-5 of its larger semi-axis. With a surface's outline go its
 *  controls' hinges, its ribs and breaks; with a body's, its formers. NULL also when a place cannot be moved, or order is lost. */
Aeroplane *change_plan_carrying   (const Aeroplane *self, const char *id, Plan *takes, const TracedMove moves[], size_t count);

/** What follows when a hand has moved surfaces or bodies as a whole: `takes` is `before` with them moved, NULL stays NULL. A view of the
 *  plan that stood only where such a thing usually does, and in which one of them was traced, goes along, so that the outline stays on its
 *  print: nobody guesses its place any more (PlanView.for_now). What else was traced in it goes along too. Views that were put in their
 *  place stay there.
 *  typed   the id of a piece whose place was told, though it may be the one it had; NULL none */
Aeroplane *change_views_following (const Aeroplane *before, Aeroplane *takes, const char *typed);
