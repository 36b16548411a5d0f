#include "drawing/lettering-font.h"
#include <fontconfig/fontconfig.h>
#include <glib.h>
#include <pango/pangofc-fontmap.h>
#include <pango/pangocairo.h>
#include <string.h>
#include "document/data-path.h"

static bool
font_is_known (FcConfig *config, const char *path)
{
  const FcFontSet *fonts = FcConfigGetFonts (config, FcSetApplication);
  FcChar8 *known;

  for (int i = 0; fonts != NULL && i < fonts->nfont; i++)
    if (FcPatternGetString (fonts->fonts[i], FC_FILE, 0, &known) == FcResultMatch && strcmp ((const char *) known, path) == 0)
      return true;
  return false;
}

bool
lettering_font_add (void)
{
  g_autofree char *path = data_path ("fonts/routed-gothic.ttf");
  FcConfig *config = FcConfigReference (NULL);
  const bool known = font_is_known (config, path);
  const bool added = known || FcConfigAppFontAddFile (config, (const FcChar8 *) path);

  FcConfigDestroy (config);
  if (added && !known)      /* a font map that has looked already must look again */
    pango_fc_font_map_config_changed (PANGO_FC_FONT_MAP (pango_cairo_font_map_get_default ()));
  return added;
}
