#include "core/audit/context.h"
#include "core/audit/wording.h"

namespace stopwalk::audit {
namespace {

std::vector<Finding> find(const Context& c, const Setting& s, std::size_t d) {
  std::vector<Finding> findings;
  const DeviceEntry& device = c.devices[d];
  if (!device.kind->height_band || device.kind->actuated_by != layout::ActuatedBy::Hand ||
      !device.device->height)
    return findings;
  const double height_m = *device.device->height / 1000;
  if (!over(height_m, s.limit())) return findings;
  Finding f = c.aboutDevice(d);
  f.measured = height_m;
  f.limit = s.limit();
  f.unit = "m";
  f.text = withCapital(c.deviceName(d)) + ": its actuator is " + c.length(height_m, s.limit()) +
           " above the floor, out of reach for some who sit or are short; accessible reach ends at " +
           c.limit(s.limit(), height_m) + ".";
  findings.push_back(std::move(f));
  return findings;
}

}  // namespace

const Rule& actuatorHeightAccess() {
  static const Rule rule{
      .id = "actuator-height-access",
      .severity = Severity::Note,
      .limits = {{"limit", "m", 1.22}},
      .basis = {BasisKind::Published, "ADA 2010 Standards, 308.2.1"},
      .finds = "a hand device above the accessible reach",
      .meaning = "The unobstructed forward reach from a wheelchair. For the same devices as actuator-height.",
      .mend = "Hang the device lower, or add a second one within reach.",
      .find = {{Each::Device, find}}};
  return rule;
}

}  // namespace stopwalk::audit
