#include "app/plan/items/station_sign.h"

#include <algorithm>

#include "app/plan/items/drawing.h"

namespace stopwalk::plan {
namespace {

constexpr double kSmallest_px = 6;  // of a radius, under which only the shape is left

// Its shape and ring are those of what is accepted.
StationState unaccepted(StationState state) {
  if (state == StationState::WarnsAccepted) return StationState::Warns;
  return state == StationState::FailsAccepted ? StationState::Fails : state;
}

bool isAccepted(StationState state) {
  return unaccepted(state) != state;
}

// Round the sign of what is accepted: told by its shape, also in grey.
void paintFrame(QPainter& painter, const Theme& theme, QPointF middle, double half) {
  painter.setPen(QPen(theme.ink, 1.2));
  painter.setBrush(theme.floor);
  painter.drawRect(QRectF(middle - QPointF(half, half), middle + QPointF(half, half)));
}

QPen ringPen(const Theme& theme, StationState state) {
  switch (unaccepted(state)) {
    case StationState::NotAudited:
      return pen(theme.quiet_ink, 1.2);
    case StationState::BeingComputed: {
      QPen dashed = pen(theme.computing, 2);
      dashed.setDashPattern({2, 1.6});
      return dashed;
    }
    case StationState::Meets:
      return pen(theme.meets, 2);
    case StationState::Warns:
      return pen(theme.ink, 1.6);
    case StationState::Fails:
      return pen(theme.fails, 3);
    case StationState::WarnsAccepted:
    case StationState::FailsAccepted:
      break;
  }
  return {};
}

QPen roundPen(const QColor& colour, double width) {
  return QPen(colour, width, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin);
}

double signRadius(double radius) {
  return std::clamp(radius * 0.45, 5.0, 8.0);
}

}  // namespace

bool hasSign(StationState state) {
  return state != StationState::NotAudited && state != StationState::BeingComputed;
}

QRectF stationSignBox(QPointF middle, double radius, QPointF corner) {
  const double r = signRadius(radius) + 2;
  const QPointF at = middle + 0.85 * radius * corner;
  return {at - QPointF(r, r), at + QPointF(r, r)};
}

void paintStationShape(QPainter& painter, const Theme& theme, StationState state, QPointF c, double r) {
  if (isAccepted(state)) {
    paintFrame(painter, theme, c, r + 1);
    return paintStationShape(painter, theme, unaccepted(state), c, 0.75 * r);
  }
  painter.setBrush(Qt::NoBrush);
  if (state == StationState::Meets) {
    painter.setPen(roundPen(theme.meets, std::max(1.5, r / 3)));
    const QPointF tick[] = {c + QPointF(-0.7 * r, 0), c + QPointF(-0.15 * r, 0.6 * r),
                            c + QPointF(0.8 * r, -0.6 * r)};
    painter.drawPolyline(tick, 3);
  } else if (state == StationState::Warns) {
    painter.setPen(roundPen(theme.ink, std::max(1.0, r / 5)));
    painter.setBrush(theme.warns);
    const QPointF triangle[] = {c + QPointF(0, -r), c + QPointF(0.95 * r, 0.75 * r),
                                c + QPointF(-0.95 * r, 0.75 * r)};
    painter.drawPolygon(triangle, 3);
  } else if (state == StationState::Fails) {
    painter.setPen(roundPen(theme.fails, std::max(2.0, r / 2.4)));
    const QPointF d(0.65 * r, 0.65 * r), e(0.65 * r, -0.65 * r);
    painter.drawLine(c - d, c + d);
    painter.drawLine(c - e, c + e);
  }
}

void paintStationRing(QPainter& painter, const Theme& theme, StationState state, QPointF middle,
                      double radius) {
  if (radius < kSmallest_px && hasSign(state)) {
    paintStationShape(painter, theme, state, middle, radius);
    return;
  }
  painter.setPen(ringPen(theme, state));
  painter.setBrush(unaccepted(state) == StationState::Warns ? theme.warns : theme.floor);
  painter.drawEllipse(middle, radius, radius);
}

void paintStationSign(QPainter& painter, const Theme& theme, StationState state, QPointF middle,
                      double radius, QPointF corner) {
  if (!hasSign(state)) return;
  const double r = signRadius(radius);
  const QPointF at = stationSignBox(middle, radius, corner).center();
  painter.setPen(Qt::NoPen);
  painter.setBrush(theme.floor);
  painter.drawEllipse(at, r + 2, r + 2);
  paintStationShape(painter, theme, state, at, r);
}

}  // namespace stopwalk::plan
