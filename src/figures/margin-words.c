#include "figures/margin-words.h"

#include "trammel-config.h"
#include <glib/gi18n-lib.h>
#include <math.h>
#include "document/units.h"

double
margin_advised_percent (const Figures *figures)
{
  const BalanceFigures *balance = &figures->balance;

  if (!figures->reference || isnan (balance->advised_x_mm))
    return NAN;
  return aeroplane_traits (figures->aeroplane).target.aim
         + 100 * (balance->target_x_mm - balance->advised_x_mm) / figures->reference->planform.mac;
}

char *
margin_advised_phrase (const Figures *figures)
{
  const double percent = margin_advised_percent (figures);
  g_autofree char *told = units_percent (percent);

  if (isnan (percent))
    return NULL;
  /* TRANSLATORS: a static margin in a sentence that says what ballast is for; %s is "14 %" */
  return g_strdup_printf (figures->balance.advised_x_mm < figures->balance.target_x_mm ? _("%s, one deviation clear of the aft limit")
                                                                                         : _("the aim, %s"), told);
}
