#include <check.h>
#include <math.h>
#include "document/changes.h"
#include "figures/advice-state.h"
#include "figures/advice.h"
#include "figures/report.h"
#include "support/aeroplanes.h"
#include "support/figures-once.h"
#include "support/run-suite.h"
#include "support/shapes.h"

#define NB "\u00a0"          /* the no-break space before a unit */
#define TS "\u00a0"          /* the no-break space between inches and their fraction */

static const Units metric = { LENGTH_MM, MASS_G }, inch = { LENGTH_INCH, MASS_OZ };

/* What is said of one state of a racer of 150.5 g whose mean chord is 110 mm and whose mark stands at station 40, 112.3 mm aft of the
 * datum at the leading edge. Zero leaves a figure as in racer_in_band(). */
typedef struct {
  const char *because;
  double margin, balance_x, handbook_x, margin_sigma, x_sigma, tail_volume;
  double place, ballast, band_from, band_to, rail_from;       /* of the battery, or of what stands for it */
  bool beyond_rail, no_rail, another_part;
  const char *headline, *headline_in_inches, *second;
} Case;

static const Case cases[] = {
  { .because = "in the band, aft of the aim",
    .headline = "In the band. For a first flight move the battery 19" NB "mm forward.",
    .headline_in_inches = "In the band. For a first flight move the battery 3/4" NB "in forward.",
    .second = "Limits 33 and 44" NB "mm; now it balances at 40" NB "mm." },
  { .because = "the same with another part on the rail", .another_part = true,
    .headline = "In the band. For a first flight move “Receiver” 19" NB "mm forward.",
    .headline_in_inches = "In the band. For a first flight move “Receiver” 3/4" NB "in forward." },
  { .because = "a step smaller than its deviation is about so much", .place = 118, .balance_x = 149.9, .margin = 11,
    .headline = "In the band. For a first flight move the battery about 6" NB "mm forward.",
    .headline_in_inches = "In the band. For a first flight move the battery about 1/4" NB "in forward." },
  { .because = "in the band, at the aim", .place = 123.5, .margin = 12, .balance_x = 148.9,
    .headline = "In the band: for the first flight balance at the forward limit, 33" NB "mm.",
    .headline_in_inches = "In the band: for the first flight balance at the forward limit, 1" TS "5/16" NB "in." },
  { .because = "the aim is 2 mm beyond the rail, which begins at 82", .place = 80, .band_from = 82, .beyond_rail = true,
    .headline = "In the band. First flight: battery 42" NB "mm forward, to the rail's end.",
    .headline_in_inches = "In the band. First flight: battery 1" TS "21/32" NB "in forward, to the rail's end.",
    .second = "The rail ends 2" NB "mm too far aft. Limits 33 and 44" NB "mm; now it balances at 40" NB "mm." },
  { .because = "at the aim, and the forward limit, at 123.5 − 3.4 × 150.5 / 27, is 1.5 mm beyond the rail", .place = 123.5, .margin = 12,
    .balance_x = 148.9, .rail_from = 106,
    .headline = "In the band. First flight: battery 18" NB "mm forward, to the rail's end.",
    .headline_in_inches = "In the band. First flight: battery 23/32" NB "in forward, to the rail's end.",
    .second = "For the forward limit the rail ends 1" NB "mm too far aft. Limits 33 and 44" NB "mm; now it balances at 37" NB "mm." },
  { .because = "at the rail's end already", .place = 123.5, .margin = 12, .balance_x = 148.9, .rail_from = 123.8,
    .headline = "In the band, and the battery is as far forward as its rail goes.",
    .headline_in_inches = "In the band, and the battery is as far forward as its rail goes.",
    .second = "For the forward limit the rail ends 19" NB "mm too far aft. Limits 33 and 44" NB "mm; now it balances at 37" NB "mm." },
  { .because = "in the band, nothing to move", .no_rail = true,
    .headline = "In the band: for the first flight balance at the forward limit, 33" NB "mm.",
    .headline_in_inches = "In the band: for the first flight balance at the forward limit, 1" TS "5/16" NB "in." },
  { .because = "behind the neutral point", .margin = -3, .balance_x = 165.3, .place = 93, .band_from = 82.5, .band_to = 110,
    .headline = "Tail-heavy: do not fly. Move the battery 31" NB "mm forward.",
    .headline_in_inches = "Tail-heavy: do not fly. Move the battery 1" TS "7/32" NB "in forward.",
    .second = "Limits 33 and 44" NB "mm; now it balances at 53" NB "mm." },
  { .because = "behind it, with another part", .margin = -3, .balance_x = 165.3, .place = 93, .band_from = 82.5, .another_part = true,
    .headline = "Tail-heavy: do not fly. Move “Receiver” 31" NB "mm forward.",
    .headline_in_inches = "Tail-heavy: do not fly. Move “Receiver” 1" TS "7/32" NB "in forward." },
  { .because = "behind it, and the rail ends short: 150.5 (165.3 − 27 × 42 / 150.5 − 148.8) / (148.8 − 14.95) g", .margin = -3, .balance_x = 165.3, .place = 70, .beyond_rail = true,
    .ballast = 6.2,
    .headline = "Tail-heavy: do not fly. The rail is too short: 10" NB "g in the nose end of the body as well.",
    .headline_in_inches = "Tail-heavy: do not fly. The rail is too short: 0.36" NB "oz in the nose end of the body as well.",
    .second = "The rail ends 12" NB "mm too far aft. Limits 33 and 44" NB "mm; now it balances at 53" NB "mm."
              " The ballast is for the aim, 12" NB "%." },
  { .because = "behind it, and nothing slides: 150.5 (165.3 − 148.8) / (148.8 − 18.05) g", .margin = -3, .balance_x = 165.3, .no_rail = true,
    .headline = "Tail-heavy: do not fly. Put 19" NB "g in the nose end of the body.",
    .headline_in_inches = "Tail-heavy: do not fly. Put 0.67" NB "oz in the nose end of the body." },
  { .because = "less margin than wanted", .margin = 3, .balance_x = 158.7, .place = 93, .band_from = 82.5, .band_to = 116,
    .headline = "Tail-heavy. Move the battery 31" NB "mm forward.",
    .headline_in_inches = "Tail-heavy. Move the battery 1" TS "7/32" NB "in forward." },
  { .because = "less, and only the rail's end reaches the band", .margin = 3, .balance_x = 158.7, .place = 76, .beyond_rail = true,
    .band_from = 82, .band_to = 84, .ballast = 3,
    .headline = "Tail-heavy. Move the battery 42" NB "mm forward.",
    .headline_in_inches = "Tail-heavy. Move the battery 1" TS "21/32" NB "in forward.",
    .second = "The rail ends 6" NB "mm too far aft. Limits 33 and 44" NB "mm; now it balances at 46" NB "mm." },
  { .because = "less, and the rail is too short: 150.5 (158.7 − 27 × 42 / 150.5 − 148.8) / (148.8 − 11.85) g", .margin = 3, .balance_x = 158.7, .place = 76, .beyond_rail = true, .ballast = 6.2,
    .headline = "Tail-heavy, and the rail is too short: 2.6" NB "g in the nose end of the body as well.",
    .headline_in_inches = "Tail-heavy, and the rail is too short: 0.09" NB "oz in the nose end of the body as well.",
    .second = "The rail ends 6" NB "mm too far aft. Limits 33 and 44" NB "mm; now it balances at 46" NB "mm."
              " The ballast is for the aim, 12" NB "%." },
  { .because = "less, and nothing slides: 150.5 (158.7 − 148.8) / (148.8 − 16.5) g", .margin = 3, .balance_x = 158.7, .no_rail = true,
    .headline = "Tail-heavy. Put 11" NB "g in the nose end of the body.",
    .headline_in_inches = "Tail-heavy. Put 0.40" NB "oz in the nose end of the body." },
  { .because = "a ballast that no scale shows is a gram", .margin = 3, .balance_x = 156.4, .place = 81.8, .beyond_rail = true, .ballast = 0.2,
    .headline = "Tail-heavy, and the rail is too short: 1" NB "g in the nose end of the body as well.",
    .headline_in_inches = "Tail-heavy, and the rail is too short: 0.04" NB "oz in the nose end of the body as well." },
  { .because = "more margin than wanted", .margin = 18, .balance_x = 142.2, .place = 136, .band_from = 125, .band_to = 145,
    .headline = "Nose-heavy, safe but dull. The battery may go about 12" NB "mm aft.",
    .headline_in_inches = "Nose-heavy, safe but dull. The battery may go about 15/32" NB "in aft.",
    .second = "Limits 33 and 44" NB "mm; now it balances at 30" NB "mm." },
  { .because = "more, certain to a millimetre", .margin = 18, .balance_x = 142.2, .place = 136, .band_from = 125, .band_to = 145,
    .margin_sigma = 1, .headline = "Nose-heavy, safe but dull. The battery may go 12" NB "mm aft.",
    .headline_in_inches = "Nose-heavy, safe but dull. The battery may go 15/32" NB "in aft." },
  { .because = "more, with another part", .margin = 18, .balance_x = 142.2, .place = 154, .band_from = 125, .band_to = 160,
    .another_part = true, .headline = "Nose-heavy, safe but dull. “Receiver” may go 30" NB "mm aft.",
    .headline_in_inches = "Nose-heavy, safe but dull. “Receiver” may go 1" TS "3/16" NB "in aft." },
  { .because = "more, and the rail ends short: 150.5 (139.9 + 27 × 10 / 150.5 − 148.8) / (148.8 − 439.1) g", .margin = 20, .balance_x = 139.9, .place = 146, .beyond_rail = true, .ballast = 5.7,
    .headline = "Nose-heavy, and the rail is too short: 3.7" NB "g in the tail end of the body as well.",
    .headline_in_inches = "Nose-heavy, and the rail is too short: 0.13" NB "oz in the tail end of the body as well.",
    .second = "The rail ends 12" NB "mm too far forward. Limits 33 and 44" NB "mm; now it balances at 28" NB "mm."
              " The ballast is for the aim, 12" NB "%." },
  { .because = "more, and nothing slides: 150.5 (139.9 − 148.8) / (148.8 − 434.8) g", .margin = 20, .balance_x = 139.9, .no_rail = true,
    .headline = "Nose-heavy, safe but dull. Take weight from the nose, or put 4.7" NB "g in the tail end of the body.",
    .headline_in_inches = "Nose-heavy, safe but dull. Take weight from the nose, or put 0.17" NB "oz in the tail end of the body." },
  { .because = "balancing ahead of the wing", .margin = 48, .balance_x = 109.2, .place = 146, .beyond_rail = true, .ballast = 30,
    .headline = "Nose-heavy, and the rail is too short: 22" NB "g in the tail end of the body as well.",
    .headline_in_inches = "Nose-heavy, and the rail is too short: 0.77" NB "oz in the tail end of the body as well.",
    .second = "Limits 33 and 44" NB "mm; now it balances 3" NB "mm ahead of the leading edge."
              " The ballast is for the aim, 12" NB "%." },
  { .because = "the masses are mostly guessed", .x_sigma = 6.1, .margin_sigma = 6.2,
    .headline = "In the band, but the masses are estimates. Weigh the body and “Motor” first.",
    .headline_in_inches = "In the band, but the masses are estimates. Weigh the body and “Motor” first." },
  { .because = "the methods differ by more than the deviation", .handbook_x = 166.1,
    .headline = "The two methods differ by about 4" NB "mm. Stay at the forward limit.",
    .headline_in_inches = "The two methods differ by about 5/32" NB "in. Stay at the forward limit." },
  { .because = "a small tail: 0.25 wants a fifth more", .tail_volume = 0.2499,
    .headline = "The tailplane is small: balance forward, or enlarge it by a fifth.",
    .headline_in_inches = "The tailplane is small: balance forward, or enlarge it by a fifth." },
  { .because = "a smaller tail", .tail_volume = 0.226,
    .headline = "The tailplane is small: balance forward, or enlarge it by a third.",
    .headline_in_inches = "The tailplane is small: balance forward, or enlarge it by a third." },
  { .because = "a very small tail", .tail_volume = 0.2,
    .headline = "The tailplane is small: balance forward, or enlarge it by half.",
    .headline_in_inches = "The tailplane is small: balance forward, or enlarge it by half." },
  { .because = "a tiny tail: half of what is wanted", .tail_volume = 0.15,
    .headline = "The tailplane is small: balance forward, or make it twice as large.",
    .headline_in_inches = "The tailplane is small: balance forward, or make it twice as large." },
  { .because = "a tinier one, for which twice would not suffice", .tail_volume = 0.12,
    .headline = "The tailplane is small: balance forward, or triple its area.",
    .headline_in_inches = "The tailplane is small: balance forward, or triple its area." },
  { .because = "a quarter of what is wanted", .tail_volume = 0.075,
    .headline = "The tailplane is small: balance forward, or quadruple its area.",
    .headline_in_inches = "The tailplane is small: balance forward, or quadruple its area." },
  { .because = "a tail that nobody would enlarge so far", .tail_volume = 0.04,
    .headline = "The tailplane is far too small: draw a larger one, or move it aft.",
    .headline_in_inches = "The tailplane is far too small: draw a larger one, or move it aft." },
  { .because = "a tail that stands ahead", .tail_volume = -0.2,
    .headline = "The tailplane lies ahead of the wing's quarter chord. Move it aft.",
    .headline_in_inches = "The tailplane lies ahead of the wing's quarter chord. Move it aft." },
};

static double
or_usual (double given, double usual)
{
  return given != 0 ? given : usual;
}

/* The racer with the battery at 124 mm, or with a receiver on the rail in its place. */
static Aeroplane *
racer_for (const Case *wanted)
{
  g_autoptr (Aeroplane) made = racer ();
  const Piece *old = aeroplane_find (made, "battery");
  Part *part = (Part *) piece_dup (old);

  part->has_rail = !wanted->no_rail;
  part->mass_sigma = NAN;
  part->rail_from = or_usual (wanted->rail_from, part->rail_from);
  if (wanted->another_part)
    {
      g_free (part->class_name);
      part->class_name = g_strdup ("receiver");
    }
  return aeroplane_with_replaced (made, old, &part->piece);
}

static void
set_solution (Figures *figures, const Case *wanted)
{
  if (wanted->no_rail)
    return;
  figures->solutions[0].x_mm = or_usual (wanted->place, 104.8);
  figures->solutions[0].reachable = !wanted->beyond_rail;
  figures->solutions[0].ballast_g = wanted->ballast;
  figures->solutions[0].band_from_mm = or_usual (wanted->band_from, wanted->beyond_rail ? NAN : 86);
  figures->solutions[0].band_to_mm = or_usual (wanted->band_to, wanted->beyond_rail ? NAN : 134);
}

static Figures *
racer_in_band (const Case *wanted)
{
  g_autoptr (Aeroplane) aeroplane = racer_for (wanted);
  Figures *figures = figures_once (aeroplane);

  figures->mass.total_g = 150.5;
  figures->mass.x_mm = or_usual (wanted->balance_x, 152.2);
  figures->mass.x_sigma_mm = or_usual (wanted->x_sigma, 1.8);
  figures->neutral_point.x_mm = 162;
  figures->neutral_point.percent_mac = 39.1;
  figures->neutral_point.handbook_x_mm = or_usual (wanted->handbook_x, 163.5);
  figures->neutral_point.sigma_mm = 2.9;
  figures->balance.percent_mac = 30.3;
  figures->balance.static_margin_percent = or_usual (wanted->margin, 8.9);
  figures->balance.static_margin_sigma_percent = or_usual (wanted->margin_sigma, 3.1);
  figures->balance.target_x_mm = figures->balance.advised_x_mm = 148.8;
  figures->balance.forward_limit_x_mm = 145.4;
  figures->balance.aft_limit_x_mm = 156.5;
  figures->balance.marks[0] = (MarkFigures) { 40, 36.4, 33.1, 44.1, 112.3, 129, 2.9 };
  figures->tail_volume = or_usual (wanted->tail_volume, 0.44);
  set_solution (figures, wanted);
  return figures;
}

START_TEST (each_state_has_its_sentence_in_millimetres_and_in_inches)
{
  g_autoptr (Figures) figures = racer_in_band (&cases[_i]);
  Advice *advice = advice_new (figures, metric), *in_inches = advice_new (figures, inch);

  ck_assert_msg (g_str_equal (advice->headline, cases[_i].headline), "%s:\n  said %s\n  want %s", cases[_i].because,
                 advice->headline, cases[_i].headline);
  ck_assert_msg (g_str_equal (in_inches->headline, cases[_i].headline_in_inches), "%s:\n  said %s\n  want %s", cases[_i].because,
                 in_inches->headline, cases[_i].headline_in_inches);
  if (cases[_i].second)
    ck_assert_str_eq (advice->second, cases[_i].second);
  advice_free (advice);
  advice_free (in_inches);
}
END_TEST

/* The place advised is 2 % of the chord ahead of the aim. */
START_TEST (ballast_for_more_than_the_aim_says_why)
{
  g_autoptr (Figures) figures = racer_in_band (&(Case) { .because = "clear of the limit", .balance_x = 160, .margin = 1, .no_rail = true });
  Advice *advice;

  figures->balance.advised_x_mm = figures->balance.target_x_mm - 0.02 * figures->reference->planform.mac;
  advice = advice_new (figures, metric);
  ck_assert_ptr_nonnull (strstr (advice->second, "The ballast is for 14" NB "%, one deviation clear of the aft limit."));
  advice_free (advice);
}
END_TEST

START_TEST (the_answer_stands_beside_the_sentence)
{
  g_autoptr (Figures) figures = racer_in_band (&(Case) { .because = "as drawn" });
  Advice *advice = advice_new (figures, metric), *in_inches = advice_new (figures, inch);

  ck_assert (advice->has_mark && advice->has_margin);
  ck_assert_str_eq (advice->mark_figure, "36");
  ck_assert_str_eq (in_inches->mark_figure, "1" TS "7/16");
  ck_assert_str_eq (advice->mark_place, "aft of the leading edge at station 40");
  ck_assert_str_eq (advice->margin_figure, "9" NB "%");
  ck_assert_str_eq (advice->margin_sigma, "± 3");
  ck_assert_str_eq (advice->chord_text, "Balance at 30" NB "% of MAC, wanted 24 to 34, neutral point 39 ± 3");
  advice_free (advice);
  advice_free (in_inches);
}
END_TEST

START_TEST (a_deviation_is_never_said_to_be_nothing)
{
  g_autoptr (Figures) figures = racer_in_band (&(Case) { .because = "weighed", .margin_sigma = 0.2 });
  Advice *advice = advice_new (figures, metric);

  ck_assert_str_eq (advice->margin_sigma, "± 1");
  advice_free (advice);
}
END_TEST

/* What is said of aeroplanes that are not yet one: made as a hand would leave them. */

static Aeroplane *empty_sheet (void) { return aeroplane_new (); }

static Aeroplane *
only_a_tail (void)
{
  return with_surface (aeroplane_new (), "tail", ROLE_TAILPLANE, rectangle (400, 200, 50));
}

static Aeroplane *
open_wing (void)
{
  return with_surface (aeroplane_new (), "wing", ROLE_WING, polygon_from ((Point[]) { { 0, 0 }, { 10, 300 }, { 90, 280 } }, 3));
}

static Aeroplane *
open_tail (void)
{
  Aeroplane *made = with_surface (aeroplane_new (), "wing", ROLE_WING, rectangle (100, 600, 100));

  return with_surface (made, "tail", ROLE_TAILPLANE, polygon_from ((Point[]) { { 400, 0 }, { 410, 100 }, { 450, 80 } }, 3));
}

static Aeroplane *
open_fin (void)
{
  Aeroplane *made = with_surface (aeroplane_new (), "wing", ROLE_WING, rectangle (100, 600, 100));

  return with_surface (made, "fin", ROLE_FIN, polygon_from ((Point[]) { { 400, 0 }, { 410, 70 }, { 450, 60 } }, 3));
}

static Aeroplane *
crossing_wing (void)
{
  return with_surface (aeroplane_new (), "wing", ROLE_WING,
                       polygon_from ((Point[]) { { 0, 0 }, { 90, 300 }, { 0, 300 }, { 90, 0 } }, 4));
}

static Aeroplane *
wing_without_span (void)
{
  return with_surface (aeroplane_new (), "wing", ROLE_WING, polygon_from ((Point[]) { { 0, 0 }, { 90, 0 } }, 2));
}

static Aeroplane *
wing_alone (void)
{
  return with_part (with_surface (aeroplane_new (), "wing", ROLE_WING, rectangle (100, 600, 100)), "motor", 17, 110);
}

static Aeroplane *
twice_the_same_wing (void)
{
  return with_surface (with_surface (aeroplane_new (), "wing", ROLE_WING, rectangle (100, 600, 100)), "again", ROLE_WING,
                       rectangle (100, 600, 100));
}

static Aeroplane *
without_masses (void)
{
  return with_surface (with_surface (aeroplane_new (), "wing", ROLE_WING, rectangle (100, 600, 100)), "tail", ROLE_TAILPLANE,
                       rectangle (400, 220, 60));
}

static Aeroplane *
mass_of_nothing (void)
{
  return with_structure (without_masses (), "boom", "nowhere", 12);
}

static const struct { const char *because; Aeroplane *(*made) (void); const char *headline, *mark, *margin; } unfinished[] = {
  { "nothing drawn", empty_sheet, "No wing yet: draw its outline, or start from numbers.", "not yet", "not yet" },
  { "a tail and no wing", only_a_tail, "No wing yet: draw its outline, or start from numbers.", "not yet", "not yet" },
  { "an open wing", open_wing, "Carry the outline to the centre line; the wing then closes.", "not yet", "not yet" },
  { "an open tailplane", open_tail, "Carry the outline to the centre line; the tailplane then closes.", "not yet", "not yet" },
  { "an open fin", open_fin, "Carry the outline back to the root; the fin then closes.", "wing alone", "wing alone" },
  { "a crossing wing", crossing_wing, "The wing's outline crosses itself. Drag one of its nodes away.", "not yet", "not yet" },
  { "no span", wing_without_span, "The wing encloses nothing yet. Give it a span and a chord.", "not yet", "not yet" },
  { "a wing alone", wing_alone, "No tailplane yet: the neutral point is the wing's alone.", "wing alone", "wing alone" },
  { "two in one place", twice_the_same_wing, "Two surfaces lie in one place. Move one of them.", "not yet", "not yet" },
  { "no masses", without_masses, "No masses yet: add the battery, the motor and the structure.", NULL, "not yet" },
  { "a mass without a place", mass_of_nothing, "A mass has no place yet: draw what it is of.", NULL, "not yet" },
};

START_TEST (an_unfinished_aeroplane_is_told_what_is_missing)
{
  g_autoptr (Aeroplane) aeroplane = unfinished[_i].made ();
  g_autoptr (Figures) figures = figures_once (aeroplane);
  Advice *advice = advice_new (figures, metric);

  ck_assert_msg (g_str_equal (advice->headline, unfinished[_i].headline), "%s: said %s", unfinished[_i].because, advice->headline);
  ck_assert_str_eq (advice->margin_figure, unfinished[_i].margin);
  ck_assert (!advice->has_margin);
  ck_assert_str_eq (advice->margin_sigma, "");
  if (unfinished[_i].mark)
    ck_assert_str_eq (advice->mark_figure, unfinished[_i].mark);
  ck_assert (advice->has_mark == !unfinished[_i].mark);        /* the mark needs no masses */
  advice_free (advice);
}
END_TEST

/* Wanted from `from` to 15 %, aimed at from %: so well is no neutral point known. */
static Aeroplane *
racer_aimed_at_its_aft_limit (double from)
{
  g_autoptr (Aeroplane) made = racer ();
  const Piece *old = aeroplane_find (made, "battery");
  AeroplaneTraits traits = aeroplane_traits (made);
  Part *battery = (Part *) piece_dup (old);

  traits.target = (Target) { .from = from, .to = 15, .aim = from };
  battery->has_rail = true, battery->rail_from = -400, battery->rail_to = 400;
  g_autoptr (Aeroplane) sliding = aeroplane_with_replaced (made, old, &battery->piece);
  return aeroplane_with_traits (sliding, traits);
}

static const double aft_limits[] = { 5, 14 };

START_TEST (where_little_is_known_advice_solution_and_report_name_one_place)
{
  g_autoptr (Aeroplane) aeroplane = racer_aimed_at_its_aft_limit (aft_limits[_i]);
  g_autoptr (Figures) figures = figures_once (aeroplane);
  const BalanceFigures *balance = &figures->balance;
  const double margin = fmin (aft_limits[_i] + balance->static_margin_sigma_percent, 15);
  const double advised = figures->neutral_point.x_mm - margin / 100 * figures->reference->planform.mac;
  const Solution *solution = figures_solution (figures, "battery");
  const AdviceMeans means = advice_means_of (figures);
  g_autofree char *report = report_text (figures, metric), *place = units_length_figure (metric, solution->x_mm);
  g_autoptr (Aeroplane) moved = change_part_place (aeroplane, "battery", advice_place_x_mm (solution), solution->part->y, solution->part->z);
  g_autoptr (Figures) after = figures_once (moved);
  g_autoptr (Aeroplane) aimed = change_part_place (aeroplane, "battery", solution->at_aim.x_mm, solution->part->y, solution->part->z);
  g_autoptr (Figures) at_aim = figures_once (aimed);

  ck_assert_double_eq_tol (at_aim->mass.x_mm, balance->target_x_mm, 1e-9);
  ck_assert_double_eq_tol (balance->advised_x_mm, advised, 1e-9);
  ck_assert_double_lt (balance->advised_x_mm, balance->target_x_mm - 0.5);
  ck_assert_double_eq_tol (after->mass.x_mm, advised, 1e-9);
  ck_assert_double_eq_tol (means.move_mm, solution->x_mm - solution->part->x, 1e-9);
  ck_assert_ptr_nonnull (strstr (strstr (report, "aim at"), place));
}
END_TEST

START_TEST (where_enough_is_known_the_advice_is_the_aim)
{
  g_autoptr (Aeroplane) aeroplane = racer ();
  g_autoptr (Figures) figures = figures_once (aeroplane);

  ck_assert_double_eq (figures->balance.advised_x_mm, figures->balance.target_x_mm);
}
END_TEST

/* A heavy receiver that stands first in the document and reaches as well. */
START_TEST (the_battery_is_moved_before_any_other_part)
{
  g_autoptr (Aeroplane) made = racer ();
  const Piece *old = aeroplane_find (made, "receiver");
  Part *receiver = (Part *) piece_dup (old);

  receiver->mass = 30, receiver->x = 140, receiver->has_rail = true, receiver->rail_from = 20, receiver->rail_to = 200;
  g_autoptr (Aeroplane) aeroplane = aeroplane_with_replaced (made, old, &receiver->piece);
  g_autoptr (Figures) figures = figures_once (aeroplane);
  ck_assert_str_eq (figures->solutions[0].part->piece.id, "receiver");
  for (size_t i = 0; i < figures->solution_count; i++)
    ck_assert (isfinite (figures->solutions[i].band_from_mm));
  Advice *advice = advice_new (figures, metric);
  ck_assert_ptr_nonnull (strstr (advice->headline, "the battery"));
  advice_free (advice);
}
END_TEST

/* Motor and battery alone balance far ahead of the finished aeroplane; advice that leans on them would be wrong by tens of per cent. */
START_TEST (an_airframe_without_mass_is_asked_for_before_any_advice)
{
  g_autoptr (Aeroplane) made = racer ();

  while (aeroplane_count (made, PIECE_STRUCTURE) > 0)
    {
      Aeroplane *next = aeroplane_without (made, aeroplane_nth (made, PIECE_STRUCTURE, 0));

      aeroplane_unref (made);
      made = next;
    }
  g_autoptr (Figures) figures = figures_once (made);
  ck_assert_double_gt (figures->balance.static_margin_percent, 0);
  Advice *advice = advice_new (figures, metric);
  ck_assert_str_eq (advice->headline, "The airframe has no mass yet: type what wing, tail and body weigh.");
  ck_assert (!advice->has_margin);
  ck_assert_str_eq (advice->margin_figure, "parts alone");
  ck_assert_str_eq (advice->margin_sigma, "");
  advice_free (advice);
  ck_assert_ptr_nonnull (note_with (figures, "has no mass yet"));
  ck_assert (figures_are_sound (figures));
}
END_TEST

int
main (void)
{
  Suite *suite = suite_create ("figures advice");
  TCase *tests = tcase_create ("advice");

  tcase_add_loop_test (tests, each_state_has_its_sentence_in_millimetres_and_in_inches, 0, G_N_ELEMENTS (cases));
  tcase_add_test (tests, an_airframe_without_mass_is_asked_for_before_any_advice);
  tcase_add_test (tests, ballast_for_more_than_the_aim_says_why);
  tcase_add_test (tests, the_answer_stands_beside_the_sentence);
  tcase_add_test (tests, a_deviation_is_never_said_to_be_nothing);
  tcase_add_loop_test (tests, an_unfinished_aeroplane_is_told_what_is_missing, 0, G_N_ELEMENTS (unfinished));
  tcase_add_loop_test (tests, where_little_is_known_advice_solution_and_report_name_one_place, 0, G_N_ELEMENTS (aft_limits));
  tcase_add_test (tests, where_enough_is_known_the_advice_is_the_aim);
  tcase_add_test (tests, the_battery_is_moved_before_any_other_part);
  return run_suite (suite, tests);
}
