#include "app/plan/labels.h"

#include <algorithm>
#include <cmath>
#include <unordered_map>

#include "app/plan/text.h"

namespace stopwalk::plan {
namespace {

constexpr double kMargin_px = 2;

// The boxes that are taken, found by the cells of a grid they lie in.
class Taken {
 public:
  bool meets(const QRectF& box) const {
    bool met = false;
    eachCell(box, [&](std::int64_t cell) {
      if (const auto found = cells_.find(cell); found != cells_.end())
        met = met || std::ranges::any_of(found->second, [&](const QRectF& b) { return b.intersects(box); });
    });
    return met;
  }
  void add(const QRectF& box) {
    eachCell(box, [&](std::int64_t cell) { cells_[cell].push_back(box); });
  }

 private:
  static constexpr double kCell_px = 64;
  template <class F>
  static void eachCell(const QRectF& box, F f) {
    const auto low = [](double v) { return static_cast<std::int64_t>(std::floor(v / kCell_px)); };
    for (std::int64_t x = low(box.left()); x <= low(box.right()); ++x)
      for (std::int64_t y = low(box.top()); y <= low(box.bottom()); ++y) f(x * (1 << 20) + y);
  }
  std::unordered_map<std::int64_t, std::vector<QRectF>> cells_;
};

}  // namespace

std::vector<PlacedLabel> placeLabels(std::vector<Label> labels, const QFontMetricsF& metrics,
                                     const QRectF& visible, const std::vector<QRectF>& taken) {
  std::ranges::stable_sort(labels, std::greater<>(), &Label::importance);
  Taken full;
  for (const QRectF& box : taken) full.add(box);
  std::vector<PlacedLabel> placed;
  for (Label& label : labels) {
    if (label.text.isEmpty()) continue;
    const QSizeF size = textSize(label.text, metrics) + QSizeF(2 * kMargin_px, 0);
    for (const QPointF& middle : label.middles) {
      const QRectF box(middle - QPointF(size.width() / 2, size.height() / 2), size);
      if (!visible.contains(box) || full.meets(box)) continue;
      full.add(box);
      placed.push_back({std::move(label.text), box});
      break;
    }
  }
  return placed;
}

void paintLabels(QPainter& painter, const Theme& theme, const QRectF& visible, std::vector<Label> labels,
                 const std::vector<QRectF>& taken) {
  painter.save();
  painter.setFont(labelFont());
  painter.setRenderHint(QPainter::Antialiasing, false);
  const auto placed = placeLabels(std::move(labels), QFontMetricsF(painter.font()), visible, taken);
  for (const PlacedLabel& label : placed) painter.fillRect(label.box, theme.label_ground);
  painter.setPen(theme.ink);
  for (const PlacedLabel& label : placed) paintText(painter, label.box, label.text);
  painter.restore();
}

}  // namespace stopwalk::plan
