#pragma once
#include <math.h>
#include "app/sheet-canvas.h"
#include "app/strip.h"
#include "support/stage.h"

/* Plans beneath the whole program's sheet: pictures drawn here, and what the window knows of them. */

/** A wing's outline in dark ink on yellowed paper, as PNG; its path. */
static inline const char *
draw_plan (const char *name, int width, int height)
{
  cairo_surface_t *surface = cairo_image_surface_create (CAIRO_FORMAT_RGB24, width, height);
  cairo_t *cr = cairo_create (surface);
  const char *path = stage_path (name);

  cairo_set_source_rgb (cr, 0.93, 0.88, 0.72);
  cairo_paint (cr);
  cairo_set_source_rgb (cr, 0.1, 0.1, 0.2);
  cairo_set_line_width (cr, 3);
  cairo_rectangle (cr, width * 0.1, height * 0.1, width * 0.8, height * 0.8);
  cairo_stroke (cr);
  cairo_destroy (cr);
  ck_assert_int_eq (cairo_surface_write_to_png (surface, path), CAIRO_STATUS_SUCCESS);
  cairo_surface_destroy (surface);
  return path;
}

/** A grey picture as PNG. With `noise` nothing of it can be packed: its file has a byte and more for each pixel. */
static inline void
draw_grey_plan (const char *path, int width, int height, bool noise)
{
  cairo_surface_t *surface = cairo_image_surface_create (CAIRO_FORMAT_A8, width, height);
  unsigned char *pixels = cairo_image_surface_get_data (surface);
  const int stride = cairo_image_surface_get_stride (surface);
  guint32 seed = 1;

  for (int y = 0; y < height; y++)
    for (int x = 0; x < width; x++) {
      seed = seed * 1664525u + 1013904223u;
      pixels[y * stride + x] = noise ? (unsigned char) (seed >> 24) : (x / 50 + y / 50) % 7 == 0 ? 30 : 230;
    }
  cairo_surface_mark_dirty (surface);
  ck_assert_int_eq (cairo_surface_write_to_png (surface, path), CAIRO_STATUS_SUCCESS);
  cairo_surface_destroy (surface);
}

static inline TrammelSheetCanvas *
plan_canvas (TrammelWindow *window)
{
  return TRAMMEL_SHEET_CANVAS (gui_find_type (GTK_WIDGET (window), TRAMMEL_TYPE_SHEET_CANVAS));
}

static inline TrammelPlanStore *
plan_store (TrammelWindow *window)
{
  return trammel_sheet_canvas_plan_store (plan_canvas (window));
}

static inline bool
plan_is_there (gpointer window)
{
  return trammel_plan_store_ink (plan_store (window)) != NULL;
}

/** Waits for the picture of the plan in hand. */
static inline const Plan *
await_plan (TrammelWindow *window)
{
  ck_assert_msg (gui_wait (plan_is_there, window), "no picture comes");
  gui_settle ();
  return trammel_plan_store_plan (plan_store (window));
}

static inline size_t
plan_count (TrammelWindow *window)
{
  return aeroplane_count (stage_aeroplane (window), PIECE_PLAN);
}

/** Opens a picture by Ctrl+O. */
static inline const Plan *
open_plan (TrammelWindow *window, const char *path)
{
  gui_key ("<Control>o");
  stage_choose ("Open", path, false);
  return await_plan (window);
}

/** Saves the document for the first time. */
static inline void
save_as (TrammelWindow *window, const char *path)
{
  gui_key ("<Control>s");
  stage_choose ("Save As", path, true);
  stage_await_state (window, "");
}

/** Closes the window, saved as it is, and starts the program on that document again. */
static inline TrammelWindow *
open_again (const char *path)
{
  gui_key ("<Control>w");
  gui_settle ();
  return stage_open (path);
}
