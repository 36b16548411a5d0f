#include "app/group.h"

struct _TrammelGroup {
  GtkBox parent;
  GtkWidget *top, *heading, *remark, *list;
};

G_DEFINE_FINAL_TYPE (TrammelGroup, trammel_group, GTK_TYPE_BOX)

static void
trammel_group_class_init (TrammelGroupClass *klass)
{
}

static void
trammel_group_init (TrammelGroup *self)
{
  gtk_orientable_set_orientation (GTK_ORIENTABLE (self), GTK_ORIENTATION_VERTICAL);
  gtk_box_set_spacing (GTK_BOX (self), 6);
  self->top = gtk_box_new (GTK_ORIENTATION_HORIZONTAL, 6);
  gtk_widget_add_css_class (self->top, "group-top");
  self->heading = gtk_label_new (NULL);
  gtk_widget_add_css_class (self->heading, "heading");
  gtk_label_set_xalign (GTK_LABEL (self->heading), 0);
  gtk_label_set_ellipsize (GTK_LABEL (self->heading), PANGO_ELLIPSIZE_END);
  gtk_widget_set_hexpand (self->heading, TRUE);
  self->remark = gtk_label_new (NULL);
  gtk_widget_add_css_class (self->remark, "dim-label");
  gtk_widget_add_css_class (self->remark, "caption");
  gtk_label_set_ellipsize (GTK_LABEL (self->remark), PANGO_ELLIPSIZE_MIDDLE);
  gtk_box_append (GTK_BOX (self->top), self->heading);
  gtk_box_append (GTK_BOX (self->top), self->remark);
  self->list = gtk_list_box_new ();
  gtk_list_box_set_selection_mode (GTK_LIST_BOX (self->list), GTK_SELECTION_NONE);
  gtk_widget_add_css_class (self->list, "boxed-list");
  gtk_box_append (GTK_BOX (self), self->top);
  gtk_box_append (GTK_BOX (self), self->list);
}

GtkWidget *
trammel_group_new (const char *heading)
{
  TrammelGroup *self = g_object_new (TRAMMEL_TYPE_GROUP, NULL);

  gtk_label_set_text (GTK_LABEL (self->heading), heading);
  gtk_accessible_update_property (GTK_ACCESSIBLE (self->list), GTK_ACCESSIBLE_PROPERTY_LABEL, heading, -1);
  return GTK_WIDGET (self);
}

void
trammel_group_set_remark (TrammelGroup *self, const char *remark)
{
  gtk_label_set_text (GTK_LABEL (self->remark), remark != NULL ? remark : "");
}

void
trammel_group_add (TrammelGroup *self, GtkWidget *row)
{
  gtk_list_box_append (GTK_LIST_BOX (self->list), row);
  if (!GTK_IS_LIST_BOX_ROW (row)) {
    GtkListBoxRow *wrapper = GTK_LIST_BOX_ROW (gtk_widget_get_parent (row));

    gtk_list_box_row_set_activatable (wrapper, FALSE);
    gtk_widget_set_focusable (GTK_WIDGET (wrapper), FALSE);
  }
}

void
trammel_group_add_fields (TrammelGroup *self, TrammelSession *session, const FieldSpec *specs, size_t count)
{
  for (size_t i = 0; i < count; i++)
    trammel_group_add (self, trammel_field_new (session, &specs[i]));
}

void
trammel_group_add_control (TrammelGroup *self, const char *label, GtkWidget *control)
{
  GtkWidget *line = gtk_box_new (GTK_ORIENTATION_HORIZONTAL, 6);
  GtkWidget *words = gtk_label_new (label);

  gtk_widget_add_css_class (line, "field");
  gtk_label_set_xalign (GTK_LABEL (words), 0);
  gtk_widget_set_hexpand (words, TRUE);
  gtk_widget_set_valign (control, GTK_ALIGN_CENTER);
  gtk_box_append (GTK_BOX (line), words);
  gtk_box_append (GTK_BOX (line), control);
  gtk_accessible_update_property (GTK_ACCESSIBLE (control), GTK_ACCESSIBLE_PROPERTY_LABEL, label, -1);
  trammel_group_add (self, line);
}

GtkListBox *
trammel_group_list (TrammelGroup *self)
{
  return GTK_LIST_BOX (self->list);
}

void
trammel_group_add_to_heading (TrammelGroup *self, GtkWidget *widget)
{
  gtk_box_append (GTK_BOX (self->top), widget);
}
