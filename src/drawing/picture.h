#pragma once
#include <cairo.h>
#include <glib.h>

/** A drawing as pixels in a file, with its physical size recorded. */
typedef struct {
  int width, height;             /* px, > 0 */
  int per_metre;                 /* px a metre, recorded in the file: at that resolution it is true to size */
  const char *title;             /* recorded too; may be NULL */
  void (*paint) (cairo_t *cr, const void *data);      /* user units are px of the whole picture; its ground is white */
  const void *data;
} Picture;

/** The picture as a PNG (ISO/IEC 15948), 8 bits red, green, blue. It is painted in bands, so that a large one needs little memory; `paint`
 *  is called for each. NULL and an EXPORT_ERROR_DRAWING when memory runs out or cairo gives up. */
GBytes *picture_png (const Picture *picture, GError **error);
