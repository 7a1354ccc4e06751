#pragma once

#include <cstdint>
#include <memory>
#include <optional>
#include <span>
#include <vector>

#include "core/audit/context.h"

// What a context has inside.
namespace stopwalk::audit {

class WaysByDay;

// The phones at the hours that are not audited.
struct Context::OtherHours {
  floor::Plan plan;
  floor::Surroundings around;
  std::shared_ptr<floor::Walks> walks;
  std::vector<PlacedEntry> phones;
  Ways ways;
  std::unique_ptr<WaysByDay> by_day = nullptr;  // where these are the hours after the day that is audited
};

struct Context::Openings {
  std::vector<DoorOpening> all;
  geometry::BoxTree boxes;
};

// A move while it is made.
struct Context::Moving {
  Changed changed;
  std::vector<geometry::Box> footprints;  // before and after, of solids
  std::vector<std::size_t> machines;
  bool phones_changed = false;
};

// Which ways to a phone after hours are those of the day. The floor after hours is that of the day without
// the doors that are shut then: a way that keeps clear of those is still the shortest, where no end takes a
// step (which side of a thing one steps to hangs on what is joined) and nobody is shut off from another phone
// as near (to which narrower ways would be sought).
class WaysByDay {
 public:
  WaysByDay(const Context& day, const Context::OtherHours& after);

  // After a move, with `all` if a phone is used from elsewhere now: what is known of stations may be
  // otherwise.
  void phonesMoved(const Context& day, const Context::OtherHours& after, std::span<const geometry::Box> moved,
                   bool all);
  // The day's way is another one now.
  void forget(std::size_t station) { known_[station] = false; }
  // Whether the way after hours is that of the day, which is known.
  bool isSame(std::size_t station, const Context& day, const Context::OtherHours& after);

 private:
  struct Phone {
    bool same_place = false;  // as by day
    bool plain = false;       // and nobody takes a step there
    std::vector<std::int32_t> parts;
  };
  void look(std::size_t phone, const Context& day, const Context::OtherHours& after);
  void findParts(const Context::OtherHours& after);
  bool keepsFromDoors(std::span<const Point> path) const;

  bool comparable_ = true;
  std::vector<geometry::Polygon> shut_;  // the ways through doors that are shut after hours
  std::vector<Phone> phones_;
  bool parts_hold_ = false;
  std::vector<char> known_;  // of stations: that it is, and need not be looked at again
};

std::vector<PlacedEntry> placedPhones(const layout::Layout& layout, const floor::Surroundings& around);
PlacedEntry placedDevice(const DeviceEntry& device, const floor::Surroundings& around);

}  // namespace stopwalk::audit
