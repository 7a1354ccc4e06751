#pragma once

#include <QRectF>
#include <vector>

namespace stopwalk::plan {

// What a legend should leave in sight, in pixels: marks first, then grounds.
struct KeptInSight {
  std::vector<QRectF> marks, grounds;
};

// Of what is seen; not where the scale is.
enum class LegendCorner { TopRight, TopLeft, BottomRight };

// The corner where a box of that size hides least.
LegendCorner freestCorner(QSizeF size, const QRectF& visible, const KeptInSight& kept);
// A box of that size there.
QRectF boxIn(LegendCorner corner, QSizeF size, const QRectF& visible);

inline constexpr double kLegendMargin_px = 8;

}  // namespace stopwalk::plan
