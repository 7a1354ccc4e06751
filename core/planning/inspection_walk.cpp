#include "core/planning/inspection_walk.h"

#include <algorithm>
#include <cmath>

#include "core/planning/joined_groups.h"
#include "core/planning/tour.h"

namespace stopwalk::planning {
namespace {

struct Waypoint {
  std::string id;
  std::optional<geometry::Point> at;  // none: nobody can stand there
  std::string why_not;
};

double lengthOf(const geometry::Segment& line) {
  return geometry::distance(line.a, line.b);
}

Waypoint waypointOf(const std::string& id, const floor::Place& place, const std::string& blocked) {
  return {id, waypointAt(place), blocked.empty() ? "nobody can stand there" : blocked};
}

// Every walk between two waypoints.
class AllLegs {
 public:
  AllLegs(const std::vector<Waypoint>& waypoints, const floor::Walks& walks)
      : count_(waypoints.size()), walks_(count_ * count_) {
    for (std::size_t a = 0; a < count_; ++a)
      for (std::size_t b = 0; b < a; ++b)
        if (waypoints[a].at && waypoints[b].at)
          at(a, b) = at(b, a) = walks.between(*waypoints[a].at, *waypoints[b].at);
  }
  const floor::Walk& operator()(std::size_t a, std::size_t b) const { return walks_[a * count_ + b]; }
  bool joined(std::size_t a, std::size_t b) const { return a == b || (*this)(a, b).found(); }

 private:
  floor::Walk& at(std::size_t a, std::size_t b) { return walks_[a * count_ + b]; }

  std::size_t count_;
  std::vector<floor::Walk> walks_;
};

Tour tourOf(const std::vector<std::size_t>& group, const AllLegs& all, std::optional<std::size_t> start,
            bool closed) {
  Legs legs(group.size());
  for (std::size_t a = 0; a < group.size(); ++a)
    for (std::size_t b = 0; b < a; ++b) legs.set(a, b, all(group[a], group[b]).length_mm);
  std::optional<std::size_t> first;
  if (start) first = static_cast<std::size_t>(std::ranges::find(group, *start) - group.begin());
  return shortestTour(legs, first, closed);
}

bool isNarrow(const floor::Walk& walk) {
  return walk.status == floor::WalkStatus::Narrow;
}

InspectionWalk walkAlong(const Tour& tour, const std::vector<std::size_t>& group,
                         const std::vector<Waypoint>& waypoints, const AllLegs& legs, bool closed) {
  InspectionWalk walk;
  walk.length_mm = tour.length_mm;
  walk.bound_mm = tour.bound_mm;
  walk.shortest = tour.shortest;
  std::optional<std::size_t> before;
  for (const std::size_t place : tour.order) {
    const std::size_t w = group[place];
    InspectionWalk::Stop stop{waypoints[w].id};
    if (before) stop.leg_mm = legs(*before, w).length_mm, stop.narrow = isNarrow(legs(*before, w));
    walk.stops.push_back(std::move(stop));
    before = w;
  }
  if (closed && tour.order.size() > 1) {
    const floor::Walk& back = legs(*before, group[tour.order.front()]);
    walk.back_mm = back.length_mm;
    walk.narrow_back = isNarrow(back);
  }
  return walk;
}

}  // namespace

std::optional<geometry::Point> waypointAt(const floor::Place& place) {
  if (!place.points.empty()) return place.points.front();
  if (place.lines.empty()) return std::nullopt;
  const geometry::Segment& longest = *std::ranges::max_element(place.lines, {}, lengthOf);
  return 0.5 * (longest.a + longest.b);
}

std::optional<double> gapPercent(const InspectionWalk& walk) {
  if (walk.shortest || walk.length_mm <= 0) return 0;
  if (walk.bound_mm <= 0) return std::nullopt;
  return std::max(0.0, std::ceil((1 - walk.bound_mm / walk.length_mm) * 1000) / 10);
}

InspectionWalk inspectionWalk(std::span<const InspectedDevice> devices, const floor::Walks& walks,
                              const std::optional<WalkStart>& start, bool closed) {
  std::vector<Waypoint> waypoints;
  std::optional<std::size_t> first;
  for (const InspectedDevice& d : devices) {
    if (start && d.id == start->id) first = waypoints.size();
    waypoints.push_back(waypointOf(d.id, d.place, d.blocked));
  }
  if (start && !first) {
    first = waypoints.size();
    waypoints.push_back(waypointOf(start->id, start->place, {}));
  }
  const AllLegs legs(waypoints, walks);
  const auto joined = [&](std::size_t a, std::size_t b) {
    return waypoints[a].at && waypoints[b].at && legs.joined(a, b);
  };
  const std::vector<std::size_t> group =
      first ? joinedTo(*first, waypoints.size(), joined) : largestGroup(waypoints.size(), joined);
  InspectionWalk walk = walkAlong(tourOf(group, legs, group.empty() ? std::nullopt : first, closed), group,
                                  waypoints, legs, closed);
  for (std::size_t w = 0; w < waypoints.size(); ++w)
    if (std::ranges::find(group, w) == group.end())
      walk.left_out.push_back(
          {waypoints[w].id, !waypoints[w].at
                                ? waypoints[w].why_not
                                : "there is no way from " + std::string(start ? start->id : "the others")});
  return walk;
}

}  // namespace stopwalk::planning
