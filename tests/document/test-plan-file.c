#include "document/plan-file.h"
#include <fcntl.h>
#include <sys/stat.h>
#include <unistd.h>
#include "documents.h"
#include "support/run-suite.h"

/* FIPS 180-4 and its published example: the digest of "abc". */
#define DIGEST_OF_ABC "sha256:ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad"

/* A document's folder with a folder of plans in it, and something beside it that no document may reach. */
typedef struct { char *above, *document; } Place;

static void
put (const Place *place, const char *name, const char *text)
{
  g_autofree char *path = g_build_filename (place->above, name, NULL);

  ck_assert (g_file_set_contents (path, text, -1, NULL));
}

static void
link_to (const Place *place, const char *name, const char *target)
{
  g_autofree char *path = g_build_filename (place->above, name, NULL);

  ck_assert_int_eq (symlink (target, path), 0);
}

static Place
place_make (void)
{
  Place place = { .above = folder_make () };
  g_autofree char *plans = g_build_filename (place.above, "own", "plans", NULL);
  g_autofree char *pipe = g_build_filename (place.above, "own", "pipe", NULL);

  place.document = g_build_filename (place.above, "own", "wren.trammel", NULL);
  ck_assert_int_eq (g_mkdir_with_parents (plans, 0700), 0);
  ck_assert_int_eq (mkfifo (pipe, 0600), 0);
  put (&place, "secret.png", "abc");
  put (&place, "own/sheet.png", "abc");
  put (&place, "own/plans/sheet.png", "abc");
  link_to (&place, "own/escape.png", "../secret.png");
  link_to (&place, "own/up", "..");
  return place;
}

static void
place_clear (Place *place)
{
  folder_remove (place->above);
  g_free (place->document);
}

static PlanFileStatus
status_of (const Place *place, const char *file, const char *checksum)
{
  Plan *plan = plan_new (NULL);
  int descriptor = -1;
  PlanFileStatus status;

  plan->file = g_strdup (file);
  plan->checksum = g_strdup (checksum);
  status = plan_file_open (plan, place->document, &descriptor);
  ck_assert_msg ((descriptor >= 0) == (status == PLAN_FILE_SOUND || status == PLAN_FILE_CHANGED), "%s", file);
  if (descriptor >= 0)
    {
      char first;

      ck_assert_int_eq (read (descriptor, &first, 1), 1);
      ck_assert_msg (first == 'a', "it stands at its beginning");
      close (descriptor);
    }
  piece_unref (&plan->piece);
  return status;
}

static const struct { const char *file, *checksum; PlanFileStatus expected; } files[] = {
  { "sheet.png", DIGEST_OF_ABC, PLAN_FILE_SOUND },
  { "plans/sheet.png", DIGEST_OF_ABC, PLAN_FILE_SOUND },
  { "plans/sheet.png", NULL, PLAN_FILE_SOUND },
  { "sheet.png", "sha256:00", PLAN_FILE_CHANGED },
  { NULL, NULL, PLAN_FILE_NONE },
  { "other.png", NULL, PLAN_FILE_MISSING },
  { "nowhere/sheet.png", NULL, PLAN_FILE_MISSING },
  { "plans", NULL, PLAN_FILE_UNREADABLE },
  { "pipe", NULL, PLAN_FILE_UNREADABLE },
  { "", NULL, PLAN_FILE_OUTSIDE },
  { ".", NULL, PLAN_FILE_OUTSIDE },
  { "/etc/hostname", NULL, PLAN_FILE_OUTSIDE },
  { "../secret.png", DIGEST_OF_ABC, PLAN_FILE_OUTSIDE },
  { "plans/../../secret.png", DIGEST_OF_ABC, PLAN_FILE_OUTSIDE },
  { "plans//sheet.png", NULL, PLAN_FILE_OUTSIDE },
  { "escape.png", DIGEST_OF_ABC, PLAN_FILE_OUTSIDE },
  { "up/secret.png", DIGEST_OF_ABC, PLAN_FILE_OUTSIDE },
};

START_TEST (a_plans_file_is_opened_only_within_the_documents_folder)
{
  Place place = place_make ();
  const PlanFileStatus got = status_of (&place, files[_i].file, files[_i].checksum);

  ck_assert_msg (got == files[_i].expected, "%s: %d, wanted %d", files[_i].file, got, files[_i].expected);
  place_clear (&place);
}
END_TEST

START_TEST (a_document_that_was_never_saved_has_no_folder)
{
  Plan *plan = plan_new (NULL);
  int descriptor = -1;

  plan->file = g_strdup ("sheet.png");
  ck_assert_int_eq (plan_file_open (plan, NULL, &descriptor), PLAN_FILE_UNSAVED);
  piece_unref (&plan->piece);
}
END_TEST

START_TEST (every_status_has_a_sentence)
{
  for (PlanFileStatus status = 0; status < PLAN_FILE_STATUS_COUNT; status++)
    ck_assert_msg (g_str_has_suffix (plan_file_sentence (status), "."), "status %d", status);
}
END_TEST

START_TEST (a_file_within_the_folder_is_named_from_there)
{
  static const struct { const char *name, *wanted; } cases[] = {
    { "own/plans/sheet.png", "plans/sheet.png" }, { "own/sheet.png", "sheet.png" }, { "own/up/own/sheet.png", "sheet.png" },
    { "secret.png", NULL }, { "own/escape.png", NULL }, { "own/nothing.png", NULL }, { "own", NULL },
  };
  Place place = place_make ();

  for (size_t i = 0; i < G_N_ELEMENTS (cases); i++)
    {
      g_autofree char *path = g_build_filename (place.above, cases[i].name, NULL);
      g_autofree char *within = plan_file_within (place.document, path);

      ck_assert_msg (g_strcmp0 (within, cases[i].wanted) == 0, "%s: %s", cases[i].name, within);
    }
  place_clear (&place);
}
END_TEST

int
main (void)
{
  TCase *tests = tcase_create ("plan file");

  tcase_add_loop_test (tests, a_plans_file_is_opened_only_within_the_documents_folder, 0, G_N_ELEMENTS (files));
  tcase_add_test (tests, a_document_that_was_never_saved_has_no_folder);
  tcase_add_test (tests, every_status_has_a_sentence);
  tcase_add_test (tests, a_file_within_the_folder_is_named_from_there);
  return run_suite (suite_create ("document plan file"), tests);
}
