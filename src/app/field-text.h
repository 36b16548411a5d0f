#pragma once
#include "app/field.h"
#include "document/units.h"

/** What stands where a figure cannot be had. */
static const char field_no_figure[] = "–";

/** The unit beside a row's figure; "" when the figure has it within, or none. */
const char *field_text_unit    (FieldKind kind, Units units);
/** As it is read: rounded as the trade rounds. A new string. `value` in the kind's own unit: mm, grams, mm², degrees, percent, no unit. */
char       *field_text_rounded (FieldKind kind, Units units, double value);
/** As it stands in a field: the same, but a mass that was typed with few digits keeps them: 24.6 g. A new string. */
char       *field_text_standing (FieldKind kind, Units units, double value);
/** The same with its unit: "640 mm". NULL without a value, or a new string. */
char       *field_text_with_unit (FieldKind kind, Units units, double value);
/** As it is edited: every digit of a number that was typed, which has few; of one that was reckoned or converted, "5.29109 oz", what is
 *  read of it. "" without a value. What is left so is to change nothing. A new string. `value` likewise (mm, grams …). */
char       *field_text_edited  (FieldKind kind, Units units, double value);
/** Whether that is what `text` still is. `value` likewise (mm, grams …). */
bool        field_text_is_edited (FieldKind kind, Units units, double value, const char *text);
/** What was typed. False with a sentence for the person when it is not understood. `value` likewise (mm, grams …), whatever unit was typed. */
bool        field_text_parse   (FieldKind kind, Units units, const char *text, double *value, GError **error);
/** The same for "24.6 ± 0.5", also written with +- or +/-; the deviation is NAN where none is typed. Both in the kind's own unit (mm, grams …),
 *  and both untouched where one of them is not understood. */
bool        field_text_parse_known (FieldKind kind, Units units, const char *text, double *value, double *deviation, GError **error);
/** Nothing but white space. */
bool        field_text_is_blank (const char *text);
/** What was typed into that row; the deviation is NAN where none is typed. Nothing typed is NAN where that can be meant: where the row may stay
 *  open, or nothing stood in it. False likewise. Both in the kind's own unit (mm, grams …). */
bool        field_text_take    (TrammelSession *session, const FieldSpec *spec, const char *text, double *value, double *deviation, GError **error);
/** What an entry of that row tells of what may be typed: translated; NULL: nothing. */
const char *field_text_hint    (const FieldSpec *spec);
