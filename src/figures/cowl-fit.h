#pragma once
#include "document/aeroplane.h"

/** Fits a cowl that nobody has measured yet over the nose of the first body: its front at the body's forward end, as wide and as high as the
 *  outlines are at the widest over its length, mm; what no outline tells stays as it was. Nothing without an outline of a body, or without a
 *  length of the cowl. The outlines are the finished model's, cowl and all (common practice, no source). */
void cowl_fit_nose (Part *cowl, const Aeroplane *aeroplane);
