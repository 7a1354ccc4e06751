#pragma once

#include <QPainter>

#include "app/plan/theme.h"
#include "app/plan/view_transform.h"
#include "core/audit/report.h"

namespace stopwalk::plan {

enum class RouteTo { Stop, Phone };

// A station's walk as it was measured: a line with its length on it and an arrow at its end; to the stop in
// ink, to the phone in blue and dashed. Nothing where there is no walk.
void paintRoute(QPainter& painter, const ViewTransform& view, const Theme& theme,
                const audit::Nearest& nearest, RouteTo to, layout::LengthUnit unit);

}  // namespace stopwalk::plan
