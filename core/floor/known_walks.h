#pragma once

#include <cstddef>
#include <deque>
#include <memory>
#include <optional>
#include <span>
#include <unordered_map>
#include <vector>

#include "core/floor/door_bounds.h"
#include "core/floor/floor_pieces.h"
#include "core/floor/known_ends.h"
#include "core/floor/walk_change.h"
#include "core/floor/walk_finder.h"
#include "core/floor/walks.h"
#include "core/geometry/numbers_hash.h"

namespace stopwalk::floor {

// The nearest of some places, as it was found, and what must stay for it to stay.
struct Known {
  Nearest nearest;
  double at_most = 0;  // it was asked for no longer ways
  // Bounds asked for that are the length itself but for rounding, and whether the way was found then.
  std::vector<std::pair<double, bool>> close_calls = {};

  // No way longer than this was of any matter.
  double reach() const;
  // What it tells of the same question with another bound; none: too little.
  std::optional<Nearest> answer(double other_at_most) const;
};

// How one set of places was asked about: one point at a time, or many at once.
enum class Asked { Singly, Together };

// The answers of one floor, by question, over the changes that it goes through.
class KnownWalks {
 public:
  // Positions of a drag: at which it was asked first, and last.
  struct Asking {
    std::size_t first = 0, last = 0;
  };
  struct Remembered {
    Known known;
    std::size_t as_of = 0;  // the change after which it held
    Asking asking = {};
  };
  // Answers about the same places.
  struct Group {
    std::vector<Place> places;
    std::unordered_map<Point, Remembered, geometry::NumbersHash> of;
    std::vector<DoorBounds::End> ends;  // of the places: each point and each line, when first needed
    Group* former = nullptr;
    Asking asking = {};
  };

  explicit KnownWalks(double clearance) : clearance_(clearance) {}

  // Takes over what `former` knows, and forgets what nobody asked for since it did so itself. Nothing is
  // known if more than solids differ, or if anything is parted or joined. A finder of the whole floor as it
  // was, if there was one, leaves the steps that it found.
  void follow(KnownWalks&& former, WalkFinder* finder, const Plan& before, const Plan& now);
  // The same floor after a change; whether anything is still known.
  const WalkChange& lastChange() const { return *changes_.back(); }
  bool change(PlanChange change, WalkFinder* finder, const Plan& before, const Plan& now);
  // The next position of a drag, between changes. Of what was asked first in this drag, such as of the places
  // that move along, what was not asked lately is forgotten from time to time; whether it was now.
  bool nextPosition();

  Group& about(std::span<const Place> places, Asked asked);
  // The answer that was found on this floor, or that still holds, if there is one.
  std::optional<Nearest> kept(Group& group, Point from, double at_most);
  // Of several answers from one point the one that tells most is remembered.
  void note(Group& group, Point from, Known known);

  // Whether the steps of places may be known from before a change.
  bool follows() const { return follows_; }
  const DoorBounds& doors() const { return *doors_; }
  const std::shared_ptr<const DoorBounds>& sharedDoors() const { return doors_; }
  const KnownEnds& ends() const { return ends_; }
  // About how long the walk may be.
  Guess likely(const Group& group, Point from) const;
  // The walk from there, or from near there, if that was asked and there is one; null: else.
  const Walk* nearBy(std::span<const Place> places, Asked asked, Point from) const;

  std::optional<bool> keptOnFloor(Point p) const;
  void noteOnFloor(Point p, bool on) { on_floor_[p] = {on, now()}; }

  std::size_t countKept() const { return kept_; }

 private:
  struct OnFloor {
    bool on = false;
    std::size_t as_of = 0;
  };
  using Groups = std::unordered_map<std::vector<double>, Group, geometry::NumbersHash>;
  std::size_t now() const { return first_ + changes_.size(); }
  bool holds(Group& group, Point from, Remembered& remembered);
  void forget();
  static const Walk* nearBy(const Group& group, Point from);

  Groups groups_, former_groups_;
  std::unordered_map<Point, OnFloor, geometry::NumbersHash> on_floor_;
  // The last changes, the first of them being number first_.
  std::deque<std::unique_ptr<WalkChange>> changes_;
  std::size_t first_ = 0;
  bool follows_ = false;
  std::shared_ptr<const DoorBounds> doors_;
  KnownEnds ends_;
  double clearance_;
  std::size_t position_ = 0, changed_at_ = 0;
  std::size_t kept_ = 0;
};

}  // namespace stopwalk::floor
