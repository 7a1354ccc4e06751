#pragma once

#include <QPainter>
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
void paintRoutes(QPainter& painter, const ViewTransform& view, const Theme& theme,
                 const std::vector<Route>& routes, layout::LengthUnit unit);

}  // namespace stopwalk::plan
