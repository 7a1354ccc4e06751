#include "app/plan/items/name_label.h"

#include <QFontMetricsF>
#include <algorithm>

#include "app/plan/text.h"

namespace stopwalk::plan {
namespace {

constexpr double kLeastNamed_px = 26;  // the longer side
constexpr double kMostWider = 2.2;     // than the thing

}  // namespace

std::optional<Label> nameLabel(const QString& name, const QRectF& box, int importance) {
  if (name.isEmpty() || std::max(box.width(), box.height()) < kLeastNamed_px) return std::nullopt;
  const QFontMetricsF metrics{labelFont()};
  const QString text = wrapped(name, std::max(box.width() - 6, kLeastNamed_px), metrics);
  const QSizeF size = textSize(text, metrics);
  if (size.width() > kMostWider * box.width() && size.width() > kMostWider * box.height())
    return std::nullopt;
  const QPointF c = box.center();
  const double dy = std::max(0.0, (box.height() - size.height()) / 2 - 2);
  const double up = box.top() - size.height() / 2 - 3, down = box.bottom() + size.height() / 2 + 3;
  Label label{text, {c}, importance};
  if (dy > 1) {
    label.middles.push_back({c.x(), c.y() - dy});
    label.middles.push_back({c.x(), c.y() + dy});
  }
  label.middles.push_back({c.x(), up});
  label.middles.push_back({c.x(), down});
  return label;
}

}  // namespace stopwalk::plan
