#include "app/edits/only_things.h"

#include <algorithm>

namespace stopwalk::edits {
namespace {

template <class T>
std::vector<T> only(const std::vector<T>& list, const Ids& ids, const std::string& scope = "") {
  std::vector<T> kept;
  std::ranges::copy_if(list, std::back_inserter(kept),
                       [&](const T& thing) { return ids.contains(scope + thing.id); });
  return kept;
}

}  // namespace

layout::Layout onlyThings(const layout::Layout& layout, const Ids& ids) {
  layout::Layout some;
  some.unit = layout.unit;
  some.rooms = only(layout.rooms, ids);
  some.doors = only(layout.doors, ids);
  some.fixtures = only(layout.fixtures, ids);
  some.devices = only(layout.devices, ids);
  some.phones = only(layout.phones, ids);
  some.notes = only(layout.notes, ids);
  some.tape_checks = only(layout.tape_checks, ids);
  for (const layout::Machine& machine : layout.machines) {
    layout::Machine kept = machine;
    if (!ids.contains(machine.id)) {
      kept.stations = only(machine.stations, ids, machine.id + "/");
      kept.devices = only(machine.devices, ids, machine.id + "/");
      if (kept.stations.empty() && kept.devices.empty()) continue;
    }
    some.machines.push_back(std::move(kept));
  }
  return some;
}

}  // namespace stopwalk::edits
