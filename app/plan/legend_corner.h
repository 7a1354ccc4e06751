#pragma once

#include <QRectF>
#include <vector>

namespace stopwalk::plan {

// What a legend should leave in sight, in pixels: marks first, then grounds.
struct KeptInSight {
  std::vector<QRectF> marks, grounds;
};

// Where a legend stands in what is seen: how far across and down, each as a part of the room that it leaves.
struct LegendPlace {
  double across = 1, down = 0;
  bool operator==(const LegendPlace&) const = default;
};

// The corner where a box of that size hides least; where each hides something, the first place along the
// edges where it hides nothing, if there is one. Never where the scale is, in the lower left.
LegendPlace freestPlace(QSizeF size, const QRectF& visible, const KeptInSight& kept);
// A box of that size there.
QRectF boxIn(LegendPlace place, QSizeF size, const QRectF& visible);

inline constexpr double kLegendMargin_px = 8;

}  // namespace stopwalk::plan
