#include "core/planning/round_plan.h"

#include <algorithm>
#include <set>

#include "core/inspection/on_record.h"

namespace stopwalk::planning {
namespace {

std::set<std::string> idsIn(const layout::Layout& layout) {
  std::set<std::string> ids;
  for (const layout::Device& d : layout.devices) ids.insert(d.id);
  for (const layout::Machine& m : layout.machines)
    for (const layout::Device& d : m.devices) ids.insert(m.id + "/" + d.id);
  return ids;
}

}  // namespace

std::string wordOf(const RoundScope& scope) {
  if (scope.room.empty()) return scope.due ? "due" : "all";
  return scope.due ? "due in " + scope.room : scope.room;
}

inspection::AsOf asOf(std::span<const InspectedDevice> devices, const inspection::Now& now) {
  return {now, {devices.begin(), devices.end()}};
}

inspection::AsOf asOf(const layout::Layout& layout, const layout::DeviceKinds& kinds,
                      const inspection::Now& now) {
  return {now, devicesNow(layout, kinds)};
}

std::vector<inspection::FailedDevice> notInLayout(std::span<const inspection::FailedDevice> failed,
                                                  const layout::Layout& layout) {
  const std::set<std::string> ids = idsIn(layout);
  std::vector<inspection::FailedDevice> gone;
  for (const inspection::FailedDevice& f : failed)
    if (!f.removed && !ids.contains(f.device)) gone.push_back(f);
  return gone;
}

std::vector<inspection::FailedDevice> withoutRemoved(std::vector<inspection::FailedDevice> failed,
                                                     const layout::Layout& layout) {
  const std::set<std::string> ids = idsIn(layout);
  std::erase_if(failed, [&](const auto& f) { return f.removed && !ids.contains(f.device); });
  return failed;
}

std::vector<const inspection::Check*> withoutRemoved(std::vector<const inspection::Check*> actions,
                                                     const std::set<std::string>& removed,
                                                     const layout::Layout& layout) {
  const std::set<std::string> ids = idsIn(layout);
  std::erase_if(actions, [&](const inspection::Check* c) {
    return removed.contains(c->device) && !ids.contains(c->device);
  });
  return actions;
}

inspection::Bundle bundleOf(const inspection::Records& records, const inspection::Schedule& schedule,
                            inspection::Date from, inspection::Date to, const inspection::AsOf& as_of,
                            const layout::Layout& layout) {
  inspection::Bundle bundle = inspection::bundleOf(records, schedule, from, to, as_of);
  bundle.failed = withoutRemoved(std::move(bundle.failed), layout);
  bundle.open_actions.clear();
  const inspection::OnRecord on_record(records, schedule, as_of);
  for (const auto* c : withoutRemoved(on_record.openActions(), on_record.removed(), layout))
    bundle.open_actions.push_back(*c);
  return bundle;
}

std::vector<std::string> dueAmong(std::span<const InspectedDevice> devices,
                                  const inspection::Records& records, const inspection::Schedule& schedule,
                                  const inspection::Now& day,
                                  std::span<const inspection::FailedDevice> failed) {
  const auto states = inspection::statesOf(records, schedule, asOf(devices, day));
  std::set<std::string> due;
  for (const auto& d : inspection::dueOn(idsOf(devices), states, schedule, day.day)) due.insert(d.device);
  for (const inspection::FailedDevice& f : failed) due.insert(f.device);
  std::vector<std::string> ids = idsOf(devices);
  std::erase_if(ids, [&](const std::string& id) { return !due.contains(id); });
  return ids;
}

std::vector<std::string> devicesIn(const RoundScope& scope, std::span<const InspectedDevice> devices,
                                   const inspection::Records& records, const inspection::Schedule& schedule,
                                   const inspection::Now& day,
                                   std::span<const inspection::FailedDevice> failed) {
  std::vector<InspectedDevice> in;
  for (const InspectedDevice& d : devices)
    if (scope.room.empty() || d.room == scope.room) in.push_back(d);
  return scope.due ? dueAmong(in, records, schedule, day, failed) : idsOf(in);
}

std::vector<std::string> idsOf(std::span<const InspectedDevice> devices) {
  std::vector<std::string> ids;
  for (const InspectedDevice& d : devices) ids.push_back(d.id);
  return ids;
}

const InspectedDevice* findDevice(std::span<const InspectedDevice> devices, const std::string& id) {
  const auto at = std::ranges::find(devices, id, &InspectedDevice::id);
  return at == devices.end() ? nullptr : &*at;
}

inspection::LayoutThen layoutThen(const layout::Layout& layout, std::string sha256) {
  const auto& revision = layout.revision;
  return {revision ? std::optional(revision->number) : std::nullopt, std::move(sha256)};
}

std::optional<InspectedDevice> lastKnown(const std::string& device, const inspection::Records& records) {
  const auto& checks = records.checks;
  const auto last = std::ranges::find(checks.rbegin(), checks.rend(), device, &inspection::Check::device);
  if (last == checks.rend()) return std::nullopt;
  InspectedDevice known;
  known.id = device;
  known.machines = last->machines;
  known.room = last->room;
  known.is_stop = !last->no_stop;
  return known;
}

inspection::Check beginCheck(const inspection::Round& round, const InspectedDevice& device,
                             inspection::Moment at, inspection::LayoutThen layout) {
  inspection::Check check;
  check.round = round.number;
  check.device = device.id;
  check.machines = device.machines;
  check.no_stop = !device.is_stop;
  check.room = device.room;
  check.at = at;
  check.inspector = round.by;
  check.layout = std::move(layout);
  return check;
}

}  // namespace stopwalk::planning
