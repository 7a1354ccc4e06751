#pragma once

#include <array>
#include <cstddef>
#include <functional>
#include <limits>
#include <map>
#include <memory>
#include <optional>
#include <span>
#include <string>
#include <unordered_map>
#include <utility>
#include <vector>

#include "core/audit/exits.h"
#include "core/audit/places.h"
#include "core/audit/profile.h"
#include "core/audit/report.h"
#include "core/audit/stop_relation.h"
#include "core/audit/trace.h"
#include "core/audit/wanted.h"
#include "core/floor/surroundings.h"
#include "core/floor/walks.h"
#include "core/geometry/box_tree.h"
#include "core/layout/device_kind.h"
#include "core/layout/layout.h"
#include "core/layout/names.h"

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

// Whoever sets a machine up does it when nobody works at it.
inline bool takeTurns(const StationEntry& a, const StationEntry& b) {
  return a.machine == b.machine &&
         (a.station->role == layout::Role::Setter) != (b.station->role == layout::Role::Setter);
}

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
  bool stepped = false;      // aside, at an end of the walk
  std::vector<Point> path;   // mm
  bool found() const { return index.has_value(); }
  bool operator==(const Way&) const = default;
};

// The ways of all stations, and what each hangs on.
struct Ways {
  std::vector<Way> of;
  std::vector<Trace> traces;
};

// What people pass at a door: the sides of a passage, or the opening to the outside.
struct DoorOpening {
  std::size_t door = 0;
  std::vector<geometry::Segment> edges;
};

// Which stations have a way out of the building that is so wide all along.
struct WaysOut {
  bool any_wide = false;                  // whether any exit is that wide
  std::vector<std::vector<Point>> gates;  // before each exit: gatesBefore()
  std::vector<char> leads;                // of stations
};

// A machine or fixture put elsewhere.
struct Move {
  bool machine = true;
  std::size_t index = 0;  // into the layout's machines or fixtures
  Point at;
  double turn = 0;
};

// What became of a context by a move: the places where anything changed, and the stations with another way.
struct Changed {
  std::vector<geometry::Box> places;
  std::vector<std::size_t> stations;
};

// The walks of the last audit at each of the hours: what is asked again and cannot have changed, they know.
class LastWalks {
 public:
  // Those of this plan, which are the last from now on.
  std::shared_ptr<floor::Walks> next(floor::Hours hours, const floor::Plan& plan);
  // Of both hours, as far as they were asked.
  floor::Walks::Count count() const;

 private:
  std::array<std::shared_ptr<floor::Walks>, 2> of_hours_;
};

geometry::Box boxOf(const floor::PlacedDevice& device);

// Everything the rules ask about one layout at the hours audited, computed once. It keeps references to the
// layout and the kinds, and holds the only walks there are: no rule measures a distance by itself. One thread
// at a time. What is asked is noted in the trace, if there is one, so that it is known what an answer hangs
// on.
class Context {
 public:
  Context(const layout::Layout& layout, const layout::DeviceKinds& kinds, const Profile& profile,
          floor::Hours hours, std::span<const inspection::FailedDevice> failed = {},
          LastWalks* last = nullptr, const Wanted& wanted = {});
  ~Context();
  Context(const Context&) = delete;
  Context& operator=(const Context&) = delete;

  const layout::Layout& layout;
  const Profile& profile;
  const floor::Hours hours;

  floor::Plan plan;
  floor::Surroundings surroundings;
  const std::shared_ptr<floor::Walks> walks_held;
  const floor::Walks& walks;
  const std::vector<std::optional<std::size_t>> machine_rooms;          // the room the origin is in
  const std::vector<DeviceEntry> devices;                               // in the order of the file's text
  const std::vector<std::optional<inspection::FailedDevice>> failures;  // of devices: those still open
  const StopRelation relation;
  std::vector<PlacedEntry> placed;  // of devices
  std::vector<PlacedEntry> phones;
  std::vector<StationEntry> stations;  // in the order of the file
  Ways stops;                          // the nearest stop
  Ways phones_reached;                 // the nearest phone
  const std::vector<Way>& stop_ways;
  const std::vector<Way>& phone_ways;

  // The layout, changed already, has some things elsewhere. None: too much is otherwise, and the context of
  // no further use. What is reported then is what a new context would.
  std::optional<Changed> move(std::span<const Move> moves);

  // How many ways after hours the last move knew to be those of the day.
  std::size_t countByDay() const { return by_day_; }

  // From here on what is asked is noted there.
  void traceIn(Trace* trace) const { trace_ = trace; }

  const layout::Machine& machine(const StationEntry& s) const { return layout.machines[s.machine]; }
  // The first of the machine's stations, and the one after the last.
  std::pair<std::size_t, std::size_t> stationsOf(std::size_t machine) const;

  // The devices that count as a stop and stop the machine, or every machine of the room: StopRelation.
  const std::vector<std::size_t>& candidates(std::size_t machine) const;
  const std::vector<std::size_t>& cutOffs(std::size_t room) const;

  // Whether the station may use the device at all: one that is held is nobody else's.
  bool mayUse(std::size_t station, std::size_t device) const;
  // Straight distance in metres if the device is at hand.
  std::optional<double> atHand_m(std::size_t station, std::size_t device) const;
  // The same for reaches of another length.
  std::optional<double> atHand_m(std::size_t station, std::size_t device, double hand_m, double foot_m) const;
  double straight_m(std::size_t station, std::size_t device) const;
  bool inSight(std::size_t station, std::size_t device) const;
  bool clearBetween(Point a, Point b) const;

  // The nearest of the devices to a station: of those at hand the nearest in a straight line, else the least
  // walk. Equals go to the first. Ways longer than `at_most_m` need not be found.
  Way nearestOf(std::size_t station, std::span<const std::size_t> devices,
                double at_most_m = std::numeric_limits<double>::infinity()) const;
  // The same for many stations at once; `traces` for each, or none.
  std::vector<Way> nearestOf(std::span<const std::size_t> stations, std::span<const std::size_t> devices,
                             std::span<Trace> traces = {}) const;

  // The nearest phones at either hours.
  const std::vector<Way>& phoneWaysAt(floor::Hours hours) const;
  // The nearest of the devices that stop the room that the station is in.
  const std::vector<Way>& cutOffWays() const;

  const std::vector<Exit>& exits() const;
  const WaysOut& waysOut(double width_mm) const;
  // The openings of doors that may be within the distance, in the order of the passages and exits.
  std::vector<const DoorOpening*> openingsNear(Point p, double distance_mm) const;

  // Stations, devices and phones by their ids (none: there is none) with their standing places in opening
  // hours, and a walk between two of them then.
  std::optional<NamedPlace> placeOf(const std::string& id) const;
  floor::Walk walkByDay(const Place& from, const Place& to) const;

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

  // Names as people use them, with an id where they would not tell two things apart.
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
  std::string length(double length_m, double limit_m) const;                  // told apart from the limit
  std::string limit(double limit_m) const;                                    // exact
  std::string limit(double limit_m, std::optional<double> measured_m) const;  // told apart from that

 private:
  friend class WaysByDay;
  enum class PlaceKind { Station, Device, Phone };
  struct OtherHours;
  struct Openings;

  std::optional<double> atHandWithin_m(std::size_t station, std::size_t device,
                                       std::optional<double> reach_mm) const;
  Way atHandOf(std::size_t station, std::span<const std::size_t> devices) const;
  void note(const geometry::Box& box) const {
    if (trace_) trace_->add(box);
  }
  void noteAll() const {
    if (trace_) trace_->all = true;
  }

  void seekStops(std::span<const std::size_t> who);
  void seekPhones(const floor::Walks& on, const std::vector<PlacedEntry>& phones,
                  std::span<const std::size_t> who, Ways& ways) const;
  // The nearest phones at the other hours; of how many the way is known to be that of the day.
  std::size_t seekPhonesThen(OtherHours& other, std::span<const std::size_t> who) const;
  void seekCutOffs(std::span<const std::size_t> who, Ways& ways) const;
  void seekWaysOut(std::span<const std::size_t> who, double width_mm, WaysOut& out) const;
  OtherHours& otherHours() const;
  floor::Standing standingByDay(PlaceKind kind, std::size_t index) const;

  struct Moving;
  bool moveThings(std::span<const Move> moves, Moving& moving);
  void moveDevices(Moving& moving);
  void moveStations(Moving& moving);
  void moveFaults(const Moving& moving);
  void moveWaysOut(Moving& moving);
  bool moveGates(const std::vector<geometry::Box>& places, double width_mm, WaysOut& out) const;
  std::vector<std::size_t> moveLeads(const std::vector<geometry::Box>& places, double width_mm,
                                     WaysOut& out) const;
  std::vector<std::size_t> stationsNear(const std::vector<geometry::Box>& places, double distance_mm) const;
  void seekAgain(Moving& moving);
  void seekAfterHours(Moving& moving, std::span<const std::size_t> otherwise_by_day);
  std::vector<std::size_t> touched(const Ways& ways, const Moving& moving, bool all) const;
  static std::vector<std::size_t> otherwise(Ways& ways, const std::vector<std::size_t>& who,
                                            const std::function<void()>& seek);
  std::vector<char> areOnWhatMoved(std::span<const std::size_t> who) const;

  const layout::NamesApart room_names_, machine_names_, phone_names_;
  LastWalks* last_;
  geometry::BoxTree station_tree_;
  geometry::BoxTree device_tree_;
  std::vector<std::size_t> first_station_;  // of machines, and one more
  std::vector<std::size_t> solid_of_machine_, solid_of_fixture_;
  std::vector<std::size_t> on_what_moved_;  // stations of machines of the last move
  std::size_t by_day_ = 0;
  mutable Trace* trace_ = nullptr;
  // Made when first asked for.
  mutable std::vector<std::optional<std::vector<std::size_t>>> candidates_, cut_offs_;
  mutable std::unique_ptr<OtherHours> other_hours_;
  mutable std::optional<Ways> cut_off_ways_;
  mutable std::optional<std::vector<Exit>> exits_;
  mutable std::unique_ptr<Openings> openings_;
  mutable std::map<double, WaysOut> ways_out_;
  mutable std::unordered_map<std::string, std::pair<PlaceKind, std::size_t>> place_of_id_;
};

}  // namespace stopwalk::audit
