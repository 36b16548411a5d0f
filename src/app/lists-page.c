#include "trammel-config.h"
#include "app/lists-page.h"
#include <glib/gi18n-lib.h>
#include "app/figure-list.h"

GtkWidget *
lists_page_new (TrammelSession *session)
{
  GtkWidget *page = gtk_box_new (GTK_ORIENTATION_VERTICAL, 18);

  gtk_box_append (GTK_BOX (page), trammel_figure_list_new (session, REPORT_LIST_MOVERS, _("What Moves the Balance")));
  gtk_box_append (GTK_BOX (page), trammel_figure_list_new (session, REPORT_LIST_GROUPS, _("Mass by Group")));
  gtk_box_append (GTK_BOX (page), trammel_figure_list_new (session, REPORT_LIST_MOMENTS, _("Moments")));
  gtk_box_append (GTK_BOX (page), trammel_figure_list_new (session, REPORT_LIST_LEADS, _("Leads")));
  return page;
}
