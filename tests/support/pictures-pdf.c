#include "support/pictures.h"

#include <cairo-pdf.h>
#include <stdio.h>

static cairo_status_t
append (void *file, const unsigned char *data, unsigned length)
{
  return fwrite (data, 1, length, file) == length ? CAIRO_STATUS_SUCCESS : CAIRO_STATUS_WRITE_ERROR;
}

Bytes
pdf_drawn (int pages)
{
  char *bytes;
  size_t length;
  FILE *file = open_memstream (&bytes, &length);
  cairo_surface_t *surface = cairo_pdf_surface_create_for_stream (append, file, 100, 50);
  cairo_t *cr = cairo_create (surface);

  for (int page = 1; page <= pages; page++)
    {
      cairo_pdf_surface_set_size (surface, 100 + page, 50);
      cairo_rectangle (cr, 0, 0, 10, 10);
      cairo_fill (cr);
      cairo_show_page (cr);
    }
  cairo_destroy (cr);
  cairo_surface_finish (surface);
  cairo_surface_destroy (surface);
  fclose (file);
  return (Bytes) { (unsigned char *) bytes, length };
}

/* Its keys are of the standard's algorithms 3.2 to 3.4 for 40 bits (PDF Reference 1.4, section 3.5), user "lock", owner "owner". */
Bytes
pdf_locked (void)
{
  return text_bytes (
    "%PDF-1.4\n"
    "1 0 obj\n<< /Type /Catalog /Pages 2 0 R >>\nendobj\n"
    "2 0 obj\n<< /Type /Pages /Kids [3 0 R] /Count 1 >>\nendobj\n"
    "3 0 obj\n<< /Type /Page /Parent 2 0 R /MediaBox [0 0 72 72] >>\nendobj\n"
    "4 0 obj\n<< /Filter /Standard /V 1 /R 2 /P -4\n"
    "/O <8df40f5d19662a774442fb072e3d9f19e9d130ec09a4d0061e78fe920f7ab62f>\n"
    "/U <addaa2ed19a8dd2d21cb848e72148b38c8196b9cec3f291db56a77a53e8a9acd> >>\nendobj\n"
    "xref\n0 5\n0000000000 65535 f \n0000000009 00000 n \n0000000058 00000 n \n0000000115 00000 n \n0000000184 00000 n \n"
    "trailer\n<< /Size 5 /Root 1 0 R /Encrypt 4 0 R\n"
    "/ID [<30313233343536373839616263646566> <30313233343536373839616263646566>] >>\n"
    "startxref\n379\n%%EOF\n");
}
