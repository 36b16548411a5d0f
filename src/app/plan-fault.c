#include "trammel-config.h"
#include "app/plan-fault.h"
#include <glib/gi18n-lib.h>

char *
plan_title (const Plan *plan)
{
  if (plan->name != NULL && *plan->name != '\0')
    return g_strdup (plan->name);
  if (plan->file != NULL)
    return g_path_get_basename (plan->file);
  return g_strdup (_("Plan"));
}

char *
plan_fault_stopped (const Plan *plan)
{
  g_autofree char *title = plan_title (plan);

  /* Translators: %s is a plan's name. */
  return g_strdup_printf (_("The plan %s was not read."), title);
}

static char *
fault_in_reading (const char *title, const PlanPicture *picture)
{
  if (picture->decode == DECODE_OK)
    return picture->core == CORE_OK ? NULL : g_strdup_printf (_("The plan %s needs more memory than there is: save it smaller."), title);
  /* Translators: a plan's name, and a sentence that says why it cannot be shown. */
  return g_strdup_printf (_("%s: %s."), title, _(decode_status_sentence (picture->decode)));
}

char *
plan_fault (const Plan *plan, const PlanPicture *picture)
{
  g_autofree char *title = plan_title (plan);

  switch (picture->file) {
    case PLAN_FILE_SOUND:
      return fault_in_reading (title, picture);
    case PLAN_FILE_CHANGED:
      if (picture->ink == NULL)
        return fault_in_reading (title, picture);
      if (plan->width == picture->facts.width_px && plan->height == picture->facts.height_px)
        return g_strdup_printf (_("The plan %s has changed since it was put here, but is as large as it was. Keep its marks only where they "
                                  "still lie on the same lines."), title);
      return g_strdup_printf (_("The plan %s has changed since it was put here."), title);
    case PLAN_FILE_MISSING:
    case PLAN_FILE_NONE:
    case PLAN_FILE_UNSAVED:
      /* Translators: %s is a plan's name. */
      return g_strdup_printf (_("The plan %s is missing."), title);
    case PLAN_FILE_OUTSIDE:
      return g_strdup_printf (_("The plan %s lies outside the document’s folder."), title);
    default:
      return g_strdup_printf (_("The plan %s cannot be read."), title);
  }
}
