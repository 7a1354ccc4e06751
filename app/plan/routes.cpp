#include "app/plan/routes.h"

#include <QLineF>
#include <QPolygonF>
#include <algorithm>

#include "app/plan/arrow.h"
#include "app/plan/items/drawing.h"
#include "app/plan/text.h"
#include "core/audit/wording.h"
#include "core/floor/walks.h"

namespace stopwalk::plan {
namespace {

constexpr double kTick_px = 5;    // of a width, either side of its line
constexpr double kApart_px = 12;  // between a width and its figure

QSizeF labelSize(const QString& text) {
  return textSize(text, QFontMetricsF(labelFont())) + QSizeF(8, 4);
}

QPolygonF pixelsOf(const ViewTransform& view, const std::vector<geometry::Point>& path_m) {
  QPolygonF pixels;
  for (const geometry::Point p : path_m) pixels << view.toPixels(1000 * p);
  return pixels;
}

void paintLine(QPainter& painter, const QPolygonF& line, RouteTo to, const QColor& ink) {
  painter.setBrush(Qt::NoBrush);
  painter.setPen(
      QPen(ink, 2.5, to == RouteTo::Phone ? Qt::DashLine : Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
  painter.drawPolyline(line);
  painter.setPen(QPen(ink, 1));
  painter.setBrush(ink);
  paintArrow(painter, line[line.size() - 2], line.last());
}

// A line across the way with a slanting tick at either end, as lengths are drawn on plans.
void paintAcross(QPainter& painter, const Theme& theme, QLineF across) {
  for (const auto& [colour, width] : {std::pair{theme.label_ground, 4.0}, std::pair{theme.ink, 1.4}}) {
    painter.setPen(QPen(colour, width));
    painter.drawLine(across);
    QLineF tick = across;
    tick.setLength(2 * kTick_px);
    tick.setAngle(across.angle() + 45);
    for (const QPointF end : {across.p1(), across.p2()})
      painter.drawLine(tick.translated(end - tick.center()));
  }
}

// On either side of the line, then beyond either end.
std::vector<QPointF> besideOf(QLineF across, QSizeF label) {
  const QPointF along = (across.p2() - across.p1()) / std::max(across.length(), 1.0);
  const QPointF aside(-along.y(), along.x());
  const auto half = [&](QPointF d) {
    return (std::abs(d.x()) * label.width() + std::abs(d.y()) * label.height()) / 2;
  };
  const QPointF by = (kApart_px + half(aside)) * aside;
  const QPointF beyond = (across.length() / 2 + kApart_px + half(along)) * along;
  const QPointF middle = across.center();
  return {middle + by, middle - by, middle + beyond, middle - beyond};
}

}  // namespace

void RoutesOnPlan::addLength(const QString& text, const std::vector<QPointF>& places, RouteTo to) {
  QRectF box(QPointF(), labelSize(text));
  const auto isFree = [&](QPointF at) {
    box.moveCenter(at);
    return std::ranges::none_of(lengths_, [&](const Length& l) { return l.box.intersects(box); });
  };
  const auto free = std::ranges::find_if(places, isFree);
  box.moveCenter(free == places.end() ? places.front() : *free);
  lengths_.push_back({text, box, to});
}

RoutesOnPlan::RoutesOnPlan(const ViewTransform& view, const std::vector<Route>& routes,
                           layout::LengthUnit unit) {
  std::vector<geometry::Segment> narrow;  // several walks go through the same gap
  for (const Route& route : routes) {
    if (route.nearest->path_m.size() < 2 || !route.nearest->walk_m) continue;
    lines_.push_back({pixelsOf(view, route.nearest->path_m), route.to});
    std::vector<QPointF> places;
    for (const double part : {0.5, 0.4, 0.6, 0.3, 0.7, 0.2, 0.8})
      places.push_back(placeAlong(lines_.back().line, part));
    addLength(QString::fromStdString(audit::lengthText(*route.nearest->walk_m, unit)), places, route.to);
    if (route.narrow && std::ranges::find(narrow, *route.narrow) == narrow.end())
      narrow.push_back(*route.narrow);
  }
  for (const geometry::Segment& across : narrow) {
    widths_.push_back({view.toPixels(across.a), view.toPixels(across.b)});
    const QString text = QString::fromStdString(audit::lengthText(
        geometry::distance(across.a, across.b) / 1000, 2 * floor::kMeasuringClearance_mm / 1000, unit));
    addLength(text, besideOf(widths_.back(), labelSize(text)), RouteTo::Stop);
  }
}

std::vector<QRectF> RoutesOnPlan::lengthBoxes() const {
  std::vector<QRectF> boxes;
  for (const Length& length : lengths_) boxes.push_back(length.box);
  return boxes;
}

void RoutesOnPlan::paint(QPainter& painter, const Theme& theme) const {
  const auto inkOf = [&](RouteTo to) { return to == RouteTo::Phone ? theme.selection : theme.ink; };
  painter.save();
  painter.setFont(labelFont());
  for (const Line& line : lines_) paintLine(painter, line.line, line.to, inkOf(line.to));
  for (const QLineF& across : widths_) paintAcross(painter, theme, across);
  for (const Length& length : lengths_) {
    painter.fillRect(length.box, theme.label_ground);
    painter.setPen(inkOf(length.to));
    paintText(painter, length.box, length.text);
  }
  painter.restore();
}

}  // namespace stopwalk::plan
