#include "core/planning/suppositions.h"

#include <algorithm>
#include <unordered_set>

namespace stopwalk::planning {
namespace {

using Ids = std::unordered_set<std::string>;

Ids setOf(const std::vector<std::string>& ids) {
  return {ids.begin(), ids.end()};
}

std::string idOn(const layout::Machine& machine, const layout::Device& device) {
  return machine.id + "/" + device.id;
}

void takeOut(layout::Layout& layout, const Ids& gone) {
  if (gone.empty()) return;
  for (layout::Machine& machine : layout.machines)
    std::erase_if(machine.devices, [&](const layout::Device& d) { return gone.contains(idOn(machine, d)); });
  std::erase_if(layout.devices, [&](const layout::Device& d) { return gone.contains(d.id); });
  std::erase_if(layout.phones, [&](const layout::Phone& p) { return gone.contains(p.id); });
  std::erase_if(layout.tape_checks,
                [&](const layout::TapeCheck& t) { return gone.contains(t.from) || gone.contains(t.to); });
}

}  // namespace

layout::Layout supposed(const layout::Layout& layout, const Suppositions& suppositions) {
  layout::Layout changed = layout;
  takeOut(changed, setOf(suppositions.out_of_order));
  const Ids shut = setOf(suppositions.shut);
  for (layout::Door& door : changed.doors)
    if (shut.contains(door.id)) door.locked = layout::Locked::Always;
  changed.fixtures.insert(changed.fixtures.end(), suppositions.in_the_way.begin(),
                          suppositions.in_the_way.end());
  return changed;
}

Suppositions knownOnly(const Suppositions& suppositions, const layout::Layout& layout) {
  Ids devices, doors;
  for (const layout::Machine& machine : layout.machines)
    for (const layout::Device& device : machine.devices) devices.insert(idOn(machine, device));
  for (const layout::Device& device : layout.devices) devices.insert(device.id);
  for (const layout::Phone& phone : layout.phones) devices.insert(phone.id);
  for (const layout::Door& door : layout.doors) doors.insert(door.id);
  Suppositions known = suppositions;
  std::erase_if(known.out_of_order, [&](const std::string& id) { return !devices.contains(id); });
  std::erase_if(known.shut, [&](const std::string& id) { return !doors.contains(id); });
  return known;
}

}  // namespace stopwalk::planning
