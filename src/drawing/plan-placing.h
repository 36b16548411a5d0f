#pragma once
#include "document/piece.h"
#include "plan/mapping.h"
#include "plan/placing.h"

/** From what a document knows of a plan to where its picture lies. Pure functions of the plan piece. */

/** The mapping of a plan: by what is known of it; of a page by its resolution. Without anything known the picture is taken to be a sheet
 *  420 mm wide, and *is_true (may be NULL) is false.
 *  page_is_true  the picture is a page true to size at plan->dpi
 *  misfit        may be NULL; as mapping_solve
 *  returns       as mapping_solve; CORE_OUT_OF_RANGE while the picture's size is not known */
CoreStatus plan_mapping (const Plan *plan, bool page_is_true, Mapping *mapping, MappingMisfit *misfit, bool *is_true);

/** Where the plan lies beneath the sheet with that view's axis on the centre line; without a view (NULL) upright, its middle on the centre
 *  line and its upper edge on the datum. The half that the view shows comes to lie at starboard; a view of both halves lies as it is
 *  drawn, turned over when it is flipped. */
CoreStatus plan_placing (const Plan *plan, const Mapping *mapping, const PlanView *view, Placing *placing);

/** The plan's view of that id, or NULL; id may be NULL. */
const PlanView *plan_view_by_id (const Plan *plan, const char *id);
