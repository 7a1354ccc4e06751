#pragma once

#include "app/plan/items/item.h"

namespace stopwalk::plan {

// The ring of a station, by how it stands in the audit; a small one is a dot of the same meaning.
void paintStationRing(QPainter& painter, const Theme& theme, StationState state, QPointF middle,
                      double radius);
// The tick, triangle or cross at the ring; nothing for what has not been audited.
void paintStationSign(QPainter& painter, const Theme& theme, StationState state, QPointF middle,
                      double radius);

}  // namespace stopwalk::plan
