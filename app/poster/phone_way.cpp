#include "app/poster/content.h"
#include "core/audit/walk_status.h"
#include "core/geometry/segment.h"

namespace stopwalk::poster {
namespace {

using geometry::Point;
using geometry::Segment;

constexpr double kLooked_mm = 100;  // along a way: no room is so narrow
constexpr double kMmPerM = 1000;

void tell(PhoneWay& way, const audit::Context& context, double length_mm, const std::vector<Point>& path,
          std::optional<std::size_t> from_room) {
  way.length_mm = length_mm;
  way.path = path;
  if (from_room) way.through = roomsWalkedInto(context, path, *from_room);
}

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
  if (nearest.index)
    tell(way, context, nearest.walk.length_mm, nearest.walk.path,
         context.surroundings.roomAt(viewer.stands()));
  return way;
}

PhoneWay phoneWayOf(std::size_t station, const audit::Context& context) {
  PhoneWay way;
  const audit::Way& audited = context.phone_ways[station];
  way.status = audited.status;
  if (audited.found())
    tell(way, context, audited.walk_m * kMmPerM, audited.path, context.stations[station].room);
  return way;
}

}  // namespace stopwalk::poster
