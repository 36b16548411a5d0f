#pragma once
#include "app/piece-fields.h"
#include "figures/lead-route.h"

/** The panel's rows of a selected lead, or of a place on its way. */

const Lead *lead_selected (TrammelSession *session);      /* the one selected; NULL without */
/** Whether a place on its way is selected, and which. */
bool      lead_point_selected (TrammelSession *session, LeadPoint *point);
bool      lead_usual          (TrammelSession *session);      /* whether any leg of it runs as usual */
FieldList lead_point_fields   (void);
FieldList lead_leg_fields     (LeadLeg leg);              /* a leg's length, its way, what it needs, what helps */
FieldList lead_slack_fields   (void);                     /* slack, what the hand needs, its own mass */

/** The part that the lead begins at (LEG_FROM) or ends at (LEG_TO). Of a two-into-one lead the beginning is a servo, the end none; of any
 *  other both are whatever has a plug. */
GtkWidget *lead_end_control     (TrammelSession *session, LeadLeg leg);
/** A second part whose lead joins in: what makes a two-into-one lead of it. */
GtkWidget *lead_also_control    (TrammelSession *session);
/** Whether it is unplugged with the wing. */
GtkWidget *lead_unplugs_control (TrammelSession *session);
