#pragma once

#include <cstddef>

#include "core/geometry/point.h"
#include "core/geometry/segment.h"

namespace stopwalk::geometry {

// Positive for corners that run counter-clockwise.
double signedArea(const Polygon& polygon);

// From corner `i` to the next.
inline Segment edgeOf(const Polygon& polygon, std::size_t i) {
  return {polygon[i], polygon[i + 1 == polygon.size() ? 0 : i + 1]};
}

// Without corners equal to the one before (or the last to the first).
Polygon withoutRepeats(const Polygon& polygon);

// No wider than a touch anywhere, such as corners in one line.
bool hasNoArea(const Polygon& polygon);

// Whether the outline passes through itself by more than a touch. An outline that only meets itself, such as
// one that goes round an inner court and comes back along its own line, does not. Cost n log n for outlines
// that do not touch.
bool crossesItself(const Polygon& polygon);

}  // namespace stopwalk::geometry
