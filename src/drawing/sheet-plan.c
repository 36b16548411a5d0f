#include "drawing/sheet-plan.h"

#include <glib.h>
#include <math.h>
#include <string.h>

typedef struct { const SheetPlan *plan; const SheetView *view; } Window;

static Point
to_file (Point window, const void *data)
{
  const Window *self = data;
  const Point sheet = view_from_screen (self->view, window.x / self->plan->device_scale, window.y / self->plan->device_scale);

  return placing_px (&self->plan->placing, sheet);
}

static void
show_ink (const SheetPlan *plan, const InkWindow *window, cairo_surface_t *mask)
{
  cairo_surface_flush (mask);
  ink_levels_show (plan->ink, window, cairo_image_surface_get_width (mask), cairo_image_surface_get_height (mask),
                   (size_t) cairo_image_surface_get_stride (mask), cairo_image_surface_get_data (mask));
  cairo_surface_mark_dirty (mask);
}

/* Each colour is looked up as if it were ink and put into its place; beyond the picture there is the sheet. */
static void
show_scan (const SheetPlan *plan, const InkWindow *window, cairo_surface_t *picture)
{
  const int width = cairo_image_surface_get_width (picture), height = cairo_image_surface_get_height (picture);
  const size_t stride = (size_t) cairo_image_surface_get_stride (picture), plane = (size_t) width * (size_t) height;
  unsigned char *data = cairo_image_surface_get_data (picture), *planes = g_malloc (3 * plane);

  cairo_surface_flush (picture);
  for (int i = 0; i < 3; i++)
    ink_levels_show (plan->scanned[i], window, width, height, (size_t) width, planes + (size_t) i * plane);
  for (int y = 0; y < height; y++)
    for (int x = 0; x < width; x++)
      {
        const unsigned char *at = planes + (size_t) y * (size_t) width + x;
        const guint32 red = at[0], green = at[plane], blue = at[2 * plane];
        const guint32 colour = red | green | blue ? 0xFF000000u | red << 16 | green << 8 | blue : 0;
        memcpy (data + (size_t) y * stride + 4 * (size_t) x, &colour, sizeof colour);
      }
  cairo_surface_mark_dirty (picture);
  g_free (planes);
}

static bool
is_scanned (const SheetPlan *plan)
{
  return plan->scanned[0] && plan->scanned[1] && plan->scanned[2];
}

/* What is looked up: the ink, or the picture's three colours. */
static const InkLevels *
shown_of (const SheetPlan *plan, int i)
{
  return is_scanned (plan) ? plan->scanned[i] : i == 0 ? plan->ink : NULL;
}

static bool
copy_holds (const SheetPlanCopy *copy, const SheetView *view, const SheetPlan *plan)
{
  for (int i = 0; i < 3; i++)
    if (copy->shown[i] != shown_of (plan, i))
      return false;
  return copy->surface && memcmp (&copy->view, view, sizeof *view) == 0
         && memcmp (&copy->placing, &plan->placing, sizeof copy->placing) == 0 && copy->device_scale == plan->device_scale;
}

static void
copy_take (SheetPlanCopy *copy, const SheetView *view, const SheetPlan *plan, cairo_surface_t *surface)
{
  sheet_plan_copy_clear (copy);
  *copy = (SheetPlanCopy) {
    .surface = cairo_surface_reference (surface), .placing = plan->placing, .view = *view, .device_scale = plan->device_scale };
  for (int i = 0; i < 3; i++)
    copy->shown[i] = shown_of (plan, i) ? ink_levels_ref (shown_of (plan, i)) : NULL;
}

static cairo_surface_t *
show (const SheetView *view, const SheetPlan *plan)
{
  const Window seen = { .plan = plan, .view = view };
  const InkWindow window = { .to_file = to_file, .data = &seen };
  cairo_surface_t *surface = cairo_image_surface_create (is_scanned (plan) ? CAIRO_FORMAT_ARGB32 : CAIRO_FORMAT_A8,
                                                         (int) ceil (view->width * plan->device_scale),
                                                         (int) ceil (view->height * plan->device_scale));

  if (cairo_surface_status (surface) == CAIRO_STATUS_SUCCESS)
    {
      if (is_scanned (plan))
        show_scan (plan, &window, surface);
      else
        show_ink (plan, &window, surface);
      cairo_surface_set_device_scale (surface, plan->device_scale, plan->device_scale);
    }
  return surface;
}

static cairo_surface_t *
mask_acquire (cairo_pattern_t *pattern, void *mask, cairo_surface_t *target, const cairo_rectangle_int_t *extents)
{
  return cairo_surface_reference (mask);
}

static void
mask_release (cairo_pattern_t *pattern, void *mask, cairo_surface_t *surface)
{
  cairo_surface_destroy (surface);
}

static cairo_status_t
mask_share (cairo_pattern_t *pattern, void *mask, const cairo_pattern_t *other)
{
  cairo_surface_reference (mask);
  return CAIRO_STATUS_SUCCESS;
}

static void
mask_finish (cairo_pattern_t *pattern, void *mask)
{
  cairo_surface_destroy (mask);
}

/* A picture that is recorded is copied by cairo when it is given up, in each frame of a zoom. What is asked for only when it is painted
 * is not; nobody changes it meanwhile. */
static void
mask_unrecorded (cairo_t *cr, cairo_surface_t *mask, double device_scale)
{
  cairo_pattern_t *pattern = cairo_pattern_create_raster_source (mask, CAIRO_CONTENT_ALPHA, cairo_image_surface_get_width (mask),
                                                                 cairo_image_surface_get_height (mask));
  cairo_matrix_t matrix;

  cairo_surface_reference (mask);
  cairo_raster_source_pattern_set_acquire (pattern, mask_acquire, mask_release);
  cairo_raster_source_pattern_set_copy (pattern, mask_share);
  cairo_raster_source_pattern_set_finish (pattern, mask_finish);
  cairo_matrix_init_scale (&matrix, device_scale, device_scale);
  cairo_pattern_set_matrix (pattern, &matrix);
  cairo_mask (cr, pattern);
  cairo_pattern_destroy (pattern);
}

void
sheet_plan_draw (cairo_t *cr, const Look *look, const SheetView *view, const SheetPlan *plan)
{
  cairo_surface_t *surface = plan->copy && copy_holds (plan->copy, view, plan) ? cairo_surface_reference (plan->copy->surface)
                                                                               : show (view, plan);

  if (is_scanned (plan))
    {
      cairo_set_source_surface (cr, surface, 0, 0);
      cairo_paint (cr);
    }
  else
    {
      Colour ink = look->plan_ink;
      ink.alpha = plan->strength;
      look_set_source (cr, ink);
      if (plan->copy)
        mask_unrecorded (cr, surface, plan->device_scale);
      else
        cairo_mask_surface (cr, surface, 0, 0);
    }
  if (plan->copy && !copy_holds (plan->copy, view, plan))
    copy_take (plan->copy, view, plan, surface);
  cairo_surface_destroy (surface);
}

void
sheet_plan_copy_clear (SheetPlanCopy *self)
{
  if (self->surface)
    cairo_surface_destroy (self->surface);
  for (int i = 0; i < 3; i++)
    ink_levels_unref (self->shown[i]);
  *self = (SheetPlanCopy) { 0 };
}

Look
sheet_plan_halo_look (const Look *look)
{
  const double wider = 4 * look->u;
  Look halo = *look;
  Colour ground = look->sheet;

  halo.halo = true;
  ground.alpha = 0.92;
  halo.graphite = halo.construction = halo.centre_line = halo.band = halo.balance = halo.neutral = halo.warning = halo.selection = ground;
  halo.outline_width += wider;
  halo.selected_width += wider;
  halo.inner_width += wider;
  halo.part_width += wider;
  halo.thin_width += wider;
  halo.hatch_width += wider;
  return halo;
}
