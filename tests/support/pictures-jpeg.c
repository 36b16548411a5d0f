#include "support/pictures.h"

#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <jpeglib.h>

/* Exif's mark, a TIFF header and one entry: tag 274, a short (Exif 2.3, section 4.5). */
static void
put_orientation (struct jpeg_compress_struct *jpeg, int orientation)
{
  unsigned char exif[] = "Exif\0\0MM\0*\0\0\0\x08\0\x01\x01\x12\0\x03\0\0\0\x01\0?\0\0\0\0\0";

  exif[25] = (unsigned char) orientation;
  jpeg_write_marker (jpeg, JPEG_APP0 + 1, exif, sizeof exif);
}

static void
put_stored_row (struct jpeg_compress_struct *jpeg, int row, int orientation, int width, int height)
{
  unsigned char *bytes = malloc (4 * (size_t) jpeg->image_width);
  JSAMPROW rows[] = { bytes };

  for (int column = 0; column < (int) jpeg->image_width; column++)
    {
      unsigned char colour[4] = { 0, 0, 0, 255 };        /* printers' programs store how much is left of the paper's white */
      int x, y;

      upright_place (orientation, column, row, width, height, &x, &y);
      quarters_colour (x, y, width, height, colour);
      memcpy (bytes + column * jpeg->input_components, jpeg->input_components == 1 ? colour + 1 : colour, (size_t) jpeg->input_components);
    }
  jpeg_write_scanlines (jpeg, rows, 1);
  free (bytes);
}

Bytes
jpeg_drawn (int channels, int orientation, bool progressive, int width, int height)
{
  static const J_COLOR_SPACE SPACES[] = { JCS_UNKNOWN, JCS_GRAYSCALE, JCS_UNKNOWN, JCS_RGB, JCS_CMYK };
  const bool turned = orientation >= 5;
  struct jpeg_compress_struct jpeg;
  struct jpeg_error_mgr errors;
  unsigned char *bytes = NULL;
  unsigned long length = 0;

  jpeg.err = jpeg_std_error (&errors);
  jpeg_create_compress (&jpeg);
  jpeg_mem_dest (&jpeg, &bytes, &length);
  jpeg.image_width = (JDIMENSION) (turned ? height : width);
  jpeg.image_height = (JDIMENSION) (turned ? width : height);
  jpeg.input_components = channels;
  jpeg.in_color_space = SPACES[channels];
  jpeg_set_defaults (&jpeg);
  jpeg_set_quality (&jpeg, 98, TRUE);
  for (int i = 0; i < jpeg.num_components; i++)
    jpeg.comp_info[i].h_samp_factor = jpeg.comp_info[i].v_samp_factor = 1;         /* colours as fine as brightness */
  jpeg.density_unit = 1;
  jpeg.X_density = 200;
  jpeg.Y_density = 100;
  if (progressive)
    jpeg_simple_progression (&jpeg);
  jpeg_start_compress (&jpeg, TRUE);
  if (orientation)
    put_orientation (&jpeg, orientation);
  for (int row = 0; row < (int) jpeg.image_height; row++)
    put_stored_row (&jpeg, row, orientation, width, height);
  jpeg_finish_compress (&jpeg);
  jpeg_destroy_compress (&jpeg);
  return (Bytes) { bytes, length };
}
