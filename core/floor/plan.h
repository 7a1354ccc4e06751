#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <vector>

#include "core/geometry/point.h"
#include "core/layout/layout.h"

namespace stopwalk::floor {

using geometry::Point;
using geometry::Polygon;
using geometry::Segment;

enum class Hours { Open, After };

// Something that cannot be walked through: the footprint of a machine or fixture.
struct Solid {
  Polygon outline;
  std::optional<double> height;
  bool is_machine = false;
  std::size_t index = 0;  // into layout.machines or layout.fixtures
};

// An open door's way through the wall: the quadrilateral first[0], first[1], second[1], second[0]; without
// area where the rooms share the wall's line. `first` lies on the first room's wall, `second` on the
// second's. A door has one, or several side by side where it meets a wall that bends.
struct Passage {
  std::size_t door = 0;
  Segment first;
  Segment second;
  bool operator==(const Passage&) const = default;
};

Polygon outlineOf(const Passage& passage);

// What can be read but not built.
struct Fault {
  std::string subject;  // id, such as `lathe-1/operator`
  std::string room;     // id of the room it is in, or empty
  std::string text;     // a sentence: what and where
  std::optional<std::size_t> machine =
      std::nullopt;        // that is placed wrongly, as it stands or with its stations: into layout.machines
  std::string which = {};  // tells it from others of the subject (core/layout/which.h)
};

// The floor F of a layout at given hours, as pieces: (rooms + passages) - solids, and the walls that stand in
// it.
struct Plan {
  std::vector<Polygon> rooms;     // as layout.rooms; empty where left out for a fault
  std::vector<Passage> passages;  // of the doors that are open at these hours
  std::vector<Solid> solids;      // without those left out for a fault
  std::vector<Segment>
      walls;               // all that blocks: room outlines without their openings, and the sides of passages
  std::vector<bool> shut;  // as layout.doors: locked at these hours, faulty, or lying over a door that is
  std::vector<Fault> faults;
};

// Its rooms alone.
std::vector<Polygon> roomsOf(const layout::Layout& layout);

// Cost n log n. Never fails: what cannot be built is left out and named in `faults`.
Plan buildPlan(const layout::Layout& layout, Hours hours);

}  // namespace stopwalk::floor
