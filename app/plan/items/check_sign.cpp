#include "app/plan/items/check_sign.h"

#include <QPainterPath>
#include <algorithm>

#include "app/plan/items/drawing.h"
#include "app/plan/items/station_sign.h"

namespace stopwalk::plan {
namespace {

constexpr double kDisc_px = 2;        // round the sign
constexpr double kRing_px = 3;        // from the sign to the middle of the ring
constexpr double kOuterRing_px = 5;   // of what is overdue
constexpr int kWholeTurn = 16 * 360;  // as Qt counts it

// As where stations are audited, where it means the same.
StationState sameShape(CheckSign sign) {
  switch (sign) {
    case CheckSign::Passed:
      return StationState::Meets;
    case CheckSign::Short:
      return StationState::Warns;
    case CheckSign::Failed:
      return StationState::Fails;
    default:
      return StationState::NotAudited;
  }
}

// A block with a bar: something was in the way. An empty circle: nothing was tried. A question: nobody knows.
void paintShape(QPainter& painter, const Theme& theme, CheckSign sign, QPointF c, double r) {
  if (const StationState state = sameShape(sign); hasSign(state))
    return paintStationShape(painter, theme, state, c, r);
  painter.setBrush(Qt::NoBrush);
  if (sign == CheckSign::NotReached) {
    const double half = 0.85 * r;
    painter.fillRect(QRectF(c - QPointF(half, half), c + QPointF(half, half)), theme.ink);
    painter.fillRect(QRectF(c - QPointF(0.6 * r, 0.22 * r), c + QPointF(0.6 * r, 0.22 * r)), theme.floor);
  } else if (sign == CheckSign::NotTested) {
    painter.setPen(QPen(theme.ink, std::max(1.5, r / 4)));
    painter.drawEllipse(c, 0.65 * r, 0.65 * r);
  } else if (sign == CheckSign::Never) {
    painter.setPen(QPen(theme.ink, std::max(1.6, r / 4), Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
    QPainterPath hook;
    const QRectF bow(c + QPointF(-0.5 * r, -0.95 * r), QSizeF(r, r));
    hook.arcMoveTo(bow, 170);
    hook.arcTo(bow, 170, -230);
    hook.lineTo(c + QPointF(0, 0.35 * r));
    painter.drawPath(hook);
    painter.setPen(Qt::NoPen);
    painter.setBrush(theme.ink);
    painter.drawEllipse(c + QPointF(0, 0.85 * r), 0.17 * r + 0.3, 0.17 * r + 0.3);
  }
}

void paintRing(QPainter& painter, const Theme& theme, CheckAge age, QPointF c, double r) {
  const auto ring = [&](double away) {
    return QRectF(c - QPointF(r + away, r + away), c + QPointF(r + away, r + away));
  };
  const auto arc = [&](const QColor& ink, double width, int turn) {
    painter.setPen(pen(ink, width));
    painter.drawArc(ring(kRing_px), kWholeTurn / 4, -turn);
  };
  painter.setBrush(Qt::NoBrush);
  switch (age) {
    case CheckAge::None:
      return;
    case CheckAge::Fresh:
      return arc(theme.computing, 1, kWholeTurn);
    case CheckAge::HalfGone:
      arc(theme.computing, 1, kWholeTurn);
      return arc(theme.ink, 2.6, kWholeTurn / 2);
    case CheckAge::Due:
      return arc(theme.ink, 2.6, kWholeTurn);
    case CheckAge::Overdue:
      painter.setPen(pen(theme.ink, 1.4));
      painter.setBrush(theme.warns);
      painter.drawEllipse(ring(kOuterRing_px));
      painter.setBrush(theme.floor);
      painter.drawEllipse(ring(kDisc_px));
  }
}

}  // namespace

double checkSignRadius(const QRectF& symbol) {
  return std::clamp(0.225 * symbol.width(), 5.0, 7.0);
}

// Most of the symbol stays in sight.
QRectF checkMarkBox(const QRectF& symbol) {
  const double r = checkSignRadius(symbol) + kRoundCheckSign_px, away = symbol.width() / 2 + 0.3 * r;
  const QPointF at = symbol.center() + QPointF(away, -away);
  return {at - QPointF(r, r), at + QPointF(r, r)};
}

void paintCheckMark(QPainter& painter, const Theme& theme, const CheckMark& mark, QPointF middle,
                    double radius) {
  if (mark == CheckMark()) return;
  painter.save();
  painter.setRenderHint(QPainter::Antialiasing);
  painter.setPen(Qt::NoPen);
  painter.setBrush(theme.floor);
  const double disc = radius + (mark.age == CheckAge::None ? kDisc_px : kRing_px + 1.5);
  painter.drawEllipse(middle, disc, disc);
  paintRing(painter, theme, mark.age, middle, radius);
  paintShape(painter, theme, mark.sign, middle, radius);
  painter.restore();
}

}  // namespace stopwalk::plan
