/* The decoder as a process: what ends it, what it may say, what it leaves behind. */
#define _GNU_SOURCE
#include <check.h>
#include <dirent.h>
#include <errno.h>
#include <fcntl.h>
#include <pthread.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <sys/stat.h>
#include <sys/wait.h>
#include <unistd.h>
#include "plan/decode-private.h"
#include "support/pictures.h"
#include "support/run-suite.h"

static const DecodeRequest FILLED = { .page = 1, .dpi = 300, .most_pixels = 1000000, .seconds = 60, .most_bytes = (size_t) 1 << 30 };

static int
open_descriptors (void)
{
  DIR *folder = opendir ("/proc/self/fd");
  int count = 0;

  while (readdir (folder))
    count++;
  closedir (folder);
  return count;
}

static void
assert_no_child_is_left (void)
{
  ck_assert_int_eq (waitpid (-1, NULL, WNOHANG), -1);
  ck_assert_int_eq (errno, ECHILD);
}

/* How it ends when this script stands in for the decoder. */
static DecodeStatus
with_impostor (const char *script, double seconds, const DecodeWatch *watch)
{
  char path[] = "/tmp/trammel-impostor-XXXXXX";
  const int file = mkstemp (path), before = open_descriptors ();
  DecodeRequest request = FILLED;
  Raster *raster = NULL;
  DecodeStatus status;

  dprintf (file, "#!/bin/sh\n%s\n", script);
  fchmod (file, 0700);
  close (file);
  request.file = open ("/dev/null", O_RDONLY | O_CLOEXEC);
  request.seconds = seconds;
  status = decode_with (path, &request, watch, NULL, &raster);
  close (request.file);
  unlink (path);
  ck_assert_ptr_null (raster);
  ck_assert_int_eq (open_descriptors (), before - 1);
  assert_no_child_is_left ();
  return status;
}

static bool
stop_at_once (double done, void *data)
{
  return false;
}

static bool
stop_at_third_word (double done, void *data)
{
  return ++*(int *) data < 3;
}

START_TEST (who_cancels_is_obeyed)
{
  int words = 0;
  const DecodeWatch at_once = { stop_at_once, NULL }, at_third = { stop_at_third_word, &words };

  ck_assert_int_eq (with_impostor ("exec sleep 1000", 60, &at_once), DECODE_CANCELLED);
  ck_assert_int_eq (with_impostor ("exec sleep 1000", 60, &at_third), DECODE_CANCELLED);
  ck_assert_int_eq (words, 3);
}
END_TEST

START_TEST (a_real_picture_can_be_cancelled_while_it_is_decoded)
{
  const int file = file_of (png_of_paper (8000, 8000));
  int words = 0;
  const DecodeWatch watch = { stop_at_third_word, &words };
  const DecodeRequest request = { .file = file };
  Raster *raster = NULL;

  ck_assert_int_eq (decode (&request, &watch, NULL, &raster), DECODE_CANCELLED);
  ck_assert_ptr_null (raster);
  assert_no_child_is_left ();
  close (file);
}
END_TEST

START_TEST (who_takes_too_long_is_ended)
{
  ck_assert_int_eq (with_impostor ("exec sleep 1000", 0.2, NULL), DECODE_TOOK_TOO_LONG);
  ck_assert_int_eq (with_impostor ("trap '' TERM INT HUP; exec 1>&-; sleep 1000 & wait", 60, NULL), DECODE_HELPER_DIED);
  ck_assert_int_eq (with_impostor ("kill -XCPU $$", 60, NULL), DECODE_TOOK_TOO_LONG);
}
END_TEST

START_TEST (what_is_no_answer_is_not_believed)
{
  ck_assert_int_eq (with_impostor ("exit 0", 60, NULL), DECODE_HELPER_DIED);
  ck_assert_int_eq (with_impostor ("echo All is well", 60, NULL), DECODE_HELPER_DIED);
  ck_assert_int_eq (with_impostor ("exec cat /dev/zero", 60, NULL), DECODE_HELPER_DIED);
  ck_assert_int_eq (with_impostor ("exec head -c 5000 /dev/urandom", 60, NULL), DECODE_HELPER_DIED);
}
END_TEST

START_TEST (what_it_died_of_is_told)
{
  ck_assert_int_eq (with_impostor ("kill -SEGV $$", 60, NULL), DECODE_HELPER_DIED);
  ck_assert_int_eq (with_impostor ("kill -KILL $$", 60, NULL), DECODE_TOO_MUCH_MEMORY);
  ck_assert_int_eq (with_impostor ("exit 127", 60, NULL), DECODE_HELPER_MISSING);
}
END_TEST

START_TEST (a_decoder_that_is_missing_is_told)
{
  const int before = open_descriptors ();
  DecodeRequest request = FILLED;
  Raster *raster = NULL;

  request.file = STDIN_FILENO;
  ck_assert_int_eq (decode_with ("/nowhere/trammel-decoder", &request, NULL, NULL, &raster), DECODE_HELPER_MISSING);
  ck_assert_ptr_null (raster);
  ck_assert_int_eq (open_descriptors (), before);
  assert_no_child_is_left ();
}
END_TEST

/* Its standard ones, and the one through which ls looks. */
START_TEST (it_is_handed_nothing_but_the_file_and_the_pipe)
{
  char path[] = "/tmp/trammel-impostor-XXXXXX", seen[100] = "";
  const int script = mkstemp (path), open_for_all = dup (STDERR_FILENO);
  DecodeRequest request = FILLED;
  DecodeTalk talk;

  dprintf (script, "#!/bin/sh\nexec ls /proc/self/fd\n");
  fchmod (script, 0700);
  close (script);
  request.file = open ("/dev/null", O_RDONLY);
  ck_assert_int_eq (decode_talk_begin (&talk, path, &request, NULL), DECODE_OK);
  ck_assert_int_eq (decode_talk_read (&talk, seen, 8, NAN), DECODE_OK);
  ck_assert_int_eq (decode_talk_read_end (&talk), DECODE_OK);
  ck_assert_int_eq (decode_talk_end (&talk, DECODE_OK), DECODE_OK);
  ck_assert_str_eq (seen, "0\n1\n2\n3\n");
  close (request.file);
  close (open_for_all);
  unlink (path);
}
END_TEST

START_TEST (it_works_with_the_standard_descriptors_closed)
{
  const int file = file_of (png_drawn (LOOK_COLOUR, 32, 16));
  int low, output = dup (STDOUT_FILENO), errors = dup (STDERR_FILENO);
  Raster *raster = NULL;
  DecodeStatus status;

  close (0);
  close (1);
  close (2);
  low = dup (file);
  status = decode (&(DecodeRequest) { .file = low }, NULL, NULL, &raster);
  close (low);
  dup2 (output, STDOUT_FILENO);
  dup2 (errors, STDERR_FILENO);
  ck_assert_int_eq (low, 0);
  ck_assert_int_eq (status, DECODE_OK);
  assert_quarters (raster, 0);
  raster_unref (raster);
  close (file);
}
END_TEST

#if defined (__SANITIZE_ADDRESS__)
static const unsigned MISSING = DECODE_LIMIT_MEMORY;
#else
static const unsigned MISSING = 0;
#endif

/* Sanitizers need more address space than a limit could leave them: then the facts say that it is missing. */
START_TEST (memory_is_limited_and_what_is_not_limited_is_told)
{
  const int file = file_of (png_of_paper (12000, 12000));
  const DecodeRequest request = { .file = file, .most_bytes = 400000000 };
  DecodeFacts facts = { .limits_missing = 0 };
  Raster *raster = NULL;
  const DecodeStatus status = decode (&request, NULL, &facts, &raster);

  ck_assert_int_eq (status, MISSING ? DECODE_OK : DECODE_TOO_MUCH_MEMORY);
  ck_assert_int_eq (facts.limits_missing & DECODE_LIMIT_MEMORY, MISSING);
  raster_unref (raster);
  close (file);
}
END_TEST

#if !defined (__SANITIZE_ADDRESS__)
START_TEST (a_drawing_or_page_that_needs_too_much_memory_is_told)
{
  const int files[] = {
    file_of (text_bytes ("<svg xmlns='http://www.w3.org/2000/svg' width='900mm' height='900mm'><filter id='f'><feGaussianBlur "
                         "stdDeviation='9'/></filter><g filter='url(#f)'><rect width='90%' height='90%'/></g></svg>")),
    file_of (pdf_drawn (1)),
  };

  for (int i = 0; i < 2; i++)
    {
      const DecodeRequest request = { .file = files[i], .dpi = i == 0 ? 300 : 9600, .most_bytes = i == 0 ? 600000000 : 120000000 };
      Raster *raster = NULL;

      ck_assert_int_eq (decode (&request, NULL, NULL, &raster), DECODE_TOO_MUCH_MEMORY);
      close (files[i]);
    }
}
END_TEST
#endif

START_TEST (the_file_keeps_its_offset)
{
  const int file = file_of (png_drawn (LOOK_COLOUR, 32, 16));
  Raster *raster = NULL;

  lseek (file, 7, SEEK_SET);
  ck_assert_int_eq (decode (&(DecodeRequest) { .file = file }, NULL, NULL, &raster), DECODE_OK);
  ck_assert_int_eq (lseek (file, 0, SEEK_CUR), 7);
  raster_unref (raster);
  close (file);
}
END_TEST

static bool
never_falls (double done, void *data)
{
  double *last = data;

  ck_assert (done >= *last && done <= 1);
  *last = done;
  return true;
}

START_TEST (progress_rises_to_the_whole)
{
  const int file = file_of (png_of_paper (4000, 4000));
  double last = 0;
  const DecodeWatch watch = { never_falls, &last };
  Raster *raster = NULL;

  ck_assert_int_eq (decode (&(DecodeRequest) { .file = file }, &watch, NULL, &raster), DECODE_OK);
  ck_assert (last == 1);
  raster_unref (raster);
  close (file);
}
END_TEST

static void *
decode_some (void *data)
{
  for (int i = 0; i < 5; i++)
    {
      Raster *raster = decoded (file_of (png_drawn (LOOK_COLOUR, 32, 16)), NULL);

      assert_quarters (raster, 0);
      raster_unref (raster);
    }
  return NULL;
}

START_TEST (several_threads_decode_at_once)
{
  const int before = open_descriptors ();
  pthread_t threads[4];

  for (int i = 0; i < 4; i++)
    ck_assert_int_eq (pthread_create (&threads[i], NULL, decode_some, NULL), 0);
  for (int i = 0; i < 4; i++)
    pthread_join (threads[i], NULL);
  ck_assert_int_eq (open_descriptors (), before);
  assert_no_child_is_left ();
}
END_TEST

int
main (void)
{
  TCase *tests = tcase_create ("process");

  tcase_add_test (tests, who_cancels_is_obeyed);
  tcase_add_test (tests, a_real_picture_can_be_cancelled_while_it_is_decoded);
  tcase_add_test (tests, who_takes_too_long_is_ended);
  tcase_add_test (tests, what_is_no_answer_is_not_believed);
  tcase_add_test (tests, what_it_died_of_is_told);
  tcase_add_test (tests, a_decoder_that_is_missing_is_told);
  tcase_add_test (tests, it_is_handed_nothing_but_the_file_and_the_pipe);
  tcase_add_test (tests, it_works_with_the_standard_descriptors_closed);
  tcase_add_test (tests, memory_is_limited_and_what_is_not_limited_is_told);
#if !defined (__SANITIZE_ADDRESS__)
  tcase_add_test (tests, a_drawing_or_page_that_needs_too_much_memory_is_told);
#endif
  tcase_add_test (tests, the_file_keeps_its_offset);
  tcase_add_test (tests, progress_rises_to_the_whole);
  tcase_add_test (tests, several_threads_decode_at_once);
  return run_suite (suite_create ("the decoder's process"), tests);
}
