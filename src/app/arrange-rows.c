#include "trammel-config.h"
#include "app/arrange-rows.h"
#include <glib/gi18n-lib.h>
#include <math.h>
#include "figures/ballast-worst.h"
#include "figures/movers.h"
#include "figures/names.h"
#include "figures/report-ballast.h"

/* More rows nobody reads: what comes last helps least. */
enum { MOST_MOVERS = 8 };

static char *
mover_reach (const Aeroplane *aeroplane, const Part *part)
{
  g_auto (GStrv) rooms = part->bays != NULL ? g_strsplit (part->bays, " ", -1) : NULL;

  if (rooms == NULL)
    return g_strdup (_("on its rail"));
  g_autofree char *names = g_strjoinv (", ", rooms);
  /* Translators: %s is a list of bays */
  return g_strdup_printf (_("in %s"), names);
}

GtkWidget *
arrange_rows_mover (const Aeroplane *aeroplane, const Part *part)
{
  GtkWidget *check = gtk_check_button_new (), *line = gtk_box_new (GTK_ORIENTATION_HORIZONTAL, 8);
  GtkWidget *name = gtk_label_new (piece_name (&part->piece));
  g_autofree char *reach = mover_reach (aeroplane, part);
  GtkWidget *where = gtk_label_new (reach);

  gtk_label_set_xalign (GTK_LABEL (name), 0);
  gtk_label_set_ellipsize (GTK_LABEL (name), PANGO_ELLIPSIZE_END);
  gtk_widget_set_hexpand (name, TRUE);
  gtk_label_set_ellipsize (GTK_LABEL (where), PANGO_ELLIPSIZE_END);
  gtk_widget_add_css_class (where, "dim-label");
  gtk_box_append (GTK_BOX (line), name);
  gtk_box_append (GTK_BOX (line), where);
  gtk_check_button_set_child (GTK_CHECK_BUTTON (check), line);
  gtk_widget_add_css_class (check, "field");
  gtk_accessible_update_property (GTK_ACCESSIBLE (check), GTK_ACCESSIBLE_PROPERTY_LABEL, piece_name (&part->piece), -1);
  return check;
}

static void
add_row (TrammelGroup *group, const char *label, const char *words)
{
  GtkWidget *line = gtk_box_new (GTK_ORIENTATION_HORIZONTAL, 12), *what = gtk_label_new (label), *said = gtk_label_new (words);

  gtk_label_set_xalign (GTK_LABEL (what), 0);
  gtk_label_set_wrap (GTK_LABEL (what), TRUE);
  gtk_widget_set_hexpand (what, TRUE);
  gtk_widget_set_visible (said, words != NULL);
  gtk_label_set_xalign (GTK_LABEL (said), 1);
  gtk_label_set_justify (GTK_LABEL (said), GTK_JUSTIFY_RIGHT);
  gtk_label_set_wrap (GTK_LABEL (said), TRUE);
  gtk_widget_add_css_class (line, "field");
  gtk_widget_add_css_class (line, "said");
  gtk_box_append (GTK_BOX (line), what);
  gtk_box_append (GTK_BOX (line), said);
  trammel_group_add (group, line);
}

static void
add_ballast_places (TrammelGroup *group, const GArray *places, Units units)
{
  for (guint i = 0; i < places->len; i++) {
    const BallastPlace *place = &g_array_index (places, BallastPlace, i);
    g_autofree char *name = ballast_place_name (place), *text = ballast_place_text (place, units);
    /* Translators: %s is a place for ballast: "Fore end of nose" */
    g_autofree char *label = g_strdup_printf (_("Ballast: %s"), name), *block = ballast_place_block (place, units);
    g_autofree char *said = g_strjoin ("\n", text, block, NULL);

    add_row (group, label, said);
  }
}

static void
add_ballast (TrammelGroup *group, const Arranging *arranging, const Arrangement *found, ArrangeStatus status, Units units)
{
  g_autofree char *mass = units_mass (units, found->ballast * 1e3), *place = NULL, *ballast = NULL, *margin = NULL;
  g_autoptr (GArray) places = NULL;

  if (found->ballast * 1e3 < ARRANGING_LEAST_BALLAST_G) {
    add_row (group, _("Ballast"), _("none needed"));
    return;
  }
  place = arranging_ballast_phrase (arranging, found);
  /* Translators: a mass, and where it goes: "26 g at the fore end of “nose”" */
  ballast = g_strdup_printf (_("%s %s"), mass, place);
  places = arranging_ballast_places (arranging, found);
  margin = arranging_ballast_sentence (arranging, found, units);
  add_row (group, _("Ballast"), ballast);
  if (margin != NULL)
    add_row (group, margin, NULL);
  add_row (group, _("Better balanced by itself"),
           status == ARRANGE_PROVED || found->leads_gap > 0 ? _("not possible, that is proved") : _("perhaps: the time ended"));
  add_ballast_places (group, places, units);
}

static void
add_margin (TrammelGroup *group, const Figures *now, const Figures *then)
{
  g_autofree char *was = units_percent (now->balance.static_margin_percent), *is = units_percent (then->balance.static_margin_percent);
  /* Translators: a figure now, and what it becomes */
  g_autofree char *text = g_strdup_printf (_("%s, then %s"), was, is);

  add_row (group, _("Static Margin"), text);
}

static void
add_lead (TrammelGroup *group, const Arranging *arranging, const Arrangement *found, size_t i, Units units)
{
  const double length = arranging_lead_length (arranging, i);
  g_autofree char *name = arranging_lead_title (arranging, i);
  g_autofree char *needed = units_length (units, arranging_lead_needed (arranging, found, i)), *had = units_length (units, length);
  g_autofree char *text = isnan (length) ? g_strdup_printf (_("needs %s"), needed) : g_strdup_printf (_("needs %s of %s"), needed, had);

  add_row (group, name, text);
}

void
arrange_rows_add_difference (TrammelGroup *group, const Arranging *arranging, const Arrangements *found, size_t shown, Units units)
{
  const size_t other = shown == 0 ? 1 : 0;

  if (found->count < 2)
    return;
  /* Translators: %d is the number of an offer: what this one is like beside that one stands after it */
  g_autofree char *label = g_strdup_printf (_("Beside offer %d"), (int) other + 1);
  g_autofree char *text = arranging_difference_text (arranging, &found->found[shown], &found->found[other], units);
  add_row (group, label, text);
}

void
arrange_rows_add (TrammelGroup *group, const Arranging *arranging, const Arrangement *found, ArrangeStatus status,
                  const Figures *now, const Figures *then, Units units)
{
  const size_t leads = arranging_lead_count (arranging);

  add_ballast (group, arranging, found, status, units);
  add_margin (group, now, then);
  for (size_t i = 0; i < arranging_movable (arranging); i++) {
    g_autofree char *move = arranging_move_text (arranging, found, i, units);

    add_row (group, piece_name (&arranging_parts (arranging)[i]->piece), move);
  }
  for (size_t i = 0; i < leads; i++)
    add_lead (group, arranging, found, i, units);
  if (found->leads_gap > 0) {
    g_autofree char *length = units_length (units, found->leads_gap * 1e3);
    /* Translators: a length by which all leads together might be shorter at most */
    g_autofree char *text = g_strdup_printf (_("perhaps, by %s in all at most"), length);

    add_row (group, _("Shorter leads"), text);
  }
}

size_t
arrange_rows_add_movers (TrammelGroup *group, const Figures *figures, Units units)
{
  Movers movers = movers_of (figures);
  g_autofree char *together = movers_text (&movers, units);
  size_t added = together != NULL;

  if (together != NULL)
    add_row (group, together, NULL);
  for (size_t i = 0; i < movers.count && added < MOST_MOVERS; i++) {
    g_autofree char *text = mover_text (&movers, &movers.of[i], units);

    if (text == NULL)
      continue;
    add_row (group, piece_name (&movers.of[i].part->piece), text);
    added++;
  }
  movers_clear (&movers);
  g_autoptr (GArray) places = ballast_places (figures->aeroplane, ballast_need_of (figures));
  add_ballast_places (group, places, units);
  const BallastWorst worst = ballast_worst_of (figures);
  g_autofree char *nose = ballast_worst_text (&worst, units);
  if (nose != NULL)
    add_row (group, nose, NULL);
  return added + places->len + (nose != NULL);
}
