#include "figures/report.h"

#include "trammel-config.h"
#include <glib/gi18n-lib.h>
#include <math.h>
#include "figures/advice.h"
#include "figures/ballast-worst.h"
#include "figures/cautions.h"
#include "figures/lead-lists.h"
#include "figures/notes.h"
#include "figures/report-ballast.h"
#include "figures/report-coverings.h"
#include "figures/report-hatch.h"
#include "figures/passed-click.h"
#include "figures/report-sections.h"
#include "figures/text-table.h"

enum { LINE_WIDTH = 78 };

static void
append_heading (GString *text, const char *heading)
{
  g_string_append_printf (text, "\n%s\n", heading);
}

/* The name in a line of its own, ruled below. */
static void
append_title (GString *text, const char *name)
{
  const char *title = name && *name ? name : _("Unnamed aeroplane");

  g_string_append_printf (text, "%s\n", title);
  for (long i = g_utf8_strlen (title, -1); i > 0; i--)
    g_string_append (text, "─");
  g_string_append_c (text, '\n');
}

static void
append_answer (GString *text, const Figures *figures, Units units)
{
  Advice *advice = advice_new (figures, units);

  text_wrap (text, advice->headline, 0, LINE_WIDTH);
  if (*advice->second)
    text_wrap (text, advice->second, 0, LINE_WIDTH);
  advice_free (advice);
}

static const char *
severity_name (const Note *note)
{
  if (note_needs_change (note))
    /* TRANSLATORS: stands before a note that needs a change */
    return _("Act");
  /* TRANSLATORS: stands before a note that deserves a look */
  return note->severity == NOTE_LOOK ? _("Look") : _("Note");
}

static void
append_notes (GString *text, const GPtrArray *notes, Units units)
{
  if (!notes->len)
    return;
  append_heading (text, _("Notes"));
  for (guint i = 0; i < notes->len; i++)
    {
      const Note *note = g_ptr_array_index (notes, i);
      const char *name = severity_name (note);
      g_autofree char *words = note_words (note, units);

      g_string_append_printf (text, "  %s%*s", name, (int) MAX (1, 6 - g_utf8_strlen (name, -1)), "");
      text_wrap (text, words, 8, LINE_WIDTH);
    }
}

/* What every sheet and report says in small print. */
static void
append_cautions (GString *text)
{
  const char *sentence;

  append_heading (text, _("Cautions"));
  for (size_t i = 0; (sentence = cautions_sentence (i)); i++)
    {
      g_string_append (text, "  ");
      text_wrap (text, sentence, 2, LINE_WIDTH);
    }
}

static void
append_section (GString *text, const char *heading, TextTable table)
{
  if (table.cells->len)
    append_heading (text, heading);
  text_table_print (&table, text);
}

static void
append_beneath (GString *text, const char *sentences)
{
  if (!sentences)
    return;
  g_string_append (text, "  ");
  text_wrap (text, sentences, 2, LINE_WIDTH);
}

static void
append_coverings (GString *text, const Figures *figures, Units units)
{
  g_autofree char *beneath = NULL;

  append_section (text, _("Coverings compared"), report_coverings (figures, units, &beneath));
  append_beneath (text, beneath);
}

static void
append_hatch (GString *text, const Figures *figures, Units units)
{
  g_autofree char *opening = hatch_opening_text (figures, units), *beneath = hatch_length_text (figures, units);

  append_section (text, _("Hatch to cut"), report_hatch (figures, units));
  append_beneath (text, opening);
  append_beneath (text, beneath);
}

static void
append_leads (GString *text, const Figures *figures, Units units)
{
  g_autofree char *beneath = leads_to_buy (figures->aeroplane, units);

  append_section (text, _("Leads"), report_leads (figures, units));
  append_beneath (text, beneath);
}

static void
append_ballast (GString *text, const Figures *figures, Units units)
{
  const BallastWorst worst = ballast_worst_of (figures);
  g_autofree char *beneath = ballast_worst_text (&worst, units);

  append_section (text, _("Ballast at each place, all else as it stands; block long × wide × high"), report_ballast (figures, units));
  if (!beneath)
    return;
  append_heading (text, _("Nose weight in the worst case"));
  g_string_append (text, "  ");
  text_wrap (text, beneath, 2, LINE_WIDTH);
}

char *
report_text (const Figures *figures, Units units)
{
  GString *text = g_string_new (NULL);

  append_title (text, aeroplane_traits (figures->aeroplane).name);
  append_answer (text, figures, units);
  append_section (text, _("Balance"), report_balance (figures, units));
  append_section (text, _("Neutral point"), report_neutral_point (figures, units));
  append_section (text, _("Surfaces"), report_surfaces (figures, units));
  append_section (text, _("Controls"), report_controls (figures, units));
  append_section (text, _("Mass"), report_mass (figures, units));
  append_section (text, _("Parts and structure"), report_parts (figures, units));
  append_section (text, _("Trays, measured from a former"), report_stands (figures, units));
  append_section (text, _("Propeller and cowl"), report_nose (figures, units));
  append_section (text, _("Power"), report_power (figures, units));
  append_leads (text, figures, units);
  append_section (text, _("What is left for the gear"), report_budget (figures, units));
  append_section (text, _("Structure from materials"), report_materials (figures, units));
  append_coverings (text, figures, units);
  append_section (text, _("Mass by group"), report_groups (figures, units));
  append_section (text, _("Moments"), report_moments (figures, units));
  append_section (text, _("Parts that slide"), report_solutions (figures, units));
  append_hatch (text, figures, units);
  append_section (text, _("What moves the balance"), report_movers (figures, units));
  append_ballast (text, figures, units);
  append_section (text, _("Flight"), report_flight (figures, units));
  append_section (text, _("Lift and damping"), report_motion (figures, units));
  append_notes (text, figures->notes, units);
  append_cautions (text);
  return g_string_free (text, FALSE);
}
