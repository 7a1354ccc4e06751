#pragma once

#include <QLineF>
#include <QPainter>
#include <QPolygonF>
#include <QString>
#include <optional>
#include <vector>

#include "app/plan/theme.h"
#include "app/plan/view_transform.h"
#include "core/audit/report.h"

namespace stopwalk::plan {

enum class RouteTo { Stop, Phone };

// A station's walk as it was measured, and where it is narrow.
struct Route {
  const audit::Nearest* nearest = nullptr;
  RouteTo to = RouteTo::Stop;
  std::optional<geometry::Segment> narrow;  // mm, from one side to the other; none: nowhere
};

// Each a line with its length on it and an arrow at its end: to the stop in ink, to the phone in blue and
// dashed; across a narrow place its width. No length lies on another where there is room. Nothing where there
// is no walk.
class RoutesOnPlan {
 public:
  RoutesOnPlan() = default;
  RoutesOnPlan(const ViewTransform& view, const std::vector<Route>& routes, layout::LengthUnit unit);

  // Where the lengths are, in pixels: nothing else is to be written there.
  std::vector<QRectF> lengthBoxes() const;
  void paint(QPainter& painter, const Theme& theme) const;

 private:
  struct Line {
    QPolygonF line;
    RouteTo to = RouteTo::Stop;
  };
  struct Length {
    QString text;
    QRectF box;
    RouteTo to = RouteTo::Stop;
  };
  // In the middle of the first of the places that is free, else of the first.
  void addLength(const QString& text, const std::vector<QPointF>& places, RouteTo to);

  std::vector<Line> lines_;
  std::vector<QLineF> widths_;
  std::vector<Length> lengths_;
};

}  // namespace stopwalk::plan
