#pragma once
#include "app/field.h"

G_BEGIN_DECLS

#define TRAMMEL_TYPE_GROUP (trammel_group_get_type ())
G_DECLARE_FINAL_TYPE (TrammelGroup, trammel_group, TRAMMEL, GROUP, GtkBox)

/** A heading at the left, a dim remark at the right, boxed rows beneath. */
GtkWidget *trammel_group_new        (const char *heading);
void       trammel_group_set_remark (TrammelGroup *self, const char *remark);      /* NULL takes it away */
/** Adds a row; anything but a GtkListBoxRow is wrapped in one that cannot be focused. */
void       trammel_group_add        (TrammelGroup *self, GtkWidget *row);
/** One row for each spec. */
void       trammel_group_add_fields (TrammelGroup *self, TrammelSession *session, const FieldSpec *specs, size_t count);
/** A label at the left and any control at the right, tied to each other. */
void       trammel_group_add_control (TrammelGroup *self, const char *label, GtkWidget *control);
GtkListBox *trammel_group_list      (TrammelGroup *self);      /* its rows; lent */
/** Puts a widget (a button) at the end of the heading, in the remark's place. */
void       trammel_group_add_to_heading (TrammelGroup *self, GtkWidget *widget);

G_END_DECLS
