#include "core/audit/context.h"
#include "core/audit/wording.h"
#include "core/layout/which.h"

namespace stopwalk::audit {
namespace {

void add(std::vector<Finding>& findings, Finding f, std::string which, std::string text) {
  f.which = std::move(which);
  f.text = withCapital(std::move(text));
  findings.push_back(std::move(f));
}

std::vector<Finding> findDevice(const Context& c, const Setting&, std::size_t d) {
  std::vector<Finding> findings;
  const DeviceEntry& device = c.devices[d];
  if (device.kind->height_band && !device.device->height)
    add(findings, c.aboutDevice(d), layout::whichWord("height"),
        c.deviceName(d) + ": its height is not recorded, so it cannot be judged; measure it.");
  if (device.kind->counts_as_stop && c.relation.stopsNothing(d))
    add(findings, c.aboutDevice(d), layout::whichWord("stops"),
        c.deviceName(d) + ": it is recorded as stopping nothing; record what it stops.");
  return findings;
}

std::vector<Finding> findMachine(const Context& c, const Setting&, std::size_t m) {
  std::vector<Finding> findings;
  const layout::Machine& machine = c.layout.machines[m];
  std::vector<std::string> unknown;
  for (const std::size_t d : c.candidates(m))
    if (!c.relation.runDown(d, m)) unknown.push_back(c.deviceName(d, m));
  if (!unknown.empty())
    add(findings, c.aboutMachine(m), layout::whichWord("run-down"),
        c.name(machine) + ": the run-down after a stop by " + listed(unknown) +
            " is not recorded, so times leave it out; measure it.");
  if (machine.stations.empty())
    add(findings, c.aboutMachine(m), layout::whichWord("station"),
        c.name(machine) +
            ": it has no station, so no walk is measured for it; draw where its operator stands.");
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
      .find = {{Each::Device, findDevice}, {Each::Machine, findMachine}},
      .several = true};
  return rule;
}

}  // namespace stopwalk::audit
