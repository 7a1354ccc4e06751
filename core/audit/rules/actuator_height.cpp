#include "core/audit/context.h"
#include "core/audit/wording.h"

namespace stopwalk::audit {
namespace {

std::vector<Finding> find(const Context& c, const Setting& s, std::size_t d) {
  const double least = s.limits[0], most = s.limits[1];
  std::vector<Finding> findings;
  const DeviceEntry& device = c.devices[d];
  if (!device.kind->height_band || device.kind->actuated_by != layout::ActuatedBy::Hand ||
      !device.device->height)
    return findings;
  const double height_m = *device.device->height / 1000;
  if (!under(height_m, least) && !over(height_m, most)) return findings;
  Finding f = c.aboutDevice(d);
  f.measured = height_m;
  f.limit = height_m < least ? least : most;
  f.unit = "m";
  f.text = withCapital(c.deviceName(d)) + ": its actuator is " + c.length(height_m, *f.limit) +
           " above the floor; the rule asks for " + c.limit(least, height_m) + " to " +
           c.limit(most, height_m) + ".";
  findings.push_back(std::move(f));
  return findings;
}

}  // namespace

const Rule& actuatorHeight() {
  static const Rule rule{
      .id = "actuator-height",
      .severity = Severity::Fail,
      .limits = {{"min", "m", 0.6}, {"max", "m", 1.7}},
      .basis = {BasisKind::Published, "EN ISO 13850:2015, 4.3.2, and EN 60204-1, 10.1.2, as quoted"},
      .finds = "a hand device outside the height band",
      .meaning =
          "For kinds of device with a height band; foot bars have none. A device without a recorded height "
          "is a matter of "
          "incomplete-record.",
      .mend = "Hang the device so that the hand meets it between the two heights.",
      .find = {{Each::Device, find}}};
  return rule;
}

}  // namespace stopwalk::audit
