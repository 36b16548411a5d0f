#pragma once
#include <gtk/gtk.h>
#include "app/session.h"

/** What the panel offers while there is a wing and no part yet: a button that opens the choices of the usual fit, each with the mass that it
 *  adds. Shows itself when it makes sense. */
GtkWidget *fit_offer_new  (TrammelSession *session);
/** Whether it makes sense: there is a wing that encloses something, and no part. */
bool       fit_offer_is_useful (const Aeroplane *aeroplane);
/** What becomes of an aeroplane that gets the usual airframe, for a tooltip; lent. */
const char *fit_offer_airframe_words (void);
/** Opens the choices, as by its button. */
void       fit_offer_open (GtkWidget *button);
