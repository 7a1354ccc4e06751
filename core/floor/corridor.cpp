#include "core/floor/corridor.h"

#include <algorithm>

namespace stopwalk::floor {

namespace {

using geometry::Box;

// Walls of a room next door may stand on this one's, or end there.
constexpr double kWallsAround_mm = 1500;

bool isOnTheWay(const Span& span, const DoorBounds& doors, const Box& box) {
  if (distance(span.from.box, box) + distance(span.to.box, box) > span.length) return false;
  const DoorBounds::End by = doors.place(box);
  return doors.between(span.from, by) + doors.between(span.to, by) <= span.length;
}

}  // namespace

std::vector<DoorBounds::End> endsOf(std::span<const Place> places, const DoorBounds& doors) {
  std::vector<DoorBounds::End> ends;
  for (const Place& place : places) {
    for (const Point p : place.points) ends.push_back(doors.end(p));
    for (const Segment& s : place.lines) ends.push_back(doors.end(s));
  }
  return ends;
}

Plan corridorOf(const Plan& plan, const DoorBounds& doors, std::span<const Span> spans, double reach) {
  Plan part;
  Box area;
  std::vector<Box> rooms;
  for (std::size_t r = 0; r < plan.rooms.size(); ++r) {
    const auto passes = [&](const Span& span) { return doors.mayPass(r, span.from, span.to, span.length); };
    if (plan.rooms[r].empty() || std::ranges::none_of(spans, passes)) continue;
    part.rooms.push_back(plan.rooms[r]);
    rooms.push_back(geometry::boxOf(plan.rooms[r]).grown(kWallsAround_mm));
    area.add(rooms.back());
  }
  const auto isNear = [&](const Box& box) {
    return overlap(area, box) && std::ranges::any_of(rooms, [&](const Box& r) { return overlap(r, box); });
  };
  for (const Passage& p : plan.passages)
    if (isNear(geometry::boxOf(outlineOf(p)))) part.passages.push_back(p);
  for (const Segment& w : plan.walls)
    if (isNear(geometry::boxOf(w))) part.walls.push_back(w);
  for (const Solid& s : plan.solids) {
    const Box box = geometry::boxOf(s.outline).grown(reach);
    if (isNear(box) &&
        std::ranges::any_of(spans, [&](const Span& span) { return isOnTheWay(span, doors, box); }))
      part.solids.push_back(s);
  }
  return part;
}

}  // namespace stopwalk::floor
