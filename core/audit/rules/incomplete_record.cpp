#include <algorithm>
#include <limits>

#include "core/audit/context.h"
#include "core/audit/wording.h"

namespace stopwalk::audit {
namespace {

void add(std::vector<Finding>& findings, Finding f, std::string text) {
  f.text = withCapital(std::move(text));
  findings.push_back(std::move(f));
}

void addOfDevice(std::vector<Finding>& findings, const Context& c, std::size_t d) {
  const DeviceEntry& device = c.devices[d];
  if (device.kind->height_band && !device.device->height)
    add(findings, c.aboutDevice(d),
        c.deviceName(d) + ": its height is not recorded, so it cannot be judged; measure it.");
  if (device.kind->counts_as_stop && c.relation.stopsNothing(d))
    add(findings, c.aboutDevice(d),
        c.deviceName(d) + ": it is recorded as stopping nothing; record what it stops.");
}

void addOfMachine(std::vector<Finding>& findings, const Context& c, std::size_t m) {
  const layout::Machine& machine = c.layout.machines[m];
  std::vector<std::string> unknown;
  for (const std::size_t d : c.relation.candidates(m))
    if (!c.relation.runDown(d, m)) unknown.push_back(c.deviceName(d, m));
  if (!unknown.empty())
    add(findings, c.aboutMachine(m),
        c.name(machine) + ": the run-down after a stop by " + listed(unknown) +
            " is not recorded, so times leave it out; measure it.");
  if (machine.stations.empty())
    add(findings, c.aboutMachine(m),
        c.name(machine) +
            ": it has no station, so no walk is measured for it; draw where its operator stands.");
}

std::vector<Finding> find(const Context& c, const Setting&) {
  std::vector<Finding> findings;
  for (std::size_t d = 0; d < c.devices.size(); ++d) addOfDevice(findings, c, d);
  for (std::size_t m = 0; m < c.layout.machines.size(); ++m) addOfMachine(findings, c, m);
  return findings;
}

}  // namespace

const Rule& incompleteRecord() {
  static const Rule rule{
      .id = "incomplete-record",
      .severity = Severity::Note,
      .limits = {},
      .basis = {BasisKind::CommonPractice, ""},
      .finds = "an unknown height or run-down, a device that stops nothing, a machine without a station",
      .meaning =
          "Unknown is not zero. Heights count for devices with a height band; run-downs for the stops of a "
          "machine, one "
          "finding a machine.",
      .mend = "Measure it at the machine and enter it, or say what the device stops.",
      .find = find};
  return rule;
}

}  // namespace stopwalk::audit
