#include "app/plan/legend_corner.h"

#include <algorithm>
#include <limits>
#include <utility>

namespace stopwalk::plan {

QRectF legendCorner(QSizeF size, const QRectF& visible, const KeptInSight& kept) {
  const QRectF inside =
      visible.adjusted(kLegendMargin_px, kLegendMargin_px, -kLegendMargin_px, -kLegendMargin_px);
  QRectF box(QPointF(), size), best;
  std::pair least{std::numeric_limits<std::ptrdiff_t>::max(), std::numeric_limits<double>::infinity()};
  for (const auto move : {&QRectF::moveTopRight, &QRectF::moveTopLeft, &QRectF::moveBottomRight}) {
    (box.*move)(move == &QRectF::moveTopRight  ? inside.topRight()
                : move == &QRectF::moveTopLeft ? inside.topLeft()
                                               : inside.bottomRight());
    double area = 0;
    for (const QRectF& ground : kept.grounds) {
      const QRectF under = ground & box;
      area += under.width() * under.height();
    }
    const auto marks = std::ranges::count_if(kept.marks, [&](const QRectF& m) { return m.intersects(box); });
    const std::pair hidden{marks, area};
    if (hidden >= least) continue;
    least = hidden;
    best = box;
  }
  return best;
}

}  // namespace stopwalk::plan
