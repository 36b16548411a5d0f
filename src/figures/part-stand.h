#pragma once
#include "document/aeroplane.h"
#include "document/units.h"
#include "figures/body-profile.h"
#include "figures/json-text.h"
#include "figures/text-table.h"

/** Where a part stands, as a rule laid on the body tells it: from a former, and above the bottom. So trays and servo rails are measured
 *  while the sides are open. Millimetres. */
typedef struct {
  const NamedPlace *former;             /* the named one nearest ahead of its front edge, or at it; where none is, the foremost; lent */
  double front_mm, rear_mm;             /* its edges behind (positive) or ahead of (negative) that former's line */
  double front_height_mm, rear_height_mm;     /* its underside above the body's bottom line, at both edges; NAN where the body is not
                                                 drawn from the side, or the part hangs out of it there */
} PartStand;

/** The rule: the named formers and the side views of an aeroplane. Lends from it, which must live on. */
typedef struct PartRule PartRule;
PartRule *part_rule_new  (const Aeroplane *aeroplane);      /* part_rule_free() it */
void      part_rule_free (PartRule *self);                    /* NULL is fine */
G_DEFINE_AUTOPTR_CLEANUP_FUNC (PartRule, part_rule_free)

/** Where a part stands. False where no rule on the body tells it: no former has a name, it is fixed to a surface, it stands wholly beside
 *  the body, or its place is not finite.
 *  method  its box as turned; a former counts from its line as drawn; source: common practice, no source */
bool part_stand_of (const PartRule *self, const Part *part, PartStand *stand);

/** "18 mm behind F3", "4 mm ahead of F1", "at F3". A new string. */
char *part_stand_text (const PartStand *stand, double edge_mm, Units units);
/** Its underside above the bottom: "12 mm", "12 to 14 mm" where it rises from front to rear, "–" where that cannot be had. A new string. */
char *part_stand_height_text (const PartStand *stand, Units units);

/** Adds to an open object former, front_behind_former_mm, rear_behind_former_mm, front_above_bottom_mm, rear_above_bottom_mm; null what
 *  cannot be had. */
void part_stand_write (JsonText *json, const PartRule *rule, const Part *part);
