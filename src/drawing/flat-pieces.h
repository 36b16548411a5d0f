#pragma once
#include "drawing/export.h"
#include "drawing/flat-piece.h"

/** The flat pieces of an aeroplane at full size, for templates and for files for cutting: of each wing, tail and fin that is drawn a half
 *  developed flat (a fin whole, and of a tail or foreplane without dihedral, whose roots meet, both halves in one piece); the hatch's lid and
 *  the frame of its hole, the battery's floor, the strip that carries the balance mark round the leading edge, and the base of a stand with
 *  pins to balance it on.
 *
 *  A half lies with its centre line upright at x = 0 and its tip to the right (to port: to the left), aft downward: y is mm aft of the
 *  datum, x the distance from the centre line along the surface. A fin lies with aft to the right and up upward. A piece's name and remark
 *  are not among its words.
 *  halves   which halves of wings and tails
 *  returns  of FlatPiece, freed with the array; empty where nothing is drawn. What has an open or crossing outline, or stands for an area
 *           until it is drawn, is left out */
GPtrArray *flat_pieces_of (const Figures *figures, Units units, ExportHalves halves);
