#pragma once

#include <QPainter>
#include <QPen>
#include <QPolygonF>
#include <optional>

#include "app/plan/items/item.h"
#include "core/geometry/point.h"

// What the items draw with.
namespace stopwalk::plan {

// Corners in pixels; of an upright outline on the middles of pixels, so that its lines are crisp.
QPolygonF onScreen(const geometry::Polygon& outline, const ViewTransform& view);
// The place so far along a line, 0 to 1.
QPointF placeAlong(const QPolygonF& line, double part);
bool isUprightBox(const QPolygonF& corners);
// `px` at a usual zoom (a metre as 60 pixels), a little less far off and more close by.
double stroke(const ViewTransform& view, double px);
QPen pen(const QColor& colour, double width, Qt::PenStyle style = Qt::SolidLine);
QColor faint(QColor colour, double opacity);

// Round what is selected or under the pointer.
void paintOutlineMark(QPainter& painter, const PaintContext& context, const QPolygonF& outline);

// Lines at 45 degrees, `step` pixels apart, that stay where they are on the thing while the view moves.
void hatch(QPainter& painter, const QPolygonF& outline, QPointF anchor, double step, const QPen& line);

// The unit vector on the screen of a direction in the plan, degrees.
QPointF screenDirection(double deg);

// The side of a symbol in pixels at this zoom, at most `room_mm` of the plan; 0: too little room, a dot.
inline constexpr double kLeastSymbol_px = 16, kMostSymbol_px = 30, kTarget_px = 24, kDot_px = 7;
double symbolSide(double pixels_per_mm, double room_mm);
// The distance in mm from a mark of a size in pixels round `place`.
double distanceToMark(geometry::Point at, geometry::Point place, double side_px, double mm_per_pixel);

}  // namespace stopwalk::plan
