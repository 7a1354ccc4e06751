#include "app/edits/remove_things.h"

#include <QCoreApplication>
#include <QStringList>

#include "app/edits/new_ids.h"
#include "app/edits/references.h"
#include "app/edits/step_names.h"
#include "app/edits/visit_thing.h"

namespace stopwalk::edits {
namespace {

using layout::Layout;

bool isGone(const Ids& gone, const std::string& id) {
  const auto slash = id.find('/');
  return gone.contains(id) || (slash != std::string::npos && gone.contains(id.substr(0, slash)));
}

// A trigger without `held_at` is held at the first station. Where that one goes, it is held nowhere rather
// than at the next.
void letGoOfFirst(layout::Machine& machine, const Ids& gone, const layout::DeviceKinds& kinds) {
  if (machine.stations.empty() || !gone.contains(machine.id + "/" + machine.stations.front().id)) return;
  for (layout::Device& device : machine.devices) {
    const layout::DeviceKind* kind = kinds.find(device.kind);
    const bool may_be_held = kind == nullptr || kind->held;
    if (may_be_held && !device.held_at) device.held_at.emplace();
  }
}

void takeAway(Layout& layout, const Ids& gone, const layout::DeviceKinds& kinds) {
  const auto from = [&](auto& list, const std::string& scope = "") {
    std::erase_if(list, [&](const auto& thing) { return gone.contains(scope + thing.id); });
  };
  if (gone.contains(kUnderlayId)) layout.underlay.reset();
  from(layout.rooms);
  from(layout.doors);
  from(layout.fixtures);
  from(layout.machines);
  from(layout.devices);
  from(layout.phones);
  from(layout.notes);
  from(layout.tape_checks);
  for (layout::Machine& machine : layout.machines) {
    letGoOfFirst(machine, gone, kinds);
    from(machine.stations, machine.id + "/");
    from(machine.devices, machine.id + "/");
  }
}

QString nameOfStep(QStringList parts) {
  const QString last = parts.takeLast();
  if (parts.empty()) return QCoreApplication::translate("edits", "Remove %1").arg(last);
  return QCoreApplication::translate("edits", "Remove %1 and %2").arg(parts.join(", "), last);
}

}  // namespace

Edit removeThings(const Layout& layout, const std::vector<std::string>& ids,
                  const layout::DeviceKinds& kinds) {
  const auto things = chosenThings(layout, ids);
  if (things.empty()) return noStep(layout);
  Ids gone;
  for (const Thing& thing : things) gone.insert(idOf(layout, thing));
  Layout after = layout;
  takeAway(after, gone, kinds);
  const auto doors = after.doors.size(), checks = after.tape_checks.size();
  followIds(after, [&](const std::string& id) {
    return isGone(gone, id) ? std::nullopt : std::optional<std::string>(id);
  });
  QStringList parts{called(layout, things)};
  if (const auto n = static_cast<int>(doors - after.doors.size()); n > 0)
    parts << (n == 1 ? QCoreApplication::translate("edits", "1 door")
                     : QCoreApplication::translate("edits", "%n doors", nullptr, n));
  if (const auto n = static_cast<int>(checks - after.tape_checks.size()); n > 0)
    parts << (n == 1 ? QCoreApplication::translate("edits", "1 tape check")
                     : QCoreApplication::translate("edits", "%n tape checks", nullptr, n));
  return step(layout, nameOfStep(parts), std::move(after));
}

}  // namespace stopwalk::edits
