#include "app/dimension-field.h"
#include "trammel-config.h"
#include <glib/gi18n-lib.h>
#include "app/length-limit.h"
#include "app/outline-owner.h"
#include "app/sheet-field.h"
#include "document/changes.h"

static const struct { const char *name, *step; } words[] = {
  [DIMENSION_SPAN]         = { N_("Span"),                N_("Change Span") },
  [DIMENSION_MARK]         = { N_("Station of the mark"), N_("Move Balance Mark") },
  [DIMENSION_PART_X]       = { N_("Aft of datum"),        N_("Move Part") },
  [DIMENSION_NODE_STATION] = { N_("Station"),             N_("Move Node") },
  [DIMENSION_NODE_X]       = { N_("Aft of datum"),        N_("Move Node") },
};

static bool
dimension_node (const Aeroplane *aeroplane, const Hit *dimension, Point *place)
{
  const Outline *outline = outline_owner_outline (aeroplane, dimension->id, false);

  if (outline == NULL || dimension->index >= outline_node_count (outline))
    return false;
  *place = outline_node (outline, dimension->index);
  return true;
}

double
dimension_value (const Figures *figures, const Hit *dimension)
{
  const Part *part = aeroplane_part_by_id (figures->aeroplane, dimension->id);
  const Surface *surface = aeroplane_surface_by_id (figures->aeroplane, dimension->id);
  Point node = { NAN, NAN };

  switch (dimension->dimension) {
    case DIMENSION_SPAN:
      return surface != NULL ? 2 * outline_bounds (surface->outline).max.y : NAN;
    case DIMENSION_MARK:
      return dimension->index < figures->balance.mark_count ? figures->balance.marks[dimension->index].station_mm : NAN;
    case DIMENSION_PART_X:
      return part != NULL ? part->x : NAN;
    default:
      dimension_node (figures->aeroplane, dimension, &node);
      return dimension->dimension == DIMENSION_NODE_STATION ? node.y : node.x;
  }
}

static Aeroplane *
dimension_node_changed (const Aeroplane *aeroplane, const Hit *dimension, double mm)
{
  const bool station = dimension->dimension == DIMENSION_NODE_STATION;
  Outline *made = NULL;
  Point place;

  if (!dimension_node (aeroplane, dimension, &place))
    return NULL;
  place = station ? (Point) { place.x, mm } : (Point) { mm, place.y };
  if (outline_with_node_at (outline_owner_outline (aeroplane, dimension->id, false), dimension->index, place, &made) != CORE_OK)
    return NULL;
  return outline_owner_with (aeroplane, dimension->id, false, made);
}

Aeroplane *
dimension_changed (const Aeroplane *aeroplane, const Hit *dimension, double mm)
{
  const Part *part = aeroplane_part_by_id (aeroplane, dimension->id);

  switch (dimension->dimension) {
    case DIMENSION_SPAN:
      return change_surface_span (aeroplane, dimension->id, mm);
    case DIMENSION_MARK:
      return change_mark_station (aeroplane, dimension->index, mm);
    case DIMENSION_PART_X:
      return part != NULL ? change_part_place (aeroplane, dimension->id, mm, part->y, part->z) : NULL;
    default:
      return dimension_node_changed (aeroplane, dimension, mm);
  }
}

static char *
mark_refusal (const Figures *figures, double mm)
{
  if (figures->reference != NULL && mm >= 0 && mm <= figures->reference->planform.span / 2)
    return NULL;
  return g_strdup (_("The station lies on the wing: between the centre line and the tip."));
}

char *
dimension_refusal (const Figures *figures, const Hit *dimension, double mm, Units units)
{
  switch (dimension->dimension) {
    case DIMENSION_SPAN:         return length_limit_span (units, mm);
    case DIMENSION_MARK:         return mark_refusal (figures, mm);
    case DIMENSION_NODE_STATION: return length_limit_place (units, mm, 0);
    default:                     return length_limit_place (units, mm, -LENGTH_LIMIT_MM);
  }
}

/* What the field works on while it is open. */
typedef struct { TrammelSheetCanvas *sheet; Hit hit; char *id; } OpenDimension;

static void
open_dimension_free (gpointer data, GClosure *closure)
{
  OpenDimension *open = data;

  g_free (open->id);
  g_free (open);
}

static gboolean
open_dimension_entered (TrammelSheetField *field, double mm, OpenDimension *open)
{
  TrammelSession *session = trammel_sheet_canvas_session (open->sheet);
  g_autofree char *refusal = NULL;
  Aeroplane *next;

  /* Looked at and left as it was: no step. */
  if (dimension_value (trammel_session_figures (session), &open->hit) == mm)
    return TRUE;
  refusal = dimension_refusal (trammel_session_figures (session), &open->hit, mm, trammel_session_units (session));
  trammel_sheet_field_refuse (field, refusal);
  if (refusal != NULL)
    return FALSE;
  next = dimension_changed (trammel_session_aeroplane (session), &open->hit, mm);
  trammel_session_do (session, next, _(words[open->hit.dimension].step));
  return next != NULL;
}

void
dimension_field_open (TrammelSheetCanvas *sheet, const Hit *dimension)
{
  TrammelSession *session = trammel_sheet_canvas_session (sheet);
  TrammelSheetField *field = trammel_sheet_canvas_field (sheet);
  const SheetScene scene = trammel_sheet_canvas_scene (sheet);
  OpenDimension *open;
  GdkRectangle place;
  Box box;

  if (!sheet_dimension_box (&scene, dimension, &box))
    return;
  open = g_new0 (OpenDimension, 1);
  open->sheet = sheet;
  open->hit = *dimension;
  open->hit.id = open->id = g_strdup (dimension->id);
  place = (GdkRectangle) { (int) box.min.x, (int) box.min.y, (int) (box.max.x - box.min.x), (int) (box.max.y - box.min.y) };
  trammel_sheet_field_serve (field, G_CALLBACK (open_dimension_entered), open, open_dimension_free);
  trammel_sheet_field_open (field, GTK_WIDGET (sheet), &place, _(words[dimension->dimension].name));
  trammel_sheet_field_set (field, trammel_session_units (session), dimension_value (trammel_session_figures (session), dimension));
}
