#include "app/edits/things.h"

namespace stopwalk::edits {
namespace {

using layout::Layout;

template <class T>
std::optional<std::size_t> indexOf(const std::vector<T>& list, std::string_view id) {
  for (std::size_t i = 0; i < list.size(); ++i)
    if (list[i].id == id) return i;
  return std::nullopt;
}

std::optional<Thing> findOnMachine(const Layout& layout, std::string_view machine, std::string_view id) {
  const auto index = indexOf(layout.machines, machine);
  if (!index) return std::nullopt;
  const layout::Machine& m = layout.machines[*index];
  if (const auto part = indexOf(m.stations, id)) return Thing{ThingKind::Station, *index, *part};
  if (const auto part = indexOf(m.devices, id)) return Thing{ThingKind::MachineDevice, *index, *part};
  return std::nullopt;
}

// Calls `found` with each list of things that stand on their own, until it returns true.
template <class F>
void eachList(const Layout& layout, F found) {
  found(ThingKind::Room, layout.rooms) || found(ThingKind::Door, layout.doors) ||
      found(ThingKind::Fixture, layout.fixtures) || found(ThingKind::Machine, layout.machines) ||
      found(ThingKind::WallDevice, layout.devices) || found(ThingKind::Phone, layout.phones) ||
      found(ThingKind::Note, layout.notes) || found(ThingKind::TapeCheck, layout.tape_checks);
}

}  // namespace

std::optional<Thing> findThing(const Layout& layout, std::string_view id) {
  if (id == kUnderlayId) return layout.underlay ? std::optional(Thing{ThingKind::Underlay}) : std::nullopt;
  if (const auto slash = id.find('/'); slash != std::string_view::npos)
    return findOnMachine(layout, id.substr(0, slash), id.substr(slash + 1));
  std::optional<Thing> thing;
  eachList(layout, [&](ThingKind kind, const auto& list) {
    if (const auto index = indexOf(list, id)) thing = Thing{kind, *index};
    return thing.has_value();
  });
  return thing;
}

std::string idOf(const Layout& layout, const Thing& thing) {
  if (thing.kind == ThingKind::Underlay) return kUnderlayId;
  if (thing.kind == ThingKind::Station || thing.kind == ThingKind::MachineDevice) {
    const layout::Machine& m = layout.machines[thing.index];
    return m.id + "/" +
           (thing.kind == ThingKind::Station ? m.stations[thing.part].id : m.devices[thing.part].id);
  }
  std::string id;
  eachList(layout, [&](ThingKind kind, const auto& list) {
    if (kind == thing.kind) id = list[thing.index].id;
    return kind == thing.kind;
  });
  return id;
}

std::string nameOf(const Layout& layout, const Thing& thing) {
  const auto orId = [&](const std::string& name) { return name.empty() ? idOf(layout, thing) : name; };
  switch (thing.kind) {
    case ThingKind::Room:
      return orId(layout.rooms[thing.index].name);
    case ThingKind::Fixture:
      return orId(layout.fixtures[thing.index].name);
    case ThingKind::Machine:
      return orId(layout.machines[thing.index].name);
    case ThingKind::Phone:
      return orId(layout.phones[thing.index].name);
    default:
      return idOf(layout, thing);
  }
}

std::vector<Thing> allThings(const Layout& layout) {
  std::vector<Thing> things;
  if (layout.underlay) things.push_back({ThingKind::Underlay});
  eachList(layout, [&](ThingKind kind, const auto& list) {
    for (std::size_t i = 0; i < list.size(); ++i) {
      things.push_back({kind, i});
      if (kind != ThingKind::Machine) continue;
      const layout::Machine& m = layout.machines[i];
      for (std::size_t s = 0; s < m.stations.size(); ++s) things.push_back({ThingKind::Station, i, s});
      for (std::size_t d = 0; d < m.devices.size(); ++d) things.push_back({ThingKind::MachineDevice, i, d});
    }
    return false;
  });
  return things;
}

std::optional<geometry::Point> placeOf(const Layout& layout, const Thing& thing) {
  const auto onMachine = [&](geometry::Point at) {
    const layout::Machine& m = layout.machines[thing.index];
    return layout::toPlan(m.at, m.turn, at);
  };
  switch (thing.kind) {
    case ThingKind::Underlay:
      return layout.underlay->at;
    case ThingKind::Door:
      return layout.doors[thing.index].at;
    case ThingKind::Fixture:
      return layout.fixtures[thing.index].at;
    case ThingKind::Machine:
      return layout.machines[thing.index].at;
    case ThingKind::Station:
      return onMachine(layout.machines[thing.index].stations[thing.part].at);
    case ThingKind::MachineDevice:
      return onMachine(layout.machines[thing.index].devices[thing.part].at);
    case ThingKind::WallDevice:
      return layout.devices[thing.index].at;
    case ThingKind::Phone:
      return layout.phones[thing.index].at;
    case ThingKind::Note:
      return layout.notes[thing.index].at;
    case ThingKind::Room:
    case ThingKind::TapeCheck:
      return std::nullopt;
  }
  return std::nullopt;
}

}  // namespace stopwalk::edits
