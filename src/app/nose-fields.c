#include "trammel-config.h"
#include "app/nose-fields.h"
#include <glib/gi18n-lib.h>
#include <math.h>
#include "app/piece-controls.h"
#include "figures/nose-figures.h"

/* mm, of the propeller's plane ahead of the can; common practice, no source. */
static const double SHAFT_MOST = 20.5;

/* The spec's `at` is the figure's place in NoseFigures. */
static double
nose_signed (TrammelSession *session, const FieldSpec *spec)
{
  NoseFigures nose;

  if (!nose_figures_of (trammel_session_aeroplane (session), trammel_session_selected_part (session), &nose))
    return NAN;
  return *(const double *) (const void *) ((const char *) &nose + spec->at);
}

/* A length has no minus: the remark says on which side. */
static double
nose_size (TrammelSession *session, const FieldSpec *spec)
{
  return fabs (nose_signed (session, spec));
}

static char *
ahead_remark (TrammelSession *session, const FieldSpec *spec)
{
  return g_strdup (nose_signed (session, spec) < 0 ? _("behind the front") : _("ahead of the front"));
}

static char *
behind_remark (TrammelSession *session, const FieldSpec *spec)
{
  return g_strdup (nose_signed (session, spec) < 0 ? _("ahead of the front") : _("behind the front"));
}

/* Translators: stands behind a gap in mm: what is usual for it */
static char *
gap_remark (TrammelSession *session, const FieldSpec *spec)
{
  NoseFigures nose;

  if (!nose_figures_of (trammel_session_aeroplane (session), trammel_session_selected_part (session), &nose))
    return NULL;
  return g_strdup (nose.spinner != NULL ? _("usual 1.5 to 3 mm") : _("usual 1.5 to 8 mm"));
}

static char *
shaft_remark (TrammelSession *session, const FieldSpec *spec)
{
  NoseFigures nose;

  if (!nose_figures_of (trammel_session_aeroplane (session), trammel_session_selected_part (session), &nose))
    return NULL;
  if (nose.shaft_mm < 0)
    return g_strdup (_("behind the can's front"));
  return g_strdup (nose.shaft_mm > SHAFT_MOST ? _("longer than the usual 20 mm") : _("ahead of the can"));
}

/* Translators: stands behind how far off the middle a motor's shaft leaves the firewall, in mm */
static char *
offset_remark (TrammelSession *session, const FieldSpec *spec)
{
  const bool negative = nose_signed (session, spec) < 0;

  if (spec->at == offsetof (NoseFigures, up_mm))
    return g_strdup (negative ? _("at the firewall, down") : _("at the firewall, up"));
  return g_strdup (negative ? _("at the firewall, to starboard") : _("at the firewall, to port"));
}

FieldList
part_nose_fields (TrammelSession *session)
{
  static const FieldSpec specs[] = {
    { .label = N_("Propeller's plane"), .explained = EXPLAIN_PROPELLER_PLANE, .remark_below = true, .kind = FIELD_LENGTH,
      .value = nose_size, .remark = ahead_remark,
      .at = offsetof (NoseFigures, plane_ahead_mm) },
    { .label = N_("Shaft"), .explained = EXPLAIN_PROPELLER_PLANE, .remark_below = true, .kind = FIELD_LENGTH,
      .value = nose_size, .remark = shaft_remark, .at = offsetof (NoseFigures, shaft_mm) },
    { .label = N_("Gap"), .explained = EXPLAIN_NOSE_GAP, .remark_below = true, .kind = FIELD_THIN,
      .value = nose_signed, .remark = gap_remark, .at = offsetof (NoseFigures, gap_mm) },
    { .label = N_("Firewall now"), .explained = EXPLAIN_FIREWALL, .remark_below = true,
      .kind = FIELD_LENGTH, .value = nose_size, .remark = behind_remark,
      .at = offsetof (NoseFigures, firewall_mm) },
    { .label = N_("Firewall, wanted"), .explained = EXPLAIN_FIREWALL, .remark_below = true,
      .kind = FIELD_LENGTH, .value = nose_size, .remark = behind_remark,
      .at = offsetof (NoseFigures, firewall_then_mm) },
    { .label = N_("Shaft aside"), .explained = EXPLAIN_SHAFT_OFFSET, .remark_below = true, .kind = FIELD_THIN,
      .value = nose_size, .remark = offset_remark, .at = offsetof (NoseFigures, to_port_mm) },
    { .label = N_("Shaft raised"), .explained = EXPLAIN_SHAFT_OFFSET, .remark_below = true, .kind = FIELD_THIN,
      .value = nose_size, .remark = offset_remark, .at = offsetof (NoseFigures, up_mm) },
  };
  const size_t offsets = 2;      /* last; of a thrust line at an angle alone */
  NoseFigures nose;
  const Part *part = trammel_session_selected_part (session);

  if (!nose_figures_of (trammel_session_aeroplane (session), part, &nose))
    return (FieldList) { NULL, 0 };
  return (FieldList) { specs, G_N_ELEMENTS (specs) - (nose.to_port_mm != 0 || nose.up_mm != 0 ? 0 : offsets) };
}

bool
part_has_nose (TrammelSession *session)
{
  NoseFigures nose;

  return nose_look (trammel_session_aeroplane (session), trammel_session_selected_part (session), &nose) != NOSE_NO_MOTOR;
}

static void
nose_show (GtkWidget *control, TrammelSession *session)
{
  const Part *motor = trammel_session_selected_part (session);
  GtkWidget *words = gtk_widget_get_first_child (control);
  NoseFigures nose;
  const NoseLack lack = nose_look (trammel_session_aeroplane (session), motor, &nose);

  if (lack == NOSE_NO_MOTOR)
    return;
  g_autofree char *text = lack == NOSE_KNOWN ? nose_text (&nose, trammel_session_units (session)) : nose_lack_text (lack, motor);
  gtk_label_set_text (GTK_LABEL (words), text);
  gtk_widget_set_visible (gtk_widget_get_next_sibling (words), lack == NOSE_KNOWN && nose.out_mm != 0);
}

static void
nose_settle (GtkWidget *control)
{
  TrammelSession *session = piece_control_choosing (control);

  if (session != NULL)
    trammel_session_do (session, nose_settled (trammel_session_aeroplane (session), trammel_session_selected_part (session)),
                        _("Set Motor in Cowl"));
}

GtkWidget *
part_nose_control (TrammelSession *session)
{
  GtkWidget *control = gtk_box_new (GTK_ORIENTATION_VERTICAL, 8), *words = gtk_label_new (NULL);
  GtkWidget *settle = gtk_button_new_with_label (_("Set Motor in Cowl"));

  gtk_label_set_wrap (GTK_LABEL (words), TRUE);
  gtk_label_set_xalign (GTK_LABEL (words), 0);
  gtk_widget_set_tooltip_text (settle, _("Moves the motor with what is bolted to it; the thrust line's angles stay"));
  gtk_box_append (GTK_BOX (control), words);
  gtk_box_append (GTK_BOX (control), settle);
  gtk_widget_add_css_class (control, "field");
  g_signal_connect_swapped (settle, "clicked", G_CALLBACK (nose_settle), control);
  piece_control_adopt (control, session, nose_show);
  return control;
}
