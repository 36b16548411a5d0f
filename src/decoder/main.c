/* trammel-decoder: turns the picture or page on its standard input into pixels on its standard output. Only trammel runs it. */
#include <errno.h>
#include <stdlib.h>
#include <sys/mman.h>
#include <sys/stat.h>
#include <unistd.h>
#include "decoder/answer.h"
#include "decoder/kinds.h"
#include "decoder/confine.h"
#include "decoder/sniff.h"

static unsigned long long
number (char *argument)
{
  char *end;
  const unsigned long long value = strtoull (argument, &end, 10);

  if (end == argument || *end != '\0')
    exit (EXIT_FAILURE);
  return value;
}

/* Private, so that what was handed in open for writing stays as it is; the descriptor is given up before anything is understood. */
static void
take_file (Job *job)
{
  struct stat file;
  void *bytes;

  if (fstat (STDIN_FILENO, &file) != 0 || !S_ISREG (file.st_mode))
    answer_refuse (DECODE_CANNOT_READ);
  if (file.st_size == 0)
    answer_refuse (DECODE_EMPTY);
  bytes = mmap (NULL, (size_t) file.st_size, PROT_READ, MAP_PRIVATE, STDIN_FILENO, 0);
  if (bytes == MAP_FAILED)
    answer_refuse (errno == ENOMEM ? DECODE_TOO_MUCH_MEMORY : DECODE_CANNOT_READ);
  close (STDIN_FILENO);
  job->bytes = bytes;
  job->length = (size_t) file.st_size;
}

static _Noreturn void
decode_kind (Job *job, DecodeKind kind)
{
  job->answer.kind = kind;
  if (kind == DECODE_PDF)
    decode_pdf (job);
  if (kind == DECODE_SVG && job->page > 1)
    answer_refuse (DECODE_NO_SUCH_PAGE);
  if (kind == DECODE_SVG)
    decode_svg (job);
  decode_pixbuf (job);
}

int
main (int count, char **arguments)
{
  Job job = { .answer = { .page_width_mm = NAN, .page_height_mm = NAN, .stored_dpi_x = NAN, .stored_dpi_y = NAN } };
  DecodeKind kind;
  size_t most_bytes;

  if (count != DECODE_ARGUMENT_END)
    return EXIT_FAILURE;
  job.page = (int) number (arguments[DECODE_ARGUMENT_PAGE]);
  job.dpi = (double) number (arguments[DECODE_ARGUMENT_MILLIDPI]) / 1000;
  job.most_pixels = (double) number (arguments[DECODE_ARGUMENT_MOST_PIXELS]);
  job.facts_only = number (arguments[DECODE_ARGUMENT_FACTS_ONLY]) != 0;
  most_bytes = (size_t) number (arguments[DECODE_ARGUMENT_MOST_BYTES]);
  job.answer.limits_missing = confine_process (most_bytes, (unsigned) number (arguments[DECODE_ARGUMENT_SECONDS]));
  answer_also_on_abort (most_bytes);
  take_file (&job);
  if (!sniff_kind (job.bytes, job.length, &kind))
    answer_refuse (DECODE_NOT_A_PICTURE);
  decode_kind (&job, kind);
}
