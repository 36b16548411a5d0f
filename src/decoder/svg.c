#define _GNU_SOURCE
#include "decoder/kinds.h"

#include <librsvg/rsvg.h>
#include <string.h>
#include "decoder/answer.h"
#include "decoder/sniff.h"
#include "decoder/surface.h"

/* A user unit without any other measure is this much of an inch (CSS Values and Units 3, section 6.2). */
static const double UNITS_TO_THE_INCH = 96;
enum { END_WITHIN = 4096 };

/* Inches, or NAN where the unit is not one of paper. */
static double
length_inches (RsvgLength length)
{
  switch (length.unit)
    {
    case RSVG_UNIT_IN: return length.length;
    case RSVG_UNIT_CM: return length.length / 2.54;
    case RSVG_UNIT_MM: return length.length / 25.4;
    case RSVG_UNIT_PT: return length.length / 72;
    case RSVG_UNIT_PC: return length.length / 6;
    default:           return NAN;
    }
}

static bool
is_own_size (gboolean has, RsvgLength length)
{
  return has && length.unit != RSVG_UNIT_PERCENT;
}

/* In inches, as drawn; what only one side or the view box says, the other follows by its proportion. *true_size: in units of paper. */
static void
find_size (RsvgHandle *handle, double *width, double *height, bool *true_size)
{
  gboolean has_width, has_height, has_box;
  RsvgLength w, h;
  RsvgRectangle box;

  rsvg_handle_get_intrinsic_dimensions (handle, &has_width, &w, &has_height, &h, &has_box, &box);
  has_width = is_own_size (has_width, w);
  has_height = is_own_size (has_height, h);
  *width = has_width ? length_inches (w) : NAN;
  *height = has_height ? length_inches (h) : NAN;
  has_box = has_box && box.width > 0 && box.height > 0;
  if (has_box && isnan (*width) && !has_width && !isnan (*height))
    *width = *height * box.width / box.height;
  if (has_box && isnan (*height) && !has_height && !isnan (*width))
    *height = *width * box.height / box.width;
  *true_size = !isnan (*width) && !isnan (*height);
  if (*true_size)
    return;
  *width = has_width ? w.length / UNITS_TO_THE_INCH : has_box ? box.width / UNITS_TO_THE_INCH : NAN;
  *height = has_height ? h.length / UNITS_TO_THE_INCH : has_box ? box.height / UNITS_TO_THE_INCH : NAN;
}

/* The library unpacks by itself; what is packed may be anything, though. */
static bool
holds_drawing (const Job *job)
{
  g_autoptr (GConverter) unpacking = G_CONVERTER (g_zlib_decompressor_new (G_ZLIB_COMPRESSOR_FORMAT_GZIP));
  unsigned char head[END_WITHIN];
  gsize read, written = 0;

  if (!sniff_packed (job->bytes, job->length))
    return true;
  g_converter_convert (unpacking, job->bytes, job->length, head, sizeof head, G_CONVERTER_NO_FLAGS, &read, &written, NULL);
  return sniff_svg (head, written);
}

/* Its last tag, one byte or two to the letter. What is packed does not show it. */
static bool
ends_as_drawing (const Job *job)
{
  static const char WIDE[] = { 's', 0, 'v', 0, 'g', 0, '>' };
  const size_t tail = MIN (job->length, END_WITHIN);
  const unsigned char *from = job->bytes + job->length - tail;

  return sniff_packed (job->bytes, job->length) || memmem (from, tail, "svg>", 4) || memmem (from, tail, WIDE, sizeof WIDE);
}

static RsvgHandle *
open_drawing (const Job *job)
{
  /* Nothing is told of where the file lies, so that it can name no other. */
  RsvgHandle *handle = holds_drawing (job) ? rsvg_handle_new_from_data (job->bytes, job->length, NULL) : NULL;

  if (handle)
    return handle;
  if (!holds_drawing (job))
    answer_refuse (DECODE_NOT_A_PICTURE);
  answer_refuse (ends_as_drawing (job) ? DECODE_DAMAGED : DECODE_TRUNCATED);
}

static void
tell_size (Job *job, RsvgHandle *handle)
{
  double width, height;
  bool true_size;

  find_size (handle, &width, &height, &true_size);
  job->answer.pages = 1;
  job->answer.page_width_mm = true_size ? 25.4 * width : NAN;
  job->answer.page_height_mm = true_size ? 25.4 * height : NAN;
  job->answer.width_px = width * job->dpi;
  job->answer.height_px = height * job->dpi;
  answer_fit (job, SURFACE_LONGEST);
}

/* The library has one code for whatever goes wrong: only its words tell "NoMemory" apart. */
static bool
failed_for_memory (const GError *error)
{
  return error && strcasestr (error->message, "memory");
}

void
decode_svg (Job *job)
{
  RsvgHandle *handle = open_drawing (job);
  GError *error = NULL;
  cairo_t *paper;

  rsvg_handle_set_dpi (handle, UNITS_TO_THE_INCH);
  tell_size (job, handle);
  if (job->facts_only)
    answer_facts (job);
  answer_progress (0);
  paper = surface_paper (job);
  const RsvgRectangle whole = { 0, 0, job->answer.width_px, job->answer.height_px };
  if (!rsvg_handle_render_document (handle, paper, &whole, &error))
    answer_refuse (failed_for_memory (error) ? DECODE_TOO_MUCH_MEMORY : DECODE_DAMAGED);
  surface_answer (job, paper);
}
