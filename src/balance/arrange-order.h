#pragma once
#include "balance/arrange.h"

/** Which of two arrangements is the better. Private to the arrangement. */

/** Puts the best first, as arrange() says what is best; `status` is then the first one's. What was found later may be better where an
 *  earlier search was not searched to its end. */
void arrangements_put_best_first (const ArrangeCase *wanted, Arrangements *made);
