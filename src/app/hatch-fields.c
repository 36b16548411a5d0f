#include "trammel-config.h"
#include "app/piece-fields.h"
#include <glib/gi18n-lib.h>
#include <math.h>
#include "app/piece-controls.h"
#include "figures/notes.h"
#include "figures/report-hatch.h"

/* The spec's `at` is the figure's place in HatchFigures. */
static double
hatch_value (TrammelSession *session, const FieldSpec *spec)
{
  return *(const double *) (const void *) ((const char *) &trammel_session_figures (session)->hatch + spec->at);
}

static char *
hatch_remark (TrammelSession *session, const FieldSpec *spec)
{
  return hatch_edge_text (trammel_session_aeroplane (session), hatch_value (session, spec), trammel_session_units (session));
}

/* The spec's `at` is 0 for the forward edge moved forward to a former, 1 for the after edge moved aft. */
static const NamedPlace *
hatch_former (TrammelSession *session, const FieldSpec *spec)
{
  const HatchFigures *hatch = &trammel_session_figures (session)->hatch;

  return spec->at == 0 ? hatch->former_from : hatch->former_to;
}

static double
former_value (TrammelSession *session, const FieldSpec *spec)
{
  const NamedPlace *former = hatch_former (session, spec);

  return former != NULL ? former->place : NAN;
}

static char *
former_remark (TrammelSession *session, const FieldSpec *spec)
{
  const NamedPlace *former = hatch_former (session, spec);

  return former != NULL && former->name != NULL ? g_strdup (former->name) : NULL;
}

FieldList
part_hatch_fields (TrammelSession *session)
{
  static const FieldSpec specs[] = {
    { .label = N_("Forward edge"), .kind = FIELD_LENGTH, .value = hatch_value, .at = offsetof (HatchFigures, from_mm), .remark = hatch_remark },
    { .label = N_("After edge"), .kind = FIELD_LENGTH, .value = hatch_value, .at = offsetof (HatchFigures, to_mm), .remark = hatch_remark },
    { .label = N_("Forward to a former"), .kind = FIELD_LENGTH, .value = former_value, .at = 0, .remark = former_remark },
    { .label = N_("Aft to a former"), .kind = FIELD_LENGTH, .value = former_value, .at = 1, .remark = former_remark },
    { .label = N_("Hatch's width"), .kind = FIELD_LENGTH, .value = hatch_value, .at = offsetof (HatchFigures, width_mm) },
    { .label = N_("Floor to leave, from"), .kind = FIELD_LENGTH, .value = hatch_value, .at = offsetof (HatchFigures, floor_from_mm) },
    { .label = N_("Floor to leave, to"), .kind = FIELD_LENGTH, .value = hatch_value, .at = offsetof (HatchFigures, floor_to_mm) },
  };
  const Part *part = trammel_session_selected_part (session);
  const bool is_pack = part != NULL && trammel_session_figures (session)->hatch.part != NULL && part->has_rail
                       && g_strcmp0 (part->class_name, "battery") == 0;

  return (FieldList) { specs, is_pack ? G_N_ELEMENTS (specs) : 0 };
}

static void
hatch_show (GtkWidget *control, TrammelSession *session)
{
  const Figures *figures = trammel_session_figures (session);
  g_autofree char *opening = hatch_opening_text (figures, trammel_session_units (session));
  g_autofree char *length = hatch_length_text (figures, trammel_session_units (session));
  g_autofree char *text = opening != NULL && length != NULL ? g_strdup_printf ("%s\n\n%s", opening, length) : NULL;

  gtk_label_set_text (GTK_LABEL (gtk_widget_get_first_child (control)), text != NULL ? text : "");
}

GtkWidget *
part_hatch_control (TrammelSession *session)
{
  return piece_words_control (session, hatch_show);
}

/* In the order of the findings; nothing is shown where nothing hinders. */
static void
hindrance_show (GtkWidget *control, TrammelSession *session)
{
  const Figures *figures = trammel_session_figures (session);
  const Part *part = trammel_session_selected_part (session);
  g_autoptr (GPtrArray) notes = notes_new ();
  GString *text = g_string_new (NULL);

  if (part != NULL && figures->hatch.part != NULL && g_strcmp0 (figures->hatch.part->piece.id, part->piece.id) == 0)
    hatch_note (figures, notes);
  for (guint i = 0; i < notes->len; i++)
    g_string_append_printf (text, "%s%s", i == 0 ? "" : "\n", ((const Note *) notes->pdata[i])->text);
  gtk_widget_set_visible (control, notes->len > 0);
  gtk_label_set_text (GTK_LABEL (gtk_widget_get_last_child (control)), text->str);
  g_string_free (text, TRUE);
}

GtkWidget *
part_hatch_hindrance (TrammelSession *session)
{
  GtkWidget *control = gtk_box_new (GTK_ORIENTATION_HORIZONTAL, 8), *words = gtk_label_new (NULL);
  GtkWidget *sign = gtk_image_new_from_icon_name ("view-reveal-symbolic");

  gtk_widget_set_valign (sign, GTK_ALIGN_START);
  gtk_label_set_wrap (GTK_LABEL (words), TRUE);
  gtk_label_set_xalign (GTK_LABEL (words), 0);
  gtk_widget_set_hexpand (words, TRUE);
  gtk_widget_add_css_class (control, "group-top");
  gtk_box_append (GTK_BOX (control), sign);
  gtk_box_append (GTK_BOX (control), words);
  piece_control_adopt (control, session, hindrance_show);
  return control;
}

static void
side_show (GtkWidget *control, TrammelSession *session)
{
  gtk_drop_down_set_selected (GTK_DROP_DOWN (control), aeroplane_traits (trammel_session_aeroplane (session)).hatch);
}

static void
side_chosen (GtkWidget *control)
{
  TrammelSession *session = piece_control_choosing (control);
  AeroplaneTraits traits;

  if (session == NULL)
    return;
  traits = aeroplane_traits (trammel_session_aeroplane (session));
  if (gtk_drop_down_get_selected (GTK_DROP_DOWN (control)) == (guint) traits.hatch)
    return;
  traits.hatch = gtk_drop_down_get_selected (GTK_DROP_DOWN (control));
  trammel_session_do (session, aeroplane_with_traits (trammel_session_aeroplane (session), traits), _("Change Where the Hatch Opens"));
}

GtkWidget *
part_hatch_side_control (TrammelSession *session)
{
  GtkStringList *names = gtk_string_list_new (NULL);

  for (HatchSide side = 0; side < HATCH_SIDE_COUNT; side++)
    gtk_string_list_append (names, hatch_side_name (side));
  return piece_choice_control (session, names, _("Opens on"), side_show, side_chosen);
}
