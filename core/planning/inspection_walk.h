#pragma once

#include <optional>
#include <span>
#include <string>
#include <vector>

#include "core/floor/walks.h"
#include "core/planning/inspected_devices.h"

namespace stopwalk::planning {

// The shortest way past devices for one who inspects them.
struct InspectionWalk {
  struct Stop {
    std::string id;
    double leg_mm = 0;    // from the one before; 0 for the first
    bool narrow = false;  // through a gap, at less than the measuring clearance
  };
  struct LeftOut {
    std::string id;
    std::string why;  // a clause
  };
  std::vector<Stop> stops;  // in the order of the walk; the start first, where it is no device
  double back_mm = 0;       // from the last to the first; 0 where the walk is not closed
  bool narrow_back = false;
  double length_mm = 0;           // of the whole
  double bound_mm = 0;            // proven: no order is shorter
  bool shortest = false;          // proven: no order is shorter than this
  std::vector<LeftOut> left_out;  // in the order given: no way leads there
};

// By how much of its length the walk may be longer than the shortest: a percentage, a tenth up, so that it is
// never said to be nearer than is proven. None: nothing is proven.
std::optional<double> gapPercent(const InspectionWalk& walk);

// Where to begin: a device among those given, or any other place.
struct WalkStart {
  std::string id;
  floor::Place place;
};

// Along a bar or cord one place stands for all, the middle of its longest stretch, so that the legs join.
// Without a start it begins wherever is best, among as many as are joined to one another.
InspectionWalk inspectionWalk(std::span<const InspectedDevice> devices, const floor::Walks& walks,
                              const std::optional<WalkStart>& start, bool closed);

// Where one stands on such a walk; none: nobody can stand at the place.
std::optional<geometry::Point> waypointAt(const floor::Place& place);

// From one waypoint to the next.
struct InspectionLeg {
  std::string to;  // id
  floor::Walk walk;
};

}  // namespace stopwalk::planning
