#include "core/floor/door_bounds.h"

#include <algorithm>
#include <limits>
#include <map>
#include <queue>

#include "core/geometry/polygon.h"

namespace stopwalk::floor {

namespace {

constexpr double kInfinite = std::numeric_limits<double>::infinity();
// A door opens into every room that it comes so near to; one room too many makes a bound lower, never wrong.
constexpr double kAtRoom_mm = 2;
// Of more, the table would cost more than it spares.
constexpr std::size_t kMostDoors = 1000;

}  // namespace

DoorBounds::DoorBounds(const Plan& plan) {
  std::vector<geometry::IndexedPolygon> rooms(plan.rooms.begin(), plan.rooms.end());
  rooms_ = geometry::IndexedPolygons(std::move(rooms));
  std::map<std::size_t, Door> doors;
  for (const Passage& p : plan.passages)
    for (const Segment& s : {p.first, p.second}) {
      doors[p.door].openings.push_back(s);
      doors[p.door].box.add(geometry::boxOf(s));
    }
  if (doors.size() > kMostDoors) return;
  doors_of_room_.resize(rooms_.size());
  for (auto& [index, door] : doors) {
    for (const Segment& s : door.openings)
      rooms_.boxes().any(geometry::boxOf(s).grown(kAtRoom_mm), [&](std::size_t r) {
        if (rooms_[r].isWithin(kAtRoom_mm, s) && std::ranges::find(door.rooms, r) == door.rooms.end())
          door.rooms.push_back(r);
        return false;
      });
    for (const std::size_t r : door.rooms) doors_of_room_[r].push_back(doors_.size());
    doors_.push_back(std::move(door));
  }
  join();
}

double DoorBounds::distance(const Door& a, const Door& b) {
  double least = kInfinite;
  for (const Segment& s : a.openings)
    for (const Segment& t : b.openings) least = std::min(least, geometry::distance(s, t));
  return least;
}

void DoorBounds::join() {
  const std::size_t n = doors_.size();
  ways_.assign(n * n, kInfinite);
  struct Way {
    std::size_t to;
    double length;
  };
  std::vector<std::vector<Way>> ways(n);
  for (std::size_t i = 0; i < n; ++i)
    for (std::size_t k = 0; k < n; ++k) {
      const bool share =
          std::ranges::find_first_of(doors_[i].rooms, doors_[k].rooms) != doors_[i].rooms.end();
      const double d = distance(doors_[i], doors_[k]);
      // Side by side, one goes from one opening into the other.
      if (i != k && (share || d < kAtRoom_mm)) ways[i].push_back({k, d});
    }
  for (std::size_t from = 0; from < n; ++from) {
    double* const row = ways_.data() + from * n;
    using Next = std::pair<double, std::size_t>;
    std::priority_queue<Next, std::vector<Next>, std::greater<>> next;
    next.emplace(row[from] = 0, from);
    while (!next.empty()) {
      const auto [length, at] = next.top();
      next.pop();
      if (length > row[at]) continue;
      for (const Way& way : ways[at])
        if (length + way.length < row[way.to]) next.emplace(row[way.to] = length + way.length, way.to);
    }
  }
}

DoorBounds::End DoorBounds::ended(End end) const {
  if (!end.in_room) return end;
  const std::size_t n = doors_.size();
  end.to_door.assign(n, kInfinite);
  for (const std::size_t own : doors_of_room_[end.room]) {
    const double away = geometry::distance(doors_[own].box, end.box);
    for (std::size_t d = 0; d < n; ++d) end.to_door[d] = std::min(end.to_door[d], away + ways_[own * n + d]);
  }
  return end;
}

DoorBounds::End DoorBounds::end(Point p) const {
  return end(Segment{p, p});
}

DoorBounds::End DoorBounds::end(const Segment& line) const {
  End end = this->end(geometry::boxOf(line));
  end.line = line;
  return end;
}

DoorBounds::End DoorBounds::end(const geometry::Box& box) const {
  return ended(place(box));
}

DoorBounds::End DoorBounds::place(const geometry::Box& box) const {
  const auto room = rooms_.firstHolding(box.low);
  // What is on a wall may be on both its sides.
  const bool whole = room && !doors_of_room_.empty() &&
                     !rooms_[*room].anyEdge(box.grown(kAtRoom_mm), [](std::size_t) { return true; });
  return {box, whole, room.value_or(0), {}, {}};
}

double DoorBounds::between(const End& a, const End& b) const {
  const double straight = geometry::distance(a.box, b.box);
  if (!a.in_room || !b.in_room || a.room == b.room) return straight;
  double least = kInfinite;
  for (const std::size_t d : doors_of_room_[b.room]) {
    least = std::min(least, a.to_door[d] + geometry::distance(doors_[d].box, b.box));
  }
  return std::max(straight, least);
}

bool DoorBounds::mayPass(std::size_t room, const End& a, const End& b, double length) const {
  if (!a.in_room || !b.in_room || a.room == room || b.room == room) return true;
  return std::ranges::any_of(doors_of_room_[room],
                             [&](std::size_t d) { return a.to_door[d] + b.to_door[d] <= length; });
}

}  // namespace stopwalk::floor
