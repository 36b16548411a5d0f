#include "support/ink-picture.h"
#include <cairo.h>
#include <check.h>
#include <librsvg/rsvg.h>
#include <math.h>
#include <poppler.h>
#include <string.h>
#include "support/pdf-words.h"

/* Painted so much finer and then put together, letters fitted to pixels and lines smoothed in some way leave nearly no trace. */
enum { FINENESS = 4, FINE_PX_PER_MM = FINENESS * INK_PX_PER_MM };
static const double points_per_mm = 72 / 25.4;

static InkPicture *
ink_new (int width, int height)
{
  InkPicture *self = g_new (InkPicture, 1);

  *self = (InkPicture) { width, height, g_malloc0 ((size_t) width * height) };
  return self;
}

void
ink_free (InkPicture *self)
{
  if (self == NULL)
    return;
  g_free (self->ink);
  g_free (self);
}

static cairo_surface_t *
paper_new (double width_mm, double height_mm)
{
  const int width = (int) lround (width_mm * INK_PX_PER_MM) * FINENESS, height = (int) lround (height_mm * INK_PX_PER_MM) * FINENESS;

  return cairo_image_surface_create (CAIRO_FORMAT_RGB24, width, height);
}

static cairo_t *
paper_pen (cairo_surface_t *paper)
{
  cairo_t *cr = cairo_create (paper);

  cairo_set_source_rgb (cr, 1, 1, 1);
  cairo_paint (cr);
  return cr;
}

/* ITU-R BT.601: how dark a colour is. */
static double
darkness (guint32 rgb)
{
  return 255 - (0.299 * (rgb >> 16 & 255) + 0.587 * (rgb >> 8 & 255) + 0.114 * (rgb & 255));
}

static unsigned char
mean_darkness (const unsigned char *data, int stride, int x, int y)
{
  double sum = 0;

  for (int row = y * FINENESS; row < (y + 1) * FINENESS; row++)
    for (int column = x * FINENESS; column < (x + 1) * FINENESS; column++)
      sum += darkness (((const guint32 *) (const void *) (data + (size_t) row * stride))[column]);
  return (unsigned char) lround (sum / (FINENESS * FINENESS));
}

/* Both are taken. */
static InkPicture *
ink_of_paper (cairo_surface_t *paper, cairo_t *cr)
{
  InkPicture *self = ink_new (cairo_image_surface_get_width (paper) / FINENESS, cairo_image_surface_get_height (paper) / FINENESS);

  cairo_destroy (cr);
  cairo_surface_flush (paper);
  for (int y = 0; y < self->height; y++)
    for (int x = 0; x < self->width; x++)
      self->ink[y * self->width + x] = mean_darkness (cairo_image_surface_get_data (paper), cairo_image_surface_get_stride (paper), x, y);
  cairo_surface_destroy (paper);
  return self;
}

InkPicture *
ink_of_pdf (GBytes *bytes, int page, GArray **words)
{
  GError *error = NULL;
  PopplerDocument *document = poppler_document_new_from_bytes (bytes, NULL, &error);
  PopplerPage *read;
  cairo_surface_t *paper;
  cairo_t *cr;
  double width, height;

  ck_assert_msg (document != NULL, "%s", error ? error->message : "");
  ck_assert_int_lt (page, poppler_document_get_n_pages (document));
  read = poppler_document_get_page (document, page);
  poppler_page_get_size (read, &width, &height);
  paper = paper_new (width / points_per_mm, height / points_per_mm);
  cr = paper_pen (paper);
  cairo_scale (cr, FINE_PX_PER_MM / points_per_mm, FINE_PX_PER_MM / points_per_mm);
  poppler_page_render_for_printing (read, cr);
  if (words != NULL)
    *words = pdf_words (read);
  g_object_unref (read);
  g_object_unref (document);
  return ink_of_paper (paper, cr);
}

InkPicture *
ink_of_svg (GBytes *bytes)
{
  size_t length;
  const guint8 *data = g_bytes_get_data (bytes, &length);
  GError *error = NULL;
  RsvgHandle *drawing = rsvg_handle_new_from_data (data, length, &error);
  cairo_surface_t *paper;
  cairo_t *cr;
  RsvgRectangle whole = { 0 };
  double width, height;

  ck_assert_msg (drawing != NULL, "%s", error ? error->message : "");
  rsvg_handle_set_dpi (drawing, 25.4 * FINE_PX_PER_MM);
  ck_assert (rsvg_handle_get_intrinsic_size_in_pixels (drawing, &width, &height));
  paper = paper_new (width / FINE_PX_PER_MM, height / FINE_PX_PER_MM);
  cr = paper_pen (paper);
  whole.width = width;
  whole.height = height;
  ck_assert_msg (rsvg_handle_render_document (drawing, cr, &whole, &error), "%s", error ? error->message : "");
  g_object_unref (drawing);
  return ink_of_paper (paper, cr);
}

static int
px_within (double mm, int most)
{
  return CLAMP ((int) lround (mm * INK_PX_PER_MM), 0, most);
}

InkPicture *
ink_moved (const InkPicture *self, Box box, double x, double y)
{
  InkPicture *made = ink_new (self->width, self->height);
  const int left = px_within (box.min.x, self->width), right = px_within (box.max.x, self->width);
  const int top = px_within (box.min.y, self->height), bottom = px_within (box.max.y, self->height);
  const int by_x = (int) lround (x * INK_PX_PER_MM), by_y = (int) lround (y * INK_PX_PER_MM);

  memcpy (made->ink, self->ink, (size_t) self->width * self->height);
  for (int row = top; row < bottom; row++)
    memset (made->ink + row * self->width + left, 0, right - left);
  for (int row = top; row < bottom; row++)
    for (int column = left; column < right; column++)
      if (row + by_y >= 0 && row + by_y < self->height && column + by_x >= 0 && column + by_x < self->width)
        {
          unsigned char *to = &made->ink[(row + by_y) * self->width + column + by_x];
          *to = MAX (*to, self->ink[row * self->width + column]);
        }
  return made;
}

InkPicture *
ink_load (const char *path)
{
  cairo_surface_t *kept = cairo_image_surface_create_from_png (path);
  InkPicture *self = NULL;

  if (cairo_surface_status (kept) == CAIRO_STATUS_SUCCESS)
    {
      const unsigned char *data = cairo_image_surface_get_data (kept);

      self = ink_new (cairo_image_surface_get_width (kept), cairo_image_surface_get_height (kept));
      for (int y = 0; y < self->height; y++, data += cairo_image_surface_get_stride (kept))
        for (int x = 0; x < self->width; x++)
          self->ink[y * self->width + x] = (unsigned char) lround (darkness (((const guint32 *) (const void *) data)[x]));
    }
  cairo_surface_destroy (kept);
  return self;
}

/* cairo writes what has no colour as grey; few greys are packed small. */
bool
ink_save (const InkPicture *self, const char *path)
{
  cairo_surface_t *picture = cairo_image_surface_create (CAIRO_FORMAT_A8, self->width, self->height);
  unsigned char *row = cairo_image_surface_get_data (picture);
  bool written;

  for (int y = 0; y < self->height; y++, row += cairo_image_surface_get_stride (picture))
    for (int x = 0; x < self->width; x++)
      row[x] = 255 - MIN ((self->ink[y * self->width + x] + 4) / 8 * 8, 255);
  cairo_surface_mark_dirty (picture);
  written = cairo_surface_write_to_png (picture, path) == CAIRO_STATUS_SUCCESS;
  cairo_surface_destroy (picture);
  return written;
}

static guint32
difference_colour (int was, int is)
{
  const int common = MIN (was, is) / 2, gone = MAX (was - is, 0), fresh = MAX (is - was, 0);

  return (guint32) (255 - common - fresh) << 16 | (guint32) (255 - common - fresh - gone) << 8 | (guint32) (255 - common - gone);
}

bool
ink_save_difference (const InkPicture *expected, const InkPicture *found, const char *path)
{
  const int width = MIN (expected->width, found->width), height = MIN (expected->height, found->height);
  cairo_surface_t *picture = cairo_image_surface_create (CAIRO_FORMAT_RGB24, width, height);
  unsigned char *row = cairo_image_surface_get_data (picture);
  bool written;

  for (int y = 0; y < height; y++, row += cairo_image_surface_get_stride (picture))
    for (int x = 0; x < width; x++)
      ((guint32 *) (void *) row)[x] = difference_colour (expected->ink[y * expected->width + x], found->ink[y * found->width + x]);
  cairo_surface_mark_dirty (picture);
  written = cairo_surface_write_to_png (picture, path) == CAIRO_STATUS_SUCCESS;
  cairo_surface_destroy (picture);
  return written;
}

/* Ink is spread like a tent, so that what moves by a little changes it by a little wherever it stands. */
enum { SPREAD = 3 * INK_PX_PER_MM, STEP = 3 * INK_PX_PER_MM / 2 };

/* How much more ink there is around the place than expected, a share of black; along a line of px `apart` from one another. */
static double
spread_at (const double *more, int apart, int count, int place)
{
  double sum = 0;

  for (int at = MAX (place - SPREAD + 1, 0); at < MIN (place + SPREAD, count); at++)
    sum += (SPREAD - abs (at - place)) * more[(size_t) at * apart];
  return sum / (SPREAD * SPREAD);
}

/* At every STEP along the rows, for each row. */
static double *
spread_along_rows (const InkPicture *expected, const InkPicture *found, int columns)
{
  const int width = found->width;
  double *made = g_new (double, (size_t) columns * found->height), *more = g_new (double, width);

  for (int y = 0; y < found->height; y++)
    {
      for (int x = 0; x < width; x++)
        more[x] = (found->ink[y * width + x] - expected->ink[y * width + x]) / 255.0;
      for (int column = 0; column < columns; column++)
        made[y * columns + column] = spread_at (more, 1, width, column * STEP);
    }
  g_free (more);
  return made;
}

InkDifference
ink_compare (const InkPicture *expected, const InkPicture *found)
{
  const int columns = (found->width + STEP - 1) / STEP;
  InkDifference difference = { 0 };
  double *rows;

  if (expected->width != found->width || expected->height != found->height)
    return (InkDifference) { .most = 1 };
  rows = spread_along_rows (expected, found, columns);
  for (int y = 0; y < found->height; y += STEP)
    for (int column = 0; column < columns; column++)
      {
        const double here = fabs (spread_at (rows + column, columns, found->height, y));

        if (here > difference.most)
          difference = (InkDifference) { here, { (double) column * STEP / INK_PX_PER_MM, (double) y / INK_PX_PER_MM } };
      }
  g_free (rows);
  return difference;
}
