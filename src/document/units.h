#pragma once
#include <stdbool.h>
#include <glib.h>

/** What a person reads and types. The document always holds millimetres, grams and degrees; these two choices, made apart,
 *  belong to the person and only shape text. An inch is 25.4 mm, an avoirdupois ounce 28.349523125 g, exactly. */
typedef enum { LENGTH_MM, LENGTH_INCH } LengthUnit;
typedef enum { MASS_G, MASS_OZ } MassUnit;
typedef struct { LengthUnit length; MassUnit mass; } Units;

/* Text for reading: rounded as the trade rounds (whole mm, fractions of an inch to 1/32; whole grams below 1 kg, tenths below 10 g;
 * 0.1 oz, 0.01 oz below 10 oz), true minus, the locale's decimal sign, no-break space before the unit and before the fraction of an
 * inch. All return new strings, never NULL; a value that is not finite gives "–". `_figure` leaves the unit out: it stands beside. */
char *units_length        (Units units, double mm);             /* of mm: "128 mm", "5 1/32 in" */
char *units_length_known (Units units, double mm);              /* of one that was typed: with its tenth, where it has one: "76.2 mm" */
char *units_length_figure (Units units, double mm);             /* of mm: "128" */
char *units_mass          (Units units, double grams);          /* of grams: "212 g", "4.5 g", "6 g", "1.25 kg", "0.95 oz" */
char *units_mass_figure   (Units units, double grams);          /* of grams: "212"; never in kg */
char *units_mass_deviation        (Units units, double grams);  /* of grams, >= 0: as units_mass, what is not zero never "0 g" */
char *units_mass_deviation_figure (Units units, double grams);  /* the same without unit; never in kg */
char *units_area          (Units units, double mm2);            /* of square mm: in dm² or in² */
char *units_area_figure   (Units units, double mm2);            /* of square mm: the number alone */
char *units_loading       (Units units, double g_per_dm2);      /* of grams per dm²: g/dm² or oz/ft² (by mass and length unit) */
char *units_loading_figure (Units units, double g_per_dm2);     /* the same without unit: "23" */
char *units_moment        (Units units, double g_mm);           /* of g mm: "−340 g·mm", "−1.00 oz·in" */
char *units_moment_figure (Units units, double g_mm);           /* of g mm: "−340" */
char *units_size          (Units units, double a_mm, double b_mm, double c_mm);   /* of mm: "55 × 30 × 12" without unit */
char *units_speed         (Units units, double m_s);            /* of m/s: "6.5 m/s", with inches "14.5 mph" */
char *units_speed_figure  (Units units, double m_s);            /* of m/s: "6.5" */
char *units_angle         (double degrees);                     /* "4°" or "2.5°" */
char *units_percent       (double percent);                     /* whole, true minus, no-break space before the sign */
char *units_number        (double value, int decimals);         /* a pure number, true minus; "–" unless finite */
const char *units_length_name (Units units);                    /* "mm", "in" */
const char *units_mass_name   (Units units);                    /* "g", "oz" */
const char *units_moment_name (Units units);                    /* "g·mm", "oz·in" */
const char *units_area_name   (Units units);                    /* "dm²", "in²" */
const char *units_loading_name (Units units);                   /* "g/dm²", "oz/ft²" */
double units_area_unit    (Units units);                        /* one dm² or in², mm² */
double units_loading_unit (Units units);                        /* one of that unit, grams per dm² */
const char *units_speed_name  (Units units);                    /* "m/s", "mph" */

/* Text for editing: every digit kept, so that text typed is the value saved. Without unit. Fractions where they are exact.
 * New strings; "" for what is not finite. */
char *units_length_exact (Units units, double mm);              /* of mm: "12.7", "5 1/32" */
char *units_mass_exact   (Units units, double grams);           /* of grams: "7.48", never a fraction */
char *units_area_exact    (Units units, double mm2);            /* to nine figures that count: "1.22" */
char *units_loading_exact (Units units, double g_per_dm2);      /* to nine figures that count: "24", "8.25" */
char *units_number_exact (double value);                        /* no unit: "0.9" */

/** Reads what a person typed: "1.5", "1,5", "12.5 mm", "3 1/16 in", "3-1/16", "25 1/4\"", "6.2 oz"; without a unit the
 *  user's own. Understands point and comma in every locale; "1,000" and "1.000" in the thousands pattern are never guessed.
 *  value   set on success only, mm or g or the plain number
 *  error   a sentence for the place under the field, e.g. "1,000: is that one or a thousand? Write 1 or 1000." */
bool units_parse_length (Units units, const char *text, double *mm, GError **error);
bool units_parse_mass   (Units units, const char *text, double *grams, GError **error);     /* the same for grams */
bool units_parse_area    (Units units, const char *text, double *mm2, GError **error);    /* in the user's own unit; none is understood */
bool units_parse_loading (Units units, const char *text, double *g_per_dm2, GError **error);  /* in the user's own unit; none is understood */
bool units_parse_number (const char *text, double *value, GError **error);                  /* no unit is understood */

#define UNITS_ERROR (units_error_quark ())
GQuark units_error_quark (void);      /* the domain of a UnitsError */
typedef enum { UNITS_ERROR_EMPTY, UNITS_ERROR_NOT_A_NUMBER, UNITS_ERROR_AMBIGUOUS, UNITS_ERROR_UNIT, UNITS_ERROR_LARGE } UnitsError;
