#include "decoder/kinds.h"

#include <gdk-pixbuf/gdk-pixbuf.h>
#include <limits.h>
#include <stdlib.h>
#include <string.h>
#include "decoder/answer.h"
#include "decoder/sniff.h"

static const char *const LOADERS[] = {
  [DECODE_PNG] = "png", [DECODE_JPEG] = "jpeg", [DECODE_TIFF] = "tiff", [DECODE_WEBP] = "webp", [DECODE_BMP] = "bmp",
  [DECODE_GIF] = "gif",
};
/* So much is read between two words about progress. */
enum { CHUNK = 262144 };
static const double METRE_INCHES = 1 / 0.0254;

static DecodeStatus
status_of (const GError *error)
{
  if (g_error_matches (error, GDK_PIXBUF_ERROR, GDK_PIXBUF_ERROR_INSUFFICIENT_MEMORY))
    return DECODE_TOO_MUCH_MEMORY;
  if (g_error_matches (error, GDK_PIXBUF_ERROR, GDK_PIXBUF_ERROR_UNKNOWN_TYPE))
    return DECODE_NO_LOADER;
  return DECODE_DAMAGED;
}

/* The loader asks before it takes memory for the pixels. */
static void
size_known (GdkPixbufLoader *loader, int width, int height, gpointer data)
{
  if (width < 1 || height < 1)
    answer_refuse (DECODE_NO_PIXELS);
  if ((double) width * height > DECODE_MOST_FILE_PIXELS)
    answer_refuse (DECODE_TOO_LARGE);
}

/* The loader of PNG passes over what the file says of it. */
static int
orientation_of (const Job *job, GdkPixbuf *pixbuf)
{
  const char *text = gdk_pixbuf_get_option (pixbuf, "orientation");

  if (!text && job->answer.kind == DECODE_PNG)
    return sniff_png_orientation (job->bytes, job->length);
  return text ? atoi (text) : 1;
}

static double
stored_dpi (GdkPixbuf *pixbuf, const char *key)
{
  const char *text = gdk_pixbuf_get_option (pixbuf, key);
  const double dpi = text ? atof (text) : 0;

  return dpi >= 1 && dpi <= 1e5 ? dpi : NAN;
}

static void
tell_dpi (Job *job, GdkPixbuf *pixbuf, bool turned)
{
  double x = stored_dpi (pixbuf, "x-dpi"), y = stored_dpi (pixbuf, "y-dpi");
  unsigned density[2];

  /* The loader rounds to whole dots to the inch, of which 300 are 11811 to the metre. */
  if (job->answer.kind == DECODE_PNG && sniff_png_density (job->bytes, job->length, density) && !isnan (x) && !isnan (y))
    {
      x = density[0] / METRE_INCHES;
      y = density[1] / METRE_INCHES;
    }
  job->answer.stored_dpi_x = turned ? y : x;
  job->answer.stored_dpi_y = turned ? x : y;
}

static Picture
stored_picture (GdkPixbuf *pixbuf)
{
  return (Picture) {
    .origin = gdk_pixbuf_read_pixels (pixbuf), .right = gdk_pixbuf_get_n_channels (pixbuf), .down = gdk_pixbuf_get_rowstride (pixbuf),
    .width = gdk_pixbuf_get_width (pixbuf), .height = gdk_pixbuf_get_height (pixbuf),
    .red = 0, .green = 1, .blue = 2, .alpha = gdk_pixbuf_get_has_alpha (pixbuf) ? 3 : -1,
  };
}

static Picture
tell_facts (Job *job, GdkPixbuf *pixbuf)
{
  const int orientation = orientation_of (job, pixbuf);
  const Picture picture = picture_oriented (stored_picture (pixbuf), orientation);

  job->answer.width_px = picture.width;
  job->answer.height_px = picture.height;
  tell_dpi (job, pixbuf, orientation >= 5 && orientation <= 8);
  answer_fit (job, INT_MAX);
  return picture;
}

/* The pixels have their place, though nothing is in them yet: enough for the facts. */
static void
area_prepared (GdkPixbufLoader *loader, gpointer data)
{
  Job *job = data;

  tell_facts (job, gdk_pixbuf_loader_get_pixbuf (loader));
  if (job->facts_only)
    answer_facts (job);
}

static void
feed (GdkPixbufLoader *loader, const unsigned char *bytes, size_t length)
{
  GError *error = NULL;

  for (size_t at = 0; at < length; at += CHUNK)
    {
      if (!gdk_pixbuf_loader_write (loader, bytes + at, MIN (CHUNK, length - at), &error))
        answer_refuse (status_of (error));
      answer_progress ((double) at / (double) length);
    }
}

/* Where the picture ends, of a TIFF that of the page wanted; libpng calls a size of nothing damage. */
static size_t
whole_picture (const Job *job, size_t directory)
{
  const bool tiff = job->answer.kind == DECODE_TIFF;
  const size_t end = tiff ? sniff_tiff_end (job->bytes, job->length, directory)
                          : sniff_end ((DecodeKind) job->answer.kind, job->bytes, job->length);
  unsigned size[2] = { 1, 1 };

  if (end == 0)
    answer_refuse (DECODE_TRUNCATED);
  if (job->answer.kind == DECODE_PNG)
    sniff_png_size (job->bytes, job->length, size);
  if (size[0] == 0 || size[1] == 0)
    answer_refuse (DECODE_NO_PIXELS);
  return end;
}

/* Where the directory of the page wanted begins; 0 in a file without pages. */
static size_t
find_page (Job *job)
{
  size_t directory = 0;

  job->answer.pages = 1;
  if (job->answer.kind == DECODE_TIFF)
    job->answer.pages = MAX (sniff_tiff_pages (job->bytes, job->length, (unsigned) job->page, &directory), 1);
  if (job->page < 1 || (unsigned) job->page > job->answer.pages)
    answer_refuse (DECODE_NO_SUCH_PAGE);
  return directory;
}

/* The loader of TIFF reads the first page: the one wanted becomes the first, where the file's head says which that is. */
static void
feed_page (GdkPixbufLoader *loader, const Job *job, size_t end, size_t directory)
{
  enum { HEAD = 8 };
  unsigned char head[HEAD];

  memcpy (head, job->bytes, HEAD);
  for (int i = 0; i < 4; i++)
    head[4 + i] = (unsigned char) (directory >> 8 * (head[0] == 'M' ? 3 - i : i));
  feed (loader, head, HEAD);
  feed (loader, job->bytes + HEAD, end - HEAD);
}

void
decode_pixbuf (Job *job)
{
  const size_t directory = find_page (job), end = whole_picture (job, directory);
  GError *error = NULL;
  GdkPixbufLoader *loader = gdk_pixbuf_loader_new_with_type (LOADERS[job->answer.kind], &error);
  GdkPixbuf *pixbuf;
  Picture picture;

  if (!loader)
    answer_refuse (DECODE_NO_LOADER);
  g_signal_connect (loader, "size-prepared", G_CALLBACK (size_known), NULL);
  g_signal_connect (loader, "area-prepared", G_CALLBACK (area_prepared), job);
  if (directory)
    feed_page (loader, job, end, directory);
  else
    feed (loader, job->bytes, end);
  if (job->answer.kind == DECODE_GIF)
    feed (loader, (const unsigned char *) ";", 1);            /* the mark of the end, after the first frame */
  if (!gdk_pixbuf_loader_close (loader, &error))
    answer_refuse (status_of (error));
  pixbuf = gdk_pixbuf_loader_get_pixbuf (loader);
  if (!pixbuf)
    answer_refuse (DECODE_DAMAGED);
  picture = tell_facts (job, pixbuf);
  if (job->facts_only)
    answer_facts (job);
  answer_picture (job, &picture);
}
