#include "document/history.h"
#include "document/changes.h"
#include "support/run-suite.h"

typedef enum { DO, DO_SAME, PREVIEW, PROPOSE, SETTLE, ABANDON, UNDO, REDO, SAVE } Act;

/* A step of a story: what is done, and where the mark is and what can be done afterwards. A story ends where `story` begins anew. */
typedef struct {
  const char *story;            /* of the first step only */
  Act act;
  double to;                    /* the mark's station, mm */
  const char *label;
  bool refused;                 /* undo and redo say so */
  double expect;
  size_t steps;
  const char *undo, *redo;
  bool unsaved, previewing;
} StoryStep;

static const StoryStep steps[] = {
  { .story = "one step there and back", .act = DO, .to = 41.7, .label = "Move Mark", .expect = 41.7, .steps = 1, .undo = "Move Mark", .unsaved = true },
  { .act = UNDO, .expect = 30.3, .redo = "Move Mark" },
  { .act = REDO, .expect = 41.7, .steps = 1, .undo = "Move Mark", .unsaved = true },

  { .story = "nothing to go to", .act = UNDO, .refused = true, .expect = 30.3 },
  { .act = REDO, .refused = true, .expect = 30.3 },

  { .story = "the same value adds no step", .act = DO_SAME, .label = "Nothing", .expect = 30.3 },

  { .story = "a drag is one step", .act = PREVIEW, .to = 31, .expect = 31, .unsaved = true, .previewing = true },
  { .act = PREVIEW, .to = 33.2, .expect = 33.2, .unsaved = true, .previewing = true },
  { .act = SETTLE, .label = "Drag Mark", .expect = 33.2, .steps = 1, .undo = "Drag Mark", .unsaved = true },
  { .act = UNDO, .expect = 30.3, .redo = "Drag Mark" },

  { .story = "a drag that comes back adds no step", .act = PREVIEW, .to = 38.8, .expect = 38.8, .unsaved = true, .previewing = true },
  { .act = PREVIEW, .to = 30.3, .expect = 30.3, .previewing = true },
  { .act = SETTLE, .label = "Drag Mark", .expect = 30.3 },

  { .story = "a drag given up leaves what could be redone", .act = DO, .to = 36.1, .label = "A", .expect = 36.1, .steps = 1, .undo = "A", .unsaved = true },
  { .act = UNDO, .expect = 30.3, .redo = "A" },
  { .act = PREVIEW, .to = 50, .expect = 50, .redo = "A", .unsaved = true, .previewing = true },
  { .act = ABANDON, .expect = 30.3, .redo = "A" },
  { .act = REDO, .expect = 36.1, .steps = 1, .undo = "A", .unsaved = true },

  { .story = "settling without a drag does nothing", .act = SETTLE, .label = "Nothing", .expect = 30.3 },
  { .act = ABANDON, .expect = 30.3 },

  { .story = "undo abandons a drag first", .act = DO, .to = 32, .label = "A", .expect = 32, .steps = 1, .undo = "A", .unsaved = true },
  { .act = PREVIEW, .to = 39, .expect = 39, .steps = 1, .undo = "A", .unsaved = true, .previewing = true },
  { .act = UNDO, .expect = 30.3, .redo = "A" },
  { .act = PREVIEW, .to = 39, .expect = 39, .redo = "A", .unsaved = true, .previewing = true },
  { .act = REDO, .expect = 32, .steps = 1, .undo = "A", .unsaved = true },

  { .story = "a new step drops what could be redone", .act = DO, .to = 31, .label = "A", .expect = 31, .steps = 1, .undo = "A", .unsaved = true },
  { .act = DO, .to = 32, .label = "B", .expect = 32, .steps = 2, .undo = "B", .unsaved = true },
  { .act = UNDO, .expect = 31, .steps = 1, .undo = "A", .redo = "B", .unsaved = true },
  { .act = DO, .to = 33, .label = "C", .expect = 33, .steps = 2, .undo = "C", .unsaved = true },
  { .act = REDO, .refused = true, .expect = 33, .steps = 2, .undo = "C", .unsaved = true },

  { .story = "back at the saved value it is saved again", .act = DO, .to = 31, .label = "A", .expect = 31, .steps = 1, .undo = "A", .unsaved = true },
  { .act = SAVE, .expect = 31, .steps = 1, .undo = "A" },
  { .act = DO, .to = 32, .label = "B", .expect = 32, .steps = 2, .undo = "B", .unsaved = true },
  { .act = UNDO, .expect = 31, .steps = 1, .undo = "A", .redo = "B" },
  { .act = UNDO, .expect = 30.3, .redo = "A", .unsaved = true },
  { .act = DO, .to = 31, .label = "By hand", .expect = 31, .steps = 1, .undo = "By hand" },

  { .story = "what is only proposed is nothing to save until it is accepted", .act = PROPOSE, .to = 35, .expect = 35, .previewing = true },
  { .act = PROPOSE, .to = 36, .expect = 36, .previewing = true },
  { .act = SETTLE, .label = "Add", .expect = 36, .steps = 1, .undo = "Add", .unsaved = true },

  { .story = "a proposal over unsaved work hides it not", .act = DO, .to = 31, .label = "A", .expect = 31, .steps = 1, .undo = "A", .unsaved = true },
  { .act = PROPOSE, .to = 30.3, .expect = 30.3, .steps = 1, .undo = "A", .unsaved = true, .previewing = true },
  { .act = ABANDON, .expect = 31, .steps = 1, .undo = "A", .unsaved = true },

  { .story = "a drag after a proposal is work", .act = PROPOSE, .to = 35, .expect = 35, .previewing = true },
  { .act = PREVIEW, .to = 36, .expect = 36, .unsaved = true, .previewing = true },

  { .story = "a step done during a drag ends it", .act = PREVIEW, .to = 35, .expect = 35, .unsaved = true, .previewing = true },
  { .act = DO, .to = 36, .label = "A", .expect = 36, .steps = 1, .undo = "A", .unsaved = true },
  { .act = UNDO, .expect = 30.3, .redo = "A" },
};

static Aeroplane *
marked_at (double station)
{
  g_autoptr (Aeroplane) empty = aeroplane_new ();

  return aeroplane_with_added (empty, &mark_new (station)->piece);
}

static bool
act (History *history, const StoryStep *step)
{
  switch (step->act)
    {
    case DO:      history_do (history, change_mark_station (history_now (history), 0, step->to), step->label); break;
    case DO_SAME: history_do (history, aeroplane_ref (history_now (history)), step->label); break;
    case PREVIEW: history_preview (history, change_mark_station (history_now (history), 0, step->to)); break;
    case PROPOSE: history_propose (history, change_mark_station (history_now (history), 0, step->to)); break;
    case SETTLE:  history_settle (history, step->label); break;
    case ABANDON: history_abandon (history); break;
    case UNDO:    return history_undo (history);
    case REDO:    return history_redo (history);
    case SAVE:    history_mark_saved (history); break;
    }
  return true;
}

static void
assert_stands (const History *history, const StoryStep *step, const char *story, size_t line)
{
  const double station = aeroplane_mark (history_now (history), 0)->station;

  ck_assert_msg (station == step->expect, "%s (%zu): %g and not %g", story, line, station, step->expect);
  ck_assert_msg (history_step_count (history) == step->steps, "%s (%zu): %zu steps", story, line, history_step_count (history));
  ck_assert_msg (g_strcmp0 (history_undo_label (history), step->undo) == 0, "%s (%zu): undo", story, line);
  ck_assert_msg (g_strcmp0 (history_redo_label (history), step->redo) == 0, "%s (%zu): redo", story, line);
  ck_assert_msg (history_is_saved (history) == !step->unsaved, "%s (%zu): saved", story, line);
  ck_assert_msg (history_is_previewing (history) == step->previewing, "%s (%zu): previewing", story, line);
}

START_TEST (every_story_stands_where_it_should_after_each_step)
{
  History *history = NULL;
  const char *story = NULL;

  for (size_t i = 0; i < G_N_ELEMENTS (steps); i++)
    {
      if (steps[i].story)
        {
          history_free (history);
          history = history_new (marked_at (30.3));
          story = steps[i].story;
        }
      ck_assert_msg (act (history, &steps[i]) == !steps[i].refused, "%s (%zu)", story, i);
      assert_stands (history, &steps[i], story, i);
    }
  history_free (history);
}
END_TEST

/* The file may hold what the window no longer shows, or what nobody here wrote. */
START_TEST (the_saved_value_may_be_another_than_the_one_shown)
{
  g_autoptr (Aeroplane) written = marked_at (31.4);
  History *history = history_new (marked_at (30.3));

  history_do (history, aeroplane_ref (written), "A");
  history_do (history, marked_at (32.9), "B");
  history_mark_saved_as (history, written);
  ck_assert (!history_is_saved (history));
  ck_assert (history_undo (history));
  ck_assert (history_is_saved (history));
  history_mark_saved_as (history, NULL);
  ck_assert (!history_is_saved (history));
  history_mark_saved (history);
  ck_assert (history_is_saved (history));
  history_free (history);
}
END_TEST

START_TEST (ten_thousand_steps_are_all_there)
{
  enum { many = 10000 };
  History *history = history_new (marked_at (0));

  for (int i = 1; i <= many; i++)
    {
      g_autofree char *label = g_strdup_printf ("Step %d", i);

      history_do (history, change_mark_station (history_now (history), 0, i / 8.0), label);
    }
  ck_assert_uint_eq (history_step_count (history), many);
  for (int i = many; i > 0; i--)
    {
      g_autofree char *label = g_strdup_printf ("Step %d", i);

      ck_assert_str_eq (history_undo_label (history), label);
      ck_assert (aeroplane_mark (history_now (history), 0)->station == i / 8.0);
      ck_assert (history_undo (history));
    }
  ck_assert (history_is_saved (history) && !history_undo (history));
  while (history_redo (history))
    ;
  ck_assert (aeroplane_mark (history_now (history), 0)->station == many / 8.0);
  history_free (history);
}
END_TEST

int
main (void)
{
  TCase *tests = tcase_create ("history");

  tcase_set_timeout (tests, 60);
  tcase_add_test (tests, every_story_stands_where_it_should_after_each_step);
  tcase_add_test (tests, the_saved_value_may_be_another_than_the_one_shown);
  tcase_add_test (tests, ten_thousand_steps_are_all_there);
  return run_suite (suite_create ("document history"), tests);
}
