#include "trammel-config.h"
#include "app/selection-page-private.h"
#include <glib/gi18n-lib.h>
#include "app/explain-button.h"
#include "app/lead-fields.h"
#include "app/nose-fields.h"
#include "app/part-controls.h"
#include "app/part-kind.h"
#include "app/piece-controls.h"
#include "app/power-fields.h"
#include "figures/lead-words.h"
#include "figures/names.h"

static void
page_build_hatch (TrammelSelectionPage *self)
{
  const FieldList rows = part_hatch_fields (self->session);
  GtkWidget *group;

  if (rows.count == 0)
    return;
  group = selection_page_add_group (self, _("Hatch to Cut"), _("aft of the datum"), (FieldList) { NULL, 0 });
  selection_page_add_control (self, group, _("Opens on"), part_hatch_side_control (self->session));
  selection_page_add_rows (self, group, rows);
  selection_page_add_wide (self, group, part_hatch_control (self->session));
}

void
selection_page_build_part (TrammelSelectionPage *self, const Part *part)
{
  GtkWidget *group;

  selection_page_add_above (self, part_hatch_hindrance (self->session));
  group = selection_page_add_group (self, _("Part"), NULL, part_fields ());
  selection_page_add_control (self, group, _("Class"), part_class_control (self->session));
  selection_page_add_control (self, group, _("Kind"), part_kind_control (self->session));
  selection_page_add_control (self, group, _("In Flight"), part_aboard_control (self->session));
  if (part_power_fields (self->session).count > 0)
    selection_page_add_group (self, _("Rating"), _("as on its label"), part_power_fields (self->session));
  if (part_stand_fields (self->session).count > 0)
    selection_page_add_group (self, _("Place in the Body"), _("from a former"), part_stand_fields (self->session));
  selection_page_add_group (self, _("Size"), _("along, across, high"), part_size_fields ());
  if (part_has_nose (self->session))
    selection_page_add_wide (self, selection_page_add_group (self, _("Propeller and Cowl"), _("from the cowl's front"),
                                                             part_nose_fields (self->session)), part_nose_control (self->session));
  group = selection_page_add_group (self, _("Belongs To"), NULL, (FieldList) { NULL, 0 });
  selection_page_add_control (self, group, _("Fixed to"), part_of_control (self->session));
  selection_page_add_rows (self, group, part_group_fields ());
  group = selection_page_add_group (self, _("May Be In"), part->has_rail ? _("none ticked: along its rail") : _("none ticked: it stays"),
                                    (FieldList) { NULL, 0 });
  selection_page_add_wide (self, group, part_rooms_control (self->session));
  group = selection_page_add_group (self, _("Rail"), part->has_rail ? NULL : _("none: it does not slide"),
                          part->has_rail ? part_rail_fields () : (FieldList) { NULL, 0 });
  trammel_group_add_to_heading (TRAMMEL_GROUP (group),
                                trammel_explain_button_new (self->session, EXPLAIN_SOLUTION, _("Aim on the rail"), NULL));
  selection_page_add_wide (self, group, part_rail_control (self->session));
  page_build_hatch (self);
}

/* Of a two-into-one lead one group a leg, called by the part at its end. */
static void
page_build_leg (TrammelSelectionPage *self, const Lead *lead, LeadLeg leg)
{
  const Aeroplane *aeroplane = trammel_session_aeroplane (self->session);
  /* Translators: heading of one leg of a lead with three ends: "Leg to Servo, left aileron" */
  g_autofree char *heading = g_strdup_printf (_("Leg to %s"), lead_end_name (aeroplane, lead_leg_part (lead, leg)));

  selection_page_add_group (self, heading, NULL, lead_leg_fields (leg));
}

static void
page_say_usual_way (TrammelSelectionPage *self)
{
  GtkWidget *words = gtk_label_new (_("It runs as usual: along the wing, at its share of the chord, to the centre line, then along "
                                      "the body. Pull its line where it bends."));

  gtk_label_set_wrap (GTK_LABEL (words), TRUE);
  gtk_label_set_xalign (GTK_LABEL (words), 0);
  gtk_widget_add_css_class (words, "dim-label");
  gtk_box_append (GTK_BOX (self), words);
}

void
selection_page_build_lead (TrammelSelectionPage *self, const Lead *lead)
{
  const bool joined = lead_is_joined (lead);
  LeadPoint point;
  GtkWidget *group;

  if (lead_point_selected (self->session, &point))
    selection_page_add_group (self, point.joint ? _("Joint") : _("Bend"),
                    !point.joint && point.via == LEAD_NO_VIA ? _("where it usually runs") : NULL, lead_point_fields ());
  group = selection_page_add_group (self, joined ? piece_name (&lead->piece) : _("Lead"), NULL, (FieldList) { NULL, 0 });
  selection_page_add_control (self, group, C_("a lead", "From"), lead_end_control (self->session, LEG_FROM));
  selection_page_add_control (self, group, _("Also from"), lead_also_control (self->session));
  selection_page_add_control (self, group, C_("a lead", "To"), lead_end_control (self->session, LEG_TO));
  if (!joined)
    selection_page_add_rows (self, group, lead_leg_fields (LEG_FROM));
  for (int leg = 0; joined && leg < LEG_COUNT; leg++)
    page_build_leg (self, lead, leg);
  if (lead_usual (self->session))
    page_say_usual_way (self);
  group = selection_page_add_group (self, _("Slack"), NULL, lead_slack_fields ());
  selection_page_add_control (self, group, _("Unplugs with the wing"), lead_unplugs_control (self->session));
}
