#pragma once
#include "decoder/job.h"

/** Each decodes the job's file as a kind of picture or page, answers, and ends the program. */
_Noreturn void decode_pixbuf (Job *job);        /* PNG, JPEG, TIFF, WebP, BMP, GIF: the platform's GdkPixbuf loaders */
_Noreturn void decode_svg    (Job *job);        /* librsvg */
_Noreturn void decode_pdf    (Job *job);        /* poppler */
