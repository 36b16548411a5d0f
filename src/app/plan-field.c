#include "app/plan-field.h"
#include "trammel-config.h"
#include <glib/gi18n-lib.h>
#include "app/length-limit.h"
#include "app/plan-edit.h"
#include "app/plan-making.h"
#include "app/plan-work.h"
#include "app/sheet-field.h"
#include "drawing/sheet-plan-marks.h"

/* What the field works on while it is open. */
typedef struct { TrammelSheetCanvas *sheet; PlanField field; } OpenPlanField;

static const char *
field_name (PlanFieldKind kind)
{
  switch (kind) {
    case PLAN_FIELD_WIDTH:  return _("Width of the rectangle");
    case PLAN_FIELD_HEIGHT: return _("Height of the rectangle");
    case PLAN_FIELD_STANDS: return _("Forward end of the axis, aft of the datum");
    default:                return _("Known length");
  }
}

static double
field_value (const Plan *plan, const PlanField *field)
{
  switch (field->kind) {
    case PLAN_FIELD_LENGTH: return field->index < plan->length_count ? plan->lengths[field->index].mm : NAN;
    case PLAN_FIELD_WIDTH:  return plan->corners_width;
    case PLAN_FIELD_HEIGHT: return plan->corners_height;
    case PLAN_FIELD_STANDS: return field->index < plan->view_count ? plan->views[field->index].x : NAN;
    default:                return NAN;
  }
}

static Plan *
field_made (const Plan *plan, const PlanField *field, double mm)
{
  Plan *made;

  if (field->kind == PLAN_FIELD_NEW_LENGTH)
    return plan_with_length (plan, (PlanLength) { field->a, field->b, mm, field->sigmas[0], field->sigmas[1] });
  made = (Plan *) piece_dup (&plan->piece);
  if (field->kind == PLAN_FIELD_LENGTH && field->index < made->length_count)
    made->lengths[field->index].mm = mm;
  else if (field->kind == PLAN_FIELD_WIDTH)
    made->corners_width = mm;
  else if (field->kind == PLAN_FIELD_HEIGHT)
    made->corners_height = mm;
  else if (field->kind == PLAN_FIELD_STANDS && field->index < made->view_count) {
    made->views[field->index].x = mm;
    made->views[field->index].for_now = false;
  }
  return made;
}

/* A usual place that is typed is no guess any more, though it stays the same. */
static bool
field_is_for_now (const Plan *plan, const PlanField *field)
{
  return field->kind == PLAN_FIELD_STANDS && field->index < plan->view_count && plan->views[field->index].for_now;
}

static char *
field_refusal (const PlanField *field, Units units, double mm)
{
  if (field->kind == PLAN_FIELD_STANDS)
    return length_limit_place (units, mm, -LENGTH_LIMIT_MM);
  if (mm > 0)
    return length_limit_place (units, mm, 0);
  return g_strdup (_("A known length must be above zero."));
}

static const char *
field_label (const PlanField *field)
{
  switch (field->kind) {
    case PLAN_FIELD_WIDTH:
    case PLAN_FIELD_HEIGHT: return _("Set Rectangle");
    case PLAN_FIELD_STANDS: return _("Place View");
    default:                return _("Set Known Length");
  }
}

static gboolean
field_ask_height (gpointer data)
{
  TrammelSheetCanvas *sheet = data;
  const Plan *plan = plan_edit_plan (sheet);
  SheetPlanMarks marks = { .plan = plan };
  size_t ends[2];
  Point a, b;

  if (plan == NULL || !plan_marks_side (plan, 1, ends)
      || !trammel_plan_store_placing (trammel_sheet_canvas_plan_store (sheet), &marks.placing))
    return G_SOURCE_REMOVE;
  if (plan_marks_screen (&marks, trammel_sheet_canvas_view (sheet), (PlanMark) { PLAN_MARK_CORNER, 0, ends[0] }, &a)
      && plan_marks_screen (&marks, trammel_sheet_canvas_view (sheet), (PlanMark) { PLAN_MARK_CORNER, 0, ends[1] % 4 }, &b))
    plan_field_open (sheet, (PlanField) { .kind = PLAN_FIELD_HEIGHT }, point_mix (a, b, 0.5));
  return G_SOURCE_REMOVE;
}

static gboolean
field_entered (TrammelSheetField *entry, double mm, OpenPlanField *open)
{
  TrammelSheetCanvas *sheet = open->sheet;
  const Plan *plan = plan_edit_plan (sheet);
  const bool offered = plan_making_is_offered (sheet);
  g_autofree char *refusal = field_refusal (&open->field, trammel_session_units (trammel_sheet_canvas_session (sheet)), mm);

  if (plan == NULL)
    return TRUE;
  trammel_sheet_field_refuse (entry, refusal);
  if (refusal != NULL)
    return FALSE;
  if (offered && open->field.kind == PLAN_FIELD_WIDTH)
    g_idle_add_full (G_PRIORITY_DEFAULT_IDLE, field_ask_height, g_object_ref (sheet), g_object_unref);
  if (field_value (plan, &open->field) == mm && !field_is_for_now (plan, &open->field))
    return TRUE;
  if (offered)
    return plan_edit_propose (sheet, field_made (plan, &open->field, mm));
  return plan_edit_do (sheet, field_made (plan, &open->field, mm), field_label (&open->field));
}

static void
open_free (gpointer data, GClosure *closure)
{
  g_free (data);
}

void
plan_field_open (TrammelSheetCanvas *sheet, PlanField field, Point screen)
{
  TrammelSheetField *entry = trammel_sheet_canvas_field (sheet);
  const GdkRectangle place = { (int) screen.x, (int) screen.y, 1, 1 };
  OpenPlanField *open = g_new0 (OpenPlanField, 1);

  *open = (OpenPlanField) { .sheet = sheet, .field = field };
  trammel_sheet_field_serve (entry, G_CALLBACK (field_entered), open, open_free);
  trammel_sheet_field_open (entry, GTK_WIDGET (sheet), &place, field_name (field.kind));
  trammel_sheet_field_set (entry, trammel_session_units (trammel_sheet_canvas_session (sheet)),
                           field_value (plan_edit_plan (sheet), &field));
}
