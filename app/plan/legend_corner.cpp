#include "app/plan/legend_corner.h"

#include <algorithm>
#include <limits>
#include <utility>

namespace stopwalk::plan {

QRectF boxIn(LegendCorner corner, QSizeF size, const QRectF& visible) {
  const QRectF inside =
      visible.adjusted(kLegendMargin_px, kLegendMargin_px, -kLegendMargin_px, -kLegendMargin_px);
  QRectF box(QPointF(), size);
  if (corner == LegendCorner::TopRight) box.moveTopRight(inside.topRight());
  if (corner == LegendCorner::TopLeft) box.moveTopLeft(inside.topLeft());
  if (corner == LegendCorner::BottomRight) box.moveBottomRight(inside.bottomRight());
  return box;
}

LegendCorner freestCorner(QSizeF size, const QRectF& visible, const KeptInSight& kept) {
  LegendCorner best = LegendCorner::TopRight;
  std::pair least{std::numeric_limits<std::ptrdiff_t>::max(), std::numeric_limits<double>::infinity()};
  for (const auto corner : {LegendCorner::TopRight, LegendCorner::TopLeft, LegendCorner::BottomRight}) {
    const QRectF box = boxIn(corner, size, visible);
    double area = 0;
    for (const QRectF& ground : kept.grounds) {
      const QRectF under = ground & box;
      area += under.width() * under.height();
    }
    const auto marks = std::ranges::count_if(kept.marks, [&](const QRectF& m) { return m.intersects(box); });
    const std::pair hidden{marks, area};
    if (hidden >= least) continue;
    least = hidden;
    best = corner;
  }
  return best;
}

}  // namespace stopwalk::plan
