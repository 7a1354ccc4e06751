#pragma once

#include <array>
#include <cstddef>
#include <functional>
#include <limits>
#include <memory>
#include <optional>
#include <span>
#include <string>
#include <vector>

#include "core/audit/profile.h"
#include "core/audit/report.h"
#include "core/audit/stop_relation.h"
#include "core/floor/surroundings.h"
#include "core/floor/walks.h"
#include "core/geometry/box_tree.h"
#include "core/layout/device_kind.h"
#include "core/layout/layout.h"

namespace stopwalk::audit {

using floor::Place;
using geometry::Point;

// A surprised driver's reaction: Green, Transportation Human Factors 2(3), 2000 (abstract). Driver data, not
// shop users.
inline constexpr double kReaction_s = 1.5;
// 3.5 ft/s: MUTCD 2009 sec. 4E.06.
inline constexpr double kSpeed_m_s = 1.067;

// Seconds from the first sign of trouble to the device, and with a run-down to rest.
inline double secondsFor(double walk_m, std::optional<double> run_down_s = std::nullopt) {
  return kReaction_s + walk_m / kSpeed_m_s + run_down_s.value_or(0);
}

struct StationEntry {
  std::string id;  // `lathe-1/operator`
  std::size_t machine = 0;
  const layout::Station* station = nullptr;
  Point at;                         // in the plan
  std::optional<std::size_t> room;  // it stands in; off the floor, the machine's
  bool on_floor = false;
};

struct PlacedEntry {
  floor::PlacedDevice placed;
  floor::Standing standing;
};

// How a station gets to a stop or phone. `index` is into the devices or phones; none unless the status is a
// way.
struct Way {
  Status status = Status::None;
  std::optional<std::size_t> index;
  double walk_m = 0;
  double clear_width_m = 0;  // of a walk
  std::vector<Point> path;   // mm
  bool found() const { return index.has_value(); }
};

// The walks of the last audit at each of the hours: what is asked again and cannot have changed, they know.
class LastWalks {
 public:
  // Those of this plan, which are the last from now on.
  std::shared_ptr<const floor::Walks> next(floor::Hours hours, const floor::Plan& plan);
  // Of both hours, as far as they were asked.
  floor::Walks::Count count() const;

 private:
  struct Pair {
    std::shared_ptr<const floor::Walks> former, last;
  };
  std::array<Pair, 2> of_hours_;
};

// Everything the rules ask about one layout at the hours audited, computed once. It keeps references to the
// layout and the kinds, and holds the only walks there are: no rule measures a distance by itself. One thread
// at a time.
class Context {
 public:
  Context(const layout::Layout& layout, const layout::DeviceKinds& kinds, const Profile& profile,
          floor::Hours hours, std::span<const inspection::FailedDevice> failed = {},
          LastWalks* last = nullptr);
  Context(const Context&) = delete;
  Context& operator=(const Context&) = delete;

  const layout::Layout& layout;
  const Profile& profile;
  const floor::Hours hours;

  const floor::Plan plan;
  const floor::Surroundings surroundings;
  const std::shared_ptr<const floor::Walks> walks_held;
  const floor::Walks& walks;
  const std::vector<std::optional<std::size_t>> machine_rooms;   // the room the origin is in
  const std::vector<DeviceEntry> devices;                        // in the order of the file's text
  const std::vector<std::optional<inspection::Date>> failed_on;  // of devices: their last check, if it failed
  const StopRelation relation;
  const std::vector<PlacedEntry> placed;  // of devices
  const std::vector<PlacedEntry> phones;
  const std::vector<StationEntry> stations;  // in the order of the file
  const std::vector<Way> stop_ways;          // of stations: the nearest stop
  const std::vector<Way> phone_ways;         // of stations: the nearest phone

  const layout::Machine& machine(const StationEntry& s) const { return layout.machines[s.machine]; }

  // Whether the station may use the device at all: one that is held is nobody else's.
  bool mayUse(std::size_t station, std::size_t device) const;
  // Straight distance in metres if the device is at hand.
  std::optional<double> atHand_m(std::size_t station, std::size_t device) const;
  // The same for reaches of another length.
  std::optional<double> atHand_m(std::size_t station, std::size_t device, double hand_m, double foot_m) const;
  double straight_m(std::size_t station, std::size_t device) const;

  // The nearest of the devices to a station: of those at hand the nearest in a straight line, else the least
  // walk. Equals go to the first. Ways longer than `at_most_m` need not be found.
  Way nearestOf(std::size_t station, std::span<const std::size_t> devices,
                double at_most_m = std::numeric_limits<double>::infinity()) const;
  // The same for many stations at once.
  std::vector<Way> nearestOf(std::span<const std::size_t> stations,
                             std::span<const std::size_t> devices) const;

  // The phones' ways at the other hours.
  std::vector<Way> phoneWaysAt(floor::Hours other) const;

  // Stations in the order of nearness to `from`: `next(station)` returns up to which straight distance, in
  // mm, it is still worth looking.
  void stationsNearestFirst(Point from, const std::function<double(std::size_t)>& next) const;
  // Indices whose straight distance may be at most `radius_mm`: a few more may come; ascending.
  std::vector<std::size_t> stationsNear(Point from, double radius_mm) const;
  std::vector<std::size_t> devicesNear(Point from, double radius_mm) const;

  // A finding with its subject and room.
  Finding aboutStation(std::size_t station) const;
  Finding aboutMachine(std::size_t machine) const;
  Finding aboutDevice(std::size_t device) const;
  Finding aboutRoom(std::size_t room) const;
  Finding about(std::string subject, std::optional<std::size_t> room) const;

  // Names as people use them.
  std::string name(const layout::Machine& machine) const;
  std::string name(const StationEntry& station) const;  // "Belt sander, operator"
  std::string stationName(std::size_t station) const { return name(stations[station]); }
  std::string deviceName(std::size_t device) const;  // "the foot bar of Engine lathe 1"
  std::string deviceName(std::size_t device, std::size_t seen_from_machine) const;  // "its foot bar"
  std::string phoneName(std::size_t phone) const;
  std::string roomName(std::size_t room) const;
  std::string roomId(std::optional<std::size_t> room) const {
    return room ? layout.rooms[*room].id : std::string();
  }
  std::string length(double length_m) const;
  std::string length(double length_m, double limit_m) const;  // told apart from the limit

 private:
  std::optional<double> atHandWithin_m(std::size_t station, std::size_t device,
                                       std::optional<double> reach_mm) const;
  Way atHandOf(std::size_t station, std::span<const std::size_t> devices) const;
  std::vector<Way> stopWays() const;

  LastWalks* last_;
  geometry::BoxTree station_tree_;
  geometry::BoxTree device_tree_;
};

}  // namespace stopwalk::audit
