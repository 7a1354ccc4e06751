#include "app/plan/legend_corner.h"

#include <algorithm>
#include <limits>
#include <utility>

namespace stopwalk::plan {
namespace {

constexpr LegendPlace kCorners[] = {{1, 0}, {0, 0}, {1, 1}};
constexpr int kPlaces = 16;              // along an edge
constexpr QSizeF kScaleBar_px(220, 48);  // what is left to it, more or less

using Hidden = std::pair<std::ptrdiff_t, double>;  // so many marks, and an area of the grounds

Hidden hiddenBy(const QRectF& box, const KeptInSight& kept) {
  double area = 0;
  for (const QRectF& ground : kept.grounds) {
    const QRectF under = ground & box;
    area += under.width() * under.height();
  }
  return {std::ranges::count_if(kept.marks, [&](const QRectF& m) { return m.intersects(box); }), area};
}

// From the corners inwards: along the top, the sides and the bottom.
std::vector<LegendPlace> alongEdges() {
  std::vector<LegendPlace> places;
  for (int i = 1; i < kPlaces; ++i) {
    const double part = static_cast<double>(i) / kPlaces;
    for (const LegendPlace place :
         {LegendPlace{1 - part, 0}, LegendPlace{1, part}, LegendPlace{0, part}, LegendPlace{1 - part, 1}})
      places.push_back(place);
  }
  return places;
}

}  // namespace

QRectF boxIn(LegendPlace place, QSizeF size, const QRectF& visible) {
  const QRectF inside =
      visible.adjusted(kLegendMargin_px, kLegendMargin_px, -kLegendMargin_px, -kLegendMargin_px);
  const QSizeF left = inside.size() - size;
  return {inside.topLeft() + QPointF(place.across * left.width(), place.down * left.height()), size};
}

LegendPlace freestPlace(QSizeF size, const QRectF& visible, const KeptInSight& kept) {
  LegendPlace best;
  Hidden least{std::numeric_limits<std::ptrdiff_t>::max(), 0};
  for (const LegendPlace corner : kCorners)
    if (const Hidden hidden = hiddenBy(boxIn(corner, size, visible), kept); hidden < least) {
      least = hidden;
      best = corner;
    }
  if (least == Hidden()) return best;
  const QRectF scale_bar(QPointF(visible.left(), visible.bottom() - kScaleBar_px.height()), kScaleBar_px);
  for (const LegendPlace place : alongEdges())
    if (const QRectF box = boxIn(place, size, visible);
        visible.contains(box) && !box.intersects(scale_bar) && hiddenBy(box, kept) == Hidden())
      return place;
  return best;
}

}  // namespace stopwalk::plan
