#include "app/plan/rulers.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <span>
#include <vector>

#include "core/layout/units.h"

namespace stopwalk::plan {
namespace {

using layout::LengthUnit;

constexpr double kInch_mm = 25.4;
constexpr double kFoot_mm = 12 * kInch_mm;
constexpr double kApart_px = 64;      // between two numbers
constexpr double kGridApart_px = 12;  // between two lines
constexpr double kBar_px = 100;       // about the length of the scale bar

// From the finest to the coarsest.
constexpr std::array kMetric = {
    RulerStep{10, 10},  RulerStep{20, 4},   RulerStep{50, 5},   RulerStep{100, 10},
    RulerStep{200, 4},  RulerStep{500, 5},  RulerStep{1e3, 10}, RulerStep{2e3, 4},
    RulerStep{5e3, 5},  RulerStep{1e4, 10}, RulerStep{2e4, 4},  RulerStep{5e4, 5},
    RulerStep{1e5, 10}, RulerStep{2e5, 4},  RulerStep{5e5, 5},  RulerStep{1e6, 10}};
constexpr std::array kImperial = {
    RulerStep{kInch_mm, 8},        RulerStep{3 * kInch_mm, 3},   RulerStep{6 * kInch_mm, 6},
    RulerStep{kFoot_mm, 4},        RulerStep{2 * kFoot_mm, 4},   RulerStep{5 * kFoot_mm, 5},
    RulerStep{10 * kFoot_mm, 10},  RulerStep{20 * kFoot_mm, 4},  RulerStep{50 * kFoot_mm, 5},
    RulerStep{100 * kFoot_mm, 10}, RulerStep{500 * kFoot_mm, 5}, RulerStep{1000 * kFoot_mm, 10},
    RulerStep{5000 * kFoot_mm, 5}};

bool isMetric(LengthUnit unit) {
  return unit == LengthUnit::Millimetre || unit == LengthUnit::Metre;
}

std::span<const RulerStep> stepsOf(LengthUnit unit) {
  if (isMetric(unit)) return kMetric;
  return kImperial;
}

QString plainNumber(double value) {
  return QString::number(std::abs(value) < 1e-9 ? 0 : value, 'g', 10);
}

// Calls `mark(mm, is_major)` for each mark from `low` to `high`.
template <class Mark>
void eachMark(const RulerStep& step, double low, double high, Mark mark) {
  const double minor = step.major_mm / step.parts;
  for (auto i = static_cast<long long>(std::floor(low / minor)); static_cast<double>(i) * minor <= high; ++i)
    mark(static_cast<double>(i) * minor, i % step.parts == 0);
}

QColor between(const QColor& a, const QColor& b) {
  return QColor((a.red() + b.red()) / 2, (a.green() + b.green()) / 2, (a.blue() + b.blue()) / 2);
}

QPolygonF transposed(QPolygonF polygon) {
  for (QPointF& p : polygon) p = p.transposed();
  return polygon;
}

// Calls `stretch(from, to)` for each part inside of the polygon of the line straight down at `x`.
template <class Stretch>
void eachStretch(const QPolygonF& polygon, double x, Stretch stretch) {
  std::vector<double> crossings;
  for (qsizetype i = 0; i < polygon.size(); ++i) {
    const QPointF a = polygon[i], b = polygon[(i + 1) % polygon.size()];
    if ((a.x() <= x) != (b.x() <= x))
      crossings.push_back(a.y() + (x - a.x()) / (b.x() - a.x()) * (b.y() - a.y()));
  }
  std::ranges::sort(crossings);
  for (std::size_t i = 1; i < crossings.size(); i += 2) stretch(crossings[i - 1], crossings[i]);
}

struct RulerPaint {
  QPainter& painter;
  const ViewTransform& view;
  const RulerStep step;
  const LengthUnit unit;

  void top(double width) const {
    const QFontMetricsF metrics(painter.font());
    eachMark(step, view.toPlan(QPointF(kRuler_px, 0)).x, view.toPlan(QPointF(width, 0)).x,
             [&](double mm, bool major) {
               const double x = std::round(view.toPixels(geometry::Point{mm, 0}).x()) + 0.5;
               if (x < kRuler_px) return;
               painter.drawLine(QPointF(x, major ? 4 : kRuler_px - 5), QPointF(x, kRuler_px));
               if (major) painter.drawText(QPointF(x + 3, 3 + metrics.ascent()), rulerText(mm, step, unit));
             });
  }

  void left(double height) const {
    const QFontMetricsF metrics(painter.font());
    eachMark(step, view.toPlan(QPointF(0, height)).y, view.toPlan(QPointF(0, kRuler_px)).y,
             [&](double mm, bool major) {
               const double y = std::round(view.toPixels(geometry::Point{0, mm}).y()) + 0.5;
               if (y < kRuler_px) return;
               painter.drawLine(QPointF(major ? 4 : kRuler_px - 5, y), QPointF(kRuler_px, y));
               if (!major) return;
               painter.save();
               painter.translate(3 + metrics.ascent(), y - 3);
               painter.rotate(-90);
               painter.drawText(QPointF(0, 0), rulerText(mm, step, unit));
               painter.restore();
             });
  }
};

}  // namespace

RulerStep rulerStep(double pixels_per_mm, LengthUnit unit) {
  const auto steps = stepsOf(unit);
  const auto wide = [&](const RulerStep& s) { return s.major_mm * pixels_per_mm >= kApart_px; };
  const auto found = std::ranges::find_if(steps, wide);
  return found == steps.end() ? steps.back() : *found;
}

QString rulerText(double mm, const RulerStep& step, LengthUnit unit) {
  if (unit == LengthUnit::Millimetre && step.major_mm < 1000) return plainNumber(mm);
  if (isMetric(unit)) return plainNumber(mm / 1000) + (unit == LengthUnit::Millimetre ? " m" : "");
  const double inches = std::round(mm / kInch_mm);
  if (unit == LengthUnit::Inch) return plainNumber(inches) + "″";
  const double feet = std::trunc(inches / 12), rest = std::abs(inches - 12 * feet);
  const QString sign = inches < 0 && feet == 0 ? "−" : "";
  return sign + plainNumber(feet) + "′" + (rest > 0 ? " " + plainNumber(rest) + "″" : "");
}

// Lines of one pixel, filled as boxes of one opaque colour: Qt shares out everything else among threads,
// piece by piece, which took most of a frame.
void paintGrid(QPainter& painter, const ViewTransform& view, const Theme& theme, const QColor& ground,
               const QPolygonF& area, LengthUnit unit) {
  const QRectF visible = area.boundingRect() & QRectF(painter.viewport());
  if (visible.isEmpty()) return;
  const RulerStep step = rulerStep(view.pixelsPerMm(), unit);
  const geometry::Box box = view.toPlan(visible);
  const bool fine = step.major_mm / step.parts * view.pixelsPerMm() >= kGridApart_px;
  const QColor faint = between(ground, theme.grid);
  painter.save();
  painter.setRenderHint(QPainter::Antialiasing, false);
  eachMark(step, box.low.x, box.high.x, [&](double mm, bool major) {
    if (!major && !fine) return;
    const double x = std::round(view.toPixels(geometry::Point{mm, 0}).x());
    eachStretch(area, x + 0.5, [&](double from, double to) {
      const double top = std::max(from, visible.top()), bottom = std::min(to, visible.bottom());
      painter.fillRect(QRectF(x, top, 1, bottom - top), major ? theme.grid : faint);
    });
  });
  const QPolygonF turned = transposed(area);
  eachMark(step, box.low.y, box.high.y, [&](double mm, bool major) {
    if (!major && !fine) return;
    const double y = std::round(view.toPixels(geometry::Point{0, mm}).y());
    eachStretch(turned, y + 0.5, [&](double from, double to) {
      const double left = std::max(from, visible.left()), right = std::min(to, visible.right());
      painter.fillRect(QRectF(left, y, right - left, 1), major ? theme.grid : faint);
    });
  });
  painter.restore();
}

void paintRulers(QPainter& painter, const ViewTransform& view, const Theme& theme, QSizeF size,
                 LengthUnit unit, std::optional<QPointF> pointer) {
  painter.save();
  painter.fillRect(QRectF(0, 0, size.width(), kRuler_px), theme.floor);
  painter.fillRect(QRectF(0, 0, kRuler_px, size.height()), theme.floor);
  QFont font = painter.font();
  font.setPointSizeF(std::max(9.0, font.pointSizeF() * 0.85));
  painter.setFont(font);
  painter.setPen(theme.quiet_ink);
  const RulerPaint paint{painter, view, rulerStep(view.pixelsPerMm(), unit), unit};
  paint.top(size.width());
  paint.left(size.height());
  painter.fillRect(QRectF(0, 0, kRuler_px, kRuler_px), theme.floor);
  // That of the numbers beside it.
  const bool in_metres = unit == LengthUnit::Millimetre && paint.step.major_mm >= 1000;
  painter.drawText(QRectF(0, 0, kRuler_px, kRuler_px), Qt::AlignCenter,
                   QString::fromUtf8(layout::unitName(in_metres ? LengthUnit::Metre : unit)));
  painter.setPen(theme.grid);
  painter.drawLine(QPointF(0, kRuler_px + 0.5), QPointF(size.width(), kRuler_px + 0.5));
  painter.drawLine(QPointF(kRuler_px + 0.5, 0), QPointF(kRuler_px + 0.5, size.height()));
  if (pointer) {
    painter.setPen(QPen(theme.selection, 1));
    painter.drawLine(QPointF(pointer->x(), 0), QPointF(pointer->x(), kRuler_px));
    painter.drawLine(QPointF(0, pointer->y()), QPointF(kRuler_px, pointer->y()));
  }
  painter.restore();
}

void paintScaleBar(QPainter& painter, const ViewTransform& view, const Theme& theme, QSizeF size,
                   LengthUnit unit) {
  const RulerStep step = rulerStep(view.pixelsPerMm() * kApart_px / kBar_px, unit);
  const double length = step.major_mm * view.pixelsPerMm();
  const QFontMetricsF metrics(painter.font());
  const QString text = QString::fromStdString(layout::formatLength(
      step.major_mm, unit == LengthUnit::Millimetre && step.major_mm >= 1000 ? LengthUnit::Metre : unit));
  const QRectF box(kRuler_px + 8, size.height() - 12 - metrics.height() - 8, length + 16,
                   metrics.height() + 12);
  if (box.width() > size.width() / 2) return;
  painter.save();
  painter.setPen(Qt::NoPen);
  painter.setBrush(theme.label_ground);
  painter.drawRect(box);
  painter.setPen(QPen(theme.ink, 1.5));
  const double y = box.bottom() - 4.5, x = box.left() + 8;
  painter.drawLine(QPointF(x, y), QPointF(x + length, y));
  painter.drawLine(QPointF(x, y - 4), QPointF(x, y + 3));
  painter.drawLine(QPointF(x + length, y - 4), QPointF(x + length, y + 3));
  painter.drawText(QRectF(box.left(), box.top(), box.width(), metrics.height()), Qt::AlignCenter, text);
  painter.restore();
}

}  // namespace stopwalk::plan
