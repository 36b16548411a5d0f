#include "document/material-class.h"
#include <math.h>
#include <string.h>
#include "trammel-config.h"
#include <glib/gi18n-lib.h>

/* Air-dry density is 1.12 × the handbook's specific gravity × 1000 kg/m³, at 12 % moisture. */
static const char handbook[] = "USDA Forest Products Laboratory, Wood Handbook, mechanical properties";

/* The grades of balsa are those of its trade, 1 lb/ft³ = 16.02 kg/m³: one bin of sheets sold as light weighs 6 ± 1.4 lb/ft³, hence
 * 0.22. Coverings are finished, with what holds them. */
static const MaterialClass classes[] = {
  { "balsa-contest",     N_("Balsa, contest"),              88, NAN, 0.15, false, NULL },
  { "balsa-light",       N_("Balsa, light"),                96, NAN, 0.22, false, NULL },
  { "balsa-medium",      N_("Balsa, medium"),              128, NAN, 0.22, false, NULL },
  { "balsa-medium-hard", N_("Balsa, medium hard"),         176, NAN, 0.22, false, NULL },
  { "balsa-hard",        N_("Balsa, hard"),                240, NAN, 0.20, false, NULL },
  { "balsa",             N_("Balsa, grade not known"),     180, NAN, 0.25, false, handbook },
  { "basswood",          N_("Basswood"),                   415, NAN, 0.08, false, handbook },
  { "spruce",            N_("Spruce"),                     450, NAN, 0.08, false, handbook },
  { "birch-ply",         N_("Birch plywood"),              685, NAN, 0.05, false, handbook },
  { "light-ply",         N_("Light plywood"),              460, NAN, 0.10, false, NULL },
  { "carbon",            N_("Carbon rod"),                1550, NAN, 0.05, false, NULL },
  { "wire",              N_("Music wire"),                7850, NAN, 0.01, false, NULL },
  { "styrene",           N_("Styrene or ABS sheet"),      1050, NAN, 0.05, false, NULL },
  { "foam-xps",          N_("Extruded polystyrene foam"),   33, NAN, 0.08, false, NULL },
  { "foam-epp",          N_("Polypropylene foam"),          25, NAN, 0.20, false, NULL },
  { "tissue",            N_("Tissue and thin dope"),       NAN,  28, 0.10, true, NULL },
  { "tissue-heavy",      N_("Heavy tissue, four coats"),   NAN,  65, 0.15, true, NULL },
  { "silk",              N_("Silk and thin dope"),         NAN,  38, 0.15, true, NULL },
  { "film",              N_("Polyester film"),             NAN,  13, 0.30, true, NULL },
  { "film-laminating",    N_("Laminating film"),            NAN,  26, 0.30, true, NULL },
  { "tissue-on-film",    N_("Tissue over film"),           NAN,  27, 0.15, true, NULL },
  { "iron-on-light",     N_("Iron-on film, light"),        NAN,  36, 0.10, true, NULL },
  { "iron-on-clear",     N_("Iron-on film, transparent"),  NAN,  57, 0.10, true, NULL },
  { "iron-on",           N_("Iron-on film, opaque"),       NAN,  75, 0.10, true, NULL },
  { "fabric",            N_("Iron-on fabric"),             NAN,  87, 0.10, true, NULL },
  { "tape",              N_("Clear tape"),                 NAN,  53, 0.20, true, NULL },
  { "foam-board",        N_("Paper-faced foam board, 5 mm"), NAN, 500, 0.10, false, NULL },
  { "paint",             N_("Paint, one sprayed coat"),    NAN,  12, 0.30, false, NULL },
  { .word = NULL }
};

const MaterialClass *
material_classes (void)
{
  return classes;
}

const MaterialClass *
material_class_find (const char *word)
{
  for (const MaterialClass *class = classes; word && class->word; class++)
    if (*class->word == *word && strcmp (class->word, word) == 0)      /* asked for every line of every structure */
      return class;
  return NULL;
}
