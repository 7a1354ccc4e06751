#include "app/poster/content.h"
#include "core/audit/walk_status.h"
#include "core/geometry/segment.h"

namespace stopwalk::poster {
namespace {

using geometry::Point;
using geometry::Segment;

constexpr double kLooked_mm = 100;  // along a way: no room is so narrow

}  // namespace

std::vector<std::string> roomsWalkedInto(const audit::Context& context, const std::vector<Point>& path,
                                         std::size_t from_room) {
  std::vector<std::string> names;
  std::size_t in = from_room;
  for (std::size_t i = 1; i < path.size(); ++i) {
    const Segment step{path[i - 1], path[i]};
    const int pieces = 1 + static_cast<int>(geometry::distance(step.a, step.b) / kLooked_mm);
    for (int k = 1; k <= pieces; ++k) {
      const auto room = context.surroundings.roomAt(geometry::at(step, static_cast<double>(k) / pieces));
      if (!room || *room == in) continue;
      in = *room;
      names.push_back(context.roomName(in));
    }
  }
  return names;
}

PhoneWay phoneWayFrom(const Viewer& viewer, const audit::Context& context) {
  PhoneWay way;
  std::vector<floor::Place> places;
  for (const audit::PlacedEntry& phone : context.phones) places.push_back(phone.standing.place);
  if (places.empty()) return way;

  const floor::Nearest nearest = context.walks.nearest(viewer.stands(), places);
  way.status = audit::statusOf(nearest.walk.status);
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
