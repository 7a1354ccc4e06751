#pragma once

#include <QPainter>
#include <QPolygonF>
#include <QSizeF>
#include <optional>

#include "app/plan/theme.h"
#include "app/plan/view_transform.h"
#include "core/layout/layout.h"

// The measures round and under the plan, in the unit of the layout.
namespace stopwalk::plan {

inline constexpr double kRuler_px = 24;

// The marks of a ruler: numbered ones and, between them, `parts` - 1 small ones.
struct RulerStep {
  double major_mm = 1000;
  int parts = 10;
};
// The finest whose numbers still stand apart.
RulerStep rulerStep(double pixels_per_mm, layout::LengthUnit unit);
// Of the number beside a mark: `4.5`, `12'`.
QString rulerText(double mm, const RulerStep& step, layout::LengthUnit unit);

// On what of `area` (pixels) is seen, whose colour is `ground`.
void paintGrid(QPainter& painter, const ViewTransform& view, const Theme& theme, const QColor& ground,
               const QPolygonF& area, layout::LengthUnit unit);
// Along the top and left edges; the pointer's place is marked.
void paintRulers(QPainter& painter, const ViewTransform& view, const Theme& theme, QSizeF size,
                 layout::LengthUnit unit, std::optional<QPointF> pointer);
// In the lower left corner: a bar of a round length.
void paintScaleBar(QPainter& painter, const ViewTransform& view, const Theme& theme, QSizeF size,
                   layout::LengthUnit unit);

}  // namespace stopwalk::plan
