#pragma once

#include <QPainter>
#include <QString>
#include <vector>

#include "app/plan/theme.h"
#include "app/plan/view_transform.h"
#include "core/layout/layout.h"

// What shows up only while something is drawn or dragged.
namespace stopwalk::plan {

// Thin lines to what a thing was pulled to, with a dot at their far end.
void paintGuides(QPainter& painter, const ViewTransform& view, const Theme& theme,
                 const std::vector<geometry::Segment>& guides);
// An outline that is being drawn, closed or not.
void paintDraft(QPainter& painter, const ViewTransform& view, const Theme& theme,
                const geometry::Polygon& corners, bool closed);
// A text on a ground of its own.
void paintTag(QPainter& painter, const Theme& theme, const QRectF& box, const QString& text);
// Where the box of what is said beside the pointer stands: right and `below` px below it, or to its other
// side where it would go over the edge, and always inside as long as it fits.
QRectF tagBox(QSizeF size, QPointF pointer, const QRectF& inside, double below);
// Where in a view such boxes stand, and how large one is.
QRectF tagRoom(const QRectF& view);
QSizeF tagSize(const QString& text, const QFont& font, const QRectF& inside);
// A text beside the pointer, on the plan without its rulers, in lines that are no longer than that is wide.
void paintTagAtPointer(QPainter& painter, const Theme& theme, QPointF pointer, const QString& text,
                       double below = 0);
// The length of a line in the middle of it.
void paintLength(QPainter& painter, const ViewTransform& view, const Theme& theme, geometry::Segment line,
                 layout::LengthUnit unit);
// That something is wrong with what lies in a box of the screen: a triangle at its upper left corner.
void paintFaultMark(QPainter& painter, const Theme& theme, const QRectF& box, bool is_current);
QRectF handleBox(QPointF middle);
inline constexpr double kHandle_px = 12;       // as painted
inline constexpr double kHandleReach_px = 12;  // as found: 24 px across
void paintHandle(QPainter& painter, const Theme& theme, QPointF middle, bool round);

}  // namespace stopwalk::plan
