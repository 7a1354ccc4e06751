#pragma once

#include <string>

#include "core/layout/layout.h"

// Numbers and lengths as sentences give them, in the layout's unit. Independent of the locale.
namespace stopwalk::layout {

// At most `decimals` decimals, without trailing zeros: 4.2, 0.65, 12.
std::string decimal(double value, int decimals = 2);

// A length for people: "4.2 m", or feet and inches to a quarter of an inch where the layout is drawn in them.
std::string lengthForPeople(double length_m, LengthUnit unit);
// The same, as fine as it must be to look different from `limit_m`.
std::string lengthForPeople(double length_m, double limit_m, LengthUnit unit);

}  // namespace stopwalk::layout
