#include "app/plan/labels.h"

#include <algorithm>
#include <cmath>
#include <unordered_map>

#include "app/plan/text.h"

namespace stopwalk::plan {
namespace {

constexpr double kMargin_px = 2;

// What lies where, found by the cells of a grid.
class Taken {
 public:
  void add(const Covered& covered) {
    eachCell(covered.box, [&](std::int64_t cell) { return cells_[cell].push_back(covered), false; });
  }
  bool hasRoom(const QRectF& box, const Label& label, bool off_walls) const {
    const auto inTheWay = [&](const Covered& c) {
      const bool matters = c.layer >= label.clear_of || (off_walls && c.layer == ItemLayer::Wall);
      return matters && !(c.item && c.item == label.of) && c.box.intersects(box);
    };
    return !eachCell(box, [&](std::int64_t cell) {
      const auto found = cells_.find(cell);
      return found != cells_.end() && std::ranges::any_of(found->second, inTheWay);
    });
  }

 private:
  static constexpr double kCell_px = 64;
  // Until `f` returns true; whether it did.
  template <class F>
  static bool eachCell(const QRectF& box, F f) {
    const auto cell = [](double v) { return static_cast<std::int64_t>(std::floor(v / kCell_px)); };
    for (std::int64_t x = cell(box.left()); x <= cell(box.right()); ++x)
      for (std::int64_t y = cell(box.top()); y <= cell(box.bottom()); ++y)
        if (f(x * (1 << 20) + y)) return true;
    return false;
  }
  std::unordered_map<std::int64_t, std::vector<Covered>> cells_;
};

std::optional<QRectF> placeOf(const Label& label, QSizeF size, const QRectF& visible, const Taken& taken) {
  for (const bool off_walls : {true, false})
    for (const QPointF& middle : label.middles) {
      const QRectF box(middle - QPointF(size.width() / 2, size.height() / 2), size);
      if (visible.contains(box) && taken.hasRoom(box, label, off_walls)) return box;
    }
  return std::nullopt;
}

}  // namespace

std::vector<PlacedLabel> placeLabels(std::vector<Label> labels, const QFontMetricsF& metrics,
                                     const QRectF& visible, const std::vector<Covered>& covered) {
  std::ranges::stable_sort(labels, std::greater<>(), &Label::importance);
  Taken taken;
  for (const Covered& c : covered)
    if (!labels.empty() && c.box.intersects(visible)) taken.add({c.box & visible, c.layer, c.item});
  std::vector<PlacedLabel> placed;
  for (Label& label : labels) {
    if (label.text.isEmpty()) continue;
    const QSizeF size = textSize(label.text, metrics) + QSizeF(2 * kMargin_px, 0);
    const auto box = placeOf(label, size, visible, taken);
    if (!box) continue;
    taken.add({*box, ItemLayer::Note, nullptr});
    placed.push_back({std::move(label.text), *box, !label.plain.contains(*box), label.quiet});
  }
  return placed;
}

void paintLabels(QPainter& painter, const Theme& theme, const QRectF& visible, std::vector<Label> labels,
                 const std::vector<Covered>& covered) {
  painter.save();
  painter.setFont(labelFont());
  painter.setRenderHint(QPainter::Antialiasing, false);
  const auto placed = placeLabels(std::move(labels), QFontMetricsF(painter.font()), visible, covered);
  for (const PlacedLabel& label : placed)
    if (label.on_ground) painter.fillRect(label.box, theme.label_ground);
  for (const bool quiet : {true, false}) {
    painter.setPen(quiet ? theme.quiet_ink : theme.ink);
    for (const PlacedLabel& label : placed)
      if (label.quiet == quiet) paintText(painter, label.box, label.text);
  }
  painter.restore();
}

}  // namespace stopwalk::plan
