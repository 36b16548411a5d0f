#pragma once
#include <adwaita.h>
#include "app/settings.h"
#include "drawing/export.h"

G_BEGIN_DECLS

#define TRAMMEL_TYPE_EXPORT_CHOICES (trammel_export_choices_get_type ())
G_DECLARE_FINAL_TYPE (TrammelExportChoices, trammel_export_choices, TRAMMEL, EXPORT_CHOICES, AdwPreferencesPage)

/** The rows of the dialog of prints and exports: sheet, format, and whatever has an effect on what they make. Emits "choices-changed". */

/** Who remembers the format of each sheet; needed before anything is shown. */
void          trammel_export_choices_remember (TrammelExportChoices *self, TrammelSettings *settings);
/** Shows those. A format that the sheet has not becomes its usual one. */
void          trammel_export_choices_set     (TrammelExportChoices *self, const ExportOptions *options);
/** What is chosen; a length that cannot be read counts as before. */
ExportOptions trammel_export_choices_options (TrammelExportChoices *self);
/** Whether every length that has an effect can be read. */
bool          trammel_export_choices_are_whole (TrammelExportChoices *self);
/** Whether what "choices-changed" tells was typed: more characters may follow. */
bool          trammel_export_choices_were_typed (TrammelExportChoices *self);
/** Puts the keyboard into the first row. */
void          trammel_export_choices_focus   (TrammelExportChoices *self);
/** Puts it into the first row that cannot be read, and shows what is said of it; nothing when all can. */
void          trammel_export_choices_focus_fault (TrammelExportChoices *self);

G_END_DECLS
