#include "decoder/answer.h"

#include <errno.h>
#include <signal.h>
#include <stdlib.h>
#include <string.h>
#include <sys/mman.h>
#include <unistd.h>

/* Rows are handed over when there are this many bytes of them: as much as a pipe holds. */
enum { HANDFUL = 65536 };

static size_t a_quarter;
static volatile sig_atomic_t pixels_begun;

static void
send (const void *bytes, size_t count)
{
  const char *rest = bytes;

  while (count > 0)
    {
      const ssize_t written = write (STDOUT_FILENO, rest, count);

      if (written < 0 && errno != EINTR)
        _exit (EXIT_FAILURE);
      rest += written > 0 ? written : 0;
      count -= written > 0 ? (size_t) written : 0;
    }
}

void
answer_progress (double done)
{
  const DecodeWire message = { .mark = DECODE_WIRE_MARK, .word = DECODE_WORD_PROGRESS, .done = done };

  send (&message, sizeof message);
}

void
answer_refuse (DecodeStatus status)
{
  const DecodeWire message = { .mark = DECODE_WIRE_MARK, .word = DECODE_WORD_ANSWER, .status = status };

  send (&message, sizeof message);
  _exit (EXIT_SUCCESS);
}

static void
send_answer (Job *job)
{
  job->answer.mark = DECODE_WIRE_MARK;
  job->answer.word = DECODE_WORD_ANSWER;
  job->answer.status = DECODE_OK;
  send (&job->answer, sizeof job->answer);
}

void
answer_facts (Job *job)
{
  job->answer.channels = 0;
  send_answer (job);
  _exit (EXIT_SUCCESS);
}

static _Noreturn void
send_picture (Job *job, const Picture *picture, int reduced)
{
  DecodeWire *answer = &job->answer;
  const size_t row = (size_t) answer->width * (picture_is_grey (picture) ? 1 : 3);
  unsigned char *rows = malloc (row + HANDFUL);
  size_t held = 0;

  if (!rows)
    answer_refuse (DECODE_TOO_MUCH_MEMORY);
  answer->channels = (uint32_t) (row / answer->width);
  pixels_begun = 1;
  send_answer (job);
  for (uint32_t y = 0; y < answer->height; y++)
    {
      picture_row (picture, (int) y, reduced, (int) answer->channels, rows + held);
      held += row;
      if (held < HANDFUL && y + 1 < answer->height)
        continue;
      send (rows, held);
      held = 0;
    }
  _exit (EXIT_SUCCESS);
}

void
answer_picture (Job *job, const Picture *picture)
{
  send_picture (job, picture, (int) job->answer.reduced);
}

void
answer_drawn (Job *job, const Picture *picture)
{
  send_picture (job, picture, 1);
}

void
answer_fit (Job *job, double longest)
{
  DecodeWire *answer = &job->answer;

  if (!(answer->width_px > 0 && answer->height_px > 0))
    answer_refuse (DECODE_NO_PIXELS);
  if (!(answer->width_px <= DECODE_WIRE_LONGEST && answer->height_px <= DECODE_WIRE_LONGEST))
    answer_refuse (DECODE_TOO_LARGE);
  for (answer->reduced = 1; answer->reduced <= DECODE_WIRE_MOST_REDUCED; answer->reduced++)
    {
      answer->width = decode_wire_cells (answer->width_px, answer->reduced);
      answer->height = decode_wire_cells (answer->height_px, answer->reduced);
      if ((double) answer->width * answer->height <= job->most_pixels && answer->width <= longest && answer->height <= longest)
        return;
    }
  answer_refuse (DECODE_TOO_LARGE);
}

/* A library that cannot get memory aborts. Whether that was why: the error it met last, or that a good part of what is allowed is
 * not to be had any more. */
static void
aborted (int signal_number)
{
  const int error = errno;
  void *more = mmap (NULL, a_quarter, PROT_READ | PROT_WRITE, MAP_PRIVATE | MAP_ANONYMOUS | MAP_NORESERVE, -1, 0);

  if (!pixels_begun && (error == ENOMEM || more == MAP_FAILED))
    answer_refuse (DECODE_TOO_MUCH_MEMORY);
  _exit (EXIT_FAILURE);
}

void
answer_also_on_abort (size_t most_bytes)
{
  struct sigaction action = { .sa_handler = aborted };

  a_quarter = most_bytes / 4;
  sigaction (SIGABRT, &action, NULL);
  sigaction (SIGTRAP, &action, NULL);
}
