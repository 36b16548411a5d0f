#include <check.h>
#include <math.h>
#include "support/aeroplanes.h"
#include "support/figures-once.h"
#include "support/run-suite.h"
#include "support/shapes.h"

/* Where lattice and handbook part by more than the deviation, the finding says so and what usually causes it; and figures from the
 * smallest to the largest aeroplane that anybody might type. */

/* A straight taper: its place, span, chords and how far aft the tip's leading edge lies of the root's. */
typedef struct { SurfaceRole role; double x, span, root, tip, tip_aft, z; } Plate;

static Aeroplane *
with_plate (Aeroplane *self, const char *id, const Plate *plate)
{
  const double half = plate->span / 2, tip_x = plate->x + plate->tip_aft;
  Surface *surface = surface_new (id, plate->role, polygon_from ((Point[]) { { plate->x, 0 }, { tip_x, half }, { tip_x + plate->tip, half },
                                                                            { plate->x + plate->root, 0 } }, 4));

  surface->z = plate->z;
  return with_piece (self, surface);
}

static Figures *
figures_of_plates (const Plate plates[2])
{
  Aeroplane *made = with_plate (aeroplane_new (), "first", &plates[0]);

  g_autoptr (Aeroplane) aeroplane = plates[1].span > 0 ? with_plate (made, "second", &plates[1]) : made;
  return figures_once (aeroplane);
}

static const struct { const char *because; Plate plates[2]; const char *cause; } apart[] = {
  { "two wings in tandem", { { ROLE_WING, 0, 600, 100, 100, 0, 0 }, { ROLE_WING, 200, 500, 100, 100, 0, 0 } }, "wings near each other" },
  { "a tail less than two chords behind", { { ROLE_WING, 0, 600, 120, 120, 0, 0 }, { ROLE_TAILPLANE, 180, 500, 90, 90, 0, 0 } },
    "tail this close to the wing" },
  { "a wing of aspect ratio 1.3", { { ROLE_WING, 0, 200, 150, 150, 0, 0 } }, "wings of more span for their chord" },
  { "a wing swept by 35 degrees with a wide low tail", { { ROLE_WING, 0, 700, 120, 120, 245, 0 }, { ROLE_TAILPLANE, 600, 650, 90, 90, 0, 0 } },
    "swept wing's centre of lift" },
  { "a low tail nearly as wide as the wing", { { ROLE_WING, 0, 500, 100, 100, 0, 0 }, { ROLE_TAILPLANE, 350, 450, 80, 80, 0, 0 } },
    "how high and how wide this tail is" },
};

START_TEST (where_the_methods_part_the_finding_says_what_usually_parts_them)
{
  g_autoptr (Figures) figures = figures_of_plates (apart[_i].plates);
  const NeutralPointFigures *point = &figures->neutral_point;
  const Note *note = note_with (figures, "The two methods");

  ck_assert_msg (fabs (point->x_mm - point->handbook_x_mm) > point->sigma_mm, "%s: they agree", apart[_i].because);
  ck_assert_ptr_nonnull (note);
  ck_assert_int_eq (note->severity, NOTE_LOOK);
  ck_assert_msg (strstr (note->text, apart[_i].cause), "%s: %s", apart[_i].because, note->text);
}
END_TEST

START_TEST (where_they_agree_nothing_is_said)
{
  const Plate usual[2] = { { ROLE_WING, 0, 600, 100, 100, 0, 0 }, { ROLE_TAILPLANE, 350, 200, 55, 55, 0, 30 } };
  g_autoptr (Figures) figures = figures_of_plates (usual);

  ck_assert_ptr_null (note_with (figures, "The two methods"));
}
END_TEST

/* Spans from a millimetre to ten metres, aspect ratios from 0.3 to 60, each with a tail: an answer that is a number, with a deviation that
 * builders would believe. */
static const double spans[] = { 1, 30, 640, 10000 }, aspect_ratios[] = { 0.3, 1, 6, 20, 60 };

START_TEST (every_size_and_aspect_ratio_has_a_neutral_point)
{
  for (size_t i = 0; i < G_N_ELEMENTS (aspect_ratios); i++)
    {
      const double span = spans[_i], chord = span / aspect_ratios[i];
      const Plate plates[2] = { { ROLE_WING, 0, span, chord, chord, 0, 0 },
                                { ROLE_TAILPLANE, 4 * chord, 0.4 * span, chord / 2, chord / 2, 0, chord / 4 } };
      g_autoptr (Figures) figures = figures_of_plates (plates);
      const double sigma = figures->neutral_point.sigma_mm / chord;

      ck_assert_int_eq (figures->neutral_point.status, CORE_OK);
      ck_assert_double_gt (figures->neutral_point.percent_mac, 15);
      ck_assert_double_lt (figures->neutral_point.percent_mac, 160);
      ck_assert_msg (sigma >= 0.025 && sigma < 0.4, "span %g, aspect ratio %g: %g", span, aspect_ratios[i], sigma);
    }
}
END_TEST

/* Poor knowledge must not widen the place where people balance: the limits are those of the target alone. */
START_TEST (the_band_does_not_widen_with_the_deviation)
{
  Aeroplane *made = racer ();
  const Piece *old = aeroplane_find (made, "battery");
  Part *battery = (Part *) piece_dup (old);
  Aeroplane *vague;

  battery->mass_sigma = 20;
  battery->x_sigma = 40;
  vague = aeroplane_with_replaced (made, old, &battery->piece);
  g_autoptr (Aeroplane) one = made;
  g_autoptr (Aeroplane) other = vague;
  g_autoptr (Figures) known = figures_once (one);
  g_autoptr (Figures) guessed = figures_once (other);
  ck_assert_double_gt (guessed->balance.static_margin_sigma_percent, 1.5 * known->balance.static_margin_sigma_percent);
  ck_assert_double_eq (guessed->balance.forward_limit_x_mm, known->balance.forward_limit_x_mm);
  ck_assert_double_eq (guessed->balance.aft_limit_x_mm, known->balance.aft_limit_x_mm);
}
END_TEST

int
main (void)
{
  TCase *tests = tcase_create ("apart");

  tcase_add_loop_test (tests, where_the_methods_part_the_finding_says_what_usually_parts_them, 0, G_N_ELEMENTS (apart));
  tcase_add_test (tests, where_they_agree_nothing_is_said);
  tcase_add_loop_test (tests, every_size_and_aspect_ratio_has_a_neutral_point, 0, G_N_ELEMENTS (spans));
  tcase_add_test (tests, the_band_does_not_widen_with_the_deviation);
  return run_suite (suite_create ("apart"), tests);
}
