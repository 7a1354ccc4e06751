#include <algorithm>
#include <utility>

#include "app/poster/content.h"
#include "core/geometry/segment.h"

namespace stopwalk::poster {
namespace {

using geometry::Point;
using geometry::Segment;

std::string roomNamed(const audit::Context& context, const std::string& id) {
  for (std::size_t r = 0; r < context.layout.rooms.size(); ++r)
    if (context.layout.rooms[r].id == id) return context.roomName(r);
  return {};  // outside
}

audit::Status statusOf(floor::WalkStatus status) {
  switch (status) {
    case floor::WalkStatus::Walk:
      return audit::Status::Walk;
    case floor::WalkStatus::Narrow:
      return audit::Status::Narrow;
    case floor::WalkStatus::Unmeasured:
      return audit::Status::Unmeasured;
    case floor::WalkStatus::Unreachable:
      break;
  }
  return audit::Status::Unreachable;
}

}  // namespace

std::vector<std::string> roomsWalkedInto(const audit::Context& context, const std::vector<Point>& path,
                                         std::size_t from_room) {
  std::vector<std::pair<double, std::size_t>> crossed;  // how far along, which door
  double walked = 0;
  for (std::size_t i = 1; i < path.size(); ++i) {
    const Segment step{path[i - 1], path[i]};
    for (const floor::Passage& p : context.plan.passages)
      if (geometry::crossProperly(step, p.first))
        crossed.emplace_back(walked + geometry::distance(p.first, step.a), p.door);
    walked += geometry::distance(step.a, step.b);
  }
  std::ranges::sort(crossed);
  std::vector<std::string> names;
  std::string in = context.layout.rooms[from_room].id;
  for (const auto& [at, door] : crossed) {
    const layout::Door& d = context.layout.doors[door];
    in = d.first == in ? d.second : d.first;
    names.push_back(roomNamed(context, in));
  }
  return names;
}

PhoneWay phoneWayFrom(const Viewer& viewer, const audit::Context& context) {
  PhoneWay way;
  std::vector<floor::Place> places;
  for (const audit::PlacedEntry& phone : context.phones) places.push_back(phone.standing.place);
  if (places.empty()) return way;

  const floor::Nearest nearest = context.walks.nearest(viewer.stands(), places);
  way.status = statusOf(nearest.walk.status);
  if (!nearest.index) return way;
  way.phone = context.phoneName(*nearest.index);
  way.length_mm = nearest.walk.length_mm;
  way.path = nearest.walk.path;
  const auto here = context.surroundings.roomAt(viewer.stands());
  const auto there = context.phones[*nearest.index].standing.room;
  if (there && there != here) way.in_room = context.roomName(*there);
  if (here) way.through = roomsWalkedInto(context, way.path, *here);
  return way;
}

}  // namespace stopwalk::poster
