#pragma once

#include <QRectF>
#include <vector>

namespace stopwalk::plan {

// What a legend should leave in sight, in pixels: marks first, then grounds.
struct KeptInSight {
  std::vector<QRectF> marks, grounds;
};

// A box of that size in the corner of what is seen where it hides least; not where the scale is.
QRectF legendCorner(QSizeF size, const QRectF& visible, const KeptInSight& kept);

inline constexpr double kLegendMargin_px = 8;

}  // namespace stopwalk::plan
