#pragma once
#include <stdbool.h>
#include <stddef.h>
#include "geometry/point.h"
#include "geometry/status.h"

/** From places in a picture (px: x right, y down, (0, 0) the upper left corner of the first pixel) to millimetres on the paper, and
 *  back. First the lens is undone about its centre, the file's px = c + (q - c) (1 + k1 r²) with r = |q - c| / radius; then the
 *  homography h, row by row, takes q to mm: (x, y) = (h0 qx + h1 qy + h2, h3 qx + h4 qy + h5) / (h6 qx + h7 qy + h8). A value:
 *  copied freely, never changed once made by mapping_solve().
 *  source  R. Hartley and A. Zisserman, Multiple View Geometry in Computer Vision, 2nd ed., 2004, ch. 2 and section 7.4;
 *          D. C. Brown, Close-range camera calibration, Photogrammetric Engineering 37, 1971 (its first radial term) */
typedef struct {
  double h[9];
  Point lens_centre;        /* px; the picture's middle */
  double lens_radius;       /* px; half the picture's diagonal */
  double k1;                /* 0: no lens; negative bends lines outward in the middle (barrel) */
} Mapping;

/** Whether both take every place to the same one: their numbers are equal, or none. Places in px, mm. */
bool mapping_equal (const Mapping *one, const Mapping *other);

/** Derivatives of a mapping at a place, mm per px: d(mm x)/d(px x) is xx, d(mm x)/d(px y) is xy, and so on. */
typedef struct { double xx, xy, yx, yy; } MappingJacobian;

/** The place on the paper, mm. Both coordinates NAN where the picture shows none: at or beyond the horizon, or beyond where the lens
 *  folds the picture over (never within a picture that mapping_solve() was told of). */
Point mapping_to_mm (const Mapping *mapping, Point px);
/** The place in the picture, px; NAN where the paper's place is not seen. Round trips hold to 1e-9 px (tests/plan/test-mapping.c). */
Point mapping_to_px (const Mapping *mapping, Point mm);
/** All four derivatives there, of NANs where there is no place. Exact, not a difference. */
MappingJacobian mapping_jacobian (const Mapping *mapping, Point px);
/** The length on the paper of one pixel's way in a direction (of any length but 0), mm per px, > 0; NAN where there is none. */
double mapping_mm_per_px (const Mapping *mapping, Point px, Point direction);

/** A hand's click lies within this many px of where it was meant, in x and in y alike. Where "explained" is said, it means two standard
 *  deviations of what such clicks, spread evenly, make of it: nineteen times in twenty. Common practice, no source. */
#define MAPPING_CLICK_PX 1.5

enum {
  KNOWN_LENGTHS_MOST = 32,
  KNOWN_LINES_MOST = 32,
  KNOWN_PLACES_MOST = 256       /* on one line */
};

/** A length known on the paper: its two ends in the picture, px, and how long it is, mm, > 0; and how far off each end a click is, px, one
 *  standard deviation, no less than MAPPING_CLICK_PX makes it; 0: so much. Clicked on a picture seen small, it is much more. */
typedef struct { Point a, b; double mm, click_sigma; } KnownLength;
/** A rectangle known on the paper: its corners in the picture, px, one after the other in either sense, beginning anywhere. The width is
 *  that of the sides nearest the picture's horizontal. mm, > 0. */
typedef struct { Point corners[4]; double width, height; } KnownRectangle;
/** Which of a rectangle's sides are its widths: 0 those from corner 0 to 1 and from 2 to 3, 1 the other two. Each side counts by its
 *  direction alone, so that one foreshortened in a photograph counts as much as the side across from it. */
int known_rectangle_widths (const Point corners[4]);
/** Three places or more, px, on a line known to be straight on the paper. */
typedef struct { const Point *places; size_t count; } StraightLine;

/** How many scales the lengths give. */
typedef enum {
  SCALES_AS_NEEDED,       /* a scale each way where the lengths call for it and their clicks do not explain the difference */
  SCALES_ONE,             /* the same both ways */
  SCALES_EACH             /* one each way wherever the lengths can tell them apart at all */
} KnownScales;

/** All that is known of a picture. Arrays are lent; a count of 0 or a NULL is "not known". */
typedef struct {
  const KnownLength *lengths;         size_t length_count;
  const KnownRectangle *rectangle;
  const StraightLine *straight;       size_t straight_count;
  double mm_per_px;                   /* of a page true to size; NAN not known. Lengths or a rectangle overrule it */
  Point level[2];                     /* a line that runs level, or upright, whichever it is nearer; px */
  bool has_level;
  KnownScales scales;
  double width_px, height_px;         /* of the picture, > 0 */
} Knowns;

/** Which of what is known made the mapping. */
typedef enum { MADE_BY_LENGTHS, MADE_BY_RECTANGLE, MADE_BY_TRUE_SIZE } MappingMaker;

/** How well one known length fits. */
typedef struct {
  double residual_mm;         /* as measured through the mapping, less what it is known to be */
  double residual_percent;    /* the same of the known length */
  double click_percent;       /* what the clicks on its own ends explain, % of the length, > 0 */
  bool disagrees;             /* no such clicks explain it: a figure or an end is wrong, or the paper has stretched unevenly. Where
                                 only two lengths contradict each other, both */
} LengthMisfit;

/** What remains, and what the clicks explain of it; NAN where there is nothing to tell. */
typedef struct {
  MappingMaker maker;
  LengthMisfit lengths[KNOWN_LENGTHS_MOST];   /* in the order of what is known */
  size_t length_count;
  bool any_disagrees;
  bool each_way;                  /* the mapping has a scale for x and another for y */
  bool explained;                 /* the clicks explain the difference of the two scales */
  bool badly_conditioned;         /* lengths of nearly one direction, mirrored about 45°, or one far too short: they cannot tell two
                                     scales apart, and one is used */
  double scale_x, scale_y;        /* mm per px each way: as used; with a rectangle or a lens, at the picture's middle */
  double difference_percent;      /* what the lengths say of y's scale over x's, less one, used or not; NAN when they cannot tell */
  double difference_click_percent;/* what the clicks explain of it */
  double rectangle_click_percent; /* what clicks on the corners explain in the worse of width and height, % */
  double true_size_percent;       /* the scale found over the page's own, less one, where both are known */
  bool lens_used;                 /* the straight lines bend, and by more than their places explain */
  double lens_k1, lens_k1_click;  /* what the lines say, and what their places explain of it */
  double bend_before_px, bend_after_px;   /* root mean square distance of their places from straight, without and with the lens */
} MappingMisfit;

/** Makes the mapping from what is known. A rectangle makes it by itself, and lengths only check it; else lengths make it, each weighed
 *  by its pixels; else the page's own scale. Straight lines give the lens beforehand; places on one that runs along a side of the
 *  rectangle go together with its corners. Millimetres have their origin at the rectangle's corner that is upper left, or at the
 *  picture's first pixel's; x to the right and y down, as nearly as the rectangle or the level line lets them.
 *  mapping   set on success, else untouched
 *  misfit    likewise; may be NULL
 *  returns   CORE_OK; CORE_NOT_FINITE; CORE_TOO_MANY; CORE_SINGULAR when nothing known gives a scale, an end stands on the other, corners
 *            lie on one line or one inside the others, a line's places coincide; CORE_CROSSES_ITSELF when the corners' sides cross;
 *            CORE_OUT_OF_RANGE when a length, a size or the picture's own is not positive, a line has fewer than three places
 *  accuracy  exact data give the mapping back to 1e-9 px; with a lens, 1e-6 px
 *  cost      microseconds; straight lines some hundred passes over their places; no allocation
 *  source    the homography by the direct linear transform with normalised points, Hartley and Zisserman, 2004, algorithm 4.2;
 *            two scales by least squares on (Δx sx)² + (Δy sy)² = L²; k1 by least straightness left, the same book section 7.4 */
CoreStatus mapping_solve (const Knowns *knowns, Mapping *mapping, MappingMisfit *misfit);
