#pragma once

#include <cstddef>
#include <memory>
#include <optional>
#include <span>
#include <unordered_map>
#include <vector>

#include "core/floor/door_bounds.h"
#include "core/floor/known_ends.h"
#include "core/floor/plan_change.h"
#include "core/floor/walk_finder.h"
#include "core/floor/walks.h"
#include "core/geometry/numbers_hash.h"

namespace stopwalk::floor {

// The nearest of some places, as it was found, and what must stay for it to stay.
struct Known {
  Nearest nearest;
  double at_most = 0;          // it was asked for no longer ways
  bool sought_narrow = false;  // ways at less than the clearance were looked for, too
  // Bounds asked for that are the length itself but for rounding, and whether the way was found then.
  std::vector<std::pair<double, bool>> close_calls = {};

  // No way longer than this was of any matter.
  double reach() const;
  // What it tells of the same question with another bound; none: too little.
  std::optional<Nearest> answer(double other_at_most) const;
};

// How one set of places was asked about: one point at a time, or many at once.
enum class Asked { Singly, Together };

// The answers of one floor, by question. Says of those of another floor which hold on this one as well:
// docs/walks.md tells why.
class KnownWalks {
 public:
  // Answers about the same places.
  struct Group {
    std::vector<Place> places;
    std::unordered_map<Point, Known, geometry::NumbersHash> of;
    const Group* former = nullptr;
    std::vector<DoorBounds::End> ends;  // of the places: each point and each line, when first needed
  };

  // What of `former` may be kept is judged by the difference of the plans. It must outlive this one's
  // questions. Its finder of the whole floor, if there was one, leaves the steps that it found.
  void follow(KnownWalks& former, WalkFinder* former_finder, const Plan& before, const Plan& now,
              double clearance);
  void forgetFormer();

  Group& about(std::span<const Place> places, Asked asked);
  // The answer that was found on this floor already, or is to be taken over, if there is one.
  std::optional<Nearest> kept(Group& group, Point from, double at_most);
  // Of several answers from one point the one that tells most is remembered.
  void note(Group& group, Point from, Known known);

  // Whether there is a former floor, of whose walks some may have been kept.
  bool follows() const { return former_ != nullptr; }
  // Of the floor followed.
  const DoorBounds& doors() const { return *doors_; }
  const KnownEnds& ends() const { return ends_; }
  // About how long the walk may be.
  double likely(const Group& group, Point from) const;

  std::optional<bool> keptOnFloor(Point p) const;
  void noteOnFloor(Point p, bool on) { on_floor_[p] = on; }

  std::size_t countKept() const { return kept_; }

 private:
  bool holds(const Known& known, Group& group, Point from) const;
  // Whether every way by one of what is gone is longer.
  bool isLongerBy(std::size_t gone, double reach, const DoorBounds::End& from,
                  const DoorBounds::End& to) const;

  std::unordered_map<std::vector<double>, Group, geometry::NumbersHash> groups_;
  std::unordered_map<Point, bool, geometry::NumbersHash> on_floor_;
  const KnownWalks* former_ = nullptr;
  bool narrowWaysStay();

  PlanChange change_;
  std::unique_ptr<PartsRound> parts_;
  std::optional<bool> narrow_ways_stay_;
  std::shared_ptr<const DoorBounds> doors_;
  KnownEnds ends_;
  std::vector<DoorBounds::End> gone_ends_;  // grown by the clearance
  double clearance_ = 0;
  std::size_t kept_ = 0;
};

}  // namespace stopwalk::floor
