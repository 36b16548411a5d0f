#pragma once
#include "app/group.h"
#include "app/piece-fields.h"
#include "app/selection-page.h"

/* What the selection page's own files share. */

struct _TrammelSelectionPage {
  GtkBox parent;
  TrammelSession *session;
  TrammelPlanStore *plans;     /* beneath the sheet; NULL: none are known of */
  char *shown;                 /* what the rows were built for */
  GPtrArray *fields;           /* of TrammelField, lent */
  GPtrArray *controls;         /* of GtkWidget with a refresh of its own, lent */
};

/** A group of rows with its heading; `remark` beside it, NULL none. Lent. */
GtkWidget *selection_page_add_group (TrammelSelectionPage *self, const char *heading, const char *remark, FieldList list);
/** More rows of a group. */
void selection_page_add_rows    (TrammelSelectionPage *self, GtkWidget *group, FieldList list);
/** A row with a label, whose control looks after itself; or one that is as wide as the group. */
void selection_page_add_control (TrammelSelectionPage *self, GtkWidget *group, const char *label, GtkWidget *control);
void selection_page_add_above   (TrammelSelectionPage *self, GtkWidget *words);      /* before the groups, on its own */
void selection_page_add_wide    (TrammelSelectionPage *self, GtkWidget *group, GtkWidget *control);      /* without a label */

/** A row for each balance mark, with buttons that add one and take one out; nothing without a wing. */
void selection_page_build_marks (TrammelSelectionPage *self);
/** The rows of a part, of a lead. */
void selection_page_build_part (TrammelSelectionPage *self, const Part *part);
void selection_page_build_lead (TrammelSelectionPage *self, const Lead *lead);      /* its ends, legs, slack, and the place on it that is selected */
