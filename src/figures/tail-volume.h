#pragma once
#include "figures/figures.h"

/** The least tail volume that flies by radio, and what an enlarged tail should come to. Common practice, no source. */
static const double tail_volume_least = 0.25;
static const double tail_volume_wanted = 0.30;

/** Σ S_t l_t of all tailplanes over all wings' area and the reference's MAC: what the bands of common practice are meant for, on a
 *  biplane too. NAN without a tailplane that has an area, or with a foreplane, for which no band holds.
 *  wing_area  of all surfaces of role wing, mm² */
double tail_volume_of (const SurfaceFigures surfaces[], size_t count, const SurfaceFigures *reference, double wing_area);

/** One standard deviation of it by how well outlines are traced; several wings as if they were one. NAN likewise. A ratio >= 0; wing_area mm². */
double tail_volume_sigma_of (const SurfaceFigures surfaces[], size_t count, const SurfaceFigures *reference, double wing_area);
