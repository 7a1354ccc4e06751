#pragma once

#include <cstddef>
#include <memory>
#include <optional>
#include <string>
#include <vector>

#include "core/floor/plan.h"
#include "core/floor/walks.h"
#include "core/geometry/box.h"
#include "core/layout/device_kind.h"
#include "core/layout/layout.h"

namespace stopwalk::floor {

class FloorIndex;

// 5th percentile female forward grip reach 655 mm (Pheasant, Bodyspace, 1996, as tabulated); for the panel of
// a hand-fed planer EN 859:2007 cl. 5.2.2 b) has 650 mm.
inline constexpr double kHandReach_mm = 650;
inline constexpr double kFootReach_mm = 500;     // common practice
inline constexpr double kHandStanding_mm = 450;  // common practice
inline constexpr double kFootStanding_mm = 300;  // common practice

inline constexpr double kMountedOn_mm = 1;  // a device this near to a solid may be mounted on it
inline constexpr double kInWall_mm = 100;   // a device on a wall may be drawn this deep in it
// Where a device faces away, a corner this near to it is reached round, so far outside: common practice.
inline constexpr double kRoundBehind_mm = 100;
inline constexpr double kOutsideCorner_mm = 10;

// A device or phone placed in the plan. One that is on no machine hangs on a wall or post.
struct PlacedDevice {
  Point at;
  double faces = 0;              // degrees, world
  std::optional<double> length;  // bars and cords
  std::optional<double> height;
  bool foot = false;
  std::optional<std::size_t> machine;  // the machine it is on; none: on a wall or post

  // The line of a bar or cord; elsewhere one point.
  Segment line() const;
};

// Where the users of a device stand, and whether it can be walked to at all.
struct Standing {
  Place place;         // empty: blocked
  std::string reason;  // of being blocked: a clause, such as "a bench stands between"
  std::optional<std::size_t>
      room;  // of the standing place, also if something stands between; else of the nearest wall
};

// Answers about straight lines over one floor: who stands where, what stands between, what is at hand, what
// is in sight. Lengths are compared with a touch of 0.001 mm: a stop exactly in reach is in reach, a line
// that only touches is not crossed. Keeps a reference to neither argument. Cost of a question: what lies near
// the line.
class Surroundings {
 public:
  Surroundings(const layout::Layout& layout, const Plan& plan);
  ~Surroundings();
  Surroundings(Surroundings&&) noexcept;
  Surroundings& operator=(Surroundings&&) noexcept;

  // A solid of the plan, and the frame and hazard of a machine, put elsewhere.
  void moveSolid(std::size_t solid, const Polygon& outline);
  void moveMachine(std::size_t machine, const layout::Machine& moved);
  geometry::Box hazardBox(std::size_t machine) const;  // of one that has a hazard
  const FloorIndex& index() const;

  PlacedDevice placed(const layout::Device& device, const layout::DeviceKind& kind,
                      std::optional<std::size_t> machine) const;
  PlacedDevice placed(const layout::Phone& phone) const;

  Standing standing(const PlacedDevice& device) const;

  // Horizontal distance in mm if the device is at hand from `station`: within reach, nothing between, and for
  // hand devices no machine's hazard outline on the line.
  std::optional<double> atHand(Point station, const PlacedDevice& device) const;
  // The same for a reach of another length.
  std::optional<double> atHand(Point station, const PlacedDevice& device, double reach_mm) const;
  // Whether the device faces away from the station.
  static bool isBehind(Point station, const PlacedDevice& device);
  // Straight distance to the actuator (a bar or cord: its nearest point), whatever stands between.
  static double straightDistance(Point station, const PlacedDevice& device);

  // No wall, and no solid of unknown height or higher than `eye_height_mm`, on the line; the device's own
  // machine does not hide it. Of a bar or cord its nearest point, its middle or an end is seen.
  bool inSight(Point eye, const PlacedDevice& device, double eye_height_mm = 1500) const;

  // Whether nothing stands on the straight line between two people: no wall, and no solid however low.
  bool clearBetween(Point a, Point b) const;

  // The room the point is in (boundary included), the first in file order; none outside all rooms.
  std::optional<std::size_t> roomAt(Point p) const;
  // The open passage the point stands in, as an index into layout.doors.
  std::optional<std::size_t> passageAt(Point p) const;

 private:
  struct Inside;
  std::unique_ptr<Inside> inside_;
};

}  // namespace stopwalk::floor
