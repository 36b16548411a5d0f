#include "document/draft-private.h"
#include "document/material-class.h"
#include "document/reader-values.h"
#include "trammel-config.h"
#include <glib/gi18n-lib.h>

static char *
subject_of (const StructureItem *item)
{
  g_autofree char *quote = item->name ? problems_quote (item->name, -1) : NULL;

  return quote ? g_strdup_printf ("<item name=\"%s\">", quote) : g_strdup ("<item>");
}

/* An area is one, is traced, or is length times width, of which the length may be traced. */
static bool
has_area (const StructureItem *item)
{
  const bool long_traced = item->of == TRACED_SPAN || item->of == TRACED_LENGTH;

  return !isnan (item->area) || (item->of != TRACED_NONE && !long_traced) || ((!isnan (item->length) || long_traced) && !isnan (item->width));
}

/* A material that a later version knows tells its mass there. */
static bool
is_of_later_material (const StructureItem *item)
{
  return item->material && !material_class_find (item->material);
}

void
draft_check_item (const Draft *self, const StructureItem *item, int line)
{
  const MaterialClass *material = material_class_find (item->material);
  const bool by_area = !isnan (item->area_density) || (isnan (item->density) && material && !isnan (material->area_density));
  const bool by_volume = !by_area && (!isnan (item->density) || (material && !isnan (material->density)));
  g_autofree char *subject = NULL;

  if (!isnan (item->weighed) || !isnan (item->of_others) || !isnan (item->mass) || is_of_later_material (item))
    return;
  subject = subject_of (item);
  if (!by_area && !by_volume)
    problems_add (self->problems, READER_ERROR_VALUE, line,
                  _("%s does not say what it weighs; add weighed=\"…\", mass=\"…\", or a density and a size"), subject);
  else if (!has_area (item))
    problems_add (self->problems, READER_ERROR_VALUE, line,
                  _("%s has a density and no area; add area=\"…\", of=\"plan\" or \"skin\", or length=\"…\" and width=\"…\""), subject);
  else if (by_volume && isnan (item->thickness))
    problems_add (self->problems, READER_ERROR_VALUE, line, _("%s has a density and no thickness; add thickness=\"…\", in mm"), subject);
}
