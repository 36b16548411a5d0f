#include "trammel-config.h"
#include "drawing/template-notes.h"
#include <glib/gi18n-lib.h>
#include "figures/cautions.h"

static const double title_caps = 5, leading = 1.7, apart = 1;      /* leading in capitals; apart between sentences, mm */

/* One sentence from y on down; gives where the next begins. */
static double
sentence (const SheetPen *pen, const char *text, double caps, Box box, double y, bool draw)
{
  g_auto (GStrv) lines = pen_wrapped (pen, caps, box_width (box), text);

  for (size_t i = 0; lines[i] != NULL; i++)
    {
      y += leading * caps;
      if (draw)
        pen_write (pen, (Script) { { box.min.x, y }, caps, 0 }, lines[i]);
    }
  return y + apart;
}

static double
subtitle (const SheetPen *pen, const TemplateNotes *notes, Box box, double y, bool draw)
{
  /* Translators: at the foot of a template, in front of the date of the document's last change */
  g_autofree char *dated = notes->date[0] != '\0' ? g_strdup_printf (_("Template, full size. State of %s."), notes->date) : NULL;

  return sentence (pen, dated != NULL ? dated : _("Template, full size."), caps_text, box, y, draw);
}

/* All of it, one below the other; gives where it ends. */
static double
all (const SheetPen *pen, const TemplateNotes *notes, Box box, bool draw)
{
  const char *const how[] = {
    _("Cut along the thick lines. A control comes off along its thin line, the foremost of two; the second tells how deep its edge is bevelled. "
      "Broken lines show where parts and leads lie beneath the skin."),
    notes->tiled ? _("Lay a rule along the control lines first. Where a page has a hatched edge, cut its neighbour along the broken line and glue it on "
                     "there, cross on cross.")
                 : _("Lay a rule along the control lines before anything is cut.") };
  g_autofree char *capitals = g_utf8_strup (notes->title, -1);
  double y = box.min.y + title_caps;

  if (draw)
    pen_write_within (pen, (Script) { { box.min.x, y }, title_caps, 0 }, caps_text, box_width (box), capitals);
  y = subtitle (pen, notes, box, y + 1, draw);
  for (size_t i = 0; i < G_N_ELEMENTS (how); i++)
    y = sentence (pen, how[i], caps_text, box, y, draw);
  for (size_t i = 0; cautions_sentence (i) != NULL; i++)
    y = sentence (pen, cautions_sentence (i), caps_small, box, y, draw);
  return y;
}

double
template_notes_height (const SheetPen *pen, const TemplateNotes *notes, double width)
{
  return all (pen, notes, (Box) { { 0, 0 }, { width, 0 } }, false);
}

void
template_notes_draw (const SheetPen *pen, const TemplateNotes *notes, Box box)
{
  all (pen, notes, box, true);
}
