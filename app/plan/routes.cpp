#include "app/plan/routes.h"

#include <QLineF>
#include <QPolygonF>
#include <algorithm>

#include "app/plan/text.h"
#include "core/audit/wording.h"
#include "core/floor/walks.h"

namespace stopwalk::plan {
namespace {

constexpr double kArrow_px = 10;
constexpr double kTick_px = 5;    // of a width, either side of its line
constexpr double kApart_px = 12;  // between a width and its figure

// The lengths painted so far; each new one goes where none is, if it can.
class LengthLabels {
 public:
  LengthLabels(QPainter& painter, const Theme& theme) : painter_(painter), theme_(theme) {}

  QSizeF sizeOf(const QString& text) const { return textSize(text, painter_.fontMetrics()) + QSizeF(8, 4); }
  // In the middle of the first of the places that is free, else of the first.
  void paint(const QString& text, const std::vector<QPointF>& places, const QColor& ink) {
    QRectF box(QPointF(), sizeOf(text));
    const auto lies = [&](QPointF at) { return box.moveCenter(at), box; };
    const auto free = std::ranges::find_if(places, [&](QPointF at) {
      return std::ranges::none_of(taken_, [&, b = lies(at)](const QRectF& t) { return t.intersects(b); });
    });
    box.moveCenter(free == places.end() ? places.front() : *free);
    taken_.push_back(box);
    painter_.setPen(Qt::NoPen);
    painter_.setBrush(theme_.label_ground);
    painter_.drawRect(box);
    painter_.setPen(ink);
    paintText(painter_, box, text);
  }

 private:
  QPainter& painter_;
  const Theme& theme_;
  std::vector<QRectF> taken_;
};

QPolygonF pixelsOf(const ViewTransform& view, const std::vector<geometry::Point>& path_m) {
  QPolygonF pixels;
  for (const geometry::Point p : path_m) pixels << view.toPixels(1000 * p);
  return pixels;
}

void paintArrow(QPainter& painter, QPointF from, QPointF tip) {
  const QLineF line(tip, from);
  if (line.length() < 1) return;
  QLineF left = line, right = line;
  left.setAngle(line.angle() + 25);
  right.setAngle(line.angle() - 25);
  left.setLength(kArrow_px);
  right.setLength(kArrow_px);
  painter.drawPolygon(QPolygonF{tip, left.p2(), right.p2()});
}

// The place so far along, 0 to 1.
QPointF placeAlong(const QPolygonF& line, double part) {
  double whole = 0;
  for (qsizetype i = 1; i < line.size(); ++i) whole += QLineF(line[i - 1], line[i]).length();
  double gone = 0;
  for (qsizetype i = 1; i < line.size(); ++i) {
    const QLineF piece(line[i - 1], line[i]);
    if (gone + piece.length() >= whole * part && piece.length() > 0)
      return piece.pointAt((whole * part - gone) / piece.length());
    gone += piece.length();
  }
  return line.last();
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

void paintRoutes(QPainter& painter, const ViewTransform& view, const Theme& theme,
                 const std::vector<Route>& routes, layout::LengthUnit unit) {
  painter.save();
  painter.setFont(labelFont());
  std::vector<const Route*> walks;
  for (const Route& route : routes)
    if (route.nearest->path_m.size() > 1 && route.nearest->walk_m) walks.push_back(&route);
  const auto inkOf = [&](RouteTo to) { return to == RouteTo::Phone ? theme.selection : theme.ink; };
  for (const Route* route : walks)
    paintLine(painter, pixelsOf(view, route->nearest->path_m), route->to, inkOf(route->to));

  LengthLabels labels(painter, theme);
  std::vector<geometry::Segment> widths;  // several walks go through the same gap
  for (const Route* route : walks)
    if (route->narrow && std::ranges::find(widths, *route->narrow) == widths.end())
      widths.push_back(*route->narrow);
  for (const geometry::Segment& width : widths)
    paintAcross(painter, theme, {view.toPixels(width.a), view.toPixels(width.b)});
  for (const Route* route : walks) {
    const QPolygonF line = pixelsOf(view, route->nearest->path_m);
    std::vector<QPointF> places;
    for (const double part : {0.5, 0.4, 0.6, 0.3, 0.7, 0.2, 0.8}) places.push_back(placeAlong(line, part));
    labels.paint(QString::fromStdString(audit::lengthText(*route->nearest->walk_m, unit)), places,
                 inkOf(route->to));
  }
  for (const geometry::Segment& width : widths) {
    const QString text = QString::fromStdString(audit::lengthText(
        geometry::distance(width.a, width.b) / 1000, 2 * floor::kMeasuringClearance_mm / 1000, unit));
    labels.paint(text, besideOf({view.toPixels(width.a), view.toPixels(width.b)}, labels.sizeOf(text)),
                 theme.ink);
  }
  painter.restore();
}

}  // namespace stopwalk::plan
