#pragma once

#include "app/plan/items/item.h"

namespace stopwalk::plan {

// The ring of a station, by how it stands in the audit; a small one is a dot of the same meaning.
void paintStationRing(QPainter& painter, const Theme& theme, StationState state, QPointF middle,
                      double radius);
// The tick, triangle or cross at the ring, in a frame where it is accepted; nothing for what has not been
// audited. `corner`: on which of the four sides between the axes, up and to the right if not said.
inline constexpr QPointF kUpperRight{1, -1};
void paintStationSign(QPainter& painter, const Theme& theme, StationState state, QPointF middle,
                      double radius, QPointF corner = kUpperRight);

// Its shape alone.
void paintStationShape(QPainter& painter, const Theme& theme, StationState state, QPointF middle,
                       double radius);

// Whether there is one, and all that it covers.
bool hasSign(StationState state);
QRectF stationSignBox(QPointF middle, double radius, QPointF corner = kUpperRight);

}  // namespace stopwalk::plan
