#pragma once

#include "app/poster/call_outs.h"

// What two call-outs must not do to each other.
namespace stopwalk::poster {

inline constexpr double kBetweenBoxes_mm = 0.8;
inline constexpr double kPastAnchor_mm = 1.2;  // a dot and a little white

// How near something of `mine` may come to the anchor of another: less where the two are close themselves.
double clearOf(QPointF mine, QPointF others);

bool overlap(const QRectF& a, const QRectF& b, double gap);
double distanceTo(const QRectF& box, QPointF p);
double distanceTo(const QLineF& line, QPointF p);
bool meets(const QLineF& line, const QRectF& box);
bool meet(const QLineF& a, const QLineF& b);
QPointF nearestOf(const QRectF& box, QPointF p);

// Alone: within the area, off what is kept, off the anchors of others.
bool standsAlone(std::size_t i, const PlacedCallOut& placed, const std::vector<CallOut>& all,
                 const CallOutArea& area);
bool standTogether(const PlacedCallOut& a, const PlacedCallOut& b);

// The ring round the room: as many boxes as there are, by the shortest leaders in all, which never cross.
std::optional<std::vector<PlacedCallOut>> placeInRing(const std::vector<CallOut>& call_outs,
                                                      const CallOutArea& area);

}  // namespace stopwalk::poster
