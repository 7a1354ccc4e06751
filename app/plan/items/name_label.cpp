#include "app/plan/items/name_label.h"

#include <QFontMetricsF>
#include <algorithm>

#include "app/plan/text.h"

namespace stopwalk::plan {
namespace {

constexpr double kLeastNamed_px = 26;  // the longer side
constexpr double kLeastBeside_px = 64;
constexpr double kMostWider = 3;  // than the thing

// The middle, then nearer to the sides.
std::vector<QPointF> inside(const QRectF& box, QSizeF size) {
  const QPointF c = box.center();
  const double dx = (box.width() - size.width()) / 2 - 4, dy = (box.height() - size.height()) / 2 - 2;
  std::vector<QPointF> middles{c};
  for (const double part : {0.5, 1.0}) {
    if (dy > 1) middles.insert(middles.end(), {c - QPointF(0, part * dy), c + QPointF(0, part * dy)});
    if (dx > 1) middles.insert(middles.end(), {c - QPointF(part * dx, 0), c + QPointF(part * dx, 0)});
  }
  return middles;
}

}  // namespace

std::optional<Label> nameLabel(const QString& name, const QRectF& box, int importance) {
  if (name.isEmpty() || std::max(box.width(), box.height()) < kLeastNamed_px) return std::nullopt;
  const QFontMetricsF metrics{labelFont()};
  QString text = wrapped(name, box.width() - 8, metrics);
  QSizeF size = textSize(text, metrics);
  const bool fits = size.width() + 6 <= box.width() && size.height() <= box.height();
  if (!fits) {
    text = wrapped(name, std::max(1.2 * box.width(), kLeastBeside_px), metrics);
    size = textSize(text, metrics);
    if (size.width() > kMostWider * std::max(box.width(), box.height())) return std::nullopt;
  }
  Label label{text, {}, importance, box};
  const QPointF c = box.center();
  if (fits) label.middles = inside(box, size);
  const double dy = (box.height() + size.height()) / 2 + 2, dx = (box.width() + size.width()) / 2 + 5;
  for (const QPointF& off : {QPointF(0, -dy), QPointF(0, dy), QPointF(dx, 0), QPointF(-dx, 0)})
    label.middles.push_back(c + off);
  return label;
}

}  // namespace stopwalk::plan
