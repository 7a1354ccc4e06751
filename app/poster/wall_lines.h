#pragma once

#include <QLineF>
#include <vector>

#include "app/poster/plan_frame.h"
#include "core/layout/layout.h"

namespace stopwalk::poster {

// A stretch of a room's wall as it is drawn: outside the floor, its inner edge on the room's outline.
struct WallLine {
  QLineF line;  // in the middle of its width
  double width = 0;
};

// Structural where the open air or nothing is behind, else a partition.
std::vector<WallLine> wallLines(const layout::Layout& layout, std::size_t room, const PlanFrame& frame);

// A door of the room as an opening in its wall.
struct DoorWay {
  std::size_t door = 0;
  QLineF opening;  // on the outline
  QPointF out;     // the unit vector out of the room
  std::string to;  // id of the room behind it, or `outside`
};
std::vector<DoorWay> doorWays(const layout::Layout& layout, std::size_t room, const PlanFrame& frame);

}  // namespace stopwalk::poster
