#include "app/plan/items/station_item.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <numbers>

#include "app/plan/items/drawing.h"
#include "app/plan/items/stamp.h"
#include "app/plan/items/station_sign.h"
#include "app/plan/text.h"
#include "app/plan/words.h"
#include "core/geometry/polygon.h"
#include "core/geometry/segment.h"

namespace stopwalk::plan {
namespace {

using geometry::Point;

constexpr double kRing_mm = 240;  // radius: about where a person stands
constexpr double kLeastRing_px = 8, kMostRing_px = 22;
constexpr double kSign_px = 8;   // the sign reaches so much beyond the ring
constexpr double kTiny = 0.017;  // pixels a millimetre, under which a station is a dot
constexpr double kLettered_px = 10, kOperatorLettered_px = 18;

double radiusAt(double pixels_per_mm) {
  if (pixels_per_mm < kTiny) return kDot_px / 2;
  // In half pixels, so that few pictures need be kept.
  return std::round(2 * std::clamp(kRing_mm * pixels_per_mm, kLeastRing_px, kMostRing_px)) / 2;
}

bool isWarning(StationState state) {
  return state == StationState::Warns || state == StationState::WarnsAccepted;
}

QString letterOf(layout::Role role) {
  switch (role) {
    case layout::Role::Operator:
      return Words::tr("O", "letter of an operator's station");
    case layout::Role::Helper:
      return Words::tr("H", "letter of a helper's station");
    case layout::Role::Setter:
      return Words::tr("S", "letter of a setter's station");
    case layout::Role::Instructor:
      return Words::tr("I", "letter of an instructor's station");
  }
  return {};
}

// A direction so nearly that nobody sees the difference at that size: of a factory's stations few look the
// same way to the degree, and each picture that is kept must be painted once.
int roundedTurn(double looks, double radius) {
  if (radius < kLeastRing_px) return 0;  // a dot
  constexpr double kUnseen_px = 0.5;
  const int step = std::max(1, static_cast<int>(kUnseen_px / radius * 180 / std::numbers::pi));
  return step * static_cast<int>(std::lround(looks / step)) % 360;
}

// On the side away from the machine, where its devices are not; never where the sign is.
QRectF letterBox(QPointF middle, double radius, double looks) {
  const QPointF towards = screenDirection(looks);
  const bool up = towards.y() > 0.5;
  const bool left = up || towards.x() > 0.5;
  const double out = 0.72 * radius + 7;
  const QPointF at = middle + QPointF(left ? -out : out, up ? -out : out);
  return {at - QPointF(6, 8), QSizeF(12, 16)};
}

// On the side away from the machine too, where it hides no stop; never where the letter is.
QPointF signCorner(double looks) {
  const QPointF towards = screenDirection(looks);
  if (towards.y() > 0.5) return kUpperRight;
  if (towards.x() > 0.5) return {-1, -1};
  return towards.y() < -0.5 ? QPointF(-1, 1) : kUpperRight;
}

// Towards the nearest side of its machine.
double directionToMachine(const layout::Machine& machine, Point in_frame) {
  const geometry::Polygon outline = layout::outlineInPlan(machine.footprint, {}, 0);
  Point nearest;
  double least = std::numeric_limits<double>::infinity();
  for (std::size_t i = 0; i < outline.size(); ++i) {
    const Point on = geometry::nearestPoint(geometry::edgeOf(outline, i), in_frame);
    if (geometry::distance(on, in_frame) >= least) continue;
    least = geometry::distance(on, in_frame);
    nearest = on;
  }
  const Point d = nearest - in_frame;
  if (geometry::length(d) < 1) return 90 + machine.turn;
  return std::atan2(d.y, d.x) * 180 / std::numbers::pi + machine.turn;
}

}  // namespace

StationItem::StationItem(const layout::Layout& layout, std::size_t machine, std::size_t station)
    : Item({edits::ThingKind::Station, machine, station},
           edits::idOf(layout, {edits::ThingKind::Station, machine, station}), Layer::Station),
      at_(*edits::placeOf(layout, thing)),
      looks_(directionToMachine(layout.machines[machine], layout.machines[machine].stations[station].at)),
      role_(layout.machines[machine].stations[station].role),
      letter_(letterOf(role_)) {}

std::optional<double> StationItem::distanceTo(geometry::Point at, double mm_per_pixel) const {
  const double radius = radiusAt(1 / mm_per_pixel);
  const double side = radius < kLeastRing_px ? 2 * radius : std::max(2 * radius, kTarget_px);
  return distanceToMark(at, at_, side, mm_per_pixel);
}

// The operator's goes without saying until there is room.
bool StationItem::isLettered(double radius) const {
  return radius >= (role_ == layout::Role::Operator ? kOperatorLettered_px : kLettered_px);
}

void StationItem::paint(QPainter& painter, const PaintContext& context) const {
  const double radius = radiusAt(context.view.pixelsPerMm());
  const QPointF middle = context.view.toPixels(at_);
  const StampKey key{StampKey::What::Station, static_cast<int>(context.state),
                     static_cast<int>(std::lround(2 * radius)), roundedTurn(looks_, radius)};
  painter.setRenderHint(QPainter::Antialiasing);
  paintStamp(painter, context.theme, middle, 1.4 * radius + kSign_px, key, [&](QPainter& stamp) {
    paintStationRing(stamp, context.theme, context.state, {}, radius);
    if (radius >= kLeastRing_px) paintFeet(stamp, context, radius);
  });
  if (isLettered(radius)) {
    painter.fillRect(letterBox(middle, radius, looks_), context.theme.label_ground);
    painter.setFont(labelFont());
    painter.setPen(context.theme.ink);
    paintText(painter, letterBox(middle, radius, looks_), letter_);
  }
  if (!context.selected && !context.hovered) return;
  painter.setBrush(Qt::NoBrush);
  painter.setPen(pen(context.selected ? context.theme.selection : faint(context.theme.selection, 0.6),
                     context.selected ? 2.5 : 1.5));
  painter.drawEllipse(middle, radius + 3.5, radius + 3.5);
}

// Over the symbols of the devices round about. A dot is all sign.
void StationItem::paintSign(QPainter& painter, const PaintContext& context) const {
  const double radius = radiusAt(context.view.pixelsPerMm());
  if (!hasSign(context.state)) return;
  const QPointF corner = signCorner(looks_);
  const StampKey key{StampKey::What::Sign, static_cast<int>(context.state),
                     static_cast<int>(std::lround(2 * radius)),
                     static_cast<int>(2 * corner.x() + corner.y())};
  paintStamp(painter, context.theme, context.view.toPixels(at_), 1.4 * radius + kSign_px, key,
             [&](QPainter& stamp) {
               if (radius < kLeastRing_px)
                 return paintStationRing(stamp, context.theme, context.state, {}, radius);
               paintStationSign(stamp, context.theme, context.state, {}, radius, corner);
             });
}

void StationItem::paintFeet(QPainter& painter, const PaintContext& context, double radius) const {
  painter.save();
  painter.rotate(90 - looks_);
  painter.scale(radius, radius);
  painter.setPen(Qt::NoPen);
  painter.setBrush(isWarning(context.state) ? context.theme.dark_sign : context.theme.ink);
  for (const double side : {-1.0, 1.0}) {  // sole and heel, the toes up
    painter.drawEllipse(QPointF(side * 0.3, -0.2), 0.19, 0.36);
    painter.drawEllipse(QPointF(side * 0.27, 0.42), 0.15, 0.17);
  }
  painter.restore();
}

void StationItem::addCovered(const PaintContext& context, std::vector<QRectF>& boxes) const {
  const double radius = radiusAt(context.view.pixelsPerMm());
  if (radius < kLeastRing_px) return;
  const QPointF middle = context.view.toPixels(at_);
  boxes.push_back(QRectF(middle - QPointF(radius, radius), middle + QPointF(radius, radius)));
  if (isLettered(radius)) boxes.push_back(letterBox(middle, radius, looks_));
  if (hasSign(context.state)) boxes.push_back(stationSignBox(middle, radius, signCorner(looks_)));
}

}  // namespace stopwalk::plan
