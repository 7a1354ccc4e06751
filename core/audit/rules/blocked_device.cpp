#include "core/audit/context.h"
#include "core/audit/measured_line.h"
#include "core/audit/wording.h"

namespace stopwalk::audit {
namespace {

bool someoneHasAtHand(const Context& c, std::size_t device) {
  const floor::PlacedDevice& p = c.placed[device].placed;
  const double around = floor::kHandReach_mm + p.length.value_or(0) / 2;
  for (const std::size_t s : c.stationsNear(p.at, around))
    if (c.stations[s].on_floor && c.atHand_m(s, device)) return true;
  return false;
}

// Where somebody would have to stand.
MeasuredLine placeBefore(const floor::PlacedDevice& device) {
  const double up_to = device.foot ? floor::kFootStanding_mm : floor::kHandReach_mm;
  return placeLine(geometry::Segment{device.at, device.at + up_to * geometry::direction(device.faces)});
}

Finding blocked(Finding f, const PlacedEntry& entry, const std::string& name) {
  const std::string& reason = entry.standing.reason;
  f.text = withCapital(name) + ": nobody can walk to it" + (reason.empty() ? "" : ": " + reason) +
           "; the rule asks for a free place to stand and nothing between.";
  f.lines.push_back(placeBefore(entry.placed));
  return f;
}

std::vector<Finding> findDevice(const Context& c, const Setting&, std::size_t d) {
  const layout::DeviceKind& kind = *c.devices[d].kind;
  const floor::Standing& standing = c.placed[d].standing;
  if (!kind.counts_as_stop || kind.held || !standing.place.empty() || someoneHasAtHand(c, d)) return {};
  return {blocked(c.aboutDevice(d), c.placed[d], c.deviceName(d))};
}

std::vector<Finding> findPhone(const Context& c, const Setting&, std::size_t p) {
  const floor::Standing& standing = c.phones[p].standing;
  if (!standing.place.empty()) return {};
  return {blocked(c.about(c.layout.phones[p].id, standing.room), c.phones[p], c.phoneName(p))};
}

}  // namespace

const Rule& blockedDevice() {
  static const Rule rule{
      .id = "blocked-device",
      .severity = Severity::Fail,
      .limits = {},
      .basis = {BasisKind::Published,
                "NFPA 79 (2021), definition of readily accessible, as quoted; Directive 2006/42/EC, Annex I, "
                "1.2.4.3"},
      .finds = "a stop or phone without a free standing place, or with something solid between",
      .meaning =
          "Nobody who is not already beside it can use it. A stop that some station has at hand is not "
          "reported, nor is a "
          "trigger (nobody walks to it) or a device that stops nothing by its kind.",
      .mend =
          "Clear the floor before the device and what stands between, or hang it where people can stand "
          "before it.",
      .find = {{Each::Device, findDevice}, {Each::Phone, findPhone}}};
  return rule;
}

}  // namespace stopwalk::audit
