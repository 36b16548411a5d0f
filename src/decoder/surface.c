#include "decoder/surface.h"

#include "decoder/answer.h"

/* Where cairo keeps the colours of a pixel, a 32-bit number in the machine's order. */
#if __BYTE_ORDER__ == __ORDER_LITTLE_ENDIAN__
enum { RED = 2, GREEN = 1, BLUE = 0 };
#else
enum { RED = 1, GREEN = 2, BLUE = 3 };
#endif

cairo_t *
surface_paper (const Job *job)
{
  cairo_surface_t *surface = cairo_image_surface_create (CAIRO_FORMAT_RGB24, (int) job->answer.width, (int) job->answer.height);
  cairo_t *paper = cairo_create (surface);

  cairo_surface_destroy (surface);
  if (cairo_status (paper) != CAIRO_STATUS_SUCCESS)
    answer_refuse (DECODE_TOO_MUCH_MEMORY);
  cairo_set_source_rgb (paper, 1, 1, 1);
  cairo_paint (paper);
  cairo_scale (paper, 1.0 / job->answer.reduced, 1.0 / job->answer.reduced);
  return paper;
}

void
surface_answer (Job *job, cairo_t *paper)
{
  cairo_surface_t *surface = cairo_get_target (paper);
  Picture picture;

  if (cairo_status (paper) == CAIRO_STATUS_NO_MEMORY)
    answer_refuse (DECODE_TOO_MUCH_MEMORY);
  cairo_surface_flush (surface);
  picture = (Picture) {
    .origin = cairo_image_surface_get_data (surface), .right = 4, .down = cairo_image_surface_get_stride (surface),
    .width = cairo_image_surface_get_width (surface), .height = cairo_image_surface_get_height (surface),
    .red = RED, .green = GREEN, .blue = BLUE, .alpha = -1,
  };
  answer_drawn (job, &picture);
}
