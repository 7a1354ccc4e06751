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

// What a finding measured, and where a walk of it is narrow.
struct MeasuredOnPlan {
  const audit::MeasuredLine* line = nullptr;
  std::optional<geometry::Segment> narrow;
  std::optional<double> limit_m = {};  // that it is to be told from
};

// Each a line with its length on it and an arrow at its end: to the stop in ink, to the phone in blue and
// dashed; across a narrow place its width. What the finding that is looked at measured lies over them, bold
// on a light ground: walks with an arrow, straight lines and widths with a tick at either end, places as
// rings, dashed where there is no length. No length lies on another where there is room. Nothing where there
// is no walk, and no walk twice.
class RoutesOnPlan {
 public:
  RoutesOnPlan() = default;
  RoutesOnPlan(const ViewTransform& view, const std::vector<Route>& routes,
               const std::vector<MeasuredOnPlan>& measured, layout::LengthUnit unit);

  // Where the lengths are, in pixels: nothing else is to be written there.
  std::vector<QRectF> lengthBoxes() const;
  void paint(QPainter& painter, const Theme& theme) const;

 private:
  enum class Of { Stop, Phone, Finding };
  struct Line {
    QPolygonF line;
    Of of = Of::Stop;
  };
  struct Bold {
    QPolygonF line;
    audit::MeasuredLine::Kind kind = audit::MeasuredLine::Kind::Route;
    bool has_length = false;
  };
  struct Length {
    QString text;
    QRectF box;
    Of of = Of::Stop;
  };
  void addMeasured(const ViewTransform& view, const MeasuredOnPlan& measured, layout::LengthUnit unit);
  // In the middle of the first of the places that is free, else of the first.
  void addLength(const QString& text, const std::vector<QPointF>& places, Of of);
  static QColor inkOf(Of of, const Theme& theme);

  std::vector<Line> lines_;
  std::vector<Bold> bold_;
  std::vector<QLineF> widths_;
  std::vector<Length> lengths_;
};

}  // namespace stopwalk::plan
