#define _GNU_SOURCE
#include "decoder/kinds.h"

#include <poppler.h>
#include <string.h>
#include "decoder/answer.h"
#include "decoder/surface.h"

static const double POINT_MM = 25.4 / 72;
/* The end mark stands in the last kilobyte, says the standard; programs append a little. */
static const size_t END_WITHIN = 4096;

/* A document without its end is mended by guessing what was on its pages: rather none than half. */
static bool
breaks_off (const Job *job)
{
  const size_t tail = MIN (job->length, END_WITHIN);

  return !memmem (job->bytes + job->length - tail, tail, "%%EOF", 5);
}

static PopplerDocument *
open_document (const Job *job)
{
  GBytes *bytes = g_bytes_new_static (job->bytes, job->length);
  GError *error = NULL;
  PopplerDocument *document = poppler_document_new_from_bytes (bytes, NULL, &error);

  if (document)
    return document;
  answer_refuse (g_error_matches (error, POPPLER_ERROR, POPPLER_ERROR_ENCRYPTED) ? DECODE_NEEDS_PASSWORD : DECODE_DAMAGED);
}

static void
tell_size (Job *job, PopplerPage *page)
{
  double width, height;                          /* points, turned as the page is */

  poppler_page_get_size (page, &width, &height);
  job->answer.page_width_mm = width * POINT_MM;
  job->answer.page_height_mm = height * POINT_MM;
  job->answer.width_px = width / 72 * job->dpi;
  job->answer.height_px = height / 72 * job->dpi;
  answer_fit (job, SURFACE_LONGEST);
}

void
decode_pdf (Job *job)
{
  PopplerDocument *document;
  PopplerPage *page;
  cairo_t *paper;

  if (breaks_off (job))
    answer_refuse (DECODE_TRUNCATED);
  document = open_document (job);
  job->answer.pages = (uint32_t) MAX (poppler_document_get_n_pages (document), 0);
  if (job->answer.pages == 0)
    answer_refuse (DECODE_DAMAGED);
  if ((uint32_t) job->page > job->answer.pages)
    answer_refuse (DECODE_NO_SUCH_PAGE);
  page = poppler_document_get_page (document, job->page - 1);
  if (!page)
    answer_refuse (DECODE_DAMAGED);
  tell_size (job, page);
  if (job->facts_only)
    answer_facts (job);
  answer_progress (0);
  paper = surface_paper (job);
  cairo_scale (paper, job->dpi / 72, job->dpi / 72);
  poppler_page_render (page, paper);
  surface_answer (job, paper);
}
