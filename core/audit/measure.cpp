#include "core/audit/measure.h"

#include "core/audit/places.h"
#include "core/audit/profile.h"
#include "core/audit/stop_relation.h"

namespace stopwalk::audit {
namespace {

std::string named(const End& end) {
  return std::holds_alternative<std::string>(end) ? "`" + std::get<std::string>(end) + "`"
                                                  : "the point given";
}

std::string noSuchPlace(const End& end, const Places& places) {
  const std::string what = "there is no place " + named(end);
  if (places.ids().empty()) return what + ": the layout has no stations, devices or phones; give a point x,y";
  return what + nearestName(std::get<std::string>(end), places.ids());
}

// The place, or none for an id that does not exist.
std::optional<NamedPlace> resolved(const Places& places, const End& end) {
  if (const auto* p = std::get_if<geometry::Point>(&end))
    return NamedPlace{{}, floor::Place{{*p}, {}}, {}, {}};
  const NamedPlace* found = places.find(std::get<std::string>(end));
  return found ? std::optional<NamedPlace>(*found) : std::nullopt;
}

bool isOff(const floor::Walks& walks, const NamedPlace& place) {
  return place.place.lines.empty() && place.place.points.size() == 1 &&
         !walks.onFloor(place.place.points.front());
}

}  // namespace

Measured measure(const layout::Layout& layout, const layout::DeviceKinds& kinds, const End& from,
                 const End& to, double clearance_mm, floor::Hours hours) {
  const floor::Plan plan = floor::buildPlan(layout, hours);
  const floor::Surroundings surroundings(layout, plan);
  const floor::Walks walks(plan, clearance_mm);
  const Places places(layout, devicesOf(layout, kinds), surroundings);

  Measured m;
  const auto start = resolved(places, from), goal = resolved(places, to);
  for (const auto& [end, place] : {std::pair(&from, &start), std::pair(&to, &goal)}) {
    if (!*place) return {{}, {}, noSuchPlace(*end, places)};
    if ((*place)->place.empty())
      m.why_not =
          named(*end) + " cannot be walked to" + ((*place)->reason.empty() ? "" : ": " + (*place)->reason);
  }
  if (!m.why_not.empty()) return m;  // unreachable, the walk's first state
  m.walk = walks.between(start->place, goal->place);
  if (m.walk.found()) return m;
  const End* off = isOff(walks, *start) ? &from : isOff(walks, *goal) ? &to : nullptr;
  m.why_not =
      off ? named(*off) + " is not on the floor" : "there is no way at any clearance that a body passes";
  return m;
}

}  // namespace stopwalk::audit
