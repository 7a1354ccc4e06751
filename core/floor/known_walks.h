#pragma once

#include <cstddef>
#include <memory>
#include <optional>
#include <span>
#include <unordered_map>
#include <vector>

#include "core/floor/plan_change.h"
#include "core/floor/walks.h"

namespace stopwalk::floor {

// The nearest of some places, as it was found, and what must stay for it to stay.
struct Known {
  Nearest nearest;
  double at_most = 0;  // it was asked for no longer ways
  // Found at the clearance asked for, without an equal that goes elsewhere, and no way at less was looked
  // for.
  bool firm = false;

  // No way longer than this was of any matter.
  double reach() const;
  // Whether it answers the question with another bound too.
  bool answers(double other_at_most) const;
};

// How one set of places was asked about: one point at a time, or many at once.
enum class Asked { Singly, Together };

// The answers of one floor, by question. Says of those of another floor which hold on this one as well:
// docs/walks.md tells why.
class KnownWalks {
 public:
  struct PlacesHash {
    std::size_t operator()(const std::vector<double>& numbers) const;
  };
  struct PointHash {
    std::size_t operator()(Point p) const { return PlacesHash()({p.x, p.y}); }
  };
  // Answers about the same places.
  struct Group {
    std::vector<Place> places;
    std::unordered_map<Point, Known, PointHash> of;
    const Group* former = nullptr;
  };

  // What of `former` may be kept is judged by the difference of the plans. It must outlive this one's
  // questions.
  void follow(const KnownWalks& former, const Plan& before, const Plan& now, double clearance);
  void forgetFormer();

  Group& about(std::span<const Place> places, Asked asked);
  // The answer to take over, if there is one.
  const Known* kept(Group& group, Point from, double at_most);
  const Known& note(Group& group, Point from, Known known);

  std::optional<bool> keptOnFloor(Point p) const;
  void noteOnFloor(Point p, bool on) { on_floor_[p] = on; }

  std::size_t countKept() const { return kept_; }

 private:
  bool holds(const Known& known, const Group& group, Point from) const;

  std::unordered_map<std::vector<double>, Group, PlacesHash> groups_;
  std::unordered_map<Point, bool, PointHash> on_floor_;
  const KnownWalks* former_ = nullptr;
  PlanChange change_;
  double clearance_ = 0;
  std::size_t kept_ = 0;
};

}  // namespace stopwalk::floor
