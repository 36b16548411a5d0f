#include "figures/arranging-private.h"

#include "trammel-config.h"
#include <glib/gi18n-lib.h>
#include <math.h>
#include "figures/body-walls.h"
#include "figures/json-text.h"
#include "figures/names.h"
#include "figures/part-places.h"
#include "figures/report-ballast.h"
#include "figures/text-table.h"

/* mm: nobody moves anything by less. */
static const double STAYS = 0.5;

static ArrangeLimit
limit_of_way (const Arranging *self, const NearestWay *nearest)
{
  const bool asked = nearest->lead != (size_t) ARRANGE_NONE;

  return (ArrangeLimit) { .kind = ARRANGE_LEAD_WAY, .lead = nearest->lead, .room = (size_t) ARRANGE_NONE, .needed = nearest->way,
                          .had = asked ? arranging_lead_length (self, nearest->lead) * ARRANGING_METRE : NAN };
}

void
arranging_find (const Arranging *self, size_t most, ArrangingAnswer *answer)
{
  NearestWay nearest;

  *answer = (ArrangingAnswer) { .limit_count = 0 };
  answer->status = arranging_find_routed (self, most, &answer->found, &nearest);
  if (answer->status == CORE_OK && answer->found.status == ARRANGE_IMPOSSIBLE)
    answer->status = arrange_limits (&self->wanted, answer->limits, ARRANGING_MOST_LIMITS, &answer->limit_count);
  else if (answer->status == CORE_OK && !answer->found.count && nearest.met)
    answer->limits[answer->limit_count++] = limit_of_way (self, &nearest);
  else if (answer->status == CORE_OK)
    arranging_place_ballast (self, &answer->found);
}

void
arranging_answer_clear (ArrangingAnswer *answer)
{
  arrangements_clear (&answer->found);
}

static const Part *
part_of (const Arranging *self, size_t i)
{
  return g_ptr_array_index (self->parts, i);
}

/* One way along an axis, in words; nothing for so little. */
static void
add_way (GString *text, double mm, const char *more, const char *less, Units units)
{
  g_autofree char *length = units_length (units, fabs (mm));

  if (fabs (mm) < STAYS)
    return;
  if (text->len)
    g_string_append (text, ", ");
  /* TRANSLATORS: how far a part is moved and which way: "19 mm forward" */
  g_string_append_printf (text, _("%s %s"), length, mm > 0 ? more : less);
}

char *
arranging_move_text (const Arranging *self, const Arrangement *found, size_t part, Units units)
{
  const Part *was = part_of (self, part);
  const ArrangePlace at = found->places[part];
  g_autoptr (GString) text = g_string_new (NULL);

  add_way (text, at.x * 1e3 - was->x, _("aft"), _("forward"), units);
  add_way (text, at.y * 1e3 - was->y, _("to starboard"), _("to port"), units);
  add_way (text, at.z * 1e3 - was->z, _("up"), _("down"), units);
  if (!text->len)
    g_string_append (text, _("stays"));
  return g_string_free (g_steal_pointer (&text), FALSE);
}

/* A new string. */
static char *
status_text (const ArrangingAnswer *answer, Units units)
{
  const Arrangement *best = answer->found.count ? &answer->found.found[0] : NULL;
  const bool with_ballast = best && best->ballast * 1e3 >= ARRANGING_LEAST_BALLAST_G;

  switch (answer->found.status)
    {
    case ARRANGE_PROVED:
      return g_strdup (with_ballast ? _("No arrangement balances better by itself: that is proved.")
                                    : _("No arrangement needs less ballast: that is proved."));
    case ARRANGE_BEST_FOUND:
      if (best && best->leads_gap > 0)
        {
          g_autofree char *shorter = units_length (units, best->leads_gap * 1e3);
          return g_strdup_printf (_("No arrangement balances better by itself: that is proved. The leads of another might be up to %s shorter in all."),
                                  shorter);
        }
      return g_strdup (_("The best that was found in the time; a better one may exist."));
    case ARRANGE_IMPOSSIBLE:
      return g_strdup (_("There is no such arrangement."));
    case ARRANGE_NOT_FOUND:
      return g_strdup (answer->limit_count ? _("None was found whose leads reach.") : _("None was found in the time."));
    }
  return NULL;
}

static void
add_ballast (GString *text, const Arranging *self, const Arrangement *best, Units units)
{
  g_autofree char *mass = units_mass (units, best->ballast * 1e3), *x = units_length (units, best->x * 1e3);
  g_autofree char *place = arranging_ballast_phrase (self, best), *margin = arranging_ballast_sentence (self, best, units);

  if (best->ballast * 1e3 < ARRANGING_LEAST_BALLAST_G)
    g_string_append_printf (text, _("No ballast is needed. The balance point comes to %s aft of the datum."), x);
  else
    /* TRANSLATORS: a mass, where it goes ("at the fore end of “nose”"), and a length */
    g_string_append_printf (text, _("%s of ballast %s. The balance point comes to %s aft of the datum."), mass, place, x);
  if (margin)
    g_string_append_printf (text, "\n%s", margin);
  g_string_append (text, "\n\n");
}

static void
add_parts (GString *text, const Arranging *self, const Arrangement *best, Units units)
{
  TextTable table = text_table_new (3, 1 << 2);

  for (guint i = 0; i < self->movable; i++)
    {
      text_table_cell (&table, g_strdup (piece_name (&part_of (self, i)->piece)));
      text_table_cell (&table, units_length (units, best->places[i].x * 1e3));
      text_table_cell (&table, arranging_move_text (self, best, i, units));
    }
  text_table_print (&table, text);
}

static void
add_leads (GString *text, const Arranging *self, const Arrangement *best, Units units)
{
  TextTable table = text_table_new (2, 1 << 1);

  for (guint i = 0; i < self->legs->len; i++)
    {
      const double length = arranging_lead_length (self, i);
      g_autofree char *needed = units_length (units, arranging_lead_needed (self, best, i)), *had = units_length (units, length);
      text_table_cell (&table, arranging_lead_title (self, i));
      text_table_cell (&table, isnan (length) ? g_strdup_printf (_("needs %s"), needed)
                                                    : g_strdup_printf (_("needs %s of %s"), needed, had));
    }
  if (self->legs->len)
    g_string_append_c (text, '\n');
  text_table_print (&table, text);
}

/* What was taken off the room in bays, once for each body that has one of them. */
static void
add_walls (GString *text, const Arranging *self, Units units)
{
  const Body *last = NULL, *body;
  double from, to;

  for (guint i = 0; i < self->rooms->len; i++)
    {
      const Piece *room = g_ptr_array_index (self->rooms, i);

      if (room->kind != PIECE_BAY || !bay_reach (self->aeroplane, (const Bay *) room, &body, &from, &to) || body == last)
        continue;
      g_autofree char *skin = units_length_known (units, body_skin (body));
      g_autofree char *former = units_length_known (units, body_former_thickness (body));
      g_string_append_printf (text, _("\nBays are reckoned within a skin of %s and between formers of %s.\n"), skin, former);
      last = body;
    }
}

/* How much it would be at each place. */
static void
add_ballast_places (GString *text, const Arranging *self, const Arrangement *best, Units units)
{
  g_autoptr (GArray) places = arranging_ballast_places (self, best);
  TextTable table = report_ballast_table (places, units);

  if (places->len)
    g_string_append_printf (text, "\n%s\n", _("Ballast at each place, block long × wide × high:"));
  text_table_print (&table, text);
}

char *
arranging_text (const Arranging *self, const ArrangingAnswer *answer, Units units)
{
  g_autofree char *status = status_text (answer, units);
  g_autoptr (GString) text = g_string_new (status);

  g_string_append (text, "\n");
  if (answer->found.count)
    {
      add_ballast (text, self, &answer->found.found[0], units);
      add_parts (text, self, &answer->found.found[0], units);
      add_leads (text, self, &answer->found.found[0], units);
      add_ballast_places (text, self, &answer->found.found[0], units);
      add_walls (text, self, units);
    }
  for (size_t i = 0; i < answer->limit_count; i++)
    {
      g_autofree char *limit = arranging_limit_text (self, &answer->limits[i], units);
      g_string_append_printf (text, "%s\n", limit);
    }
  return g_string_free (g_steal_pointer (&text), FALSE);
}

static const char *
status_word (ArrangeStatus status)
{
  static const char *const words[] = { [ARRANGE_PROVED] = "proved", [ARRANGE_BEST_FOUND] = "best_found", [ARRANGE_IMPOSSIBLE] = "impossible",
                                       [ARRANGE_NOT_FOUND] = "not_found" };

  return words[status];
}

/* All parts aboard: those that were not asked stand where they stood. */
static void
json_parts (JsonText *json, const Arranging *self, const Arrangement *best)
{
  json_text_open_array (json, "parts");
  for (size_t i = 0; best && i < aeroplane_count (self->aeroplane, PIECE_PART); i++)
    {
      const Part *part = aeroplane_part (self->aeroplane, i);
      guint at;
      const bool asked = g_ptr_array_find (self->parts, part, &at) && at < self->movable;

      if (!part->aboard)
        continue;
      json_text_open_object (json, NULL);
      json_text_string (json, "id", part->piece.id);
      json_text_number (json, "x_mm", asked ? best->places[at].x * 1e3 : part->x);
      json_text_number (json, "y_mm", asked ? best->places[at].y * 1e3 : part->y);
      json_text_number (json, "z_mm", asked ? best->places[at].z * 1e3 : part->z);
      json_text_close_object (json);
    }
  json_text_close_array (json);
}

static void
json_leads (JsonText *json, const Arranging *self, const Arrangement *best)
{
  json_text_open_array (json, "leads");
  for (guint i = 0; best && i < self->legs->len; i++)
    {
      const AskedLeg *leg = &g_array_index (self->legs, AskedLeg, i);
      const Lead *lead = leg->lead;

      json_text_open_object (json, NULL);
      json_text_string (json, "from", lead->from);
      json_text_string (json, "to", lead->to);
      if (lead_is_joined (lead))
        {
          json_text_string (json, "also", lead->also);
          json_text_string (json, "leg", lead_leg_part (lead, leg->leg));
        }
      json_text_number (json, "needed_mm", arranging_lead_needed (self, best, i));
      json_text_number (json, "length_mm", arranging_lead_length (self, i));
      json_text_close_object (json);
    }
  json_text_close_array (json);
}

static void
json_ballast_places (JsonText *json, const Arranging *self, const Arrangement *best)
{
  g_autoptr (GArray) places = best ? arranging_ballast_places (self, best) : g_array_new (FALSE, FALSE, sizeof (BallastPlace));

  report_write_ballast_places (json, places);
}

/* Which margin the ballast is for, and what the aim would take. */
static void
json_ballast_for (JsonText *json, const Arranging *self, const Arrangement *best)
{
  static const char *const words[] = { [ARRANGED_AT_AIM] = "aim", [ARRANGED_AT_AFT_LIMIT] = "aft_limit",
                                       [ARRANGED_AT_FORWARD_LIMIT] = "forward_limit", [ARRANGED_BETWEEN] = "between" };
  const bool needed = best && best->ballast * 1e3 >= ARRANGING_LEAST_BALLAST_G;

  if (needed)
    json_text_string (json, "ballast_for", words[arranging_balances_at (self, best)]);
  else
    json_text_null (json, "ballast_for");
  json_text_number (json, "ballast_for_aim_g", needed ? arranging_ballast_for_aim_g (self, best) : NAN);
}

static void
json_limits (JsonText *json, const Arranging *self, const ArrangingAnswer *answer)
{
  json_text_open_array (json, "limits");
  for (size_t i = 0; i < answer->limit_count; i++)
    {
      g_autofree char *text = arranging_limit_text (self, &answer->limits[i], (Units) { LENGTH_MM, MASS_G });
      json_text_open_object (json, NULL);
      json_text_string (json, "text", text);
      json_text_close_object (json);
    }
  json_text_close_array (json);
}

char *
arranging_json (const Arranging *self, const ArrangingAnswer *answer)
{
  const Arrangement *best = answer->found.count ? &answer->found.found[0] : NULL;
  JsonText json = json_text_begin ();

  json_text_string (&json, "status", status_word (answer->found.status));
  json_text_number (&json, "gap", best ? best->gap : NAN);
  json_text_number (&json, "leads_gap_mm", best ? best->leads_gap * 1e3 : NAN);
  json_text_number (&json, "ballast_g", best ? best->ballast * 1e3 : NAN);
  json_text_number (&json, "ballast_x_mm", best ? best->ballast_x * 1e3 : NAN);
  json_ballast_for (&json, self, best);
  json_ballast_places (&json, self, best);
  json_parts (&json, self, best);
  json_leads (&json, self, best);
  json_limits (&json, self, answer);
  return json_text_end (&json);
}
