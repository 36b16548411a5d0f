#include "support/easel.h"
#include <math.h>
#include "document/changes.h"
#include "support/aeroplanes.h"
#include "support/figures-once.h"
#include "support/shapes.h"

SheetOverlay
overlay_none (void)
{
  return (SheetOverlay) { .guide_x = NAN, .guide_y = NAN, .band = { { 1, 1 }, { -1, -1 } } };
}

Easel *
easel_new (Aeroplane *takes)
{
  Easel *self = g_new0 (Easel, 1);
  const SheetView window = { .scale = 1, .width = 731, .height = 704 };

  self->figures = figures_once (takes);
  aeroplane_unref (takes);
  self->look = look_for_screen (LOOK_LIGHT, 1);
  self->view = view_fitted (&window, sheet_extent (self->figures), 24);
  self->selection = selection_none ();
  self->overlay = overlay_none ();
  self->scene = (SheetScene) {
    .look = &self->look, .view = &self->view, .figures = self->figures, .selection = &self->selection, .overlay = &self->overlay,
    .show_grid = true, .show_names = true, .show_figures = true };
  return self;
}

void
easel_free (Easel *self)
{
  selection_clear (&self->selection);
  figures_unref (self->figures);
  g_free (self);
}

void
easel_select (Easel *self, Selection takes)
{
  selection_clear (&self->selection);
  self->selection = takes;
}

void
easel_take_look (Easel *self, LookTheme theme)
{
  self->look = look_for_screen (theme, 1);
}

Canvas
easel_painted (const Easel *self, double scale)
{
  const Colour none = { 1, 0, 1, 1 };      /* magenta: no look has it, so what is left unpainted shows */
  Canvas canvas = canvas_new (self->view.width, self->view.height, scale, none);

  draw_sheet (canvas.cr, &self->scene);
  return canvas;
}

/* The piece of that id, copied, to be changed and put back. */
static void *
taken_out (const Aeroplane *aeroplane, const char *id)
{
  return piece_dup (aeroplane_find (aeroplane, id));
}

static Aeroplane *
put_back (Aeroplane *self, void *takes)
{
  Piece *piece = takes;
  Aeroplane *made = aeroplane_with_replaced (self, aeroplane_find (self, piece->id), takes);

  aeroplane_unref (self);
  return made;
}

static Aeroplane *
with_controls (Aeroplane *made)
{
  Surface *wing = taken_out (made, "wing");

  wing->thickness = 10;
  wing->controls = g_new0 (Control, 1);
  wing->control_count = 1;
  wing->controls[0] = (Control) { g_strdup ("ailerons"), CONTROL_AILERON, 160, 290, 203, 179, 12, 8 };
  wing->ribs = g_new0 (NamedPlace, 1);
  wing->rib_count = 1;
  wing->ribs[0] = (NamedPlace) { g_strdup ("R4"), 92.5 };
  return put_back (made, wing);
}

static Aeroplane *
with_side (Aeroplane *made)
{
  Body *body = taken_out (made, "body");

  body->side_outline = outline_from ((Point) { 0, 0 }, (Segment[]) {
    segment_line ((Point) { 20, 13.5 }), segment_line ((Point) { 160, 34 }), segment_line ((Point) { 463, 11 }),
    segment_line ((Point) { 463, 4 }), segment_line ((Point) { 158, -27 }), segment_line ((Point) { 0, 0 }) }, 6);
  body->formers = g_new0 (NamedPlace, 2);
  body->former_count = 2;
  body->formers[0] = (NamedPlace) { g_strdup ("F3"), 78 };
  body->formers[1] = (NamedPlace) { g_strdup ("F8"), 290.5 };
  return put_back (made, body);
}

static Aeroplane *
with_boxes (Aeroplane *made)
{
  static const struct { const char *id; double y, length, width, height; } boxes[] = {
    { "propeller", 0, 9, 152, 16 }, { "motor", 0, 17, 22, 22 }, { "controller", 0, 27, 17, 6 }, { "battery", 0, 55, 30, 12 },
    { "receiver", 0, 22, 13, 6 }, { "servo-elevator", 5, 22, 9, 20 }, { "servo-left", -125, 22, 9, 9 },
    { "servo-right", 125, 22, 9, 9 }, { "pushrod", 3, 220, 2, 2 } };

  for (size_t i = 0; i < G_N_ELEMENTS (boxes); i++)
    {
      Part *part = taken_out (made, boxes[i].id);

      part->y = boxes[i].y;
      part->length = boxes[i].length;
      part->width = boxes[i].width;
      part->height = boxes[i].height;
      made = put_back (made, part);
    }
  return made;
}

static Aeroplane *
with_lead (Aeroplane *made)
{
  Lead *lead = lead_new ("servo-right", "receiver");

  lead->piece.id = g_strdup ("lead");
  lead->length = 250;
  lead->via = g_new0 (LeadVia, 2);
  lead->via_count = 2;
  lead->via[0].place = (Point) { 141, 119 };
  lead->via[1].place = (Point) { 141, 34 };
  return with_piece (made, lead);
}

Aeroplane *
racer_in_full (void)
{
  return with_lead (with_boxes (with_side (with_controls (racer ()))));
}

Aeroplane *
racer_with_wing (Outline *takes)
{
  Aeroplane *before = racer_in_full (), *made = change_surface_outline (before, "wing", takes);

  aeroplane_unref (before);
  return made;
}
