#pragma once

#include <QPainter>
#include <optional>
#include <span>
#include <string>

#include "app/plan/theme.h"
#include "app/plan/view_transform.h"
#include "core/planning/suppositions.h"

// What is supposed, over the plan as it is drawn.
namespace stopwalk::plan {

// A cross over each device out of order, a bar across each door supposed shut, and what stands in the way as
// a hatched outline of dashes.
void paintSupposed(QPainter& painter, const ViewTransform& view, const Theme& theme,
                   const layout::Layout& layout, const planning::Suppositions& suppositions);

// A cross over each device that is out of order; of those that are not there none.
void paintOutOfOrder(QPainter& painter, const ViewTransform& view, const Theme& theme,
                     const layout::Layout& layout, std::span<const std::string> devices);

// Which of the things in the way is at a place, the last one first.
std::optional<std::size_t> inTheWayAt(const planning::Suppositions& suppositions, geometry::Point at);

}  // namespace stopwalk::plan
