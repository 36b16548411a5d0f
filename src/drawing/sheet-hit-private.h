#pragma once
#include "drawing/hit.h"
#include "drawing/sheet-places.h"

/** What finding the first thing under a pointer and finding what lies beneath it share. */

/* One question: what is at this px. `mm` is the place with its port half folded over; how near in px is `radius`. */
typedef struct {
  const SheetScene *scene;
  const Aeroplane *aeroplane;
  const SheetView *view;
  Point px;
  Point mm;
  bool port;
  double radius;
} HitQuery;
/** At (x, y), pixels of the window; `radius` pixels. The scene is lent. */
HitQuery hit_query_of (const SheetScene *scene, double x, double y, double radius);

/* Each sets *hit, if it finds one. */
bool hit_find_mark    (const HitQuery *q, Hit *hit);
bool hit_find_control (const HitQuery *q, Hit *hit);      /* a hinge line within half the radius; the uppermost first */
bool hit_find_point   (const HitQuery *q, Hit *hit);      /* the balance disc, else the neutral point's diamond */
bool hit_find_fin     (const HitQuery *q, Hit *hit);      /* within 4 pixels of its box */

bool hit_find_lead_point    (const HitQuery *q, Hit *hit);      /* of the one selected lead: a place on its way, or its joint */
bool hit_find_selected_lead (const HitQuery *q, Hit *hit);
bool hit_find_lead          (const HitQuery *q, Hit *hit);      /* one that is not selected */

bool hit_find_any_lead      (const HitQuery *q, Hit *hit);      /* any, what is selected first, within half the radius */

/** A part's box as it is drawn, px. */
Box  hit_part_px (const HitQuery *q, const Part *part);
/** Whether a horizontal surface that lies on the body (or does not) holds the place. */
bool hit_surface_holds (const HitQuery *q, const Surface *surface, bool covering);
bool hit_body_holds    (const HitQuery *q, const Body *body);      /* whether its outline from above holds the place; false without one */
