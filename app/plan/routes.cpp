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
constexpr double kBold_px = 4;    // of what a finding measured
constexpr double kGround_px = 4;  // to either side of it
constexpr double kRing_px = 13;   // round a place

QFont boldFont() {
  QFont font = labelFont();
  font.setBold(true);
  return font;
}

QSizeF labelSize(const QString& text, const QFont& font) {
  return textSize(text, QFontMetricsF(font)) + QSizeF(8, 4);
}

QPolygonF pixelsOf(const ViewTransform& view, const std::vector<geometry::Point>& path_m) {
  QPolygonF pixels;
  for (const geometry::Point p : path_m) pixels << view.toPixels(1000 * p);
  return pixels;
}

void paintLine(QPainter& painter, const QPolygonF& line, Qt::PenStyle style, const QColor& ink) {
  painter.setBrush(Qt::NoBrush);
  painter.setPen(QPen(ink, 2.5, style, Qt::RoundCap, Qt::RoundJoin));
  painter.drawPolyline(line);
  painter.setPen(QPen(ink, 1));
  painter.setBrush(ink);
  paintArrow(painter, line[line.size() - 2], line.last());
}

// A slanting tick at either end, as lengths are drawn on plans.
void paintTicks(QPainter& painter, QLineF line, double size_px) {
  QLineF tick = line;
  tick.setLength(2 * size_px);
  tick.setAngle(line.angle() + 45);
  for (const QPointF end : {line.p1(), line.p2()}) painter.drawLine(tick.translated(end - tick.center()));
}

// A line across the way.
void paintAcross(QPainter& painter, const Theme& theme, QLineF across) {
  for (const auto& [colour, width] : {std::pair{theme.label_ground, 4.0}, std::pair{theme.ink, 1.4}}) {
    painter.setPen(QPen(colour, width));
    painter.drawLine(across);
    paintTicks(painter, across, kTick_px);
  }
}

// A point as a ring, a line as it is.
void paintPlace(QPainter& painter, const QPolygonF& place) {
  if (place.size() == 1)
    painter.drawEllipse(place.first(), kRing_px, kRing_px);
  else
    painter.drawPolyline(place);
}

// Once as a ground wider than itself, once in its ink.
void paintBold(QPainter& painter, const QPolygonF& line, audit::MeasuredLine::Kind kind, bool has_length,
               const Theme& theme) {
  using Kind = audit::MeasuredLine::Kind;
  QColor ground = theme.label_ground;
  ground.setAlpha(255);
  for (const bool is_ground : {true, false}) {
    const QColor& colour = is_ground ? ground : theme.measured;
    const bool is_dashed = !has_length && kind == Kind::Straight && !is_ground;
    painter.setBrush(Qt::NoBrush);
    painter.setPen(QPen(colour, kBold_px + (is_ground ? 2 * kGround_px : 0),
                        is_dashed ? Qt::DashLine : Qt::SolidLine, is_dashed ? Qt::FlatCap : Qt::RoundCap,
                        Qt::RoundJoin));
    if (kind == Kind::Place) {
      paintPlace(painter, line);
      continue;
    }
    painter.drawPolyline(line);
    painter.setPen(QPen(colour, is_ground ? 2 * kGround_px : kBold_px / 2));
    if (kind == Kind::Route) {
      painter.setBrush(colour);
      painter.drawEllipse(line.first(), kBold_px, kBold_px);
      paintArrow(painter, line[line.size() - 2], line.last());
    } else {
      paintTicks(painter, {line.first(), line.last()}, 2 * kTick_px);
    }
  }
}

// Along a walk, where its length may stand.
std::vector<QPointF> onWalk(const QPolygonF& line) {
  std::vector<QPointF> places;
  for (const double part : {0.5, 0.4, 0.6, 0.3, 0.7, 0.2, 0.8}) places.push_back(placeAlong(line, part));
  return places;
}

bool isDrawn(const std::vector<MeasuredOnPlan>& measured, const audit::Nearest& nearest) {
  return std::ranges::any_of(measured, [&](const MeasuredOnPlan& m) {
    return m.line->kind == audit::MeasuredLine::Kind::Route && m.line->line_m == nearest.path_m;
  });
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

void RoutesOnPlan::addLength(const QString& text, const std::vector<QPointF>& places, Of of) {
  QRectF box(QPointF(), labelSize(text, of == Of::Finding ? boldFont() : labelFont()));
  const auto isFree = [&](QPointF at) {
    box.moveCenter(at);
    return std::ranges::none_of(lengths_, [&](const Length& l) { return l.box.intersects(box); });
  };
  const auto free = std::ranges::find_if(places, isFree);
  box.moveCenter(free == places.end() ? places.front() : *free);
  lengths_.push_back({text, box, of});
}

void RoutesOnPlan::addMeasured(const ViewTransform& view, const MeasuredOnPlan& measured,
                               layout::LengthUnit unit) {
  using Kind = audit::MeasuredLine::Kind;
  const audit::MeasuredLine& line = *measured.line;
  if (line.line_m.size() < (line.kind == Kind::Place ? 1 : 2)) return;
  bold_.push_back({pixelsOf(view, line.line_m), line.kind, line.length_m.has_value()});
  if (!line.length_m) return;
  const QPolygonF& drawn = bold_.back().line;
  const QString text =
      QString::fromStdString(measured.limit_m ? audit::lengthText(*line.length_m, *measured.limit_m, unit)
                                              : audit::lengthText(*line.length_m, unit));
  const QLineF across(drawn.first(), drawn.last());
  const QSizeF label = labelSize(text, boldFont());
  const bool is_long = line.kind == Kind::Route && across.length() > 2 * label.width();
  addLength(text, is_long ? onWalk(drawn) : besideOf(across, label), Of::Finding);
}

RoutesOnPlan::RoutesOnPlan(const ViewTransform& view, const std::vector<Route>& routes,
                           const std::vector<MeasuredOnPlan>& measured, layout::LengthUnit unit) {
  std::vector<geometry::Segment> narrow;  // several walks go through the same gap
  const auto addNarrow = [&](const std::optional<geometry::Segment>& across) {
    if (across && std::ranges::find(narrow, *across) == narrow.end()) narrow.push_back(*across);
  };
  for (const MeasuredOnPlan& m : measured) {
    addMeasured(view, m, unit);
    addNarrow(m.narrow);
  }
  for (const Route& route : routes) {
    if (route.nearest->path_m.size() < 2 || !route.nearest->walk_m || isDrawn(measured, *route.nearest))
      continue;
    const Of of = route.to == RouteTo::Phone ? Of::Phone : Of::Stop;
    lines_.push_back({pixelsOf(view, route.nearest->path_m), of});
    addLength(QString::fromStdString(audit::lengthText(*route.nearest->walk_m, unit)),
              onWalk(lines_.back().line), of);
    addNarrow(route.narrow);
  }
  for (const geometry::Segment& across : narrow) {
    widths_.push_back({view.toPixels(across.a), view.toPixels(across.b)});
    const QString text = QString::fromStdString(audit::lengthText(
        geometry::distance(across.a, across.b) / 1000, 2 * floor::kMeasuringClearance_mm / 1000, unit));
    addLength(text, besideOf(widths_.back(), labelSize(text, labelFont())), Of::Stop);
  }
}

std::vector<QRectF> RoutesOnPlan::lengthBoxes() const {
  std::vector<QRectF> boxes;
  for (const Length& length : lengths_) boxes.push_back(length.box);
  return boxes;
}

QColor RoutesOnPlan::inkOf(Of of, const Theme& theme) {
  return of == Of::Finding ? theme.measured : of == Of::Phone ? theme.selection : theme.ink;
}

void RoutesOnPlan::paint(QPainter& painter, const Theme& theme) const {
  painter.save();
  for (const Line& line : lines_)
    paintLine(painter, line.line, line.of == Of::Phone ? Qt::DashLine : Qt::SolidLine, inkOf(line.of, theme));
  for (const Bold& bold : bold_) paintBold(painter, bold.line, bold.kind, bold.has_length, theme);
  for (const QLineF& across : widths_) paintAcross(painter, theme, across);
  for (const Length& length : lengths_) {
    const bool is_bold = length.of == Of::Finding;
    painter.setFont(is_bold ? boldFont() : labelFont());
    painter.fillRect(length.box, theme.label_ground);
    painter.setPen(QPen(inkOf(length.of, theme), 1));
    painter.setBrush(Qt::NoBrush);
    if (is_bold) painter.drawRect(length.box);
    paintText(painter, length.box, length.text);
  }
  painter.restore();
}

}  // namespace stopwalk::plan
