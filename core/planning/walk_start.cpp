#include "core/planning/walk_start.h"

#include "core/audit/profile.h"

namespace stopwalk::planning {

FoundStart findStart(const std::string& id, const layout::Layout& layout, const layout::DeviceKinds& kinds,
                     const floor::Plan& plan) {
  const floor::Surroundings around(layout, plan);
  const audit::Places places(layout, audit::devicesOf(layout, kinds), around);
  const audit::NamedPlace* place = places.find(id);
  if (!place) return {{}, "there is no such place" + audit::nearestName(id, places.ids())};
  if (place->place.empty())
    return {{}, "nobody can stand there" + (place->reason.empty() ? "" : ": " + place->reason)};
  return {WalkStart{id, place->place}, {}};
}

}  // namespace stopwalk::planning
