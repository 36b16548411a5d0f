#include "app/place-entry.h"
#include "trammel-config.h"
#include <glib/gi18n-lib.h>
#include "app/digit-key.h"
#include "app/length-limit.h"
#include "app/pointer-plate.h"

struct PlaceEntry {
  PlaceEntry **owner;
  Tool *tool;
  TrammelPointerPlate *plate;
  Point place;
  PlaceDone done;
  PlaceStand stand;
  gulong typed, entered, left;
};

static void
place_entry_show (PlaceEntry *self)
{
  const GripRow rows[] = {
    { .name = self->stand.across, .value = self->place.y, .typed = true, .least = -LENGTH_LIMIT_MM },
    { .name = _("Aft of datum"), .value = self->place.x, .typed = true, .least = -LENGTH_LIMIT_MM },
  };
  double px[2] = { self->stand.px.x, self->stand.px.y };
  GdkRectangle clear;

  if (!point_is_finite (self->stand.px))
    trammel_sheet_canvas_px (self->stand.over, self->place, px);
  clear = (GdkRectangle) { (int) px[0], (int) px[1], 1, 1 };
  trammel_pointer_plate_show (self->plate, trammel_session_units (trammel_sheet_canvas_session (self->tool->sheet)), rows, G_N_ELEMENTS (rows));
  trammel_pointer_plate_stand (self->plate, self->stand.over, px, &clear);
}

static gboolean
place_entry_typed (PlaceEntry *self, guint row, double mm)
{
  if (row == 0)
    self->place.y = mm;
  else
    self->place.x = mm;
  place_entry_show (self);
  return TRUE;
}

static void
place_entry_entered (PlaceEntry *self)
{
  Tool *tool = self->tool;
  const PlaceDone done = self->done;
  const Point place = self->place;

  gtk_widget_grab_focus (GTK_WIDGET (tool->sheet));
  place_entry_close (self->owner);
  done (tool, place);
}

static void
place_entry_left (PlaceEntry *self)
{
  gtk_widget_grab_focus (GTK_WIDGET (self->tool->sheet));
  place_entry_close (self->owner);
}

bool
place_entry_key (PlaceEntry **entry, Tool *tool, guint keyval, GdkModifierType state, Point place, PlaceDone done)
{
  const PlaceStand stand = { _("Station"), GTK_WIDGET (tool->sheet), { NAN, NAN } };

  return place_entry_key_at (entry, tool, keyval, state, place, done, &stand);
}

bool
place_entry_key_at (PlaceEntry **entry, Tool *tool, guint keyval, GdkModifierType state, Point place, PlaceDone done, const PlaceStand *stand)
{
  const double step = trammel_sheet_canvas_key_step (tool->sheet);
  PlaceEntry *self;
  char text[7];

  if (!digit_key_text (keyval, state, text))
    return false;
  place_entry_close (entry);
  *entry = self = g_new0 (PlaceEntry, 1);
  *self = (PlaceEntry) { .owner = entry, .tool = tool, .plate = trammel_sheet_canvas_plate (tool->sheet), .done = done,
                         .stand = *stand, .place = { round (place.x / step) * step, round (place.y / step) * step } };
  self->typed = g_signal_connect_swapped (self->plate, "typed", G_CALLBACK (place_entry_typed), self);
  self->entered = g_signal_connect_swapped (self->plate, "entered", G_CALLBACK (place_entry_entered), self);
  self->left = g_signal_connect_swapped (self->plate, "left", G_CALLBACK (place_entry_left), self);
  trammel_sheet_canvas_clear_guides (tool->sheet);
  place_entry_show (self);
  trammel_pointer_plate_type (self->plate, text);
  return true;
}

void
place_entry_close (PlaceEntry **entry)
{
  PlaceEntry *self = g_steal_pointer (entry);

  if (self == NULL)
    return;
  g_clear_signal_handler (&self->typed, self->plate);
  g_clear_signal_handler (&self->entered, self->plate);
  g_clear_signal_handler (&self->left, self->plate);
  trammel_pointer_plate_hide (self->plate);
  g_free (self);
}
