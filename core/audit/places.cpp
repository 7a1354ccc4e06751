#include "core/audit/places.h"

#include <utility>

namespace stopwalk::audit {
namespace {

NamedPlace placeOf(std::string id, floor::Standing standing) {
  return {std::move(id), std::move(standing.place), standing.room, std::move(standing.reason)};
}

}  // namespace

Places::Places(const layout::Layout& layout, std::span<const DeviceEntry> devices,
               const floor::Surroundings& surroundings) {
  for (const layout::Machine& m : layout.machines)
    for (const layout::Station& s : m.stations) {
      const geometry::Point at = layout::toPlan(m.at, m.turn, s.at);
      add({m.id + "/" + s.id, floor::Place{{at}, {}}, surroundings.roomAt(at), {}});
    }
  for (const DeviceEntry& d : devices)
    add(placeOf(d.id, surroundings.standing(surroundings.placed(*d.device, *d.kind, d.machine))));
  for (const layout::Phone& p : layout.phones)
    add(placeOf(p.id, surroundings.standing(surroundings.placed(p))));
}

void Places::add(NamedPlace place) {
  of_id_.emplace(place.id, places_.size());
  places_.push_back(std::move(place));
}

const NamedPlace* Places::find(const std::string& id) const {
  const auto found = of_id_.find(id);
  return found == of_id_.end() ? nullptr : &places_[found->second];
}

std::vector<std::string> Places::ids() const {
  std::vector<std::string> ids;
  for (const NamedPlace& p : places_) ids.push_back(p.id);
  return ids;
}

}  // namespace stopwalk::audit
