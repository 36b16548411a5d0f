#pragma once
#include "figures/arranging.h"

/* Private to the arranging files. */

struct Arranging {
  Aeroplane *aeroplane;
  ArrangeCase wanted;
  GPtrArray *parts, *rooms, *leads;       /* of const Part, of const Piece (a bay or a surface), of const Lead; lent by the aeroplane */
  GPtrArray *vias;                        /* a lead's places, ArrangePlace[] each */
  const char *const *still;               /* while it is asked: lent */
  guint movable;                          /* the first so many parts may be elsewhere */
  GArray *asked, *ranges, *asked_leads;   /* ArrangePart, ArrangeRange, ArrangeLead: what the case points to */
};
