#include "app/tool-hinge.h"
#include "trammel-config.h"
#include <glib/gi18n-lib.h>
#include <math.h>
#include "app/hinge-words.h"
#include "app/pointer-plate.h"
#include "figures/control-figures.h"

static Units
units_of (HingeTool *self)
{
  return trammel_session_units (trammel_sheet_canvas_session (self->tool.sheet));
}

static double
share_of (HingeTool *self, const Surface *surface)
{
  const Figures *figures = trammel_session_figures (trammel_sheet_canvas_session (self->tool.sheet));
  const SurfaceFigures *measured = figures_of_surface (figures, surface->piece.id);

  return measured != NULL ? control_figures_of (measured, &self->line).area_share_percent : NAN;
}

/* The end under the hand: the outer one where it lies further out than the first. */
static bool
holds_outer (HingeTool *self)
{
  return self->begun && self->second.own.y >= self->first.own.y;
}

static void
show_plate (HingeTool *self, const Surface *surface)
{
  TrammelPointerPlate *plate = trammel_sheet_canvas_plate (self->tool.sheet);
  g_autofree char *fault = hinge_words_fault (units_of (self), surface, self->fault, self->fault_at);
  const bool outer = holds_outer (self), fin = !surface_is_horizontal (surface);
  GripRow rows[GRIP_ROWS];
  size_t count = 0;
  double px[2];

  if (fault != NULL || self->printed)
    rows[count++] = (GripRow) { .name = fault != NULL ? fault : _("On the printed line"), .said = "" };
  rows[count++] = (GripRow) { .name = fin ? _("Height") : _("Station"), .value = outer ? self->line.outer : self->line.inner };
  if (fault == NULL)
    rows[count++] = (GripRow) { .name = _("Chord"), .value = hinge_chord (surface, &self->line, outer) };
  if (self->begun && fault == NULL)
    rows[count++] = (GripRow) { .name = _("Share of area"), .value = share_of (self, surface), .percent = true };
  px[0] = self->at.x;
  px[1] = self->at.y;
  trammel_pointer_plate_show (plate, units_of (self), rows, count);
  trammel_pointer_plate_stand (plate, self->over, px, &(GdkRectangle) { (int) px[0], (int) px[1], 1, 1 });
}

static void
show_hint (HingeTool *self, const Surface *surface)
{
  g_autofree char *fault = surface != NULL ? hinge_words_fault (units_of (self), surface, self->fault, self->fault_at) : NULL;
  const char *hint = NULL;

  if (fault != NULL)
    hint = fault;
  else if (self->begun)
    hint = _("Click the other end. Shift keeps it as deep as the first, Ctrl snaps to nothing, Backspace takes the first back.");
  else if (surface != NULL && self->ground != NULL)
    hint = _("Click one end of a printed hinge line, then the other. Ctrl lets go of what is printed.");
  else if (self->edge_on)
    hint = _("A fin's hinge line is drawn in the side view, or over the plan's view of the fin.");
  if (g_strcmp0 (trammel_sheet_canvas_hint (self->tool.sheet), hint) != 0)
    trammel_sheet_canvas_set_hint (self->tool.sheet, hint);
}

void
hinge_tool_show (HingeTool *self)
{
  const Surface *surface = hinge_tool_surface (self);
  SheetOverlay *overlay = trammel_sheet_canvas_overlay (self->tool.sheet);

  show_hint (self, surface);
  overlay->hinge = NULL;
  if (surface == NULL)
    trammel_pointer_plate_hide (trammel_sheet_canvas_plate (self->tool.sheet));
  else {
    self->shown = (SheetHinge) { .surface = surface, .line = self->line, .has_line = self->begun, .wrong = self->fault != HINGE_SOUND,
                                 .port = self->seat.port, .laid_down = self->seat.laid_down, .lift = self->seat.lift };
    overlay->hinge = &self->shown;
    show_plate (self, surface);
  }
  trammel_sheet_canvas_refresh (self->tool.sheet);
  if (self->over != NULL)
    gtk_widget_queue_draw (self->over);
}

void
hinge_tool_hide (HingeTool *self)
{
  trammel_sheet_canvas_overlay (self->tool.sheet)->hinge = NULL;
  if (gtk_widget_get_root (GTK_WIDGET (self->tool.sheet)) == NULL)
    return;                       /* the window is going, and the plate may be gone */
  trammel_pointer_plate_hide (trammel_sheet_canvas_plate (self->tool.sheet));
  trammel_sheet_canvas_clear_guides (self->tool.sheet);
  trammel_sheet_canvas_refresh (self->tool.sheet);
  if (self->over != NULL)
    gtk_widget_queue_draw (self->over);
}
