#include "figures/report-sections.h"

#include "trammel-config.h"
#include <glib/gi18n-lib.h>
#include <math.h>
#include "figures/names.h"
#include "figures/nose-figures.h"

/* "24 mm behind the front, 3 mm behind F1" */
static char *
firewall_text (const NoseFigures *nose, Units units)
{
  g_autofree char *depth = units_length (units, nose->firewall_then_mm);
  g_autofree char *away = units_length (units, fabs (nose->behind_former_mm));

  if (!nose->former)
    return g_strdup_printf (_("%s behind the cowl's front"), depth);
  if (nose->behind_former_mm < 0)
    return g_strdup_printf (_("%s behind the cowl's front, %s ahead of %s"), depth, away, nose->former->name);
  return g_strdup_printf (_("%s behind the cowl's front, %s behind %s"), depth, away, nose->former->name);
}

char *
nose_text (const NoseFigures *nose, Units units)
{
  const char *name = piece_name (&nose->motor->piece);
  g_autofree char *firewall = firewall_text (nose, units), *out = units_length (units, fabs (nose->out_mm));
  g_autofree char *gap = units_length_known (units, nose->gap_mm);

  if (nose->out_mm > 0)
    return g_strdup_printf (_("“%s” is too far out of the cowl by %s; its firewall belongs %s."), name, out, firewall);
  if (nose->out_mm < 0)
    return g_strdup_printf (_("“%s” is sunk into the cowl by %s; its firewall belongs %s."), name, out, firewall);
  return g_strdup_printf (_("“%s” sits right: %s between cowl and what turns; its firewall is %s."), name, gap, firewall);
}

char *
nose_lack_text (NoseLack lack, const Part *motor)
{
  const char *name = lack == NOSE_NO_MOTOR ? NULL : piece_name (&motor->piece);

  switch (lack)
    {
    case NOSE_KNOWN:
    case NOSE_NO_MOTOR:
      break;
    case NOSE_NO_PROPELLER:
      return g_strdup_printf (_("No propeller is on the shaft of “%s”: put one ahead of it, on its line, and the propeller's plane and the "
                                "firewall's place are told here."), name);
    case NOSE_NO_SIZE:
      return g_strdup_printf (_("“%s” has no length: type it under Size, and the firewall's place is told here."), name);
    case NOSE_PUSHER:
      return g_strdup_printf (_("The propeller of “%s” is behind it: where the firewall belongs is told only of a motor that pulls."), name);
    case NOSE_NO_FRONT:
      return g_strdup_printf (_("Nothing tells where the cowl of “%s” begins: draw the body's nose about it, or add a cowl with its "
                                "length."), name);
    case NOSE_COWL_SIZE:
      return g_strdup_printf (_("The cowl about “%s” has no length: type it under the cowl's Size, and the firewall's place is told here."),
                              name);
    case NOSE_POINTED:
      return g_strdup_printf (_("The propeller of “%s” is inside a nose that ends narrower than the hub: where the spinner is drawn with it "
                                "add a cowl with its length, else move the propeller ahead of the nose."), name);
    }
  return NULL;
}

static void
add (TextTable *table, const char *label, double mm, Units units, const char *remark)
{
  text_table_cell (table, g_strdup (label));
  text_table_cell (table, units_length (units, mm));
  text_table_cell (table, g_strdup (remark));
}

/* Without a minus: its side is said. */
static void
add_sided (TextTable *table, const char *label, double mm, Units units, const char *remark, const char *negative)
{
  add (table, label, fabs (mm), units, mm < 0 ? negative : remark);
}

static void
add_motor (TextTable *table, const NoseFigures *nose, Units units)
{
  const char *front = nose->cowl ? _("of the cowl among the parts") : _("of the body as drawn");

  add_sided (table, piece_name (&nose->motor->piece), nose->front_x_mm, units, _("front of the cowl, aft of the datum"),
             _("front of the cowl, ahead of the datum"));
  add_sided (table, _("Propeller's plane"), nose->plane_ahead_mm, units, _("ahead of the front"), _("behind the front"));
  add_sided (table, _("shaft"), nose->shaft_mm, units, _("plane ahead of the can; 12 to 20 mm is common practice, no source"),
             _("plane behind the can's front; 12 to 20 mm ahead of it is common practice, no source"));
  add (table, _("Gap behind what turns"), nose->gap_mm, units, nose->spinner ? _("1.5 to 3 mm is common practice, no source")
                                                               : _("1.5 to 8 mm without a spinner is common practice, no source"));
  add_sided (table, _("Firewall's face now"), nose->firewall_mm, units, _("behind the front"), _("ahead of the front"));
  add (table, _("Firewall's face as it should be"), nose->firewall_then_mm, units, front);
  if (nose->to_port_mm != 0)
    add_sided (table, _("Shaft at the firewall"), nose->to_port_mm, units, _("to port of the middle, for the right thrust"),
               _("to starboard of the middle, for the left thrust"));
  if (nose->up_mm != 0)
    add_sided (table, _("Shaft at the firewall"), nose->up_mm, units, _("above the middle, for the down-thrust"),
               _("below the middle, for the up-thrust"));
}

TextTable
report_nose (const Figures *figures, Units units)
{
  TextTable table = text_table_new (3, 1 << 2);
  NoseFigures noses[NOSE_MOST];
  const size_t count = nose_figures_all (figures->aeroplane, noses);

  for (size_t i = 0; i < count; i++)
    add_motor (&table, &noses[i], units);
  return table;
}

static void
write_one (JsonText *json, const NoseFigures *nose)
{
  json_text_open_object (json, NULL);
  json_text_string (json, "motor", nose->motor->piece.id);
  json_text_number (json, "front_x_mm", nose->front_x_mm);
  json_text_number (json, "plane_ahead_mm", nose->plane_ahead_mm);
  json_text_number (json, "shaft_mm", nose->shaft_mm);
  json_text_number (json, "gap_mm", nose->gap_mm);
  json_text_number (json, "out_mm", nose->out_mm);
  json_text_number (json, "firewall_mm", nose->firewall_mm);
  json_text_number (json, "firewall_then_mm", nose->firewall_then_mm);
  if (nose->former)
    {
      json_text_string (json, "former", nose->former->name);
      json_text_number (json, "behind_former_mm", nose->behind_former_mm);
    }
  json_text_number (json, "to_port_mm", nose->to_port_mm);
  json_text_number (json, "up_mm", nose->up_mm);
  json_text_close_object (json);
}

void
nose_write (JsonText *json, const Aeroplane *aeroplane)
{
  NoseFigures noses[NOSE_MOST];
  const size_t count = nose_figures_all (aeroplane, noses);

  json_text_open_array (json, "nose");
  for (size_t i = 0; i < count; i++)
    write_one (json, &noses[i]);
  json_text_close_array (json);
}
